import { describe, expect, it } from 'vitest';
import { bSeriesRange, openWater, openWaterEfficiency } from '../../../src/core/drive/b-series.ts';
import { burrill, kellerAreaRatio } from '../../../src/core/drive/cavitation.ts';
import { propellerModel, propellerPoint } from '../../../src/core/drive/propeller.ts';
import { ventilatedThrustShare } from '../../../src/core/drive/ventilation.ts';
import { inchPropeller } from './drives.ts';

describe('open water', () => {
  it('is best at a higher advance ratio and efficiency the coarser the pitch', () => {
    const best = (pitchRatio: number) => {
      const water = openWater({ diameter: 1, pitch: pitchRatio, blades: 3, areaRatio: 0.5, quality: 1 });
      let at = { j: 0, efficiency: 0 };
      for (let j = 0.1; j < 1.3; j += 0.01) {
        const efficiency = openWaterEfficiency(water, j);
        if (efficiency > at.efficiency && efficiency < 1) at = { j, efficiency };
      }
      return at;
    };
    expect(best(1).efficiency).toBeGreaterThan(best(0.8).efficiency);
    expect(best(0.8).efficiency).toBeGreaterThan(best(0.6).efficiency);
    expect(best(1).j).toBeGreaterThan(best(0.6).j);
  });

  it('says what lies outside the tested series', () => {
    expect(bSeriesRange(inchPropeller(10, 9))).toEqual({ pitchRatio: true, areaRatio: true, blades: true });
    expect(bSeriesRange(inchPropeller(10, 14))).toMatchObject({ pitchRatio: true });
    expect(bSeriesRange(inchPropeller(10, 15))).toMatchObject({ pitchRatio: false });
    expect(bSeriesRange(inchPropeller(10, 9, { blades: 2 }))).toMatchObject({ areaRatio: false, blades: true });
    expect(bSeriesRange(inchPropeller(10, 9, { blades: 9 }))).toMatchObject({ areaRatio: false, blades: false });
  });
});

describe('propellerPoint', () => {
  const model = propellerModel(inchPropeller(9.25, 9), 1025);

  it('pulls at the bollard, where only the square of revs counts', () => {
    const once = propellerPoint(model, 300, 0);
    const fourfold = propellerPoint(model, 1200, 0);
    expect(fourfold.revs / once.revs).toBeCloseTo(2, 9);
    expect(fourfold.power / once.power).toBeCloseTo(8, 9);
  });

  it('needs nothing at rest without thrust', () => {
    const { power, torque } = propellerPoint(model, 0, 0);
    expect(power).toBeLessThan(1e-12);
    expect(torque).toBeLessThan(1e-9);
  });

  it('pushed by a strong wind from astern keeps turning with the water and takes little power', () => {
    const idle = propellerPoint(model, 0, 3);
    const pushed = propellerPoint(model, -500, 3);
    expect(pushed.power).toBeGreaterThan(0);
    expect(pushed.power).toBeLessThan(idle.power);
    expect(idle.power).toBeLessThan(0.1 * propellerPoint(model, 300, 3).power);
    expect(pushed.revs / idle.revs).toBeGreaterThan(0.95);
  });

  it('turns slower in salt water than in fresh for the same thrust', () => {
    const fresh = propellerPoint(propellerModel(inchPropeller(9.25, 9), 1000), 400, 5);
    expect(propellerPoint(model, 400, 5).revs).toBeLessThan(fresh.revs);
  });
});

describe('warnings', () => {
  const loaded = { propeller: inchPropeller(9.25, 9), advanceSpeed: 4, revs: 40, immersion: 0.3, density: 1025 };

  it('of cavitation come with a heavy load on the hump, not at cruise', () => {
    expect(burrill({ ...loaded, thrust: 500 }).begins).toBe(false);
    expect(burrill({ ...loaded, thrust: 1500 })).toMatchObject({ begins: true });
    expect(burrill({ ...loaded, thrust: 4000 })).toMatchObject({ begins: true, heavy: true });
    expect(kellerAreaRatio({ ...loaded, thrust: 500 })).toBeLessThan(0.5);
    expect(kellerAreaRatio({ ...loaded, thrust: 1500 })).toBeGreaterThan(0.5);
  });

  it('of ventilation begin when the shaft is less than 1.3 radii deep', () => {
    expect(ventilatedThrustShare(0.16, 0.12)).toBe(1);
    expect(ventilatedThrustShare(0.155, 0.12)).toBeGreaterThan(0.99);
    expect(ventilatedThrustShare(0.06, 0.12)).toBeLessThan(0.8);
    expect(ventilatedThrustShare(-0.2, 0.12)).toBe(0);
  });
});
