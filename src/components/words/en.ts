import type { Regime } from '../../core/curve/shapes.ts';
import type {
  Assumption,
  BadCaseKind,
  Fix,
  FixCode,
  Measure,
  Payload,
  Reason,
  ReasonCode,
  ReserveRule,
  TippingValue,
  Verdict,
} from '../../core/trip/shapes.ts';
import type { Problem } from '../../core/units/result.ts';
import type { Measures, StoreKind } from '../units/measures.ts';
import { figuresText } from '../units/number-text.ts';
import { dayText } from './day-text.ts';
import { listText } from './list-text.ts';
import { bracket, held, type Parts } from './parts.ts';
import { spoken, spokenNow } from './spoken.ts';

/** The answer in the words of the screen. */
export const verdictWords = spoken<Record<Verdict, string>>('verdictWords', {
  go: 'Home with reserve',
  marginal: 'Not sure enough',
  'no-go': 'Not like this',
});

export const verdictWhyWords = spoken<Record<Verdict, (what: StoreKind) => string>>('verdictWhyWords', {
  go: (what) => `The likely trip leaves your reserve untouched, and even a bad day gets home with some ${what} left.`,
  marginal: () => 'It may well work, but too little is left, or too little is known, to count on it.',
  'no-go': () => 'As planned, this trip breaks the reserve or a limit. Change something before you go.',
});

/** One sentence on what the verdict means. */
export function verdictWhy(verdict: Verdict, store: StoreKind): string {
  return verdictWhyWords[verdict](store);
}

/** To be shown with every plan. */
export const cautionWords = spoken('cautionWords', {
  all: [
    'For planning ashore, not for navigation.',
    "The boat's plate, local rules and licensed practice come first.",
    'Engine failure, a turn of the weather and errors of position are not in the number.',
  ],
  unreviewed:
    'Nobody whose mother tongue this is has checked the words on safety in this language yet. The English words hold.',
});

/** What is said beside every plan; and where nobody has checked the words of this language, that too. */
export function cautions(): readonly string[] {
  return spokenNow().reviewed ? cautionWords.all : [...cautionWords.all, cautionWords.unreviewed];
}

const LIMIT = ['', 'limit '] as const;
const PLATE = ['', 'plate '] as const;
const NEED = ['needs ', 'usable '] as const;
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

export const fixWords = spoken<Record<FixCode, (figure: string, fix: Fix, store: StoreKind) => string>>('fixWords', {
  'add-fuel': (figure, _fix, store) =>
    store === 'fuel'
      ? `Take ${figure ? `${figure} more` : 'more fuel'}`
      : `Charge ${figure ? `${figure} more` : 'more, or take another battery'}`,
  'shorten-route': (figure) => (figure ? `Keep the whole trip within ${figure}` : 'Shorten the route'),
  'slow-down': (figure) => (figure ? `Plan ${figure} through the water` : 'Plan a lower speed'),
  'leave-behind': (figure, { measure, value }) =>
    figure
      ? `Leave ${figure}${measure === 'count' ? (value === 1 ? ' person' : ' people') : ''} ashore`
      : 'Take less weight',
  'give-value': () => 'Fill it in',
  'move-forward': (figure, { value = 0, measure }) =>
    `Move weight ${value < 0 ? 'aft' : 'forward'}${figure && ` until the balance shifts ${figure}${measure === 'share' ? ' of the length' : ''}`}`,
  'move-across': (figure, { value }) =>
    figure ? `Move weight to ${side(value)} until the balance shifts ${figure}` : 'Move weight to the other side',
  'draw-round': () => 'Take me round',
  'leave-earlier': (figure) => (figure ? `Leave ${figure} earlier` : 'Leave earlier'),
  wait: (figure) => (figure ? `Wait ${figure}` : 'Wait for better weather'),
  'read-plate': () => 'Read the plate and fill it in',
  'smaller-engine': (figure) => (figure ? `Use an engine of ${figure} at most` : 'Use a smaller engine'),
  'ease-speed': (figure) => (figure ? `Plan ${figure} through the water` : 'Plan a lower speed'),
});

/** What would mend it, as a short order. Moves are signed: forward and to starboard are positive. */
export function fixText(fix: Fix, m: Measures, store: StoreKind): string {
  const size = fix.value === undefined ? undefined : Math.abs(fix.value);
  return fixWords[fix.code](showOr('', fix.measure, size, m, store), fix, store);
}

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

/** What goes wrong on a bad day; `further` is said after another one that speaks of the way home already. */
export const badCaseWords = spoken('badCaseWords', {
  first: {
    'home-slow': 'home at low speed',
    'home-headwind': 'home against a headwind',
    'wind-fresher': 'with more wind than forecast',
    'home-foul-stream': 'home against the stream',
    'home-on-hump': 'home without getting onto the plane',
    'less-in-tank': 'with less aboard to start with',
    'cold-battery': 'with a cold battery',
  } satisfies Record<BadCaseKind, string>,
  further: {
    'home-slow': 'at low speed',
    'home-headwind': 'against a headwind',
    'home-foul-stream': 'against the stream',
    'home-on-hump': 'without getting onto the plane',
  },
});

/** "home at low speed, against a headwind and with less aboard to start with". */
export function badCaseText(kinds: readonly BadCaseKind[]): string {
  let home = false;
  const parts = kinds.map((kind) => {
    const further: Partial<Record<BadCaseKind, string>> = badCaseWords.further;
    const words = (home && further[kind]) || badCaseWords.first[kind];
    home ||= kind in badCaseWords.further;
    return words;
  });
  return listText(parts);
}

type TippingText = (side: string, tipping: TippingValue, m: Measures, store: StoreKind) => string;

export const tippingWords = spoken('tippingWords', {
  knobs: {
    'crew-mass': (side, { value, now }, m) =>
      `With ${m.show('mass', value)} of people and gear ${side} (now ${m.show('mass', now)})`,
    consumption: (_side, { value, now }, m, store) =>
      `If the engine uses ${m.show('share', Math.abs(value / now - 1))} ${value < now ? 'less' : 'more'} ${store} than expected`,
    wind: (side, { value, now }, m) => `In a wind of ${m.show('speed', value)} ${side} (now ${m.show('speed', now)})`,
    stream: (side, { value, now }, m) =>
      `In a stream of ${m.show('speed', value)} ${side} (now ${m.show('speed', now)})`,
    sea: (side, { value, now }, m) => `In waves of ${m.show('length', value)} ${side} (now ${m.show('length', now)})`,
    departure: (_side, { value, from, direction }, m) => {
      const way = direction === 'down' ? 'earlier' : 'later';
      if (value === 0) return `If you leave any ${way}`;
      return `If you leave ${from === 'no-go' ? '' : 'more than '}${m.time(Math.abs(value))} ${way}`;
    },
    fill: (side, { value, now }, m, store) =>
      `With the ${holderOf(store)} ${m.show('share', value)} full ${side} (now ${m.show('share', now)})`,
  } satisfies Record<TippingValue['knob'], TippingText>,
  sides: { up: 'or more', down: 'or less' } satisfies Record<TippingValue['direction'], string>,
  becomes: (what: string, verdict: string) => `${what}, the answer becomes: ${verdict}`,
});

/** "With 310 kg of people and gear or more (now 255 kg), the answer becomes: Not like this". */
export function tippingText(tipping: TippingValue, m: Measures, store: StoreKind): string {
  const { knobs, sides, becomes } = tippingWords;
  const text: TippingText = knobs[tipping.knob];
  return becomes(text(sides[tipping.direction], tipping, m, store), verdictWords[tipping.to]);
}

/** How much more may come aboard; `even` is what still stands against it with hardly anything left aboard. */
export const payloadReasonWords = spoken('payloadReasonWords', {
  binds: {
    plate: () => "the boat's plate sets the limit",
    persons: () => 'the plate allows fewer people',
    rule: () => 'the strictest published rule for such a boat without a plate sets the limit',
    freeboard: () => 'with more the edge comes too close to the water',
    stability: () => 'with more the side goes under when everybody is on it',
    floating: () => 'with more the boat floats too low, or is heavier than the calculation was made for',
    planing: () => 'with more the boat does not plane',
    speed: () => 'with more the planned speed is not held',
    reserve: (what) => `with more the ${what} is not enough for the reserve or a bad day`,
    'search-limit': () => 'no more than that was tried',
    'no-plate': () => 'no plate was read, and no rule or figure of the boat gives a limit instead',
  } satisfies Record<Payload['binds'], (what: StoreKind) => string>,
  even: {
    plate: () => "the boat's plate sets the limit",
    persons: () => 'the plate allows fewer people',
    rule: () => 'the strictest published rule for such a boat without a plate sets the limit',
    freeboard: () => 'even then the edge comes too close to the water',
    stability: () => 'even then the side goes under when everybody is on it',
    floating: () => 'even then the boat floats too low, or is heavier than the calculation was made for',
    planing: () => 'even then the boat does not plane',
    speed: () => 'even then the planned speed is not held',
    reserve: (what) => `even then the ${what} is not enough for the reserve or a bad day`,
    'search-limit': () => 'no more than that was tried',
    'no-plate': () => 'no plate was read, and no rule or figure of the boat gives a limit instead',
  } satisfies Record<Payload['binds'], (what: StoreKind) => string>,
  notYet: 'How much more may come aboard has not been worked out yet.',
  unknown: (why: string) => `How much more may come aboard is not known: ${why}.`,
  hardly: (why: string) => `Less weight alone does not mend it: ${why}.`,
  ashore: (mass: string, why: string) => `Leave ${mass} ashore: ${why}.`,
  more: (mass: string, why: string) => `${mass} more may come aboard: ${why}.`,
});

/** To leave more than this share of all weight ashore is no advice. */
const HARDLY_ANYTHING = 0.75;

/** How much more may come aboard, or must stay ashore, and what decides it. */
export function payloadText(payload: Payload, m: Measures, store: StoreKind): string {
  const { binds, extra } = payload;
  const words = payloadReasonWords;
  const why = words.binds[binds](store);
  if (extra === undefined || Number.isNaN(extra)) {
    return binds === 'search-limit' ? words.notYet : words.unknown(why);
  }
  if (-extra > HARDLY_ANYTHING * payload.counted) return words.hardly(words.even[binds](store));
  if (extra < 0) return words.ashore(m.show('mass', -extra), why);
  return words.more(m.show('mass', extra), why);
}

export const regimeWords = spoken<Record<Regime, string>>('regimeWords', {
  displacement: 'displacement',
  hump: 'on the hump',
  planing: 'planing',
});

/** How the boat moves at a speed. */
export function regimeText(regime: Regime): string {
  return regimeWords[regime];
}

export const reserveRuleWords = spoken('reserveRuleWords', {
  thirds: 'a third out, a third home, a third kept',
  share: (share: string) => `${share} kept`,
  minutes: (time: string) => `${time} of running kept`,
});

/** The reserve rule as a phrase: "a third kept", "25% kept", "30 min kept". */
export function reserveRuleText(rule: ReserveRule, m: Measures): string {
  switch (rule.kind) {
    case 'thirds':
      return reserveRuleWords.thirds;
    case 'share':
      return reserveRuleWords.share(m.show('share', rule.share));
    case 'minutes':
      return reserveRuleWords.minutes(m.time(rule.minutes * 60));
    default:
      return rule satisfies never;
  }
}

/** What keeps a trip from being planned, or a file from being read; the core's own message in English. */
export const problemWords = spoken('problemWords', {
  'route-too-short': 'Draw a route with at least two points',
  'route-no-length': 'The route has no length',
  'no-such-stream-place': (waypoint: number) =>
    `The leg from waypoint ${waypoint} takes the stream of a place that is not listed`,
  told: ({ message }: Problem) => message,
});

/** What a door found wrong, in the page's language. */
export function problemText(problem: Problem): string {
  const { code, path } = problem;
  if (code === 'route-too-short' || code === 'route-no-length') return problemWords[code];
  if (code === 'no-such-stream-place') return problemWords[code](Number(path.split('.')[2]) + 1);
  return problemWords.told(problem);
}

/** The same, with the place in the file. */
export function problemAt(problem: Problem): string {
  const text = problemText(problem);
  return problem.path === '' || text.includes(problem.path) ? text : `${text} (${problem.path})`;
}

/** Clockwise from north, sixteen of them, as written where there is little room. */
export const compassWords = spoken('compassWords', {
  points: ['N', 'NNE', 'NE', 'ENE', 'E', 'ESE', 'SE', 'SSE', 'S', 'SSW', 'SW', 'WSW', 'W', 'WNW', 'NW', 'NNW'],
});

/** Sixteen points, for a direction in degrees: 225 is "SW". */
export function compassPoint(deg: number): string {
  return compassWords.points[((Math.round(deg / 22.5) % 16) + 16) % 16] ?? '';
}

/** What sentences are put together from. */
export const pieceWords = spoken('pieceWords', {
  endless: 'more than there is',
  legs: (names: readonly string[], one: boolean) => ` on ${one ? 'leg' : 'legs'} ${listText(names)}`,
  legsFromTo: (first: number, last: number) => `${first} to ${last}`,
});

function side(toStarboard: number | undefined): string {
  return toStarboard === undefined ? 'one side' : toStarboard < 0 ? 'port' : 'starboard';
}

function holderOf(store: StoreKind): string {
  return store === 'fuel' ? 'tank' : 'battery';
}

function showOr(none: string, measure: Measure | undefined, si: number | undefined, m: Measures, store: StoreKind) {
  if (measure === undefined || si === undefined || Number.isNaN(si)) return none;
  return Number.isFinite(si) ? m.show(measure, si, store) : pieceWords.endless;
}

function plain(value: number | undefined): string {
  if (value === undefined || !Number.isFinite(value)) return '';
  return figuresText(spokenNow().tag, value, 3);
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
