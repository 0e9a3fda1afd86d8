import { describe, expect, it } from 'vitest';
import type { Station } from '../../../src/core/craft/shapes.ts';
import type { Aim, Spread } from '../../../src/core/trip/seating-aim.ts';
import type { Movable } from '../../../src/core/trip/seating-places.ts';
import { bestPlacement, type Rest, spreadOf } from '../../../src/core/trip/seating-search.ts';

const place = (x: number, y = 0, z?: number): Station => ({
  id: `${x} ${y}`,
  label: 'Place',
  use: 'seat',
  x,
  y,
  ...(z !== undefined && { z }),
});
const boat: Rest = { mass: 200, x: 400, y: 0, z: 80, xx: 900 };
const movable = (places: Movable['places'], rest: Partial<Movable> = {}): Movable =>
  ({ who: { person: 0 }, mass: 80, alone: true, places, now: undefined, ...rest }) as Movable;

/** As level and as far forward or aft as asked; no placement costs less than none. */
const aimAt = (lcg: number): Aim => ({
  cost: (spread: Spread) => (spread.lcg - lcg) ** 2 + spread.lateral ** 2,
  bound: (from: number, to: number) => Math.max(from - lcg, lcg - to, 0) ** 2,
});

describe('what a placement comes to', () => {
  it('is the centre of all, by hand', () => {
    // 200 kg at 2 m, 0.4 m up; 100 kg at 1 m, 0.5 m to the side, 0.7 m up.
    const crew = [movable([], { mass: 100 })];
    const { lcg, lateral, vcg, pitch } = spreadOf(crew, boat, [place(1, 0.5, 0.7)]);
    expect(lcg).toBeCloseTo(500 / 300, 12);
    expect(lateral).toBeCloseTo(50 / 300, 12);
    expect(vcg).toBeCloseTo(150 / 300, 12);
    expect(pitch).toBeCloseTo(1000 / 300 - (5 / 3) ** 2, 12);
  });

  it('puts who sits on a place without a height 0.45 m up', () => {
    expect(spreadOf([movable([], { mass: 200 })], { ...boat, z: 0 }, [place(1)]).vcg).toBeCloseTo(0.225, 12);
  });
});

describe('the best placement', () => {
  it('of few is the best of all, and its cost the bound', () => {
    const places = [place(0.5), place(1.5), place(2.5)];
    const found = bestPlacement([movable(places), movable(places)], boat, aimAt(0))!;
    expect(found).toMatchObject({ exact: true, bound: found.cost });
    expect(found.places.map(({ x }) => x).sort()).toEqual([0.5, 1.5]);
  });

  it('leaves those who may stay where they are, if nothing gets better', () => {
    const places = [place(1, -0.5), place(1, 0.5)];
    const twins = [movable(places, { now: place(1, 0.5) }), movable(places, { now: place(1, -0.5) })];
    expect(bestPlacement(twins, boat, aimAt(1))!.places).toEqual([place(1, 0.5), place(1, -0.5)]);
  });

  it('gives a seat to one, but lets gear lie on gear', () => {
    const one = [place(0.5)];
    expect(bestPlacement([movable(one), movable(one)], boat, aimAt(0))).toBeUndefined();
    const gear = { alone: false };
    expect(bestPlacement([movable(one, gear), movable(one, gear)], boat, aimAt(0))!.places).toEqual([one[0], one[0]]);
    expect(bestPlacement([movable(one), movable(one, gear)], boat, aimAt(0))!.places).toEqual([one[0], one[0]]);
  });

  it('is exact as long as there are a quarter of a million ways or fewer', () => {
    const stores = (count: number) => Array.from({ length: count }, (_, i) => place(i / 100));
    const gear = (count: number) => movable(stores(count), { alone: false });
    const exact = (...counts: number[]) => bestPlacement(counts.map(gear), boat, aimAt(2))!.exact;
    expect(exact(500, 500)).toBe(true);
    expect(exact(501, 500)).toBe(false);
  });

  it('counts a seat once that another person has taken', () => {
    // Nine on nine seats are 362,880 ways, eight on eight 40,320; counted apart they would be 16,777,216.
    const seats = (count: number) => Array.from({ length: count }, (_, i) => place(0.4 * i));
    const crew = (count: number) => {
      const places = seats(count);
      return places.map(() => movable(places));
    };
    const eight = bestPlacement(crew(8), boat, aimAt(2))!;
    const nine = bestPlacement(crew(9), boat, aimAt(2))!;
    expect([eight.exact, nine.exact]).toEqual([true, false]);
    for (const { places } of [eight, nine]) expect(new Set(places).size).toBe(places.length);
  });

  it('of many is no better than the bound and no worse than the present one', () => {
    const seats = Array.from({ length: 12 }, (_, i) => place(0.3 * i, i % 2 ? 0.4 : -0.4));
    const crew = seats.map((now, i) => movable(seats, { now, mass: 50 + 10 * i }));
    const aim = aimAt(1.6);
    const found = bestPlacement(crew, boat, aim)!;
    expect(found.exact).toBe(false);
    expect(new Set(found.places).size).toBe(12);
    expect(found.cost).toBeGreaterThanOrEqual(found.bound);
    expect(found.cost).toBeLessThanOrEqual(aim.cost(spreadOf(crew, boat, seats)));
    expect(found.cost).toBeCloseTo(aim.cost(spreadOf(crew, boat, found.places)), 12);
    // No two of them gain by changing seats: that is what is tried.
    for (let a = 0; a < 12; a++) {
      for (let b = 0; b < a; b++) {
        const swapped = [...found.places];
        [swapped[a], swapped[b]] = [swapped[b]!, swapped[a]!];
        expect(aim.cost(spreadOf(crew, boat, swapped))).toBeGreaterThanOrEqual(found.cost - 2e-9);
      }
    }
  });

  it('of many is undefined where not everybody finds a seat', () => {
    const seats = Array.from({ length: 11 }, (_, i) => place(0.3 * i));
    expect(
      bestPlacement(
        Array.from({ length: 12 }, () => movable(seats)),
        boat,
        aimAt(2),
      ),
    ).toBeUndefined();
  });

  it('of many has a bound from the aft-most to the foremost centre anybody could make', () => {
    const asked: unknown[] = [];
    const aim: Aim = {
      ...aimAt(2),
      bound: (from, to, leastPitch) => {
        asked.push([from, to, leastPitch]);
        return -1;
      },
    };
    const stores = Array.from({ length: 600 }, (_, i) => place(1 + i / 599));
    const gear = movable(stores, { alone: false, mass: 100 });
    expect(bestPlacement([gear, gear], boat, aim)!.bound).toBe(-1);
    // 400 kg m of the boat and 200 kg between 1 and 2 m, over 400 kg.
    expect(asked).toEqual([[600 / 400, 800 / 400, 0]]);
  });
});
