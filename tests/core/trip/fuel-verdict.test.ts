import { describe, expect, it } from 'vitest';
import type { Calibration } from '../../../src/core/craft/shapes.ts';
import { FACTORS } from '../../../src/core/curve/factors.ts';
import { marginOf } from '../../../src/core/curve/hump.ts';
import { AS_PLANNED } from '../../../src/core/trip/afloat-in.ts';
import { knownToAllow } from '../../../src/core/trip/fuel-allows.ts';
import { type FuelVerdict, fallsShort, fuelVerdict, withHump, worst } from '../../../src/core/trip/fuel-verdict.ts';
import { needAt } from '../../../src/core/trip/need.ts';
import { planTrip } from '../../../src/core/trip/plan-trip.ts';
import { prepare, scenariosOf } from '../../../src/core/trip/prepare.ts';
import { sail } from '../../../src/core/trip/sail.ts';
import type { Trip } from '../../../src/core/trip/shapes.ts';
import { needOf, needWithGauge } from '../../../src/core/trip/spread.ts';
import { haven, shipped, soundTrip } from '../../trips.ts';

/** Measured to a hundredth in every factor. */
function wellKnown(): Calibration {
  return {
    factors: [1, 1, 1, 0, 0, 1, 0],
    covariance: FACTORS.map((_, i) => FACTORS.map((__, j) => (i === j ? 1e-4 : 0))),
    runs: 40,
    formSpread: 0.01,
    fouling: 'clean',
    power: { factor: 1, deviation: 0.01 },
  } as unknown as Calibration;
}

function judged(trip: Trip) {
  const prepared = prepare(trip, haven());
  return { prepared, fuel: fuelVerdict(prepared) };
}

describe('what is known of a verdict', () => {
  /** 12 usable, 4 of them the reserve; the bad case has 10 and needs 8. */
  const known = (change: object = {}, need = 5, badLeft = 2): FuelVerdict =>
    ({
      run: { need, possible: true },
      usable: 12,
      reserve: 4,
      need90: 7,
      keeps: 5.5,
      badCase: { need: 8, left: badLeft },
      badUsable: 10,
      verdict: 'go',
      ...change,
    }) as unknown as FuelVerdict;
  const holds = (fuel: FuelVerdict) => [knownToAllow(fuel, 'go').holds, knownToAllow(fuel, 'marginal').holds];

  it('allows what keeps the reserve to the last drop and one trip in ten to the last, and no more', () => {
    expect(holds(known())).toEqual([true, true]);
    expect(holds(known({}, 8))).toEqual([true, true]);
    expect(holds(known({}, 8.01))).toEqual([false, false]);
    expect(holds(known({ need90: 12 }))).toEqual([true, true]);
    expect(holds(known({ need90: 12.01 }))).toEqual([false, false]);
    expect(holds(known({ usable: 0, reserve: 0, need90: 0 }, 0))).toEqual([false, false]);
    expect(holds(known({ run: { need: 5, possible: false } }))).toEqual([false, false]);
    expect(holds(known({ verdict: 'marginal' }))).toEqual([false, true]);
  });

  it('has the slack of what falls shortest: reserve, one in ten, and for a go the bad case', () => {
    expect(knownToAllow(known(), 'marginal').slack).toBeCloseTo(Math.log(8 / 5), 12);
    expect(knownToAllow(known(), 'go').slack).toBeCloseTo(Math.log(10 / 8), 12);
    expect(knownToAllow(known({ need90: 11 }), 'go').slack).toBeCloseTo(Math.log(12 / 11), 12);
    expect(knownToAllow(known({ keeps: 7 }), 'go').slack).toBeCloseTo(Math.log(8 / 7), 12);
    // In doubt it may be whether the reserve stays whole.
    expect(knownToAllow(known({ keeps: 7.9 }), 'marginal').slack).toBeCloseTo(Math.log(8 / 5), 12);
    // Where the reserve is broken the bad case is not asked.
    expect(knownToAllow(known({}, 9), 'go').slack).toBeCloseTo(Math.log(8 / 9), 12);
  });
});

describe('a trip that is likely to keep its reserve', () => {
  it('is a go only where two such trips of three keep it: “home with reserve” is no toss-up', () => {
    // A boat that is known so well that its bad case decides nothing.
    const trip = soundTrip();
    const { calibration: _, ...craft } = trip.craft;
    const sure = { ...craft, calibration: wellKnown() };
    let before: string | undefined;
    const chances: number[] = [];
    for (let fill = 0.05; fill < 0.4; fill += 0.002) {
      const found = planTrip({ ...trip, craft: sure, load: { ...trip.load, fill } }, haven(), { quick: true });
      if (!found.ok) throw new Error(found.problems[0]!.message);
      const { verdict, probability, reasons } = found.value;
      if (verdict === 'go') expect(probability).toBeGreaterThan(0.655);
      if (before !== 'go' && verdict === 'go') chances.push(probability);
      if (reasons.some(({ code }) => code === 'reserve-unsure')) {
        expect(verdict).toBe('marginal');
        expect(probability).toBeLessThan(0.68);
        expect(probability).toBeGreaterThan(0.49);
      }
      before = verdict;
    }
    expect(chances).toHaveLength(1);
  });
});

describe('a reserve in minutes', () => {
  it('is told at the mean flow under way: manoeuvring and stops would thin it', () => {
    const trip = soundTrip();
    const waypoints = trip.route.waypoints.map((point, i) => (i === 1 ? { ...point, stop: 7200 } : point));
    const reserve = [{ kind: 'minutes', minutes: 20 } as const];
    const { fuel } = judged({ ...trip, route: { ...trip.route, waypoints }, policy: { ...trip.policy, reserve } });
    const { sailed } = fuel.run;
    const use = sailed.reduce((sum, s) => sum + s.use, 0);
    const time = sailed.reduce((sum, s) => sum + s.time, 0);
    expect(fuel.reserve).toBeCloseTo((1200 * use) / time, 9);
  });
});

describe('the bad case', () => {
  it('is sailed at speeds that the boat holds, however fast the plan', () => {
    const trip = soundTrip();
    const { prepared, fuel } = judged({ ...trip, route: { ...trip.route, speed: 14 } });
    const boat = prepared.boatAt(fuel.badRun.scenario.batteryTemperatureC);
    const margin = (s: (typeof fuel.run.sailed)[number]) => marginOf(boat, s.afloat, s.steady.drive);
    expect(Math.min(...fuel.run.sailed.map(margin))).toBeLessThan(1);
    expect(Math.min(...fuel.badRun.sailed.map(margin))).toBeGreaterThanOrEqual(1);
    expect(fuel.badCase.need).toBeLessThan(Infinity);
    expect(fuel.badCase.left).toBeCloseTo(fuel.badUsable - fuel.badCase.need, 9);
    expect(fuel.badCase.time).toBe(fuel.badRun.time);
  });
});

/** Every scenario of a trip sailed and judged alone, with nothing taken over from another. */
function oneByOne(trip: Trip, humpSpeed?: number) {
  const prepared = prepare(trip, haven());
  const { shown, bad } = scenariosOf(prepared, humpSpeed);
  const fuel = fuelVerdict(prepared, { humpSpeed });
  const runs = shown.map((scenario) => sail(prepared, scenario));
  const cases = bad.map((scenario) => {
    const run = sail(prepared, scenario, AS_PLANNED, { yielding: true });
    const usable = prepared.usable(scenario);
    const need = run.possible
      ? needWithGauge(prepared, run, needOf(prepared, run, fuel.spread), { usable, p: 0.95 })
      : Infinity;
    return { kinds: scenario.kinds, scenario, time: run.time, need, usable, left: usable - need };
  });
  return { prepared, fuel, runs, cases, bad };
}

const sea = (height: number, trip = soundTrip()): Trip => ({
  ...trip,
  conditions: { ...trip.conditions, sea: { height } },
});
const unseated = (trip: Trip): Trip => ({
  ...trip,
  load: { ...trip.load, items: trip.load.items.map(({ station: _, at: __, ...item }) => item) },
});
const filled = (fill: number | undefined, trip = soundTrip()): Trip => ({ ...trip, load: { ...trip.load, fill } });
const blown = (speed: number, trip = soundTrip()): Trip => ({
  ...trip,
  conditions: { ...trip.conditions, wind: { fromDeg: 0, speed } },
});
/** Nothing told of wind, water, sea and tank. */
const untold = (trip = soundTrip()): Trip => {
  const { wind: _, stream: __, sea: ___, ...conditions } = trip.conditions;
  return filled(undefined, { ...trip, conditions });
};
/** No way home against it. */
const swept = (trip: Trip): Trip => ({
  ...trip,
  conditions: { ...trip.conditions, stream: { setDeg: 180, rate: 9 } },
});

const many: readonly [string, Trip, number?][] = [
  ['a short trip', soundTrip()],
  ['a short trip that may labour home', soundTrip(), 3],
  ['waves that slow the boat', sea(0.3)],
  ['waves that leave no planing', sea(0.7), 3.2],
  ['waves of the wind freshened only', sea(0.12)],
  ['seats unknown', unseated(soundTrip()), 3],
  ['seats unknown in waves', unseated(sea(0.3)), 3],
  ['seats unknown in a rough sea', unseated(sea(0.6))],
  ['nothing known', untold(), 3],
  ['nothing known, seats neither', unseated(untold()), 3],
  ['a speed just held', blown(6, { ...soundTrip(), route: { ...soundTrip().route, speed: 9 } })],
  ['a speed not held, seats unknown', unseated({ ...sea(0.1), route: { ...soundTrip().route, speed: 11 } })],
  [
    'the most economical speed, seats unknown',
    unseated({ ...sea(0.1), route: { ...soundTrip().route, speed: 'best' } }),
  ],
  ['too little in the tank', unseated(filled(0.05, sea(0.3)))],
  ['no way home', unseated(swept(sea(0.3)))],
  ['the petrol day', shipped('petrol-day'), 3],
  ['the electric tender', shipped('electric-tender')],
  ['the hire boat, nothing known', untold(shipped('hire-hull'))],
];

describe.each(many)('with %s', (_name, trip, humpSpeed) => {
  const { fuel, runs, cases } = oneByOne(trip, humpSpeed);

  it('the bad case is the one of all that leaves least', () => {
    const least = cases.reduce((a, b) => (b.left < a.left ? b : a));
    expect(fuel.badCase.left).toBe(least.left);
    expect(fuel.badCase).toEqual({ kinds: least.kinds, need: least.need, left: least.left, time: least.time });
    expect(fuel.badUsable).toBe(least.usable);
  });

  it('the bad case is the same whichever end of the boat is asked first, and each end has its own', () => {
    const prepared = prepare(trip, haven());
    const leastOf = (asked: typeof cases) => {
      const scenarios = asked.map(({ scenario }) => scenario);
      const { badCase } = worst(prepared, scenarios, AS_PLANNED, fuel.spread);
      expect(badCase.left).toBe(Math.min(...asked.map(({ left }) => left)));
    };
    const forward = cases.filter(({ scenario }) => scenario.forward);
    const aft = cases.filter(({ scenario }) => !scenario.forward);
    leastOf([...forward, ...aft]);
    leastOf(aft);
    if (forward.length > 0) leastOf(forward);
    const slowed = ({ scenario }: (typeof cases)[number]) => !scenario.unslowed;
    leastOf([...forward, ...aft].filter(slowed));
    leastOf([...aft, ...forward].filter(slowed));
  });

  it('the trip as shown is the one that needs most, and the slowest of them is told', () => {
    expect(fuel.run.need).toBe(Math.max(...runs.map(({ need }) => need)));
    expect(fuel.slowest).toBe(Math.max(...runs.map(({ time }) => time)));
    const most = runs.find(({ need }) => need === fuel.run.need)!;
    expect(fuel.run.scenario).toEqual(most.scenario);
  });

  it('what the waves slow is to be held as well, where the trip that needs most keeps its speed through them', () => {
    const slow = runs.filter(({ scenario }) => !scenario.unslowed).flatMap(({ sailed }) => sailed);
    const slowed = fuel.run.scenario.unslowed ? slow.filter((s) => s.possible && s.speed < s.planned) : [];
    expect(fuel.slowed.map(({ speed, stretch }) => [stretch.leg, speed])).toEqual(
      slowed.map(({ speed, stretch }) => [stretch.leg, speed]),
    );
  });

  it('labouring home is found afterwards as it is at once', () => {
    const prepared = prepare(trip, haven());
    for (const speed of [2, 3.5, 5]) {
      for (const use of [1, 1.4]) {
        const tweak = { extraMass: 0, use };
        const later = withHump(prepared, fuelVerdict(prepared, { tweak }), speed, ...(use === 1 ? [] : [use]));
        const atOnce = fuelVerdict(prepared, { tweak, humpSpeed: speed });
        expect(later.badCase).toEqual(atOnce.badCase);
        expect(later.verdict).toBe(atOnce.verdict);
        expect(later.badUsable).toBe(atOnce.badUsable);
      }
    }
  });
});

describe('the trips asked one by one', () => {
  it('are of all sorts', () => {
    const all = many.map(([, trip, hump]) => oneByOne(trip, hump));
    // Slowed and held through waves, the forward seat the one that needs most and the aft one, home slowly or not.
    expect(all.some(({ fuel }) => fuel.slowed.length > 0)).toBe(true);
    expect(all.some(({ fuel }) => fuel.run.scenario.forward)).toBe(true);
    expect(all.some(({ fuel, prepared }) => prepared.forwardMoment > 0 && !fuel.run.scenario.forward)).toBe(true);
    const kinds = new Set(all.map(({ fuel }) => fuel.badCase.kinds[0]!));
    expect(kinds.has('home-slow') || kinds.has('home-on-hump')).toBe(true);
    expect(all.some(({ fuel }) => fuel.badRun.scenario.unslowed)).toBe(true);
  });
});

describe('the verdict', () => {
  const at = (fill: number) => judged(filled(fill, sea(0.3))).fuel;

  it('falls from go over marginal to no-go with what is in the tank, each where it is said to', () => {
    const order: string[] = [];
    for (let fill = 0.02; fill <= 0.9; fill += 0.02) {
      const { verdict, run, usable, reserve, need90, keeps, badCase } = at(fill);
      const likely = run.need <= usable - reserve && need90 <= usable;
      const sure = badCase.left > 0 && keeps <= usable - reserve;
      expect(verdict).toBe(!likely ? 'no-go' : sure ? 'go' : 'marginal');
      if (verdict !== order.at(-1)) order.push(verdict);
    }
    expect(order).toEqual(['no-go', 'marginal', 'go']);
  });

  it('is a go as soon as anything is left in the bad case', () => {
    let [dry, some] = [0.02, 0.9];
    while (some - dry > 1e-4) {
      const middle = (dry + some) / 2;
      if (at(middle).verdict === 'go') some = middle;
      else dry = middle;
    }
    expect(at(some).badCase.left).toBeGreaterThan(0);
    expect(at(some).badCase.left).toBeLessThan(0.1);
  });

  it('is no go where the bad case leaves nothing at all', () => {
    // A gauge without error, so that what is needed does not hang on what there is.
    const hardlyAny = { ...soundTrip().policy, reserve: [{ kind: 'share', share: 0.01 } as const] };
    const prepared = { ...prepare({ ...soundTrip(), policy: hardlyAny }, haven()), full: 0 };
    const { need } = fuelVerdict(prepared).badCase;
    const having = (usable: number) => fuelVerdict({ ...prepared, usable: () => usable });
    expect(having(need).badCase.left).toBe(0);
    expect(having(need).verdict).toBe('marginal');
    expect(having(need * 1.000001).verdict).toBe('go');
  });

  it('weighs nine trips in ten by what the gauge may hide too', () => {
    const { need90, need, badCase } = at(0.5);
    expect(need90).toBeGreaterThan(needAt(need, 0.9));
    expect(need90).toBeLessThan(needAt(need, 0.95) * 1.1);
    expect(need90).toBeLessThan(badCase.need);
  });

  it('of a drop aboard is not the tank that is dry', () => {
    const known = { run: { need: 0.2, possible: true }, usable: 0.9, reserve: 0.1, need90: 0.3 };
    expect(fallsShort(known as unknown as FuelVerdict)).toBe(false);
    expect(fallsShort({ ...known, usable: 0, reserve: 0, run: { need: 0 }, need90: 0 } as unknown as FuelVerdict)).toBe(
      true,
    );
  });
});

describe('the first bad case that runs dry', () => {
  const { prepared, cases, bad, fuel } = oneByOne(filled(0.05, sea(0.3)), 3);
  const asked = (order: readonly number[], enough?: boolean) =>
    worst(
      prepared,
      order.map((i) => bad[i]!),
      AS_PLANNED,
      fuel.spread,
      ...(enough === undefined ? [] : [enough]),
    ).badCase.left;
  const order = cases.map((_, i) => i).sort((a, b) => cases[b]!.left - cases[a]!.left);

  it('is enough where only that is asked, and otherwise the driest is found', () => {
    const lefts = order.map((i) => cases[i]!.left);
    expect(lefts[0]).toBeLessThanOrEqual(0);
    expect(lefts.at(-1)).toBeLessThan(lefts[0]!);
    expect(asked(order, true)).toBe(lefts[0]);
    expect(asked(order)).toBe(lefts.at(-1));
    expect(asked(order, false)).toBe(lefts.at(-1));
  });

  it('may be one that leaves just nothing', () => {
    const sure = { ...prepared, full: 0 };
    const needs = bad.map((scenario) => worst(sure, [scenario], AS_PLANNED, fuel.spread).badCase.need);
    const rising = bad.map((_, i) => i).sort((a, b) => needs[a]! - needs[b]!);
    const [mildest, most] = [Math.min(...needs), Math.max(...needs)];
    const found = (enough: boolean) => {
      const scenarios = rising.map((i) => bad[i]!);
      return worst({ ...sure, usable: () => mildest }, scenarios, AS_PLANNED, fuel.spread, enough).badCase;
    };
    expect(most).toBeGreaterThan(mildest);
    expect(found(true).left).toBe(0);
    expect(found(false).need).toBe(most);
  });

  it('is not one that leaves a little', () => {
    // Filled so that the mildest leaves half a kilogram, and the driest nothing.
    let [low, high] = [0.05, 0.9];
    const lefts = (fill: number) => oneByOne(filled(fill, sea(0.3)), 3);
    while (high - low > 1e-4) {
      const middle = (low + high) / 2;
      if (Math.max(...lefts(middle).cases.map(({ left }) => left)) > 0.2) high = middle;
      else low = middle;
    }
    const some = lefts(high);
    const sorted = some.bad.map((_, i) => i).sort((a, b) => some.cases[b]!.left - some.cases[a]!.left);
    expect(some.cases[sorted.at(-1)!]!.left).toBeLessThan(0);
    const found = worst(
      some.prepared,
      sorted.map((i) => some.bad[i]!),
      AS_PLANNED,
      some.fuel.spread,
      true,
    );
    expect(found.badCase.left).toBeLessThanOrEqual(0);
  });
});

describe('a reserve in minutes of a trip', () => {
  const policy = { ...soundTrip().policy, reserve: [{ kind: 'minutes', minutes: 20 } as const] };

  it('that cannot be sailed is all there is', () => {
    const { fuel } = judged({ ...swept(soundTrip()), policy });
    expect(fuel.reserve).toBe(fuel.usable);
    expect(fuel.verdict).toBe('no-go');
  });

  it('of a few metres is that of the same boat on a longer one', () => {
    const { route } = soundTrip();
    const [from] = route.waypoints;
    const hop = {
      ...soundTrip(),
      policy,
      route: { ...route, waypoints: [from!, { lat: from!.lat - 2e-5, lon: from!.lon }] },
    };
    const { fuel } = judged(hop);
    expect(fuel.run.sailed.reduce((sum, s) => sum + s.time, 0)).toBeLessThan(1);
    expect(fuel.reserve).toBeCloseTo(judged({ ...soundTrip(), policy }).fuel.reserve, 1);
  });
});
