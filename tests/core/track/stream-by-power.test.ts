import { describe, expect, it } from 'vitest';
import { type PoweredRun, streamByPower } from '../../../src/core/track/stream-by-power.ts';

/** Runs by turns of a boat whose power is 60 W s3/m3 of speed cubed, in a stream with the way out. */
function runs(speeds: readonly number[], stream: number): PoweredRun[] {
  return speeds.map((speed, at) => {
    const way = at % 2 === 0 ? 'out' : 'back';
    return { way, over: speed + (way === 'out' ? stream : -stream), power: 60 * speed ** 3 };
  });
}

describe('streamByPower', () => {
  it('finds a stream either way from runs that have no speed in common', () => {
    for (const stream of [-0.4, 0, 0.25]) {
      const found = streamByPower(runs([1, 1.3, 1.6, 1.9, 2.2], stream))!;
      expect(found.stream).toBeCloseTo(stream, 4);
      expect(found.ratio).toBeCloseTo(60, 2);
      expect(found.odd).toEqual([]);
    }
  });

  it('does not let a run with weed on the propeller spoil it', () => {
    const good = runs([1, 1.3, 1.6, 1.9, 2.2, 2.4], 0.25);
    const fouled = good.map((run, at) => (at === 3 ? { ...run, power: run.power * 2.2 } : run));
    const { stream, odd } = streamByPower(fouled)!;
    expect(odd).toEqual([3]);
    expect(stream).toBeCloseTo(0.25, 4);
  });

  it('tells nothing of fewer than two runs each way, nor of runs without speed or power', () => {
    expect(streamByPower(runs([1, 1.3, 1.6], 0.2))).toBeUndefined();
    expect(streamByPower(runs([1, 1.3, 1.6, 1.9], 0.2).map((run) => ({ ...run, way: 'out' })))).toBeUndefined();
    expect(streamByPower(runs([1, 1.3, 1.6, 1.9], 0.2).map((run) => ({ ...run, power: 0 })))).toBeUndefined();
  });
});
