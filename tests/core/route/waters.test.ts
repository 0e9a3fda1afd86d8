import { describe, expect, it } from 'vitest';
import type { WatersFile } from '../../../src/core/route/shapes.ts';
import { insideWaters, prepareWaters, zonesAlong } from '../../../src/core/route/waters.ts';
import { box, waters, zone } from './made-waters.ts';

const island = zone({ kind: 'land', name: 'Island' }, box(2, 2, 6, 6), box(3, 3, 5, 5));
const limit = zone({ kind: 'speed-limit', name: 'Fairway', limit_kn: 5 }, box(0, 0, 10, 1));
const ready = prepareWaters(waters([island, limit], [0, 0, 10, 10]));

function stays(from: [number, number], to: [number, number], where = ready): [string, number, number][] {
  const found = zonesAlong(where, { lon: from[0], lat: from[1] }, { lon: to[0], lat: to[1] });
  return found.crossings.map((stay) => [stay.zone.name, round(stay.from), round(stay.to)]);
}

function round(share: number): number {
  return Math.round(share * 1e9) / 1e9;
}

describe('zonesAlong', () => {
  it('finds both shores of an island with a lagoon, and the lagoon free', () => {
    expect(stays([0, 4], [8, 4])).toEqual([
      ['Island', 0.25, 0.375],
      ['Island', 0.625, 0.75],
    ]);
  });

  it('names where a stay begins', () => {
    const { crossings } = zonesAlong(ready, { lon: 0, lat: 4 }, { lon: 8, lat: 4 });
    expect(crossings[0]).toMatchObject({ kind: 'land', at: { lat: 4, lon: 2 } });
  });

  it('counts a leg wholly inside', () => {
    expect(stays([2.1, 2.1], [2.9, 2.5])).toEqual([['Island', 0, 1]]);
    expect(stays([3.1, 3.1], [4.9, 4.5])).toEqual([]);
  });

  it('counts a leg that starts or ends inside from there on', () => {
    expect(stays([4, 0.5], [4, 2.5])).toEqual([
      ['Fairway', 0, 0.25],
      ['Island', 0.75, 1],
    ]);
  });

  it('does not count a touched corner', () => {
    expect(stays([1, 3], [3, 1])).toEqual([]);
    expect(stays([4, 1.5], [2, 2])).toEqual([]);
  });

  it('passes through a corner into the zone', () => {
    expect(stays([1, 1.5], [3, 2.5])).toEqual([['Island', 0.5, 1]]);
    expect(stays([1.5, 1.5], [6.5, 6.5])).toEqual([
      ['Island', 0.1, 0.3],
      ['Island', 0.7, 0.9],
    ]);
  });

  it('counts running along an edge as inside, whichever edge', () => {
    for (const [from, to] of [
      [
        [0, 2],
        [8, 2],
      ],
      [
        [0, 6],
        [8, 6],
      ],
      [
        [2, 0],
        [2, 8],
      ],
      [
        [6, 0],
        [6, 8],
      ],
    ] as [[number, number], [number, number]][]) {
      expect(stays(from, to).filter(([name]) => name === 'Island')).toEqual([['Island', 0.25, 0.75]]);
    }
  });

  it('finds a leg without length by where it lies', () => {
    expect(stays([2.5, 2.5], [2.5, 2.5])).toEqual([['Island', 0, 1]]);
    expect(stays([4, 4], [4, 4])).toEqual([]);
  });

  it('says when a leg leaves the known waters', () => {
    expect(zonesAlong(ready, { lon: 9, lat: 5 }, { lon: 11, lat: 5 }).outside).toBe(true);
    expect(zonesAlong(ready, { lon: 9, lat: 5 }, { lon: 10, lat: 5 }).outside).toBe(false);
  });

  it('takes the parts of one zone that meet as one stay', () => {
    const shoal = prepareWaters(
      waters([
        {
          type: 'Feature',
          properties: { kind: 'shoal', name: 'Bank' },
          geometry: { type: 'MultiPolygon', coordinates: [[box(1, 0, 2, 1)], [box(2, 0, 3, 1)], [box(5, 0, 6, 1)]] },
        },
      ]),
    );
    expect(stays([0, 0.5], [10, 0.5], shoal)).toEqual([
      ['Bank', 0.1, 0.3],
      ['Bank', 0.5, 0.6],
    ]);
  });

  it('takes them in the order sailed, however they are drawn', () => {
    const parts = [box(1, 0, 2, 1), box(2, 0, 3, 1), box(5, 0, 6, 1), box(8, 0, 9, 1)];
    for (const order of [
      [0, 1, 2, 3],
      [3, 2, 1, 0],
      [2, 0, 3, 1],
      [1, 3, 0, 2],
    ]) {
      const bank = prepareWaters(
        waters([
          {
            type: 'Feature',
            properties: { kind: 'shoal', name: 'Bank' },
            geometry: { type: 'MultiPolygon', coordinates: order.map((part) => [parts[part]!]) },
          },
        ]),
      );
      expect(stays([0, 0.5], [10, 0.5], bank).map(([, from, to]) => [from, to])).toEqual([
        [0.1, 0.3],
        [0.5, 0.6],
        [0.8, 0.9],
      ]);
      expect(stays([10, 0.5], [0, 0.5], bank).map(([, from, to]) => [from, to])).toEqual([
        [0.1, 0.2],
        [0.4, 0.5],
        [0.7, 0.9],
      ]);
    }
  });

  it('finds an island that is the only one', () => {
    expect(stays([0, 4], [8, 4], prepareWaters(waters([island])))).toHaveLength(2);
  });

  it('crosses the antimeridian', () => {
    const far = zone({ kind: 'land', name: 'East rock' }, box(-179.9, 0, -179.8, 1));
    const near = zone({ kind: 'land', name: 'West rock' }, box(179.8, 0, 179.9, 1));
    for (const file of [waters([far, near], [179.5, -1, -179.5, 2]), waters([far, near])]) {
      const there = prepareWaters(file);
      expect(stays([179.7, 0.5], [-179.7, 0.5], there).map(([name]) => name)).toEqual(['West rock', 'East rock']);
      expect(zonesAlong(there, { lon: 179.85, lat: 0.5 }, { lon: -179.85, lat: 0.5 }).outside).toBe(false);
      expect(stays([-179.7, 0.5], [179.7, 0.5], there).map(([name]) => name)).toEqual(['East rock', 'West rock']);
      expect(stays([-179.7, 0.5], [-179.95, 0.5], there).map(([name]) => name)).toEqual(['East rock']);
      expect(zonesAlong(there, { lon: 0, lat: 0.5 }, { lon: 0.1, lat: 0.5 })).toEqual({ crossings: [], outside: true });
    }
  });
});

describe('insideWaters', () => {
  it('holds the known waters with their rim, and nothing beyond any side', () => {
    const there = prepareWaters(waters([island], [0, 1, 10, 8]));
    for (const [lon, lat] of [
      [5, 5],
      [0, 5],
      [10, 5],
      [5, 1],
      [5, 8],
    ] as const) {
      expect(insideWaters(there, { lon, lat })).toBe(true);
    }
    for (const [lon, lat] of [
      [-0.01, 5],
      [10.01, 5],
      [5, 0.99],
      [5, 8.01],
    ] as const) {
      expect(insideWaters(there, { lon, lat })).toBe(false);
    }
    expect(insideWaters(prepareWaters(waters([])), { lon: 0, lat: 0 })).toBe(false);
  });
});

describe('prepareWaters', () => {
  it('keeps landings and ignores what it does not know', () => {
    const there = prepareWaters(
      waters(
        [
          {
            type: 'Feature',
            properties: { kind: 'landing', name: 'Quay', id: 'quay' },
            geometry: { type: 'Point', coordinates: [1, 1] },
          },
          { type: 'Feature', properties: { kind: 'stream' }, geometry: { type: 'Point', coordinates: [1, 1] } },
          { type: 'Feature', properties: null, geometry: { type: 'LineString', coordinates: [] } },
        ],
        [0, 0, 0, 2, 2, 0],
      ),
    );
    expect(there.landings.map(({ properties }) => properties.name)).toEqual(['Quay']);
    expect(there.zones).toEqual([]);
    expect(there.bounds).toEqual({ minX: 0, minY: 0, maxX: 2, maxY: 2 });
  });

  it('ignores shapes without a kind it knows, kinds without a shape, and what has neither', () => {
    const square = { type: 'Polygon', coordinates: [box(0, 0, 1, 1)] };
    const features = [
      { type: 'Feature', properties: { kind: 'bridge', name: 'Bridge' }, geometry: square },
      { type: 'Feature', properties: null, geometry: square },
      { type: 'Feature', geometry: square },
      { type: 'Feature', properties: { kind: 'land', name: 'Rock' }, geometry: { type: 'Point', coordinates: [5, 5] } },
      { type: 'Feature', properties: { kind: 'land', name: 'Rock' }, geometry: null },
      { type: 'Feature', properties: { kind: 'landing', name: 'Quay' }, geometry: null },
      { type: 'Feature', properties: { kind: 'landing', name: 'Quay' }, geometry: square },
      { type: 'Feature', properties: null, geometry: { type: 'Point', coordinates: [5, 5] } },
      { type: 'Feature' },
    ] as unknown as WatersFile['features'];
    const there = prepareWaters(waters(features, [0, 0, 10, 10]));
    expect([there.zones, there.landings]).toEqual([[], []]);
  });

  it('knows as far as its shapes and landings reach, where the file does not say', () => {
    const quay: WatersFile['features'][number] = {
      type: 'Feature',
      properties: { kind: 'landing', name: 'Quay' },
      geometry: { type: 'Point', coordinates: [8, 1] },
    };
    expect(prepareWaters(waters([island, quay])).bounds).toEqual({ minX: 2, minY: 1, maxX: 8, maxY: 6 });
    expect(prepareWaters(waters([island])).bounds).toEqual({ minX: 2, minY: 2, maxX: 6, maxY: 6 });
  });

  it('knows nothing anywhere from an empty file', () => {
    const nothing = prepareWaters(waters([]));
    expect(zonesAlong(nothing, { lon: 0, lat: 0 }, { lon: 1, lat: 1 })).toEqual({ crossings: [], outside: true });
  });

  it('survives rings without area', () => {
    const flat = zone({ kind: 'land', name: 'Point' }, [
      [1, 1],
      [1, 1],
    ]);
    expect(prepareWaters(waters([flat])).parts).toEqual([]);
  });
});
