import { describe, it } from 'vitest';
import { ittc57 } from '../../src/core/hull/friction.ts';
import { deadriseLift, flatLiftFor, flatPlateLift } from '../../src/core/hull/planing-lift.ts';
import { centreOfPressure } from '../../src/core/hull/pressure-centre.ts';
import {
  fullEquilibrium,
  type PlaningHull,
  type PlaningState,
  planingStateAt,
  residualMoment,
  shortFormEquilibrium,
} from '../../src/core/hull/savitsky.ts';
import { type Check, checksOf, expectNear, value } from '../core/hull/hull-checks.ts';

// Our own earlier evaluation of published formulas, in another language, printed to six figures: the two programs agree,
// which says nothing about the formulas. Those are held against publications elsewhere.
const PRINTED = 1e-5;

describe('ittc57', () => {
  for (const { id, inputs, expected } of checksOf('ittc57', 'D')) {
    it(`repeats ${id}`, () => expectNear(ittc57(value(inputs, 'Re')), value(expected, 'CF'), PRINTED));
  }
});

describe('flatPlateLift and centreOfPressure', () => {
  for (const { id, inputs, expected } of checksOf('cl0-')) {
    it(`repeat ${id}`, () => {
      const length = value(inputs, 'lambda_');
      const cv = value(inputs, 'Cv');
      expectNear(flatPlateLift(value(inputs, 'tau_deg'), length, cv), value(expected, 'CL0'), PRINTED);
      expectNear(centreOfPressure(length, cv), value(expected, 'Cp'), PRINTED);
    });
  }
});

describe('deadriseLift', () => {
  for (const { id, inputs, expected } of checksOf('clbeta-').filter((c) => !c.id.includes('inv'))) {
    it(`repeats ${id}`, () => {
      const lift = deadriseLift(value(inputs, 'CL0'), value(inputs, 'beta_deg'));
      expectNear(lift, value(expected, 'CL_beta'), PRINTED);
    });
  }
});

describe('flatLiftFor', () => {
  for (const { id, inputs, expected } of checksOf('clbeta-inv')) {
    it(`repeats ${id}`, () => {
      const lift = flatLiftFor(value(inputs, 'CL_beta'), value(inputs, 'beta_deg'));
      expectNear(lift, value(expected, 'CL0'), PRINTED);
    });
  }
});

function hullOf({ inputs }: Check): PlaningHull {
  return {
    weight: value(inputs, 'W_N'),
    beam: value(inputs, 'b_m'),
    deadriseDeg: value(inputs, 'beta_deg'),
    speed: value(inputs, 'V_mps'),
    lcg: value(inputs, 'LCG_m'),
    roughness: value(inputs, 'dCF'),
    water: { density: value(inputs, 'rho_kgm3'), viscosity: value(inputs, 'nu_m2ps') },
  };
}

function thrustOf({ inputs }: Check) {
  return { vcg: value(inputs, 'VCG_m'), inclinationDeg: value(inputs, 'eps_deg'), arm: value(inputs, 'f_m') };
}

/** Every figure of the check that names a column of the computing table. */
function expectColumns(state: PlaningState, check: Check): void {
  const hull = hullOf(check);
  const columns: Readonly<Record<string, number>> = {
    tau_deg: state.trimDeg,
    Cv: state.speedCoefficient,
    CL_beta: state.liftCoefficient,
    CL0: state.flatLift,
    lambda_: state.wettedLengthRatio,
    Vm_mps: state.meanVelocity,
    Re: (state.meanVelocity * state.wettedLengthRatio * hull.beam) / hull.water.viscosity,
    CF: ittc57((state.meanVelocity * state.wettedLengthRatio * hull.beam) / hull.water.viscosity),
    Df_N: state.frictionalDrag,
    D_N: state.drag,
    Cp: state.centreOfPressure,
    c_m: hull.lcg - state.centreOfPressure * state.wettedLengthRatio * hull.beam,
    P_eff_W: state.drag * hull.speed,
    LK_m: state.keelWetted,
    LC_m: state.chineWetted,
  };
  for (const name of Object.keys(check.expected)) {
    // The lever a comes from the inputs alone; the moment has its own test.
    if (name === 'a_m' || name === 'moment_residual_Nm') continue;
    // The lever c is a small difference of two lengths that were given to six figures.
    if (name === 'c_m') expectNear(columns[name]! - hull.lcg, value(check.expected, name) - hull.lcg, PRINTED, name);
    else expectNear(columns[name]!, value(check.expected, name), PRINTED, name);
  }
}

describe('planingStateAt', () => {
  for (const check of checksOf('savitsky64-example-tau')) {
    it(`repeats the columns and the moment of ${check.id}`, () => {
      const state = planingStateAt(hullOf(check), value(check.inputs, 'tau_deg'));
      expectColumns(state, check);
      const moment = residualMoment(hullOf(check), thrustOf(check), state);
      expectNear(moment, value(check.expected, 'moment_residual_Nm'), 2e-5, 'moment');
    });
  }
});

describe('fullEquilibrium', () => {
  for (const check of checksOf('savitsky64-example-equilibrium')) {
    it(`repeats ${check.id}`, () => expectColumns(fullEquilibrium(hullOf(check), thrustOf(check))!, check));
  }
});

describe('shortFormEquilibrium', () => {
  for (const check of checksOf('short-')) {
    it(`repeats ${check.id}`, () => expectColumns(shortFormEquilibrium(hullOf(check)), check));
  }
});
