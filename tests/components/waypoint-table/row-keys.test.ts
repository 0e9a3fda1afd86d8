import { describe, expect, it } from 'vitest';
import {
  changedAt,
  deletedAt,
  insertedAt,
  reordered,
  reversed,
} from '../../../src/components/route-map/waypoint-edits.ts';
import { carryKeys } from '../../../src/components/waypoint-table/row-keys.ts';
import type { Waypoint } from '../../../src/core/route/shapes.ts';

const before: Waypoint[] = [1, 2, 3, 4, 5].map((lat) => ({ lat, lon: 0 }));
const keys = [11, 12, 13, 14, 15];

/** As a host gives it back: equal, but other objects. */
function carried(after: readonly Waypoint[]): number[] {
  let last = 20;
  return carryKeys(before, keys, structuredClone(after) as Waypoint[], () => ++last);
}

describe('carryKeys', () => {
  it('leaves the rows alone when nothing changed', () => {
    expect(carried(before)).toEqual(keys);
  });

  it('keeps the row of a waypoint that was moved or renamed', () => {
    expect(carried(changedAt(before, 2, { lat: 9 }))).toEqual(keys);
    expect(carried(changedAt(before, 2, { name: 'Bar' }))).toEqual(keys);
  });

  it('makes one new row for one inserted', () => {
    expect(carried(insertedAt(before, 2, { lat: 9, lon: 9 }))).toEqual([11, 12, 21, 13, 14, 15]);
  });

  it('drops the row of one deleted', () => {
    expect(carried(deletedAt(before, 1))).toEqual([11, 13, 14, 15]);
  });

  it('takes rows along when waypoints change places', () => {
    expect(carried(reordered(before, 1, 1))).toEqual([11, 13, 12, 14, 15]);
    expect(carried(reversed(before))).toEqual([15, 14, 13, 12, 11]);
  });

  it('keeps apart two waypoints at one place', () => {
    const twice = [before[0]!, before[0]!, before[1]!];
    expect(new Set(carryKeys(twice, [1, 2, 3], [before[1]!, ...twice], () => 4)).size).toBe(4);
  });

  it('starts with new rows', () => {
    let last = 0;
    expect(carryKeys([], [], before.slice(0, 2), () => ++last)).toEqual([1, 2]);
  });

  it('never gives one key to two rows, whatever route comes next', () => {
    const other: Waypoint[] = [3, 3, 9, 1, 1, 2].map((lat) => ({ lat, lon: 0 }));
    const after = carried(other);
    expect(new Set(after).size).toBe(other.length);
  });
});
