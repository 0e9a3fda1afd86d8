import type { Craft } from '../craft/shapes.ts';
import type { Trials } from '../trials/shapes.ts';
import type { Trip } from '../trip/shapes.ts';
import type { Problem, Result } from '../units/result.ts';
import { parseJsonText } from './json-text.ts';
import { TEXT_LENGTH } from './text-length.ts';
import { readDraft } from './trip-schema.ts';

/** A boat with its engine, its tanks or batteries, and the runs that measured it. */
export interface SavedBoat {
  readonly craft: Craft;
  readonly trials?: Trials;
}

/** One thing kept under a name: a whole trip, or a boat. */
export type SavedEntry = { readonly name: string; readonly savedAt: string } & (
  | { readonly kind: 'trip'; readonly trip: Trip }
  | { readonly kind: 'boat'; readonly boat: SavedBoat }
);

/** All that could be read, and what was wrong with the rest. */
export interface SavedFile {
  readonly entries: readonly SavedEntry[];
  readonly problems: readonly Problem[];
}

/** Characters of a file, and entries in it. */
const LONGEST = 20e6;
const MOST = 500;

export function savedFileText(entries: readonly SavedEntry[]): string {
  return JSON.stringify({ format: 'homeleg-saved', version: 1, entries }, undefined, 1);
}

/** Reads such a file. An entry that is not sound is told of and left out; the others are not lost for it. */
export function readSavedFile(text: string): Result<SavedFile> {
  const parsed = parseJsonText(text, LONGEST);
  if (!parsed.ok) return parsed;
  const file = parsed.value;
  if (!isRecord(file) || file.format !== 'homeleg-saved' || !Array.isArray(file.entries)) {
    return refused('not-saved-file', 'This is not a file of saved trips and boats');
  }
  if (file.version !== 1) {
    return refused('unknown-version', 'This file was made by a newer version of this page. A newer page may read it');
  }
  if (file.entries.length > MOST) return refused('too-big', `A file holds at most ${MOST} trips and boats`);
  const entries: SavedEntry[] = [];
  const problems: Problem[] = [];
  file.entries.forEach((given: unknown, at) => {
    const read = readSavedEntry(given);
    if (read.ok) entries.push(read.value);
    else problems.push(...read.problems.map((found) => ({ ...found, path: `entries.${at}.${found.path}` })));
  });
  return { ok: true, value: { entries, problems } };
}

/** Checks one entry, from a file or from what the device kept. */
export function readSavedEntry(given: unknown): Result<SavedEntry> {
  if (!isRecord(given)) return refused('not-an-entry', 'An entry is neither a trip nor a boat');
  const name = typeof given.name === 'string' ? given.name.slice(0, TEXT_LENGTH) : '';
  const savedAt = typeof given.savedAt === 'string' ? given.savedAt.slice(0, 30) : '';
  if (given.kind === 'trip') {
    const trip = readDraft(given.trip);
    return trip.ok ? { ok: true, value: { kind: 'trip', name, savedAt, trip: trip.value } } : trip;
  }
  if (given.kind === 'boat' && isRecord(given.boat)) {
    const { craft, trials } = given.boat;
    const whole = readDraft({ ...AROUND_BOAT, craft, ...(trials !== undefined && { trials }) });
    if (!whole.ok) return whole;
    const boat: SavedBoat = { craft: whole.value.craft, ...(whole.value.trials && { trials: whole.value.trials }) };
    return { ok: true, value: { kind: 'boat', name, savedAt, boat } };
  }
  return refused('not-an-entry', 'An entry is neither a trip nor a boat');
}

/** The least trip round a boat, so that one door reads both. */
const AROUND_BOAT = {
  version: 1,
  load: { items: [] },
  route: { shape: 'out-and-home', waypoints: [], speed: 'best' },
  conditions: { water: 'sea' },
  policy: { reserve: [] },
} as const;

function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function refused(code: string, message: string): { ok: false; problems: Problem[] } {
  return { ok: false, problems: [{ code, path: '', message }] };
}
