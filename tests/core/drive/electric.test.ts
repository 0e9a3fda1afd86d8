import { describe, expect, it } from 'vitest';
import { batteryBank, storeFlow, usableCharge } from '../../../src/core/drive/battery.ts';
import { agedHealth, coldFactor } from '../../../src/core/drive/battery-chemistry.ts';
import { batteryPowerLimit } from '../../../src/core/drive/battery-power.ts';
import { sag } from '../../../src/core/drive/battery-sag.ts';
import { driveModel, drivePoint, idleFlow } from '../../../src/core/drive/demand.ts';
import { motorLimitShare } from '../../../src/core/drive/electric.ts';
import { HOUR, KNOT, NAUTICAL_MILE } from '../../../src/core/units/convert.ts';
import { battery, electricDrive, plainResistance } from './drives.ts';

const model = driveModel(electricDrive(4400, 2250), { density: 1025, form: 'rib' });
const inputAt = (speed: number) => drivePoint(model, plainResistance(210, speed), speed).flow;

describe('an electric outboard', () => {
  it('gives rated power at rated revs, less below, no more above', () => {
    expect(motorLimitShare(1)).toBe(1);
    expect(motorLimitShare(0.5)).toBeCloseTo(0.5, 1);
    expect(motorLimitShare(1.1)).toBe(1);
  });

  it('carries its electronics and lights at rest', () => {
    expect(idleFlow(model)).toBeCloseTo(0.008 * 4400 + 15, 9);
    expect(drivePoint(model, 0, 0).flow).toBeCloseTo(idleFlow(model), 3);
  });

  it('goes several times as far at 4 kn as planing, but not farther still at a crawl', () => {
    const perMile = (knots: number) => (inputAt(knots * KNOT) / (knots * KNOT)) * NAUTICAL_MILE;
    expect(perMile(12) / perMile(4)).toBeGreaterThan(2);
    let best = 1;
    for (let knots = 0.5; knots < 6; knots += 0.1) if (perMile(knots) < perMile(best)) best = knots;
    expect(best).toBeGreaterThan(1.5);
    expect(best).toBeLessThan(3);
    expect(perMile(0.5)).toBeGreaterThan(perMile(best));
  });
});

describe('a battery bank', () => {
  it('adds what its batteries hold and lets the weakest management cut first', () => {
    const bank = batteryBank([battery('lfp', 2000, { maxCurrent: 100 }), battery('lfp', 1000, { maxCurrent: 80 })], 25);
    expect(bank.usable).toBeCloseTo(0.9 * 3000 * HOUR, 3);
    expect(bank.capacityAh).toBeCloseTo(62.5, 6);
    expect(bank.nominalVoltage).toBeCloseTo(48, 6);
    // The larger takes two thirds of the current and reaches 100 A at 150 A in all.
    expect(bank.maxCurrent).toBeCloseTo(150, 6);
  });

  it('splits into halves that together behave as the whole', () => {
    const whole = batteryBank([battery('agm', 2400)], 5);
    const halves = batteryBank([battery('agm', 1200), battery('agm', 1200)], 5);
    expect(storeFlow(1500, halves)).toBeCloseTo(storeFlow(1500, whole), 9);
    expect(halves.usable).toBeCloseTo(whole.usable, 6);
    expect(batteryPowerLimit(halves, 0.5)).toBeCloseTo(batteryPowerLimit(whole, 0.5), 6);
  });

  it('of lead gives about half its printed capacity in one hour, of lithium nearly all', () => {
    const delivered = (chemistry: 'flooded-lead' | 'lfp') => {
      const bank = batteryBank([battery(chemistry, 1000)], 25);
      // Power that takes the whole printed energy, rate loss and all, in one hour.
      let power = 1000;
      for (let i = 0; i < 60; i++) power *= 1000 / storeFlow(power, bank);
      return power / 1000;
    };
    expect(delivered('flooded-lead')).toBeGreaterThan(0.45);
    expect(delivered('flooded-lead')).toBeLessThan(0.6);
    expect(delivered('lfp')).toBeGreaterThan(0.93);
  });

  it('keeps its lowest tenth (lithium) or half (lead) whatever the charge it starts from', () => {
    const lithium = batteryBank([battery('nmc', 1000)], 25);
    expect(usableCharge(lithium, 0.5)).toBeCloseTo(0.4 * 1000 * HOUR, 3);
    expect(usableCharge(lithium, 0.05)).toBe(0);
    expect(usableCharge(batteryBank([battery('agm', 1000)], 25), 0.5)).toBe(0);
  });

  it('with nothing alive in it holds nothing and gives nothing', () => {
    for (const bank of [batteryBank([], 20), batteryBank([battery('lfp', 1000, { health: 0 })], 20)]) {
      expect(bank.usable).toBe(0);
      expect(batteryPowerLimit(bank, 1)).toBe(0);
      expect(storeFlow(500, bank)).toBe(500);
    }
  });
});

describe('cold and age', () => {
  it('take a fifth of lithium energy at 0 C and nothing above 25 C', () => {
    expect(1 - coldFactor('nmc', 0)).toBeCloseTo(0.2, 1);
    expect(coldFactor('nmc', 40)).toBe(1);
    expect(coldFactor('agm', 30)).toBe(1.03);
    expect(coldFactor('lfp', -40)).toBe(coldFactor('lfp', -20));
  });

  it('cut the highest power before the battery is empty', () => {
    const warm = batteryBank([battery('lfp', 3000)], 25);
    const cold = batteryBank([battery('lfp', 3000)], 0);
    expect(batteryPowerLimit(warm, 0.1)).toBeLessThan(0.5 * batteryPowerLimit(warm, 1));
    expect(batteryPowerLimit(cold, 0.2)).toBeLessThan(0.75 * batteryPowerLimit(warm, 0.2));
  });

  it('leave lead at 80 % after 300 cycles, and nothing below nothing', () => {
    expect(agedHealth('agm', 0, 300)).toBeCloseTo(0.8, 9);
    expect(agedHealth('nmc', 5, 0)).toBeCloseTo(0.9, 9);
    expect(agedHealth('nmc', 40, 5000)).toBe(0);
  });
});

describe('sag', () => {
  it('keeps voltage times current at the power asked', () => {
    const { current, voltage } = sag(48, 0.03, 4000)!;
    expect(current * voltage).toBeCloseTo(4000, 6);
    expect(voltage).toBeLessThan(48);
  });

  it('has no answer beyond the most a source can give, half its voltage across its own resistance', () => {
    expect(sag(12, 0.02, (12 * 12) / (4 * 0.02) + 1)).toBeUndefined();
    expect(sag(12, 0.02, (12 * 12) / (4 * 0.02))!.voltage).toBeCloseTo(6, 6);
  });

  it('is none without resistance', () => {
    expect(sag(24, 0, 480)).toEqual({ current: 20, voltage: 24 });
  });
});
