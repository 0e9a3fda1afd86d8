const SEASON = /^(\d\d-\d\d)\/(\d\d-\d\d)$/;
const DATE = /^\d{4}-(\d\d-\d\d)/;

/**
 * Whether a zone's season, MM-DD/MM-DD with both days included or "all year", holds on an ISO 8601 date as written
 * there (local date). It may run over new year. Without a date, or unreadable, it counts as in season.
 */
export function inSeason(season: string | undefined, isoDate: string | undefined): boolean {
  const span = season === undefined ? null : SEASON.exec(season.trim());
  const day = isoDate === undefined ? undefined : DATE.exec(isoDate)?.[1];
  if (!span || day === undefined) return true;
  const first = span[1]!;
  const last = span[2]!;
  return first <= last ? first <= day && day <= last : day >= first || day <= last;
}
