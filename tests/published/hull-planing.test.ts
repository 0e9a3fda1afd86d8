import { describe, expect, it } from 'vitest';
import { deadriseBottomVelocity } from '../../src/core/hull/bottom-velocity.ts';
import { ittc57 } from '../../src/core/hull/friction.ts';
import { deadriseLift, flatPlateLift } from '../../src/core/hull/planing-lift.ts';
import { centreOfPressure } from '../../src/core/hull/pressure-centre.ts';
import { fullEquilibrium, type PlaningHull, planingStateAt, type ThrustLine } from '../../src/core/hull/savitsky.ts';
import { GRAVITY } from '../../src/core/units/constants.ts';
import { FOOT, INCH, KNOT, POUND } from '../../src/core/units/convert.ts';
import { checkOf, checksOf, expectNear, value } from '../core/hull/hull-checks.ts';
import { told } from './told.ts';

describe('ittc57', () => {
  // Introduction to Naval Architecture, table 8.3: the ITTC 1957 line.
  for (const check of checksOf('ittc57', 'P')) {
    it(`gives the textbook friction coefficient at Reynolds number ${value(check.inputs, 'Re').toExponential()}`, () => {
      told(check.id, 'CF', value(check.expected, 'CF'), ittc57(value(check.inputs, 'Re')));
      expectNear(ittc57(value(check.inputs, 'Re')), value(check.expected, 'CF'), value(check.tolerance, 'rel'));
    });
  }

  it('agrees with the table as printed at 1e8, 0.002085', () => {
    expectNear(ittc57(1e8), 0.002085, 0.001);
  });
});

// Worked example of Savitsky 1964, Hydrodynamic Design of Planing Hulls, Marine Technology 1(1): 60,000 lb, beam 14 ft,
// deadrise 10 deg, 40 kn. Density 1.94 slug/ft3 and viscosity 1.28e-5 ft2/s.
const SLUG = (POUND * GRAVITY) / FOOT;
const EXAMPLE: PlaningHull = {
  weight: 60000 * POUND * GRAVITY,
  beam: 14 * FOOT,
  deadriseDeg: 10,
  speed: 40 * KNOT,
  lcg: 29 * FOOT,
  roughness: 0.0004,
  water: { density: (1.94 * SLUG) / FOOT ** 3, viscosity: 1.28e-5 * FOOT ** 2 },
};
const THRUST: ThrustLine = { vcg: 2 * FOOT, inclinationDeg: 4, arm: 6 * INCH };

describe('planingStateAt', () => {
  it('gives the friction of row 10 of the worked table, 7,340 lb at 2 degrees (as quoted in a forum thread on the paper)', () => {
    const check = checkOf('savitsky64-example-Df-published');
    const state = planingStateAt(EXAMPLE, value(check.inputs, 'tau_deg'));
    told(check.id, 'Df_lb', value(check.expected, 'Df_lb'), state.frictionalDrag / (POUND * GRAVITY));
    expectNear(state.frictionalDrag / (POUND * GRAVITY), value(check.expected, 'Df_lb'), 0.0005);
  });
});

describe('fullEquilibrium', () => {
  it("settles near the 2.3 degrees of the paper's own graph (from memory)", () => {
    expect(Math.abs(fullEquilibrium(EXAMPLE, THRUST)!.trimDeg - 2.3)).toBeLessThan(0.05);
  });

  it('settles near 2.2 degrees for the same boat in metres: 27 t, beam 4.27 m, 20.58 m/s (Faltinsen 2005, from memory)', () => {
    const metric = { ...EXAMPLE, weight: 27000 * GRAVITY, beam: 4.27, speed: 20.58 };
    expect(Math.abs(fullEquilibrium(metric, THRUST)!.trimDeg - 2.2)).toBeLessThan(0.1);
  });
});

describe('a hull of the 1976 procedures, printed by the open library openplaning in its README', () => {
  const { inputs, expected, tolerance } = checkOf('savitsky76-example-state');
  const beam = value(inputs, 'b_m');
  const speed = value(inputs, 'V_mps');
  const trimDeg = value(inputs, 'tau_deg');
  const length = value(inputs, 'lambda_');
  const deadriseDeg = value(inputs, 'beta_deg');
  // The library takes gravity as 9.8066.
  const cv = speed / Math.sqrt(value(inputs, 'g_mps2') * beam);
  const near = (actual: number, name: string) => {
    told('savitsky76-example-state', name, value(expected, name), actual);
    expectNear(actual, value(expected, name), value(tolerance, 'rel'), name);
  };

  it('runs at the same speed coefficient', () => near(cv, 'Cv'));

  it('is lifted by the same force', () => {
    const pressure = 0.5 * value(inputs, 'rho_kgm3') * speed * speed * beam * beam;
    near(pressure * deadriseLift(flatPlateLift(trimDeg, length, cv), deadriseDeg), 'Fz_lift_N');
  });

  it('has the same mean bottom velocity and Reynolds number', () => {
    const mean = speed * deadriseBottomVelocity(trimDeg, length, deadriseDeg);
    near(mean, 'Vm_mps');
    near((mean * length * beam) / value(inputs, 'nu_m2ps'), 'Re');
  });

  it('has its centre of pressure at the same distance from the transom', () => {
    near(centreOfPressure(length, cv) * length * beam, 'lp_m');
  });
});
