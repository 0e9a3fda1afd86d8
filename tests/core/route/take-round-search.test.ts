import { describe, expect, it } from 'vitest';
import type { Place } from '../../../src/core/route/take-round-obstacles.ts';
import { cheapestWay, type Haste } from '../../../src/core/route/take-round-search.ts';
import { drawn, place } from './made-shores.ts';

const apart = (a: Place, b: Place) => Math.hypot(a.x - b.x, a.y - b.y);

/** Places by chance and what tracks between them cost: their length or more, some barred; not the same both ways. */
function web(between: (least: number, most: number) => number, count: number) {
  const places = Array.from({ length: count }, () => place(between(-100, 100), between(-100, 100)));
  const prices = places.map((a) =>
    places.map((b) => (between(0, 1) < 0.45 ? Infinity : apart(a, b) * (between(0, 1) < 0.5 ? 1 : between(1, 4)))),
  );
  return { places, prices };
}

/** Cost of the cheapest way from the first place to every other, by trying all tracks again and again (Bellman, Ford). */
function leastCosts(prices: readonly (readonly number[])[]): number[] {
  const least = prices.map((_, i) => (i === 0 ? 0 : Infinity));
  for (const _ of prices) {
    prices.forEach((row, a) => {
      row.forEach((price, b) => {
        least[b] = Math.min(least[b]!, least[a]! + price);
      });
    });
  }
  return least;
}

function searched(places: readonly Place[], prices: readonly (readonly number[])[], haste?: Haste) {
  const asked: [number, number][] = [];
  const way = cheapestWay(
    places,
    (a, b) => {
      asked.push([a, b]);
      return prices[a]![b]!;
    },
    haste,
  );
  if (way === 'too-many') throw new Error('did not give up');
  return { way, asked };
}

describe('the cheapest way', () => {
  it('costs what trying all tracks finds, and is what its tracks add up to', () => {
    const between = drawn(21);
    let ways = 0;
    let turns = 0;
    for (let round = 0; round < 300; round++) {
      const { places, prices } = web(between, 2 + Math.floor(between(0, 9)));
      const least = leastCosts(prices)[1]!;
      const { way } = searched(places, prices);
      if (least === Infinity) {
        expect(way).toBeUndefined();
        continue;
      }
      ways++;
      turns += way!.places.length - 2;
      expect(way!.places[0]).toBe(0);
      expect(way!.places.at(-1)).toBe(1);
      const sum = way!.places.slice(1).reduce((all, b, i) => all + prices[way!.places[i]!]![b]!, 0);
      expect(way!.cost).toBeCloseTo(least, 9);
      expect(sum).toBeCloseTo(least, 9);
    }
    expect(ways).toBeGreaterThan(150);
    expect(turns).toBeGreaterThan(100);
  });

  it('asks no track twice, none back to the start, and none that would make the way longer than the best', () => {
    const between = drawn(22);
    for (let round = 0; round < 200; round++) {
      const { places, prices } = web(between, 12);
      const best = leastCosts(prices);
      const { way, asked } = searched(places, prices);
      expect(new Set(asked.map(String)).size).toBe(asked.length);
      for (const [a, b] of asked) {
        expect(b).not.toBe(0);
        expect(a).not.toBe(b);
        // Cheapest to its start, then straight on through its end.
        const least = best[a]! + apart(places[a]!, places[b]!) + apart(places[b]!, places[1]!);
        expect(least).toBeLessThanOrEqual((way?.cost ?? Infinity) + 1e-9);
      }
    }
  });

  it('asks a track only where it may lead to its end more cheaply than the ways known so far', () => {
    const between = drawn(25);
    for (let round = 0; round < 200; round++) {
      const { places, prices } = web(between, 12);
      // Every second time all on one line, where many ways are equally long.
      const there = places.map(({ x, y }) => (round % 2 ? place(Math.round(x / 10) * 10, 0) : place(x, y)));
      const dearer = (a: number, b: number) => prices[a]![b]! / apart(places[a]!, places[b]!);
      const costs = there.map((from, a) =>
        there.map((to, b) => (a === b || dearer(a, b) === Infinity ? Infinity : dearer(a, b) * apart(from, to))),
      );
      const best = leastCosts(costs);
      const known = places.map(() => Infinity);
      for (const [a, b] of searched(there, costs).asked) {
        expect(best[a]! + apart(there[a]!, there[b]!)).toBeLessThanOrEqual(known[b]!);
        known[b] = Math.min(known[b]!, best[a]! + costs[a]![b]!);
      }
    }
  });

  it('asks nothing but the straight track where that is clear', () => {
    const places = [place(0, 0), place(100, 0), place(50, 0.01), place(50, 40), place(-10, 0)];
    const { way, asked } = searched(
      places,
      places.map((a) => places.map((b) => apart(a, b))),
    );
    expect(way).toEqual({ places: [0, 1], cost: 100 });
    expect(asked).toEqual([[0, 1]]);
  });

  it('turns at places anywhere, also behind the start and beyond the goal', () => {
    const places = [place(0, 0), place(100, 0), place(-30, 0), place(0, 500), place(130, 0)];
    const prices = places.map((a, i) =>
      places.map((b, j) => ([`0,2`, '2,3', '3,4', '4,1'].includes(`${i},${j}`) ? apart(a, b) : Infinity)),
    );
    expect(searched(places, prices).way?.places).toEqual([0, 2, 3, 4, 1]);
  });

  it('is given up when the price of a track is', () => {
    const places = [place(0, 0), place(100, 0), place(50, 40)];
    let asked = 0;
    expect(cheapestWay(places, () => (++asked > 1 ? undefined : Infinity))).toBe('too-many');
    expect(asked).toBe(2);
  });
});

describe('the cheapest way in a hurry', () => {
  it('costs no more than was allowed, for no more tracks looked at in all', () => {
    const between = drawn(23);
    let patient = 0;
    let hasty = 0;
    let dearer = 0;
    for (let round = 0; round < 200; round++) {
      const { places, prices } = web(between, 14);
      const best = searched(places, prices);
      const quick = searched(places, prices, { hurry: 1.3 });
      expect(quick.way === undefined).toBe(best.way === undefined);
      if (!best.way) continue;
      expect(quick.way!.cost).toBeLessThanOrEqual(best.way.cost * 1.3 + 1e-9);
      expect(new Set(quick.asked.map(String)).size).toBe(quick.asked.length);
      if (quick.way!.cost > best.way.cost + 1e-9) dearer++;
      patient += best.asked.length;
      hasty += quick.asked.length;
    }
    expect(hasty).toBeLessThan(0.9 * patient);
    expect(dearer).toBeGreaterThan(0);
  });

  it('goes on from every place once, and never back to one it has gone on from', () => {
    const between = drawn(26);
    for (let round = 0; round < 100; round++) {
      const { places, prices } = web(between, 14);
      const tried = new Set<string>();
      const left = new Set<number>();
      const helps = (_: number, a: number, b: number): boolean => {
        left.add(a);
        expect(left.has(b)).toBe(false);
        expect(tried.has(`${a} ${b}`)).toBe(false);
        tried.add(`${a} ${b}`);
        return true;
      };
      const hurried = searched(places, prices, { hurry: 3, helps }).way;
      expect(hurried?.cost).toBe(searched(places, prices, { hurry: 3 }).way?.cost);
    }
  });

  it('takes only tracks that help, told from where their start was come to', () => {
    const between = drawn(24);
    let shorter = 0;
    for (let round = 0; round < 200; round++) {
      const { places, prices } = web(between, 8);
      // On to places of higher number, or to the goal.
      const helps = (before: number, a: number, b: number): boolean => {
        expect(before).toBeLessThan(Math.max(a, 1));
        expect(before < 0).toBe(a === 0);
        return b === 1 || b > a;
      };
      const allowed = prices.map((row, a) => row.map((price, b) => (b === 1 || b > a ? price : Infinity)));
      const least = leastCosts(allowed)[1]!;
      const { way, asked } = searched(places, prices, { helps });
      if (least === Infinity) expect(way).toBeUndefined();
      else expect(way!.cost).toBeCloseTo(least, 9);
      for (const [a, b] of asked) expect(b === 1 || b > a).toBe(true);
      if (least > leastCosts(prices)[1]! + 1e-9) shorter++;
    }
    expect(shorter).toBeGreaterThan(10);
  });
});
