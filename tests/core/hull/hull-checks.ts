import { expect } from 'vitest';
import checks from '../../../shared/checks/hull-checks.json' with { type: 'json' };
import type { Hull } from '../../../src/core/craft/shapes.ts';
import { type Boat, hullOf, type Setting } from './hull-records.ts';

type Values = Readonly<Record<string, number | string | boolean | undefined>>;

/** One check of the fixture: where it comes from, what goes in, what should come out. */
export interface Check {
  readonly id: string;
  readonly source: string;
  /** P published and read, M memory, C practice, D our own evaluation. */
  readonly provenance: string;
  readonly inputs: Values;
  readonly expected: Values;
  readonly tolerance: Values;
}

const all: readonly Check[] = checks;

/** Checks whose id starts so, optionally of one provenance only. */
export function checksOf(prefix: string, provenance?: string): readonly Check[] {
  const found = all.filter((c) => c.id.startsWith(prefix) && (provenance === undefined || c.provenance === provenance));
  if (found.length === 0) throw new Error(`no hull check starts with ${prefix}`);
  return found;
}

export function checkOf(id: string): Check {
  const found = all.find((c) => c.id === id);
  if (!found) throw new Error(`no hull check called ${id}`);
  return found;
}

/** A number of a check; a misspelt name fails the test instead of comparing with nothing. */
export function value(values: Values, name: string): number {
  const found = values[name];
  if (typeof found !== 'number') throw new Error(`${name} is not a number`);
  return found;
}

export function expectNear(actual: number, expected: number, relative: number, what = 'value'): void {
  const off = Math.abs(actual - expected) / Math.abs(expected);
  expect(off, `${what}: ${actual} against ${expected}`).toBeLessThanOrEqual(relative);
}

/** Boat and setting written out in a check of the whole method. */
export function boatOf({ inputs }: Check): { boat: Boat; setting: Setting; speed: number } {
  const read = (name: string) => value(inputs, name);
  const hull: Hull = {
    ...hullOf({
      name: 'written out in the check',
      form: 'rib',
      length: read('L_m'),
      beam: read('b_eff_m'),
      wettedLength: read('L_m'),
      planingBeam: read('b_eff_m'),
      deadriseDeg: read('beta_eff_deg'),
      wettedSurfaceCoefficient: read('cS'),
      formFactor: read('form_k'),
      planingSurfaceFactor: read('kS'),
      roughness: read('dCF'),
      airArea: read('A_air_m2'),
    }),
    airDragCoefficient: read('Cd_air'),
  };
  return {
    boat: { hull, legDragArea: read('CdA_leg_m2') },
    setting: {
      mass: read('mass_kg'),
      lcg: read('LCG_m'),
      headwind: read('headwind_mps'),
      extraLegArea: read('CdA_extra_m2'),
      water: { density: read('rho_kgm3'), viscosity: read('nu_m2ps') },
    },
    speed: read('V_mps'),
  };
}
