import { describe, expect, it } from 'vitest';
import { type ChangeCode, changes } from '../../../src/core/compare/changes.ts';
import { hulls } from '../../../src/core/files/catalogue.ts';
import { KMH } from '../../../src/core/units/convert.ts';
import { loadedWith } from './boats.ts';

const found = changes(loadedWith('catamaran-3-6', 'petrol-15hp-4s', 'tank-25', { count: 3 }), {
  cruise: 8.25,
  crewMove: 0.3,
  trimDeg: 4,
});
const of = (code: ChangeCode) => found.changes.find((change) => change.code === code)!;
const ends = (code: ChangeCode) => of(code).ends;

describe('what changes if', () => {
  it('the crew moves forward: earlier on the plane, easier over the hump, a little slower flat out', () => {
    const [forward] = ends('crew-forward');
    expect(forward.planingSpeed!).toBeLessThan(found.now.planingSpeed!);
    expect(forward.humpMargin).toBeGreaterThan(found.now.humpMargin);
    expect(forward.humpTrimDeg).toBeLessThan(found.now.humpTrimDeg);
    expect(forward.topSpeed).toBeLessThan(found.now.topSpeed);
  });

  it('the crew moves aft: the other way round', () => {
    const [aft] = ends('crew-aft');
    expect(aft.planingSpeed ?? Infinity).toBeGreaterThan(found.now.planingSpeed!);
    expect(aft.humpMargin).toBeLessThan(found.now.humpMargin);
  });

  it('the engine is trimmed out or in: bow up or down, by a few centimetres of balance only', () => {
    const [out] = ends('trim-out');
    const [inward] = ends('trim-in');
    expect(out.humpTrimDeg).toBeGreaterThan(found.now.humpTrimDeg);
    expect(inward.humpTrimDeg).toBeLessThan(found.now.humpTrimDeg);
    expect(of('trim-out').lcgShift[0]).toBeLessThan(0);
    expect(Math.abs(of('trim-out').lcgShift[0])).toBeLessThan(0.03);
    expect(of('trim-in').lcgShift[0]).toBeCloseTo(-of('trim-out').lcgShift[0], 2);
  });

  it('the shaft is long on a short transom: slower, by about what the trade says, and thirstier', () => {
    // The trade says 1 to 3 km/h at 30 km/h.
    const lost = ends('long-shaft').map(({ topSpeed }) => (found.now.topSpeed - topSpeed) / KMH);
    expect(lost[0]).toBeGreaterThan(0.5);
    expect(lost[1]).toBeLessThan(6);
    for (const end of ends('long-shaft')) expect(end.perMetre ?? Infinity).toBeGreaterThan(found.now.perMetre!);
  });

  it('the propeller is cupped or larger: fewer revs at full throttle', () => {
    for (const code of ['cup', 'larger-propeller'] as const) {
      const [some, more] = ends(code);
      expect(more.fullThrottleRpm).toBeLessThan(some.fullThrottleRpm);
    }
  });

  it('a foil plate is fitted: at worst only drag, at best an easier hump, and it says that owners dispute it', () => {
    const [worst, best] = ends('foil-plate');
    expect(worst.humpMargin).toBeLessThan(found.now.humpMargin);
    expect(best.humpMargin).toBeGreaterThan(worst.humpMargin);
    expect(best.planingSpeed!).toBeLessThan(found.now.planingSpeed!);
    for (const end of [worst, best]) expect(end.topSpeed).toBeLessThanOrEqual(found.now.topSpeed);
    expect(of('foil-plate').sureness).toBe('disputed');
  });

  it('nothing is moved: nothing changes', () => {
    const still = changes(loadedWith('catamaran-3-6', 'petrol-15hp-4s', 'tank-25'), {
      cruise: 8,
      crewMove: 0,
      trimDeg: 0,
    });
    for (const code of ['crew-forward', 'crew-aft', 'trim-out', 'trim-in'] as const) {
      const [end] = still.changes.find((change) => change.code === code)!.ends;
      expect(end.topSpeed).toBeCloseTo(still.now.topSpeed, 9);
      expect(end.humpMargin).toBeCloseTo(still.now.humpMargin, 9);
      expect(end.perMetre!).toBeCloseTo(still.now.perMetre!, 12);
    }
  });

  it('is told as a band that holds the boat as it is, wider for a boat that nobody has measured', () => {
    const loaded = loadedWith('rib-4-7', 'petrol-40hp-4s', 'tank-25-25', { count: 3 });
    const question = { cruise: 9, crewMove: 0.3, trimDeg: 4 };
    const certain = loadedWith('rib-4-7', 'petrol-40hp-4s', 'tank-25-25', {
      count: 3,
      change: (craft) => ({
        ...craft,
        calibration: {
          factors: [1, 1, 1, 0, 0, 1, 0],
          covariance: Array.from({ length: 7 }, () => Array<number>(7).fill(0)),
          runs: 12,
        },
      }),
    });
    const [wide, narrow] = [changes(loaded, question), changes(certain, question)];
    for (const [i, { ends: pair, effects }] of wide.changes.entries()) {
      for (const end of pair) {
        const made = end.humpMargin - wide.now.humpMargin;
        expect(made).toBeGreaterThanOrEqual(effects.humpMargin.low - 1e-9);
        expect(made).toBeLessThanOrEqual(effects.humpMargin.high + 1e-9);
      }
      const { humpMargin } = narrow.changes[i]!.effects;
      expect(humpMargin.high - humpMargin.low).toBeLessThan(effects.humpMargin.high - effects.humpMargin.low + 1e-9);
    }
    // The band is no decoration: moving the crew forward may do half as much on one boat as on another.
    const forward = wide.changes[0]!.effects.humpMargin;
    expect(forward.high).toBeGreaterThan(1.5 * forward.low);
  });

  it('gives finite figures for every shipped hull', () => {
    for (const { id } of hulls) {
      const all = changes(loadedWith(id, 'petrol-6hp-4s', 'tank-12'), {
        cruise: 2,
        crewMove: 0.3,
        trimDeg: 4,
      });
      for (const { ends: pair } of all.changes) {
        for (const { planingSpeed, perMetre, outsideMethod: _, ...figures } of pair) {
          for (const figure of [...Object.values(figures), planingSpeed ?? 0, perMetre ?? 0]) {
            expect(Number.isFinite(figure)).toBe(true);
          }
        }
      }
    }
  });
});
