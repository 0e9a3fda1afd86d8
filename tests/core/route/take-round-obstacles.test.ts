import geodesic from 'geographiclib-geodesic';
import { describe, expect, it } from 'vitest';
import {
  edgesNear,
  obstaclesOf,
  type Place,
  partsAt,
  partsNear,
  placeOf,
  roomAt,
  withBeaches,
} from '../../../src/core/route/take-round-obstacles.ts';
import { prepareWaters } from '../../../src/core/route/waters.ts';
import { boxed, drawn, edgesOf, island, lies, offShores, type Point, place, type Shore, sea } from './made-shores.ts';
import { box, waters, zone } from './made-waters.ts';

const WGS84 = geodesic.Geodesic.WGS84;
const none = prepareWaters(waters([]));
const BARS = ['hard', 'hard', 'soft', 'beach', 'none'] as const;

/** Some islands, shoals and limits by chance, one of them with a pond. */
function strewn(between: (least: number, most: number) => number): Shore[] {
  const at = () => place(between(-500, 500), between(-500, 500));
  const shores = BARS.map((bar): Shore => ({ bar, rings: [island(between, at(), 150)] }));
  return [...shores, { bar: 'hard', rings: [boxed(-90, 610, 90, 790), boxed(-60, 640, 60, 760)] }];
}

describe('the plane of metres a way is searched in', () => {
  it('has the metres of a degree that the ellipsoid has there, to 1 in 10,000', () => {
    for (const lat of [-83, -46, -10, 0, 30, 46.1, 60, 83]) {
      const { kx, ky } = obstaclesOf(none, { lat, lon: 12 }, undefined);
      expect(kx / (WGS84.Inverse(lat, 0, lat, 0.01).s12! * 100)).toBeCloseTo(1, 4);
      expect(ky / (WGS84.Inverse(lat - 0.005, 0, lat + 0.005, 0).s12! * 100)).toBeCloseTo(1, 4);
    }
  });

  it('is laid as near to a pole as legs are', () => {
    for (const lat of [-85, 85]) {
      const { kx, ky } = obstaclesOf(none, { lat, lon: 12 }, undefined);
      expect(kx).toBeGreaterThan(9000);
      expect(ky).toBeGreaterThan(111_000);
    }
    expect(obstaclesOf(none, { lat: -80, lon: 0 }, undefined).kx).toBeCloseTo(
      obstaclesOf(none, { lat: 80, lon: 0 }, undefined).kx,
      6,
    );
  });

  it('goes on past 180 degrees', () => {
    const there = prepareWaters(waters([], [179, 10, -179, 12]));
    const obstacles = obstaclesOf(there, { lat: 11, lon: 180 }, undefined);
    const [west, east] = [placeOf(obstacles, { lat: 11, lon: 179.9 }), placeOf(obstacles, { lat: 11.1, lon: -179.9 })];
    expect(east.x - west.x).toBeCloseTo(0.2 * obstacles.kx, 3);
    expect(east.y - west.y).toBeCloseTo(0.1 * obstacles.ky, 3);
  });
});

describe('what bars the way', () => {
  it('is land, a keep-out in its season and at any time without one, and softly a shoal; never a speed limit', () => {
    const at = box(0, 0, 1, 1);
    const there = prepareWaters(
      waters([
        zone({ kind: 'land', name: 'Island' }, at),
        zone({ kind: 'keep-out', name: 'Reserve', season: '03-01/08-31' }, at),
        zone({ kind: 'keep-out', name: 'Range' }, at),
        zone({ kind: 'shoal', name: 'Bank' }, at),
        zone({ kind: 'speed-limit', name: 'Roads', limit_kn: 5 }, at),
      ]),
    );
    const bars = (departure?: string) => obstaclesOf(there, { lat: 0, lon: 0 }, departure).bars;
    expect(bars('2026-06-01T10:00:00Z')).toEqual(['hard', 'hard', 'hard', 'soft', 'none']);
    expect(bars('2026-10-01T10:00:00Z')).toEqual(['hard', 'none', 'hard', 'soft', 'none']);
    expect(bars()).toEqual(['hard', 'hard', 'hard', 'soft', 'none']);
  });

  it('is a beach where a shoal holds an end, and no other shoal, nor land', () => {
    const shores: Shore[] = [
      { bar: 'soft', rings: [boxed(0, 0, 100, 100)] },
      { bar: 'soft', rings: [boxed(200, 0, 300, 100)] },
      { bar: 'hard', rings: [boxed(40, 40, 60, 60)] },
      { bar: 'soft', rings: [boxed(400, 0, 500, 100)] },
    ];
    const there = sea(shores);
    expect(withBeaches(there, [place(50, 50), place(450, 10)]).bars).toEqual(['beach', 'soft', 'hard', 'beach']);
    expect(withBeaches(there, [place(-50, 50), place(150, 10)]).bars).toEqual(['soft', 'soft', 'hard', 'soft']);
    expect(there.bars).toEqual(['soft', 'soft', 'hard', 'soft']);
  });
});

describe('room at a place', () => {
  it('is the distance to the nearest edge of what counts, as looking at every edge tells it', () => {
    const between = drawn(3);
    for (let round = 0; round < 40; round++) {
      const shores = strewn(between);
      const there = sea(shores);
      for (let look = 0; look < 12; look++) {
        const at = place(between(-800, 800), between(-800, 800));
        const most = between(5, 900);
        const barring = shores.filter(({ bar }) => bar === 'hard' || bar === 'soft');
        const land = shores.filter(({ bar }) => bar === 'hard');
        expect(roomAt(there, at, most)).toBeCloseTo(Math.min(most, offShores(at, barring)), 6);
        expect(roomAt(there, at, most, 'hard')).toBeCloseTo(Math.min(most, offShores(at, land)), 6);
      }
    }
  });

  it('is that to a shore drawn every few decimetres', () => {
    const fine = Array.from({ length: 40 }, (_, i): Point => [0.7 * i, i % 2 ? 0.3 : 0]);
    const shores: Shore[] = [{ bar: 'hard', rings: [[...fine, [30, 50], [0, 50]]] }];
    for (let x = -1; x < 29; x += 0.13) {
      for (const y of [-1.5, -0.2, 0.1, 0.4]) {
        expect(roomAt(sea(shores), place(x, y), 9)).toBeCloseTo(offShores(place(x, y), shores), 9);
      }
    }
  });
});

describe('polygons about a place', () => {
  it('hold it as winding round it tells, ponds left out', () => {
    const between = drawn(4);
    let held = 0;
    for (let round = 0; round < 40; round++) {
      const shores = strewn(between);
      const there = sea(shores);
      for (let look = 0; look < 12; look++) {
        const at = place(between(-650, 650), between(-650, 800));
        const holding = shores.flatMap((shore, i) => (shore.bar !== 'none' && lies(at, shore) ? [i] : []));
        expect(partsAt(there, at).sort()).toEqual(holding);
        held += holding.length;
      }
    }
    expect(held).toBeGreaterThan(20);
    expect(partsAt(sea([]), place(0, 0))).toEqual([]);
  });

  it('are near a track where their boxes are, but for those that are no matter', () => {
    const between = drawn(5);
    for (let round = 0; round < 60; round++) {
      const shores = strewn(between);
      const [from, to] = [0, 1].map(() => place(between(-700, 700), between(-700, 700))) as [Place, Place];
      const reach = between(0, 200);
      const near = shores.flatMap(({ bar, rings }, i) => {
        const [xs, ys] = [rings[0]!.map(([x]) => x), rings[0]!.map(([, y]) => y)];
        const apart =
          Math.min(...xs) > Math.max(from.x, to.x) + reach ||
          Math.max(...xs) < Math.min(from.x, to.x) - reach ||
          Math.min(...ys) > Math.max(from.y, to.y) + reach ||
          Math.max(...ys) < Math.min(from.y, to.y) - reach;
        return bar === 'none' || apart ? [] : [i];
      });
      expect(partsNear(sea(shores), from, to, reach).sort()).toEqual(near);
    }
  });
});

describe('edges near a track', () => {
  it('are told in metres; none within reach is left out, and few beyond it are looked at', () => {
    const between = drawn(6);
    let looked = 0;
    let within = 0;
    for (let round = 0; round < 60; round++) {
      const ring = Array.from({ length: 200 }, (_, i): Point => {
        const angle = (i / 200) * 2 * Math.PI;
        const radius = 400 + between(0, 30);
        return [radius * Math.cos(angle), radius * Math.sin(angle)];
      });
      const shore: Shore = { bar: 'hard', rings: [ring] };
      const [from, to] = [0, 1].map(() => place(between(-700, 700), between(-700, 700))) as [Place, Place];
      const reach = between(1, 60);
      const seen: number[][] = [];
      expect(edgesNear(sea([shore]), 0, [from, to], reach, (...edge) => seen.push(edge) < 0)).toBe(false);
      for (const [[ax, ay], [bx, by]] of edgesOf(shore)) {
        const middle = place((ax + bx) / 2, (ay + by) / 2);
        const length = Math.hypot(to.x - from.x, to.y - from.y);
        const along = ((middle.x - from.x) * (to.x - from.x) + (middle.y - from.y) * (to.y - from.y)) / length ** 2;
        const share = Math.min(1, Math.max(0, along));
        const foot = place(from.x + (to.x - from.x) * share, from.y + (to.y - from.y) * share);
        if (Math.hypot(middle.x - foot.x, middle.y - foot.y) > reach) continue;
        within++;
        const same = seen.filter(([x, y, u, v]) => {
          return Math.abs(x! - ax) + Math.abs(y! - ay) + Math.abs(u! - bx) + Math.abs(v! - by) < 1e-6;
        });
        expect(same).toHaveLength(1);
      }
      looked += seen.length;
    }
    expect(within).toBeGreaterThan(200);
    expect(looked).toBeLessThan(4 * within);
  });

  it('are no longer told once one is what was looked for', () => {
    const shore = sea([{ bar: 'hard', rings: [boxed(0, 0, 100, 100)] }]);
    let told = 0;
    expect(edgesNear(shore, 0, [place(-50, -50), place(150, 150)], 10, () => ++told === 2)).toBe(true);
    expect(told).toBe(2);
  });
});
