import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { hullResistance } from '../../src/core/hull/resistance.ts';
import { towResistance } from '../../src/core/hull/tow.ts';
import { GRAVITY, SEA_WATER } from '../../src/core/units/constants.ts';
import { BOATS, type Boat, drag, INFLATABLE_29 } from '../core/hull/hull-records.ts';

// The whole range of the method: any of the five boats, 100-750 kg, LCG 0.20-0.48 of wetted length, 0-27 kn.
const RUNS = { seed: 1957, numRuns: 2000 };
const TOP = 13.9;
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const boat = fc.constantFrom(...BOATS);
const mass = between(100, 750);
const share = between(0.2, 0.48);
const speed = between(0.05, TOP);

function hullDrag({ hull }: Boat, kg: number, lcgShare: number, v: number): number {
  return hullResistance(hull, { mass: kg, lcg: lcgShare * hull.wettedLength, water: SEA_WATER }, v).total;
}

/** Change of dR/dV over 0.01 m/s, as a share of weight: s/m. */
function bend(of: Boat, kg: number, lcgShare: number, v: number): number {
  const at = (dv: number) => hullDrag(of, kg, lcgShare, v + dv);
  return Math.abs(at(0.01) - 2 * at(0) + at(-0.01)) / 0.01 / (kg * GRAVITY);
}

describe('hull resistance over the whole range', () => {
  it('is finite and positive, and so is everything that comes with it', () => {
    fc.assert(
      fc.property(boat, mass, share, between(0.001, TOP), ({ hull }, kg, lcgShare, v) => {
        const r = hullResistance(hull, { mass: kg, lcg: lcgShare * hull.wettedLength, water: SEA_WATER }, v);
        for (const figure of Object.values(r)) if (!Number.isFinite(figure) || figure < 0) return false;
        return r.total > 0;
      }),
      RUNS,
    );
  });

  it('is finite for every hull that the door lets in, at any weight and balance', () => {
    const hull = fc
      .record({ wettedLength: between(0.5, 20), slender: between(1, 20), deadriseDeg: between(0, 45) })
      .map(({ wettedLength, slender, deadriseDeg }) => ({
        ...INFLATABLE_29.hull,
        wettedLength,
        planingBeam: Math.max(wettedLength / slender, Math.min(0.2, wettedLength)),
        deadriseDeg,
      }));
    fc.assert(
      fc.property(hull, between(5, 20_000), between(-0.2, 1.2), between(0, 30), (of, kg, lcgShare, v) => {
        const r = hullResistance(of, { mass: kg, lcg: lcgShare * of.wettedLength, water: SEA_WATER }, v);
        return Object.values(r).every(Number.isFinite) && r.total >= 0;
      }),
      RUNS,
    );
  });

  it('bends by less than 0.003 W s/m in 0.01 m/s: no kink anywhere', () => {
    const others = fc.constantFrom(...BOATS.filter((b) => b !== INFLATABLE_29));
    fc.assert(
      fc.property(others, mass, share, speed, (of, kg, lcgShare, v) => bend(of, kg, lcgShare, v) < 0.003),
      { ...RUNS, numRuns: 10000 },
    );
  });

  it('falls short of that on the shortest boat with the weight far aft: 0.0031 W s/m near 1.4 m/s', () => {
    const worst = Math.max(...[1.3, 1.33, 1.37, 1.4].map((v) => bend(INFLATABLE_29, 150, 0.2, v)));
    expect(worst).toBeGreaterThan(0.003);
    fc.assert(
      fc.property(mass, share, speed, (kg, lcgShare, v) => bend(INFLATABLE_29, kg, lcgShare, v) < 0.0032),
      { ...RUNS, numRuns: 10000 },
    );
  });

  it('has no kink at any one speed either: in steps of 1 mm/s the slope never moves by more than a tenth of that', () => {
    for (const of of BOATS) {
      const kg = 6 * of.hull.wettedLength ** 3;
      let [before, now] = [0, hullDrag(of, kg, 0.35, 0.001)];
      let worst = 0;
      for (let step = 2; step < TOP * 1000; step++) {
        const next = hullDrag(of, kg, 0.35, step / 1000);
        worst = Math.max(worst, Math.abs(next - 2 * now + before) / 0.001 / (kg * GRAVITY));
        [before, now] = [now, next];
      }
      expect(worst).toBeGreaterThan(0);
      expect(worst).toBeLessThan(0.0003);
    }
  });
});

describe('what makes drag grow, at any speed and load', () => {
  it('more mass at the same centre of gravity', () => {
    fc.assert(
      fc.property(boat, mass, between(0.5, 200), share, speed, (of, kg, more, lcgShare, v) => {
        return hullDrag(of, kg + more, lcgShare, v) > hullDrag(of, kg, lcgShare, v);
      }),
      RUNS,
    );
  });

  it('more headwind, even when the wind comes from astern', () => {
    fc.assert(
      fc.property(boat, mass, share, speed, between(-15, 15), between(0.1, 5), (of, kg, lcgShare, v, wind, more) => {
        const setting = { mass: kg, lcg: lcgShare * of.hull.wettedLength };
        return drag(of, { ...setting, headwind: wind + more }, v) > drag(of, { ...setting, headwind: wind }, v);
      }),
      RUNS,
    );
  });

  it('a deeper leg', () => {
    fc.assert(
      fc.property(boat, mass, share, speed, between(1e-4, 0.004), (of, kg, lcgShare, v, extraLegArea) => {
        const setting = { mass: kg, lcg: lcgShare * of.hull.wettedLength };
        return drag(of, { ...setting, extraLegArea }, v) > drag(of, setting, v);
      }),
      RUNS,
    );
  });

  it('a tow, and a heavier one more', () => {
    fc.assert(
      fc.property(boat, mass, between(1, 200), share, speed, ({ hull }, kg, more, lcgShare, v) => {
        const pull = (towedMass: number) =>
          towResistance(
            { hull, state: { mass: towedMass, lcg: lcgShare * hull.wettedLength, water: SEA_WATER }, airArea: 0.5 },
            { speed: v, headwind: 0 },
          );
        return pull(kg) > 0 && pull(kg + more) > pull(kg);
      }),
      RUNS,
    );
  });
});

describe('factors from trial runs', () => {
  const factor = between(0.5, 2);

  it('scale resistance in proportion, each its own part', () => {
    fc.assert(
      fc.property(boat, mass, share, speed, factor, factor, between(0, 4), ({ hull }, kg, lcgShare, v, kd, kp, kh) => {
        const state = { mass: kg, lcg: lcgShare * hull.wettedLength, water: SEA_WATER };
        const at = (d: number, p: number, h: number) =>
          hullResistance(hull, state, v, { kd: d, kp: p, kh: h, lcgShift: 0 }).total;
        const apart = at(kd, 0, 0) + at(0, kp, 0) + at(0, 0, kh);
        return Math.abs(at(kd, kp, kh) / apart - 1) < 1e-12;
      }),
      RUNS,
    );
  });

  it('leave the other regime alone: kd within 7 % above volume Froude number 2.5, kp within 7 % below 0.9', () => {
    fc.assert(
      fc.property(boat, mass, share, speed, ({ hull }, kg, lcgShare, v) => {
        const r = hullResistance(hull, { mass: kg, lcg: lcgShare * hull.wettedLength, water: SEA_WATER }, v);
        if (r.froudeVolume > 2.5) return r.displacementPart < 0.07 * r.total;
        if (r.froudeVolume < 0.9) return r.planingPart < 0.07 * r.total;
        return true;
      }),
      RUNS,
    );
  });
});
