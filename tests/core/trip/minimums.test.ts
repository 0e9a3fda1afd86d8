import { describe, expect, it } from 'vitest';
import { minimums } from '../../../src/core/trip/minimums.ts';
import { standingOf } from '../../../src/core/trip/standing.ts';
import { haven, shipped, soundTrip } from '../../trips.ts';

function told(timeAllowed: number | undefined, trip = soundTrip()) {
  const found = standingOf({ ...trip, policy: { ...trip.policy, timeAllowed } }, haven());
  if (!found.ok) throw new Error('the trip can be planned');
  return { list: minimums(found.value), run: found.value.fuel.run, prepared: found.value.prepared };
}

describe('the latest to go on', () => {
  it.each([
    ['a short trip', soundTrip()],
    ['the petrol day', shipped('petrol-day')],
  ])('on %s is late by what is left of the time allowed over the whole trip', (_, trip) => {
    const { list, run } = told(30_000, trip);
    expect(list.length).toBeGreaterThan(1);
    for (const { latest, arrives } of list) {
      // Going on then takes what the trip still takes from here, and ends as the time does.
      expect(latest! + (run.time - arrives)).toBeCloseTo(30_000, 6);
    }
  });

  it('is not told where no time is set', () => {
    for (const minimum of told(undefined).list) expect(minimum).not.toHaveProperty('latest');
  });
});

describe('the waypoints of a trip out and home', () => {
  it('come in the order sailed, the start at the end again, half of the manoeuvring before the first and after the last', () => {
    const { list, run, prepared } = told(undefined);
    expect(list.map(({ leg, waypoint, part }) => [leg, waypoint, part])).toEqual([
      [0, 1, 'out'],
      [1, 0, 'home'],
    ]);
    const half = prepared.manoeuvring / 2;
    expect(list[0]!.arrives).toBeCloseTo(half + run.sailed[0]!.time, 9);
    expect(list[1]!.arrives).toBeCloseTo(run.time - half, 9);
    // At the turn home takes its stretch and the rest of the manoeuvring; at home only that.
    expect(list[0]!.homeTime).toBeCloseTo(run.sailed[1]!.time + half, 6);
    expect(list[1]!.homeTime).toBeCloseTo(half, 6);
  });
});
