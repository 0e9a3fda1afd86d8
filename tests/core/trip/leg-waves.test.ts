import { describe, expect, it } from 'vitest';
import type { LegFetch } from '../../../src/core/route/worst-fetch.ts';
import { seaUnder } from '../../../src/core/trip/leg-waves.ts';
import { secondsOf } from '../../../src/core/water/clock.ts';
import { windSea } from '../../../src/core/water/sea-growth.ts';
import { windTable } from '../../../src/core/water/wind-by-time.ts';

const HOUR = 3600;
const NOON = secondsOf('2027-06-19T12:00:00Z');

/** Open water for a northerly: 1 km on the first leg, 8 on the second, 3 on the third; a third of it for others. */
function open(): LegFetch & { asked: number } {
  const fetch = (leg: number, fromDeg: number) => {
    found.asked++;
    return { length: [1000, 8000, 3000][leg]! / (fromDeg === 0 ? 1 : 3) };
  };
  const found = Object.assign(fetch, { open: () => false, asked: 0 }) as unknown as LegFetch & { asked: number };
  return found;
}

const raised = (wind: number, fetch: number) => windSea({ wind, fetch });
const hours = (speeds: readonly number[], fromDeg = 0, every = 1) =>
  windTable(
    speeds.map((speed, i) => ({ time: new Date((NOON + i * every * HOUR) * 1000).toISOString(), fromDeg, speed })),
  );

describe('the sea under one wind', () => {
  it('is what it raises over the open water of each leg, at any time', () => {
    const { waves } = seaUnder({ fromDeg: 0, speed: 8 }, open(), 3, 0);
    [1000, 8000, 3000].forEach((fetch, leg) => {
      const { height, shortPeriod } = raised(8, fetch);
      expect(waves(leg, 0)).toEqual({ height, period: shortPeriod });
      expect(waves(leg, NOON)).toEqual({ height, period: shortPeriod });
    });
  });

  it('takes the open water from where the wind blows', () => {
    const { waves, highest } = seaUnder({ fromDeg: 90, speed: 8 }, open(), 3, 0);
    expect(waves(2, 0).height).toBe(raised(8, 1000).height);
    expect(highest(0, 1)).toBe(raised(8, 8000 / 3).height);
  });

  it('has a swell on top of it, whose energy adds', () => {
    const { waves, highest } = seaUnder({ fromDeg: 0, speed: 8 }, open(), 3, 0.4);
    expect(waves(0, 0).height).toBeCloseTo(Math.hypot(raised(8, 1000).height, 0.4), 12);
    expect(highest(0, 1)).toBeCloseTo(Math.hypot(raised(8, 8000).height, 0.4), 12);
  });

  it('is highest on the leg with most open water, but only of the legs of the trip', () => {
    const water = open();
    expect(seaUnder({ fromDeg: 0, speed: 8 }, water, 3, 0).highest(0, 1)).toBe(raised(8, 8000).height);
    expect(seaUnder({ fromDeg: 0, speed: 8 }, open(), 1, 0).highest(0, 1)).toBe(raised(8, 1000).height);
  });

  it('is looked up once for each leg, and the open water once for all winds from there', () => {
    const water = open();
    const sea = seaUnder({ fromDeg: 0, speed: 8 }, water, 3, 0);
    sea.waves(1, 0);
    sea.waves(1, HOUR);
    expect(water.asked).toBe(1);
    sea.highest(0, 1);
    expect(water.asked).toBe(4);
    const fresher = seaUnder({ fromDeg: 0, speed: 11 }, water, 3, 0);
    expect(fresher.highest(0, 1)).toBe(raised(11, 8000).height);
    expect(water.asked).toBe(4);
    expect(seaUnder({ fromDeg: 90, speed: 11 }, water, 3, 0).highest(0, 1)).toBe(raised(11, 8000 / 3).height);
    expect(water.asked).toBe(7);
  });
});

describe('the sea under a forecast', () => {
  it('grows under the wind of the hour or the mean of the last three, whichever is more', () => {
    const { waves } = seaUnder(hours([4, 6, 8, 10, 2, 2]), open(), 3, 0);
    // Rising: that of the hour.
    expect(waves(1, NOON + 3 * HOUR).height).toBeCloseTo(raised(10, 8000).height, 12);
    // An hour after it fell to 2: the mean of 8 to 10, 10 to 2 and 2 to 2 lives on.
    expect(waves(1, NOON + 5 * HOUR).height).toBeCloseTo(raised((9 + 6 + 2) / 3, 8000).height, 9);
    expect(waves(1, NOON + 5 * HOUR).period).toBeCloseTo(raised((9 + 6 + 2) / 3, 8000).shortPeriod, 9);
  });

  it('is linear between the hours', () => {
    const { waves } = seaUnder(hours([4, 6, 8, 10]), open(), 3, 0);
    const [a, b] = [waves(0, NOON + 2 * HOUR), waves(0, NOON + 3 * HOUR)];
    expect(b.height).toBeGreaterThan(a.height);
    const between = waves(0, NOON + 2 * HOUR + 900);
    expect(between.height).toBeCloseTo(0.75 * a.height + 0.25 * b.height, 12);
    expect(between.period).toBeCloseTo(0.75 * a.period + 0.25 * b.period, 12);
  });

  it('goes on under the nearest wind before the first and past the last hour', () => {
    const { waves } = seaUnder(hours([4, 6, 12]), open(), 3, 0);
    expect(waves(1, NOON - 5 * HOUR).height).toBeCloseTo(raised(4, 8000).height, 12);
    expect(waves(1, NOON + 9 * HOUR).height).toBeCloseTo(raised(12, 8000).height, 12);
  });

  it('in a gap of more than twelve hours is that of the nearer entry, the earlier in the middle', () => {
    const { waves } = seaUnder(hours([4, 12], 0, 14), open(), 3, 0);
    expect(waves(1, NOON + 3 * HOUR).height).toBeCloseTo(raised(4, 8000).height, 12);
    expect(waves(1, NOON + 7 * HOUR).height).toBeCloseTo(raised(4, 8000).height, 12);
    expect(waves(1, NOON + 8 * HOUR).height).toBeCloseTo(raised(12, 8000).height, 12);
  });

  it('is highest in the hours about the trip, the ones begun included', () => {
    const sea = seaUnder(hours([4, 6, 8, 10]), open(), 3, 0.3);
    const highest = (from: number, to: number) => sea.highest(NOON + from * HOUR, NOON + to * HOUR);
    const of = (wind: number) => Math.hypot(raised(wind, 8000).height, 0.3);
    expect(highest(0, 1)).toBeCloseTo(of(6), 12);
    expect(highest(0.5, 1.2)).toBeCloseTo(of(8), 12);
    expect(highest(2.9, 3)).toBeCloseTo(of(10), 12);
    expect(highest(0, 0)).toBeCloseTo(of(4), 12);
    // Asked again, after another question.
    expect(highest(0, 1)).toBeCloseTo(of(6), 12);
    expect(highest(0, 2)).toBeCloseTo(of(8), 12);
    expect(highest(1, 2)).toBeCloseTo(of(8), 12);
    // Falling wind: the hour begun before the start counts.
    const falling = seaUnder(hours([10, 10, 2, 2, 2, 2]), open(), 3, 0);
    expect(falling.highest(NOON + 1.9 * HOUR, NOON + 2 * HOUR)).toBeCloseTo(raised(10, 8000).height, 12);
  });
});
