import { drivePoint, idleFlow } from '../drive/demand.ts';
import { regime } from '../hull/regime.ts';
import type { Afloat, Boat } from './boat.ts';
import { logSpread, SPREADS, varianceOf } from './factors.ts';
import { batteryMargin, humpOf, marginOf } from './hump.ts';
import type { Band, BestSpeed, Curve, CurvePoint } from './shapes.ts';
import { CALM, lcgSlope, resistanceDeviation, steady, type Weather, writeGradient } from './steady.ts';

/** 90th percentile of the normal law in standard deviations. */
const Z90 = 1.2816;
const STEP = 0.25;
const FIRST = 0.5;
const LAST = 18;
/** Slower than this nobody travels; bounds the search for best speeds, m/s. */
const SLOWEST = 1;

/**
 * Steady speeds of a boat with its load and a headwind, from 0.5 m/s to just past what it can hold, every 0.25 m/s.
 * `usable` is the fuel (kg) or charge (J) that ranges are told for; none of it is kept as reserve here.
 */
export function curve(boat: Boat, afloat: Afloat, usable: number, weather: Weather = CALM): Curve {
  const points: CurvePoint[] = [];
  const reach: Reach[] = [];
  const gradient = new Float64Array(SPREADS);
  const rating = boat.factors.power.deviation;
  let beyond = 0;
  for (let i = 0; beyond < 4 && FIRST + i * STEP <= LAST; i++) {
    const speed = FIRST + i * STEP;
    const now = steady(boat, afloat, speed, weather);
    const slope = lcgSlope(boat, afloat, speed, now.hull);
    writeGradient(boat, now, slope, gradient);
    const spread = now.flow > 0 ? logSpread(Math.sqrt(varianceOf(gradient, boat.factors.covariance)) / now.flow) : 0;
    const flow = lognormalBand(now.flow, spread);
    points.push({
      speed,
      resistance: now.resistance,
      power: now.drive.power,
      rpm: now.drive.rpm,
      throttle: now.drive.throttle,
      flow,
      perMetre: { low: flow.low / speed, median: flow.median / speed, high: flow.high / speed },
      trimDeg: now.hull.trimDeg,
      slip: now.drive.slip,
      regime: regime(now.hull.froudeVolume),
      held: marginOf(boat, afloat, now.drive) >= 1,
    });
    const wide = Z90 * resistanceDeviation(boat, now, slope);
    reach.push({
      speed,
      froudeVolume: now.hull.froudeVolume,
      margin: marginOf(boat, afloat, now.drive),
      least: marginOf(boat, afloat, drivePoint(boat.model, now.resistance + wide, speed)) * (1 - Z90 * rating),
      most:
        marginOf(boat, afloat, drivePoint(boat.model, Math.max(now.resistance - wide, 0), speed)) * (1 + Z90 * rating),
      limit:
        batteryMargin(boat, afloat, now.drive) < Math.min(1 / now.drive.throttle, 99) ? 'battery' : now.drive.limit,
    });
    // A boat far beyond full throttle on the flat of its curve cannot come back.
    if (now.hull.froudeVolume > 2.6 && reach[i]!.most < 0.9) beyond++;
  }
  return assemble(boat, afloat, usable, weather, points, reach);
}

interface Reach {
  readonly speed: number;
  readonly froudeVolume: number;
  /** Available over demanded power, or rev limit over revs, the smaller: 1 or more holds this speed. */
  readonly margin: number;
  readonly least: number;
  readonly most: number;
  readonly limit: 'power' | 'revs' | 'battery';
}

/** Median and 10/90 % of a lognormal quantity with this relative standard deviation. */
export function lognormalBand(median: number, relative: number): Band {
  const factor = Math.exp(Z90 * relative);
  return { low: median / factor, median, high: median * factor };
}

function assemble(
  boat: Boat,
  afloat: Afloat,
  usable: number,
  weather: Weather,
  points: readonly CurvePoint[],
  reach: readonly Reach[],
): Curve {
  const held = (speed: number): boolean => marginOf(boat, afloat, steady(boat, afloat, speed, weather).drive) >= 1;
  const stuck = lowestTop(reach, (r) => r.margin);
  const top = highestTop(reach, (r) => r.margin);
  const hump = humpOf(boat, afloat, weather);
  const topMedian = top === undefined ? 0 : refine(top, held);
  const last = reach.findLast((r) => r.speed <= topMedian) ?? reach[0]!;
  const crossed = stuck === undefined || top === undefined || stuck === top;
  const planingPoint = reach.find((r) => r.froudeVolume >= 2.2);
  const planes = planingPoint !== undefined && topMedian >= planingPoint.speed;
  return {
    store: boat.craft.drive.kind === 'petrol' ? 'fuel' : 'charge',
    points,
    topSpeed: {
      low: Math.min(highestTop(reach, (r) => r.least) ?? 0, topMedian),
      median: topMedian,
      high: Math.max(highestTop(reach, (r) => r.most) ?? topMedian, topMedian),
      limit: last.limit,
      reached: crossed,
    },
    stuckSpeed: crossed || stuck === undefined ? undefined : refine(stuck, held),
    humpSpeed: hump.speed,
    humpMargin: hump.margin,
    planingSpeed: planes ? planingPoint.speed : undefined,
    bestDisplacement: bestOf(points, usable, (p) => p.regime === 'displacement' && p.speed >= SLOWEST)!,
    bestPlaning: planes ? bestOf(points, usable, (p) => p.regime === 'planing' && p.held) : undefined,
    idleFlow: idleFlow(boat.model),
  };
}

/** Where the margin first falls below 1. */
function lowestTop(reach: readonly Reach[], margin: (r: Reach) => number): number | undefined {
  if (margin(reach[0]!) < 1) return undefined;
  for (let i = 1; i < reach.length; i++) if (margin(reach[i]!) < 1) return reach[i - 1]!.speed;
  return reach.at(-1)!.speed;
}

/** The last speed whose margin is 1 or more. */
function highestTop(reach: readonly Reach[], margin: (r: Reach) => number): number | undefined {
  return reach.findLast((r) => margin(r) >= 1)?.speed;
}

/** Top of a range of held speeds between this grid point and the next, to 1 mm/s. */
function refine(from: number, held: (speed: number) => boolean): number {
  let low = from;
  let high = from + STEP;
  for (let i = 0; i < 8; i++) {
    const middle = (low + high) / 2;
    if (held(middle)) low = middle;
    else high = middle;
  }
  return low;
}

function bestOf(
  points: readonly CurvePoint[],
  usable: number,
  allowed: (point: CurvePoint) => boolean,
): BestSpeed | undefined {
  let best: CurvePoint | undefined;
  for (const point of points) {
    if (allowed(point) && (!best || point.perMetre.median < best.perMetre.median)) best = point;
  }
  if (!best) return undefined;
  return {
    speed: best.speed,
    perMetre: best.perMetre,
    range: usable / best.perMetre.median,
    endurance: usable / best.flow.median,
  };
}
