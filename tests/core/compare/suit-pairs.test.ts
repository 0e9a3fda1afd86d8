import { describe, expect, it } from 'vitest';
import { goTogether } from '../../../src/core/compare/suit-pairs.ts';

const petrol = (ratedPower: number) => ({ kind: 'petrol', ratedPower }) as never;
const electric = (ratedPower: number) => ({ kind: 'electric', ratedPower }) as never;
const tank = (...fixed: boolean[]) => ({ kind: 'tank', tanks: fixed.map((each) => ({ fixed: each })) }) as never;
const battery = (...volts: number[]) =>
  ({ kind: 'battery', batteries: volts.map((voltage) => ({ voltage })) }) as never;

describe('engine and store', () => {
  it('go together only of one kind', () => {
    expect(goTogether(petrol(3000), battery(24))).toBe(false);
    expect(goTogether(electric(1000), tank(true))).toBe(false);
  });

  it('the tank under the cover goes with engines up to 4.6 kW, one with a hose from 2.9 kW', () => {
    expect([4600, 4601].map((power) => goTogether(petrol(power), tank(true)))).toEqual([true, false]);
    expect([2899, 2900].map((power) => goTogether(petrol(power), tank(false)))).toEqual([false, true]);
    // One of two built in makes it the small engine's.
    expect([2000, 5000].map((power) => goTogether(petrol(power), tank(false, true)))).toEqual([true, false]);
  });

  it('small motors run on up to 30 V, large ones on 40 and more, and all batteries must fit', () => {
    expect([1900, 1901].map((power) => goTogether(electric(power), battery(30)))).toEqual([true, false]);
    expect([999, 1000].map((power) => goTogether(electric(power), battery(40)))).toEqual([false, true]);
    expect([30.5, 39.5].map((volts) => goTogether(electric(1500), battery(volts)))).toEqual([false, false]);
    expect(goTogether(electric(1500), battery(24, 48))).toBe(true);
    expect(goTogether(electric(3000), battery(24, 48))).toBe(false);
  });
});
