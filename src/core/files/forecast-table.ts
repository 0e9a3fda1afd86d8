import type { Problem, Result } from '../units/result.ts';
import { type WindUnit, windSpeed } from '../units/wind-speed.ts';
import type { WindAt } from '../water/shapes.ts';
import { describesTime } from './iso-time.ts';
import { tableRows } from './table-rows.ts';

/** Which column of a table is what; names as in the table, in JSON also dotted paths. */
export interface ForecastColumns {
  readonly time: string;
  readonly direction: string;
  readonly speed: string;
  readonly gust?: string;
  readonly speedUnit: WindUnit;
  /** Absent: that of the speed. */
  readonly gustUnit?: WindUnit;
  /** Where the wind blows from (absent: this), as forecasts have it, or where it blows to. */
  readonly directionMeans?: 'from' | 'towards';
  /** For times that are written without one, such as +01:00 or Z. Absent: such times are refused. */
  readonly offset?: string;
  /** JSON: dotted path of the part that holds the table. Absent: the root, or the first fitting part of it. */
  readonly within?: string;
}

/** More wind than this in a forecast is a wrong unit or column, m/s. */
const MOST_WIND = 75;
/** Problems told one by one. */
const MOST_TOLD = 20;

/** Names of the columns of a table, CSV or JSON, for choosing which is what; with its first row as text. */
export function forecastHeadings(
  text: string,
  within?: string,
): Result<{ readonly columns: readonly string[]; readonly first: readonly string[]; readonly rows: number }> {
  const table = tableRows(text, [], within);
  if (!table.ok) return table;
  const { columns, rows } = table.value;
  const first = columns.map((column) => String(rows[0]?.cell(column) ?? ''));
  return { ok: true, value: { columns, first, rows: rows.length } };
}

/**
 * Winds of a forecast table, CSV or JSON, in the order of its rows. Directions are degrees or points of the compass, times
 * ISO 8601 or s or ms since 1970, decimals with a point or a comma. One faulty row refuses the whole: left out, it could
 * hide the strongest wind. Every problem names its row and column.
 */
export function readForecastTable(text: string, columns: ForecastColumns): Result<readonly WindAt[]> {
  const wanted = [columns.time, columns.direction, columns.speed, ...(columns.gust ? [columns.gust] : [])];
  const table = tableRows(text, wanted, columns.within);
  if (!table.ok) return table;
  const winds: WindAt[] = [];
  const problems: Problem[] = [];
  for (const row of table.value.rows) {
    const fault = (column: string, what: string) => {
      const message = `Row ${row.number}, ${column}: ${what}`;
      problems.push({ code: 'bad-row', path: `rows.${row.number}.${column}`, message });
      return undefined;
    };
    const read = <T>(column: string, from: (cell: unknown) => T | string): T | undefined => {
      const value = from(row.cell(column));
      return typeof value === 'string' ? fault(column, value) : value;
    };
    const time = read(columns.time, (cell) => timeOf(cell, columns.offset));
    const speed = read(columns.speed, (cell) => speedOf(cell, columns.speedUnit));
    const gust =
      columns.gust && !blank(row.cell(columns.gust))
        ? read(columns.gust, (cell) => speedOf(cell, columns.gustUnit ?? columns.speedUnit))
        : undefined;
    // A calm has no direction.
    const fromDeg = speed === 0 && blank(row.cell(columns.direction)) ? 0 : read(columns.direction, directionOf);
    if (time === undefined || speed === undefined || fromDeg === undefined) continue;
    const turned = columns.directionMeans === 'towards' ? (fromDeg + 180) % 360 : fromDeg;
    winds.push({ time: time.iso, fromDeg: turned, speed, ...(gust !== undefined && { gust }) });
  }
  if (problems.length === 0) return { ok: true, value: winds };
  const rest = problems.length - MOST_TOLD;
  const more: Problem = { code: 'more', path: 'rows', message: `And ${rest} more`, limit: MOST_TOLD };
  return { ok: false, problems: rest > 0 ? [...problems.slice(0, MOST_TOLD), more] : problems };
}

function blank(cell: unknown): boolean {
  return cell === undefined || cell === null || (typeof cell === 'string' && /^(?:-*|n\/?a|null)$/i.test(cell.trim()));
}

const TIME = /^(\d{4}-\d\d-\d\d)[T ](\d\d:\d\d(?::\d\d(?:\.\d{1,9})?)?)\s*(Z|UTC|[+-]\d\d(?::?\d\d)?)?$/i;

/** The time as ISO 8601 with its offset, or what is wrong with it. */
function timeOf(cell: unknown, offset: string | undefined): { iso: string } | string {
  if (blank(cell)) return 'the time is missing';
  const text = String(cell).trim();
  if (/^\d{9,10}$|^\d{12,13}$/.test(text)) {
    const ms = Number(text) * (text.length <= 10 ? 1000 : 1);
    return { iso: new Date(ms).toISOString() };
  }
  const [, day, clock, zone] = TIME.exec(text) ?? [];
  if (day === undefined || clock === undefined) {
    return `${JSON.stringify(text.slice(0, 40))} is no time such as 2026-07-15T09:00 or 2026-07-15T09:00+01:00`;
  }
  const told = zone ?? offset;
  if (told === undefined) return 'the time has no offset from UTC, and none is given for the table';
  const iso = `${day}T${clock}${offsetOf(told)}`;
  return describesTime(iso) ? { iso } : `${JSON.stringify(text)} is no time of the calendar`;
}

function offsetOf(zone: string): string {
  if (/^(?:Z|UTC)$/i.test(zone)) return 'Z';
  const [, hours, minutes = '00'] = /^([+-]\d\d):?(\d\d)?$/.exec(zone) ?? [];
  return `${hours ?? zone}:${minutes}`;
}

function numberOf(cell: unknown): number | undefined {
  if (typeof cell === 'number') return Number.isFinite(cell) ? cell : undefined;
  if (typeof cell !== 'string' || !/^\s*[+-]?\d{1,9}(?:[.,]\d{1,18})?\s*$/.test(cell)) return undefined;
  return Number(cell.trim().replace(',', '.'));
}

function speedOf(cell: unknown, unit: WindUnit): number | string {
  if (blank(cell)) return 'the wind is missing';
  // Of a span of forces such as 4-5 the upper.
  const [, upper] =
    unit === 'Bft' && typeof cell === 'string' ? (/^\s*\d{1,2}\s*[-–]\s*(\d{1,2})\s*$/.exec(cell) ?? []) : [];
  const value = numberOf(upper ?? cell);
  if (value === undefined) return `${JSON.stringify(String(cell).slice(0, 40))} is no number`;
  const speed = windSpeed(Math.max(0, value), unit);
  if (value < 0) return 'the wind is below zero';
  if (speed > MOST_WIND || (unit === 'Bft' && value > 12))
    return `${value} ${unit} is no wind: a wrong unit or column?`;
  return speed;
}

const POINTS = 'N NNE NE ENE E ESE SE SSE S SSW SW WSW W WNW NW NNW'.split(' ');

function directionOf(cell: unknown): number | string {
  if (blank(cell)) return 'the direction is missing';
  const point = typeof cell === 'string' ? POINTS.indexOf(cell.trim().toUpperCase()) : -1;
  if (point >= 0) return point * 22.5;
  const value = numberOf(cell);
  if (value === undefined)
    return `${JSON.stringify(String(cell).slice(0, 40))} is neither degrees nor a point of the compass`;
  return value >= 0 && value <= 360 ? value % 360 : `${value} degrees are not within 0 to 360`;
}
