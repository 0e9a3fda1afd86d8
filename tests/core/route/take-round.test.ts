import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { destination, legBetween } from '../../../src/core/route/distance.ts';
import { sailedLegs } from '../../../src/core/route/sailed-legs.ts';
import type { LatLon, Route, ZoneProperties } from '../../../src/core/route/shapes.ts';
import { splitLegs } from '../../../src/core/route/split-legs.ts';
import { type RoundTrack, takeRound } from '../../../src/core/route/take-round.ts';
import { obstaclesOf, type Place } from '../../../src/core/route/take-round-obstacles.ts';
import { drawnLegOf, takeRouteRound } from '../../../src/core/route/take-round-route.ts';
import { prepareWaters } from '../../../src/core/route/waters.ts';
import { boxed, drawn, island, offShores, type Point, type Shore } from './made-shores.ts';
import { box, waters, zone } from './made-waters.ts';

const haven = prepareWaters(
  JSON.parse(readFileSync(new URL('../../../shared/waters/haven.geojson', import.meta.url), 'utf8')),
);

/** Open water of 0.2 degrees about this middle. */
const MIDDLE: LatLon = { lat: 46.1, lon: -31.9 };
const around = (bearingDeg: number, distance: number) => destination(MIDDLE, bearingDeg, distance);

/** Zones with corners at these bearings and distances from the middle. */
function corners(properties: ZoneProperties, ...at: [number, number][]) {
  const ring = at.map(([bearing, distance]): [number, number] => {
    const { lat, lon } = around(bearing, distance);
    return [lon, lat];
  });
  return zone(properties, [...ring, ring[0]!]);
}

const known: [number, number, number, number] = [-32, 46, -31.8, 46.2];
const made = (...zones: ReturnType<typeof zone>[]) => prepareWaters(waters(zones, known));

/** A round island of 500 m about the middle. */
const land: ZoneProperties = { kind: 'land', name: 'Island' };
const round = (properties = land, radius = 500) =>
  corners(properties, ...Array.from({ length: 360 }, (_, deg): [number, number] => [360 - deg, radius]));

const scale = obstaclesOf(prepareWaters(waters([])), MIDDLE, undefined);

/** A place so many metres east and north of the middle, and islands drawn there. */
const off = ([x, y]: Point): LatLon => ({ lat: MIDDLE.lat + y / scale.ky, lon: MIDDLE.lon + x / scale.kx });
function islands(rings: readonly (readonly Point[])[], [west, south, east, north]: [number, number, number, number]) {
  const [least, most] = [off([west, south]), off([east, north])];
  const lands = rings.map((ring) =>
    zone(
      land,
      ring.map((point): [number, number] => [off(point).lon, off(point).lat]),
    ),
  );
  return prepareWaters(waters(lands, [least.lon, least.lat, most.lon, most.lat]));
}

function track(found: ReturnType<typeof takeRound>): RoundTrack {
  if (!found.ok) throw new Error(found.problems[0]!.code);
  return found.value;
}

const code = (found: ReturnType<typeof takeRound>) =>
  found.ok ? 'found' : found.problems.map((p) => [p.code, p.path]);

describe('takeRound', () => {
  it('leaves a clear leg as it is', () => {
    const { via, distance, kept, clear } = track(
      takeRound(made(round()), around(0, 3000), around(60, 3000), { clearance: 50 }),
    );
    expect(via).toEqual([]);
    expect(distance).toBeCloseTo(legBetween(around(0, 3000), around(60, 3000)).distance, 6);
    expect([kept, clear]).toEqual([50, true]);
  });

  it('goes round an island by the shortest way that geometry gives, to 1 %', () => {
    for (const clearance of [20, 50, 200]) {
      // Two tangents and the arc between them.
      const radius = 500 + clearance;
      const reach = 2000;
      const tangent = Math.sqrt(reach ** 2 - radius ** 2);
      const shortest = 2 * tangent + radius * (Math.PI - 2 * Math.acos(radius / reach));
      const { distance, kept, clear } = track(
        takeRound(made(round()), around(90, reach), around(270, reach), { clearance }),
      );
      expect(distance).toBeGreaterThan(shortest * 0.9995);
      expect(distance).toBeLessThan(shortest * 1.01);
      expect([kept, clear]).toEqual([clearance, true]);
    }
  });

  it('takes the side that is shorter', () => {
    const long = corners(land, [0, 4000], [180, 1000], [181, 1000], [359.9, 4000]);
    const { via } = track(takeRound(made(long), around(90, 1500), around(270, 1500), { clearance: 50 }));
    expect(via.length).toBeGreaterThan(0);
    for (const { lat } of via) expect(lat).toBeLessThan(MIDDLE.lat);
  });

  it('passes a gap only if the clearance fits twice', () => {
    // Two long walls with 120 m between them.
    const north = corners(land, [0.1, 60], [0.1, 4000], [359.9, 4000], [359.9, 60]);
    const south = corners(land, [180.1, 60], [180.1, 4000], [179.9, 4000], [179.9, 60]);
    const across = (clearance: number) =>
      track(takeRound(made(north, south), around(80, 1000), around(280, 1000), { clearance })).distance;
    expect(across(50)).toBeLessThan(2100);
    expect(across(70)).toBeGreaterThan(6000);
  });

  it('goes through the only gap there is, with what room it has', () => {
    const north = zone(land, box(-31.9005, 46.1005, -31.8995, 46.2));
    const south = zone(land, box(-31.9005, 46, -31.8995, 46.0999));
    const { kept, clear, distance } = track(
      takeRound(made(north, south), around(80, 1000), around(280, 1000), { clearance: 200 }),
    );
    // The gap is 66.7 m wide.
    expect(kept).toBeGreaterThan(20);
    expect(kept).toBeLessThan(34);
    expect(clear).toBe(false);
    expect(distance).toBeLessThan(2300);
  });

  it('turns in a bent channel of any width in which the clearance fits', () => {
    for (let wide = 107; wide < 116; wide += 0.1) {
      const outer: Point[] = [
        [-2000, wide],
        [wide, wide],
        [wide, -2000],
        [2000, -2000],
        [2000, 2000],
        [-2000, 2000],
      ];
      const channel = islands([boxed(-2000, -2000, 0, 0), outer], [-3000, -3000, 3000, 3000]);
      const { distance, clear } = track(
        takeRound(channel, off([-1000, wide / 2]), off([wide / 2, -1000]), { clearance: 50 }),
      );
      expect(clear).toBe(true);
      expect(distance).toBeLessThan(2150);
    }
  });

  it('keeps off a small rock, however it lies', () => {
    for (let deg = 0; deg < 180; deg += 3) {
      const [x, y] = [4 * Math.cos((deg * Math.PI) / 180), 4 * Math.sin((deg * Math.PI) / 180)];
      const rock: Point[] = [
        [x, y],
        [-y / 9, x / 9],
        [-x, -y],
        [y / 9, -x / 9],
      ];
      const there = islands([rock], [-3000, -3000, 3000, 3000]);
      const { distance, kept, clear } = track(takeRound(there, off([-90, 0]), off([90, 0]), { clearance: 50 }));
      expect([kept, clear]).toEqual([50, true]);
      expect(distance).toBeLessThan(250);
    }
  });

  it('holds the clearance all along among islands, has no turn too many, and is as long back', () => {
    const between = drawn(41);
    let turns = 0;
    for (let round = 0; round < 25; round++) {
      const rings = Array.from({ length: 6 }, () =>
        island(between, { x: between(-700, 700), y: between(-500, 500) }, 180),
      );
      const shores = rings.map((ring): Shore => ({ bar: 'hard', rings: [ring] }));
      const there = islands(rings, [-3000, -3000, 3000, 3000]);
      const [from, to] = [off([-1200, between(-300, 300)]), off([1200, between(-300, 300)])];
      const clearance = between(10, 60);
      const found = track(takeRound(there, from, to, { clearance }));
      if (!found.clear) continue;
      const way = [from, ...found.via, to].map(({ lat, lon }) => ({
        x: (lon - MIDDLE.lon) * scale.kx,
        y: (lat - MIDDLE.lat) * scale.ky,
      }));
      const least = (a: Place, b: Place) =>
        Math.min(
          ...Array.from({ length: 101 }, (_, i) =>
            offShores({ x: a.x + ((b.x - a.x) * i) / 100, y: a.y + ((b.y - a.y) * i) / 100 }, shores),
          ),
        );
      way.slice(1).forEach((b, i) => {
        expect(least(way[i]!, b)).toBeGreaterThan(clearance - 0.05);
        turns++;
        if (i > 0) expect(least(way[i - 1]!, b)).toBeLessThan(clearance + 1);
      });
      expect(track(takeRound(there, to, from, { clearance })).distance).toBeCloseTo(found.distance, 0);
    }
    expect(turns).toBeGreaterThan(40);
  });

  it('keeps five metres at least and a kilometre at most', () => {
    const open = made();
    const kept = (clearance: number) => track(takeRound(open, around(0, 3000), around(180, 3000), { clearance })).kept;
    expect([kept(1), kept(5), kept(300), kept(1000), kept(5000)]).toEqual([5, 5, 300, 1000, 1000]);
  });

  it('passes between an island and the end of the known waters at the clearance, where there is so much water', () => {
    for (const wide of [58, 62, 66, 100]) {
      const there = islands([boxed(-50, -5000, 50, -wide)], [-3000, -5000, 3000, 0]);
      const { kept, clear, via } = track(
        takeRound(there, off([-1000, -wide - 100]), off([1000, -wide - 100]), { clearance: 50 }),
      );
      expect([kept, clear]).toEqual([50, true]);
      for (const { lat } of via) expect(lat).toBeLessThanOrEqual(MIDDLE.lat);
    }
  });

  it('finds no way where land lies right across', () => {
    const wall = zone(land, box(-31.9005, 45.9, -31.8995, 46.3));
    expect(code(takeRound(made(wall), around(90, 1000), around(270, 1000), { clearance: 20 }))).toEqual([
      ['no-way', ''],
    ]);
  });

  it('says which end lies on land, against it, in a keep-out or outside the known waters', () => {
    const there = made(
      round(),
      corners({ kind: 'keep-out', name: 'Reserve' }, [90, 2000], [90, 2500], [100, 2500], [100, 2000]),
    );
    const choice = { clearance: 50 };
    expect(code(takeRound(there, around(0, 100), around(0, 2000), choice))).toEqual([['on-land', 'from']]);
    expect(code(takeRound(there, around(0, 2000), around(0, 500.5), choice))).toEqual([['too-near', 'to']]);
    expect(code(takeRound(there, around(95, 2200), around(0, 100), choice))).toEqual([
      ['in-keep-out', 'from'],
      ['on-land', 'to'],
    ]);
    expect(code(takeRound(there, around(0, 2000), { lat: 47, lon: -31.9 }, choice))).toEqual([
      ['outside-waters', 'to'],
    ]);
    expect(code(takeRound(there, around(0, 2000), { lat: -89, lon: -31.9 }, choice))).toEqual([
      ['too-far-north', 'to'],
    ]);
    const told = (to: LatLon) => takeRound(there, around(0, 2000), to, choice);
    expect(told(around(0, 500.5))).toMatchObject({ problems: [{ code: 'too-near', limit: 1 }] });
    const inland = told(around(0, 100));
    expect(inland.ok ? [] : Object.keys(inland.problems[0]!)).not.toContain('limit');
    expect(code(takeRound(there, { lat: 89, lon: -31.9 }, around(0, 2000), choice))).toEqual([
      ['too-far-north', 'from'],
    ]);
  });

  it('goes round a keep-out in its season and through it out of season', () => {
    const reserve = round({ kind: 'keep-out', name: 'Reserve', season: '03-01/08-31' });
    const at = (departure?: string) =>
      track(takeRound(made(reserve), around(90, 2000), around(270, 2000), { clearance: 50, departure })).via.length;
    expect(at('2026-06-01T10:00:00Z')).toBeGreaterThan(0);
    expect(at('2026-10-01T10:00:00Z')).toBe(0);
    expect(at()).toBeGreaterThan(0);
  });

  it('goes round a shoal, and over one only if nothing else leads there', () => {
    const shoal: ZoneProperties = { kind: 'shoal', name: 'Bank' };
    const free = track(takeRound(made(round(shoal)), around(90, 2000), around(270, 2000), { clearance: 50 }));
    expect(free.via.length).toBeGreaterThan(0);
    expect(free.shoals).toEqual([]);
    const bar = zone(shoal, box(-31.9005, 45.9, -31.8995, 46.3));
    const barred = track(takeRound(made(bar), around(90, 1000), around(270, 1000), { clearance: 50 }));
    expect(barred.shoals).toEqual(['Bank']);
    expect(barred.clear).toBe(false);
  });

  it('leaves a beach inside a shoal without being sent along it', () => {
    const beach = track(
      takeRound(made(round({ kind: 'shoal', name: 'Bank' })), around(90, 400), around(90, 3000), { clearance: 50 }),
    );
    expect(beach.via).toEqual([]);
    expect(beach.clear).toBe(true);
    expect(beach.shoals).toEqual(['Bank']);
  });

  it('starts from a quay nearer to land than the clearance', () => {
    const { kept, clear, distance } = track(
      takeRound(made(round()), around(90, 510), around(270, 2000), { clearance: 100 }),
    );
    expect(kept).toBeGreaterThan(5);
    expect(clear).toBe(true);
    expect(distance).toBeLessThan(3700);
  });

  it('finds the same across 180 degrees', () => {
    const shift = (lon: number) => (lon + 31.9 + 180 > 180 ? lon + 31.9 - 180 : lon + 31.9 + 180);
    const ring = round().geometry.coordinates[0] as [number, number][];
    const there = prepareWaters(
      waters(
        [
          zone(
            land,
            ring.map(([lon, lat]): [number, number] => [shift(lon), lat]),
          ),
        ],
        [179.9, 46, -179.9, 46.2],
      ),
    );
    const moved = ({ lat, lon }: LatLon) => ({ lat, lon: shift(lon) });
    const sides = new Set<boolean>();
    for (const [from, to] of [
      [90, 260],
      [10, 200],
      [350, 160],
    ] as const) {
      const here = track(takeRound(made(round()), around(from, 2000), around(to, 2000), { clearance: 50 }));
      const far = track(takeRound(there, moved(around(from, 2000)), moved(around(to, 2000)), { clearance: 50 }));
      expect(far.distance).toBeCloseTo(here.distance, 1);
      expect(far.via).toHaveLength(here.via.length);
      far.via.forEach(({ lat, lon }, i) => {
        expect(Math.abs(lon)).toBeLessThanOrEqual(180);
        expect(lat).toBeCloseTo(here.via[i]!.lat, 4);
        expect(lon).toBeCloseTo(shift(here.via[i]!.lon), 4);
        sides.add(lon > 0);
      });
    }
    expect(sides.size).toBe(2);
  });
});

describe('takeRouteRound', () => {
  const slip = { lat: 46.02739, lon: -31.99008 };
  const jetty = { lat: 46.00145, lon: -32.0084 };
  const cove = { lat: 45.99679, lon: -31.95121 };
  const route: Route = {
    shape: 'loop',
    waypoints: [{ ...slip, speed: 3 }, jetty, { ...cove, name: 'Cove' }],
    speed: 6,
  };
  const choice = { clearance: 50, departure: '2026-07-15T09:30:00+01:00' };

  it('leaves nothing of land, shoals and keep-outs on any leg of the invented estuary', () => {
    const { waypoints, added, rounded, refused } = takeRouteRound(route, haven, choice);
    expect(refused).toEqual([]);
    expect(rounded.map(({ leg }) => leg)).toEqual([0, 1, 2]);
    expect(waypoints).toHaveLength(3 + added);
    const { hazards } = splitLegs(sailedLegs({ ...route, waypoints }).legs, haven);
    expect(hazards).toEqual([]);
    expect(waypoints.filter(({ name }) => name === 'Cove')).toHaveLength(1);
  });

  it('carries on the speed of the leg', () => {
    const { waypoints } = takeRouteRound(route, haven, choice);
    const first = waypoints.findIndex(({ lat }) => lat === jetty.lat);
    for (const { speed } of waypoints.slice(0, first)) expect(speed).toBe(3);
    for (const { speed } of waypoints.slice(first)) expect(speed).toBeUndefined();
  });

  it('changes only the legs it is asked to', () => {
    const { waypoints, rounded } = takeRouteRound(route, haven, choice, [1]);
    expect(rounded.map(({ leg }) => leg)).toEqual([1]);
    expect(waypoints.slice(0, 2)).toEqual(route.waypoints.slice(0, 2));
  });

  it('has nothing more to do the second time', () => {
    for (const clearance of [20, 50, 100, 200]) {
      const once = takeRouteRound(route, haven, { ...choice, clearance });
      const twice = takeRouteRound({ ...route, waypoints: once.waypoints }, haven, { ...choice, clearance });
      expect(twice.added).toBe(0);
    }
  });

  it('names the waypoint that lies on land, and still mends the other legs', () => {
    const inland = { lat: 46.05, lon: -31.93 };
    const { refused, rounded } = takeRouteRound({ ...route, waypoints: [slip, jetty, inland] }, haven, choice);
    expect(rounded.map(({ leg }) => leg)).toEqual([0]);
    expect(refused.map(({ leg, problems }) => [leg, problems[0]!.code, problems[0]!.path])).toEqual([
      [1, 'on-land', 'waypoints.2'],
      [2, 'on-land', 'waypoints.2'],
    ]);
  });

  it('knows the drawn leg of a leg home', () => {
    const there: Route = { ...route, shape: 'out-and-home' };
    expect([0, 1, 2, 3].map((sailed) => drawnLegOf(there, sailed))).toEqual([0, 1, 1, 0]);
    expect([0, 1, 2].map((sailed) => drawnLegOf(route, sailed))).toEqual([0, 1, 2]);
  });
});
