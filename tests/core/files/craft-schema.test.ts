import * as v from 'valibot';
import { describe, expect, it } from 'vitest';
import electricTender from '../../../shared/trips/electric-tender.json' with { type: 'json' };
import { craftSchema } from '../../../src/core/files/craft-schema.ts';
import { loadSchema } from '../../../src/core/files/load-schema.ts';
import { trialsSchema } from '../../../src/core/files/trials-schema.ts';
import { petrolTrip } from './full-trips.ts';
import { expectEntries, expectRange, from, over, withAt } from './limits.ts';

const takes = (schema: v.GenericSchema) => (value: unknown) => v.is(schema, value);
const trip = petrolTrip();
const { craft, load, trials } = trip;
craft.hull.transomHeight ??= 0.4;
craft.hull.tube ??= { diameter: 0.4, spacing: 1.2, length: 3 };
craft.hull.plate = { scheme: 'eu', maxLoad: 400, persons: 4, maxPower: 15_000, maxEngineMass: 60, category: 'C' };
const electric = structuredClone(electricTender).craft as typeof craft;
electric.store.batteries[0].maxCurrent = 100;

it('takes a boat with every figure given', () => {
  expect([takes(craftSchema)(craft), takes(craftSchema)(electric)]).toEqual([true, true]);
});

describe('a hull', () => {
  it.each([
    // Longer than a person and shorter than a ship, m.
    ['length', from(1, 20)],
    ['beam', from(0.3, 10)],
    ['wettedLength', from(0.5, 20)],
    ['planingBeam', from(0.2, 10)],
    // From a flat bottom to the steepest V.
    ['deadriseDeg', from(0, 45)],
    ['wettedSurfaceCoefficient', from(1, 10)],
    ['formFactor', from(0, 2)],
    ['planingSurfaceFactor', from(0.5, 3)],
    ['roughness', from(0, 0.01)],
    ['airDragCoefficient', from(0, 3)],
    ['airArea', from(0, 50)],
    ['airAreaPerPerson', from(0, 5)],
    // Up to 20 t.
    ['mass', over(0, 20_000)],
    ['transomHeight', over(0, 3)],
    ['tube.diameter', over(0, 2)],
    ['tube.spacing', over(0, 10)],
    ['tube.length', over(0, 20)],
  ] as const)('has a %s within bounds that keep out slips of unit', (path, range) => {
    expectRange(takes(craftSchema), craft, `hull.${path}`, range);
  });

  it('has places from 5 m behind to 20 m ahead, 5 m to each side, 5 m under to 10 m over the keel', () => {
    for (const place of ['hull.centre', 'hull.engine', 'hull.stations.0', 'store.tanks.0.at']) {
      expectRange(takes(craftSchema), craft, `${place}.x`, from(-5, 20));
      expectRange(takes(craftSchema), craft, `${place}.y`, from(-5, 5));
      expectRange(takes(craftSchema), craft, `${place}.z`, from(-5, 10));
    }
  });

  it('has up to 60 stations, or none', () => {
    expectEntries(takes(craftSchema), craft, 'hull.stations', from(0, 60));
  });

  it('has a plate that says what plates say', () => {
    expectRange(takes(craftSchema), craft, 'hull.plate.maxLoad', over(0, 10_000));
    expectRange(takes(craftSchema), craft, 'hull.plate.maxPower', over(0, 1e6));
    expectRange(takes(craftSchema), craft, 'hull.plate.maxEngineMass', over(0, 2000));
    const persons = (value: number) => takes(craftSchema)(withAt(craft, 'hull.plate.persons', value));
    expect([0, 1, 2.5, 100, 101].map(persons)).toEqual([false, true, false, true, false]);
  });
});

describe('an engine', () => {
  it.each([
    // A toy to a ship's, W.
    ['ratedPower', from(10, 1e6)],
    ['ratedRpm', from(50, 20_000)],
    ['gearRatio', from(0.2, 20)],
    ['mass', over(0, 2000)],
    ['propeller.diameter', from(0.05, 2)],
    ['propeller.pitch', from(0.02, 3)],
    ['propeller.areaRatio', from(0.3, 1.05)],
    ['propeller.quality', from(0.3, 1.1)],
    ['legDragArea', from(0, 0.1)],
  ] as const)('has a %s within bounds that keep out slips of unit', (path, range) => {
    expectRange(takes(craftSchema), craft, `drive.${path}`, range);
    expectRange(takes(craftSchema), electric, `drive.${path}`, range);
  });

  it('has a propeller of 2 to 7 whole blades', () => {
    const blades = (value: number) => takes(craftSchema)(withAt(craft, 'drive.propeller.blades', value));
    expect([1, 2, 3.5, 7, 8].map(blades)).toEqual([false, true, false, true, false]);
  });

  it('loses shares of its power if it is electric', () => {
    expectRange(takes(craftSchema), electric, 'drive.standbyLoss', from(0, 1));
    expectRange(takes(craftSchema), electric, 'drive.speedLoss', from(0, 1));
    expectRange(takes(craftSchema), electric, 'drive.torqueLoss', from(0, 2));
    expectRange(takes(craftSchema), electric, 'drive.accessoryPower', from(0, 10_000));
  });
});

describe('tanks and batteries', () => {
  it('are one to ten tanks of up to 2000 L', () => {
    expectEntries(takes(craftSchema), craft, 'store.tanks', from(1, 10));
    expectRange(takes(craftSchema), craft, 'store.tanks.0.capacityL', over(0, 2000));
    expectRange(takes(craftSchema), craft, 'store.tanks.0.emptyMass', from(0, 500));
    expectRange(takes(craftSchema), craft, 'store.tanks.0.unusableL', from(0, 500));
  });

  it('are one to twenty batteries, none better than new', () => {
    expectEntries(takes(craftSchema), electric, 'store.batteries', from(1, 20));
    expectRange(takes(craftSchema), electric, 'store.batteries.0.energyWh', over(0, 1e6));
    expectRange(takes(craftSchema), electric, 'store.batteries.0.voltage', over(0, 1500));
    expectRange(takes(craftSchema), electric, 'store.batteries.0.health', over(0, 1));
    expectRange(takes(craftSchema), electric, 'store.batteries.0.maxCurrent', over(0, 10_000));
    expectRange(takes(craftSchema), electric, 'store.batteries.0.mass', over(0, 5000));
  });
});

describe('a load', () => {
  it('is up to 60 people and things of up to 2000 kg, filled from nothing to the brim', () => {
    const one = loadSchema(1);
    expectEntries(takes(one), load, 'items', from(1, 60));
    expectEntries(takes(loadSchema(0)), load, 'items', from(0, 60));
    expectRange(takes(one), load, 'items.0.mass', over(0, 2000));
    expectRange(takes(one), { ...load, fill: 0.5 }, 'fill', from(0, 1));
  });
});

describe('trials', () => {
  it('are takes of a boat in up to 24 setups, with up to 500 runs and 500 refills', () => {
    expect(takes(trialsSchema)(trials)).toBe(true);
    expectEntries(takes(trialsSchema), trials, 'setups', from(1, 24));
    expectEntries(takes(trialsSchema), trials, 'runs', from(0, 500));
    expectEntries(takes(trialsSchema), trials, 'refills', from(0, 500));
  });

  it.each([
    // No boat here goes faster than 40 m/s over ground.
    ['passes.0.over', over(0, 40)],
    ['stream', from(-10, 10)],
    ['rpm', from(50, 20_000)],
    ['consumedError', from(0.005, 0.5)],
    ['waveHeight', from(0, 5)],
    ['wind.speed', from(0, 40)],
    ['wind.offBowDeg', from(0, 360)],
  ] as const)('are runs with a %s within bounds', (path, range) => {
    expectRange(takes(trialsSchema), trials, `runs.0.${path}`, range);
  });

  it('are runs of one to twenty passes, that used something at a rate or in a time', () => {
    expectEntries(takes(trialsSchema), trials, 'runs.0.passes', from(1, 20));
    expectRange(takes(trialsSchema), trials, 'runs.0.consumed.rate', over(0, 1e6));
    const used = withAt(trials, 'runs.0.consumed', { kind: 'amount', amount: 1, seconds: 600 });
    expectRange(takes(trialsSchema), used, 'runs.0.consumed.amount', over(0, 1e10));
    // Within a day.
    expectRange(takes(trialsSchema), used, 'runs.0.consumed.seconds', over(0, 86_400));
  });

  it('are refills after one to two hundred spells of up to ten days', () => {
    expectEntries(takes(trialsSchema), trials, 'refills.0.spent', from(1, 200));
    expectRange(takes(trialsSchema), trials, 'refills.0.spent.0.speed', from(0, 40));
    expectRange(takes(trialsSchema), trials, 'refills.0.spent.0.seconds', over(0, 864_000));
    expectRange(takes(trialsSchema), trials, 'refills.0.amount', over(0, 1e10));
    expectRange(takes(trialsSchema), trials, 'refills.0.waveHeight', from(0, 5));
  });
});
