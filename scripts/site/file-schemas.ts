import { type ConversionConfig, type JsonSchema, toJsonSchema } from '@valibot/to-json-schema';
import * as v from 'valibot';
import { deskSchema, fuelNoteSchema, hireSchema, morningSchema } from '../../src/core/files/desk-file.ts';
import { describesAddress, fleetSchema } from '../../src/core/files/fleet-file.ts';
import { describesDay, describesTime } from '../../src/core/files/iso-time.ts';
import { profileSchema } from '../../src/core/files/profile-file.ts';
import { draftSchema, tripSchema } from '../../src/core/files/trip-schema.ts';
import { watersSchema } from './waters-schema.ts';

type Loose = Record<string, unknown>;
export type SchemaName = 'trip' | 'profile' | 'waters' | 'fleet' | 'saved' | 'desk';

/** What our own checks ask of a text, as far as a pattern can say it: that the calendar has the day it cannot. */
const PATTERNS = new Map<unknown, string>([
  [describesDay, '^\\d{4}-(0[1-9]|1[0-2])-(0[1-9]|[12]\\d|3[01])$'],
  [
    describesTime,
    '^\\d{4}-(0[1-9]|1[0-2])-(0[1-9]|[12]\\d|3[01])T([01]\\d|2[0-3]):[0-5]\\d(:[0-5]\\d(\\.\\d{1,9})?)?(Z|[+-](0\\d|1[0-4]):[0-5]\\d)$',
  ],
  [describesAddress, '^https?://[^\\s/]+'],
]);

const CONVERSION: ConversionConfig = {
  target: 'draft-2020-12',
  // A list is judged by its length before what is in it, which the converter takes for two schemas; it joins them well.
  errorMode: 'ignore',
  overrideAction: ({ valibotAction, jsonSchema }) => {
    if (valibotAction.type !== 'check') return undefined;
    const pattern = PATTERNS.get((valibotAction as unknown as { requirement: unknown }).requirement);
    if (pattern === undefined) throw new RangeError('a check of a file that no schema says');
    return { ...jsonSchema, pattern };
  },
};

/**
 * The files of the project as JSON schemas (draft 2020-12), made from what their readers check. What goes through a door
 * of its own names the schema of that door.
 */
export function fileSchemas(site: string): Record<SchemaName, Loose> {
  const whole = (name: SchemaName, title: string, schema: Loose): Loose => {
    const { $schema: _, ...rest } = schema;
    const properties = { $schema: {}, ...(rest.properties as Loose) };
    const $id = new URL(`schemas/${name}.json`, site.endsWith('/') ? site : `${site}/`).href;
    return { $schema: 'https://json-schema.org/draft/2020-12/schema', $id, title, ...rest, properties };
  };
  return {
    trip: whole('trip', 'A trip, version 1', believing(converted(tripSchema))),
    profile: whole('profile', 'A measured boat, version 1', converted(profileSchema)),
    waters: whole('waters', 'Local waters: GeoJSON with kinds and properties', watersSchema()),
    fleet: whole('fleet', 'The fleet of a hire desk, version 1', fleet()),
    saved: whole('saved', 'Saved trips and boats, version 1', converted(savedSchema)),
    desk: whole('desk', 'All that a hire desk kept, version 1', desk()),
  };
}

function converted(schema: v.GenericSchema): Loose {
  return toJsonSchema(schema as Parameters<typeof toJsonSchema>[0], CONVERSION) as JsonSchema as Loose;
}

/** A calibration that a trip brings along is dropped by its reader, so it may stand there. */
function believing(trip: Loose): Loose {
  const { craft } = trip.properties as { craft: { properties: Loose } };
  craft.properties.calibration = {};
  return trip;
}

const boat = v.object({ craft: tripSchema.entries.craft, trials: tripSchema.entries.trials });
const entry = { name: v.optional(v.unknown()), savedAt: v.optional(v.unknown()) };
/** The reader takes what it can of such a file, so it asks less than others do. */
const savedSchema = v.object({
  format: v.literal('homeleg-saved'),
  version: v.literal(1),
  entries: v.pipe(
    v.array(
      v.variant('kind', [
        v.object({ ...entry, kind: v.literal('trip'), trip: draftSchema }),
        v.object({ ...entry, kind: v.literal('boat'), boat }),
      ]),
    ),
    v.maxLength(500),
  ),
});

function fleet(): Loose {
  const schema = converted(fleetSchema);
  const properties = schema.properties as Record<string, Loose>;
  properties.localWaters = { $ref: 'waters.json' };
  const measured = (found: unknown): void => {
    if (typeof found !== 'object' || found === null) return;
    const { properties: fields } = found as { properties?: Loose };
    if (fields && 'profile' in fields) fields.profile = { $ref: 'profile.json' };
    for (const inner of Object.values(found)) measured(inner);
  };
  measured(schema);
  return schema;
}

function desk(): Loose {
  const schema = converted(deskSchema);
  const properties = schema.properties as Record<string, Loose>;
  const [hire, morning, note] = [hireSchema, morningSchema, fuelNoteSchema].map(converted) as [Loose, Loose, Loose];
  (hire.properties as Loose).trip = { $ref: 'trip.json' };
  // Each has parts of its own and so stands as a schema inside this one.
  const within = (name: string, inner: Loose) => ({ ...inner, $id: `desk-${name}.json` });
  properties.fleet = { $ref: 'fleet.json' };
  properties.morning = within('morning', morning);
  properties.hires = { ...properties.hires, items: within('hire', hire) };
  properties.fuelNotes = { ...properties.fuelNotes, items: within('fuel-note', note) };
  return schema;
}
