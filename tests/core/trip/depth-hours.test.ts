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

  it('are told of the twelve landings nearest to the start, and of a shoal where it lies highest', () => {
    const start = { lat: 46, lon: -32 };
    const landing = (name: string, dLat: number, dLon: number) => ({
      properties: { kind: 'landing', name, dries_m: 1 },
      geometry: { type: 'Point', coordinates: [start.lon + dLon, start.lat + dLat] },
    });
    const far = Array.from({ length: 14 }, (_, i) => landing(`${i}`, i % 2 ? 0.01 * i : 0, i % 2 ? 0 : -0.01 * i));
    const shoal = (name: string, dries: number | undefined, kind = 'shoal') => ({
      kind,
      leg: 0,
      at: start,
      zone: { name, kind, dries_m: dries },
    });
    const hours = (hazards: readonly object[], landings?: readonly object[], waypoints: readonly object[] = [start]) =>
      depthHours(
        {
          trip: {
            route: { waypoints: [...waypoints, { lat: 46.5, lon: -32.5 }].slice(waypoints.length ? 0 : 1) },
            policy: {},
          },
          waters: landings && { landings },
          hazards,
          around: {},
        } as never,
        tideAround,
        () => ({ known: true, height: 3 }),
      );
    const mixed = [far[7]!, far[13]!, ...far.slice(0, 7), ...far.slice(8, 13)];
    const untold = { ...landing('untold', 0, 0), properties: { kind: 'landing', name: 'untold' } };
    expect(hours([], [untold, ...mixed]).map(({ name }) => name)).toEqual(Array.from({ length: 12 }, (_, i) => `${i}`));
    for (const order of [
      [0.5, 2, 1],
      [2, 1, 0.5],
      [1, 0.5, 2],
    ]) {
      const found = hours([
        { kind: 'outside', leg: 0, at: start },
        ...order.map((dries) => shoal('Bank', dries)),
        shoal('Deep', undefined),
        shoal('Point', 9, 'land'),
      ]);
      expect(found.map(({ name, dries, kind }) => [name, dries, kind])).toEqual([['Bank', 2, 'shoal']]);
    }
    expect(hours([], far.slice(0, 3), []).length).toBe(3);
  });

  it('are not told where no height of the tide is', () => {
    const { highWaterHeight: _, ...tide } = SPRINGS;
    expect(hoursOf(dayOut({ tide }))).toEqual([]);
  });
});
