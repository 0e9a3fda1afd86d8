import type { Trip } from '../../../src/core/trip/shapes.ts';
import type { Tide } from '../../../src/core/water/shapes.ts';
import { shipped } from '../../trips.ts';

/** Springs at the invented haven, high water early in the afternoon of the shipped trip's day. */
export const SPRINGS: Tide = {
  port: 'Marl Haven',
  highWater: '2027-06-19T13:00:00-02:00',
  range: 4,
  meanSpringRange: 4,
  meanNeapRange: 1.9,
  highWaterHeight: 4.6,
};

/** The shipped day out with the wind by the hour and the streams by the tide. */
export function dayOut(change: Partial<Trip['conditions']> = {}): Trip {
  const trip = shipped('petrol-day');
  const forecast = [0, 6, 12, 18, 23].map((hour) => ({
    time: `2027-06-19T${String(hour).padStart(2, '0')}:00:00-02:00`,
    fromDeg: 240,
    speed: 2,
  }));
  const conditions = {
    ...trip.conditions,
    wind: { forecast },
    stream: 'by-tide' as const,
    tide: SPRINGS,
    sea: { swell: 0 },
  };
  return { ...trip, conditions: { ...conditions, ...change } };
}
