import { describe, expect, it } from 'vitest';
import { dueLine } from '../../../src/components/hire-desk/answer-lines.ts';
import { clockText, dayOf, endOfDay, reading, timeToday } from '../../../src/components/hire-desk/desk-time.ts';
import { NOON } from '../../core/hire/examples.ts';
import { METRIC } from './examples.ts';

const HOUR = 3600;

describe('the clock of the desk', () => {
  it('reads a time of today and shows it the same', () => {
    const time = timeToday('14:05', NOON)!;
    expect(reading(time)).toBe('14:05');
    expect(dayOf(time)).toBe(dayOf(NOON));
    expect(clockText(time, NOON, 'en')).toBe('14:05');
    for (const wrong of ['', 'noon', '7:5']) expect(timeToday(wrong, NOON)).toBeUndefined();
  });

  it('names the day where it is another one', () => {
    expect(clockText(NOON + 30 * HOUR, NOON, 'en')).toMatch(/Jun/);
  });

  it('ends the day a second before the next', () => {
    expect(dayOf(endOfDay(NOON))).toBe(dayOf(NOON));
    expect(dayOf(endOfDay(NOON) + 1)).not.toBe(dayOf(NOON));
  });
});

describe('the time to be back, before the boat has left', () => {
  const rule = { kind: 'after', seconds: 2 * HOUR } as const;

  it('counts from leaving, unless the last return comes first', () => {
    expect(dueLine({ rule, lastReturn: undefined, now: NOON }, METRIC)).toMatch(/^Be back 2.h.00.min after leaving$/);
    const last = timeToday(reading(NOON + HOUR), NOON)!;
    expect(dueLine({ rule, lastReturn: last, now: NOON }, METRIC)).toBe(`Be back by ${reading(last)}`);
  });

  it('is the time agreed, or the last return', () => {
    const at = { kind: 'at', time: NOON + 3 * HOUR } as const;
    expect(dueLine({ rule: at, lastReturn: undefined, now: NOON }, METRIC)).toBe(`Be back by ${reading(at.time)}`);
  });
});
