import type { Craft } from '../../core/craft/shapes.ts';
import { boatOf } from '../../core/curve/boat.ts';
import { curve } from '../../core/curve/curve.ts';
import type { Band, Curve, CurvePoint } from '../../core/curve/shapes.ts';
import type { Load } from '../../core/load/shapes.ts';
import { calibrationFor } from '../../core/trials/calibrated.ts';
import type { Fit } from '../../core/trials/fit-shapes.ts';
import type { Trials } from '../../core/trials/shapes.ts';
import { balanceOf } from './texts.ts';
import { craftOf, setupOf } from './work.ts';

/** What the runs are shown for: one setup, one load. */
export interface Shown {
  readonly setup: string;
  readonly load: Load;
}

export interface BeforeAfter {
  readonly before: Curve;
  /** Absent: no run counts. */
  readonly after: Curve | undefined;
}

/** Of the battery on a trial day, C (common practice, no source); it moves the flow little. */
const BATTERY_TEMPERATURE = 18;

/** Consumption curves without and with the runs, in flat water without wind, the bottom as on the trial days. */
export function beforeAndAfter(trials: Trials, fit: Fit | undefined, { setup, load }: Shown): BeforeAfter {
  const { allUpMass, lcg, airArea } = balanceOf(trials, setup, load);
  const plain: Craft = { ...craftOf(trials, setup), fouling: trials.fouling ?? 'clean' };
  const calibration = fit && calibrationFor(trials, fit, setupOf(trials, setup).drive);
  const at = (craft: Craft): Curve => {
    const boat = boatOf(craft, trials.water, BATTERY_TEMPERATURE);
    // Ranges are not shown, so what is usable does not matter.
    return curve(boat, { mass: allUpMass, lcg, airArea, charge: load.fill ?? 1 }, 0);
  };
  return { before: at(plain), after: calibration && at({ ...plain, calibration }) };
}

/** Half the width of a band over its median. */
export function halfWidth({ low, median, high }: Band): number {
  return median > 0 ? (high - low) / 2 / median : 0;
}

/** The point of a curve nearest to a speed. */
export function nearest({ points }: Curve, speed: number): CurvePoint {
  return points.reduce((a, b) => (Math.abs(b.speed - speed) < Math.abs(a.speed - speed) ? b : a));
}

/** Speeds that matter on passage: the easiest planing, and the easiest below the hump that was tried at all. */
export function tellingSpeeds({ before, after }: BeforeAfter, tried: Fit['tried']): readonly number[] {
  const now = after ?? before;
  const slow = Math.max(now.bestDisplacement.speed, Math.min(tried?.speed[0] ?? 0, now.humpSpeed));
  return [...(now.bestPlaning ? [now.bestPlaning.speed] : []), slow];
}
