import { describe, expect, it } from 'vitest';
import type { Calibration } from '../../src/core/craft/shapes.ts';
import { boatOf } from '../../src/core/curve/boat.ts';
import { curve } from '../../src/core/curve/curve.ts';
import { factorsOf, priorDeviations } from '../../src/core/curve/factors.ts';
import type { CurvePoint, Regime } from '../../src/core/curve/shapes.ts';
import { CALM, lcgSlope, resistanceDeviation, steady, writeGradient } from '../../src/core/curve/steady.ts';
import { curveOf, type Loaded, loaded } from '../core/curve/loaded.ts';

const Z90 = 1.2816;

const crafts: readonly [string, Loaded][] = [
  ['a catamaran of 3.6 m with 15 hp', loaded('catamaran-3-6', 'petrol-15hp-4s', 'tank-25')],
  ['a RIB of 4.7 m with 40 hp', loaded('rib-4-7', 'petrol-40hp-4s', 'tank-25-25')],
  ['a flat-bottom boat of 3.8 m with an old 9.9 hp two-stroke', loaded('rigid-flat-3-8', 'petrol-9-9hp-2s', 'tank-25')],
];

/** Means of a figure over the held points of a regime. */
function meanOver(craft: Loaded, regime: Regime, figure: (point: CurvePoint) => number): number {
  const points = curveOf(craft).points.filter((point) => point.held && point.regime === regime);
  return points.reduce((sum, point) => sum + figure(point), 0) / points.length;
}

/** Relative standard deviation of the hull's own resistance. */
function hullSpread({ boat, afloat }: Loaded, { speed }: CurvePoint): number {
  const now = steady(boat, afloat, speed, CALM);
  return resistanceDeviation(boat, now, lcgSlope(boat, afloat, speed, now.hull)) / now.hull.total;
}

function flowSpread({ flow }: CurvePoint): number {
  return Math.log(flow.high / flow.median) / Z90;
}

// The method asks for about 20 % of resistance planing, 30 % below, and 30 % of consumption. At displacement
// speed five measured boats differ from it by more than a third, see measured.test.ts, so there it is given 40 %.
describe('what is not known of an unmeasured boat', () => {
  for (const [name, craft] of crafts) {
    it(`spreads the resistance of the hull of ${name} by 20 % planing, 25 to 30 % on the hump, 40 % at displacement speed`, () => {
      const spread = (regime: Regime) => meanOver(craft, regime, (point) => hullSpread(craft, point));
      expect(spread('planing')).toBeGreaterThan(0.19);
      expect(spread('planing')).toBeLessThan(0.21);
      expect(spread('displacement')).toBeGreaterThan(0.38);
      expect(spread('displacement')).toBeLessThan(0.42);
      expect(spread('hump')).toBeGreaterThan(0.25);
      expect(spread('hump')).toBeLessThan(0.3);
    });

    it(`spreads the consumption of ${name} by 23 to 32 % on the hump and above`, () => {
      for (const regime of ['hump', 'planing'] as const) {
        expect(meanOver(craft, regime, flowSpread)).toBeGreaterThan(0.23);
        expect(meanOver(craft, regime, flowSpread)).toBeLessThan(0.32);
      }
    });
  }

  it('spreads consumption at displacement speed by a quarter for a two-stroke, and by more than asked for a four-stroke: 38 to 48 %', () => {
    const slow = crafts.map(([, craft]) => meanOver(craft, 'displacement', flowSpread));
    expect(slow[2]!).toBeGreaterThan(0.23);
    expect(slow[2]!).toBeLessThan(0.27);
    // The spread of the friction share weighs heavily where little power is asked of a large engine.
    for (const four of slow.slice(0, 2)) {
      expect(four).toBeGreaterThan(0.3);
      expect(four).toBeLessThan(0.48);
    }
  });
});

/** Mean and covariance after one exact-to-`error` (relative) reading of consumption at a speed, by Bayes for a linear model. */
function afterReading(craft: Loaded, speed: number, error: number): Calibration {
  const gradient = new Float64Array(8);
  const { boat, afloat } = craft;
  const now = steady(boat, afloat, speed, CALM);
  writeGradient(boat, now, lcgSlope(boat, afloat, speed, now.hull), gradient);
  const prior = priorDeviations(craft.craft.drive).map((deviation) => deviation * deviation);
  const lifted = prior.map((variance, i) => variance * gradient[i]!);
  const total = lifted.reduce((sum, value, i) => sum + value * gradient[i]!, (error * now.flow) ** 2);
  return {
    factors: [1, 1, 1, 0, 0, 1, 0],
    covariance: prior.map((variance, i) =>
      prior.map((_, j) => (i === j ? variance : 0) - (lifted[i]! * lifted[j]!) / total),
    ),
    runs: 1,
    tried: { mass: [afloat.mass, afloat.mass], speed: [speed, speed] },
  };
}

describe('what trial runs leave unknown', () => {
  const [, craft] = crafts[0]!;
  const runAt = 8;
  const calibration = afterReading(craft, runAt, 0.05);
  const measured = boatOf({ ...craft.craft, calibration }, 'sea', 20);

  const spreadAt = (speed: number, extra = 0): number => {
    const { points } = curve(measured, { ...craft.afloat, mass: craft.afloat.mass + extra }, 12);
    return flowSpread(points.find((point) => point.speed === speed)!);
  };

  it('is as much as of an unmeasured boat where no run was made', () => {
    const none: Calibration = {
      factors: [1, 1, 1, 0, 0, 1, 0],
      covariance: priorDeviations(craft.craft.drive).map((a, i) =>
        priorDeviations(craft.craft.drive).map((b, j) => (i === j ? a * b : 0)),
      ),
      runs: 0,
    };
    const told = factorsOf({ ...craft.craft, calibration: none });
    expect(told.covariance).toEqual(factorsOf(craft.craft).covariance);
    expect(told.hull).toEqual(factorsOf(craft.craft).hull);
    const boat = boatOf({ ...craft.craft, calibration: none }, 'sea', 20);
    expect(curve(boat, craft.afloat, 12)).toEqual(curveOf(craft));
  });

  it('is least at the speed and load that were tried, and grows away from them', () => {
    // 5 % of the reading, 10 % that no run tells.
    expect(spreadAt(runAt)).toBeLessThan(0.115);
    expect(spreadAt(6)).toBeGreaterThan(spreadAt(7));
    expect(spreadAt(7)).toBeGreaterThan(spreadAt(runAt));
    expect(spreadAt(2)).toBeGreaterThan(3 * spreadAt(runAt));
    expect(spreadAt(runAt, 80)).toBeGreaterThan(spreadAt(runAt));
    expect(spreadAt(runAt, 160)).toBeGreaterThan(spreadAt(runAt, 80));
  });

  it('is never more than before the run', () => {
    const before = curveOf(craft).points;
    const after = curve(measured, craft.afloat, 12).points;
    after.forEach((point, i) => {
      expect(flowSpread(point)).toBeLessThanOrEqual(flowSpread(before[i]!) + 1e-12);
    });
  });
});
