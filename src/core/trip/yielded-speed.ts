import type { Afloat, Boat } from '../curve/boat.ts';
import { firstStop, humpOf, marginOf } from '../curve/hump.ts';
import { type Steady, steady, type Weather } from '../curve/steady.ts';
import { afloatIn, type Tweak } from './afloat-in.ts';
import { windOn } from './met-on-way.ts';
import type { Prepared } from './prepare.ts';
import type { Scenario } from './scenario.ts';
import { byTime, strongestTold } from './wind-law.ts';

/** Margin from which no stretch of a run can find its way up blocked: its load and wind differ less than this. */
const CLEARLY = 1.03;

/**
 * Whether the way over the hump is clear on every stretch of a scenario: it is asked once, with the heaviest boat, its
 * centre farthest aft, the battery drained and the strongest wind from ahead.
 */
export function wayIsClear(prepared: Prepared, scenario: Scenario, tweak: Tweak): boolean {
  const full = afloatIn(prepared, scenario, prepared.storeMass(scenario.weighs), { tweak, charge: 0 });
  const empty = afloatIn(prepared, scenario, 0, { tweak });
  const boat = prepared.boatAt(scenario.batteryTemperatureC);
  const afloat = { ...full, lcg: Math.min(full.lcg, empty.lcg) };
  const weather = { headwind: strongestAhead(prepared, scenario), waveHeight: scenario.waveHeight };
  return humpOf(boat, afloat, weather, Infinity, prepared.remembered.climb(boat, afloat)).margin >= CLEARLY;
}

/** Wind from ahead that no stretch of a run has more of, m/s; by time, the strongest of the day from anywhere. */
function strongestAhead({ stretches, around }: Prepared, scenario: Scenario): number {
  const { wind, headwindHome = 0, departs, untold } = scenario;
  if (wind && byTime(wind)) {
    return Math.max(strongestTold(wind, departs, departs + around.horizon), headwindHome, untold.headwind);
  }
  return stretches.reduce((most, stretch) => Math.max(most, windOn(stretch, scenario, 0)), -Infinity);
}

/** To what a yielded speed is found, m/s. */
const FINE = 0.001;

export interface Yielded {
  readonly speed: number;
  /** Where it was worked out on the way. */
  readonly now?: Steady;
}

/**
 * The wanted speed (m/s), or where the hump or the drive forbids it the highest that is held and reached from rest:
 * what lies beyond a speed that is not held cannot be reached.
 */
export function yieldedSpeed(boat: Boat, afloat: Afloat, weather: Weather, wanted: number, clear: boolean): Yielded {
  const held = (speed: number): boolean => marginOf(boat, afloat, steady(boat, afloat, speed, weather).drive) >= 1;
  const stopped = clear ? undefined : firstStop(boat, afloat, weather, wanted);
  if (stopped === undefined) {
    const now = steady(boat, afloat, wanted, weather);
    if (marginOf(boat, afloat, now.drive) >= 1) return { speed: wanted, now };
  }
  let bad = stopped ?? wanted;
  let good = bad;
  do {
    bad = good;
    good -= 0.1;
  } while (good > 0.3 && !held(good));
  if (good <= 0.3) return { speed: good };
  while (bad - good > FINE) {
    const middle = (good + bad) / 2;
    if (held(middle)) good = middle;
    else bad = middle;
  }
  return { speed: good };
}
