import { describe, expect, it } from 'vitest';
import { firstStop, humpOf, marginOf } from '../../../src/core/curve/hump.ts';
import { CALM, steady, type Weather } from '../../../src/core/curve/steady.ts';
import { AS_PLANNED, afloatIn } from '../../../src/core/trip/afloat-in.ts';
import { givenOf, prepare } from '../../../src/core/trip/prepare.ts';
import { expected, type Scenario } from '../../../src/core/trip/scenario.ts';
import { wayIsClear, yieldedSpeed } from '../../../src/core/trip/yielded-speed.ts';
import { windTable } from '../../../src/core/water/wind-by-time.ts';
import { haven, soundTrip } from '../../trips.ts';
import { loaded } from '../curve/loaded.ts';

const strong = loaded('rib-4-7', 'petrol-40hp-4s', 'tank-25');
const weak = loaded('rib-4-7', 'petrol-9-9hp-4s', 'tank-25');
const held = ({ boat, afloat }: typeof weak, speed: number, weather: Weather = CALM) =>
  marginOf(boat, afloat, steady(boat, afloat, speed, weather).drive);

describe('the speed a boat yields to', () => {
  it('is the one that is wanted, where it is held and the way up is clear', () => {
    const { speed, now } = yieldedSpeed(strong.boat, strong.afloat, CALM, 10, false);
    expect(speed).toBe(10);
    expect(now).toEqual(steady(strong.boat, strong.afloat, 10, CALM));
    expect(yieldedSpeed(strong.boat, strong.afloat, CALM, 10, true)).toEqual({ speed, now });
  });

  it('is to a millimetre a second the highest that is held below the wanted', () => {
    const { speed, now } = yieldedSpeed(strong.boat, strong.afloat, CALM, 30, true);
    expect(now).toBeUndefined();
    expect(held(strong, speed)).toBeGreaterThanOrEqual(1);
    expect(held(strong, speed + 0.0011)).toBeLessThan(1);
    expect(speed).toBeLessThan(30);
    expect(speed).toBeGreaterThan(10);
  });

  it('stays below a hump that is not crossed, however well a speed beyond it could be held', () => {
    const stop = firstStop(weak.boat, weak.afloat, CALM, 99)!;
    const { speed } = yieldedSpeed(weak.boat, weak.afloat, CALM, stop + 3, false);
    expect(speed).toBeLessThan(stop);
    expect(held(weak, speed)).toBeGreaterThanOrEqual(1);
    expect(held(weak, speed + 0.0011)).toBeLessThan(1);
    // Up to the hump itself nothing stops it.
    const below = stop - 0.5;
    expect(held(weak, below) >= 1 ? yieldedSpeed(weak.boat, weak.afloat, CALM, below, false).speed : below).toBe(below);
  });

  it('beyond a hump that is not crossed is reached only by a boat known to be over it', () => {
    const { boat, afloat } = loaded('catamaran-2-9', 'petrol-9-9hp-4s', 'tank-25', { extra: 50 });
    const hump = humpOf(boat, afloat, CALM);
    const beyond = hump.speed + 1.75;
    expect(hump.margin).toBeLessThan(1);
    expect(marginOf(boat, afloat, steady(boat, afloat, beyond, CALM).drive)).toBeGreaterThan(1);
    expect(yieldedSpeed(boat, afloat, CALM, beyond, true).speed).toBe(beyond);
    const { speed, now } = yieldedSpeed(boat, afloat, CALM, beyond, false);
    expect(now).toBeUndefined();
    expect(speed).toBeLessThan(hump.speed);
    expect(speed).toBeGreaterThan(firstStop(boat, afloat, CALM, beyond)! - 0.5);
  });

  it('ends below 0.3 m/s where nothing is held against a storm', () => {
    const weather = { headwind: 60, waveHeight: 0 };
    const { speed, now } = yieldedSpeed(weak.boat, weak.afloat, weather, 1, false);
    expect(speed).toBeLessThanOrEqual(0.3);
    expect(speed).toBeGreaterThan(0.15);
    expect(now).toBeUndefined();
  });
});

describe('the way over the hump', () => {
  const prepared = prepare(soundTrip(), haven());
  const scenario: Scenario = { ...expected(givenOf(prepared)), wind: undefined, headwindHome: 0, waveHeight: 0 };
  const boat = prepared.boatAt(scenario.batteryTemperatureC);
  const heaviest = (extraMass: number) =>
    afloatIn(prepared, scenario, prepared.storeMass(scenario.weighs), { tweak: { extraMass, use: 1 }, charge: 0 });
  const margin = (extraMass: number, headwind = 0, waveHeight = 0) => {
    const full = heaviest(extraMass);
    const empty = afloatIn(prepared, scenario, 0, { tweak: { extraMass, use: 1 } });
    return humpOf(boat, { ...full, lcg: Math.min(full.lcg, empty.lcg) }, { headwind, waveHeight }).margin;
  };
  const clear = (extraMass: number, change: Partial<Scenario> = {}) =>
    wayIsClear(prepared, { ...scenario, ...change }, { extraMass, use: 1 });
  /** What more aboard leaves just 1.03 of what the hump asks, kg. */
  const most = (headwind = 0, waveHeight = 0) => {
    let [light, heavy] = [-200, 800];
    for (let i = 0; i < 40; i++) {
      const middle = (light + heavy) / 2;
      if (margin(middle, headwind, waveHeight) >= 1.03) light = middle;
      else heavy = middle;
    }
    return light;
  };

  it('takes of the ways full and empty tanks trim the boat the one farther aft', () => {
    for (const along of [0.3, 0.9]) {
      const storeAt = { ...prepared.base.storeAt, x: along * prepared.trip.craft.hull.wettedLength };
      const other = { ...prepared, base: { ...prepared.base, storeAt } };
      const full = afloatIn(other, scenario, other.storeMass(scenario.weighs), { charge: 0 });
      const empty = afloatIn(other, scenario, 0);
      expect(full.lcg < empty.lcg).toBe(along < 0.5);
      const aft = Math.min(full.lcg, empty.lcg);
      const ahead = (headwind: number) =>
        humpOf(boat, { ...full, lcg: aft }, { headwind, waveHeight: 0 }).margin >= 1.03;
      for (let wind = 0; wind < 30; wind += 0.5) {
        expect(wayIsClear(other, { ...scenario, headwindHome: wind }, AS_PLANNED)).toBe(ahead(wind));
      }
    }
  });

  it('is clear with 3 % to spare, fuel, crew and what is more aboard counted', () => {
    const extra = most();
    expect(extra).toBeGreaterThan(-190);
    expect(clear(extra - 0.01)).toBe(true);
    expect(clear(extra + 0.01)).toBe(false);
    expect(wayIsClear(prepared, scenario, AS_PLANNED)).toBe(extra >= 0);
  });

  it('counts the waves, and a headwind home as told', () => {
    const wind = most(6);
    expect(wind).toBeLessThan(most());
    expect(clear(wind - 0.01, { headwindHome: 6 })).toBe(true);
    expect(clear(wind + 0.01, { headwindHome: 6 })).toBe(false);
    const waves = most(0, 0.2);
    expect(clear(waves - 0.01, { waveHeight: 0.2 })).toBe(true);
    expect(clear(waves + 0.01, { waveHeight: 0.2 })).toBe(false);
  });

  it('counts of a forecast the strongest of the trip, as if from ahead, or what stands for hours it does not tell', () => {
    const departs = 1_800_000_000;
    const wind = windTable(
      [3, 6, 4].map((speed, i) => ({
        time: new Date((departs + i * 1800) * 1000).toISOString(),
        fromDeg: 90,
        speed,
      })),
    );
    const told = { wind, departs, headwindHome: undefined, untold: { headwind: 5, foul: 0 } };
    const extra = most(6);
    expect(clear(extra - 0.01, told)).toBe(true);
    expect(clear(extra + 0.01, told)).toBe(false);
    const worse = { ...told, untold: { headwind: 9, foul: 0 } };
    expect(clear(most(9) - 0.01, worse)).toBe(true);
    expect(clear(most(9) + 0.01, worse)).toBe(false);
    const home = { ...told, headwindHome: 8 };
    expect(clear(most(8) - 0.01, home)).toBe(true);
    expect(clear(most(8) + 0.01, home)).toBe(false);
  });
});
