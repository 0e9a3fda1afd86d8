import { describe, expect, it } from 'vitest';
import { contingencies } from '../../../src/core/trip/contingencies.ts';
import { fromHere } from '../../../src/core/trip/from-here.ts';
import { minimums } from '../../../src/core/trip/minimums.ts';
import { planTrip } from '../../../src/core/trip/plan-trip.ts';
import { risk, sampleRisk } from '../../../src/core/trip/risk.ts';
import type { Plan, Trip } from '../../../src/core/trip/shapes.ts';
import { speedChoices } from '../../../src/core/trip/speed-choices.ts';
import { type Standing, standingOf } from '../../../src/core/trip/standing.ts';
import { haven, shipped } from '../../trips.ts';

const petrol = shipped('petrol-day');
const electric = shipped('electric-tender');
const hire = shipped('hire-hull');
const trips: readonly [string, Trip][] = [
  ['the petrol day', petrol],
  ['the electric tender', electric],
  ['the hire boat', hire],
];

function opened(trip: Trip): Standing {
  const found = standingOf(trip, haven());
  if (!found.ok) throw new Error(found.problems[0]!.message);
  return found.value;
}

function planned(trip: Trip): Plan {
  const found = planTrip(trip, haven());
  if (!found.ok) throw new Error(found.problems[0]!.message);
  return found.value;
}

describe.each(trips)('what must be aboard at the waypoints of %s', (_name, trip) => {
  const plan = planned(trip);
  const list = minimums(opened(trip));

  it('is told for every leg', () => {
    expect(new Set(list.map(({ leg }) => leg)).size).toBe(new Set(plan.legs.map(({ leg }) => leg)).size);
  });

  it('at the end of the trip is the reserve, or what the manoeuvring may need', () => {
    const last = list.at(-1)!;
    expect(last.goOn).toBeGreaterThanOrEqual(plan.reserve);
    expect(last.goOn).toBeLessThan(plan.reserve + plan.manoeuvring);
    expect(last.left).toBeCloseTo(plan.legs.at(-1)!.left.median, 9);
  });

  it('falls on the way: later there is less to come', () => {
    for (let i = 1; i < list.length; i++) expect(list[i]!.goOn).toBeLessThanOrEqual(list[i - 1]!.goOn + 1e-9);
  });

  it('lets the planned trip go on, where the plan is a go', () => {
    expect(plan.verdict).toBe('go');
    for (const { left, goOn } of list) expect(left).toBeGreaterThanOrEqual(goOn - 1e-9);
  });

  it('to go home is never more than to go on and come home, and at the most economical speed never more still', () => {
    for (const { home, goOn, homeEasy } of list) {
      expect(home).toBeLessThanOrEqual(goOn + 1e-9);
      expect(homeEasy).toBeLessThanOrEqual(home + 1e-9);
    }
  });
});

describe.each(trips)('mishaps on %s', (_name, trip) => {
  const plan = planned(trip);
  const rows = contingencies(opened(trip));
  const row = (mishap: string) => rows.find((each) => each.mishap === mishap);

  it('leave less than the plan, or at low speed perhaps more', () => {
    for (const { mishap, left } of rows) {
      if (mishap === 'home-slow' || mishap === 'home-on-hump') continue;
      expect(left, mishap).toBeLessThan(plan.left.median + 1e-9);
    }
  });

  it('are judged by what they leave', () => {
    for (const { left, leftAtWorst, verdict } of rows) {
      expect(leftAtWorst).toBeLessThanOrEqual(left);
      if (left <= 0) expect(verdict).toBe('no-go');
      if (verdict === 'go') expect(left).toBeGreaterThanOrEqual(plan.reserve);
    }
  });

  it('take a tow home slower and for more than alone', () => {
    expect(row('tow-home')!.speed!).toBeLessThanOrEqual(row('home-slow')!.speed! + 1e-9);
    expect(row('tow-home')!.left).toBeLessThan(row('home-slow')!.left);
    expect(row('tow-home')!.time).toBeGreaterThanOrEqual(plan.time);
  });
});

it('a colder battery is a mishap of electric boats only, a failed tank one of boats with two', () => {
  const has = (trip: Trip, mishap: string) => contingencies(opened(trip)).some((each) => each.mishap === mishap);
  expect(has(electric, 'cold-battery')).toBe(true);
  expect(has(petrol, 'cold-battery')).toBe(false);
  const { store } = petrol.craft;
  if (store.kind !== 'tank') throw new Error('not a tank');
  const two = { ...petrol, craft: { ...petrol.craft, store: { ...store, tanks: [...store.tanks, ...store.tanks] } } };
  expect(has(petrol, 'tank-fails')).toBe(false);
  expect(has(two, 'tank-fails')).toBe(true);
});

describe.each(trips)('the risk of %s', (_name, trip) => {
  it('by fast propagation is that of 20,000 trips played over, within 0.02', () => {
    for (const fill of [0.95, 0.6, 0.4, 0.25]) {
      const standing = opened({ ...trip, load: { ...trip.load, fill } });
      const fast = risk(standing);
      const played = sampleRisk(standing, { samples: 20_000, seed: 7 });
      expect(Math.abs(fast.reserveWhole - played.reserveWhole)).toBeLessThan(0.02);
      expect(Math.abs(fast.homeAtAll - played.homeAtAll)).toBeLessThan(0.02);
    }
  });

  it('is the same each time it is asked', () => {
    const standing = opened(trip);
    expect(sampleRisk(standing, { samples: 500, seed: 1 })).toEqual(sampleRisk(standing, { samples: 500, seed: 1 }));
  });

  it('is shared out among its causes without rest', () => {
    const { shares } = risk(opened(trip));
    expect(shares.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 12);
    for (let i = 1; i < shares.length; i++) expect(shares[i]!.share).toBeLessThanOrEqual(shares[i - 1]!.share);
  });
});

it('what matters most of an unmeasured boat on calm water is the boat', () => {
  const calm: Trip = { ...petrol, conditions: { ...petrol.conditions, wind: 'calm', stream: 'slack', sea: 'calm' } };
  expect(risk(opened(calm)).shares[0]!.doubt).toBe('boat');
});

describe.each(trips)('the choice of speed for %s', (_name, trip) => {
  const { choices, thriftiest, earliest, lowestRevs } = speedChoices(trip, haven());

  it('takes less time the faster, where no zone or sea holds the boat back', () => {
    for (let i = 1; i < choices.length; i++) expect(choices[i]!.time).toBeLessThanOrEqual(choices[i - 1]!.time + 1e-6);
  });

  it('finds the thriftiest, the earliest that keeps the reserve, and the lowest revs', () => {
    const needs = choices.filter(({ time }) => time <= (trip.policy.timeAllowed ?? Infinity)).map(({ need }) => need);
    expect(choices[thriftiest!]!.need).toBe(Math.min(...needs));
    expect(choices[earliest!]!.fuel).not.toBe('no-go');
    expect(choices[earliest!]!.time).toBeLessThanOrEqual(choices[thriftiest!]!.time);
    expect(choices[lowestRevs!]!.rpm).toBeLessThanOrEqual(choices[earliest!]!.rpm);
  });
});

it('offers no lowest revs that come home in the dark', () => {
  const late = { ...petrol, conditions: { ...petrol.conditions, departure: '2027-06-19T16:00:00-02:00' } };
  const { choices, lowestRevs } = speedChoices(late, haven());
  const dark = choices.filter(({ lit }) => !lit);
  expect(dark.length).toBeGreaterThan(0);
  expect(choices[lowestRevs!]!.lit).toBe(true);
  for (const { rpm } of dark) expect(rpm).toBeLessThan(choices[lowestRevs!]!.rpm);
});

it('finds no slow boat a speed far below the one it is planned at with the reserve whole', () => {
  const { choices, earliest } = speedChoices(electric, haven());
  const plan = planned(electric);
  expect(plan.left.median).toBeGreaterThan(plan.reserve);
  // A step of the search.
  expect(choices[earliest!]!.speed).toBeGreaterThan(Math.max(...plan.legs.map((leg) => leg.speedThroughWater)) - 0.1);
});

describe('asked under way', () => {
  const plan = planned(petrol);
  const { from, to } = plan.legs[0]!;
  const at = { lat: (from.lat + to.lat) / 2, lon: (from.lon + to.lon) / 2 };
  const time = '2026-07-15T10:00:00+01:00';
  const leftHere = (plan.usable - plan.manoeuvring / 2 + plan.legs[0]!.left.median) / 2;
  /** What the gauge shows with this much usable aboard. */
  const gauge = (usable: number) => petrol.load.fill! - (plan.usable - usable) / plan.full;
  const asked = (fill: number, more = {}) => {
    const found = fromHere(petrol, plan, haven(), { at, time, fill, ...more });
    if (!found.ok) throw new Error(found.problems[0]!.message);
    return found.value;
  };
  const way = (fill: number, kind: string, more = {}) => asked(fill, more).ways.find((each) => each.kind === kind)!;

  it('with as much aboard as planned, going on leaves what the plan left', () => {
    const now = asked(gauge(leftHere));
    expect(now.usedRatio === undefined || Math.abs(now.usedRatio - 1) < 0.02).toBe(true);
    expect(Math.abs(way(gauge(leftHere), 'go-on').left - plan.left.median) / plan.left.median).toBeLessThan(0.03);
    expect(now.off).toBeLessThan(5);
  });

  it('turning here needs less than going on', () => {
    expect(way(gauge(leftHere), 'turn').need).toBeLessThan(way(gauge(leftHere), 'go-on').need);
    expect(way(gauge(leftHere), 'turn').margin).toBeGreaterThan(way(gauge(leftHere), 'go-on').margin);
  });

  it('what was used beyond the plan is carried on', () => {
    const last = plan.legs.filter(({ part }) => part === 'out').at(-1)!;
    const spot = { at: last.to, homeward: false };
    const usual = asked(gauge(last.left.median), spot);
    expect(usual.usedRatio!).toBeCloseTo(1, 2);
    const thirsty = asked(gauge(last.left.median - 0.3 * (plan.usable - last.left.median)), spot);
    expect(thirsty.usedRatio!).toBeCloseTo(1.3, 1);
    expect(thirsty.carriedOn).toBeCloseTo(1.3, 1);
    const need = (found: typeof usual) => found.ways.find(({ kind }) => kind === 'turn')!.need;
    expect(need(thirsty)).toBeGreaterThan(1.25 * need(usual));
  });

  it('with a nearly empty tank does not say go', () => {
    for (const { verdict } of asked(0.08).ways) expect(verdict).not.toBe('go');
    expect(way(0.08, 'go-on').margin).toBeLessThan(0);
  });

  it('on the way home goes on home', () => {
    expect(way(gauge(leftHere), 'go-on', { homeward: true }).distance).toBeLessThan(
      way(gauge(leftHere), 'go-on').distance,
    );
  });

  it('a filling up still ahead counts, one that lies behind does not', () => {
    const slip = petrol.route.waypoints[0]!;
    const round = petrol.route.waypoints;
    const again = { ...slip, stop: 1800, refill: 0.95 };
    const twice = { ...petrol, route: { ...petrol.route, waypoints: [...round, again, ...round.slice(1)] } };
    const whole = planned(twice);
    const ask = (trip: Trip, where: typeof at) => {
      const found = fromHere(trip, planned(trip), haven(), { at: where, time, fill: 0.7 });
      if (!found.ok) throw new Error(found.problems[0]!.message);
      return found.value.ways[0]!;
    };
    const { refill: _, ...unfilled } = again;
    const dry = { ...petrol, route: { ...petrol.route, waypoints: [...round, unfilled, ...round.slice(1)] } };
    const before = ask(twice, at);
    expect(before.need).toBeLessThan(0.7 * ask(dry, at).need);
    expect(before.margin).toBeGreaterThan(ask(dry, at).margin + 0.2 * whole.reserve);
    // The stop is part of the time.
    expect(before.plan.legs.some(({ stop }) => stop === 1800)).toBe(true);
  });

  it('names the nearest landings', () => {
    const landings = asked(gauge(leftHere)).ways.filter(({ kind }) => kind === 'landing');
    expect(landings.length).toBeGreaterThan(0);
    for (const { name } of landings) expect(name).toBeTruthy();
  });

  it('goes round the land to a landing', () => {
    // In the harbour, with land between here and the second and third landing.
    const landings = asked(0.75, { at: plan.legs[0]!.to }).ways.filter(({ kind }) => kind === 'landing');
    expect(landings.length).toBe(3);
    for (const { plan: way, name } of landings) {
      expect(
        way.reasons.map(({ code }) => code),
        name,
      ).not.toContain('crosses-land');
    }
    expect(landings.some(({ plan: way }) => new Set(way.legs.map(({ leg }) => leg)).size > 1)).toBe(true);
  });

  it('says what it cannot work with', () => {
    const bad = fromHere(petrol, plan, haven(), { at: { lat: 99, lon: 0 }, time: 'noon', fill: 2 });
    expect(bad.ok ? [] : bad.problems.map(({ path }) => path)).toEqual(['at', 'fill', 'time']);
  });
});
