import type { Calibration, Craft } from '../../core/craft/shapes.ts';
import { calibrated, sameHull } from '../../core/trials/calibrated.ts';
import { fitTrials } from '../../core/trials/fit.ts';
import type { Fit } from '../../core/trials/fit-shapes.ts';
import type { Trials } from '../../core/trials/shapes.ts';
import type { Trip } from '../../core/trip/shapes.ts';

/** What the evidence that a trip carries says of its boat. */
export interface Measured {
  readonly trials: Trials;
  readonly fit: Fit;
  /** Undefined: another hull than the one measured, or no run that counts. */
  readonly calibration: Calibration | undefined;
  readonly otherHull: boolean;
}

const fits = new WeakMap<Trials, Fit>();
/** The same boat stays the same object, so that its curve is not drawn again. */
const crafts = new WeakMap<Craft, { readonly trials: Trials; readonly day: string; readonly craft: Craft }>();

/** The trip with its boat calibrated as of a day (ISO date); a fit is made once for the same evidence. */
export function measuredTrip(
  trip: Trip,
  today: string,
): { readonly trip: Trip; readonly measured: Measured | undefined } {
  const { trials } = trip;
  if (!trials) return { trip, measured: undefined };
  const fit = fitOf(trials);
  const craft = craftOn(trip.craft, trials, trip.conditions.departure?.slice(0, 10) ?? today);
  const otherHull = !sameHull(craft, trials);
  return { trip: { ...trip, craft }, measured: { trials, fit, calibration: craft.calibration, otherHull } };
}

function fitOf(trials: Trials): Fit {
  let fit = fits.get(trials);
  if (!fit) {
    fit = fitTrials(trials);
    fits.set(trials, fit);
  }
  return fit;
}

function craftOn(entered: Craft, trials: Trials, day: string): Craft {
  const before = crafts.get(entered);
  if (before?.trials === trials && before.day === day) return before.craft;
  const craft = calibrated(entered, trials, fitOf(trials), day);
  crafts.set(entered, { trials, day, craft });
  return craft;
}
