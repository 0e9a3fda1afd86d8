import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { hullPlan } from '../../../src/components/deck-plan/hull-plan.ts';
import { aboardAt, outside } from '../../../src/components/deck-plan/room.ts';
import { boat, boats, inside } from './boats.ts';

const anyBoat = fc.constantFrom(...boats);
const anySpot = fc.record({
  x: fc.double({ min: -9, max: 25, noNaN: true }),
  y: fc.double({ min: -9, max: 9, noNaN: true }),
});

describe('aboardAt', () => {
  it('never leaves anybody outside the boat, wherever they are dragged', () => {
    const rings = new Map(boats.map(({ id, hull }) => [id, hullPlan(hull).outline]));
    fc.assert(
      fc.property(anyBoat, anySpot, ({ id, hull }, spot) => inside(rings.get(id)!, aboardAt(hull, spot))),
      { seed: 7, numRuns: 2000 },
    );
  });

  it('leaves one who is aboard already where they are', () => {
    fc.assert(
      fc.property(anyBoat, anySpot, ({ hull }, spot) => {
        const once = aboardAt(hull, spot);
        expect(aboardAt(hull, once)).toEqual(once);
      }),
      { seed: 7, numRuns: 1000 },
    );
  });

  it('keeps one who is pulled over the side at the same place along the boat', () => {
    const { x, y } = aboardAt(boat('catamaran-3-6'), { x: 1.2, y: 4 });
    expect(x).toBe(1.2);
    expect(y).toBeLessThan(1.85 / 2);
    expect(y).toBeGreaterThan(0.6);
  });

  it('lets somebody sit on the tube', () => {
    expect(aboardAt(boat('catamaran-3-6'), { x: 1.2, y: 0.7 })).toEqual({ x: 1.2, y: 0.7 });
  });

  it('lets nobody ride on the engine', () => {
    expect(aboardAt(boat('rib-3-4'), { x: -0.3, y: 0 }).x).toBeGreaterThan(0);
  });
});

describe('outside', () => {
  it('tells a place on the boat from one beside it', () => {
    const hull = boat('rigid-v-4-2');
    expect(outside(hull, { x: 2, y: 0.5 })).toBe(false);
    expect(outside(hull, { x: 2, y: 1.2 })).toBe(true);
    expect(outside(hull, { x: 5, y: 0 })).toBe(true);
  });
});
