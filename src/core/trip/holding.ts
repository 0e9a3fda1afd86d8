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
  const margin = marginOf(boat, afloat, now.drive);
  if (margin > 3) return 1;
  const share = resistanceDeviation(boat, afloat, speed, now.hull) / Math.max(now.resistance, 1e-9);
  return normalCdf(Math.log(margin) / Math.hypot(POWER_OVER_RESISTANCE * share, RATING_SPREAD));
}

/** Go: held by most such boats; no-go: not even by this one. */
export function speedVerdict(boat: Boat, afloat: Afloat, speed: number, weather: Weather): Verdict {
  const now = steady(boat, afloat, speed, weather);
  if (marginOf(boat, afloat, now.drive) < 1) return 'no-go';
  return heldProbability(boat, afloat, speed, now) < HELD_IN ? 'marginal' : 'go';
}

/** Go: over the hump with power to spare; no-go: not over it. */
export function humpVerdict(margin: number): Verdict {
  return margin < 1 ? 'no-go' : margin < HUMP_MARGIN ? 'marginal' : 'go';
}

/**
 * The stretches as sailed; where the sea slows one also as planned, in flat water if the sea is known: it must be in
 * the boat at all; and with an unknown seat each also as if it were at the other end.
 */
export function asked(prepared: Prepared, run: Run): readonly Sailed[] {
  if (prepared.forwardMoment === 0 && run.sailed.every((s) => s.speed >= s.planned)) return run.sailed;
  const boat = prepared.boatAt(run.scenario.batteryTemperatureC);
  const flat = prepared.trip.conditions.sea !== undefined;
  const again = (s: Sailed, change: Partial<Sailed>): Sailed => {
    const now = { ...s, ...change };
    return { ...now, steady: steady(boat, now.afloat, now.speed, now.weather) };
  };
  const all = [...run.sailed];
  for (const s of run.sailed) {
    if (s.speed >= s.planned) continue;
    const weather = flat ? { headwind: s.weather.headwind, waveHeight: 0 } : s.weather;
    all.push(again(s, { speed: s.planned, weather }));
  }
  if (prepared.forwardMoment === 0) return all;
  const shift = (run.scenario.forward ? -1 : 1) * prepared.forwardMoment;
  return [...all, ...all.map((s) => again(s, { afloat: { ...s.afloat, lcg: s.afloat.lcg + shift / s.afloat.mass } }))];
}

/** How a boat gets up to a speed, m/s. */
export interface Climb {
  readonly afloat: Afloat;
  readonly weather: Weather;
  readonly top: number;
}

/** The climb to the fastest of these stretches, as heavy, far aft, drained and against as much wind and sea as any. */
export function climbOf(stretches: readonly Sailed[]): Climb {
  let { mass, lcg } = stretches[0]!.afloat;
  let top = 0;
  let headwind = -Infinity;
  let waveHeight = 0;
  let charge = 1;
  for (const s of stretches) {
    charge = Math.min(charge, s.afloat.charge ?? 1);
    mass = Math.max(mass, s.afloat.mass);
    lcg = Math.min(lcg, s.afloat.lcg);
    top = Math.max(top, s.speed);
    headwind = Math.max(headwind, s.weather.headwind);
    waveHeight = Math.max(waveHeight, s.weather.waveHeight);
  }
  const { airArea } = stretches[0]!.afloat;
  return { afloat: { mass, lcg, airArea, charge }, weather: { headwind, waveHeight }, top };
}

/** The tightest speed on the way up and its margin; a speed that itself is the tightest has no hump before it. */
export function climbed(boat: Boat, { afloat, weather, top }: Climb): { speed: number; margin: number } {
  const hump = humpOf(boat, afloat, weather, top);
  if (top >= speedAtFroude(boat, afloat, PLANING_FROUDE)) return hump;
  const own = marginOf(boat, afloat, steady(boat, afloat, top, weather).drive);
  return hump.margin < own ? hump : { speed: top, margin: Infinity };
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

/** `all` is what is `asked` of the boat on this run. */
export function holding(prepared: Prepared, run: Run, all: readonly Sailed[]): Holding {
  const boat = prepared.boatAt(run.scenario.batteryTemperatureC);
  const climb = climbOf(all);
  // Petrol makes the first of like stretches the hardest, a battery the last.
  const hardest = distinct(prepared.burns ? all : [...all].reverse());
  const asSailed = (s: Sailed): number => s.weather.headwind;
  return {
    planes: (extra, headwind = asSailed) => {
      const { afloat, weather, top } = climb;
      const ahead = all.reduce((most, s) => Math.max(most, headwind(s)), -Infinity);
      const heavier = { ...afloat, mass: afloat.mass + extra };
      return humpVerdict(climbed(boat, { afloat: heavier, weather: { ...weather, headwind: ahead }, top }).margin);
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

/** The first stretch for each speed and headwind to half a metre per second. */
function distinct(sailed: readonly Sailed[]): readonly Sailed[] {
  const found = new Map<string, Sailed>();
  for (const s of sailed) {
    const key = `${s.speed.toFixed(1)} ${Math.round(2 * s.weather.headwind)} ${Math.round(s.stretch.trackDeg / 30)}`;
    const known = found.get(key);
    if (!known || s.weather.headwind > known.weather.headwind) found.set(key, s);
  }
  return [...found.values()];
}
