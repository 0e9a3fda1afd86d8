import { describe, expect, it } from 'vitest';
import type { Plate, Store } from '../../../src/core/craft/shapes.ts';
import { balance, balanceAt, balanceBase } from '../../../src/core/load/balance.ts';
import { aboard, craft } from './made-craft.ts';

const crew = {
  items: [
    aboard('a', 90, { station: 'helm' }),
    aboard('b', 60, { station: 'bow', kind: 'child' }),
    aboard('dog', 20, { station: 'bow', kind: 'dog' }),
    aboard('bag', 30, { at: { x: 1.5, y: 0, z: 0.1 }, kind: 'gear' }),
  ],
};
const battery: Store = {
  kind: 'battery',
  batteries: [
    {
      name: 'Pack',
      chemistry: 'lfp',
      energyWh: 1280,
      voltage: 25.6,
      health: 1,
      mass: 12,
      at: { x: 2.5, y: 0, z: 0.2 },
    },
  ],
};

function counted(scheme: Plate['scheme'], parts: Parameters<typeof craft>[0] = {}): number {
  return balance(craft({ ...parts, plate: { scheme } }), crew, 18).counted;
}

describe('balance', () => {
  it('weighs hull, engine, tanks, fuel, people and gear', () => {
    // 60 hull, 50 engine, 3 empty tank, 200 people and gear, 18 fuel.
    const found = balance(craft(), crew, 18);
    expect(found.allUpMass).toBe(331);
    expect(found.peopleAndGear).toBe(200);
  });

  it('counts adults and children as persons, and their share of the wind', () => {
    const found = balance(craft(), crew, 0);
    expect(found.persons).toBe(2);
    expect(found.airArea).toBeCloseTo(0.6 + 2 * 0.25, 12);
  });

  it('balances moments about each axis, fuel shared over the tanks by capacity', () => {
    const found = balance(craft(), crew, 18);
    const x = 60 * 1.6 - 50 * 0.1 + 3 * 2 + 90 * 0.8 + 80 * 2.2 + 30 * 1.5 + 6 * 2 + 12 * 0.5;
    const y = 3 * -0.2 + 90 * 0.4 + 6 * -0.2 + 12 * 0.1;
    const z = 60 * 0.3 + 50 * 0.5 + 3 * 0.2 + 170 * 0.5 + 30 * 0.1 + 18 * 0.2;
    expect(found.lcg).toBeCloseTo(x / 331, 12);
    expect(found.lcgShare).toBeCloseTo(x / 331 / 3.2, 12);
    expect(found.lateral).toBeCloseTo(y / 331, 12);
    expect(found.vcg).toBeCloseTo(z / 331, 12);
  });

  it('carries a battery where it stands, full or empty', () => {
    const found = balance(craft({ store: battery }), { items: [] }, 0);
    expect(found.allUpMass).toBe(60 + 50 + 12);
    expect(found.lcg).toBeCloseTo((60 * 1.6 - 50 * 0.1 + 12 * 2.5) / 122, 12);
  });

  it('holds people, gear and portable fuel against a European plate', () => {
    // 200 aboard, 3 for the portable tank, a third of the fuel; engine over 3 kW and built-in tank left out.
    expect(counted('eu')).toBe(200 + 3 + 6);
  });

  it('holds an engine of 3 kW or less against a European plate too', () => {
    expect(counted('eu', { ratedPower: 2900 })).toBe(200 + 3 + 6 + 50);
  });

  it('holds engine and all fuel against an American plate, and against one of unknown kind', () => {
    expect(counted('us')).toBe(200 + 3 + 18 + 50);
    expect(counted('unknown')).toBe(counted('us'));
    expect(balance(craft({ plate: 'none' }), crew, 18).counted).toBe(counted('us'));
    expect(balance(craft(), crew, 18).counted).toBe(counted('us'));
  });

  it('holds a battery against either plate', () => {
    expect(counted('eu', { store: battery })).toBe(200 + 12);
    expect(balance(craft({ store: battery, plate: { scheme: 'us' } }), crew, 0).counted).toBe(200 + 12 + 50);
  });
});

describe('balanceAt', () => {
  it('follows the fuel as it burns off', () => {
    const base = balanceBase(craft(), crew);
    for (const fuel of [0, 5, 26]) expect(balanceAt(base, fuel)).toEqual(balance(craft(), crew, fuel));
  });
});
