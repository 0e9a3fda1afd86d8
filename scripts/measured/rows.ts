import type { Craft, Drive } from '../../src/core/craft/shapes.ts';
import type { Afloat, Boat } from '../../src/core/curve/boat.ts';
import { curve, lognormalBand } from '../../src/core/curve/curve.ts';
import { logSpread, priorDeviations } from '../../src/core/curve/factors.ts';
import { PLANING_FROUDE } from '../../src/core/curve/hump.ts';
import { CALM, lcgSlope, resistanceDeviation, steady } from '../../src/core/curve/steady.ts';
import { fuelFlow, fuelLaw } from '../../src/core/drive/petrol.ts';
import { airDrag } from '../../src/core/hull/air-drag.ts';
import { froudeVolume } from '../../src/core/hull/froude.ts';
import { legDrag } from '../../src/core/hull/leg-drag.ts';
import { hullResistance } from '../../src/core/hull/resistance.ts';
import { PETROL_DENSITY, SEA_WATER } from '../../src/core/units/constants.ts';
import { HORSEPOWER, HOUR, KMH, KNOT } from '../../src/core/units/convert.ts';
import {
  afloatOf,
  type BoatRecord,
  type Check,
  checkOf,
  craftOf,
  ELECTRIC_BOATS,
  PETROL_BOATS,
  recordOf,
  type Setting,
  unmeasured,
} from './records.ts';

/** What a figure is about; the table sums up by it. */
export type Kind =
  | 'consumption slow'
  | 'consumption planing'
  | 'consumption flat out'
  | 'revs'
  | 'top speed'
  | 'top speed ratio'
  | 'engine flat out'
  | 'resistance slow'
  | 'power drawn slow';

/** One figure: measured, and as the uncalibrated method says it with its 10th to 90th percentile. */
export interface MeasuredRow {
  /** Id in measured-checks.json, and where it was published. */
  readonly check: string;
  readonly source: string;
  readonly kind: Kind;
  readonly what: string;
  readonly unit: string;
  readonly measured: number;
  readonly predicted: number;
  /** Absent for ratios, whose band nobody worked out. */
  readonly low?: number;
  readonly high?: number;
  /** Predicted over measured, less one. */
  readonly error: number;
  /** The measured figure lies in the band. */
  readonly inside?: boolean;
  /** What the check asks of the error (absolute for ratios); absent where it asks nothing. */
  readonly tolerance?: number;
  readonly met?: boolean;
}

/** All rows, in the order of the checks. */
export function measuredRows(): readonly MeasuredRow[] {
  return [
    ...PETROL_BOATS.flatMap(petrolRows),
    ...powerRows(),
    ...fullThrottleRows(),
    ...needRows(),
    ...ELECTRIC_BOATS.flatMap(inputRows),
    ...towRows(),
  ];
}

interface Figure {
  readonly predicted: number;
  readonly low?: number;
  readonly high?: number;
}

/** A figure with the band the priors of all factors leave it, by central differences. */
function spreadOf(craft: Craft, figure: (boat: Boat) => number): Figure {
  const predicted = figure(unmeasured(craft));
  let variance = 0;
  priorDeviations(craft.drive).forEach((deviation, factor) => {
    const step = 0.1 * deviation;
    const slope = (figure(unmeasured(craft, factor, step)) - figure(unmeasured(craft, factor, -step))) / (2 * step);
    variance += (slope * deviation) ** 2;
  });
  const { low, high } = lognormalBand(predicted, logSpread(Math.sqrt(variance) / predicted));
  return { predicted, low, high };
}

interface Named {
  readonly kind: Kind;
  readonly what: string;
  readonly unit: string;
  readonly measured: number;
  readonly tolerance?: number;
  /** Tolerances of ratios are absolute. */
  readonly absolute?: boolean;
}

function row(check: Check, { kind, what, unit, measured, tolerance, absolute }: Named, figure: Figure): MeasuredRow {
  const { predicted, low, high } = figure;
  const error = predicted / measured - 1;
  const off = Math.abs(absolute ? predicted - measured : error);
  return {
    check: check.id,
    source: check.source,
    kind,
    what,
    unit,
    measured: rounded(measured),
    predicted: rounded(predicted),
    ...(low !== undefined && high !== undefined && { low: rounded(low), high: rounded(high) }),
    error: Math.round(error * 1000) / 1000,
    ...(low !== undefined && high !== undefined && { inside: measured >= low && measured <= high }),
    ...(tolerance !== undefined && { tolerance, met: off <= tolerance }),
  };
}

/** Three figures are more than such measurements hold. */
function rounded(value: number): number {
  return Number(value.toPrecision(3));
}

const litres = (flow: number): number => (flow / PETROL_DENSITY) * HOUR;

function topSpeed(craft: Craft, afloat: Afloat): Figure {
  const { topSpeed: top } = curve(unmeasured(craft), afloat, 1);
  return { predicted: top.median, low: top.low, high: top.high };
}

function scaled({ predicted, low = predicted, high = predicted }: Figure, by: number): Figure {
  return { predicted: predicted * by, low: low * by, high: high * by };
}

/** Revs and flow at each measured speed; full-throttle speed where the last point is wide open. */
function petrolRows(id: string): MeasuredRow[] {
  const check = checkOf(id);
  const { hull, drive, settings } = recordOf(id);
  const craft = craftOf(hull, drive!);
  const afloat = afloatOf(settings.trial!, hull);
  const points = check.inputs.points as { v_kmh: number; rpm: number; L_per_h?: number }[];
  const { model_speed_rel: speedTolerance, model_fuel_rel: tolerance } = check.tolerance;
  const last = points.at(-1)!;
  const planes = PLANING_FROUDE / froudeVolume(1, afloat.mass, SEA_WATER.density);
  const rows = points.flatMap(({ v_kmh, rpm, L_per_h }) => {
    const kind: Kind =
      v_kmh === last.v_kmh ? 'consumption flat out' : v_kmh * KMH > planes ? 'consumption planing' : 'consumption slow';
    const now = (boat: Boat) => steady(boat, afloat, v_kmh * KMH);
    const revs = row(
      check,
      { kind: 'revs', what: `revs at ${v_kmh} km/h`, unit: 'rpm', measured: rpm },
      spreadOf(craft, (boat) => now(boat).drive.rpm),
    );
    if (L_per_h === undefined) return [revs];
    const flow = spreadOf(craft, (boat) => litres(now(boat).flow));
    return [
      revs,
      row(check, { kind, what: `consumption at ${v_kmh} km/h`, unit: 'L/h', measured: L_per_h, tolerance }, flow),
    ];
  });
  const top = row(
    check,
    {
      kind: 'top speed',
      what: 'speed at full throttle',
      unit: 'km/h',
      measured: last.v_kmh,
      tolerance: speedTolerance,
    },
    scaled(topSpeed(craft, afloat), 1 / KMH),
  );
  return [...rows, top];
}

/** Top speeds of one boat with one and two aboard and 6 or 12 hp, as ratios. */
function powerRows(): MeasuredRow[] {
  const check = checkOf('P-6-12hp');
  const { hull, drives, settings } = recordOf('P-6-12hp');
  const top = (hp: 6 | 12, aboard: 1 | 2): number =>
    reachedSpeed(craftOf(hull, drives![hp]!), afloatOf(settings[`${hp} hp, ${aboard} aboard`]!, hull));
  const { speed_ratio_12_to_6hp: power, speed_ratio_solo_to_two_up: solo } = check.expected;
  const tolerance = check.tolerance.ratio_abs as number;
  const ratio = (what: string, measured: number, predicted: number): MeasuredRow =>
    row(check, { kind: 'top speed ratio', what, unit: 'ratio', measured, tolerance, absolute: true }, { predicted });
  return [
    ratio('top speed, 12 hp over 6 hp, two aboard', power.two_up, top(12, 2) / top(6, 2)),
    ratio('top speed, 12 hp over 6 hp, alone', power.solo, top(12, 1) / top(6, 1)),
    ratio('top speed, alone over two aboard, 6 hp', solo.at_6hp, top(6, 1) / top(6, 2)),
    ratio('top speed, alone over two aboard, 12 hp', solo.at_12hp, top(12, 1) / top(12, 2)),
  ];
}

/** The speed the boat comes to from rest. */
function reachedSpeed(craft: Craft, afloat: Afloat): number {
  const drawn = curve(unmeasured(craft), afloat, 1);
  return drawn.stuckSpeed ?? drawn.topSpeed.median;
}

/** Consumption at rated power and revs. */
function fullThrottleRows(): MeasuredRow[] {
  const check = checkOf('P-wot-fuel');
  const cases = check.inputs.cases as { hp: number; stroke: number }[];
  return cases.map(({ hp, stroke }, i) => {
    const ratedPower = hp * HORSEPOWER;
    const cycle = stroke === 2 ? '2s-carb' : '4s-carb';
    const drive = { ...(recordOf('P-3.75A').drive as Extract<Drive, { kind: 'petrol' }>), ratedPower, cycle } as const;
    const predicted = litres(fuelFlow(fuelLaw(drive), 1, 1));
    const { low, high } = lognormalBand(predicted, priorDeviations(drive)[5]!);
    const named = {
      kind: 'engine flat out' as const,
      what: `full throttle, ${hp} hp ${stroke}-stroke`,
      unit: 'L/h',
      measured: check.expected.L_per_h[i],
    };
    return row(check, { ...named, tolerance: check.tolerance.rel }, { predicted, low, high });
  });
}

/** Resistance of a hull with leg and air, N, and the band of its factors. */
function resistanceOf({ hull, legDragArea = 0 }: BoatRecord, setting: Setting, speed: number): Figure {
  const afloat = afloatOf(setting, hull);
  const still = hullResistance(hull, { ...setting, water: SEA_WATER }, speed);
  const rest =
    airDrag(afloat.airArea, hull.airDragCoefficient, { speed, headwind: 0 }) +
    legDrag(legDragArea, speed, SEA_WATER.density);
  const predicted = still.total + rest;
  const boat = unmeasured(craftOf(hull, recordOf('E-pod').drive!));
  const { low, high } = lognormalBand(
    predicted,
    resistanceDeviation(boat, steady(boat, afloat, speed), lcgSlope(boat, afloat, speed, still)) / predicted,
  );
  return { predicted, low, high };
}

/** Power to tow a small inflatable, its crew unknown. */
function needRows(): MeasuredRow[] {
  const check = checkOf('E-hull-need');
  const record = recordOf('E-hull-need');
  const speed = check.inputs.v_kn * KNOT;
  return Object.entries(record.settings).map(([name, setting]) => {
    const what = `effective power at ${check.inputs.v_kn} kn, ${name}`;
    const named = {
      kind: 'resistance slow' as const,
      what,
      unit: 'W',
      measured: check.expected.effective_power_W,
      tolerance: check.tolerance.rel,
    };
    return row(check, named, scaled(resistanceOf(record, setting, speed), speed));
  });
}

/** What an electric motor draws at each measured speed. */
function inputRows(id: string): MeasuredRow[] {
  const check = checkOf(id);
  const { hull, drive, settings } = recordOf(id);
  const craft = craftOf(hull, drive!);
  const afloat = afloatOf(settings.trial!, hull);
  const points = (check.inputs.points ?? check.inputs.calibration) as { P_in_W: number; v_kn: number }[];
  return points.map(({ P_in_W, v_kn }) => {
    const input = spreadOf(craft, (boat) => steady(boat, afloat, v_kn * KNOT, CALM).drive.flow);
    return row(check, { kind: 'power drawn slow', what: `power in at ${v_kn} kn`, unit: 'W', measured: P_in_W }, input);
  });
}

function towRows(): MeasuredRow[] {
  const check = checkOf('R-tow-7m');
  const record = recordOf('R-tow-7m');
  const { v_kn } = check.inputs;
  const named = {
    kind: 'resistance slow' as const,
    what: `resistance at ${v_kn} kn`,
    unit: 'N',
    measured: check.expected.resistance_N,
  };
  const figure = resistanceOf(record, record.settings.trial!, v_kn * KNOT);
  return [row(check, { ...named, tolerance: check.tolerance.rel }, figure)];
}
