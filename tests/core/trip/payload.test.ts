import { describe, expect, it } from 'vitest';
import { capacityOf } from '../../../src/core/load/capacity.ts';
import type { Aboard } from '../../../src/core/load/shapes.ts';
import type { FloatLimits } from '../../../src/core/trip/floating.ts';
import type { Holding } from '../../../src/core/trip/holding.ts';
import { payload } from '../../../src/core/trip/payload.ts';
import { planTrip } from '../../../src/core/trip/plan-trip.ts';
import type { Payload, Trip } from '../../../src/core/trip/shapes.ts';
import { standingOf } from '../../../src/core/trip/standing.ts';
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

/** What may come aboard where floating and engine say this of it, in a boat with fuel to spare. */
function asked({ floats = {}, planes = Infinity, speeds = Infinity, plate = {} }: Asked) {
  const found = standingOf(
    plated({ maxLoad: 5000, persons: undefined, ...plate }, withFill(0.95, withSpeed(2))),
    haven(),
  );
  if (!found.ok) throw new Error('the trip can be planned');
  const { prepared, fuel, balance } = found.value;
  const { go = Infinity, marginal = Infinity } = floats;
  const upTo = (most: number) => (_: unknown, kg: number) => ({ holds: kg <= most });
  const said = {
    floats: {
      verdict: (kg: number) => (kg <= go ? 'go' : kg <= marginal ? 'marginal' : 'no-go'),
      most: (wanted: 'go' | 'marginal') => ({ extra: wanted === 'go' ? go : marginal, binds: 'freeboard' }),
    } as unknown as FloatLimits,
    holds: { planes: upTo(planes), speeds: upTo(speeds) } as unknown as Holding,
    humpSpeed: undefined,
  };
  return { ...payload(prepared, fuel, balance, said), all: balance.peopleAndGear };
}

interface Asked {
  readonly floats?: { readonly go?: number; readonly marginal?: number };
  readonly planes?: number;
  readonly speeds?: number;
  readonly plate?: object;
}

describe('what else may come aboard, by hand', () => {
  it('is looked at up to 600 kg', () => {
    expect(asked({})).toMatchObject({ extra: 600, binds: 'search-limit' });
    expect(asked({ plate: { maxLoad: counted + 599 } }).binds).toBe('plate');
    expect(asked({ plate: { maxLoad: counted + 700 } })).toMatchObject({ extra: 600, binds: 'search-limit' });
  });

  it('is the least of what plate, floating, hump and speeds let come', () => {
    expect(asked({ floats: { go: 80 } })).toMatchObject({ extra: 80, binds: 'freeboard' });
    expect(asked({ floats: { go: 80 }, planes: 70 }).binds).toBe('planing');
    expect(asked({ floats: { go: 80 }, planes: 70, speeds: 60 }).binds).toBe('speed');
    expect(asked({ floats: { go: 50 }, planes: 70, speeds: 60 })).toMatchObject({ extra: 50, binds: 'freeboard' });
    expect(asked({ floats: { go: 600 } }).binds).toBe('search-limit');
  });

  it('is told to half a kilogram, on the safe side', () => {
    for (const most of [0.3, 7, 33.4, 123.9, 301.2, 599.9, -12.7]) {
      const { extra } = asked({ speeds: most });
      expect(extra!).toBeLessThanOrEqual(most);
      expect(extra!).toBeGreaterThan(most - 0.5);
    }
  });

  it('is held to a go where less weight could make one, and where none could only kept from a no-go', () => {
    // Marginal now, and a go with ten kilograms ashore.
    expect(asked({ floats: { go: -10, marginal: 40 } })).toMatchObject({ extra: -10, binds: 'freeboard' });
    // Marginal even with nobody aboard.
    expect(asked({ floats: { go: -5000, marginal: 40 } })).toMatchObject({ extra: 40, binds: 'freeboard' });
  });

  it('is nothing, and everybody ashore, where floating lets nobody come: what else may bind is not asked', () => {
    const found = asked({ floats: { go: -5000, marginal: -5000 }, planes: -1000, speeds: -1000 });
    expect(found).toMatchObject({ extra: -found.all, binds: 'freeboard' });
    const just = asked({ floats: { go: -found.all, marginal: 0 }, speeds: -1000 });
    expect(just).toMatchObject({ extra: -found.all, binds: 'freeboard' });
  });

  it('is what the plate leaves where it tells no number of persons', () => {
    expect(asked({ plate: { maxLoad: counted + 25 } })).toMatchObject({ binds: 'plate' });
    expect(asked({ plate: { maxLoad: counted + 25 } }).extra).toBeCloseTo(25, 9);
  });

  it('with one too many leaves one ashore however much the plate would carry, and by the plate where that is as much', () => {
    const { persons } = plateOf(day);
    const crew = day.load.items.filter(({ kind }) => kind === 'adult' || kind === 'child');
    expect(persons).toBeGreaterThanOrEqual(crew.length);
    const lightest = Math.min(...crew.map(({ mass }) => mass));
    const one = (maxLoad: number) => asked({ plate: { persons: crew.length - 1, maxLoad } });
    for (const spare of [0, 10, lightest + 10]) {
      expect(one(counted + spare)).toMatchObject({ extra: -lightest, binds: 'persons' });
    }
    expect(one(counted - lightest).binds).toBe('plate');
  });
});

function plateOf(trip: Trip) {
  const { plate } = trip.craft.hull;
  if (!plate || plate === 'none') throw new Error('there is a plate');
  return plate;
}

describe('a boat without a plate', () => {
  it.each(['petrol-day', 'hire-hull', 'electric-tender'] as const)(
    'like that of %s tells which rule leaves least',
    (name) => {
      const trip = shipped(name);
      const bare = { ...trip, craft: { ...trip.craft, hull: { ...trip.craft.hull, plate: 'none' as const } } };
      const found = standingOf(bare, haven());
      if (!found.ok) throw new Error('the trip can be planned');
      const { prepared, fuel, balance } = found.value;
      const { leading } = capacityOf(bare.craft, bare.load, {
        storeMass: prepared.storeMass(fuel.run.scenario.weighs),
        density: prepared.density,
      });
      const told = { tubes: 'floating', freeboard: 'freeboard', 'one-side': 'stability' } as Record<string, string>;
      const free = {
        floats: { verdict: () => 'go', most: () => ({ extra: Infinity, binds: 'floating' }) } as unknown as FloatLimits,
        holds: { planes: () => ({ holds: true }), speeds: () => ({ holds: true }) } as unknown as Holding,
        humpSpeed: undefined,
      };
      // With a full tank's worth of need left out: only the rules are asked.
      const easy = { ...fuel, verdict: 'go' } as typeof fuel;
      const { extra, binds, allowed } = payload(prepared, easy, balance, free);
      expect(allowed).toBeCloseTo(balance.counted + leading!.spare!, 9);
      if (binds !== 'reserve') {
        expect(extra).toBeCloseTo(leading!.spare!, 9);
        expect(binds).toBe(told[leading!.rule] ?? 'rule');
      }
    },
  );
});

describe('the questions that it takes', () => {
  it.each([
    ['a speed to hold', day, 4, 15],
    ['little fuel', withFill(0.2, withSpeed(2)), 14, 6],
    ['too little fuel', withFill(0.17), 25, 15],
    ['a day out', shipped('petrol-day'), 10, 14],
    ['an electric tender', shipped('electric-tender'), 11, 6],
    ['a hired boat', shipped('hire-hull'), 3, 9],
    ['a speed not held', withSpeed(8.6), 0, 19],
  ] as const)('are few with %s', (_name, trip, tank, engine) => {
    const { asked } = slowFigures(trip).payload;
    expect(asked.tank).toBeLessThanOrEqual(tank);
    expect(asked.engine).toBeLessThanOrEqual(engine);
  });
});
