import type { BadCaseKind, Reason, ReasonCode } from '../../core/trip/shapes.ts';
import type { Measures, StoreKind } from '../units/measures.ts';
import { dayText } from './day-text.ts';
import { badCaseText, badCaseWords } from './en-bad-case.ts';
import { holderOf, pieceWords, showOr, side } from './en-pieces.ts';
import { bracket, held, type Parts } from './parts.ts';
import { spoken } from './spoken.ts';

const LIMIT = ['', 'limit '] as const;
const PLATE = ['', 'plate '] as const;
const NEED = ['needs ', 'usable '] as const;
const SURE = ['with reserve ', 'usable '] as const;
const WAVES = ['waves ', 'limit '] as const;
const HUMP = ['power over need at the hump ', 'wanted '] as const;

const EDGE: Record<string, string> = { tube: 'tube', transom: 'transom', gunwale: 'gunwale' };
const LOST: Record<string, string> = {
  sinks: 'goes under',
  capsizes: 'turns over',
  upends: 'goes under at one end',
};

export const reasonWords = spoken<Record<ReasonCode, (p: Parts) => string>>('reasonWords', {
  'reserve-broken': (p) =>
    (p.raw.value ?? 0) < 0
      ? held(`The ${p.what} is unlikely to last to the end`, { ...p, value: p.size }, ['short by ', 'reserve '])
      : held(`The trip is likely to eat into your reserve of ${p.what}`, p, ['left at home ', 'reserve ']),
  'runs-dry': (p) => held(`More than one such trip in ten would run out of ${p.what}`, p, NEED),
  'bad-case-dry': (p) =>
    held(`On a bad day${p.name && `, ${p.name},`} the ${p.what} does not last to the end`, p, NEED),
  'reserve-unsure': (p) => held(`More than one such trip in three would eat into your reserve of ${p.what}`, p, SURE),
  'nothing-usable': (p) => `There is no ${p.what} aboard that the engine could use.`,
  'over-plate-load': (p) => held("More weight than the boat's plate allows", p, PLATE),
  'over-plate-persons': (p) => held("More people than the boat's plate allows", p, PLATE),
  'over-plate-power': (p) => held("The engine is stronger than the boat's plate allows", p, PLATE),
  'over-plate-engine-mass': (p) => held("The engine is heavier than the boat's plate allows", p, PLATE),
  'over-category': (p) =>
    p.name === 'wind'
      ? held("More wind than the boat's design category allows", p, ['force ', 'limit force '])
      : held("Higher waves than the boat's design category allows", p, LIMIT),
  'plate-unknown': () => "What the boat's plate allows was not given, so the load could not be checked against it.",
  'no-plate': () => 'This boat has no plate, so nobody has said how much it may carry.',
  'speed-not-held': (p) =>
    held(`The boat cannot hold the planned speed with this load${p.where}`, p, ['planned ', 'at most ']),
  'speed-uncertain': (p) =>
    held(`The boat may not hold the planned speed with this load${p.where}`, p, ['planned ', 'about ']),
  'hump-not-crossed': (p) => held(`With this load the engine does not get the boat onto the plane${p.where}`, p, HUMP),
  'hump-thin': (p) => held(`With this load the engine may only just get the boat onto the plane${p.where}`, p, HUMP),
  'stuck-in-stream': (p) =>
    held(`Wind and stream leave no headway${p.where}`, p, ['planned through the water ', 'at least ']),
  'outside-method': (p) =>
    held(`The figures reach beyond what the calculation was made for${bracket(p.name)}${p.where}`, p, ['', 'up to ']),
  'beyond-trials': (p) =>
    held(
      p.raw.measure === 'mass'
        ? `No trial of this boat was made with such a weight${p.where}, so consumption is less sure`
        : `No trial of this boat was made at such a speed${p.where}, so consumption is less sure`,
      p,
      ['', 'tried '],
    ),
  porpoising: (p) => held(`The bow may start to bounce at the planned speed${p.where}`, p, ['trim ', 'limit ']),
  'on-bow-tube': (p) =>
    p.raw.level === 'no-go' ? 'Somebody sits on the bow tube at planing speed.' : 'Somebody sits on the bow tube.',
  'outside-boat': () => 'Somebody or something is placed outside the boat.',
  'low-in-water': (p) =>
    held(p.raw.level === 'no-go' ? 'The tubes can hardly carry this weight' : 'The boat floats low', p, [
      'tubes immersed by ',
      'limit ',
    ]),
  'low-freeboard': (p) => held(`The ${EDGE[p.name] ?? 'edge'} is close to the water`, p, ['clear by ', 'wanted ']),
  'water-comes-in': (p) =>
    p.value
      ? `Water comes in over the ${EDGE[p.name] ?? 'edge'}: it lies ${p.size} under with this load.`
      : `With this load where it is the boat ${LOST[p.name] ?? 'does not stay afloat'}.`,
  'one-side-under': () => 'If everybody goes to one side, that side goes under.',
  'helm-far': () => 'The helm sits too far from the engine for tiller and kill cord.',
  'too-few-seats': (p) => held('More people than seats', p, ['', 'seats ']),
  'odd-weight': (p) => held('Somebody weighs more than seems right: check the figure', p, ['', 'usually up to ']),
  'off-balance': (p) => held(`The load sits too far to ${side(p.raw.value)}`, { ...p, value: p.size }, LIMIT),
  overtrimmed: (p) => {
    const aft = (p.raw.value ?? 0) < (p.raw.limit ?? 1);
    const before = ['balance at ', aft ? 'at least ' : 'at most '] as const;
    return `${held(`The load sits too far ${aft ? 'aft' : 'forward'}`, p, before).replace(/\)\.$/, ' of the length from aft).')}`;
  },
  'crosses-land': (p) => `The route crosses land${bracket(p.name)}${p.where}.`,
  'crosses-keep-out': (p) => `The route enters a keep-out area${bracket(p.name)}${p.where}.`,
  'crosses-shoal': (p) => {
    const depth =
      p.value && ((p.raw.value ?? 0) < 0 ? `; ${p.size} deep at low water` : `; dries ${p.size} at low water`);
    return `The route crosses a shoal${bracket(p.name)}${p.where}${depth}.`;
  },
  'outside-waters': (p) => `The route leaves the area whose land and shoals are known${p.where}.`,
  'waters-unknown': () => 'Land, shoals and keep-out areas were not checked: nothing is known about these waters.',
  'waters-expired': (p) => `Nobody answers for these local waters after ${dayText(p.name)}: look over them anew.`,
  'waters-not-yet': (p) => `These local waters were surveyed on ${dayText(p.name)}, after this trip.`,
  'too-rough': (p) => held(`Too rough for a boat of this size${p.where}`, p, WAVES),
  rough: (p) => held(`Rough for a boat of this size: slower, wetter, thirstier${p.where}`, p, WAVES),
  'over-wind-limit': (p) =>
    held(
      p.raw.level === 'no-go' && (p.raw.limit ?? 0) < 13.9
        ? 'More wind than your own limit'
        : 'More wind than small open boats go out in',
      p,
      LIMIT,
    ),
  'over-wave-limit': (p) => held(`Higher waves than your own limit${p.where}`, p, LIMIT),
  late: (p) => held(`Home too late${p.name && `: after ${p.name}`}`, p, ['takes ', 'allowed ']),
  'after-dark': (p) =>
    p.size
      ? `You would be home ${p.size} after sunset. A boat without lights must be in by then.`
      : 'You would be under way in the dark.',
  'near-dark': (p) => held('You would be home shortly before sunset', p, ['with ', 'wanted ']),
  'forecast-short': (p) =>
    p.value && p.raw.value
      ? `The forecast tells no wind for part of the trip, from ${p.value} after departure.`
      : 'The forecast does not cover the trip.',
  gusty: (p) => held('Gusts stronger than small open boats go out in', p, ['up to ', 'limit ']),
  'streams-short': (p) => `No stream is told for part of the trip${bracket(p.name)}${p.where}: counted against you.`,
  'wind-against-stream': (p) =>
    p.raw.level === 'no-go'
      ? `The stream runs hard against the wind${p.where}: the waves stand up and break.`
      : `The stream runs against the wind${p.where}: the sea is steeper and a class rougher.`,
  'too-shallow': (p) =>
    held(
      p.raw.level === 'no-go'
        ? `Too little water${bracket(p.name)}${p.where} when you pass`
        : `Only just enough water${bracket(p.name)}${p.where} when you pass`,
      p,
      ['depth ', 'wanted '],
    ),
  'shoal-covered': (p) => held(`Enough water${bracket(p.name)}${p.where} when you pass`, p, ['depth ', 'wanted ']),
  'late-likely': (p) => held(`You may be home too late${p.name && `: after ${p.name}`}`, p, ['up to ', 'allowed ']),
  'fill-unknown': (p) => `How full the ${holderOf(p.what)} is was not given.`,
  'wind-unknown': () => 'The wind was not given.',
  'stream-unknown': () => 'The stream was not given.',
  'sea-unknown': () => 'The sea state was not given.',
  'swell-unknown': (p) =>
    `The waves follow from the wind, but a swell may come in from outside${p.where}, and none was given.`,
  'refill-not-known': (p) =>
    `Nobody is known to offer ${p.what === 'fuel' ? 'fuel' : 'power'} where you mean to fill up${bracket(p.name)}.`,
  'departure-unknown': () => 'Forecast and streams go by the clock, but no departure was given.',
  'seat-unknown': (p) =>
    p.name
      ? `Where ${p.name} sits was not given.`
      : p.raw.value === 1
        ? 'Somebody or something aboard has no seat yet.'
        : `Some of what is aboard has no seat yet${bracket(p.value)}.`,
  'temperature-unknown': () => 'How warm the battery is was not given.',
  'nobody-aboard': () => 'Nobody is aboard yet.',
  'no-helm': () => 'Nobody is at the helm yet.',
  'no-adult': () => 'No adult is aboard: a child does not take a power boat out alone.',
});

/** One sentence on why the verdict is no better, with the figure and what it is held against. */
export function reasonText(reason: Reason, m: Measures, store: StoreKind): string {
  const shown = (si: number | undefined) => showOr('', reason.measure, si, m, store);
  const kinds = reason.code === 'bad-case-dry' ? badCaseFromName(reason.name) : undefined;
  return reasonWords[reason.code]({
    raw: reason,
    value: shown(reason.value),
    limit: shown(reason.limit),
    size: shown(reason.value === undefined ? undefined : Math.abs(reason.value)),
    name: kinds ?? reason.name ?? '',
    where: legsText(reason.legs),
    what: store,
  });
}

/** Counted from 1; three and more in a row are named by the first and the last. */
function legsText(legs: readonly number[] | undefined): string {
  if (!legs || legs.length === 0) return '';
  const sorted = [...new Set(legs)].sort((a, b) => a - b);
  const rows: { first: number; last: number }[] = [];
  for (const leg of sorted) {
    const row = rows.at(-1);
    if (row && leg === row.last + 1) row.last = leg;
    else rows.push({ first: leg, last: leg });
  }
  const names = rows.flatMap(({ first, last }) => {
    if (last - first >= 2) return [pieceWords.legsFromTo(first + 1, last + 1)];
    return first === last ? [String(first + 1)] : [String(first + 1), String(last + 1)];
  });
  return pieceWords.legs(names, sorted.length === 1);
}

/** A bad case named by its codes reads as words; any other name stands as it is. */
function badCaseFromName(name: string | undefined): string | undefined {
  const kinds = name?.split(/[\s,+]+/).filter((kind): kind is BadCaseKind => kind in badCaseWords.first);
  return kinds && kinds.length > 0 ? badCaseText(kinds) : undefined;
}
