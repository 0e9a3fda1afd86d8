import { readWaters } from '../../core/files/waters-file.ts';
import type { WatersFile } from '../../core/route/shapes.ts';
import { openStore } from '../store/open-store.ts';
import { record, type Sheet } from './sheet.ts';

const STORE = 'waters';

/** What was being drawn on this device, errors included; undefined where there is nothing. */
export async function keptSheet(): Promise<Sheet | 'unread' | undefined> {
  try {
    const value: unknown = await (await openStore()).get(STORE, 'draft');
    if (record(value) && value.type === 'FeatureCollection' && Array.isArray(value.features)) {
      return value as unknown as Sheet;
    }
    // Not written over by what is drawn next.
    if (value === undefined) return undefined;
    await put(`draft-unreadable-${Date.now()}`, value);
    return 'unread';
  } catch {
    return undefined;
  }
}

/** False where the browser keeps nothing. */
export async function keepSheet(sheet: Sheet): Promise<boolean> {
  return put('draft', sheet);
}

/** Leaves waters for the planner of this site. */
export async function handOver(waters: WatersFile): Promise<boolean> {
  return put('planned', waters);
}

/** The waters left for the planner, checked; undefined where there are none. */
export async function handedOver(): Promise<WatersFile | undefined> {
  try {
    const read = readWaters(await (await openStore()).get(STORE, 'planned'));
    return read.ok ? read.value : undefined;
  } catch {
    return undefined;
  }
}

async function put(key: string, value: unknown): Promise<boolean> {
  try {
    const change = (await openStore()).transaction(STORE, 'readwrite');
    const asked = Promise.all([change.store.put(value, key), change.done]);
    // Kept even if the page is gone before the answer.
    change.commit();
    await asked;
    return true;
  } catch {
    return false;
  }
}
