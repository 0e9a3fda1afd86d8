import { describe, expect, it } from 'vitest';
import type { Aboard } from '../../../src/core/load/shapes.ts';
import { floatVerdict, heaviestFloating, tubeBuoyancy } from '../../../src/core/trip/floating.ts';
import { judgePlaces } from '../../../src/core/trip/judge-places.ts';
import type { Prepared } from '../../../src/core/trip/prepare.ts';
import { aboard, craft } from '../load/made-craft.ts';

const skipper = aboard('skipper', 80, { kind: 'adult', helm: true, station: 'helm' });
const afloat = { state: 'afloat', freeboard: 0.3, lowest: { part: 'stern' } };

interface Made {
  readonly items?: readonly Aboard[];
  readonly allUpMass?: number;
  readonly rest?: object;
  readonly oneSide?: object;
  readonly froudeVolume?: number;
  readonly tube?: object;
}

function judged({ items = [skipper], allUpMass = 300, rest = afloat, oneSide = afloat, froudeVolume = 1, tube }: Made) {
  const made = craft();
  const boat = { ...made, hull: { ...made.hull, tube } };
  const prepared = { trip: { craft: boat, load: { items } }, density: 1000 } as unknown as Prepared;
  const run = { sailed: [{ steady: { hull: { froudeVolume } } }] };
  const persons = items.filter(({ kind }) => kind !== 'gear').length;
  return judgePlaces(prepared, run as never, { persons, allUpMass } as never, { rest, oneSide } as never);
}

const codes = (made: Made) => judged(made).map(({ code, level }) => `${code} ${level}`);

describe('who is aboard', () => {
  it('is in order with one adult at the helm', () => {
    expect(judged({})).toEqual([]);
  });

  it('has to be somebody, with one at the helm and one grown up', () => {
    expect(codes({ items: [] })).toEqual(['nobody-aboard marginal']);
    expect(codes({ items: [{ ...skipper, helm: false }] })).toEqual(['no-helm marginal']);
    expect(codes({ items: [{ ...skipper, kind: 'child' }] })).toEqual(['no-adult no-go']);
  });

  it('weighs 200 kg at most, gear apart; more is likely a slip of the keys', () => {
    expect(codes({ items: [{ ...skipper, mass: 200 }] })).toEqual([]);
    expect(judged({ items: [{ ...skipper, mass: 201 }] })).toMatchObject([
      { code: 'odd-weight', level: 'marginal', measure: 'mass', value: 201, limit: 200 },
    ]);
    expect(codes({ items: [skipper, aboard('anvil', 300, { kind: 'gear', at: { x: 1, y: 0 } })] })).toEqual([]);
  });

  it('has a seat each; bow tube and floor are none', () => {
    const more = (count: number) => Array.from({ length: count }, (_, i) => aboard(`p${i}`, 70, { station: 'aft' }));
    expect(codes({ items: [skipper, ...more(2)] })).toEqual([]);
    expect(judged({ items: [skipper, ...more(3)] })).toMatchObject([
      {
        code: 'too-few-seats',
        level: 'marginal',
        value: 4,
        limit: 3,
        fixes: [{ code: 'leave-behind', measure: 'count', value: 1 }],
      },
    ]);
  });
});

describe('where they are', () => {
  /** The hull is 3.6 m long and 1.7 m wide. */
  const bag = (x: number, y: number) => codes({ items: [skipper, aboard('bag', 5, { kind: 'gear', at: { x, y } })] });

  it('is within the boat, give or take a slip of measuring', () => {
    for (const [x, y] of [
      [-0.59, 0],
      [3.89, 0],
      [1, 1.14],
      [1, -1.14],
    ] as const)
      expect(bag(x, y)).toEqual([]);
    for (const [x, y] of [
      [-0.61, 0],
      [3.91, 0],
      [1, 1.16],
      [1, -1.16],
    ] as const)
      expect(bag(x, y)).toEqual(['outside-boat no-go']);
  });

  it('is near enough to the engine or the helm for who steers', () => {
    expect(codes({ items: [{ ...skipper, station: 'bow' }] })).toEqual(['helm-far marginal']);
    expect(codes({ items: [{ ...skipper, station: undefined, at: { x: 0.8, y: 0.2 } }] })).toEqual([]);
  });

  it('is not the bow tube: marginal when slow, a no-go when planing', () => {
    const items = [skipper, aboard('child', 30, { kind: 'child', station: 'tube' })];
    const onTube = (froudeVolume: number) => codes({ items, froudeVolume }).filter((one) => one.startsWith('on-bow'));
    expect(onTube(1)).toEqual(['on-bow-tube marginal']);
    expect(onTube(4)).toEqual(['on-bow-tube no-go']);
    const gear = [skipper, aboard('anchor', 5, { kind: 'gear', station: 'tube' })];
    expect(codes({ items: gear }).filter((one) => one.startsWith('on-bow'))).toEqual([]);
  });
});

describe('how the boat floats', () => {
  it('is judged by its edge: over, close to it, and with everybody on one side', () => {
    const edge = (rest: object, oneSide: object = afloat) => codes({ rest, oneSide });
    expect(edge({ ...afloat, freeboard: 0.1 })).toEqual([]);
    expect(edge({ ...afloat, freeboard: 0.099 })).toEqual(['low-freeboard marginal']);
    expect(edge({ ...afloat, freeboard: 0 })).toEqual(['low-freeboard marginal']);
    expect(edge({ ...afloat, freeboard: -0.001 })).toEqual(['water-comes-in no-go']);
    expect(edge({ state: 'swamped' })).toEqual(['water-comes-in no-go']);
    expect(edge(afloat, { ...afloat, freeboard: -0.001 })).toEqual(['one-side-under marginal']);
    expect(edge(afloat, { ...afloat, freeboard: 0 })).toEqual([]);
    expect(edge(afloat, { state: 'capsizes' })).toEqual(['one-side-under marginal']);
  });

  it('is told with how low, where, and against what', () => {
    expect(judged({ rest: { ...afloat, freeboard: 0.05 } })).toMatchObject([
      { code: 'low-freeboard', measure: 'length', value: 0.05, limit: 0.1, name: 'stern' },
    ]);
    expect(judged({ rest: { ...afloat, freeboard: -0.05 } })).toMatchObject([
      { limit: 0, value: -0.05, name: 'stern' },
    ]);
  });

  /** Both tubes together carry 1000 kg. */
  const tube = { diameter: 0.4, spacing: 1.2, length: 1 / (0.16 * (Math.PI / 2)) };

  it('has half of the tubes under water at most, and sinks from eight tenths', () => {
    expect(codes({ tube, allUpMass: 500 })).toEqual([]);
    expect(judged({ tube, allUpMass: 600 })).toMatchObject([
      {
        code: 'low-in-water',
        level: 'marginal',
        measure: 'share',
        value: expect.closeTo(0.6, 9),
        limit: 0.5,
        fixes: [{ code: 'leave-behind', measure: 'mass', value: expect.closeTo(100, 6) }],
      },
    ]);
    expect(judged({ tube, allUpMass: 801 })).toMatchObject([{ level: 'no-go', limit: 0.8 }]);
  });

  it('is beyond the method below 100 kg and above 900 kg', () => {
    expect([100, 900].flatMap((allUpMass) => codes({ allUpMass }))).toEqual([]);
    expect(judged({ allUpMass: 99 })).toMatchObject([
      { code: 'outside-method', level: 'marginal', value: 99, limit: 100 },
    ]);
    expect(judged({ allUpMass: 901 })).toMatchObject([
      { code: 'outside-method', level: 'marginal', value: 901, limit: 900 },
    ]);
  });

  it('allows as much mass as the tubes and the method do', () => {
    const made = craft();
    const water = (length: number) => ({
      trip: { craft: { ...made, hull: { ...made.hull, tube: { ...tube, length } } } },
      density: 1000,
    });
    const small = water(tube.length);
    expect(tubeBuoyancy(small)).toBeCloseTo(1000, 6);
    expect(heaviestFloating(small, 'go')).toBeCloseTo(500, 6);
    expect(heaviestFloating(small, 'marginal')).toBeCloseTo(800, 6);
    expect([499, 501, 799, 801].map((mass) => floatVerdict(small, mass))).toEqual([
      'go',
      'marginal',
      'marginal',
      'no-go',
    ]);
    const large = water(2 * tube.length);
    expect(heaviestFloating(large, 'go')).toBe(900);
    const bare = { trip: { craft: made }, density: 1000 };
    expect(heaviestFloating(bare, 'go')).toBe(900);
    expect([900, 901, 5000].map((mass) => floatVerdict(bare, mass))).toEqual(['go', 'marginal', 'marginal']);
  });
});
