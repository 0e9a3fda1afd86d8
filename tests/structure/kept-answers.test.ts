import { existsSync, globSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { differences } from '../core/kept/differences.ts';
import { digest } from '../core/kept/digest.ts';
import { type Plain, plain } from '../core/kept/plain.ts';

const legs = [4, 3, 2].map((time, leg) => ({ leg, time, at: { lat: 45 + leg, lon: -32 }, part: 'out' }));
const many = { need: 3.25, legs, flows: [1, 2, 3, 4, 5, 6, 7, 8], parts: ['out', 'out', 'out', 'out', 'out', 'home'] };

/** A copy with another value at one place. */
function changed(change: (copy: Record<string, unknown> & typeof many) => void): unknown {
  const copy = structuredClone(many) as Record<string, unknown> & typeof many;
  change(copy);
  return copy;
}

function moved(now: unknown): readonly string[] {
  return differences(plain(many), plain(now));
}

describe('a kept answer', () => {
  it('keeps figures to nine digits, objects in a row by their fields, and long rows by two sums', () => {
    expect(plain(many)).toEqual({
      need: 3.25,
      legs: {
        '#': 3,
        leg: [0, 1, 2],
        time: [4, 3, 2],
        at: { '#': 3, lat: [45, 46, 47], lon: { '#': 3, all: -32 } },
        part: { '#': 3, all: 'out' },
      },
      flows: { '#': 8, ends: [1, 8], sums: [36, expect.closeTo(54.588, 3)] },
      parts: ['5 x out', 'home'],
    });
    expect(
      plain({ left: -Infinity, nobody: undefined, nothing: -1e-15, third: 1 / 3, spot: new Float64Array([1]) }),
    ).toEqual({
      left: '-Infinity',
      nothing: 0,
      third: 0.333333333,
      spot: [1],
    });
  });

  it('cannot be a figure that is no number, nor a function', () => {
    expect(() => plain({ legs: [{ time: Number.NaN }] })).toThrow('.legs[0].time is not a number');
    expect(() => plain({ legs: [1, 2, 3].map((time) => ({ time: time / 0 - Infinity })) })).toThrow('is not a number');
    expect(() => plain({ sail: () => 1 })).toThrow('.sail: a function cannot be kept');
  });

  it('says nothing of what rounding does', () => {
    expect(moved(changed((copy) => (copy.need *= 1 + 1e-9)))).toEqual([]);
  });

  it.each<readonly [string, (copy: Record<string, unknown> & typeof many) => void, RegExp]>([
    ['a figure', (copy) => (copy.need = 3.2500013), /^need: kept 3.25, now 3.2500013$/],
    ['a figure within a row', (copy) => (copy.legs[1]!.time = 3.00001), /^legs.time\[1\]: kept 3, now 3.00001$/],
    ['one figure of a long row', (copy) => (copy.flows[4] = 5.0001), /^flows.sums\[0\]/],
    ['two that change places', (copy) => copy.flows.splice(3, 2, 5, 4), /^flows.sums\[1\]/],
    ['a word', (copy) => (copy.parts[5] = 'out'), /^parts/],
    ['a field more', (copy) => (copy.more = true), /^more: not kept, now true$/],
    ['a field less', (copy) => Reflect.deleteProperty(copy, 'need'), /^need: kept 3.25, now missing$/],
    ['nothing in place of a figure', (copy) => (copy.need = null as unknown as number), /^need: kept 3.25, now null$/],
    ['a leg more', (copy) => copy.legs.push(copy.legs[0]!), /^legs.#: kept 3, now 4$/],
  ])('tells of %s', (_, change, told) => {
    expect(moved(changed(change))[0]).toMatch(told);
  });

  it('tells of every change in sums alone as well', () => {
    const kept = digest({ plan: many });
    for (const change of [
      (copy: typeof many) => (copy.need *= 1.00001),
      (copy: typeof many) => (copy.legs[1]!.part = 'home'),
      (copy: typeof many) => (copy.flows[2] = 3.001),
    ]) {
      expect(differences(kept, digest({ plan: changed(change) }))).not.toEqual([]);
    }
  });

  it('is told of with the first few differences', () => {
    const row = (by: number) => Object.fromEntries(Array.from({ length: 50 }, (_, i) => [`f${i}`, i + by]));
    expect(differences(row(0) as Plain, row(1) as Plain)).toHaveLength(8);
  });
});

describe('the kept answers', () => {
  it('belong to a test each, and each such test has them', () => {
    const names = (ending: string) =>
      globSync(`tests/core/kept/*${ending}`)
        .map((file) => file.slice(0, -ending.length))
        .sort();
    expect(names('.json')).toEqual(names('.test.ts'));
    expect(names('.json').every((name) => existsSync(`${name}.json`))).toBe(true);
  });
});
