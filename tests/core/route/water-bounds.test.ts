import { describe, expect, it } from 'vitest';
import type { WatersFile } from '../../../src/core/route/shapes.ts';
import { boundsOf, unfolded } from '../../../src/core/route/water-bounds.ts';

const file = (bbox?: readonly number[]) => ({ bbox }) as unknown as WatersFile;

describe('the bounds of local waters', () => {
  it('are those the file says, heights left out, going on past 180 degrees where east is below west', () => {
    expect(boundsOf(file([-3, 40, 2, 45]), [])).toEqual({ minX: -3, minY: 40, maxX: 2, maxY: 45 });
    expect(boundsOf(file([-3, 40, 0, 2, 45, 9]), [])).toEqual({ minX: -3, minY: 40, maxX: 2, maxY: 45 });
    expect(boundsOf(file([170, -20, -175, -10]), [])).toEqual({ minX: 170, minY: -20, maxX: 185, maxY: -10 });
    expect(boundsOf(file([5, 40, 5, 45]), [])).toMatchObject({ minX: 5, maxX: 5 });
  });

  it('are else those of all places, on any quarter of the Earth', () => {
    for (const [east, north] of [
      [1, 1],
      [1, -1],
      [-1, 1],
      [-1, -1],
    ] as const) {
      const at = (lon: number, lat: number) => [east * lon, north * lat];
      const bounds = boundsOf(file(), [[[at(10, 50), at(12, 52)]], [[at(11, 47), at(9, 51)], [at(10, 53)]]]);
      expect([bounds!.minX, bounds!.maxX]).toEqual([9 * east, 12 * east].sort((a, b) => a - b));
      expect([bounds!.minY, bounds!.maxY]).toEqual([47 * north, 53 * north].sort((a, b) => a - b));
    }
  });

  it('go the narrower way round, across 180 degrees where that is shorter', () => {
    expect(
      boundsOf(file(), [
        [
          [
            [179, 10],
            [-178, 11],
          ],
        ],
      ]),
    ).toEqual({ minX: 179, minY: 10, maxX: 182, maxY: 11 });
    expect(
      boundsOf(file(), [
        [
          [
            [-1, 10],
            [2, 11],
          ],
        ],
      ]),
    ).toEqual({ minX: -1, minY: 10, maxX: 2, maxY: 11 });
  });

  it('are none of no places', () => {
    expect(boundsOf(file(), [])).toBeUndefined();
  });
});

describe('a longitude in such waters', () => {
  const across = { minX: 170, minY: 0, maxX: 185, maxY: 1 };

  it('goes on past 180 degrees with them, and stays as it is elsewhere', () => {
    expect(unfolded(-178, across)).toBe(182);
    expect(unfolded(175, across)).toBe(175);
    expect(unfolded(-178, { ...across, minX: -180, maxX: 180 })).toBe(-178);
    expect(unfolded(-178, undefined)).toBe(-178);
    // The farther side of the Earth splits midway between them.
    expect(unfolded(-2.6, across)).toBe(357.4);
    expect(unfolded(-2.4, across)).toBe(-2.4);
  });
});
