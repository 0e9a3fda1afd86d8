import { describe, expect, it } from 'vitest';
import type { FuelVerdict } from '../../../src/core/trip/fuel-verdict.ts';
import { streamGuess } from '../../../src/core/trip/stream-guess.ts';

interface Leg {
  readonly part?: 'out' | 'home';
  readonly use?: number;
  readonly ground?: number;
  readonly speed?: number;
  readonly stream?: { readonly setDeg: number; readonly rate: number };
}

function run(legs: readonly Leg[], { manoeuvring = 0, possible = true } = {}) {
  const sailed = legs.map(({ part = 'home', use = 1, ground = 2, speed = 2, stream }) => ({
    use,
    ground,
    speed,
    stream,
    stretch: { part, trackDeg: 0 },
  }));
  const used = sailed.reduce((sum, { use }) => sum + use, manoeuvring);
  return { sailed, manoeuvring, possible, used, need: used };
}

/** A way home that took 1 kg of the 2.99 that are there, 1 of them kept; the bad case could take 100 times as much. */
function fuel(change: object = {}): FuelVerdict {
  const home = run([{}]);
  return {
    verdict: 'marginal',
    run: home,
    usable: 2.99,
    reserve: 1,
    need90: 1.2,
    keeps: 1,
    badCase: { need: 1 },
    badRun: home,
    badUsable: 100,
    ...change,
  } as unknown as FuelVerdict;
}

describe('the stream at which a trip may turn', () => {
  it('is the one that makes the way home so much longer that the reserve goes', () => {
    // 1.99 over 1: at half of the 2 m/s over ground.
    expect(streamGuess(fuel(), 0, 9)).toBeCloseTo(1, 9);
  });

  it('of a go is where the reserve is no longer sure, if that comes first', () => {
    // 1.99 / 1.33 = 1.5: a third of the 2 m/s over ground, 0.667, is next to 0.70.
    expect(streamGuess(fuel({ keeps: 1.33, verdict: 'go' }), 0, 9)).toBeCloseTo(0.7, 9);
    expect(streamGuess(fuel({ keeps: 1.33 }), 0, 9)).toBeCloseTo(1, 9);
  });

  it('is where the pessimistic need runs dry, if that comes first', () => {
    // 2.99 / 2 = 1.495: 2 / (2 - 0.662) is as much longer, the next twentieth above 0.662 is 0.70.
    expect(streamGuess(fuel({ need90: 2 }), 0, 9)).toBeCloseTo(0.7, 9);
  });

  it('of a go is where the bad case runs dry, if that comes first; a trip in doubt has that behind it', () => {
    // 1.3 of 1 in the bad case: 2 / (2 - 0.4615).
    const close = { badUsable: 1.3 };
    expect(streamGuess(fuel({ ...close, verdict: 'go' }), 0, 9)).toBeCloseTo(0.5, 9);
    expect(streamGuess(fuel({ ...close }), 0, 9)).toBeCloseTo(1, 9);
    expect(streamGuess(fuel({ ...close, badCase: { need: 0.65 }, verdict: 'go' }), 0, 9)).toBeCloseTo(1, 9);
  });

  it('of a go is no more than the slowest way home stems, 0.4 m/s kept for doubt and headway', () => {
    expect(streamGuess(fuel({ verdict: 'go' }), 0, 0.9)).toBeCloseTo(0.5, 9);
    expect(streamGuess(fuel(), 0, 0.9)).toBeCloseTo(1, 9);
    // But never below the stream there is.
    expect(streamGuess(fuel({ verdict: 'go' }), 0.3, 0.5)).toBe(0.3);
  });

  it('starts from the stream there is: what it costs is in the need', () => {
    expect(streamGuess(fuel(), 0.25, 9)).toBeCloseTo(1.25, 9);
  });

  it('leaves manoeuvring and the way out as they are where no stream is told', () => {
    // Out 1, home 1, manoeuvring 1: 3 may become 4.49, so the way home 2.49: at 1.197 of 2 m/s.
    const both = run([{ part: 'out' }, { part: 'home' }], { manoeuvring: 1 });
    expect(streamGuess(fuel({ run: both, usable: 5.49, need90: 3 }), 0, 9)).toBeCloseTo(1.2, 9);
  });

  it('meets a stream that is told from where it sets, on the way out as well', () => {
    // Due north at 2 m/s through the water against a stream that sets south.
    const foul = run([{ part: 'out', stream: { setDeg: 180, rate: 0.5 }, ground: 1.5 }]);
    // 1.5 / 1.99 = 0.754 m/s are left at a stream of 1.246.
    expect(streamGuess(fuel({ run: foul }), 0.5, 9)).toBeCloseTo(1.25, 9);
    const fair = run([{ part: 'out', stream: { setDeg: 0, rate: 0.5 }, ground: 2.5 }]);
    expect(streamGuess(fuel({ run: fair, badRun: fair }), 0.5, 9)).toBeGreaterThan(2.6 - 1e-9);
    // Across: at rate r the ground speed is the root of 4 less r squared, half of it from 1.73 on.
    const across = run([{ part: 'out', stream: { setDeg: 90, rate: 0 }, ground: 2 }]);
    expect(streamGuess(fuel({ run: across }), 0, 9)).toBeCloseTo(1.75, 9);
    // Too strong to be crossed at all.
    expect(streamGuess(fuel({ run: across, usable: 1e9 }), 0, 9)).toBeCloseTo(2, 1);
  });

  it('is sought no farther than 2.6 m/s', () => {
    const quick = run([{ ground: 30, speed: 30 }]);
    const found = streamGuess(fuel({ run: quick, badRun: quick }), 0, 99)!;
    expect(found).toBeGreaterThanOrEqual(2.6 - 1e-9);
    expect(found).toBeLessThan(2.65);
  });

  it('is not told of a trip that is none, cannot be sailed, or has no stream to start from', () => {
    expect(streamGuess(fuel({ verdict: 'no-go' }), 0, 9)).toBeUndefined();
    expect(streamGuess(fuel({ run: run([{}], { possible: false }) }), 0, 9)).toBeUndefined();
    expect(streamGuess(fuel({ badRun: run([{}], { possible: false }) }), 0, 9)).toBeUndefined();
    expect(streamGuess(fuel(), Number.NaN, 9)).toBeUndefined();
    expect(streamGuess(fuel(), -0.1, 9)).toBeUndefined();
  });
});
