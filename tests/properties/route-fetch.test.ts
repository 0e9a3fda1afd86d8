import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { edgeTree } from '../../src/core/route/edge-tree.ts';
import { firstShore } from '../../src/core/route/first-shore.ts';
import { prepareWaters } from '../../src/core/route/waters.ts';
import { fetchAt } from '../../src/core/route/wind-fetch.ts';
import { circleWaters, waters, zone } from '../core/route/made-waters.ts';

const runs = { seed: 45, numRuns: 300 };
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** A ragged ring about a point, drawn from its radii. */
function ring(x: number, y: number, radii: readonly number[]): [number, number][] {
  const points = radii.map((radius, i): [number, number] => {
    const angle = (2 * Math.PI * i) / radii.length;
    return [x + radius * Math.cos(angle), y + radius * Math.sin(angle)];
  });
  return [...points, points[0]!];
}

/** Every edge tried in turn, by another formula. */
function nearest(ring: readonly [number, number][], at: { x: number; y: number; dx: number; dy: number }): number {
  let found = Infinity;
  for (let i = 1; i < ring.length; i++) {
    const [ax, ay] = ring[i - 1]!;
    const [bx, by] = ring[i]!;
    // at + t d = a + s (b - a), by Cramer's rule.
    const det = at.dx * (ay - by) - at.dy * (ax - bx);
    if (det === 0) continue;
    const t = ((ax - at.x) * (ay - by) - (ay - at.y) * (ax - bx)) / det;
    const s = (at.dx * (ay - at.y) - at.dy * (ax - at.x)) / det;
    if (t >= 0 && s >= 0 && s <= 1) found = Math.min(found, t);
  }
  return found;
}

describe('firstShore', () => {
  it('finds the same edge as trying all of them', () => {
    const radii = fc.array(between(0.5, 1), { minLength: 3, maxLength: 90 });
    fc.assert(
      fc.property(radii, between(-2, 2), between(-2, 2), between(0, 360), (list, x, y, deg) => {
        const shore = ring(0, 0, list);
        const ray = { x, y, dx: Math.sin((deg * Math.PI) / 180), dy: Math.cos((deg * Math.PI) / 180) };
        const wanted = Math.min(10, nearest(shore, ray));
        expect(
          firstShore(
            edgeTree([shore], (lon) => lon),
            ray,
            10,
          ),
        ).toBeCloseTo(wanted, 6);
      }),
      runs,
    );
  });
});

describe('fetchAt', () => {
  const file = circleWaters(9, 40);
  const ready = prepareWaters(file);
  const bbox = file.bbox!;
  const spot = fc.record({ lat: between(46.001, 46.199), lon: between(-31.999, -31.801) });

  it('never grows where there is more land', () => {
    const more = prepareWaters(
      waters(
        [...file.features, zone({ kind: 'land', name: 'Rock' }, ring(-31.9, 46.1, [0.01, 0.012, 0.011, 0.009]))],
        bbox,
      ),
    );
    fc.assert(
      fc.property(spot, between(0, 360), (at, fromDeg) => {
        expect(fetchAt(more, at, fromDeg).length).toBeLessThanOrEqual(fetchAt(ready, at, fromDeg).length + 1e-6);
      }),
      runs,
    );
  });

  it('lies between none and fifty kilometres', () => {
    fc.assert(
      fc.property(spot, between(0, 360), (at, fromDeg) => {
        const { length, longest, open } = fetchAt(ready, at, fromDeg);
        expect(length).toBeGreaterThanOrEqual(0);
        expect(longest).toBeLessThanOrEqual(50_000);
        expect(length).toBeLessThanOrEqual(longest + 1e-6);
        expect(length).toBeGreaterThanOrEqual((open * 50_000) / 9 - 1e-6);
      }),
      runs,
    );
  });

  it('is the same in the mirror', () => {
    const flip = (lon: number) => -63.8 - lon;
    const mirrored = prepareWaters(
      waters(
        file.features.map((feature) => ({
          ...feature,
          geometry: {
            type: 'Polygon' as const,
            coordinates: (feature.geometry as { coordinates: number[][][] }).coordinates.map((line) =>
              line.map(([lon, lat]) => [flip(lon!), lat!]),
            ),
          },
        })),
        [-32, 46, -31.8, 46.2],
      ),
    );
    fc.assert(
      fc.property(spot, between(0, 360), (at, fromDeg) => {
        const there = fetchAt(mirrored, { lat: at.lat, lon: flip(at.lon) }, 360 - fromDeg);
        const here = fetchAt(ready, at, fromDeg);
        // Rays that touch a corner may fall on either side of it.
        fc.pre(there.open === here.open);
        expect(Math.abs(there.length - here.length)).toBeLessThan(1);
      }),
      runs,
    );
  });
});
