import { describe, expect, it } from 'vitest';
import demo from '../../../shared/craft/hire-fleet.json' with { type: 'json' };
import { hireTrip } from '../../../src/core/hire/hire-trip.ts';
import type { HireRequest } from '../../../src/core/hire/hired-trip.ts';
import type { HireBoat } from '../../../src/core/hire/shapes.ts';
import { legBetween } from '../../../src/core/route/distance.ts';
import { MORNING } from './examples.ts';

const boat = demo.boats[0] as unknown as HireBoat;

function asked(change: Partial<HireRequest> = {}): HireRequest {
  return {
    boat,
    weights: [80, 70, 30],
    fill: 0.9,
    fillKnownBy: 'gauge',
    route: undefined,
    timeAllowed: 3 * 3600,
    conditions: MORNING,
    policy: { reserve: [{ kind: 'thirds' }], manoeuvring: 600 },
    ...change,
  } as HireRequest;
}

describe('a hire by the hour', () => {
  it('is half of its time out and half home, less the manoeuvring, to the south-west', () => {
    const { route, policy } = hireTrip(asked());
    const leg = legBetween(route.waypoints[0]!, route.waypoints[1]!);
    expect(route.shape).toBe('out-and-home');
    expect(leg.distance).toBeCloseTo((boat.speed * (3 * 3600 - 600)) / 2, 3);
    expect(leg.trackDeg).toBeCloseTo(225, 6);
    // It is as long as it was made: no way drawn on a chart is to be made longer, no time to be kept twice.
    expect(policy).toMatchObject({ drawnFactor: 1, timeAllowed: undefined });
  });

  it('runs for a minute at least', () => {
    const { waypoints } = hireTrip(asked({ timeAllowed: 300 })).route;
    expect(legBetween(waypoints[0]!, waypoints[1]!).distance).toBeCloseTo(boat.speed * 30, 6);
    const unsaid = hireTrip(asked({ timeAllowed: undefined })).route.waypoints;
    expect(legBetween(unsaid[0]!, unsaid[1]!).distance).toBeCloseTo(boat.speed * 30, 6);
  });

  it('starts where the desk lies, or on open water', () => {
    const start = { lat: 50, lon: 3 };
    expect(hireTrip(asked({ start })).route.waypoints[0]).toEqual(start);
    expect(hireTrip(asked()).route.waypoints[0]).toEqual({ lat: 45.99, lon: -32.04 });
  });

  it('has no waters, its plate as the fleet says, and what is in the tank', () => {
    const trip = hireTrip(asked({ waters: 'Haven' }));
    expect(trip.waters).toBeUndefined();
    expect(trip.name).toBe(boat.name);
    expect(trip.craft.hull.plate).toEqual(boat.plate);
    expect(trip.load).toMatchObject({ fill: 0.9, fillKnownBy: 'gauge' });
  });
});

describe('a hire on a set route', () => {
  const route = {
    name: 'To the bar',
    shape: 'one-way',
    waypoints: [
      { lat: 46, lon: -32 },
      { lat: 46.01, lon: -32 },
    ],
  } as never;

  it('is that route, in its waters, within the time allowed', () => {
    const trip = hireTrip(asked({ route, waters: 'Haven' }));
    expect(trip).toMatchObject({
      name: `${boat.name}: To the bar`,
      waters: 'Haven',
      route: { shape: 'one-way', speed: boat.speed },
      policy: { timeAllowed: 3 * 3600 },
    });
    expect(trip.policy.drawnFactor).toBeUndefined();
  });

  it('keeps the shorter of the times allowed', () => {
    const policy = { reserve: [], timeAllowed: 3600 };
    expect(hireTrip(asked({ route, policy })).policy.timeAllowed).toBe(3600);
    expect(hireTrip(asked({ route, policy, timeAllowed: 1800 })).policy.timeAllowed).toBe(1800);
  });
});

describe('the crew of a hire', () => {
  it('has the first at the helm, adults from 45 kg, the others in pairs from forward', () => {
    const { items } = hireTrip(asked({ weights: [80, 45, 44] })).load;
    expect(items.map(({ id, kind, mass, helm }) => [id, kind, mass, helm])).toEqual([
      ['p1', 'adult', 80, true],
      ['p2', 'adult', 45, undefined],
      ['p3', 'child', 44, undefined],
    ]);
    const { stations } = hireTrip(asked()).craft.hull;
    const placeOf = (station: string | undefined) => stations.find(({ id }) => id === station)!;
    expect(placeOf(items[0]!.station).use).toBe('helm');
    expect([items[1]!, items[2]!].map(({ station }) => placeOf(station).use)).toEqual(['seat', 'seat']);
  });

  it('has the seats on the middle line first, then from forward aft, port before starboard', () => {
    const made = hireTrip(asked()).craft;
    const seat = (id: string, x: number, y: number) => ({ id, label: id, use: 'seat' as const, x, y });
    const stations = [
      seat('aft-s', 1, 0.4),
      seat('aft-p', 1, -0.4),
      seat('fore-s', 2, 0.4),
      seat('fore-p', 2, -0.4),
      seat('mid', 0.5, 0),
    ];
    const craft = { ...made, hull: { ...made.hull, stations } };
    const { items } = hireTrip(asked({ boat: { ...boat, craft } as HireBoat, weights: [1, 2, 3, 4, 5, 6] })).load;
    expect(items.map(({ station }) => station)).toEqual(['mid', 'fore-p', 'fore-s', 'aft-p', 'aft-s', undefined]);
  });
});
