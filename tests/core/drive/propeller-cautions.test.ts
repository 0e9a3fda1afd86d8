import { describe, expect, it } from 'vitest';
import { ambientCorrection } from '../../../src/core/drive/ambient.ts';
import { burrill, kellerAreaRatio } from '../../../src/core/drive/cavitation.ts';
import { boatTorqueShare, cycleLoadFactor, E4_CYCLE } from '../../../src/core/drive/engine-cycle.ts';
import { oilForFuel } from '../../../src/core/drive/two-stroke-oil.ts';
import { ventilatedThrustShare } from '../../../src/core/drive/ventilation.ts';
import { catamaran } from '../trials/made-trials.ts';

const propeller = { ...catamaran.drive.propeller, diameter: 0.2, pitch: 0.2, blades: 3, areaRatio: 0.5 };
const loaded = { propeller, thrust: 500, advanceSpeed: 5, revs: 30, immersion: 0.3, density: 1000 };
/** Air and 0.3 m of water over the shaft, less the vapour. */
const PRESSURE = 101_325 + 1000 * 9.80665 * 0.3 - 1700;

describe('kellerAreaRatio', () => {
  it('is 1.3 and 0.3 a blade of the thrust over pressure and square of the diameter, and a fifth', () => {
    expect(kellerAreaRatio(loaded)).toBeCloseTo((2.2 * 500) / (PRESSURE * 0.04) + 0.2, 9);
    expect(kellerAreaRatio({ ...loaded, propeller: { ...propeller, blades: 4 } })).toBeCloseTo(
      (2.5 * 500) / (PRESSURE * 0.04) + 0.2,
      9,
    );
  });
});

describe('burrill', () => {
  const swirl = 0.7 * Math.PI * 30 * 0.2;
  const dynamic = 500 * (25 + swirl * swirl);
  const projected = 0.5 * Math.PI * 0.01 * (1.067 - 0.229);

  it('holds pressure and thrust against the flow at 0.7 radius and the projected blades', () => {
    const { sigma, load } = burrill(loaded);
    expect(sigma).toBeCloseTo(PRESSURE / dynamic, 9);
    expect(load).toBeCloseTo(500 / (dynamic * projected), 9);
  });

  it('warns from the two lines of the diagram on', () => {
    const { sigma } = burrill(loaded);
    const at = (load: number) => {
      const { begins, heavy } = burrill({ ...loaded, thrust: load * dynamic * projected });
      return [begins, heavy];
    };
    const [first, second] = [0.26 * sigma ** 0.57, 0.494 * sigma ** 0.88];
    expect(second).toBeGreaterThan(first);
    expect(at(0.999 * first)).toEqual([false, false]);
    expect(at(1.001 * first)).toEqual([true, false]);
    expect(at(0.999 * second)).toEqual([true, false]);
    expect(at(1.001 * second)).toEqual([true, true]);
  });
});

describe('ventilatedThrustShare', () => {
  it('is all from 1.3 radii down, a third at the surface, nothing clear of the water', () => {
    expect(ventilatedThrustShare(0.13, 0.1)).toBe(1);
    expect(ventilatedThrustShare(0.3, 0.1)).toBe(1);
    expect(ventilatedThrustShare(0, 0.1)).toBeCloseTo(0.325, 12);
    expect(ventilatedThrustShare(0.065, 0.1)).toBeCloseTo(1 - 0.675 * (1 - 0.769 * 0.65) ** 1.258, 12);
    expect(ventilatedThrustShare(-0.1, 0.1)).toBe(0);
  });
});

describe('ambientCorrection', () => {
  it('is 1 in dry air of 99 kPa at 25 C, and more where the air is thin or hot', () => {
    expect(ambientCorrection(99, 25)).toBeCloseTo(1, 12);
    expect(ambientCorrection(49.5, 25)).toBeCloseTo(2.36 - 0.18, 12);
    expect(ambientCorrection(99, 4 * 298 - 273)).toBeCloseTo(2.36 - 0.18, 12);
  });
});

describe('the E4 cycle', () => {
  it('has all its time shared out, and a fifth of rated power in the mean', () => {
    expect(E4_CYCLE.reduce((sum, { weight }) => sum + weight, 0)).toBeCloseTo(1, 12);
    expect(cycleLoadFactor()).toBeCloseTo(0.06 + 0.14 * 0.5728 + 0.15 * 0.279 + 0.25 * 0.1012, 9);
  });

  it('asks for torque as boats do, by a power of one and a half of revs', () => {
    for (const { revShare, torqueShare } of E4_CYCLE) {
      if (revShare !== 'idle') expect(boatTorqueShare(revShare)).toBeCloseTo(torqueShare, 3);
    }
    expect(boatTorqueShare(0.25)).toBe(0.125);
  });
});

describe('oilForFuel', () => {
  it('is a fiftieth at one to fifty', () => {
    expect(oilForFuel(25, 50)).toBe(0.5);
  });
});
