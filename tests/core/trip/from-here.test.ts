import { describe, expect, it } from 'vitest';
import { usableFuel } from '../../../src/core/drive/tank.ts';
import type { LatLon, Waypoint, ZoneFeature } from '../../../src/core/route/shapes.ts';
import { prepareWaters, type Waters } from '../../../src/core/route/waters.ts';
import { type FromHere, fromHere, type Here } from '../../../src/core/trip/from-here.ts';
import { planTrip } from '../../../src/core/trip/plan-trip.ts';
import type { Plan, Trip } from '../../../src/core/trip/shapes.ts';
import { PETROL_DENSITY } from '../../../src/core/units/constants.ts';
import { soundTrip } from '../../trips.ts';
import { box, waters, zone } from '../route/made-waters.ts';

/** South-east over open water of which nothing else is known, and home by the same way: calm, slack, four knots. */
const FROM: LatLon = { lat: 45.985, lon: -32.07 };
const TO: LatLon = { lat: 45.925, lon: -31.95 };
const HOUR = 3600;

function trip(change: { route?: Partial<Trip['route']>; policy?: Partial<Trip['policy']> } = {}): Trip {
  const { waters: _, ...sound } = soundTrip();
  return {
    ...sound,
    route: { shape: 'out-and-home', waypoints: [FROM, TO], speed: 2, ...change.route },
    conditions: { ...sound.conditions, wind: 'calm', stream: 'slack', sea: 'calm' },
    policy: { ...sound.policy, drawnFactor: 1, ...change.policy },
  };
}

const plans = new Map<Trip, Plan>();
function planOf(of: Trip): Plan {
  const known = plans.get(of);
  if (known) return known;
  const found = planTrip(of, undefined, { quick: true });
  if (!found.ok) throw new Error('the trip can be planned');
  plans.set(of, found.value);
  return found.value;
}

const DAY = trip();

function here(change: Partial<Here> = {}): Here {
  return { at: mix(0.5), time: '2027-06-19T10:30:00-02:00', fill: 0.9, ...change };
}

function asked(change: Partial<Here> = {}, of: Trip = DAY, known?: Waters): FromHere {
  const found = fromHere(of, planOf(of), known, here(change));
  if (!found.ok) throw new Error(found.problems[0]!.message);
  return found.value;
}

const wayOf = (found: FromHere, kind: string) => found.ways.find((way) => way.kind === kind)!;

/** A share of the way out, and so many metres to the left of it (north-east). */
function mix(share: number, aside = 0): LatLon {
  const metre = 180 / Math.PI / 6_371_000;
  const narrow = Math.cos((FROM.lat * Math.PI) / 180);
  const [x, y] = [(TO.lon - FROM.lon) * narrow, TO.lat - FROM.lat];
  const length = Math.hypot(x, y);
  return {
    lat: FROM.lat + (TO.lat - FROM.lat) * share + (aside * metre * x) / length,
    lon: FROM.lon + (TO.lon - FROM.lon) * share - (aside * metre * y) / length / narrow,
  };
}

/** The fill at which so many kg can be used. */
function fillWith(usable: number): number {
  const { store } = DAY.craft;
  if (store.kind !== 'tank') throw new Error('not a tank');
  const { capacityL, unusableL } = store.tanks[0]!;
  const fill = (usable / PETROL_DENSITY + unusableL) / capacityL;
  expect(usableFuel(store.tanks, fill)).toBeCloseTo(usable, 9);
  return fill;
}

/** What the plan leaves at a share of the way out. */
function plannedLeft(share: number): number {
  const { usable, manoeuvring, legs } = planOf(DAY);
  const start = usable - manoeuvring / 2;
  return start + (legs[0]!.left.median - start) * share;
}

describe('where a boat is on its plan', () => {
  const plan = planOf(DAY);

  it('is the nearest point of the track, and how far off it lies', () => {
    for (const [share, aside] of [
      [0.25, 0],
      [0.5, 150],
      [0.75, -300],
    ] as const) {
      const { along, off } = asked({ at: mix(share, aside) });
      expect(along / plan.distanceOut).toBeCloseTo(share, 3);
      expect(off).toBeCloseTo(Math.abs(aside), -1);
    }
  });

  it('is an end of it where the boat lies beyond', () => {
    expect(asked({ at: mix(-0.1) }).along).toBe(0);
    expect(asked({ at: mix(-0.1) }).off).toBeCloseTo(plan.distanceOut / 10, -1);
    expect(asked({ at: mix(1.1) }).along).toBeCloseTo(plan.distanceOut, 6);
  });

  it('of two legs by the same way is on the earlier, but on the way home once the turn is behind', () => {
    expect(asked({ at: mix(0.75) }).along).toBeCloseTo(0.75 * plan.distanceOut, -1);
    expect(asked({ at: mix(0.75), homeward: true }).along).toBeCloseTo(1.25 * plan.distanceOut, -1);
  });

  it('of a trip one way is on its only way, turn or no turn', () => {
    const oneWay = trip({ route: { shape: 'one-way' } });
    expect(asked({ homeward: true }, oneWay).along).toBeCloseTo(planOf(oneWay).distance / 2, -1);
  });
});

describe('what was used so far', () => {
  const foreseen = planOf(DAY).usable - plannedLeft(0.9);
  const withRatio = (ratio: number) => asked({ at: mix(0.9), fill: fillWith(planOf(DAY).usable - ratio * foreseen) });

  it('is told over what the plan foresaw for the place', () => {
    for (const ratio of [0.5, 1, 1.5]) expect(withRatio(ratio).usedRatio).toBeCloseTo(ratio, 2);
    expect(asked({ at: mix(0.9), fill: 1 }).usedRatio).toBe(0);
  });

  it('on the way home counts the way out', () => {
    const { usable, legs } = planOf(DAY);
    const left = (legs[0]!.left.median + legs[1]!.left.median) / 2;
    expect(asked({ homeward: true, fill: fillWith(left) }).usedRatio).toBeCloseTo(1, 3);
    expect(asked({ homeward: true, fill: fillWith(usable - 1.2 * (usable - left)) }).usedRatio).toBeCloseTo(1.2, 3);
  });

  it('counts half of the manoeuvring, which casting off took', () => {
    const long = trip({ policy: { manoeuvring: 10 * HOUR } });
    const { usable, manoeuvring } = planOf(long);
    expect(manoeuvring).toBeGreaterThan(usable / 4);
    expect(asked({ at: FROM, fill: fillWith(usable - manoeuvring / 2) }, long).usedRatio).toBeCloseTo(1, 6);
  });

  it('goes on like that where it was more than planned, not where it was less', () => {
    expect(withRatio(1.5).carriedOn).toBe(withRatio(1.5).usedRatio);
    expect(withRatio(0.5).carriedOn).toBe(1);
    const [more, same] = [1.5, 1].map((ratio) => wayOf(withRatio(ratio), 'go-on').need);
    expect(more! / same!).toBeCloseTo(1.5, 1);
  });

  it('is not told before a tenth of what is usable should be gone', () => {
    const { usable } = planOf(DAY);
    const start = usable - plannedLeft(0);
    const whole = usable - plannedLeft(1);
    const at = (share: number) => (share * usable - start) / (whole - start);
    const tenth = at(0.1);
    expect(tenth).toBeGreaterThan(0.02);
    expect(tenth).toBeLessThan(0.98);
    expect(asked({ at: mix(tenth - 0.01) }).usedRatio).toBeUndefined();
    expect(asked({ at: mix(tenth - 0.01) }).carriedOn).toBe(1);
    expect(asked({ at: mix(tenth + 0.01) }).usedRatio).toBeGreaterThan(0);
  });
});

describe('the ways out', () => {
  it('are to go on by the rest of the route, or back by the way one came', () => {
    const plan = planOf(DAY);
    const found = asked({ at: mix(0.25) });
    expect(found.ways.map(({ kind }) => kind)).toEqual(['go-on', 'turn']);
    expect(wayOf(found, 'go-on').distance / plan.distanceOut).toBeCloseTo(1.75, 3);
    expect(wayOf(found, 'turn').distance / plan.distanceOut).toBeCloseTo(0.25, 3);
    const home = asked({ at: mix(0.25), homeward: true });
    expect(wayOf(home, 'go-on').distance / plan.distanceOut).toBeCloseTo(0.25, 3);
    expect(wayOf(home, 'turn').distance / plan.distanceOut).toBeCloseTo(1.75, 3);
  });

  it('start from where the boat is, off its track as well', () => {
    const found = asked({ at: mix(0.5, 400) });
    const { distanceOut } = planOf(DAY);
    for (const { plan } of found.ways) {
      expect(plan.legs[0]!.from.lat).toBeCloseTo(mix(0.5, 400).lat, 9);
      expect(plan.legs[0]!.distance).toBeCloseTo(Math.hypot(distanceOut / 2, 400), -1);
    }
  });

  it('go at the planned speeds, leg by leg', () => {
    const corner = { lat: 45.925, lon: -32.07 };
    const by = trip({ route: { waypoints: [FROM, { ...corner, speed: 3 }, TO] as Waypoint[] } });
    const speeds = (kind: string, change: Partial<Here>) =>
      wayOf(asked(change, by), kind).plan.legs.map((leg) => leg.speedThroughWater);
    const planned = planOf(by).legs.map((leg) => leg.speedThroughWater);
    const at = { lat: 45.925, lon: -32 };
    expect(new Set(planned).size).toBe(2);
    expect(speeds('go-on', { at })).toEqual(planned.slice(1));
    expect(speeds('turn', { at })).toEqual([planned[1], planned[0]]);
  });

  it('leave with half of the manoeuvring, casting off being behind', () => {
    const { manoeuvring } = planOf(DAY);
    const found = wayOf(asked({ fill: DAY.load.fill! }), 'turn').plan;
    expect(found.manoeuvring / manoeuvring).toBeCloseTo(0.5, 3);
    const unsaid = trip({ policy: { manoeuvring: undefined } as never });
    expect(planOf(unsaid).manoeuvring / manoeuvring).toBeCloseTo(450 / 600, 6);
    expect(wayOf(asked({}, unsaid), 'turn').plan.manoeuvring / manoeuvring).toBeCloseTo(225 / 600, 3);
  });

  it('keep the reserve of the plan, and tell what is left beyond it', () => {
    const { reserve } = planOf(DAY);
    for (const { plan, margin, left, need, time, verdict } of asked().ways) {
      expect(plan.reserve).toBeCloseTo(reserve, 9);
      expect([left, need, time, verdict]).toEqual([plan.left.median, plan.need.median, plan.time, plan.verdict]);
      expect(margin).toBe(left - reserve);
    }
  });

  it('keep at least a thousandth where the plan keeps none', () => {
    const none = trip({ policy: { reserve: [{ kind: 'minutes', minutes: 0 }] } });
    expect(planOf(none).reserve).toBe(0);
    const { plan } = wayOf(asked({}, none), 'go-on');
    expect(plan.reserve / plan.usable).toBeCloseTo(0.001, 9);
  });

  it('have all the time there is where none was allowed', () => {
    const { conditions } = DAY;
    const { departure: _, ...unsaid } = conditions;
    const undated = { ...trip({ policy: { timeAllowed: 60 } }), conditions: unsaid };
    for (const one of [DAY, undated]) {
      expect(wayOf(asked({}, one), 'go-on').plan.reasons.map(({ code }) => code)).not.toContain('late');
    }
  });

  it('have no time left where all that was allowed is gone', () => {
    const short = trip({ policy: { timeAllowed: 60 } });
    const late = wayOf(asked({}, short), 'go-on').plan.reasons.find(({ code }) => code === 'late');
    expect(late!.limit).toBe(1);
  });

  it('are none with less aboard than the reserve, nor with nothing at all', () => {
    for (const fill of [0, 0.05, fillWith(planOf(DAY).reserve * 0.9)]) {
      for (const { verdict } of asked({ fill }).ways) expect(verdict).toBe('no-go');
    }
    const { plan } = wayOf(asked({ fill: fillWith(planOf(DAY).reserve * 0.9) }), 'go-on');
    expect(plan.reserve / plan.usable).toBeCloseTo(0.999, 9);
  });

  it('still wait where the plan waits, once', () => {
    const waits = trip({ route: { waypoints: [FROM, { ...TO, stop: 900 }] as Waypoint[] } });
    const time = (of: Trip, kind: string, homeward: boolean) => wayOf(asked({ homeward }, of), kind).time;
    expect(time(waits, 'go-on', false) - time(DAY, 'go-on', false)).toBeCloseTo(900, 6);
    expect(time(waits, 'go-on', true) - time(DAY, 'go-on', true)).toBeCloseTo(0, 6);
    expect(time(waits, 'turn', false) - time(DAY, 'turn', false)).toBeCloseTo(0, 6);
  });

  it('still fill up where the plan does', () => {
    const fills = trip({ route: { waypoints: [FROM, { ...TO, stop: 900, refill: 0.95 }] as Waypoint[] } });
    const need = (of: Trip) => wayOf(asked({ at: mix(0.9) }, of), 'go-on').need;
    expect(need(fills)).toBeLessThan(0.97 * need(DAY));
    expect(wayOf(asked({ at: mix(0.9) }, fills), 'turn').need).toBeCloseTo(
      wayOf(asked({ at: mix(0.9) }), 'turn').need,
      6,
    );
  });

  it('have what is left of the time allowed', () => {
    const { time } = wayOf(asked(), 'go-on');
    const allowed = (timeAllowed: number, now = '2027-06-19T11:00:00-02:00') =>
      wayOf(asked({ time: now }, trip({ policy: { timeAllowed } })), 'go-on').plan.reasons.map(({ code }) => code);
    // Gone at ten, an hour under way.
    expect(allowed(HOUR + time - 60)).toContain('late');
    expect(allowed(HOUR + 2 * time)).not.toContain('late');
    expect(allowed(HOUR / 2)).toContain('late');
    // A clock that says before departure takes nothing off, and gives nothing.
    expect(allowed(time - 60, '2027-06-19T08:00:00-02:00')).toContain('late');
    expect(allowed(2 * time, '2027-06-19T08:00:00-02:00')).not.toContain('late');
  });

  it('start now: what was light at departure may be dark', () => {
    const codes = (time: string) => wayOf(asked({ time }), 'turn').plan.reasons.map(({ code }) => code);
    expect(codes('2027-06-19T23:30:00-02:00')).toContain('after-dark');
    expect(codes('2027-06-19T10:30:00-02:00')).not.toContain('after-dark');
  });
});

describe('landings to make for', () => {
  const north = (metres: number): LatLon => ({ lat: mix(0.5).lat + metres / 111_195, lon: mix(0.5).lon });
  const landings = (places: readonly [string, LatLon][], of = DAY, zones: readonly ZoneFeature[] = []) => {
    const points = places.map(([name, { lat, lon }]) => ({
      type: 'Feature' as const,
      properties: { kind: 'landing' as const, name },
      geometry: { type: 'Point' as const, coordinates: [lon, lat] as [number, number] },
    }));
    const file = waters([...points, ...zones], [-33, 45, -31, 47]);
    return asked({}, of, prepareWaters(file)).ways.filter(({ kind }) => kind === 'landing');
  };
  const island = (south: number, to: number) =>
    zone(
      { kind: 'land', name: 'Island' },
      box(mix(0.5).lon - 0.004, north(south).lat, mix(0.5).lon + 0.002, north(to).lat),
    );

  it('are none where nobody knows of any', () => {
    expect(asked().ways.some(({ kind }) => kind === 'landing')).toBe(false);
    expect(landings([])).toEqual([]);
  });

  it('are the three nearest, the nearest first, straight where nothing stands in the way', () => {
    const found = landings([
      ['far', north(4000)],
      ['near', north(-1000)],
      ['farther', north(5000)],
      ['middle', north(2500)],
    ]);
    expect(found.map(({ name }) => name)).toEqual(['near', 'middle', 'far']);
    [1000, 2500, 4000].forEach((metres, i) => {
      expect(found[i]!.distance / metres).toBeCloseTo(1, 2);
      expect(found[i]!.plan.legs).toHaveLength(1);
    });
  });

  it('are reached round an island, 50 m off its shore', () => {
    const [found] = landings([['beyond', north(2500)]], DAY, [island(800, 1600)]);
    const { legs } = found!.plan;
    expect(legs.length).toBeGreaterThan(1);
    expect(found!.distance).toBeGreaterThan(2520);
    const { lon } = legs[0]!.to;
    const east = (lon - mix(0.5).lon - 0.002) * 111_195 * Math.cos((mix(0.5).lat * Math.PI) / 180);
    expect(east).toBeGreaterThan(20);
    expect(east).toBeLessThan(75);
  });

  it('are told straight ahead where no way round is found, and that it crosses land', () => {
    const [found] = landings([['inside', north(1200)]], DAY, [island(800, 1600)]);
    expect(found!.plan.legs.at(-1)!.to.lat).toBeCloseTo(north(1200).lat, 9);
    expect(found!.verdict).toBe('no-go');
    expect(found!.plan.reasons.map(({ code }) => code)).toContain('crosses-land');
  });

  it('are no help from 30 km on', () => {
    expect(landings([['just', north(29_900)]]).map(({ name }) => name)).toEqual(['just']);
    expect(landings([['not', north(30_100)]])).toEqual([]);
  });

  it('are made for at the speed of the longest leg', () => {
    const [found] = landings([['near', north(1000)]]);
    expect(found!.plan.legs[0]!.speedThroughWater).toBe(2);
    const corner = mix(0.1);
    const by = trip({ route: { waypoints: [{ ...FROM }, { ...corner, speed: 3 }, TO] as Waypoint[] } });
    const planned = planOf(by).legs;
    const longest = planned.reduce((a, b) => (b.distance > a.distance ? b : a));
    const [way] = landings([['near', north(1000)]], by);
    expect(way!.plan.legs[0]!.speedThroughWater).toBe(longest.speedThroughWater);
    expect(new Set(planned.map(({ speedThroughWater }) => speedThroughWater)).size).toBe(2);
  });
});

describe('what somebody says of where they are', () => {
  const codes = (change: Partial<Here>) => {
    const found = fromHere(DAY, planOf(DAY), undefined, here(change));
    return found.ok ? [] : found.problems.map(({ path }) => path);
  };

  it('has to lie on the chart', () => {
    expect(codes({ at: { lat: 85, lon: 180 } })).toEqual([]);
    expect(codes({ at: { lat: -85, lon: -180 } })).toEqual([]);
    expect(codes({ at: { lat: 85.1, lon: 0 } })).toEqual(['at']);
    expect(codes({ at: { lat: -85.1, lon: 0 } })).toEqual(['at']);
    expect(codes({ at: { lat: 0, lon: 180.1 } })).toEqual(['at']);
    expect(codes({ at: { lat: Number.NaN, lon: 0 } })).toEqual(['at']);
  });

  it('has to be a gauge between empty and full', () => {
    expect([codes({ fill: 0 }), codes({ fill: 1 })]).toEqual([[], []]);
    expect([codes({ fill: -0.01 }), codes({ fill: 1.01 }), codes({ fill: Number.NaN })]).toEqual([
      ['fill'],
      ['fill'],
      ['fill'],
    ]);
  });

  it('has to have a time', () => {
    expect(codes({ time: 'soon' })).toEqual(['time']);
    expect(codes({ time: 'soon', fill: 2, at: { lat: 99, lon: 0 } })).toEqual(['at', 'fill', 'time']);
  });
});
