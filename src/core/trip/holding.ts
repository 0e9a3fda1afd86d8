import type { Afloat, Boat } from '../curve/boat.ts';
import { HUMP_MARGIN, humpOf, marginOf, PLANING_FROUDE, speedAtFroude } from '../curve/hump.ts';
import { resistanceDeviation, type Steady, steady, type Weather } from '../curve/steady.ts';
import { normalCdf } from './need.ts';
import type { Prepared } from './prepare.ts';
import type { Run, Sailed } from './sail.ts';
import type { Verdict } from './shapes.ts';

/** Power asked grows faster than resistance on a propeller held at one speed (derived from the drive method). */
const POWER_OVER_RESISTANCE = 1.2;
/** Spread of rated power (trade tolerance of ratings). */
const RATING_SPREAD = 0.07;
/** A speed held by fewer than three of four such boats is not one to rely on (our rule). */
export const HELD_IN = 0.75;

/** Probability that the drive holds a speed, from the spread of resistance and rated power. */
export function heldProbability(boat: Boat, afloat: Afloat, speed: number, now: Steady): number {
  const margin = marginOf(boat, now.drive);
  if (margin > 3) return 1;
  const share = resistanceDeviation(boat, afloat, speed, now.hull) / Math.max(now.resistance, 1e-9);
  return normalCdf(Math.log(margin) / Math.hypot(POWER_OVER_RESISTANCE * share, RATING_SPREAD));
}

/** Go: held by most such boats; no-go: not even by this one. */
export function speedVerdict(boat: Boat, afloat: Afloat, speed: number, weather: Weather): Verdict {
  const now = steady(boat, afloat, speed, weather);
  if (marginOf(boat, now.drive) < 1) return 'no-go';
  return heldProbability(boat, afloat, speed, now) < HELD_IN ? 'marginal' : 'go';
}

/** Go: over the hump with power to spare; no-go: not over it. */
export function humpVerdict(margin: number): Verdict {
  return margin < 1 ? 'no-go' : margin < HUMP_MARGIN ? 'marginal' : 'go';
}

/** Stretches sailed at planing speed. */
export function planingStretches(prepared: Prepared, run: Run): readonly Sailed[] {
  const boat = prepared.boatAt(run.scenario.batteryTemperatureC);
  return run.sailed.filter((s) => s.speed >= speedAtFroude(boat, s.afloat, PLANING_FROUDE));
}

/** What the engine says of extra mass (kg) or more headwind (m/s) on this run: each answer only worsens with more. */
export interface Holding {
  planes(extra: number, headwind?: (s: Sailed) => number): Verdict;
  speeds(extra: number, headwind?: (s: Sailed) => number): Verdict;
}

const RANK = { go: 0, marginal: 1, 'no-go': 2 } as const;

export function worse(a: Verdict, b: Verdict): Verdict {
  return RANK[a] >= RANK[b] ? a : b;
}

export function holding(prepared: Prepared, run: Run): Holding {
  const boat = prepared.boatAt(run.scenario.batteryTemperatureC);
  const planing = planingStretches(prepared, run);
  const hardest = distinct(run.sailed);
  const asSailed = (s: Sailed): number => s.weather.headwind;
  return {
    planes: (extra, headwind = asSailed) => {
      if (planing.length === 0) return 'go';
      const { afloat } = planing[0]!;
      const ahead = planing.reduce((most, s) => Math.max(most, headwind(s)), -Infinity);
      const weather = { headwind: ahead, waveHeight: run.scenario.waveHeight };
      return humpVerdict(humpOf(boat, { ...afloat, mass: afloat.mass + extra }, weather).margin);
    },
    speeds: (extra, headwind = asSailed) => {
      let verdict: Verdict = 'go';
      for (const s of hardest) {
        const afloat = { ...s.afloat, mass: s.afloat.mass + extra };
        const weather = { headwind: headwind(s), waveHeight: s.weather.waveHeight };
        verdict = worse(verdict, speedVerdict(boat, afloat, s.speed, weather));
        if (verdict === 'no-go') break;
      }
      return verdict;
    },
  };
}

/** The first, and so heaviest, stretch for each speed and headwind to half a metre per second. */
function distinct(sailed: readonly Sailed[]): readonly Sailed[] {
  const found = new Map<string, Sailed>();
  for (const s of sailed) {
    const key = `${s.speed.toFixed(1)} ${Math.round(2 * s.weather.headwind)} ${Math.round(s.stretch.trackDeg / 30)}`;
    const known = found.get(key);
    if (!known || s.weather.headwind > known.weather.headwind) found.set(key, s);
  }
  return [...found.values()];
}
