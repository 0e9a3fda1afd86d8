import * as v from 'valibot';
import type { Problem, Result } from '../units/result.ts';
import type { TideStation } from '../water/shapes.ts';
import { parseJsonText } from './json-text.ts';
import { plainProblem } from './plain-value.ts';
import type { Same } from './same-shape.ts';
import { between, id, list } from './schema-parts.ts';

const TEXT_LIMIT = 1e5;
const LIMITS = { depth: 6, entries: 2000 };

const line = v.pipe(v.string(), v.maxLength(1000));

/** The greatest tides on Earth have a range of 17 m. */
const stationSchema = v.strictObject({
  id,
  name: id,
  lat: between(-90, 90),
  lon: between(-180, 180),
  timezone: v.optional(line),
  meanLevel: between(-20, 20),
  chartDatum: v.optional(line),
  constituents: list(v.strictObject({ name: id, amplitude: between(0, 10), phaseDeg: between(-360, 360) }), 1, 200),
  licence: v.optional(line),
  attribution: v.optional(line),
  source: v.optional(line),
});

/** TideStation while schema and shape agree, otherwise never, which does not compile below. */
type AgreedStation = Same<TideStation, v.InferOutput<typeof stationSchema>> extends true ? TideStation : never;

/**
 * Reads a tide station of a user from JSON text: fields as of `TideStation`, heights m, phases of Greenwich. Whether the
 * predictor knows its constituents says `harmonicTide`.
 */
export function readTideStation(text: string): Result<TideStation> {
  const parsed = parseJsonText(text, TEXT_LIMIT);
  if (!parsed.ok) return parsed;
  const unfit = plainProblem(parsed.value, LIMITS);
  if (unfit) return { ok: false, problems: [unfit] };
  const found = v.safeParse(stationSchema, parsed.value);
  if (!found.success) return { ok: false, problems: found.issues.map(problemOf) };
  const station: AgreedStation = found.output;
  const names = station.constituents.map(({ name }) => name);
  const twice = names.findIndex((name, i) => names.indexOf(name) !== i);
  if (twice < 0) return { ok: true, value: station };
  const message = `The constituent ${JSON.stringify(names[twice])} stands twice`;
  return { ok: false, problems: [{ code: 'repeated', path: `constituents.${twice}.name`, message }] };
}

function problemOf(issue: v.BaseIssue<unknown>): Problem {
  const path = issue.path?.map(({ key }) => String(key)).join('.') ?? '';
  const where = path === '' ? 'The file' : `"${path}" of the station`;
  if (issue.expected === 'never') return { code: 'unknown-field', path, message: `${where} is not a field` };
  if (issue.received === 'undefined') return { code: 'missing', path, message: `${where} is missing` };
  const limit = typeof issue.requirement === 'number' ? { limit: issue.requirement } : {};
  const wanted = issue.expected ? `must be ${issue.expected}` : 'is not right';
  return { code: 'invalid', path, message: `${where} ${wanted}, not ${issue.received}`, ...limit };
}
