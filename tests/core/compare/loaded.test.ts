import { describe, expect, it } from 'vitest';
import { atSpeed } from '../../../src/core/compare/at-speed.ts';
import { easySpeed } from '../../../src/core/compare/easy-speed.ts';
import { type Loaded, loaded, setUp } from '../../../src/core/compare/loaded.ts';
import { priorDeviations } from '../../../src/core/curve/factors.ts';
import { marginOf } from '../../../src/core/curve/hump.ts';
import { craftFrom } from '../../../src/core/files/catalogue.ts';
import { heldProbability } from '../../../src/core/trip/held.ts';
import { GRAVITY, PETROL_DENSITY } from '../../../src/core/units/constants.ts';
import { crewOf, hullOf, loadedWith, SETTING } from './boats.ts';

const hull = hullOf('catamaran-3-6');
const petrol = { ...craftFrom('catamaran-3-6', 'petrol-15hp-4s', 'tank-25'), hull };
const electric = { ...craftFrom('catamaran-3-6', 'electric-5-2kw', 'battery-5-nmc'), hull };
const crew = crewOf(hull, 2).load;

describe('a boat with a load aboard', () => {
  it('has a tank filled to 95 % where nobody said more or less, and never above', () => {
    const boat = setUp(petrol, SETTING);
    const [plain, brimful, half] = [undefined, 1, 0.5].map((fill) =>
      loaded(boat, fill === undefined ? crew : { ...crew, fill }),
    );
    expect(plain!.usable).toBeCloseTo((0.95 * 25 - 0.8) * PETROL_DENSITY, 9);
    expect(brimful).toEqual(plain);
    expect(half!.usable).toBeCloseTo((0.5 * 25 - 0.8) * PETROL_DENSITY, 9);
    expect(plain!.afloat.mass - half!.afloat.mass).toBeCloseTo(0.45 * 25 * PETROL_DENSITY, 9);
    expect([plain!.afloat.charge, half!.afloat.charge]).toEqual([0.95, 0.5]);
  });

  it('weighs as much and is balanced as the load says', () => {
    const { afloat, balance } = loaded(setUp(petrol, SETTING), crew);
    expect(afloat).toMatchObject({ mass: balance.allUpMass, lcg: balance.lcg, airArea: balance.airArea });
    const known = hull.mass + petrol.drive.mass + 5 + 0.95 * 25 * PETROL_DENSITY + 2 * 85;
    expect(afloat.mass).toBeCloseTo(known, 9);
  });

  it('has a battery charged to the full where nobody said more, as heavy empty as full', () => {
    const boat = setUp(electric, SETTING);
    const full = loaded(boat, crew);
    const half = loaded(boat, { ...crew, fill: 0.5 });
    expect(full.afloat.charge).toBe(1);
    expect(half.afloat.charge).toBe(0.5);
    expect(full.afloat.mass).toBe(half.afloat.mass);
    expect(full.usable).toBeGreaterThan(1.9 * half.usable);
    expect(full.usable).toBeLessThanOrEqual(5000 * 3600);
  });

  it('drags a leg that is too long for its transom, but not where trials had it already', () => {
    const long = { ...petrol, drive: { ...petrol.drive, shaft: 'long' as const } };
    expect(setUp(long, SETTING).craft.drive.legDragArea).toBeGreaterThan(petrol.drive.legDragArea);
    expect(setUp(petrol, SETTING).craft).toBe(petrol);
    // Nobody knows how long: as if it fitted.
    const { transomHeight: _, ...unknown } = hull;
    expect(setUp({ ...long, hull: unknown }, SETTING).craft.drive.legDragArea).toBe(petrol.drive.legDragArea);
    const covariance = priorDeviations(long.drive).map((_, i, all) =>
      all.map((deviation, j) => (i === j ? deviation ** 2 : 0)),
    );
    const calibration = { factors: [1, 1, 1, 0, 0, 1, 0], covariance, runs: 12 };
    expect(setUp({ ...long, calibration }, SETTING).craft.drive.legDragArea).toBe(petrol.drive.legDragArea);
  });

  it('floats in the water that was asked for, its battery as warm as was said', () => {
    const [sea, fresh] = (['sea', 'fresh'] as const).map((water) => setUp(petrol, { ...SETTING, water }));
    expect(sea!.water.density).toBeGreaterThan(fresh!.water.density);
    const usable = (batteryTemperatureC: number) =>
      loaded(setUp(electric, { water: 'sea', batteryTemperatureC }), crew).usable;
    expect(usable(0)).toBeLessThan(usable(20));
  });
});

it('goes easily at a length Froude number of 0.35, twice as fast on four times the length', () => {
  const speed = easySpeed(hull);
  expect(speed / Math.sqrt(GRAVITY * hull.wettedLength)).toBeCloseTo(0.35, 9);
  expect(easySpeed({ ...hull, wettedLength: 4 * hull.wettedLength })).toBeCloseTo(2 * speed, 9);
});

describe('a boat held at one speed', () => {
  const boats: readonly Loaded[] = [
    loadedWith('catamaran-3-6', 'petrol-15hp-4s', 'tank-25'),
    loadedWith('catamaran-3-6', 'electric-5-2kw', 'battery-5-nmc'),
  ];

  it('goes as far as what is usable lasts, two thirds of it with a third kept', () => {
    for (const now of boats) {
      for (const speed of [2, 7.5]) {
        const { flow, perMetre, range, rangeKept, steady } = atSpeed(now, speed);
        for (const side of ['low', 'median', 'high'] as const) {
          expect(perMetre[side] * speed).toBeCloseTo(flow[side], 9);
          expect(rangeKept[side] / range[side]).toBeCloseTo(2 / 3, 9);
        }
        expect(flow.median).toBe(steady.flow);
        expect(range.median * perMetre.median).toBeCloseTo(now.usable, 6);
        // Who uses most goes least far.
        expect(range.low * perMetre.high).toBeCloseTo(now.usable, 6);
        expect(range.high * perMetre.low).toBeCloseTo(now.usable, 6);
        expect(range.low).toBeLessThan(range.median);
      }
    }
  });

  it('lies in a band as far below as above, as a factor', () => {
    for (const now of boats) {
      const { flow } = atSpeed(now, 2);
      expect(flow.high / flow.median).toBeCloseTo(flow.median / flow.low, 9);
      expect(flow.high / flow.median).toBeGreaterThan(1.05);
      expect(flow.high / flow.median).toBeLessThan(2);
    }
  });

  it('is held where power, revs and battery suffice, and as surely as on a trip', () => {
    for (const { boat, afloat, ...rest } of boats) {
      for (const speed of [2, 5, 7.5, 9, 12]) {
        const found = atSpeed({ boat, afloat, ...rest }, speed);
        expect(found.held).toBe(marginOf(boat, afloat, found.steady.drive) >= 1);
        expect(found.chance).toBeCloseTo(heldProbability(boat, { afloat, speed, steady: found.steady }), 12);
      }
    }
  });
});
