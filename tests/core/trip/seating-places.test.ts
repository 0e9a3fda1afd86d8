import { describe, expect, it } from 'vitest';
import type { Hull, Station } from '../../../src/core/craft/shapes.ts';
import { movables, type Purpose } from '../../../src/core/trip/seating-places.ts';
import { PETROL_DENSITY } from '../../../src/core/units/constants.ts';
import { aboard, craft, hull, twoTanks } from '../load/made-craft.ts';

const floor: Station = { id: 'floor', label: 'Floor', use: 'gear', x: 1.2, y: 0 };
const shelf: Station = { id: 'shelf', label: 'Tank shelf', use: 'store', x: 0.3, y: 0 };
const ids = (stations: readonly Station[]) => stations.map(({ id }) => id);

function boat(more: readonly Station[], store = twoTanks) {
  const made: Hull = { ...hull(), stations: [...hull().stations, ...more] };
  return { ...craft({ store }), hull: made };
}

const load = {
  items: [
    aboard('skipper', 80, { kind: 'adult', helm: true, station: 'helm' }),
    aboard('child', 30, { kind: 'child', station: undefined, at: { x: 1, y: 0.2 } }),
    aboard('bag', 12, { kind: 'gear', station: 'floor' }),
  ],
};

describe('who and what may be placed elsewhere', () => {
  it('are people onto seats, each alone, the helm onto its own, and gear onto the floor', () => {
    const [skipper, child, bag] = movables(boat([floor]), load, 0.5, 'planing');
    expect(skipper).toMatchObject({ mass: 80, alone: true, now: { id: 'helm' } });
    expect(ids(skipper!.places)).toEqual(['helm']);
    expect(child).toMatchObject({ mass: 30, alone: true, now: { x: 1, y: 0.2 } });
    expect(ids(child!.places)).toEqual(['helm', 'aft', 'bow']);
    expect(bag).toMatchObject({ mass: 12, alone: false, now: { id: 'floor' } });
    expect(ids(bag!.places)).toEqual(['floor']);
  });

  it('are not gear where there is no floor for it, nor tanks where there is no place for one', () => {
    expect(movables(boat([]), load, 0.5, 'planing').map(({ mass }) => mass)).toEqual([80, 30]);
  });

  it('are portable tanks with what is in them, not built-in ones', () => {
    const moved = movables(boat([shelf]), { items: [] }, 0.5, 'planing');
    expect(moved).toEqual([
      {
        who: { store: 0 },
        mass: 3 + 6 * PETROL_DENSITY,
        alone: false,
        places: [shelf],
        now: { x: 2, y: -0.2, z: 0.2 },
      },
    ]);
  });

  it('are all batteries', () => {
    const battery = { name: 'B', chemistry: 'lfp', energyWh: 1000, voltage: 24, health: 1 } as const;
    const at = [
      { x: 0.5, y: 0, z: 0.1 },
      { x: 0.9, y: 0, z: 0.1 },
    ] as const;
    const batteries = [
      { ...battery, mass: 11, at: at[0] },
      { ...battery, mass: 13, at: at[1] },
    ];
    expect(movables(boat([shelf], { kind: 'battery', batteries }), { items: [] }, 0.5, 'range')).toEqual([
      { who: { store: 0 }, mass: 11, alone: false, places: [shelf], now: at[0] },
      { who: { store: 1 }, mass: 13, alone: false, places: [shelf], now: at[1] },
    ]);
  });
});

describe('where the helm may sit', () => {
  const helm = { items: [load.items[0]!] };
  const seats = (made: Hull, purpose: Purpose) =>
    ids(movables({ ...craft(), hull: made }, helm, 0.5, purpose)[0]!.places);

  it('is its own seat, with a tiller extension any within reach of the kill cord', () => {
    expect(seats(hull(), 'level')).toEqual(['helm']);
    expect(seats(hull(), 'tiller')).toEqual(['helm', 'aft']);
  });

  it('is any seat within reach where none is marked as the helm', () => {
    const stations = hull().stations.map((one) => (one.use === 'helm' ? { ...one, use: 'seat' as const } : one));
    expect(seats({ ...hull(), stations }, 'level')).toEqual(['helm', 'aft']);
  });
});
