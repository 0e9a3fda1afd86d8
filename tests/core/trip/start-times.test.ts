import { describe, expect, it } from 'vitest';
import { planTrip } from '../../../src/core/trip/plan-trip.ts';
import { type StartTime, startsOf, startTimes, thriftiestStart } from '../../../src/core/trip/start-times.ts';
import { offsetOf, secondsOf } from '../../../src/core/water/clock.ts';
import { zoneOffset } from '../../../src/core/water/local-time.ts';
import { haven, soundTrip } from '../../trips.ts';
import { dayOut } from './day-on-the-water.ts';

describe('the departures of a day', () => {
  it('are every half hour from midnight to midnight on the clock of the departure', () => {
    const starts = startsOf('2027-06-19T10:07:00-02:00');
    expect(starts).toHaveLength(48);
    expect(starts[0]).toBe('2027-06-19T00:00:00-02:00');
    expect(starts.at(-1)).toBe('2027-06-19T23:30:00-02:00');
  });

  it('leave out the hour that the clock skips, and have the hour that it shows twice twice', () => {
    const paris = (seconds: number) => zoneOffset(seconds, 'Europe/Paris')!;
    const spring = startsOf('2027-03-28T10:00:00+02:00', paris);
    expect(spring).toHaveLength(46);
    expect(spring.some((time) => time.startsWith('2027-03-28T02'))).toBe(false);
    const autumn = startsOf('2027-10-31T10:00:00+01:00', paris);
    expect(autumn).toHaveLength(50);
    expect(autumn.filter((time) => time.startsWith('2027-10-31T02:30')).map(offsetOf)).toEqual([7200, 3600]);
  });

  it('are each answered as the plan of that departure answers', () => {
    const trip = dayOut();
    const starts = [...startTimes(trip, haven())];
    const noon = starts.find(({ departure }) => departure.includes('T12:00'))!;
    const plan = planTrip({ ...trip, conditions: { ...trip.conditions, departure: noon.departure } }, haven(), {
      quick: true,
    });
    if (!plan.ok) throw new Error('no plan');
    expect(noon).toMatchObject({ verdict: plan.value.verdict, need: plan.value.need.median, time: plan.value.time });
  });

  it('in the dark are refused for the dark', () => {
    const starts = [...startTimes(soundTrip(), haven())];
    expect(starts[0]).toMatchObject({ verdict: 'no-go', reason: { code: 'after-dark' } });
    expect(starts.find(({ departure }) => departure.includes('T10:00'))!.verdict).toBe('go');
  });

  it('differ in what they use where the streams turn, and the thriftiest is one of the best', () => {
    const starts = [...startTimes(dayOut(), haven())].filter(({ verdict }) => verdict !== 'no-go');
    const needs = starts.map(({ need }) => need);
    expect(Math.max(...needs) / Math.min(...needs)).toBeGreaterThan(1.02);
    const best = thriftiestStart(starts)!;
    for (const other of starts.filter(({ verdict }) => verdict === best.verdict)) {
      expect(other.need).toBeGreaterThanOrEqual(best.need);
    }
  });

  it('the thriftiest of them is the first that uses least of those with the best answer, though it be the only one', () => {
    const start = (hour: string, verdict: StartTime['verdict'], need: number) =>
      ({ departure: hour, verdict, need }) as StartTime;
    const best = (...starts: StartTime[]) => thriftiestStart(starts)?.departure;
    const [cheap, go, dear] = [start('08', 'marginal', 1), start('09', 'go', 5), start('10', 'go', 6)];
    const never = start('07', 'no-go', 0.1);
    expect(best(never, cheap, dear, go)).toBe('09');
    expect(best(never, cheap, dear)).toBe('10');
    expect(best(never, start('06', 'marginal', 2), cheap)).toBe('08');
    expect(best(never, cheap)).toBe('08');
    expect(best(go, start('11', 'go', 5))).toBe('09');
    expect(best(never)).toBeUndefined();
    expect(best()).toBeUndefined();
  });

  it('without hour of their own are none: the day is what is asked about', () => {
    expect([...startTimes(dayOut({ departure: undefined }), haven())]).toEqual([]);
  });

  it('take the tide of their own hour where it is worked out for each', () => {
    const asked: number[] = [];
    const tideAt = (seconds: number) => {
      asked.push(seconds);
      return undefined;
    };
    const starts = [...startTimes(dayOut(), haven(), { tideAt })];
    expect(asked).toEqual(starts.map(({ departure }) => secondsOf(departure)));
    expect(starts.every(({ tide }) => tide === undefined)).toBe(true);
  });

  it('beyond the polar circle in summer are none in the dark', () => {
    const trip = soundTrip();
    const waypoints = trip.route.waypoints.map(({ lat, lon }) => ({ lat: lat + 26, lon }));
    const starts = [...startTimes({ ...trip, route: { ...trip.route, waypoints } }, undefined)];
    expect(starts).toHaveLength(48);
    expect(starts.some(({ reason }) => reason?.code === 'after-dark')).toBe(false);
  });
});

describe('the thriftiest departure', () => {
  it('is none where no departure is possible', () => {
    expect(thriftiestStart([])).toBeUndefined();
  });
});
