import type { Afloat, Boat } from '../curve/boat.ts';
import { humpOf, marginOf, PLANING_FROUDE, speedAtFroude } from '../curve/hump.ts';
import { steady, type Weather } from '../curve/steady.ts';
import type { Prepared } from './prepare.ts';
import type { Remembered } from './remembered.ts';
import type { Run, Sailed } from './sail.ts';

/**
 * The stretches as sailed; where the sea slows one also as planned, in flat water if the sea is known: it must be in
 * the boat at all; and with an unknown seat each also as if it were at the other end.
 */
export function asked(prepared: Prepared, run: Run): readonly Sailed[] {
  const flat = prepared.seaTold;
  const calmed = flat && run.scenario.unslowed;
  if (!calmed && prepared.forwardMoment === 0 && run.sailed.every((s) => s.speed >= s.planned)) return run.sailed;
  const boat = prepared.boatAt(run.scenario.batteryTemperatureC);
  const again = (s: Sailed, change: Partial<Sailed>): Sailed => {
    const now = { ...s, ...change };
    // Weather alone leaves the hull as it is.
    const hull = now.afloat === s.afloat && now.speed === s.speed ? s.steady.hull : undefined;
    return { ...now, steady: steady(boat, now.afloat, now.speed, now.weather, hull) };
  };
  const still = (s: Sailed) => ({ headwind: s.weather.headwind, waveHeight: 0 });
  // Waves that are not let slow the boat cost fuel, but nobody has to hold its full speed through them.
  const all = run.sailed.map((s) => (calmed ? again(s, { weather: still(s) }) : s));
  for (const s of run.sailed) {
    if (s.speed >= s.planned) continue;
    const weather = flat ? still(s) : s.weather;
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
export function climbed(
  boat: Boat,
  { afloat, weather, top }: Climb,
  remembered?: Remembered,
): { speed: number; margin: number } {
  const hump = humpOf(boat, afloat, weather, top, remembered?.climb(boat, afloat));
  if (top >= speedAtFroude(boat, afloat, PLANING_FROUDE)) return hump;
  const own = marginOf(boat, afloat, steady(boat, afloat, top, weather).drive);
  return hump.margin < own ? hump : { speed: top, margin: Infinity };
}
