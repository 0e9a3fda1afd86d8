import { describe, expect, it } from 'vitest';
import { bowTubeFrom } from '../../../src/components/deck-plan/bow-tube.ts';
import { halfBreadth } from '../../../src/components/deck-plan/half-breadth.ts';
import { hullPlan } from '../../../src/components/deck-plan/hull-plan.ts';
import { boat, boats, inside } from './boats.ts';

describe('hullPlan', () => {
  it('draws every shipped boat as long and as broad as its record says', () => {
    for (const { id, hull } of boats) {
      const xs = hullPlan(hull).outline.map(({ x }) => x);
      const ys = hullPlan(hull).outline.map(({ y }) => y);
      expect(Math.max(...xs) - Math.min(...xs), id).toBeCloseTo(hull.length, 2);
      expect(Math.max(...ys) - Math.min(...ys), id).toBeCloseTo(hull.beam, 2);
    }
  });

  it('draws port and starboard alike', () => {
    for (const { id, hull } of boats) {
      const { outline } = hullPlan(hull);
      for (const { x, y } of outline) {
        const twin = outline.some((other) => Math.abs(other.x - x) < 1e-9 && Math.abs(other.y + y) < 1e-9);
        expect(twin, `${id} ${x} ${y}`).toBe(true);
      }
    }
  });

  it('has every seat, the helm and every place for gear and tanks on the boat', () => {
    for (const { id, hull } of boats) {
      const { outline } = hullPlan(hull);
      for (const station of hull.stations) expect(inside(outline, station), `${id} ${station.id}`).toBe(true);
    }
  });

  it('leaves water between the bows of a catamaran, and between its tubes behind the transom', () => {
    for (const id of ['catamaran-2-9', 'catamaran-3-6', 'catamaran-4-3']) {
      const { outline, bow, aft } = hullPlan(boat(id));
      expect(inside(outline, { x: bow - 0.08, y: 0 }), id).toBe(false);
      expect(inside(outline, { x: aft / 2, y: 0 }), id).toBe(false);
      expect(inside(outline, { x: bow / 2, y: 0 }), id).toBe(true);
    }
  });

  it('closes the bow of a rigid inflatable and of a flat-floor one', () => {
    for (const id of ['rib-3-4', 'rib-4-7', 'flat-floor-2-7']) {
      const { outline, bow } = hullPlan(boat(id));
      expect(inside(outline, { x: bow - 0.08, y: 0 }), id).toBe(true);
    }
  });

  it('gives a V-bottom boat a pointed bow and a flat-bottom one a square bow', () => {
    const pointed = boat('rigid-v-4-2');
    const square = boat('rigid-flat-3-8');
    expect(halfBreadth(pointed, pointed.length - 0.01) / pointed.beam).toBeLessThan(0.02);
    expect(halfBreadth(square, square.length - 0.01) / square.beam).toBeGreaterThan(0.2);
  });

  it('keeps the floor inside the boat', () => {
    for (const { id, hull } of boats) {
      const { floor } = hullPlan(hull);
      // A hair inwards: points of the floor may lie on the transom itself.
      for (const { x, y } of floor) {
        const within = Math.abs(y) * 0.999 <= halfBreadth(hull, x) + 1e-9;
        expect(within, `${id} ${x} ${y}`).toBe(true);
      }
    }
  });

  it('draws a boat without described tubes all the same', () => {
    const { tube: _tube, ...bare } = boat('rib-3-4');
    const { outline, floor } = hullPlan(bare);
    for (const { x, y } of [...outline, ...floor]) expect(Number.isFinite(x + y)).toBe(true);
    expect(inside(outline, { x: 1.5, y: 0 })).toBe(true);
  });
});

describe('bowTubeFrom', () => {
  it('lies ahead of every seat', () => {
    for (const { id, hull } of boats) {
      const seats = hull.stations.filter(({ use }) => use === 'seat' || use === 'helm');
      expect(bowTubeFrom(hull).aft, id).toBeGreaterThan(Math.max(...seats.map(({ x }) => x)));
    }
  });

  it('takes in the place that the record marks as bow tube or foredeck', () => {
    for (const { id, hull } of boats) {
      const marked = hull.stations.find(({ use }) => use === 'bow-tube')!;
      expect(bowTubeFrom(hull).aft, id).toBeLessThan(marked.x);
    }
  });
});
