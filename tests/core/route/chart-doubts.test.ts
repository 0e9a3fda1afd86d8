import { readFileSync } from 'node:fs';
import { kinks } from '@turf/kinks';
import fc from 'fast-check';
import type { Position } from 'geojson';
import { describe, expect, it } from 'vitest';
import { type ChartDoubt, chartDoubts } from '../../../src/core/route/chart-doubts.ts';
import { selfCrossings } from '../../../src/core/route/self-crossings.ts';
import type { WatersFile } from '../../../src/core/route/shapes.ts';

const haven: WatersFile = JSON.parse(
  readFileSync(new URL('../../../shared/waters/haven.geojson', import.meta.url), 'utf8'),
);

const square = (west: number, south: number, size: number): Position[] => [
  [west, south],
  [west + size, south],
  [west + size, south + size],
  [west, south + size],
  [west, south],
];
const feature = (kind: string, type: string, coordinates: unknown, more: object = {}) => ({
  type: 'Feature',
  properties: { kind, name: 'x', ...more },
  geometry: { type, coordinates },
});
const land = feature('land', 'Polygon', [square(10, 50, 0.1)]);
const waters = (...features: unknown[]) =>
  ({ type: 'FeatureCollection', bbox: [9, 49, 11, 51], features: [land, ...features] }) as WatersFile;
const codes = (doubts: readonly ChartDoubt[]) => doubts.map(({ code, feature: at, other }) => [code, at, other]);

describe('chartDoubts', () => {
  it('finds nothing in the shipped estuary', () => {
    expect(chartDoubts(haven)).toEqual([]);
  });

  it('finds an outline that crosses itself, and where', () => {
    const bow = [
      [10.5, 50.5],
      [10.6, 50.6],
      [10.6, 50.5],
      [10.5, 50.6],
      [10.5, 50.5],
    ];
    const [doubt, ...others] = chartDoubts(waters(feature('shoal', 'Polygon', [bow])));
    expect(others).toEqual([]);
    expect(doubt).toMatchObject({ code: 'crosses-itself', feature: 1 });
    expect(doubt!.at!.lat).toBeCloseTo(50.55, 6);
    expect(doubt!.at!.lon).toBeCloseTo(10.55, 6);
  });

  it('finds zones of one kind over each other, not those of two kinds nor a common edge', () => {
    const shoal = (west: number) => feature('shoal', 'Polygon', [square(west, 50.5, 0.1)]);
    const limit = feature('speed-limit', 'Polygon', [square(10.5, 50.5, 0.1)]);
    expect(codes(chartDoubts(waters(shoal(10.5), shoal(10.55), shoal(10.65), limit)))).toEqual([['overlap', 1, 2]]);
    const half = chartDoubts(waters(shoal(10.5), shoal(10.55)))[0]!.value!;
    // A strip of 0.05 by 0.1 degrees at 50.55 N on the sphere of 6371 km.
    expect(half / (5.5597e3 * Math.cos((50.55 * Math.PI) / 180) * 11.1195e3)).toBeCloseTo(1, 2);
  });

  it('finds landings, stream places and set routes on land, in keep-outs and outside', () => {
    const point = (lon: number) => feature('landing', 'Point', [lon, 50.05]);
    expect(codes(chartDoubts(waters(point(10.05), point(10.2), point(12))))).toEqual([
      ['on-land', 1, undefined],
      ['outside-box', 3, undefined],
    ]);
    const keep = feature('keep-out', 'Polygon', [square(10.3, 50, 0.1)]);
    const route = (shape: string, ...places: Position[]) => feature('route', 'LineString', places, { shape });
    expect(
      codes(
        chartDoubts(
          waters(
            keep,
            route('one-way', [9.9, 50.05], [9.9, 50.2], [10.2, 50.2]),
            route('one-way', [9.9, 50.05], [10.5, 50.05]),
            route('loop', [9.9, 50.05], [9.9, 50.2], [10.2, 50.05]),
            route('one-way', [9.9, 50.05], [8, 50.05]),
          ),
        ),
      ),
    ).toEqual([
      ['route-over-land', 3, undefined],
      ['route-in-keep-out', 3, undefined],
      ['route-over-land', 4, undefined],
      ['outside-box', 5, undefined],
    ]);
  });

  it('says when no box or no land is drawn', () => {
    const open = { type: 'FeatureCollection', features: [feature('landing', 'Point', [10, 50])] } as WatersFile;
    expect(codes(chartDoubts(open)).map(([code]) => code)).toEqual(['no-box', 'no-land']);
  });
});

describe('selfCrossings', () => {
  it('finds what the plain search over all pairs of edges finds', () => {
    const corner = fc.tuple(fc.integer({ min: 0, max: 1000 }), fc.integer({ min: 0, max: 1000 }));
    fc.assert(
      fc.property(fc.uniqueArray(corner, { minLength: 4, maxLength: 12, selector: String }), (corners) => {
        // Off the grid, so that no three corners lie in a line by chance.
        const ring: Position[] = corners.map(([x, y], i) => [x / 1000 + i * 1e-5, y / 1000 + i * i * 1e-5]);
        ring.push(ring[0]!);
        const plain = kinks({ type: 'Polygon', coordinates: [ring] }).features;
        const ours = selfCrossings([ring], Infinity);
        const key = ([lon, lat]: readonly number[]) => `${lon!.toFixed(7)} ${lat!.toFixed(7)}`;
        expect(new Set(ours.map(({ lat, lon }) => key([lon, lat])))).toEqual(
          new Set(plain.map(({ geometry }) => key(geometry.coordinates))),
        );
      }),
      { numRuns: 300 },
    );
  });
});
