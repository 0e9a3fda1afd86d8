import { describe, expect, it } from 'vitest';
import { destination } from '../../../src/core/route/distance.ts';
import type { LatLon, ZoneProperties } from '../../../src/core/route/shapes.ts';
import { prepareWaters } from '../../../src/core/route/waters.ts';
import { openWaypoint } from '../../../src/core/trip/open-waypoint.ts';
import { soundTrip } from '../../trips.ts';
import { waters, zone } from '../route/made-waters.ts';

const basin: LatLon = { lat: 46.1, lon: -31.9 };
const outside: LatLon = { lat: 46.15, lon: -31.9 };

/** Land all round a basin from one distance to 3 km, but for an entrance between two bearings. */
function harbour(near: number, from: number, to: number, properties: ZoneProperties = { kind: 'land', name: 'Mole' }) {
  const bearings = Array.from({ length: 180 }, (_, i) => to + ((360 - (to - from)) * i) / 179);
  const at = (bearing: number, distance: number): [number, number] => {
    const { lat, lon } = destination(basin, bearing, distance);
    return [lon, lat];
  };
  const ring = [...bearings.map((b) => at(b, near)), ...bearings.reverse().map((b) => at(b, 3000))];
  return prepareWaters(waters([zone(properties, [...ring, ring[0]!])], [-32, 46, -31.8, 46.2]));
}

function lookedFrom(there: ReturnType<typeof prepareWaters> | undefined, places = [basin, outside]): number {
  const trip = soundTrip();
  const conditions = { ...trip.conditions, departure: '2027-06-19T10:00:00Z' };
  return openWaypoint({ ...trip, conditions, route: { ...trip.route, waypoints: places } }, there);
}

describe('the first waypoint with open water about it', () => {
  it('is one from which a quarter of all directions is free', () => {
    // Every 15 degrees from north: six within the entrance, or five.
    expect(lookedFrom(harbour(300, -1, 76))).toBe(0);
    expect(lookedFrom(harbour(300, -1, 74))).toBe(1);
    expect(lookedFrom(harbour(300, 1, 91))).toBe(0);
    expect(lookedFrom(harbour(300, 1, 89))).toBe(1);
    expect(lookedFrom(harbour(300, 281, 361))).toBe(0);
  });

  it('is free for a kilometre', () => {
    expect(lookedFrom(harbour(950, 0, 10))).toBe(1);
    expect(lookedFrom(harbour(1050, 0, 10))).toBe(0);
  });

  it('is the start where none is open, or no waters tell', () => {
    expect(lookedFrom(harbour(300, 0, 10), [basin, destination(basin, 90, 50)])).toBe(0);
    expect(lookedFrom(undefined)).toBe(0);
  });

  it('counts keep-outs in season like land, and neither shoals nor limits', () => {
    const about = (properties: ZoneProperties) => lookedFrom(harbour(300, 0, 10, properties));
    expect(about({ kind: 'keep-out', name: 'Range', season: '06-01/06-30' })).toBe(1);
    expect(about({ kind: 'keep-out', name: 'Range', season: '08-01/08-30' })).toBe(0);
    expect(about({ kind: 'shoal', name: 'Bank' })).toBe(0);
    expect(about({ kind: 'speed-limit', name: 'Roads', limit_kn: 5 })).toBe(0);
  });
});
