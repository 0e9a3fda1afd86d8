import * as v from 'valibot';
import type { Fleet, FuelNote, Hire, Morning } from '../hire/shapes.ts';
import type { Problem, Result } from '../units/result.ts';
import { readFleet } from './fleet-file.ts';
import { parseJsonText } from './json-text.ts';
import { plainProblem } from './plain-value.ts';
import { withoutSchemaName } from './schema-name.ts';
import { above, between, id, list } from './schema-parts.ts';
import { refillSchema } from './trials-schema.ts';
import { conditionsSchema, readTrip } from './trip-schema.ts';

/** Everything a desk keeps, as one file. */
export interface DeskFile {
  readonly format: 'homeleg-desk';
  readonly version: 1;
  readonly fleet?: Fleet;
  readonly morning?: Morning;
  readonly hires: readonly Hire[];
  readonly fuelNotes: readonly FuelNote[];
}

const TEXT_LIMIT = 80e6;
const LIMITS = { depth: 20, entries: 4e6 };
const MOST = 20_000;

/** s since 1970, to the year 2200. */
const moment = between(0, 7.3e9);
const words = v.pipe(v.string(), v.maxLength(1000));
/** kg or J. */
const amount = between(-1e12, 1e12);
const limits = v.strictObject({ maxWind: v.optional(between(0, 80)), maxWave: v.optional(between(0, 20)) });

export const morningSchema = v.strictObject({
  setAt: moment,
  until: moment,
  conditions: conditionsSchema,
  lastReturn: v.optional(moment),
  limits: v.strictObject({ new: limits, some: limits, used: limits }),
  slipLife: between(60, 86_400),
});

const ruleSchema = v.variant('kind', [
  v.strictObject({ kind: v.literal('after'), seconds: above(0, 604_800) }),
  v.strictObject({ kind: v.literal('at'), time: moment }),
]);

const initials = v.optional(v.pipe(v.string(), v.maxLength(12)));

export const hireSchema = v.strictObject({
  id,
  boatId: id,
  boat: id,
  route: v.optional(id),
  area: v.optional(words),
  trip: v.unknown(),
  experience: v.picklist(['new', 'some', 'used']),
  rule: ruleSchema,
  lastReturn: v.optional(moment),
  told: v.strictObject({
    verdict: v.picklist(['go', 'marginal', 'no-go']),
    lines: list(words, 0, 60),
    store: v.picklist(['fuel', 'charge']),
    full: amount,
    start: v.optional(amount),
    left: v.strictObject({ low: amount, median: amount, high: amount }),
    reserve: amount,
    time: between(0, 1e7),
    distance: between(0, 1e8),
    turnWith: v.optional(amount),
    turnAfter: v.optional(between(0, 1e7)),
  }),
  checkedAt: moment,
  validUntil: moment,
  shown: v.strictObject({
    plate: initials,
    'kill-cord': initials,
    jackets: initials,
    'reverse-stop': initials,
    paddles: initials,
    area: initials,
    return: initials,
    call: initials,
  }),
  contact: v.optional(words),
  leftAt: v.optional(moment),
  due: v.optional(moment),
  returnedAt: v.optional(moment),
  back: v.optional(
    v.strictObject({
      amount: v.optional(amount),
      used: v.union([v.picklist(['as-planned', 'unknown']), v.strictObject({ running: between(0, 604_800) })]),
      note: v.optional(words),
    }),
  ),
});

export const fuelNoteSchema = v.strictObject({ id, boatId: id, refill: refillSchema });

/** One hire as it was kept. */
export function readHire(value: unknown): Result<Hire> {
  const unfit = plainProblem(value, LIMITS);
  if (unfit) return { ok: false, problems: [unfit] };
  const parsed = v.safeParse(hireSchema, value);
  if (!parsed.success) return { ok: false, problems: parsed.issues.map(problemOf) };
  const trip = readTrip(parsed.output.trip);
  if (!trip.ok) return { ok: false, problems: under('trip', trip.problems) };
  return { ok: true, value: { ...parsed.output, trip: trip.value } };
}

/** What the desk set for the day, as it was kept. */
export function readMorning(value: unknown): Result<Morning> {
  return through(morningSchema, value);
}

export function readFuelNote(value: unknown): Result<FuelNote> {
  return through(fuelNoteSchema, value);
}

export const deskSchema = v.strictObject({
  format: v.literal('homeleg-desk'),
  version: v.literal(1),
  fleet: v.optional(v.unknown()),
  morning: v.optional(v.unknown()),
  hires: list(v.unknown(), 0, MOST),
  fuelNotes: list(v.unknown(), 0, MOST),
});

/** Reads all that a desk kept from JSON text of at most 80 million characters. All of it is right, or none is taken. */
export function readDeskFile(text: string): Result<DeskFile> {
  const parsed = parseJsonText(text, TEXT_LIMIT);
  if (!parsed.ok) return parsed;
  const unfit = plainProblem(parsed.value, LIMITS) ?? formatProblem(parsed.value);
  if (unfit) return { ok: false, problems: [unfit] };
  const outer = v.safeParse(deskSchema, withoutSchemaName(parsed.value));
  if (!outer.success) return { ok: false, problems: outer.issues.map(problemOf) };
  const problems: Problem[] = [];
  const take = <T>(read: Result<T>, path: string): readonly T[] => {
    if (read.ok) return [read.value];
    problems.push(...under(path, read.problems));
    return [];
  };
  const { fleet, morning, hires, fuelNotes } = outer.output;
  const value: DeskFile = {
    format: 'homeleg-desk',
    version: 1,
    ...(fleet !== undefined && { fleet: take(readFleet(fleet), 'fleet')[0] }),
    ...(morning !== undefined && { morning: take(readMorning(morning), 'morning')[0] }),
    hires: hires.flatMap((hire, i) => take(readHire(hire), `hires.${i}`)),
    fuelNotes: fuelNotes.flatMap((note, i) => take(readFuelNote(note), `fuelNotes.${i}`)),
  };
  return problems.length > 0 ? { ok: false, problems: problems.slice(0, 50) } : { ok: true, value };
}

/** JSON text that `readDeskFile` reads back to the same. */
export function writeDeskFile(desk: Omit<DeskFile, 'format' | 'version'>): string {
  return `${JSON.stringify({ format: 'homeleg-desk', version: 1, ...desk }, null, 1)}\n`;
}

function through<T>(schema: v.GenericSchema<unknown, T>, value: unknown): Result<T> {
  const unfit = plainProblem(value, LIMITS);
  if (unfit) return { ok: false, problems: [unfit] };
  const parsed = v.safeParse(schema, value);
  return parsed.success ? { ok: true, value: parsed.output } : { ok: false, problems: parsed.issues.map(problemOf) };
}

function under(place: string, problems: readonly Problem[]): readonly Problem[] {
  return problems.map((p) => ({ ...p, path: p.path ? `${place}.${p.path}` : place }));
}

function problemOf(issue: v.BaseIssue<unknown>): Problem {
  const path = issue.path?.map(({ key }) => String(key)).join('.') ?? '';
  const where = path === '' ? 'The file' : `"${path}"`;
  if (issue.expected === 'never') return { code: 'unknown-field', path, message: `${where} is not a field` };
  if (issue.received === 'undefined') return { code: 'missing', path, message: `${where} is missing` };
  const wanted = issue.expected ? `must be ${issue.expected}` : 'is not right';
  return { code: 'invalid', path, message: `${where} ${wanted}, not ${issue.received}` };
}

function formatProblem(value: unknown): Problem | undefined {
  if (typeof value !== 'object' || value === null || !('format' in value) || value.format !== 'homeleg-desk') {
    const message = 'This is not what a hire desk kept: its format is not "homeleg-desk"';
    return { code: 'not-a-desk', path: '', message };
  }
  const version = 'version' in value ? value.version : undefined;
  if (version === 1) return undefined;
  const given = typeof version === 'number' ? `version ${version}` : 'an unknown version';
  return {
    code: 'unknown-version',
    path: 'version',
    message: `This file is of ${given}; only version 1 can be read here`,
  };
}
