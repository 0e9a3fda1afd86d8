import { describe, expect, it } from 'vitest';
import { sailedLegs } from '../../../src/core/route/sailed-legs.ts';
import type { Waypoint } from '../../../src/core/route/shapes.ts';

const slip: Waypoint = { lat: 46, lon: -32, name: 'Slip', speed: 2 };
const buoy: Waypoint = { lat: 46.02, lon: -32, name: 'Buoy', stop: 600 };
const cove: Waypoint = { lat: 46.02, lon: -31.95, name: 'Cove', stop: 3600 };

describe('sailedLegs out and home', () => {
  const { legs, turningIndex } = sailedLegs({ shape: 'out-and-home', waypoints: [slip, buoy, cove], speed: 6 });

  it('comes back the same way', () => {
    expect(legs.map(({ from, to }) => `${from.name}-${to.name}`)).toEqual([
      'Slip-Buoy',
      'Buoy-Cove',
      'Cove-Buoy',
      'Buoy-Slip',
    ]);
    expect(legs.map(({ part }) => part)).toEqual(['out', 'out', 'home', 'home']);
    expect(turningIndex).toBe(2);
  });

  it('keeps the planned speed of the same water both ways', () => {
    expect(legs.map(({ speed }) => speed)).toEqual([2, 6, 6, 2]);
  });

  it('takes the stream of a place picked for a leg both ways', () => {
    const waypoints = [slip, { ...buoy, streamPlace: 'Race' }, cove];
    const picked = sailedLegs({ shape: 'out-and-home', waypoints, speed: 6 }).legs;
    expect(picked.map(({ streamPlace }) => streamPlace)).toEqual([undefined, 'Race', 'Race', undefined]);
  });

  it('stops on the way out and at the turn, not on the way home', () => {
    expect(legs.map(({ stop }) => stop)).toEqual([600, 3600, 0, 0]);
  });
});

describe('sailedLegs of a loop', () => {
  it('closes to the start at the speed of the route and turns at the farthest waypoint', () => {
    const { legs, turningIndex } = sailedLegs({ shape: 'loop', waypoints: [slip, buoy, cove], speed: 'best' });
    expect(legs.map(({ from, to }) => `${from.name}-${to.name}`)).toEqual(['Slip-Buoy', 'Buoy-Cove', 'Cove-Slip']);
    expect(legs.map(({ part }) => part)).toEqual(['out', 'out', 'home']);
    expect(legs.map(({ speed }) => speed)).toEqual([2, 'best', 'best']);
    expect(turningIndex).toBe(2);
  });

  it('adds nothing when it ends where it began', () => {
    const back: Waypoint = { ...slip, stop: 900 };
    const { legs } = sailedLegs({ shape: 'loop', waypoints: [slip, buoy, cove, back], speed: 6 });
    expect(legs).toHaveLength(3);
    expect(legs[2]!.stop).toBe(0);
  });

  it('turns at a waypoint on the way when the last one is nearer', () => {
    const near: Waypoint = { lat: 46.001, lon: -31.99 };
    const { legs, turningIndex } = sailedLegs({ shape: 'loop', waypoints: [slip, cove, near], speed: 6 });
    expect(turningIndex).toBe(1);
    expect(legs.map(({ part }) => part)).toEqual(['out', 'home', 'home']);
  });
});

describe('sailedLegs one way', () => {
  it('is all out and does not count the time after arrival', () => {
    const { legs, turningIndex } = sailedLegs({ shape: 'one-way', waypoints: [slip, buoy, cove], speed: 6 });
    expect(legs.map(({ part }) => part)).toEqual(['out', 'out']);
    expect(legs.map(({ stop }) => stop)).toEqual([600, 0]);
    expect(turningIndex).toBe(2);
  });
});

describe('sailedLegs', () => {
  it.each(['out-and-home', 'loop', 'one-way'] as const)('has no legs for fewer than two waypoints, %s', (shape) => {
    expect(sailedLegs({ shape, waypoints: [], speed: 6 })).toEqual({ legs: [], turningIndex: 0 });
    expect(sailedLegs({ shape, waypoints: [slip], speed: 6 })).toEqual({ legs: [], turningIndex: 0 });
  });
});
