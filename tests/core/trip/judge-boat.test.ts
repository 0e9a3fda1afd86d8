import { describe, expect, it } from 'vitest';
import type { Plate } from '../../../src/core/craft/shapes.ts';
import { marginOf } from '../../../src/core/curve/hump.ts';
import { steady } from '../../../src/core/curve/steady.ts';
import { heldProbability } from '../../../src/core/trip/held.ts';
import { type Climbed, judgeBoat } from '../../../src/core/trip/judge-boat.ts';
import type { Prepared } from '../../../src/core/trip/prepare.ts';
import type { Run, Sailed } from '../../../src/core/trip/sail.ts';
import type { Reason, ReasonCode, Trip } from '../../../src/core/trip/shapes.ts';
import { standingOf } from '../../../src/core/trip/standing.ts';
import { haven, soundTrip } from '../../trips.ts';

function opened(trip: Trip) {
  const found = standingOf(trip, haven());
  if (!found.ok) throw new Error(found.problems[0]!.message);
  return found.value;
}

const { prepared, balance, fuel } = opened(soundTrip());
const { run } = fuel;
const boat = prepared.boatAt(run.scenario.batteryTemperatureC);
const first = run.sailed[0]!;
const EASY: Climbed = { asked: run.sailed, speed: 5, margin: 2 };

interface Made {
  readonly balance?: object;
  readonly climb?: Partial<Climbed>;
  readonly hull?: object;
  readonly craft?: object;
  readonly unknownSeats?: readonly string[];
  readonly run?: Run;
}

function judged(made: Made): readonly Reason[] {
  const { trip } = prepared;
  const craft = { ...trip.craft, ...made.craft, hull: { ...trip.craft.hull, ...made.hull } };
  const now = { ...prepared, trip: { ...trip, craft }, unknownSeats: made.unknownSeats ?? [] } as Prepared;
  return judgeBoat(now, made.run ?? run, { ...balance, ...made.balance }, { ...EASY, ...made.climb });
}
const of = (code: ReasonCode, made: Made) => judged(made).filter((reason) => reason.code === code);

describe('the balance of a boat', () => {
  const { beam } = prepared.trip.craft.hull;
  const level = (share: number) => of('off-balance', { balance: { lateral: share * beam } })[0]?.level;

  it('across is noted past a twentieth of the beam, marginal past a tenth, a no-go past a fifth, to either side', () => {
    expect([0, 0.049, 0.051, 0.099, 0.101, 0.199, 0.201].map(level)).toEqual([
      undefined,
      undefined,
      'note',
      'note',
      'marginal',
      'marginal',
      'no-go',
    ]);
    expect([-0.049, -0.051, -0.101, -0.201].map(level)).toEqual([undefined, 'note', 'marginal', 'no-go']);
  });

  it('across is mended by moving it back the other way', () => {
    const lateral = -0.15 * beam;
    expect(of('off-balance', { balance: { lateral } })).toEqual([
      {
        code: 'off-balance',
        level: 'marginal',
        measure: 'length',
        value: lateral,
        limit: 0.05 * beam,
        fixes: [{ code: 'move-across', measure: 'length', value: -lateral }],
      },
    ]);
  });

  it('along lies from a fifth to a half of the length, both included', () => {
    const along = (lcgShare: number) => of('overtrimmed', { balance: { lcgShare } });
    expect([0.2, 0.36, 0.5].flatMap(along)).toEqual([]);
    const told = { code: 'overtrimmed', level: 'marginal', measure: 'share' };
    expect(along(0.19)).toEqual([
      { ...told, value: 0.19, limit: 0.2, fixes: [{ code: 'move-forward', measure: 'share', value: 0.36 - 0.19 }] },
    ]);
    expect(along(0.51)).toEqual([
      { ...told, value: 0.51, limit: 0.5, fixes: [{ code: 'move-forward', measure: 'share', value: 0.36 - 0.51 }] },
    ]);
  });

  it('is in doubt while somebody has no seat', () => {
    expect(of('seat-unknown', {})).toEqual([]);
    expect(of('seat-unknown', { unknownSeats: ['mate', 'guest'] })).toEqual([
      { code: 'seat-unknown', level: 'marginal', measure: 'count', value: 2, fixes: [{ code: 'give-value' }] },
    ]);
  });
});

describe('the plate', () => {
  const full = prepared.trip.craft.hull.plate as Exclude<Plate, 'none'>;

  it('read in full says nothing of a boat within it', () => {
    expect(judged({}).filter(({ level }) => level !== 'note')).toEqual([]);
  });

  it('in doubt is marginal: one that is missing, and one that lacks load, persons or an EU category', () => {
    expect(of('no-plate', { hull: { plate: 'none' } })).toEqual([{ code: 'no-plate', level: 'marginal' }]);
    expect(of('plate-unknown', { hull: { plate: 'none' } })).toEqual([]);
    const unread = [{ code: 'plate-unknown', level: 'marginal', fixes: [{ code: 'read-plate' }] }];
    expect(of('plate-unknown', { hull: { plate: undefined } })).toEqual(unread);
    for (const lacks of ['maxLoad', 'persons', 'category']) {
      expect(of('plate-unknown', { hull: { plate: { ...full, [lacks]: undefined } } })).toEqual(unread);
    }
    const american = { ...full, scheme: 'us', category: undefined };
    expect(of('plate-unknown', { hull: { plate: american } })).toEqual([]);
  });

  it('that is passed is a no-go, mended by leaving behind just what is over', () => {
    const { counted, persons } = balance;
    const plate = { ...full, maxLoad: counted - 12, persons: persons - 1 };
    expect(of('over-plate-load', { hull: { plate } })).toEqual([
      {
        code: 'over-plate-load',
        level: 'no-go',
        measure: 'mass',
        value: counted,
        limit: counted - 12,
        fixes: [{ code: 'leave-behind', measure: 'mass', value: expect.closeTo(12, 9) }],
      },
    ]);
    expect(of('over-plate-persons', { hull: { plate } })).toMatchObject([
      { level: 'no-go', measure: 'count', fixes: [{ code: 'leave-behind', measure: 'count', value: 1 }] },
    ]);
    expect(of('over-plate-load', { hull: { plate: { ...full, maxLoad: counted } } })).toEqual([]);
    const weak = { ...full, maxPower: 100, maxEngineMass: 1 };
    for (const code of ['over-plate-power', 'over-plate-engine-mass'] as const) {
      expect(of(code, { hull: { plate: weak } })).toMatchObject([{ fixes: [{ code: 'smaller-engine' }] }]);
    }
  });
});

describe('the hump', () => {
  const hump = (margin: number) => judged({ climb: { margin } }).filter(({ measure }) => measure === 'share');

  it('is crossed with a twentieth of power to spare, thin with less, not crossed with too little', () => {
    expect(hump(1.05)).toEqual([]);
    const told = {
      measure: 'share',
      limit: 1.05,
      fixes: [
        { code: 'leave-behind' },
        { code: 'move-forward' },
        { code: 'ease-speed', measure: 'speed', value: expect.closeTo(3, 12) },
      ],
    };
    // Eased to six tenths of the hump's speed of 5 m/s.
    expect(hump(1.04)).toEqual([{ code: 'hump-thin', level: 'marginal', value: 1.04, ...told }]);
    expect(hump(1)).toEqual([{ code: 'hump-thin', level: 'marginal', value: 1, ...told }]);
    expect(hump(0.99)).toEqual([{ code: 'hump-not-crossed', level: 'no-go', value: 0.99, ...told }]);
  });
});

describe('a speed', () => {
  const at = (speed: number, leg = 0): Sailed => ({
    ...first,
    stretch: { ...first.stretch, leg },
    speed,
    steady: steady(boat, first.afloat, speed, first.weather),
  });
  const margin = (speed: number) => marginOf(boat, first.afloat, at(speed).steady.drive);
  let held = first.speed;
  while (margin(held + 0.01) >= 1) held += 0.01;

  it('that this boat just holds is held by about half of such boats: in doubt, and mended by a tenth less', () => {
    expect(heldProbability(boat, at(held))).toBeLessThan(0.75);
    expect(of('speed-uncertain', { climb: { asked: [at(held, 3)] } })).toEqual([
      {
        code: 'speed-uncertain',
        level: 'marginal',
        measure: 'speed',
        value: held,
        legs: [3],
        fixes: [{ code: 'ease-speed', measure: 'speed', value: 0.9 * held }],
      },
    ]);
    expect(of('speed-not-held', { climb: { asked: [at(held)] } })).toEqual([]);
  });

  it('that it does not hold is a no-go, and told beside the highest it does hold, to a tenth', () => {
    const asked = [at(first.speed, 0), at(held + 0.5, 4), at(held + 1, 2)];
    const [reason, ...more] = of('speed-not-held', { climb: { asked } });
    expect(more).toEqual([]);
    expect(reason).toMatchObject({ level: 'no-go', measure: 'speed', value: held + 1, legs: [4, 2] });
    expect(margin(reason!.limit!)).toBeGreaterThanOrEqual(1);
    expect(margin(reason!.limit! + 0.1)).toBeLessThan(1);
    expect(reason!.fixes).toEqual([{ code: 'ease-speed', measure: 'speed', value: reason!.limit }]);
    expect(of('speed-uncertain', { climb: { asked } })).toEqual([]);
  });

  it('that makes no way against the stream is a no-go on all the legs where it is so', () => {
    const stuck = { ...first, possible: false, speed: 2.5 };
    const sailed = [first, { ...stuck, stretch: { ...first.stretch, leg: 1 } }, { ...stuck, speed: 3 }];
    expect(of('stuck-in-stream', { run: { ...run, sailed } })).toEqual([
      {
        code: 'stuck-in-stream',
        level: 'no-go',
        legs: [1, 0],
        measure: 'speed',
        value: 2.5,
        at: first.stretch.from,
      },
    ]);
    expect(of('stuck-in-stream', {})).toEqual([]);
  });
});

describe('what was tried with a boat', () => {
  const tried = (mass: readonly number[], speed: readonly number[]) =>
    of('beyond-trials', { craft: { calibration: { tried: { mass, speed } } } });
  const masses = run.sailed.map(({ afloat }) => afloat.mass);
  const [heavy, light] = [Math.max(...masses), Math.min(...masses)];
  const wide = [0.1, 1000];

  it('reaches a fifth beyond the heaviest and the lightest, the fastest and the slowest', () => {
    expect(tried([heavy / 1.19, heavy], wide)).toEqual([]);
    expect(tried([heavy / 1.25, heavy / 1.21], wide)).toMatchObject([
      { level: 'note', measure: 'mass', value: heavy, limit: heavy / 1.21 },
    ]);
    expect(tried([light * 1.19, 2000], wide)).toEqual([]);
    expect(tried([heavy * 1.21, 2000], wide)).toMatchObject([{ measure: 'mass', limit: heavy * 1.21 }]);
    expect(tried([1, 2000], [0.1, first.speed / 1.19])).toEqual([]);
    expect(tried([1, 2000], [0.1, first.speed / 1.21])).toMatchObject([
      { measure: 'speed', value: first.speed, limit: first.speed / 1.21, legs: [0, 1] },
    ]);
    expect(tried([1, 2000], [first.speed * 1.21, 1000])).toMatchObject([
      { measure: 'speed', value: first.speed, limit: first.speed * 1.21 },
    ]);
  });

  it('says nothing of an unmeasured boat', () => {
    expect(of('beyond-trials', {})).toEqual([]);
  });
});

describe('a displacement hull', () => {
  const slow = (froudeLength: number): Run => ({
    ...run,
    sailed: run.sailed.map((s) => ({
      ...s,
      steady: { ...s.steady, hull: { ...s.steady.hull, froudeLength } },
    })),
  });
  const told = (froudeLength: number, form = 'displacement') =>
    of('outside-method', { hull: { form }, run: slow(froudeLength) }).filter(({ level }) => level === 'marginal');

  it('is not driven beyond a Froude number of 0.35, where the method says too little', () => {
    expect(told(0.35)).toEqual([]);
    const limit = 0.35 * Math.sqrt(9.80665 * prepared.trip.craft.hull.wettedLength);
    const [reason] = told(0.351);
    expect(reason).toMatchObject({ measure: 'speed', value: first.speed, legs: [0, 1] });
    expect(reason!.limit).toBeCloseTo(limit, 6);
    expect(reason!.fixes).toEqual([{ code: 'ease-speed', measure: 'speed', value: reason!.limit }]);
    expect(told(0.351, 'rib')).toEqual([]);
  });
});

describe('what the method was made for', () => {
  /** The trip with these figures of its hull on each of its stretches. */
  const sailing = (...changes: readonly object[]): Run => ({
    ...run,
    sailed: run.sailed.map((s, i) => ({
      ...s,
      steady: { ...s.steady, hull: { ...s.steady.hull, ...(changes[i] ?? changes[0]) } },
    })),
  });
  const inside = { planingShare: 0.9, shortFormTrimDeg: 5, wettedLengthRatio: 2, speedCoefficient: 2 };
  const notes = (change: object) =>
    of('outside-method', { run: sailing({ ...inside, ...change }) }).filter(({ level }) => level === 'note');

  it('is planing at a trim of 2 to 15 degrees, wetted up to four beams: beyond it is noted with the legs', () => {
    expect(notes({})).toEqual([]);
    for (const change of [{ shortFormTrimDeg: 1.9 }, { shortFormTrimDeg: 15.1 }, { wettedLengthRatio: 4.1 }]) {
      expect(notes(change)).toEqual([{ code: 'outside-method', level: 'note', legs: [0, 1] }]);
      // Not while it does not plane.
      expect(notes({ ...change, planingShare: 0.4 })).toEqual([]);
    }
    const home = of('outside-method', { run: sailing(inside, { ...inside, shortFormTrimDeg: 16 }) });
    expect(home).toEqual([{ code: 'outside-method', level: 'note', legs: [1] }]);
  });

  it('warns of porpoising on the legs that plane clear of the hump with more trim than the limit', () => {
    const level = { ...inside, froudeVolume: 3, liftCoefficient: 0.1, shortFormTrimDeg: 2 };
    const high = { ...level, shortFormTrimDeg: 14 };
    expect(of('porpoising', { run: sailing(level) })).toEqual([]);
    const told = { code: 'porpoising', level: 'note', fixes: [{ code: 'move-forward' }] };
    expect(of('porpoising', { run: sailing(high) })).toEqual([{ ...told, legs: [0, 1] }]);
    expect(of('porpoising', { run: sailing(level, high) })).toEqual([{ ...told, legs: [1] }]);
    expect(of('porpoising', { run: sailing({ ...high, froudeVolume: 2.5 }) })).toEqual([]);
  });

  it('does not tell once more of a centre of gravity that lies too far aft or forward, which the balance tells', () => {
    const far = run.sailed.map((s) => ({
      ...s,
      afloat: { ...s.afloat, lcg: 0.1 },
      steady: { ...s.steady, hull: { ...s.steady.hull, ...inside } },
    }));
    expect(of('outside-method', { run: { ...run, sailed: far } })).toEqual([]);
  });
});
