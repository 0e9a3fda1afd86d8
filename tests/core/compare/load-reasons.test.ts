import { describe, expect, it } from 'vitest';
import { atSpeed } from '../../../src/core/compare/at-speed.ts';
import { loadReasons } from '../../../src/core/compare/load-reasons.ts';
import type { Loaded } from '../../../src/core/compare/loaded.ts';
import type { Craft, Plate } from '../../../src/core/craft/shapes.ts';
import type { LoadBalance } from '../../../src/core/load/balance.ts';
import { tubeBuoyancy } from '../../../src/core/trip/floating.ts';
import { SEA_WATER } from '../../../src/core/units/constants.ts';
import { loadedWith } from './boats.ts';

const plated =
  (plate: Partial<Plate> | undefined | 'none') =>
  (craft: Craft): Craft => {
    const { plate: now, ...hull } = craft.hull;
    if (plate === undefined) return { ...craft, hull };
    return { ...craft, hull: { ...hull, plate: plate === 'none' ? plate : { ...(now as Plate), ...plate } } };
  };
const two = loadedWith('catamaran-3-6', 'petrol-15hp-4s', 'tank-25');
const reasons = (loaded: Loaded, speed = 7.5) => loadReasons(loaded, atSpeed(loaded, speed));
const balanced = (change: Partial<LoadBalance>): Loaded => ({ ...two, balance: { ...two.balance, ...change } });
const weighing = (mass: number): Loaded => ({ ...two, afloat: { ...two.afloat, mass } });

it('finds nothing to say of two people in a boat that is made for them', () => {
  expect(reasons(two)).toEqual([]);
});

describe('the plate', () => {
  it('that nobody read, or that is not there, leaves a doubt', () => {
    const of = (plate: 'none' | undefined) =>
      reasons(loadedWith('catamaran-3-6', 'petrol-15hp-4s', 'tank-25', { change: plated(plate) }));
    expect(of(undefined)).toEqual([{ code: 'plate-unknown', level: 'marginal' }]);
    expect(of('none')).toEqual([{ code: 'no-plate', level: 'marginal' }]);
  });

  it('forbids each thing that it names less of, with both figures', () => {
    const change = plated({ maxLoad: 150, persons: 1, maxPower: 10_000, maxEngineMass: 50 });
    const loaded = loadedWith('catamaran-3-6', 'petrol-15hp-4s', 'tank-25', { change });
    const { counted } = loaded.balance;
    expect(reasons(loaded)).toEqual([
      { code: 'over-plate-load', level: 'no-go', measure: 'mass', value: counted, limit: 150 },
      { code: 'over-plate-persons', level: 'no-go', measure: 'count', value: 2, limit: 1 },
      { code: 'over-plate-power', level: 'no-go', measure: 'power', value: 11_200, limit: 10_000 },
      { code: 'over-plate-engine-mass', level: 'no-go', measure: 'mass', value: 51, limit: 50 },
    ]);
  });
});

describe('floating', () => {
  const { diameter, length } = two.craft.hull.tube!;
  const tubes = 2 * Math.PI * (diameter / 2) ** 2 * length * SEA_WATER.density;
  const low = (share: number) => reasons(weighing(share * tubes)).filter(({ code }) => code === 'low-in-water');

  it('is in doubt with more than half of the tubes under water, out with more than four fifths', () => {
    expect(low(0.499)).toEqual([]);
    expect(low(0.501)).toEqual([
      { code: 'low-in-water', level: 'marginal', measure: 'share', value: expect.closeTo(0.501, 9), limit: 0.5 },
    ]);
    expect(low(0.799)[0]!.level).toBe('marginal');
    expect(low(0.801)).toEqual([
      { code: 'low-in-water', level: 'no-go', measure: 'share', value: expect.closeTo(0.801, 9), limit: 0.8 },
    ]);
  });

  it('of a boat heavier than the method was made for is outside it, not too low', () => {
    const launch = loadedWith('launch-4-9', 'petrol-6hp-4s', 'tank-12');
    const heavy = (mass: number): Loaded => ({ ...launch, afloat: { ...launch.afloat, mass } });
    const marginal = (mass: number) => reasons(heavy(mass), 2).filter(({ level }) => level === 'marginal');
    expect(marginal(900)).toEqual([]);
    expect(marginal(901)).toEqual([
      { code: 'outside-method', level: 'marginal', measure: 'mass', value: 901, limit: 900 },
    ]);
    // Tubes that carry more than 1800 kg: half of them is no end yet.
    const hull = { ...two.craft.hull, tube: { diameter: 0.6, spacing: 1.3, length: 4 } };
    const big = { ...weighing(1000), craft: { ...two.craft, hull } };
    expect(reasons(big).map(({ code, level }) => [code, level])).toContainEqual(['outside-method', 'marginal']);
    expect(reasons(big).map(({ code }) => code)).not.toContain('low-in-water');
    const half = 0.5 * tubeBuoyancy({ trip: { craft: big.craft }, density: SEA_WATER.density })!;
    const just = { ...big, afloat: { ...big.afloat, mass: half } };
    expect(half).toBeGreaterThan(900);
    expect(reasons(just).map(({ code }) => code)).not.toContain('low-in-water');
  });
});

describe('balance', () => {
  const { beam } = two.craft.hull;

  it('sideways is in doubt beyond a tenth of the beam and out beyond a fifth, to either side', () => {
    for (const side of [-1, 1]) {
      expect(reasons(balanced({ lateral: side * 0.099 * beam }))).toEqual([]);
      const off = (share: number, level: string) =>
        expect(reasons(balanced({ lateral: side * share * beam }))).toEqual([
          { code: 'off-balance', level, measure: 'length', value: side * share * beam, limit: 0.1 * beam },
        ]);
      off(0.101, 'marginal');
      off(0.199, 'marginal');
      off(0.201, 'no-go');
    }
  });

  it('sideways is fine at just a tenth, and no more than in doubt at just a fifth', () => {
    const wide = (lateral: number): Loaded => {
      const off = balanced({ lateral });
      return { ...off, craft: { ...off.craft, hull: { ...off.craft.hull, beam: 2 } } };
    };
    expect(reasons(wide(0.2))).toEqual([]);
    expect(reasons(wide(0.4)).map(({ level }) => level)).toEqual(['marginal']);
  });

  it('lengthwise is in doubt before a fifth and behind a half of the wetted length', () => {
    for (const fine of [0.2, 0.35, 0.5]) expect(reasons(balanced({ lcgShare: fine }))).toEqual([]);
    for (const [share, limit] of [
      [0.19, 0.2],
      [0.51, 0.5],
    ] as const) {
      expect(reasons(balanced({ lcgShare: share }))).toEqual([
        { code: 'overtrimmed', level: 'marginal', measure: 'share', value: share, limit },
      ]);
    }
  });
});

describe('the method', () => {
  it('is left where the planing equations end at the cruising speed; a balance outside is said as such alone', () => {
    const note = { code: 'outside-method', level: 'note' };
    // Bow down by a centre of gravity far forward, fast: below two degrees of trim.
    const flat: Loaded = { ...two, afloat: { ...two.afloat, lcg: 0.49 * two.craft.hull.wettedLength, mass: 200 } };
    expect(atSpeed(flat, 13).steady.hull.shortFormTrimDeg).toBeLessThan(2);
    expect(reasons(flat, 13)).toEqual([note]);
    expect(reasons(flat, 2)).toEqual([]);
    const forward: Loaded = { ...two, afloat: { ...two.afloat, lcg: 0.51 * two.craft.hull.wettedLength } };
    expect(reasons(forward, 2)).toEqual([]);
  });
});
