import { describe, expect, it } from 'vitest';
import {
  badCaseSentence,
  chanceSentence,
  leftInShort,
  leftSentence,
  timeSentence,
} from '../../../src/components/answer/sentences.ts';
import { NAUTICAL } from '../../../src/components/units/default-measures.ts';
import * as plans from './fixtures.ts';

const plain = (text: string) => text.replaceAll('\u00a0', ' ');
const { litre } = plans;

describe('leftSentence', () => {
  it('gives what is left, its band and the reserve', () => {
    const plan = {
      ...plans.go,
      left: { low: litre(2.8), median: litre(3.9), high: litre(4.8) },
      reserve: litre(3.6),
    };
    expect(plain(leftSentence(plan, NAUTICAL))).toBe('3.9 L left at home, 2.8 to 4.8 L likely; reserve 3.6 L.');
  });

  it('says so when the low end of the band does not get home', () => {
    const plan = { ...plans.go, left: { low: litre(-0.3), median: litre(1), high: litre(2.5) }, reserve: litre(3) };
    expect(plain(leftSentence(plan, NAUTICAL))).toBe(
      '1.0 L left at home, from 0.3 L short to 2.5 L likely; reserve 3.0 L.',
    );
  });

  it('tells a shortfall as one', () => {
    expect(plain(leftSentence(plans.overflow, NAUTICAL))).toBe('2.9 L short of getting home; reserve 3.6 L.');
  });

  it('does not promise home on a trip that ends elsewhere', () => {
    expect(leftSentence(plans.oneWay, NAUTICAL)).toContain('left at the end');
  });

  it('has words for a need without end', () => {
    expect(leftSentence(plans.stuck, NAUTICAL)).toBe('No amount of fuel gets this trip home.');
    const open = { ...plans.go, left: { low: -Infinity, median: litre(1), high: litre(2) } };
    expect(leftSentence(open, NAUTICAL)).toContain('anything up to');
  });
});

describe('leftInShort', () => {
  it('fits a strip', () => {
    expect(plain(leftInShort(plans.electric, NAUTICAL))).toBe('1.98 kWh left');
    expect(plain(leftInShort(plans.overflow, NAUTICAL))).toBe('2.9 L short');
    expect(leftInShort(plans.stuck, NAUTICAL)).toBe('no way home');
  });
});

describe('timeSentence', () => {
  const trip = { ...plans.go, time: 2 * 3600 + 35 * 60, distance: 15.6 * 1852 };

  it('gives the clock time at home where a departure is known', () => {
    expect(plain(timeSentence(trip, '2026-07-15T13:30:00+01:00', NAUTICAL))).toBe(
      'Home at 16:05, after 2 h 35 min and 15.6 NM.',
    );
  });

  it('gives time and distance without one', () => {
    expect(plain(timeSentence(trip, undefined, NAUTICAL))).toBe('2 h 35 min and 15.6 NM in all.');
  });

  it('does not time a trip that never ends', () => {
    expect(timeSentence(plans.stuck, '2026-07-15T13:30:00+01:00', NAUTICAL)).toContain('more than can be sailed');
  });
});

describe('chanceSentence', () => {
  it.each([
    [0.99, 'In about 1 of 100'],
    [1, 'In about 1 of 100'],
    [0.931, 'In about 7 of 100'],
    [0.5, 'In about 50 of 100'],
    [0.004, 'In nearly all'],
    [0, 'In nearly all'],
  ])('never says never or always at %d', (probability, start) => {
    expect(chanceSentence(probability)).toContain(start);
  });
});

describe('badCaseSentence', () => {
  it('says what happens and what is left', () => {
    expect(plain(badCaseSentence(plans.go, NAUTICAL))).toMatch(
      /^On a bad day, home at low speed and with more wind than forecast: 1\.2 L left after \d h \d\d min\.$/,
    );
  });

  it('tells a shortfall and a way home that is none', () => {
    expect(plain(badCaseSentence(plans.marginal, NAUTICAL))).toContain('0.3 L short, so it does not last.');
    expect(badCaseSentence(plans.noGo, NAUTICAL)).toContain('does not get home at all');
  });
});
