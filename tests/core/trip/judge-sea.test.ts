import { describe, expect, it } from 'vitest';
import { judgeSea, seaLimit } from '../../../src/core/trip/judge-sea.ts';
import type { Prepared } from '../../../src/core/trip/prepare.ts';
import type { Sailed } from '../../../src/core/trip/sail.ts';
import { seaLimits } from '../../../src/core/water/sea-speed.ts';

const LENGTH = 4;
const { fine, care } = seaLimits(LENGTH);

function prepared({
  category = undefined as string | undefined,
  maxWave = undefined as number | undefined,
  ...rest
} = {}) {
  const plate = category ? { scheme: 'eu', category } : undefined;
  return {
    trip: { craft: { hull: { length: LENGTH, plate } }, policy: { maxWave }, conditions: { sea: { height: 0.1 } } },
    around: {},
    seaTold: true,
    ...rest,
  } as unknown as Prepared;
}

function sailed(leg: number, waveHeight: number, rest: object = {}): Sailed {
  return {
    stretch: { leg, from: { lat: 46, lon: leg } },
    weather: { waveHeight },
    at: 0,
    ...rest,
  } as unknown as Sailed;
}

function judged(legs: readonly Sailed[], of = prepared(), scenario: object = {}) {
  return judgeSea(of, { run: { sailed: legs, scenario: { departs: 0, ...scenario } } } as never);
}

describe('waves', () => {
  it('are no matter up to what is fine for the boat, rough up to what it takes with care, and too rough beyond', () => {
    expect(judged([sailed(0, fine)])).toEqual([]);
    expect(judged([sailed(0, fine + 0.001)])).toMatchObject([
      {
        code: 'rough',
        level: 'marginal',
        measure: 'length',
        value: fine + 0.001,
        limit: fine,
        fixes: [{ code: 'wait' }],
      },
    ]);
    expect(judged([sailed(0, care)])).toMatchObject([{ code: 'rough', limit: fine }]);
    expect(judged([sailed(0, care + 0.001)])).toMatchObject([{ code: 'too-rough', level: 'no-go', limit: care }]);
  });

  it('are held against the category of the plate and the limit the crew set itself, each allowed up to it', () => {
    const plated = prepared({ category: 'D' });
    expect(judged([sailed(0, 0.3)], plated).map(({ code }) => code)).not.toContain('over-category');
    expect(judged([sailed(0, 0.31)], plated)).toContainEqual(
      expect.objectContaining({ code: 'over-category', level: 'no-go', value: 0.31, limit: 0.3, name: 'sea' }),
    );
    const own = prepared({ maxWave: 0.15 });
    expect(judged([sailed(0, 0.15)], own)).toEqual([]);
    expect(judged([sailed(0, 0.151)], own)).toMatchObject([{ code: 'over-wave-limit', level: 'no-go', limit: 0.15 }]);
  });

  it('are told with the legs that meet the highest of them, and without where all do', () => {
    const high = fine + 0.05;
    expect(judged([sailed(0, 0.1), sailed(1, high), sailed(2, high * 0.995)])[0]).toMatchObject({
      legs: [1, 2],
      value: high,
    });
    expect(judged([sailed(0, 0.1), sailed(1, high), sailed(2, high * 0.98)])[0]).toMatchObject({ legs: [1] });
    expect(judged([sailed(0, high), sailed(1, high)])[0]).not.toHaveProperty('legs');
  });

  it('nobody told of make a trip marginal at best, and nothing else is said of them', () => {
    expect(judged([sailed(0, 9)], prepared({ seaTold: false } as never))).toEqual([
      { code: 'sea-unknown', level: 'marginal', fixes: [{ code: 'give-value' }] },
    ]);
  });

  it('may come in from the open on the legs that lie open, where nobody told of a swell', () => {
    const around = { fetch: { open: (leg: number) => leg === 1 } };
    const trip = { ...prepared().trip, conditions: { water: 'sea' } };
    const found = judged([sailed(0, 0.1), sailed(1, 0.1), sailed(1, 0.1)], prepared({ around, trip } as never));
    expect(found).toEqual([{ code: 'swell-unknown', level: 'marginal', legs: [1], fixes: [{ code: 'give-value' }] }]);
    expect(judged([sailed(0, 0.1)], prepared({ around, trip } as never))).toEqual([]);
    expect(judged([sailed(1, 0.1)], prepared({ around } as never))).toEqual([]);
  });

  it('of a height asked about are judged by the same limits', () => {
    expect([fine, fine + 0.001, care, care + 0.001].map((height) => seaLimit(prepared(), height))).toEqual([
      'go',
      'marginal',
      'marginal',
      'no-go',
    ]);
  });
});

describe('a stream against the wind', () => {
  const wind = { fromDeg: 90, speed: 6 };
  const stream = (rate: number, setDeg = 90) => ({ stream: { setDeg, rate } });
  /** Period of 0.3 m waves as steep as a short fetch makes them, s. */
  const PERIOD = Math.sqrt((0.3 * 15) / 1.56);
  /** Speed of such a wave in deep water, m/s. */
  const WAVE = (9.81 * PERIOD) / (2 * Math.PI);

  it('from a tenth of the speed of the waves makes them steep, from a fifth a reason to stay', () => {
    const level = (share: number) =>
      judged([sailed(0, 0.3, stream(share * WAVE))], prepared(), { wind }).find(
        ({ code }) => code === 'wind-against-stream',
      )?.level;
    expect([0.09, 0.11, 0.19, 0.21].map(level)).toEqual([undefined, 'marginal', 'marginal', 'no-go']);
  });

  it('raises the waves that the boat is judged by, to twice their height at most', () => {
    const value = (rate: number) =>
      judged([sailed(0, 0.3, stream(rate))], prepared(), { wind }).find(({ measure }) => measure === 'length')?.value;
    expect(value(0.12 * WAVE)).toBeGreaterThan(0.3);
    expect(value(0.12 * WAVE)).toBeLessThan(0.6);
    expect(value(3)).toBeCloseTo(0.6, 9);
  });

  it('is told of the worst legs, with the place where the first of them begins', () => {
    const legs = [sailed(0, 0.3, stream(0.12 * WAVE)), sailed(1, 0.3, stream(0.3 * WAVE)), sailed(2, 0.3, stream(0))];
    expect(judged(legs, prepared(), { wind }).at(-1)).toEqual({
      code: 'wind-against-stream',
      level: 'no-go',
      legs: [1],
      at: { lat: 46, lon: 1 },
      fixes: [{ code: 'wait' }],
    });
  });

  it('does no harm in ripples, with the wind, or without wind or stream', () => {
    expect(judged([sailed(0, 0.159, stream(2))], prepared(), { wind })).toEqual([]);
    expect(judged([sailed(0, 0.161, stream(2))], prepared(), { wind })).not.toEqual([]);
    expect(judged([sailed(0, 0.2, stream(2, 270))], prepared(), { wind })).toEqual([]);
    expect(judged([sailed(0, 0.2)], prepared(), { wind })).toEqual([]);
    expect(judged([sailed(0, 0.2, stream(2))], prepared(), {})).toEqual([]);
  });

  it('of which only the strongest is known counts for the waves all the same', () => {
    const told = { known: true, mayRun: [{ setDeg: 90, rate: 2 }] };
    const found = judged([sailed(0, 0.3, { ...stream(0), told })], prepared(), { wind });
    expect(found.map(({ code }) => code)).toContain('wind-against-stream');
  });
});
