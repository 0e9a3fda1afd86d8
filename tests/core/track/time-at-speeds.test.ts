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

  it('has nothing to tell of no points, or one', () => {
    const nothing = { spent: [], stops: [], unrecorded: 0 };
    expect(timeAtSpeeds({ name: '', points: [], breaks: [] })).toEqual(nothing);
    expect(timeAtSpeeds({ name: '', points: trip.points.slice(0, 1), breaks: [] })).toEqual(nothing);
  });
});
