import { describe, expect, it } from 'vitest';
import { legPlans, placesTaken } from '../../../src/core/trip/leg-plans.ts';
import type { Prepared } from '../../../src/core/trip/prepare.ts';
import type { Run, Sailed } from '../../../src/core/trip/sail.ts';

interface Piece {
  readonly leg?: number;
  readonly spot?: number;
  readonly distance?: number;
  readonly time?: number;
  readonly use?: number;
  readonly speed?: number;
  readonly steerDeg?: number;
  readonly flow?: number;
  readonly throttle?: number;
  readonly headwind?: number;
  readonly waveHeight?: number;
  readonly rate?: number;
  readonly place?: string;
  readonly stop?: number;
  readonly possible?: boolean;
  readonly limitName?: string;
  readonly part?: string;
  readonly refill?: number;
}

function piece(of: Piece): Sailed {
  const { leg = 0, distance = 1000, stop = 0, spot, limitName, part = 'out', refill } = of;
  return {
    stretch: {
      leg,
      from: { lat: 46, lon: leg },
      to: { lat: 46, lon: leg + 1 },
      part,
      distance,
      trackDeg: 90,
      stop,
      spot,
      limitName,
      refill,
    },
    possible: of.possible ?? true,
    steerDeg: of.steerDeg ?? 90,
    speed: of.speed ?? 3,
    ground: distance / (of.time ?? 100),
    time: of.time ?? 100,
    use: of.use ?? 2,
    flow: of.flow ?? 0.02,
    steady: { drive: { rpm: 4000, throttle: of.throttle ?? 0.5 }, hull: { trimDeg: 3, froudeVolume: 1.5 } },
    weather: { headwind: of.headwind ?? 1, waveHeight: of.waveHeight ?? 0.1 },
    stream: of.rate === undefined ? undefined : { setDeg: 10, rate: of.rate },
    told: of.place === undefined ? undefined : { known: true, place: of.place },
  } as unknown as Sailed;
}

function planned(pieces: readonly Piece[], run: object = {}, usable = 20) {
  const sailed = pieces.map(piece);
  const need = sailed.reduce((sum, { use }) => sum + use, 1);
  const whole = { sailed, need, manoeuvring: 1, possible: true, ...run } as unknown as Run;
  return legPlans({ manoeuvring: 60 } as Prepared, whole, usable, { low: 0.8 * need, high: 1.5 * need });
}

describe('the legs of a plan', () => {
  it('begin after half of the manoeuvring and follow each other, stops between them', () => {
    expect(planned([{ leg: 0, stop: 300 }, { leg: 1 }]).map(({ startsAt }) => startsAt)).toEqual([30, 430]);
  });

  it('leave what is not used yet, half of the manoeuvring taken off before the first, in a band that opens with the use', () => {
    const [first, second] = planned([
      { leg: 0, use: 2 },
      { leg: 1, use: 7 },
    ]);
    // 10 needed in all: 2.5 after the first leg, 9.5 after the second.
    expect(first!.left).toEqual({
      low: expect.closeTo(20 - 0.25 * 15, 9),
      median: 17.5,
      high: expect.closeTo(20 - 0.25 * 8, 9),
    });
    expect(second!.left).toEqual({
      low: expect.closeTo(20 - 0.95 * 15, 9),
      median: 10.5,
      high: expect.closeTo(20 - 0.95 * 8, 9),
    });
    expect([first!.needFromHere, second!.needFromHere]).toEqual([9.5, 7.5]);
  });

  it('have no band where the trip cannot be sailed', () => {
    expect(planned([{}], { possible: false })[0]!.left).toEqual({ low: 17.5, median: 17.5, high: 17.5 });
  });

  it('start anew where the trip fills up, unless there is more in it than that', () => {
    const filled = (to: number) =>
      planned(
        [
          { leg: 0, use: 4 },
          { leg: 1, use: 5 },
        ],
        { refills: { to: [to, undefined] } },
      );
    expect(filled(18).map(({ left }) => left.median)).toEqual([15.5, 13]);
    expect(filled(15).map(({ left }) => left.median)).toEqual([15.5, 10.5]);
  });

  it('are told one by one, with regime and throttle', () => {
    const legs = planned([{ leg: 0 }, { leg: 1, throttle: 0.7 }]);
    expect(legs.map(({ leg, throttle, regime, rpm }) => [leg, throttle, regime, rpm])).toEqual([
      [0, 0.5, 'hump', 4000],
      [1, 0.7, 'hump', 4000],
    ]);
  });
});

describe('a leg cut for what changes along it', () => {
  const cut = (a: Piece, b: Piece) =>
    planned([
      { spot: 0, ...a },
      { spot: 1, ...b },
    ]);

  it('is one leg again: lengths, times and uses added, means by time', () => {
    const [leg, ...more] = cut(
      { distance: 900, time: 100, use: 1, speed: 4, flow: 0.01, steerDeg: 80 },
      { distance: 900, time: 300, use: 3, speed: 8, flow: 0.03, steerDeg: 80 },
    );
    expect(more).toEqual([]);
    expect(leg).toMatchObject({ distance: 1800, time: 400, use: 4, speedThroughWater: 7, speedOverGround: 4.5 });
    expect(leg!.flow).toBeCloseTo(0.025, 9);
    expect(leg!.steerDeg).toBeCloseTo(80, 9);
  });

  it('steers the mean course, also across north', () => {
    const steered = cut({ steerDeg: 350 }, { steerDeg: 20 })[0]!.steerDeg;
    expect(steered).toBeCloseTo(5, 6);
  });

  it('is as hard as its hardest piece: throttle, wind, waves and stream', () => {
    const a = { throttle: 0.9, headwind: 2, waveHeight: 0.3, rate: 0.2 };
    const b = { throttle: 0.4, headwind: 5, waveHeight: 0.2, rate: 0.7 };
    const hard = { throttle: 0.9, headwind: 5, waveHeight: 0.3, stream: { setDeg: 10, rate: 0.7 } };
    expect(cut(a, b)[0]).toMatchObject(hard);
    expect(cut(b, a)[0]).toMatchObject(hard);
    expect(cut({ headwind: -3 }, { headwind: -2 })[0]!.headwind).toBe(-2);
    expect(cut({}, {})[0]!.stream).toBeUndefined();
  });

  it('makes no way where a piece of it makes none', () => {
    const [leg] = cut({ throttle: 0.9, speed: 4 }, { possible: false, time: Infinity, speed: 8 });
    expect(leg).toMatchObject({ speedOverGround: 0, speedThroughWater: 4, time: Infinity });
  });

  it('ends where a leg, its part, a limit, a stop or filling up ends', () => {
    const count = (a: Piece, b: Piece = {}) => cut(a, b).length;
    expect(count({})).toBe(1);
    expect(count({}, { leg: 1 })).toBe(2);
    expect(count({}, { part: 'home' })).toBe(2);
    expect(count({}, { limitName: 'Harbour' })).toBe(2);
    expect(count({ stop: 60 })).toBe(2);
    expect(count({ refill: 1 })).toBe(2);
    expect(count({ spot: undefined })).toBe(2);
  });

  it('names the places its stream was taken from, each once', () => {
    expect(cut({ place: 'Gut' }, { place: 'Race' })[0]!.streamPlaces).toEqual(['Gut', 'Race']);
    expect(cut({ place: 'Gut' }, { place: 'Gut' })[0]!.streamPlaces).toEqual(['Gut']);
    expect(cut({}, {})[0]!.streamPlaces).toBeUndefined();
    expect(placesTaken([{ told: { known: false } } as unknown as Sailed])).toEqual([]);
  });
});
