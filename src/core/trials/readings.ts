import { type Afloat, type Boat, boatOf } from '../curve/boat.ts';
import { TRIED_SPREAD } from '../curve/form-spread.ts';
import { marginOf } from '../curve/hump.ts';
import { steady, type Weather } from '../curve/steady.ts';
import { storeFlow } from '../drive/battery.ts';
import { idleFlow } from '../drive/demand.ts';
import { fuelMass } from '../drive/tank.ts';
import { balance } from '../load/balance.ts';
import type { Load } from '../load/shapes.ts';
import type { Refill, Run, Setup, Trials } from './shapes.ts';
import { stillWater } from './still-water.ts';

/** One figure read, in logarithm, and how far it may be from the model by chance. */
export interface Reading {
  readonly kind: 'consumed' | 'rpm' | 'power';
  readonly measured: number;
  readonly deviation: number;
}

/** A run or refill made ready for the fit. */
export interface Read {
  readonly id: string;
  readonly kind: 'run' | 'refill';
  readonly day: string | undefined;
  readonly setup: Setup;
  readonly afloat: Afloat;
  readonly speed: number;
  readonly speedDeviation: number;
  readonly leftOut: boolean;
  readonly readings: readonly Reading[];
  /** Logarithms of what the model of a boat says, one for each reading. */
  predict(boat: Boat): number[];
}

/** Relative standard deviations: of a flow meter; of an amount over a time; of volts and amperes; of a tachometer. */
const METER = 0.05;
const AMOUNT = 0.06;
const ELECTRIC = 0.03;
const TACHOMETER = 0.01;
/** Filled to the same mark again, and a day's speeds over ground for those through the water (common practice, no source). */
const REFILL = 0.1;
const DAY_OUT = 0.1;
/** A charger's share that arrives in the battery, and its spread (common practice, no source). */
const CHARGER = 0.88;
const CHARGER_SPREAD = 0.04;
/** What the form of the model leaves of any one run: consumption and resistance, and revs. */
const FORM = TRIED_SPREAD;
const FORM_REVS = 0.02;
/** Of tanks whose level nobody noted. */
const UNKNOWN_FILL = 0.5;

/** Logs and their deviations of a run; a run without readings is kept, with none. */
export function readRun(trials: Trials, run: Run): Read {
  const setup = setupOf(trials, run.setup);
  const afloat = afloatOf(trials, setup, run.load);
  const { speed, deviation } = stillWater(run.passes, run.stream);
  const winds = headwinds(run);
  const at = (boat: Boat, v: number) => meanAt(boat, afloat, v, winds, run.waveHeight ?? 0);
  const plain = plainBoat(trials, setup);
  const [low, high] = [at(plain, Math.max(speed - deviation, 0.05)), at(plain, speed + deviation)];
  const readings: Reading[] = [];
  const logs: ((found: Mean) => number)[] = [];
  const add = (kind: Reading['kind'], measured: number, error: number, log: (found: Mean) => number): void => {
    const bySpeed = (log(high) - log(low)) / 2;
    readings.push({ kind, measured, deviation: Math.hypot(error, bySpeed) });
    logs.push(log);
  };
  const { consumed, rpm } = run;
  if (consumed) {
    const rate = consumed.kind === 'rate' ? consumed.rate : consumed.amount / consumed.seconds;
    const usual = setup.drive.kind === 'electric' ? ELECTRIC : consumed.kind === 'rate' ? METER : AMOUNT;
    add('consumed', Math.log(rate), Math.hypot(run.consumedError ?? usual, FORM), (found) => Math.log(found.flow));
  }
  if (rpm !== undefined) add('rpm', Math.log(rpm), Math.hypot(TACHOMETER, FORM_REVS), (found) => Math.log(found.rpm));
  if (run.fullThrottle) add('power', 0, FORM, (found) => -Math.log(found.margin));
  return {
    id: run.id,
    kind: 'run',
    day: run.day,
    setup,
    afloat,
    speed,
    speedDeviation: deviation,
    leftOut: run.leftOut ?? false,
    readings,
    predict: (boat) => {
      const found = at(boat, speed);
      return logs.map((log) => log(found));
    },
  };
}

export function readRefill(trials: Trials, refill: Refill): Read {
  const setup = setupOf(trials, refill.setup);
  const afloat = afloatOf(trials, setup, refill.load);
  const socket = refill.readAt === 'socket';
  const error = Math.hypot(refill.consumedError ?? REFILL, DAY_OUT, FORM, socket ? CHARGER_SPREAD : 0);
  const seconds = refill.spent.reduce((sum, part) => sum + part.seconds, 0);
  const under = refill.spent.filter((part) => part.speed >= UNDER_WAY);
  const moving = under.reduce((sum, part) => sum + part.seconds, 0);
  const weather: Weather = { headwind: 0, waveHeight: refill.waveHeight ?? 0 };
  const amount = refill.amount * (socket ? CHARGER : 1);
  return {
    id: refill.id,
    kind: 'refill',
    day: refill.day,
    setup,
    afloat,
    speed: moving > 0 ? under.reduce((sum, part) => sum + part.speed * part.seconds, 0) / moving : 0,
    speedDeviation: 0.1,
    leftOut: refill.leftOut ?? false,
    readings: [{ kind: 'consumed', measured: Math.log(amount / seconds), deviation: error }],
    predict: (boat) => {
      let used = 0;
      for (const part of refill.spent) {
        if (part.speed >= UNDER_WAY) used += steady(boat, afloat, part.speed, weather).flow * part.seconds;
        else used += standing(boat) * part.seconds;
      }
      return [Math.log(used / seconds)];
    },
  };
}

/** Slower than this a boat lies, its engine in neutral, m/s. */
const UNDER_WAY = 0.3;

function standing(boat: Boat): number {
  const idle = idleFlow(boat.model);
  return boat.bank ? storeFlow(idle, boat.bank) : idle;
}

/** Mass, balance and windage as loaded. */
export function afloatOf({ hull }: Pick<Trials, 'hull'>, { drive, store }: Setup, load: Load): Afloat {
  const fuel = store.kind === 'tank' ? fuelMass(store.tanks, load.fill ?? UNKNOWN_FILL) : 0;
  const { allUpMass, lcg, airArea } = balance({ hull, drive, store }, load, fuel);
  return { mass: allUpMass, lcg, airArea, charge: load.fill ?? 1 };
}

/** The setup of this id; the first where nobody listed it. */
export function setupOf({ setups }: Trials, id: string): Setup {
  return setups.find((setup) => setup.id === id) ?? setups[0]!;
}

function plainBoat({ hull, water }: Trials, { drive, store }: Setup): Boat {
  return boatOf({ hull, drive, store }, water, 18);
}

interface Mean {
  readonly flow: number;
  readonly rpm: number;
  readonly margin: number;
}

/** Mean over the ways; what the meter reads, before a battery's loss with rate. */
function meanAt(boat: Boat, afloat: Afloat, speed: number, winds: readonly number[], waveHeight: number): Mean {
  let flow = 0;
  let rpm = 0;
  let margin = 0;
  for (const headwind of winds) {
    const { drive } = steady(boat, afloat, speed, { headwind, waveHeight });
    flow += drive.flow / winds.length;
    rpm += drive.rpm / winds.length;
    margin += marginOf(boat, afloat, drive) / winds.length;
  }
  return { flow, rpm, margin };
}

/** Wind from ahead on each way that was sailed, m/s. */
function headwinds({ passes, wind }: Run): number[] {
  const ahead = wind ? wind.speed * Math.cos((wind.offBowDeg * Math.PI) / 180) : 0;
  const ways = new Set(passes.map((pass) => pass.way));
  return [...ways].map((way) => (way === 'out' ? ahead : -ahead));
}
