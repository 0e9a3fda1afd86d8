import { describe, expect, it } from 'vitest';
import type { Trip } from '../../../src/core/trip/shapes.ts';
import { planOf, reasonOf, shipped, soundTrip } from '../../trips.ts';
import { dayOut } from './day-on-the-water.ts';

const of = (trip: Trip, code: Parameters<typeof reasonOf>[1]) => reasonOf(planOf(trip, { quick: true }), code);

describe('streams that no place tells for the hour', () => {
  const short = (departure: string) => of(dayOut({ departure }), 'streams-short')!;

  it('are said with the place whose table ends before that hour', () => {
    const late = short('2027-06-19T23:30:00-02:00');
    expect(late).toMatchObject({ level: 'marginal', name: 'Ward Sound', fixes: [{ code: 'give-value' }] });
    expect(late.legs!.length).toBeGreaterThan(0);
  });

  it('are said without a place days from the high water told', () => {
    const days = short('2027-06-25T10:00:00-02:00');
    expect(days.level).toBe('marginal');
    expect(Object.keys(days)).not.toContain('name');
  });

  it('are not missed where they are told, nor where one figure is', () => {
    expect(of(dayOut(), 'streams-short')).toBeUndefined();
    expect(of(soundTrip(), 'streams-short')).toBeUndefined();
    expect(of(soundTrip(), 'stream-unknown')).toBeUndefined();
    const unknown = of(
      { ...soundTrip(), conditions: { ...soundTrip().conditions, stream: undefined } },
      'stream-unknown',
    );
    expect(unknown).toMatchObject({ level: 'marginal' });
  });
});

describe('an hour of departure', () => {
  const asked = (conditions: Partial<Trip['conditions']>) =>
    of({ ...soundTrip(), conditions: { ...soundTrip().conditions, ...conditions } }, 'departure-unknown')?.level;
  const { conditions } = dayOut();

  it('is asked for by a forecast and by streams by the tide, and by nothing else', () => {
    expect(asked({ departure: undefined, wind: conditions.wind })).toBe('marginal');
    expect(asked({ departure: undefined, stream: 'by-tide', tide: conditions.tide })).toBe('marginal');
    expect(asked({ departure: undefined })).toBeUndefined();
    expect(asked({ departure: undefined, wind: 'calm' })).toBeUndefined();
    expect(of(dayOut(), 'departure-unknown')).toBeUndefined();
  });
});

describe('a store', () => {
  it('of unknown fill is said, and a battery of unknown temperature, no tank', () => {
    const tender = shipped('electric-tender');
    const without = (trip: Trip): Trip => ({
      ...trip,
      load: { ...trip.load, fill: undefined },
      conditions: { ...trip.conditions, batteryTemperatureC: undefined },
    });
    const warm = { ...tender, conditions: { ...tender.conditions, batteryTemperatureC: 20 } };
    expect(of(without(soundTrip()), 'fill-unknown')?.level).toBe('marginal');
    expect(of(soundTrip(), 'fill-unknown')).toBeUndefined();
    expect(of(without(tender), 'temperature-unknown')?.level).toBe('marginal');
    expect(of(warm, 'temperature-unknown')).toBeUndefined();
    expect(of(without(soundTrip()), 'temperature-unknown')).toBeUndefined();
  });
});

describe('the time allowed', () => {
  const allowed = (timeAllowed: number | undefined, stop = 0) => {
    const trip = soundTrip();
    const [start, turn] = trip.route.waypoints;
    const waypoints = [start!, { ...turn!, stop }];
    return planOf(
      { ...trip, route: { ...trip.route, waypoints }, policy: { ...trip.policy, timeAllowed } },
      { quick: true },
    ).reasons.filter(({ measure }) => measure === 'time');
  };
  const slowest = (stop: number) => allowed(1, stop)[0]!.value!;
  const likely = (stop: number) => allowed(slowest(stop), stop)[0]!;

  it('is over with a slow trip, marginal where one in ten takes longer, and enough beyond', () => {
    for (const stop of [0, 1800]) {
      expect(allowed(1, stop)).toMatchObject([{ code: 'late', level: 'no-go', limit: 1 }]);
      const slow = slowest(stop);
      expect(allowed(slow - 1, stop)).toMatchObject([{ code: 'late', value: slow }]);
      expect(allowed(slow, stop)).toMatchObject([{ code: 'late-likely', level: 'marginal', limit: slow }]);
      const late = likely(stop).value!;
      expect(late).toBeGreaterThan(slow);
      expect(allowed(late - 1, stop)).toMatchObject([{ code: 'late-likely', value: late }]);
      expect(allowed(late, stop)).toEqual([]);
      expect(allowed(undefined, stop)).toEqual([]);
    }
  });

  it('is spread by the way alone, by some tenth of it: a stop takes as long as it takes', () => {
    expect(slowest(1800) - slowest(0)).toBeCloseTo(1800, 6);
    expect(likely(1800).value! - likely(0).value!).toBeCloseTo(1800, 6);
    // Nine in ten of a spread of 9 %, by the normal distribution's tables.
    expect(Math.log(likely(0).value! / slowest(0))).toBeCloseTo(1.2816 * 0.09, 6);
  });
});
