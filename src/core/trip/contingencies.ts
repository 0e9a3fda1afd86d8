import { fuelMass } from '../drive/tank.ts';
import { towResistance, towSpeedCap } from '../hull/tow.ts';
import { balance } from '../load/balance.ts';
import { oneForceMore } from '../water/beaufort.ts';
import { AS_PLANNED } from './afloat-in.ts';
import { type Run, sail } from './sail.ts';
import type { Scenario } from './scenario.ts';
import type { Amount, Verdict } from './shapes.ts';
import { needOf, needWithGauge } from './spread.ts';
import type { Standing } from './standing.ts';
import { strongestTold } from './wind-law.ts';
import { wayIsClear } from './yielded-speed.ts';

export type Mishap =
  | 'headwind-home'
  | 'home-slow'
  | 'home-on-hump'
  | 'tow-home'
  | 'hour-lost'
  | 'cold-battery'
  | 'tank-fails';

/** One thing that may go wrong, and how the trip ends then. Amounts kg or J, times s. */
export interface Contingency {
  readonly mishap: Mishap;
  /** Likely left at home, and what the 95th percentile of need leaves; negative: short by it. */
  readonly left: Amount;
  readonly leftAtWorst: Amount;
  readonly usable: Amount;
  readonly time: number;
  /** m/s made home through the water, where the mishap sets it. */
  readonly speed?: number;
  /** go: the reserve stays whole; marginal: gets home; no-go: runs dry or makes no way. */
  readonly verdict: Verdict;
}

/** Time lost with the engine running at the mean flow of the trip's slow part: waiting, searching, clearing a rope. */
const HOUR = 3600;
/** A battery that much colder than planned, C. */
const COLDER = 10;

/** Answers to what usually goes wrong, each on its own beside the likely day. Empty where the trip cannot be sailed. */
export function contingencies(standing: Standing): readonly Contingency[] {
  const { prepared, fuel, climb } = standing;
  const { run } = fuel;
  if (!run.possible) return [];
  const { trip } = prepared;
  const base: Scenario = run.scenario;
  const electric = trip.craft.drive.kind === 'electric';
  const list: Contingency[] = [];
  const { departs } = base;
  const wind = base.wind
    ? strongestTold(base.wind, departs, departs + prepared.around.horizon)
    : (base.headwindHome ?? 0);
  list.push(answer(standing, 'headwind-home', { ...base, headwindHome: oneForceMore(wind) }));
  const slow = prepared.displacementSpeed;
  list.push(answer(standing, 'home-slow', { ...base, homeCap: slow }, { speed: slow }));
  if (climb.margin < Infinity && climb.speed < Math.max(...run.sailed.map((s) => s.speed))) {
    list.push(answer(standing, 'home-on-hump', { ...base, homeSpeed: climb.speed }, { speed: climb.speed }));
  }
  const towed = towSpeed(standing);
  list.push(answer(standing, 'tow-home', { ...base, homeCap: towed, tow: towOf(standing) }, { speed: towed }));
  list.push(answer(standing, 'hour-lost', base, { lost: HOUR }));
  if (electric) {
    const batteryTemperatureC = base.batteryTemperatureC - COLDER;
    list.push(answer(standing, 'cold-battery', { ...base, batteryTemperatureC }));
  }
  const { store } = trip.craft;
  const holders = store.kind === 'tank' ? store.tanks.length : store.batteries.length;
  if (holders > 1) list.push(answer(standing, 'tank-fails', base, { share: smallestRest(standing) }));
  return list;
}

/** Another boat, afloat with its own load, is towed home from the turning point. */
export function towsHome(standing: Standing, other: Standing): Contingency {
  const { run } = standing.fuel;
  const speed = Math.min(towSpeed(standing), towSpeed(other));
  const scenario: Scenario = { ...run.scenario, homeCap: speed, tow: towOf(other) };
  return answer(standing, 'tow-home', scenario, { speed });
}

interface More {
  readonly speed?: number;
  /** s with the engine running slowly. */
  readonly lost?: number;
  /** Of what can be used, left after a tank or battery failed. */
  readonly share?: number;
}

function answer({ prepared, fuel }: Standing, mishap: Mishap, scenario: Scenario, more: More = {}): Contingency {
  const clear = wayIsClear(prepared, scenario, AS_PLANNED);
  const run = sail(prepared, scenario, AS_PLANNED, { yielding: true, clear });
  const usable = prepared.usable(scenario) * (more.share ?? 1);
  const lost = (more.lost ?? 0) * run.manoeuvringFlow;
  const need = run.possible ? run.need + lost : Infinity;
  const worst = run.possible
    ? needWithGauge(prepared, run, needOf(prepared, run, fuel.spread), { usable, p: 0.95 }) + lost
    : Infinity;
  const left = usable - need;
  const dry = usable - worst;
  return {
    mishap,
    left,
    leftAtWorst: dry,
    usable,
    time: run.time + (more.lost ?? 0),
    ...(more.speed !== undefined && { speed: homeSpeed(run, more.speed) }),
    verdict: left >= fuel.reserve && dry > 0 ? 'go' : left > 0 ? 'marginal' : 'no-go',
  };
}

/** The highest speed made home; a boat that cannot hold what is asked makes less. */
function homeSpeed(run: Run, asked: number): number {
  const home = run.sailed.filter((s) => s.stretch.part === 'home' || run.scenario.oneWay);
  return home.length > 0 ? Math.max(...home.map((s) => s.speed)) : asked;
}

/** A boat like this one with two aboard is what there is to tow. */
function towSpeed({ prepared }: Standing): number {
  return Math.min(prepared.displacementSpeed, towSpeedCap(prepared.trip.craft.hull.wettedLength));
}

/** Resistance of a like boat with the same load and half its fuel on a line, N, by speed (m/s) and headwind. */
function towOf({ prepared }: Standing): Scenario['tow'] {
  const { craft, load } = prepared.trip;
  const fuel = craft.store.kind === 'tank' ? fuelMass(craft.store.tanks, 0.5) : 0;
  const { allUpMass, lcg, airArea } = balance(craft, load, fuel);
  const boat = prepared.boatAt(15);
  const towed = { hull: craft.hull, state: { mass: allUpMass, lcg, water: boat.water }, airArea };
  return (speed, headwind) => towResistance(towed, { speed, headwind });
}

/** The largest tank or battery gives out: the share of the whole that the others hold. */
function smallestRest({ prepared }: Standing): number {
  const { store } = prepared.trip.craft;
  const sizes =
    store.kind === 'tank' ? store.tanks.map((t) => t.capacityL) : store.batteries.map((b) => b.energyWh * b.health);
  const total = sizes.reduce((sum, size) => sum + size, 0);
  return 1 - Math.max(...sizes) / total;
}
