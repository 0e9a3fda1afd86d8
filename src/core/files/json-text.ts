import type { Result } from '../units/result.ts';
import { jsonFault } from './json-fault.ts';

/** Parses JSON of at most `limit` characters; a fault is told by line and column, both counted from 1. */
export function parseJsonText(text: string, limit: number): Result<unknown> {
  if (text.length > limit) {
    const message = `The file is too large: at most ${limit / 1e6} million characters are read`;
    return { ok: false, problems: [{ code: 'too-big', path: '', message, limit }] };
  }
  // Editors on some systems put a byte order mark in front.
  const json = text.startsWith('\uFEFF') ? text.slice(1) : text;
  if (json.trim() === '') return { ok: false, problems: [{ code: 'empty', path: '', message: 'The file is empty' }] };
  try {
    const value: unknown = JSON.parse(json);
    return { ok: true, value };
  } catch {
    return { ok: false, problems: [{ code: 'not-json', path: '', message: faultMessage(json) }] };
  }
}

function faultMessage(json: string): string {
  const fault = jsonFault(json);
  // Valid, but too much for the engine.
  if (fault === undefined) return 'The file cannot be read here: it is too large or nested too deep';
  const before = json.slice(0, fault).split(/\r\n|\n|\r/);
  const place = `line ${before.length}, column ${before.at(-1)!.length + 1}`;
  if (fault >= json.length) return `The file ends too early, at ${place}`;
  const character = String.fromCodePoint(json.codePointAt(fault)!);
  return `The file is not valid JSON: ${JSON.stringify(character)} cannot stand at ${place}`;
}
