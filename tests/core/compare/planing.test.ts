import { describe, expect, it } from 'vitest';
import { planing } from '../../../src/core/compare/planing.ts';
import { humpOf, marginOf, speedAtFroude } from '../../../src/core/curve/hump.ts';
import { CALM, steady } from '../../../src/core/curve/steady.ts';
import { heldProbability } from '../../../src/core/trip/held.ts';
import { loadedWith } from './boats.ts';

const boats = [
  loadedWith('catamaran-3-6', 'petrol-15hp-4s', 'tank-25'),
  loadedWith('catamaran-3-6', 'petrol-15hp-4s', 'tank-25', { count: 4 }),
  loadedWith('catamaran-3-6', 'petrol-8hp-4s', 'tank-12', { count: 4 }),
  loadedWith('rib-4-7', 'petrol-40hp-4s', 'tank-25-25', { count: 5 }),
  loadedWith('flat-floor-2-7', 'petrol-6hp-2s', 'tank-12', { count: 1 }),
];

describe('the climb onto the plane', () => {
  it('is tightest where the curve of the trip says, with the same margin', () => {
    for (const { boat, afloat, ...rest } of boats) {
      const { humpSpeed, humpMargin } = planing({ boat, afloat, ...rest });
      const hump = humpOf(boat, afloat, CALM);
      expect(humpSpeed).toBeCloseTo(hump.speed, 9);
      expect(humpMargin).toBeCloseTo(hump.margin, 9);
    }
  });

  it('is as likely as its least likely speed, from volume Froude number 1.2 to 2.2', () => {
    for (const loaded of boats) {
      const { boat, afloat } = loaded;
      const chances = Array.from({ length: 11 }, (_, i) => {
        const speed = speedAtFroude(boat, afloat, 1.2 + 0.1 * i);
        return heldProbability(boat, { afloat, speed, steady: steady(boat, afloat, speed) });
      });
      expect(planing(loaded).chance).toBeCloseTo(Math.min(...chances), 9);
    }
  });

  it('is sure with three of four such boats and 5 % of power to spare, out of the question with fewer than one of four', () => {
    // The same boat with an engine from far too weak to far too strong.
    const { boat, ...rest } = boats[1]!;
    const seen = new Set<string>();
    for (let share = 0.5; share < 2; share += 0.02) {
      const model = { ...boat.model, fullPower: share * boat.model.fullPower };
      const { planes, chance, humpMargin } = planing({ ...rest, boat: { ...boat, model } });
      const right = chance >= 0.75 && humpMargin >= 1.05 ? 'planes' : chance < 0.25 ? 'not' : 'marginal';
      expect(planes).toBe(right);
      seen.add(planes);
    }
    expect([...seen]).toEqual(['not', 'marginal', 'planes']);
  });

  it('is not sure with 4 % of power to spare, however well the boat is known', () => {
    const { boat, ...rest } = boats[1]!;
    const covariance = new Float64Array(boat.factors.covariance.length);
    const known = {
      ...boat,
      factors: { ...boat.factors, covariance, power: { ...boat.factors.power, deviation: 1e-4 } },
    };
    const at = (fullPower: number) => planing({ ...rest, boat: { ...known, model: { ...known.model, fullPower } } });
    const scale = known.model.fullPower / at(known.model.fullPower).humpMargin;
    // Revs do not bind this boat: power and margin go together.
    expect(at(1.04 * scale)).toMatchObject({ planes: 'marginal', humpMargin: expect.closeTo(1.04, 6) });
    expect(at(1.06 * scale).planes).toBe('planes');
  });

  it('is none of a displacement hull, whose margin is told all the same', () => {
    const loaded = loadedWith('launch-4-9', 'petrol-40hp-4s', 'tank-25', { count: 1 });
    const { boat, afloat } = loaded;
    const found = planing(loaded);
    expect(found).toMatchObject({ planes: 'not', chance: 0 });
    const speed = found.humpSpeed;
    expect(found.humpMargin).toBeCloseTo(marginOf(boat, afloat, steady(boat, afloat, speed).drive), 9);
  });
});
