import type { Sheet } from './sheet.ts';

export const KIND_NAMES = ['land', 'shoal', 'speed-limit', 'keep-out', 'landing', 'stream', 'route'] as const;
export type KindName = (typeof KIND_NAMES)[number];

export type FieldName =
  | 'name'
  | 'note'
  | 'dries_m'
  | 'limit_kn'
  | 'reason'
  | 'season'
  | 'id'
  | 'access'
  | 'fuel'
  | 'power'
  | 'hire_desk'
  | 'usable'
  | 'flood_deg'
  | 'ebb_deg'
  | 'shape';

interface KindForm {
  readonly geometry: 'Polygon' | 'Point' | 'LineString';
  readonly fields: readonly FieldName[];
}

/** What is asked of each kind, in the order of the form; the rules themselves are the reader's. */
export const FORMS: Readonly<Record<KindName, KindForm>> = {
  land: { geometry: 'Polygon', fields: ['name', 'note'] },
  shoal: { geometry: 'Polygon', fields: ['name', 'dries_m', 'note'] },
  'speed-limit': { geometry: 'Polygon', fields: ['name', 'limit_kn', 'note'] },
  'keep-out': { geometry: 'Polygon', fields: ['name', 'season', 'reason', 'note'] },
  landing: {
    geometry: 'Point',
    fields: ['name', 'access', 'fuel', 'power', 'hire_desk', 'usable', 'dries_m', 'id'],
  },
  stream: { geometry: 'Point', fields: ['name', 'flood_deg', 'ebb_deg', 'id'] },
  route: { geometry: 'LineString', fields: ['name', 'shape', 'note', 'id'] },
};

export const FIGURES: ReadonlySet<FieldName> = new Set<FieldName>(['dries_m', 'limit_kn', 'flood_deg', 'ebb_deg']);
export const FLAGS: ReadonlySet<FieldName> = new Set<FieldName>(['fuel', 'power', 'hire_desk']);

export function describesKind(kind: string): kind is KindName {
  return (KIND_NAMES as readonly string[]).includes(kind);
}

/** A new feature of a kind at the end, with nothing drawn yet. */
export function withNew(sheet: Sheet, kind: KindName): Sheet {
  const { geometry } = FORMS[kind];
  const properties = { kind, name: '', ...(kind === 'stream' && { hours: [] }) };
  const coordinates = geometry === 'Polygon' ? [[]] : [];
  const feature = { type: 'Feature', properties, geometry: { type: geometry, coordinates } };
  return { ...sheet, features: [...sheet.features, feature] };
}
