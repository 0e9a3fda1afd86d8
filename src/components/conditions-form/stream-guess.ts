import type { StreamColumns, StreamUnit } from '../../core/files/stream-table.ts';

/** Which column is likely what; undefined where the headings do not tell. */
export type StreamGuess = Partial<StreamColumns>;

const HOUR = /^h$|hour|stunde|heure|hora|(?:^|[^a-z])hw/i;
const SET = /set|dir|bearing|richtung|deg|direc/i;
const SPRINGS = /spring|spr(?:$|[^a-z])|spt|vives?|vivas?/i;
const NEAPS = /neap|nipp|np?t(?:$|[^a-z])|mortes?|muertas?/i;
const NAME = /name|place|ort|lieu|lugar|nombre|nom/i;
const LAT = /^lat|breite/i;
const LON = /^lon|^lng|länge|laenge/i;
const UNITS: readonly (readonly [RegExp, StreamUnit])[] = [
  [/(?:^|[^a-z])(?:kn|kts?|knots?|knoten|nds?)(?:$|[^a-z])/i, 'kn'],
  [/km ?\/? ?h|kmh|kph/i, 'km/h'],
  [/(?:^|[^a-z])mph(?:$|[^a-z])/i, 'mph'],
  [/m ?\/ ?s|(?:^|[^a-z])mps(?:$|[^a-z])/i, 'm/s'],
];

/** Guesses by the headings. The user has the last word. */
export function streamGuess(columns: readonly string[]): StreamGuess {
  const taken = new Set<string>();
  const take = (pattern: RegExp): string | undefined => {
    const found = columns.find((column) => !taken.has(column) && pattern.test(column.replaceAll('_', ' ')));
    if (found !== undefined) taken.add(found);
    return found;
  };
  const [lat, lon, springs, neaps] = [take(LAT), take(LON), take(SPRINGS), take(NEAPS)];
  const [direction, hour, name] = [take(SET), take(HOUR), take(NAME)];
  const unit = UNITS.find(([pattern]) => pattern.test((springs ?? '').replaceAll('_', ' ')))?.[1];
  const guess = { lat, lon, springs, neaps, direction, hour, name, unit };
  return Object.fromEntries(Object.entries(guess).filter(([, value]) => value !== undefined));
}
