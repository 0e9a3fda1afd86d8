import type { Band } from '../../core/curve/shapes.ts';
import type { Measure } from '../../core/trip/shapes.ts';
import { FOOT, HOUR, MINUTE } from '../../core/units/convert.ts';
import { unitWords } from '../words/en-units.ts';
import { clockAt } from './clock.ts';
import { numberLocale, numberText } from './number-text.ts';
import { type Scale, type StoreKind, scaleOf, type UnitSystem } from './scales.ts';

export type { StoreKind, UnitSystem } from './scales.ts';

/**
 * How figures reach the screen and come back. SI on one side; on the other the units of `system` and the number
 * format of `lang`. Figure and unit are joined by a no-break space, minus is the real sign, and what is not finite
 * shows as a dash.
 */
export interface Measures {
  readonly system: UnitSystem;
  readonly lang: string;
  /** Figure with unit, such as "12.4 kn"; short distances in m or ft, time as "2 h 05 min". */
  show(measure: Measure, si: number, store?: StoreKind): string;
  /** The figure alone in `unit(measure)`, for an input: no needless zeros, no grouping. */
  figure(measure: Measure, si: number, store?: StoreKind): string;
  unit(measure: Measure, store?: StoreKind): string;
  toSi(measure: Measure, shown: number, store?: StoreKind): number;
  fromSi(measure: Measure, si: number, store?: StoreKind): number;
  /** Decimals that make sense for this much in `unit(measure)`. */
  digits(measure: Measure, shown: number, store?: StoreKind): number;
  /** kg/s or W as "9.8 L/h", "2.6 gal/h", "850 W", "3.2 kW". */
  flow(si: number, store: StoreKind): string;
  /** kg/m or J/m as "0.41 L/km", "0.76 L/NM", "0.23 gal/mi", "240 Wh/NM". */
  perDistance(si: number, store: StoreKind): string;
  /** "6.1 to 7.9 L", 10th to 90th percentile; one figure where both round to the same. */
  band(measure: Measure, band: Band, store?: StoreKind): string;
  /** s as "2 h 05 min". */
  time(s: number): string;
  /** Clock time at the place of an ISO departure, some seconds later: "14:05", "00:40 +1 d"; "+2 h 05 min" without one. */
  clock(iso: string | undefined, addSeconds: number): string;
  /** Degrees as three figures: "085°". */
  bearing(deg: number): string;
}

const NONE = '–';
const SPACE = '\u00a0';
/** Below these an imperial or other distance is given in feet or metres. */
const SHORT = { metric: 200, nautical: 185.2, imperial: 160.9344 } as const;
const FEW = {
  metric: { sign: 'm', si: 1 },
  nautical: { sign: 'm', si: 1 },
  imperial: { sign: 'ft', si: FOOT },
} as const;

/** Units and number format for one widget; cheap to call, so one per change of `system` or `lang`. */
export function measuresFor(system: UnitSystem, lang: string): Measures {
  const language = numberLocale(lang);
  const number = (value: number, places: number, fixed = true, grouped = true) =>
    numberText(language, value, { least: fixed ? places : 0, most: places, grouped });
  const scale = (measure: Measure, store?: StoreKind) => scaleOf(system, measure, store);

  /** The scale that suits this much: m instead of NM, kWh instead of Wh. */
  const shownScale = (measure: Measure, si: number, store?: StoreKind): Scale => {
    if (measure === 'distance' && Math.abs(si) < SHORT[system]) return FEW[system];
    if (measure === 'amount' && store === 'charge' && Math.abs(si) >= 3.6e6) return { sign: 'kWh', si: 3.6e6 };
    return scale(measure, store);
  };
  const inScale = (measure: Measure, si: number, { sign, si: one }: Scale) => {
    const shown = si / one;
    return number(shown, decimals(sign, shown), measure !== 'length');
  };

  const measures: Measures = {
    system,
    lang: language,
    show(measure, si, store) {
      if (!Number.isFinite(si)) return NONE;
      if (measure === 'time') return measures.time(si);
      const fit = shownScale(measure, si, store);
      return join(inScale(measure, si, fit), signOf(fit));
    },
    figure(measure, si, store) {
      if (!Number.isFinite(si)) return '';
      const shown = si / scale(measure, store).si;
      const places = decimals(scale(measure, store).sign, shown);
      // One decimal more only where rounding would be seen in the answer.
      const coarse = Math.abs(Number(shown.toFixed(places)) - shown) < 0.003 * Math.abs(shown);
      return number(shown, coarse ? places : places + 1, false, false);
    },
    unit: (measure, store) => signOf(scale(measure, store)),
    toSi: (measure, shown, store) => shown * scale(measure, store).si,
    fromSi: (measure, si, store) => si / scale(measure, store).si,
    digits: (measure, shown, store) => decimals(scale(measure, store).sign, shown),
    flow(si, store) {
      if (!Number.isFinite(si)) return NONE;
      if (store === 'fuel') {
        const litres = scale('amount', 'fuel');
        const shown = (si * HOUR) / litres.si;
        return join(number(shown, shown < 10 ? 2 - Number(shown >= 1) : Number(shown < 100)), `${signOf(litres)}/h`);
      }
      return Math.abs(si) < 999.5 ? join(number(si, 0), 'W') : join(number(si / 1000, si < 99_950 ? 1 : 0), 'kW');
    },
    perDistance(si, store) {
      if (!Number.isFinite(si)) return NONE;
      const amount = scale('amount', store);
      const distance = scale('distance');
      const shown = (si * distance.si) / amount.si;
      return join(number(shown, store === 'charge' ? 0 : shown < 10 ? 2 : 1), `${signOf(amount)}/${signOf(distance)}`);
    },
    band(measure, { low, high }, store) {
      if (!Number.isFinite(low) || !Number.isFinite(high)) return NONE;
      if (measure === 'time') return toFrom(measures.time(low), measures.time(high));
      const fit = shownScale(measure, Math.max(Math.abs(low), Math.abs(high)), store);
      const places = decimals(fit.sign, Math.max(Math.abs(low), Math.abs(high)) / fit.si);
      return join(toFrom(number(low / fit.si, places), number(high / fit.si, places)), signOf(fit));
    },
    time(s) {
      if (!Number.isFinite(s)) return NONE;
      const minutes = Math.round(Math.abs(s) / MINUTE);
      const minus = s < 0 && minutes > 0 ? '\u2212' : '';
      if (minutes === 0 && s !== 0) return unitWords.under(join('1', 'min'));
      const h = Math.floor(minutes / 60);
      if (h === 0) return join(`${minus}${minutes}`, 'min');
      return join(`${minus}${h}`, `h${SPACE}${String(minutes % 60).padStart(2, '0')}${SPACE}min`);
    },
    clock(iso, addSeconds) {
      const at = Number.isFinite(addSeconds) ? clockAt(iso, addSeconds) : undefined;
      if (!at) return Number.isFinite(addSeconds) ? `+${measures.time(addSeconds)}` : NONE;
      return at.days === 0
        ? at.time
        : `${at.time} ${at.days > 0 ? '+' : '\u2212'}${Math.abs(at.days)}${SPACE}${unitWords.days}`;
    },
    bearing: (deg) =>
      Number.isFinite(deg) ? `${String(((Math.round(deg) % 360) + 360) % 360).padStart(3, '0')}°` : NONE,
  };
  return measures;
}

/** Decimals by unit and size, so that three figures or so remain; whole numbers where tenths mean nothing. */
function decimals(sign: string, shown: number): number {
  const size = Math.abs(shown);
  switch (sign) {
    case '':
    case '%':
    case '°':
    case 'Wh':
    case 'min':
      return 0;
    case 'kg':
    case 'lb':
      return size < 9.95 ? 1 : 0;
    case 'm':
      return size < 9.995 ? 2 : size < 99.5 ? 1 : 0;
    case 'gal':
    case 'kWh':
      return size < 9.995 ? 2 : size < 99.95 ? 1 : 0;
    case 'km':
    case 'NM':
    case 'mi':
    case 'kW':
      return size < 0.995 ? 2 : size < 99.95 ? 1 : 0;
    default:
      return size < 99.95 ? 1 : 0;
  }
}

/** As the language spoken writes it: a nautical mile has another sign in each. */
function signOf({ sign }: Scale): string {
  const signs: Readonly<Record<string, string>> = unitWords.signs;
  return signs[sign] ?? sign;
}

function join(figure: string, sign: string): string {
  return sign === '' || sign === '°' || sign.endsWith('%') ? figure + sign : figure + SPACE + sign;
}

function toFrom(low: string, high: string): string {
  return low === high ? low : unitWords.fromTo(low, high);
}
