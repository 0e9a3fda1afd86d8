import { describe, expect, it } from 'vitest';
import { ambientCorrection } from '../../../src/core/drive/ambient.ts';
import { driveModel, drivePoint, idleFlow } from '../../../src/core/drive/demand.ts';
import { fuelFlow, fuelLaw, fullThrottleShare } from '../../../src/core/drive/petrol.ts';
import { KNOT } from '../../../src/core/units/convert.ts';
import { inchPropeller, litresPerHour, petrolDrive, plainResistance } from './drives.ts';

describe('fullThrottleShare', () => {
  it('is rated power at rated revs, and no more on either side', () => {
    expect(fullThrottleShare(1)).toBe(1);
    expect(fullThrottleShare(0.99)).toBeLessThan(1);
    expect(fullThrottleShare(1.01)).toBeLessThan(1);
  });

  it('is nothing at rest and stays above nothing at any overspeed', () => {
    expect(fullThrottleShare(0)).toBe(0);
    for (const revs of [0.1, 1.05, 1.2, 2, 10]) expect(fullThrottleShare(revs)).toBeGreaterThan(0);
  });

  it('goes on past its published end without a step or a bend', () => {
    const slope = (from: number, to: number) => (fullThrottleShare(to) - fullThrottleShare(from)) / (to - from);
    expect(slope(1.0999, 1.1)).toBeCloseTo(slope(1.1, 1.1001), 3);
  });
});

describe('fuel flow', () => {
  it('of an idling 15 hp four-stroke is a few tenths of a litre an hour', () => {
    const idle = litresPerHour(idleFlow(driveModel(petrolDrive(15, '4s-carb'), { density: 1025, form: 'rib' })));
    expect(idle).toBeGreaterThan(0.15);
    expect(idle).toBeLessThan(0.45);
  });

  it('falls to idle, not to nothing, as the boat comes to rest, so a mile costs without bound', () => {
    const model = driveModel(petrolDrive(15, '4s-carb'), { density: 1025, form: 'rib' });
    const perMetre = (speed: number) => drivePoint(model, plainResistance(430, speed), speed).flow / speed;
    expect(drivePoint(model, 0, 0).flow).toBeCloseTo(idleFlow(model), 12);
    expect(perMetre(0.01)).toBeGreaterThan(10 * perMetre(0.1) * 0.99);
    expect(perMetre(0.001)).toBeGreaterThan(100 * perMetre(0.1) * 0.99);
  });

  it('grows by the calibration factor, and with a higher friction share weighs part load more', () => {
    const drive = petrolDrive(15, '4s-carb');
    const plain = fuelLaw(drive);
    expect(fuelFlow(fuelLaw(drive, 1.2), 0.4, 0.7)).toBeCloseTo(1.2 * fuelFlow(plain, 0.4, 0.7), 12);
    const rubbing = fuelLaw(drive, 1, 0.3);
    expect(fuelFlow(rubbing, 1, 1) / fuelFlow(plain, 1, 1)).toBeCloseTo(1, 6);
    expect(fuelFlow(rubbing, 0.4, 0.7)).toBeGreaterThan(fuelFlow(plain, 0.4, 0.7));
  });

  it('of old two-strokes is 1.3 to 1.5 times a four-stroke at full throttle, 1.7 times cruising and about twice when pottering', () => {
    const ratio = (speedKn: number) => {
      const [two, four] = (['2s-carb', '4s-carb'] as const).map((cycle) => {
        const model = driveModel(petrolDrive(15, cycle), { density: 1025, form: 'rib' });
        return drivePoint(model, plainResistance(430, speedKn * KNOT), speedKn * KNOT).flow;
      });
      return two! / four!;
    };
    expect(ratio(19)).toBeGreaterThan(1.3);
    expect(ratio(19)).toBeLessThan(1.5);
    expect(ratio(14)).toBeCloseTo(1.66, 1);
    expect(ratio(4)).toBeGreaterThan(1.8);
    expect(ratio(4)).toBeLessThan(2.15);
  });
});

describe('the air', () => {
  it('of a 5 C day gives 7 % more power and leaves the flow at a given speed alone', () => {
    const drive = petrolDrive(15, '4s-carb');
    const standard = driveModel(drive, { density: 1025, form: 'rib' });
    const cold = driveModel(drive, { density: 1025, form: 'rib', fullPower: 1 / ambientCorrection(101.3, 5) });
    const [a, b] = [standard, cold].map((model) => drivePoint(model, 500, 8));
    expect(b!.available / a!.available).toBeCloseTo(1.07, 2);
    expect(b!.flow).toBe(a!.flow);
    expect(b!.throttle).toBeLessThan(a!.throttle);
  });

  it('of a mountain lake takes a sixth of the power', () => {
    expect(1 - 1 / ambientCorrection(84, 25)).toBeCloseTo(1 / 6, 1);
  });
});

describe('the propeller for the boat', () => {
  const at = (pitch: number) => {
    const model = driveModel(petrolDrive(15, '4s-carb', inchPropeller(9.25, pitch)), { density: 1025, form: 'rib' });
    return drivePoint(model, 480, 14 * KNOT);
  };

  it('with more pitch turns slower and burns slightly less at the same speed', () => {
    expect(at(10).rpm).toBeLessThan(at(9).rpm);
    expect(at(10).flow).toBeLessThan(at(9).flow);
    expect(at(10).flow / at(9).flow).toBeGreaterThan(0.93);
  });

  it('too fine runs into the rev limit, too coarse out of power', () => {
    const demand = (pitch: number) => {
      const model = driveModel(petrolDrive(15, '4s-carb', inchPropeller(9.25, pitch)), { density: 1025, form: 'rib' });
      return drivePoint(model, 600, 20 * KNOT);
    };
    expect(demand(7)).toMatchObject({ held: false, limit: 'revs' });
    expect(demand(12).limit).toBe('power');
  });
});
