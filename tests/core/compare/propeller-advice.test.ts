import { describe, expect, it } from 'vitest';
import { pitched, revsOf } from '../../../src/core/compare/full-throttle.ts';
import { propellerAdvice, usualWindow } from '../../../src/core/compare/propeller-advice.ts';
import type { Craft } from '../../../src/core/craft/shapes.ts';
import { PLANING_FROUDE, speedAtFroude } from '../../../src/core/curve/hump.ts';
import { INCH } from '../../../src/core/units/convert.ts';
import { loadedWith } from './boats.ts';

const WINDOW = { low: 5000, high: 6000 };

function pitchedBy(inches: number): (craft: Craft) => Craft {
  return (craft) => {
    const { propeller } = craft.drive;
    return { ...craft, drive: { ...craft.drive, propeller: { ...propeller, pitch: propeller.pitch + inches * INCH } } };
  };
}

const advice = (inches: number, measured?: number) => {
  const { boat, afloat } = loadedWith('catamaran-3-6', 'petrol-15hp-4s', 'tank-25', { change: pitchedBy(inches) });
  return propellerAdvice(boat, afloat, WINDOW, measured);
};

describe('propeller advice', () => {
  it('has revs rise as pitch falls', () => {
    const { pitches } = advice(0);
    for (let i = 1; i < pitches.length; i++) expect(pitches[i]!.rpm).toBeLessThan(pitches[i - 1]!.rpm);
  });

  it('wants less pitch where the engine cannot turn up, more where it runs away', () => {
    const coarse = advice(4);
    expect(coarse.finding).toMatch(/low/);
    expect(coarse.change!.model).toBeLessThan(0);
    const fine = advice(-2);
    expect(fine.finding).toMatch(/high/);
    expect(fine.change!.model).toBeGreaterThan(0);
    expect(fine.predicted.limited).toBe(true);
  });

  it('lands in the window with the pitch it names', () => {
    for (const inches of [-2, 4]) {
      const named = inches + advice(inches).change!.model / INCH;
      expect(advice(named).finding).toBe('in-window');
    }
  });

  it('goes by measured revs, and is surer then', () => {
    const predicted = advice(0);
    const measured = advice(0, 4600);
    expect(measured.finding).toBe('too-low');
    expect(measured.change!.model).toBeLessThan(0);
    expect(measured.rpm.high - measured.rpm.low).toBeLessThan(0.3 * (predicted.rpm.high - predicted.rpm.low));
  });

  it('changes revs by about as large a share as pitch, as propeller shops and owners find', () => {
    // propellerpros.com, RPM guide: per cent of pitch is per cent of revs; an owner of a small outboard on a boating
    // forum measured 600 of 5600 rpm for 8 in place of 9 in of pitch. Our model says three quarters of the share.
    const { perInch, rpm } = advice(-0.5);
    const share = perInch / rpm.median / (1 / 9);
    expect(share).toBeGreaterThan(0.5);
    expect(share).toBeLessThan(1);
    expect(600 / 5600 / (1 / 9)).toBeGreaterThan(share);
  });

  it('puts the weight before the propeller where the boat does not get over the hump', () => {
    const { boat, afloat } = loadedWith('catamaran-3-6', 'petrol-8hp-4s', 'tank-12', { count: 4 });
    const found = propellerAdvice(boat, afloat, WINDOW);
    expect(found.stuck).toBe(true);
    expect(found.finding).toMatch(/low/);
  });

  it('offers a usual window round rated revs', () => {
    expect(usualWindow(5500)).toEqual({ low: 5000, high: 6000 });
  });

  const { boat, afloat } = loadedWith('catamaran-3-6', 'petrol-15hp-4s', 'tank-25');
  const { pitch } = boat.craft.drive.propeller;

  it('looks four inches to both sides by half inches, at what each propeller turns and makes', () => {
    const { pitches, window } = advice(0);
    expect(window).toBe(WINDOW);
    expect(pitches[0]!.change / INCH).toBeCloseTo(-4, 6);
    expect(pitches.at(-1)!.change / INCH).toBeCloseTo(4, 6);
    expect(pitches).toHaveLength(17);
    const onPlane = speedAtFroude(boat, afloat, PLANING_FROUDE);
    for (const each of pitches) {
      expect(each.pitch).toBeCloseTo(pitch + each.change, 12);
      const { speed, rpm } = revsOf(pitched(boat, each.change), afloat);
      expect([each.rpm, each.topSpeed]).toEqual([rpm, speed]);
      expect(each.inWindow).toBe(rpm >= 5000 && rpm <= 6000);
      expect(each.planes).toBe(speed >= onPlane);
    }
    expect(new Set(pitches.map(({ inWindow }) => inWindow)).size).toBe(2);
  });

  it('looks at no propeller flatter than half of the one now', () => {
    const small = loadedWith('catamaran-2-9', 'petrol-2-5hp-4s', 'tank-built-in-1-1');
    const now = small.boat.craft.drive.propeller.pitch;
    const { pitches } = propellerAdvice(small.boat, small.afloat, WINDOW);
    // Six inches: three of them at least.
    expect(now / INCH).toBeCloseTo(6, 6);
    for (const each of pitches) expect(each.pitch).toBeGreaterThanOrEqual(0.5 * now - 1e-9);
    expect(pitches[0]!.pitch / INCH).toBeLessThan(3.6);
  });

  it('scales all revs by what was measured, read to one in a hundred', () => {
    const measured = 5200;
    const predicted = advice(0);
    const scale = measured / predicted.rpm.median;
    const found = advice(0, measured);
    for (const [i, { rpm }] of found.pitches.entries()) expect(rpm).toBeCloseTo(scale * predicted.pitches[i]!.rpm, 6);
    expect(found.perInch).toBeCloseTo(scale * predicted.perInch, 6);
    expect(found.rpm.median).toBe(measured);
    expect(found.rpm.high / measured - 1).toBeCloseTo(0.012816, 9);
    expect(1 - found.rpm.low / measured).toBeCloseTo(0.012816, 9);
  });

  it('names a doubt where the band reaches into the window, and none at its ends', () => {
    const finding = (measured: number) => advice(0, measured).finding;
    expect([4900, 4960, 5000, 5500, 6000, 6040, 6100].map(finding)).toEqual([
      'too-low',
      'maybe-low',
      'in-window',
      'in-window',
      'in-window',
      'maybe-high',
      'too-high',
    ]);
    expect(advice(0, 5500).change).toBeUndefined();
  });

  it('aims at the middle of the upper half, by the model between two pitches, by practice at 200 to 300 an inch', () => {
    for (const measured of [4600, 6400]) {
      const { change, pitches } = advice(0, measured);
      const missing = 5750 - measured;
      expect(change!.practice[0] / INCH).toBeCloseTo(-missing / 300, 9);
      expect(change!.practice[1] / INCH).toBeCloseTo(-missing / 200, 9);
      const after = pitches.findIndex(({ rpm }) => rpm <= 5750);
      const [a, b] = [pitches[after - 1]!, pitches[after]!];
      expect(change!.model).toBeGreaterThanOrEqual(a.change);
      expect(change!.model).toBeLessThanOrEqual(b.change);
      const share = (change!.model - a.change) / (b.change - a.change);
      expect(a.rpm + share * (b.rpm - a.rpm)).toBeCloseTo(5750, 6);
    }
  });

  it('goes on by the slope where no pitch within reach turns so', () => {
    const { change, perInch } = advice(0, 2500);
    expect(change!.model / INCH).toBeCloseTo(-(5750 - 2500) / perInch, 6);
  });

  it('is stuck only if the boat is made to plane', () => {
    expect(advice(0).stuck).toBe(false);
    const launch = loadedWith('launch-4-9', 'petrol-6hp-4s', 'tank-12');
    expect(propellerAdvice(launch.boat, launch.afloat, WINDOW).stuck).toBe(false);
  });
});
