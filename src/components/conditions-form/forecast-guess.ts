import type { WindUnit } from '../../core/units/wind-speed.ts';

/** Which column is likely what; undefined where the headings do not tell. */
export interface ForecastGuess {
  readonly time?: string;
  readonly direction?: string;
  readonly speed?: string;
  readonly gust?: string;
  readonly speedUnit?: WindUnit;
  readonly gustUnit?: WindUnit;
}

const UNITS: readonly (readonly [RegExp, WindUnit])[] = [
  [/(?:^|[^a-z])(?:kn|kts?|knots?|knoten)(?:$|[^a-z])/i, 'kn'],
  [/km ?\/? ?h|kmh|kph/i, 'km/h'],
  [/(?:^|[^a-z])mph(?:$|[^a-z])/i, 'mph'],
  [/m ?\/ ?s|(?:^|[^a-z])m ?s-1|(?:^|[^a-z])mps(?:$|[^a-z])/i, 'm/s'],
  [/(?:^|[^a-z])(?:bft|beaufort)(?:$|[^a-z])/i, 'Bft'],
];

const TIME = /time|date|hour|valid|zeit|datum|heure|uhr/i;
const GUST = /gust|b(?:ö|oe)e?n?|rafale|peak|max/i;
const DIRECTION = /dir|richtung|bearing|(?:^|[^a-z])(?:from|deg|dd)(?:$|[^a-z])/i;
const SPEED = /speed|geschw|vitesse|mean|wind|(?:^|[^a-z])(?:ff|ws|wspd|force|bft)(?:$|[^a-z])/i;
const STAMP = /^\d{4}-\d\d-\d\d[T ]\d\d:\d\d/;
const POINT = /^[NESW]{1,3}$/i;

/** Guesses by the headings, and by the first row where they say nothing. The user has the last word. */
export function forecastGuess(columns: readonly string[], first: readonly string[]): ForecastGuess {
  const taken = new Set<string>();
  const take = (fits: (column: string, cell: string) => boolean): string | undefined => {
    const found = columns.find((column, i) => !taken.has(column) && fits(column, first[i] ?? ''));
    if (found !== undefined) taken.add(found);
    return found;
  };
  // The headings of services join words by underscores, which are letters to a pattern.
  const words = (column: string) => column.replaceAll('_', ' ').replace(/([a-z])([A-Z])/g, '$1 $2');
  const time =
    take((column) => TIME.test(words(column)) && !/wind/i.test(column)) ?? take((_, cell) => STAMP.test(cell));
  const direction =
    take((column) => DIRECTION.test(words(column)) && !GUST.test(words(column))) ?? take((_, cell) => POINT.test(cell));
  const gust = take((column) => GUST.test(words(column)));
  const speed = take((column) => SPEED.test(words(column)));
  const speedUnit = unitIn(speed);
  const gustUnit = unitIn(gust);
  return {
    ...(time !== undefined && { time }),
    ...(direction !== undefined && { direction }),
    ...(speed !== undefined && { speed }),
    ...(gust !== undefined && { gust }),
    ...(speedUnit && { speedUnit }),
    ...(gustUnit && { gustUnit }),
  };
}

function unitIn(column: string | undefined): WindUnit | undefined {
  const text = column?.replaceAll('_', ' ') ?? '';
  return UNITS.find(([pattern]) => pattern.test(text))?.[1];
}
