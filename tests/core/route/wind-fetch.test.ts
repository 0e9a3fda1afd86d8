import { describe, expect, it } from 'vitest';
import { legBetween } from '../../../src/core/route/distance.ts';
import { knownFetch, openToSea } from '../../../src/core/route/known-fetch.ts';
import { prepareWaters } from '../../../src/core/route/waters.ts';
import { effectiveFetch, fetchAt, LONGEST_FETCH, meanFetch } from '../../../src/core/route/wind-fetch.ts';
import { box, waters, zone } from './made-waters.ts';

const land = { kind: 'land', name: 'Land' } as const;
const spot = { lat: 0, lon: 0 };
const wide: [number, number, number, number] = [-1, -1, 1, 1];
/** m in a degree of latitude and of longitude at the equator. */
const NORTH = legBetween(spot, { lat: -0.01, lon: 0 }).distance / 0.01;
const EAST = legBetween(spot, { lat: 0, lon: 0.01 }).distance / 0.01;
const OFF = [-12, -9, -6, -3, 0, 3, 6, 9, 12].map((deg) => (deg * Math.PI) / 180);

/** Straight shores across the whole water, so many metres off in each direction that is given. */
function shores(off: { north?: number; east?: number; south?: number; west?: number }) {
  const zones = [
    ...(off.north ? [zone(land, box(-1, off.north / NORTH, 1, 1))] : []),
    ...(off.south ? [zone(land, box(-1, -1, 1, -off.south / NORTH))] : []),
    ...(off.east ? [zone(land, box(off.east / EAST, -1, 1, 1))] : []),
    ...(off.west ? [zone(land, box(-1, -1, -off.west / EAST, 1))] : []),
  ];
  return prepareWaters(waters(zones, wide));
}

describe('the fetch of a fan of rays', () => {
  it('is their mean, or that weighted by the cosine of how far they lie off the wind', () => {
    expect(meanFetch([1, 2, 6])).toBe(3);
    expect(effectiveFetch([100], 5)).toBe(100);
    // Three rays sixty degrees apart: cosines 0.5, 1, 0.5.
    expect(effectiveFetch([40, 100, 80], 60)).toBeCloseTo((40 * 0.25 + 100 + 80 * 0.25) / 2, 9);
    // Two, thirty either side.
    expect(effectiveFetch([10, 30], 60)).toBeCloseTo((20 * 2 * 0.75) / (2 * Math.cos(Math.PI / 6)), 9);
  });
});

describe('open water upwind', () => {
  it('is that of nine rays to a straight shore, from each side alike', () => {
    const mean = (metres: number) => OFF.reduce((sum, off) => sum + metres / Math.cos(off), 0) / 9;
    for (const metres of [500, 2900, 3100, 5000, 11_000, 26_000]) {
      for (const [side, fromDeg] of [
        ['north', 0],
        ['east', 90],
        ['south', 180],
        ['west', 270],
      ] as const) {
        const found = fetchAt(shores({ [side]: metres }), spot, fromDeg);
        expect(found.length / mean(metres), `${side} ${metres}`).toBeCloseTo(1, 5);
        expect(found.longest / (metres / Math.cos(OFF[0]!))).toBeCloseTo(1, 5);
        expect([found.open, found.onLand, found.at]).toEqual([0, false, spot]);
      }
    }
  });

  it('is to a slanting shore shorter on the one side than on the other', () => {
    // Land north of a line that rises to the east at 45 degrees, 2 km north of the place.
    const up = (x: number) => (2000 + x) / NORTH;
    const ring: [number, number][] = [
      [-30_000 / EAST, up(-30_000)],
      [30_000 / EAST, up(30_000)],
      [-30_000 / EAST, up(30_000)],
      [-30_000 / EAST, up(-30_000)],
    ];
    const found = fetchAt(prepareWaters(waters([zone(land, ring)], wide)), spot, 0);
    // y = 2000 + x along a ray: r (cos - sin) = 2000.
    const rays = OFF.map((off) => 2000 / (Math.cos(off) - Math.sin(off)));
    expect(found.length).toBeCloseTo(rays.reduce((a, b) => a + b) / 9, -1);
    expect(found.longest).toBeCloseTo(rays[8]!, -1);
  });

  it('is fifty kilometres where a ray leaves what is known before it meets land, and counted as open', () => {
    const near = prepareWaters(waters([zone(land, box(-1, 2000 / NORTH, 1, 1))], [-1, -1, 1, 1500 / NORTH]));
    expect(fetchAt(near, spot, 0)).toMatchObject({ length: LONGEST_FETCH, longest: LONGEST_FETCH, open: 9 });
    const farther = prepareWaters(waters([zone(land, box(-1, 2000 / NORTH, 1, 1))], [-1, -1, 1, 3000 / NORTH]));
    expect(fetchAt(farther, spot, 0).open).toBe(0);
    const aside = prepareWaters(waters([zone(land, box(-1, 2000 / NORTH, 1, 1))], [-50 / EAST, -1, 50 / EAST, 1]));
    // Only the middle ray stays within 50 m of the meridian for two kilometres.
    expect(fetchAt(aside, spot, 0).open).toBe(8);
  });

  it('leaves what is known in every direction as in one', () => {
    expect(LONGEST_FETCH).toBe(50_000);
    const away = 2000;
    for (const [fromDeg, x, y] of [
      [0, 0, 1],
      [90, 1, 0],
      [180, 0, -1],
      [270, -1, 0],
    ] as const) {
      const within = (metres: number) => {
        const edge = (axis: number, scale: number) => (axis === 0 ? 1 : metres / scale);
        const known: [number, number, number, number] = [
          x < 0 ? -edge(x, EAST) : -1,
          y < 0 ? -edge(y, NORTH) : -1,
          x > 0 ? edge(x, EAST) : 1,
          y > 0 ? edge(y, NORTH) : 1,
        ];
        const far = y > 0 ? box(-1, away / NORTH, 1, 1) : y < 0 ? box(-1, -1, 1, -away / NORTH) : undefined;
        const ring = far ?? (x > 0 ? box(away / EAST, -1, 1, 1) : box(-1, -1, -away / EAST, 1));
        return fetchAt(prepareWaters(waters([zone(land, ring)], known)), spot, fromDeg).open;
      };
      expect([within(1500), within(3000)], String(fromDeg)).toEqual([9, 0]);
    }
  });

  it('is some rays to land and some past it', () => {
    // An island from 100 m to the east on, 2 km north: rays from 3 degrees on.
    const island = zone(land, box(100 / EAST, 2000 / NORTH, 5000 / EAST, 3000 / NORTH));
    const found = fetchAt(prepareWaters(waters([island], wide)), spot, 0);
    expect(found.open).toBe(5);
    const met = [3, 6, 9, 12].map((deg) => 2000 / Math.cos((deg * Math.PI) / 180));
    expect(found.length).toBeCloseTo((5 * LONGEST_FETCH + met.reduce((a, b) => a + b)) / 9, -1);
    expect(found.longest).toBe(LONGEST_FETCH);
  });

  it('ends at the nearer of two lands', () => {
    const zones = [
      zone(land, box(-1, 9000 / NORTH, 1, 1)),
      zone(land, box(-5000 / EAST, 1000 / NORTH, 5000 / EAST, 2000 / NORTH)),
    ];
    for (const list of [zones, [...zones].reverse()]) {
      expect(fetchAt(prepareWaters(waters(list, wide)), spot, 0).longest).toBeLessThan(1030);
    }
  });

  it('is that of the place, at other latitudes and across the date line too', () => {
    for (const at of [
      { lat: 60, lon: 10 },
      { lat: -60, lon: -10 },
      { lat: 45, lon: 179.99 },
      { lat: 45, lon: -179.99 },
    ]) {
      const step = at.lat > 0 ? -0.01 : 0.01;
      const north = legBetween(at, { lat: at.lat + step, lon: at.lon }).distance / 0.01;
      const east = legBetween(at, { lat: at.lat, lon: at.lon + 0.01 }).distance / 0.01;
      const around: [number, number, number, number] = [at.lon - 0.5, at.lat - 0.5, at.lon + 0.5, at.lat + 0.5];
      const above = box(at.lon - 0.5, at.lat + 2000 / north, at.lon + 0.5, at.lat + 0.5);
      const right = box(at.lon + 4000 / east, at.lat - 0.5, at.lon + 0.5, at.lat + 0.5);
      const there = prepareWaters(waters([zone(land, above), zone(land, right)], around));
      expect(fetchAt(there, at, 0).longest / (2000 / Math.cos(OFF[0]!))).toBeCloseTo(1, 4);
      expect(fetchAt(there, at, 90).length / (OFF.reduce((sum, off) => sum + 4000 / Math.cos(off), 0) / 9)).toBeCloseTo(
        1,
        4,
      );
    }
  });

  it('is none on land, its shore included, and open beyond what is known', () => {
    const north = shores({ north: 2000 });
    expect(fetchAt(north, { lat: 2000 / NORTH, lon: 0 }, 180)).toMatchObject({
      length: 0,
      longest: 0,
      open: 0,
      onLand: true,
    });
    for (const at of [
      { lat: 1.01, lon: 0 },
      { lat: -1.01, lon: 0 },
      { lat: 0, lon: 1.01 },
      { lat: 0, lon: -1.01 },
    ]) {
      expect(fetchAt(north, at, 0)).toMatchObject({ length: LONGEST_FETCH, open: 9, onLand: false, at });
    }
    // On the edge of what is known it is still looked for.
    expect(fetchAt(shores({ north: 2000 }), { lat: -1, lon: 0 }, 0).onLand).toBe(false);
    expect(fetchAt(shores({ south: 2000 }), { lat: -1, lon: 0 }, 0).onLand).toBe(true);
    expect(fetchAt(shores({ east: 2000 }), { lat: 0, lon: 1 }, 0).onLand).toBe(true);
    expect(fetchAt(shores({ west: 2000 }), { lat: 0, lon: -1 }, 0).onLand).toBe(true);
    expect(fetchAt(shores({ north: 2000 }), { lat: 1, lon: 0 }, 0).onLand).toBe(true);
  });
});

describe('a fetch that is known', () => {
  it('is worked out once for a place and a direction', () => {
    const there = shores({ north: 2000 });
    const first = knownFetch(there, spot, 0);
    expect(first).toEqual(fetchAt(there, spot, 0));
    expect(knownFetch(there, { ...spot }, 0)).toBe(first);
    expect(knownFetch(there, spot, 90)).not.toBe(first);
    expect(knownFetch(there, spot, 180).open).toBe(9);
    expect(knownFetch(there, { lat: 0.001, lon: 0 }, 0).length).toBeLessThan(first.length);
    expect(knownFetch(there, { lat: 0, lon: 0.001 }, 0)).not.toBe(first);
    expect(knownFetch(shores({ north: 900 }), spot, 0).length).toBeLessThan(1000);
    expect(knownFetch(undefined, spot, 0).open).toBe(9);
  });

  it('is forgotten after five thousand places', () => {
    const there = shores({ north: 200_000 });
    const first = knownFetch(there, spot, 0);
    for (let i = 1; i < 4999; i++) knownFetch(there, { lat: 0, lon: 2 + i / 1000 }, 0);
    expect(knownFetch(there, spot, 0)).toBe(first);
    knownFetch(there, { lat: 0, lon: 8 }, 0);
    expect(knownFetch(there, spot, 0)).not.toBe(first);
    expect(knownFetch(there, spot, 0)).toEqual(first);
  });
});

describe('a place open to the sea', () => {
  const round = { north: 2000, east: 2000, south: 2000, west: 2000 };

  it('is one from which some of eight directions leaves the local waters without land', () => {
    expect(openToSea(shores(round), spot)).toBe(false);
    for (const side of ['north', 'east', 'south', 'west'] as const) {
      const { [side]: _, ...rest } = round;
      expect(openToSea(shores(rest), spot), side).toBe(true);
    }
    expect(openToSea(undefined, spot)).toBe(true);
  });

  it('may be open on a corner alone', () => {
    const arm = 3000;
    for (const [x, y] of [
      [1, 1],
      [1, -1],
      [-1, -1],
      [-1, 1],
    ] as const) {
      // Land all round but for a gap of 600 m on that corner.
      const ring = Array.from({ length: 200 }, (_, i) => (i / 200) * 360).filter((deg) => {
        const corner = ((Math.atan2(x, y) * 180) / Math.PI + 360) % 360;
        return Math.abs(((deg - corner + 540) % 360) - 180) > 6;
      });
      const blocks = ring.map((deg) => {
        const [east, north] = [Math.sin((deg * Math.PI) / 180) * arm, Math.cos((deg * Math.PI) / 180) * arm];
        return zone(land, box((east - 60) / EAST, (north - 60) / NORTH, (east + 60) / EAST, (north + 60) / NORTH));
      });
      expect(openToSea(prepareWaters(waters(blocks, wide)), spot)).toBe(true);
    }
  });
});
