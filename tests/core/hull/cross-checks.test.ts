import { describe, expect, it } from 'vitest';
import { blountFoxFactor, crouchSpeed } from '../../../src/core/hull/cross-checks.ts';
import { humpShare } from '../../../src/core/hull/gates.ts';
import { HORSEPOWER, KMH, MPH, POUND } from '../../../src/core/units/convert.ts';
import { checksOf, expectNear, value } from './hull-checks.ts';

describe('crouchSpeed', () => {
  // Unit checks: the fixture converts its own inputs, which proves the units and nothing about boats.
  for (const { inputs, expected, tolerance } of checksOf('crouch-')) {
    const constant = value(inputs, 'C_mph');
    it(`takes the constant ${constant} for mph, pounds and horsepower`, () => {
      const power = value(inputs, 'power_hp') * HORSEPOWER;
      const speed = crouchSpeed(constant, power, value(inputs, 'weight_lb') * POUND);
      expectNear(speed / MPH, value(expected, 'V_mph'), value(tolerance, 'rel'));
      expectNear(speed / KMH, value(expected, 'V_kmh'), value(tolerance, 'rel'));
    });
  }
});

describe('humpShare', () => {
  it('is a bump of the size Blount and Fox 1976 gave (from memory), within 0.06 from volume Froude number 1.6 to 3', () => {
    for (const fnv of [1.6, 2, 2.5, 3]) {
      expect(Math.abs(humpShare(fnv) - (blountFoxFactor(1.1, fnv) - 1))).toBeLessThan(0.06);
    }
  });
});
