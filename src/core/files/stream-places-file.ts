import * as v from 'valibot';
import type { Problem, Result } from '../units/result.ts';
import type { StreamPlace } from '../water/shapes.ts';
import { parseJsonText } from './json-text.ts';
import { plainProblem } from './plain-value.ts';
import { list } from './schema-parts.ts';
import { streamPlaceSchema } from './trip-schema.ts';
import { problemOf } from './trip-words.ts';

const FORMAT = 'homeleg-stream-places';
/** Characters of such a file, and places in it. */
const LONGEST = 1e6;
const MOST = 100;
const placesSchema = list(streamPlaceSchema, 1, MOST);

export function streamPlacesText(streamPlaces: readonly StreamPlace[]): string {
  return JSON.stringify({ format: FORMAT, version: 1, streamPlaces }, undefined, 1);
}

/** Whether a text says of itself that it is such a file, rather than a table. */
export function saysStreamPlaces(text: string): boolean {
  return /^[\uFEFF\s]*\{/.test(text) && text.includes(`"${FORMAT}"`);
}

/** Places with streams out of a file that was written here. */
export function readStreamPlaces(text: string): Result<readonly StreamPlace[]> {
  const parsed = parseJsonText(text, LONGEST);
  if (!parsed.ok) return parsed;
  const unfit = plainProblem(parsed.value, { depth: 8, entries: 20_000 });
  if (unfit) return { ok: false, problems: [unfit] };
  const { version, streamPlaces } = parsed.value as { version?: unknown; streamPlaces?: unknown };
  if (version !== 1) {
    const message = 'This file was made by a newer version of this page. A newer page may read it';
    return { ok: false, problems: [{ code: 'unknown-version', path: 'version', message }] };
  }
  const read = v.safeParse(placesSchema, streamPlaces, { message: '' });
  if (!read.success) return { ok: false, problems: read.issues.map(problemOf) };
  const uneven = read.output.flatMap(({ springs, neaps }, i): Problem[] => {
    if (springs.length === neaps.length) return [];
    const message = `Stream place ${i + 1} has ${springs.length} hours at springs and ${neaps.length} at neaps`;
    return [{ code: 'uneven', path: `streamPlaces.${i}.neaps`, message, limit: springs.length }];
  });
  return uneven.length > 0 ? { ok: false, problems: uneven } : { ok: true, value: read.output };
}
