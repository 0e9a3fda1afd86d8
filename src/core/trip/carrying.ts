import { HUMP_MARGIN, humpOf, marginOf } from '../curve/hump.ts';
import { steady } from '../curve/steady.ts';
import { planingStretches } from './judge-boat.ts';
import type { Prepared } from './prepare.ts';
import type { Run, Sailed } from './sail.ts';

/** What the engine says of extra mass: each answer only fails as mass grows. */
export interface Carrying {
  /** Whether a plan that planes still gets over the hump with this extra mass, kg. */
  planes(extra: number): boolean;
  /** Whether every planned speed is still held. */
  holds(extra: number): boolean;
}

export function carrying(prepared: Prepared, run: Run): Carrying {
  const boat = prepared.boatAt(run.scenario.batteryTemperatureC);
  const planing = planingStretches(prepared, run);
  const windiest = planing.reduce<Sailed | undefined>(
    (a, b) => (!a || b.weather.headwind > a.weather.headwind ? b : a),
    undefined,
  );
  const hardest = distinct(run.sailed);
  return {
    planes: (extra) => {
      if (!windiest) return true;
      const { afloat } = planing[0]!;
      return humpOf(boat, { ...afloat, mass: afloat.mass + extra }, windiest.weather).margin >= HUMP_MARGIN;
    },
    holds: (extra) =>
      hardest.every((s) => {
        const afloat = { ...s.afloat, mass: s.afloat.mass + extra };
        return marginOf(boat, steady(boat, afloat, s.speed, s.weather).drive) >= 1;
      }),
  };
}

/** One stretch, the heaviest and so the first, for each pair of speed and headwind. */
function distinct(sailed: readonly Sailed[]): readonly Sailed[] {
  const found = new Map<string, Sailed>();
  for (const s of sailed) {
    const key = `${s.speed.toFixed(1)} ${Math.round(s.weather.headwind)}`;
    const known = found.get(key);
    if (!known || s.weather.headwind > known.weather.headwind) found.set(key, s);
  }
  return [...found.values()];
}
