import { describe, expect, it } from 'vitest';
import { legBetween } from '../../../src/core/route/distance.ts';
import type { WatersFile } from '../../../src/core/route/shapes.ts';
import { prepareWaters } from '../../../src/core/route/waters.ts';
import { openWaypoint } from '../../../src/core/trip/open-waypoint.ts';
import { planTrip } from '../../../src/core/trip/plan-trip.ts';
import { type OutlineQuestion, type RangeOutline, rangeOutline } from '../../../src/core/trip/range-outline.ts';
import type { Trip } from '../../../src/core/trip/shapes.ts';
import type { Conditions } from '../../../src/core/water/shapes.ts';
import { haven, shipped, soundTrip } from '../../trips.ts';
import { box, waters, zone } from '../route/made-waters.ts';

const CALM: Conditions = { wind: 'calm', stream: 'slack', sea: 'calm', water: 'sea' };

function outline(
  trip: Trip,
  question?: OutlineQuestion,
  on = undefined as ReturnType<typeof prepareWaters> | undefined,
) {
  const found = rangeOutline(trip, on, question);
  if (!found.ok) throw new Error(found.problems[0]!.message);
  return found.value;
}

function rangeOf(trip: Trip) {
  const plan = planTrip(trip, undefined, { quick: true });
  if (!plan.ok) throw new Error(plan.problems[0]!.message);
  return plan.value.range;
}

const inWeather = (conditions: Partial<Conditions>): Trip => ({
  ...soundTrip(),
  conditions: { ...CALM, ...conditions },
});
const distances = ({ points }: RangeOutline, which: 'outAndHome' | 'oneWay') => points.map((p) => p[which].distance);

describe('rangeOutline', () => {
  it('is a circle to 0.1 % in still air and water without land', () => {
    const trip = inWeather({});
    const { points, from } = outline(trip);
    expect(points).toHaveLength(72);
    const factor = trip.policy.drawnFactor ?? 1.05;
    for (const which of ['outAndHome', 'oneWay'] as const) {
      const radii = points.map((p) => legBetween(from, p[which].at).distance * factor);
      expect(Math.max(...radii) / Math.min(...radii)).toBeLessThan(1.001);
      expect(radii[0]! / points[0]![which].distance).toBeCloseTo(1, 4);
    }
  });

  it.each([
    ['with everything given', inWeather({ wind: { fromDeg: 240, speed: 5 }, stream: { setDeg: 70, rate: 0.4 } })],
    ['with nothing given', { ...soundTrip(), conditions: { water: 'sea' as const } }],
    ['at the best speed', { ...soundTrip(), route: { ...soundTrip().route, speed: 'best' as const } }],
    ['one way', { ...soundTrip(), route: { ...soundTrip().route, shape: 'one-way' as const } }],
    ['with a battery', shipped('electric-tender')],
  ])('says in the direction of the route what the plan says of its range, %s', (_, trip) => {
    const [start, ...more] = trip.route.waypoints;
    // Due south, so that one of the directions is that of the route.
    const south = { lat: start!.lat - 0.023, lon: start!.lon };
    const straight = more.length > 1 ? { ...trip, route: { ...trip.route, waypoints: [start!, south] } } : trip;
    const range = rangeOf(straight);
    const due = outline(straight).points.find(({ bearingDeg }) => bearingDeg === 180)!;
    expect(due.outAndHome.distance / range.outAndHome).toBeCloseTo(1, 6);
    expect(due.oneWay.distance / range.oneWay).toBeCloseTo(1, 6);
  });

  it('reaches least where wind and stream are against one way, and out and home suffers from both sides', () => {
    const calm = outline(inWeather({}));
    const blown = outline(inWeather({ wind: { fromDeg: 0, speed: 6 }, stream: { setDeg: 180, rate: 0.6 } }));
    const alone = distances(blown, 'oneWay');
    expect(alone.indexOf(Math.min(...alone))).toBe(0);
    expect(alone.indexOf(Math.max(...alone))).toBe(36);
    for (const [i, distance] of distances(blown, 'outAndHome').entries()) {
      expect(distance).toBeLessThan(distances(calm, 'outAndHome')[i]!);
    }
  });

  it('mirrors where wind and stream do', () => {
    const east = outline(inWeather({ wind: { fromDeg: 60, speed: 5 }, stream: { setDeg: 130, rate: 0.5 } }));
    const west = outline(inWeather({ wind: { fromDeg: 300, speed: 5 }, stream: { setDeg: 230, rate: 0.5 } }));
    for (const which of ['outAndHome', 'oneWay'] as const) {
      const mirrored = distances(west, which);
      distances(east, which).forEach((distance, i) => {
        expect(distance / mirrored[(72 - i) % 72]!).toBeCloseTo(1, 9);
      });
    }
  });

  it('is nowhere smaller with more fuel', () => {
    const trip = inWeather({ wind: { fromDeg: 60, speed: 5 } });
    let before: RangeOutline | undefined;
    for (const fill of [0.2, 0.4, 0.6, 0.8, 0.95]) {
      const now = outline({ ...trip, load: { ...trip.load, fill } });
      for (const which of ['outAndHome', 'oneWay'] as const) {
        distances(now, which).forEach((distance, i) => {
          if (before) expect(distance).toBeGreaterThan(distances(before, which)[i]!);
        });
      }
      before = now;
    }
  });

  it('ends at land and at keep-outs in season, and says which; distances are those of the land', () => {
    const { lat, lon } = soundTrip().route.waypoints[0]!;
    const file: WatersFile = waters(
      [
        zone({ kind: 'land', name: 'Wall' }, box(lon - 0.001, lat + 0.01, lon + 0.001, lat + 0.02)),
        zone(
          { kind: 'keep-out', name: 'Reserve', season: '03-01/08-31' },
          box(lon + 0.01, lat - 0.001, lon + 0.02, lat + 0.001),
        ),
      ],
      [lon - 1, lat - 1, lon + 1, lat + 1],
    );
    const at = (departure: string) => outline(inWeather({ departure }), {}, prepareWaters(file)).points;
    const summer = at('2026-06-01T10:00:00Z');
    expect(summer[0]!.outAndHome).toMatchObject({ ends: 'land', name: 'Wall' });
    expect(summer[0]!.oneWay).toMatchObject({ ends: 'land', name: 'Wall' });
    expect(summer[18]!.outAndHome).toMatchObject({ ends: 'keep-out', name: 'Reserve' });
    expect(summer[36]!.outAndHome.ends).toBe('store');
    const factor = soundTrip().policy.drawnFactor ?? 1.05;
    const wall = legBetween({ lat, lon }, { lat: lat + 0.01, lon }).distance * factor;
    expect(summer[0]!.outAndHome.distance).toBeCloseTo(wall, 3);
    expect(at('2026-10-01T10:00:00Z')[18]!.outAndHome.ends).toBe('store');
  });

  it('counts a speed limit where it holds', () => {
    const { lat, lon } = soundTrip().route.waypoints[0]!;
    const all = box(lon - 0.02, lat - 0.02, lon + 0.02, lat + 0.02);
    const slow = prepareWaters(waters([zone({ kind: 'speed-limit', name: 'Roads', limit_kn: 5 }, all)]));
    const open = outline(inWeather({}));
    const limited = outline(inWeather({}), {}, slow);
    const changed = distances(limited, 'outAndHome').map((distance, i) => distance / distances(open, 'outAndHome')[i]!);
    for (const share of changed) {
      expect(share).not.toBeCloseTo(1, 4);
      expect(share).toBeGreaterThan(0.8);
      expect(share).toBeLessThan(1.25);
    }
  });

  it('has no headway in a stream faster than the boat, and says so', () => {
    const trip = inWeather({ stream: { setDeg: 0, rate: 3 } });
    const slow = { ...trip, route: { ...trip.route, speed: 2 } };
    const { points } = outline(slow);
    for (const { outAndHome } of points) expect(outAndHome).toMatchObject({ distance: 0, ends: 'no-headway' });
    expect(points[36]!.oneWay).toMatchObject({ distance: 0, ends: 'no-headway' });
    expect(points[0]!.oneWay.ends).toBe('store');
  });

  it('takes off the way to a later waypoint and back', () => {
    const trip = inWeather({});
    const start = outline(trip);
    const later = outline(trip, { from: 1 });
    const { distance } = legBetween(trip.route.waypoints[0]!, trip.route.waypoints[1]!);
    const leg = distance * (trip.policy.drawnFactor ?? 1.05);
    // In still water every metre costs the same, there and back; burning fuel off makes the way there a little cheaper.
    expect(later.points[0]!.outAndHome.distance / (start.points[0]!.outAndHome.distance - leg)).toBeCloseTo(1, 2);
    expect(later.points[0]!.oneWay.distance / (start.points[0]!.oneWay.distance - leg)).toBeCloseTo(1, 2);
  });

  it('needs no route, only the place it starts', () => {
    const trip = inWeather({});
    const alone = { ...trip, route: { ...trip.route, waypoints: trip.route.waypoints.slice(0, 1) } };
    expect(outline(alone).points[0]!.outAndHome.distance).toBeCloseTo(outline(trip).points[0]!.outAndHome.distance, 6);
    expect(rangeOutline({ ...trip, route: { ...trip.route, waypoints: [] } }, undefined).ok).toBe(false);
  });

  it('reaches nowhere on an empty tank, and stays finite near a pole', () => {
    const empty = { ...inWeather({}), load: { ...soundTrip().load, fill: 0 } };
    expect(distances(outline(empty), 'outAndHome').every((distance) => distance === 0)).toBe(true);
    const polar = { ...inWeather({}), route: { ...soundTrip().route, waypoints: [{ lat: 84.99, lon: 10 }] } };
    const ice = prepareWaters(waters([zone({ kind: 'land', name: 'Ice' }, box(11, 84, 12, 84.5))], [0, 80, 20, 90]));
    for (const { outAndHome, oneWay } of outline(polar, {}, ice).points) {
      expect(Number.isFinite(outAndHome.distance + oneWay.distance)).toBe(true);
    }
  });
});

describe('openWaypoint', () => {
  it('looks round from outside the harbour, where the start is inside one', () => {
    const trip = shipped('petrol-day');
    const open = openWaypoint(trip, haven());
    expect(open).toBeGreaterThan(0);
    const inside = outline(trip, {}, haven()).points.filter(({ outAndHome }) => outAndHome.distance > 1000).length;
    const outside = outline(trip, { from: open }, haven()).points.filter(
      ({ outAndHome }) => outAndHome.distance > 1000,
    ).length;
    expect(outside).toBeGreaterThan(inside);
  });

  it('is the start on open water, or where no waters tell', () => {
    expect(openWaypoint(soundTrip(), haven())).toBe(0);
    expect(openWaypoint(shipped('petrol-day'), undefined)).toBe(0);
  });
});
