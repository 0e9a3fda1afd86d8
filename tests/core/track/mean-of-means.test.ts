import { describe, expect, it } from 'vitest';
import { binomialWeights, meanOfMeans, type SteadyPass } from '../../../src/core/track/mean-of-means.ts';

/** Passes by turns, out first, at a speed through the water, in a stream that depends on the number of the pass. */
function passes(speed: number, count: number, stream: (pass: number) => number): SteadyPass[] {
  return Array.from({ length: count }, (_, pass) => {
    const way = pass % 2 === 0 ? 'out' : 'back';
    return { way, over: speed + (way === 'out' ? 1 : -1) * stream(pass) };
  });
}

describe('binomialWeights', () => {
  it('gives two passes half each, three 1-2-1 and four 1-3-3-1', () => {
    expect(binomialWeights(1)).toEqual([1]);
    expect(binomialWeights(2)).toEqual([0.5, 0.5]);
    expect(binomialWeights(3)).toEqual([0.25, 0.5, 0.25]);
    expect(binomialWeights(4)).toEqual([0.125, 0.375, 0.375, 0.125]);
  });
});

describe('meanOfMeans', () => {
  it('is the plain mean of one pass each way, and half their difference is the stream', () => {
    const found = meanOfMeans([
      { over: 6.5, way: 'out' },
      { over: 5.5, way: 'back' },
    ]);
    expect(found).toEqual({ speed: 6, stream: 0.5, weights: [0.5, 0.5] });
  });

  it('finds the same speed whichever way is called out, and the stream turned round', () => {
    const sailed = passes(7, 5, (pass) => 0.3 + 0.1 * pass);
    const turned = sailed.map(({ over, way }): SteadyPass => ({ over, way: way === 'out' ? 'back' : 'out' }));
    expect(meanOfMeans(turned)!.speed).toBe(meanOfMeans(sailed)!.speed);
    expect(meanOfMeans(turned)!.stream).toBe(-meanOfMeans(sailed)!.stream);
  });

  it('forgets a stream that grows evenly over three passes, and one that grows and slackens over four', () => {
    expect(meanOfMeans(passes(6, 3, (pass) => 0.5 + 0.2 * pass))!.speed).toBeCloseTo(6, 12);
    expect(meanOfMeans(passes(6, 4, (pass) => 0.5 + 0.9 * pass - 0.3 * pass ** 2))!.speed).toBeCloseTo(6, 12);
  });

  it('does not let a way win because it was sailed twice running', () => {
    const found = meanOfMeans([
      { over: 6.5, way: 'out' },
      { over: 6.5, way: 'out' },
      { over: 5.5, way: 'back' },
    ])!;
    expect(found.speed).toBe(6);
    expect(found.stream).toBe(0.5);
    expect(found.weights).toEqual([0.25, 0.25, 0.5]);
  });

  it('says nothing of passes one way only', () => {
    expect(meanOfMeans([])).toBeUndefined();
    expect(meanOfMeans([{ over: 6, way: 'out' }])).toBeUndefined();
    expect(meanOfMeans(passes(6, 3, () => 0).map(({ over }) => ({ over, way: 'back' as const })))).toBeUndefined();
  });
});
