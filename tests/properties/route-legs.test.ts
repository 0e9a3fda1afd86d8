import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { courseToSteer, findStream, trackMade } from '../../src/core/route/current-triangle.ts';
import { compass, destination, interpolate, legBetween, lonBetween } from '../../src/core/route/distance.ts';
import { sailedLegs } from '../../src/core/route/sailed-legs.ts';
import type { LatLon, Route, Waypoint } from '../../src/core/route/shapes.ts';
import { equalTimeAlong, lastReturnPoint, type TurnStretch } from '../../src/core/route/turn-point.ts';

const runs = { seed: 11, numRuns: 400 };
const place = fc.record({
  lat: fc.double({ min: -65, max: 65, noNaN: true }),
  lon: fc.double({ min: -180, max: 180, noNaN: true }),
});
const bearing = fc.double({ min: 0, max: 360, noNaN: true, maxExcluded: true });
const leg = fc
  .tuple(place, bearing, fc.double({ min: 1, max: 40_000, noNaN: true }))
  .map(([from, bearingDeg, distance]) => ({ from, bearingDeg, distance, to: destination(from, bearingDeg, distance) }));

describe('legBetween', () => {
  it('is as long back as out, on the opposite track', () => {
    fc.assert(
      fc.property(leg, ({ from, to }) => {
        const out = legBetween(from, to);
        const home = legBetween(to, from);
        expect(home.distance).toBe(out.distance);
        expect(Math.abs(lonBetween(out.trackDeg + 180, home.trackDeg))).toBeLessThan(1e-9);
      }),
      runs,
    );
  });

  it('measures what destination laid off', () => {
    fc.assert(
      fc.property(leg, ({ from, to, bearingDeg, distance }) => {
        const found = legBetween(from, to);
        expect(Math.abs(found.distance - distance)).toBeLessThan(1e-6 + distance * 1e-10);
        // A nanodegree of rounding in the places turns a leg of metres by more than one of kilometres.
        expect(Math.abs(lonBetween(found.trackDeg, bearingDeg))).toBeLessThan(1e-6 + 1e-5 / distance);
      }),
      runs,
    );
  });

  it('is as long as its two parts: within 10 ppm and 0.1 mm up to 40 km', () => {
    fc.assert(
      fc.property(leg, fc.double({ min: 0, max: 1, noNaN: true }), ({ from, to }, share) => {
        const between = interpolate(from, to, share);
        const parts = legBetween(from, between).distance + legBetween(between, to).distance;
        const whole = legBetween(from, to).distance;
        expect(Math.abs(parts - whole)).toBeLessThan(1e-5 * whole + 1e-4);
      }),
      runs,
    );
  });

  it('does not care where longitude is counted from', () => {
    fc.assert(
      fc.property(leg, fc.double({ min: -180, max: 180, noNaN: true }), ({ from, to }, turn) => {
        const turned = (point: LatLon) => ({ lat: point.lat, lon: lonBetween(0, point.lon + turn) });
        expect(legBetween(turned(from), turned(to)).distance).toBeCloseTo(legBetween(from, to).distance, 4);
      }),
      runs,
    );
  });
});

describe('courseToSteer', () => {
  const stream = fc.record({ setDeg: bearing, rate: fc.double({ min: 0, max: 5, noNaN: true }) });
  const speed = fc.double({ min: 0.1, max: 15, noNaN: true });

  it('makes good the track it was asked for', () => {
    fc.assert(
      fc.property(bearing, speed, stream, (trackDeg, through, current) => {
        const found = courseToSteer(trackDeg, through, current);
        if (!found.possible) return;
        const made = trackMade(found.steerDeg, through, current);
        expect(made.speedOverGround).toBeCloseTo(found.speedOverGround, 9);
        fc.pre(found.speedOverGround > 1e-3);
        expect(Math.abs(lonBetween(made.trackDeg, trackDeg))).toBeLessThan(1e-6);
      }),
      runs,
    );
  });

  it('is always possible in a stream slower than the boat, and never gains on a round trip', () => {
    fc.assert(
      fc.property(bearing, speed, stream, (trackDeg, through, current) => {
        fc.pre(current.rate < 0.99 * through);
        const out = courseToSteer(trackDeg, through, current);
        const home = courseToSteer(compass(trackDeg + 180), through, current);
        if (!out.possible || !home.possible) throw new Error('a slower stream cannot bar the way');
        const mean = 2 / (1 / out.speedOverGround + 1 / home.speedOverGround);
        expect(mean).toBeLessThanOrEqual(through * (1 + 1e-12));
      }),
      runs,
    );
  });

  it('finds again the stream that set the boat', () => {
    fc.assert(
      fc.property(bearing, speed, stream, (headingDeg, through, current) => {
        const found = findStream(headingDeg, through, trackMade(headingDeg, through, current));
        expect(found.rate).toBeCloseTo(current.rate, 9);
      }),
      runs,
    );
  });
});

describe('sailedLegs', () => {
  const waypoint: fc.Arbitrary<Waypoint> = fc
    .record({
      lat: fc.double({ min: 45.9, max: 46.1, noNaN: true }),
      lon: fc.double({ min: -32.1, max: -31.9, noNaN: true }),
      stop: fc.option(fc.integer({ min: 0, max: 7200 }), { nil: undefined }),
      speed: fc.option(fc.double({ min: 1, max: 10, noNaN: true }), { nil: undefined }),
    })
    .map((drawn) => drawn);
  const waypoints = fc.array(waypoint, { minLength: 2, maxLength: 12 });
  const lengthOf = (route: Route) =>
    sailedLegs(route).legs.reduce((sum, { from, to }) => sum + legBetween(from, to).distance, 0);

  it('doubles the way out when it comes home the same way', () => {
    fc.assert(
      fc.property(waypoints, (points) => {
        const oneWay = lengthOf({ shape: 'one-way', waypoints: points, speed: 5 });
        expect(lengthOf({ shape: 'out-and-home', waypoints: points, speed: 5 })).toBeCloseTo(2 * oneWay, 6);
      }),
      runs,
    );
  });

  it('is as long when drawn the other way round', () => {
    fc.assert(
      fc.property(waypoints, fc.constantFrom('loop', 'one-way', 'out-and-home'), (points, shape) => {
        const there = lengthOf({ shape, waypoints: points, speed: 5 } as Route);
        const mirrored = lengthOf({ shape, waypoints: [...points].reverse(), speed: 5 } as Route);
        expect(mirrored).toBeCloseTo(there, 6);
      }),
      runs,
    );
  });

  it('hangs together, comes home where it should, and is out up to the turn', () => {
    fc.assert(
      fc.property(waypoints, fc.constantFrom('loop', 'one-way', 'out-and-home'), (points, shape) => {
        const { legs, turningIndex } = sailedLegs({ shape, waypoints: points, speed: 5 } as Route);
        for (let index = 1; index < legs.length; index++) expect(legs[index]!.from).toBe(legs[index - 1]!.to);
        expect(legs.map(({ part }) => part)).toEqual(legs.map((_, index) => (index < turningIndex ? 'out' : 'home')));
        const apart = legBetween(legs[0]!.from, legs[legs.length - 1]!.to).distance;
        if (shape !== 'one-way') expect(apart).toBeLessThan(1);
      }),
      runs,
    );
  });
});

describe('turning points', () => {
  const positive = fc.double({ min: 0.1, max: 100, noNaN: true });
  const stretches: fc.Arbitrary<TurnStretch[]> = fc.array(
    fc.record({
      distance: positive,
      needOnward: positive,
      needBack: positive,
      timeOnward: positive,
      timeBack: positive,
    }),
    { minLength: 1, maxLength: 10 },
  );
  /** Sum over the part of the route before a point; the oracle of both. */
  const upTo = (route: TurnStretch[], at: { stretch: number; share: number }, of: (part: TurnStretch) => number) =>
    route.reduce(
      (sum, part, index) => sum + of(part) * (index < at.stretch ? 1 : index === at.stretch ? at.share : 0),
      0,
    );

  it('the last point of return uses up exactly what there is', () => {
    fc.assert(
      fc.property(stretches, fc.double({ min: 0, max: 500, noNaN: true }), (route, available) => {
        const found = lastReturnPoint(route, available);
        const used = upTo(route, found, ({ needOnward, needBack }) => needOnward + needBack);
        if (found.onRoute) expect(used).toBeCloseTo(available, 8);
        else expect(used).toBeLessThanOrEqual(available + 1e-9);
        expect(found.distance).toBeCloseTo(
          upTo(route, found, ({ distance }) => distance),
          8,
        );
        expect(found.time).toBeCloseTo(
          upTo(route, found, ({ timeOnward }) => timeOnward),
          8,
        );
      }),
      runs,
    );
  });

  it('the equal-time point is as far from the end as from the start', () => {
    fc.assert(
      fc.property(stretches, (route) => {
        const found = equalTimeAlong(route);
        const end = { stretch: route.length, share: 0 };
        const onward = upTo(route, end, ({ timeOnward }) => timeOnward) - found.time;
        expect(upTo(route, found, ({ timeBack }) => timeBack)).toBeCloseTo(onward, 8);
      }),
      runs,
    );
  });

  it('neither moves when a stretch is cut in two', () => {
    fc.assert(
      fc.property(stretches, positive, (route, available) => {
        const halves = route.flatMap((part) => {
          const half = Object.fromEntries(Object.entries(part).map(([name, value]) => [name, value / 2]));
          return [half, half] as unknown as TurnStretch[];
        });
        expect(lastReturnPoint(halves, available).distance).toBeCloseTo(lastReturnPoint(route, available).distance, 8);
        expect(equalTimeAlong(halves).distance).toBeCloseTo(equalTimeAlong(route).distance, 8);
      }),
      runs,
    );
  });
});
