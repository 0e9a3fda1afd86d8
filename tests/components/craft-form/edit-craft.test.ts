import { describe, expect, it } from 'vitest';
import {
  type ChosenCraft,
  platePart,
  suits,
  withEngine,
  withFigures,
  withFirst,
  withHull,
  withPlate,
  withStore,
} from '../../../src/components/craft-form/edit-craft.ts';
import { movedTo, placeOf } from '../../../src/components/craft-form/place-store.ts';
import { resizedHull } from '../../../src/components/craft-form/resized-hull.ts';
import { sameFigures } from '../../../src/components/craft-form/same-figures.ts';
import type { Craft } from '../../../src/core/craft/shapes.ts';
import { craftFrom, engines, hulls, stores } from '../../../src/core/files/catalogue.ts';

const [firstHull, otherHull] = hulls;
const petrol = engines.find(({ drive }) => drive.kind === 'petrol')!;
const electric = engines.find(({ drive }) => drive.kind === 'electric')!;
const portable = stores.find(({ store }) => store.kind === 'tank' && store.tanks.every(({ fixed }) => !fixed))!;
const chosen: ChosenCraft = {
  craft: craftFrom(firstHull!.id, petrol.id, portable.id),
  hullId: firstHull!.id,
  engineId: petrol.id,
  storeId: portable.id,
};
const measured: ChosenCraft = {
  ...chosen,
  craft: { ...chosen.craft, calibration: { factors: [], covariance: [], runs: 3 } },
};

describe('another boat', () => {
  it('has a plate that nobody has read yet', () => {
    const read = withPlate(chosen, { scheme: 'eu', maxLoad: 300 });
    expect(read.craft.hull.plate).toEqual({ scheme: 'eu', maxLoad: 300 });
    expect(withHull(read, otherHull!).craft.hull.plate).toBeUndefined();
    expect(withHull(withPlate(chosen, 'none'), otherHull!).craft.hull.plate).toBeUndefined();
  });

  it('never takes the typical plate for its own', () => {
    for (const example of hulls) expect(withHull(chosen, example).craft.hull.plate).toBeUndefined();
  });

  it('carries the tank at the station of the same name', () => {
    const bow = (craft: Craft) => craft.hull.stations.find(({ id }) => id === 'store-bow')!;
    const forward = { ...chosen, craft: { ...chosen.craft, store: movedTo(chosen.craft.store, bow(chosen.craft)) } };
    const moved = withHull(forward, otherHull!).craft;
    expect(placeOf(moved.store)?.x).toBe(bow(moved).x);
  });

  it('is unmeasured, as is one with another engine or propeller', () => {
    expect(withHull(measured, otherHull!).craft.calibration).toBeUndefined();
    expect(withEngine(measured, electric, stores).craft.calibration).toBeUndefined();
    const propeller = { ...measured.craft.drive.propeller, pitch: 0.3 };
    expect(withFigures(measured, { drive: { propeller } }).craft.calibration).toBeUndefined();
  });

  it('stays measured with another tank or its plate read', () => {
    expect(withFirst(measured, { capacityL: 20 }).craft.calibration?.runs).toBe(3);
    expect(withPlate(measured, { scheme: 'us', persons: 4 }).craft.calibration?.runs).toBe(3);
  });
});

describe('another engine', () => {
  it('brings a battery when it is electric and a tank when it burns petrol', () => {
    const quiet = withEngine(chosen, electric, stores);
    expect(quiet.craft.store.kind).toBe('battery');
    expect(stores.find(({ id }) => id === quiet.storeId)?.store.kind).toBe('battery');
    expect(withEngine(quiet, petrol, stores).craft.store.kind).toBe('tank');
  });

  it('keeps the tank when it burns the same', () => {
    const stronger = engines.filter(({ drive }) => drive.kind === 'petrol').at(-1)!;
    expect(withEngine(chosen, stronger, stores).craft.store).toBe(chosen.craft.store);
  });

  it('leaves a craft whose energy suits it, for every engine and store of the catalogue', () => {
    for (const engine of engines) {
      for (const store of stores) {
        const { craft } = withEngine(withStore(chosen, store), engine, stores);
        expect(suits(craft.drive, craft.store)).toBe(true);
      }
    }
  });
});

describe('the plate', () => {
  it('is unread until a figure is typed and again when the last one is taken off', () => {
    const one = withPlate(chosen, platePart(undefined, { persons: 4 }));
    expect(one.craft.hull.plate).toEqual({ scheme: 'unknown', persons: 4 });
    const none = withPlate(one, platePart(one.craft.hull.plate, { persons: undefined }));
    expect(none.craft.hull).not.toHaveProperty('plate');
  });

  it('is read when somebody looked which kind it is', () => {
    expect(withPlate(chosen, platePart(undefined, { scheme: 'us' })).craft.hull.plate).toEqual({ scheme: 'us' });
  });

  it('can be said to be missing, and read after all', () => {
    const none = withPlate(chosen, 'none');
    expect(none.craft.hull.plate).toBe('none');
    expect(platePart(none.craft.hull.plate, { maxLoad: 250 })).toEqual({ scheme: 'unknown', maxLoad: 250 });
  });
});

describe('resizedHull', () => {
  it('is the same hull at its own size', () => {
    for (const { hull } of hulls) {
      const again = resizedHull(hull, { length: hull.length, beam: hull.beam });
      expect(sameFigures(again, hull)).toBe(true);
    }
  });

  it('keeps proportions along with length and across with beam', () => {
    for (const { hull } of hulls) {
      const longer = resizedHull(hull, { length: hull.length * 1.2 });
      expect(longer.wettedLength / longer.length).toBeCloseTo(hull.wettedLength / hull.length, 12);
      expect(longer.planingBeam).toBe(hull.planingBeam);
      const wider = resizedHull(hull, { beam: hull.beam + 0.2 });
      expect(wider.planingBeam / wider.beam).toBeCloseTo(hull.planingBeam / hull.beam, 12);
      expect(wider.tube?.spacing ?? 0).toBeCloseTo(hull.tube ? hull.tube.spacing + 0.2 : 0, 12);
      expect(wider.tube?.diameter).toBe(hull.tube?.diameter);
    }
  });

  it('comes back after a detour through other sizes, as typing digit by digit makes', () => {
    const { hull } = firstHull!;
    const back = resizedHull(resizedHull(resizedHull(hull, { length: 4 }), { length: 2 }), { length: hull.length });
    expect(back.wettedLength).toBeCloseTo(hull.wettedLength, 12);
    expect(back.stations[0]!.x).toBeCloseTo(hull.stations[0]!.x, 12);
  });

  it('takes the tank along with its station', () => {
    const { craft } = withFigures(chosen, { hull: resizedHull(chosen.craft.hull, { length: 4 }) });
    const aft = craft.hull.stations.find(({ id }) => id === 'store-aft');
    expect(placeOf(craft.store)?.x).toBe(aft?.x);
  });
});

describe('sameFigures', () => {
  it('looks at figures, not at the order or absence of fields', () => {
    expect(sameFigures({ a: 1, b: [{ c: 2 }] }, { b: [{ c: 2 }], a: 1, d: undefined })).toBe(true);
    expect(sameFigures({ a: 1 }, { a: 1, b: 2 })).toBe(false);
    expect(sameFigures([1, 2], [1])).toBe(false);
    expect(sameFigures({ a: null }, { a: {} })).toBe(false);
  });
});
