import { PETROL_DENSITY } from '../units/constants.ts';
import {
  BEAUFORT_WIND,
  FOOT,
  HOUR,
  IMPERIAL_GALLON_L,
  KMH,
  KNOT,
  MINUTE,
  MPH,
  POUND,
  US_GALLON_L,
  WATT_HOUR,
} from '../units/convert.ts';

/** What a unit measures. */
export type Dimension =
  | 'speed'
  | 'wind'
  | 'flow'
  | 'power'
  | 'fuel'
  | 'energy'
  | 'current'
  | 'voltage'
  | 'mass'
  | 'height'
  | 'time'
  | 'revs'
  | 'angle'
  | 'share';

/** A unit that stands in the head of a column or behind a figure. */
export interface TableUnit {
  readonly sign: string;
  readonly dimension: Dimension;
  /** As people write it; lower case, matched as a whole. */
  readonly written: readonly string[];
  /** SI value of so many. */
  si(figure: number): number;
}

function unit(dimension: Dimension, sign: string, one: number, ...written: string[]): TableUnit {
  return { sign, dimension, written: [sign.toLowerCase(), ...written], si: (figure) => figure * one };
}

const SPEEDS: readonly (readonly [string, number, readonly string[]])[] = [
  ['kn', KNOT, ['kt', 'kts', 'kns', 'knot', 'knots']],
  ['km/h', KMH, ['kmh', 'km h', 'kmph', 'kph', 'km/u']],
  ['mph', MPH, ['mi/h', 'miles/h']],
  ['m/s', 1, ['mps', 'm s', 'ms-1', 'm/sec']],
];
const US_GALLON = US_GALLON_L * PETROL_DENSITY;
const IMPERIAL_GALLON = IMPERIAL_GALLON_L * PETROL_DENSITY;

/** The first of a dimension is meant where a column names none. Amounts of petrol are kg inside. */
const TABLE_UNITS: readonly TableUnit[] = [
  ...SPEEDS.map(([sign, one, written]) => unit('speed', sign, one, ...written)),
  ...SPEEDS.map(([sign, one, written]) => unit('wind', sign, one, ...written)),
  {
    sign: 'Bft',
    dimension: 'wind',
    written: ['bft', 'bf', 'beaufort', 'force'],
    si: (force) => BEAUFORT_WIND * Math.max(0, force) ** 1.5,
  },
  unit('flow', 'L/h', PETROL_DENSITY / HOUR, 'lph', 'ltr/h', 'litre/h', 'litres/h', 'liters/h'),
  unit('flow', 'imp gal/h', IMPERIAL_GALLON / HOUR, 'imp gph', 'imperial gal/h', 'uk gal/h', 'uk gph', 'igph'),
  unit('flow', 'US gal/h', US_GALLON / HOUR, 'us gph', 'usgph', 'gal/h', 'gph', 'gallons/h'),
  unit('flow', 'kg/h', 1 / HOUR),
  unit('power', 'W', 1, 'watt', 'watts'),
  unit('power', 'kW', 1000, 'kilowatt', 'kilowatts'),
  unit('fuel', 'L', PETROL_DENSITY, 'ltr', 'litre', 'litres', 'liter', 'liters'),
  unit('fuel', 'mL', PETROL_DENSITY / 1000, 'cc'),
  unit('fuel', 'imp gal', IMPERIAL_GALLON, 'imperial gal', 'imperial gallons', 'uk gal'),
  unit('fuel', 'US gal', US_GALLON, 'gal', 'gallon', 'gallons'),
  unit('fuel', 'kg', 1),
  unit('energy', 'Wh', WATT_HOUR, 'watt hours'),
  unit('energy', 'kWh', 1000 * WATT_HOUR),
  unit('current', 'A', 1, 'amp', 'amps', 'ampere', 'amperes'),
  unit('voltage', 'V', 1, 'volt', 'volts'),
  unit('mass', 'kg', 1, 'kgs', 'kilo', 'kilos'),
  unit('mass', 'lb', POUND, 'lbs', 'pound', 'pounds'),
  unit('height', 'm', 1, 'metre', 'metres', 'meter', 'meters'),
  unit('height', 'cm', 0.01),
  unit('height', 'ft', FOOT, 'feet', 'foot'),
  unit('time', 's', 1, 'sec', 'secs', 'second', 'seconds'),
  unit('time', 'min', MINUTE, 'mins', 'minute', 'minutes'),
  unit('time', 'h', HOUR, 'hr', 'hrs', 'hour', 'hours'),
  unit('revs', 'rpm', 1, '1/min', 'r/min', 'min-1', 'u/min', 'revs'),
  unit('angle', '°', 1, 'deg', 'degree', 'degrees'),
  unit('share', '%', 0.01, 'percent', 'per cent'),
];

export function unitsOf(dimension: Dimension): readonly TableUnit[] {
  return TABLE_UNITS.filter((each) => each.dimension === dimension);
}

/** The unit of a dimension with this sign or spelling. */
export function unitNamed(dimension: Dimension, text: string): TableUnit | undefined {
  const bare = text.trim().toLowerCase();
  const sound = unitsOf(dimension);
  return sound.find(({ sign }) => sign === text.trim()) ?? sound.find(({ written }) => written.includes(bare));
}

/** The unit that stands in the head of a column, of one of these dimensions; the longest spelling wins. */
export function unitInHead(head: string, dimensions: readonly Dimension[]): TableUnit | undefined {
  const text = head
    .toLowerCase()
    .replace(/\s*(?:\/|\bper\b)\s*/g, '/')
    .replace(/\/(?:hours?|hr)\b/g, '/h');
  let found: { unit: TableUnit; length: number } | undefined;
  for (const dimension of dimensions) {
    for (const each of unitsOf(dimension)) {
      for (const spelling of each.written) {
        if (spelling.length > (found?.length ?? 0) && standsIn(text, spelling)) {
          found = { unit: each, length: spelling.length };
        }
      }
    }
  }
  return found?.unit;
}

/** As a word of its own: no letter, figure or stroke on either side. */
function standsIn(text: string, spelling: string): boolean {
  for (let at = text.indexOf(spelling); at >= 0; at = text.indexOf(spelling, at + 1)) {
    const [before, after] = [text[at - 1] ?? ' ', text[at + spelling.length] ?? ' '];
    if (!/[\p{L}\d/]/u.test(before) && !/[\p{L}\d/]/u.test(after)) return true;
  }
  return false;
}
