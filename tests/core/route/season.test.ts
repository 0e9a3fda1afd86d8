import { describe, expect, it } from 'vitest';
import { inSeason } from '../../../src/core/route/season.ts';

describe('inSeason', () => {
  it('holds from the first to the last day of its season', () => {
    expect(inSeason('04-01/07-31', '2026-04-01T09:00:00+01:00')).toBe(true);
    expect(inSeason('04-01/07-31', '2026-07-31')).toBe(true);
    expect(inSeason('04-01/07-31', '2026-08-01T00:10:00+02:00')).toBe(false);
    expect(inSeason('04-01/07-31', '2026-03-31')).toBe(false);
  });

  it('runs over new year when it ends before it begins', () => {
    expect(inSeason('10-15/03-15', '2026-12-24')).toBe(true);
    expect(inSeason('10-15/03-15', '2027-03-15')).toBe(true);
    expect(inSeason('10-15/03-15', '2026-06-01')).toBe(false);
  });

  it('holds all year, without a season, without a date, and when either cannot be read', () => {
    expect(inSeason('all year', '2026-01-01')).toBe(true);
    expect(inSeason(undefined, '2026-01-01')).toBe(true);
    expect(inSeason('04-01/07-31', undefined)).toBe(true);
    expect(inSeason('April to July', '2026-12-01')).toBe(true);
    expect(inSeason('04-01/07-31', 'tomorrow')).toBe(true);
  });
});
