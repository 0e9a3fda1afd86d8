import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Craft } from '../../src/core/craft/shapes.ts';
import { type Afloat, type Boat, boatOf } from '../../src/core/curve/boat.ts';
import { curve } from '../../src/core/curve/curve.ts';
import type { Curve } from '../../src/core/curve/shapes.ts';
import { balance } from '../../src/core/load/balance.ts';
import { between, crafts, loads, numbersOf, priorTimes, same } from './trip-makers.ts';

const RUNS = { seed: 1964, numRuns: 120 };

interface Drawn {
  readonly craft: Craft;
  readonly boat: Boat;
  readonly afloat: Afloat;
  readonly usable: number;
  readonly headwind: number;
}

/** Any shipped craft with any load, some fuel or charge and a wind. */
const drawn: fc.Arbitrary<Drawn> = fc
  .record({ craft: crafts, load: loads, fuel: between(0, 15), headwind: between(-8, 12), temperature: between(-5, 35) })
  .map(({ craft, load, fuel, headwind, temperature }) => {
    const burns = craft.store.kind === 'tank';
    const { allUpMass, lcg, airArea } = balance(craft, load, burns ? fuel : 0);
    const boat = boatOf(craft, 'sea', temperature);
    return { craft, boat, afloat: { mass: allUpMass, lcg, airArea }, usable: burns ? fuel : fuel * 1e6, headwind };
  });

function curveIn({ boat, afloat, usable, headwind }: Drawn, change: Partial<Afloat> = {}): Curve {
  return curve(boat, { ...afloat, ...change }, usable, { headwind, waveHeight: 0 });
}

describe('any curve of any craft', () => {
  it('has a finite figure in every place', () => {
    fc.assert(
      fc.property(drawn, (one) => {
        for (const [path, value] of numbersOf(curveIn(one))) {
          if (!Number.isFinite(value)) throw new Error(`${value} at ${path}`);
        }
      }),
      RUNS,
    );
  });

  it('fits together: use per metre is flow over speed, range and endurance follow from it', () => {
    fc.assert(
      fc.property(drawn, (one) => {
        const { points, bestDisplacement, bestPlaning } = curveIn(one);
        for (const { speed, flow, perMetre } of points) {
          same(perMetre.median * speed, flow.median);
          expect(flow.low).toBeLessThanOrEqual(flow.median);
          expect(flow.median).toBeLessThanOrEqual(flow.high);
          same(flow.low * flow.high, flow.median ** 2);
        }
        for (const best of [bestDisplacement, bestPlaning]) {
          if (!best) continue;
          same(best.range * best.perMetre.median, one.usable);
          same(best.endurance * best.speed, best.range);
          const at = points.find((point) => point.speed === best.speed)!;
          expect(at.perMetre).toEqual(best.perMetre);
        }
      }),
      RUNS,
    );
  });

  it('has its tops in order, and names the one below the hump only where there is one beyond', () => {
    fc.assert(
      fc.property(drawn, (one) => {
        const { topSpeed, stuckSpeed, humpSpeed, humpMargin, planingSpeed, bestPlaning, points } = curveIn(one);
        expect(topSpeed.low).toBeLessThanOrEqual(topSpeed.median);
        expect(topSpeed.median).toBeLessThanOrEqual(topSpeed.high);
        expect(stuckSpeed === undefined).toBe(topSpeed.reached);
        if (stuckSpeed !== undefined) {
          expect(stuckSpeed).toBeLessThan(topSpeed.median);
          expect(points.some((p) => !p.held && p.speed > stuckSpeed && p.speed < topSpeed.median)).toBe(true);
        }
        for (const { held, speed } of points) if (held) expect(speed).toBeLessThanOrEqual(topSpeed.median);
        expect(humpSpeed).toBeGreaterThan(0);
        expect(humpMargin).toBeGreaterThan(0);
        if (planingSpeed !== undefined) expect(planingSpeed).toBeLessThanOrEqual(topSpeed.median);
        if (bestPlaning) expect(bestPlaning.speed).toBeLessThanOrEqual(topSpeed.median);
      }),
      RUNS,
    );
  });

  it('asks for more and reaches less with more aboard or more wind from ahead', () => {
    fc.assert(
      fc.property(drawn, between(1, 100), between(0.1, 5), (one, kg, wind) => {
        const plain = curveIn(one);
        const loaded = curveIn(one, { mass: one.afloat.mass + kg });
        const blown = curveIn({ ...one, headwind: one.headwind + wind });
        for (const harder of [loaded, blown]) {
          expect(harder.topSpeed.median).toBeLessThanOrEqual(plain.topSpeed.median + 1e-9);
          const count = Math.min(plain.points.length, harder.points.length);
          for (let i = 0; i < count; i++) {
            const [easy, hard] = [plain.points[i]!, harder.points[i]!];
            expect(hard.resistance).toBeGreaterThan(easy.resistance);
            expect(hard.flow.median).toBeGreaterThanOrEqual(easy.flow.median * (1 - 1e-9));
          }
        }
      }),
      RUNS,
    );
  });

  it('has a narrower band the more is known of the boat', () => {
    fc.assert(
      fc.property(drawn, between(0.05, 0.95), (one, factor) => {
        const calibration = priorTimes(one.craft, factor);
        const known = { ...one, boat: boatOf({ ...one.craft, calibration }, 'sea', 15) };
        const vague = { ...one, boat: boatOf(one.craft, 'sea', 15) };
        const [narrow, wide] = [curveIn(known), curveIn(vague)];
        expect(narrow.topSpeed.low).toBeGreaterThanOrEqual(wide.topSpeed.low);
        expect(narrow.topSpeed.high).toBeLessThanOrEqual(wide.topSpeed.high + 1e-9);
        const count = Math.min(narrow.points.length, wide.points.length);
        for (let i = 0; i < count; i++) {
          expect(narrow.points[i]!.flow.high).toBeLessThanOrEqual(wide.points[i]!.flow.high * (1 + 1e-12));
          expect(narrow.points[i]!.flow.median).toBe(wide.points[i]!.flow.median);
        }
      }),
      RUNS,
    );
  });
});
