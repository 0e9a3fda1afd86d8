import { describe, expect, it } from 'vitest';
import { judgeWind } from '../../../src/core/trip/judge-wind.ts';
import type { Prepared } from '../../../src/core/trip/prepare.ts';
import { windTable } from '../../../src/core/water/wind-by-time.ts';

interface Made {
  readonly wind?: unknown;
  readonly maxWind?: number;
  readonly category?: string;
  readonly horizon?: number;
  readonly possible?: boolean;
}

const DEPARTS = Date.UTC(2027, 5, 19, 8) / 1000;

function judged({ wind, maxWind, category, horizon = 4 * 3600, possible = true }: Made) {
  const plate = category && { scheme: 'eu', category };
  const trip = { conditions: { wind }, policy: { maxWind }, craft: { hull: { plate } } };
  const prepared = { trip, around: { wind, departs: DEPARTS, horizon } } as unknown as Prepared;
  return judgeWind(prepared, { run: { possible }, slowest: 2 * 3600 } as never);
}

const blowing = (speed: number, rest: Made = {}) => judged({ wind: { fromDeg: 200, speed }, ...rest });
const forecast = (speeds: readonly number[], gusts: readonly number[] = []) =>
  windTable(
    speeds.map((speed, hour) => ({
      time: new Date((DEPARTS + 3600 * hour) * 1000).toISOString(),
      fromDeg: 200,
      speed,
      ...(gusts[hour] !== undefined && { gust: gusts[hour] }),
    })),
  );

describe('wind', () => {
  it('nobody told of is marginal, a calm says nothing', () => {
    expect(judged({})).toEqual([{ code: 'wind-unknown', level: 'marginal', fixes: [{ code: 'give-value' }] }]);
    expect(judged({ wind: 'calm' })).toEqual([]);
  });

  it('is too much for most small boats from 8 m/s, and for all from 13.9', () => {
    const told = { code: 'over-wind-limit', measure: 'speed', fixes: [{ code: 'wait' }] };
    expect(blowing(7.99)).toEqual([]);
    expect(blowing(8)).toEqual([{ ...told, level: 'marginal', value: 8, limit: 8 }]);
    expect(blowing(13.89)).toEqual([{ ...told, level: 'marginal', value: 13.89, limit: 8 }]);
    expect(blowing(13.9)).toEqual([{ ...told, level: 'no-go', value: 13.9, limit: 13.9 }]);
  });

  it('is a no-go above the limit the crew set itself, which raises no other', () => {
    expect(blowing(5, { maxWind: 5 })).toEqual([]);
    expect(blowing(5.1, { maxWind: 5 })).toMatchObject([{ level: 'no-go', value: 5.1, limit: 5 }]);
    expect(blowing(9, { maxWind: 12 })).toMatchObject([{ level: 'marginal', limit: 8 }]);
    expect(blowing(14, { maxWind: 20 })).toMatchObject([{ level: 'no-go', limit: 13.9 }]);
  });

  it('is held against the category of the plate, which allows its own force', () => {
    const codes = (speed: number) => blowing(speed, { category: 'D' }).map(({ code }) => code);
    // Category D is for up to force 4.
    expect(codes(7.9)).toEqual([]);
    expect(codes(8)).toEqual(['over-wind-limit', 'over-category']);
    expect(blowing(8, { category: 'D' }).at(-1)).toMatchObject({ level: 'no-go', value: 5, limit: 4, name: 'wind' });
    expect(blowing(8, { category: 'C' }).map(({ code }) => code)).toEqual(['over-wind-limit']);
  });
});

describe('wind by the hour', () => {
  it('counts until the slowest run is home, not later', () => {
    expect(judged({ wind: forecast([3, 3, 3, 3, 12, 12]) })).toEqual([]);
    expect(judged({ wind: forecast([3, 9, 3, 3, 12, 12]) })).toMatchObject([{ code: 'over-wind-limit', value: 9 }]);
  });

  it('counts for as long as the trip may take where it cannot be sailed', () => {
    expect(judged({ wind: forecast([3, 3, 3, 9, 3, 3]), possible: false })).toMatchObject([{ value: 9 }]);
  });

  it('is too short a forecast where it ends before the trip, and says when', () => {
    expect(judged({ wind: forecast([3, 3]) })).toEqual([
      { code: 'forecast-short', level: 'marginal', measure: 'time', value: 3600, fixes: [{ code: 'give-value' }] },
    ]);
  });

  it('is gusty from near gale in the gusts, unless the wind itself is that strong', () => {
    expect(judged({ wind: forecast([5, 5, 5, 5], [6, 13.8, 6, 6]) })).toEqual([]);
    expect(judged({ wind: forecast([5, 5, 5, 5], [6, 13.9, 6, 6]) })).toEqual([
      { code: 'gusty', level: 'marginal', measure: 'speed', value: 13.9, limit: 13.9, fixes: [{ code: 'wait' }] },
    ]);
    expect(judged({ wind: forecast([14, 14, 14, 14], [20, 20, 20, 20]) }).map(({ code }) => code)).toEqual([
      'over-wind-limit',
    ]);
  });
});
