import { describe, expect, it } from 'vitest';
import { craftFrom } from '../../../src/core/files/catalogue.ts';
import { readTrip } from '../../../src/core/files/trip-schema.ts';
import type { Trip } from '../../../src/core/trip/shapes.ts';
import { shippedTrips } from './full-trips.ts';

function shipped(name: string): Trip {
  const result = readTrip(shippedTrips[name]);
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result.value;
}

/** Great-circle length of the whole trip, nautical miles, sphere of 6371.0088 km. */
function miles({ route }: Trip): number {
  const { PI, asin, cos, sin, sqrt } = Math;
  const rad = PI / 180;
  const { waypoints, shape } = route;
  const back = shape === 'loop' ? waypoints.slice(0, 1) : waypoints.slice(0, -1).reverse();
  const way = [...waypoints, ...back];
  return way.slice(1).reduce((sum, to, i) => {
    const from = way[i]!;
    const h =
      sin(((to.lat - from.lat) * rad) / 2) ** 2 +
      cos(from.lat * rad) * cos(to.lat * rad) * sin(((to.lon - from.lon) * rad) / 2) ** 2;
    return sum + (2 * 6371.0088 * asin(sqrt(h))) / 1.852;
  }, 0);
}

describe('the shipped trips', () => {
  it('are as long as told: 20.1, 6.1 and 11.0 nautical miles', () => {
    expect(miles(shipped('petrolDay'))).toBeCloseTo(20.1, 1);
    expect(miles(shipped('electricTender'))).toBeCloseTo(6.1, 1);
    expect(miles(shipped('hireHull'))).toBeCloseTo(11.0, 1);
  });

  it('use boats, engines and stores of the catalogue, with a plate', () => {
    const parts = {
      petrolDay: craftFrom('catamaran-3-6', 'petrol-15hp-4s', 'tank-12'),
      electricTender: craftFrom('flat-floor-2-7', 'electric-1-1kw', 'battery-1-0-nmc'),
      hireHull: craftFrom('rigid-v-4-2', 'petrol-9-9hp-4s', 'tank-12'),
    };
    for (const [name, craft] of Object.entries(parts)) {
      const { plate, ...hull } = shipped(name).craft.hull;
      expect({ ...shipped(name).craft, hull }).toEqual(craft);
      expect(plate).toMatchObject({ scheme: 'eu' });
    }
    expect(shipped('hireHull').craft.hull.plate).toMatchObject({ persons: 4, maxLoad: 450 });
  });

  it('put 330 kg all up on the water for the petrol day', () => {
    const { craft, load } = shipped('petrolDay');
    const [tank] = craft.store.kind === 'tank' ? craft.store.tanks : [];
    const fuel = tank!.emptyMass + tank!.capacityL * load.fill! * 0.745;
    const aboard = load.items.reduce((sum, { mass }) => sum + mass, 0);
    expect(craft.hull.mass + craft.drive.mass + fuel + aboard).toBeCloseTo(330, 0);
  });

  it('keep within the plate by persons, load, power and engine', () => {
    for (const name of Object.keys(shippedTrips)) {
      const { craft, load } = shipped(name);
      const plate = craft.hull.plate;
      if (plate === undefined || plate === 'none') throw new Error('no plate');
      const people = load.items.filter(({ kind }) => kind === 'adult' || kind === 'child');
      expect(people.length).toBeLessThanOrEqual(plate.persons!);
      // An EU plate counts people, gear, portable fuel and portable batteries.
      const portable =
        craft.store.kind === 'tank'
          ? craft.store.tanks.reduce((sum, tank) => sum + tank.emptyMass + 0.745 * tank.capacityL, 0)
          : craft.store.batteries.reduce((sum, battery) => sum + battery.mass, 0);
      expect(load.items.reduce((sum, { mass }) => sum + mass, portable)).toBeLessThan(plate.maxLoad!);
      expect(craft.drive.ratedPower).toBeLessThanOrEqual(plate.maxPower!);
      expect(craft.drive.mass).toBeLessThanOrEqual(plate.maxEngineMass!);
    }
  });

  it('leave nothing open that would make a plan unsure', () => {
    for (const name of Object.keys(shippedTrips)) {
      const { load, conditions, craft, waters } = shipped(name);
      expect(load.items.filter(({ helm }) => helm)).toHaveLength(1);
      expect(load.items.every(({ station }) => station !== undefined)).toBe(true);
      expect(load).toMatchObject({ fillKnownBy: 'measured', fill: expect.any(Number) });
      for (const given of ['departure', 'wind', 'stream', 'sea'] as const) expect(conditions[given]).toBeDefined();
      expect(conditions.batteryTemperatureC !== undefined).toBe(craft.drive.kind === 'electric');
      expect(waters).toBe('haven');
    }
  });

  it('seat people so that port and starboard balance within 5 % of a beam', () => {
    for (const name of Object.keys(shippedTrips)) {
      const { craft, load } = shipped(name);
      const mass = load.items.reduce((sum, item) => sum + item.mass, 0);
      const moment = load.items.reduce(
        (sum, item) => sum + item.mass * craft.hull.stations.find(({ id }) => id === item.station)!.y,
        0,
      );
      expect(Math.abs(moment / mass)).toBeLessThan(0.05 * craft.hull.beam);
    }
  });
});
