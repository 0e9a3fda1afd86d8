import { bestSpeed } from '../curve/best-speed.ts';
import type { Afloat, Boat } from '../curve/boat.ts';
import { SPREADS } from '../curve/factors.ts';
import { firstStop, humpOf, marginOf, PLANING_FROUDE, speedAtFroude } from '../curve/hump.ts';
import { lcgSlope, type Steady, steady, type Weather, writeGradient } from '../curve/steady.ts';
import { FULL_FILL } from '../drive/tank.ts';
import { courseToSteer } from '../route/current-triangle.ts';
import type { Stretch } from '../route/split-legs.ts';
import { headwind } from '../water/headwind.ts';
import { planingSpeedKept } from '../water/sea-speed.ts';
import type { Stream } from '../water/shapes.ts';
import type { Way } from './around.ts';
import { Level } from './level.ts';
import type { Prepared } from './prepare.ts';
import type { Scenario } from './scenario.ts';
import { byTime, strongestTold, windThen } from './wind-law.ts';

/** Changes to a trip under which tipping values and payload are sought. */
export interface Tweak {
  /** kg at the boat's own centre of gravity, so that its balance stays. */
  readonly extraMass: number;
  /** Factor on every consumption. */
  readonly use: number;
}

export const AS_PLANNED: Tweak = { extraMass: 0, use: 1 };

/** One stretch as sailed. Times s, speeds m/s, use kg or J. */
export interface Sailed {
  readonly stretch: Stretch;
  readonly possible: boolean;
  readonly steerDeg: number;
  readonly speed: number;
  readonly ground: number;
  readonly time: number;
  readonly use: number;
  /** Mean of the stretch, kg/s or W. */
  readonly flow: number;
  /** At its start, where the boat is heaviest. */
  readonly steady: Steady;
  readonly weather: Weather;
  readonly afloat: Afloat;
  /** The speed planned, where sea or drive allow less. */
  readonly planned: number;
  /** Instant for which wind and stream were taken, s from departure. */
  readonly at: number;
  readonly stream: Stream | undefined;
}

export interface Run {
  readonly scenario: Scenario;
  readonly sailed: readonly Sailed[];
  readonly possible: boolean;
  /** What had to be aboard at departure: all that is used, or with filling up on the way what its leanest part takes. */
  readonly need: number;
  /** All that is used; and of it what the need can be wrong about, which with filling up is its leanest part. */
  readonly used: number;
  readonly unsure: number;
  /** Of a trip that fills up on the way: usable at departure, and after each stretch that ends with it. */
  readonly refills: Refills | undefined;
  readonly needOut: number;
  readonly needHome: number;
  readonly manoeuvring: number;
  readonly manoeuvringFlow: number;
  /** Under way and stopped, with manoeuvring, s. */
  readonly time: number;
  /** Manoeuvring, and the boat as it does. */
  readonly slow: Steady;
  readonly atStart: Afloat;
}

/** kg or J that can be used. */
export interface Refills {
  readonly usable: number;
  /** By the place of the stretch. */
  readonly to: readonly (number | undefined)[];
}

export interface SailOptions {
  /** Where a planned speed cannot be held, sail the highest that can, as a crew would; otherwise compute the demand. */
  readonly yielding?: boolean;
  /** The way up to any planned speed is known to be clear, see `wayIsClear`. */
  readonly clear?: boolean;
  /** A run in the same weather with the same load, whose way out is this one's too. */
  readonly like?: Run | undefined;
}

/** Slow ahead, in gear: what casting off and coming alongside is done at, m/s. */
const MANOEUVRE_SPEED = 1;

/** Petrol burned on one stretch, over the boat's mass, from which its own weight is allowed for; below it costs 0.04 %. */
const LIGHTER = 0.0005;

/** Sails a prepared trip from start to end in one scenario, with the fuel burning off on the way. */
export function sail(prepared: Prepared, scenario: Scenario, tweak = AS_PLANNED, options: SailOptions = {}): Run {
  const boat = prepared.boatAt(scenario.batteryTemperatureC);
  const sailed: Sailed[] = [];
  let store = prepared.storeMass(scenario.weighs);
  let need = 0;
  let needOut = 0;
  let needHome = 0;
  let time = prepared.manoeuvring;
  let clock = 0;
  let possible = true;
  let charge = scenario.fill;
  // What a full bank holds at this temperature, J; the charge falls with what is drawn.
  const held = boat.bank?.parts.reduce((sum, part) => sum + part.energy, 0) ?? Infinity;

  const atStart = afloatIn(prepared, scenario, store, { tweak, charge });
  const slow = steady(boat, atStart, MANOEUVRE_SPEED);
  const manoeuvringFlow = Math.max(slow.flow, prepared.idle) * tweak.use;
  const manoeuvring = manoeuvringFlow * prepared.manoeuvring;
  need += manoeuvring;
  const refills = refillsOf(prepared, scenario);
  const level = refills && new Level(refills.usable);
  level?.draw(manoeuvring);

  const fillUp = (i: number): void => {
    const { refill } = prepared.stretches[i]!;
    if (!level || refill === undefined) return;
    level.fillTo(refills.to[i]!);
    store = Math.max(store, prepared.storeMass(refill));
    charge = Math.max(charge, refill);
  };

  for (let i = 0; i < prepared.stretches.length; i++) {
    const stretch = prepared.stretches[i]!;
    const alike = !scenario.oneWay && stretch.part === 'out' ? options.like?.sailed[i] : undefined;
    if (alike) {
      sailed.push(alike);
      need += alike.use;
      needOut += alike.use;
      time += alike.time + stretch.stop;
      possible &&= alike.possible;
      if (alike.possible) {
        charge = Math.max(charge - alike.use / held, 0);
        if (prepared.burns) store = Math.max(store - alike.use, 0);
      }
      level?.draw(alike.use);
      fillUp(i);
      continue;
    }
    const afloat = afloatIn(prepared, scenario, store, { tweak, charge });
    // Past a leg that is never done the clock stands.
    if (time < Infinity) clock = time;
    const at = clock + halfOf(prepared, stretch);
    const weather = weatherOn(stretch, scenario, at);
    const stream = streamOn(stretch, scenario, at);
    const { planned, wanted } = wantedSpeed(prepared, boat, afloat, weather, stretch, stream, scenario);
    const known = options.yielding ? yieldTo(boat, afloat, weather, wanted, options.clear === true) : undefined;
    const speed = known?.speed ?? wanted;
    const triangle = stream
      ? courseToSteer(stretch.trackDeg, speed, stream)
      : ({ possible: speed > 0, steerDeg: stretch.trackDeg, speedOverGround: speed } as const);
    const now = known?.now ?? steady(boat, afloat, speed, weather);
    const makes = triangle.possible && triangle.speedOverGround > 0;
    const ground = makes ? triangle.speedOverGround : 0;
    const legTime = makes ? stretch.distance / ground : Infinity;
    let flow = now.flow;
    const burned = makes && prepared.burns ? flow * tweak.use * legTime : 0;
    if (burned > LIGHTER * afloat.mass) {
      // Half way along the boat is lighter by half of what it burns, so that a long leg needs what its halves need.
      const halfWay = afloatIn(prepared, scenario, Math.max(store - burned / 2, 0), { tweak });
      flow = steady(boat, halfWay, speed, weather).flow;
    }
    const use = makes ? flow * tweak.use * legTime : Infinity;
    possible &&= makes;
    if (makes) charge = Math.max(charge - use / held, 0);
    sailed.push({
      stretch,
      possible: makes,
      steerDeg: makes ? triangle.steerDeg : stretch.trackDeg,
      speed,
      ground,
      time: legTime,
      use,
      flow,
      steady: now,
      weather,
      // Judged by what the battery gives at the end of the stretch, when it gives least.
      afloat: prepared.burns ? afloat : { ...afloat, charge },
      planned,
      at,
      stream,
    });
    need += use;
    if (stretch.part === 'out') needOut += use;
    else needHome += use;
    time += legTime + stretch.stop;
    if (makes && prepared.burns) store = Math.max(store - use, 0);
    level?.draw(use);
    fillUp(i);
  }
  return {
    scenario,
    sailed,
    possible,
    need: level ? level.need : need,
    used: need,
    unsure: level ? level.unsure : need,
    refills,
    needOut,
    needHome,
    manoeuvring,
    manoeuvringFlow,
    time,
    slow,
    atStart,
  };
}

/** Undefined where nothing is filled up on the way. */
function refillsOf(prepared: Prepared, scenario: Scenario): Refills | undefined {
  if (prepared.stretches.every(({ refill }) => refill === undefined)) return undefined;
  const to = prepared.stretches.map(({ refill }) =>
    refill === undefined
      ? undefined
      : prepared.usable({ ...scenario, fill: prepared.burns ? Math.min(refill, FULL_FILL) : refill }),
  );
  return { usable: prepared.usable(scenario), to };
}

/** d need / d factor (see `FACTORS`) of a run. */
export function needGradient(prepared: Prepared, run: Run, tweak: Tweak): Float64Array {
  const boat = prepared.boatAt(run.scenario.batteryTemperatureC);
  const gradient = new Float64Array(SPREADS);
  const own = new Float64Array(SPREADS);
  const add = (afloat: Afloat, speed: number, now: Steady, time: number): void => {
    writeGradient(boat, now, lcgSlope(boat, afloat, speed, now.hull), own);
    for (let k = 0; k < own.length; k++) gradient[k] = gradient[k]! + own[k]! * time * tweak.use;
  };
  add(run.atStart, MANOEUVRE_SPEED, run.slow, prepared.manoeuvring);
  for (const s of run.sailed) if (s.possible) add(s.afloat, s.speed, s.steady, s.time);
  return gradient;
}

/** Mass, centre of gravity, frontal area and charge with this much (kg) in the tanks. */
export function afloatIn(
  prepared: Prepared,
  scenario: Scenario,
  storeMass: number,
  { tweak = AS_PLANNED, charge = scenario.fill }: { readonly tweak?: Tweak; readonly charge?: number } = {},
): Afloat {
  const { base, burns, forwardMoment } = prepared;
  const carried = burns ? storeMass : 0;
  const mass = base.mass + carried;
  const moment = base.momentX + carried * base.storeAt.x + (scenario.forward ? forwardMoment : 0);
  return { mass: mass + tweak.extraMass, lcg: moment / mass, airArea: base.airArea, charge };
}

/** About half the time that a stretch takes, s; only what changes by the hour depends on it. */
function halfOf({ around, displacementSpeed }: Prepared, { distance, speed, limit = Infinity }: Stretch): number {
  if (!around.varies) return 0;
  return distance / (2 * Math.min(typeof speed === 'number' ? speed : displacementSpeed, limit));
}

/** Wind, waves and tow of a stretch, `at` s after departure. */
export function weatherOn(stretch: Stretch, scenario: Scenario, at: number): Weather {
  const { tow } = scenario;
  const towing = tow && (scenario.oneWay || stretch.part === 'home');
  return {
    headwind: windOn(stretch, scenario, at),
    waveHeight: wavesOn(stretch, scenario, at),
    ...(towing && { tow }),
  };
}

/** Significant height of the waves on a stretch, m. */
function wavesOn({ leg }: Stretch, { waves, waveHeight, departs }: Scenario, at: number): number {
  return waves ? waves(leg, departs + at).height : waveHeight;
}

/** Wind from ahead along a way, m/s; where a forecast tells none, what the scenario takes for that. */
export function windOn(way: Pick<Way, 'part' | 'trackDeg'>, scenario: Scenario, at: number): number {
  const home = scenario.oneWay || way.part === 'home';
  if (scenario.headwindHome !== undefined && home) return scenario.headwindHome;
  const { wind, eased, departs, untold } = scenario;
  if (!wind) return 0;
  const now = windThen(wind, departs + at);
  if (!now) return untold.headwind;
  const ahead = headwind(now, way.trackDeg);
  const before = eased && windThen(eased, departs + at);
  return before ? Math.max(ahead, headwind(before, way.trackDeg)) : ahead;
}

/** The stream on a way, undefined for slack water; where streams by tide tell none, what the scenario takes against it. */
export function streamOn(way: Way, scenario: Scenario, at: number): Stream | undefined {
  const against = (way.trackDeg + 180) % 360;
  if (scenario.foulHome !== undefined && (scenario.oneWay || way.part === 'home')) {
    return { setDeg: against, rate: scenario.foulHome };
  }
  const { stream, departs, untold } = scenario;
  if (typeof stream !== 'function') return stream;
  const found = stream(way, departs + at);
  return found.known ? found.stream : { setDeg: against, rate: untold.foul };
}

/** Planned speed after zone limit, sea and the scenario's way home. */
export function wantedSpeed(
  prepared: Prepared,
  boat: Boat,
  afloat: Afloat,
  weather: Weather,
  stretch: Stretch,
  stream: Stream | undefined,
  scenario: Scenario,
): { planned: number; wanted: number } {
  let speed: number;
  if (typeof stretch.speed === 'number') {
    speed = stretch.speed;
  } else {
    const overGround = (through: number): number => {
      const triangle = stream ? courseToSteer(stretch.trackDeg, through, stream) : undefined;
      if (!triangle) return through;
      return triangle.possible ? triangle.speedOverGround : 0;
    };
    speed =
      bestSpeed(boat, afloat, weather, overGround, stretch.speed === 'best-planing') ??
      // Nothing qualifies: the demand is computed at planing speed and the judge finds it not held.
      (stretch.speed === 'best-planing' ? speedAtFroude(boat, afloat, 2.5) : prepared.displacementSpeed);
  }
  if (scenario.oneWay || stretch.part === 'home') {
    if (scenario.homeSpeed !== undefined && speed > scenario.homeSpeed) speed = scenario.homeSpeed;
    if (scenario.homeCap !== undefined) speed = Math.min(speed, scenario.homeCap);
  }
  const limited = stretch.limit !== undefined ? Math.min(speed, stretch.limit) : speed;
  if (scenario.unslowed) return { planned: limited, wanted: limited };
  return { planned: limited, wanted: inWaves(prepared, boat, afloat, limited, weather.waveHeight) };
}

/** Planing speed kept in this sea; too little of it left to plane on is displacement speed. */
function inWaves(prepared: Prepared, boat: Boat, afloat: Afloat, speed: number, waveHeight: number): number {
  const planing = speedAtFroude(boat, afloat, PLANING_FROUDE);
  if (waveHeight <= 0 || speed < planing) return speed;
  const kept = speed * (planingSpeedKept(waveHeight, prepared.trip.craft.hull.length) ?? 0);
  return kept >= planing ? kept : prepared.displacementSpeed;
}

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
  const headwind = strongestAhead(prepared, scenario);
  return humpOf(boat, afloat, { headwind, waveHeight: scenario.waveHeight }).margin >= CLEARLY;
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

interface Yielded {
  readonly speed: number;
  /** Where it was worked out on the way. */
  readonly now?: Steady;
}

/**
 * The wanted speed (m/s), or where the hump or the drive forbids it the highest that is held and reached from rest:
 * what lies beyond a speed that is not held cannot be reached.
 */
function yieldTo(boat: Boat, afloat: Afloat, weather: Weather, wanted: number, clear: boolean): Yielded {
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
