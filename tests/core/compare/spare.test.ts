import { describe, expect, it } from 'vitest';
import { type Loaded, loaded, setUp } from '../../../src/core/compare/loaded.ts';
import { planing } from '../../../src/core/compare/planing.ts';
import { spare } from '../../../src/core/compare/spare.ts';
import type { Craft, Plate } from '../../../src/core/craft/shapes.ts';
import { crewOf, loadedWith, SETTING } from './boats.ts';

/** The catamaran with this many aboard, its plate changed or gone. */
const boat = (plate: Partial<Plate> | 'none' | undefined, count = 2): Loaded => {
  const change = (craft: Craft): Craft => {
    const { plate: now, ...hull } = craft.hull;
    if (plate === undefined) return { ...craft, hull };
    return { ...craft, hull: { ...hull, plate: plate === 'none' ? 'none' : { ...(now as Plate), ...plate } } };
  };
  return loadedWith('catamaran-3-6', 'petrol-15hp-4s', 'tank-25', { count, change });
};

describe('what may still come aboard', () => {
  it('by the plate is what it allows less what counts already', () => {
    const now = boat({ maxLoad: 300 });
    expect(spare(now)).toMatchObject({ extra: 300 - now.balance.counted, binds: 'plate', plateKnown: true });
  });

  it('is negative where too much is aboard', () => {
    const now = boat({ maxLoad: 300 }, 4);
    expect(now.balance.counted).toBeGreaterThan(300);
    expect(spare(now).extra).toBe(300 - now.balance.counted);
  });

  it('is what half of the tubes carry, or the method was made for, where no plate ends it before', () => {
    for (const plate of [undefined, 'none', { maxLoad: 5000 }] as const) {
      const now = boat(plate);
      const { diameter, length } = now.craft.hull.tube!;
      const tubes = 2 * Math.PI * (diameter / 2) ** 2 * length * now.boat.water.density;
      const found = spare(now);
      expect(found.binds).toBe('floating');
      // Nothing but the tubes and 900 kg can end it: one of them does, exactly.
      const mass = now.afloat.mass + found.extra;
      expect(mass < 900 ? mass / tubes : mass / 900).toBeCloseTo(mass < 900 ? 0.5 : 1, 9);
      expect(found.plateKnown).toBe(plate !== undefined && plate !== 'none');
    }
  });

  it('never passes 600 kg', () => {
    const launch = loadedWith('launch-4-9', 'petrol-6hp-4s', 'tank-12', {
      count: 1,
      mass: 40,
      change: (craft) => ({ ...craft, hull: { ...craft.hull, mass: 100, plate: 'none' } }),
    });
    expect(launch.afloat.mass).toBeLessThan(300);
    expect(spare(launch)).toMatchObject({ extra: 600, binds: 'search-limit', plateKnown: false });
  });
});

describe('what may still come aboard and the boat planes', () => {
  const more = (now: Loaded, kg: number) =>
    planing({ ...now, afloat: { ...now.afloat, mass: now.afloat.mass + kg } }).planes;

  it('lets it plane surely, and a kilogram more does not', () => {
    const now = boat({});
    const { planing: kg } = spare(now);
    expect(more(now, kg!)).toBe('planes');
    expect(more(now, kg! + 1)).not.toBe('planes');
  });

  it('is what has to stay ashore, at most everybody and everything', () => {
    const full = boat({}, 4);
    const { planing: kg } = spare(full);
    expect(kg!).toBeLessThan(0);
    expect(more(full, kg!)).toBe('planes');
    expect(kg!).toBeGreaterThanOrEqual(-full.balance.peopleAndGear);
  });

  it('is nothing where the boat does not even plane empty', () => {
    const launch = loadedWith('launch-4-9', 'petrol-6hp-4s', 'tank-12');
    expect(spare(launch).planing).toBeUndefined();
    const weak = loadedWith('rib-4-7', 'petrol-6hp-4s', 'tank-12');
    expect(spare(weak).planing).toBeUndefined();
  });

  it('is judged without those who stay ashore, not without the boat', () => {
    const { craft } = boat({});
    const made = setUp(craft, SETTING);
    const alone = loaded(made, crewOf(craft.hull, 1).load);
    const two = loaded(made, crewOf(craft.hull, 2).load);
    // Somebody more aboard leaves as much less as they weigh, but for where they sit.
    expect(spare(alone).extra - spare(two).extra).toBeCloseTo(85, 9);
  });
});
