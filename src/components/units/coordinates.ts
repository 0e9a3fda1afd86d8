import type { LatLon } from '../../core/route/shapes.ts';
import type { UnitSystem } from './scales.ts';

type Axis = 'lat' | 'lon';

const FIGURE = String.raw`\d+(?:\.\d+)?`;
/** Degrees, then minutes, then seconds, each with its mark or a space after it; only the last may have decimals. */
const PARTS = new RegExp(
  String.raw`^([+-]?)\s*(${FIGURE})(?:\s*[°:]\s*|\s+|$)(?:(${FIGURE})(?:\s*[':]\s*|\s+|$)(?:(${FIGURE})\s*"?)?)?$`,
);

/** Latitude, degrees north, from any usual notation: 46.0274, 46°01.64'N, 46 01 38 N, N46,0274. Undefined if none fits. */
export function parseLatitude(text: string): number | undefined {
  return parseOne(clean(text), 'lat');
}

/** Longitude, degrees east, in the same notations. */
export function parseLongitude(text: string): number | undefined {
  return parseOne(clean(text), 'lon');
}

/** Both pasted together, latitude first unless letters say otherwise. Undefined where two readings are possible. */
export function parsePosition(text: string): LatLon | undefined {
  const bare = clean(text);
  const letters = bare.match(/[NSEW]/g) ?? [];
  if (letters.length > 0) return letters.length === 2 ? fromLettered(bare) : undefined;
  for (const [first, second] of splits(bare)) {
    const lat = parseOne(first, 'lat');
    const lon = parseOne(second, 'lon');
    if (lat !== undefined && lon !== undefined) return { lat, lon };
  }
  return undefined;
}

/** Degrees and decimal minutes for nautical, "46°01.644′N"; decimal degrees otherwise, "46.02740". To about 1 m. */
export function showLatitude(lat: number, system: UnitSystem): string {
  return show(lat, system, 2, 'NS');
}

/** "031°59.400′W" or "-31.99000". */
function showLongitude(lon: number, system: UnitSystem): string {
  return show(lon, system, 3, 'EW');
}

/** Both, in a form that `parsePosition` reads back. */
export function showPosition({ lat, lon }: LatLon, system: UnitSystem): string {
  return `${showLatitude(lat, system)}${system === 'nautical' ? ' ' : ', '}${showLongitude(lon, system)}`;
}

/** One sign for each mark; words and brackets gone; letters of the hemisphere in capitals. */
function clean(text: string): string {
  // Longer than any notation: not worth a search.
  if (text.length > 120) return '';
  return text
    .replace(/[\u2212\u2010-\u2013]/g, '-')
    .replace(/\b(?:geo:|latitude|longitude|lat|long?|lng)\b\s*[:=]?|[()[\]]|^geo:/gi, ' ')
    .replace(/(\d)\s*d(?:eg)?\s*(\d+(?:[.,]\d+)?)\s*m(?:in)?\s*(?:(\d+(?:[.,]\d+)?)\s*s(?:ec)?)?/gi, "$1°$2'$3")
    .replace(/[º˚]/g, '°')
    .replace(/''|′′|[″”“]/g, '"')
    .replace(/[′’‘ʹ´`]/g, "'")
    .toUpperCase()
    .trim();
}

function parseOne(text: string, axis: Axis): number | undefined {
  const [positive, negative] = axis === 'lat' ? 'NS' : 'EW';
  const lettered = /^([NSEW]?)\s*(.*?)\s*([NSEW]?)$/s.exec(text);
  const [, before, figures, after] = lettered ?? [];
  if (figures === undefined || (before && after)) return undefined;
  const letter = before || after;
  if (letter && letter !== positive && letter !== negative) return undefined;
  const parts = PARTS.exec(figures.includes('.') ? figures : figures.replace(/(\d),(\d)/, '$1.$2'));
  if (!parts || (letter && parts[1])) return undefined;
  const [degrees, minutes, seconds] = parts.slice(2, 5);
  if ((minutes && degrees?.includes('.')) || (seconds && minutes?.includes('.'))) return undefined;
  if (Number(minutes ?? 0) >= 60 || Number(seconds ?? 0) >= 60) return undefined;
  const size = Number(degrees) + Number(minutes ?? 0) / 60 + Number(seconds ?? 0) / 3600;
  if (size > (axis === 'lat' ? 90 : 180)) return undefined;
  return (letter === negative || parts[1] === '-') && size !== 0 ? -size : size;
}

/** "N46 01.64 W003 12.1" splits before the second letter, "46 01.64 N 003 12.1 W" after the first. */
function fromLettered(text: string): LatLon | undefined {
  const startsWithLetter = /^[NSEW]/.test(text);
  const at = startsWithLetter ? text.slice(1).search(/[NSEW]/) + 1 : text.search(/[NSEW]/) + 1;
  const halves = [text.slice(0, at), text.slice(at)].map((half) => half.replace(/^[\s,;/]+|[\s,;/]+$/g, ''));
  const [first = '', second = ''] = /[NS]/.test(halves[0] ?? '') ? halves : halves.reverse();
  const lat = parseOne(first, 'lat');
  const lon = parseOne(second, 'lon');
  return lat === undefined || lon === undefined ? undefined : { lat, lon };
}

/** Ways to cut a pair without letters in two, the clearest sign first. */
function splits(text: string): [string, string][] {
  const found: [string, string][] = [];
  const cut = (by: RegExp) => {
    const halves = text.split(by);
    if (halves.length === 2) found.push([halves[0]!.trim(), halves[1]!.trim()]);
    return halves.length === 2;
  };
  if (cut(/[;/|\t\n]+/) || cut(/\s*,\s+|\s+,\s*/)) return found;
  if (/[.°]/.test(text)) cut(/,/);
  const commas = /^([+-]?\d+,\d+),([+-]?\d+,\d+)$/.exec(text);
  if (commas) found.push([commas[1]!, commas[2]!]);
  // Spaces alone: only where the whole is not one coordinate in degrees, minutes and seconds.
  const words = text.split(/\s+/);
  if (!text.includes(', ') && words.length % 2 === 0 && parseOne(text, 'lon') === undefined) {
    found.push([words.slice(0, words.length / 2).join(' '), words.slice(words.length / 2).join(' ')]);
  }
  return found;
}

function show(degrees: number, system: UnitSystem, width: number, letters: string): string {
  if (!Number.isFinite(degrees)) return '';
  if (system !== 'nautical') return degrees.toFixed(5).replace(/^-(0\.0+)$/, '$1');
  const thousandths = Math.round(Math.abs(degrees) * 60_000);
  const whole = String(Math.floor(thousandths / 60_000)).padStart(width, '0');
  const minutes = ((thousandths % 60_000) / 1000).toFixed(3).padStart(6, '0');
  return `${whole}°${minutes}′${letters[degrees < 0 && thousandths > 0 ? 1 : 0]}`;
}
