import fc from 'fast-check';
import { NAMES } from './hostile.ts';

/** What is put in place of a part of a sound file. */
const odd: fc.Arbitrary<unknown> = fc.oneof(
  fc.constantFrom<unknown>(null, true, '', 0, -0, -1, 1e308, -1e308, 5e-324, 2 ** 53, 1e21, '1e999', 'NaN', [], {}, [
    [],
  ]),
  fc.constantFrom(...NAMES),
  // Words that every record answers to.
  fc.constantFrom('__proto__', 'constructor', 'toString', 'valueOf', 'hasOwnProperty'),
  fc.double({ noDefaultInfinity: true, noNaN: true }),
  fc.integer({ min: -5, max: 500 }),
  fc.string({ unit: 'binary', maxLength: 20 }),
  fc.constant(Array.from({ length: 3000 }, () => 1)),
  fc.constant(JSON.parse('{"__proto__":{"polluted":1}}')),
  fc.constant(nested(40)),
);

function nested(depth: number): unknown {
  return depth === 0 ? 1 : { in: nested(depth - 1) };
}

interface Change {
  readonly at: number;
  readonly how: 'put' | 'drop' | 'twice' | 'swap' | 'name' | 'scale';
  readonly odd: unknown;
}

const change: fc.Arbitrary<Change> = fc.record({
  at: fc.nat(1e6),
  how: fc.constantFrom('put', 'put', 'drop', 'twice', 'swap', 'name', 'scale'),
  odd,
});

/** A sound JSON file with one to four parts of it changed. */
export function changedJson(sound: string): fc.Arbitrary<string> {
  return fc.array(change, { minLength: 1, maxLength: 4 }).map((changes) => {
    let value: unknown = JSON.parse(sound);
    for (const one of changes) value = changed(value, one);
    return JSON.stringify(value) ?? '';
  });
}

interface Spot {
  readonly owner: Record<string, unknown> | unknown[];
  readonly key: string;
}

function changed(value: unknown, { at, how, odd: drawn }: Change): unknown {
  // Its own each time, or a part could come to lie inside itself.
  const odd: unknown = structuredClone(drawn);
  const spots: Spot[] = [];
  const walk = (inner: unknown): void => {
    if (typeof inner !== 'object' || inner === null) return;
    for (const key of Object.keys(inner)) {
      spots.push({ owner: inner as Spot['owner'], key });
      walk((inner as Record<string, unknown>)[key]);
    }
  };
  walk(value);
  if (spots.length === 0) return odd;
  const { owner, key } = spots[at % spots.length]!;
  const record = owner as Record<string, unknown>;
  const other = spots[(at * 7 + 3) % spots.length]!;
  const now = record[key];
  if (how === 'drop') {
    if (Array.isArray(owner)) owner.splice(Number(key), 1);
    else delete record[key];
  } else if (how === 'twice' && Array.isArray(owner)) owner.push(now);
  // A copy: a part put inside itself could not be written.
  else if (how === 'swap') record[key] = structuredClone((other.owner as Record<string, unknown>)[other.key]);
  else if (how === 'name' && !Array.isArray(owner)) record[`${key}x`] = now;
  else if (how === 'scale' && typeof now === 'number') record[key] = now * 10 ** ((at % 13) - 6) * (at % 2 ? -1 : 1);
  else record[key] = odd;
  return value;
}

/** A sound text cut, doubled, overwritten or with characters turned. */
export function changedText(sound: string): fc.Arbitrary<string> {
  const piece = fc.oneof(
    fc.string({ unit: 'binary', maxLength: 12 }),
    fc.constantFrom(...NAMES),
    fc.constantFrom('\uFEFF', '\u0000', '"', '<', '&x;', ']]>', '1e999', '-', '\r', '{"__proto__":1}', ','.repeat(500)),
  );
  const cut = fc.tuple(fc.nat(Math.max(1, sound.length)), fc.nat(120), piece, fc.boolean());
  return fc.array(cut, { minLength: 1, maxLength: 5 }).map((cuts) =>
    cuts.reduce((text, [at, length, put, again]) => {
      const from = at % (text.length + 1);
      const part = text.slice(from, from + length);
      return text.slice(0, from) + (again ? part + part : put) + text.slice(from + length);
    }, sound),
  );
}

/** The bytes of a text in an encoding that may not be the one it says, a few of them turned. */
export function oddBytes(text: string): fc.Arbitrary<Uint8Array> {
  return fc
    .record({
      encoding: fc.constantFrom('utf8' as const, 'utf16le' as const, 'latin1' as const),
      mark: fc.constantFrom<readonly number[]>([], [0xff, 0xfe], [0xfe, 0xff], [0xef, 0xbb, 0xbf]),
      turned: fc.array(fc.tuple(fc.nat(1e6), fc.nat(255)), { maxLength: 6 }),
    })
    .map(({ encoding, mark, turned }) => {
      const bytes = new Uint8Array([...mark, ...Buffer.from(text.slice(0, 20_000), encoding)]);
      for (const [at, byte] of turned) bytes[at % bytes.length] = byte;
      return bytes;
    });
}
