import { describe, expect, it } from 'vitest';
import { NODES, normalCdf } from '../../../src/core/trip/need.ts';
import { type Doubt, risk, sampleRisk } from '../../../src/core/trip/risk.ts';
import { needOf } from '../../../src/core/trip/spread.ts';
import type { Standing } from '../../../src/core/trip/standing.ts';

interface Made {
  readonly legs?: readonly {
    part?: 'out' | 'home';
    distance?: number;
    use?: number;
    ground?: number;
    speed?: number;
  }[];
  readonly usable?: number;
  readonly reserve?: number;
  /** What the factors leave in the need. */
  readonly spread?: number;
  readonly people?: number;
  readonly gauge?: 'measured' | 'gauge';
  readonly full?: number;
  readonly untold?: boolean;
  readonly possible?: boolean;
  readonly refills?: { readonly usable: number; readonly to: readonly (number | undefined)[] };
}

/** Fast through the water, so that no stream matters; known by the dipstick to next to nothing. */
function standing({
  legs = [{ use: 5, ground: 1000, speed: 1000 }],
  usable = 20,
  reserve = 4,
  spread = 0,
  people = 0,
  gauge = 'measured',
  full = 0,
  untold = false,
  possible = true,
  refills,
}: Made): Standing {
  const sailed = legs.map(({ part = 'out', distance = 5000, use = 5, ground = 3, speed = 3 }) => ({
    stretch: { part, distance },
    use,
    ground,
    speed,
    told: undefined,
  }));
  const used = sailed.reduce((sum, { use }) => sum + use, 1);
  const run = {
    sailed,
    possible,
    manoeuvring: 1,
    used,
    need: used,
    unsure: used,
    refills,
    scenario: { kinds: [] },
    atStart: { mass: 600 },
  };
  const prepared = {
    trip: { conditions: { sea: 'calm' }, load: { fillKnownBy: gauge } },
    base: { peopleAndGear: people },
    around: { stream: untold ? undefined : 'slack' },
    full,
  } as unknown as Standing['prepared'];
  const need = needOf(prepared, run as never, spread);
  return { prepared, fuel: { run, usable, reserve, need, spread } } as unknown as Standing;
}

const shareOf = (made: Made, doubt: Doubt) => risk(standing(made)).shares.find((s) => s.doubt === doubt)!.share;

/** Variance of the logarithm by the weather of one leg of 5 km, 5 of 6 kg, in a calm sea. */
const WEATHER = 0.08 ** 2 * (2 * (1 - (1 - Math.exp(-1)))) * (5 / 6) ** 2;
const SPEED = (0.05 * (5 / 6)) ** 2;

describe('the chances of a trip', () => {
  it('are those of the need within what is usable, with the reserve and without', () => {
    // 6 kg with 20 % of doubt by the boat beside the weather and the speed.
    const deviation = Math.sqrt(0.04 + WEATHER + SPEED);
    const { reserveWhole, homeAtAll } = risk(standing({ spread: 0.2, usable: 8, reserve: 1.5 }));
    expect(reserveWhole).toBeCloseTo(normalCdf(Math.log(6.5 / 6) / deviation), 4);
    expect(homeAtAll).toBeCloseTo(normalCdf(Math.log(8 / 6) / deviation), 4);
  });

  it('are lower where a float gauge tells what is in the tank', () => {
    const known = risk(standing({ usable: 7, reserve: 0, full: 10 }));
    const gauged = risk(standing({ usable: 7, reserve: 0, full: 10, gauge: 'gauge' }));
    expect(gauged.homeAtAll).toBeLessThan(known.homeAtAll - 0.02);
  });

  it('are none of a trip that cannot be sailed', () => {
    const none = standing({ possible: false });
    expect(risk(none)).toMatchObject({ reserveWhole: 0, homeAtAll: 0 });
    expect(sampleRisk(none, { samples: 10, seed: 1 })).toEqual({ samples: 10, reserveWhole: 0, homeAtAll: 0 });
  });
});

describe('where the doubt of a trip comes from', () => {
  it('is told in shares that add up, the largest first', () => {
    const { shares } = risk(standing({ spread: 0.2, people: 300, full: 10, legs: [{}], untold: true }));
    expect(shares.map(({ doubt }) => doubt).sort()).toEqual(['boat', 'gauge', 'load', 'speed', 'stream', 'weather']);
    expect(shares.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 12);
    for (let i = 1; i < shares.length; i++) expect(shares[i]!.share).toBeLessThanOrEqual(shares[i - 1]!.share);
    expect(shares[0]!.doubt).toBe('boat');
  });

  it('goes by variance: twice the deviation weighs four times', () => {
    const weather = shareOf({ spread: 0.1 }, 'weather');
    expect(weather).toBeCloseTo(WEATHER / (0.01 + WEATHER + SPEED), 5);
    expect(shareOf({ spread: 0.1 }, 'boat')).toBeCloseTo(0.01 / (0.01 + WEATHER + SPEED), 5);
    expect(shareOf({ spread: 0.2 }, 'boat')).toBeCloseTo(0.04 / (0.04 + WEATHER + SPEED), 5);
    expect(shareOf({ spread: 0.1 }, 'speed')).toBeCloseTo(SPEED / (0.01 + WEATHER + SPEED), 5);
    const load = ((0.65 * 0.05 * 300) / 600) ** 2;
    expect(shareOf({ people: 300 }, 'load')).toBeCloseTo(load / (load + WEATHER + SPEED), 5);
  });

  it('of the gauge is its error over what is usable, over the need where that is more', () => {
    // A dipstick is 3 % of 20 kg out.
    const of = (usable: number) => (0.6 / usable) ** 2;
    expect(shareOf({ full: 20, usable: 12 }, 'gauge')).toBeCloseTo(of(12) / (of(12) + WEATHER + SPEED), 5);
    expect(shareOf({ full: 20, usable: 3 }, 'gauge')).toBeCloseTo(of(6) / (of(6) + WEATHER + SPEED), 5);
  });

  it('of the stream is how the need spreads over its error', () => {
    // Need 1 + 15 / (3 - error) on the way home: 0.5 m/s where no stream is told.
    const legs = [{ part: 'home' as const }];
    const told = standing({ legs, untold: true });
    const { nodes } = told.fuel.need;
    nodes.forEach((node, k) => {
      expect(node).toBeCloseTo(1 + 15 / (3 - 0.5 * NODES[k]!), 12);
    });
    // Near enough linear: d log need / d stream = 15 / 9 / 6 a metre a second, half of that for the error.
    const { shares } = risk(told);
    const rest = WEATHER + SPEED;
    const stream = shares.find(({ doubt }) => doubt === 'stream')!.share;
    expect(Math.sqrt((stream * rest) / (1 - stream))).toBeCloseTo((15 / 9 / 6) * 0.5, 1);
    expect(stream).toBeGreaterThan(shareOf({ legs, untold: false }, 'stream'));
    // Without stream in the way there is no share.
    expect(shareOf({}, 'stream')).toBeLessThan(1e-4);
  });

  it('of the stream leaves out what nobody gets home against, and weighs what is left', () => {
    const legs = [{ part: 'home' as const, ground: 1.4, speed: 1.4 }];
    const told = standing({ legs, untold: true });
    expect(told.fuel.need.nodes[4]).toBe(Infinity);
    const { shares } = risk(told);
    for (const { share } of shares) {
      expect(share).toBeGreaterThanOrEqual(0);
      expect(share).toBeLessThanOrEqual(1);
    }
    // Nodes 0 to 3: weights of all but the last.
    const weights = [0.011257411327720689, 0.22207592200561263, 0.5333333333333333, 0.22207592200561263];
    const logs = told.fuel.need.nodes.slice(0, 4).map(Math.log);
    const all = weights.reduce((a, b) => a + b, 0);
    const mean = logs.reduce((sum, log, k) => sum + (weights[k]! * log) / all, 0);
    const variance = logs.reduce((sum, log, k) => sum + (weights[k]! * (log - mean) ** 2) / all, 0);
    expect(shares.find(({ doubt }) => doubt === 'stream')!.share).toBeCloseTo(
      variance / (variance + WEATHER + SPEED),
      4,
    );
  });
});

describe('a trip played many times over', () => {
  const SAMPLES = 4000;
  const agrees = (made: Made, within = 0.012) => {
    const one = standing(made);
    const told = risk(one);
    const played = sampleRisk(one, { samples: SAMPLES, seed: 7 });
    expect(Math.abs(played.reserveWhole - told.reserveWhole)).toBeLessThan(within);
    expect(Math.abs(played.homeAtAll - told.homeAtAll)).toBeLessThan(within);
    return played;
  };

  it('comes out like the chances, whatever the doubt is made of', () => {
    agrees({ spread: 0.25, usable: 8, reserve: 2.2 });
    agrees({ people: 3000, usable: 7, reserve: 1.4 });
    agrees({ usable: 6.5, reserve: 0.8 });
    agrees({ full: 40, gauge: 'measured', usable: 7.2, reserve: 1.9 }, 0.02);
    agrees({ legs: [{ part: 'home' }], untold: true, usable: 7, reserve: 1.4 }, 0.02);
    agrees({ legs: [{ part: 'out' }], untold: true, usable: 7, reserve: 1.4 }, 0.02);
  });

  it('averages the weather over legs as the chances do: short legs share it, long ones forget', () => {
    const far = { ground: 1000, speed: 1000 };
    agrees({ legs: Array(10).fill({ distance: 500, use: 0.5, ...far }), usable: 6.4, reserve: 0.7 });
    agrees({ legs: Array(3).fill({ distance: 20_000, use: 2, ...far }), usable: 7.3, reserve: 0.6 });
    agrees({
      legs: [
        { distance: 0, use: 0, ...far },
        { use: 5, ...far },
      ],
      usable: 6.4,
      reserve: 0.7,
    });
  });

  it('cancels a stream that helps out and hinders home, but for what the slower way costs', () => {
    const legs = [
      { part: 'out' as const, use: 2.5 },
      { part: 'home' as const, use: 2.5 },
    ];
    agrees({ legs, untold: true, usable: 6.8, reserve: 0.7 });
  });

  it('needs nothing endless but where a leg makes no headway', () => {
    // 3 deviations of 0.25 m/s leave no headway at 0.6: some never get home, however much there is.
    const legs = [{ part: 'home' as const, ground: 0.4, speed: 0.4 }];
    const { homeAtAll } = sampleRisk(standing({ legs, usable: 1e9 }), { samples: SAMPLES, seed: 3 });
    expect(homeAtAll).toBeCloseTo(normalCdf((0.4 - 0.05) / Math.hypot(0.25, 0.02)), 1);
    expect(homeAtAll).toBeLessThan(0.95);
    expect(sampleRisk(standing({ usable: 1e9 }), { samples: SAMPLES, seed: 3 }).homeAtAll).toBe(1);
  });

  it('that fills up needs what its leaner part takes', () => {
    const legs = [
      { use: 4, ground: 1000, speed: 1000 },
      { use: 4, ground: 1000, speed: 1000 },
    ];
    const refills = { usable: 6, to: [6, undefined] };
    // 5 to the pump, 4 home: 6 do, 9 in one go would not.
    const filled = sampleRisk(standing({ legs, refills, usable: 6, reserve: 0 }), { samples: 400, seed: 5 });
    expect(filled.homeAtAll).toBeGreaterThan(0.9);
    expect(sampleRisk(standing({ legs, usable: 6, reserve: 0 }), { samples: 400, seed: 5 }).homeAtAll).toBe(0);
  });

  it('plays every draw mirrored too: what one of a pair has more, the other has less', () => {
    const still = [{ use: 0 }];
    for (const seed of [1, 2, 3, 4, 5]) {
      const half = (made: Made) => sampleRisk(standing(made), { samples: 200, seed });
      // Only the 1 kg of manoeuvring: by the boat, then by the gauge, exactly one of each pair has enough.
      expect(half({ legs: still, spread: 0.2, usable: 1, reserve: 0 }).homeAtAll).toBe(0.5);
      expect(half({ legs: still, full: 5, usable: 1.5, reserve: 0.5 })).toMatchObject({ reserveWhole: 0.5 });
      // By weather and speed made, and with a stream on the way home: all but exactly.
      expect(Math.abs(half({ usable: 6, reserve: 0 }).homeAtAll - 0.5)).toBeLessThan(0.016);
      const legs = [{ part: 'home' as const }];
      expect(Math.abs(half({ legs, untold: true, usable: 6.05, reserve: 0 }).homeAtAll - 0.5)).toBeLessThan(0.04);
    }
  });

  it('without any doubt is the plan: what just does, does', () => {
    const still = { legs: [{ use: 0 }], reserve: 0.25 };
    const share = (usable: number) => sampleRisk(standing({ ...still, usable }), { samples: 8, seed: 1 });
    expect(share(1.25)).toMatchObject({ reserveWhole: 1, homeAtAll: 1 });
    expect(share(1.2499)).toMatchObject({ reserveWhole: 0, homeAtAll: 1 });
    expect(share(1)).toMatchObject({ reserveWhole: 0, homeAtAll: 1 });
    expect(share(0.9999)).toMatchObject({ reserveWhole: 0, homeAtAll: 0 });
  });

  it('that fills up before the leaner part starts with its manoeuvring out of the first filling', () => {
    const legs = [{ use: 0 }, { use: 0 }];
    const refills = { usable: 6, to: [5.5, undefined] };
    const filled = (usable: number) =>
      sampleRisk(standing({ legs, refills, usable, reserve: 0 }), { samples: 4, seed: 5 }).homeAtAll;
    expect(filled(1)).toBe(1);
    expect(filled(0.99)).toBe(0);
  });

  it('is the same for the same seed, and counts as many samples as were asked, an odd one too', () => {
    const one = standing({ spread: 0.25, usable: 7, reserve: 0.6 });
    const [a, b, c] = [1, 1, 2].map((seed) => sampleRisk(one, { samples: 301, seed }));
    expect(a).toEqual(b);
    expect(c).not.toEqual(a);
    expect(a!.samples).toBe(301);
    expect((a!.homeAtAll * 301) % 1).toBeCloseTo(0, 9);
    expect(sampleRisk(standing({ usable: 1e9, reserve: 0 }), { samples: 301, seed: 1 }).reserveWhole).toBe(1);
  });
});
