import { describe, expect, it } from 'vitest';
import { towResistance, towSpeedCap } from '../../../src/core/hull/tow.ts';
import { SEA_WATER } from '../../../src/core/units/constants.ts';
import { KNOT } from '../../../src/core/units/convert.ts';
import { drag, INFLATABLE_29 } from './hull-records.ts';

const TOWED = { hull: INFLATABLE_29.hull, state: { mass: 180, lcg: 1, water: SEA_WATER }, airArea: 0.6 };

describe('towResistance', () => {
  it('pulls a tenth harder than the towed boat would need with its leg up', () => {
    const alone = drag({ hull: INFLATABLE_29.hull, legDragArea: 0 }, { mass: 180, lcg: 1, headwind: 3 }, 1.5);
    expect(towResistance(TOWED, { speed: 1.5, headwind: 3 })).toBeCloseTo(1.1 * alone, 9);
  });

  it('still holds the tow against the wind when stopped', () => {
    expect(towResistance(TOWED, { speed: 0, headwind: 8 })).toBeGreaterThan(20);
  });
});

describe('towSpeedCap', () => {
  it('lets a boat of 2.6 m wetted length be towed at no more than about three and a half knots', () => {
    expect(towSpeedCap(2.6) / KNOT).toBeGreaterThan(3.3);
    expect(towSpeedCap(2.6) / KNOT).toBeLessThan(3.6);
  });
});
