import { type Geometry, KINDS, type Kind, MEMBERS } from '../../src/core/files/waters-properties.ts';
import type { Rule, ValueSchema } from '../../src/core/files/waters-rules.ts';

/** Positions, rings and lines of RFC 7946, as the reader checks them. That a ring ends where it starts it cannot say. */
const lon: ValueSchema = { type: 'number', minimum: -180, maximum: 180 };
const lat: ValueSchema = { type: 'number', minimum: -90, maximum: 90 };
const position = {
  type: 'array',
  prefixItems: [lon, lat],
  items: { type: 'number' },
  minItems: 2,
};
const rings = {
  type: 'array',
  minItems: 1,
  items: { type: 'array', minItems: 4, items: { $ref: '#/$defs/position' } },
};

const geometry = (type: string, coordinates: ValueSchema): ValueSchema => ({
  type: 'object',
  required: ['type', 'coordinates'],
  properties: { type: { const: type }, coordinates },
});

const GEOMETRIES: Record<Geometry, ValueSchema> = {
  area: {
    anyOf: [
      geometry('Polygon', { $ref: '#/$defs/rings' }),
      geometry('MultiPolygon', { type: 'array', minItems: 1, items: { $ref: '#/$defs/rings' } }),
    ],
  },
  point: geometry('Point', { $ref: '#/$defs/position' }),
  line: geometry('LineString', { type: 'array', minItems: 2, items: { $ref: '#/$defs/position' } }),
};

const box = (corner: readonly ValueSchema[]): ValueSchema => ({
  type: 'array',
  prefixItems: [...corner, ...corner],
  items: false,
  minItems: corner.length * 2,
});

/** Local waters, from the same rules as the reader's. */
export function watersSchema(): Record<string, unknown> {
  const kinds = [...KINDS] as [string, Kind][];
  return {
    type: 'object',
    required: ['type', 'features'],
    properties: {
      type: { const: 'FeatureCollection' },
      bbox: { anyOf: [box([lon, lat]), box([lon, lat, { type: 'number' }])] },
      ...schemasOf(MEMBERS),
      features: {
        type: 'array',
        items: {
          type: 'object',
          required: ['type', 'properties', 'geometry'],
          properties: {
            type: { const: 'Feature' },
            properties: {
              type: 'object',
              required: ['kind'],
              properties: { kind: { enum: kinds.map(([kind]) => kind) } },
            },
          },
          // One branch for each kind, so that an editor tells what that kind lacks.
          allOf: kinds.map(([kind, { needed, optional, geometry: wanted }]) => ({
            if: { properties: { properties: { properties: { kind: { const: kind } } } } },
            // biome-ignore lint/suspicious/noThenProperty: a word of JSON Schema
            then: {
              properties: {
                properties: { required: Object.keys(needed), properties: schemasOf({ ...needed, ...optional }) },
                geometry: { $ref: `#/$defs/${wanted}` },
              },
            },
          })),
        },
      },
    },
    $defs: { position, rings, ...GEOMETRIES },
  };
}

function schemasOf(rules: Readonly<Record<string, Rule>>): Record<string, ValueSchema> {
  return Object.fromEntries(Object.entries(rules).map(([field, { schema }]) => [field, schema]));
}
