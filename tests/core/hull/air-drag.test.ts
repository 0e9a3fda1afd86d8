import { describe, expect, it } from 'vitest';
import { airDrag } from '../../../src/core/hull/air-drag.ts';
import { checksOf, expectNear, value } from './hull-checks.ts';

describe('airDrag', () => {
  for (const { inputs, expected, tolerance } of checksOf('air-')) {
    const headwind = value(inputs, 'headwind_mps');
    it(`is half rho Cd A times the apparent wind squared, by definition: headwind ${headwind} m/s`, () => {
      const drag = airDrag(value(inputs, 'A_air_m2'), value(inputs, 'Cd_air'), {
        speed: value(inputs, 'V_mps'),
        headwind,
      });
      expectNear(drag, value(expected, 'R_air_N'), value(tolerance, 'rel'));
    });
  }

  it('pushes the boat along when the tail wind is the faster of the two', () => {
    expect(airDrag(0.9, 0.9, { speed: 2, headwind: -8 })).toBe(-airDrag(0.9, 0.9, { speed: 2, headwind: 4 }));
  });

  it('vanishes when boat and wind travel together', () => {
    expect(airDrag(0.9, 0.9, { speed: 5, headwind: -5 })).toBeCloseTo(0, 12);
  });
});
