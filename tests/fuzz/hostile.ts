import { Deflate, deflateSync } from 'fflate';
import { base64UrlOf } from '../../src/core/files/base64-url.ts';
import { crc32 } from '../../src/core/files/crc32.ts';
import { SHARE_DICTIONARY } from '../../src/core/files/share-dictionary.ts';

/** Names that a page which trusts text would run, follow or swallow. */
export const NAMES: readonly string[] = [
  '<script>globalThis.homelegRan = 1</script>',
  '<img src=x onerror="globalThis.homelegRan = 1">',
  '"><svg onload=globalThis.homelegRan=1>',
  'javascript:globalThis.homelegRan=1',
  "';globalThis.homelegRan=1;//",
  `\${globalThis.homelegRan=1}`,
  '{{constructor.constructor("globalThis.homelegRan=1")()}}',
  '=HYPERLINK("https://elsewhere.example","x")',
  '\u202Egnp.tac\u202C',
  'a\u0000b\uFFFFc\uD800',
  '%3Cscript%3E',
  'x'.repeat(3000),
];

const LOTS = 60_000;

let made: readonly [string, string][] | undefined;

/** Whole documents meant to hurt, for any door. */
export function hostile(): readonly [string, string][] {
  made ??= documents();
  return made;
}

function documents(): readonly [string, string][] {
  return [
    ['nothing', ''],
    ['spaces', ' \n\t '],
    ['one zero byte', '\u0000'],
    ['half a surrogate', '\uD800'],
    ['lists in lists', '['.repeat(LOTS) + ']'.repeat(LOTS)],
    ['lists in lists, left open', '['.repeat(LOTS)],
    ['records in records', `${'{"trip":'.repeat(LOTS)}1${'}'.repeat(LOTS)}`],
    [
      'a record whose prototype is given',
      '{"version":1,"__proto__":{"polluted":1},"constructor":{"prototype":{"polluted":1}}}',
    ],
    ['a number beyond all', '{"version":1e999}'],
    ['a number of many digits', `{"version":${'9'.repeat(LOTS)}}`],
    ['a long word', JSON.stringify('x'.repeat(2_000_000))],
    ['many fields', `{${Array.from({ length: LOTS }, (_, i) => `"f${i}":${i}`).join(',')}}`],
    ['many lines', '1,2,3\n'.repeat(LOTS)],
    ['one line of many cells', 'a,'.repeat(LOTS)],
    ['quotes never closed', `"${'a,\n'.repeat(LOTS)}`],
    ['an entity within entities', BILLION],
    [
      'an entity from outside',
      `<?xml version="1.0"?><!DOCTYPE gpx [<!ENTITY x SYSTEM "file:///etc/hostname">]><gpx><trk><name>&x;</name></trk></gpx>`,
    ],
    ['elements in elements', `<gpx>${'<trk>'.repeat(LOTS)}`],
    ['many attributes', `<gpx ${Array.from({ length: LOTS }, (_, i) => `a${i}="1"`).join(' ')}/>`],
    ['an endless comment', `<gpx><!-- ${'-'.repeat(LOTS)}`],
    ['a small link that unfolds to much', linkOf(new Uint8Array(40_000_000))],
    ['a link to deep records', linkOf(new TextEncoder().encode('['.repeat(LOTS)))],
    ['a link with a foreign prototype', linkOf(new TextEncoder().encode('{"version":1,"__proto__":{"polluted":1}}'))],
    ['a link of noise', `#trip=1.${'Az09-_'.repeat(2000)}`],
    ['a page', `<!doctype html><html><body><script>globalThis.homelegRan = 1</script></body></html>`],
    ...NAMES.map((name): [string, string] => [`the name ${JSON.stringify(name).slice(0, 30)}`, name]),
  ];
}

const BILLION = `<?xml version="1.0"?><!DOCTYPE gpx [<!ENTITY a "aaaaaaaaaa">${Array.from({ length: 9 }, (_, i) => `<!ENTITY ${'bcdefghij'[i]} "${`&${'abcdefghi'[i]};`.repeat(10)}">`).join('')}]><gpx><trk><name>&j;</name></trk></gpx>`;

/** A link as ours are made, around whatever bytes. */
function linkOf(bytes: Uint8Array): string {
  const packed: Uint8Array[] = [];
  const deflate = new Deflate({ level: 9, dictionary: new TextEncoder().encode(SHARE_DICTIONARY) }, (part) =>
    packed.push(part),
  );
  deflate.push(bytes, true);
  const body = Buffer.concat(packed.length > 0 ? packed : [deflateSync(bytes)]);
  const all = new Uint8Array(body.length + 4);
  all.set(body);
  new DataView(all.buffer).setUint32(body.length, crc32(bytes));
  return `#trip=1.${base64UrlOf(all)}`;
}
