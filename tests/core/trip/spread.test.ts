import { describe, expect, it } from 'vitest';
import { NODES, probabilityWithin } from '../../../src/core/trip/need.ts';
import type { Prepared } from '../../../src/core/trip/prepare.ts';
import type { Run } from '../../../src/core/trip/sail.ts';
import {
  factorSpread,
  gaugeSpread,
  needOf,
  needWithGauge,
  spreadsOf,
  usableDeviation,
} from '../../../src/core/trip/spread.ts';

interface Leg {
  readonly distance?: number;
  readonly use?: number;
  readonly speed?: number;
  readonly ground?: number;
  readonly part?: 'out' | 'home';
  readonly known?: boolean;
}

function run(legs: readonly Leg[], rest: object = {}): Run {
  const sailed = legs.map(({ distance = 5000, use = 4, speed = 3, ground = 3, part = 'out', known }) => ({
    stretch: { distance, part },
    use,
    speed,
    ground,
    told: known === undefined ? undefined : { known },
  }));
  const need = sailed.reduce((sum, { use }) => sum + use, 1);
  return {
    sailed,
    possible: true,
    manoeuvring: 1,
    need,
    used: need,
    unsure: need,
    refills: undefined,
    scenario: { kinds: [] },
    atStart: { mass: 600 },
    ...rest,
  } as unknown as Run;
}

function prepared({ sea, stream, gauge, people = 200 }: Record<string, unknown> = {}): Prepared {
  return {
    trip: { conditions: { sea }, load: { fillKnownBy: gauge } },
    base: { peopleAndGear: people },
    around: { stream },
    full: 20,
  } as unknown as Prepared;
}

/** Mean of exp(-|x - y| / 5 km) over a leg, by sums: what is left of the weather's variance. */
function alike(distance: number, steps = 400): number {
  let sum = 0;
  for (let i = 0; i < steps; i++)
    for (let j = 0; j < steps; j++) sum += Math.exp((-Math.abs(i - j) * distance) / steps / 5000);
  return sum / steps / steps;
}

describe('the doubts of a trip', () => {
  it('are 0.15 by the weather of a leg, 0.08 where a calm sea was told', () => {
    expect(spreadsOf(prepared(), run([{}]), 0.1).leg).toBe(0.15);
    expect(spreadsOf(prepared({ sea: { height: 0.3 } }), run([{}]), 0.1).leg).toBe(0.15);
    expect(spreadsOf(prepared({ sea: 'calm' }), run([{}]), 0.1).leg).toBe(0.08);
  });

  it('are a twentieth of people and gear in the mass, which the need follows with its power 0.65', () => {
    expect(spreadsOf(prepared(), run([{}]), 0.1).load).toBeCloseTo((0.65 * 0.05 * 200) / 600, 12);
    const halved = run([{}], { refills: { usable: 9, to: [undefined] }, unsure: 2.5 });
    expect(spreadsOf(prepared(), halved, 0.1).load).toBeCloseTo((0.65 * 0.05 * 200 * 0.5) / 600, 12);
  });

  it('are half a metre a second of stream where none is told, half of that where it is or is in the bad case already', () => {
    const error = (stream: unknown, legs: Leg[], kinds: string[] = []) =>
      spreadsOf(prepared({ stream }), run(legs, { scenario: { kinds } }), 0).streamError;
    expect(error(undefined, [{}])).toBe(0.5);
    expect(error('slack', [{}])).toBe(0.25);
    expect(error('by-tide', [{ known: true }, { known: true }])).toBe(0.25);
    expect(error('by-tide', [{ known: true }, { known: false }])).toBe(0.5);
    expect(error(undefined, [{}], ['home-foul-stream'])).toBe(0.25);
    expect(error(undefined, [{}], ['home-slow'])).toBe(0.5);
  });

  it('by the boat are what its factors leave', () => {
    expect(spreadsOf(prepared(), run([{}]), 0.13).boat).toBe(0.13);
  });

  it('by the speed made are a twentieth of what the legs take of the need; half a stream ahead doubles them', () => {
    // 4 of 5 is the leg.
    expect(spreadsOf(prepared(), run([{}]), 0).speed).toBeCloseTo(0.05 * 0.8, 12);
    expect(spreadsOf(prepared(), run([{ speed: 3, ground: 1.5 }]), 0).speed).toBeCloseTo(2 * 0.05 * 0.8, 12);
  });

  it('by the weather average out over a leg as it forgets in 5 km', () => {
    for (const distance of [1000, 5000, 20_000]) {
      const { weather } = spreadsOf(prepared(), run([{ distance }]), 0);
      expect(weather / (0.15 * 0.8)).toBeCloseTo(Math.sqrt(alike(distance)), 4);
    }
  });

  it('are the same for a leg cut in two or three', () => {
    const whole = spreadsOf(prepared(), run([{ distance: 9000, use: 9 }]), 0);
    for (const cuts of [
      [4500, 4500],
      [2000, 3000, 4000],
    ]) {
      const cut = spreadsOf(prepared(), run(cuts.map((distance) => ({ distance, use: distance / 1000 }))), 0);
      expect(cut.weather).toBeCloseTo(whole.weather, 12);
      expect(cut.speed).toBeCloseTo(whole.speed, 12);
    }
  });

  it('of a leg without length are none by its weather', () => {
    expect(spreadsOf(prepared(), run([{ distance: 0, use: 0 }]), 0).weather).toBe(0);
  });
});

describe('the need of a trip', () => {
  it('without an error of the stream is that of the run, and spreads by all doubts together', () => {
    const { nodes, spreads } = needOf(prepared(), run([{}]), 0.1);
    expect(nodes[2]).toBe(5);
    const { load, speed, weather } = spreadsOf(prepared(), run([{}]), 0.1);
    expect(spreads[2]).toBeCloseTo(Math.hypot(0.1, load, speed, weather), 12);
  });

  it('is less where a stream helps on the way out, more where it hinders on the way home', () => {
    const told = prepared({ stream: 'slack' });
    const error = 0.25 * NODES[3];
    const out = needOf(told, run([{ part: 'out' }]), 0).nodes;
    expect(out[3]).toBeCloseTo(1 + (4 * 3) / (3 + error), 12);
    expect(out[1]).toBeCloseTo(1 + (4 * 3) / (3 - error), 12);
    const home = needOf(told, run([{ part: 'home' }]), 0).nodes;
    expect(home[3]).toBeCloseTo(out[1]!, 12);
    expect(home[1]).toBeCloseTo(out[3]!, 12);
  });

  it('is endless against a stream that leaves no headway of a tenth of a knot', () => {
    const most = 0.25 * NODES[4];
    const nodes = (ground: number) =>
      needOf(prepared({ stream: 'slack' }), run([{ part: 'home', ground, speed: 3 }]), 0).nodes;
    expect(nodes(most + 0.06)[4]).toBeLessThan(Infinity);
    expect(nodes(most + 0.04)[4]).toBe(Infinity);
    expect(nodes(most + 0.04)[3]).toBeLessThan(Infinity);
  });

  it('is endless for a trip that cannot be sailed', () => {
    const never = needOf(prepared(), run([{}], { possible: false }), 0.1);
    expect(never).toEqual({ nodes: Array(5).fill(Infinity), spreads: Array(5).fill(0) });
    expect(factorSpread(prepared(), run([{}], { possible: false }), { extraMass: 0, use: 1 })).toBe(0);
  });

  it('of a trip that fills up is that of its leaner part, which alone is unsure', () => {
    const twice = [{ use: 4 }, { use: 6 }];
    const filled = run(twice, { refills: { usable: 10, to: [10, undefined] }, need: 6, used: 11, unsure: 6 });
    const { nodes } = needOf(prepared({ stream: 'slack' }), filled, 0);
    // 1 and 4 before the filling up, 6 after it.
    expect(nodes[2]).toBe(6);
    const { speed, weather } = spreadsOf(prepared({ stream: 'slack' }), filled, 0);
    // As though the legs' shares of all 11 were those of the 6.
    expect(speed).toBeCloseTo((0.05 * 10 * (6 / 11)) / 6, 12);
    const all = spreadsOf(prepared({ stream: 'slack' }), run(twice), 0).weather;
    expect(weather).toBeCloseTo((all * 11 * Math.sqrt(6 / 11)) / 6, 12);
  });
});

describe('what is in the tank', () => {
  it('is known to 3 % of a full one by dipstick or scales, to 10 % by a gauge or where nobody says', () => {
    expect(usableDeviation(prepared({ gauge: 'measured' }))).toBeCloseTo(0.6, 12);
    expect(usableDeviation(prepared({ gauge: 'gauge' }))).toBe(2);
    expect(usableDeviation(prepared())).toBe(2);
  });

  const alone = (median: number, spread: number) => ({ nodes: Array(5).fill(median), spreads: Array(5).fill(spread) });
  const needed = (spread: number, usable: number, p: 0.1 | 0.9 | 0.95) =>
    needWithGauge(prepared(), run([{}]), alone(5, spread), { usable, p });

  it('may hold as much less as its error says: a known need of 5 takes 5 over what is surely there of each litre', () => {
    // The gauge errs by 2 of 10: in one case of twenty more than 3.29 is missing.
    expect(needed(0, 10, 0.95)).toBeCloseTo(5 / (1 - 1.6448536269515 * 0.2), 5);
    expect(needed(0, 10, 0.9)).toBeCloseTo(5 / (1 - 1.2815515655446 * 0.2), 5);
    expect(needed(0, 10, 0.1)).toBeCloseTo(5 / (1 + 1.2815515655446 * 0.2), 5);
    // Of 2 hardly anything is sure; the need itself, 5, is what the error is a share of.
    expect(needed(0, 2, 0.95)).toBeCloseTo(5 / (1 - 1.6448536269515 * 0.4), 5);
  });

  it('suffices in 95 trips of 100 where what is needed with the gauge is just there', () => {
    for (const spread of [0.05, 0.1, 0.2, 0.35, 0.6]) {
      let [low, high] = [5, 100];
      for (let i = 0; i < 50; i++) {
        const middle = (low + high) / 2;
        if (needed(spread, middle, 0.95) <= middle) high = middle;
        else low = middle;
      }
      const sure = probabilityWithin(alone(5, spread), high, 2);
      expect(sure, `${spread}`).toBeGreaterThan(0.943);
      expect(sure, `${spread}`).toBeLessThan(0.951);
    }
  });

  it('is doubted more the worse its gauge, and the same way by those who know their need better or worse', () => {
    for (const spread of [0, 0.1, 0.4, 1]) {
      let before = 0;
      for (const error of [0.01, 0.05, 0.1, 0.2, 0.4, 0.8, 2]) {
        const now = gaugeSpread(error, spread, 1.645);
        expect(now).toBeGreaterThan(before);
        expect(now).toBeLessThan(Infinity);
        // A normal error takes more than its share of a logarithm upwards, and gives less downwards.
        expect(now).toBeGreaterThan(error);
        expect(gaugeSpread(error, spread, -1.645)).toBeLessThan(error);
        before = now;
      }
    }
    expect(gaugeSpread(0.1, 100, 1.645)).toBeCloseTo(0.1, 4);
  });
});
