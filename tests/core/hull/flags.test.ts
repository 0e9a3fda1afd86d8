import { describe, expect, it } from 'vitest';
import type { Hull } from '../../../src/core/craft/shapes.ts';
import { hullFlags } from '../../../src/core/hull/flags.ts';
import { hullResistance } from '../../../src/core/hull/resistance.ts';
import { SEA_WATER } from '../../../src/core/units/constants.ts';
import { CATAMARAN_40, OPEN_BOAT_43 } from './hull-records.ts';

function flags(hull: Hull, mass: number, lcg: number, speed: number) {
  const state = { mass, lcg, water: SEA_WATER };
  return hullFlags(hull, state, hullResistance(hull, state, speed));
}

describe('hullFlags', () => {
  it('has nothing to say about a usual load, from rest to full throttle', () => {
    for (const speed of [0, 1, 2, 4, 6, 8]) expect(flags(CATAMARAN_40.hull, 375, 1.31, speed)).toEqual([]);
  });

  it('flags a bow too high to believe: overloaded and far aft on the hump', () => {
    expect(flags(CATAMARAN_40.hull, 750, 0.75, 5)).toContain('trim-range');
  });

  it('flags a bottom running flatter than the equations know: light, forward and fast', () => {
    expect(flags(OPEN_BOAT_43.hull, 250, 1.6, 12)).toContain('trim-range');
  });

  it('flags weight aft of 0.20 or forward of 0.50 of the wetted length', () => {
    expect(flags(CATAMARAN_40.hull, 375, 0.73, 2)).toEqual(['lcg-range']);
    expect(flags(CATAMARAN_40.hull, 375, 1.86, 2)).toEqual(['lcg-range']);
  });

  it('flags a slender hull that planes on more than four beams of its length', () => {
    const slender = { ...CATAMARAN_40.hull, planingBeam: 0.6 };
    expect(flags(slender, 375, 1.75, 5)).toContain('wetted-length-range');
  });

  it('flags a beam too wide for its speed to count as planing', () => {
    const barge = { ...CATAMARAN_40.hull, planingBeam: 4.5 };
    expect(flags(barge, 150, 1.5, 3.5)).toContain('speed-coefficient-range');
  });

  it('keeps quiet about the planing limits while most of the boat floats', () => {
    expect(flags(CATAMARAN_40.hull, 750, 0.75, 2)).toEqual([]);
  });
});
