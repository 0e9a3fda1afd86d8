import { DAY, dayStart } from '../../core/water/clock.ts';

/** s east of UTC on this computer's clock at a time, s since 1970. */
export function offsetAt(seconds: number): number {
  return -new Date(seconds * 1000).getTimezoneOffset() * 60;
}

/** "14:05", with the day where it is not that of `now`: "Sat 19 Jun, 14:05". */
export function clockText(seconds: number, now: number, lang: string): string {
  const sameDay = dayOf(seconds) === dayOf(now);
  return new Intl.DateTimeFormat(lang, {
    hour: '2-digit',
    minute: '2-digit',
    hourCycle: 'h23',
    ...(!sameDay && { weekday: 'short', day: 'numeric', month: 'short' }),
  }).format(new Date(seconds * 1000));
}

/** ISO date on this computer's clock. */
export function dayOf(seconds: number): string {
  return new Date((seconds + offsetAt(seconds)) * 1000).toISOString().slice(0, 10);
}

/** An ISO date as the language writes it. */
export function dayText(day: string, lang: string): string {
  return new Intl.DateTimeFormat(lang, { dateStyle: 'medium', timeZone: 'UTC' }).format(new Date(`${day}T12:00Z`));
}

/** The last second of the day of `now`. */
export function endOfDay(now: number): number {
  return dayStart(now, offsetAt(now)) + DAY - 1;
}

/** A reading of a clock on the day of `now`, such as "14:05", s since 1970; undefined where it is none. */
export function timeToday(reading: string, now: number): number | undefined {
  const part = /^(\d\d):(\d\d)/.exec(reading);
  if (!part) return undefined;
  const at = new Date(now * 1000);
  at.setHours(Number(part[1]), Number(part[2]), 0, 0);
  return at.getTime() / 1000;
}

/** What an input of a time shows for it. */
export function reading(seconds: number | undefined): string {
  if (seconds === undefined) return '';
  const at = new Date(seconds * 1000);
  return `${String(at.getHours()).padStart(2, '0')}:${String(at.getMinutes()).padStart(2, '0')}`;
}
