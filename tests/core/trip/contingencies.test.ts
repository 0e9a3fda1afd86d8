import { describe, expect, it } from 'vitest';
import { fuelMass } from '../../../src/core/drive/tank.ts';
import { towResistance, towSpeedCap } from '../../../src/core/hull/tow.ts';
import { balance } from '../../../src/core/load/balance.ts';
import { AS_PLANNED } from '../../../src/core/trip/afloat-in.ts';
import { type Contingency, contingencies, type Mishap, towsHome } from '../../../src/core/trip/contingencies.ts';
import { type Run, sail } from '../../../src/core/trip/sail.ts';
import type { Scenario } from '../../../src/core/trip/scenario.ts';
import type { Trip } from '../../../src/core/trip/shapes.ts';
import { needOf, needWithGauge } from '../../../src/core/trip/spread.ts';
import { type Standing, standingOf } from '../../../src/core/trip/standing.ts';
import { oneForceMore } from '../../../src/core/water/beaufort.ts';
import { haven, shipped, soundTrip } from '../../trips.ts';
import { dayOut } from './day-on-the-water.ts';

function standing(trip: Trip): Standing {
  const found = standingOf(trip, haven());
  if (!found.ok) throw new Error(found.problems[0]!.message);
  return found.value;
}

const quiet: Trip = {
  ...soundTrip(),
  conditions: { ...soundTrip().conditions, wind: 'calm', stream: 'slack', sea: 'calm' },
};
const petrol = standing(quiet);
const tender = shipped('electric-tender');
const electric = standing(tender);

const rowOf = (of: Standing, mishap: Mishap): Contingency | undefined =>
  contingencies(of).find((row) => row.mishap === mishap);

/** The likely day with one thing changed, sailed by itself. */
function sailed({ prepared, fuel }: Standing, change: Partial<Scenario>): { run: Run; usable: number } {
  const scenario = { ...fuel.run.scenario, ...change };
  return { run: sail(prepared, scenario, AS_PLANNED, { yielding: true }), usable: prepared.usable(scenario) };
}

/** What it leaves, and at worst. */
function leaves(of: Standing, { run, usable }: { run: Run; usable: number }) {
  const worst = needWithGauge(of.prepared, run, needOf(of.prepared, run, of.fuel.spread), { usable, p: 0.95 });
  return { left: usable - run.need, leftAtWorst: usable - worst, time: run.time };
}

function like(row: Contingency | undefined, told: { left: number; leftAtWorst: number; time: number }): void {
  expect(row!.left).toBeCloseTo(told.left, 6);
  expect(row!.leftAtWorst).toBeCloseTo(told.leftAtWorst, 6);
  expect(row!.time).toBeCloseTo(told.time, 3);
}

describe('what may go wrong', () => {
  it('is wind from ahead home, slow home, a tow and an hour lost, of every boat', () => {
    const mishaps = contingencies(petrol).map(({ mishap }) => mishap);
    for (const one of ['headwind-home', 'home-slow', 'tow-home', 'hour-lost'] as const) expect(mishaps).toContain(one);
    expect(mishaps).not.toContain('cold-battery');
    expect(mishaps).not.toContain('tank-fails');
  });

  it('is told of no trip that cannot be sailed', () => {
    const impossible = { ...petrol, fuel: { ...petrol.fuel, run: { ...petrol.fuel.run, possible: false } } };
    expect(contingencies(impossible)).toEqual([]);
  });
});

describe('wind from ahead on the way home', () => {
  it('is one force more than none in a calm', () => {
    like(rowOf(petrol, 'headwind-home'), leaves(petrol, sailed(petrol, { headwindHome: oneForceMore(0) })));
  });

  it('is one force more than the wind given, from wherever that is', () => {
    const blown = standing({ ...quiet, conditions: { ...quiet.conditions, wind: { fromDeg: 180, speed: 4 } } });
    like(rowOf(blown, 'headwind-home'), leaves(blown, sailed(blown, { headwindHome: oneForceMore(4) })));
  });

  it('is one force more than what stands for a wind nobody gave', () => {
    const { wind: _, ...unsaid } = quiet.conditions;
    const unknown = standing({ ...quiet, conditions: unsaid });
    expect(unknown.fuel.run.scenario.headwindHome).toBe(4.4);
    like(rowOf(unknown, 'headwind-home'), leaves(unknown, sailed(unknown, { headwindHome: oneForceMore(4.4) })));
  });

  it('is one force more than the strongest told from departure to the end of the day asked about', () => {
    const at = (time: string, speed: number) => ({ time: `2027-06-19T${time}:00-02:00`, fromDeg: 0, speed });
    const wind = { forecast: [at('06:00', 9), at('09:50', 2), at('10:10', 5), at('10:30', 2), at('23:00', 2)] };
    const day = standing({ ...dayOut({ wind }), route: quiet.route });
    like(rowOf(day, 'headwind-home'), leaves(day, sailed(day, { headwindHome: oneForceMore(5) })));
  });
});

describe('home at displacement speed', () => {
  it('is FnL 0.35 at most, and told', () => {
    const row = rowOf(petrol, 'home-slow')!;
    expect(row.speed).toBeCloseTo(0.35 * Math.sqrt(9.80665 * quiet.craft.hull.wettedLength), 6);
    like(row, leaves(petrol, sailed(petrol, { homeCap: row.speed! })));
    expect(row.time).toBeGreaterThan(petrol.fuel.run.time);
  });

  it('of a boat that was to go slower anyhow is that', () => {
    const slow = standing({ ...quiet, route: { ...quiet.route, speed: 1.2 } });
    expect(rowOf(slow, 'home-slow')!.speed).toBeCloseTo(1.2, 9);
  });

  it('of a trip one way is all of it', () => {
    const oneWay = standing({ ...quiet, route: { ...quiet.route, shape: 'one-way' } });
    const row = rowOf(oneWay, 'home-slow')!;
    expect(row.speed).toBeCloseTo(oneWay.prepared.displacementSpeed, 6);
    like(row, leaves(oneWay, sailed(oneWay, { homeCap: row.speed! })));
  });
});

describe('home on the hump', () => {
  it('is a mishap where the boat was to be faster than its hump', () => {
    expect(petrol.climb.margin).toBeLessThan(Infinity);
    const row = rowOf(petrol, 'home-on-hump')!;
    expect(row.speed).toBeCloseTo(petrol.climb.speed, 9);
    like(row, leaves(petrol, sailed(petrol, { homeSpeed: petrol.climb.speed })));
  });

  it('is none of a boat that never gets near it', () => {
    const slow = standing({ ...quiet, route: { ...quiet.route, speed: 1.5 } });
    expect(rowOf(slow, 'home-on-hump')).toBeUndefined();
    const top = Math.max(...petrol.fuel.run.sailed.map(({ speed }) => speed));
    expect(rowOf({ ...petrol, climb: { speed: top, margin: 1.1 } }, 'home-on-hump')).toBeUndefined();
    expect(rowOf({ ...petrol, climb: { speed: 3, margin: Infinity } }, 'home-on-hump')).toBeUndefined();
  });
});

describe('a tow home', () => {
  const tow = ({ prepared }: Standing) => {
    const { craft, load } = prepared.trip;
    const fuel = craft.store.kind === 'tank' ? fuelMass(craft.store.tanks, 0.5) : 0;
    const { allUpMass, lcg, airArea } = balance(craft, load, fuel);
    const state = { mass: allUpMass, lcg, water: prepared.boatAt(15).water };
    return (speed: number, headwind: number) =>
      towResistance({ hull: craft.hull, state, airArea }, { speed, headwind });
  };

  it('has a boat like this one on the line, half full, at what a line stands', () => {
    for (const boat of [petrol, electric]) {
      const most = towSpeedCap(boat.prepared.trip.craft.hull.wettedLength);
      const cap = Math.min(most, boat.prepared.displacementSpeed);
      const row = rowOf(boat, 'tow-home')!;
      expect(row.speed!).toBeLessThanOrEqual(cap + 1e-9);
      like(row, leaves(boat, sailed(boat, { homeCap: cap, tow: tow(boat) })));
    }
  });

  it('of another boat goes at what the slower of the two makes, against what that other weighs', () => {
    const small = { ...tender.craft.hull, wettedLength: 1.5 };
    const other = standing({ ...tender, craft: { ...tender.craft, hull: small } });
    const cap = Math.min(towSpeedCap(1.5), other.prepared.displacementSpeed);
    expect(cap).toBeLessThan(rowOf(petrol, 'tow-home')!.speed!);
    like(towsHome(petrol, other), leaves(petrol, sailed(petrol, { homeCap: cap, tow: tow(other) })));
    const row = towsHome(other, petrol);
    expect(row.mishap).toBe('tow-home');
    like(row, leaves(other, sailed(other, { homeCap: cap, tow: tow(petrol) })));
  });
});

describe('an hour lost', () => {
  it('takes an hour more, and what the engine takes in it slow ahead', () => {
    const plain = leaves(petrol, sailed(petrol, {}));
    const hour = 3600 * petrol.fuel.run.manoeuvringFlow;
    const row = rowOf(petrol, 'hour-lost')!;
    like(row, { left: plain.left - hour, leftAtWorst: plain.leftAtWorst - hour, time: plain.time + 3600 });
    expect(row.speed).toBeUndefined();
    expect(row.usable).toBe(petrol.fuel.usable);
  });
});

describe('a battery ten degrees colder', () => {
  it('gives less, and what is left is worked out with that', () => {
    const { batteryTemperatureC } = electric.fuel.run.scenario;
    const cold = sailed(electric, { batteryTemperatureC: batteryTemperatureC - 10 });
    const row = rowOf(electric, 'cold-battery')!;
    expect(row.usable).toBe(cold.usable);
    expect(row.usable).toBeLessThan(electric.fuel.usable);
    like(row, leaves(electric, cold));
  });
});

describe('a tank or battery that fails', () => {
  const { store } = quiet.craft;
  if (store.kind !== 'tank') throw new Error('not a tank');
  const [tank] = store.tanks;
  const withTanks = (...litres: number[]) =>
    standing({
      ...quiet,
      craft: { ...quiet.craft, store: { ...store, tanks: litres.map((capacityL) => ({ ...tank!, capacityL })) } },
    });

  it('is the largest: the others are left', () => {
    const three = withTanks(12, 20, 8);
    const row = rowOf(three, 'tank-fails')!;
    expect(row.usable).toBeCloseTo((three.fuel.usable * 20) / 40, 9);
    expect(row.left).toBeCloseTo(row.usable - sailed(three, {}).run.need, 9);
    expect(rowOf(withTanks(12), 'tank-fails')).toBeUndefined();
  });

  it('of two batteries counts their health', () => {
    const bank = tender.craft.store;
    if (bank.kind !== 'battery') throw new Error('not a battery');
    const [battery] = bank.batteries;
    const batteries = [
      { ...battery!, health: 1 },
      { ...battery!, health: 0.5, energyWh: 1.5 * battery!.energyWh },
    ];
    const two = standing({ ...tender, craft: { ...tender.craft, store: { ...bank, batteries } } });
    const row = rowOf(two, 'tank-fails')!;
    // 1 and 0.75 of it.
    expect(row.usable / two.fuel.usable).toBeCloseTo(0.75 / 1.75, 9);
  });
});

describe('the verdict on a mishap', () => {
  const row = rowOf(petrol, 'headwind-home')!;
  const judged = (reserve: number) => rowOf({ ...petrol, fuel: { ...petrol.fuel, reserve } }, 'headwind-home')!.verdict;

  it('is go while the reserve stays whole, in doubt while it gets home', () => {
    expect(row.leftAtWorst).toBeGreaterThan(0);
    expect(judged(row.left)).toBe('go');
    expect(judged(row.left + 1e-9)).toBe('marginal');
    expect(judged(0)).toBe('go');
  });

  it('is in doubt where the pessimistic need runs dry, no-go where the likely one does', () => {
    const verdicts = new Set<string>();
    for (let fill = 0.95; fill > 0.05; fill -= 0.03) {
      const of = standing({
        ...quiet,
        load: { ...quiet.load, fill },
        policy: { ...quiet.policy, reserve: [{ kind: 'minutes', minutes: 0 }] },
      });
      for (const { left, leftAtWorst, verdict } of contingencies(of)) {
        expect(verdict).toBe(left <= 0 ? 'no-go' : leftAtWorst <= 0 ? 'marginal' : 'go');
        verdicts.add(verdict);
      }
    }
    expect(verdicts.size).toBe(3);
  });

  it('is no-go where the boat makes no way', () => {
    const foul = standing({
      ...quiet,
      conditions: { ...quiet.conditions, stream: { setDeg: 180, rate: 2.2 } },
    });
    const slow = rowOf(foul, 'home-slow')!;
    expect(foul.prepared.displacementSpeed).toBeLessThan(2.2);
    expect([slow.left, slow.leftAtWorst, slow.verdict]).toEqual([-Infinity, -Infinity, 'no-go']);
  });
});
