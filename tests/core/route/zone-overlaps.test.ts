import { describe, expect, it } from 'vitest';
import { zoneOverlaps } from '../../../src/core/route/zone-overlaps.ts';
import { box, zone } from './made-waters.ts';

const land = { kind: 'land', name: 'Land' } as const;
const shoal = { kind: 'shoal', name: 'Bank', depth_m: 1 } as const;
/** A degree on the equator, east and north, m. */
const [EAST, NORTH] = [111_320, 110_574];

describe('zoneOverlaps', () => {
  it('names two zones of one kind and the area they share', () => {
    const zones = [
      zone(shoal, box(0, 0, 0.02, 0.01)),
      zone(land, box(0, 0, 0.01, 0.01)),
      zone(land, box(0.009, 0.005, 0.03, 0.03)),
    ];
    const { overlaps, untold } = zoneOverlaps(zones);
    expect(overlaps.map(({ one, other }) => [one, other])).toEqual([[1, 2]]);
    const shared = Math.abs(0.001 * 0.005 * EAST * NORTH);
    expect(overlaps[0]!.areaM2 / shared).toBeCloseTo(1, 1);
    expect(untold).toBe(0);
  });

  it('names every pair of three', () => {
    const zones = [0, 1, 2].map((at) => zone(land, box(at / 1000, 0, at / 1000 + 0.01, 0.01)));
    expect(zoneOverlaps(zones).overlaps.map(({ one, other }) => [one, other])).toEqual([
      [0, 1],
      [0, 2],
      [1, 2],
    ]);
  });

  it('lets zones touch along an edge, and share as little as rounding leaves there', () => {
    const beside = (lat: number) =>
      zoneOverlaps([zone(land, box(0, 0, 0.01, 0.01)), zone(land, box(lat, 0, 0.03, 0.01))]);
    expect(beside(0.01).overlaps).toEqual([]);
    // A strip of 1.1 km by 5 cm has 55 m2, one of 20 cm more than 100.
    const metre = 1 / NORTH;
    expect(beside(0.01 - 0.05 * metre).overlaps).toEqual([]);
    expect(beside(0.01 - 0.2 * metre).overlaps.length).toBe(1);
  });
});
