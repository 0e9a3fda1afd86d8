import { describe, expect, it } from 'vitest';
import {
  fullEquilibrium,
  type PlaningHull,
  planingStateAt,
  residualMoment,
  shortFormEquilibrium,
} from '../../../src/core/hull/savitsky.ts';
import { GRAVITY, SEA_WATER } from '../../../src/core/units/constants.ts';
import { BOATS, RIB_35 } from './hull-records.ts';

function planing(boat: (typeof BOATS)[number], mass: number, lcgShare: number): PlaningHull {
  const { planingBeam, deadriseDeg, roughness, wettedLength } = boat.hull;
  const lcg = lcgShare * wettedLength;
  return { weight: mass * GRAVITY, beam: planingBeam, deadriseDeg, speed: 8, lcg, roughness, water: SEA_WATER };
}

describe('fullEquilibrium', () => {
  it('leaves no moment over', () => {
    for (const boat of BOATS) {
      const hull = planing(boat, 300, 0.35);
      const thrust = { vcg: 0.4, inclinationDeg: 0, arm: 0.65 };
      const state = fullEquilibrium(hull, thrust)!;
      expect(Math.abs(residualMoment(hull, thrust, state))).toBeLessThan(1e-9 * hull.weight);
    }
  });

  it('is the short form when thrust and friction pass through the centre of gravity', () => {
    const boat = BOATS[2]!;
    const hull = planing(boat, 300, 0.35);
    const vcg = (hull.beam / 4) * Math.tan((hull.deadriseDeg * Math.PI) / 180);
    const full = fullEquilibrium(hull, { vcg, inclinationDeg: 0, arm: 0 })!;
    expect(full.trimDeg).toBeCloseTo(shortFormEquilibrium(hull).trimDeg, 9);
    expect(full.drag).toBeCloseTo(shortFormEquilibrium(hull).drag, 6);
  });

  it('finds no balance for a boat whose weight lies far ahead of any pressure', () => {
    expect(fullEquilibrium(planing(BOATS[0]!, 300, 2), { vcg: 0.4, inclinationDeg: 0, arm: 0 })).toBeUndefined();
  });

  it('finds one between 0.5 and 15 degrees and none beyond, to half a newton metre', () => {
    const hull = planing(BOATS[2]!, 300, 0.35);
    // The moment rises with the height of the centre of gravity as friction does.
    const left = (trimDeg: number, moment: number) => {
      const thrust = { vcg: 0.4, inclinationDeg: 0, arm: 0.65 };
      const at = planingStateAt(hull, trimDeg);
      const vcg = 0.4 + (moment - residualMoment(hull, thrust, at)) / at.frictionalDrag;
      expect(residualMoment(hull, { ...thrust, vcg }, at)).toBeCloseTo(moment, 6);
      return fullEquilibrium(hull, { ...thrust, vcg });
    };
    expect(left(0.5, 0.5)).toBeUndefined();
    expect(left(0.5, -0.5)!.trimDeg).toBeCloseTo(0.5, 1);
    expect(left(15, -0.5)).toBeUndefined();
    expect(left(15, 0.5)!.trimDeg).toBeCloseTo(15, 1);
  });

  const outboard = { vcg: 0.4, inclinationDeg: 0, arm: 0.65 };
  const dragChange = (hull: PlaningHull) => fullEquilibrium(hull, outboard)!.drag / shortFormEquilibrium(hull).drag - 1;

  it('lifts the bow by less than half a degree for the low thrust of an outboard', () => {
    for (const boat of BOATS) {
      const hull = planing(boat, 300, 0.35);
      const more = fullEquilibrium(hull, outboard)!.trimDeg - shortFormEquilibrium(hull).trimDeg;
      expect(more).toBeGreaterThan(0.1);
      expect(more).toBeLessThan(0.5);
    }
  });

  it('moves drag by less than 2 % at 300 kg, which the short form leaves out', () => {
    for (const boat of BOATS) expect(Math.abs(dragChange(planing(boat, 300, 0.35)))).toBeLessThan(0.02);
  });

  it('falls short of that in light boats running flat: 4.6 % less drag on the RIB at 150 kg', () => {
    expect(dragChange(planing(RIB_35, 150, 0.35))).toBeCloseTo(-0.046, 3);
  });
});
