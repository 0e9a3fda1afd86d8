import * as v from 'valibot';
import { driveSchema, foulingSchema, hullSchema, storeSchema } from './craft-schema.ts';
import { describesDay } from './iso-time.ts';
import { loadSchema } from './load-schema.ts';
import { above, between, id, list, text } from './schema-parts.ts';

/** Most runs, and most refills, of one boat. */
const MOST_RUNS = 500;
const MOST_SETUPS = 24;

const day = v.pipe(v.string(), v.check(describesDay, 'must be a date such as 2026-07-15'));
const consumedError = v.optional(between(0.005, 0.5));
/** kg or J. */
const amount = above(0, 1e10);
/** A day, s. */
const seconds = above(0, 86_400);

const runSchema = v.strictObject({
  id,
  day: v.optional(day),
  setup: id,
  load: loadSchema(0),
  passes: list(v.strictObject({ over: above(0, 40), way: v.picklist(['out', 'back']) }), 1, 20),
  stream: v.optional(between(-10, 10)),
  rpm: v.optional(between(50, 20_000)),
  fullThrottle: v.optional(v.boolean()),
  consumed: v.optional(
    v.variant('kind', [
      v.strictObject({ kind: v.literal('rate'), rate: above(0, 1e6) }),
      v.strictObject({ kind: v.literal('amount'), amount, seconds }),
    ]),
  ),
  consumedError,
  wind: v.optional(v.strictObject({ speed: between(0, 40), offBowDeg: between(0, 360) })),
  waveHeight: v.optional(between(0, 5)),
  leftOut: v.optional(v.boolean()),
  note: v.optional(text),
});

export const refillSchema = v.strictObject({
  id,
  day: v.optional(day),
  setup: id,
  load: loadSchema(0),
  spent: list(v.strictObject({ speed: between(0, 40), seconds: above(0, 864_000) }), 1, 200),
  amount,
  readAt: v.optional(v.picklist(['battery', 'socket'])),
  consumedError,
  waveHeight: v.optional(between(0, 5)),
  leftOut: v.optional(v.boolean()),
  note: v.optional(text),
});

export const trialsSchema = v.strictObject({
  hull: hullSchema,
  water: v.picklist(['sea', 'fresh']),
  measuredBy: v.optional(text),
  fouling: v.optional(foulingSchema),
  setups: list(v.strictObject({ id, drive: driveSchema, store: storeSchema }), 1, MOST_SETUPS),
  runs: list(runSchema, 0, MOST_RUNS),
  refills: list(refillSchema, 0, MOST_RUNS),
});
