import { describe, expect, it } from 'vitest';
import type { Waypoint } from '../../../src/core/route/shapes.ts';
import { minimums } from '../../../src/core/trip/minimums.ts';
import type { Trip } from '../../../src/core/trip/shapes.ts';
import { type Standing, standingOf } from '../../../src/core/trip/standing.ts';
import { haven, shipped, soundTrip } from '../../trips.ts';
import { dayOut } from './day-on-the-water.ts';

function opened(trip: Trip): Standing {
  const found = standingOf(trip, haven());
  if (!found.ok) throw new Error('the trip can be planned');
  return found.value;
}

function told(timeAllowed: number | undefined, trip = soundTrip()) {
  const standing = opened({ ...trip, policy: { ...trip.policy, timeAllowed } });
  return { list: minimums(standing), run: standing.fuel.run, prepared: standing.prepared };
}

describe('the latest to go on', () => {
  it.each([
    ['a short trip', soundTrip()],
    ['the petrol day', shipped('petrol-day')],
  ])('on %s is late by what is left of the time allowed over the whole trip', (_, trip) => {
    const { list, run } = told(30_000, trip);
    expect(list.length).toBeGreaterThan(1);
    for (const { latest, arrives } of list) {
      // Going on then takes what the trip still takes from here, and ends as the time does.
      expect(latest! + (run.time - arrives)).toBeCloseTo(30_000, 6);
    }
  });

  it('is not told where no time is set', () => {
    for (const minimum of told(undefined).list) expect(minimum).not.toHaveProperty('latest');
  });
});

describe('the waypoints of a trip out and home', () => {
  it('come in the order sailed, the start at the end again, half of the manoeuvring before the first and after the last', () => {
    const { list, run, prepared } = told(undefined);
    expect(list.map(({ leg, waypoint, part }) => [leg, waypoint, part])).toEqual([
      [0, 1, 'out'],
      [1, 0, 'home'],
    ]);
    const half = prepared.manoeuvring / 2;
    expect(list[0]!.arrives).toBeCloseTo(half + run.sailed[0]!.time, 9);
    expect(list[1]!.arrives).toBeCloseTo(run.time - half, 9);
    // At the turn home takes its stretch and the rest of the manoeuvring; at home only that.
    expect(list[0]!.homeTime).toBeCloseTo(run.sailed[1]!.time + half, 6);
    expect(list[1]!.homeTime).toBeCloseTo(half, 6);
  });
});

describe('the legs of a trip', () => {
  it('are told once each, though a speed limit cuts some of them', () => {
    const { list, run } = told(undefined, shipped('petrol-day'));
    const legs = new Set(run.sailed.map(({ stretch }) => stretch.leg)).size;
    expect(run.sailed.length).toBeGreaterThan(legs);
    expect(list.map(({ leg }) => leg)).toEqual(Array.from({ length: legs }, (_, leg) => leg));
    // Each where it ends, not where it is cut.
    const { waypoints } = shipped('petrol-day').route;
    for (const { at, waypoint } of list) {
      expect(at.lat).toBeCloseTo(waypoints[waypoint]!.lat, 9);
      expect(at.lon).toBeCloseTo(waypoints[waypoint]!.lon, 9);
    }
  });

  it('are not told where a stream lets the boat not come home', () => {
    const trip = soundTrip();
    const { list, run } = told(undefined, {
      ...trip,
      conditions: { ...trip.conditions, stream: { setDeg: 180, rate: 9 } },
    });
    expect(run.possible).toBe(false);
    expect(list).toEqual([]);
  });
});

const SLIP: Waypoint = { lat: 45.985, lon: -32.07, name: 'slip' };
const BUOY: Waypoint = { lat: 45.962, lon: -32.07 };
const COVE: Waypoint = { lat: 45.962, lon: -32.04, name: 'cove' };
const CALM = { wind: 'calm', stream: 'slack', sea: 'calm' } as const;

function along(shape: Trip['route']['shape'], waypoints: readonly Waypoint[], speed: Trip['route']['speed'] = 7): Trip {
  const trip = soundTrip();
  const conditions = { ...trip.conditions, ...CALM };
  return { ...trip, conditions, route: { shape, waypoints, speed }, policy: { ...trip.policy, manoeuvring: 600 } };
}

interface Figures {
  /** kg and s of each leg. */
  readonly uses: readonly number[];
  readonly times: readonly number[];
  readonly usable: number;
  readonly reserve: number;
  /** The 95th percentile of the need over its median. */
  readonly doubt?: number;
  /** To what is filled at the end of each leg, kg. */
  readonly to?: readonly (number | undefined)[];
}

/** What a trip asks for where its legs take these figures, and its manoeuvring a kilogram: half at the start, half at the end. */
function withFigures(trip: Trip, { uses, times, usable, reserve, doubt = 1, to }: Figures) {
  const { prepared, ...standing } = opened(trip);
  const { fuel } = standing;
  expect(fuel.run.sailed).toHaveLength(uses.length);
  const sailed = fuel.run.sailed.map((s, i) => ({ ...s, use: uses[i]!, time: times[i]! }));
  const need = 1 + uses.reduce((sum, use) => sum + use, 0);
  const stops = sailed.reduce((sum, { stretch }) => sum + stretch.stop, 0);
  const time = 600 + times.reduce((sum, each) => sum + each, 0) + stops;
  const refills = to && { usable, to };
  const run = { ...fuel.run, sailed, manoeuvring: 1, need, used: need, time, refills };
  // The spread whose 95th percentile is so much more, and a gauge without error.
  const spread = Math.log(doubt) / 1.6448536269515 + 1e-9;
  const unsure = { nodes: fuel.need.nodes.map(() => need), spreads: fuel.need.spreads.map(() => spread) };
  return minimums({
    ...standing,
    prepared: { ...prepared, full: 0 },
    fuel: { ...fuel, run, usable, reserve, need: unsure },
  });
}

/** What each leg of a trip takes, kg. */
function usesOf(trip: Trip): number[] {
  return opened(trip).fuel.run.sailed.map(({ use }) => use);
}

const rounded = (values: readonly number[]) => values.map((value) => Math.round(value * 1e6) / 1e6);

describe('by hand, out to a buoy and a cove and home with an hour in the cove', () => {
  const trip = along('out-and-home', [SLIP, BUOY, { ...COVE, stop: 3600 }]);
  // 3 and 2 kg out, 2.5 and 4 home; 20 to use, of which 3 are the reserve, and one trip in twenty takes half as much again.
  const figures = { uses: [3, 2, 2.5, 4], times: [400, 300, 350, 500], usable: 20, reserve: 3, doubt: 1.5 };
  const list = withFigures(trip, figures);

  it('there is left what has not been used', () => {
    expect(rounded(list.map(({ left }) => left))).toEqual([16.5, 14.5, 12, 8]);
  });

  it('going on asks for what is still to come and the reserve, or half as much again where that is more', () => {
    // Still to come 9, 7, 4.5 and 0.5.
    expect(rounded(list.map(({ goOn }) => goOn))).toEqual([13.5, 10.5, 7.5, 3.5]);
  });

  it('going home asks for the way home from there: at the buoy the same before the cove and after it', () => {
    // Home 4.5, 7, 4.5 and 0.5.
    expect(rounded(list.map(({ home }) => home))).toEqual([7.5, 10.5, 7.5, 3.5]);
  });

  it('home takes its time, the hour in the cove not counted where the boat turns instead', () => {
    expect(rounded(list.map(({ homeTime }) => homeTime))).toEqual([800, 1150, 800, 300]);
    expect(rounded(list.map(({ arrives }) => arrives))).toEqual([700, 1000, 4950, 5450]);
  });

  it('the waypoints are passed there and back, and named where they have a name', () => {
    expect(list.map(({ leg, waypoint, part }) => [leg, waypoint, part])).toEqual([
      [0, 1, 'out'],
      [1, 2, 'out'],
      [2, 1, 'home'],
      [3, 0, 'home'],
    ]);
    expect(list.map((each) => ('name' in each ? each.name : 'unnamed'))).toEqual([
      'unnamed',
      'cove',
      'unnamed',
      'slip',
    ]);
  });

  it('at the most economical speed home takes what a trip planned at it takes on its way home', () => {
    const [, , second, first] = usesOf(along('out-and-home', [SLIP, BUOY, COVE], 'best'));
    const keeping = (need: number) => Math.max(need + 3, 1.5 * need);
    const easy = [0.5 + first!, 0.5 + first! + second!, 0.5 + first!, 0.5].map(keeping);
    for (const [i, { homeEasy }] of list.entries()) expect(homeEasy).toBeCloseTo(easy[i]!, 2);
    expect(list[0]!.homeEasy).toBe(list[2]!.homeEasy);
  });

  it('is never told to take more at the most economical speed than as planned', () => {
    const thrifty = withFigures(trip, { ...figures, uses: [0.01, 0.01, 0.01, 0.01] });
    for (const { home, homeEasy } of thrifty) expect(homeEasy).toBe(home);
  });
});

describe('by hand, one way to a buoy and a cove', () => {
  const times = [400, 300];
  const list = withFigures(along('one-way', [SLIP, { ...BUOY, stop: 120 }, COVE]), {
    uses: [3, 2],
    times,
    usable: 20,
    reserve: 3,
  });
  const keeping = (need: number) => need + 3;

  it('going on asks ever less, going home ever more: all the way back from the end', () => {
    expect(rounded(list.map(({ goOn }) => goOn))).toEqual([5.5, 3.5]);
    for (const [pace, of] of [
      [7, 'home'],
      ['best', 'homeEasy'],
    ] as const) {
      const [second, first] = usesOf(along('one-way', [COVE, BUOY, SLIP], pace));
      expect(list[0]![of]).toBeCloseTo(keeping(0.5 + first!), 2);
      expect(list[1]![of]).toBeCloseTo(keeping(0.5 + first! + second!), 2);
    }
  });

  it('home is back the way it came, and ends at no waypoint but those drawn', () => {
    const back = opened(along('one-way', [COVE, BUOY, SLIP])).fuel.run.sailed.map(({ time }) => time);
    expect(list[0]!.homeTime).toBeCloseTo(300 + back[1]!, 3);
    expect(list[1]!.homeTime).toBeCloseTo(300 + back[1]! + back[0]!, 3);
    expect(list.map(({ waypoint, arrives }) => [waypoint, arrives])).toEqual([
      [1, 700],
      [2, 1120],
    ]);
  });

  it('home is behind even where going on would take next to nothing', () => {
    const [, first] = usesOf(along('one-way', [COVE, BUOY, SLIP]));
    const near = withFigures(along('one-way', [SLIP, BUOY, COVE]), { uses: [3, 0.01], times, usable: 20, reserve: 3 });
    expect(near[0]!.goOn).toBeCloseTo(keeping(0.51), 6);
    expect(near[0]!.home).toBeCloseTo(keeping(0.5 + first!), 2);
  });
});

describe('by hand, round by a buoy and a cove', () => {
  // The second leg takes 50 kg, the third next to nothing: from the buoy home lies behind, from the cove ahead.
  const list = withFigures(along('loop', [SLIP, { ...BUOY, stop: 60 }, COVE]), {
    uses: [3, 50, 0.01],
    times: [400, 300, 700],
    usable: 80,
    reserve: 3,
  });
  const back = opened(along('one-way', [COVE, BUOY, SLIP])).fuel.run.sailed;

  it('home is back or on, whichever takes less', () => {
    expect(list[0]!.goOn).toBeCloseTo(53.51, 6);
    expect(list[0]!.home).toBeCloseTo(3.5 + back[1]!.use, 2);
    expect(list[1]!.home).toBeCloseTo(3.51, 6);
    expect(list[2]!.home).toBeCloseTo(3.5, 6);
    expect(rounded(list.map(({ left }) => left))).toEqual([76.5, 26.5, 26.49]);
  });

  it('takes the time of that way', () => {
    expect(list[0]!.homeTime).toBeCloseTo(300 + back[1]!.time, 3);
    expect(rounded([list[1]!.homeTime, list[2]!.homeTime])).toEqual([1000, 300]);
  });

  it('ends where it began', () => {
    expect(list.map(({ waypoint }) => waypoint)).toEqual([1, 2, 0]);
  });
});

describe('by hand, filling up at the buoy on the way to the cove', () => {
  // 4 and 3 kg, 6 to use at the start and 2 of them the reserve: 1.5 left at the buoy.
  const ask = (filled: number, more: object = {}) =>
    withFigures(along('one-way', [SLIP, { ...BUOY, refill: 0.5 }, COVE]), {
      uses: [4, 3],
      times: [400, 300],
      usable: 6,
      reserve: 2,
      to: [filled, undefined],
      ...more,
    });
  const [second, first] = usesOf(along('one-way', [COVE, BUOY, SLIP]));

  it('asks there for no more than the reserve, where what is filled brings the boat to the cove', () => {
    for (const filled of [5.5, 10]) expect(ask(filled)[0]!.goOn).toBeCloseTo(2, 6);
    expect(ask(10)[1]!.goOn).toBeCloseTo(2.5, 6);
  });

  it('asks there for all that the cove takes, where what is filled falls short: the tank is filled to that, not by that', () => {
    // 3.5 to the cove and 2 of reserve. With 5.4 aboard nothing is filled, and 5.4 are too few.
    for (const filled of [5.49, 3, 0.1]) expect(ask(filled)[0]!.goOn).toBeCloseTo(5.5, 6);
  });

  it('counts what one trip in twenty takes for what is enough', () => {
    // Twice 3.5.
    expect(ask(6.9, { doubt: 2 })[0]!.goOn).toBeCloseTo(7, 6);
    expect(ask(7.1, { doubt: 2 })[0]!.goOn).toBeCloseTo(2, 6);
  });

  it('has aboard after it what was filled to, and lets nothing out', () => {
    expect(ask(10).map(({ left }) => left)).toEqual([1.5, 7]);
    expect(ask(1).map(({ left }) => left)).toEqual([1.5, -1.5]);
  });

  it('has to be back at the buoy only, where what is filled there brings it home from there', () => {
    expect(ask(10)[0]!.home).toBeCloseTo(2 + 0.5 + first!, 2);
    expect(ask(10)[1]!.home).toBeCloseTo(2 + second!, 2);
    for (const filled of [0, 2.4]) expect(ask(filled)[1]!.home).toBeCloseTo(2 + 0.5 + first! + second!, 2);
    // Just enough is what has to be aboard there to go home.
    expect(ask(ask(10)[0]!.home)[1]!.home).toBeCloseTo(2 + second!, 2);
  });

  it('may be enough to come home slowly that is not at the speed planned', () => {
    const [far, near] = usesOf(along('one-way', [COVE, BUOY, SLIP], 'best'));
    const { home, homeEasy } = ask(10)[0]!;
    expect(homeEasy).toBeLessThan(home);
    const [, just] = ask(homeEasy);
    expect(just!.homeEasy).toBeCloseTo(2 + far!, 2);
    expect(just!.home).toBeGreaterThan(2 + 0.5 + far! + near!);
    expect(ask(homeEasy - 0.001)[1]!.homeEasy).toBeCloseTo(2 + 0.5 + far! + near!, 2);
  });

  it('on the way home from the cove asks as much to go home as to go on', () => {
    const list = withFigures(along('out-and-home', [SLIP, { ...BUOY, refill: 0.5 }, COVE]), {
      uses: [4, 3, 3, 4],
      times: [400, 300, 300, 400],
      usable: 6,
      reserve: 2,
      to: [20, undefined, undefined, undefined],
    });
    expect(rounded(list.map(({ goOn }) => goOn))).toEqual([2, 9.5, 6.5, 2.5]);
    // At the buoy the way home begins with a full tank, past it ends with one, and from the cove on there is none to come.
    expect(rounded(list.map(({ home }) => home))).toEqual([2, 5, 6.5, 2.5]);
    for (const { home, homeEasy } of list.slice(2)) expect(homeEasy).toBe(home);
    expect(rounded(list.slice(1).map(({ homeTime }) => homeTime))).toEqual([1000, 700, 300]);
  });
});

describe('in streams by the hour', () => {
  const day = dayOut();
  const waypoints = [SLIP, BUOY, COVE];

  it('home is what is still to be sailed, once the boat has turned', () => {
    const { run, prepared, list } = told(undefined, { ...day, route: { shape: 'out-and-home', waypoints, speed: 7 } });
    expect(prepared.around.varies).toBe(true);
    const homeward = list.filter(({ part }) => part === 'home');
    expect(homeward).toHaveLength(2);
    for (const { home, homeEasy, goOn, homeTime, arrives } of homeward) {
      expect([home, homeEasy]).toEqual([goOn, goOn]);
      expect(homeTime).toBe(run.time - arrives);
    }
  });

  it('home on the way out, and one way at all, may be easier slowly', () => {
    for (const shape of ['out-and-home', 'one-way'] as const) {
      const [first, ...more] = told(undefined, { ...day, route: { shape, waypoints, speed: 7 } }).list;
      expect(first!.homeEasy).toBeLessThan(first!.home);
      expect(more.length).toBeGreaterThan(0);
      if (shape === 'one-way') for (const { home, homeEasy } of more) expect(homeEasy).toBeLessThan(home);
    }
  });
});
