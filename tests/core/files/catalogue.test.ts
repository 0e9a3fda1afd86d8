import { describe, expect, it } from 'vitest';
import type { Craft, Hull } from '../../../src/core/craft/shapes.ts';
import { craftFrom, engines, hulls, stores } from '../../../src/core/files/catalogue.ts';
import { readTrip } from '../../../src/core/files/trip-schema.ts';
import { HORSEPOWER, INCH } from '../../../src/core/units/convert.ts';
import { petrolTrip, places } from './full-trips.ts';

const byForm = (form: Hull['form']) => hulls.map(({ hull }) => hull).filter((hull) => hull.form === form);

/** A store that suits an engine. */
const storeFor = (engineId: string) => (engineId.startsWith('petrol') ? 'tank-12' : 'battery-3-nmc');

/** The craft read through the door of a trip, with nobody's seat in the way. */
function read(craft: Craft) {
  const trip = petrolTrip();
  trip.load.items = [{ id: 'skipper', kind: 'adult', mass: 85 }];
  return readTrip({ ...trip, craft });
}

describe('the catalogue', () => {
  it('gives every record an id of its own', () => {
    for (const records of [hulls, engines, stores]) {
      const ids = records.map(({ id }) => id);
      expect(new Set(ids).size).toBe(ids.length);
      for (const id of ids) expect(id).toMatch(/^[a-z0-9-]+$/);
    }
  });

  it('has the hulls, engines, tanks and batteries promised', () => {
    expect(hulls.map(({ hull }) => `${hull.form} ${hull.length}`)).toEqual([
      'inflatable-catamaran 2.9',
      'inflatable-catamaran 3.6',
      'inflatable-catamaran 4.3',
      'rib 3.4',
      'rib 4.7',
      'flat-floor-inflatable 2.7',
      'rigid-v 4.2',
      'rigid-flat 3.8',
      'displacement 4.9',
    ]);
    expect(engines.filter(({ drive }) => drive.kind === 'petrol')).toHaveLength(20);
    expect(engines.filter(({ drive }) => drive.kind === 'electric')).toHaveLength(7);
    expect(stores.filter(({ store }) => store.kind === 'tank').length).toBeGreaterThanOrEqual(5);
    expect(stores.filter(({ store }) => store.kind === 'battery').length).toBeGreaterThanOrEqual(7);
  });

  it.each(hulls.map(({ id }) => id))('has a hull %s that a trip takes, with and without its typical plate', (id) => {
    const craft = craftFrom(id, 'petrol-8hp-4s', 'tank-12');
    expect(read(craft)).toMatchObject({ ok: true, value: { craft } });
    const plate = hulls.find((record) => record.id === id)!.typicalPlate;
    const plated = { ...craft, hull: { ...craft.hull, plate } };
    expect(read(plated)).toMatchObject({ ok: true, value: { craft: plated } });
  });

  it.each(engines.map(({ id }) => id))('has an engine %s that a trip takes', (id) => {
    const craft = craftFrom('catamaran-3-6', id, storeFor(id));
    expect(read(craft)).toMatchObject({ ok: true, value: { craft } });
  });

  it.each(stores.map(({ id, store }) => [id, store.kind] as const))('has a store %s that a trip takes', (id, kind) => {
    const craft = craftFrom('rib-4-7', kind === 'tank' ? 'petrol-40hp-4s' : 'electric-5-2kw', id);
    expect(read(craft)).toMatchObject({ ok: true, value: { craft } });
  });

  it('says of every figure where it comes from', () => {
    const plain = ['id', 'marks', 'name', 'kind'];
    for (const record of [...hulls, ...engines, ...stores]) {
      const { marks } = record;
      for (const [mark, origin] of Object.entries(marks)) expect(origin, `${record.id} ${mark}`).toMatch(/^[PMCD]: \S/);
      const used = new Set<string>();
      for (const [keys, value] of places(record)) {
        if (typeof value === 'object' || plain.includes(keys[0]!) || plain.includes(keys.at(-1)!)) continue;
        const field = keys
          .filter((key) => !/^\d+$/.test(key))
          .join('.')
          .replace(/^(hull|drive|store)\./, '');
        const mark = Object.keys(marks).find((name) => field === name || field.startsWith(`${name}.`));
        expect(mark, `${record.id}: ${field} has no mark`).toBeDefined();
        used.add(mark!);
      }
      expect([...used].toSorted(), `${record.id} marks nothing else`).toEqual(Object.keys(marks).toSorted());
    }
  });

  it('leaves the plate to the owner', () => {
    for (const { hull } of hulls) expect(hull.plate).toBeUndefined();
  });
});

describe('the hulls', () => {
  it('take the effective planing beam of their form', () => {
    for (const hull of byForm('inflatable-catamaran')) {
      expect(hull.planingBeam).toBeCloseTo(0.64 * hull.beam, 3);
      // The rule is an estimate of tubes and tunnel floor together: 2 (0.87 D) + 0.43 of the gap.
      const { diameter } = hull.tube!;
      expect(hull.planingBeam / (2 * 0.87 * diameter + 0.43 * (hull.beam - 2 * diameter))).toBeCloseTo(1, 1);
    }
    for (const hull of byForm('flat-floor-inflatable')) expect(hull.planingBeam).toBeCloseTo(0.65 * hull.beam, 3);
    for (const { hull, marks } of hulls.filter(({ hull }) => hull.form === 'rib')) {
      const chine = Number(/chine beam ([\d.]+) m/.exec(marks.planingBeam ?? '')?.[1]);
      expect(hull.planingBeam).toBeCloseTo(chine + 0.3, 3);
    }
  });

  it('have tubes that fit the beam, and none where the form has none', () => {
    for (const { hull } of hulls) {
      if (hull.tube) expect(hull.tube.spacing + hull.tube.diameter).toBeCloseTo(hull.beam, 3);
      expect(hull.tube !== undefined).toBe(
        ['inflatable-catamaran', 'rib', 'flat-floor-inflatable'].includes(hull.form),
      );
    }
  });

  it('float catamarans half immersed at most with the load and engine of the typical plate', () => {
    for (const { hull, typicalPlate } of hulls.filter(({ hull }) => hull.form === 'inflatable-catamaran')) {
      const { diameter, length } = hull.tube!;
      const halfImmersed = 1025 * length * Math.PI * (diameter / 2) ** 2;
      const laden = hull.mass + typicalPlate.maxLoad! + typicalPlate.maxEngineMass!;
      // Plates are round figures: 2 % over is no statement about the boat.
      expect(laden / halfImmersed, hull.name).toBeLessThan(1.02);
    }
  });

  it('keep everybody their seat when the boat is changed', () => {
    const ids = hulls[0]!.hull.stations.map(({ id, use }) => `${use} ${id}`);
    expect(ids).toEqual([
      'helm helm',
      'seat seat-aft-port',
      'seat seat-aft-starboard',
      'seat seat-mid',
      'seat seat-fore-port',
      'seat seat-fore-starboard',
      'gear gear-bow',
      'gear gear-mid',
      'gear gear-aft',
      'store store-bow',
      'store store-aft',
      'bow-tube bow-tube',
    ]);
    for (const { hull } of hulls) expect(hull.stations.map(({ id, use }) => `${use} ${id}`)).toEqual(ids);
  });

  it('have every place inside the boat, seats mirrored port and starboard, nobody on anybody else', () => {
    for (const { hull } of hulls) {
      const seats = hull.stations.filter(({ use }) => use === 'helm' || use === 'seat');
      for (const { id, x, y } of hull.stations) {
        expect(x, `${hull.name} ${id}`).toBeGreaterThan(0);
        expect(x, `${hull.name} ${id}`).toBeLessThan(hull.length);
        expect(Math.abs(y), `${hull.name} ${id}`).toBeLessThan(hull.beam / 2);
      }
      for (const end of ['aft', 'fore']) {
        const [port, starboard] = ['port', 'starboard'].map(
          (side) => seats.find(({ id }) => id === `seat-${end}-${side}`)!,
        );
        expect([port!.x, port!.y]).toEqual([starboard!.x, -starboard!.y]);
      }
      for (const [i, a] of seats.entries()) {
        for (const b of seats.slice(i + 1))
          expect(Math.hypot(a.x - b.x, a.y - b.y), `${hull.name} ${a.id} ${b.id}`).toBeGreaterThan(0.25);
      }
    }
  });
});

describe('the centre of gravity', () => {
  /** Share of wetted length, moments about the aft end of the wetted bottom; tanks 95 % full of petrol at 0.745 kg/L. */
  function lcgShare(craft: Craft, crew: readonly string[]): number {
    const { hull, drive, store } = craft;
    const parts = [
      [hull.mass, hull.centre.x],
      [drive.mass, hull.engine.x],
      ...(store.kind === 'tank'
        ? store.tanks.map((tank) => [tank.emptyMass + 0.95 * 0.745 * tank.capacityL, tank.at.x])
        : store.batteries.map((battery) => [battery.mass, battery.at.x])),
      ...crew.map((seat) => [85, hull.stations.find(({ id }) => id === seat)!.x]),
    ] as [number, number][];
    const mass = parts.reduce((sum, [m]) => sum + m, 0);
    return parts.reduce((sum, [m, x]) => sum + m * x, 0) / mass / hull.wettedLength;
  }

  const planing = [
    craftFrom('catamaran-2-9', 'petrol-6hp-4s', 'tank-12'),
    craftFrom('catamaran-3-6', 'petrol-15hp-4s', 'tank-12'),
    craftFrom('catamaran-4-3', 'petrol-25hp-4s', 'tank-25'),
    craftFrom('rib-3-4', 'petrol-15hp-4s', 'tank-12'),
    craftFrom('rib-4-7', 'petrol-40hp-4s', 'tank-25-25'),
    craftFrom('flat-floor-2-7', 'electric-1-1kw', 'battery-1-0-nmc'),
    craftFrom('rigid-v-4-2', 'petrol-9-9hp-4s', 'tank-12'),
    craftFrom('rigid-flat-3-8', 'petrol-9-9hp-4s', 'tank-12'),
  ];
  const crews = [
    ['helm', 'seat-fore-port'],
    ['helm', 'seat-fore-port', 'seat-fore-starboard'],
    ['helm', 'seat-aft-port', 'seat-fore-port', 'seat-fore-starboard'],
  ];

  it('lies at 32 to 42 % of the wetted length with two, three or four adults well placed', () => {
    for (const craft of planing) {
      for (const crew of crews) {
        const share = lcgShare(craft, crew);
        expect(share, `${craft.hull.name} ${crew}`).toBeGreaterThan(0.315);
        expect(share, `${craft.hull.name} ${crew}`).toBeLessThan(0.42);
      }
    }
  });

  it('lies at 25 to 32 % with one adult aft', () => {
    for (const craft of planing) {
      expect(lcgShare(craft, ['helm']), craft.hull.name).toBeGreaterThan(0.245);
      expect(lcgShare(craft, ['helm']), craft.hull.name).toBeLessThan(0.32);
    }
  });

  it('lies further forward in a launch that does not plane', () => {
    const launch = craftFrom('launch-4-9', 'electric-2-2kw', 'battery-5-lfp');
    for (const crew of crews) {
      expect(lcgShare(launch, crew)).toBeGreaterThan(0.38);
      expect(lcgShare(launch, crew)).toBeLessThan(0.46);
    }
  });
});

describe('the engines', () => {
  it('have the power of their class and the metal of their propeller in inches', () => {
    for (const { id, drive, marks } of engines) {
      const inches = (mark: string | undefined) => Number(/^C: ([\d.]+) in/.exec(mark ?? '')?.[1]) * INCH;
      expect(drive.propeller.diameter, id).toBeCloseTo(inches(marks['propeller.diameter']), 4);
      expect(drive.propeller.pitch, id).toBeCloseTo(inches(marks['propeller.pitch']), 4);
      if (drive.kind !== 'petrol') continue;
      const horsepower = Number(/-([\d-]+)hp-/.exec(id)![1]!.replace('-', '.'));
      expect(drive.ratedPower / (horsepower * HORSEPOWER), id).toBeGreaterThan(0.98);
      expect(drive.ratedPower / (horsepower * HORSEPOWER), id).toBeLessThan(1.03);
    }
  });

  it('have carburettors to 15 hp and injection from 20 hp in four-strokes', () => {
    for (const { id, drive } of engines) {
      if (drive.kind !== 'petrol') continue;
      const cycle = id.endsWith('2s') ? '2s-carb' : drive.ratedPower > 12_000 ? '4s-efi' : '4s-carb';
      expect(drive.cycle, id).toBe(cycle);
    }
  });

  it('weigh more and drag more the stronger they are', () => {
    for (const ending of ['4s', '2s', 'kw']) {
      const row = engines.filter(({ id }) => id.endsWith(ending)).map(({ drive }) => drive);
      row.slice(1).forEach((drive, i) => {
        expect(drive.ratedPower).toBeGreaterThan(row[i]!.ratedPower);
        expect(drive.mass).toBeGreaterThanOrEqual(row[i]!.mass);
        expect(drive.legDragArea).toBeGreaterThanOrEqual(row[i]!.legDragArea);
      });
    }
  });
});

describe('the tanks and batteries', () => {
  it('weigh what batteries of their kind weigh', () => {
    const kgPerKwh = { nmc: 7, lfp: 10, agm: 28, 'flooded-lead': 28 };
    for (const { id, store } of stores) {
      if (store.kind !== 'battery') continue;
      for (const { chemistry, energyWh, mass } of store.batteries) {
        expect(mass / (kgPerKwh[chemistry] * (energyWh / 1000)), id).toBeCloseTo(1, 1);
      }
    }
  });

  it('come with a 12 L tank of 10.8 L usable at 95 %', () => {
    const { store } = stores.find(({ id }) => id === 'tank-12')!;
    const [tank] = store.kind === 'tank' ? store.tanks : [];
    expect(0.95 * tank!.capacityL - tank!.unusableL).toBeCloseTo(10.8, 6);
  });
});

describe('craftFrom', () => {
  it('puts a portable tank aft in the hull and leaves a built-in one at the engine', () => {
    const { hull, store } = craftFrom('catamaran-3-6', 'petrol-2-5hp-4s', 'tank-built-in-1-1-can-5');
    const aft = hull.stations.find(({ id }) => id === 'store-aft')!;
    const [builtIn, can] = store.kind === 'tank' ? store.tanks : [];
    expect(builtIn!.at.x).toBe(-0.1);
    expect([can!.at.x, can!.at.z]).toEqual([aft.x, aft.z]);
  });

  it('knows no record that is not there', () => {
    expect(() => craftFrom('catamaran-3-6', 'petrol-15hp-4s', 'tank-7')).toThrow('tank-7');
  });
});
