import type { Page } from '@playwright/test';

/** A file of the site that opens no storage: a place to lay something into it before a page does. */
const QUIET = '/favicon.svg';

/** Object stores of the database as each version had them. */
const STORES: readonly (readonly [string, IDBObjectStoreParameters?][])[] = [
  [['hires', { keyPath: 'id' }], ['fuel-notes', { keyPath: 'id' }], ['desk']],
  [['saved', { keyPath: 'id' }]],
  [['waters']],
];
export const NOW = STORES.length;

interface Laid {
  readonly store: string;
  /** Where the store has no name of its own in the record. */
  readonly key?: string;
  readonly value: unknown;
}

/** The database as a page of `version` left it. `open` leaves it open, as a tab that is never looked at does. */
export async function layDatabase(page: Page, version: number, records: readonly Laid[], open = false): Promise<void> {
  const stores = STORES.slice(0, version).flat();
  await page.goto(QUIET);
  await page.evaluate(
    async ({ version, stores, records, open }) => {
      const request = indexedDB.open('homeleg', version);
      request.onupgradeneeded = () => {
        const there = request.result.objectStoreNames;
        for (const [name, options] of stores) {
          if (!there.contains(name)) request.result.createObjectStore(name, options);
        }
      };
      await new Promise((done, fail) => {
        request.onsuccess = done;
        request.onerror = () => fail(request.error);
      });
      const database = request.result;
      if (records.length > 0) {
        const work = database.transaction([...new Set(records.map(({ store }) => store))], 'readwrite');
        for (const { store, key, value } of records) work.objectStore(store).put(value, key);
        await new Promise((done) => {
          work.oncomplete = done;
        });
      }
      if (open) Object.assign(globalThis, { held: database });
      else database.close();
    },
    { version, stores, records, open },
  );
}

/** All that one store of the database holds. */
export async function keptIn(page: Page, store: string): Promise<unknown[]> {
  return page.evaluate(async (name) => {
    const request = indexedDB.open('homeleg');
    await new Promise((done) => {
      request.onsuccess = done;
    });
    const all = request.result.transaction(name).objectStore(name).getAll();
    await new Promise((done) => {
      all.onsuccess = done;
    });
    request.result.close();
    return all.result;
  }, store);
}

/** Lays a text into the other storage. */
export async function layText(page: Page, key: string, text: string): Promise<void> {
  await page.goto(QUIET);
  await page.evaluate(([name, value]) => localStorage.setItem(name!, value!), [key, text]);
}

/** Every text kept there. */
export async function texts(page: Page): Promise<string[]> {
  return page.evaluate(() => Object.values({ ...localStorage }));
}
