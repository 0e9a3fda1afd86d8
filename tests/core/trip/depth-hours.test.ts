import { describe, expect, it } from 'vitest';
import { depthHours } from '../../../src/core/trip/depth-hours.ts';
import { prepare } from '../../../src/core/trip/prepare.ts';
import type { Trip } from '../../../src/core/trip/shapes.ts';
import { HOUR } from '../../../src/core/units/convert.ts';
import { secondsOf } from '../../../src/core/water/clock.ts';
import { haven } from '../../trips.ts';
import { dayOut, SPRINGS } from './day-on-the-water.ts';

const high = secondsOf(SPRINGS.highWater);
const tideAround = { from: high - 6 * HOUR, to: high + 6 * HOUR };
const hoursOf = (trip: Trip) => depthHours(prepare(trip, haven()), tideAround);

/** Out through the middle of the drying bar. */
function overTheBar(): Trip {
  const trip = dayOut();
  const waypoints = [
    { lat: 46.0304, lon: -32.0068 },
    { lat: 46.012, lon: -32.0068 },
  ];
  return { ...trip, route: { ...trip.route, waypoints } };
}

describe('hours with water enough', () => {
  it('at the landings of the haven agree with what they are said to be usable for, less the allowance for weather', () => {
    const spans = new Map(hoursOf(dayOut()).map(({ name, open }) => [name, open]));
    for (const [name, usable] of [
      ['Upper Quay', 4],
      ['Pell landing', 3],
    ] as const) {
      const [only, ...more] = spans.get(name)!;
      expect(more).toEqual([]);
      const half = (only!.to - only!.from) / 2 / HOUR;
      expect(half).toBeLessThanOrEqual(usable);
      expect(half).toBeGreaterThan(usable - 0.5);
    }
  });

  it('are told of a shoal on the route and lie about high water', () => {
    const bar = hoursOf(overTheBar()).find(({ kind }) => kind === 'shoal');
    expect(bar?.name).toBe('Hake Bar');
    expect(bar!.open).toHaveLength(1);
    expect((bar!.open[0]!.from + bar!.open[0]!.to) / 2).toBeCloseTo(high, -2);
  });

  it('are fewer for a crew that wants more water', () => {
    const trip = overTheBar();
    const open = (depth: number) =>
      hoursOf({ ...trip, policy: { ...trip.policy, depth } }).map(({ open }) =>
        open.reduce((sum, { from, to }) => sum + to - from, 0),
      );
    const [little, much] = [open(0.5), open(1.5)];
    expect(little.length).toBe(3);
    for (const [i, hours] of little.entries()) expect(hours).toBeGreaterThan(much[i]!);
  });

  it('are not told where no height of the tide is', () => {
    const { highWaterHeight: _, ...tide } = SPRINGS;
    expect(hoursOf(dayOut({ tide }))).toEqual([]);
  });
});
