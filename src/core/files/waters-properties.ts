import { between, day, degrees, flag, hours, name, oneOf, type Rule, season, text } from './waters-rules.ts';

/** Which geometries of RFC 7946 a kind may have. */
export type Geometry = 'area' | 'point' | 'line';

export interface Kind {
  readonly geometry: Geometry;
  readonly needed: Readonly<Record<string, Rule>>;
  readonly optional: Readonly<Record<string, Rule>>;
}

const zone = { geometry: 'area', needed: { name }, optional: { note: text } } satisfies Kind;
const dries = between(-200, 30, 'metres');

export const KINDS: ReadonlyMap<unknown, Kind> = new Map<unknown, Kind>([
  ['land', zone],
  ['shoal', { ...zone, optional: { note: text, dries_m: dries } }],
  ['speed-limit', { ...zone, needed: { name, limit_kn: between(0.1, 100, 'knots') } }],
  ['keep-out', { ...zone, optional: { note: text, reason: text, season } }],
  [
    'landing',
    {
      geometry: 'point',
      needed: { name },
      optional: {
        id: name,
        access: text,
        fuel: flag,
        power: flag,
        hire_desk: flag,
        usable: text,
        dries_m: dries,
      },
    },
  ],
  [
    'stream',
    { geometry: 'point', needed: { name, hours }, optional: { id: name, flood_deg: degrees, ebb_deg: degrees } },
  ],
  [
    'route',
    {
      geometry: 'line',
      needed: { name },
      optional: { id: name, shape: oneOf(['out-and-home', 'loop', 'one-way']), note: text },
    },
  ],
]);

/** Members of the collection itself: what it is called, and who answers for it until when. */
export const MEMBERS: Readonly<Record<string, Rule>> = {
  name: { fault: (value) => (typeof value === 'string' ? undefined : 'must be text'), schema: { type: 'string' } },
  about: { fault: (value) => (typeof value === 'string' ? undefined : 'must be text'), schema: { type: 'string' } },
  responsible: text,
  surveyed: day,
  validUntil: day,
};

/** Properties that are not what their kind asks for; fields of others are left alone. */
export function propertyFaults(kind: Kind, properties: Readonly<Record<string, unknown>>) {
  const faults: { code: string; field: string; message: string }[] = [];
  for (const [field, rule] of Object.entries({ ...kind.needed, ...kind.optional })) {
    const value = properties[field];
    if (value === undefined) {
      if (field in kind.needed) faults.push({ code: 'missing', field, message: `"${field}" is missing` });
      continue;
    }
    const wrong = rule.fault(value);
    if (wrong) faults.push({ code: 'invalid', field, message: `"${field}" ${wrong}` });
  }
  return faults;
}
