import geodesic from 'geographiclib-geodesic';
import { describe, expect, it } from 'vitest';
import {
  chartable,
  compass,
  destination,
  interpolate,
  legBetween,
  lonBetween,
} from '../../../src/core/route/distance.ts';
import type { LatLon } from '../../../src/core/route/shapes.ts';

const WGS84 = geodesic.Geodesic.WGS84;

interface RandomLegs {
  readonly count: number;
  readonly longest: number;
  readonly latitude: number;
}

/** Random legs with their geodesic lengths; the same on every run. */
function* randomLegs({
  count,
  longest,
  latitude,
}: RandomLegs): Generator<{ from: LatLon; to: LatLon; length: number }> {
  let seed = 20240917;
  const next = () => {
    seed = (Math.imul(seed, 1664525) + 1013904223) >>> 0;
    return seed / 2 ** 32;
  };
  for (let leg = 0; leg < count; ) {
    const from = { lat: (2 * next() - 1) * latitude, lon: 360 * next() - 180 };
    const length = 200 + next() * (longest - 200);
    const end = WGS84.Direct(from.lat, from.lon, 360 * next(), length);
    const to = { lat: end.lat2!, lon: end.lon2! };
    if (Math.abs(to.lat) > latitude) continue;
    leg++;
    yield { from, to, length };
  }
}

function worstError(legs: RandomLegs): number {
  let worst = 0;
  for (const { from, to, length } of randomLegs(legs)) {
    worst = Math.max(worst, Math.abs(legBetween(from, to).distance / length - 1));
  }
  return worst;
}

describe('legBetween', () => {
  it('is within 0.0004 ppm of the geodesic on 5,000 legs to 40 km below 65 degrees', () => {
    expect(worstError({ count: 5000, longest: 40_000, latitude: 65 })).toBeLessThan(4e-10);
  });

  it('is within 0.02 ppm of the geodesic on 5,000 legs to 200 km below 65 degrees', () => {
    expect(worstError({ count: 5000, longest: 200_000, latitude: 65 })).toBeLessThan(2e-8);
  });

  it('is within 5 ppm of the geodesic on 5,000 legs to 200 km below 85 degrees', () => {
    expect(worstError({ count: 5000, longest: 200_000, latitude: 85 })).toBeLessThan(5e-6);
  });

  it('measures long legs along the straight line of the chart, a little longer than the geodesic', () => {
    const from = { lat: 50, lon: -20 };
    const to = { lat: 50, lon: -5 };
    const straight = WGS84.Inverse(from.lat, from.lon, to.lat, to.lon).s12!;
    const { distance, trackDeg } = legBetween(from, to);
    expect(distance / straight).toBeGreaterThan(1);
    expect(distance / straight).toBeLessThan(1.002);
    expect(trackDeg).toBeCloseTo(90, 9);
  });

  it('is what geodesics measure in the fewest equal pieces of 200 km or less, to 0.03 ppm, and points as they do', () => {
    for (const [from, to] of [
      [
        { lat: 50, lon: -20 },
        { lat: 52.5, lon: -17 },
      ],
      [
        { lat: -40, lon: 178 },
        { lat: -44, lon: -178 },
      ],
      [
        { lat: 10, lon: 5 },
        { lat: -3, lon: 1 },
      ],
      [
        { lat: 60, lon: 3 },
        { lat: 60.1, lon: -12 },
      ],
    ] as const) {
      let [length, east, north] = [0, 0, 0];
      const dLon = ((to.lon - from.lon + 540) % 360) - 180;
      const at = (share: number) => ({ lat: from.lat + (to.lat - from.lat) * share, lon: from.lon + dLon * share });
      const pieces = Math.ceil(WGS84.Inverse(from.lat, from.lon, to.lat, to.lon).s12! / 200_000);
      expect(pieces).toBeGreaterThan(1);
      for (let piece = 0; piece < pieces; piece++) {
        const [a, b] = [at(piece / pieces), at((piece + 1) / pieces)];
        const { s12, azi1, azi2 } = WGS84.Inverse(a.lat, a.lon, b.lat, b.lon);
        const course = (((azi1! + azi2!) / 2) * Math.PI) / 180;
        length += s12!;
        east += s12! * Math.sin(course);
        north += s12! * Math.cos(course);
      }
      const leg = legBetween(from, to);
      expect(Math.abs(leg.distance / length - 1)).toBeLessThan(3e-8);
      expect(Math.abs(lonBetween(leg.trackDeg, (Math.atan2(east, north) * 180) / Math.PI))).toBeLessThan(1e-4);
    }
  });

  it('crosses the antimeridian the short way', () => {
    const leg = legBetween({ lat: 10, lon: 179.9 }, { lat: 10, lon: -179.9 });
    expect(leg.distance).toBeCloseTo(legBetween({ lat: 10, lon: 0 }, { lat: 10, lon: 0.2 }).distance, 6);
    expect(leg.trackDeg).toBeCloseTo(90, 9);
  });

  it('has no length and points north between a place and itself', () => {
    expect(legBetween({ lat: 46, lon: -32 }, { lat: 46, lon: -32 })).toEqual({ distance: 0, trackDeg: 0 });
  });

  it('refuses the poles and what is no place', () => {
    const polar = { lat: 89, lon: 0 };
    expect(chartable(polar)).toBe(false);
    expect(chartable({ lat: Number.NaN, lon: 0 })).toBe(false);
    expect(chartable({ lat: 84.9, lon: 200 })).toBe(true);
    expect(chartable({ lat: 85, lon: 0 })).toBe(true);
    expect(chartable({ lat: -85, lon: 0 })).toBe(true);
    expect(chartable({ lat: 85.01, lon: 0 })).toBe(false);
    expect(chartable({ lat: -85.01, lon: 0 })).toBe(false);
    expect(() => legBetween(polar, { lat: 80, lon: 0 })).toThrow(RangeError);
  });
});

describe('destination', () => {
  it('lands where the leg measures the same distance and track', () => {
    for (const bearing of [0, 37, 90, 143, 180, 261, 300]) {
      for (const distance of [5, 1852, 30_000, 150_000]) {
        const from = { lat: 58.5, lon: -3 };
        const leg = legBetween(from, destination(from, bearing, distance));
        expect(leg.distance / distance - 1).toBeCloseTo(0, 9);
        expect(lonBetween(leg.trackDeg, bearing)).toBeCloseTo(0, 6);
      }
    }
  });

  it('lands within half a millimetre of there to 20 km, at every latitude below 65 degrees', () => {
    let worst = 0;
    for (let i = 0; i < 20_000; i++) {
      const from = { lat: 65 * (2 * ((i * 0.618034) % 1) - 1), lon: 12 };
      const bearing = (i * 137.5) % 360;
      const leg = legBetween(from, destination(from, bearing, 20_000));
      const aside = Math.abs(lonBetween(leg.trackDeg, bearing)) * (Math.PI / 180) * 20_000;
      worst = Math.max(worst, Math.abs(leg.distance - 20_000), aside);
    }
    expect(worst).toBeLessThan(0.0005);
  });

  it('lands there on long ways as well, piece after piece on the same bearing', () => {
    const from = { lat: 40, lon: 178 };
    for (const bearing of [20, 100, 215, 340]) {
      for (const distance of [250_000, 390_000, 700_000]) {
        let at: LatLon = from;
        for (let piece = 0; piece < 50; piece++) at = destination(at, bearing, distance / 50);
        const there = destination(from, bearing, distance);
        expect(WGS84.Inverse(at.lat, at.lon, there.lat, there.lon).s12!).toBeLessThan(distance * 2.5e-4);
        // The fewest pieces of 200 km or less, as legs are measured.
        const fewest = Math.ceil(distance / 200_000);
        let same: LatLon = from;
        for (let piece = 0; piece < fewest; piece++) same = destination(same, bearing, distance / fewest);
        expect(WGS84.Inverse(same.lat, same.lon, there.lat, there.lon).s12!).toBeLessThan(0.001);
        const back = destination(from, bearing + 180, -distance);
        expect(back.lat).toBeCloseTo(there.lat, 9);
        expect(lonBetween(back.lon, there.lon)).toBeCloseTo(0, 9);
      }
    }
  });

  it('agrees with the geodesic that starts half the convergence of the meridians earlier', () => {
    const to = destination({ lat: 50, lon: 0 }, 90, 50_000);
    const straight = WGS84.Inverse(50, 0, to.lat, to.lon);
    expect(straight.s12!).toBeCloseTo(50_000, 3);
    expect((straight.azi1! + straight.azi2!) / 2).toBeCloseTo(90, 6);
  });

  it('goes on past 180 degrees and stays put for no distance', () => {
    expect(destination({ lat: 0, lon: 179.99 }, 90, 5000).lon).toBeLessThan(-179);
    expect(destination({ lat: 20, lon: 30 }, 45, 0)).toEqual({ lat: 20, lon: 30 });
  });
});

describe('interpolate', () => {
  it('returns the ends as given and the middle half-way', () => {
    const from = { lat: 10, lon: 179 };
    const to = { lat: 12, lon: -179 };
    expect(interpolate(from, to, 0)).toEqual(from);
    expect(interpolate(from, to, 1)).toEqual(to);
    const middle = interpolate(from, to, 0.5);
    expect(middle.lat).toBe(11);
    expect(Math.abs(middle.lon)).toBeCloseTo(180, 9);
  });
});

describe('interpolate across the 180th meridian', () => {
  it('comes back on the other side, either way, and stays on it', () => {
    const [east, west] = [
      { lat: 0, lon: 170 },
      { lat: 0, lon: -170 },
    ];
    expect(interpolate(east, west, 0.9).lon).toBeCloseTo(-172, 9);
    expect(interpolate(west, east, 0.9).lon).toBeCloseTo(172, 9);
    expect(interpolate(east, west, 0.5).lon).toBe(180);
    expect(interpolate(west, east, 0.5).lon).toBe(-180);
  });

  it('leaves the ends as they are written', () => {
    const [from, to] = [
      { lat: 0.1, lon: 190 },
      { lat: 0.7, lon: 200 },
    ];
    expect(interpolate(from, to, 0)).toEqual(from);
    expect(interpolate(from, to, 1)).toEqual(to);
  });
});

describe('lonBetween', () => {
  it('is the short way round, from half round west up to half round east', () => {
    expect(
      [
        [0, 180],
        [0, -180],
        [-350, 350],
        [350, -350],
        [-30, 800],
        [10, 10],
      ].map(([from, to]) => lonBetween(from!, to!)),
    ).toEqual([-180, -180, -20, 20, 110, 0]);
  });
});

describe('compass', () => {
  it('brings any angle into 0 up to 360', () => {
    expect([-90, 360, 725, -1e-20, -0].map(compass)).toEqual([270, 0, 5, 0, 0]);
    // Those within stay as they are to the last figure.
    expect([0.1, 0.7, 359.9, -0.1].map(compass)).toEqual([0.1, 0.7, 359.9, 359.9]);
  });
});
