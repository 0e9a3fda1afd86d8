import { describe, expect, it } from 'vitest';
import { DEEP_LEG_AREA, legDrag } from '../../../src/core/hull/leg-drag.ts';
import { HORSEPOWER, KMH } from '../../../src/core/units/convert.ts';
import { CATAMARAN_40, topSpeed } from './hull-records.ts';

describe('legDrag', () => {
  it('is 78 N for a 15 hp leg of 0.0022 m2 at 30 km/h in sea water (by definition)', () => {
    expect(legDrag(0.0022, 30 * KMH, 1025)).toBeCloseTo(0.5 * 1025 * 0.0022 * (30 / 3.6) ** 2, 9);
  });

  it('takes 1 to 3 km/h off a boat of 30 km/h when the leg hangs 12.5 cm too deep (common practice, no source)', () => {
    const power = 0.5 * 15 * HORSEPOWER;
    const short = topSpeed(CATAMARAN_40, { mass: 375, lcg: 1.31 }, power);
    const deep = topSpeed(CATAMARAN_40, { mass: 375, lcg: 1.31, extraLegArea: DEEP_LEG_AREA }, power);
    expect((short - deep) / KMH).toBeGreaterThan(1);
    expect((short - deep) / KMH).toBeLessThan(3);
  });
});
