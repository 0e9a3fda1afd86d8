import { describe, expect, it } from 'vitest';
import { HOUR } from '../../../src/core/units/convert.ts';
import { secondsOf } from '../../../src/core/water/clock.ts';
import { tideOfDay } from '../../../src/core/water/tide-of-day.ts';

const noon = secondsOf('2026-07-15T12:00:00Z');
const port = { port: 'Standard Port', meanSpringRange: 4, meanNeapRange: 2, offset: HOUR };
const high = (hours: number, height: number) => ({ at: noon + hours * HOUR, height, kind: 'high' as const });
const low = (hours: number, height: number) => ({ at: noon + hours * HOUR, height, kind: 'low' as const });

describe('the tide of the day', () => {
  const turns = [low(-18, 0.8), high(-12, 4.2), low(-6, 1), high(0, 4), low(6, 0.6), high(12, 4.4)];

  it('is told by the clock of the port, with the mean of both falls', () => {
    expect(tideOfDay(turns, noon + HOUR, port)).toEqual({
      port: 'Standard Port',
      highWater: '2026-07-15T13:00:00+01:00',
      range: expect.closeTo((3 + 3.4) / 2, 12),
      meanSpringRange: 4,
      meanNeapRange: 2,
      highWaterHeight: 4,
    });
  });

  it('is that of the nearest high water: of two as near the earlier', () => {
    const heightAt = (hours: number) => tideOfDay(turns, noon + hours * HOUR, port)!.highWaterHeight;
    expect([-7, -6, -5, 5, 6, 7].map(heightAt)).toEqual([4.2, 4.2, 4, 4, 4, 4.4]);
  });

  it('has the one fall that is known at the ends of what is told', () => {
    expect(tideOfDay(turns, noon + 12 * HOUR, port)!.range).toBeCloseTo(3.8, 12);
    expect(tideOfDay([high(0, 4), low(6, 1)], noon, port)!.range).toBe(3);
  });

  it('is none without a low water beside it, though a farther high water has one', () => {
    expect(tideOfDay([high(0, 4)], noon, port)).toBeUndefined();
    expect(tideOfDay([high(0, 4), high(1, 4.1)], noon, port)).toBeUndefined();
    expect(tideOfDay([low(-18, 1), high(-12, 4.2), high(0, 4)], noon, port)!.highWaterHeight).toBe(4.2);
  });

  it('reaches to thirteen hours from high water, included, before and after it', () => {
    const one = [high(0, 4), low(6, 1)];
    for (const sign of [-1, 1]) {
      expect(tideOfDay(one, noon + sign * 13 * HOUR, port)).toBeDefined();
      expect(tideOfDay(one, noon + sign * (13 * HOUR + 1), port)).toBeUndefined();
    }
  });
});
