import { describe, expect, it } from 'vitest';
import { waveAcceleration, waveAddedResistance } from '../../../src/core/hull/waves.ts';
import { SEA_WATER } from '../../../src/core/units/constants.ts';
import { FOOT, KNOT } from '../../../src/core/units/convert.ts';
import { expectNear } from './hull-checks.ts';
import { CATAMARAN_40, drag, OPEN_BOAT_43 } from './hull-records.ts';

const RUNNING = { mass: 375, trimDeg: 4.11 };
const SPEED = 30 / 3.6;
const { hull } = CATAMARAN_40;

describe('waveAddedResistance', () => {
  it('is what Savitsky and Brown 1976 give, worked by hand for 375 kg on a beam of 1.25 m in 0.3 m waves', () => {
    // 0.3 x 3677.5 N x (0.24 / 1.48) x (1.76 - 0.685 - 2 x 0.2126^3), times a planing share of 0.992
    const { added } = waveAddedResistance(hull, RUNNING, SPEED, 0.3, SEA_WATER);
    expectNear(added, 0.3 * 3677.5 * (0.24 / 1.48) * (1.76 - 0.685 - 0.0192) * 0.9923, 0.001);
  });

  it('adds 25 to 30 per cent to a 4 m craft in 0.3 m waves', () => {
    const { added } = waveAddedResistance(hull, RUNNING, SPEED, 0.3, SEA_WATER);
    const calm = drag(CATAMARAN_40, { mass: 375, lcg: 1.31 }, SPEED);
    expect(added / calm).toBeGreaterThan(0.25);
    expect(added / calm).toBeLessThan(0.3);
  });

  it('adds nothing in flat water and nothing to a boat at rest', () => {
    expect(waveAddedResistance(hull, RUNNING, SPEED, 0, SEA_WATER).added).toBe(0);
    expect(waveAddedResistance(hull, RUNNING, 0, 0.3, SEA_WATER).added).toBe(0);
  });

  it('fades out off the plane', () => {
    const slow = waveAddedResistance(hull, RUNNING, 2, 0.3, SEA_WATER);
    expect(slow.added).toBeLessThan(5);
    expect(slow.inRange).toBe(false);
  });

  it('grows with the waves up to 0.7 beam and then stays, because the method ends there', () => {
    const at = (height: number) => waveAddedResistance(hull, RUNNING, SPEED, height, SEA_WATER).added;
    for (let height = 0; height < 0.85; height += 0.05) expect(at(height + 0.05)).toBeGreaterThan(at(height));
    expect(at(2)).toBe(at(1));
  });

  it('has no kink where trim leaves its range', () => {
    const at = (trimDeg: number) => waveAddedResistance(hull, { mass: 375, trimDeg }, SPEED, 0.3, SEA_WATER).added;
    for (let trim = 1; trim < 9; trim += 0.01) {
      expect(Math.abs(at(trim + 0.01) - 2 * at(trim) + at(trim - 0.01))).toBeLessThan(0.01);
    }
    expect(at(1)).toBe(at(2));
    expect(at(8)).toBe(at(9));
  });

  it('knows its range: waves of 0.2 to 0.7 beam, trim 3 to 7, deadrise 10 to 30, length 3 to 5 beams', () => {
    const inRange = (trimDeg: number, height: number, boat = hull) =>
      waveAddedResistance(boat, { mass: 375, trimDeg }, SPEED, height, SEA_WATER).inRange;
    expect(inRange(4, 0.3)).toBe(true);
    expect(inRange(4, 0.2)).toBe(false);
    expect(inRange(4, 0.9)).toBe(false);
    expect(inRange(2.5, 0.3)).toBe(false);
    expect(inRange(8, 0.3)).toBe(false);
    expect(inRange(4, 0.3, OPEN_BOAT_43.hull)).toBe(false);
    expect(inRange(4, 0.3, { ...hull, length: 3.5 })).toBe(false);
  });
});

describe('waveAcceleration', () => {
  it('is what Savitsky and Brown 1976 give, worked by hand for the same boat and sea', () => {
    const speedLength = SPEED / KNOT / Math.sqrt(4 / FOOT);
    const loading = 375 / (1025 * 1.25 ** 3);
    const byHand = (0.0104 * 0.324 * (4.11 / 4) * (5 / 3 - 0.4) * speedLength ** 2 * 3.2) / loading;
    expectNear(waveAcceleration(hull, RUNNING, SPEED, 0.3, SEA_WATER).g, byHand, 0.001);
  });

  it('is nothing in flat water and grows with sea and speed', () => {
    const at = (speed: number, height: number) => waveAcceleration(hull, RUNNING, speed, height, SEA_WATER).g;
    expect(at(SPEED, 0)).toBe(0);
    expect(at(SPEED, 0.2)).toBeGreaterThan(at(SPEED, 0.1));
    expect(at(SPEED, 0.5)).toBeGreaterThan(at(SPEED, 0.3));
    expect(at(SPEED, 0.3)).toBeGreaterThan(at(6, 0.3));
  });
});
