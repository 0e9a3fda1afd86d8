/** How a language writes figures: what stands before decimals, between thousands, and from how many digits on. */
interface Signs {
  readonly decimal: string;
  readonly group: string;
  readonly groupedFrom: number;
}

const POINT: Signs = { decimal: '.', group: ',', groupedFrom: 4 };
const COMMA: Signs = { decimal: ',', group: '.', groupedFrom: 4 };
const FRENCH: Signs = { ...COMMA, group: '\u202f' };
const SPANISH: Signs = { ...COMMA, groupedFrom: 5 };

/**
 * The languages of the site, without asking `Intl`: the first number format of a page keeps a slow phone busy for a
 * tenth of a second, before it has shown anything. The tests hold these against `Intl`, which writes all other languages.
 */
const KNOWN: ReadonlyMap<string, Signs> = new Map([
  ['en', POINT],
  ['en-US', POINT],
  ['en-GB', POINT],
  ['de', COMMA],
  ['de-DE', COMMA],
  ['fr', FRENCH],
  ['fr-FR', FRENCH],
  ['es', SPANISH],
  ['es-ES', SPANISH],
]);
/** Beyond it a double has no decimals left to round. */
const LARGEST = 1e15;

export interface Places {
  /** Decimals always written; none. */
  readonly least?: number;
  /** Decimals at most; three. */
  readonly most?: number;
  readonly grouped?: boolean;
}

/** A figure as `lang` writes it, rounded half away from zero, with the real minus sign; no minus before a zero. */
export function numberText(lang: string, value: number, { least = 0, most = 3, grouped = true }: Places = {}): string {
  const signs = KNOWN.get(lang);
  const size = Math.abs(value);
  if (!signs || !(size < LARGEST)) return byIntl(lang, value, least, most, grouped);
  const steps = scaled(size, most);
  const digits = String(steps).padStart(most + 1, '0');
  const whole = digits.slice(0, digits.length - most);
  let fraction = most > 0 ? digits.slice(-most) : '';
  while (fraction.length > least && fraction.endsWith('0')) fraction = fraction.slice(0, -1);
  const minus = value < 0 && steps > 0 ? '\u2212' : '';
  const front = grouped && whole.length >= signs.groupedFrom ? inThrees(whole, signs.group) : whole;
  return minus + front + (fraction && signs.decimal + fraction);
}

/** A figure with this many digits that count, not grouped: 0.0123, 1.23, 1230. */
export function figuresText(lang: string, value: number, figures: number): string {
  const rounded = Number(value.toPrecision(figures));
  const tens = rounded === 0 ? 0 : Math.floor(Math.log10(Math.abs(rounded)));
  return numberText(lang, rounded, { most: Math.min(Math.max(figures - 1 - tens, 0), 12), grouped: false });
}

/** What stands before the decimals in this language. */
export function decimalSign(lang: string): string {
  const signs = KNOWN.get(lang);
  if (signs) return signs.decimal;
  try {
    const parts = new Intl.NumberFormat(lang).formatToParts(1.5);
    return parts.find((part) => part.type === 'decimal')?.value ?? '.';
  } catch {
    return '.';
  }
}

/** The locale that figures of this `lang` are written in: a page may carry any; one that browsers cannot read is English. */
export function numberLocale(lang: string): string {
  if (KNOWN.has(lang)) return lang;
  try {
    return Intl.NumberFormat.supportedLocalesOf(lang)[0] ?? 'en';
  } catch {
    return 'en';
  }
}

/** In steps of the last decimal. Shifted as text, since 1.005 times 100 falls below the half. */
function scaled(size: number, places: number): number {
  const steps = Math.round(Number(`${size}e${places}`));
  return Number.isNaN(steps) ? Math.round(size * 10 ** places) : steps;
}

function inThrees(whole: string, sign: string): string {
  return whole.replace(/\B(?=(\d{3})+$)/g, sign);
}

const made = new Map<string, Intl.NumberFormat>();

function byIntl(lang: string, value: number, least: number, most: number, grouped: boolean): string {
  const key = `${lang} ${least} ${most} ${grouped}`;
  let format = made.get(key);
  if (!format) {
    format = new Intl.NumberFormat(lang, {
      minimumFractionDigits: least,
      maximumFractionDigits: most,
      signDisplay: 'negative',
      useGrouping: grouped && 'auto',
      numberingSystem: 'latn',
    });
    made.set(key, format);
  }
  return format.format(value).replace('-', '\u2212');
}
