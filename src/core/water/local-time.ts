import { timeAt } from './clock.ts';

/** What a date and a clock time mean in a time zone. Instants s since 1970, offsets s east of UTC. */
export type LocalTime =
  | { readonly kind: 'once'; readonly seconds: number; readonly offset: number }
  /** The clock goes back and shows it twice. */
  | {
      readonly kind: 'twice';
      readonly first: { readonly seconds: number; readonly offset: number };
      readonly second: { readonly seconds: number; readonly offset: number };
    }
  /** The clock goes forward past it: `change` is the instant of the change, `shown` what the clock shows from then on. */
  | { readonly kind: 'skipped'; readonly change: number; readonly shown: string }
  | { readonly kind: 'no-such-zone' }
  /** No date of the calendar, or no time of the day. */
  | { readonly kind: 'no-such-time' };

/**
 * The instant of a day (2026-03-29), a clock time (02:30, seconds optional) and a zone of the IANA database
 * (Europe/Paris), from the platform's own copy of the database.
 */
export function localTime(day: string, clock: string, zone: string): LocalTime {
  const as = formatFor(zone);
  if (!as) return { kind: 'no-such-zone' };
  const shown = Date.parse(`${day}T${clock}Z`) / 1000;
  const wellFormed = /^\d{4}-\d\d-\d\d$/.test(day) && /^([01]\d|2[0-3]):[0-5]\d(:[0-5]\d)?$/.test(clock);
  // Date.parse lets 31 February pass as a day of March.
  if (!wellFormed || Number.isNaN(shown) || !timeAt(shown, 0).startsWith(day)) return { kind: 'no-such-time' };

  // Zones lie within 15 h of UTC, and two changes within 30 h of each other are not known.
  const offsets = [...new Set([shown - 15 * 3600, shown + 15 * 3600].map((at) => offsetIn(as, at)))];
  const found = offsets
    .map((offset) => ({ seconds: shown - offset, offset }))
    .filter(({ seconds, offset }) => offsetIn(as, seconds) === offset)
    .sort((a, b) => a.seconds - b.seconds);
  const [first, second] = found;
  if (first && second) return { kind: 'twice', first, second };
  if (first) return { kind: 'once', ...first };
  const change = changeBetween(as, shown - 15 * 3600, shown + 15 * 3600);
  return { kind: 'skipped', change, shown: timeAt(change, offsetIn(as, change)) };
}

/** Offset of a zone from UTC at an instant, s, positive east; undefined: the platform knows no such zone. */
export function zoneOffset(seconds: number, zone: string): number | undefined {
  const as = formatFor(zone);
  return as && offsetIn(as, seconds);
}

function formatFor(zone: string): Intl.DateTimeFormat | undefined {
  try {
    return new Intl.DateTimeFormat('en-u-ca-iso8601-nu-latn', {
      timeZone: zone,
      hourCycle: 'h23',
      year: 'numeric',
      month: 'numeric',
      day: 'numeric',
      hour: 'numeric',
      minute: 'numeric',
      second: 'numeric',
    });
  } catch {
    return undefined;
  }
}

function offsetIn(as: Intl.DateTimeFormat, seconds: number): number {
  const whole = Math.floor(seconds);
  const part: Record<string, number> = {};
  for (const { type, value } of as.formatToParts(whole * 1000)) part[type] = Number(value);
  const { year = 0, month = 1, day = 1, hour = 0, minute = 0, second = 0 } = part;
  return Date.UTC(year, month - 1, day, hour, minute, second) / 1000 - whole;
}

/** First second at which the offset is no longer that of `from`. */
function changeBetween(as: Intl.DateTimeFormat, from: number, to: number): number {
  const before = offsetIn(as, from);
  let low = from;
  let high = to;
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    if (offsetIn(as, middle) === before) low = middle;
    else high = middle;
  }
  return high;
}
