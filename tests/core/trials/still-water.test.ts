import { describe, expect, it } from 'vitest';
import { stillWater } from '../../../src/core/trials/still-water.ts';

describe('stillWater', () => {
  it('tells boat from stream by passes both ways, and asks no one for the stream', () => {
    const passes = [
      { over: 6.5, way: 'out' },
      { over: 5.5, way: 'back' },
    ] as const;
    const found = stillWater(passes, 2);
    expect(found).toMatchObject({ speed: 6, stream: 0.5, by: 'both-ways' });
    expect(found.deviation).toBeCloseTo(0.1 / Math.SQRT2, 12);
    expect(found.streamDeviation).toBe(found.deviation);
  });

  it('takes a stream that was given off a pass out and adds it to a pass back', () => {
    expect(stillWater([{ over: 6, way: 'out' }], 0.5)).toMatchObject({ speed: 5.5, stream: 0.5, by: 'stream-given' });
    expect(stillWater([{ over: 6, way: 'back' }], 0.5)).toMatchObject({ speed: 6.5, stream: 0.5 });
    expect(stillWater([{ over: 6, way: 'out' }], -0.5).speed).toBe(6.5);
  });

  it('takes the plain mean of passes one way, which are surer together but for the stream', () => {
    const passes = [5.8, 6, 6.1, 6.1].map((over) => ({ over, way: 'out' as const }));
    const found = stillWater(passes, 0);
    expect(found.speed).toBeCloseTo(6, 12);
    expect(found.deviation).toBeCloseTo(Math.hypot(0.05, 0.25), 12);
    expect(found.streamDeviation).toBe(0.25);
  });

  it('doubts twice as much where nobody knows the stream, and takes none', () => {
    const found = stillWater([{ over: 6, way: 'back' }]);
    expect(found).toMatchObject({ speed: 6, stream: 0, streamDeviation: 0.5, by: 'no-stream-known' });
    expect(found.deviation).toBeCloseTo(Math.hypot(0.1, 0.5), 12);
  });

  it('never has a boat go backwards', () => {
    expect(stillWater([{ over: 0.3, way: 'out' }], 1).speed).toBe(0);
  });
});
