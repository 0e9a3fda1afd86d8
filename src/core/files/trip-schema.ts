import * as v from 'valibot';
import type { Craft } from '../craft/shapes.ts';
import type { Trip } from '../trip/shapes.ts';
import type { Problem, Result } from '../units/result.ts';
import { craftSchema } from './craft-schema.ts';
import { describesTime } from './iso-time.ts';
import { parseJsonText } from './json-text.ts';
import { loadSchema } from './load-schema.ts';
import { plainProblem } from './plain-value.ts';
import type { Same } from './same-shape.ts';
import { withoutSchemaName } from './schema-name.ts';
import { above, between, list, objectWith, text, wordOr } from './schema-parts.ts';
import { trialsSchema } from './trials-schema.ts';
import { contradictions } from './trip-contradictions.ts';
import { problemOf } from './trip-words.ts';

/** Characters of a trip file. */
const TEXT_LIMIT = 2e6;
const LIMITS = { depth: 16, entries: 100_000 };
const WAYPOINTS = 5000;
/** A fortnight by the hour. */
const FORECAST_ENTRIES = 400;
/** A week, s. */
const LONGEST_STAY = 604_800;

const speedSchema = wordOr(
  v.picklist(['best', 'best-planing'], 'must be a number of m/s, "best" or "best-planing"'),
  above(0, 40),
);

export const waypointSchema = v.strictObject({
  // Distances are not reckoned nearer to the poles.
  lat: between(-85, 85),
  lon: between(-180, 180),
  name: v.optional(text),
  stop: v.optional(between(0, LONGEST_STAY)),
  refill: v.optional(between(0, 1)),
  speed: v.optional(speedSchema),
  streamPlace: v.optional(text),
});

const timeSchema = v.pipe(
  v.string(),
  v.check(describesTime, 'must be a date and time with its offset, such as 2026-07-15T09:30:00+01:00'),
);

const windFields = { fromDeg: between(0, 360), speed: between(0, 80) };
const forecastSchema = v.strictObject({
  forecast: list(
    v.strictObject({ time: timeSchema, ...windFields, gust: v.optional(between(0, 120)) }),
    1,
    FORECAST_ENTRIES,
  ),
});

const streamSchema = v.strictObject({ setDeg: between(0, 360), rate: between(0, 10) });
const strongestRunSchema = v.strictObject({
  setDeg: between(0, 360),
  springs: between(0, 10),
  neaps: between(0, 10),
});
export const streamPlaceSchema = v.strictObject({
  name: text,
  lat: between(-85, 85),
  lon: between(-180, 180),
  firstHour: between(-13, 13),
  springs: list(streamSchema, 1, 26),
  neaps: list(streamSchema, 1, 26),
  spread: v.optional(v.strictObject({ flood: strongestRunSchema, ebb: strongestRunSchema, turns: between(-6, 6) })),
});

/** Of the greatest tides on Earth: ranges to 17 m. */
const tideSchema = v.strictObject({
  port: text,
  highWater: timeSchema,
  range: between(0, 20),
  meanSpringRange: between(0, 20),
  meanNeapRange: between(0, 20),
  highWaterHeight: v.optional(between(-20, 40)),
});

export const conditionsSchema = v.strictObject({
  departure: v.optional(timeSchema),
  timezone: v.optional(text),
  wind: v.optional(
    wordOr(
      v.literal('calm', 'must be "calm", a direction and a speed, or a forecast'),
      objectWith('forecast', forecastSchema, v.strictObject(windFields)),
    ),
  ),
  stream: v.optional(
    wordOr(v.picklist(['slack', 'by-tide'], 'must be "slack", "by-tide" or a direction and a rate'), streamSchema),
  ),
  streamPlaces: v.optional(list(streamPlaceSchema, 0, 100)),
  tide: v.optional(tideSchema),
  sea: v.optional(
    wordOr(
      v.literal('calm', 'must be "calm", a wave height or a swell'),
      objectWith('swell', v.strictObject({ swell: between(0, 20) }), v.strictObject({ height: between(0, 20) })),
    ),
  ),
  water: v.picklist(['sea', 'fresh']),
  batteryTemperatureC: v.optional(between(-40, 70)),
  waterTemperatureC: v.optional(between(-3, 45)),
});

const policySchema = v.strictObject({
  reserve: list(
    v.variant('kind', [
      v.strictObject({ kind: v.literal('thirds') }),
      v.strictObject({ kind: v.literal('share'), share: above(0, 0.9) }),
      v.strictObject({ kind: v.literal('minutes'), minutes: above(0, 1440) }),
    ]),
    0,
    10,
  ),
  manoeuvring: v.optional(between(0, 86_400)),
  drawnFactor: v.optional(between(1, 3)),
  maxWind: v.optional(between(0, 80)),
  maxWave: v.optional(between(0, 20)),
  depth: v.optional(between(0, 20)),
  timeAllowed: v.optional(above(0, LONGEST_STAY)),
});

const schemaOf = (leastWaypoints: number, leastItems: number) =>
  v.strictObject({
    version: v.literal(1),
    name: v.optional(text),
    craft: craftSchema,
    load: loadSchema(leastItems),
    route: v.strictObject({
      shape: v.picklist(['out-and-home', 'loop', 'one-way']),
      waypoints: list(waypointSchema, leastWaypoints, WAYPOINTS),
      speed: speedSchema,
    }),
    conditions: conditionsSchema,
    policy: policySchema,
    waters: v.optional(text),
    trials: v.optional(trialsSchema),
  });

export const tripSchema = schemaOf(2, 1);
export const draftSchema = schemaOf(0, 0);

/** Checks a whole trip: at least two waypoints and somebody or something aboard. */
export function readTrip(value: unknown): Result<Trip> {
  return read(value, tripSchema);
}

/** Checks a trip in the making, as a planner keeps it: the route and the load may still be empty. */
export function readDraft(value: unknown): Result<Trip> {
  return read(value, draftSchema);
}

/** Reads a whole trip from JSON text of at most 2 million characters. */
export function readTripText(text: string): Result<Trip> {
  const parsed = parseJsonText(text, TEXT_LIMIT);
  return parsed.ok ? readTrip(parsed.value) : parsed;
}

type SchemaTrip = v.InferOutput<typeof tripSchema>;

type WrittenTrip = Omit<Trip, 'craft'> & { readonly craft: Omit<Craft, 'calibration'> };

/** Trip while schema and shape agree field by field, otherwise never, which does not compile below. */
type AgreedTrip = Same<WrittenTrip, SchemaTrip> extends true ? Trip : never;

function read(value: unknown, schema: typeof tripSchema): Result<Trip> {
  const unfit = plainProblem(value, LIMITS) ?? versionProblem(value);
  if (unfit) return { ok: false, problems: [unfit] };
  const parsed = v.safeParse(schema, withoutCalibration(withoutSchemaName(value)), { message: '' });
  if (!parsed.success) return { ok: false, problems: parsed.issues.map(problemOf) };
  const trip: AgreedTrip = parsed.output;
  const problems = contradictions(trip);
  return problems.length > 0 ? { ok: false, problems } : { ok: true, value: trip };
}

/** A calibration that a trip brings along is dropped, never believed. */
function withoutCalibration(value: unknown): unknown {
  if (typeof value !== 'object' || value === null || !('craft' in value)) return value;
  const { craft } = value;
  if (typeof craft !== 'object' || craft === null || !('calibration' in craft)) return value;
  const { calibration: _, ...rest } = craft;
  return { ...value, craft: rest };
}

function versionProblem(value: unknown): Problem | undefined {
  if (typeof value !== 'object' || value === null || !('version' in value)) {
    const message = 'This is not a trip: it does not say which version of a trip it is';
    return { code: 'not-a-trip', path: '', message };
  }
  if (value.version === 1) return undefined;
  const given = typeof value.version === 'number' ? `version ${value.version}` : 'an unknown version';
  const message = `This trip is of ${given}; only version 1 can be read here. A newer page may read it`;
  return { code: 'unknown-version', path: 'version', message };
}
