import { lognormalBand } from '../curve/curve.ts';
import { logSpread, SPREADS, varianceOf } from '../curve/factors.ts';
import { marginOf } from '../curve/hump.ts';
import type { Band, Regime } from '../curve/shapes.ts';
import { lcgSlope, type Steady, steady, writeGradient } from '../curve/steady.ts';
import { regime } from '../hull/regime.ts';
import { heldProbability } from '../trip/held.ts';
import type { Loaded } from './loaded.ts';

/** A boat held at one speed in calm water: kg/s or W, kg/m or J/m, m. */
export interface AtSpeed {
  readonly speed: number;
  readonly regime: Regime;
  readonly held: boolean;
  /** That the drive of such a boat holds it, 0 to 1. */
  readonly chance: number;
  readonly flow: Band;
  readonly perMetre: Band;
  /** On all that is usable, and with a third of it kept. */
  readonly range: Band;
  readonly rangeKept: Band;
  readonly steady: Steady;
}

const KEPT = 2 / 3;

/** Flow, consumption and range at one speed through calm water, m/s above 0, with the mass at departure all the way. */
export function atSpeed({ boat, afloat, usable }: Loaded, speed: number): AtSpeed {
  const now = steady(boat, afloat, speed);
  const gradient = new Float64Array(SPREADS);
  writeGradient(boat, now, lcgSlope(boat, afloat, speed, now.hull), gradient);
  const spread = logSpread(Math.sqrt(varianceOf(gradient, boat.factors.covariance)) / now.flow);
  const flow = lognormalBand(now.flow, spread);
  const per = (side: keyof Band) => flow[side] / speed;
  const range = (share: number): Band => ({
    low: (share * usable) / per('high'),
    median: (share * usable) / per('median'),
    high: (share * usable) / per('low'),
  });
  return {
    speed,
    regime: regime(now.hull.froudeVolume),
    held: marginOf(boat, afloat, now.drive) >= 1,
    chance: heldProbability(boat, { afloat, speed, steady: now }),
    flow,
    perMetre: { low: per('low'), median: per('median'), high: per('high') },
    range: range(1),
    rangeKept: range(KEPT),
    steady: now,
  };
}
