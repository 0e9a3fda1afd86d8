import type { WindAt } from '../../core/water/shapes.ts';
import { parseDecimal } from '../units/decimal.ts';
import type { Measures } from '../units/measures.ts';
import { compassPoint } from '../words/en-compass.ts';
import type { PlaceClock } from './place-clock.ts';

/** A row of the wind's table as it is being typed. */
export interface WindRow {
  readonly key: number;
  /** Reading of the clock of the place. */
  readonly time: string;
  readonly from: string;
  readonly speed: string;
  readonly gust: string;
}

export type WindCell = 'time' | 'from' | 'speed' | 'gust';
export type Fault = 'no-time' | 'no-from' | 'no-speed' | 'too-much' | 'gust-below';

export interface ReadRow {
  readonly wind: WindAt | undefined;
  readonly faults: Partial<Record<WindCell, Fault>>;
}

/** Above this a figure is a slip, m/s: no small boat plans for storm force. Gusts reach higher than the mean. */
export const MOST_WIND = 32;
export const MOST_GUST = 50;

const ENGLISH_POINTS = 'N NNE NE ENE E ESE SE SSE S SSW SW WSW W WNW NW NNW'.split(' ');

/** Degrees from what people write: 225, 225°, SW, or a point in the language of the page; undefined: neither. */
export function directionOf(text: string, lang: string): number | undefined {
  const bare = text.trim().replace(/°$/, '').toUpperCase();
  if (bare === '') return undefined;
  const own = Array.from({ length: 16 }, (_, i) => compassPoint(i * 22.5).toUpperCase());
  const point = own.includes(bare) ? own.indexOf(bare) : ENGLISH_POINTS.indexOf(bare);
  if (point >= 0) return point * 22.5;
  const value = parseDecimal(bare, lang);
  return value !== undefined && value >= 0 && value <= 360 ? value % 360 : undefined;
}

export function rowOf(wind: WindAt, key: number, clock: PlaceClock, m: Measures): WindRow {
  return {
    key,
    time: clock.reading(wind.time),
    from: String(Math.round(wind.fromDeg) % 360),
    speed: m.figure('speed', wind.speed),
    gust: wind.gust === undefined ? '' : m.figure('speed', wind.gust),
  };
}

/** What a row tells, and what is wrong with it; a row that is half filled in tells nothing. */
export function readRow(row: WindRow, clock: PlaceClock, m: Measures): ReadRow {
  const faults: Partial<Record<WindCell, Fault>> = {};
  const figure = (text: string) => {
    const shown = parseDecimal(text, m.lang);
    return shown === undefined || shown < 0 ? undefined : m.toSi('speed', shown);
  };
  const time = clock.instant(row.time);
  if (time === undefined) faults.time = 'no-time';
  const speed = figure(row.speed);
  if (speed === undefined) faults.speed = 'no-speed';
  else if (speed > MOST_WIND) faults.speed = 'too-much';
  // A calm has no direction.
  const fromDeg = speed === 0 && row.from.trim() === '' ? 0 : directionOf(row.from, m.lang);
  if (fromDeg === undefined) faults.from = 'no-from';
  const gust = row.gust.trim() === '' ? undefined : figure(row.gust);
  if (row.gust.trim() !== '') {
    if (gust === undefined) faults.gust = 'no-speed';
    else if (gust > MOST_GUST) faults.gust = 'too-much';
    // Rounded figures of one wind may cross by a hair.
    else if (speed !== undefined && gust < speed * 0.98 - 0.05) faults.gust = 'gust-below';
  }
  if (time === undefined || speed === undefined || fromDeg === undefined || Object.keys(faults).length > 0) {
    return { wind: undefined, faults };
  }
  return { wind: { time, fromDeg, speed, ...(gust !== undefined && { gust: Math.max(gust, speed) }) }, faults };
}

/** Nothing is typed in it but perhaps its time. */
export function blankRow({ from, speed, gust }: WindRow): boolean {
  return [from, speed, gust].every((text) => text.trim() === '');
}

export function inOrder(rows: readonly WindRow[]): boolean {
  const times = rows.map(({ time }) => time).filter((time) => time !== '');
  return times.every((time, i) => i === 0 || times[i - 1]! <= time);
}

/** By time, rows without one last. */
export function sortedRows(rows: readonly WindRow[]): readonly WindRow[] {
  const late = (time: string) => time || '9999';
  return [...rows].sort((a, b) => (late(a.time) < late(b.time) ? -1 : late(a.time) > late(b.time) ? 1 : 0));
}

/** A row to go on with: three hours after the last, or at the hour of the departure. */
export function nextRow(
  rows: readonly WindRow[],
  key: number,
  departure: string | undefined,
  clock: PlaceClock,
): WindRow {
  const last = [...rows].reverse().find(({ time }) => clock.instant(time) !== undefined);
  const start = departure === undefined ? '' : `${clock.reading(departure).slice(0, 13)}:00`;
  return { key, time: last ? later(last.time) : start, from: last?.from ?? '', speed: '', gust: '' };
}

/** Three hours later as the clock face goes. */
function later(reading: string): string {
  return new Date(Date.parse(`${reading.slice(0, 16)}Z`) + 3 * 3_600_000).toISOString().slice(0, 16);
}
