import { describe, expect, it } from 'vitest';
import type { Hazard } from '../../../src/core/route/split-legs.ts';
import { judgeZones } from '../../../src/core/trip/judge-zones.ts';
import type { Prepared } from '../../../src/core/trip/prepare.ts';

const at = { lat: 46, lon: -32 };

function judged(hazards: readonly Hazard[], { departure = '2027-07-01T10:00:00Z', landings = [] as unknown[] } = {}) {
  const prepared = { trip: { conditions: { departure } }, waters: { landings }, hazards, around: {} };
  return judgeZones(prepared as unknown as Prepared, { run: { sailed: [] } } as never);
}

function zone(kind: Hazard['kind'], name: string, leg: number, rest: Partial<Hazard> = {}): Hazard {
  return { kind, leg, at, length: 500, name, zone: { name, kind } as never, ...rest };
}

/** So many metres north. */
const north = (metres: number) => ({ geometry: { coordinates: [at.lon, at.lat + metres / 111_150] } });

describe('what lies in the way', () => {
  it('is a no-go on land and in keep-outs, marginal over shoals and off the known waters, with the place and a way out', () => {
    const found = judged([
      zone('land', 'Point', 0),
      zone('keep-out', 'Range', 1),
      zone('shoal', 'Bank', 2),
      { kind: 'outside', leg: 3, at },
    ]);
    const fixes = [{ code: 'draw-round' }];
    expect(found).toEqual([
      { code: 'crosses-land', level: 'no-go', name: 'Point', legs: [0], at, fixes },
      { code: 'crosses-keep-out', level: 'no-go', name: 'Range', legs: [1], at, fixes },
      { code: 'crosses-shoal', level: 'marginal', name: 'Bank', legs: [2], at, fixes },
      { code: 'outside-waters', level: 'marginal', legs: [3], at, fixes },
    ]);
  });

  it('is told once for all legs that cross the same thing, and apart for another', () => {
    const found = judged([zone('land', 'Point', 0), zone('land', 'Point', 2), zone('land', 'Island', 2)]);
    expect(found.map(({ name, legs }) => [name, legs])).toEqual([
      ['Point', [0, 2]],
      ['Island', [2]],
    ]);
  });

  it('is told apart for land and a keep-out of one name, and once for all that lies off the known waters', () => {
    const found = judged([
      zone('land', 'Point', 0),
      zone('keep-out', 'Point', 0),
      { kind: 'outside', leg: 1, at },
      { kind: 'outside', leg: 2, at },
    ]);
    expect(found.map(({ code, legs }) => [code, legs])).toEqual([
      ['crosses-land', [0]],
      ['crosses-keep-out', [0]],
      ['outside-waters', [1, 2]],
    ]);
  });

  it('says how high a shoal lies where nobody knows the tide', () => {
    const [bank, land] = judged([
      zone('shoal', 'Bank', 0, { zone: { name: 'Bank', kind: 'shoal', dries_m: 1.2 } }),
      zone('land', 'Point', 0, { zone: { name: 'Point', kind: 'land', dries_m: 9 } }),
    ]);
    expect(bank).toMatchObject({ code: 'crosses-shoal', measure: 'length', value: 1.2 });
    expect(land).not.toHaveProperty('value');
  });

  it('says of a shoal how deep it is when the boat comes, once, with the least of all legs over it', () => {
    const sailed = [0, 1, 2].map((leg) => ({ stretch: { leg, from: at, to: at, stop: 0 }, time: 1000 }));
    // Two millimetres less every second after departure.
    const height = (seconds: number) => ({ known: true, height: 20 - seconds / 500 });
    const over = (name: string, leg: number) =>
      zone('shoal', name, leg, { zone: { name, kind: 'shoal', dries_m: name === 'Bank' ? 12 : 12.5 } });
    const told = (hazards: readonly Hazard[]) =>
      judgeZones(
        {
          trip: { conditions: {}, policy: { depth: 0.5 } },
          waters: { landings: [] },
          hazards,
          manoeuvring: 0,
          around: { departs: 0, height },
        } as unknown as Prepared,
        { run: { sailed } } as never,
      ).map(({ code, name, legs, value }) => ({ code, name, legs, value }));
    const [first, last] = [told([over('Bank', 0)])[0]!, told([over('Bank', 2)])[0]!];
    expect(last.value!).toBeLessThan(first.value!);
    const [bank, spit, ...more] = told([
      over('Bank', 2),
      over('Spit', 1),
      over('Bank', 0),
      { ...zone('land', 'Point', 1), zone: { name: 'Point', kind: 'land', dries_m: 3 } },
    ]);
    expect(bank).toMatchObject({ name: 'Bank', legs: [2, 0], value: last.value });
    expect(spit).toMatchObject({ name: 'Spit', legs: [1] });
    expect(more.map(({ code }) => code)).toEqual(['crosses-land']);
  });

  it('is unknown without waters', () => {
    const prepared = { trip: { conditions: {} }, waters: undefined, hazards: [] } as unknown as Prepared;
    expect(judgeZones(prepared, {} as never)).toEqual([{ code: 'waters-unknown', level: 'marginal' }]);
    expect(judged([])).toEqual([]);
  });

  it('leaves out a keep-out whose season it is not', () => {
    const summer = zone('keep-out', 'Beach', 0, {
      zone: { name: 'Beach', season: '06-01/08-31' } as never,
    });
    expect(judged([summer], { departure: '2027-07-01T10:00:00Z' })).toHaveLength(1);
    expect(judged([summer], { departure: '2027-01-01T10:00:00Z' })).toEqual([]);
  });
});

describe('a shoal at a landing', () => {
  const foot = (length: number | undefined, metres: number) =>
    judged([zone('shoal', 'Strand', 0, { length })], { landings: [north(metres)] })[0]!.level;

  it('is told by any of the landings there are', () => {
    const level = (...landings: unknown[]) =>
      judged([zone('shoal', 'Bank', 0, { length: 60 })], { landings })[0]!.level;
    expect(level(north(20), north(5000))).toBe('note');
    expect(level(north(5000), north(20))).toBe('note');
    expect(level(north(5000), north(6000))).toBe('marginal');
  });

  it('is the foot of its beach where it is short and near, worth a note only', () => {
    expect(foot(149, 149)).toBe('note');
    expect(foot(150, 149)).toBe('note');
    expect(foot(151, 149)).toBe('marginal');
    expect(foot(149, 151)).toBe('marginal');
    expect(foot(undefined, 10)).toBe('marginal');
  });
});
