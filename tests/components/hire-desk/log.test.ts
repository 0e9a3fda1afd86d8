import { describe, expect, it } from 'vitest';
import { logCsv } from '../../../src/components/hire-desk/log-csv.ts';
import { hiresOn, logDays, logRow } from '../../../src/components/hire-desk/log-rows.ts';
import { weightsTyped } from '../../../src/components/hire-desk/weights-typed.ts';
import { aHire, NOON } from '../../core/hire/examples.ts';
import { METRIC } from './examples.ts';

const out = aHire({ leftAt: NOON, due: NOON + 7200 });
const day = new Date(NOON * 1000).toLocaleDateString('sv');

describe('the log of a day', () => {
  it('lists the hires of that day by departure', () => {
    const later = aHire({ id: 'later', leftAt: NOON + 60, due: NOON + 90 });
    const other = aHire({ id: 'other', checkedAt: NOON - 3 * 86_400 });
    expect(hiresOn([later, out, other], day).map(({ id }) => id)).toEqual(['h1', 'later']);
    expect(logDays([later, other], day)[0]).toBe(day);
    expect(logDays([], day)).toEqual([day]);
  });

  it('tells how late a boat is, back or not', () => {
    expect(logRow(out, NOON + 3600, METRIC).late).toBe('');
    expect(logRow(out, NOON + 7200 + 1800, METRIC)).toMatchObject({ back: 'overdue', late: '30\u00a0min' });
    const back = { ...out, returnedAt: NOON + 7200 + 600 };
    expect(logRow(back, NOON + 86_400, METRIC).late).toBe('10\u00a0min');
  });

  it('becomes a table that spreadsheets open as text, never as formulas', () => {
    const note = '=HYPERLINK("http://x.example","prize")';
    const hires = [
      { ...out, boat: ' +1 boat', returnedAt: NOON + 7000, back: { amount: 2, used: 'unknown' as const, note } },
      aHire({ id: 'h2', boat: '@home', route: '-2+3', shown: { plate: '|KM' } }),
    ];
    const csv = logCsv(hires, day, NOON + 8000, METRIC);
    expect(csv.startsWith('\uFEFFDay,Boat,Where,')).toBe(true);
    expect(csv.trim().split('\r\n')).toHaveLength(3);
    expect(csv).toContain(`"'=HYPERLINK(""http://x.example"",""prize"")"`);
    for (const cell of csv.slice(1).split(/[,\r\n]+/)) expect(cell.replace(/^"/, '')).not.toMatch(/^\s*[=+\-@|]/);
  });

  it('leaves out how to reach the hirer', () => {
    expect(logCsv([aHire({ contact: '+00 123 456' })], day, NOON, METRIC)).not.toContain('123 456');
  });
});

describe('weights as a desk types them', () => {
  it('are read with commas or spaces between', () => {
    expect(weightsTyped('85, 70 32', METRIC)).toEqual([85, 70, 32]);
    expect(weightsTyped('', METRIC)).toEqual([]);
  });

  it('are refused as a whole where one is no weight', () => {
    for (const text of ['85, heavy', '0', '-4', '85, 900']) expect(weightsTyped(text, METRIC)).toBeUndefined();
  });
});
