import { describe, expect, it } from 'vitest';
import type { Loaded } from '../../../src/core/compare/loaded.ts';
import { type Figures, figuresOf, planingTrim, topHeld } from '../../../src/core/compare/variant.ts';
import { marginOf, PLANING_FROUDE, speedAtFroude } from '../../../src/core/curve/hump.ts';
import { steady } from '../../../src/core/curve/steady.ts';
import { loadedWith } from './boats.ts';

const figures = ({ boat, afloat }: Loaded, speed: number, trimDeg = planingTrim(boat, afloat)): Figures =>
  figuresOf(() => ({ boat, afloat }), { speed, trimDeg });
const marginAt = ({ boat, afloat }: Loaded, speed: number) => marginOf(boat, afloat, steady(boat, afloat, speed).drive);
const trimAt = ({ boat, afloat }: Loaded, speed: number) => steady(boat, afloat, speed).hull.trimDeg;

const cruiser = loadedWith('catamaran-3-6', 'petrol-15hp-4s', 'tank-25');
const rib = loadedWith('rib-4-7', 'petrol-40hp-4s', 'tank-25-25', { count: 3 });
const weak = loadedWith('catamaran-3-6', 'petrol-6hp-4s', 'tank-12', { count: 4 });

describe('the speed held from rest', () => {
  it('is where the margin falls to one, to a millimetre a second', () => {
    for (const limit of [0.01, 0.2, 0.25, 3.3, 9.999, 17.6]) {
      expect(Math.abs(topHeld((speed) => (speed <= limit ? 2 : 0.5)) - limit), `${limit}`).toBeLessThan(0.001);
    }
  });

  it('stops at the first speed that is not held, whatever lies beyond', () => {
    const gap = topHeld((speed) => (speed > 4 && speed < 6 ? 0.9 : 1.1));
    expect(gap).toBeCloseTo(4, 2);
  });

  it('is held with just as much power as is asked', () => {
    expect(topHeld((speed) => (speed <= 5 ? 1 : 0.99))).toBeCloseTo(5, 2);
  });

  it('is told up to 18 m/s, and nothing where not even the least is held', () => {
    expect(topHeld(() => 2)).toBeCloseTo(18, 2);
    expect(topHeld(() => 0.5)).toBe(0);
  });
});

describe('the figures of a boat', () => {
  it('are the tightest margin and the highest trim of the climb, volume Froude numbers 1.2 to 2.2', () => {
    for (const loaded of [cruiser, rib, weak]) {
      const { boat, afloat } = loaded;
      const climb = Array.from({ length: 11 }, (_, i) => speedAtFroude(boat, afloat, 1.2 + 0.1 * i));
      const { humpMargin, humpTrimDeg } = figures(loaded, 3);
      expect(humpMargin).toBeCloseTo(Math.min(...climb.map((speed) => marginAt(loaded, speed))), 6);
      expect(humpTrimDeg).toBeCloseTo(Math.max(...climb.map((speed) => trimAt(loaded, speed))), 6);
    }
  });

  it('are the speed that full throttle reaches from rest, and the revs there', () => {
    for (const loaded of [cruiser, rib, weak]) {
      const { topSpeed, fullThrottleRpm } = figures(loaded, 3);
      expect(marginAt(loaded, topSpeed)).toBeGreaterThanOrEqual(1);
      expect(marginAt(loaded, topSpeed + 0.002)).toBeLessThan(1);
      expect(fullThrottleRpm).toBe(steady(loaded.boat, loaded.afloat, topSpeed).drive.rpm);
    }
  });

  it('are what a metre costs at the cruising speed, where it is held', () => {
    const { topSpeed } = figures(cruiser, 3);
    for (const speed of [1, 3, topSpeed - 0.01]) {
      const { flow } = steady(cruiser.boat, cruiser.afloat, speed);
      expect(figures(cruiser, speed).perMetre).toBeCloseTo(flow / speed, 12);
    }
    expect(figures(cruiser, topSpeed + 0.1).perMetre).toBeUndefined();
  });
});

describe('the bow', () => {
  it('of a boat as it is has come down where it planes, at a volume Froude number of 2.2', () => {
    for (const loaded of [cruiser, rib]) {
      const right = speedAtFroude(loaded.boat, loaded.afloat, PLANING_FROUDE);
      expect(Math.abs(figures(loaded, 3).planingSpeed! - right)).toBeLessThan(0.002);
    }
  });

  it('comes down later to a lower trim: there it is that low, just before it is not', () => {
    for (const lower of [0.3, 1]) {
      const wanted = planingTrim(cruiser.boat, cruiser.afloat) - lower;
      const { planingSpeed } = figures(cruiser, 3, wanted);
      expect(trimAt(cruiser, planingSpeed!)).toBeLessThanOrEqual(wanted);
      expect(trimAt(cruiser, planingSpeed! - 0.002)).toBeGreaterThan(wanted);
    }
  });

  it('has come down at its highest already where more trim is fine', () => {
    const { boat, afloat } = cruiser;
    const climb = Array.from({ length: 11 }, (_, i) => speedAtFroude(boat, afloat, 1.2 + 0.1 * i));
    const peak = climb.reduce((a, b) => (trimAt(cruiser, b) > trimAt(cruiser, a) ? b : a));
    expect(figures(cruiser, 3, trimAt(cruiser, peak)).planingSpeed).toBeCloseTo(peak, 6);
    expect(figures(cruiser, 3, 30).planingSpeed).toBeCloseTo(peak, 6);
  });

  it('never comes down of a boat that does not get so fast, nor to a trim that no speed has', () => {
    expect(figures(weak, 2).planingSpeed).toBeUndefined();
    expect(figures(cruiser, 3, 0.01).planingSpeed).toBeUndefined();
  });
});

it('the method is left where balance or trim are outside of it as the boat starts to plane or flat out', () => {
  expect(figures(cruiser, 3).outsideMethod).toBe(false);
  const moved = (share: number): Loaded => ({
    ...cruiser,
    afloat: { ...cruiser.afloat, lcg: share * cruiser.craft.hull.wettedLength },
  });
  expect(figures(moved(0.51), 3).outsideMethod).toBe(true);
  // A factor that puts it forward counts as if it sat there.
  const { hull } = cruiser.boat.factors;
  const shifted = (shift: number): Loaded => ({
    ...moved(0.45),
    boat: { ...cruiser.boat, factors: { ...cruiser.boat.factors, hull: { ...hull, lcgShift: shift } } },
  });
  expect(figures(shifted(0.1 * cruiser.craft.hull.wettedLength), 3).outsideMethod).toBe(true);
});
