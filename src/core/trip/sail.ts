import type { Afloat } from '../curve/boat.ts';
import { type Steady, steady, type Weather } from '../curve/steady.ts';
import { FULL_FILL } from '../drive/tank.ts';
import { courseToSteer } from '../route/current-triangle.ts';
import type { Stretch } from '../route/split-legs.ts';
import type { Stream } from '../water/shapes.ts';
import type { StreamFound } from '../water/streams.ts';
import { AS_PLANNED, afloatIn } from './afloat-in.ts';
import { Level } from './level.ts';
import { streamFoundOn, streamMet, weatherOn } from './met-on-way.ts';
import type { Prepared } from './prepare.ts';
import type { Scenario } from './scenario.ts';
import { wantedSpeed } from './wanted-speed.ts';
import { yieldedSpeed } from './yielded-speed.ts';

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
  /** What streams by tide told of it; undefined where the stream is told otherwise. */
  readonly told: StreamFound | undefined;
}

export interface Run {
  readonly scenario: Scenario;
  readonly sailed: readonly Sailed[];
  readonly possible: boolean;
  /** Waves slow the boat on some stretch, or would if they were let. */
  readonly slows: boolean;
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
  let slows = false;
  let charge = scenario.fill;
  // What a full bank holds at this temperature, J; the charge falls with what is drawn.
  const held = boat.bank?.parts.reduce((sum, part) => sum + part.energy, 0) ?? Infinity;

  const atStart = afloatIn(prepared, scenario, store, { tweak, charge });
  const slow = prepared.remembered.slow(boat, atStart);
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
      slows = true;
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
    const told = streamFoundOn(stretch, scenario, at);
    const stream = streamMet(stretch, scenario, told);
    const { planned, wanted, inWaves } = wantedSpeed(prepared, boat, afloat, weather, stretch, stream, scenario);
    slows ||= inWaves < planned;
    const known = options.yielding ? yieldedSpeed(boat, afloat, weather, wanted, options.clear === true) : undefined;
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
      told,
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
    slows,
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

/** About half the time that a stretch takes, s; only what changes by the hour depends on it. */
function halfOf({ around, displacementSpeed }: Prepared, { distance, speed, limit = Infinity }: Stretch): number {
  if (!around.varies) return 0;
  return distance / (2 * Math.min(typeof speed === 'number' ? speed : displacementSpeed, limit));
}
