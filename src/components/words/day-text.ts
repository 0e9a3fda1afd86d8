import { spokenNow } from './spoken.ts';

/** An ISO date as the language spoken now writes it; anything else as it is. */
export function dayText(day: string): string {
  const at = new Date(`${day}T12:00Z`);
  if (Number.isNaN(at.getTime())) return day;
  return new Intl.DateTimeFormat(spokenNow().tag, { dateStyle: 'long', timeZone: 'UTC' }).format(at);
}
