import { describe, expect, it } from 'vitest';
import { batteryBank, storeFlow, usableCharge } from '../../src/core/drive/battery.ts';
import { CHEMISTRIES, coldFactor } from '../../src/core/drive/battery-chemistry.ts';
import { peukertTime, peukertTimeFromOneAmpere } from '../../src/core/drive/battery-rate.ts';
import { driveModel, drivePoint } from '../../src/core/drive/demand.ts';
import { SEA_WATER } from '../../src/core/units/constants.ts';
import { HOUR, KNOT } from '../../src/core/units/convert.ts';
import { check } from '../core/drive/checks.ts';
import { battery, electricDrive } from '../core/drive/drives.ts';
import { told } from './told.ts';

describe("Peukert's law", () => {
  it("empties a 120 Ah battery in 0.3 h at 120 A (tutoring article 'Battery output vs discharge rate')", () => {
    const { inputs, expected, tolerance } = check('peukert-01');
    const time = peukertTime({
      capacityAh: inputs.capacity_Ah!,
      ratedTime: inputs.rated_time_h! * HOUR,
      current: inputs.current_A!,
      exponent: inputs.exponent!,
    });
    told('peukert-01', 'time_h', expected.time_h!, time / HOUR);
    expect(Math.abs(time / HOUR - expected.time_h!)).toBeLessThan(tolerance.abs_h!);
  });

  it('in its one-ampere form gives the time of a physics tutorial', () => {
    const { inputs, expected, tolerance } = check('peukert-02');
    const current = inputs.current_A!;
    const time = peukertTimeFromOneAmpere(inputs.capacity_at_1A_Ah!, current, inputs.exponent!) / HOUR;
    told('peukert-02', 'time_h', expected.time_h!, time);
    told('peukert-02', 'delivered_Ah', expected.delivered_Ah!, time * current);
    expect(Math.abs(time / expected.time_h! - 1)).toBeLessThan(tolerance.relative!);
    expect(Math.abs((time * current) / expected.delivered_Ah! - 1)).toBeLessThan(tolerance.relative!);
  });

  it('has the exponents and depths of an off-grid battery runtime page, but for LFP depth', () => {
    const { expected } = check<unknown, { exponent: number[]; usable_depth: number[] }>('peukert-exponents');
    const [agm, lead, worst, lfp] = expected.exponent;
    expect(CHEMISTRIES.agm.peukert).toBe(agm);
    expect(CHEMISTRIES['flooded-lead'].peukert).toBe(lead);
    expect(CHEMISTRIES['flooded-lead'].peukert).toBeLessThan(worst!);
    expect(CHEMISTRIES.lfp.peukert).toBeGreaterThanOrEqual(1);
    expect(CHEMISTRIES.lfp.peukert).toBeLessThanOrEqual(lfp!);
    expect(CHEMISTRIES.agm.use).toBe(expected.usable_depth[0]);
    expect(CHEMISTRIES['flooded-lead'].use).toBe(expected.usable_depth[1]);
  });

  it('falls short of that page for LFP: 0.90 of the energy is used here, 0.80 is its cautious advice', () => {
    const { expected } = check<unknown, { usable_depth: number[] }>('peukert-exponents');
    told('peukert-exponents', 'usable depth, LFP', expected.usable_depth[3]!, CHEMISTRIES.lfp.use);
    expect(CHEMISTRIES.lfp.use - expected.usable_depth[3]!).toBeCloseTo(0.1, 6);
  });
});

describe('cold batteries', () => {
  it('give about 80 of 100 Ah at 0 C (LFP storage guide of a battery maker)', () => {
    const { inputs, expected, tolerance } = check('cold-lfp-0C');
    const delivered = 100 * coldFactor('lfp', inputs.temperature_C!);
    told('cold-lfp-0C', 'delivered_Ah', expected.delivered_Ah!, delivered);
    expect(Math.abs(delivered / expected.delivered_Ah! - 1)).toBeLessThan(tolerance.relative!);
  });

  it("of lead follow a battery maker's table, discharge longer than an hour", () => {
    const { inputs, expected, tolerance } = check<{ temperature_C: number[] }, { capacity_factor: number[] }>(
      'cold-lead-table',
    );
    inputs.temperature_C.forEach((temperature, i) => {
      const error = coldFactor('agm', temperature) - expected.capacity_factor[i]!;
      told(
        'cold-lead-table',
        `capacity share at ${temperature} °C`,
        expected.capacity_factor[i]!,
        coldFactor('agm', temperature),
      );
      expect(Math.abs(error)).toBeLessThanOrEqual(tolerance.abs!);
    });
  });
});

describe('a 6 hp class electric outboard', () => {
  const model = driveModel(electricDrive(4400, 2250), { density: SEA_WATER.density, form: 'rib' });

  it('on 3 kWh runs under an hour planing and many hours slowly (common practice, no source)', () => {
    const { inputs, expected } = check('electric-3kWh');
    const bank = batteryBank([battery('lfp', inputs.battery_kWh! * 1000)], 25);
    expect(usableCharge(bank, 1)).toBeCloseTo(inputs.usable_fraction! * inputs.battery_kWh! * 3.6e6, 0);
    const hours = (resistance: number, knots: number) =>
      bank.usable / storeFlow(drivePoint(model, resistance, knots * KNOT).flow, bank) / HOUR;
    // Resistance over weight of 0.15 planing and 0.025 at 4 kn, for the 210 kg boat of the check.
    const weight = inputs.total_mass_kg! * 9.80665;
    expect(hours(0.15 * weight, 12)).toBeLessThan(expected.planing_time_h_max!);
    expect(hours(0.025 * weight, 4)).toBeGreaterThan(expected.time_at_4kn_h_min!);
    let full = 300;
    while (drivePoint(model, full, 13.5 * KNOT).held) full += 1;
    expect(hours(full, 13.5)).toBeLessThan(expected.full_power_time_h_max!);
  });

  it("turns 0.45 to 0.56 of battery power into thrust on the plane (maker's encyclopaedia page, vendor statement)", () => {
    const { expected } = check('electric-overall');
    const point = drivePoint(model, 0.15 * 210 * 9.80665, 12 * KNOT);
    const overall = (point.efficiency * point.power) / point.flow;
    expect(overall).toBeGreaterThan(0.45);
    expect(overall).toBeLessThan(expected.overall_max!);
    const slow = drivePoint(model, 0.025 * 210 * 9.80665, 4 * KNOT);
    expect((slow.efficiency * slow.power) / slow.flow).toBeGreaterThan(expected.overall_min!);
  });
});
