import { describe, expect, it } from 'vitest';
import { legBetween } from '../../../src/core/route/distance.ts';
import { prepareWaters } from '../../../src/core/route/waters.ts';
import { fetchAt, LONGEST_FETCH } from '../../../src/core/route/wind-fetch.ts';
import { worstFetches } from '../../../src/core/route/worst-fetch.ts';
import { box, waters, zone } from './made-waters.ts';

const land = { kind: 'land', name: 'Land' } as const;
const spot = { lat: 0, lon: 0 };
/** Degrees on the equator in 1000 m. */
const KM = 1 / 111.32;
const wide: [number, number, number, number] = [-1, -1, 1, 1];

/** A straight shore to the north, so far off, m. */
function shoreAt(distance: number, kind = land) {
  const lat = (distance / legBetween(spot, { lat: 0.1, lon: 0 }).distance) * 0.1;
  return prepareWaters(waters([zone(kind, box(-1, lat, 1, 1))], wide));
}

describe('fetchAt', () => {
  it('is the mean of nine slanting rays to a straight shore upwind', () => {
    const rays = [-12, -9, -6, -3, 0, 3, 6, 9, 12].map((deg) => 2000 / Math.cos((deg * Math.PI) / 180));
    const mean = rays.reduce((sum, ray) => sum + ray, 0) / 9;
    const found = fetchAt(shoreAt(2000), spot, 0);
    expect(Math.abs(found.length - mean)).toBeLessThan(0.1);
    expect(Math.abs(found.longest - rays[0]!)).toBeLessThan(0.1);
    expect(found).toMatchObject({ open: 0, onLand: false });
  });

  it('is fifty kilometres where the rays leave what is known', () => {
    expect(fetchAt(shoreAt(2000), spot, 180)).toMatchObject({ length: LONGEST_FETCH, open: 9 });
    expect(fetchAt(shoreAt(2000), { lat: 2, lon: 0 }, 180)).toMatchObject({ length: LONGEST_FETCH, open: 9 });
  });

  it('is fifty kilometres without waters or land', () => {
    expect(fetchAt(undefined, spot, 0)).toMatchObject({ length: LONGEST_FETCH, open: 9 });
    expect(fetchAt(prepareWaters(waters([])), spot, 0)).toMatchObject({ length: LONGEST_FETCH, open: 9 });
    expect(fetchAt(prepareWaters(waters([], wide)), spot, 0)).toMatchObject({ length: LONGEST_FETCH, open: 9 });
  });

  it('is capped at fifty kilometres off a far shore', () => {
    expect(fetchAt(shoreAt(60_000), spot, 0)).toMatchObject({ length: LONGEST_FETCH, open: 9 });
  });

  it('counts rays past the end of an island as open water', () => {
    // An island 2 km north, reaching from the middle ray westward.
    const island = zone(land, box(-5 * KM, 2 * KM, 0.01 * KM, 3 * KM));
    const found = fetchAt(prepareWaters(waters([island], wide)), spot, 0);
    expect(found.open).toBe(4);
    expect(found.length).toBeGreaterThan((4 * LONGEST_FETCH + 5 * 2000) / 9);
    expect(found.length).toBeLessThan((4 * LONGEST_FETCH + 5 * 2050) / 9);
  });

  it('does not take shoals or keep-outs for land', () => {
    const shoal = prepareWaters(waters([zone({ kind: 'shoal', name: 'Bank' }, box(-1, KM, 1, 1))], wide));
    expect(fetchAt(shoal, spot, 0).open).toBe(9);
  });

  it('is none on land, and says that it is land', () => {
    expect(fetchAt(shoreAt(2000), { lat: 0.5, lon: 0 }, 0)).toMatchObject({ length: 0, onLand: true });
  });
});

describe('worstFetches', () => {
  it('finds the end of a leg that comes out of the lee', () => {
    const ready = prepareWaters(
      waters([zone(land, box(-2 * KM, KM, 2 * KM, 2 * KM)), zone(land, box(-1, 9 * KM, 1, 1))], wide),
    );
    const to = { lat: 0, lon: 5 * KM };
    const { length, at } = worstFetches(ready, [{ from: spot, to }])(0, 0);
    expect(at.lon).toBeGreaterThan(2.5 * KM);
    expect(length).toBeGreaterThan(8900);
    expect(fetchAt(ready, spot, 0).length).toBeLessThan(1100);
  });

  it('is the same whichever way the leg is sailed', () => {
    const ready = shoreAt(3000);
    const [from, to] = [spot, { lat: 0.01, lon: 0.05 }];
    const out = worstFetches(ready, [{ from, to }])(0, 20).length;
    expect(worstFetches(ready, [{ from: to, to: from }])(0, 20).length).toBeCloseTo(out, 6);
  });

  it('hardly changes when the same way is drawn in many short legs', () => {
    const ready = prepareWaters(
      waters([zone(land, box(-2 * KM, KM, 2 * KM, 2 * KM)), zone(land, box(-1, 9 * KM, 1, 1))], wide),
    );
    const points = Array.from({ length: 201 }, (_, i) => ({ lat: 0, lon: (i / 200) * 5 * KM }));
    const legs = points.slice(1).map((to, i) => ({ from: points[i]!, to }));
    const fetch = worstFetches(ready, legs);
    const worst = Math.max(...legs.map((_, leg) => fetch(leg, 0).length));
    const whole = worstFetches(ready, [{ from: spot, to: points[200]! }])(0, 0).length;
    expect(Math.abs(worst - whole)).toBeLessThan(100);
    // Each short leg speaks for water at most 250 m off.
    for (const [leg, { from }] of legs.entries()) {
      expect(legBetween(fetch(leg, 0).at, from).distance).toBeLessThan(280);
    }
  });

  it('answers each direction anew', () => {
    const fetch = worstFetches(shoreAt(3000), [{ from: spot, to: { lat: 0, lon: KM } }]);
    expect(fetch(0, 0).open).toBe(0);
    expect(fetch(0, 180).open).toBe(9);
    expect(fetch(0, 0).open).toBe(0);
  });

  it('passes over samples that lie on land', () => {
    const ready = prepareWaters(waters([zone(land, box(-KM, -KM, KM, KM)), zone(land, box(-1, 5 * KM, 1, 1))], wide));
    const found = worstFetches(ready, [{ from: spot, to: { lat: 0, lon: 3 * KM } }])(0, 0);
    expect(found.onLand).toBe(false);
    expect(found.length).toBeGreaterThan(4900);
  });
});
