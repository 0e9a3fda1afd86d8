import { describe, expect, it } from 'vitest';
import type { Craft, Plate } from '../../../src/core/craft/shapes.ts';
import { craftFrom, hulls } from '../../../src/core/files/catalogue.ts';
import { type Capacity, capacityOf, type RuleName } from '../../../src/core/load/capacity.ts';
import { helmReaches } from '../../../src/core/load/helm-reach.ts';
import { shaftFit } from '../../../src/core/load/shaft-fit.ts';
import { INCH } from '../../../src/core/units/convert.ts';
import { aboard } from './made-craft.ts';

const asked = { storeMass: 10, density: 1025 };
const crew = [aboard('a', 85, { station: 'helm' }), aboard('b', 70, { station: 'seat-fore-port' })];

function boat(hull: string, plate?: Plate | 'none'): Craft {
  const craft = craftFrom(hull, 'petrol-15hp-4s', 'tank-25');
  return { ...craft, hull: { ...craft.hull, plate } };
}

function ruleOf({ rules }: Capacity, name: RuleName) {
  return rules.find(({ rule }) => rule === name)!;
}

describe('capacityOf', () => {
  it('puts the plate first and never allows more than it', () => {
    for (const { id, typicalPlate } of hulls) {
      const capacity = capacityOf(boat(id, typicalPlate), { items: crew }, asked);
      const plate = ruleOf(capacity, 'plate');
      expect(plate.standing).toBe('limit');
      expect(capacity.spare).toBeLessThanOrEqual(plate.spare!);
      for (const rule of ['us-weight', 'us-persons', 'length-width'] as const) {
        expect(ruleOf(capacity, rule).standing).not.toBe('limit');
      }
    }
  });

  it('tells of persons, power and engine mass only where the plate names them', () => {
    const craft = boat('catamaran-3-6');
    const plate = (given: Partial<Plate>) => {
      const made = { ...craft, hull: { ...craft.hull, plate: { scheme: 'eu', ...given } as const } };
      return ruleOf(capacityOf(made, { items: crew }, asked), 'plate');
    };
    const named = plate({ maxLoad: 400, persons: 5, maxPower: 9000, maxEngineMass: 45 });
    expect(named.persons).toEqual({ allowed: 5, now: crew.length });
    expect(named.power).toEqual({ allowed: 9000, now: craft.drive.ratedPower });
    expect(named.engineMass).toEqual({ allowed: 45, now: craft.drive.mass });
    const heavy = plate({ maxLoad: 400 });
    expect(heavy).toEqual({ rule: 'plate', standing: 'limit', load: heavy.load, spare: 400 - heavy.load!.now });
    const counted = plate({ persons: 5 });
    expect(counted).toEqual({ rule: 'plate', standing: 'lacks', persons: { allowed: 5, now: 2 } });
  });

  it('says of monohull rules that they do not cover an inflatable or a catamaran', () => {
    for (const hull of ['catamaran-3-6', 'rib-3-4', 'flat-floor-2-7']) {
      const capacity = capacityOf(boat(hull, 'none'), { items: crew }, asked);
      for (const rule of ['us-weight', 'us-persons', 'us-power', 'length-width'] as const) {
        expect(ruleOf(capacity, rule).standing).toBe('not-covered');
      }
      expect(['tubes', 'freeboard', 'one-side']).toContain(capacity.leading?.rule);
    }
  });

  it('allows the power of a boat steered by tiller: the record says nothing of remote steering', () => {
    const craft = boat('rigid-v-4-2', 'none');
    const high = { ...craft, hull: { ...craft.hull, transomHeight: 20 * INCH, beam: 3 } };
    const of = (made: Craft) => ruleOf(capacityOf(made, { items: crew }, asked), 'us-power').power!.allowed;
    expect(of(high)).toBe(of({ ...high, hull: { ...high.hull, transomHeight: 15 * INCH } }));
  });

  it('lets the strictest covering rule lead where there is no plate', () => {
    const capacity = capacityOf(boat('rigid-v-4-2', 'none'), { items: crew }, asked);
    const spares = capacity.rules.filter(({ standing }) => standing === 'limit').map(({ spare }) => spare ?? Infinity);
    expect(capacity.spare).toBe(Math.min(...spares));
    expect(ruleOf(capacity, 'us-weight').standing).toBe('limit');
  });

  it('says nothing of a boat whose plate was not read, nor from a rule of thumb alone', () => {
    expect(capacityOf(boat('catamaran-3-6'), { items: crew }, asked).spare).toBeUndefined();
    expect(capacityOf(boat('rigid-v-4-2', { scheme: 'eu' }), { items: crew }, asked).spare).toBeUndefined();
    const { transomHeight: _cut, ...hull } = boat('rigid-v-4-2', 'none').hull;
    const bare = capacityOf({ ...boat('rigid-v-4-2'), hull }, { items: crew }, asked);
    expect(ruleOf(bare, 'length-width').standing).toBe('limit');
    expect(bare.spare).toBeUndefined();
  });

  it('gives less the more is aboard, kilogram by kilogram', () => {
    const more = [...crew, aboard('c', 10, { kind: 'gear', station: 'gear-mid' })];
    const plate = hulls.find(({ id }) => id === 'catamaran-4-3')!.typicalPlate;
    const craft = boat('catamaran-4-3', plate);
    const before = capacityOf(craft, { items: crew }, asked).spare!;
    expect(capacityOf(craft, { items: more }, asked).spare!).toBeCloseTo(before - 10, 6);
  });

  it('holds engine power and mass against the plate', () => {
    const plate: Plate = { scheme: 'eu', maxLoad: 400, maxPower: 9000, maxEngineMass: 40 };
    const { power, engineMass } = ruleOf(capacityOf(boat('rib-3-4', plate), { items: crew }, asked), 'plate');
    expect(power).toEqual({ allowed: 9000, now: 11200 });
    expect(engineMass).toEqual({ allowed: 40, now: 51 });
  });
});

// Outboard sizing guides: shafts for transoms of 15, 20 and 25 in.
describe('shaftFit', () => {
  const fitOf = (transom: number, shaft: 'short' | 'long' | 'extra-long') => {
    const craft = boat('rigid-v-4-2');
    return shaftFit({
      ...craft,
      hull: { ...craft.hull, transomHeight: transom * INCH },
      drive: { ...craft.drive, shaft },
    })!;
  };

  it('fits each class to its transom', () => {
    for (const [transom, shaft] of [
      [15, 'short'],
      [20, 'long'],
      [25, 'extra-long'],
    ] as const) {
      expect(fitOf(transom, shaft)).toMatchObject({ fit: 'fits' });
    }
  });

  it('names a long shaft on a low transom and by how much, and a short one on a high transom', () => {
    expect(fitOf(15, 'long').fit).toBe('too-long');
    expect(fitOf(15, 'long').below).toBeCloseTo(5 * INCH, 3);
    expect(fitOf(20, 'short')).toMatchObject({ fit: 'too-short' });
    expect(
      shaftFit({ ...boat('rib-3-4'), hull: { ...boat('rib-3-4').hull, transomHeight: undefined } }),
    ).toBeUndefined();
  });
});

describe('helmReaches', () => {
  it('lets the helm sit on the middle seat of a tender with a tiller, not in the bow', () => {
    const { hull } = boat('catamaran-3-6');
    expect(helmReaches(hull, hull.stations.find(({ id }) => id === 'seat-mid')!)).toBe(true);
    expect(helmReaches(hull, { x: 2.6, y: 0 })).toBe(false);
  });

  it('ties the helm to the console where that is far from the engine', () => {
    const { hull } = boat('rib-4-7');
    const console = { ...hull, stations: hull.stations.map((s) => (s.use === 'helm' ? { ...s, x: 2.2 } : s)) };
    expect(helmReaches(console, { x: 2.2, y: 0.25 })).toBe(true);
    expect(helmReaches(console, { x: 0.8, y: 0.5 })).toBe(false);
  });
});
