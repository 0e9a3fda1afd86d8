import { describe, expect, it } from 'vitest';
import { fullness } from '../../../src/core/craft/plan-form.ts';
import type { Craft, Plate, Store } from '../../../src/core/craft/shapes.ts';
import { craftFrom } from '../../../src/core/files/catalogue.ts';
import { balance } from '../../../src/core/load/balance.ts';
import { type Capacity, capacityOf, type RuleName } from '../../../src/core/load/capacity.ts';
import { type FloatBody, floatBody } from '../../../src/core/load/float-body.ts';
import { heaviestAtFreeboard, sideTestMass, spareOnOneSide } from '../../../src/core/load/float-limit.ts';
import { isoLoad, isoTankContents } from '../../../src/core/load/iso14946.ts';
import { lengthWidthPersons } from '../../../src/core/load/length-width.ts';
import { liferaftPersons } from '../../../src/core/load/liferaft-sanity.ts';
import type { Aboard } from '../../../src/core/load/shapes.ts';
import { sidewards } from '../../../src/core/load/sidewards.ts';
import {
  usMaxLoad,
  usMaxPower,
  usPersons,
  usPersonsMass,
  usPersonsMassOutboard,
} from '../../../src/core/load/us-capacity.ts';
import { weightOf } from '../../../src/core/load/weight-of.ts';
import { PETROL_DENSITY } from '../../../src/core/units/constants.ts';
import { HORSEPOWER } from '../../../src/core/units/convert.ts';
import { aboard } from './made-craft.ts';

const asked = { storeMass: 10, density: 1025 };
/** Two adults, a child, a dog and gear. */
const crew: readonly Aboard[] = [
  aboard('a', 85, { station: 'helm' }),
  aboard('b', 70, { station: 'seat-fore-port' }),
  aboard('c', 30, { kind: 'child', station: 'seat-fore-starboard' }),
  aboard('d', 20, { kind: 'dog' }),
  aboard('e', 15, { kind: 'gear' }),
];
const PEOPLE = 185;
const load = { items: crew };

function boat(hull: string, change: { plate?: Plate | 'none'; engine?: string; store?: Store } = {}): Craft {
  const craft = craftFrom(hull, change.engine ?? 'petrol-15hp-4s', 'tank-25');
  return {
    ...craft,
    ...(change.store && { store: change.store }),
    hull: { ...craft.hull, plate: change.plate ?? 'none' },
  };
}

const of = (capacity: Capacity, name: RuleName) => capacity.rules.find(({ rule }) => rule === name)!;
const ruleOf = (craft: Craft, name: RuleName) => of(capacityOf(craft, load, asked), name);
const bodyOf = (craft: Craft) => floatBody(craft.hull) as FloatBody;

describe('the US rule', () => {
  const loose = { name: 'Can', capacityL: 20, emptyMass: 4, unusableL: 0, fixed: false, at: { x: 0.5, y: 0 } };
  const built = { ...loose, name: 'Built in', capacityL: 40, emptyMass: 2, fixed: true };
  const tanks: Store = { kind: 'tank', tanks: [loose, built] };
  const { mass: cell } = { mass: 21 };
  const batteries: Store = {
    kind: 'battery',
    batteries: [
      { name: 'B', chemistry: 'nmc', energyWh: 3000, voltage: 48, health: 1, mass: cell, at: { x: 0.5, y: 0 } },
    ],
  };

  it('holds people, gear, engine, tanks and fuel against what the boat displaces', () => {
    for (const [store, holders] of [
      [tanks, 6],
      [batteries, cell],
    ] as const) {
      const craft = boat('rigid-v-4-2', { store });
      const rule = ruleOf(craft, 'us-weight');
      const allowed = usMaxLoad(bodyOf(craft).volume * 1025, craft.hull.mass, 'outboard');
      const now = PEOPLE + 35 + craft.drive.mass + holders + 10;
      expect(rule).toEqual({ rule: 'us-weight', standing: 'limit', load: { allowed, now }, spare: allowed - now });
    }
  });

  it('holds people alone against what is left beside engine, tanks and the fuel of loose tanks, or the side test', () => {
    for (const [store, holders, fuel] of [
      [tanks, 6, 20 * PETROL_DENSITY],
      [batteries, cell, 0],
    ] as const) {
      const craft = boat('rigid-v-4-2', { store });
      const body = bodyOf(craft);
      const machinery = craft.drive.mass + holders;
      const at = { x: craft.hull.wettedLength / 2, y: 0, z: 0.4 };
      const sideMass = sideTestMass(body, { mass: craft.hull.mass + machinery, ...at }, 1025);
      const maxLoad = usMaxLoad(body.volume * 1025, craft.hull.mass, 'outboard');
      const allowed = usPersonsMassOutboard({ maxLoad, motorMass: machinery + fuel, sideMass })!;
      const rule = ruleOf(craft, 'us-persons');
      expect(rule.load).toEqual({ allowed, now: PEOPLE });
      expect(rule.persons).toEqual({ allowed: usPersons(allowed), now: 3 });
      expect(rule.spare).toBe(allowed - PEOPLE);
    }
  });

  it('takes an engine up to just two horsepower for a small one', () => {
    const craft = boat('rigid-v-4-2', { engine: 'petrol-2-5hp-4s' });
    const powered = (ratedPower: number) => ({ ...craft, drive: { ...craft.drive, ratedPower } });
    const body = bodyOf(craft);
    const small = usMaxLoad(body.volume * 1025, craft.hull.mass, '2hp-or-less');
    const { load: allowed } = ruleOf(powered(2 * HORSEPOWER), 'us-weight');
    expect(allowed!.allowed).toBe(small);
    expect(ruleOf(powered(2 * HORSEPOWER), 'us-persons').load!.allowed).toBe(usPersonsMass(small, '2hp-or-less'));
    expect(ruleOf(powered(2.01 * HORSEPOWER), 'us-weight').load!.allowed).toBeLessThan(small);
  });

  it('takes the breadth of the transom, hard chines on a flat bottom, and no transom for a low one', () => {
    for (const id of ['rigid-v-4-2', 'rigid-flat-3-8', 'launch-4-9'] as const) {
      const craft = boat(id);
      const { hull } = craft;
      if (hull.form === 'inflatable-catamaran') throw new Error('no monohull');
      const { maxPower } = usMaxPower({
        length: hull.length,
        transomWidth: hull.beam * fullness(hull.form, 0),
        remoteSteering: false,
        transomHeight: hull.transomHeight!,
        flatBottomHardChine: id === 'rigid-flat-3-8',
      });
      expect(ruleOf(craft, 'us-power')).toEqual({
        rule: 'us-power',
        standing: 'limit',
        power: { allowed: maxPower, now: craft.drive.ratedPower },
      });
    }
  });

  it('knows the power of a boat that it knows too little of to load', () => {
    const craft = boat('rigid-v-4-2');
    const { transomHeight: _, ...hull } = craft.hull;
    const capacity = capacityOf({ ...craft, hull }, load, asked);
    expect(of(capacity, 'us-weight')).toEqual({ rule: 'us-weight', standing: 'lacks' });
    expect(of(capacity, 'us-persons')).toEqual({ rule: 'us-persons', standing: 'lacks' });
    expect(of(capacity, 'us-power').power!.allowed).toBeGreaterThan(0);
    expect(of(capacity, 'freeboard')).toEqual({ rule: 'freeboard', standing: 'lacks' });
  });

  it('beside a plate leads nothing, however little it allows', () => {
    const capacity = capacityOf(boat('rigid-v-4-2', { plate: { scheme: 'us', maxLoad: 2000 } }), load, asked);
    const { spare } = of(capacity, 'us-weight');
    expect(spare).toBeLessThan(capacity.spare!);
    expect(capacity.leading!.standing).toBe('limit');
  });

  it('stands beside a plate and for one that is not there', () => {
    const plate: Plate = { scheme: 'us', maxLoad: 400 };
    for (const rule of ['us-weight', 'us-persons', 'us-power', 'length-width'] as const) {
      expect(ruleOf(boat('rigid-v-4-2', { plate }), rule).standing).toBe('comparison');
      expect(ruleOf(boat('rigid-v-4-2'), rule).standing).toBe('limit');
    }
  });
});

it('the rule of length by width counts people by mass and by head', () => {
  const { hull, ...rest } = boat('rigid-flat-3-8');
  const { persons, mass } = lengthWidthPersons(hull.length, hull.beam);
  expect(ruleOf({ hull, ...rest }, 'length-width')).toEqual({
    rule: 'length-width',
    standing: 'limit',
    load: { allowed: mass, now: PEOPLE },
    persons: { allowed: persons, now: 3 },
    spare: mass - PEOPLE,
  });
});

describe('the standard for a maximum load', () => {
  const plate: Plate = { scheme: 'eu', maxLoad: 400 };

  it('counts two adults, a child, gear and dog, and loose tanks with what is in them', () => {
    const loose = { name: 'Can', capacityL: 20, emptyMass: 4, unusableL: 0, fixed: false, at: { x: 0.5, y: 0 } };
    const store: Store = { kind: 'tank', tanks: [loose, { ...loose, capacityL: 50, fixed: true }] };
    const liquids = 4 + isoTankContents(20, PETROL_DENSITY);
    expect(ruleOf(boat('rib-3-4', { plate, store }), 'iso-14946')).toEqual({
      rule: 'iso-14946',
      standing: 'comparison',
      load: { allowed: 400, now: isoLoad(2, 1, 35 + liquids) },
    });
    const electric = craftFrom('rib-3-4', 'electric-5-2kw', 'battery-3-nmc').store;
    expect(ruleOf(boat('rib-3-4', { plate, store: electric }), 'iso-14946').load!.now).toBe(isoLoad(2, 1, 35));
  });

  it('says nothing without a plate that names a load', () => {
    for (const bare of ['none', { scheme: 'eu' }] as const) {
      expect(ruleOf(boat('rib-3-4', { plate: bare }), 'iso-14946')).toEqual({ rule: 'iso-14946', standing: 'lacks' });
    }
  });
});

describe('what only inflatables are asked', () => {
  it('is whether both tubes and the floor between them would take these people as a liferaft does', () => {
    const craft = boat('rib-3-4');
    const { diameter, spacing, length } = craft.hull.tube!;
    const volume = 2 * Math.PI * (diameter / 2) ** 2 * length;
    const { persons } = liferaftPersons(volume, (spacing - diameter) * craft.hull.wettedLength);
    expect(ruleOf(craft, 'liferaft')).toEqual({
      rule: 'liferaft',
      standing: 'comparison',
      persons: { allowed: persons, now: 3 },
    });
    // On thin tubes it is these that end it, on thick ones the floor.
    const thin = { diameter: 0.3, spacing: 2, length: 3 };
    const wide = { ...craft, hull: { ...craft.hull, tube: thin } };
    expect(ruleOf(wide, 'liferaft').persons!.allowed).toBe(Math.floor((2 * Math.PI * 0.15 ** 2 * 3) / 0.096));
    const touching = { ...craft, hull: { ...craft.hull, tube: { diameter, spacing: 0.5 * diameter, length } } };
    expect(ruleOf(touching, 'liferaft').persons!.allowed).toBe(liferaftPersons(volume, 0).persons);
    const { tube: _, ...bare } = craft.hull;
    expect(ruleOf({ ...craft, hull: bare }, 'liferaft')).toEqual({ rule: 'liferaft', standing: 'lacks' });
    expect(ruleOf(boat('rigid-v-4-2'), 'liferaft').standing).toBe('not-covered');
    expect([ruleOf(craft, 'iso-6185').standing, ruleOf(boat('rigid-v-4-2'), 'iso-6185').standing]).toEqual([
      'lacks',
      'not-covered',
    ]);
  });

  it('is half of what the tubes carry, and everybody on one side', () => {
    for (const id of ['catamaran-3-6', 'rib-3-4', 'flat-floor-2-7']) {
      const craft = boat(id);
      const now = balance(craft, load, 10);
      const capacity = capacityOf(craft, load, asked);
      const tubes = 0.5 * bodyOf(craft).tubeVolume * 1025;
      const mass = now.allUpMass;
      expect(of(capacity, 'tubes')).toEqual({
        rule: 'tubes',
        standing: 'limit',
        load: { allowed: tubes, now: mass },
        spare: tubes - mass,
      });
      const spare = spareOnOneSide(bodyOf(craft), weightOf(now), 1025, sidewards(craft, load, now));
      expect(of(capacity, 'one-side')).toEqual({
        rule: 'one-side',
        standing: 'limit',
        load: { allowed: mass + spare, now: mass },
        spare,
      });
    }
    const rigid = capacityOf(boat('rigid-v-4-2'), load, asked).rules.map(({ rule }) => rule);
    expect(rigid).not.toContain('tubes');
    expect(rigid).not.toContain('one-side');
  });
});

it('every boat keeps a freeboard', () => {
  for (const id of ['catamaran-3-6', 'rigid-v-4-2', 'launch-4-9']) {
    const craft = boat(id);
    const now = balance(craft, load, 10);
    const allowed = heaviestAtFreeboard(bodyOf(craft), weightOf(now), 1025, 0.1);
    expect(ruleOf(craft, 'freeboard')).toEqual({
      rule: 'freeboard',
      standing: 'limit',
      load: { allowed, now: now.allUpMass },
      spare: allowed - now.allUpMass,
    });
  }
});

it('has a place for everybody on seats and at the helm, none on gear', () => {
  const { hull } = boat('catamaran-3-6');
  const places = hull.stations.filter(({ id }) => id === 'helm' || id.startsWith('seat')).length;
  expect(capacityOf(boat('catamaran-3-6'), load, asked).seats).toEqual({ allowed: places, now: 3 });
});
