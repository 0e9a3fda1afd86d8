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
import { reasonText } from './en.ts';

/** Words of the loads and engines page, and of what would suit. */
export const compareWords = {
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
} as const;

export const cellWords = {
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
} as const;

const PLANES: Readonly<Record<Planes, string>> = {
  planes: 'Planes',
  marginal: 'May just plane',
  not: 'Does not plane',
};

/** "Planes", and in how many of ten such boats. */
export function planesText({ planes }: Planing): string {
  return PLANES[planes];
}

export function chanceText(chance: number): string {
  if (chance >= 0.95) return 'nearly all such boats';
  if (chance <= 0.05) return 'hardly any such boat';
  return `${Math.round(chance * 10)} in 10 such boats`;
}

/** What may still come aboard by plate and floating, with what decides it. */
export function spareText({ extra, binds, plateKnown }: Spare, m: Measures): string {
  const size = m.show('mass', Math.abs(extra));
  const why = { plate: 'plate', floating: 'floats too low', 'search-limit': 'no limit found' }[binds];
  if (!plateKnown) return `not known without a plate (floats with ${extra < 0 ? `${size} less` : `${size} more`})`;
  return extra < 0 ? `${size} too much (${why})` : `${size} (${why})`;
}

/** What may come aboard and the boat still planes surely. */
export function sparePlaningText({ planing }: Spare, m: Measures): string {
  if (planing === undefined) return 'not even empty';
  return planing < 0 ? `with ${m.show('mass', -planing)} less` : `with ${m.show('mass', planing)} more`;
}

export function noteText(note: CellNote, m: Measures): string {
  const count = (figure: number) => new Intl.NumberFormat(m.lang).format(Math.round(figure / 10) * 10);
  switch (note.code) {
    case 'leg-deep':
      return `The shaft is too long for this transom, by ${m.show('length', note.by)}: more drag.`;
    case 'leg-high':
      return `The shaft is too short for this transom, by ${m.show('length', note.by)}: the propeller draws air. Its figures do not count that.`;
    case 'shaft-unknown':
      return 'Whether the shaft fits the transom is not known.';
    case 'revs-high':
      return `Turns ${count(note.rpm)} rpm at full throttle, over its rated ${count(note.rated)}: more pitch.`;
    case 'revs-low':
      return `Turns only ${count(note.rpm)} of its rated ${count(note.rated)} rpm at full throttle: less pitch or less weight.`;
    default:
      return note satisfies never;
  }
}

/** "9.3 x 9.5 in". */
export function propellerText({ diameter, pitch }: Propeller, lang: string): string {
  const inches = new Intl.NumberFormat(lang, { maximumFractionDigits: 1 });
  return `${inches.format(diameter / INCH)} x ${inches.format(pitch / INCH)}\u00a0in`;
}

export const lookWords = {
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
} as const;

const FINDINGS: Readonly<Record<PropellerAdvice['finding'], string>> = {
  'in-window': 'The propeller suits this load.',
  'too-low': 'Too much pitch for this load: the engine labours.',
  'maybe-low': 'Probably too much pitch for this load. Measure the revs to be sure.',
  'too-high': 'Too little pitch for this load: the engine overspeeds.',
  'maybe-high': 'Probably too little pitch for this load. Measure the revs to be sure.',
};

/** What the revs at full throttle say of the propeller, in sentences. */
export function adviceText(advice: PropellerAdvice, lang: string): readonly string[] {
  const { rpm, measured, finding, stuck, change, perInch, predicted, window } = advice;
  const count = (figure: number) => new Intl.NumberFormat(lang).format(Math.round(figure / 10) * 10);
  const inches = (metres: number) => halves(Math.abs(metres) / INCH, lang);
  const sentences = [
    measured === undefined
      ? `By our model this load turns ${count(rpm.median)} rpm at full throttle (${count(rpm.low)} to ${count(rpm.high)}); wanted are ${count(window.low)} to ${count(window.high)}.`
      : `Measured ${count(measured)} rpm at full throttle; our model says ${count(predicted.rpm.median)}. Wanted are ${count(window.low)} to ${count(window.high)}.`,
  ];
  if (stuck) {
    sentences.push(
      'At full throttle this load stays below the hump: less weight, weight forward or more power come before the propeller.',
    );
  }
  sentences.push(FINDINGS[finding]);
  if (change && !stuck) {
    const side = change.model < 0 ? 'less' : 'more';
    const [a, b] = [...change.practice].map((metres) => Math.abs(metres)).sort((x, y) => x - y) as [number, number];
    sentences.push(
      `By our propeller model about ${inches(change.model)} in ${side} pitch: ${count(perInch)} rpm an inch here.`,
      `Boating forums reckon 200 to 300 rpm an inch, for coarser propellers than these: ${inches(a)} to ${inches(b)} in. A rule of thumb: no measurements behind it were found.`,
    );
  }
  return sentences;
}

/** To the nearest half, never 0. */
function halves(figure: number, lang: string): string {
  return new Intl.NumberFormat(lang, { maximumFractionDigits: 1 }).format(Math.max(Math.round(figure * 2) / 2, 0.5));
}

export const changeWords: Readonly<
  Record<ChangeCode, { readonly name: (figure: string) => string; readonly note?: string }>
> = {
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
};

export const surenessWords: Readonly<Record<Sureness, string>> = {
  method: 'Worked out',
  practice: 'Worked out from a size that is common practice',
  disputed: 'Disputed: little more than a guess',
};

export const suitWords = {
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
} as const;

export const standingWords: Readonly<Record<Standing, string>> = {
  fits: 'Suits',
  doubtful: 'Not sure enough',
  out: 'Falls out',
};

const PIECES: Readonly<Record<Piece, string>> = {
  hull: 'The bare hull is',
  engine: 'The engine is',
  tank: 'The full tank is',
  battery: 'The battery is',
};

/** Why a combination is in doubt or falls out. */
export function suitReasonText(reason: SuitReason, m: Measures, store: StoreKind): string {
  switch (reason.kind) {
    case 'plan':
      return reasonText({ ...reason.reason, legs: [] }, m, store);
    case 'carry': {
      const each = reason.piece === 'hull' ? ' for each of you' : '';
      return `${PIECES[reason.piece]} too heavy to carry (${m.show('mass', reason.value)}${each}, limit ${m.show('mass', reason.limit)}).`;
    }
    case 'seats':
      return `Too few seats (${reason.limit} for ${reason.value}).`;
    case 'no-store':
      return 'No tank or battery here goes with this engine.';
    default:
      return reason satisfies never;
  }
}

/** What a combination that suits has to show for it, in short. */
export function suitsBecause({ trip, craft }: Suited, wished: number | undefined, m: Measures): string {
  if (!trip || !craft) return '';
  const speed = m.show('speed', trip.speed);
  const how = trip.planing ? `planes with everybody at ${speed}` : `holds ${speed} with everybody`;
  const wave = wished !== undefined && trip.speed < 0.995 * wished ? ', slowed by the waves' : '';
  const kept = m.show('amount', trip.left.median, trip.store);
  return `${how.charAt(0).toUpperCase()}${how.slice(1)}${wave}; home with ${kept} left of ${m.show('amount', trip.usable, trip.store)}; within the plate.`;
}
