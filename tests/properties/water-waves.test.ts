import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { secondsOf, timeAt } from '../../src/core/water/clock.ts';
import { wavesOnStream, windAgainstStream } from '../../src/core/water/current-on-waves.ts';
import { windSea, withSwell } from '../../src/core/water/sea-growth.ts';
import { meanWindBefore, strongestWind, windAt, windTable } from '../../src/core/water/wind-by-time.ts';

const runs = { seed: 44, numRuns: 400 };
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const duration = fc.option(between(60, 20 * 3600), { nil: undefined });
const depth = fc.option(between(0.3, 60), { nil: undefined });
const hair = 1 + 1e-12;

describe('windSea', () => {
  it('never falls with more wind, fetch, time or depth', () => {
    fc.assert(
      fc.property(
        fc.tuple(between(0, 25), between(0, 60_000), duration, depth),
        between(0, 5),
        ([wind, fetch, time, deep], more) => {
          const sea = windSea({ wind, fetch, duration: time, depth: deep });
          const least = (other: { height: number }) => expect(other.height * hair).toBeGreaterThanOrEqual(sea.height);
          least(windSea({ wind: wind + more, fetch, duration: time, depth: deep }));
          least(windSea({ wind, fetch: fetch + more * 4000, duration: time, depth: deep }));
          if (time !== undefined) {
            least(windSea({ wind, fetch, duration: time + more * 3600, depth: deep }));
            least(windSea({ wind, fetch, depth: deep }));
          }
          if (deep !== undefined) {
            least(windSea({ wind, fetch, duration: time, depth: deep + more * 5 }));
            least(windSea({ wind, fetch, duration: time }));
          }
        },
      ),
      runs,
    );
  });

  it('is finite, and lies in its own range', () => {
    fc.assert(
      fc.property(between(0, 40), between(0, 2e6), duration, depth, (wind, fetch, time, deep) => {
        const { height, low, high, period, shortPeriod } = windSea({ wind, fetch, duration: time, depth: deep });
        for (const value of [height, low, high, period, shortPeriod]) expect(Number.isFinite(value)).toBe(true);
        expect(low).toBeLessThanOrEqual(height);
        expect(high).toBeGreaterThanOrEqual(height);
        expect(shortPeriod).toBeLessThanOrEqual(period);
        expect(withSwell(height, 0.3)).toBeGreaterThanOrEqual(Math.max(height, 0.3));
      }),
      runs,
    );
  });
});

describe('wavesOnStream', () => {
  it('grow and steepen the more the stream runs against them', () => {
    fc.assert(
      fc.property(between(1, 8), between(-1, 1), between(0.001, 0.5), (period, along, more) => {
        const less = wavesOnStream(period, along);
        const against = wavesOnStream(period, along - more);
        fc.pre(!less.blocked && !against.blocked);
        if (less.blocked || against.blocked) return;
        expect(against.heightRatio).toBeGreaterThan(less.heightRatio);
        expect(against.steepnessRatio).toBeGreaterThan(less.steepnessRatio);
      }),
      runs,
    );
  });

  it('flag the same in the mirror, and never less in more stream', () => {
    const rank = { none: 0, raised: 1, 'do-not-go': 2 };
    fc.assert(
      fc.property(between(0, 360), between(0, 360), between(0, 2), between(0, 1), (fromDeg, setDeg, rate, more) => {
        const sea = { height: 0.3, period: 2.5 };
        const flag = windAgainstStream({ fromDeg, speed: 8 }, { setDeg, rate }, sea).flag;
        const mirrored = windAgainstStream({ fromDeg: -fromDeg, speed: 8 }, { setDeg: -setDeg, rate }, sea).flag;
        expect(mirrored).toBe(flag);
        const stronger = windAgainstStream({ fromDeg, speed: 8 }, { setDeg, rate: rate + more }, sea).flag;
        expect(rank[stronger]).toBeGreaterThanOrEqual(rank[flag]);
      }),
      runs,
    );
  });
});

describe('windAt', () => {
  const start = secondsOf('2026-07-15T06:00:00Z');
  const forecast = fc.array(
    fc.record({ hour: fc.integer({ min: 0, max: 12 }), fromDeg: between(0, 360), speed: between(0, 25) }),
    {
      minLength: 2,
      maxLength: 8,
    },
  );
  const made = (list: readonly { hour: number; fromDeg: number; speed: number }[]) =>
    windTable(list.map(({ hour, fromDeg, speed }) => ({ time: timeAt(start + hour * 3600, 3600), fromDeg, speed })));

  it('never reads less than the mean vector of its neighbours, nor more than the stronger', () => {
    fc.assert(
      fc.property(
        between(0, 360),
        between(0, 360),
        between(0, 25),
        between(0, 25),
        between(0, 1),
        (a, b, p, q, share) => {
          const table = made([
            { hour: 0, fromDeg: a, speed: p },
            { hour: 3, fromDeg: b, speed: q },
          ]);
          const there = windAt(table, start + share * 3 * 3600);
          if (!there.known) throw new Error(there.why);
          const turn = ((a - b) * Math.PI) / 180;
          const east = p * (1 - share) * Math.cos(turn) + q * share;
          const vector = Math.hypot(east, p * (1 - share) * Math.sin(turn));
          expect(there.wind.speed).toBeGreaterThanOrEqual(vector - 1e-9);
          expect(there.wind.speed).toBeLessThanOrEqual(Math.max(p, q) + 1e-9);
          expect(there.wind.fromDeg).toBeGreaterThanOrEqual(0);
          expect(there.wind.fromDeg).toBeLessThanOrEqual(360);
        },
      ),
      runs,
    );
  });

  it('has its strongest at least as strong as any instant, and a mean between', () => {
    fc.assert(
      fc.property(forecast, between(0, 1), (list, share) => {
        const table = made(list);
        const { entries } = table;
        const from = entries[0]!.at;
        const to = entries[entries.length - 1]!.at;
        fc.pre(to > from);
        const most = strongestWind(table, from, to);
        const there = windAt(table, from + share * (to - from));
        const mean = meanWindBefore(table, to, to - from);
        if (!most.known || !there.known || !mean.known) throw new Error('known everywhere');
        expect(there.wind.speed).toBeLessThanOrEqual(most.speed + 1e-9);
        expect(mean.speed).toBeLessThanOrEqual(most.speed + 1e-9);
        expect(mean.covered).toBeCloseTo(1, 9);
      }),
      runs,
    );
  });
});
