import type { Hire } from '../../core/hire/shapes.ts';
import { openStore } from '../store/open-store.ts';
import type { DeskPlace, Kept, NoteOf, Replacement, Single } from './desk-place.ts';

const STORES = ['desk', 'hires', 'fuel-notes'] as const;

/** Keeps a desk in the browser's database, each step in one transaction. */
export class DatabasePlace implements DeskPlace {
  async all(): Promise<Kept> {
    const work = (await openStore()).transaction(STORES);
    const desk = work.objectStore('desk');
    const [fleet, morning, units, hires, notes] = await Promise.all([
      desk.get('fleet'),
      desk.get('morning'),
      desk.get('units'),
      work.objectStore('hires').getAll(),
      work.objectStore('fuel-notes').getAll(),
      work.done,
    ]);
    return { singles: { fleet, morning, units }, hires, notes };
  }

  async put(name: Single, value: unknown): Promise<void> {
    await (await openStore()).put('desk', value, name);
  }

  async remove(name: Single): Promise<void> {
    await (await openStore()).delete('desk', name);
  }

  async addHire(hire: Hire): Promise<void> {
    await (await openStore()).put('hires', hire);
  }

  async changeHire(id: string, change: (kept: unknown) => Hire | undefined, note?: NoteOf): Promise<Hire | undefined> {
    const work = (await openStore()).transaction(['hires', 'fuel-notes'], 'readwrite');
    const hires = work.objectStore('hires');
    const changed = change(await hires.get(id));
    if (changed) {
      await hires.put(changed);
      const found = note?.(changed);
      if (found) await work.objectStore('fuel-notes').put(found);
    }
    await work.done;
    return changed;
  }

  async removeHire(id: string): Promise<void> {
    await (await openStore()).delete('hires', id);
  }

  async clearHires(): Promise<void> {
    await (await openStore()).clear('hires');
  }

  async replace({ singles, hires, notes }: Replacement): Promise<void> {
    const work = (await openStore()).transaction(STORES, 'readwrite');
    const desk = work.objectStore('desk');
    await Promise.all([desk.clear(), work.objectStore('hires').clear(), work.objectStore('fuel-notes').clear()]);
    for (const [name, value] of Object.entries(singles)) if (value !== undefined) await desk.put(value, name);
    for (const hire of hires) await work.objectStore('hires').put(hire);
    for (const note of notes) await work.objectStore('fuel-notes').put(note);
    await work.done;
  }
}
