import { describe, expect, it } from 'vitest';
import { type LatestStart, latestStart } from '../../../src/core/trip/latest-start.ts';
import type { Trip } from '../../../src/core/trip/shapes.ts';
import { haven, planOf, soundTrip } from '../../trips.ts';

interface Found {
  readonly latest: LatestStart | undefined;
  readonly plans: number;
}

function found(trip: Trip): Found {
  const work = latestStart(trip, haven(), planOf(trip));
  for (let plans = 0; ; plans++) {
    const step = work.next();
    if (step.done) return { latest: step.value, plans };
  }
}

const sound = soundTrip();
const leaving = (time: string, more: Partial<Trip['conditions']> = {}): Trip => ({
  ...sound,
  conditions: { ...sound.conditions, departure: `2027-06-19T${time}-02:00`, ...more },
});
const calmFrom = (time: string, hours: number, speed = 2) =>
  Array.from({ length: hours + 1 }, (_, i) => ({
    time: new Date(Date.parse(`2027-06-19T${time}-02:00`) + i * 3_600_000).toISOString().replace('.000Z', 'Z'),
    fromDeg: 225,
    speed,
  }));

describe('latestStart', () => {
  it('lets nobody leave later on one figure of wind than three hours', () => {
    expect(found(leaving('10:00:00')).latest).toEqual({ later: 3 * 3600, ends: 'one-figure' });
  });

  it('ends to the minute where leaving later brings the trip home in the dusk', () => {
    const evening = leaving('17:30:00');
    expect(planOf(evening).verdict).toBe('go');
    const { latest } = found(evening);
    expect(latest?.ends).toBe('answer');
    const shifted = (later: number) =>
      leaving(new Date(Date.UTC(2027, 5, 19, 17, 30) + later * 1000).toISOString().slice(11, 19));
    expect(planOf(shifted(latest!.later)).verdict).toBe('go');
    expect(planOf(shifted(latest!.later + 60)).verdict).not.toBe('go');
  });

  it('ends where the forecast would end before the boat is home', () => {
    const trip = leaving('08:00:00', { wind: { forecast: calmFrom('08:00:00', 5) }, stream: 'by-tide' });
    const plan = planOf(trip);
    expect(plan.verdict).not.toBe('no-go');
    const { latest } = found(trip);
    expect(latest!.later).toBeGreaterThan(3 * 3600);
    expect(latest!.later).toBeLessThanOrEqual(5 * 3600 - plan.time);
  });

  it('is looked for no further than half a day, however long the forecast', () => {
    const trip = leaving('05:00:00', { wind: { forecast: calmFrom('04:00:00', 30) }, stream: 'by-tide' });
    expect(found(trip).latest).toEqual({ later: 12 * 3600, ends: 'search' });
  });

  it('ends before the wind that the forecast brings', () => {
    const wind = calmFrom('08:00:00', 14).map((entry, i) => (i < 6 ? entry : { ...entry, speed: 14.5 }));
    const trip = leaving('08:00:00', { wind: { forecast: wind } });
    const { latest } = found(trip);
    expect(latest?.later).toBeLessThan(6 * 3600);
  });

  it('keeps the hour to be back by: who leaves later has less time', () => {
    const trip = leaving('10:00:00');
    const { time } = planOf(trip);
    const limited = { ...trip, policy: { ...trip.policy, timeAllowed: time * 1.6 } };
    const { latest } = found(limited);
    expect(latest?.ends).toBe('answer');
    expect(latest!.later).toBeLessThan(time * 0.6);
  });

  it('is silent on a trip that does not fit or has no departure', () => {
    const { departure: _, ...conditions } = sound.conditions;
    expect(found({ ...sound, conditions }).latest).toBeUndefined();
    const empty = { ...leaving('10:00:00'), load: { ...sound.load, fill: 0.02 } };
    expect(planOf(empty).verdict).toBe('no-go');
    expect(found(empty).latest).toBeUndefined();
  });

  it('makes a bounded number of plans', () => {
    for (const trip of [leaving('10:00:00'), leaving('17:30:00')]) expect(found(trip).plans).toBeLessThan(60);
  });
});
