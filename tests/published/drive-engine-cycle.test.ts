import { describe, expect, it } from 'vitest';
import type { EngineCycle } from '../../src/core/craft/shapes.ts';
import { boatTorqueShare, cycleFlow, cycleLoadFactor, E4_CYCLE } from '../../src/core/drive/engine-cycle.ts';
import { fuelLaw } from '../../src/core/drive/petrol.ts';
import { HORSEPOWER, HOUR, POUND } from '../../src/core/units/convert.ts';
import { check } from '../core/drive/checks.ts';
import { litresPerHour, petrolDrive } from '../core/drive/drives.ts';
import { told } from './told.ts';

describe('E4 duty cycle, 40 CFR part 1045, Appendix II (a)', () => {
  it('has the published five modes', () => {
    const { expected } = check<
      unknown,
      { speed_percent: (number | string)[]; torque_percent: number[]; weight: number[] }
    >('e4-points');
    expect(E4_CYCLE.map((mode) => (mode.revShare === 'idle' ? 'idle' : 100 * mode.revShare))).toEqual(
      expected.speed_percent,
    );
    expect(E4_CYCLE.map((mode) => Math.round(1000 * mode.torqueShare) / 10)).toEqual(expected.torque_percent);
    expect(E4_CYCLE.map((mode) => mode.weight)).toEqual(expected.weight);
  });

  it('follows the torque law of ICOMIA 36-88', () => {
    const { inputs, expected, tolerance } = check<
      { speed_share: number[] },
      { torque_share: number[]; power_share: number[] }
    >('e4-law');
    inputs.speed_share.forEach((nu, i) => {
      told('e4-law', `torque share at ${nu} of rated revs`, expected.torque_share[i]!, boatTorqueShare(nu));
      expect(Math.abs(boatTorqueShare(nu) - expected.torque_share[i]!)).toBeLessThan(tolerance.abs!);
      expect(Math.abs(nu * boatTorqueShare(nu) - expected.power_share[i]!)).toBeLessThan(tolerance.abs!);
      const mode = E4_CYCLE.find((one) => one.revShare === nu);
      expect(Math.abs(mode!.torqueShare - boatTorqueShare(nu))).toBeLessThan(tolerance.abs!);
    });
  });

  it('loads an engine as the outboards of the US EPA NONROAD2008 activity file', () => {
    const { expected, tolerance } = check('e4-load-factor');
    told('e4-load-factor', 'load factor', expected.nonroad_load_factor!, cycleLoadFactor());
    expect(Math.abs(cycleLoadFactor() - expected.nonroad_load_factor!)).toBeLessThan(tolerance.abs!);
    expect(Math.abs(cycleLoadFactor() - expected.load_factor!)).toBeLessThan(0.0001);
  });
});

describe('US EPA NONROAD2008, BSFC.EMF, outboards averaged over E4', () => {
  const names: Record<EngineCycle, string> = {
    '4s-carb': '4-stroke carburetted',
    '4s-efi': '4-stroke injected',
    '2s-carb': '2-stroke carburetted',
    '2s-di': '2-stroke direct injection',
  };
  const bands: Record<EngineCycle, readonly [number, number]> = {
    '4s-carb': [0.85, 1.1],
    '4s-efi': [0.85, 1.1],
    '2s-carb': [0.85, 1.1],
    // Later maker data are lower than the table; see the maker's chart below.
    '2s-di': [0.65, 0.8],
  };
  const classes = [
    ['nonroad-bsfc-0-3hp', 2, 3],
    ['nonroad-bsfc-6-11hp', 6, 11],
    ['nonroad-bsfc-16-25hp', 16, 25],
    ['nonroad-bsfc-25-40hp', 25, 40],
  ] as const;
  const rows = (['4s-carb', '4s-efi', '2s-carb', '2s-di'] as const).flatMap((cycle) =>
    classes
      .filter(([, smallest]) => cycle !== '2s-di' || smallest >= 16)
      .flatMap(([id, smallest, largest]) => [smallest, largest].map((hp) => ({ cycle, id, hp }))),
  );

  /**
   * Below the band, as a share of the table. Engines measured since burn less than it: by their flows at idle, cruise
   * and full throttle a 40 hp carburetted and a 60 hp injected four-stroke come to three quarters of it, and to that of
   * the maker's cycle figure a 60 hp direct-injection two-stroke (drive-part-load.test.ts). It may only get nearer.
   */
  const short: Readonly<Record<string, number>> = {
    'nonroad-bsfc-16-25hp 4s-carb 25': 0.837,
    'nonroad-bsfc-25-40hp 4s-carb 40': 0.832,
    'nonroad-bsfc-6-11hp 4s-efi 11': 0.828,
    'nonroad-bsfc-16-25hp 4s-efi 16': 0.83,
    'nonroad-bsfc-16-25hp 4s-efi 25': 0.808,
    'nonroad-bsfc-25-40hp 4s-efi 25': 0.829,
    'nonroad-bsfc-25-40hp 4s-efi 40': 0.806,
    'nonroad-bsfc-16-25hp 2s-di 16': 0.648,
    'nonroad-bsfc-16-25hp 2s-di 25': 0.631,
  };
  const keyOf = ({ cycle, id, hp }: (typeof rows)[number]) => `${id} ${cycle} ${hp}`;

  it.each(rows)('puts a $hp hp $cycle where it belongs beside the table ($id)', (row) => {
    const { cycle, id, hp } = row;
    const { expected, tolerance } = check<
      unknown,
      { bsfc_lb_per_hp_h: Record<string, number>; bsfc_g_per_kWh: Record<string, number> }
    >(id);
    const table = (expected.bsfc_lb_per_hp_h[names[cycle]]! * POUND) / HORSEPOWER / HOUR;
    const printed = expected.bsfc_g_per_kWh[names[cycle]]! / 3.6e9;
    expect(Math.abs(table / printed - 1)).toBeLessThan(tolerance.table_value_relative!);
    const drive = petrolDrive(hp, cycle);
    const ratio = cycleFlow(fuelLaw(drive)) / (cycleLoadFactor() * drive.ratedPower) / table;
    told(id, `g per kWh over the cycle, ${hp} hp ${cycle}`, table * 3.6e9, ratio * table * 3.6e9);
    const below = short[keyOf(row)];
    expect(ratio).toBeGreaterThan(below ?? bands[cycle][0]);
    if (below !== undefined) expect(ratio).toBeLessThan(bands[cycle][0]);
    expect(ratio).toBeLessThan(bands[cycle][1]);
  });

  it("gives a direct-injection two-stroke the cycle flow of its maker's chart (quoted in a boating forum 2008)", () => {
    const { inputs, expected, tolerance } = check<{ rated_hp: number[] }, { fuel_L_h: number[] }>(
      'fuel-di-cycle-40-60',
    );
    inputs.rated_hp.forEach((hp, i) => {
      const flow = litresPerHour(cycleFlow(fuelLaw(petrolDrive(hp, '2s-di'))));
      told('fuel-di-cycle-40-60', `L/h over the cycle, ${hp} hp`, expected.fuel_L_h[i]!, flow);
      expect(Math.abs(flow / expected.fuel_L_h[i]! - 1)).toBeLessThan(tolerance.relative!);
    });
  });
});
