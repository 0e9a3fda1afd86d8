import { readFileSync } from 'node:fs';
import { stripTypeScriptTypes } from 'node:module';
import { runInThisContext } from 'node:vm';
import { describe, expect, it } from 'vitest';
import { accepted, namesOf, reasonOf, same } from '../../scripts/mutation/accepted.ts';
import { within } from '../../scripts/mutation/attempts.ts';
import { loadedBy } from '../../scripts/mutation/imports.ts';
import { marked, markOf } from '../../scripts/mutation/marks.ts';
import { mutantsOf, mutated } from '../../scripts/mutation/mutators.ts';
import { testsOf } from '../../scripts/mutation/reach.ts';
import { score, scoreStated, wilson } from '../../scripts/mutation/report.ts';
import { folderOf, mutantsOfCore, sampleOf } from '../../scripts/mutation/sample.ts';

const FLOAT = `import { min } from './min.ts';
export interface Boat { readonly mass: 3 }
const DENSITY = 1025;
export function draught(mass: number, area: number, deepest = 2): number {
  if (area <= 0 && mass > 0) {
    throw new Error(\`no area for \${mass * 2} kg\`);
  }
  const sunk = mass / (DENSITY * area);
  return Math.min(-sunk, area > 1 ? sunk : deepest ?? 1);
}
`;

function changes(text: string): readonly string[] {
  return mutantsOf('float.ts', text).map((mutant) => {
    const before = text.slice(mutant.start, mutant.end);
    return `${mutant.kind}: ${before} => ${mutant.replacement}`;
  });
}

describe('the faults', () => {
  it('are signs, bounds, conditions, numbers, blocks and calls; types, imports and texts stay', () => {
    expect(changes(FLOAT)).toEqual([
      'number doubled: 1025 => 2050',
      'number doubled: 2 => 4',
      expect.stringMatching(/^empty block: \{/),
      'if true: area <= 0 && mass > 0 => true',
      'if false: area <= 0 && mass > 0 => false',
      '&& to ||: area <= 0 && mass > 0 => ((area <= 0) || (mass > 0))',
      '<= to <: <= => <',
      '<= to >: <= => >',
      '0 to 1: 0 => 1',
      '> to >=: > => >=',
      '> to <=: > => <=',
      '0 to 1: 0 => 1',
      expect.stringMatching(/^empty block: \{/),
      '/ to *: / => *',
      '* to /: * => /',
      'min to max: min => max',
      'no minus: -sunk => (sunk)',
      'choice true: area > 1 => true',
      'choice false: area > 1 => false',
      '> to >=: > => >=',
      '> to <=: > => <=',
      '1 to 0: 1 => 0',
      '?? to &&: deepest ?? 1 => ((deepest) && (1))',
      '1 to 0: 1 => 0',
    ]);
  });

  it.each([
    [
      'seats.filter(free).sort(aft)',
      ['no filter: seats.filter(free) => (seats)', 'no sort: seats.filter(free).sort(aft) => (seats.filter(free))'],
    ],
    ['seats.every(dry)', ['every to some: every => some']],
    ['Math.abs(heel)', ['no abs: Math.abs(heel) => (heel)']],
    ['tank?.level', ['?. to .: ?. => .']],
    ["'too ' + low", []],
    ['full ** 2', ['** to *: full ** 2 => ((full) * (2))', 'number doubled: 2 => 4']],
  ])('are these in %s', (text, wanted) => {
    expect(changes(`f(${text})`).filter((one) => !one.startsWith('no statement'))).toEqual(
      expect.arrayContaining(wanted),
    );
    expect(changes(`f(${text})`)).toHaveLength(wanted.length + 1);
  });

  it('leave steps out: statements, returns without a value, and going on with the next', () => {
    const text = 'function bail(boats) { for (const one of boats) { if (one.dry) continue; one.pump(); } }';
    expect(changes(text)).toEqual(
      expect.arrayContaining(['no continue: continue; => ;', 'no statement: one.pump(); => ;']),
    );
  });

  it('stand where they say, each in one place, and the file can still be read by the compiler', () => {
    for (const mutant of mutantsOf('float.ts', FLOAT)) {
      const text = mutated(FLOAT, mutant);
      expect(() => stripTypeScriptTypes(text)).not.toThrow();
      expect(text).not.toBe(FLOAT);
      expect(text.slice(mutant.start, mutant.start + mutant.replacement.length)).toBe(mutant.replacement);
    }
  });
});

describe('the marks', () => {
  it('tell which function and branch ran, and leave the answer as it was', () => {
    const text = `const f = (heel, limit = 1 + 1) => heel > limit ? 'over' : 'upright';
function g(n) { if (n > 0) return 'up'; else { n++; } for (const one of [1]) n += one; return n; }
[f(1), g(0)];`;
    const { text: withMarks, stretches } = marked('f.ts', text, 7);
    const place = globalThis as { homelegMarks?: number[] };
    const kept = place.homelegMarks;
    place.homelegMarks = [];
    const answer = runInThisContext(withMarks);
    const marks = Object.keys(place.homelegMarks).map(Number);
    place.homelegMarks = kept!;
    expect(answer).toEqual(['upright', 2]);
    const ran = (part: string) => {
      const start = text.indexOf(part);
      const mark = markOf(stretches, start, start + part.length);
      return mark === undefined ? 'loading' : marks.includes(mark);
    };
    expect(['heel > limit', '1 + 1', "'upright'", 'n++', 'n += one', 'n > 0'].map(ran)).toEqual(Array(6).fill(true));
    expect(["'over'", "return 'up';"].map(ran)).toEqual([false, false]);
    expect(ran('[f(1), g(0)]')).toBe('loading');
  });

  it('can be put into every file of the core', () => {
    for (const mutant of new Map(mutantsOfCore('.').map((one) => [one.file, one])).values()) {
      const { text } = marked(mutant.file, readFileSync(mutant.file, 'utf8'), 0);
      expect(() => stripTypeScriptTypes(text)).not.toThrow();
    }
  });
});

describe('the sample', () => {
  const all = mutantsOfCore('.');

  it('is the same for the same seed, another for another, and as large as asked', () => {
    expect(sampleOf(all, 200, 3)).toEqual(sampleOf(all, 200, 3));
    expect(sampleOf(all, 200, 3)).not.toEqual(sampleOf(all, 200, 4));
    expect(new Set(sampleOf(all, 200, 3)).size).toBe(200);
  });

  it('has of each folder its share, to one', () => {
    const some = sampleOf(all, 400, 1);
    for (const folder of new Set(all.map(folderOf))) {
      const share = (list: typeof all) => list.filter((one) => folderOf(one) === folder).length;
      expect(Math.abs(share(some) - (400 * share(all)) / all.length)).toBeLessThanOrEqual(1);
    }
  });

  it('is held against the first test in any case, and others within the budget', () => {
    const tests = [9, 1, 5, 2].map((ms, i) => ({
      file: String(i),
      ms,
      reached: new Set<number>(),
      loads: new Set<string>(),
    }));
    expect(within(tests, 4).map(({ file }) => file)).toEqual(['0']);
    expect(within(tests, 12).map(({ file }) => file)).toEqual(['0', '1', '3']);
  });

  it('is held against kept answers last, which have their part of the budget', () => {
    const file = (name: string, ms: number) => ({ file: name, ms, reached: new Set([1]), loads: new Set<string>() });
    const kept = [4, 2, 3].map((ms, i) => file(`tests/core/kept/${['trip', 'hull', 'load'][i]}.test.ts`, ms));
    const stating = [3, 5, 9].map((ms, i) => file(`tests/core/trip/${i}.test.ts`, ms));
    const mutant = { ...mutantsOf('src/core/trip/hull.ts', 'f(() => 2)')[1]!, file: 'src/core/trip/hull.ts' };
    const marks = new Map([[mutant.file, { text: '', stretches: [{ start: 0, end: 99, mark: 1 }] }]]);
    const all = testsOf({ files: [...kept, ...stating], marks }, mutant);
    expect(all).toEqual([...stating, ...kept]);
    // Two fifths of 13 are 5.2, of which the one of the same folder takes 4; 8 of the others fit into the rest.
    expect(within(all, 13)).toEqual([...stating.slice(0, 2), ...kept.slice(0, 1)]);
    // Without kept answers that reach it the others have all of it.
    expect(within(stating, 17)).toEqual(stating);
    expect(within(kept, 1)).toEqual(kept.slice(0, 1));
  });

  it('knows what a test loads through others', () => {
    expect(loadedBy('.', 'tests/core/trip/plan.test.ts')).toContain('src/core/route/distance.ts');
    expect(loadedBy('.', 'tests/core/hull/regime.test.ts')).not.toContain('src/core/route/distance.ts');
  });
});

describe('the score', () => {
  it('counts endless ones as noticed, and has the band of Wilson', () => {
    const mutant = mutantsOf('float.ts', FLOAT)[0]!;
    const attempts = (['noticed', 'endless', 'survived', 'unreached'] as const).map((fate) => ({
      mutant,
      fate,
      met: 1,
      unmet: 0,
      keptAlone: fate === 'noticed',
    }));
    expect(score(attempts).share).toBe(0.5);
    // What kept answers alone noticed is no statement.
    expect(scoreStated(attempts).share).toBe(0.25);
    // Of 10, 8: the interval of the published formula, to three places.
    expect(wilson(8, 10).low).toBeCloseTo(0.49, 3);
    expect(wilson(8, 10).high).toBeCloseTo(0.943, 3);
  });

  it('accepts only mutants that still exist, each with a reason', () => {
    const files = [...new Set(accepted.map(({ file }) => file))];
    const mutants = files.flatMap((file) => mutantsOf(file, readFileSync(file, 'utf8')));
    const names = [...namesOf('.', mutants).values()];
    for (const one of accepted) {
      expect
        .soft(
          names.some((name) => same(name, one)),
          `${one.file}: ${one.kind}: ${one.line}`,
        )
        .toBe(true);
      expect.soft(one.reason.length).toBeGreaterThan(20);
    }
  });

  it('accepts one of several on a line by its number', () => {
    const one = { file: 'a.ts', line: 'a - b - c', kind: '- to +', nth: 2, reason: 'why' };
    expect(reasonOf({ ...one, nth: 1 }, [one])).toBeUndefined();
    expect(reasonOf(one, [one])).toBe('why');
  });
});
