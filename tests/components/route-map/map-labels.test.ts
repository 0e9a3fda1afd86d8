import { describe, expect, it } from 'vitest';
import {
  insidePoint,
  type LabelBox,
  watersLabels,
  withoutOverlap,
} from '../../../src/components/route-map/map-labels.ts';
import { measuresFor } from '../../../src/components/units/measures.ts';
import type { WatersFile } from '../../../src/core/route/shapes.ts';

const square = [
  [0, 0],
  [2, 0],
  [2, 2],
  [0, 2],
  [0, 0],
];
/** A U open to the north: its middle is outside it. */
const horseshoe = [
  [0, 0],
  [5, 0],
  [5, 4],
  [4, 4],
  [4, 1],
  [1, 1],
  [1, 4],
  [0, 4],
  [0, 0],
];

describe('insidePoint', () => {
  it('is the middle of a square', () => {
    const point = insidePoint(square, 0.5)!;
    expect(point.lat).toBeCloseTo(1, 6);
    expect(point.lon).toBeCloseTo(1, 6);
  });

  it('lies in an arm of a horseshoe, not in the water between', () => {
    const { lon } = insidePoint(horseshoe, 0.5)!;
    expect(lon < 1 || lon > 4).toBe(true);
  });

  it('takes the widest stretch', () => {
    expect(insidePoint(horseshoe, 0.1)!.lon).toBeCloseTo(2.5, 6);
  });

  it('is unknown for a ring without an inside', () => {
    expect(insidePoint([], 0.5)).toBeUndefined();
  });
});

describe('watersLabels', () => {
  const waters = {
    type: 'FeatureCollection',
    features: [
      zone({ kind: 'land', name: 'Northmark' }),
      zone({ kind: 'shoal', name: 'Bar', dries_m: 0.9 }),
      zone({ kind: 'shoal', name: 'Patch', dries_m: -1.2 }),
      zone({ kind: 'speed-limit', name: 'Harbour', limit_kn: 4 }),
      {
        type: 'Feature',
        properties: { kind: 'landing', name: 'Slip' },
        geometry: { type: 'Point', coordinates: [1, 2] },
      },
      {
        type: 'Feature',
        properties: { kind: 'stream', name: 'Race' },
        geometry: { type: 'Point', coordinates: [1, 2] },
      },
      { type: 'Feature', properties: null, geometry: null },
    ],
  } as unknown as WatersFile;

  it('says limits in the units of the page, and what dries', () => {
    expect(texts('nautical')).toEqual([
      '4\u00a0kn',
      'Slip',
      'Bar, dries 0.9\u00a0m',
      'Patch, 1.2\u00a0m least',
      'Northmark',
    ]);
    expect(texts('metric')[0]).toBe('7.4\u00a0km/h');
  });

  it('stands where GeoJSON says, longitude first', () => {
    const [, slip] = watersLabels(waters, measuresFor('nautical', 'en'));
    expect(slip?.at).toEqual([{ lat: 2, lon: 1 }]);
  });

  function texts(system: 'nautical' | 'metric'): string[] {
    return watersLabels(waters, measuresFor(system, 'en')).map(({ text }) => text);
  }

  function zone(properties: object) {
    return { type: 'Feature', properties, geometry: { type: 'Polygon', coordinates: [square] } };
  }
});

describe('withoutOverlap', () => {
  const box = (x: number): LabelBox => ({ x, y: 0, width: 10, height: 10 });

  it('leaves out a word that would run into one before it', () => {
    expect(withoutOverlap([[box(0)], [box(5)], [box(20)]], [], 9)).toEqual([0, -1, 0]);
  });

  it('moves a word to its next best place rather than leave it out', () => {
    expect(withoutOverlap([[box(0)], [box(5), box(30)]], [], 9)).toEqual([0, 1]);
  });

  it('keeps clear of what is taken already', () => {
    expect(withoutOverlap([[box(0)]], [box(3)], 9)).toEqual([-1]);
  });

  it('writes no more words than asked', () => {
    expect(withoutOverlap([[box(0)], [box(20)], [box(40)]], [], 2)).toEqual([0, 0, -1]);
  });
});
