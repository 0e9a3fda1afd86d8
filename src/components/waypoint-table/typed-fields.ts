import { chartable, destination, legBetween } from '../../core/route/distance.ts';
import type { LatLon, Route } from '../../core/route/shapes.ts';
import { placeToInsert } from '../route-map/waypoint-edits.ts';
import { parsePosition } from '../units/coordinates.ts';
import { parseDecimal } from '../units/decimal.ts';
import type { Measures } from '../units/measures.ts';
import { waypointWords as words } from './words.ts';

/** What a field's text stands for, or what to say about it. */
export type Read<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly problem: string };

/** Longest leg, m, fastest speed, m/s, and longest stop, min, that can be typed: far beyond any small open boat. */
const MOST_DISTANCE = 1_000_000;
const MOST_SPEED = 50;
const MOST_STOP = 10_000;

export function readPlace(text: string): Read<LatLon> {
  const value = parsePosition(text);
  if (!value) return { ok: false, problem: words.badPlace };
  return chartable(value) ? { ok: true, value } : { ok: false, problem: words.farNorth };
}

/** Degrees. */
export function readBearing(text: string, { lang }: Measures): Read<number> {
  const value = parseDecimal(text.replace(/[°º]/g, ''), lang);
  const fits = value !== undefined && value >= 0 && value <= 360;
  return fits ? { ok: true, value } : { ok: false, problem: words.badBearing };
}

/** m */
export function readDistance(text: string, measures: Measures): Read<number> {
  const value = readSi('distance', text, measures);
  const fits = value !== undefined && value >= 0 && value <= MOST_DISTANCE;
  const most = measures.show('distance', MOST_DISTANCE);
  return fits ? { ok: true, value } : { ok: false, problem: words.badDistance(most) };
}

/** s; an empty field is no stop. */
export function readStop(text: string, measures: Measures): Read<number | undefined> {
  if (text.trim() === '') return { ok: true, value: undefined };
  const minutes = parseDecimal(text, measures.lang);
  if (minutes === undefined || minutes < 0 || minutes > MOST_STOP) return { ok: false, problem: words.badStop };
  return { ok: true, value: minutes === 0 ? undefined : minutes * 60 };
}

/** m/s */
export function readSpeed(text: string, measures: Measures): Read<number> {
  const value = readSi('speed', text, measures);
  const fits = value !== undefined && value > 0 && value <= MOST_SPEED;
  const most = measures.show('speed', MOST_SPEED);
  return fits ? { ok: true, value } : { ok: false, problem: words.badSpeed(most) };
}

function readSi(measure: 'distance' | 'speed', text: string, measures: Measures): number | undefined {
  const shown = parseDecimal(text, measures.lang);
  return shown === undefined ? undefined : measures.toSi(measure, shown);
}

/** Distance, m, and track from one place to the next; undefined where no leg can be laid. */
export function legFrom(before: LatLon | undefined, place: LatLon) {
  return before && chartable(before) && chartable(place) ? legBetween(before, place) : undefined;
}

/** Where a new row's waypoint starts from: on the leg it splits or beyond the end; beside the only one there is. */
export function placeForRow(route: Route, index: number, measures: Measures): LatLon | undefined {
  const found = placeToInsert(route.waypoints, index, route.shape === 'loop');
  const only = route.waypoints[0];
  return found ?? (only && chartable(only) ? destination(only, 0, measures.toSi('distance', 1)) : undefined);
}

export type AddedField = 'place' | 'bearing' | 'distance';

/** A waypoint to add: at the place if one is typed, else by bearing and distance from `last`. */
export function readAddition(
  texts: Readonly<Record<AddedField, string>>,
  last: LatLon | undefined,
  measures: Measures,
): { at?: LatLon; problems: Partial<Record<AddedField, string>> } {
  if (!last || texts.place.trim() !== '' || texts.bearing + texts.distance === '') {
    const read = readPlace(texts.place);
    return read.ok ? { at: read.value, problems: {} } : { problems: { place: read.problem } };
  }
  const bearing = readBearing(texts.bearing, measures);
  const distance = readDistance(texts.distance, measures);
  if (bearing.ok && distance.ok) return { at: destination(last, bearing.value, distance.value), problems: {} };
  return {
    problems: {
      ...(!bearing.ok && { bearing: bearing.problem }),
      ...(!distance.ok && { distance: distance.problem }),
    },
  };
}
