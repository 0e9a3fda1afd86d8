import { describe, expect, it } from 'vitest';
import type { Aboard } from '../../../src/core/load/shapes.ts';
import { planTrip } from '../../../src/core/trip/plan-trip.ts';
import type { Payload, Trip } from '../../../src/core/trip/shapes.ts';
import { haven, shipped, soundTrip } from '../../trips.ts';
import { slowFigures } from './questions-asked.ts';

function payloadOf(trip: Trip): Payload {
  const found = planTrip(trip, haven());
  if (!found.ok) throw new Error(found.problems[0]!.message);
  return found.value.payload;
}

const day = soundTrip();
const counted = payloadOf(day).counted;

function plated(change: object, trip = day): Trip {
  const { plate } = trip.craft.hull;
  if (!plate || plate === 'none') throw new Error('there is a plate');
  return { ...trip, craft: { ...trip.craft, hull: { ...trip.craft.hull, plate: { ...plate, ...change } } } };
}

const withFill = (fill: number, trip = day): Trip => ({ ...trip, load: { ...trip.load, fill } });
const withSpeed = (speed: number, trip = day): Trip => ({ ...trip, route: { ...trip.route, speed } });

describe('what else may come aboard', () => {
  it('is what the plate leaves, where that is least', () => {
    const found = payloadOf(plated({ maxLoad: counted + 20 }, withSpeed(2)));
    expect(found).toMatchObject({ binds: 'plate', counted, allowed: counted + 20 });
    expect(found.extra).toBeCloseTo(20, 9);
    expect(payloadOf(plated({ maxLoad: counted }, withSpeed(2))).extra).toBe(0);
  });

  it('is less than nothing where the plate is passed: so much has to stay ashore', () => {
    expect(payloadOf(plated({ maxLoad: counted - 30 }, withSpeed(2)))).toMatchObject({ binds: 'plate', extra: -30 });
  });

  it('is never less than all people and gear ashore', () => {
    const { extra } = payloadOf(plated({ maxLoad: 1 }, withSpeed(2)));
    const people = day.load.items.reduce((sum, { mass }) => sum + mass, 0);
    expect(extra).toBeCloseTo(-people, 9);
  });

  it('leaves the lightest ashore where the plate lets fewer persons come', () => {
    const child: Aboard = { id: 'child', kind: 'child', mass: 31, station: 'seat-mid' };
    const dog: Aboard = { id: 'dog', kind: 'dog', mass: 12, station: 'seat-mid' };
    const family = { ...withSpeed(2), load: { ...day.load, items: [...day.load.items, dog, child] } };
    expect(payloadOf(plated({ persons: 3 }, family)).binds).not.toBe('persons');
    expect(payloadOf(plated({ persons: 2 }, family))).toMatchObject({ binds: 'persons', extra: -31 });
    expect(payloadOf(plated({ persons: 1 }, family))).toMatchObject({ binds: 'persons', extra: -31 - 85 });
    // More still where the weight asks for it.
    const { counted: now } = payloadOf(plated({ persons: 2 }, family));
    expect(payloadOf(plated({ persons: 2, maxLoad: now - 40 }, family))).toMatchObject({ binds: 'plate', extra: -40 });
  });

  it('is not known where nobody read the plate, or the plate tells no load', () => {
    const { plate: _, ...hull } = day.craft.hull;
    const unread = payloadOf({ ...day, craft: { ...day.craft, hull } });
    expect([unread.extra, unread.binds, unread.allowed]).toEqual([undefined, 'no-plate', undefined]);
    expect(unread.counted).toBeGreaterThanOrEqual(counted);
    expect(payloadOf(plated({ maxLoad: undefined })).binds).toBe('no-plate');
  });

  it('of a boat without a plate is what the rules for its form leave', () => {
    const bare = { ...day, craft: { ...day.craft, hull: { ...day.craft.hull, plate: 'none' as const } } };
    const found = payloadOf(withSpeed(2, bare));
    expect(['rule', 'floating', 'freeboard', 'stability']).toContain(found.binds);
    expect(found.allowed! - found.counted).toBeGreaterThanOrEqual(found.extra! - 1e-9);
  });

  it('is what the engine still planes and holds its speed with', () => {
    const found = payloadOf(withSpeed(7.7));
    expect(found.binds).toBe('speed');
    const with_ = (kg: number) => {
      const { x, y, z } = day.craft.hull.centre;
      const ballast: Aboard = { id: 'ballast', kind: 'gear', mass: kg, at: { x, y, z } };
      return payloadOf({ ...withSpeed(7.7), load: { ...day.load, items: [...day.load.items, ballast] } });
    };
    // About as much less once it is aboard: the boat trims a little otherwise with it.
    expect(Math.abs(with_(20).extra! - (found.extra! - 20))).toBeLessThan(12);
  });

  it('is what the fuel carries to the end with the reserve whole, where that is least', () => {
    const lean = withFill(0.19, withSpeed(2));
    const found = payloadOf(lean);
    expect(found.binds).toBe('reserve');
    expect(payloadOf(withFill(0.21, withSpeed(2))).extra!).toBeGreaterThan(found.extra!);
    expect(found.extra!).toBeGreaterThan(0);
    const short = payloadOf(withFill(0.155, withSpeed(2)));
    expect(short.binds).toBe('reserve');
    expect(short.extra!).toBeLessThan(0);
  });

  it('is never more than 600 kg', () => {
    const huge = plated({ maxLoad: 5000 }, withSpeed(1));
    const found = payloadOf(huge);
    expect(found.extra!).toBeLessThanOrEqual(600);
  });
});

describe('the questions that it takes', () => {
  it.each([
    ['a speed to hold', day, 4, 15],
    ['little fuel', withFill(0.2, withSpeed(2)), 12, 6],
    ['too little fuel', withFill(0.16), 26, 15],
    ['a day out', shipped('petrol-day'), 4, 14],
    ['an electric tender', shipped('electric-tender'), 11, 6],
    ['a hired boat', shipped('hire-hull'), 3, 9],
    ['a speed not held', withSpeed(8.6), 0, 19],
  ] as const)('are few with %s', (_name, trip, tank, engine) => {
    const { asked } = slowFigures(trip).payload;
    expect(asked.tank).toBeLessThanOrEqual(tank);
    expect(asked.engine).toBeLessThanOrEqual(engine);
  });
});
