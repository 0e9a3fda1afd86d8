import { describe, expect, it } from 'vitest';
import { byTime, strongestTold, windThen, withSpeeds } from '../../../src/core/trip/wind-law.ts';
import { windTable } from '../../../src/core/water/wind-by-time.ts';

const steady = { fromDeg: 200, speed: 6 };
const eight = Date.UTC(2027, 5, 19, 8) / 1000;
const hour = (n: number) => eight + 3600 * n;
const table = windTable(
  [2, 9, 3, 5].map((speed, n) => ({ time: new Date(hour(n) * 1000).toISOString(), fromDeg: 200, speed })),
);

describe('a wind law', () => {
  it('is by time where it has entries, and is not where it is a wind, a calm or nothing', () => {
    expect([table, steady, 'calm' as const, undefined].map(byTime)).toEqual([true, false, false, false]);
  });

  it('tells the wind of an instant, and none beyond its hours', () => {
    expect(windThen(steady, 0)).toBe(steady);
    expect(windThen(table, hour(1))).toMatchObject({ speed: 9 });
    expect(windThen(table, hour(2.5))).toMatchObject({ speed: 4 });
    expect(windThen(table, hour(3) + 1)).toBeUndefined();
  });

  it('changed in speed keeps its directions and hours', () => {
    const double = (speed: number) => 2 * speed;
    expect(withSpeeds(steady, double)).toEqual({ fromDeg: 200, speed: 12 });
    const changed = withSpeeds(table, double);
    expect(changed.entries.map(({ at, fromDeg, speed }) => [at, fromDeg, speed])).toEqual(
      table.entries.map(({ at, fromDeg, speed }) => [at, fromDeg, 2 * speed]),
    );
  });

  it('is at its strongest at an hour within the span or at an end of it, never outside', () => {
    expect(strongestTold(steady, hour(0), hour(1))).toBe(6);
    expect(strongestTold(table, hour(0), hour(3))).toBe(9);
    expect(strongestTold(table, hour(0), hour(1))).toBe(9);
    expect(strongestTold(table, hour(1), hour(1))).toBe(9);
    // Falling from 9 to 3 in an hour, half an hour on it is 6; rising from 2 to 9, half an hour before 5.5.
    expect(strongestTold(table, hour(1.5), hour(3))).toBe(6);
    expect(strongestTold(table, hour(0), hour(0.5))).toBe(5.5);
    expect(strongestTold(table, hour(4), hour(5))).toBe(0);
  });
});
