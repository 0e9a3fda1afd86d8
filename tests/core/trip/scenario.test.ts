import { describe, expect, it } from 'vitest';
import { LONGEST_FETCH } from '../../../src/core/route/wind-fetch.ts';
import type { Around } from '../../../src/core/trip/around.ts';
import { badCases, expected, type Given, seaTold } from '../../../src/core/trip/scenario.ts';
import { oneForceMore } from '../../../src/core/water/beaufort.ts';
import { windSea } from '../../../src/core/water/sea-growth.ts';

const NOTHING_TOLD: Around = {
  departs: undefined,
  wind: undefined,
  fresher: undefined,
  stream: undefined,
  strongestStream: 0,
  height: undefined,
  fetch: undefined,
  seaUnder: undefined,
  horizon: 7200,
  varies: false,
};

function given(around: Partial<Around> = {}, rest: Partial<Given> = {}): Given {
  return {
    conditions: { water: 'sea' },
    around: { ...NOTHING_TOLD, ...around },
    oneWay: false,
    fill: undefined,
    length: 4,
    weighs: undefined,
    ...rest,
  };
}

const breeze = { fromDeg: 200, speed: 6 };
const table = (speeds: readonly number[]) => ({
  entries: speeds.map((speed, hour) => ({ at: 3600 * hour, fromDeg: 200, speed, east: 0, north: 0 })),
});
const calmer = { slow: 2, hump: undefined, electric: false };

describe('the plan that is shown', () => {
  it('of a trip nobody said anything about has a breeze and half a knot against every leg home, small waves, half a tank that weighs as a full one', () => {
    expect(expected(given())).toEqual({
      departs: 0,
      wind: undefined,
      headwindHome: 4.4,
      stream: undefined,
      foulHome: 0.25,
      untold: { headwind: 4.4, foul: 0.25 },
      waveHeight: 0.16,
      oneWay: false,
      fill: 0.5,
      weighs: 1,
      batteryTemperatureC: 10,
      kinds: [],
    });
  });

  it('takes what was told, and invents nothing beside it', () => {
    const told = given(
      { wind: breeze, stream: { setDeg: 90, rate: 0.7 }, departs: 1000 },
      {
        conditions: { water: 'sea', sea: { height: 0.3 }, batteryTemperatureC: 21 },
        fill: 0.8,
        weighs: 0.9,
        oneWay: true,
      },
    );
    expect(expected(told)).toMatchObject({
      departs: 1000,
      wind: breeze,
      headwindHome: undefined,
      stream: { setDeg: 90, rate: 0.7 },
      foulHome: undefined,
      waveHeight: 0.3,
      oneWay: true,
      fill: 0.8,
      weighs: 0.9,
      batteryTemperatureC: 21,
    });
  });

  it('has neither wind nor stream nor waves where calm, slack and a calm sea were told', () => {
    const still = given({ wind: 'calm', stream: 'slack' }, { conditions: { water: 'sea', sea: 'calm' } });
    expect(expected(still)).toMatchObject({
      wind: undefined,
      headwindHome: undefined,
      stream: undefined,
      foulHome: undefined,
      waveHeight: 0,
    });
  });

  it('keeps the told swell, and takes waves of a twenty-fifth of the length where these are higher', () => {
    const swell = (height: number) => expected(given({}, { conditions: { water: 'sea', sea: { swell: height } } }));
    expect(swell(0.5).waveHeight).toBe(0.5);
    expect(swell(0.1).waveHeight).toBe(0.16);
  });

  it('over known waters has the waves its wind raises at any time of the trip, and in a calm the swell alone', () => {
    const seen: unknown[] = [];
    const seaUnder = (law: unknown) => ({
      waves: { law } as never,
      highest: (from: number, to: number) => {
        seen.push([law, from, to]);
        return 0.42;
      },
    });
    const blown = expected(given({ wind: breeze, seaUnder: seaUnder as never, departs: 500 }));
    expect(blown).toMatchObject({ waveHeight: 0.42, waves: { law: breeze } });
    expect(seen).toEqual([[breeze, 500, 7700]]);
    const calm = given(
      { wind: 'calm', seaUnder: seaUnder as never },
      { conditions: { water: 'sea', sea: { swell: 0.1 } } },
    );
    expect(expected(calm).waveHeight).toBe(0.1);
  });
});

describe('what if', () => {
  it('another wind keeps its direction, and comes from ahead on the way home where none was told', () => {
    expect(expected(given({ wind: breeze }, { windSpeed: 9 })).wind).toEqual({ fromDeg: 200, speed: 9 });
    expect(expected(given({}, { windSpeed: 9 }))).toMatchObject({ wind: undefined, headwindHome: 9 });
    expect(expected(given({ wind: 'calm' }, { windSpeed: 9 }))).toMatchObject({ wind: undefined, headwindHome: 9 });
  });

  it('another wind than that of a forecast is the strongest of the trip, the other hours in proportion', () => {
    const wind = table([2, 4, 3, 40]);
    const asked = expected(given({ wind, departs: 0, horizon: 7200 }, { windSpeed: 8 })).wind;
    expect(asked).toEqual(table([4, 8, 6, 80]));
    // Without a wind at any hour it has no direction.
    const flat = expected(given({ wind: table([0, 0, 0]), departs: 0 }, { windSpeed: 8 }));
    expect(flat).toMatchObject({ wind: undefined, headwindHome: 8 });
  });

  it('another stream keeps its set, and runs foul home where none was told', () => {
    const stream = { setDeg: 90, rate: 0.7 };
    expect(expected(given({ stream }, { streamRate: 1.5 })).stream).toEqual({ setDeg: 90, rate: 1.5 });
    expect(expected(given({}, { streamRate: 1.5 }))).toMatchObject({ stream: undefined, foulHome: 1.5 });
    expect(expected(given({ stream: 'slack' }, { streamRate: 1.5 }))).toMatchObject({
      stream: undefined,
      foulHome: 1.5,
    });
  });

  it('streams by tide are stronger in proportion, so that the strongest comes to what was asked', () => {
    const law = (_: unknown, seconds: number) =>
      seconds > 10 ? { known: false } : { known: true, stream: { setDeg: 45, rate: 0.4 } };
    const at = (strongestStream: number, seconds: number) => {
      const { stream, foulHome } = expected(given({ stream: law as never, strongestStream }, { streamRate: 1.6 }));
      expect(foulHome).toBeUndefined();
      return (stream as typeof law)(undefined, seconds);
    };
    expect(at(0.8, 0)).toEqual({ known: true, stream: { setDeg: 45, rate: 0.8 } });
    expect(at(0.8, 11)).toEqual({ known: false });
    expect(at(0, 0)).toEqual({ known: true, stream: { setDeg: 45, rate: 0 } });
    expect(expected(given({ stream: law as never, strongestStream: 0.8 })).stream).toBe(law);
    expect(expected(given({ stream: law as never, strongestStream: 0.8 })).foulHome).toBeUndefined();
  });

  it('other waves are as high as asked, whatever the sea', () => {
    expect(expected(given({}, { waveHeight: 0.9, conditions: { water: 'sea', sea: 'calm' } })).waveHeight).toBe(0.9);
  });
});

describe('the bad cases', () => {
  it('of a trip nobody said anything about: a fresh breeze, two knots, a quarter of a tank and twice the waves', () => {
    const [planned, slow, unslowed, ...more] = badCases(given(), calmer);
    const kinds = ['home-headwind', 'home-foul-stream', 'less-in-tank'];
    expect(planned).toMatchObject({
      wind: undefined,
      eased: undefined,
      headwindHome: 9.3,
      foulHome: 1,
      untold: { headwind: 9.3, foul: 1 },
      waveHeight: 0.32,
      fill: 0.25,
      weighs: 1,
      batteryTemperatureC: 10,
      kinds,
    });
    expect(slow).toEqual({ ...planned, homeCap: 2, kinds: ['home-slow', ...kinds] });
    expect(unslowed).toEqual({ ...planned, unslowed: true });
    expect(more).toEqual([]);
  });

  it('of a trip told in full: the wind one force fresher, and what else was told as it is', () => {
    const fresher = { fromDeg: 200, speed: oneForceMore(6) };
    const told = given(
      { wind: breeze, fresher, stream: { setDeg: 90, rate: 0.7 } },
      { conditions: { water: 'sea', sea: 'calm', batteryTemperatureC: 21 }, fill: 0.8, weighs: 0.8 },
    );
    const [planned, slow, ...more] = badCases(told, { slow: 2, hump: 3, electric: true });
    expect(planned).toMatchObject({
      wind: fresher,
      eased: breeze,
      headwindHome: undefined,
      stream: { setDeg: 90, rate: 0.7 },
      foulHome: undefined,
      waveHeight: 0,
      fill: 0.8,
      weighs: 0.8,
      batteryTemperatureC: 21,
      kinds: ['wind-fresher'],
    });
    expect(slow).toMatchObject({ homeCap: 2, kinds: ['home-slow', 'wind-fresher'] });
    // Labouring at the hump; a calm sea slows nobody.
    expect(more).toEqual([{ ...planned, homeSpeed: 3, kinds: ['home-on-hump', 'wind-fresher'] }]);
  });

  it('freshen a wind that was asked for from there, not from what was told', () => {
    const [planned] = badCases(given({ wind: breeze, fresher: { fromDeg: 200, speed: 99 } }, { windSpeed: 9 }), calmer);
    expect(planned!.wind).toEqual({ fromDeg: 200, speed: oneForceMore(9) });
    const [ahead] = badCases(given({}, { windSpeed: 9 }), calmer);
    expect(ahead).toMatchObject({ wind: undefined, headwindHome: oneForceMore(9) });
    expect(ahead!.kinds).toContain('wind-fresher');
  });

  it('raise a light breeze from ahead out of a calm, with its waves, but no higher than an unknown sea', () => {
    const seaUnder = () => expect.fail('no wind blows');
    const calm = (length: number) =>
      badCases(
        given(
          { wind: 'calm', seaUnder: seaUnder as never },
          { length, conditions: { water: 'sea', sea: { swell: 0.02 } } },
        ),
        calmer,
      )[0]!;
    // Force 2 begins where 0.836 B^1.5 says.
    expect(calm(4).headwindHome).toBeCloseTo(0.836 * 2 ** 1.5, 9);
    const open = windSea({ wind: calm(4).headwindHome!, fetch: LONGEST_FETCH }).height;
    expect(calm(40).waveHeight).toBeCloseTo(open, 9);
    expect(calm(1).waveHeight).toBeCloseTo(0.08, 9);
    expect(open).toBeGreaterThan(0.08);
  });

  it('have a stream that was asked for at least as strong as an unknown one', () => {
    expect(badCases(given({}, { streamRate: 2 }), calmer)[0]!.foulHome).toBe(2);
    expect(badCases(given({}, { streamRate: 0.5 }), calmer)[0]!.foulHome).toBe(1);
  });

  it('have a cold battery only where there is one and nobody measured it', () => {
    const electric = { ...calmer, electric: true };
    expect(badCases(given(), electric)[0]).toMatchObject({ batteryTemperatureC: 0 });
    expect(badCases(given(), electric)[0]!.kinds).toContain('cold-battery');
    const warm = badCases(given({}, { conditions: { water: 'sea', batteryTemperatureC: 15 } }), electric)[0]!;
    expect(warm.batteryTemperatureC).toBe(15);
    expect(warm.kinds).not.toContain('cold-battery');
  });
});

describe('seaTold', () => {
  it('is so with waves or a calm given, or with a wind over known waters', () => {
    const seaUnder = (() => undefined) as never;
    const told = (conditions: Given['conditions'], around: Partial<Around> = {}) =>
      seaTold(conditions, { ...NOTHING_TOLD, ...around });
    expect(told({ water: 'sea', sea: 'calm' })).toBe(true);
    expect(told({ water: 'sea', sea: { height: 0.2 } })).toBe(true);
    expect(told({ water: 'sea', sea: { swell: 0.2 } })).toBe(false);
    expect(told({ water: 'sea' }, { wind: breeze, seaUnder })).toBe(true);
    expect(told({ water: 'sea' }, { wind: breeze })).toBe(false);
    expect(told({ water: 'sea' }, { seaUnder })).toBe(false);
  });
});
