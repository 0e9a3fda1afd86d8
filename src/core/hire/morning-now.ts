import type { Conditions } from '../water/shapes.ts';
import type { Morning } from './shapes.ts';

/** Whether what was set still counts. */
export function morningHolds(morning: Morning | undefined, now: number): boolean {
  return morning !== undefined && now <= morning.until && now >= morning.setAt;
}

/** The conditions that count at a time: past the expiry wind, stream and sea are not known, only the kind of water. */
export function conditionsNow(morning: Morning | undefined, now: number): Conditions {
  if (!morning) return { water: 'sea' };
  return morningHolds(morning, now) ? morning.conditions : { water: morning.conditions.water };
}
