import { describe, expect, it } from 'vitest';
import { carriedTo, firstSetups, setupFrom, storesFor } from '../../../src/components/load-table/setups.ts';
import { legDepth } from '../../../src/core/compare/shaft.ts';
import { goTogether } from '../../../src/core/compare/suit-pairs.ts';
import { engines, hulls } from '../../../src/core/files/catalogue.ts';

describe('engines to compare', () => {
  it('begin with three whose shafts, tanks and batteries fit, on every shipped hull', () => {
    for (const { hull } of hulls) {
      const setups = firstSetups(hull);
      expect(setups).toHaveLength(3);
      for (const { drive, store } of setups) {
        expect(legDepth(hull, drive)).toBe(0);
        expect(goTogether(drive, store)).toBe(true);
      }
    }
  });

  it('find a tank or battery for any engine', () => {
    for (const { id, drive } of engines) {
      const setup = setupFrom('e1', hulls[0]!.hull, id, 'none such');
      expect(goTogether(drive, setup.store)).toBe(true);
      expect(storesFor(drive).length).toBeGreaterThan(0);
    }
  });

  it('come along to another hull with its shaft, and keep a pitch of one’s own', () => {
    const [low, high] = ['catamaran-3-6', 'rib-4-7'].map((id) => hulls.find((record) => record.id === id)!.hull);
    const setup = setupFrom('e1', low!, 'petrol-25hp-4s', 'tank-25');
    const own = { ...setup, drive: { ...setup.drive, propeller: { ...setup.drive.propeller, pitch: 0.25 } } };
    const carried = carriedTo(high!, own);
    expect(carried.drive.shaft).toBe('long');
    expect(carried.drive.propeller.pitch).toBe(0.25);
    const { x } = high!.stations.find(({ id }) => id === 'store-aft')!;
    expect(carried.store.kind === 'tank' && carried.store.tanks[0]!.at.x).toBe(x);
  });
});
