import { describe, expect, it } from 'vitest';
import { leverShift } from '../../../src/core/compare/lever-shift.ts';
import {
  fullEquilibrium,
  type PlaningHull,
  shortFormEquilibrium,
  type ThrustLine,
} from '../../../src/core/hull/savitsky.ts';
import { SEA_WATER } from '../../../src/core/units/constants.ts';
import { DEGREE, FOOT, KNOT, POUND } from '../../../src/core/units/convert.ts';

// The worked example of Savitsky 1964, Marine Technology 1(1): 60,000 lb, beam 14 ft, 10 degrees, 40 knots.
const hull: PlaningHull = {
  weight: 60_000 * POUND * 9.80665,
  beam: 14 * FOOT,
  deadriseDeg: 10,
  speed: 40 * KNOT,
  lcg: 29 * FOOT,
  roughness: 0.0004,
  water: SEA_WATER,
};

/** A 3.6 m inflatable on the plane, its outboard 0.6 m below the centre of gravity. */
const small: PlaningHull = { ...hull, weight: 300 * 9.80665, beam: 1.18, deadriseDeg: 12, speed: 8, lcg: 1.2 };

/** The short form's trim with the shift, to first order at its own trim, and the trim of the full balance. */
function trims(
  boat: PlaningHull,
  thrust: ThrustLine,
): { readonly shifted: number; readonly full: number; readonly plain: number } {
  const plain = shortFormEquilibrium(boat);
  const shift = leverShift({
    weight: boat.weight,
    friction: plain.frictionalDrag,
    trimDeg: plain.trimDeg,
    inclinationDeg: thrust.inclinationDeg,
    frictionArm: thrust.vcg - (boat.beam / 4) * Math.tan(boat.deadriseDeg * DEGREE),
    thrustArm: thrust.arm,
  });
  return {
    plain: plain.trimDeg,
    shifted: shortFormEquilibrium({ ...boat, lcg: boat.lcg + shift }).trimDeg,
    full: fullEquilibrium(boat, thrust)!.trimDeg,
  };
}

describe('leverShift', () => {
  it('has the short form trim as the full moment balance of the worked example', () => {
    const { shifted, full } = trims(hull, { vcg: 2 * FOOT, inclinationDeg: 4, arm: 0.5 * FOOT });
    expect(full).toBeCloseTo(2.26, 1);
    expect(Math.abs(shifted - full)).toBeLessThan(0.02);
  });

  it('does the same for a small boat with its thrust far below, trimmed in or out', () => {
    for (const inclinationDeg of [-8, -4, 0, 4, 8]) {
      const { shifted, full, plain } = trims(small, { vcg: 0.45, inclinationDeg, arm: 0.6 });
      expect(full).toBeGreaterThan(plain);
      expect(Math.abs(shifted - full)).toBeLessThan(0.15 * (full - plain));
    }
  });

  it('is nothing for forces through the centre of gravity', () => {
    const none = { weight: 3000, friction: 200, trimDeg: 5, inclinationDeg: 3, frictionArm: 0, thrustArm: 0 };
    expect(leverShift(none)).toBeCloseTo(0, 12);
  });
});
