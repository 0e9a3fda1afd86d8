import { describe, expect, it } from 'vitest';
import { closes, roleOf, unbroken, waypointNames } from '../../../src/components/route-map/route-names.ts';
import { measuresFor } from '../../../src/components/units/measures.ts';
import type { Route } from '../../../src/core/route/shapes.ts';

/** Minutes of latitude: about a nautical mile each. */
const waypoints = [0, 2, 5].map((minutes) => ({ lat: 46 + minutes / 60, lon: -32 }));
const route: Route = { shape: 'out-and-home', waypoints, speed: 'best' };

describe('waypointNames', () => {
  it('says which waypoint, what it is, and how far along the route', () => {
    const nameOf = waypointNames(route, measuresFor('nautical', 'en'));
    expect(nameOf(0)).toBe('Waypoint 1 of 3, start');
    expect(nameOf(1)).toBe('Waypoint 2 of 3, 2.0\u00a0NM from start');
    expect(nameOf(2)).toBe('Waypoint 3 of 3, turn, 5.0\u00a0NM from start');
  });

  it('uses the name a waypoint has', () => {
    const named = { ...route, waypoints: [waypoints[0]!, { ...waypoints[1]!, name: 'Jetty' }] };
    expect(waypointNames(named, measuresFor('metric', 'en'))(1)).toMatch(/^Waypoint 2 of 2, Jetty, turn, 3\.7/);
  });
});

describe('roleOf', () => {
  it('turns at the last waypoint out and home, ends there one way, and has no end on a round trip', () => {
    expect(roleOf(2, route)).toBe('Turn');
    expect(roleOf(2, { ...route, shape: 'one-way' })).toBe('Finish');
    expect(roleOf(2, { ...route, shape: 'loop' })).toBeUndefined();
    expect(roleOf(1, route)).toBeUndefined();
  });
});

describe('unbroken', () => {
  const overMeridian = [
    { lat: 0, lon: 179 },
    { lat: 0, lon: -179 },
    { lat: 0, lon: -178 },
  ];

  it('goes on beyond 180 degrees instead of round the world', () => {
    expect(unbroken(overMeridian, false).map(([, lon]) => lon)).toEqual([179, 181, 182]);
  });

  it('comes back to the start of a round trip', () => {
    expect(unbroken(overMeridian, true).at(-1)).toEqual([0, 179]);
  });

  it('draws nothing for no places', () => {
    expect(unbroken([], true)).toEqual([]);
  });
});

describe('closes', () => {
  it('only a round trip of at least two places', () => {
    expect(closes({ ...route, shape: 'loop' })).toBe(true);
    expect(closes({ ...route, shape: 'loop', waypoints: waypoints.slice(0, 1) })).toBe(false);
    expect(closes(route)).toBe(false);
  });
});
