import type { StoreKind } from '../units/measures.ts';
import { spoken } from './spoken.ts';

/** Of a field for one figure. Sentences about a plan stand in files of their own: `en-reasons.ts` and its neighbours. */
export const fieldWords = spoken('fieldWords', {
  less: (what: string) => `Less: ${what}`,
  more: (what: string) => `More: ${what}`,
  missing: 'Please fill this in.',
  noFigure: (example: string) => `Please type a figure, such as ${example}.`,
  notWhole: 'Please type a whole figure.',
  atLeast: (figure: string) => `At least ${figure}.`,
  atMost: (figure: string) => `At most ${figure}.`,
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
  byTime: 'By time',
  byTide: 'By the tide',
  partFailed: 'This part of the page could not be loaded. Try again when the network is back.',
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
