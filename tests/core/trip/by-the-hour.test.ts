import { describe, expect, it } from 'vitest';
import { destination, legBetween } from '../../../src/core/route/distance.ts';
import { prepareWaters, type Waters } from '../../../src/core/route/waters.ts';
import { fetchAt } from '../../../src/core/route/wind-fetch.ts';
import { minimums } from '../../../src/core/trip/minimums.ts';
import { planTrip } from '../../../src/core/trip/plan-trip.ts';
import type { Plan, Trip } from '../../../src/core/trip/shapes.ts';
import { standingOf } from '../../../src/core/trip/standing.ts';
import { HOUR, KNOT } from '../../../src/core/units/convert.ts';
import { secondsOf, timeAt } from '../../../src/core/water/clock.ts';
import { windSea, withSwell } from '../../../src/core/water/sea-growth.ts';
import type { Conditions, Stream, StreamPlace, WindAt } from '../../../src/core/water/shapes.ts';
import { spreadStream } from '../../../src/core/water/spread-stream.ts';
import { haven, reasonOf, shipped, soundTrip } from '../../trips.ts';
import { box, waters as madeWaters, zone } from '../route/made-waters.ts';
import { tide as madeTide, place, reversing } from '../water/made-streams.ts';

const trip = soundTrip();
const departure = '2026-07-15T10:00:00+01:00';

function given(change: Partial<Conditions>, of: Trip = trip): Trip {
  return { ...of, conditions: { ...of.conditions, ...change } };
}

function planned(of: Trip, waters: Waters | 'none' = haven()): Plan {
  const found = planTrip(of, waters === 'none' ? undefined : waters, { quick: true });
  if (!found.ok) throw new Error(found.problems[0]!.message);
  return found.value;
}

/** A forecast by the hour from some hours before the departure on. */
function forecast(hours: number, at: (hour: number) => Omit<WindAt, 'time'>, from = -2): { forecast: WindAt[] } {
  const start = secondsOf(departure);
  return {
    forecast: Array.from({ length: hours }, (_, i) => ({
      time: timeAt(start + (from + i) * HOUR, 3600),
      ...at(from + i),
    })),
  };
}

describe('a forecast', () => {
  it('of the same wind at every hour is that wind', () => {
    const wind = { fromDeg: 200, speed: 5 };
    const steady = planned(given({ departure, wind }));
    const hourly = planned(given({ departure, wind: forecast(24, () => wind) }));
    expect(hourly.verdict).toBe(steady.verdict);
    expect(hourly.need.median / steady.need.median).toBeCloseTo(1, 3);
    expect(hourly.turnBack!.distance / steady.turnBack!.distance).toBeCloseTo(1, 2);
    expect(hourly.legs).toHaveLength(steady.legs.length);
  });

  it('of a wind that gets up from ahead on the way home costs what it costs then, not what it is at departure', () => {
    const rising = planned(
      given({ departure, wind: forecast(24, (h) => ({ fromDeg: 0, speed: h < 0.2 ? 0.5 : 7 }), -1) }),
    );
    const light = planned(given({ departure, wind: { fromDeg: 0, speed: 0.5 } }));
    expect(rising.needHome).toBeGreaterThan(light.needHome);
    expect(Math.max(...rising.legs.map((leg) => leg.headwind))).toBeGreaterThan(2);
  });

  it('that ends before the trip does widens the answer: never a go, and the rest of the way is sailed against a wind', () => {
    const short = planned(given({ departure, wind: forecast(3, () => ({ fromDeg: 180, speed: 1 })) }));
    const whole = planned(given({ departure, wind: forecast(24, () => ({ fromDeg: 180, speed: 1 })) }));
    expect(whole.verdict).toBe('go');
    expect(short.verdict).toBe('marginal');
    expect(reasonOf(short, 'forecast-short')!.value).toBeCloseTo(0, 6);
    expect(short.need.median).toBeGreaterThan(whole.need.median);
    expect(short.badCase.need).toBeGreaterThan(whole.badCase.need);
  });

  it('tells nothing of a trip without its hour', () => {
    const plan = planned(given({ departure: undefined, wind: forecast(24, () => ({ fromDeg: 180, speed: 1 })) }));
    expect(reasonOf(plan, 'departure-unknown')!.level).toBe('marginal');
    expect(plan.verdict).not.toBe('go');
    expect(plan.assumptions.some(({ code }) => code === 'wind')).toBe(true);
  });

  it('is judged by its strongest mean wind under way, and gusts of a near gale are told', () => {
    const fresh = planned(given({ departure, wind: forecast(24, (h) => ({ fromDeg: 180, speed: h === 0 ? 9 : 2 })) }));
    expect(reasonOf(fresh, 'over-wind-limit')!.value).toBeCloseTo(9, 6);
    const later = planned(given({ departure, wind: forecast(24, (h) => ({ fromDeg: 180, speed: h > 12 ? 20 : 2 })) }));
    expect(reasonOf(later, 'over-wind-limit')).toBeUndefined();
    const gusty = planned(given({ departure, wind: forecast(24, () => ({ fromDeg: 180, speed: 6, gust: 15 })) }));
    expect(reasonOf(gusty, 'gusty')!.value).toBeCloseTo(15, 6);
    expect(gusty.verdict).toBe('marginal');
  });
});

/** Open water of which nothing is known, and a straight way to the north on it. */
const start = { lat: 45, lon: -30 };
const tide = { ...madeTide, range: 4 };

function upNorth(metres: number, speed: number, shape: Trip['route']['shape'] = 'one-way'): Trip {
  const waypoints = [start, destination(start, 0, metres)];
  return { ...trip, route: { shape, waypoints, speed }, policy: { ...trip.policy, drawnFactor: 1, manoeuvring: 0 } };
}

const always = (stream: Stream): StreamPlace =>
  place(
    'Everywhere',
    45.02,
    -30,
    Array.from({ length: 13 }, () => stream),
  );

function inStream(of: Trip, where: StreamPlace, leaves: string): Trip {
  const conditions = { departure: leaves, stream: 'by-tide' as const, streamPlaces: [where], tide };
  return given(conditions, of);
}

describe('streams by the tide', () => {
  const leaves = '2026-07-15T11:00:00Z';

  it('that are the same at every hour are that stream', () => {
    const stream = { setDeg: 200, rate: 0.8 };
    const steady = planned(given({ departure: leaves, stream }, upNorth(8000, 6, 'out-and-home')), 'none');
    const hourly = planned(inStream(upNorth(8000, 6, 'out-and-home'), always(stream), leaves), 'none');
    expect(hourly.need.median / steady.need.median).toBeCloseTo(1, 3);
    expect(hourly.time / steady.time).toBeCloseTo(1, 3);
    expect(hourly.legs[0]!.steerDeg).toBeCloseTo(steady.legs[0]!.steerDeg, 6);
  });

  it('of which only the strongest are known help nobody on the way, and steepen the sea all the same', () => {
    const run = { setDeg: 0, springs: 1.5, neaps: 0.8 };
    const runs = spreadStream({ flood: run, ebb: { ...run, setDeg: 180 }, turns: 2 });
    const where = { name: 'Race', lat: 45.02, lon: -30, ...runs };
    const { spread: _, ...told } = where;
    const sea = { wind: { fromDeg: 0, speed: 5 }, sea: { height: 0.4 } };
    const north = upNorth(8000, 4);
    const slack = planned(given({ departure: leaves, stream: 'slack', ...sea }, north), 'none');
    const known = planned(given({ ...inStream(north, told, leaves).conditions, ...sea }, north), 'none');
    const guessed = planned(given({ ...inStream(north, where, leaves).conditions, ...sea }, north), 'none');
    expect(known.time).toBeLessThan(0.9 * slack.time);
    expect(guessed.time).toBeGreaterThan(0.999 * slack.time);
    expect(reasonOf(slack, 'wind-against-stream')).toBeUndefined();
    expect(reasonOf(known, 'wind-against-stream')).toBeDefined();
    expect(reasonOf(guessed, 'wind-against-stream')).toBeDefined();
    expect(guessed.assumptions).toContainEqual({ code: 'stream-spread', name: 'Race' });
    expect(known.assumptions.some(({ code }) => code === 'stream-spread')).toBe(false);
  });

  it.each([
    [3, 9000],
    [2, 12_000],
    [5, 14_000],
  ])('carry a boat of %s m/s over %s m as a step-by-step integration of the same stream does', (speed, metres) => {
    const most = 1.2;
    const where = place('Race', 45.04, -30, reversing(0, most));
    const plan = planned(inStream(upNorth(metres, speed), where, leaves), 'none');
    // Hourly rates are taken as linear between the hours, as the table of the place tells them.
    const hourly = Array.from({ length: 13 }, (_, i) => -most * Math.sin(((i - 6) * Math.PI) / 6));
    const north = (seconds: number): number => {
      const h = (seconds - secondsOf(tide.highWater)) / HOUR + 6;
      const i = Math.min(Math.floor(h), 11);
      return hourly[i]! + (hourly[i + 1]! - hourly[i]!) * (h - i);
    };
    let [at, time] = [0, 0];
    for (const step = 1; at < metres; time += step) at += (speed + north(secondsOf(leaves) + time)) * step;
    expect(Math.abs(plan.time / time - 1)).toBeLessThan(0.005);
  });

  it('stronger than the boat leave no headway, and that is no go', () => {
    const plan = planned(inStream(upNorth(9000, 1.5), always({ setDeg: 180, rate: 2 }), leaves), 'none');
    expect(plan.verdict).toBe('no-go');
    expect(reasonOf(plan, 'stuck-in-stream')).toBeDefined();
    for (const leg of plan.legs) expect(Number.isNaN(leg.use)).toBe(false);
  });

  it('are unknown without the tide or a date, and so never a go', () => {
    const known = inStream(upNorth(4000, 6), always({ setDeg: 0, rate: 0.2 }), leaves);
    for (const less of [given({ tide: undefined }, known), given({ departure: undefined }, known)]) {
      const plan = planned(less, 'none');
      expect(reasonOf(plan, 'stream-unknown')).toBeDefined();
      expect(plan.verdict).not.toBe('go');
    }
  });

  it('say nothing far from any place: the stream there is counted against the boat', () => {
    const far = { ...always({ setDeg: 0, rate: 1 }), lat: 46 };
    const plan = planned(inStream(upNorth(4000, 6), far, leaves), 'none');
    expect(reasonOf(plan, 'streams-short')!.legs).toEqual([0]);
    expect(plan.legs[0]!.speedOverGround).toBeLessThan(6);
  });

  it('name the places they were taken from', () => {
    const petrol = shipped('petrol-day');
    const highWater = '2027-06-19T13:00:00-02:00';
    const plan = planned(given({ stream: 'by-tide', tide: { ...tide, highWater } }, petrol));
    const taken = plan.assumptions.find(({ code }) => code === 'stream-by-tide')!;
    expect(taken.name).toContain('Garnet race');
    const race = plan.legs.filter(({ stream }) => (stream?.rate ?? 0) > 1.5 * KNOT);
    expect(race.length).toBeGreaterThan(0);
  });

  describe('with a place picked for a leg', () => {
    const near = { ...always({ setDeg: 180, rate: 0.2 }), name: 'Near' };
    const off = { ...always({ setDeg: 180, rate: 1 }), name: 'Off the point', lat: 45.2 };
    const both = given(
      { departure: leaves, stream: 'by-tide', streamPlaces: [near, off], tide },
      { ...upNorth(8000, 4, 'out-and-home'), waters: undefined },
    );
    const picked = (name: string, of: Trip = both): Trip => {
      const [from, ...rest] = of.route.waypoints;
      return { ...of, route: { ...of.route, waypoints: [{ ...from!, streamPlace: name }, ...rest] } };
    };

    it('take its stream however far it lies, on the way home over the same water too, and say so of each leg', () => {
      expect(planned(both, 'none').legs.map(({ streamPlaces }) => streamPlaces)).toEqual([['Near'], ['Near']]);
      const plan = planned(picked('Off the point'), 'none');
      expect(plan.legs.map(({ streamPlaces }) => streamPlaces)).toEqual([['Off the point'], ['Off the point']]);
      expect(plan.legs[0]!.speedOverGround).toBeCloseTo(3, 6);
      expect(plan.legs[1]!.speedOverGround).toBeCloseTo(5, 6);
    });

    it('are the same as those of the nearest when that one is picked', () => {
      expect(planned(picked('Near'), 'none')).toEqual(planned(both, 'none'));
    });

    it('are refused when nobody knows the place', () => {
      const found = planTrip(picked('Nowhere'), undefined, { quick: true });
      expect(!found.ok && found.problems).toMatchObject([
        { code: 'no-such-stream-place', path: 'route.waypoints.0.streamPlace' },
      ]);
    });

    it('are not asked for where another stream is given, and count as unknown while the local waters are missing', () => {
      const slack = given({ stream: 'slack' }, picked('Nowhere'));
      expect(planned(slack, 'none').legs[0]!.streamPlaces).toBeUndefined();
      const plan = planned({ ...picked('Nowhere'), waters: 'Elsewhere' }, 'none');
      expect(reasonOf(plan, 'streams-short')!.legs).toEqual([0, 1]);
      expect(plan.verdict).not.toBe('go');
    });
  });

  it('bring the turn nearer when they set away from home by the hour of turning', () => {
    const out = upNorth(20_000, 4, 'out-and-home');
    const where = (rate: number) => always({ setDeg: 0, rate });
    const turn = (of: Trip) => planned(of, 'none').turnBack!.distance;
    const ebb = place(
      'Race',
      45.04,
      -30,
      Array.from({ length: 13 }, (_, i) => ({ setDeg: 0, rate: i > 6 ? 1.5 : 0 })),
    );
    expect(turn(inStream(out, ebb, leaves))).toBeLessThan(turn(inStream(out, where(0), leaves)));
  });

  it('ask of each waypoint what the way home takes in the hours that follow', () => {
    const found = standingOf(
      inStream(upNorth(12_000, 4, 'out-and-home'), place('Race', 45.04, -30, reversing(180, 1)), leaves),
      undefined,
    );
    if (!found.ok) throw new Error('planned');
    const [turn, home] = minimums(found.value);
    // At the turn the way home is the planned one, to the tenth of a per cent that the pieces leave.
    expect(turn!.home / turn!.goOn).toBeCloseTo(1, 2);
    expect(home!.homeEasy).toBeLessThanOrEqual(home!.home);
  });
});

/** A lake of 8 by 8 km within known bounds, and the sea beside it. */
const lake = prepareWaters(
  madeWaters(
    [
      zone(
        { kind: 'land', name: 'Shore' },
        box(-30.2, 44.8, -29.8, 45.2),
        box(-30.05, 44.964, -29.95, 45.036).reverse(),
      ),
    ],
    [-30.2, 44.8, -29.8, 45.2],
  ),
);

describe('waves that follow from the wind', () => {
  const calmStream = given({ stream: 'slack', sea: undefined }, upNorth(2000, 6));

  it('are those of the wind over the open water of the leg', () => {
    const wind = { fromDeg: 90, speed: 7 };
    const plan = planned(given({ wind }, calmStream), lake);
    const fetches = [0, 0.5, 1].map((share) => fetchAt(lake, destination(start, 0, 2000 * share), 90).length);
    const height = windSea({ wind: 7, fetch: Math.max(...fetches) }).height;
    expect(plan.legs[0]!.waveHeight).toBeCloseTo(height, 6);
    expect(height).toBeGreaterThan(0.15);
    expect(reasonOf(plan, 'sea-unknown')).toBeUndefined();
    expect(plan.assumptions.some(({ code }) => code === 'sea-from-wind')).toBe(true);
  });

  it('need no swell where land is all round, and are marginal where the sea lies open and no swell is given', () => {
    const wind = { fromDeg: 90, speed: 3 };
    expect(reasonOf(planned(given({ wind }, calmStream), lake), 'swell-unknown')).toBeUndefined();
    const open = given({ wind, sea: undefined });
    expect(reasonOf(planned(open), 'swell-unknown')!.level).toBe('marginal');
    expect(reasonOf(planned(given({ sea: { swell: 0 } }, open)), 'swell-unknown')).toBeUndefined();
  });

  it('have the energy of the swell on top', () => {
    const wind = { fromDeg: 90, speed: 6 };
    const bare = planned(given({ wind }, calmStream), lake).legs[0]!.waveHeight;
    const both = planned(given({ wind, sea: { swell: 0.3 } }, calmStream), lake).legs[0]!.waveHeight;
    expect(both).toBeCloseTo(withSwell(bare, 0.3), 9);
  });

  it('stay unknown without waters: nobody knows the open water', () => {
    const plan = planned(given({ wind: { fromDeg: 90, speed: 6 } }, calmStream), 'none');
    expect(reasonOf(plan, 'sea-unknown')).toBeDefined();
    expect(plan.verdict).not.toBe('go');
  });

  it('rise when it freshens by the hour', () => {
    const wind = forecast(24, (h) => ({ fromDeg: 90, speed: 2 + 2 * Math.max(h, 0) }));
    const long = given({ departure, wind, stream: 'slack', sea: undefined }, upNorth(2000, 1.2, 'out-and-home'));
    const [out, home] = planned(
      { ...long, route: { ...long.route, waypoints: long.route.waypoints.map((w) => ({ ...w, stop: 7200 })) } },
      lake,
    ).legs;
    expect(home!.waveHeight).toBeGreaterThan(out!.waveHeight + 0.05);
  });
});

describe('a stream against the wind', () => {
  const against = (rate: number): Plan =>
    planned(
      given({ wind: { fromDeg: 0, speed: 6 }, stream: { setDeg: 0, rate }, sea: { height: 0.25 } }, upNorth(3000, 5)),
      'none',
    );

  it('raises the sea from a tenth of the speed of the waves, and from a fifth nobody goes', () => {
    expect(reasonOf(against(0.1), 'wind-against-stream')).toBeUndefined();
    expect(reasonOf(against(0.35), 'wind-against-stream')!.level).toBe('marginal');
    const stay = against(0.9);
    expect(reasonOf(stay, 'wind-against-stream')!.level).toBe('no-go');
    expect(stay.verdict).toBe('no-go');
  });

  it('is not told where both run the same way', () => {
    const plan = planned(
      given(
        { wind: { fromDeg: 180, speed: 6 }, stream: { setDeg: 0, rate: 0.9 }, sea: { height: 0.25 } },
        upNorth(3000, 5),
      ),
      'none',
    );
    expect(reasonOf(plan, 'wind-against-stream')).toBeUndefined();
  });
});

describe('a bar by the tide', () => {
  const bar = prepareWaters(
    madeWaters(
      [zone({ kind: 'shoal', name: 'Bar', dries_m: 1 }, box(-30.02, 45.01, -29.98, 45.012))],
      [-30.2, 44.8, -29.8, 45.2],
    ),
  );
  const over = (leaves: string, change: Partial<Conditions['tide'] & object> = {}): Plan =>
    planned(given({ departure: leaves, tide: { ...tide, range: 3, ...change } }, upNorth(3000, 6)), bar);

  it('is crossed with water enough at high water, and not at low', () => {
    expect(legBetween(start, { lat: 45.011, lon: -30 }).distance).toBeLessThan(3000);
    const high = over('2026-07-15T12:00:00Z');
    expect(reasonOf(high, 'shoal-covered')).toMatchObject({ level: 'note', name: 'Bar' });
    expect(reasonOf(high, 'shoal-covered')!.value).toBeCloseTo(3, 1);
    const low = over('2026-07-15T18:10:00Z');
    expect(reasonOf(low, 'too-shallow')).toMatchObject({ level: 'no-go', name: 'Bar' });
    expect(low.verdict).toBe('no-go');
  });

  it('stays a shoal where the height of the tide is not told, or its hour too far away', () => {
    expect(reasonOf(over('2026-07-15T12:00:00Z', { highWaterHeight: undefined }), 'crosses-shoal')!.level).toBe(
      'marginal',
    );
    expect(reasonOf(over('2026-07-18T12:00:00Z'), 'crosses-shoal')!.level).toBe('marginal');
  });

  it('asks for the depth that the crew wants', () => {
    const deep = given({ departure: '2026-07-15T12:00:00Z', tide: { ...tide, range: 3 } }, upNorth(3000, 6));
    const plan = planned({ ...deep, policy: { ...deep.policy, depth: 2.9 } }, bar);
    expect(reasonOf(plan, 'too-shallow')!.level).toBe('marginal');
  });
});
