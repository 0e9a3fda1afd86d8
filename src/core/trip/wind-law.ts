import type { Wind } from '../water/shapes.ts';
import { type WindTable, windAt } from '../water/wind-by-time.ts';

/** Wind that is the same all day, or by time. */
export type WindLaw = Wind | WindTable;

export function byTime(wind: WindLaw | 'calm' | undefined): wind is WindTable {
  return typeof wind === 'object' && 'entries' in wind;
}

/** The wind of a law at an instant; undefined where a forecast tells none. */
export function windThen(law: WindLaw, seconds: number): Wind | undefined {
  if (!byTime(law)) return law;
  const found = windAt(law, seconds);
  return found.known ? found.wind : undefined;
}

/** A law with every speed changed. */
export function withSpeeds<L extends WindLaw>(law: L, change: (speed: number) => number): L {
  if (!byTime(law)) return { ...law, speed: change((law as Wind).speed) };
  return { ...law, entries: law.entries.map((entry) => ({ ...entry, speed: change(entry.speed) })) };
}

/** Strongest mean wind that is told between two instants, m/s; 0 where none is. */
export function strongestTold(law: WindLaw, from: number, to: number): number {
  if (!byTime(law)) return law.speed;
  let most = 0;
  for (const seconds of [from, to]) most = Math.max(most, windThen(law, seconds)?.speed ?? 0);
  for (const { at, speed } of law.entries) if (at > from && at < to) most = Math.max(most, speed);
  return most;
}
