import type { Conditions } from '../../core/water/shapes.ts';

const KEY = 'homeleg-today';
/** No wind, stream or wave is more, m/s and m. */
const MOST = 100;

/** The desk's conditions of today; 'old' when those kept are of another day, undefined when there are none. */
export function keptToday(now: Date): Conditions | 'old' | undefined {
  try {
    const text = localStorage.getItem(KEY);
    if (text === null) return undefined;
    const kept: unknown = JSON.parse(text);
    if (typeof kept !== 'object' || kept === null || !('day' in kept) || !('conditions' in kept)) return undefined;
    if (kept.day !== dayOf(now)) return 'old';
    return conditionsFrom(kept.conditions);
  } catch {
    return undefined;
  }
}

export function keepToday(conditions: Conditions, now: Date): void {
  try {
    localStorage.setItem(KEY, JSON.stringify({ day: dayOf(now), conditions }));
  } catch {
    // Blocked or full storage: the desk sets them again after a reload.
  }
}

function dayOf(date: Date): string {
  return `${date.getFullYear()}-${date.getMonth() + 1}-${date.getDate()}`;
}

/** Only what has the right form is taken back; anything else counts as not given. */
function conditionsFrom(value: unknown): Conditions | undefined {
  if (typeof value !== 'object' || value === null) return undefined;
  const { wind, stream, sea, water, batteryTemperatureC } = value as Record<string, unknown>;
  const pair = (v: unknown, angle: string, size: string): boolean =>
    typeof v === 'object' &&
    v !== null &&
    within((v as Record<string, unknown>)[angle], 0, 360) &&
    within((v as Record<string, unknown>)[size], 0, MOST);
  return {
    water: water === 'fresh' ? 'fresh' : 'sea',
    ...((wind === 'calm' || pair(wind, 'fromDeg', 'speed')) && { wind: wind as Conditions['wind'] }),
    ...((stream === 'slack' || pair(stream, 'setDeg', 'rate')) && { stream: stream as Conditions['stream'] }),
    ...((sea === 'calm' || pair(sea, 'height', 'height')) && { sea: sea as Conditions['sea'] }),
    ...(within(batteryTemperatureC, -60, 80) && { batteryTemperatureC }),
  };
}

function within(value: unknown, least: number, most: number): value is number {
  return typeof value === 'number' && value >= least && value <= most;
}
