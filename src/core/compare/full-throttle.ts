import type { Afloat, Boat } from '../curve/boat.ts';
import { SPREADS } from '../curve/factors.ts';
import { marginOf } from '../curve/hump.ts';
import type { Band } from '../curve/shapes.ts';
import { steady } from '../curve/steady.ts';
import { driveModel } from '../drive/demand.ts';
import { topHeld } from './variant.ts';

/** Where full throttle takes a boat from rest in calm water. */
export interface FullThrottle {
  /** m/s, with the rev limit. */
  readonly speed: number;
  /** Without it: what the engine would turn if nothing held it back. */
  readonly rpm: Band;
  /** The rev limit holds it. */
  readonly limited: boolean;
}

const Z90 = 1.2816;
/** Steps for the slopes: a tenth of the hull and hump factors, 5 cm, 3 % of pitch; revs follow nearly straight. */
const STEPS = [0.1, 0.1, 0.4, 0.05] as const;
const PITCH_STEP = 0.03;

/** Speed and revs at full throttle, with the band that the factors and the rating of the engine leave. */
export function fullThrottle(boat: Boat, afloat: Afloat): FullThrottle {
  const { speed, rpm } = revsOf(boat, afloat);
  const n = SPREADS;
  const slopes = new Float64Array(n);
  for (let i = 0; i < 4; i++) slopes[i] = (revsOf(nudged(boat, i, STEPS[i]!), afloat).rpm - rpm) / STEPS[i]!;
  const step = PITCH_STEP * boat.model.propeller.pitch;
  slopes[4] = (revsOf(pitched(boat, step), afloat).rpm - rpm) / step;
  let variance = 0;
  for (let i = 0; i < n; i++) {
    for (let j = 0; j < n; j++) variance += slopes[i]! * boat.factors.covariance[i * n + j]! * slopes[j]!;
  }
  const stronger = revsOf({ ...boat, model: { ...boat.model, fullPower: boat.model.fullPower * 1.05 } }, afloat).rpm;
  const rating = ((stronger - rpm) / 0.05) * boat.factors.power.deviation;
  const wide = Z90 * Math.hypot(Math.sqrt(Math.max(variance, 0)), rating);
  const limited = steady(boat, afloat, speed).drive.revShare > 0.999 * boat.model.revLimit;
  return { speed, rpm: { low: Math.max(rpm - wide, 0), median: rpm, high: rpm + wide }, limited };
}

/** The boat with another pitch, m more. */
export function pitched(boat: Boat, more: number): Boat {
  const { craft, water, factors } = boat;
  const pitchShift = factors.drive.pitchShift + more;
  const model = driveModel(craft.drive, {
    density: water.density,
    form: craft.hull.form,
    factors: { ...factors.drive, pitchShift },
    fullPower: factors.power.factor,
  });
  return { ...boat, model };
}

/** Speed at full throttle, m/s, and the revs the engine would turn there without a rev limit. */
export function revsOf(boat: Boat, afloat: Afloat): { speed: number; rpm: number } {
  const free = { ...boat, model: { ...boat.model, revLimit: Infinity } };
  const marginAt = (v: number) => marginOf(free, afloat, steady(free, afloat, v).drive);
  const turned = topHeld(marginAt);
  const { rpm, revShare } = steady(free, afloat, turned).drive;
  const limited = revShare > boat.model.revLimit;
  return { speed: limited ? topHeld((v) => marginOf(boat, afloat, steady(boat, afloat, v).drive)) : turned, rpm };
}

function nudged(boat: Boat, factor: number, by: number): Boat {
  const { hull } = boat.factors;
  const keys = ['kd', 'kp', 'kh', 'lcgShift'] as const;
  const key = keys[factor]!;
  return { ...boat, factors: { ...boat.factors, hull: { ...hull, [key]: hull[key] + by } } };
}
