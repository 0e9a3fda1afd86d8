import { describe, expect, it } from 'vitest';
import { secondsOf } from '../../../src/core/water/clock.ts';
import { localTime, zoneOffset } from '../../../src/core/water/local-time.ts';

// Clock changes as the time zone database has them: 29 March and 25 October 2026 in Paris, half an hour on Lord Howe.
describe('localTime', () => {
  it('finds the instant in summer and in winter', () => {
    expect(localTime('2026-07-15', '09:30', 'Europe/Paris')).toEqual({
      kind: 'once',
      seconds: secondsOf('2026-07-15T09:30:00+02:00'),
      offset: 7200,
    });
    expect(localTime('2026-12-15', '09:30:15', 'Europe/Paris')).toMatchObject({
      seconds: secondsOf('2026-12-15T09:30:15+01:00'),
    });
  });

  it('says that a time does not exist on the day the clock goes forward, and what it shows instead', () => {
    expect(localTime('2026-03-29', '02:30', 'Europe/Paris')).toEqual({
      kind: 'skipped',
      change: secondsOf('2026-03-29T01:00:00Z'),
      shown: '2026-03-29T03:00:00+02:00',
    });
    expect(localTime('2026-03-29', '02:00', 'Europe/Paris').kind).toBe('skipped');
    expect(localTime('2026-03-29', '01:59', 'Europe/Paris').kind).toBe('once');
    expect(localTime('2026-03-29', '03:00', 'Europe/Paris').kind).toBe('once');
  });

  it('gives both instants of a time that the clock shows twice', () => {
    expect(localTime('2026-10-25', '02:30', 'Europe/Paris')).toEqual({
      kind: 'twice',
      first: { seconds: secondsOf('2026-10-25T00:30:00Z'), offset: 7200 },
      second: { seconds: secondsOf('2026-10-25T01:30:00Z'), offset: 3600 },
    });
    expect(localTime('2026-10-25', '03:00', 'Europe/Paris').kind).toBe('once');
  });

  it('knows changes of half an hour, and a day that a place left out', () => {
    expect(localTime('2026-10-04', '02:15', 'Australia/Lord_Howe').kind).toBe('skipped');
    expect(localTime('2026-10-04', '02:30', 'Australia/Lord_Howe').kind).toBe('once');
    expect(localTime('2011-12-30', '12:00', 'Pacific/Apia').kind).toBe('skipped');
  });

  it('refuses zones and times that do not exist', () => {
    expect(localTime('2026-07-15', '09:30', 'Nowhere/Atall')).toEqual({ kind: 'no-such-zone' });
    for (const [day, clock] of [
      ['2026-02-30', '09:30'],
      ['2026-07-15', '24:00'],
      ['15/07/2026', '09:30'],
      ['2026-07-15', '9:30'],
    ] as const) {
      expect(localTime(day, clock, 'Europe/Paris')).toEqual({ kind: 'no-such-time' });
    }
  });
});

describe('zoneOffset', () => {
  it('is that of the day asked for', () => {
    expect(zoneOffset(secondsOf('2026-07-15T00:00:00Z'), 'America/St_Johns')).toBe(-2.5 * 3600);
    expect(zoneOffset(secondsOf('2026-01-15T00:00:00Z'), 'America/St_Johns')).toBe(-3.5 * 3600);
    expect(zoneOffset(0, 'Nowhere/Atall')).toBeUndefined();
  });
});
