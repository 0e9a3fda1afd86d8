import { describe, expect, it } from 'vitest';
import type { Calibration } from '../../../src/core/craft/shapes.ts';
import { boatOf } from '../../../src/core/curve/boat.ts';
import { SPREADS } from '../../../src/core/curve/factors.ts';
import {
  CALM,
  lcgSlope,
  resistanceDeviation,
  steady,
  stillWater,
  writeGradient,
} from '../../../src/core/curve/steady.ts';
import { storeFlow } from '../../../src/core/drive/battery.ts';
import { airDrag } from '../../../src/core/hull/air-drag.ts';
import { legDrag } from '../../../src/core/hull/leg-drag.ts';
import { hullResistance } from '../../../src/core/hull/resistance.ts';
import { waveAddedResistance } from '../../../src/core/hull/waves.ts';
import { loaded } from './loaded.ts';

const { boat, afloat, craft } = loaded('rib-4-7', 'petrol-40hp-4s', 'tank-25');
const motor = loaded('rib-3-4', 'electric-3-1kw', 'battery-1-0-nmc');
const SPEED = 9;

/** A measured boat: its factors with these deviations, the runs at one mass and speed. */
function measured(deviations: readonly number[], change: Partial<Calibration> = {}) {
  const covariance = deviations.map((one, row) => deviations.map((_, column) => (row === column ? one * one : 0)));
  const calibration = {
    factors: [1, 1, 1, 0, 0, 1, 0],
    covariance,
    runs: 6,
    tried: { mass: [afloat.mass, afloat.mass], speed: [SPEED, SPEED] },
    ...change,
  } as unknown as Calibration;
  return boatOf({ ...craft, calibration }, 'sea', 15);
}

describe('a boat held at a speed', () => {
  it('has the resistance of hull, air and leg', () => {
    const now = steady(boat, afloat, SPEED);
    const state = { mass: afloat.mass, lcg: afloat.lcg, water: boat.water };
    const hull = hullResistance(craft.hull, state, SPEED, boat.factors.hull).total;
    const air = airDrag(afloat.airArea, craft.hull.airDragCoefficient, { speed: SPEED, headwind: 0 });
    const leg = legDrag(craft.drive.legDragArea, SPEED, boat.water.density);
    expect(Math.min(air, leg)).toBeGreaterThan(1);
    expect(now.resistance).toBeCloseTo(hull + air + leg, 9);
    expect(now.hull.total).toBe(hull);
    expect([now.speed, now.mass]).toEqual([SPEED, afloat.mass]);
  });

  it('has that of the wind, of what it tows, and of waves on top', () => {
    const { resistance } = steady(boat, afloat, SPEED);
    const blown = steady(boat, afloat, SPEED, { headwind: 6, waveHeight: 0 }).resistance;
    const air = (headwind: number) =>
      airDrag(afloat.airArea, craft.hull.airDragCoefficient, { speed: SPEED, headwind });
    expect(blown - resistance).toBeCloseTo(air(6) - air(0), 9);
    const tow = (speed: number, headwind: number) => 10 * speed + headwind;
    expect(steady(boat, afloat, SPEED, { headwind: 6, waveHeight: 0, tow }).resistance - blown).toBeCloseTo(96, 9);
    const body = { mass: afloat.mass, trimDeg: stillWater(boat, afloat, SPEED).shortFormTrimDeg };
    const { added } = waveAddedResistance(craft.hull, body, SPEED, 0.3, boat.water);
    expect(added).toBeGreaterThan(1);
    const rough = steady(boat, afloat, SPEED, { headwind: 0, waveHeight: 0.3 }).resistance;
    expect(rough - resistance).toBeCloseTo(added, 9);
  });

  it('takes a bare hull that is known for its own', () => {
    const hull = stillWater(boat, afloat, SPEED);
    const light = { ...hull, total: hull.total - 100 };
    expect(steady(boat, afloat, SPEED, CALM, light).resistance).toBeCloseTo(
      steady(boat, afloat, SPEED).resistance - 100,
      9,
    );
  });

  it('draws from the tank what the engine takes, from a battery what its rate loses too', () => {
    const petrol = steady(boat, afloat, SPEED);
    expect(petrol.flow).toBe(petrol.drive.flow);
    const electric = steady(motor.boat, motor.afloat, 2.5);
    expect(electric.flow).toBe(storeFlow(electric.drive.flow, motor.boat.bank!));
    expect(electric.flow).not.toBe(electric.drive.flow);
  });
});

describe('the slope with the centre of gravity', () => {
  it('is what a shift of two centimetres forward adds, per metre', () => {
    const hull = stillWater(boat, afloat, SPEED);
    const shifted = stillWater(boat, { ...afloat, lcg: afloat.lcg + 0.02 }, SPEED);
    expect(lcgSlope(boat, afloat, SPEED, hull)).toBeCloseTo((shifted.total - hull.total) / 0.02, 6);
    expect(lcgSlope(boat, afloat, SPEED, hull)).not.toBe(0);
  });
});

describe('the gradient of the flow', () => {
  const step = 1e-4;
  /** By fitted factors a little off. */
  const flowWith = (
    of: typeof boat | typeof motor.boat,
    state: typeof afloat,
    speed: number,
    i: number,
    by: number,
  ) => {
    const factors = [1, 1, 1, 0, 0, 1, 0];
    factors[i]! += by;
    const calibration = { factors, covariance: [], runs: 0 } as unknown as Calibration;
    return steady(boatOf({ ...of.craft, calibration }, 'sea', 20), state, speed).flow;
  };

  it('is what each factor a little off makes of it, petrol and electric', () => {
    for (const [of, state, speed, within] of [
      [boat, afloat, SPEED, 0.02],
      [motor.boat, motor.afloat, 2.4, 0.12],
    ] as const) {
      const now = steady(of, state, speed);
      const gradient = new Float64Array(SPREADS);
      writeGradient(of, now, lcgSlope(of, state, speed, now.hull), gradient);
      for (let i = 0; i < 7; i++) {
        const by = (flowWith(of, state, speed, i, step) - flowWith(of, state, speed, i, -step)) / (2 * step);
        expect(Math.abs(gradient[i]! - by)).toBeLessThanOrEqual(within * Math.abs(by) + 1e-9 * now.flow);
      }
      expect(gradient[7]).toBe(0);
    }
  });

  it('grows with a battery by what its rate loses', () => {
    const now = steady(motor.boat, motor.afloat, 2.4);
    const [told, bare] = [new Float64Array(SPREADS), new Float64Array(SPREADS)];
    writeGradient(motor.boat, now, 50, told);
    writeGradient(motor.boat, { ...now, flow: now.drive.flow }, 50, bare);
    for (const i of [0, 3, 4, 5, 6]) {
      expect(told[i]! / bare[i]!).toBeCloseTo(now.flow / now.drive.flow, 6);
      expect(told[i]).not.toBe(0);
    }
  });

  it('of a measured boat has what the form of the model leaves open last, a tenth where it was tried', () => {
    const sure = measured(Array(7).fill(0));
    const now = steady(sure, afloat, SPEED);
    const gradient = new Float64Array(SPREADS);
    writeGradient(sure, now, lcgSlope(sure, afloat, SPEED, now.hull), gradient);
    expect(gradient[7]).toBeCloseTo(0.1 * now.flow, 9);
  });
});

describe('the spread of resistance', () => {
  const now = steady(boat, afloat, SPEED);
  const { displacementPart, planingPart, humpPart } = now.hull;

  it('of a boat nobody measured is that of its parts and its centre of gravity', () => {
    const expected = Math.hypot(0.4 * displacementPart, 0.2 * planingPart, 1.3 * humpPart, 0.1 * 300);
    expect(resistanceDeviation(boat, now, 300)).toBeCloseTo(expected, 9);
    expect(resistanceDeviation(boat, now, -300)).toBeCloseTo(expected, 9);
  });

  it('adds parts that go together', () => {
    const together = measured(Array(7).fill(0), {
      covariance: Array.from({ length: 7 }, (_, row) =>
        Array.from({ length: 7 }, (__, i) => (row < 3 && i < 3 ? 0.01 : 0)),
      ),
      runs: 0,
    });
    expect(resistanceDeviation(together, now, 300)).toBeCloseTo(
      0.1 * Math.abs(displacementPart + planingPart + humpPart),
      6,
    );
  });

  it('of a measured boat has the form of the model beside it', () => {
    const sure = measured([0.01, 0.01, 0, 0, 0, 0, 0]);
    const parts = Math.hypot(0.01 * displacementPart, 0.01 * planingPart);
    expect(resistanceDeviation(sure, now, 0)).toBeCloseTo(Math.hypot(parts, 0.1 * now.hull.total), 6);
  });

  it('of a measured boat is nowhere more than before it was', () => {
    // Far from what was tried, and fitted as badly as known before.
    const vague = measured([0.4, 0.2, 1.3, 0.1, 0, 0, 0], { tried: { mass: [100, 100], speed: [1, 1] } } as object);
    expect(resistanceDeviation(vague, now, 300)).toBeCloseTo(resistanceDeviation(boat, now, 300), 6);
    const half = measured([0.2, 0.1, 0.65, 0.05, 0, 0, 0], { tried: { mass: [100, 100], speed: [1, 1] } } as object);
    expect(resistanceDeviation(half, now, 300)).toBeLessThanOrEqual(resistanceDeviation(boat, now, 300) + 1e-9);
    expect(resistanceDeviation(half, now, 300)).toBeGreaterThan(resistanceDeviation(boat, now, 300) / 2);
  });

  it('is never below nothing', () => {
    const odd = measured(Array(7).fill(0), { covariance: [[-1]], runs: 0 } as object);
    expect(resistanceDeviation(odd, now, 0)).toBe(0);
  });
});
