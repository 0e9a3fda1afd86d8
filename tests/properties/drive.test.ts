import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Drive } from '../../src/core/craft/shapes.ts';
import { ktOf, openWater } from '../../src/core/drive/b-series.ts';
import { batteryBank, storeFlow, usableCharge } from '../../src/core/drive/battery.ts';
import { coldFactor } from '../../src/core/drive/battery-chemistry.ts';
import { batteryPowerLimit } from '../../src/core/drive/battery-power.ts';
import { peukertTime, rateFactor } from '../../src/core/drive/battery-rate.ts';
import { type DriveFactors, driveModel, drivePoint, flowGradient, idleFlow } from '../../src/core/drive/demand.ts';
import { propellerModel, propellerPoint } from '../../src/core/drive/propeller.ts';
import { KNOT } from '../../src/core/units/convert.ts';
import {
  battery,
  electricDrive,
  inchPropeller,
  litresPerHour,
  petrolDrive,
  plainResistance,
} from '../core/drive/drives.ts';

const SETTINGS = { numRuns: 300, seed: 20260814 };
const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });

const propellers = fc
  .record({ diameter: number(7, 12), ratio: number(0.5, 1.4), area: number(0.35, 0.8) })
  .map(({ diameter, ratio, area }) => inchPropeller(diameter, diameter * ratio, { areaRatio: area }));
const drives: fc.Arbitrary<Drive> = fc.oneof(
  fc
    .tuple(number(2, 40), fc.constantFrom('4s-carb', '4s-efi', '2s-carb', '2s-di'), propellers)
    .map(([hp, cycle, propeller]) => petrolDrive(hp, cycle, propeller)),
  fc.tuple(number(400, 9000), number(1000, 2400), propellers).map((drive) => electricDrive(...drive)),
);
const models = drives.map((drive) => driveModel(drive, { density: 1025, form: 'rib' }));
const speeds = number(0.2, 14);
const thrusts = number(1, 1500);

describe('propeller', () => {
  it('gives back the thrust it was asked for', () => {
    fc.assert(
      fc.property(propellers, thrusts, number(0, 14), (propeller, thrust, advance) => {
        const { revs, advanceRatio } = propellerPoint(propellerModel(propeller, 1025), thrust, advance);
        const scale = 1025 * revs ** 2 * propeller.diameter ** 4;
        const error = ktOf(openWater(propeller), advanceRatio) * scale - thrust;
        // KT goes to nothing at high advance ratios, so the error is held against the terms it is the difference of.
        expect(Math.abs(error)).toBeLessThan(1e-9 * (thrust + scale));
      }),
      SETTINGS,
    );
  });
});

describe('drive', () => {
  it('gives finite, positive figures for any resistance, pushed or pulled, at any speed', () => {
    fc.assert(
      fc.property(models, number(-5000, 20000), number(0, 30), (model, resistance, speed) => {
        const { base, ...slopes } = flowGradient(model, resistance, speed);
        const { held: _held, limit: _limit, ...figures } = base;
        for (const figure of [...Object.values(figures), ...Object.values(slopes)]) {
          expect(Number.isFinite(figure)).toBe(true);
        }
        expect(base.power).toBeGreaterThan(0);
        expect(base.available).toBeGreaterThan(0);
        expect(base.flow).toBeGreaterThanOrEqual(idleFlow(model) * 0.999999);
      }),
      SETTINGS,
    );
  });

  it('needs more revs, power and flow and slips more when the boat drags more', () => {
    fc.assert(
      fc.property(models, thrusts, speeds, number(1.001, 2), (model, resistance, speed, factor) => {
        const light = drivePoint(model, resistance, speed);
        const heavy = drivePoint(model, resistance * factor, speed);
        for (const figure of ['rpm', 'power', 'flow', 'slip'] as const) {
          expect(heavy[figure]).toBeGreaterThan(light[figure]);
        }
      }),
      SETTINGS,
    );
  });

  it('has the slopes that small differences show', () => {
    fc.assert(
      fc.property(drives, thrusts, speeds, (drive, resistance, speed) => {
        const at = (shift: Partial<DriveFactors>, extra = 0) => {
          const factors = { pitchShift: 0.002, fuel: 1.1, friction: 0.001, ...shift };
          return drivePoint(driveModel(drive, { density: 1025, form: 'rib', factors }), resistance + extra, speed).flow;
        };
        const factors = { pitchShift: 0.002, fuel: 1.1, friction: 0.001 };
        const model = driveModel(drive, { density: 1025, form: 'rib', factors });
        const { base, dFlow_dResistance, dFlow_dPitch, dFlow_dFuel, dFlow_dFriction } = flowGradient(
          model,
          resistance,
          speed,
        );
        expect(base).toEqual(drivePoint(model, resistance, speed));
        const near = (slope: number, up: number, down: number, step: number) => {
          const difference = (up - down) / (2 * step);
          expect(Math.abs(slope - difference)).toBeLessThan(1e-5 * Math.abs(difference) + (1e-9 * base.flow) / step);
        };
        const force = 1e-3 * resistance;
        near(dFlow_dResistance, at({}, force), at({}, -force), force);
        near(dFlow_dPitch, at({ pitchShift: 0.00202 }), at({ pitchShift: 0.00198 }), 0.00002);
        near(dFlow_dFuel, at({ fuel: 1.11 }), at({ fuel: 1.09 }), 0.01);
        near(dFlow_dFriction, at({ friction: 0.0015 }), at({ friction: 0.0005 }), 0.0005);
      }),
      SETTINGS,
    );
  });

  it('has no kink where the wind takes over from the propeller', () => {
    fc.assert(
      fc.property(models, speeds, (model, speed) => {
        const slope = (resistance: number) => flowGradient(model, resistance, speed).dFlow_dResistance;
        const step = 1e-6 * speed * speed;
        expect(Math.abs(slope(step) / slope(-step) - 1)).toBeLessThan(1e-3);
      }),
      SETTINGS,
    );
  });

  it('has no kink in speed', () => {
    fc.assert(
      fc.property(models, number(60, 900), speeds, (model, mass, speed) => {
        const flow = (v: number) => drivePoint(model, plainResistance(mass, v), v).flow;
        // A kink keeps its difference of slopes as the step shrinks; a smooth curve loses it in proportion.
        const bend = (h: number) => Math.abs(flow(speed + h) - 2 * flow(speed) + flow(speed - h)) / h;
        expect(bend(1e-4)).toBeLessThan(0.15 * bend(1e-3) + 1e-7 * flow(speed));
      }),
      SETTINGS,
    );
  });

  it('behaves unmeasured as with the factors of an unmeasured boat', () => {
    fc.assert(
      fc.property(drives, thrusts, speeds, (drive, resistance, speed) => {
        const plain = driveModel(drive, { density: 1025, form: 'rib' });
        const spelled = driveModel(drive, {
          density: 1025,
          form: 'rib',
          factors: { pitchShift: 0, fuel: 1, friction: 0 },
        });
        expect(drivePoint(spelled, resistance, speed)).toEqual(drivePoint(plain, resistance, speed));
      }),
      { ...SETTINGS, numRuns: 50 },
    );
  });
});

describe('a 15 hp four-stroke on a planing boat', () => {
  const model = driveModel(petrolDrive(15, '4s-carb'), { density: 1025, form: 'rib' });
  const at = (knots: number, mass = 430) => drivePoint(model, plainResistance(mass, knots * KNOT), knots * KNOT);
  const perMile = (knots: number, mass = 430) => at(knots, mass).flow / knots;

  it('uses least per mile at a crawl, most on the hump, and has a flat second minimum on the plane', () => {
    const knots = Array.from({ length: 171 }, (_, i) => 2 + i / 10);
    const use = knots.map((v) => perMile(v));
    const turns = knots.filter((_, i) => i > 0 && i < 170 && (use[i]! - use[i - 1]!) * (use[i + 1]! - use[i]!) < 0);
    expect(turns).toHaveLength(3);
    const [crawl, hump, plane] = turns;
    expect(crawl).toBeLessThan(4);
    expect(hump).toBeGreaterThan(5);
    expect(hump).toBeLessThan(9);
    expect(plane).toBeGreaterThan(hump! + 2);
    expect(perMile(4.5) / perMile(plane!)).toBeGreaterThan(0.6);
    expect(perMile(4.5) / perMile(plane!)).toBeLessThan(0.9);
  });

  it('slips most on the hump and least flat out', () => {
    expect(at(4).slip).toBeGreaterThan(0.25);
    expect(at(4).slip).toBeLessThan(0.4);
    expect(at(6.5).slip).toBeGreaterThan(0.35);
    expect(at(6.5).slip).toBeLessThan(0.5);
    expect(at(18).slip).toBeGreaterThan(0.08);
    expect(at(18).slip).toBeLessThan(0.2);
  });

  it('burns more with more aboard at every speed', () => {
    fc.assert(
      fc.property(number(2, 18), number(250, 600), number(1, 200), (knots, mass, extra) => {
        expect(at(knots, mass + extra).flow).toBeGreaterThan(at(knots, mass).flow);
      }),
      SETTINGS,
    );
  });

  it('flat out burns the same within 5 % whatever it carries, with a propeller that lets it reach rated revs', () => {
    const propped = driveModel(petrolDrive(15, '4s-carb', inchPropeller(9.25, 10)), { density: 1025, form: 'rib' });
    const fullThrottle = (mass: number) => {
      let speed = 4;
      let point = drivePoint(propped, plainResistance(mass, speed), speed);
      while (point.throttle < 1) {
        speed += 0.002;
        point = drivePoint(propped, plainResistance(mass, speed), speed);
      }
      expect(point.revShare).toBeGreaterThan(0.92);
      expect(point.revShare).toBeLessThan(1.08);
      return litresPerHour(point.flow);
    };
    expect(Math.abs(fullThrottle(540) / fullThrottle(700) - 1)).toBeLessThan(0.05);
  });
});

describe('any propeller that the door lets in', () => {
  it('asks for power and burns fuel, however little thrust is asked', () => {
    const propeller = fc.record({
      diameterIn: number(2, 40),
      ratio: number(0.4, 1.5),
      blades: fc.integer({ min: 2, max: 7 }),
      areaRatio: number(0.3, 1.05),
    });
    fc.assert(
      fc.property(propeller, number(-50, 500), number(0, 14), ({ diameterIn, ratio, blades, areaRatio }, pull, v) => {
        const drive = petrolDrive(15, '4s-carb', inchPropeller(diameterIn, ratio * diameterIn, { blades, areaRatio }));
        const point = drivePoint(driveModel(drive, { density: 1025, form: 'rib' }), pull, v);
        return point.power >= 0 && point.flow > 0 && Number.isFinite(point.flow) && Number.isFinite(point.efficiency);
      }),
      SETTINGS,
    );
  });
});

describe('batteries', () => {
  const chemistries = fc.constantFrom('nmc', 'lfp', 'agm', 'flooded-lead' as const);

  it('lose more the harder they are drawn from, never less than is taken', () => {
    fc.assert(
      fc.property(
        chemistries,
        number(200, 10000),
        number(1, 8000),
        number(1.001, 3),
        (chemistry, size, power, more) => {
          const bank = batteryBank([battery(chemistry, size)], 20);
          expect(storeFlow(power, bank)).toBeGreaterThanOrEqual(power);
          expect(storeFlow(power * more, bank) / more).toBeGreaterThanOrEqual(storeFlow(power, bank) * 0.999999);
        },
      ),
      SETTINGS,
    );
  });

  it("last as Peukert's law says far above the rated rate, and as printed far below", () => {
    fc.assert(
      fc.property(number(2, 50), number(1.01, 1.4), (rate, exponent) => {
        const discharge = { capacityAh: 100, ratedTime: 20 * 3600, current: 5 * rate, exponent };
        const time = (100 * 3600) / (discharge.current * rateFactor(rate, exponent));
        expect(time / peukertTime(discharge)).toBeCloseTo(1, 3);
        expect(rateFactor(1 / rate, exponent)).toBeLessThan(1.001);
      }),
      SETTINGS,
    );
  });

  it('hold and give less in the cold and at low charge', () => {
    fc.assert(
      fc.property(
        chemistries,
        number(-25, 30),
        number(0.01, 10),
        number(0.02, 1),
        (chemistry, warm, colder, charge) => {
          expect(coldFactor(chemistry, warm - colder)).toBeLessThanOrEqual(coldFactor(chemistry, warm));
          const bank = batteryBank([battery(chemistry, 2000)], warm);
          const cold = batteryBank([battery(chemistry, 2000)], warm - colder);
          expect(usableCharge(cold, charge)).toBeLessThanOrEqual(usableCharge(bank, charge));
          expect(batteryPowerLimit(cold, charge)).toBeLessThan(batteryPowerLimit(bank, charge));
          expect(batteryPowerLimit(bank, charge * 0.9)).toBeLessThan(batteryPowerLimit(bank, charge));
        },
      ),
      SETTINGS,
    );
  });
});
