import { describe, expect, it } from 'vitest';
import { clockReading, instantOf } from '../../../src/components/from-here/clock-now.ts';
import { ofHundred, shownChances } from '../../../src/components/how-sure/chances.ts';
import { PLAYED, playing } from '../../../src/components/how-sure/playing.ts';
import { frameOf, marked } from '../../../src/components/speed-choice/trade.ts';
import { planTrip } from '../../../src/core/trip/plan-trip.ts';
import { risk } from '../../../src/core/trip/risk.ts';
import { speedChoices } from '../../../src/core/trip/speed-choices.ts';
import { standingOf } from '../../../src/core/trip/standing.ts';
import { haven, shipped } from '../../trips.ts';

const modules = {
  'homeleg-further': () => import('../../../src/components/further/further.ts'),
  'homeleg-minimums': () => import('../../../src/components/minimums/minimums.ts'),
  'homeleg-mishaps': () => import('../../../src/components/mishaps/mishaps.ts'),
  'homeleg-how-sure': () => import('../../../src/components/how-sure/how-sure.ts'),
  'homeleg-speed-choice': () => import('../../../src/components/speed-choice/speed-choice.ts'),
  'homeleg-from-here': () => import('../../../src/components/from-here/from-here.ts'),
  'homeleg-daylight': () => import('../../../src/components/daylight/daylight.ts'),
};

it.each(Object.entries(modules))('%s can be imported where there is no page', async (_tag, load) => {
  expect(globalThis).not.toHaveProperty('document');
  const classes = Object.values(await load()).filter((entry) => typeof entry === 'function');
  expect(classes.length).toBeGreaterThan(0);
});

describe('how sure a trip is', () => {
  const quick = { reserveWhole: 0.9, homeAtAll: 0.99 };

  it('is never told as more than 99 of 100', () => {
    expect(ofHundred(1)).toBe(99);
    expect(ofHundred(0.996)).toBe(99);
    expect(ofHundred(0.5)).toBe(50);
  });

  it('stays as the quick formula says where playing it over agrees', () => {
    const played = { samples: 10_000, reserveWhole: 0.885, homeAtAll: 0.985 };
    expect(shownChances(quick, played)).toEqual({ ...quick, differs: false });
  });

  it('is the lower figure where they differ by more than 2 of 100, whichever that is', () => {
    const worse = { samples: 10_000, reserveWhole: 0.8, homeAtAll: 0.99 };
    expect(shownChances(quick, worse)).toEqual({ reserveWhole: 0.8, homeAtAll: 0.99, differs: true });
    const better = { samples: 10_000, reserveWhole: 0.95, homeAtAll: 0.99 };
    expect(shownChances(quick, better)).toEqual({ ...quick, differs: true });
  });

  it('played over in turns, agrees with the quick formula and is the same each time', () => {
    const standing = standingOf(shipped('petrol-day'), haven());
    if (!standing.ok) throw new Error('not opened');
    const run = () => {
      const work = playing(standing.value);
      const shares: number[] = [];
      for (;;) {
        const { done, value } = work.next();
        if (done) return { shares, sampled: value };
        shares.push(value);
      }
    };
    const { shares, sampled } = run();
    expect(shares.at(-1)).toBe(1);
    expect(sampled.samples).toBe(PLAYED);
    const fast = risk(standing.value);
    expect(Math.abs(fast.reserveWhole - sampled.reserveWhole)).toBeLessThan(0.02);
    expect(Math.abs(fast.homeAtAll - sampled.homeAtAll)).toBeLessThan(0.02);
    expect(run().sampled).toEqual(sampled);
  });
});

describe('the choice of speed as drawn', () => {
  const trip = shipped('petrol-day');
  const planned = planTrip(trip, haven());
  if (!planned.ok) throw new Error('not planned');
  const found = speedChoices(trip, haven());
  const points = marked(found, planned.value);

  it('names the trip as planned and each choice once, with all its names', () => {
    expect(points[0]!.marks).toEqual(['present']);
    expect(points[0]!.left).toBe(planned.value.left.median);
    expect(points.flatMap(({ marks }) => marks).toSorted()).toEqual([
      'earliest',
      'lowestRevs',
      'present',
      'thriftiest',
    ]);
    expect(new Set(points.map(({ choice }) => choice)).size).toBe(points.length);
  });

  it('shows every named point and the empty tank', () => {
    const { times, lefts, drawn } = frameOf(found.choices, points, planned.value.usable);
    for (const { time, left } of points) {
      expect(time).toBeGreaterThanOrEqual(times[0]);
      expect(time).toBeLessThanOrEqual(times[1]);
      expect(left).toBeGreaterThanOrEqual(lefts[0]);
      expect(left).toBeLessThanOrEqual(lefts[1]);
    }
    expect(lefts[0]).toBeLessThanOrEqual(0);
    expect(drawn.length).toBeGreaterThan(3);
  });
});

describe('the clock under way', () => {
  const departure = '2026-07-15T10:00:00+01:00';
  const now = new Date('2026-07-15T12:34:56Z');

  it('reads as at the place of the departure, not of the device', () => {
    expect(clockReading(now, departure)).toBe('13:34');
    expect(clockReading(now, '2026-07-15T10:00:00-09:30')).toBe('03:04');
  });

  it('means the day of the trip', () => {
    expect(Date.parse(instantOf('13:34', departure, now)!)).toBe(Date.parse('2026-07-15T12:34:00Z'));
  });

  it('means the day after where it is earlier than the departure by more than an hour', () => {
    expect(Date.parse(instantOf('00:20', departure, now)!)).toBe(Date.parse('2026-07-15T23:20:00Z'));
    expect(Date.parse(instantOf('09:30', departure, now)!)).toBe(Date.parse('2026-07-15T08:30:00Z'));
  });

  it('is no time where nothing can be read', () => {
    expect(instantOf('', departure, now)).toBeUndefined();
    expect(instantOf('noon', undefined, now)).toBeUndefined();
  });
});
