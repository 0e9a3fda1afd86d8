import { describe, expect, it } from 'vitest';
import checks from '../../shared/checks/load-checks.json' with { type: 'json' };
import {
  type Afloat,
  type Tubes,
  tubesAtRest,
  tubesHeeled,
  tubesTrimmed,
} from '../../src/core/load/tube-hydrostatics.ts';
import { segmentAt } from '../../src/core/load/tube-segment.ts';

interface Check {
  readonly id: string;
  readonly inputs: Readonly<Record<string, number>>;
  readonly expected: Readonly<Record<string, number>>;
  readonly tolerance: Readonly<Record<string, number>>;
}

function check(id: string): Check {
  return (checks as unknown as Check[]).find((entry) => entry.id === id)!;
}

function holds({ expected, tolerance }: Check, name: string, value: number): void {
  expect(Math.abs(value - expected[name]!), name).toBeLessThanOrEqual(tolerance[name]!);
}

function boat({ inputs }: Check): [Tubes, Afloat] {
  return [
    {
      diameter: inputs.tube_diameter_m!,
      length: inputs.effective_tube_length_m!,
      spacing: inputs.centre_spacing_m!,
    },
    { mass: inputs.total_mass_kg!, centreHeight: inputs.kg_height_m!, density: inputs.water_density_kg_per_m3! },
  ];
}

// Figures of our own prototype of two-cylinder hydrostatics; an independent integration checks them beside the core.
describe('tubesAtRest', () => {
  it.each(['hydro-tender-22', 'hydro-cat-30', 'hydro-cat-34'])('still gives %s', (id) => {
    const entry = check(id);
    const rest = tubesAtRest(...boat(entry))!;
    holds(entry, 'draft_m', rest.draft);
    holds(entry, 'freeboard_m', rest.freeboard);
    holds(entry, 'waterplane_m2', rest.waterplane);
    holds(entry, 'sinkage_kg_per_cm', rest.massPerMetre / 100);
    holds(entry, 'kb_m', rest.centreOfBuoyancy);
    holds(entry, 'gm_t_m', rest.metacentricHeight);
    holds(entry, 'gm_l_m', rest.longitudinalMetacentricHeight);
    holds(entry, 'immersed_fraction', rest.immersed);
  });

  it('still carries rho L pi r^2 half immersed', () => {
    const entry = check('hydro-half');
    const { tube_diameter_m, effective_tube_length_m, water_density_kg_per_m3, draft_m } = entry.inputs;
    const { area, breadth } = segmentAt(tube_diameter_m!, draft_m!);
    holds(entry, 'total_mass_kg', 2 * water_density_kg_per_m3! * effective_tube_length_m! * area);
    holds(entry, 'waterline_breadth_per_tube_m', breadth);
  });
});

describe('tubesHeeled', () => {
  it.each(['heel-cat-30', 'heel-crowd-34'])('still gives %s', (id) => {
    const entry = check(id);
    const heeled = tubesHeeled(...boat(entry), entry.inputs.moved_mass_kg! * entry.inputs.offset_m!);
    if (heeled.state !== 'afloat') throw new Error(`${id} should stay afloat`);
    holds(entry, 'loaded_tube_mass_kg', heeled.loadedMass);
    holds(entry, 'light_tube_mass_kg', heeled.lightMass);
    holds(entry, 'loaded_tube_freeboard_m', heeled.loadedFreeboard);
    holds(entry, 'heel_deg_tubes', heeled.heelDeg);
    holds(entry, 'heel_deg_small_angle', heeled.smallAngleDeg);
  });
});

describe('tubesTrimmed', () => {
  it.each(['trim-cat-30', 'trim-cat-34'])('still gives %s', (id) => {
    const entry = check(id);
    const trimmed = tubesTrimmed(...boat(entry), entry.inputs.moment_forward_kgm!)!;
    holds(entry, 'trim_deg', trimmed.trimDeg);
    holds(entry, 'trim_m_over_length', trimmed.trimOverLength);
  });
});
