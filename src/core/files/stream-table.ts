import type { Problem, Result } from '../units/result.ts';
import { type WindUnit, windSpeed } from '../units/wind-speed.ts';
import { tableRows } from './table-rows.ts';

/** Units in which tables tell a stream. */
export const STREAM_UNITS = ['kn', 'm/s', 'km/h', 'mph'] as const satisfies readonly WindUnit[];
export type StreamUnit = (typeof STREAM_UNITS)[number];

/** Which column of a table is what; names as in the table, in JSON also dotted paths. */
export interface StreamColumns {
  /** Hours from high water, whole: -3, +2, 0. */
  readonly hour: string;
  /** Where it sets to, degrees true or a point of the compass. */
  readonly direction: string;
  readonly springs: string;
  readonly neaps?: string;
  readonly unit: StreamUnit;
  /** Absent: the table is of one place. */
  readonly name?: string;
  readonly lat?: string;
  readonly lon?: string;
}

/** What a table tells of a place; what it leaves out somebody has to add. Rates m/s. */
export interface TabledPlace {
  readonly name: string | undefined;
  readonly lat: number | undefined;
  readonly lon: number | undefined;
  /** By hour, an hour apart. */
  readonly hours: readonly {
    readonly hour: number;
    readonly setDeg: number;
    readonly springs: number;
    readonly neaps: number | undefined;
  }[];
}

/** No stream that a small boat plans for runs faster, m/s: a wrong unit or column. */
const FASTEST = 10;
const MOST_TOLD = 20;
const POINTS = 'N NNE NE ENE E ESE SE SSE S SSW SW WSW W WNW NW NNW'.split(' ');

/** Places of a table of streams, CSV or JSON, a row for each hour. One faulty row refuses the whole, and is told. */
export function readStreamTable(text: string, columns: StreamColumns): Result<readonly TabledPlace[]> {
  const { hour, direction, springs, neaps, name, lat, lon, unit } = columns;
  const wanted = [hour, direction, springs, neaps, name, lat, lon].filter((column) => column !== undefined);
  const table = tableRows(text, wanted);
  if (!table.ok) return table;
  const problems: Problem[] = [];
  const places = new Map<string, { -readonly [K in keyof TabledPlace]: TabledPlace[K] } & { row: number }>();
  for (const row of table.value.rows) {
    const figure = (column: string, [least, most]: readonly [number, number], read = numberOf): number => {
      const value = read(row.cell(column));
      if (value !== undefined && value >= least && value <= most) return value;
      const given = JSON.stringify(String(row.cell(column) ?? '').slice(0, 40));
      const message = `Row ${row.number}, ${column}: ${given} is no figure from ${least} to ${Math.floor(most * 10) / 10}`;
      problems.push({ code: 'bad-row', path: `rows.${row.number}.${column}`, message });
      return Number.NaN;
    };
    const rate = (column: string) => windSpeed(figure(column, [0, FASTEST / windSpeed(1, unit)]), unit);
    const given = {
      hour: figure(hour, [-13, 13], hourOf),
      setDeg: figure(direction, [0, 360], directionOf) % 360,
      springs: rate(springs),
      neaps: neaps === undefined || blank(row.cell(neaps)) ? undefined : rate(neaps),
    };
    const called = name === undefined ? undefined : String(row.cell(name) ?? '').trim();
    const at = {
      lat: lat === undefined ? undefined : figure(lat, [-85, 85]),
      lon: lon === undefined ? undefined : figure(lon, [-180, 180]),
    };
    const place = places.get(called ?? '') ?? { name: called, ...at, hours: [], row: row.number };
    place.hours = [...place.hours, given];
    places.set(called ?? '', place);
  }
  for (const place of places.values()) {
    place.hours = [...place.hours].sort((a, b) => a.hour - b.hour);
    const gap = place.hours.find(({ hour: now }, i) => i > 0 && now - place.hours[i - 1]!.hour !== 1);
    if (!gap || problems.length > 0) continue;
    const message = `The hours of ${JSON.stringify(place.name ?? '')} are not one after the other at ${gap.hour}`;
    problems.push({ code: 'streams-not-hourly', path: `rows.${place.row}`, message });
  }
  if (problems.length > 0) return { ok: false, problems: problems.slice(0, MOST_TOLD) };
  return { ok: true, value: [...places.values()].map(({ row: _, ...place }) => place) };
}

function blank(cell: unknown): boolean {
  return cell === undefined || cell === null || (typeof cell === 'string' && /^(?:-*|n\/?a)$/i.test(cell.trim()));
}

function numberOf(cell: unknown): number | undefined {
  if (typeof cell === 'number') return cell;
  const text =
    typeof cell === 'string'
      ? cell
          .trim()
          .replace(/^\u2212/, '-')
          .replace(',', '.')
      : '';
  return /^[+-]?\d{1,9}(?:\.\d{1,18})?$/.test(text) ? Number(text) : undefined;
}

/** "-3", "+2", "HW", "HW-3", "HW +2 h". */
function hourOf(cell: unknown): number | undefined {
  const bare = typeof cell === 'string' ? cell.replace(/\s|HW|h$/gi, '') : cell;
  const value = bare === '' && /HW/i.test(String(cell)) ? 0 : numberOf(bare);
  return value !== undefined && Number.isInteger(value) ? value : undefined;
}

function directionOf(cell: unknown): number | undefined {
  const text = typeof cell === 'string' ? cell.trim().replace(/°$/, '').toUpperCase() : cell;
  const point = POINTS.indexOf(String(text));
  return point >= 0 ? point * 22.5 : numberOf(text);
}
