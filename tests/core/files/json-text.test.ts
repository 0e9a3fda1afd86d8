import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { jsonFault } from '../../../src/core/files/json-fault.ts';
import { parseJsonText } from '../../../src/core/files/json-text.ts';

function accepts(text: string): boolean {
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
}

describe('jsonFault', () => {
  it.each([
    ['{"a": 1,}', 8],
    ['[1 2]', 3],
    ['[1,]', 3],
    ['{"a" 1}', 5],
    ["{'a': 1}", 1],
    ['[01]', 2],
    ['[1.]', 2],
    ['[+1]', 1],
    ['"a\nb"', 2],
    ['"\\x"', 1],
    ['[tru]', 1],
    ['[1]]', 3],
    ['{}{}', 2],
    ['[1,2', 4],
    ['{"a":"b', 7],
    ['', 0],
    ['// note', 0],
    ['\u00a0{}', 0],
  ])('finds the first character of %j that cannot stand there', (text, at) => {
    expect(jsonFault(text)).toBe(at);
    expect(accepts(text)).toBe(false);
  });

  it('agrees with the engine on what is JSON, for texts that nearly are', () => {
    const piece = fc.constantFrom(
      '{',
      '}',
      '[',
      ']',
      ',',
      ':',
      '"a"',
      '"\\u00e9"',
      '"\\',
      '"',
      '1',
      '-0.5e+3',
      '0',
      '.',
      'true',
      'nul',
      ' ',
      '\n',
    );
    fc.assert(
      fc.property(
        fc.array(piece, { maxLength: 8 }).map((pieces) => pieces.join('')),
        (text) => {
          expect(jsonFault(text) === undefined).toBe(accepts(text));
        },
      ),
      { numRuns: 20_000, seed: 4 },
    );
  });

  it('agrees with the engine on real JSON with one character changed', () => {
    fc.assert(
      fc.property(
        fc.json({ maxDepth: 3 }),
        fc.nat(),
        fc.constantFrom('', '"', ',', '}', ']', '0', '\\', 'e', '\u0007'),
        (json, where, put) => {
          const at = where % (json.length + 1);
          const text = json.slice(0, at) + put + json.slice(at + 1);
          const fault = jsonFault(text);
          expect(fault === undefined).toBe(accepts(text));
          expect(jsonFault(json)).toBeUndefined();
          if (fault !== undefined) expect(fault).toBeLessThanOrEqual(text.length);
        },
      ),
      { numRuns: 3000, seed: 5 },
    );
  });

  it('is not blown by deep nesting or long strings', () => {
    expect(jsonFault('['.repeat(1e6))).toBe(1e6);
    expect(jsonFault(`"${'\\n'.repeat(1e6)}"`)).toBeUndefined();
  });
});

describe('parseJsonText', () => {
  it('reads a text of just the length that is allowed, and none longer', () => {
    expect(parseJsonText('[12]', 4)).toEqual({ ok: true, value: [12] });
    expect(parseJsonText('[123]', 4)).toMatchObject({ ok: false, problems: [{ code: 'too-big', limit: 4 }] });
  });

  it('counts lines of any system from one', () => {
    for (const end of ['\n', '\r\n', '\r']) {
      const result = parseJsonText(`{${end}"a": 1,${end}  b}`, 100);
      expect(result).toMatchObject({
        problems: [{ message: 'The file is not valid JSON: "b" cannot stand at line 3, column 3' }],
      });
    }
  });

  it('tells a file that was cut off from one that is wrong', () => {
    expect(parseJsonText('{"a": [1, 2', 100)).toMatchObject({
      problems: [{ code: 'not-json', message: 'The file ends too early, at line 1, column 12' }],
    });
  });

  it('reads past a byte order mark', () => {
    expect(parseJsonText('\uFEFF{"a":1}', 100)).toEqual({ ok: true, value: { a: 1 } });
  });

  it.each(['', ' \n\t', '\uFEFF'])('says that %j is empty', (text) => {
    expect(parseJsonText(text, 100)).toMatchObject({ ok: false, problems: [{ code: 'empty' }] });
  });

  it('shows a whole character, also one of two code units', () => {
    expect(parseJsonText('[\u{1F6A4}]', 100)).toMatchObject({
      problems: [{ message: expect.stringContaining('"\u{1F6A4}" cannot stand at line 1, column 2') }],
    });
  });
});
