import type { ChangeCode, Sureness } from '../../core/compare/changes.ts';
import type { Planes, Planing } from '../../core/compare/planing.ts';
import type { PropellerAdvice } from '../../core/compare/propeller-advice.ts';
import type { Seating } from '../../core/compare/seat-crew.ts';
import type { CellNote, CruiseRule } from '../../core/compare/shapes.ts';
import type { Spare } from '../../core/compare/spare.ts';
import type { Piece, Standing, Suited, SuitReason } from '../../core/compare/suit-shapes.ts';
import type { Propeller } from '../../core/craft/shapes.ts';
import { INCH } from '../../core/units/convert.ts';
import type { Measures, StoreKind } from '../units/measures.ts';
import { numberText } from '../units/number-text.ts';
import { reasonText } from './en-reasons.ts';
import { spoken } from './spoken.ts';

/** Words of the loads and engines page, and of what would suit. */
export const compareWords = spoken('compareWords', {
  boat: 'Boat',
  units: 'Units',
  examples: 'Examples of a type, not products.',
  openProfile: 'Open a measured boat',
  notOpened: 'This file could not be read as a measured boat, and nothing was changed.',
  measured: (name: string, runs: number, by: string | undefined, day: string | undefined) =>
    `${name}: measured, ${runs} ${runs === 1 ? 'run counts' : 'runs count'}${by ? `, by ${by}` : ''}${day ? `, last on ${day}` : ''}. Engines that were not tried keep a wider band.`,
  measuredNothing: (name: string) =>
    `${name} was opened, but no run in it counts: its figures are those of an unmeasured boat.`,
  closeProfile: 'Back to the examples',
  plate: "Builder's plate",
  plateUsual: 'Usual for such a boat',
  plateMine: 'As I read it',
  plateUsualHint: 'Figures often found on such boats. They are no plate: read the one on the boat.',
  loads: 'Loads',
  eachMass: 'Weight of each person',
  eachMassHint: 'Clothed, with what they carry',
  gear: 'Gear, whatever the crew',
  people: (count: number) => `${count} ${count === 1 ? 'person' : 'people'}`,
  seating: 'Where the crew sits',
  seatings: { spread: 'Spread out', forward: 'Forward', aft: 'Aft' } satisfies Record<Seating, string>,
  addLoad: 'Add another load',
  otherLoad: 'Another load',
  weights: (unit: string) => `Weights in ${unit}, a name before them if you like. Family: 85, 70, 32`,
  weightsProblem: 'Type weights as numbers above 0, with commas or spaces between.',
  otherName: (figures: string) => `Load of ${figures}`,
  remove: 'Remove',
  engines: 'Engines',
  engine: 'Engine',
  store: (store: StoreKind) => (store === 'fuel' ? 'Tank' : 'Battery'),
  pitch: 'Propeller pitch',
  shaft: 'Shaft',
  shaftOf: (length: string) => `${length.toLowerCase()} shaft`,
  addEngine: 'Add an engine',
  mostEngines: (count: number) => `At most ${count} side by side.`,
  setup: (number: number) => `Engine ${number}`,
  water: 'Water',
  salt: 'Sea water',
  fresh: 'Fresh water',
  batteryTemperature: 'Temperature of batteries',
  cruising: 'Cruising speed',
  cruiseOwn: 'Each its own',
  cruiseOne: 'One for all',
  cruiseOneValue: 'Speed for all',
  cruiseDefinition:
    'Each its own: on the plane, the speed of least consumption per distance; where the boat does not plane, what the hull makes without climbing its bow wave (length Froude number 0.35).',
  table: 'Loads against engines',
  caption:
    'Calm, tank or battery full. In brackets what eight of ten such boats lie between. Ranges are one way, with the weight at departure all the way.',
  load: 'Load',
  allUp: (figure: string) => `${figure} in all`,
  toTable: 'To the table',
  csv: 'Save as CSV',
  print: 'Print',
  working: 'Working it out',
});

/** Heads and words of the table as a file of comma-separated values. */
export const csvWords = spoken('csvWords', {
  load: 'load',
  engine: 'engine',
  pitch: 'propeller pitch (in)',
  store: 'tank or battery',
  allUp: (unit: string) => `all-up weight (${unit})`,
  planes: 'planes',
  planingShare: 'share of such boats that plane',
  top: 'top speed',
  cruise: (unit: string) => `cruising speed (${unit})`,
  cruiseHeld: 'cruising speed held',
  use: 'consumption',
  usePer: (unit: string) => `L or Wh per ${unit}`,
  range: 'range',
  banded: (name: string, side: 'low' | 'median' | 'high', unit: string) =>
    `${name} ${side === 'median' ? '' : `${side} `}(${unit})`,
  rangeKept: (unit: string) => `range with a third kept (${unit})`,
  spare: (unit: string) => `to spare by plate and floating (${unit})`,
  sparePlaning: (unit: string) => `to spare and still planing (${unit})`,
  cautions: 'cautions',
  yes: 'yes',
  no: 'no',
});

export const cellWords = spoken('cellWords', {
  top: 'Top speed',
  cruise: 'Cruise',
  use: 'Uses there',
  range: 'Range',
  kept: 'A third kept',
  spare: 'To spare',
  sparePlaning: 'Still planing',
  notHeld: 'not held',
  stuck: 'stays below the hump',
  rules: {
    'least-use-planing': 'planing',
    'below-hull-speed': 'not planing',
    wished: 'as set',
  } satisfies Record<CruiseRule, string>,
});

export const planesWords = spoken<Readonly<Record<Planes, string>>>('planesWords', {
  planes: 'Planes',
  marginal: 'May just plane',
  not: 'Does not plane',
});

export const spareWords = spoken('spareWords', {
  nearlyAll: 'nearly all such boats',
  hardlyAny: 'hardly any such boat',
  inTen: (count: number) => `${count} in 10 such boats`,
  why: { plate: 'plate', floating: 'floats too low', 'search-limit': 'no limit found' } satisfies Record<
    Spare['binds'],
    string
  >,
  noPlate: (floats: string) => `not known without a plate (floats with ${floats})`,
  less: (mass: string) => `${mass} less`,
  more: (mass: string) => `${mass} more`,
  tooMuch: (mass: string, why: string) => `${mass} too much (${why})`,
  spare: (mass: string, why: string) => `${mass} (${why})`,
  notEmpty: 'not even empty',
  with: (change: string) => `with ${change}`,
});

export const noteWords = spoken('noteWords', {
  legDeep: (by: string) => `The shaft is too long for this transom, by ${by}: more drag.`,
  legHigh: (by: string) =>
    `The shaft is too short for this transom, by ${by}: the propeller draws air. Its figures do not count that.`,
  shaftUnknown: 'Whether the shaft fits the transom is not known.',
  revsHigh: (rpm: string, rated: string) => `Turns ${rpm} rpm at full throttle, over its rated ${rated}: more pitch.`,
  revsLow: (rpm: string, rated: string) =>
    `Turns only ${rpm} of its rated ${rated} rpm at full throttle: less pitch or less weight.`,
});

/** "Planes", "May just plane". */
export function planesText({ planes }: Planing): string {
  return planesWords[planes];
}

/** In how many of ten such boats. */
export function chanceText(chance: number): string {
  if (chance >= 0.95) return spareWords.nearlyAll;
  if (chance <= 0.05) return spareWords.hardlyAny;
  return spareWords.inTen(Math.round(chance * 10));
}

/** What may still come aboard by plate and floating, with what decides it. */
export function spareText({ extra, binds, plateKnown }: Spare, m: Measures): string {
  const size = m.show('mass', Math.abs(extra));
  const words = spareWords;
  if (!plateKnown) return words.noPlate(extra < 0 ? words.less(size) : words.more(size));
  return extra < 0 ? words.tooMuch(size, words.why[binds]) : words.spare(size, words.why[binds]);
}

/** What may come aboard and the boat still planes surely. */
export function sparePlaningText({ planing }: Spare, m: Measures): string {
  if (planing === undefined) return spareWords.notEmpty;
  const size = m.show('mass', Math.abs(planing));
  return spareWords.with(planing < 0 ? spareWords.less(size) : spareWords.more(size));
}

export function noteText(note: CellNote, m: Measures): string {
  const count = (figure: number) => numberText(m.lang, Math.round(figure / 10) * 10);
  switch (note.code) {
    case 'leg-deep':
      return noteWords.legDeep(m.show('length', note.by));
    case 'leg-high':
      return noteWords.legHigh(m.show('length', note.by));
    case 'shaft-unknown':
      return noteWords.shaftUnknown;
    case 'revs-high':
      return noteWords.revsHigh(count(note.rpm), count(note.rated));
    case 'revs-low':
      return noteWords.revsLow(count(note.rpm), count(note.rated));
    default:
      return note satisfies never;
  }
}

/** "9.3 x 9.5 in". */
export function propellerText({ diameter, pitch }: Propeller, lang: string): string {
  const inches = (size: number) => numberText(lang, size / INCH, { most: 1 });
  return `${inches(diameter)} x ${inches(pitch)}\u00a0in`;
}

export const lookWords = spoken('lookWords', {
  title: 'A closer look',
  hint: 'One load on one engine: whether the propeller suits, and what the usual tricks change.',
  load: 'Load',
  engine: 'Engine',
  propeller: 'Propeller',
  window: 'Revs the maker wants at full throttle',
  windowHint: "In the engine's manual; usual figures stand here.",
  low: 'From',
  high: 'To',
  measuredRpm: 'Measured at full throttle',
  measuredRpmHint: 'With this load; leave empty if not measured.',
  windowProblem: 'The second figure has to be larger than the first.',
  pitches: 'What other pitches would do',
  pitch: 'Pitch',
  rpm: 'Full-throttle revs',
  top: 'Top speed',
  fits: 'Revs',
  inWindow: 'as wanted',
  tooLow: 'too low',
  tooHigh: 'too high',
  noPlane: 'does not plane',
  now: 'now',
  asItIs: 'As it is',
  changes: 'What changes if',
  change: 'Change',
  crewMove: 'Everybody moves by',
  trimDeg: 'Engine trim moves by',
  trimHint: 'One hole of the pin is often about 4 degrees.',
  plane: 'Onto the plane',
  hump: 'Power to spare at the hump',
  use: (speed: string) => `Use at ${speed}`,
  sure: 'How sure',
  none: 'no change',
  never: 'does not plane',
  planingWords: { never: 'still does not plane', lost: 'no longer planes', gained: 'planes then' },
  notHeld: 'no longer holds it',
  between:
    'Each change as eight of ten such boats have it. Smaller than waves, wind and reading errors means: not to be noticed.',
  outside: "Outside the method's range.",
  onto: 'Where the bow has come down as far as it is now when planing begins.',
});

export const adviceWords = spoken('adviceWords', {
  findings: {
    'in-window': 'The propeller suits this load.',
    'too-low': 'Too much pitch for this load: the engine labours.',
    'maybe-low': 'Probably too much pitch for this load. Measure the revs to be sure.',
    'too-high': 'Too little pitch for this load: the engine overspeeds.',
    'maybe-high': 'Probably too little pitch for this load. Measure the revs to be sure.',
  } satisfies Record<PropellerAdvice['finding'], string>,
  predicted: (rpm: string, low: string, high: string, from: string, to: string) =>
    `By our model this load turns ${rpm} rpm at full throttle (${low} to ${high}); wanted are ${from} to ${to}.`,
  measured: (rpm: string, model: string, from: string, to: string) =>
    `Measured ${rpm} rpm at full throttle; our model says ${model}. Wanted are ${from} to ${to}.`,
  stuck:
    'At full throttle this load stays below the hump: less weight, weight forward or more power come before the propeller.',
  change: (inches: string, more: boolean, perInch: string) =>
    `By our propeller model about ${inches} in ${more ? 'more' : 'less'} pitch: ${perInch} rpm an inch here.`,
  practice: (from: string, to: string) =>
    `Boating forums reckon 200 to 300 rpm an inch, for coarser propellers than these: ${from} to ${to} in. A rule of thumb: no measurements behind it were found.`,
});

/** What the revs at full throttle say of the propeller, in sentences. */
export function adviceText(advice: PropellerAdvice, lang: string): readonly string[] {
  const { rpm, measured, finding, stuck, change, perInch, predicted, window } = advice;
  const count = (figure: number) => numberText(lang, Math.round(figure / 10) * 10);
  const inches = (metres: number) => halves(Math.abs(metres) / INCH, lang);
  const [from, to] = [count(window.low), count(window.high)];
  const words = adviceWords;
  const sentences = [
    measured === undefined
      ? words.predicted(count(rpm.median), count(rpm.low), count(rpm.high), from, to)
      : words.measured(count(measured), count(predicted.rpm.median), from, to),
  ];
  if (stuck) sentences.push(words.stuck);
  sentences.push(words.findings[finding]);
  if (change && !stuck) {
    const [a, b] = [...change.practice].map((metres) => Math.abs(metres)).sort((x, y) => x - y) as [number, number];
    sentences.push(
      words.change(inches(change.model), change.model >= 0, count(perInch)),
      words.practice(inches(a), inches(b)),
    );
  }
  return sentences;
}

/** To the nearest half, never 0. */
function halves(figure: number, lang: string): string {
  return numberText(lang, Math.max(Math.round(figure * 2) / 2, 0.5), { most: 1 });
}

type ChangeText = { readonly name: (figure: string) => string; readonly note?: string };

export const changeWords = spoken<Readonly<Record<ChangeCode, ChangeText>>>('changeWords', {
  'crew-forward': { name: (figure) => `Everybody sits ${figure} further forward` },
  'crew-aft': { name: (figure) => `Everybody sits ${figure} further aft` },
  'trim-out': { name: (figure) => `Engine trimmed out by ${figure}` },
  'trim-in': { name: (figure) => `Engine trimmed in by ${figure}` },
  'long-shaft': {
    name: () => 'A shaft 5 in longer',
    note: 'Sizes of drag and weight by common practice, no source: 1 to 3 km/h at 30 km/h.',
  },
  cup: {
    name: () => 'A cupped propeller',
    note: 'A light to heavy cup counts as half an inch to an inch of pitch: common practice, no source. That it grips better in turns and waves is not counted.',
  },
  'larger-propeller': { name: () => 'A propeller half an inch to an inch larger, same pitch' },
  'foil-plate': {
    name: () => 'A foil plate on the leg',
    note: 'Owners dispute it, and no published measurement was found: from nothing but drag to an easier hump. Some find the boat harder to steer in turns.',
  },
});

export const surenessWords = spoken<Readonly<Record<Sureness, string>>>('surenessWords', {
  method: 'Worked out',
  practice: 'Worked out from a size that is common practice',
  disputed: 'Disputed: little more than a guess',
});

export const suitWords = spoken('suitWords', {
  who: 'Who comes along',
  weights: 'Weights of everyone',
  weightsHint: (unit: string) => `In ${unit}, the one at the helm first, with commas between: 85, 70, 32`,
  weightsProblem: 'Type up to twelve weights as numbers above 0, with commas or spaces between.',
  gear: 'Gear and provisions',
  trip: 'The trip',
  distance: 'Out and home together',
  waves: 'Waves',
  flat: 'Flat',
  waveHeight: 'Wave height',
  waveHint: 'Crest to trough, as forecasts give it. A wind that raises them stands against you on the way home.',
  water: 'Water',
  salt: 'Sea water',
  fresh: 'Fresh water',
  speed: 'Speed wished',
  speedAny: 'No matter',
  speedAnyHint: 'Each boat at what its hull makes without planing.',
  speedSet: 'At least',
  speedValue: 'Through the water',
  carry: 'Means',
  carryHow: 'To the water',
  carryNone: 'Trailer or berth',
  carrySet: 'By hand',
  carryValue: 'One person may carry',
  carryHint: 'Engine, tank and battery each by one person, the bare hull by all together.',
  energy: 'Engine',
  energies: { either: 'Either', petrol: 'Petrol', electric: 'Electric' },
  batteryTemperature: 'Temperature of the battery',
  toAnswer: (count: number | undefined) => (count === undefined ? 'To the answer' : `${count} suit: see which`),
  working: (done: number, all: number) => `Looking at ${done} of ${all}`,
  incomplete: 'Type the weights and the length of the trip',
  found: (count: number) =>
    count === 0
      ? 'None of these boats suits'
      : count === 1
        ? 'One of these boats and engines suits'
        : `${count} of these boats and engines suit`,
  foundHint:
    'The lightest to launch first. With everybody aboard, a full tank or battery, a third kept, and home even on a bad day.',
  doubtful: (count: number) => `${count} not sure enough`,
  out: (count: number) => `${count} fall out`,
  more: (count: number) => `Show ${count} more`,
  fewer: 'Show fewer',
  mass: 'Boat, engine, full tank',
  heaviest: 'Heaviest piece',
  hullShare: 'Hull, each of you',
  left: 'Left at home',
  needs: 'Needs',
  range: 'Out and home, a third kept',
  speedAt: 'Goes at',
  planing: 'planing',
  displacement: 'not planing',
  sure: (share: string) => `The reserve stays whole in ${share} of such trips`,
  propeller: 'Propeller',
  pitched: (figure: string, side: 'less' | 'more') => `${figure} ${side} pitch than usual on this engine`,
  reasons: 'Why',
  plate: 'Plates here are figures usual for such boats. Read the one on the boat.',
  invented: 'Boats here are invented examples of their type; engines, tanks and batteries are classes, not products.',
});

export const standingWords = spoken<Readonly<Record<Standing, string>>>('standingWords', {
  fits: 'Suits',
  doubtful: 'Not sure enough',
  out: 'Falls out',
});

export const suitedWords = spoken('suitedWords', {
  carry: {
    hull: (mass: string, limit: string) =>
      `The bare hull is too heavy to carry (${mass} for each of you, limit ${limit}).`,
    engine: (mass: string, limit: string) => `The engine is too heavy to carry (${mass}, limit ${limit}).`,
    tank: (mass: string, limit: string) => `The full tank is too heavy to carry (${mass}, limit ${limit}).`,
    battery: (mass: string, limit: string) => `The battery is too heavy to carry (${mass}, limit ${limit}).`,
  } satisfies Record<Piece, (mass: string, limit: string) => string>,
  seats: (seats: number, people: number) => `Too few seats (${seats} for ${people}).`,
  noStore: 'No tank or battery here goes with this engine.',
  planes: (speed: string) => `Planes with everybody at ${speed}`,
  holds: (speed: string) => `Holds ${speed} with everybody`,
  slowed: ', slowed by the waves',
  because: (how: string, left: string, usable: string) =>
    `${how}; home with ${left} left of ${usable}; within the plate.`,
});

/** Why a combination is in doubt or falls out. */
export function suitReasonText(reason: SuitReason, m: Measures, store: StoreKind): string {
  switch (reason.kind) {
    case 'plan':
      return reasonText({ ...reason.reason, legs: [] }, m, store);
    case 'carry':
      return suitedWords.carry[reason.piece](m.show('mass', reason.value), m.show('mass', reason.limit));
    case 'seats':
      return suitedWords.seats(reason.limit, reason.value);
    case 'no-store':
      return suitedWords.noStore;
    default:
      return reason satisfies never;
  }
}

/** What a combination that suits has to show for it, in short. */
export function suitsBecause({ trip, craft }: Suited, wished: number | undefined, m: Measures): string {
  if (!trip || !craft) return '';
  const speed = m.show('speed', trip.speed);
  const how = trip.planing ? suitedWords.planes(speed) : suitedWords.holds(speed);
  const slowed = wished !== undefined && trip.speed < 0.995 * wished ? suitedWords.slowed : '';
  const shown = (amount: number) => m.show('amount', amount, trip.store);
  return suitedWords.because(how + slowed, shown(trip.left.median), shown(trip.usable));
}
