import { HOUR, MINUTE } from '../units/convert.ts';

/** Seconds of a day. */
export const DAY = 24 * HOUR;

/** Seconds since 1970-01-01T00:00Z of a time in ISO 8601 with its offset. Doors check such times; others throw. */
export function secondsOf(time: string): number {
  const ms = /(?:Z|[+-]\d\d:\d\d)$/.test(time) ? Date.parse(time) : Number.NaN;
  if (Number.isNaN(ms)) throw new RangeError(`no time with an offset: ${time}`);
  return ms / 1000;
}

/** Offset of such a time from UTC, s, positive east; `Z` is 0. */
export function offsetOf(time: string): number {
  const [, sign, hours, minutes] = /([+-])(\d\d):(\d\d)$/.exec(time) ?? [];
  return sign === undefined ? 0 : (sign === '-' ? -1 : 1) * (Number(hours) * HOUR + Number(minutes) * MINUTE);
}

/** An instant, s since 1970, as ISO 8601 to the second on the clock of an offset, s. */
export function timeAt(seconds: number, offset: number): string {
  const size = Math.round(Math.abs(offset) / MINUTE);
  const zone = size === 0 ? 'Z' : `${offset < 0 ? '-' : '+'}${two(Math.floor(size / 60))}:${two(size % 60)}`;
  return new Date(Math.round(seconds + offset) * 1000).toISOString().slice(0, 19) + zone;
}

/** Start of the day of the calendar on the clock of an offset, s, in which an instant lies: s since 1970. */
export function dayStart(seconds: number, offset: number): number {
  return Math.floor((seconds + offset) / DAY) * DAY - offset;
}

function two(value: number): string {
  return String(value).padStart(2, '0');
}
