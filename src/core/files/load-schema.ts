import * as v from 'valibot';
import { positionSchema } from './craft-schema.ts';
import { above, between, id, list, text } from './schema-parts.ts';

const ITEMS = 60;

const aboardSchema = v.strictObject({
  id,
  kind: v.picklist(['adult', 'child', 'dog', 'gear']),
  name: v.optional(text),
  mass: above(0, 2000),
  station: v.optional(id),
  at: v.optional(positionSchema),
  helm: v.optional(v.boolean()),
});

/** Who and what is aboard, at least `least` of them. */
export const loadSchema = (least: number) =>
  v.strictObject({
    items: list(aboardSchema, least, ITEMS),
    fill: v.optional(between(0, 1)),
    fillKnownBy: v.optional(v.picklist(['measured', 'gauge'])),
  });
