import type { BoatProfile } from '../../core/trials/shapes.ts';
import { type CraftOrigin, type Draft, firstDraft } from '../planner/first-trip.ts';
import { withProfile } from '../planner/with-profile.ts';
import { putBy } from '../store/put-by.ts';

/** Under which name the planner keeps its trip on this device. */
const PLANNER_KEY = 'homeleg-trip';

/** Puts the boat into the planner's trip on this device, or a new one; false where the browser keeps nothing. */
export async function useInPlanner(profile: BoatProfile, origin: CraftOrigin): Promise<boolean> {
  try {
    const kept = await plannerDraft();
    const text = localStorage.getItem(PLANNER_KEY);
    if (!kept && text !== null && !putBy(PLANNER_KEY, text)) return false;
    const draft: Draft = { trip: withProfile((kept ?? firstDraft()).trip, profile), origin };
    localStorage.setItem(PLANNER_KEY, JSON.stringify(draft));
    return true;
  } catch {
    return false;
  }
}

/** What the planner keeps on this device; undefined where there is nothing to read. */
export async function plannerDraft(): Promise<Draft | undefined> {
  try {
    const value: unknown = JSON.parse(localStorage.getItem(PLANNER_KEY) ?? 'null');
    if (typeof value !== 'object' || value === null || !('trip' in value)) return undefined;
    const { readDraft } = await import('../../core/files/trip-schema.ts');
    const read = readDraft(value.trip);
    if (!read.ok) return undefined;
    const origin = 'origin' in value && typeof value.origin === 'object' ? (value.origin as CraftOrigin) : {};
    return { trip: read.value, origin: origin ?? {} };
  } catch {
    return undefined;
  }
}
