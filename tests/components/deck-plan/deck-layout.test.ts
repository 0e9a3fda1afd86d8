import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { layOut, overboard, pieceAt } from '../../../src/components/deck-plan/deck-layout.ts';
import { hullPlan } from '../../../src/components/deck-plan/hull-plan.ts';
import { pieces } from '../../../src/components/deck-plan/pieces.ts';
import { placeMarks } from '../../../src/components/deck-plan/place-marks.ts';
import { spread } from '../../../src/components/deck-plan/spread.ts';
import { viewOf } from '../../../src/components/deck-plan/view.ts';
import { aboard } from '../../core/load/made-craft.ts';
import { boat, boats, craftWith, load } from './boats.ts';

const paper = { width: 320, tallest: 540 };
const cat = boat('catamaran-3-6');

describe('viewOf', () => {
  it('draws the bow above the stern and port left of starboard, to one scale', () => {
    const { point, scale } = viewOf(cat, hullPlan(cat), paper, 0);
    expect(point({ x: 3, y: 0 }).y).toBeLessThan(point({ x: 0, y: 0 }).y);
    expect(point({ x: 0, y: -0.5 }).x).toBeLessThan(point({ x: 0, y: 0.5 }).x);
    expect(point({ x: 0, y: 0 }).y - point({ x: 1, y: 0 }).y).toBeCloseTo(scale, 9);
    expect(point({ x: 0, y: 1 }).x - point({ x: 0, y: 0 }).x).toBeCloseTo(scale, 9);
  });

  it('finds the spot on the boat under a point of the drawing', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...boats),
        fc.double({ min: -1, max: 6, noNaN: true }),
        fc.double({ min: -2, max: 2, noNaN: true }),
        ({ hull }, x, y) => {
          const view = viewOf(hull, hullPlan(hull), paper, 0);
          const spot = view.spot(view.point({ x, y }));
          expect(spot.x).toBeCloseTo(x, 6);
          expect(spot.y).toBeCloseTo(y, 6);
        },
      ),
      { seed: 3, numRuns: 200 },
    );
  });

  it('fits every shipped boat onto a small phone and onto a wide page', () => {
    for (const width of [216, 320, 560]) {
      for (const { id, hull } of boats) {
        const plan = hullPlan(hull);
        const view = viewOf(hull, plan, { width, tallest: 540 }, 0);
        for (const spot of plan.outline) {
          const { x, y } = view.point(spot);
          expect(x >= 0 && x <= width && y >= 0 && y <= view.height, `${id} ${width}`).toBe(true);
        }
        expect(view.height, `${id} ${width}`).toBeLessThanOrEqual(541);
      }
    }
  });

  it('makes room ashore for those without a place, all of them in sight', () => {
    const view = viewOf(cat, hullPlan(cat), paper, 9);
    const spots = Array.from({ length: 9 }, (_, i) => view.ashore(i));
    for (const { x, y } of spots) {
      expect(x > 20 && x < 300).toBe(true);
      expect(y > view.shore && y < view.height).toBe(true);
    }
    expect(new Set(spots.map(({ x, y }) => `${x} ${y}`)).size).toBe(9);
  });
});

describe('spread', () => {
  const bag = (x: number, y: number) => ({ spot: { x, y }, along: 0.13, across: 0.19 });
  const everywhere = () => true;

  it('leaves pieces that do not hide each other where they are', () => {
    const laid = [bag(0.5, 0), bag(1, 0), bag(1.5, 0.4)];
    expect(spread(laid, everywhere)).toEqual(laid.map(({ spot }) => spot));
  });

  it('shows each of several bags on one place', () => {
    const shown = spread([bag(1, 0), bag(1, 0), bag(1, 0), bag(1, 0)], everywhere);
    shown.forEach((a, i) => {
      for (const b of shown.slice(0, i)) {
        expect(Math.abs(a.x - b.x) >= 0.26 - 1e-9 || Math.abs(a.y - b.y) >= 0.38 - 1e-9).toBe(true);
      }
    });
  });

  it('puts none where it may not lie', () => {
    const shown = spread([bag(0.2, 0), bag(0.2, 0)], ({ x }) => x > 0.1);
    for (const { x } of shown) expect(x).toBeGreaterThan(0.1);
  });

  it('draws even sixty on one place', () => {
    const shown = spread(
      Array.from({ length: 60 }, () => bag(1, 0)),
      everywhere,
    );
    expect(shown).toHaveLength(60);
    for (const { x, y } of shown) expect(Number.isFinite(x + y)).toBe(true);
  });
});

describe('layOut and pieceAt', () => {
  const crew = load(
    aboard('helm', 80, { station: 'helm' }),
    aboard('aft', 80, { station: 'seat-aft-starboard' }),
    aboard('bag', 8, { kind: 'gear', station: 'gear-mid' }),
    aboard('box', 8, { kind: 'gear', station: 'gear-mid' }),
    aboard('late', 70),
  );
  const all = pieces(craftWith(cat), crew);
  const view = viewOf(cat, hullPlan(cat), paper, 1);
  const drawn = layOut({ hull: cat, view, pieces: all, waiting: ['aboard:late'], hand: undefined });

  it('finds each piece by a tap on its middle', () => {
    for (const { key } of all) expect(pieceAt(all, drawn, view, drawn.get(key)!)).toBe(key);
  });

  it('finds none on open water', () => {
    expect(pieceAt(all, drawn, view, { x: 4, y: 4 })).toBeUndefined();
  });

  it('leaves middles of pieces at least 24 px apart, so that each can be hit', () => {
    const middles = [...drawn.values()];
    middles.forEach((a, i) => {
      for (const b of middles.slice(0, i)) expect(Math.hypot(a.x - b.x, a.y - b.y)).toBeGreaterThanOrEqual(24);
    });
  });

  it('draws one without a place ashore', () => {
    expect(drawn.get('aboard:late')!.y).toBeGreaterThan(view.shore);
  });
});

describe('overboard', () => {
  it('takes a tap just beside the boat for the boat, and one far out for the water', () => {
    const plan = hullPlan(cat);
    expect(overboard(cat, plan, { x: 3, y: 1.0 })).toBe(false);
    expect(overboard(cat, plan, { x: 1.5, y: 2.5 })).toBe(true);
  });
});

describe('placeMarks', () => {
  it('marks every place once, and those on top of each other together', () => {
    for (const { id, hull } of boats) {
      const marks = placeMarks(hull, false);
      expect(marks.flatMap(({ stations }) => stations).length, id).toBe(hull.stations.length);
    }
    const aft = placeMarks(cat, false).find(({ stations }) => stations.some(({ id }) => id === 'gear-aft'));
    expect(aft?.words).toEqual(['Gear', 'Tank']);
  });

  it('calls the place of the battery by its name', () => {
    const words = placeMarks(cat, true).flatMap((mark) => mark.words);
    expect(words).toContain('Battery');
    expect(words).not.toContain('Tank');
  });
});
