import { describe, expect, it } from 'vitest';
import { dayStart, offsetOf, secondsOf, timeAt } from '../../../src/core/water/clock.ts';

describe('secondsOf', () => {
  it('counts from 1970 whatever the offset', () => {
    expect(secondsOf('1970-01-01T01:00:00+01:00')).toBe(0);
    expect(secondsOf('2026-07-15T09:30:00+01:00')).toBe(secondsOf('2026-07-15T08:30Z'));
  });

  it('refuses a time without an offset, which no clock can place', () => {
    expect(() => secondsOf('2026-07-15T09:30:00')).toThrow(RangeError);
    expect(() => secondsOf('2026-13-15T09:30:00Z')).toThrow(RangeError);
  });
});

describe('timeAt', () => {
  it('gives back the time on the clock it was told in', () => {
    for (const time of ['2026-07-15T09:30:00+01:00', '2026-07-14T22:15:07-09:30', '2026-07-15T00:00:00Z']) {
      expect(timeAt(secondsOf(time), offsetOf(time))).toBe(time);
    }
  });
});

describe('dayStart', () => {
  it('is the midnight of the place, not of Greenwich', () => {
    const late = secondsOf('2026-07-15T23:30:00-08:00');
    expect(dayStart(late, -8 * 3600)).toBe(secondsOf('2026-07-15T00:00:00-08:00'));
    const early = secondsOf('2026-07-15T00:30:00+12:00');
    expect(dayStart(early, 12 * 3600)).toBe(secondsOf('2026-07-15T00:00:00+12:00'));
  });
});
