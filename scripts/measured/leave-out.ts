import type { Craft } from '../../src/core/craft/shapes.ts';
import { boatOf } from '../../src/core/curve/boat.ts';
import { lognormalBand } from '../../src/core/curve/curve.ts';
import { logSpread, SPREADS, varianceOf } from '../../src/core/curve/factors.ts';
import type { Band } from '../../src/core/curve/shapes.ts';
import { lcgSlope, steady, writeGradient } from '../../src/core/curve/steady.ts';
import { calibrated } from '../../src/core/trials/calibrated.ts';
import { fitTrials } from '../../src/core/trials/fit.ts';
import { afloatOf } from '../../src/core/trials/readings.ts';
import type { Run, Trials } from '../../src/core/trials/shapes.ts';
import { HELM_ALONE, loadedAsMeasured, type MeasuredPoint, pointsOf } from './loaded.ts';
import { ELECTRIC_BOATS, PETROL_BOATS, recordOf } from './records.ts';

/** Consumption at one measured speed, predicted from the other runs of the same boat alone. */
export interface LeftOut {
  readonly check: string;
  /** Which runs the boat was calibrated with: all but this one, or those of the other half of its speeds. */
  readonly from: 'all others' | 'slower half' | 'faster half';
  readonly runs: number;
  /** m/s, and kg/s or W. */
  readonly speed: number;
  readonly measured: number;
  readonly predicted: number;
  readonly low: number;
  readonly high: number;
  /** Predicted over measured, less one; and the same of the boat as nobody measured it. */
  readonly error: number;
  readonly unmeasuredError: number;
  readonly inside: boolean;
  readonly unmeasuredInside: boolean;
}

/** How predictions of one sort fare: typical error is the root mean square of logarithms. */
export interface LeftOutSummary {
  readonly check: string;
  readonly from: LeftOut['from'];
  readonly figures: number;
  readonly typical: number;
  readonly unmeasured: number;
  readonly inside: number;
  readonly unmeasuredInside: number;
}

/** By boat and by what it was calibrated with, and all boats together under the name of none. */
export function leftOutSummary(all: readonly LeftOut[]): readonly LeftOutSummary[] {
  const sorts = ['all others', 'slower half', 'faster half'] as const;
  const boats = [...new Set(all.map(({ check }) => check))];
  return sorts.flatMap((from) => {
    const of = all.filter((one) => one.from === from);
    const each = boats.map((check) => ({ check, of: of.filter((one) => one.check === check) }));
    return [...each, { check: '', of }]
      .filter((one) => one.of.length > 0)
      .map((one) => ({
        check: one.check,
        from,
        figures: one.of.length,
        typical: typical(one.of.map(({ error }) => error)),
        unmeasured: typical(one.of.map(({ unmeasuredError }) => unmeasuredError)),
        inside: one.of.filter(({ inside }) => inside).length,
        unmeasuredInside: one.of.filter(({ unmeasuredInside }) => unmeasuredInside).length,
      }));
  });
}

function typical(errors: readonly number[]): number {
  return share(Math.sqrt(errors.reduce((sum, error) => sum + Math.log1p(error) ** 2, 0) / errors.length));
}

/** Every measured consumption left out in turn, and halves of the sets that are long enough. */
export function leftOut(): readonly LeftOut[] {
  return [...PETROL_BOATS, ...ELECTRIC_BOATS].flatMap((check) => {
    const points = pointsOf(check);
    const consumed = points.filter(({ flow }) => flow !== undefined);
    const single = consumed.map((point) =>
      predictionOf(
        point,
        'all others',
        points.filter((other) => other !== point),
      ),
    );
    if (consumed.length < 6) return single;
    const middle = Math.floor(consumed.length / 2);
    const [slow, fast] = [consumed.slice(0, middle), consumed.slice(middle)];
    return [
      ...single,
      ...fast.map((point) => predictionOf(point, 'slower half', slow)),
      ...slow.map((point) => predictionOf(point, 'faster half', fast)),
    ];
  });
}

function predictionOf(point: MeasuredPoint, from: LeftOut['from'], known: readonly MeasuredPoint[]): LeftOut {
  const craft = loadedAsMeasured(recordOf(point.check));
  const trials = trialsOf(craft, known);
  const told = flowOf(calibrated(craft, trials, fitTrials(trials)), trials, point.speed);
  const untold = flowOf(craft, trials, point.speed);
  const measured = point.flow!;
  const holds = ({ low, high }: Band) => measured >= low && measured <= high;
  return {
    check: point.check,
    from,
    runs: known.length,
    speed: rounded(point.speed),
    measured: rounded(measured),
    predicted: rounded(told.median),
    low: rounded(told.low),
    high: rounded(told.high),
    error: share(told.median / measured - 1),
    unmeasuredError: share(untold.median / measured - 1),
    inside: holds(told),
    unmeasuredInside: holds(untold),
  };
}

/** What was read of a boat as trial runs; its passes show no stream. */
export function trialsOf({ hull, drive, store }: Craft, points: readonly MeasuredPoint[]): Trials {
  const runs = points.map(({ speed, flow, rpm, fullThrottle }, i): Run => {
    const passes = (['out', 'back'] as const).map((way) => ({ over: speed, way }));
    return {
      id: `${i}`,
      setup: 'usual',
      load: HELM_ALONE,
      passes,
      ...(rpm !== undefined && { rpm }),
      ...(flow !== undefined && { consumed: { kind: 'rate' as const, rate: flow } }),
      ...(fullThrottle && { fullThrottle }),
    };
  });
  return { hull, water: 'sea', setups: [{ id: 'usual', drive, store }], runs, refills: [] };
}

/** Consumption at a speed, m/s, with its band. */
function flowOf(craft: Craft, trials: Trials, speed: number): Band {
  const boat = boatOf(craft, 'sea', 18);
  const afloat = afloatOf(trials, trials.setups[0]!, HELM_ALONE);
  const now = steady(boat, afloat, speed);
  const gradient = new Float64Array(SPREADS);
  writeGradient(boat, now, lcgSlope(boat, afloat, speed, now.hull), gradient);
  // What the meter reads; a battery loses a little more inside.
  const flow = now.drive.flow;
  return lognormalBand(flow, logSpread(Math.sqrt(varianceOf(gradient, boat.factors.covariance)) / now.flow));
}

function rounded(value: number): number {
  return Number(value.toPrecision(3));
}

function share(value: number): number {
  return Math.round(value * 1000) / 1000;
}
