import { describe, it } from 'vitest';
import { blountFoxFactor, wymanSpeed } from '../../src/core/hull/cross-checks.ts';
import { celanoLimitDeg, chartLimitDeg } from '../../src/core/hull/porpoising.ts';
import { HORSEPOWER, KMH, POUND } from '../../src/core/units/convert.ts';
import { checkOf, checksOf, expectNear, value } from '../core/hull/hull-checks.ts';
import { told } from './told.ts';

describe('chartLimitDeg', () => {
  it('gives the limit that the open library openplaning reads off the Savitsky 1964 porpoising chart', () => {
    const { inputs, expected, tolerance } = checkOf('porpoise-chart-fit');
    const limit = chartLimitDeg(value(inputs, 'beta_deg'), value(inputs, 'CL'));
    told('porpoise-chart-fit', 'tau_crit_deg', value(expected, 'tau_crit_deg'), limit);
    expectNear(limit, value(expected, 'tau_crit_deg'), value(tolerance, 'rel'));
  });
});

describe('celanoLimitDeg', () => {
  it('gives the inception trim of Celano 1998 (formula from memory)', () => {
    const { inputs, expected, tolerance } = checkOf('celano');
    const limit = celanoLimitDeg(value(inputs, 'beta_deg'), value(inputs, 'CL'));
    told('celano', 'tau_crit_deg', value(expected, 'tau_crit_deg'), limit);
    expectNear(limit, value(expected, 'tau_crit_deg'), value(tolerance, 'rel'));
  });
});

describe('blountFoxFactor', () => {
  for (const { id, inputs, expected, tolerance } of checksOf('blount-fox')) {
    it(`gives the factor of Blount and Fox 1976 at volume Froude number ${value(inputs, 'FnV')} (formula from memory)`, () => {
      const factor = blountFoxFactor(value(inputs, 'LCG_over_b'), value(inputs, 'FnV'));
      told(id, 'M', value(expected, 'M'), factor);
      expectNear(factor, value(expected, 'M'), value(tolerance, 'rel'));
    });
  }
});

describe('wymanSpeed', () => {
  it('gives 24 km/h for 860 lb and 15 hp on 3.7 m of waterline (formula from memory, unverified)', () => {
    expectNear(wymanSpeed(15 * HORSEPOWER, 860 * POUND, 3.7) / KMH, 24, 0.01);
  });
});
