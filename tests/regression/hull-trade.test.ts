import { describe, expect, it } from 'vitest';
import { froudeVolume } from '../../src/core/hull/froude.ts';
import { regime } from '../../src/core/hull/regime.ts';
import { hullResistance } from '../../src/core/hull/resistance.ts';
import { SEA_WATER } from '../../src/core/units/constants.ts';
import { HORSEPOWER, KMH } from '../../src/core/units/convert.ts';
import { checkOf, value } from '../core/hull/hull-checks.ts';
import { type Boat, CATAMARAN_33, CATAMARAN_40, drag, topSpeed } from '../core/hull/hull-records.ts';

// What the trade says of such boats, without a source. The constants of the method were chosen with these figures in
// view, so they are no evidence for it; they only guard against drifting away.
const cases: readonly [string, string, Boat][] = [
  ['trade-cat40-3ad-15hp', '15 hp carries three adults on the 4.0 m catamaran', CATAMARAN_40],
  ['trade-cat33-1ad-8hp', '8 hp carries one adult on the 3.3 m catamaran', CATAMARAN_33],
  ['trade-cat40-4ad-15hp', '15 hp carries four adults on the 4.0 m catamaran', CATAMARAN_40],
  ['trade-not-planing-3.5hp-3ad', '3.5 hp carries three adults on the 3.3 m catamaran', CATAMARAN_33],
];

describe('top speeds of the trade, used for tuning', () => {
  for (const [id, name, boat] of cases) {
    const { inputs, expected, tolerance } = checkOf(id);
    const wanted = value(expected, 'V_max_kmh');
    const planes = expected.planes === true;
    it(`${name} at about ${wanted} km/h, ${planes ? 'planing' : 'not planing'} (used for tuning)`, () => {
      const setting = { mass: value(inputs, 'mass_kg'), lcg: value(inputs, 'LCG_m') };
      const power = value(inputs, 'power_hp') * HORSEPOWER * value(inputs, 'eta_overall');
      const top = topSpeed(boat, setting, power);
      expect(Math.abs(top / KMH - wanted)).toBeLessThanOrEqual(value(tolerance, 'V_max_kmh_abs'));
      expect(regime(froudeVolume(top, setting.mass, SEA_WATER.density)) === 'planing').toBe(planes);
    });
  }

  it('raises the bow and the drag on the hump when 375 kg sits 20 cm further aft (used for tuning)', () => {
    const { inputs } = checkOf('trade-weight-aft');
    const [mass, speed] = [value(inputs, 'mass_kg'), value(inputs, 'V_mps')];
    const level = { mass, lcg: value(inputs, 'LCG_a_m') };
    const aft = { mass, lcg: value(inputs, 'LCG_b_m') };
    const trim = (setting: typeof aft) =>
      hullResistance(CATAMARAN_40.hull, { ...setting, water: SEA_WATER }, speed).trimDeg;
    expect(trim(aft)).toBeGreaterThan(trim(level));
    expect(drag(CATAMARAN_40, aft, speed)).toBeGreaterThan(drag(CATAMARAN_40, level, speed));
  });
});
