import { daysIn } from './iso-time.ts';
import { TEXT_LENGTH } from './schema-parts.ts';

/** Says what a value must be when it is not. */
type Check = (value: unknown) => string | undefined;

interface Kind {
  /** A zone is an area, anything else a point. */
  readonly area: boolean;
  readonly needed: Readonly<Record<string, Check>>;
  readonly optional: Readonly<Record<string, Check>>;
}

const text: Check = (value) => {
  if (typeof value !== 'string') return 'must be text';
  return value.length > TEXT_LENGTH ? `may have at most ${TEXT_LENGTH} characters` : undefined;
};

const name: Check = (value) => (value === '' ? 'must not be empty' : text(value));

const flag: Check = (value) => (typeof value === 'boolean' ? undefined : 'must be true or false');

const between =
  (least: number, most: number, unit: string): Check =>
  (value) =>
    typeof value === 'number' && value >= least && value <= most
      ? undefined
      : `must be a number of ${unit} from ${least} to ${most}`;

const degrees = between(0, 360, 'degrees');
const rate = between(0, 20, 'knots');

const SEASON = /^(\d\d)-(\d\d)\/(\d\d)-(\d\d)$/;
/** Any leap year, so that 29 February is a day. */
const LEAP_YEAR = 2000;

const season: Check = (value) => {
  if (value === 'all year') return undefined;
  const [, fromMonth, fromDay, toMonth, toDay] =
    (typeof value === 'string' ? SEASON.exec(value) : null)?.map(Number) ?? [];
  return dayOfYear(fromMonth, fromDay) && dayOfYear(toMonth, toDay)
    ? undefined
    : 'must be "all year" or two days such as 05-15/09-15';
};

function dayOfYear(month = 0, day = 0): boolean {
  return month >= 1 && month <= 12 && day >= 1 && day <= daysIn(month, LEAP_YEAR);
}

const ROW = { h: between(-13, 13, 'hours'), set_deg: degrees, spring_kn: rate, neap_kn: rate };

const hours: Check = (value) => {
  if (!Array.isArray(value) || value.length < 2 || value.length > 60) return 'must be a list of 2 to 60 rows';
  for (const [index, row] of value.entries()) {
    for (const [field, check] of Object.entries(ROW)) {
      const wrong = check(row?.[field]);
      if (wrong) return `has a wrong row ${index + 1}: "${field}" ${wrong}`;
    }
    if (index > 0 && row.h <= value[index - 1].h) return `must have rising hours, row ${index + 1} has not`;
  }
  return undefined;
};

const zone = { area: true, needed: { name }, optional: { note: text } } satisfies Kind;

export const KINDS: ReadonlyMap<unknown, Kind> = new Map<unknown, Kind>([
  ['land', zone],
  ['shoal', { ...zone, optional: { note: text, dries_m: between(-200, 30, 'metres') } }],
  ['speed-limit', { ...zone, needed: { name, limit_kn: between(0.1, 100, 'knots') } }],
  ['keep-out', { ...zone, optional: { note: text, reason: text, season } }],
  [
    'landing',
    {
      area: false,
      needed: { name },
      optional: {
        id: name,
        access: text,
        fuel: flag,
        power: flag,
        hire_desk: flag,
        usable: text,
        dries_m: between(-200, 30, 'metres'),
      },
    },
  ],
  ['stream', { area: false, needed: { name, hours }, optional: { id: name, flood_deg: degrees, ebb_deg: degrees } }],
]);

/** Properties that are not what their kind asks for; fields of others are left alone. */
export function propertyFaults(kind: Kind, properties: Readonly<Record<string, unknown>>) {
  const faults: { code: string; field: string; message: string }[] = [];
  for (const [field, check] of Object.entries({ ...kind.needed, ...kind.optional })) {
    const value = properties[field];
    if (value === undefined) {
      if (field in kind.needed) faults.push({ code: 'missing', field, message: `"${field}" is missing` });
      continue;
    }
    const wrong = check(value);
    if (wrong) faults.push({ code: 'invalid', field, message: `"${field}" ${wrong}` });
  }
  return faults;
}
