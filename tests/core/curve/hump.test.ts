import { describe, expect, it } from 'vitest';
import type { Afloat, Boat } from '../../../src/core/curve/boat.ts';
import {
  batteryMargin,
  type ClimbHulls,
  firstStop,
  HUMP_MARGIN,
  humpOf,
  marginOf,
  PLANING_FROUDE,
  speedAtFroude,
} from '../../../src/core/curve/hump.ts';
import { CALM, steady } from '../../../src/core/curve/steady.ts';
import { batteryPowerLimit } from '../../../src/core/drive/battery-power.ts';
import type { DrivePoint } from '../../../src/core/drive/demand.ts';
import { loaded } from './loaded.ts';

const { boat, afloat } = loaded('rib-4-7', 'petrol-40hp-4s', 'tank-25');
const weak = loaded('rib-4-7', 'petrol-9-9hp-4s', 'tank-25');
const motor = loaded('rib-3-4', 'electric-3-1kw', 'battery-3-nmc');

const drive = (throttle: number, revShare: number, flow = 0) => ({ throttle, revShare, flow }) as DrivePoint;
const marginAt = (of: { boat: Boat; afloat: Afloat }, speed: number, weather = CALM) =>
  marginOf(of.boat, of.afloat, steady(of.boat, of.afloat, speed, weather).drive);
/** The eleven speeds of the climb onto the plane. */
const climb = (of: { boat: Boat; afloat: Afloat }) =>
  Array.from({ length: 11 }, (_, i) => speedAtFroude(of.boat, of.afloat, 1.2 + 0.1 * i));

describe('what is left at a speed', () => {
  it('is full power over what is asked, or the rev limit over the revs, the smaller', () => {
    const { revLimit } = boat.model;
    expect(marginOf(boat, afloat, drive(0.5, revLimit / 4))).toBeCloseTo(2, 12);
    expect(marginOf(boat, afloat, drive(0.25, revLimit / 1.5))).toBeCloseTo(1.5, 12);
    expect(marginOf(boat, afloat, drive(1.25, revLimit))).toBeCloseTo(0.8, 12);
  });

  it('is 99 times as much at most, where nothing is asked as well', () => {
    expect(marginOf(boat, afloat, drive(0.0001, 0.0001))).toBe(99);
    expect(marginOf(boat, afloat, drive(0, 0))).toBe(99);
    expect(marginOf(boat, afloat, drive(0, boat.model.revLimit / 2))).toBeCloseTo(2, 12);
    expect(marginOf(boat, afloat, drive(0.5, 0))).toBe(2);
  });

  it('is with a battery also what it gives at its charge over what the motor takes', () => {
    const bank = motor.boat.bank!;
    const full = batteryPowerLimit(bank, 1);
    expect(batteryMargin(motor.boat, motor.afloat, drive(1, 1, full / 3))).toBeCloseTo(3, 12);
    const low = { ...motor.afloat, charge: 0.1 };
    const given = batteryPowerLimit(bank, 0.1);
    expect(given).toBeLessThan(full);
    expect(batteryMargin(motor.boat, low, drive(1, 1, given / 3))).toBeCloseTo(3, 12);
    expect(marginOf(motor.boat, motor.afloat, drive(0.01, 0.01, full / 1.2))).toBeCloseTo(1.2, 12);
    expect(batteryMargin(motor.boat, motor.afloat, drive(0, 0, 0))).toBe(99);
    // Petrol has no such limit.
    expect(batteryMargin(boat, afloat, drive(1, 1, 1e9))).toBe(99);
  });
});

describe('a speed at a volume Froude number', () => {
  it('grows with the sixth root of the mass', () => {
    const speed = speedAtFroude(boat, afloat, 1);
    expect(speed).toBeCloseTo(Math.sqrt(9.80665 * (afloat.mass / boat.water.density) ** (1 / 3)), 3);
    expect(speedAtFroude(boat, { ...afloat, mass: 64 * afloat.mass }, 1) / speed).toBeCloseTo(2, 9);
    expect(speedAtFroude(boat, afloat, 2.2) / speed).toBeCloseTo(2.2, 12);
  });

  it('is planing from 2.2 on, and 5 % of power to spare carries over the hump', () => {
    expect(PLANING_FROUDE).toBe(2.2);
    expect(HUMP_MARGIN).toBe(1.05);
  });
});

describe('the hump', () => {
  it('is the tightest of eleven speeds from Froude number 1.2 to 2.2', () => {
    const margins = climb({ boat, afloat }).map((speed) => marginAt({ boat, afloat }, speed));
    const { speed, margin } = humpOf(boat, afloat, CALM);
    const least = Math.min(...margins);
    expect(margin).toBeCloseTo(least, 9);
    expect(speed).toBeCloseTo(climb({ boat, afloat })[margins.indexOf(least)]!, 9);
  });

  it('lies amid the climb of a small boat, tighter than what comes before and after', () => {
    const small = loaded('catamaran-2-9', 'petrol-9-9hp-4s', 'tank-25', { extra: 50 });
    const speeds = climb(small);
    const { speed, margin } = humpOf(small.boat, small.afloat, CALM);
    const at = speeds.findIndex((one) => Math.abs(one - speed) < 1e-9);
    expect(at).toBeGreaterThan(0);
    expect(at).toBeLessThan(10);
    speeds.forEach((one, i) => {
      if (i !== at) expect(marginAt(small, one)).toBeGreaterThan(margin);
    });
    expect(firstStop(small.boat, small.afloat, CALM, 99)!).toBeLessThanOrEqual(speed);
  });

  it('counts only up to the speed that is wanted, that one included', () => {
    const speeds = climb(weak);
    const first = speedAtFroude(weak.boat, weak.afloat, 1.2);
    expect(humpOf(weak.boat, weak.afloat, CALM, first)).toEqual({
      speed: first,
      margin: marginAt(weak, first),
    });
    expect(humpOf(weak.boat, weak.afloat, CALM, first - 1e-6)).toEqual({ speed: 0, margin: Infinity });
    const some = humpOf(weak.boat, weak.afloat, CALM, speeds[4]! + 0.01);
    expect(some.margin).toBeCloseTo(Math.min(...speeds.slice(0, 5).map((speed) => marginAt(weak, speed))), 9);
  });

  it('is tighter against wind and sea, and for a heavier boat', () => {
    const calm = humpOf(boat, afloat, CALM).margin;
    expect(humpOf(boat, afloat, { headwind: 8, waveHeight: 0 }).margin).toBeLessThan(calm);
    expect(humpOf(boat, afloat, { headwind: 0, waveHeight: 0.3 }).margin).toBeLessThan(calm);
    expect(humpOf(boat, { ...afloat, mass: afloat.mass + 150 }, CALM).margin).toBeLessThan(calm);
  });

  it('keeps the bare hull at each speed for other weather, and takes it from there', () => {
    const hulls: ClimbHulls = [];
    const found = humpOf(boat, afloat, CALM, Infinity, hulls);
    expect(hulls).toHaveLength(11);
    const kept = [...hulls];
    expect(humpOf(boat, afloat, CALM, Infinity, hulls)).toEqual(found);
    expect(hulls.every((hull, i) => hull === kept[i])).toBe(true);
    const lighter = hulls.map((hull) => ({ ...hull, total: hull.total / 2 }));
    expect(humpOf(boat, afloat, CALM, Infinity, lighter).margin).toBeGreaterThan(found.margin);
  });
});

describe('the way up', () => {
  it('stops at the first speed of the climb that is not held', () => {
    const speeds = climb(weak);
    const first = speeds.findIndex((speed) => marginAt(weak, speed) < 1);
    expect(first).toBeGreaterThan(0);
    expect(firstStop(weak.boat, weak.afloat, CALM, 99)).toBeCloseTo(speeds[first]!, 9);
  });

  it('is clear up to that speed, and for a boat with power to spare', () => {
    const stop = firstStop(weak.boat, weak.afloat, CALM, 99)!;
    expect(firstStop(weak.boat, weak.afloat, CALM, stop)).toBeUndefined();
    expect(firstStop(weak.boat, weak.afloat, CALM, stop + 1e-6)).toBe(stop);
    expect(firstStop(boat, afloat, CALM, 99)).toBeUndefined();
  });

  it('stops earlier in wind and sea', () => {
    const stop = firstStop(weak.boat, weak.afloat, CALM, 99)!;
    expect(firstStop(weak.boat, weak.afloat, { headwind: 14, waveHeight: 0.4 }, 99)!).toBeLessThan(stop);
  });

  it('stops at the top of the climb where only that is too much', () => {
    const top = climb(weak)[10]!;
    // Just as much mass as leaves the last speed of the climb unheld.
    let [light, heavy] = [0.3 * weak.afloat.mass, weak.afloat.mass];
    const at = (mass: number) => firstStop(weak.boat, { ...weak.afloat, mass }, CALM, 99);
    expect(at(light)).toBeUndefined();
    for (let i = 0; i < 30; i++) {
      const mass = (light + heavy) / 2;
      if (at(mass) === undefined) light = mass;
      else heavy = mass;
    }
    const { margin } = humpOf(weak.boat, { ...weak.afloat, mass: light }, CALM);
    expect(margin).toBeCloseTo(1, 4);
    expect(top).toBeGreaterThan(at(heavy)!);
  });
});
