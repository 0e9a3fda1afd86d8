import { describe, expect, it } from 'vitest';
import { destination } from '../../../src/core/route/distance.ts';
import { depthReason, judgeDepth, shallower } from '../../../src/core/trip/judge-depth.ts';
import type { Prepared } from '../../../src/core/trip/prepare.ts';
import type { Run } from '../../../src/core/trip/sail.ts';
import type { Reason } from '../../../src/core/trip/shapes.ts';
import type { HeightAt } from '../../../src/core/water/tide-height.ts';

const DEPARTS = 1_000_000;
const quay = { lat: 46, lon: -32 };
const away = { lat: 46.1, lon: -32 };
const constant =
  (height: number): HeightAt =>
  () => ({ known: true, height });
/** Height told in seconds after departure: which instants were asked shows in what is found. */
const falling: HeightAt = (seconds) => ({ known: true, height: 10_000 - (seconds - DEPARTS) });
const rising: HeightAt = (seconds) => ({ known: true, height: seconds - DEPARTS });

interface Made {
  readonly height?: HeightAt | undefined;
  readonly dries?: number | undefined;
  readonly depth?: number | undefined;
  readonly landing?: { lat: number; lon: number };
  readonly departs?: number | undefined;
}

function prepared({ height, dries = 0, depth = 0.5, landing = quay, ...rest }: Made): Prepared {
  const properties = { name: 'Quay', dries_m: dries };
  return {
    manoeuvring: 200,
    around: { departs: 'departs' in rest ? rest.departs : DEPARTS, height },
    trip: { policy: { depth } },
    waters: { landings: [{ geometry: { coordinates: [landing.lon, landing.lat] }, properties }] },
  } as unknown as Prepared;
}

const sailed = (leg: number, time: number, rest: object = {}) => ({
  stretch: { leg, from: away, to: away, stop: 0, ...rest },
  time,
});
const run = (...pieces: object[]) => ({ sailed: pieces }) as unknown as Run;
const arriving = run(sailed(0, 900, { to: quay, stop: 600 }));
const atQuay = (made: Made, by = arriving) => judgeDepth(prepared(made), { run: by });

const shoal = (dries: number | undefined, leg = 1) =>
  ({ kind: 'shoal', name: 'Bar', leg, at: quay, zone: { name: 'Bar', dries_m: dries } }) as never;

describe('depth on a shoal', () => {
  const crossed = run(sailed(0, 1000), sailed(1, 500), sailed(1, 500, { stop: 300 }), sailed(2, 1000));

  it('is that of a later hour after a stop on the way, and not told of what is no zone', () => {
    const rising30 = (stop: number) =>
      depthReason(prepared({ height: rising }), run(sailed(0, 1000, { stop }), sailed(1, 500)), shoal(0))!.value!;
    expect(rising30(3600) - rising30(0)).toBeGreaterThan(0.5 * 3600);
    expect(rising30(3600) - rising30(0)).toBeLessThanOrEqual(3600);
    const off = { kind: 'outside', leg: 1, at: quay } as const;
    expect(depthReason(prepared({ height: constant(2) }), crossed, off)).toBeUndefined();
  });

  it('is enough with 0.3 m more than wanted, marginal with what is wanted, a no-go with less', () => {
    const found = (dries: number) => depthReason(prepared({ height: constant(2) }), crossed, shoal(dries));
    const told = { measure: 'length', limit: 0.5, name: 'Bar', legs: [1], at: quay };
    const fixes = [{ code: 'draw-round' }, { code: 'wait' }];
    expect(found(1.2)).toEqual({ code: 'shoal-covered', level: 'note', value: 0.8, ...told });
    expect(found(1.25)).toEqual({ code: 'too-shallow', level: 'marginal', value: 0.75, ...told, fixes });
    expect(found(1.5)).toEqual({ code: 'too-shallow', level: 'marginal', value: 0.5, ...told, fixes });
    expect(found(1.75)).toEqual({ code: 'too-shallow', level: 'no-go', value: 0.25, ...told, fixes });
  });

  it('wants 0.8 m where the crew asks for no other', () => {
    const usual = { ...prepared({ height: constant(2) }), trip: { policy: {} } } as unknown as Prepared;
    expect(depthReason(usual, crossed, shoal(1.5))).toMatchObject({ level: 'no-go', limit: 0.8 });
    expect(depthReason(usual, crossed, shoal(1))).toMatchObject({ level: 'marginal', limit: 0.8 });
  });

  it('is the least from a tenth early on its leg to a fifth late off it, stops at its end not counted', () => {
    // On the leg from 100 + 1000 to 100 + 2000 s after departure.
    const from = depthReason(prepared({ height: rising }), crossed, shoal(0));
    expect(from!.value).toBeCloseTo(0.9 * 1100, 9);
    const to = depthReason(prepared({ height: falling }), crossed, shoal(0));
    expect(to!.value).toBeCloseTo(10_000 - 1.2 * 2100, 9);
  });

  it('asks the tide every ten minutes, so that a low within is found', () => {
    const low: HeightAt = (seconds) => ({ known: true, height: Math.abs(seconds - (DEPARTS + 990 + 600)) });
    expect(depthReason(prepared({ height: low }), crossed, shoal(0))!.value).toBeCloseTo(0, 9);
    const asked: number[] = [];
    const counted: HeightAt = (seconds) => {
      asked.push(Math.round(seconds - DEPARTS));
      return { known: true, height: 1 };
    };
    depthReason(prepared({ height: counted }), crossed, shoal(0));
    expect(asked).toEqual([990, 1590, 2190, 2520]);
  });

  it('is not told without its height, the tide, a departure, or an end to the leg', () => {
    expect(depthReason(prepared({ height: constant(2) }), crossed, shoal(undefined))).toBeUndefined();
    expect(depthReason(prepared({ height: undefined }), crossed, shoal(1))).toBeUndefined();
    expect(depthReason(prepared({ height: constant(2), departs: undefined }), crossed, shoal(1))).toBeUndefined();
    const never = run(sailed(1, Infinity));
    expect(depthReason(prepared({ height: constant(2) }), never, shoal(1))).toBeUndefined();
    const short: HeightAt = (seconds) =>
      seconds < DEPARTS + 2000 ? { known: true, height: 2 } : { known: false, why: 'after-last' };
    expect(depthReason(prepared({ height: short }), crossed, shoal(1))).toBeUndefined();
  });
});

describe('depth at a landing', () => {
  it('counts from a tenth early to a fifth late, as long as the boat lies there', () => {
    // There from 100 + 900 s, for 600 s.
    expect(atQuay({ height: rising, dries: 1000 })).toMatchObject([{ value: 0.9 * 1000 - 1000, legs: [0] }]);
    expect(atQuay({ height: falling, dries: 9000 })[0]!.value).toBeCloseTo(1000 - 1.2 * 1600, 9);
  });

  it('counts at the start as long as casting off takes', () => {
    const leaving = run(sailed(0, 900, { from: quay }));
    expect(atQuay({ height: rising }, leaving)).toMatchObject([{ value: 0, level: 'no-go', legs: [0] }]);
    expect(atQuay({ height: falling, dries: 10_000 }, leaving)[0]!.value).toBeCloseTo(-1.2 * 100, 9);
  });

  it('does not matter to a waypoint that is only passed, but to the end of the trip', () => {
    const dry = { height: constant(0), dries: 1 };
    expect(atQuay(dry, run(sailed(0, 900, { to: quay }), sailed(1, 900)))).toEqual([]);
    expect(atQuay(dry, run(sailed(0, 900), sailed(1, 900, { to: quay })))).toMatchObject([{ legs: [1], value: -1 }]);
    const called = run(sailed(0, 900, { to: quay, stop: 1 }), sailed(1, 900));
    expect(atQuay(dry, called)).toMatchObject([{ legs: [0] }]);
    // The middle of a cut leg is no waypoint, whatever it says.
    expect(atQuay(dry, run(sailed(0, 900, { to: quay, stop: 60 }), sailed(0, 900)))).toEqual([]);
    expect(atQuay(dry, run())).toEqual([]);
  });

  it('counts the stops on the way', () => {
    const late = run(sailed(0, 900, { stop: 500 }), sailed(1, 900, { to: quay }));
    expect(atQuay({ height: rising, dries: 5000 }, late)[0]!.value).toBeCloseTo(
      0.9 * (100 + 900 + 500 + 900) - 5000,
      9,
    );
  });

  it('is that of a landing within 150 m, once, with the legs of all calls there and its least depth', () => {
    const dry = { height: constant(0), dries: 1 };
    expect(atQuay({ ...dry, landing: destination(quay, 90, 149) })).toHaveLength(1);
    expect(atQuay({ ...dry, landing: destination(quay, 90, 151) })).toEqual([]);
    const twice = run(sailed(0, 900, { to: quay, stop: 60 }), sailed(1, 900, { to: quay }));
    const [only, ...more] = atQuay({ height: falling, dries: 9000 }, twice);
    expect(more).toEqual([]);
    expect(only).toMatchObject({ name: 'Quay', legs: [0, 1] });
    expect(only!.value).toBeCloseTo(1000 - 1.2 * 1960, 9);
  });

  it('is not told where there is water enough, or where the height of landing or tide is not', () => {
    expect(atQuay({ height: constant(3), dries: 1 })).toEqual([]);
    expect(atQuay({ height: undefined, dries: 1 })).toEqual([]);
    const untold = prepared({ height: constant(0) });
    const landings = [{ geometry: { coordinates: [quay.lon, quay.lat] }, properties: { name: 'Quay' } }];
    expect(judgeDepth({ ...untold, waters: { landings } } as never, { run: arriving })).toEqual([]);
    expect(judgeDepth({ ...untold, waters: undefined }, { run: arriving })).toEqual([]);
  });
});

describe('of two depths for one place', () => {
  it('the lesser is told, with the legs of both, each once', () => {
    const reason = (value: number, ...legs: number[]): Reason => ({ code: 'too-shallow', level: 'no-go', value, legs });
    expect(shallower(reason(1, 0), reason(0.5, 3))).toEqual(reason(0.5, 0, 3));
    expect(shallower(reason(0.5, 0), reason(1, 0, 3))).toEqual(reason(0.5, 0, 3));
  });
});
