import { describe, expect, it } from 'vitest';
import { froudeVolume } from '../../src/core/hull/froude.ts';
import { regime } from '../../src/core/hull/regime.ts';
import { SEA_WATER } from '../../src/core/units/constants.ts';
import { HORSEPOWER } from '../../src/core/units/convert.ts';
import { checkOf, value } from '../core/hull/hull-checks.ts';
import { type Boat, CATAMARAN_40, hullOf, INFLATABLE_29, topSpeed } from '../core/hull/hull-records.ts';

// Opinions, not measurements: a dealer's article on outboards for a 3.4 m inflatable, and a builder's trial report. They
// give power and crew; all else is assumed, alike for all. Adult 85 kg, child 35 kg, fuel and gear 15 to 20 kg. LCG at
// 36 % of wetted length, the mean of the method's own crews of two to four. Constant overall efficiency 0.45 at 8 hp
// rising to 0.50 at 15 hp. "Planes" means that full throttle reaches the planing regime. The answer hangs on what is
// assumed: with LCG at 45 % and efficiency 0.50 all four plane, with 30 % and 0.40 none does.
const LCG_SHARE = 0.36;

/** The 2.9 m flat-floor inflatable drawn out to 3.4 m; planing beam 0.65 of the beam. */
const INFLATABLE_34: Boat = {
  hull: hullOf({
    ...INFLATABLE_29.hull,
    name: 'flat-floor inflatable 3.4 m',
    length: 3.4,
    beam: 1.65,
    wettedLength: 3.05,
    planingBeam: 1.07,
  }),
  legDragArea: 0.0018,
};

/** The inflatable catamaran's lines, rigid: smooth skin, no arcs of tube to wet; planing beam 0.64 of the beam. */
const PLY_CATAMARAN_36: Boat = {
  hull: hullOf({
    ...CATAMARAN_40.hull,
    name: 'rigid catamaran 3.6 m',
    length: 3.6,
    beam: 1.7,
    wettedLength: 3.4,
    planingBeam: 1.09,
    planingSurfaceFactor: 1,
    roughness: 0.0004,
  }),
  legDragArea: 0.0018,
};

function topFroude(id: string, boat: Boat, mass: number): number {
  const hp = value(checkOf(id).inputs, 'power_hp');
  const efficiency = 0.45 + (0.05 * (hp - 8)) / 7;
  const setting = { mass, lcg: LCG_SHARE * boat.hull.wettedLength };
  return froudeVolume(topSpeed(boat, setting, efficiency * hp * HORSEPOWER), mass, SEA_WATER.density);
}

describe('opinions on what planes', () => {
  it('agrees that 8 hp planes one adult and two children on a 3.4 m inflatable, only just', () => {
    expect(regime(topFroude('anecdote-8hp-34m', INFLATABLE_34, 55 + 37 + 15 + 85 + 70))).toBe('planing');
  });

  it('agrees that 10 hp planes two adults on it', () => {
    expect(regime(topFroude('anecdote-10hp-34m', INFLATABLE_34, 55 + 40 + 15 + 170))).toBe('planing');
  });

  it('falls short of the opinion that 15 hp planes four adults on it: 463 kg stays on the hump, at volume Froude number 1.74', () => {
    const top = topFroude('anecdote-15hp-34m', INFLATABLE_34, 55 + 50 + 18 + 340);
    expect(regime(top)).toBe('hump');
    expect(top).toBeCloseTo(1.74, 2);
  });

  it('falls short of the report that 9.9 hp planed two adults and two children easily on a 3.6 m plywood catamaran, and stops at 1.77', () => {
    const top = topFroude('anecdote-ply-cat-36', PLY_CATAMARAN_36, 80 + 40 + 20 + 170 + 70);
    expect(regime(top)).toBe('hump');
    expect(top).toBeCloseTo(1.77, 2);
  });
});
