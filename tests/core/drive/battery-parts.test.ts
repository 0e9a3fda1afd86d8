import { describe, expect, it } from 'vitest';
import { agedHealth, CHEMISTRIES, coldFactor } from '../../../src/core/drive/battery-chemistry.ts';
import { peukertTime, peukertTimeFromOneAmpere, rateFactor } from '../../../src/core/drive/battery-rate.ts';
import { internalResistance, openCircuitVoltage, sag } from '../../../src/core/drive/battery-sag.ts';

describe('sag', () => {
  it('stands a tenth below its nominal voltage empty, and a tenth above full', () => {
    expect([0, 0.5, 1].map((charge) => openCircuitVoltage(48, charge))).toEqual([43.2, 48, expect.closeTo(52.8, 12)]);
  });

  it('has 3 % of the voltage lost at a one-hour rate at 25 C, and more in the cold', () => {
    expect(internalResistance(12, 100, 25)).toBeCloseTo(0.0036, 12);
    expect(internalResistance(24, 50, 25) / internalResistance(12, 100, 25)).toBeCloseTo(4, 12);
    expect(internalResistance(12, 100, 5) / 0.0036).toBeCloseTo(Math.exp(0.3), 12);
    expect(internalResistance(12, 100, 35)).toBeLessThan(0.0036);
  });

  it('gives the current whose power at the terminals is the one asked for', () => {
    const { current, voltage } = sag(12.5, 0.05, 250)!;
    expect(current * voltage).toBeCloseTo(250, 9);
    expect(voltage).toBeCloseTo(12.5 - 0.05 * current, 12);
    // Of the two currents that do, the smaller.
    expect(voltage).toBeGreaterThan(12.5 / 2);
    expect(sag(12.5, 0, 250)).toEqual({ current: 20, voltage: 12.5 });
  });

  it('gives at most a quarter of the square of its voltage over its resistance', () => {
    expect(sag(10, 0.25, 100)).toEqual({ current: 20, voltage: 5 });
    expect(sag(10, 0.25, 100.01)).toBeUndefined();
  });
});

describe('coldFactor', () => {
  it('is what the tables say, all of it at 25 C, and level beyond their ends', () => {
    expect([-20, -10, 0, 10, 25].map((at) => coldFactor('nmc', at))).toEqual([0.65, 0.73, 0.82, 0.92, 1]);
    expect([-40, 40].map((at) => coldFactor('lfp', at))).toEqual([0.65, 1]);
    expect([-30, 0, 20, 25, 45].map((at) => coldFactor('agm', at))).toEqual([0.7, 0.84, 0.99, 1, 1.03]);
    expect(coldFactor('flooded-lead', 10)).toBe(0.9);
  });
});

describe('agedHealth', () => {
  it('loses 2 % a year and a fifth over the cycles of its kind, and never more than all', () => {
    expect(agedHealth('lfp', 5, 1000)).toBeCloseTo(0.8, 12);
    expect(agedHealth('nmc', 0, 500)).toBeCloseTo(0.8, 12);
    expect(agedHealth('agm', 2, 150)).toBeCloseTo(0.86, 12);
    expect(agedHealth('agm', 60, 0)).toBe(0);
  });

  it('may be emptied to nine tenths where it is lithium, and to half where it is lead', () => {
    expect(Object.values(CHEMISTRIES).map(({ use }) => use)).toEqual([0.9, 0.9, 0.5, 0.5]);
  });
});

describe("Peukert's law", () => {
  it('holds the printed capacity for the rated time, and less than half of it at twice the current', () => {
    const discharge = { capacityAh: 100, ratedTime: 72_000, exponent: 1.2 };
    expect(peukertTime({ ...discharge, current: 5 })).toBeCloseTo(72_000, 6);
    expect(peukertTime({ ...discharge, current: 10 })).toBeCloseTo(72_000 / 2 ** 1.2, 6);
    expect(peukertTimeFromOneAmpere(100, 1, 1.3)).toBe(360_000);
    expect(peukertTimeFromOneAmpere(100, 4, 1.5)).toBe(360_000 / 8);
  });

  it('takes nothing off below the rated rate, and the power of the exponent far above', () => {
    expect(rateFactor(0, 1.25)).toBe(1);
    expect(rateFactor(0.2, 1.25)).toBeCloseTo(1, 6);
    expect(rateFactor(1, 1.25)).toBeCloseTo(2 ** (0.25 / 8), 12);
    expect(rateFactor(16, 1.25)).toBeCloseTo(2, 6);
    expect(rateFactor(9, 1)).toBe(1);
  });
});
