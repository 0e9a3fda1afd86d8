import type { DesignCategory, Drive, EngineCycle, Fouling, HullForm, Plate } from '../../core/craft/shapes.ts';
import type { StoreKind } from '../units/measures.ts';
import { spoken } from './spoken.ts';

/** Of a field for one figure. Sentences about a plan are in `en.ts`. */
export const fieldWords = spoken('fieldWords', {
  less: (what: string) => `Less: ${what}`,
  more: (what: string) => `More: ${what}`,
  missing: 'Please fill this in.',
  noFigure: (example: string) => `Please type a figure, such as ${example}.`,
  notWhole: 'Please type a whole figure.',
  atLeast: (figure: string) => `At least ${figure}.`,
  atMost: (figure: string) => `At most ${figure}.`,
});

export const foulingWords = spoken<Readonly<Record<Fouling, string>>>('foulingWords', {
  clean: 'Clean',
  slime: 'Slime: a tenth more resistance',
  weed: 'Weed or light shell: a quarter more',
  shell: 'Heavy shell: half as much again',
});

export const craftWords = spoken('craftWords', {
  boat: 'Boat',
  engine: 'Engine',
  ownBoat: 'Own boat',
  ownEngine: 'Own engine',
  ownTank: 'Own tank',
  ownBattery: 'Own battery',
  tank: 'Tank',
  battery: 'Battery',
  examples: 'Examples of a type, not products. Pick the nearest, then set your own figures under "Fine-tune".',
  fineTune: 'Fine-tune the figures',
  changed: 'With your own figures.',
  reset: 'Back to the example',
  bottom: 'Bottom of the boat',
  length: 'Length overall',
  beam: 'Beam overall',
  hullMass: 'Weight, empty',
  hullMassHint: 'Without engine, fuel and gear',
  ratedPower: 'Rated power',
  ratedPowerHint: 'At the propeller shaft',
  engineMass: 'Engine weight',
  propeller: 'Propeller',
  propellerHint: 'Often stamped on it: diameter x pitch.',
  propellerDiameter: 'Diameter',
  propellerPitch: 'Pitch',
  shaft: 'Shaft length',
  tankCapacity: 'Tank capacity',
  batteryEnergy: 'Energy when new',
  batteryHealth: 'Battery health',
  batteryHealthHint: 'Share of that energy it still holds',
  batteryMass: 'Battery weight',
  place: (store: StoreKind) => `Where the ${store === 'fuel' ? 'tank' : 'battery'} sits`,
  placeKept: 'As it is now',
});

export const formWords = spoken<Record<HullForm, string>>('formWords', {
  'inflatable-catamaran': 'Inflatable catamarans',
  rib: 'Rigid inflatables',
  'flat-floor-inflatable': 'Flat-floor inflatables',
  'rigid-v': 'V-bottom boats',
  'rigid-flat': 'Flat-bottom boats',
  displacement: 'Displacement boats',
});

export const cycleWords = spoken<Record<EngineCycle | 'electric', string>>('cycleWords', {
  '4s-carb': 'Petrol, four-stroke, carburettor',
  '4s-efi': 'Petrol, four-stroke, fuel injection',
  '2s-carb': 'Petrol, two-stroke, carburettor',
  '2s-di': 'Petrol, two-stroke, direct injection',
  electric: 'Electric',
});

export const shaftWords = spoken<Record<NonNullable<Drive['shaft']>, string>>('shaftWords', {
  short: 'Short, 15 in',
  long: 'Long, 20 in',
  'extra-long': 'Extra long, 25 in',
});

export const plateWords = spoken('plateWords', {
  title: "Builder's plate",
  why: 'The plate on the boat says what it may carry. The figures below the fields are only what boats like this often have: read yours, and leave empty what it does not say.',
  none: 'This boat has no plate',
  noneWhy: 'Then nobody has said how much it may carry, and no answer here can.',
  maxLoad: 'Largest load',
  persons: 'Persons',
  maxPower: 'Engine power',
  maxEngineMass: 'Engine weight',
  category: 'Design category',
  scheme: 'Kind of plate',
  notRead: 'Not read',
  typical: (figure: string) => `Often about ${figure}`,
});

export const categoryWords = spoken<Record<DesignCategory, string>>('categoryWords', {
  A: 'A: beyond force 8, beyond 4 m',
  B: 'B: to force 8, to 4 m',
  C: 'C: to force 6, to 2 m',
  D: 'D: to force 4, to 0.3 m',
});

export const schemeWords = spoken<Record<Plate['scheme'], string>>('schemeWords', {
  eu: 'European (CE mark): engine not counted',
  us: 'United States: engine and fuel counted',
  unknown: 'Not known',
});

export const fillWords = spoken('fillWords', {
  title: (store: StoreKind) =>
    store === 'fuel' ? 'Fuel in the tank at departure' : 'Charge in the battery at departure',
  level: 'Level',
  exact: 'Share of full',
  quarters: ['\u00bc', '\u00bd', '\u00be', 'Full'],
  quarterNames: ['A quarter', 'Half', 'Three quarters', 'Full'],
  unknownHint: 'Not given: the answer can be no better than "Not sure enough".',
  knownBy: 'How do you know?',
  measured: (store: StoreKind) => (store === 'fuel' ? 'Dipstick or scales' : 'Battery monitor'),
  gauge: (store: StoreKind) => (store === 'fuel' ? 'Gauge or a glance' : 'Lights or a glance'),
});

export const conditionWords = spoken('conditionWords', {
  departure: 'Departure',
  wind: 'Wind',
  calm: 'Calm',
  known: 'I know it',
  oneWind: 'One wind',
  oneStream: 'One stream',
  windFrom: 'Blows from',
  windSpeed: 'Wind speed',
  force: 'Beaufort force',
  stream: 'Stream',
  slack: 'Slack',
  streamSet: 'Flows towards',
  streamRate: 'Rate',
  sea: 'Sea',
  flat: 'Flat',
  waveHeight: 'Wave height',
  waveHint: 'Significant height: crest to trough, mean of the highest third, as forecasts give it.',
  bothNeeded: 'Fill in both; until then it counts as not known.',
  heightNeeded: 'Fill in the height; until then it counts as not known.',
  degrees: 'Degrees (true)',
  point: 'Compass point',
  water: 'Water',
  salt: 'Sea water',
  fresh: 'Fresh water',
  batteryTemperature: 'Temperature of the battery',
  batteryHint: 'A cold battery gives less.',
  waterTemperature: 'Temperature of the water',
  waterTemperatureHint: 'Changes no figure of the plan; the checklists heed it.',
});

export const reserveWords = spoken('reserveWords', {
  title: 'Reserve to keep',
  strictest: 'Where several are chosen, the largest reserve holds.',
  noneChosen: 'None chosen: a third is kept.',
  thirds: 'A third out, a third home, a third kept',
  share: 'Keep a share',
  shareValue: 'Share kept',
  minutes: 'Keep minutes of running',
  minutesValue: 'Minutes kept',
  fixed: 'Set by your host and always kept',
  allowances: 'Allowances',
  ifEmpty: (figure: string) => `Left empty: ${figure}`,
  manoeuvring: 'Warming up, casting off, coming alongside',
  drawnFactor: 'Sailed further than drawn, by',
  limits: 'Your own limits',
  maxWind: 'Most wind',
  maxWave: 'Highest waves',
  depth: 'Least water under way',
  timeAllowed: 'Due back after',
});
