import * as v from 'valibot';
import type { Fleet, HireBoat } from '../hire/shapes.ts';
import type { Problem, Result } from '../units/result.ts';
import { engines, hulls, stores } from './catalogue.ts';
import { craftSchema, plateSchema } from './craft-schema.ts';
import { describesDay } from './iso-time.ts';
import { parseJsonText } from './json-text.ts';
import { plainProblem } from './plain-value.ts';
import { readProfile } from './profile-file.ts';
import { withoutSchemaName } from './schema-name.ts';
import { between, chosen, id, list, text, wordOr } from './schema-parts.ts';
import { trialsContradictions } from './trip-contradictions.ts';
import { waypointSchema } from './trip-schema.ts';
import { problemOf } from './trip-words.ts';
import { readWaters } from './waters-file.ts';

const TEXT_LIMIT = 40e6;
const LIMITS = { depth: 18, entries: 2e6 };
const MOST_BOATS = 200;
const MOST_ROUTES = 100;
const WAYPOINTS = 500;
/** Speeds a boat may be hired out for, m/s. */
export const HIRE_SPEED = { least: 0.3, most: 25 } as const;

const day = v.pipe(v.string(), v.check(describesDay, 'must be a date such as 2027-04-30'));
const listed = (records: readonly { readonly id: string }[]) =>
  v.picklist(
    records.map((record) => record.id),
    'is not in the catalogue',
  );

const hiredOut = {
  id,
  name: id,
  speed: between(HIRE_SPEED.least, HIRE_SPEED.most),
  plate: wordOr(v.literal('none', 'must be "none" or the figures on the plate'), plateSchema),
};
const shippedBoat = v.strictObject({
  ...hiredOut,
  hullId: listed(hulls),
  engineId: listed(engines),
  storeId: listed(stores),
});
const ownBoat = v.strictObject({ ...hiredOut, craft: craftSchema });
/** The profile goes through its own door. */
const measuredBoat = v.strictObject({ ...hiredOut, profile: v.unknown() });
type BoatSchema = typeof shippedBoat | typeof ownBoat | typeof measuredBoat;

/** Chosen by what is given, so that each keeps its own problems. */
const boatSchema = chosen<BoatSchema>([shippedBoat, ownBoat, measuredBoat], (given) => {
  const has = (key: string) => typeof given === 'object' && given !== null && key in given;
  return has('profile') ? measuredBoat : has('craft') ? ownBoat : shippedBoat;
});

/** Whether a text is an address of the web. */
export function describesAddress(text: string): boolean {
  return ADDRESS.test(text);
}

const ADDRESS = /^https?:\/\/[^\s/]+/;
const line = v.pipe(v.string(), v.maxLength(600));

export const fleetSchema = v.strictObject({
  format: v.literal('homeleg-fleet'),
  version: v.literal(1),
  name: id,
  answers: id,
  surveyed: day,
  until: day,
  call: v.optional(text),
  rescue: v.optional(text),
  area: v.optional(line),
  at: v.optional(v.strictObject({ lat: between(-85, 85), lon: between(-180, 180) })),
  waters: v.optional(text),
  localWaters: v.optional(v.unknown()),
  site: v.optional(
    v.pipe(v.string(), v.maxLength(600), v.check(describesAddress, 'must be an address that begins with https://')),
  ),
  note: v.optional(line),
  boats: list(boatSchema, 1, MOST_BOATS),
  routes: list(
    v.strictObject({
      id,
      name: id,
      shape: v.picklist(['out-and-home', 'loop']),
      waypoints: list(waypointSchema, 2, WAYPOINTS),
    }),
    0,
    MOST_ROUTES,
  ),
});

/** Reads the fleet of a hire desk from JSON text of at most 40 million characters, its own waters included. */
export function readFleetText(given: string): Result<Fleet> {
  const parsed = parseJsonText(given, TEXT_LIMIT);
  return parsed.ok ? readFleet(parsed.value) : parsed;
}

/** Checks a fleet: its boats by catalogue, own figures or profile, its routes and its own waters. */
export function readFleet(value: unknown): Result<Fleet> {
  const unfit = plainProblem(value, LIMITS) ?? formatProblem(value);
  if (unfit) return { ok: false, problems: [unfit] };
  const parsed = v.safeParse(fleetSchema, withoutSchemaName(value), { message: '' });
  if (!parsed.success) return { ok: false, problems: parsed.issues.map((issue) => placed(problemOf(issue), value)) };
  const { localWaters, boats, ...rest } = parsed.output;
  const problems: Problem[] = [
    ...order(rest),
    ...twice('boats', 'boats', boats),
    ...twice('routes', 'set routes', rest.routes),
  ];
  const read = boats.map((boat, i): HireBoat | undefined => {
    const found = boatOf(boat);
    if (found.ok) return found.value;
    problems.push(
      ...found.problems.map((p) => placed({ ...p, path: p.path ? `boats.${i}.${p.path}` : `boats.${i}` }, value)),
    );
    return undefined;
  });
  const waters = localWaters === undefined ? undefined : readWaters(localWaters);
  if (waters && !waters.ok) {
    problems.push(...waters.problems.map((p) => ({ ...p, path: p.path ? `localWaters.${p.path}` : 'localWaters' })));
  }
  if (problems.length > 0) return { ok: false, problems };
  const known = read.filter((boat) => boat !== undefined);
  return { ok: true, value: { ...rest, boats: known, ...(waters?.ok && { localWaters: waters.value }) } };
}

/** JSON text that `readFleetText` reads back to the same fleet. */
export function writeFleet(fleet: Fleet): string {
  return `${JSON.stringify(fleet, null, 2)}\n`;
}

function boatOf(boat: v.InferOutput<BoatSchema>): Result<HireBoat> {
  if ('profile' in boat) {
    const read = readProfile(JSON.stringify(boat.profile ?? null));
    if (read.ok) return { ok: true, value: { ...boat, profile: read.value } };
    return {
      ok: false,
      problems: read.problems.map((p) => ({ ...p, path: p.path ? `profile.${p.path}` : 'profile' })),
    };
  }
  if (!('craft' in boat)) return { ok: true, value: boat };
  const { hull, drive, store } = boat.craft;
  const trials = { hull, water: 'sea', setups: [{ id: 'own', drive, store }], runs: [], refills: [] } as const;
  const problems = trialsContradictions(trials, 'craft').map((p) => ({ ...p, path: p.path.replace('.setups.0', '') }));
  return problems.length > 0 ? { ok: false, problems } : { ok: true, value: boat };
}

/** Says of which boat or route a problem is, where its own words do not. */
function placed(problem: Problem, value: unknown): Problem {
  const [entries, index] = problem.path.split('.');
  const at = Number(index);
  if ((entries !== 'boats' && entries !== 'routes') || !Number.isInteger(at)) {
    return { ...problem, message: problem.message.replace('in a trip', 'in a fleet') };
  }
  const given = (value as Record<string, readonly ({ readonly name?: unknown } | null)[]>)[entries]?.[at]?.name;
  const name = typeof given === 'string' && given ? ` (${given.slice(0, 60)})` : '';
  const noun = entries === 'boats' ? 'Boat' : 'Set route';
  return { ...problem, message: `${noun} ${at + 1}${name}: ${problem.message}` };
}

function order({ surveyed, until }: Pick<Fleet, 'surveyed' | 'until'>): readonly Problem[] {
  if (until >= surveyed) return [];
  return [{ code: 'too-small', path: 'until', message: `The last day must not be before the survey, ${surveyed}` }];
}

function twice(path: string, noun: string, entries: readonly { readonly id: string }[]): readonly Problem[] {
  const ids = entries.map((entry) => entry.id);
  return ids.flatMap((one, i) =>
    ids.indexOf(one) === i
      ? []
      : [{ code: 'duplicate', path: `${path}.${i}.id`, message: `Two ${noun} have the id ${JSON.stringify(one)}` }],
  );
}

function formatProblem(value: unknown): Problem | undefined {
  if (typeof value !== 'object' || value === null || !('format' in value) || value.format !== 'homeleg-fleet') {
    const message = 'This is not the fleet of a hire desk: its format is not "homeleg-fleet"';
    return { code: 'not-a-fleet', path: '', message };
  }
  const version = 'version' in value ? value.version : undefined;
  if (version === 1) return undefined;
  const given = typeof version === 'number' ? `version ${version}` : 'an unknown version';
  const message = `This fleet is of ${given}; only version 1 can be read here. A newer page may read it`;
  return { code: 'unknown-version', path: 'version', message };
}
