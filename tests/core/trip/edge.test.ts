import { describe, expect, it } from 'vitest';
import { largestHolding, lastCell, smallestHolding } from '../../../src/core/trip/bisect.ts';
import { climbOf } from '../../../src/core/trip/climb.ts';
import { Edge } from '../../../src/core/trip/edge.ts';
import { humpVerdict } from '../../../src/core/trip/held.ts';
import { verdictFrom, worse } from '../../../src/core/trip/holding.ts';

describe('halving', () => {
  it('finds where a condition turns, to its step, from the side that holds', () => {
    const found = largestHolding((kg) => kg <= 61.3, 0, 100, 0.25)!;
    expect(found).toBeLessThanOrEqual(61.3);
    expect(found).toBeGreaterThan(61.3 - 0.25);
    const least = smallestHolding((share) => share >= 0.37, 0, 1, 0.01)!;
    expect(least).toBeGreaterThanOrEqual(0.37);
    expect(least).toBeLessThan(0.38);
  });

  it('says so where it never or always holds', () => {
    expect(largestHolding(() => true, 0, 100, 1)).toBe(100);
    expect(largestHolding(() => false, 0, 100, 1)).toBeUndefined();
    expect(smallestHolding(() => true, 3, 100, 1)).toBe(3);
    expect(smallestHolding(() => false, 3, 100, 1)).toBeUndefined();
  });

  it('ends with two neighbours a step apart at most', () => {
    const [good, bad] = lastCell((value) => value < 10, { low: 0, high: 64, step: 1 });
    expect([good, bad]).toEqual([9, 10]);
  });
});

describe('an edge that costs to ask', () => {
  const within = { low: 0, high: 1000, step: 0.25 };

  function closed(turns: number, slackOf: (value: number) => number, guess?: number) {
    const asked: number[] = [];
    const edge = new Edge((value) => {
      asked.push(value);
      return { holds: value <= turns, slack: slackOf(value) };
    });
    edge.closeIn(0, 1000, { within, ...(guess !== undefined && { guess }) });
    const found = largestHolding((value) => edge.holds(value), 0, 1000, within.step);
    return { found, asked };
  }

  it('is where plain halving finds it, with fewer questions, straight or bent, near the guess or far', () => {
    for (const turns of [3.1, 61.3, 640.7, 999.6]) {
      const plain = largestHolding((value) => value <= turns, 0, 1000, within.step);
      for (const guess of [undefined, 0, turns, 1000]) {
        for (const slack of [
          (value: number) => turns - value,
          (value: number) => Math.log((turns + 50) / (value + 50)),
          (value: number) => (turns - value) ** 3,
        ]) {
          const { found, asked } = closed(turns, slack, guess);
          expect(found).toBe(plain);
          // Halving alone asks the two ends and twelve values between; at worst eight probes come before it.
          expect(asked.length).toBeLessThanOrEqual(22);
          expect(new Set(asked).size).toBe(asked.length);
        }
      }
      expect(closed(turns, (value) => turns - value, turns).asked.length).toBeLessThan(8);
    }
  });

  it('asks nothing that follows from what is known', () => {
    let asked = 0;
    const edge = new Edge((value) => {
      asked++;
      return { holds: value <= 50 };
    });
    edge.learn(40, { holds: true });
    edge.learn(60, { holds: false });
    edge.learn(30, { holds: true });
    edge.learn(70, { holds: false });
    expect([40, 39, 60, 61].map((value) => edge.holds(value))).toEqual([true, true, false, false]);
    expect(asked).toBe(0);
    expect(edge.holds(50)).toBe(true);
    expect(edge.holds(51)).toBe(false);
    expect(asked).toBe(2);
  });

  it('asks no more than the low end where even that does not hold', () => {
    const edge = new Edge(() => ({ holds: false, slack: -1 }));
    edge.closeIn(0, 1000, { within });
    expect(edge.holds(0)).toBe(false);
  });
});

describe('verdicts', () => {
  it('are the best that is allowed', () => {
    const from = (go: boolean, marginal: boolean) =>
      verdictFrom((wanted) => ({ holds: wanted === 'go' ? go : marginal }));
    expect([from(true, true), from(false, true), from(false, false)]).toEqual(['go', 'marginal', 'no-go']);
  });

  it('of two are the worse, whichever comes first', () => {
    expect([worse('go', 'marginal'), worse('marginal', 'go'), worse('no-go', 'marginal'), worse('go', 'go')]).toEqual([
      'marginal',
      'marginal',
      'no-go',
      'go',
    ]);
  });

  it('of the hump need a twentieth of power to spare for a go', () => {
    expect([0.99, 1, 1.049, 1.051].map(humpVerdict)).toEqual(['no-go', 'marginal', 'marginal', 'go']);
  });
});

describe('the climb over the hump', () => {
  it('is the heaviest, farthest aft, emptiest, windiest and roughest of all stretches, to the fastest', () => {
    const stretch = (
      mass: number,
      lcg: number,
      charge: number | undefined,
      speed: number,
      headwind: number,
      waveHeight: number,
    ) => ({ afloat: { mass, lcg, airArea: 1, charge }, speed, weather: { headwind, waveHeight } }) as never;
    expect(
      climbOf([
        stretch(300, 1.2, 0.9, 4, -3, 0.1),
        stretch(310, 1.3, 0.4, 9, -5, 0.3),
        stretch(290, 1.1, undefined, 6, -1, 0.2),
      ]),
    ).toEqual({
      afloat: { mass: 310, lcg: 1.1, airArea: 1, charge: 0.4 },
      weather: { headwind: -1, waveHeight: 0.3 },
      top: 9,
    });
  });
});
