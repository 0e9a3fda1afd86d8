import { daysIn, describesDay } from './iso-time.ts';
import { TEXT_LENGTH } from './text-length.ts';

/** JSON Schema of a value, as far as a schema can say it. */
export type ValueSchema = Readonly<Record<string, unknown>>;

/** What a value must be: said in words when it is not, and as a schema for editors and other programs. */
export interface Rule {
  readonly fault: (value: unknown) => string | undefined;
  readonly schema: ValueSchema;
}

export const text: Rule = {
  fault: (value) => {
    if (typeof value !== 'string') return 'must be text';
    return value.length > TEXT_LENGTH ? `may have at most ${TEXT_LENGTH} characters` : undefined;
  },
  schema: { type: 'string', maxLength: TEXT_LENGTH },
};

/** Text that is there. */
export const name: Rule = {
  fault: (value) => (value === '' ? 'must not be empty' : text.fault(value)),
  schema: { ...text.schema, minLength: 1 },
};

export const flag: Rule = {
  fault: (value) => (typeof value === 'boolean' ? undefined : 'must be true or false'),
  schema: { type: 'boolean' },
};

export const between = (least: number, most: number, unit: string): Rule => ({
  fault: (value) =>
    typeof value === 'number' && value >= least && value <= most
      ? undefined
      : `must be a number of ${unit} from ${least} to ${most}`,
  schema: { type: 'number', minimum: least, maximum: most },
});

export const oneOf = (words: readonly string[]): Rule => ({
  fault: (value) => (words.includes(value as string) ? undefined : `must be one of: ${words.join(', ')}`),
  schema: { enum: words },
});

/** An ISO date of the calendar. */
export const day: Rule = {
  fault: (value) =>
    typeof value === 'string' && describesDay(value) ? undefined : 'must be a date such as 2027-04-30',
  schema: { type: 'string', pattern: '^\\d{4}-(0[1-9]|1[0-2])-(0[1-9]|[12]\\d|3[01])$' },
};

const SEASON = /^(\d\d)-(\d\d)\/(\d\d)-(\d\d)$/;
/** Any leap year, so that 29 February is a day. */
const LEAP_YEAR = 2000;
const DAY_OF_YEAR = '(0[1-9]|1[0-2])-(0[1-9]|[12]\\d|3[01])';

export const season: Rule = {
  fault: (value) => {
    if (value === 'all year') return undefined;
    const [, fromMonth, fromDay, toMonth, toDay] =
      (typeof value === 'string' ? SEASON.exec(value) : null)?.map(Number) ?? [];
    return dayOfYear(fromMonth, fromDay) && dayOfYear(toMonth, toDay)
      ? undefined
      : 'must be "all year" or two days such as 05-15/09-15';
  },
  schema: { type: 'string', pattern: `^(all year|${DAY_OF_YEAR}/${DAY_OF_YEAR})$` },
};

function dayOfYear(month = 0, of = 0): boolean {
  return month >= 1 && month <= 12 && of >= 1 && of <= daysIn(month, LEAP_YEAR);
}

export const degrees = between(0, 360, 'degrees');
const rate = between(0, 20, 'knots');
const ROW = { h: between(-13, 13, 'hours'), set_deg: degrees, spring_kn: rate, neap_kn: rate };
const HOUR_ROWS = { least: 2, most: 60 } as const;

/** Rows of a stream place by hours from high water; that they rise only the reader knows. */
export const hours: Rule = {
  fault: (value) => {
    const { least, most } = HOUR_ROWS;
    if (!Array.isArray(value) || value.length < least || value.length > most)
      return `must be a list of ${least} to ${most} rows`;
    for (const [index, row] of value.entries()) {
      for (const [field, rule] of Object.entries(ROW)) {
        const wrong = rule.fault(row?.[field]);
        if (wrong) return `has a wrong row ${index + 1}: "${field}" ${wrong}`;
      }
      if (index > 0 && row.h <= value[index - 1].h) return `must have rising hours, row ${index + 1} has not`;
    }
    return undefined;
  },
  schema: {
    type: 'array',
    minItems: HOUR_ROWS.least,
    maxItems: HOUR_ROWS.most,
    items: {
      type: 'object',
      required: Object.keys(ROW),
      properties: Object.fromEntries(Object.entries(ROW).map(([field, rule]) => [field, rule.schema])),
    },
  },
};
