import { describe, expect, it } from 'vitest';
import table from '../../shared/checks/published-table.json' with { type: 'json' };
import { checkFigure, checkWords, offBy } from '../../src/layouts/check-words.ts';

const row = (what: string, published: number, found: number) => ({ what, published, found });

describe('the table of published checks', () => {
  it('names figures in words, with their unit', () => {
    expect(checkWords(row('speed_made_good_kn', 1, 1))).toEqual({ name: 'speed made good', unit: 'kn' });
    expect(checkWords(row('rise_m_by_hour 3', 1, 1))).toEqual({ name: 'rise by hour 3', unit: 'm' });
    expect(checkWords(row('h_m, manual law', 1, 1))).toEqual({ name: 'wave height, manual law', unit: 'm' });
    expect(checkWords(row('KT at J 0.2', 1, 1)).unit).toBe('');
  });

  it('leaves no name as the files have it', () => {
    for (const each of table.rows) expect(checkWords(each).name, each.what).not.toMatch(/_/);
  });

  it('tells shares in percent, angles in degrees and clocks in seconds, with their sign', () => {
    expect(offBy(row('speed_kn', 4, 5), 'kn')).toBe('+25.00 %');
    expect(offBy(row('course_deg', 70, 69.5), '°')).toBe('\u22120.50 °');
    expect(offBy(row('sunset_utc', 1000, 988), 'UTC')).toBe('\u221212 s');
    expect(offBy(row('rate_kn', 0, 0), 'kn')).toBe('0.0000');
  });

  it('reads a clock as a clock, past midnight too', () => {
    expect(checkFigure(40_380, 'UTC')).toBe('11:13:00');
    expect(checkFigure(86_405, 'UTC')).toBe('00:00:05');
  });

  it('keeps every figure of which a test tells, none twice', () => {
    const names = table.rows.map(({ check, what }) => `${check} ${what}`);
    expect(new Set(names).size).toBe(names.length);
    expect(names.length).toBeGreaterThan(250);
  });
});
