import type { Assumption } from '../../core/trip/shapes.ts';
import type { Measures, StoreKind } from '../units/measures.ts';
import { figuresText } from '../units/number-text.ts';
import { dayText } from './day-text.ts';
import { holderOf, showOr } from './en-pieces.ts';
import { spoken, spokenNow } from './spoken.ts';

export const assumptionWords = spoken<
  Record<Assumption['code'], (figure: string, name: string, store: StoreKind) => string>
>('assumptionWords', {
  manoeuvring: (figure) => `Warming up, casting off and coming alongside${figure && `: ${figure}`}.`,
  'drawn-factor': (figure) => `The way sailed is longer than the line drawn${figure && `, by ${figure}`}.`,
  wind: (figure) => `Wind not given: ${figure || 'some wind'} from ahead all the way home.`,
  stream: (figure) => `Stream not given: ${figure || 'a weak one'} against you all the way home.`,
  sea: (figure) => `Sea not given: ${/[1-9]/.test(figure) ? `waves of ${figure}` : 'flat water'} in the likely trip.`,
  'sea-from-wind': (figure) =>
    `Waves worked out from wind and open water${figure && `: up to ${figure}`}. Indicative; look at the sea before you go.`,
  refilled: (_figure, name) =>
    `Filling up on the way counts as planned${name && `: ${name}`}. What is told as left is the least on the whole way.`,
  'stream-by-tide': (_figure, name) => `Streams by the tide${name && `, taken from: ${name}`}. Indicative.`,
  'stream-spread': (_figure, name) =>
    `${name ? `${name}: hours` : 'Hours'} worked out by rule from the strongest flood and ebb. Nothing of it that helps is counted, and it may run an hour earlier or later.`,
  fill: (figure, _name, store) =>
    `How full the ${holderOf(store)} is was not given${figure && `: counted as ${figure}`}.`,
  'fill-gauge': (figure, _name, store) =>
    `${store === 'fuel' ? 'Fuel' : 'Charge'} read from a gauge${figure && `, which may be ${figure} of a full ${holderOf(store)} out`}.`,
  seat: (figure, name) =>
    name
      ? `Seat of ${name} not given: counted far aft and far forward, the worse of both.`
      : `${figure ? `Seats not given (${figure})` : 'A seat not given'}: counted far aft and far forward, the worse of both.`,
  'battery-temperature': (figure) => `Battery temperature not given${figure && `: ${figure} °C`}.`,
  'unmeasured-boat': (figure) =>
    `This boat has not been measured: consumption of boats like it${figure && `, give or take ${figure}`}.`,
  'measured-boat': (figure) =>
    `Consumption from trial runs of this boat${figure && `, give or take ${figure}`}, as it was on the days of the trials.`,
  'petrol-density': (figure) => `Petrol weighs ${figure || '0.745'} kg per litre.`,
  'reserve-rule': () => 'No reserve chosen: a third out, a third home, a third kept.',
  'keep-out-season': (_figure, name) => `No date given: ${name || 'the keep-out area'} counted as closed.`,
  'waters-unanswered': () => 'Nobody is named who answers for these local waters.',
  'waters-undated': () => 'These local waters do not say when they were surveyed and until when they hold.',
  'waters-date-unknown': (_figure, name) =>
    `No date given: whether these local waters still hold is not known (until ${dayText(name)}).`,
  daylight: () => 'No date given, so daylight is not checked: be home well before sunset.',
  'extra-load-at-centre': () => 'Weight that may still come aboard is counted where the boat balances.',
  'speed-in-waves': (figure) => `The waves slow the boat below its planned speed${figure && `: ${figure}`}.`,
});

/** What the tool took for granted, in one sentence. */
export function assumptionText(assumption: Assumption, m: Measures, store: StoreKind): string {
  const { code, measure, value, name } = assumption;
  return assumptionWords[code](showOr(plain(value), measure, value, m, store), name ?? '', store);
}

function plain(value: number | undefined): string {
  if (value === undefined || !Number.isFinite(value)) return '';
  return figuresText(spokenNow().tag, value, 3);
}
