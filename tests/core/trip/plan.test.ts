import { describe, expect, it } from 'vitest';
import { planTrip } from '../../../src/core/trip/plan-trip.ts';
import type { Plan, Trip } from '../../../src/core/trip/shapes.ts';
import { KNOT } from '../../../src/core/units/convert.ts';
import { daylightOn } from '../../../src/core/water/daylight.ts';
import { planOf, reasonOf, shipped, soundTrip } from '../../trips.ts';

const RANK = { go: 0, marginal: 1, 'no-go': 2 };

/** The electric tender at 3.5 kn in place of an easy pace. */
function hurried(): Trip {
  const trip = shipped('electric-tender');
  return { ...trip, route: { ...trip.route, speed: 3.5 * KNOT } };
}

function sum(plan: Plan, of: (leg: Plan['legs'][number]) => number): number {
  return plan.legs.reduce((total, leg) => total + of(leg), 0);
}

describe('a plan adds up', () => {
  for (const name of ['petrol-day', 'electric-tender', 'hire-hull'] as const) {
    it(`accounts for all fuel or charge of ${name}`, () => {
      const plan = planOf(shipped(name));
      expect(sum(plan, (l) => l.use) + plan.manoeuvring).toBeCloseTo(plan.need.median, 6);
      expect(plan.needOut + plan.needHome + plan.manoeuvring).toBeCloseTo(plan.need.median, 6);
      expect(plan.left.median + plan.need.median).toBeCloseTo(plan.usable, 6);
      expect(plan.legs.at(-1)!.left.median - plan.manoeuvring / 2).toBeCloseTo(plan.left.median, 3);
    });

    it(`accounts for all time and distance of ${name}`, () => {
      const trip = shipped(name);
      const plan = planOf(trip);
      const manoeuvring = trip.policy.manoeuvring ?? 450;
      expect(sum(plan, (l) => l.time + l.stop) + manoeuvring).toBeCloseTo(plan.time, 6);
      expect(sum(plan, (l) => l.distance)).toBeCloseTo(plan.distance, 6);
      for (const leg of plan.legs) expect(leg.time * leg.speedOverGround).toBeCloseTo(leg.distance, 6);
    });
  }

  it('keeps a third of what is usable by default', () => {
    const plan = planOf({ ...soundTrip(), policy: { reserve: [] } });
    expect(plan.reserve).toBeCloseTo(plan.usable / 3, 9);
    expect(plan.reserveRule.kind).toBe('thirds');
  });

  it('lets the strictest of several reserve rules govern', () => {
    const trip = soundTrip();
    const plan = planOf({
      ...trip,
      policy: {
        reserve: [
          { kind: 'minutes', minutes: 5 },
          { kind: 'share', share: 0.45 },
        ],
      },
    });
    expect(plan.reserve).toBeCloseTo(plan.usable * 0.45, 9);
    const long = planOf({ ...trip, policy: { reserve: [{ kind: 'thirds' }, { kind: 'minutes', minutes: 120 }] } });
    expect(long.reserveRule.kind).toBe('minutes');
    expect(long.reserve).toBeGreaterThan(long.usable / 3);
  });

  it('sails the speed limits of the harbour and says whose they are', () => {
    const plan = planOf(shipped('petrol-day'));
    const harbour = plan.legs.filter((l) => l.limitName === 'Marl Haven harbour');
    expect(harbour.length).toBeGreaterThan(1);
    for (const leg of harbour) expect(leg.speedThroughWater).toBeLessThanOrEqual(4 * KNOT + 1e-9);
  });
});

describe('the shipped trips', () => {
  it('give the sound petrol day a go on an unmeasured boat', () => {
    const plan = planOf(shipped('petrol-day'));
    expect(plan.verdict).toBe('go');
    expect(plan.reasons.filter((r) => r.level !== 'note')).toEqual([]);
  });

  it('give a go to all three, each with everything given and nobody having measured the boat', () => {
    const verdicts = (['petrol-day', 'electric-tender', 'hire-hull'] as const).map(
      (name) => planOf(shipped(name)).verdict,
    );
    expect(verdicts).toEqual(['go', 'go', 'go']);
  });

  it('refuse the tender in a hurry: its charge does not cover the way', () => {
    const plan = planOf(hurried());
    expect(plan.verdict).toBe('no-go');
    expect(reasonOf(plan, 'reserve-broken')?.fixes?.map((f) => f.code)).toContain('slow-down');
  });
});

describe('unknown is not calm', () => {
  const given: readonly [string, (trip: Trip) => Trip][] = [
    ['wind', (t) => ({ ...t, conditions: { ...t.conditions, wind: undefined } })],
    ['stream', (t) => ({ ...t, conditions: { ...t.conditions, stream: undefined } })],
    ['sea', (t) => ({ ...t, conditions: { ...t.conditions, sea: undefined } })],
    ['fill', (t) => ({ ...t, load: { ...t.load, fill: undefined } })],
    [
      'a seat',
      (t) => ({
        ...t,
        load: {
          ...t.load,
          items: t.load.items.map((i, k) => (k === 1 ? { ...i, station: undefined, at: undefined } : i)),
        },
      }),
    ],
    ['the plate', (t) => ({ ...t, craft: { ...t.craft, hull: { ...t.craft.hull, plate: undefined } } })],
  ];

  it('starts from a trip that is a go with everything given', () => {
    expect(planOf(soundTrip()).verdict).toBe('go');
  });

  for (const [what, without] of given) {
    it(`never gives a go without ${what}, and never needs less`, () => {
      const full = planOf(soundTrip());
      const plan = planOf(without(soundTrip()));
      expect(RANK[plan.verdict]).toBeGreaterThan(RANK[full.verdict]);
      expect(plan.badCase.left).toBeLessThanOrEqual(full.badCase.left + 1e-9);
    });
  }

  it('is marginal at best without a file of the local waters', () => {
    const result = planTrip(soundTrip(), undefined);
    expect(result.ok && result.value.verdict).toBe('marginal');
    expect(result.ok && reasonOf(result.value, 'waters-unknown')).toBeTruthy();
  });

  it('lists what it assumed for the one who gave nothing', () => {
    const trip = soundTrip();
    const plan = planOf({
      ...trip,
      conditions: { water: 'sea' },
      load: { items: trip.load.items },
      policy: { reserve: [] },
    });
    const codes = plan.assumptions.map((a) => a.code);
    for (const code of [
      'wind',
      'stream',
      'sea',
      'fill',
      'manoeuvring',
      'drawn-factor',
      'reserve-rule',
      'unmeasured-boat',
    ]) {
      expect(codes).toContain(code);
    }
  });

  it('takes a cold battery when nobody measured it', () => {
    const trip = shipped('electric-tender');
    const warm = planOf(trip);
    const unknown = planOf({ ...trip, conditions: { ...trip.conditions, batteryTemperatureC: undefined } });
    expect(unknown.usable).toBeLessThan(warm.usable);
    expect(reasonOf(unknown, 'temperature-unknown')).toBeTruthy();
    expect(unknown.badCase.kinds).toContain('cold-battery');
  });
});

describe('limits', () => {
  it('refuses a leg across land and says which', () => {
    const trip = soundTrip();
    const plan = planOf({
      ...trip,
      route: {
        ...trip.route,
        waypoints: [
          { lat: 45.992, lon: -32.04 },
          { lat: 45.992, lon: -31.99 },
        ],
      },
    });
    expect(plan.verdict).toBe('no-go');
    expect(reasonOf(plan, 'crosses-land')?.name).toBe('Ward Island');
  });

  it('refuses more weight than the plate, and by how much', () => {
    const trip = soundTrip();
    const items = [...trip.load.items, { id: 'anvil', kind: 'gear' as const, mass: 300, at: { x: 1.2, y: 0 } }];
    const plan = planOf({ ...trip, load: { ...trip.load, items } });
    const over = reasonOf(plan, 'over-plate-load');
    expect(plan.verdict).toBe('no-go');
    expect(over?.fixes?.[0]?.value).toBeCloseTo(over!.value! - over!.limit!, 6);
    expect(plan.payload.extra).toBeLessThan(0);
  });

  it('refuses more people, a stronger and a heavier engine than the plate names', () => {
    const trip = soundTrip();
    const { plate } = trip.craft.hull;
    if (!plate || plate === 'none') throw new Error('the sound trip has a plate');
    const small = { ...plate, persons: 1, maxPower: 5000, maxEngineMass: 20 };
    const plan = planOf({ ...trip, craft: { ...trip.craft, hull: { ...trip.craft.hull, plate: small } } });
    for (const code of ['over-plate-persons', 'over-plate-power', 'over-plate-engine-mass'] as const) {
      expect(reasonOf(plan, code)?.level).toBe('no-go');
    }
  });

  it('refuses a speed the engine cannot hold and names the one it can', () => {
    const trip = soundTrip();
    const plan = planOf({ ...trip, route: { ...trip.route, speed: 14 } });
    const reason = reasonOf(plan, 'speed-not-held');
    expect(plan.verdict).toBe('no-go');
    const eased = planOf({ ...trip, route: { ...trip.route, speed: reason!.limit! } });
    expect(reasonOf(eased, 'speed-not-held')).toBeUndefined();
  });

  it('refuses a stream the boat cannot stem', () => {
    const trip = shipped('electric-tender');
    const plan = planOf({
      ...trip,
      route: { ...trip.route, speed: 2.5 * KNOT },
      conditions: { ...trip.conditions, stream: { setDeg: 0, rate: 2.5 * KNOT } },
    });
    expect(plan.verdict).toBe('no-go');
    expect(reasonOf(plan, 'stuck-in-stream')).toBeTruthy();
    expect(plan.need.median).toBe(Infinity);
    expect(plan.probability).toBe(0);
  });

  it('refuses an empty tank', () => {
    const trip = soundTrip();
    const plan = planOf({ ...trip, load: { ...trip.load, fill: 0 } });
    expect(plan.verdict).toBe('no-go');
    expect(reasonOf(plan, 'nothing-usable')).toBeTruthy();
  });

  it('refuses a sea above what an open boat of this length takes, and asks for care below', () => {
    const trip = soundTrip();
    const at = (height: number) => planOf({ ...trip, conditions: { ...trip.conditions, sea: { height } } });
    const { length } = trip.craft.hull;
    expect(reasonOf(at(0.1 * length), 'rough')?.level).toBe('marginal');
    expect(reasonOf(at(0.14 * length), 'too-rough')?.level).toBe('no-go');
  });

  it('holds the crew to their own wind limit', () => {
    const trip = soundTrip();
    const windy: Trip = {
      ...trip,
      conditions: { ...trip.conditions, wind: { fromDeg: 200, speed: 6 } },
      policy: { ...trip.policy, maxWind: 5 },
    };
    expect(reasonOf(planOf(windy), 'over-wind-limit')?.level).toBe('no-go');
  });

  it('refuses a trip that comes back after it is due', () => {
    const trip = soundTrip();
    const { time } = planOf(trip);
    const due = (timeAllowed: number) => planOf({ ...trip, policy: { ...trip.policy, timeAllowed } });
    expect(reasonOf(due(time - 60), 'late')?.level).toBe('no-go');
    expect(reasonOf(due(time + 30), 'late-likely')?.level).toBe('marginal');
    expect(due(time * 1.5).verdict).toBe('go');
  });

  it('is home before dark: an hour before sunset, or not sure, and not at all after it', () => {
    const trip = soundTrip();
    const { sunset } = daylightOn(trip.route.waypoints[0]!, Date.parse('2027-06-19T12:00Z') / 1000, -7200);
    const leaving = (clock: string) =>
      planOf({ ...trip, conditions: { ...trip.conditions, departure: `2027-06-19T${clock}:00-02:00` } });
    expect(reasonOf(leaving('10:00'), 'near-dark')).toBeUndefined();
    expect(reasonOf(leaving('10:00'), 'after-dark')).toBeUndefined();
    const { time } = planOf(trip);
    const evening = (before: number) => {
      const at = new Date(1000 * (sunset! - 7200 - time - before));
      return leaving(at.toISOString().slice(11, 16));
    };
    const near = reasonOf(evening(20 * 60), 'near-dark');
    expect(near?.level).toBe('marginal');
    expect(Math.abs(near!.value! - 20 * 60)).toBeLessThan(60);
    expect(near!.fixes!.map(({ code }) => code)).toContain('leave-earlier');
    expect(reasonOf(evening(-30 * 60), 'after-dark')?.level).toBe('no-go');
    expect(reasonOf(leaving('02:00'), 'after-dark')?.value).toBeUndefined();
    const { departure: _, ...undated } = trip.conditions;
    expect(planOf({ ...trip, conditions: undated }).assumptions.map(({ code }) => code)).toContain('daylight');
  });

  it('asks for at least two points and some length', () => {
    const trip = soundTrip();
    const with0 = planTrip({ ...trip, route: { ...trip.route, waypoints: [] } }, undefined);
    expect(with0.ok).toBe(false);
    const same = { lat: 45.98, lon: -32.05 };
    const nowhere = planTrip({ ...trip, route: { ...trip.route, waypoints: [same, same] } }, undefined);
    expect(!nowhere.ok && nowhere.problems[0]?.code).toBe('route-no-length');
  });
});

describe('safe payload', () => {
  it('is where the plan just holds: one kilogram less is a go, five more are not', () => {
    const trip = shipped('petrol-day');
    const plan = planOf(trip);
    expect(plan.payload.binds).not.toBe('plate');
    const loaded = (extra: number): Plan => {
      const item = {
        id: 'extra',
        kind: 'gear' as const,
        mass: extra,
        at: { x: plan.balance.lcg, y: plan.balance.lateral },
      };
      return planOf({ ...trip, load: { ...trip.load, items: [...trip.load.items, item] } });
    };
    expect(loaded(plan.payload.extra! - 1).verdict).toBe('go');
    expect(loaded(plan.payload.extra! + 5).verdict).not.toBe('go');
  });

  it('never exceeds the plate', () => {
    const trip = soundTrip();
    const plan = planOf({ ...trip, route: { ...trip.route, speed: 4 * KNOT } });
    expect(plan.payload.counted + plan.payload.extra!).toBeLessThanOrEqual(plan.payload.allowed! + 1e-9);
    expect(plan.payload.binds).toBe('plate');
  });

  const without = (change: Partial<Trip['craft']['hull']>): Plan => {
    const trip = soundTrip();
    return planOf({ ...trip, craft: { ...trip.craft, hull: { ...trip.craft.hull, ...change } } });
  };

  it('is not known while the plate is not read, whatever the boat could float', () => {
    expect(without({ plate: undefined }).payload).toMatchObject({ extra: undefined, binds: 'no-plate' });
    expect(without({ plate: { scheme: 'eu', persons: 4 } }).payload.extra).toBeUndefined();
  });

  it('comes from how the boat floats where there is no plate and no rule covers its form', () => {
    const plan = without({ plate: 'none' });
    expect(plan.payload.extra).toBeDefined();
    expect(plan.payload.counted + plan.payload.extra!).toBeLessThanOrEqual(plan.payload.allowed! + 1e-9);
    expect(reasonOf(plan, 'no-plate')?.level).toBe('marginal');
  });

  it('is not known without plate, rule and figures of the boat', () => {
    expect(without({ plate: 'none', tube: undefined }).payload).toMatchObject({ extra: undefined, binds: 'no-plate' });
  });

  it('sends ashore the lightest who are too many for the plate', () => {
    const trip = soundTrip();
    const people = trip.load.items.filter(({ kind }) => kind === 'adult');
    const plan = without({ plate: { scheme: 'eu', maxLoad: 420, persons: people.length - 1, category: 'C' } });
    const lightest = Math.min(...people.map(({ mass }) => mass));
    expect(plan.payload.binds).toBe('persons');
    expect(plan.payload.extra).toBeCloseTo(-lightest, 6);
  });
});

describe('how much to put in', () => {
  it('is enough, and a little less is not', () => {
    const trip = shipped('petrol-day');
    const needed = planOf(trip).fillNeeded!;
    const filled = (fill: number) => planOf({ ...trip, load: { ...trip.load, fill } }).verdict;
    expect(filled(needed + 0.005)).toBe('go');
    expect(filled(needed - 0.015)).not.toBe('go');
  });

  it('says when a full tank would not do', () => {
    expect(planOf(hurried()).fillNeeded).toBeUndefined();
  });
});

describe('tipping values', () => {
  it('turn the verdict where they say', () => {
    const trip = shipped('petrol-day');
    const plan = planOf(trip);
    const fill = plan.tipping.find((t) => t.knob === 'fill')!;
    const at = (value: number) => planOf({ ...trip, load: { ...trip.load, fill: value } }).verdict;
    expect(at(fill.value + 0.002)).toBe(fill.from);
    expect(at(fill.value - 0.012)).toBe(fill.to);
    const wind = plan.tipping.find((t) => t.knob === 'wind')!;
    const given = trip.conditions.wind;
    if (typeof given !== 'object') throw new Error('the petrol day has wind');
    const blown = (speed: number) =>
      planOf({ ...trip, conditions: { ...trip.conditions, wind: { ...given, speed } } }).verdict;
    expect(blown(wind.value - 0.05)).toBe(wind.from);
    expect(blown(wind.value + 0.3)).not.toBe(wind.from);
  });

  it('turn a no-go for the better', () => {
    const plan = planOf(hurried());
    for (const t of plan.tipping) {
      expect(t.from).toBe('no-go');
      expect(RANK[t.to]).toBeLessThan(RANK['no-go']);
    }
    expect(plan.tipping.map((t) => t.knob)).toContain('consumption');
  });
});

describe('turning back', () => {
  it('comes earlier when the stream runs against the way home', () => {
    const trip = { ...soundTrip(), load: { ...soundTrip().load, fill: 0.4 } };
    const long: Trip = {
      ...trip,
      route: {
        ...trip.route,
        waypoints: [
          { lat: 45.99, lon: -32.08 },
          { lat: 45.6, lon: -32.08 },
        ],
      },
    };
    const at = (setDeg: number) => {
      const plan = planOf({ ...long, conditions: { ...long.conditions, stream: { setDeg, rate: 0.6 } } });
      expect(plan.turnBack?.onRoute).toBe(true);
      return plan.turnBack!;
    };
    const slack = planOf({ ...long, conditions: { ...long.conditions, stream: 'slack' } }).turnBack!;
    expect(at(180).distance).toBeLessThan(slack.distance);
  });

  it('lies beyond the turn of a trip that fits', () => {
    const plan = planOf(soundTrip());
    expect(plan.turnBack?.onRoute).toBe(false);
    expect(plan.turnBack!.distance).toBeGreaterThan(plan.distanceOut);
    expect(plan.turnBack!.distance).toBeCloseTo(plan.range.outAndHome, -2);
  });
});

describe('a battery running low', () => {
  it('cuts full power back before it is empty, and the plan says so', () => {
    const trip = shipped('electric-tender');
    const { store } = trip.craft;
    if (store.kind !== 'battery') throw new Error('the tender runs on a battery');
    const weak = { ...store, batteries: store.batteries.map((battery) => ({ ...battery, maxCurrent: 6 })) };
    const plan = planOf({ ...trip, craft: { ...trip.craft, store: weak } });
    expect(reasonOf(plan, 'speed-not-held')?.level).toBe('no-go');
    expect(reasonOf(planOf(trip), 'speed-not-held')).toBeUndefined();
  });
});
