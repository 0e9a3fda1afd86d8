import { readSavedEntry, type SavedEntry } from '../../core/files/saved-file.ts';
import { openStore } from '../store/open-store.ts';

/** One of the entries kept on this device. */
export type Saved = SavedEntry & { readonly id: string };

const STORE = 'saved';

/** All of them, the last saved first; what cannot be read any more is counted, and stays where it is. */
export async function savedEntries(): Promise<{ readonly entries: readonly Saved[]; readonly unreadable: number }> {
  const database = await openStore();
  const kept: unknown[] = await database.getAll(STORE);
  const entries: Saved[] = [];
  for (const given of kept) {
    const read = readSavedEntry(given);
    if (read.ok) entries.push({ ...read.value, id: (given as { id: string }).id });
  }
  entries.sort((a, b) => (a.savedAt < b.savedAt ? 1 : -1));
  return { entries, unreadable: kept.length - entries.length };
}

/** Keeps entries, all or none; one of the same id is replaced. */
export async function keepEntries(entries: readonly Saved[]): Promise<void> {
  const database = await openStore();
  const change = database.transaction(STORE, 'readwrite');
  await Promise.all([...entries.map((entry) => change.store.put(entry)), change.done]);
}

export async function removeEntry(id: string): Promise<void> {
  const database = await openStore();
  await database.delete(STORE, id);
}
