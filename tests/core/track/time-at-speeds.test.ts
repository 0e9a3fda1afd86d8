import { describe, expect, it } from 'vitest';
import { timeAtSpeeds } from '../../../src/core/track/time-at-speeds.ts';
import { MORNING, recorded } from './made-tracks.ts';

const trip = recorded([
  { seconds: 100, speed: 2.2, headingDeg: 80 },
  { seconds: 600, speed: 7.7, headingDeg: 80, change: 5 },
  { seconds: 90, speed: 0, headingDeg: 80, change: 5 },
  { seconds: 600, speed: 7.7, headingDeg: 260, change: 5 },
  { seconds: 3600, speed: 0, headingDeg: 260, change: 5 },
  { seconds: 300, speed: 2.2, headingDeg: 260, change: 5 },
]);
const seconds = ({ spent, stops }: ReturnType<typeof timeAtSpeeds>) =>
  spent.reduce((sum, each) => sum + each.seconds, 0) + stops.reduce((sum, { start, end }) => sum + end - start, 0);

describe('timeAtSpeeds', () => {
  it('tells how long the boat was planing, how long it crept, and how long it waited', () => {
    const { spent, stops, unrecorded } = timeAtSpeeds(trip);
    const near = (speed: number) => spent.filter((each) => Math.abs(each.speed - speed) < 0.1)[0]!.seconds;
    expect(Math.abs(near(7.7) - 1200)).toBeLessThan(30);
    expect(Math.abs(near(2.2) - 400)).toBeLessThan(30);
    expect(Math.abs(near(0) - 90)).toBeLessThan(30);
    expect(spent.map(({ speed }) => speed)).toEqual(spent.map(({ speed }) => speed).sort((a, b) => a - b));
    expect(stops.length).toBe(1);
    expect(Math.abs(stops[0]!.start - MORNING - 1390)).toBeLessThan(15);
    expect(Math.abs(stops[0]!.end - stops[0]!.start - 3600)).toBeLessThan(30);
    expect(unrecorded).toBe(0);
  });

  it('loses no time and, while the boat goes straight, no distance', () => {
    expect(seconds(timeAtSpeeds(trip))).toBeCloseTo(5290, 6);
    const straight = recorded([
      { seconds: 200, speed: 3, headingDeg: 80 },
      { seconds: 200, speed: 9, headingDeg: 80, change: 100 },
    ]);
    const distance = timeAtSpeeds(straight).spent.reduce((sum, each) => sum + each.speed * each.seconds, 0);
    expect(distance).toBeCloseTo(200 * 3 + 100 * 6 + 100 * 9, 1);
  });

  it('takes a stop for one stop though the receiver wanders', () => {
    const lunch = recorded(
      [
        { seconds: 100, speed: 6, headingDeg: 80 },
        { seconds: 3600, speed: 0, headingDeg: 80 },
        { seconds: 100, speed: 6, headingDeg: 260 },
      ],
      { noise: 1.5 },
    );
    expect(timeAtSpeeds(lunch).stops.length).toBe(1);
  });

  it('takes an interruption as sailed straight, and says so', () => {
    const points = trip.points.filter((_, at) => at <= 300 || at >= 500);
    const found = timeAtSpeeds({ ...trip, points, breaks: [301] });
    expect(found.unrecorded).toBeCloseTo(200, 6);
    expect(seconds(found)).toBeCloseTo(5290, 6);
    const whole = timeAtSpeeds(trip);
    const planing = (each: typeof found) => each.spent.filter(({ speed }) => speed > 7.5)[0]!.seconds;
    expect(Math.abs(planing(found) - planing(whole))).toBeLessThan(10);
  });

  it('tells a stop apart from five minutes on', () => {
    const lying = (seconds: number) => timeAtSpeeds(recorded([{ seconds, speed: 0, headingDeg: 0 }]));
    expect(lying(300)).toMatchObject({ spent: [], stops: [{ start: MORNING, end: MORNING + 300 }] });
    expect(lying(299)).toEqual({ spent: [{ speed: 0, seconds: 299 }], stops: [], unrecorded: 0 });
  });

  it('takes a boat for lying still that drifts under half a metre per second', () => {
    const drifting = (speed: number) => timeAtSpeeds(recorded([{ seconds: 400, speed, headingDeg: 90 }]));
    expect(drifting(0.49).stops.length).toBe(1);
    expect(drifting(0.51)).toMatchObject({ stops: [] });
    expect(drifting(0.51).spent[0]!.speed).toBeCloseTo(0.51, 5);
  });

  it('puts speeds of half a metre per second together, ascending, with their mean', () => {
    const parts = [7.3, 2.1, 7.1, 2.4].map((speed) => ({ seconds: 100, speed, headingDeg: 90, change: 0 }));
    const { spent } = timeAtSpeeds(recorded(parts));
    expect(spent.map(({ seconds }) => seconds)).toEqual([200, 200]);
    expect(spent[0]!.speed).toBeCloseTo(2.25, 4);
    expect(spent[1]!.speed).toBeCloseTo(7.2, 4);
    expect(timeAtSpeeds(recorded(parts), 0.25).spent.map(({ seconds }) => seconds)).toEqual([100, 100, 100, 100]);
  });

  it('counts a quarter of a minute at rest among the speeds as standing, and where it lay', () => {
    const found = timeAtSpeeds(
      recorded([
        { seconds: 50, speed: 4.2, headingDeg: 90, change: 0 },
        { seconds: 15, speed: 0, headingDeg: 90, change: 0 },
        { seconds: 50, speed: 4.2, headingDeg: 90, change: 0 },
      ]),
    );
    expect(found.spent.map(({ seconds }) => seconds)).toEqual([15, 100]);
    expect(found.spent[0]!.speed).toBe(0);
    expect(found.stops).toEqual([]);
  });

  it('counts the time of an interruption at which the boat lay still as lying, not as unrecorded', () => {
    const lying = recorded([{ seconds: 600, speed: 0, headingDeg: 0 }]);
    const points = lying.points.filter((_, at) => at <= 200 || at >= 400);
    const found = timeAtSpeeds({ ...lying, points, breaks: [201] });
    expect(found).toMatchObject({ spent: [], stops: [{ start: MORNING, end: MORNING + 600 }], unrecorded: 0 });
  });

  it('has nothing to tell of no points, or one', () => {
    const nothing = { spent: [], stops: [], unrecorded: 0 };
    expect(timeAtSpeeds({ name: '', points: [], breaks: [] })).toEqual(nothing);
    expect(timeAtSpeeds({ name: '', points: trip.points.slice(0, 1), breaks: [] })).toEqual(nothing);
  });
});
