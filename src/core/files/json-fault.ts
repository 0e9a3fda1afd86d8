/**
 * Where a text stops being JSON (RFC 8259): the offset of the first character that cannot stand there, the text's
 * length when it ends too early, undefined when it is JSON. Engines word and place this differently or not at all.
 */
export function jsonFault(text: string): number | undefined {
  /** Closing brackets still to come. */
  const closers: string[] = [];
  let want: 'value' | 'value-or-end' | 'key' | 'key-or-end' | 'colon' | 'more' | 'nothing' = 'value';
  let at = 0;
  for (;;) {
    at = afterSpace(text, at);
    const next = text[at];
    if (want === 'nothing') return at < text.length ? at : undefined;
    if ((want === 'more' || want === 'value-or-end' || want === 'key-or-end') && next === closers.at(-1)) {
      closers.pop();
      at++;
      want = closers.length > 0 ? 'more' : 'nothing';
    } else if (want === 'more') {
      if (next !== ',') return at;
      at++;
      want = closers.at(-1) === '}' ? 'key' : 'value';
    } else if (want === 'colon') {
      if (next !== ':') return at;
      at++;
      want = 'value';
    } else if (want === 'key' || want === 'key-or-end') {
      const end = afterString(text, at);
      if (end < 0) return ~end;
      at = end;
      want = 'colon';
    } else if (next === '{' || next === '[') {
      closers.push(next === '{' ? '}' : ']');
      at++;
      want = next === '{' ? 'key-or-end' : 'value-or-end';
    } else {
      const end = next === '"' ? afterString(text, at) : afterScalar(text, at);
      if (end < 0) return ~end;
      at = end;
      want = closers.length > 0 ? 'more' : 'nothing';
    }
  }
}

const SPACE = ' \t\n\r';

function afterSpace(text: string, start: number): number {
  let at = start;
  while (at < text.length && SPACE.includes(text[at]!)) at++;
  return at;
}

const ESCAPE = /\\(?:["\\/bfnrt]|u[\dA-Fa-f]{4})/y;

/** Offset after the string, or the bitwise complement of where it goes wrong. A loop: no pattern, no deep recursion. */
function afterString(text: string, start: number): number {
  if (text[start] !== '"') return ~start;
  let at = start + 1;
  while (at < text.length) {
    const next = text[at]!;
    if (next === '"') return at + 1;
    if (next < ' ') return ~at;
    if (next === '\\') {
      ESCAPE.lastIndex = at;
      if (!ESCAPE.test(text)) return ~at;
      at = ESCAPE.lastIndex;
    } else {
      at++;
    }
  }
  return ~at;
}

const SCALAR = /(?:true|false|null)|-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[Ee][+-]?\d+)?/y;

function afterScalar(text: string, start: number): number {
  SCALAR.lastIndex = start;
  return SCALAR.test(text) ? SCALAR.lastIndex : ~start;
}
