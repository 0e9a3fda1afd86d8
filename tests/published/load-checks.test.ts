import { describe, expect, it } from 'vitest';
import checks from '../../shared/checks/load-checks.json' with { type: 'json' };
import type { DesignCategory } from '../../src/core/craft/shapes.ts';
import { isoCrewMass, isoLoad, isoTankContents } from '../../src/core/load/iso14946.ts';
import { lengthWidthPersons } from '../../src/core/load/length-width.ts';
import { liferaftPersons } from '../../src/core/load/liferaft-sanity.ts';
import { categoryLimits } from '../../src/core/load/plate.ts';
import {
  usMaxLoad,
  usMaxPower,
  usPersons,
  usPersonsMass,
  usPersonsMassBySide,
} from '../../src/core/load/us-capacity.ts';
import { FOOT, HORSEPOWER, INCH, POUND } from '../../src/core/units/convert.ts';
import { told } from './told.ts';

interface Check {
  readonly id: string;
  readonly inputs: Readonly<Record<string, number | string | boolean>>;
  readonly expected: Readonly<Record<string, number | null>>;
  readonly tolerance: Readonly<Record<string, number | boolean>>;
}

/** What a round figure in feet or pounds loses on its way through metres and kilograms. */
const ROUNDING = 1e-9;

function check(id: string): Check {
  return (checks as unknown as Check[]).find((entry) => entry.id === id)!;
}

function number({ inputs }: Check, name: string): number {
  return inputs[name] as number;
}

function holds({ id, expected, tolerance }: Check, name: string, value: number): void {
  told(id, name, expected[name]!, value);
  const allowed = (typeof tolerance[name] === 'number' ? tolerance[name] : 0) + ROUNDING;
  expect(Math.abs(value - expected[name]!), name).toBeLessThanOrEqual(allowed);
}

// US 33 CFR 183.53 and its table; -01 a worked example of a boatbuilding guide, -05 to -07 our arithmetic on the rule.
describe('usMaxPower', () => {
  it.each(['cfr-hp-01', 'cfr-hp-02', 'cfr-hp-03', 'cfr-hp-04', 'cfr-hp-05', 'cfr-hp-06', 'cfr-hp-07'])(
    'meets %s',
    (id) => {
      const entry = check(id);
      const { factor, maxPower } = usMaxPower({
        length: number(entry, 'length_ft') * FOOT,
        transomWidth: number(entry, 'transom_width_ft') * FOOT,
        remoteSteering: entry.inputs.remote_steering as boolean,
        transomHeight: number(entry, 'transom_height_in') * INCH,
        flatBottomHardChine: entry.inputs.flat_bottom_hard_chine as boolean,
      });
      holds(entry, 'factor', factor);
      holds(entry, 'max_hp', maxPower / HORSEPOWER);
    },
  );
});

// US Coast Guard boatbuilder handbook, Safe Loading, on 33 CFR 183.41; 183.43 with our arithmetic.
describe('US persons capacity', () => {
  it.each(['cfr-persons-550', 'cfr-persons-547', 'cfr-persons-546'])('rounds %s to whole persons', (id) => {
    const entry = check(id);
    holds(entry, 'persons', usPersons(number(entry, 'persons_capacity_lb') * POUND));
  });

  it.each(['cfr-heeltest-545', 'cfr-heeltest-328'])('follows from the side test in %s', (id) => {
    const entry = check(id);
    holds(entry, 'persons_capacity_lb', usPersonsMassBySide(number(entry, 'added_weight_lb') * POUND) / POUND);
  });

  it.each([
    ['cfr-manual-500', 'manual'],
    ['cfr-2hp-500', '2hp-or-less'],
  ] as const)('takes its share of the weight capacity in %s', (id, rating) => {
    const entry = check(id);
    const mass = usPersonsMass(number(entry, 'max_weight_capacity_lb') * POUND, rating);
    holds(entry, 'persons_capacity_lb', mass / POUND);
    holds(entry, 'persons', usPersons(mass));
  });
});

// 33 CFR 183.35 and 183.37, both from memory.
describe('usMaxLoad', () => {
  it.each([
    ['cfr-wcap-outboard', 'outboard'],
    ['cfr-wcap-2hp', '2hp-or-less'],
  ] as const)('meets %s', (id, rating) => {
    const entry = check(id);
    const displacement = number(entry, 'max_displacement_lb') * POUND;
    const load = usMaxLoad(displacement, number(entry, 'boat_weight_lb') * POUND, rating);
    holds(entry, 'max_weight_capacity_lb', load / POUND);
  });
});

// A US state boating study guide, and a US boating course.
describe('lengthWidthPersons', () => {
  it.each(['lw15-18x6', 'lw15-12x4'])('meets %s', (id) => {
    const entry = check(id);
    const found = lengthWidthPersons(number(entry, 'length_ft') * FOOT, number(entry, 'width_ft') * FOOT);
    holds(entry, 'persons', found.persons);
    holds(entry, 'total_person_weight_lb', found.mass / POUND);
  });
});

// ISO 14946:2021, clause 5; sums by us.
describe('ISO 14946', () => {
  it('adds up the crew and the rest of the load', () => {
    const entry = check('iso14946-mass');
    const adults = number(entry, 'adults');
    const children = number(entry, 'children');
    holds(entry, 'crew_mass_kg', isoCrewMass(adults, children));
    holds(entry, 'load_kg', isoLoad(adults, children, number(entry, 'other_load_kg')));
  });

  it('counts a portable tank at 95 %', () => {
    const entry = check('tank95-25L');
    const mass = isoTankContents(number(entry, 'tank_L'), number(entry, 'petrol_density_kg_per_L'));
    holds(entry, 'fuel_mass_kg', mass);
  });
});

// US 46 CFR 170.090(d)(1).
describe('POUND', () => {
  it('makes 83.91 kg of the assumed average weight of a person', () => {
    const entry = check('aawpp-185lb');
    holds(entry, 'mass_kg', number(entry, 'mass_lb') * POUND);
  });
});

// Liferaft capacity comparison sheet; arithmetic by us.
describe('liferaftPersons', () => {
  it('takes the lesser of volume and floor', () => {
    const entry = check('liferaft-seats');
    const found = liferaftPersons(number(entry, 'tube_volume_m3'), number(entry, 'floor_area_m2'));
    holds(entry, 'persons_by_volume', found.byVolume);
    holds(entry, 'persons_by_floor', found.byFloor);
    holds(entry, 'persons', found.persons);
  });
});

// Directive 2013/53/EU, Annex I, as restated in an owner's manual and in survey guidance.
describe('categoryLimits', () => {
  it.each(['C', 'D'] as const)('meets category %s', (category) => {
    const entry = check(`category-${category}`);
    const limits = categoryLimits(category);
    holds(entry, 'max_wind_beaufort', limits.maxBeaufort);
    holds(entry, 'max_significant_wave_height_m', limits.maxWave);
    if ('occasional_max_wave_m' in entry.expected) holds(entry, 'occasional_max_wave_m', limits.occasionalWave!);
  });

  it('sets no upper figure for category A, which exceeds what B ends at', () => {
    const { expected } = check('category-A');
    expect(expected.max_wind_beaufort).toBeNull();
    expect(expected.max_significant_wave_height_m).toBeNull();
    expect(categoryLimits('A' satisfies DesignCategory)).toEqual({ maxBeaufort: Infinity, maxWave: Infinity });
    expect(categoryLimits('B').maxBeaufort).toBe(expected.exceeds_wind_beaufort);
    expect(categoryLimits('B').maxWave).toBe(expected.exceeds_significant_wave_height_m);
  });
});
