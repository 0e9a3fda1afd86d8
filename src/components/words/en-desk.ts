import type { Experience, HandoverPoint } from '../../core/hire/shapes.ts';
import type { Verdict } from '../../core/trip/shapes.ts';
import type { StoreKind } from '../units/measures.ts';
import { spoken } from './spoken.ts';

/** Words of the hire desk round its check. */
export const deskWords = spoken('deskWords', {
  parts: 'Parts of the desk',
  views: {
    check: 'Check',
    out: 'Boats out',
    log: 'Day log',
    card: 'Season card',
    morning: 'This morning',
    fleet: 'Fleet and data',
  },
  outCount: (count: number) => `Boats out (${count})`,
  loading: 'Looking up what this computer keeps …',
  held: 'An older page of this site is open in another tab and holds the desk’s data. Close that tab, and the desk goes on here. Nothing is lost.',
  newer:
    'A newer version of this page keeps the desk’s data, and boats that are out may be missing here. Save a copy of what was entered on this page under “Fleet and data”, then reload the page.',
  inMemory:
    'This browser keeps nothing here: storage is blocked or full. The desk works until the page is closed; save a copy under “Fleet and data”.',
  unreadable: (count: number) =>
    count === 1
      ? 'One entry kept on this computer cannot be read and is left out here.'
      : `${count} entries kept on this computer cannot be read and are left out here.`,
  morningMissing: 'This morning has not been set yet.',
  morningExpired: (time: string) => `What was set this morning ran out at ${time}.`,
  morningSet: (time: string) => `Set for today until ${time}`,
  setNow: 'Set it now',
  fleetOver: (day: string) => `Nobody answers for this fleet after ${day}.`,
  answersFor: (name: string) => `${name} answers for boats, plates and area`,
  demo: 'The boats, plates and routes here are invented, to try the desk. Bring your own under “Fleet and data”.',
  minutes: 'min',
});

/** Words of the check itself, six questions. */
export const checkWords = spoken('checkWords', {
  title: 'Check a hire',
  boat: 'Boat',
  boatOut: (name: string) => `${name} (out)`,
  weights: 'Weights of everyone and their things',
  weightsHint: (unit: string, all: string) =>
    `In ${unit}, with commas between: 85, 70, 32${all && `. Together ${all}`}`,
  weightsMissing: 'Type the weights of everyone aboard.',
  weightsProblem: 'Type weights as numbers above 0, with commas or spaces between.',
  where: 'Where',
  hoursOnly: 'No set route: inside the area, engine running all the time',
  back: 'Due back',
  backAfter: 'Hours from leaving',
  backAt: 'At a time',
  hours: 'Hours',
  time: 'Time',
  backProblem: 'Type the hours, more than 0 and at most 12.',
  timeProblem: 'Pick a time later than now.',
  experience: 'Experience',
  experiences: { new: 'First time', some: 'Has done it', used: 'Knows boats' } satisfies Record<Experience, string>,
  limits: (wind: string, wave: string) =>
    wind || wave
      ? `The desk’s limits: ${[wind && `wind up to ${wind}`, wave && `waves up to ${wave}`].filter(Boolean).join(', ')}`
      : 'No limits of the desk beside the usual ones',
  slip: 'Make the slip',
  next: 'Next hirer',
  nothingYet: 'No answer yet',
});

/** The large answer, as a hirer reads it. */
export const hirerWords = spoken('hirerWords', {
  verdicts: {
    go: 'You can go',
    marginal: 'Not sure enough',
    'no-go': 'Not like this',
  } satisfies Record<Verdict, string>,
  why: {
    go: (what: StoreKind) => `There is ${what} for the whole trip, with some kept for surprises.`,
    marginal: () => 'It may go well, but something is too tight or not known. The desk decides.',
    'no-go': () => 'Change something first: a shorter trip, fewer people, another boat, or another day.',
  } satisfies Record<Verdict, (what: StoreKind) => string>,
  findings: {
    'morning-missing': 'The desk has not set today’s wind and water yet.',
    'morning-expired': 'What the desk set for wind and water has run out. It has to be set again.',
    'fleet-expired': 'Nobody answers for this boat any more: its survey is past its date.',
    'fleet-not-yet': 'The survey of this fleet has not begun yet.',
    'no-time-left': 'There is no time left until the boat has to be back.',
    'boat-out': 'This boat is still out from its last hire.',
    'area-unnamed': 'Without a set route or an area named by the desk nobody has checked depth and dangers.',
  },
  left: (left: string, band: string, kept: string) =>
    `About ${left} left when you are back (${band}); ${kept} is kept for surprises.`,
  short: (short: string) => `About ${short} too little to get back.`,
  takes: (time: string, distance: string) => `It takes about ${time}, ${distance} in all.`,
  backBy: (time: string) => `Be back by ${time}`,
  backAfter: (time: string) => `Be back ${time} after leaving`,
  turn: (level: string, when: string) => `${when} at the latest; at once when there is less than ${level} in it`,
  turnAt: (time: string) => `by ${time}`,
  turnAfter: (time: string) => `${time} after leaving`,
  good: (time: string) => `This answer is good for leaving until ${time}.`,
  stale: (time: string) => `This answer ran out at ${time}. Check again before leaving.`,
  area: (area: string) => `Stay inside: ${area}`,
  shownFor: 'Why',
  cautions:
    'The boat’s plate, the desk and local rules come first. Engine failure and a turn of the weather are not in the figures. Not for navigation.',
});

/** Reasons of a plan in a hirer's words; a reason that is not here is told in the planner's. */
export const hirerReasons = spoken('hirerReasons', {
  'reserve-broken': 'You would use what is kept for surprises.',
  'runs-dry': 'You could run out before you are back.',
  'bad-case-dry': 'On a bad day it would not last until you are back.',
  'reserve-unsure': 'You might well use what is kept for surprises.',
  'nothing-usable': 'There is nothing in it that the engine could use.',
  'over-plate-load': 'Too much weight: the boat’s plate allows less.',
  'over-plate-persons': 'Too many people: the boat’s plate allows fewer.',
  'over-category': 'Too much wind or sea for what the boat’s plate says.',
  'plate-unknown': 'Nobody has read this boat’s plate, so its load cannot be checked.',
  'no-plate': 'This boat has no plate that says how much it may carry.',
  'speed-not-held': 'With this weight the boat does not reach the speed it is hired out for.',
  'speed-uncertain': 'With this weight the boat may not reach the speed it is hired out for.',
  'hump-not-crossed': 'With this weight the boat does not get onto the plane.',
  'hump-thin': 'With this weight the boat only just gets onto the plane.',
  'off-balance': 'The weight is not even from side to side. Change seats.',
  'too-few-seats': 'There are more people than seats.',
  'odd-weight': 'One of the weights is higher than seems right. Ask again.',
  'no-adult': 'A child does not take a boat out alone.',
  'waters-unknown': 'Nobody has checked land, depth and closed areas where you go.',
  'waters-expired': 'Nobody answers for the chart of these waters any more.',
  'waters-not-yet': 'The chart of these waters was made after this day.',
  'over-wind-limit': 'Too much wind today.',
  'over-wave-limit': 'The waves are too high today.',
  'too-rough': 'The waves are too high for a boat of this size.',
  rough: 'It will be rough for a boat of this size.',
  late: 'You could not be back in time.',
  'late-likely': 'You may not be back in time.',
  'after-dark': 'You would be out after sunset.',
  'near-dark': 'You would be back only shortly before sunset.',
  'fill-unknown': 'How full it is has not been read.',
  'wind-unknown': 'Today’s wind has not been set.',
  'stream-unknown': 'Today’s stream has not been set.',
  'sea-unknown': 'Today’s waves have not been set.',
  'temperature-unknown': 'How warm the battery is has not been read.',
});

/** The handover, the slip and the departure. */
export const handoverWords = spoken('handoverWords', {
  title: (boat: string) => `Handover: ${boat}`,
  shown: 'Shown to the hirer',
  initials: 'Your initials',
  initialsHint: 'Typed once, then tick each point that you have shown.',
  initialsFirst: 'Type your initials first, so that each point has a name to it.',
  points: {
    plate: 'The plate: people and weight; everyone’s seat',
    'kill-cord': 'Kill cord: worn, and tried once',
    jackets: 'A life jacket fitted to each person',
    'reverse-stop': 'Ahead, astern, stop; slowing down in time',
    paddles: 'Paddles, anchor and bailer: where and how',
    area: 'On the map: where to go, where not',
    return: 'When to turn and when to be back',
    call: 'Whom to call: late, out of fuel, in trouble',
  } satisfies Record<HandoverPoint, string>,
  missing: (count: number) =>
    count === 1 ? 'One point has not been shown yet.' : `${count} points have not been shown yet.`,
  contact: 'How to reach them (if you want to keep it)',
  contactHint: 'Stays on this computer, is not on the slip or in its code, and goes when the hires are cleared.',
  leave: 'They leave now',
  left: (time: string, due: string) => `Left at ${time}, due back at ${due}.`,
  refused: (time: string) => `The slip was good until ${time}. Check again: the day may have changed.`,
  again: 'Check again',
  print: 'Print the slip',
  paper: 'Paper',
  done: 'Done: next hirer',
  away: 'Strike this slip',
});

/** What stands on the printed slip. */
export const slipWords = spoken('slipWords', {
  title: 'Hire slip',
  boat: 'Boat',
  where: 'Where',
  leave: 'Leave by',
  left: 'Left at',
  due: 'Back by',
  afterLeaving: (time: string) => `${time} after leaving`,
  leftBlank: 'Left at',
  turn: 'Turn for home',
  level: (store: StoreKind) => (store === 'fuel' ? 'Fuel at the start' : 'Charge at the start'),
  turnWith: (level: string) => `or at once with less than ${level}`,
  call: 'Call',
  rescue: 'In danger',
  initialled: 'Shown to you',
  signature: 'Signature',
  codeLink: 'Opens the same plan on a phone.',
  codeText: 'Holds this slip as plain text.',
  codeName: 'QR code of this slip',
  codeLong: 'The plan is too long for a code.',
  late: 'If you are late, out of fuel or the engine stops: call early, anchor, stay with the boat, jackets on.',
  notValid: (time: string) => `Not valid for leaving after ${time}.`,
  kept: (left: string, reserve: string) => `${left} left at the end is expected; ${reserve} is for surprises only.`,
});

/** Boats out, and what to do when one is late. */
export const outWords = spoken('outWords', {
  title: 'Boats out',
  none: 'No boat is out.',
  waiting: 'Waiting to leave',
  waitingUntil: (time: string) => `slip good until ${time}`,
  waitingStale: (time: string) => `slip ran out at ${time}: check again`,
  due: (time: string) => `due ${time}`,
  left: (time: string) => `left ${time}`,
  in: (time: string) => `in ${time}`,
  late: (time: string) => `overdue by ${time}`,
  open: 'Open',
  returned: 'Returned',
  alarm: (boat: string, time: string) => `${boat} is overdue by ${time}`,
  clockBack: (time: string) =>
    `This computer’s clock was put back by ${time}. Times noted before, above all when boats are due, come that much later now. Look at each boat that is out.`,
  clockSeen: 'Looked at',
  alarms: (count: number) => (count === 1 ? 'A boat is overdue' : `${count} boats are overdue`),
  steps: {
    call: [
      'Look out over the area from the slip.',
      'Call the hirer. Ask other boats that come in.',
      'Note the time of every call.',
    ],
    'ask-round': [
      'Half an hour late: call the harbour, the landings and anyone who may see them.',
      'Get the slip: boat, people, route, what was in the tank.',
      'In bad weather, in cold water or before dark do not wait any longer: call the rescue now.',
    ],
    'raise-alarm': [
      'An hour late: call the coastguard or the emergency number and say “boat overdue”.',
      'Read the slip to them: boat, colour, people, weights, route, when they left.',
      'Stay at the phone. Call again when the boat is back.',
    ],
  },
  rules: 'Your own rules and those of the place come first.',
  sooner: 'With bad weather, nightfall or any sign of trouble, call the rescue at once.',
  closed: 'A closed page cannot warn. Keep this page open while boats are out, and the clock beside it.',
  soundOn: 'Sound on',
  soundOff: 'Sound off',
  contact: (contact: string) => `Reach them: ${contact}`,
});

/** What is noted at the return. */
export const returnWords = spoken('returnWords', {
  title: (boat: string) => `${boat} is back`,
  at: 'Back at',
  putBack: (store: StoreKind) =>
    store === 'fuel' ? 'Fuel filled in again' : 'Charge put back, by the battery’s own monitor',
  putBackHint: 'To the same level as at the start. Leave it empty if it was not filled.',
  used: 'How was it used?',
  asPlanned: 'The set route, as planned',
  running: 'Engine running for …',
  unknown: 'Nobody knows',
  runningTime: 'Engine ran, hours',
  counts: 'Counts as evidence of what this boat uses.',
  countsNot: 'Noted in the log only: without the way it was used it says nothing about the boat.',
  odd: (planned: string) =>
    `About ${planned} was to be expected. Check the figure, the mark and the boat: bottom, propeller, leaks.`,
  note: 'Note (damage, what went wrong)',
  save: 'Note the return',
  cancel: 'Not back yet',
});

/** The log of a day. */
export const logWords = spoken('logWords', {
  title: 'Day log',
  day: 'Day',
  none: 'No hires on this day.',
  boat: 'Boat',
  where: 'Where',
  people: 'People',
  weight: 'Weight',
  answer: 'Answer',
  checked: 'Checked',
  left: 'Left',
  due: 'Due',
  back: 'Back',
  late: 'Late',
  used: 'Put back',
  shown: 'Shown by',
  note: 'Note',
  experience: 'Experience',
  csv: 'Save as CSV',
  print: 'Print',
  notLeft: 'did not leave',
  overdue: 'overdue',
});

/** The card for a desk without a screen. */
export const cardWords = spoken('cardWords', {
  title: 'Season card',
  lead: 'How long a boat may go, by crew and wind: for a desk without a screen. Print one for each boat.',
  boat: 'Boat',
  fill: 'Filled to',
  fetch: 'Open water to windward',
  stream: 'Strongest stream',
  temperature: 'Battery no colder than',
  make: 'Work out the card',
  working: (share: string) => `Working out the card: ${share}`,
  cancel: 'Stop',
  failed: 'The card could not be worked out.',
  print: 'Print the card',
  caption: 'Longest hire, hours, by weight of crew and wind',
  crew: 'Crew and their things',
  upTo: (mass: string, persons: number) =>
    `up to ${mass}, ${persons === 1 ? 'one person' : `at most ${persons} people`}`,
  force: (force: number) => `Force ${force}`,
  windUpTo: (wind: string, wave: string) => `up to ${wind}, waves ${wave}`,
  none: '–',
  noneMeans: '– means: not without a check.',
  basis: (parts: { speed: string; water: string; full: string; fetch: string; stream: string; reserve: string }) =>
    `For ${parts.speed} through the water, engine running all the time, straight out and home, wind from the worst side; ${parts.water}; ${parts.full} at the start; ${parts.fetch} of open water; ${parts.stream}; ${parts.reserve}.`,
  salt: 'salt water',
  fresh: 'fresh water',
  slack: 'no stream',
  streamOf: (rate: string) => `a stream of up to ${rate} against the way home`,
  level: (amount: string, share: string) => `${amount} (${share} full)`,
  battery: (temperature: string) => `Battery not colder than ${temperature}.`,
  measured: 'From runs or refills of this boat.',
  unmeasured: 'This boat has not been measured: from boats like it, with a wide margin.',
  until: (day: string) => `Good until ${day}`,
  answers: (name: string) => `Answers for it: ${name}`,
  rules: [
    'Not in the dark, not in fog, not with thunder about, not outside the area.',
    'More weight, more people, more wind or less in the tank than the card says: not without a check.',
    'Halfway through the time turn for home.',
    'Whoever is new to boats goes only in what the desk allows newcomers.',
  ],
});

/** What is set once a day. */
export const morningWords = spoken('morningWords', {
  title: 'This morning',
  lead: 'Set once; every check of the day uses it until it runs out.',
  water: 'Wind and water',
  until: 'Good until',
  endOfDay: 'The end of today',
  atTime: 'A time',
  untilTime: 'Runs out at',
  lastReturn: 'Last return',
  lastReturnHint: 'Every boat is due by then, whatever was hired. Leave it empty if there is none.',
  limits: 'Limits by experience',
  limitsHint: 'They only tighten. Empty: the usual limits of small open boats.',
  maxWind: 'Wind up to',
  maxWave: 'Waves up to',
  slipLife: 'A slip may wait, minutes',
  set: 'Set for today',
  done: 'Set.',
  past: 'This time is past already.',
});

/** The fleet, and all that is kept. */
export const fleetWords = spoken('fleetWords', {
  title: 'Fleet',
  demo: 'This fleet is invented. Load or type your own before anybody goes out on its word.',
  open: 'Load a fleet file',
  save: 'Save the fleet as a file',
  demoBack: 'Back to the invented fleet',
  problems: (count: number) =>
    count === 1
      ? 'The file was not taken: one thing is wrong in it.'
      : `The file was not taken: ${count} things are wrong in it.`,
  place: (path: string) => `at ${path}`,
  name: 'Name of the desk',
  answers: 'Who answers for it',
  surveyed: 'Looked over on',
  until: 'Relied on until',
  call: 'Whom the hirer calls',
  rescue: 'Whom to call for rescue',
  area: 'Area for hires without a set route',
  areaHint: 'In words a hirer keeps to. Who answers for the fleet answers for depth and dangers in it.',
  site: 'Address of the planner for hirers’ phones',
  siteHint: 'Only if it is not the address of this page.',
  keep: 'Keep these',
  boats: 'Boats',
  boat: 'Boat',
  addBoat: 'Add a boat',
  edit: (name: string) => `Change ${name}`,
  remove: (name: string) => `Take ${name} out`,
  shipped: 'Figures of a boat like it',
  own: 'Own figures',
  measured: 'Measured, with its profile',
  notes: (count: number) => (count === 1 ? 'one refill noted here' : `${count} refills noted here`),
  boatName: 'Name on the boat',
  hull: 'Boat like it',
  engine: 'Engine',
  store: 'Tank or battery',
  speed: 'Speed it is hired out for',
  plate: 'Plate',
  profile: 'Or load its profile from trials',
  profileTaken: (name: string) => `Profile: ${name}`,
  boatProblem: 'Give the boat a name and a speed.',
  keepBoat: 'Keep this boat',
  cancel: 'Leave it',
  routes: 'Set routes',
  noRoutes: 'None. A fleet file can bring them.',
  routeFromPlanner: 'Take the route of the planner on this device',
  routeNone: 'The planner on this device keeps no whole route.',
  units: 'Units',
  data: 'What this computer keeps',
  dataLead:
    'Fleet, morning, hires and refills are in this browser only, and nowhere else. Names are not needed. Keep a copy where you keep other records.',
  exportAll: 'Save all as one file',
  importAll: 'Load such a file',
  importAsk: 'Loading replaces all that is kept here. Load it?',
  importYes: 'Replace everything',
  importDone: 'Loaded.',
  wipe: 'Clear the hires',
  wipeAsk: (out: number) =>
    `This removes every hire, weight, contact and note from this computer.${out > 0 ? ` ${out === 1 ? 'One boat is' : `${out} boats are`} still out: the list of boats out goes too.` : ''} Refills stay, without anybody’s weight. It cannot be undone.`,
  wipeYes: 'Clear them for good',
  wipeDone: 'Cleared.',
  wipeAll: 'Clear everything of this desk',
  wipeAllAsk: 'This removes hires, refills, fleet and morning from this computer. It cannot be undone.',
  no: 'No',
});
