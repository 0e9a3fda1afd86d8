import { type IDBPDatabase, openDB } from 'idb';

const NAME = 'homeleg';

/** Makes the object stores of one version; a step that was published is never changed, the next one is added. */
const UPGRADES: readonly ((database: IDBPDatabase) => void)[] = [
  // The hire desk: its hires, its fuel notes, and what there is one of (fleet, morning, settings).
  (database) => {
    database.createObjectStore('hires', { keyPath: 'id' });
    database.createObjectStore('fuel-notes', { keyPath: 'id' });
    database.createObjectStore('desk');
  },
  // Saved trips and boats, one record each.
  (database) => {
    database.createObjectStore('saved', { keyPath: 'id' });
  },
  // Local waters: those being drawn, and those left for the planner.
  (database) => {
    database.createObjectStore('waters');
  },
];

let opened: Promise<IDBPDatabase> | undefined;
let held = false;
/** A request that waits behind another tab's is told nothing, but no device takes this long, ms. */
const LONG = 4000;
const hearers = new Set<(held: boolean) => void>();

/**
 * Tells when a page of an older version in another tab holds the database back, and when it has let go: until then
 * whoever asked for it waits. Tells the state at once; returns what ends it.
 */
export function whenHeld(told: (held: boolean) => void): () => void {
  hearers.add(told);
  told(held);
  return () => hearers.delete(told);
}

function setHeld(now: boolean): void {
  if (now === held) return;
  held = now;
  for (const told of hearers) told(held);
}

/** The one database of this site on this device; rejects where storage is blocked. Stores: see `UPGRADES`. */
export function openStore(): Promise<IDBPDatabase> {
  opened ??= open();
  return opened;
}

async function open(): Promise<IDBPDatabase> {
  const forget = () => {
    opened = undefined;
  };
  const late = setTimeout(() => setHeld(true), LONG);
  try {
    const database = await openDB(NAME, UPGRADES.length, {
      upgrade(made, oldVersion) {
        for (const step of UPGRADES.slice(oldVersion)) step(made as unknown as IDBPDatabase);
      },
      blocked: () => setHeld(true),
      // A newer page in another tab needs another version: this one lets go and opens anew when asked.
      blocking(_current, _blocked, event) {
        forget();
        (event.target as IDBDatabase).close();
      },
      terminated: forget,
    });
    return database;
  } catch (error) {
    forget();
    throw error;
  } finally {
    clearTimeout(late);
    setHeld(false);
  }
}
