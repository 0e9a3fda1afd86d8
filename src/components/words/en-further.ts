import type { Mishap } from '../../core/trip/contingencies.ts';
import type { Doubt } from '../../core/trip/risk.ts';
import type { Verdict } from '../../core/trip/shapes.ts';
import type { StoreKind } from '../units/measures.ts';
import { spoken } from './spoken.ts';

/** Words of the further answers of a trip. */
export const furtherWords = spoken('furtherWords', {
  empty: 'These answers show once there is a plan.',
  unusable: 'The route cannot be sailed as planned, so there is nothing to work out here.',
  working: 'Working it out',
  minimums: 'Least aboard at each point',
  start: 'When to leave?',
  mishaps: 'If something goes wrong',
  sure: 'How sure is it?',
  speed: 'Which speed?',
  here: 'Check from here, under way',
});

export const minimumsWords = spoken('minimumsWords', {
  caption: (store: StoreKind) =>
    `Read the ${store} at each point. With less than this, or later than this, turn for home there. Each figure gets through the likely trip with the reserve whole and still gets home on a bad day; the unusable rest is not counted.`,
  captionOneWay: (store: StoreKind) =>
    `Read the ${store} at each point. With less than this, or later than this, do not go on as planned. The unusable rest is not counted.`,
  point: 'Point',
  arrival: 'Planned arrival',
  left: 'Planned left',
  goOn: 'Turn if below',
  latest: 'Turn if after',
  home: 'Least to get home',
  easy: 'Home at most economical speed',
  waypoint: (number: number) => `Point ${number}`,
  parts: { out: 'out', home: 'on the way home' },
  end: 'Back at the start',
  turn: (amount: string, time: string | undefined) =>
    `Turn for home if below ${amount}${time ? ` or after ${time}` : ''}.`,
  onward: (amount: string, time: string | undefined) =>
    `Not on as planned if below ${amount}${time ? ` or after ${time}` : ''}.`,
  homeward: (amount: string) => `Below ${amount}: slow down, or make for a landing.`,
  all: (n: number) => `Show all ${n} points`,
  fewer: 'Show fewer',
  atEnd: (amount: string) => `Should be left: ${amount}.`,
  short: 'less than that is planned',
});

export const mishapNames = spoken<Record<Mishap, (speed: string, store: StoreKind) => string>>('mishapNames', {
  'headwind-home': () => 'A headwind all the way home, one force stronger',
  'home-slow': (speed) => `The engine only gives ${speed} on the way home`,
  'home-on-hump': (speed) => `The boat labours at the hump on the way home, at ${speed}`,
  'tow-home': (speed) => `Another boat like this is towed home, at ${speed}`,
  'hour-lost': () => 'An hour is lost with the engine running slowly',
  'cold-battery': () => 'The battery is 10 °C colder',
  'tank-fails': (_, store) => (store === 'fuel' ? 'The largest tank fails' : 'The largest battery fails'),
});

export const mishapWords = spoken('mishapWords', {
  caption: 'Each on its own, on a day that is otherwise as planned.',
  mishap: 'What happens',
  answer: 'Answer',
  left: 'Left at the end',
  time: 'Trip takes',
  short: (amount: string) => `${amount} short`,
  noWay: 'makes no way home',
  worst: (amount: string) => `on a bad day ${amount}`,
  go: 'Reserve whole',
  touched: 'Home on the reserve',
  unsure: 'Home, but not on a bad day',
  'no-go': 'Does not last',
});

export const doubtNames = spoken<Record<Doubt, (store: StoreKind) => string>>('doubtNames', {
  boat: () => 'How much this boat uses',
  load: () => 'What is really aboard',
  speed: () => 'The speed really made',
  weather: () => 'Wind and sea along the way',
  stream: () => 'The stream',
  gauge: (store) => `How much ${store} there really is`,
});

export const sureWords = spoken('sureWords', {
  whole: 'The reserve stays whole',
  home: (home: boolean) => (home ? 'Something is left at home' : 'Something is left at the end'),
  ofHundred: (n: number) => (n < 1 ? 'in fewer than 1 of 100 such trips' : `in about ${n} of 100 such trips`),
  what: 'What matters most',
  whatHint: 'Shares of the doubt in this answer. The largest is the one worth measuring or asking about first.',
  largest: (name: string, share: string) => `${name}: ${share} of the doubt.`,
  check: 'Play it over',
  checkHint:
    'The figures above come from a quick formula. As a check the same trip can be played 10,000 times with boat, load, speed, wind, stream and gauge drawn anew each time.',
  play: 'Play it 10,000 times',
  stop: 'Stop',
  playing: (done: string) => `${done} of 10,000 played`,
  stopped: 'Stopped. Nothing was changed.',
  failed: 'It could not be played over here. The figures above stand.',
  agrees: 'Played 10,000 times it comes out the same, within 2 of 100.',
  differs: 'Played 10,000 times it comes out differently by more than 2 of 100: the lower figure is shown.',
  played: (whole: string, home: string) => `Played: reserve whole ${whole}, something left ${home}.`,
  limits: 'Engine failure, a turn of the weather and errors of position are not in these figures.',
});

export const speedWords = spoken('speedWords', {
  intro: (store: StoreKind) => `The whole trip at one speed: the time it takes against the ${store} left at the end.`,
  present: 'As planned now',
  thriftiest: 'Uses least',
  earliest: 'Home earliest with the reserve',
  earliestThere: 'There earliest with the reserve',
  lowestRevs: 'Lowest engine revs',
  inPicture: { present: 'now', thriftiest: 'uses least', earliest: 'earliest', lowestRevs: 'lowest revs' },
  allInPicture: 'all three',
  presentMixed: 'with its own speeds on the way',
  take: (speed: string) => `Plan at ${speed}`,
  planned: 'Planned now',
  took: (speed: string) => `The whole trip is now planned at ${speed}.`,
  back: 'Take back',
  tookBack: 'The speeds are as they were.',
  none: 'At no single speed does this trip keep the reserve.',
  noneHeld: 'At no single speed can this trip be sailed: the boat does not make headway or does not hold the speed.',
  table: 'Every speed as a table',
  speed: 'Speed through water',
  time: 'Time',
  use: 'Uses',
  left: 'Left',
  revs: 'Most revs',
  answer: 'By fuel or charge',
  fuel: { go: 'keeps the reserve', marginal: 'close', 'no-go': 'breaks the reserve' } satisfies Record<Verdict, string>,
  reserve: 'reserve',
  due: 'due back',
  picture: (store: StoreKind, low: string, high: string) =>
    `Time against ${store} left, for speeds from ${low} to ${high}. The list below and the table give the same figures.`,
  axisTime: 'time for the whole trip',
  axisLeft: (store: StoreKind) => `${store} left`,
  note: 'Slower in waves and in zones with a limit as everywhere in the plan; the other reasons of the answer are judged anew once a speed is taken.',
});

export const hereWords = spoken('hereWords', {
  where: 'Where are you?',
  gauge: (store: StoreKind) => (store === 'fuel' ? 'Fuel in the tank now' : 'Charge in the battery now'),
  by: { device: 'This device', point: 'A point of the route', typed: 'Typed position' },
  locate: 'Find where I am',
  locating: 'Looking for the position',
  located: (position: string, within: string | undefined) => `${position}${within ? `, within ${within}` : ''}`,
  noDevice: 'This device or page gives no position. Pick a point of the route or type it.',
  refused: 'The position was not given: it is not allowed here. Pick a point of the route or type it.',
  lost: 'The position was not found. Try again under open sky, pick a point of the route or type it.',
  notLocated: 'Press the button to find the position.',
  point: 'Nearest point',
  choosePoint: 'Choose',
  notChosen: 'Choose a point.',
  waypoint: (number: number, name: string | undefined) => (name ? `${number}: ${name}` : `Point ${number}`),
  position: 'Latitude and longitude',
  positionHint: (example: string) => `Such as ${example}`,
  notPosition: 'This cannot be read as a position.',
  offChart: 'This position is not on the chart.',
  clock: 'Clock now',
  now: 'Now',
  clockHint: (day: string) => `On the day of the trip, ${day}`,
  notClock: 'Give the time now.',
  notFill: 'Set what the gauge shows.',
  homeward: 'The turn lies behind me',
  check: 'What now?',
  ways: 'From here',
  kinds: { 'go-on': 'Go on as planned', turn: 'Turn for home' },
  homewardOn: 'Go on home',
  turnBack: 'Back the way you came',
  landing: (name: string) => `To ${name}`,
  verdicts: { go: 'Keeps the reserve', marginal: 'Close', 'no-go': 'Not this' } satisfies Record<Verdict, string>,
  beyond: (amount: string) => `${amount} beyond the reserve`,
  under: (amount: string) => `${amount} into the reserve`,
  short: (amount: string) => `${amount} short`,
  noWay: 'no way there',
  arrives: (clock: string, time: string, distance: string) => `There at ${clock}, in ${time}, ${distance}`,
  used: (percent: string, more: boolean) =>
    `So far ${percent} ${more ? 'more' : 'less'} used than planned for this place.`,
  usedSame: 'So far as much used as planned for this place.',
  usedUnknown: 'Too early to tell from the gauge what was used against the plan.',
  carried: 'It is carried on: the rest is worked out with as much more.',
  notCarried: 'The rest is worked out as planned; using less is not counted on.',
  early: 'This much more calls for an early turn (common practice: from 15 % more).',
  off: (distance: string) => `You are ${distance} off the planned line.`,
  noLanding: 'No landing within reach is marked on these waters.',
  kept: (amount: string) => `The reserve kept is that of the plan at departure, ${amount}.`,
  failed: 'Nothing could be worked out from here.',
  caution: 'An aid to deciding, not for navigation. If in doubt, turn early or call for help early.',
});

export const daylightWords = spoken('daylightWords', {
  title: 'Daylight',
  none: 'Give a departure, and whether you are back in daylight shows here.',
  kept: (margin: string, home: boolean) => `${home ? 'Home' : 'There'} ${margin} before sunset.`,
  short: (margin: string, home: boolean) => `${home ? 'Home' : 'There'} only ${margin} before sunset.`,
  dark: (late: string, home: boolean) => `${home ? 'Home' : 'There'} ${late} after sunset.`,
  startsDark: (sunrise: string | undefined) =>
    sunrise ? `This trip starts in the dark; sunrise is at ${sunrise}.` : 'This trip starts in the dark.',
  polarDay: 'The sun does not set that day.',
  polarNight: 'The sun does not rise that day: the whole trip is in the dark or in twilight.',
  times: (sunset: string, lastLight: string | undefined) =>
    lastLight ? `Sunset ${sunset}, last light ${lastLight}.` : `Sunset ${sunset}; twilight lasts all night.`,
  rule: 'Common practice: home at least an hour before sunset. High ground brings the dark forward, and a slow way home takes longer than planned.',
});
