import { describe, expect, it } from 'vitest';
import { type Afloat, type Boat, boatOf } from '../../../src/core/curve/boat.ts';
import { humpOf, marginOf, speedAtFroude } from '../../../src/core/curve/hump.ts';
import { CALM, lcgSlope, resistanceDeviation, steady, type Weather } from '../../../src/core/curve/steady.ts';
import { asked, climbed, climbOf } from '../../../src/core/trip/climb.ts';
import { heldProbability, humpVerdict } from '../../../src/core/trip/held.ts';
import { holding, verdictFrom, worse } from '../../../src/core/trip/holding.ts';
import { normalCdf } from '../../../src/core/trip/need.ts';
import type { Prepared } from '../../../src/core/trip/prepare.ts';
import { Remembered } from '../../../src/core/trip/remembered.ts';
import type { Run, Sailed } from '../../../src/core/trip/sail.ts';
import { loaded } from '../curve/loaded.ts';

const { boat, afloat } = loaded('rib-4-7', 'petrol-30hp-4s', 'tank-25');
const PLANING = speedAtFroude(boat, afloat, 2.2);

const marginAt = (speed: number, state: Afloat = afloat, weather: Weather = CALM, of: Boat = boat) =>
  marginOf(of, state, steady(of, state, speed, weather).drive);

/** What holds a speed with so much to spare: the fastest that still does, m/s. */
function speedWith(margin: number): number {
  let [low, high] = [PLANING, 40];
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    if (marginAt(middle) >= margin) low = middle;
    else high = middle;
  }
  return low;
}

interface Leg {
  readonly speed?: number;
  readonly planned?: number;
  readonly weather?: Weather;
  readonly state?: Afloat;
  readonly trackDeg?: number;
}

function sailed({ speed = PLANING + 2, planned = speed, weather = CALM, state = afloat, trackDeg = 0 }: Leg): Sailed {
  const now = steady(boat, state, speed, weather);
  return { speed, planned, weather, afloat: state, steady: now, stretch: { trackDeg }, at: 0 } as unknown as Sailed;
}

function prepared(change: object = {}): Prepared {
  return {
    boatAt: () => boat,
    remembered: new Remembered(),
    burns: true,
    seaTold: true,
    forwardMoment: 0,
    ...change,
  } as unknown as Prepared;
}

const run = (legs: readonly Sailed[], scenario: object = {}) =>
  ({ sailed: legs, scenario: { batteryTemperatureC: 10, ...scenario } }) as unknown as Run;

describe('the chance that a speed is held', () => {
  const at = (speed: number) => ({ afloat, speed, steady: steady(boat, afloat, speed) });

  it('is a half where power just does, and follows what is known of resistance and rating', () => {
    const just = speedWith(1);
    expect(heldProbability(boat, at(just))).toBeCloseTo(0.5, 6);
    const speed = speedWith(1.2);
    const now = steady(boat, afloat, speed);
    const share = resistanceDeviation(boat, now, lcgSlope(boat, afloat, speed, now.hull)) / now.resistance;
    const deviation = Math.hypot(1.2 * share, 0.07);
    expect(heldProbability(boat, at(speed))).toBeCloseTo(normalCdf(Math.log(marginAt(speed)) / deviation), 9);
  });

  it('is certain from three times the power on', () => {
    const slow = PLANING / 3;
    expect(marginAt(slow)).toBeGreaterThan(3);
    expect(heldProbability(boat, at(slow))).toBe(1);
    expect(heldProbability(boat, at(speedWith(2.5)))).toBeLessThan(1);
  });

  it('is the same with what was worked out before', () => {
    const remembered = new Remembered();
    const speed = speedWith(1.1);
    const plain = heldProbability(boat, at(speed));
    expect(heldProbability(boat, at(speed), remembered)).toBe(plain);
  });
});

describe('verdicts', () => {
  it('on the hump are go with 5 % to spare, no-go where it is not crossed', () => {
    expect([0.999, 1, 1.0499, 1.05, 2].map(humpVerdict)).toEqual(['no-go', 'marginal', 'marginal', 'go', 'go']);
  });

  it('are the best that is allowed', () => {
    const allowing = (...allowed: string[]) => verdictFrom((wanted) => ({ holds: allowed.includes(wanted), slack: 0 }));
    expect(allowing('go', 'marginal')).toBe('go');
    expect(allowing('marginal')).toBe('marginal');
    expect(allowing()).toBe('no-go');
  });

  it('of two are the worse', () => {
    const all = ['go', 'marginal', 'no-go'] as const;
    all.forEach((a, i) => {
      all.forEach((b, j) => {
        expect(worse(a, b)).toBe(all[Math.max(i, j)]);
      });
    });
  });
});

describe('what is asked of a boat', () => {
  it('is what was sailed, where nothing slowed it and every seat is known', () => {
    const legs = [sailed({}), sailed({ speed: 3 })];
    expect(asked(prepared(), run(legs))).toBe(legs);
  });

  it('is also the planned speed in flat water, where a sea that is told slows it', () => {
    const weather = { headwind: 4, waveHeight: 0.2 };
    const slowed = sailed({ speed: 7, planned: 9, weather });
    const all = asked(prepared(), run([slowed, sailed({})]));
    expect(all).toHaveLength(3);
    expect(all[0]).toBe(slowed);
    expect(all[2]!.speed).toBe(9);
    expect(all[2]!.weather).toEqual({ headwind: 4, waveHeight: 0 });
    expect(all[2]!.steady).toEqual(steady(boat, afloat, 9, { headwind: 4, waveHeight: 0 }));
  });

  it('is the planned speed in the waves, where nobody told them', () => {
    const weather = { headwind: 4, waveHeight: 0.2 };
    const all = asked(prepared({ seaTold: false }), run([sailed({ speed: 7, planned: 9, weather })]));
    expect(all).toHaveLength(2);
    expect(all[1]!.weather).toEqual(weather);
  });

  it('is not to hold full speed through waves that are told and not let slow it', () => {
    const weather = { headwind: 4, waveHeight: 0.2 };
    const legs = [sailed({ speed: 9, weather })];
    const [only, ...more] = asked(prepared(), run(legs, { unslowed: true }));
    expect(more).toEqual([]);
    expect(only!.weather).toEqual({ headwind: 4, waveHeight: 0 });
    expect(only!.steady.resistance).toBeCloseTo(steady(boat, afloat, 9, { headwind: 4, waveHeight: 0 }).resistance, 9);
    // Of waves that nobody told that is asked all the same.
    expect(asked(prepared({ seaTold: false }), run(legs, { unslowed: true }))).toBe(legs);
  });

  it('is with a seat unknown all of it once more from the other end of the boat', () => {
    const legs = [sailed({}), sailed({ speed: 3 })];
    const all = asked(prepared({ forwardMoment: 120 }), run(legs));
    expect(all).toHaveLength(4);
    expect(all[2]!.afloat.lcg).toBeCloseTo(afloat.lcg + 120 / afloat.mass, 12);
    expect(all[3]!.speed).toBe(3);
    expect(all[2]!.steady.hull.total).not.toBe(legs[0]!.steady.hull.total);
    const aft = asked(prepared({ forwardMoment: 120 }), run(legs, { forward: true }));
    expect(aft[2]!.afloat.lcg).toBeCloseTo(afloat.lcg - 120 / afloat.mass, 12);
  });
});

describe('the climb of a trip', () => {
  it('is to its fastest speed, as heavy, far aft, drained and against as much wind and sea as any', () => {
    const states = [
      { ...afloat, mass: 500, lcg: 1.6, charge: 0.4 },
      { ...afloat, mass: 480, lcg: 1.5 },
      { ...afloat, mass: 490, lcg: 1.7, charge: 0.9 },
    ];
    const climb = climbOf([
      sailed({ state: states[0]!, speed: 5, weather: { headwind: -3, waveHeight: 0.1 } }),
      sailed({ state: states[1]!, speed: 8, weather: { headwind: -1, waveHeight: 0 } }),
      sailed({ state: states[2]!, speed: 3, weather: { headwind: -2, waveHeight: 0.2 } }),
    ]);
    expect(climb).toEqual({
      afloat: { mass: 500, lcg: 1.5, charge: 0.4, airArea: afloat.airArea },
      weather: { headwind: -1, waveHeight: 0.2 },
      top: 8,
    });
    expect(climbOf([sailed({})]).afloat.charge).toBe(1);
  });

  it('is tightest on the hump, where the boat is to plane', () => {
    const hump = humpOf(boat, afloat, CALM, PLANING + 1);
    expect(climbed(boat, { afloat, weather: CALM, top: PLANING + 1 })).toEqual(hump);
    expect(climbed(boat, { afloat, weather: CALM, top: PLANING + 1 }, new Remembered())).toEqual(hump);
    expect(climbed(boat, { afloat, weather: CALM, top: PLANING })).toEqual(humpOf(boat, afloat, CALM, PLANING));
  });

  it('has no hump before a speed below planing that itself is the tightest', () => {
    const top = PLANING * 0.75;
    const own = marginAt(top);
    expect(humpOf(boat, afloat, CALM, top).margin).toBeGreaterThanOrEqual(own);
    expect(climbed(boat, { afloat, weather: CALM, top })).toEqual({ speed: top, margin: Infinity });
    expect(climbed(boat, { afloat, weather: CALM, top: 1 })).toEqual({ speed: 1, margin: Infinity });
  });

  it('has one before a speed below planing that needs less than the way to it', () => {
    const { boat: other, afloat: state } = loaded('catamaran-2-9', 'petrol-8hp-4s', 'tank-25', { extra: -50 });
    const aft = { ...state, lcg: state.lcg - 0.3 };
    const hump = humpOf(other, aft, CALM);
    const top = speedAtFroude(other, aft, 2.19);
    expect(hump.margin).toBeLessThan(marginAt(top, aft, CALM, other));
    expect(climbed(other, { afloat: aft, weather: CALM, top })).toEqual(humpOf(other, aft, CALM, top));
  });
});

describe('what the engine says of more aboard', () => {
  const fast = speedWith(1.3);
  const held = (legs: readonly Sailed[], change: object = {}) => {
    const on = run(legs);
    return holding(prepared(change), on, legs);
  };

  it('of the hump is go with 5 % more than it asks, with as much extra as was asked', () => {
    const { planes } = held([sailed({ speed: fast })]);
    for (const extra of [0, 60]) {
      const { margin } = humpOf(boat, { ...afloat, charge: 1, mass: afloat.mass + extra }, CALM, fast);
      expect(planes('go', extra).slack).toBeCloseTo(Math.log(margin / 1.05), 9);
      expect(planes('marginal', extra).slack).toBeCloseTo(Math.log(margin), 9);
      expect(planes('go', extra).holds).toBe(margin >= 1.05);
      expect(planes('marginal', extra).holds).toBe(margin >= 1);
    }
    const slow = held([sailed({ speed: 1 })]);
    expect(slow.planes('go', 0)).toEqual({ holds: true, slack: 9 });
  });

  it('of the hump takes the strongest wind from ahead, as sailed or as asked', () => {
    const legs = [
      sailed({ speed: fast, weather: { headwind: 3, waveHeight: 0 } }),
      sailed({ speed: fast, weather: { headwind: 5, waveHeight: 0 }, trackDeg: 90 }),
    ];
    const slack = (headwind: number) =>
      Math.log(humpOf(boat, { ...afloat, charge: 1 }, { headwind, waveHeight: 0 }, fast).margin);
    expect(held(legs).planes('marginal', 0).slack).toBeCloseTo(slack(5), 9);
    expect(held(legs).planes('marginal', 0, (s) => s.weather.headwind + 4).slack).toBeCloseTo(slack(9), 9);
  });

  it('of a speed is marginal while this boat holds it, go while three of four such boats do', () => {
    const { speeds } = held([sailed({ speed: fast })]);
    expect(speeds('marginal', 0)).toMatchObject({ holds: true });
    expect(speeds('marginal', 0).slack).toBeCloseTo(Math.log(marginAt(fast)), 9);
    const now = steady(boat, afloat, fast);
    const share = resistanceDeviation(boat, now, lcgSlope(boat, afloat, fast, now.hull)) / now.resistance;
    const spread = Math.hypot(1.2 * share, 0.07);
    const go = speeds('go', 0);
    expect(go.slack).toBeCloseTo(Math.log(marginAt(fast)) - 0.6745 * spread, 9);
    expect(go.holds).toBe(normalCdf(Math.log(marginAt(fast)) / spread) >= 0.75);
  });

  it('of a speed not held is no to either, and of one held three times over yes to either', () => {
    const much = speedWith(0.95);
    const { speeds } = held([sailed({ speed: much })]);
    for (const wanted of ['go', 'marginal'] as const) {
      expect(speeds(wanted, 0).holds).toBe(false);
      expect(speeds(wanted, 0).slack).toBeCloseTo(Math.log(marginAt(much)), 9);
    }
    const easy = held([sailed({ speed: 1.5 })]).speeds('go', 0);
    expect(easy).toEqual({ holds: true, slack: Math.log(marginAt(1.5)) });
    const heavier = held([sailed({ speed: fast })]).speeds('marginal', 200);
    expect(heavier.slack).toBeCloseTo(Math.log(marginAt(fast, { ...afloat, mass: afloat.mass + 200 })), 9);
    const blown = held([sailed({ speed: fast })]).speeds('marginal', 0, () => 7);
    expect(blown.slack).toBeCloseTo(Math.log(marginAt(fast, afloat, { headwind: 7, waveHeight: 0 })), 9);
  });

  it('is that of the hardest stretch: the heaviest, the windiest, the roughest, the fastest', () => {
    const slackOf = (...legs: Leg[]) => held(legs.map(sailed)).speeds('marginal', 0).slack!;
    const heavy = { ...afloat, mass: afloat.mass + 80 };
    const windy = { headwind: 6, waveHeight: 0 };
    const rough = { headwind: 0, waveHeight: 0.25 };
    for (const one of [
      { speed: fast, state: heavy },
      { speed: fast, weather: windy },
      { speed: fast, weather: rough },
      { speed: fast + 1 },
    ]) {
      const alone = slackOf(one);
      expect(alone).toBeLessThan(slackOf({ speed: fast }));
      expect(slackOf({ speed: fast }, { ...one, trackDeg: 90 })).toBeCloseTo(alone, 9);
      expect(slackOf({ ...one, trackDeg: 90 }, { speed: fast })).toBeCloseTo(alone, 9);
    }
    // None outdoes the other: both are asked.
    const both = slackOf({ speed: fast, state: heavy }, { speed: fast, weather: windy, trackDeg: 90 });
    expect(both).toBeCloseTo(
      Math.min(slackOf({ speed: fast, state: heavy }), slackOf({ speed: fast, weather: windy })),
      9,
    );
  });

  it('takes of stretches alike the first with petrol, which is the heaviest, the last with a battery, which is drained', () => {
    const bank = loaded('rib-3-4', 'electric-3-1kw', 'battery-1-0-nmc');
    const electric = boatOf(bank.craft, 'sea', 10);
    const leg = (charge: number) => {
      const state = { ...bank.afloat, charge };
      const now = steady(electric, state, 2.4, CALM);
      const stretch = { trackDeg: 0 };
      return { speed: 2.4, planned: 2.4, weather: CALM, afloat: state, steady: now, stretch } as unknown as Sailed;
    };
    const legs = [leg(1), leg(0.5), leg(0.05)];
    const { speeds } = holding(prepared({ burns: false, boatAt: () => electric }), run(legs), legs);
    expect(speeds('marginal', 0).slack).toBeCloseTo(Math.log(marginAt(2.4, legs[2]!.afloat, CALM, electric)), 9);
    const lighter = [0, -5, -10].map((less) => sailed({ speed: fast, state: { ...afloat, mass: afloat.mass + less } }));
    const petrol = held(lighter).speeds('marginal', 0);
    expect(petrol.slack).toBeCloseTo(Math.log(marginAt(fast)), 9);
  });

  it('asks once more where the centre of gravity moved by three centimetres', () => {
    const at = (lcg: number) => sailed({ speed: fast, state: { ...afloat, lcg } });
    const slack = (...legs: Sailed[]) => held(legs).speeds('marginal', 0).slack!;
    const forward = at(afloat.lcg + 0.04);
    const near = at(afloat.lcg + 0.02);
    const worst = Math.min(slack(at(afloat.lcg)), slack(forward));
    expect(slack(forward)).not.toBeCloseTo(slack(at(afloat.lcg)), 4);
    expect(slack(at(afloat.lcg), forward)).toBeCloseTo(worst, 9);
    expect(slack(forward, at(afloat.lcg))).toBeCloseTo(worst, 9);
    expect(slack(at(afloat.lcg), near)).toBeCloseTo(slack(at(afloat.lcg)), 9);
  });

  it('in all is the worse of hump and speeds', () => {
    const { allows, planes, speeds } = held([sailed({ speed: fast })]);
    for (const extra of [0, 100, 250]) {
      for (const wanted of ['go', 'marginal'] as const) {
        const [whole, hump, speed] = [allows(wanted, extra), planes(wanted, extra), speeds(wanted, extra)];
        expect(whole.holds).toBe(hump.holds && speed.holds);
        expect(whole.slack).toBe(Math.min(hump.slack!, speed.slack!));
      }
    }
    expect(allows('marginal', 0, () => 9).slack).toBe(
      Math.min(planes('marginal', 0, () => 9).slack!, speeds('marginal', 0, () => 9).slack!),
    );
  });
});
