import { describe, expect, it } from 'vitest';
import { revsOf } from '../../../src/core/compare/full-throttle.ts';
import { loaded, setUp } from '../../../src/core/compare/loaded.ts';
import { seatedCrew, stowedGear } from '../../../src/core/compare/seat-crew.ts';
import { ranked, suited } from '../../../src/core/compare/suit.ts';
import type { Catalogue, Suited, Use } from '../../../src/core/compare/suit-shapes.ts';
import type { Craft, Drive, Hull, Plate, Store, Tank } from '../../../src/core/craft/shapes.ts';
import { PLANING_FROUDE, speedAtFroude } from '../../../src/core/curve/hump.ts';
import { fuelMass } from '../../../src/core/drive/tank.ts';
import * as shipped from '../../../src/core/files/catalogue.ts';
import { INCH } from '../../../src/core/units/convert.ts';

const couple: Use = {
  crew: [85, 75],
  gear: 20,
  distance: 8000,
  water: 'sea',
  waveHeight: 0,
  speed: 3,
  energy: 'either',
  batteryTemperatureC: 20,
};

interface Few {
  readonly hull?: string;
  readonly engine?: string;
  readonly stores?: readonly string[];
  readonly plate?: Partial<Plate>;
  readonly changed?: (hull: Hull) => Hull;
  readonly engined?: (drive: Drive) => Drive;
}

/** One hull, one engine and a few tanks or batteries, in the order given. */
function few({
  hull = 'catamaran-3-6',
  engine = 'petrol-15hp-4s',
  stores = ['tank-25'],
  plate,
  changed,
  engined,
}: Few): Catalogue {
  const one = shipped.hulls.find(({ id }) => id === hull)!;
  return {
    hulls: [{ ...one, hull: changed ? changed(one.hull) : one.hull, typicalPlate: { ...one.typicalPlate, ...plate } }],
    engines: shipped.engines
      .filter(({ id }) => id === engine)
      .map(({ drive, ...rest }) => ({ ...rest, drive: engined ? engined(drive) : drive })),
    stores: stores.map((id) => shipped.stores.find((store) => store.id === id)!),
    craftFrom: shipped.craftFrom,
  };
}

/** A plate that names more than anybody here has. */
const WIDE = { persons: 9, maxPower: 50_000, maxEngineMass: 200, maxLoad: 900 };

const only = (use: Partial<Use>, wanted: Few = {}): Suited => [...suited({ ...couple, ...use }, few(wanted))][0]!;
const { drive: fifteen } = shipped.engines.find(({ id }) => id === 'petrol-15hp-4s')!;
const { hull: catamaran } = shipped.hulls.find(({ id }) => id === 'catamaran-3-6')!;
const tankOf = (id: string) =>
  (shipped.stores.find((store) => store.id === id)!.store as Store & { kind: 'tank' }).tanks;
const batteryOf = (id: string) =>
  (shipped.stores.find((one) => one.id === id)!.store as Store & { kind: 'battery' }).batteries[0]!;
const storeOf = (...tanks: readonly Tank[]): Store => ({ kind: 'tank', tanks });
const full = (id: string) => tankOf(id).reduce((sum, tank) => sum + tank.emptyMass, 0) + fuelMass(tankOf(id), 1);

describe('what nothing mends', () => {
  it('is one person more than the plate names, and not as many as it names', () => {
    expect(only({ crew: [60, 60, 60, 60] }, { plate: { persons: 4 } }).trip).toBeDefined();
    const five = only({ crew: [60, 60, 60, 60, 60] }, { plate: { persons: 4 } });
    expect(five).toMatchObject({ standing: 'out', pitchChange: 0, mass: catamaran.mass + fifteen.mass });
    expect(five.storeId).toBeUndefined();
    expect(five.reasons).toEqual([
      { kind: 'plan', reason: { code: 'over-plate-persons', level: 'no-go', measure: 'count', value: 5, limit: 4 } },
    ]);
  });

  it('is a watt or a gram of engine over what the plate names, not an engine that just keeps to it', () => {
    const { ratedPower, mass } = fifteen;
    const kept = only({}, { plate: { maxPower: ratedPower, maxEngineMass: mass } });
    expect(kept.reasons).toEqual([]);
    const over = only({}, { plate: { maxPower: ratedPower - 1, maxEngineMass: mass - 0.001 } });
    expect(over.reasons).toEqual([
      {
        kind: 'plan',
        reason: {
          code: 'over-plate-power',
          level: 'no-go',
          measure: 'power',
          value: ratedPower,
          limit: ratedPower - 1,
        },
      },
      {
        kind: 'plan',
        reason: { code: 'over-plate-engine-mass', level: 'no-go', measure: 'mass', value: mass, limit: mass - 0.001 },
      },
    ]);
  });

  it('is nothing of a plate that names no limits', () => {
    const plate = { persons: undefined, maxPower: undefined, maxEngineMass: undefined } as unknown as Partial<Plate>;
    expect(only({}, { engine: 'petrol-40hp-4s', plate }).trip).toBeDefined();
  });

  it('is somebody without a seat; the helm is a seat, places for gear are none', () => {
    const seats = catamaran.stations.filter(({ use }) => use === 'seat' || use === 'helm').length;
    const plate = { persons: 20, maxLoad: 900 };
    expect(only({ crew: Array(seats).fill(30) }, { plate }).reasons.some(({ kind }) => kind === 'seats')).toBe(false);
    expect(only({ crew: Array(seats + 1).fill(30) }, { plate }).reasons).toEqual([
      { kind: 'seats', value: seats + 1, limit: seats },
    ]);
  });

  it('is a hull too heavy for all who carry it together, and an engine too heavy for one', () => {
    const each = catamaran.mass / 2;
    const just = only({ carry: Math.max(each, fifteen.mass) }, { stores: ['tank-12'] });
    expect(just.reasons.some(({ kind }) => kind === 'carry')).toBe(false);
    expect(just.hullShare).toBe(each);
    expect(only({ carry: each }).reasons).toEqual([
      { kind: 'carry', piece: 'engine', value: fifteen.mass, limit: each },
    ]);
    expect(only({ carry: each - 0.01 }).reasons).toEqual([
      { kind: 'carry', piece: 'hull', value: each, limit: each - 0.01 },
      { kind: 'carry', piece: 'engine', value: fifteen.mass, limit: each - 0.01 },
    ]);
  });

  it('is an engine that no tank or battery goes with', () => {
    expect(only({}, { stores: ['battery-3-nmc', 'tank-built-in-1-1'] })).toMatchObject({
      standing: 'out',
      reasons: [{ kind: 'no-store' }],
    });
  });
});

describe('the tank or battery', () => {
  it('is the lightest that makes it fit, in whatever order they are listed', () => {
    for (const stores of [
      ['tank-12', 'tank-25', 'tank-25-25'],
      ['tank-25-25', 'tank-12', 'tank-25'],
      ['tank-25', 'tank-25-25', 'tank-12'],
    ]) {
      expect(only({}, { stores })).toMatchObject({ storeId: 'tank-12', standing: 'fits' });
    }
  });

  it('is the one that leaves most at home where none fits', () => {
    for (const stores of [
      ['tank-12', 'tank-25', 'tank-25-25'],
      ['tank-25-25', 'tank-25', 'tank-12'],
    ]) {
      const far = only({ distance: 400_000, speed: 7.5 }, { stores });
      expect(far.standing).toBe('out');
      expect(far.storeId).toBe('tank-25-25');
    }
  });

  it('is the lighter of two that are as sure and both too much for the plate', () => {
    const wanted = { stores: ['tank-12', 'tank-25'], plate: { maxLoad: 150 } };
    expect(only({}, wanted)).toMatchObject({ storeId: 'tank-12', standing: 'out' });
    const [light, heavy] = wanted.stores.map((id) => only({}, { ...wanted, stores: [id] }));
    expect(light!.trip!.probability).toBe(heavy!.trip!.probability);
    expect(light!.reasons).toHaveLength(heavy!.reasons.length);
  });

  it('is the lightest that fits even where a larger one is surer', () => {
    const near = only({ distance: 45_000, speed: 7.5 }, { stores: ['tank-12', 'tank-25'] });
    expect(near).toMatchObject({ storeId: 'tank-12', standing: 'fits' });
    expect(near.trip!.probability).toBeLessThan(0.9);
  });

  it('is the first that fits where lighter ones are out', () => {
    const far = only({ distance: 80_000, speed: 7.5 }, { stores: ['tank-12', 'tank-25', 'tank-25-25'] });
    expect(far).toMatchObject({ storeId: 'tank-25', standing: 'fits' });
  });

  it('is the one with fewer reasons against it where none fits', () => {
    const far = { distance: 115_000, speed: 7.5 };
    const [small, large] = ['tank-12', 'tank-25'].map((id) => only(far, { stores: [id] }));
    expect([small!.standing, large!.standing]).toEqual(['out', 'out']);
    expect(small!.reasons.length).toBeGreaterThan(large!.reasons.length);
    expect(only(far, { stores: ['tank-12', 'tank-25'] }).storeId).toBe('tank-25');
    // Surely enough, but too heavy for the plate and too far aft.
    const aft = { ...tankOf('tank-25')[0]!, capacityL: 80, at: { x: -1.5, y: 0 } };
    const stores = [shipped.stores.find(({ id }) => id === 'tank-12')!, { id: 'aft', store: storeOf(aft) }];
    const choice: Catalogue = {
      ...few({ plate: { maxLoad: 220 } }),
      stores,
      craftFrom: (hullId, engineId, storeId) => ({
        ...shipped.craftFrom(hullId, engineId, 'tank-12'),
        ...(storeId === 'aft' && { store: storeOf(aft) }),
      }),
    };
    const near = { ...couple, distance: 55_000, speed: 7.5 };
    const alone = (id: string) => [...suited(near, { ...choice, stores: stores.filter((one) => one.id === id) })][0]!;
    expect(alone('tank-12').reasons).toHaveLength(1);
    expect(alone('aft').reasons.length).toBeGreaterThan(1);
    expect(alone('aft').trip!.probability).toBeGreaterThan(alone('tank-12').trip!.probability);
    expect([...suited(near, choice)][0]!.storeId).toBe('tank-12');
  });

  it('in doubt goes before those that are out, lighter or heavier', () => {
    const wanted = { hull: 'rib-3-4', engine: 'electric-2-2kw', plate: { maxLoad: 380 } } as const;
    const use = { crew: [85, 85, 85], gear: 20, distance: 15_000, speed: undefined, batteryTemperatureC: 10 };
    const standing = (id: string) => only(use, { ...wanted, stores: [id] }).standing;
    const stores = ['battery-3-nmc', 'battery-10-nmc', 'battery-10-lfp'];
    expect(stores.map(standing)).toEqual(['out', 'doubtful', 'out']);
    expect(only(use, { ...wanted, stores }).storeId).toBe('battery-10-nmc');
    expect(only(use, { ...wanted, stores: stores.toReversed() }).storeId).toBe('battery-10-nmc');
  });

  it('that nobody can carry is the lighter of two such', () => {
    const wanted = { hull: 'catamaran-2-9', engine: 'electric-3-1kw' } as const;
    for (const stores of [
      ['battery-5-lfp', 'battery-10-nmc'],
      ['battery-10-nmc', 'battery-5-lfp'],
    ]) {
      expect(only({ carry: 40 }, { ...wanted, stores })).toMatchObject({ storeId: 'battery-5-lfp', standing: 'out' });
    }
  });

  it('that one can carry goes before one that nobody can, even where it takes nobody there', () => {
    const wanted = { hull: 'catamaran-2-9', engine: 'electric-2-2kw' } as const;
    const far = { distance: 60_000, carry: 40, energy: 'electric' } as const;
    // Two batteries of 33.6 kg against one of 51.2 kg, which is the lighter whole.
    const two = only(far, { ...wanted, stores: ['battery-5-lfp', 'battery-agm-100-100'] });
    expect([two.storeId, two.standing, two.heaviest]).toEqual(['battery-agm-100-100', 'out', 33.6]);
    expect(two.trip).toBeDefined();
    const small = only(far, { ...wanted, stores: ['battery-1-0-nmc', 'battery-5-lfp'] });
    expect(small.storeId).toBe('battery-1-0-nmc');
    expect(small.trip).toBeDefined();
  });

  it('is named with what it weighs where nobody can carry it', () => {
    const light = { hull: 'catamaran-2-9', engine: 'petrol-4hp-4s', stores: ['tank-25'] } as const;
    const store: Store = { kind: 'tank', tanks: [{ ...tankOf('tank-25')[0]!, emptyMass: 20 }] };
    const heavy: Catalogue = {
      ...few(light),
      stores: [{ id: 'heavy', store }],
      craftFrom: (hullId, engineId) => ({ ...shipped.craftFrom(hullId, engineId, 'tank-25'), store }),
    };
    const [found] = [...suited({ ...couple, carry: 30 }, heavy)];
    const value = 20 + fuelMass(store.tanks, 1);
    expect(found!.reasons).toEqual([{ kind: 'carry', piece: 'tank', value, limit: 30 }]);
    expect(found).toMatchObject({ standing: 'out', storeId: 'heavy', heaviest: value });
    const [borne] = [...suited({ ...couple, carry: value }, heavy)];
    expect(borne!.trip).toBeDefined();
    const battery = only(
      { carry: 30, energy: 'electric' },
      { hull: 'catamaran-2-9', engine: 'electric-2-2kw', stores: ['battery-5-lfp'] },
    );
    expect(battery.reasons).toEqual([{ kind: 'carry', piece: 'battery', value: 51.2, limit: 30 }]);
  });

  it('counts with all its fuel in the whole, the one under the cover not as a piece', () => {
    const small = { hull: 'catamaran-2-9', engine: 'petrol-2-5hp-4s' } as const;
    const hull = shipped.hulls.find(({ id }) => id === 'catamaran-2-9')!.hull.mass;
    for (const id of ['tank-built-in-1-1', 'tank-built-in-1-1-can-5']) {
      const found = only({ distance: 200 }, { ...small, stores: [id] });
      expect(found.mass).toBeCloseTo(hull + 17 + full(id), 9);
      expect(found.heaviest).toBe(17);
    }
    const fixed: Store = { kind: 'tank', tanks: [{ ...tankOf('tank-12')[0]!, fixed: true, emptyMass: 30 }] };
    const [two, one] = [33, 12].map((mass) => ({ ...batteryOf('battery-1-3-lfp'), mass }));
    for (const [engine, store, heaviest] of [
      ['petrol-4hp-4s', fixed, 26],
      ['electric-2-2kw', { kind: 'battery', batteries: [one!, two!] }, 33],
    ] as const) {
      const made: Catalogue = {
        ...few({ hull: 'catamaran-2-9', engine }),
        stores: [{ id: 'made', store }],
        craftFrom: (hullId, engineId) => ({ ...shipped.craftFrom(hullId, engineId, 'tank-25'), store }),
      };
      expect([...suited({ ...couple, distance: 200 }, made)][0]!.heaviest).toBe(heaviest);
    }
    // A can that is heavier than the engine is the heaviest piece.
    const light = only({ distance: 200 }, { hull: 'catamaran-2-9', engine: 'petrol-4hp-2s', stores: ['tank-25'] });
    expect(light.heaviest).toBeCloseTo(full('tank-25'), 9);
    const pair = only(
      { energy: 'electric' },
      { hull: 'catamaran-2-9', engine: 'electric-2-2kw', stores: ['battery-agm-100-100'] },
    );
    expect(pair.mass).toBeCloseTo(hull + 18 + 67.2, 9);
    expect(pair.heaviest).toBe(33.6);
  });
});

describe('the engine', () => {
  it('gets the shaft of the transom, with its mass, and stays as it is where nobody knows the transom', () => {
    const rib = { hull: 'rib-4-7', engine: 'petrol-40hp-4s', stores: ['tank-25'] } as const;
    const long = only({}, rib);
    expect(long.craft!.drive).toMatchObject({ shaft: 'long', mass: 98 });
    const changed = ({ transomHeight: _, ...hull }: Hull): Hull => hull;
    const unknown = only({}, { ...rib, changed });
    expect(unknown.craft!.drive).toMatchObject({ shaft: 'short', mass: 96 });
    expect(long.mass).toBeCloseTo(unknown.mass + 2, 9);
    const engined = (drive: Drive): Drive => ({ ...drive, shaft: 'extra-long' });
    expect(only({}, { ...rib, changed, engined }).craft!.drive).toMatchObject({ shaft: 'extra-long', mass: 96 });
  });

  it('is looked at only where it is of the wanted kind', () => {
    const found = (energy: Use['energy']) => [...suited({ ...couple, energy }, few({}))].length;
    expect([found('either'), found('petrol'), found('electric')]).toEqual([1, 1, 0]);
  });
});

describe('the propeller', () => {
  const turned = (craft: Craft, use: Use, inches: number, pitch: number) => {
    const { propeller } = craft.drive;
    const drive = { ...craft.drive, propeller: { ...propeller, pitch: pitch + inches * INCH } } as Craft['drive'];
    const boat = setUp({ ...craft, drive }, use);
    const items = [...seatedCrew(craft.hull, use.crew), ...stowedGear(craft.hull, use.gear)];
    const { afloat } = loaded(boat, { items, fill: 1 });
    const { speed, rpm } = revsOf(boat, afloat);
    const share = rpm / craft.drive.ratedRpm;
    return { well: share >= 0.94 && share <= 1.06, planes: speed >= speedAtFroude(boat, afloat, PLANING_FROUDE) };
  };

  it('is the one nearest to the usual that lets the engine turn as it should, planing before not', () => {
    let changed = 0;
    for (const [hull, engine, crew] of [
      ['catamaran-3-6', 'petrol-15hp-4s', [85, 75]],
      ['catamaran-3-6', 'petrol-8hp-4s', [85, 85, 85]],
      ['catamaran-4-3', 'petrol-20hp-4s', [85, 85, 85, 85]],
      ['rib-4-7', 'petrol-40hp-4s', [85, 85, 85, 85, 85]],
      ['launch-4-9', 'petrol-6hp-4s', [85, 75]],
      ['rigid-v-4-2', 'petrol-9-9hp-2s', [85, 85, 85]],
      ['rib-3-4', 'petrol-6hp-2s', [70]],
      ['catamaran-2-9', 'petrol-4hp-2s', [60]],
      // Two inches less would do, and are a third of the pitch.
      ['catamaran-2-9', 'petrol-2-5hp-4s', [85, 75]],
      // None does.
      ['flat-floor-2-7', 'petrol-9-9hp-4s', [85, 85, 85]],
    ] as const) {
      const use = { ...couple, crew, gear: 10 };
      const found = only(use, { hull, engine, stores: ['tank-12', 'tank-built-in-1-1'], plate: WIDE });
      const { pitch } = shipped.engines.find(({ id }) => id === engine)!.drive.propeller;
      expect(found.craft!.drive.propeller.pitch).toBeCloseTo(pitch + found.pitchChange, 12);
      const choices = [0, -1, 1, -2, 2]
        .filter((inches) => inches * INCH >= -0.3 * pitch)
        .map((inches) => ({ inches, ...turned(found.craft!, use, inches, pitch) }));
      const right = choices.find(({ well, planes }) => well && planes) ?? choices.find(({ well }) => well);
      expect(found.pitchChange / INCH, `${hull} ${engine}`).toBeCloseTo(right?.inches ?? 0, 9);
      if (found.pitchChange !== 0) changed++;
    }
    expect(changed).toBeGreaterThan(1);
  });

  it('is flattened by three tenths of its pitch and no more', () => {
    const flattened = (pitch: number) => {
      const engined = (drive: Drive) => ({ ...drive, propeller: { ...drive.propeller, pitch } });
      const stores = ['tank-built-in-1-1'];
      const use = { crew: [85, 85, 85], gear: 20 };
      return only(use, { engine: 'petrol-2-5hp-4s', stores, plate: WIDE, engined }).pitchChange;
    };
    const least = (2 * INCH) / 0.3;
    expect(0.3 * least).toBe(2 * INCH);
    expect(flattened(least)).toBe(-2 * INCH);
    expect(flattened(0.999 * least)).toBe(0);
  });

  it('of an electric motor stays', () => {
    const found = only(
      { energy: 'electric' },
      { hull: 'catamaran-2-9', engine: 'electric-2-2kw', stores: ['battery-1-0-nmc'] },
    );
    expect(found.pitchChange).toBe(0);
  });
});

describe('their order', () => {
  const made = (standing: Suited['standing'], reasons: number, mass: number): Suited => ({
    hullId: 'hull',
    engineId: 'engine',
    pitchChange: 0,
    standing,
    reasons: Array(reasons).fill({ kind: 'no-store' }),
    mass,
    heaviest: 0,
    hullShare: 0,
  });
  const [light, heavy] = [made('fits', 0, 80), made('fits', 0, 120)];
  const [doubted, heavier] = [made('doubtful', 2, 50), made('doubtful', 1, 60)];
  const [one, two, three] = [made('out', 1, 90), made('out', 2, 20), made('out', 2, 30)];

  it('is fitting, doubtful, out; the lighter first, and of those out the ones with fewer reasons', () => {
    const right = [light, heavy, doubted, heavier, one, two, three];
    expect(ranked([three, two, one, heavier, doubted, heavy, light])).toEqual(right);
    expect(ranked([heavy, three, light, one, heavier, two, doubted])).toEqual(right);
  });

  it('leaves the list that was given as it was', () => {
    const given = [heavy, light];
    ranked(given);
    expect(given).toEqual([heavy, light]);
  });
});
