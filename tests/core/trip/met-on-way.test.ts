import { describe, expect, it } from 'vitest';
import type { Stretch } from '../../../src/core/route/split-legs.ts';
import { streamOn, weatherOn, windOn } from '../../../src/core/trip/met-on-way.ts';
import type { Scenario } from '../../../src/core/trip/scenario.ts';
import { windTable } from '../../../src/core/water/wind-by-time.ts';

const DEPARTS = Date.UTC(2027, 5, 19, 8) / 1000;
const table = windTable([
  { time: '2027-06-19T08:00:00Z', fromDeg: 0, speed: 4 },
  { time: '2027-06-19T10:00:00Z', fromDeg: 0, speed: 8 },
]);

const scenario = (rest: Partial<Scenario>): Scenario =>
  ({
    departs: DEPARTS,
    oneWay: false,
    waveHeight: 0.2,
    untold: { headwind: 7, foul: 0.6 },
    kinds: [],
    ...rest,
  }) as Scenario;
const way = (part: 'out' | 'home', trackDeg = 0, leg = 3) => ({ part, trackDeg, leg }) as Stretch;

describe('the wind on a way', () => {
  it('is that from ahead: all of it bow on, half of it at 60 degrees, from behind it pushes', () => {
    const blown = scenario({ wind: { fromDeg: 0, speed: 6 } });
    expect(windOn(way('out', 0), blown, 0)).toBeCloseTo(6, 12);
    expect(windOn(way('out', 60), blown, 0)).toBeCloseTo(3, 12);
    expect(windOn(way('out', 180), blown, 0)).toBeCloseTo(-6, 12);
  });

  it('nobody told of is none on the way out and against the way home', () => {
    const untold = scenario({ headwindHome: 4.4 });
    expect(windOn(way('out'), untold, 0)).toBe(0);
    expect(windOn(way('home'), untold, 0)).toBe(4.4);
    // A trip one way has no other way for it to stand against.
    expect(windOn(way('out'), scenario({ headwindHome: 4.4, oneWay: true }), 0)).toBe(4.4);
  });

  it('of a forecast is that of the hour, counted from departure; beyond it what is taken for untold', () => {
    const by = scenario({ wind: table });
    expect([0, 3600, 7200].map((at) => windOn(way('out'), by, at))).toEqual([4, 6, 8]);
    expect(windOn(way('out'), by, 7201)).toBe(7);
    expect(windOn(way('out', 180), by, 7201)).toBe(7);
  });

  it('that may freshen or not counts as whichever is worse on this way', () => {
    const both = scenario({ wind: { fromDeg: 0, speed: 9 }, eased: { fromDeg: 0, speed: 6 } });
    expect(windOn(way('out', 0), both, 0)).toBeCloseTo(9, 12);
    // From astern the lighter one pushes less.
    expect(windOn(way('out', 180), both, 0)).toBeCloseTo(-6, 12);
  });
});

describe('the weather on a way', () => {
  it('has the waves of its leg and instant, or those of the whole trip', () => {
    expect(weatherOn(way('out'), scenario({}), 60).waveHeight).toBe(0.2);
    const asked: unknown[] = [];
    const waves = ((leg: number, seconds: number) => {
      asked.push([leg, seconds]);
      return { height: 0.7 };
    }) as never;
    expect(weatherOn(way('out'), scenario({ waves }), 60).waveHeight).toBe(0.7);
    expect(asked).toEqual([[3, DEPARTS + 60]]);
  });

  it('has a boat in tow on the way home alone, and all the way of a trip one way', () => {
    const tow = { drag: 1 } as never;
    expect(weatherOn(way('out'), scenario({ tow }), 0).tow).toBeUndefined();
    expect(weatherOn(way('home'), scenario({ tow }), 0).tow).toBe(tow);
    expect(weatherOn(way('out'), scenario({ tow, oneWay: true }), 0).tow).toBe(tow);
    expect(weatherOn(way('home'), scenario({}), 0).tow).toBeUndefined();
  });
});

describe('the stream on a way', () => {
  it('is the told one, and none in slack water', () => {
    const stream = { setDeg: 90, rate: 0.7 };
    expect(streamOn(way('out'), scenario({ stream }), 0)).toEqual(stream);
    expect(streamOn(way('home'), scenario({}), 0)).toBeUndefined();
  });

  it('nobody told of sets straight against the way home, also across north', () => {
    const foul = scenario({ foulHome: 0.25 });
    expect(streamOn(way('out', 30), foul, 0)).toBeUndefined();
    expect(streamOn(way('home', 30), foul, 0)).toEqual({ setDeg: 210, rate: 0.25 });
    expect(streamOn(way('home', 200), foul, 0)).toEqual({ setDeg: 20, rate: 0.25 });
    expect(streamOn(way('out', 30), scenario({ foulHome: 0.25, oneWay: true }), 0)).toEqual({
      setDeg: 210,
      rate: 0.25,
    });
  });

  it('by tide is that of place and hour; where none is told it sets against the way', () => {
    const asked: unknown[] = [];
    const by = (known: boolean) =>
      scenario({
        stream: ((_: unknown, seconds: number) => {
          asked.push(seconds);
          return known ? { known, stream: { setDeg: 45, rate: 0.4 } } : { known };
        }) as never,
      });
    expect(streamOn(way('out', 200), by(true), 90)).toEqual({ setDeg: 45, rate: 0.4 });
    expect(streamOn(way('out', 200), by(false), 90)).toEqual({ setDeg: 20, rate: 0.6 });
    expect(asked).toEqual([DEPARTS + 90, DEPARTS + 90]);
  });
});
