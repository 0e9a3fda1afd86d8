import booleanPointInPolygon from '@turf/boolean-point-in-polygon';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { interpolate, legBetween } from '../../src/core/route/distance.ts';
import { sailedLegs } from '../../src/core/route/sailed-legs.ts';
import type { LatLon, ZoneFeature, ZoneKind } from '../../src/core/route/shapes.ts';
import { splitLegs } from '../../src/core/route/split-legs.ts';
import { prepareWaters, zonesAlong } from '../../src/core/route/waters.ts';
import { KNOT } from '../../src/core/units/convert.ts';
import { waters, zone } from '../core/route/made-waters.ts';

type Ring = [number, number][];

/** Samples along each leg. */
const SAMPLES = 60;

/** A ragged star about a middle, closed. */
function star(middle: [number, number], radii: number[]): Ring {
  const ring = radii.map((radius, at): [number, number] => {
    const angle = (at / radii.length) * 2 * Math.PI;
    return [middle[0] + radius * Math.cos(angle), middle[1] + radius * Math.sin(angle)];
  });
  return [...ring, ring[0]!];
}

const radii = (min: number, max: number) =>
  fc.array(fc.double({ min, max, noNaN: true }), { minLength: 3, maxLength: 60 });
const middle = fc.tuple(fc.double({ min: 0, max: 1, noNaN: true }), fc.double({ min: 0, max: 1, noNaN: true }));
const kind = fc.constantFrom<ZoneKind[]>('land', 'shoal', 'keep-out', 'speed-limit');

/** A zone with a lagoon: rings that do not meet. */
const ragged = fc
  .tuple(kind, middle, radii(0.2, 0.4), radii(0.05, 0.09), fc.integer({ min: 2, max: 9 }))
  .map(([of, at, shore, lagoon, limit]) =>
    zone({ kind: of, name: 'Zone', limit_kn: limit }, star(at, shore), star(at, lagoon)),
  );

/** Corners on a coarse grid, so that legs on the same grid touch vertices and run along edges. */
const grid = fc.integer({ min: 0, max: 6 });
const squared = fc
  .tuple(kind, fc.array(fc.tuple(grid, grid), { minLength: 3, maxLength: 8 }))
  .map(([of, ring]) => zone({ kind: of, name: 'Zone', limit_kn: 3 }, [...ring, ring[0]!]));

const freeLeg = fc
  .tuple(middle, middle)
  .map(([from, to]): [LatLon, LatLon] => [toLatLon(from, 1.6, -0.3), toLatLon(to, 1.6, -0.3)]);
const gridLeg = fc.tuple(fc.tuple(grid, grid), fc.tuple(grid, grid)).map(([from, to]): [LatLon, LatLon] => [
  { lon: from[0], lat: from[1] },
  { lon: to[0], lat: to[1] },
]);

function toLatLon([x, y]: [number, number], scale: number, shift: number): LatLon {
  return { lon: scale * x + shift, lat: scale * y + shift };
}

/** Distance, degrees, of a point from the nearest edge of a zone. */
function fromEdges({ geometry }: ZoneFeature, { lon, lat }: LatLon): number {
  let nearest = Infinity;
  for (const ring of geometry.coordinates as Ring[]) {
    for (let at = 1; at < ring.length; at++) {
      const [ax, ay] = ring[at - 1]!;
      const [bx, by] = ring[at]!;
      const long2 = (bx - ax) ** 2 + (by - ay) ** 2;
      const share = long2 > 0 ? Math.min(1, Math.max(0, ((lon - ax) * (bx - ax) + (lat - ay) * (by - ay)) / long2)) : 0;
      nearest = Math.min(nearest, Math.hypot(lon - ax - share * (bx - ax), lat - ay - share * (by - ay)));
    }
  }
  return nearest;
}

/** Holds the stays found against asking, point by point, whether the point is in the polygon. */
function agrees(shape: ZoneFeature, [from, to]: [LatLon, LatLon]): void {
  const { crossings } = zonesAlong(prepareWaters(waters([shape])), from, to);
  for (let at = 0; at < SAMPLES; at++) {
    const share = (at + 0.5) / SAMPLES;
    const point = interpolate(from, to, share);
    // Too near to an edge for either to be believed.
    if (fromEdges(shape, point) < 1e-9) continue;
    const inside = booleanPointInPolygon([point.lon, point.lat], shape);
    expect(crossings.some((stay) => stay.from <= share && share <= stay.to)).toBe(inside);
  }
  for (const { from: start, to: end } of crossings) {
    expect(end).toBeGreaterThan(start);
    for (const share of [start, end]) {
      if (share > 0 && share < 1) expect(fromEdges(shape, interpolate(from, to, share))).toBeLessThan(1e-9);
    }
  }
}

describe('zonesAlong', () => {
  it('finds exactly the parts of a leg inside ragged zones with lagoons', () => {
    fc.assert(fc.property(ragged, freeLeg, agrees), { seed: 5, numRuns: 400 });
  });

  it('finds exactly the parts of a leg that touches corners and runs along edges', () => {
    fc.assert(fc.property(squared, gridLeg, agrees), { seed: 6, numRuns: 800 });
  });

  it('finds the same stays the other way round', () => {
    fc.assert(
      fc.property(ragged, freeLeg, (shape, [from, to]) => {
        const there = prepareWaters(waters([shape]));
        const out = zonesAlong(there, from, to).crossings;
        const home = zonesAlong(there, to, from).crossings;
        expect(home).toHaveLength(out.length);
        out.forEach((stay, at) => {
          const same = home[home.length - 1 - at]!;
          expect(same.from).toBeCloseTo(1 - stay.to, 9);
          expect(same.to).toBeCloseTo(1 - stay.from, 9);
        });
      }),
      { seed: 7, numRuns: 300 },
    );
  });
});

describe('splitLegs', () => {
  it('keeps length, order and the lowest limit wherever zones lie', () => {
    fc.assert(
      fc.property(
        fc.array(ragged, { maxLength: 4 }),
        fc.array(freeLeg, { minLength: 1, maxLength: 3 }),
        (shapes, ends) => {
          const { legs } = sailedLegs({ shape: 'one-way', waypoints: ends.flat(), speed: 4 });
          const there = prepareWaters(waters(shapes));
          const { stretches } = splitLegs(legs, there);
          legs.forEach((leg, index) => {
            const own = stretches.filter((stretch) => stretch.leg === index);
            const whole = legBetween(leg.from, leg.to).distance;
            expect(own.reduce((sum, { distance }) => sum + distance, 0)).toBeCloseTo(whole, 5);
            expect(own[0]!.from).toEqual({ lat: leg.from.lat, lon: leg.from.lon });
            expect(own[own.length - 1]!.to).toEqual({ lat: leg.to.lat, lon: leg.to.lon });
            for (const { from, to, limit, distance } of own) {
              if (distance < 5) continue;
              const point = interpolate(from, to, 0.5);
              const limits = shapes
                .filter((shape) => shape.properties.kind === 'speed-limit')
                .filter((shape) => booleanPointInPolygon([point.lon, point.lat], shape))
                .map(({ properties }) => properties.limit_kn! * KNOT);
              expect(limit ?? Infinity).toBeCloseTo(Math.min(...limits, Infinity), 9);
            }
          });
        },
      ),
      { seed: 8, numRuns: 200 },
    );
  });
});
