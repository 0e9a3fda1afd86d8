import { describe, expect, it } from 'vitest';
import bench from '../../shared/checks/bench.json' with { type: 'json' };
import { cases } from '../bench/cases.ts';
import { DRAWN } from '../bench/curves.ts';
import { growths } from '../bench/growth.ts';
import { SITE_ROWS } from '../bench/site.ts';

// How long anything takes is nobody's test; that the method page tells of what is measured today is.
const RENEW = 'renew it with "npm run build && npm run bench -- --browser --write"';
const told = (rows: readonly { readonly name: string; readonly budget?: number | undefined }[]) =>
  rows.map(({ name, budget }) => ({ name, ...(budget !== undefined && { budget }) }));

describe('what the method page tells of costs', () => {
  it('names every case of the bench with its budget, and nothing that is no longer measured', () => {
    expect(told(bench.costs), RENEW).toEqual(told(cases));
    expect(told(bench.ratios), RENEW).toEqual(told(growths));
    expect(told(bench.site.rows), RENEW).toEqual(told(SITE_ROWS.map((name) => ({ name }))));
  });

  it('draws growth over legs, zones and days from points that were all measured', () => {
    expect(bench.curves.map(({ name, of }) => ({ name, of }))).toEqual(DRAWN);
    for (const { points } of bench.curves) {
      expect(points.length).toBeGreaterThan(3);
      points.forEach(({ size, microseconds }, i) => {
        expect(microseconds).toBeGreaterThan(0);
        if (i > 0) expect(size).toBeGreaterThan(points[i - 1]!.size);
      });
    }
  });

  it('says on what machine and how busy it was', () => {
    const { node, cores, unitMicroseconds, busy } = bench.machine;
    expect(node).toMatch(/^v\d+/);
    expect(cores).toBeGreaterThan(0);
    expect(unitMicroseconds).toBeGreaterThan(0);
    expect(busy).toHaveLength(2);
    expect(bench.site.slowdown).toBe(4);
  });

  it('has times that fit their units: a ratio to the unit of the same run', () => {
    for (const { measured, microseconds } of bench.costs) {
      const unit = microseconds / measured / bench.machine.unitMicroseconds;
      expect(unit).toBeGreaterThan(0.2);
      expect(unit).toBeLessThan(5);
    }
  });
});
