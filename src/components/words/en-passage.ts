import { spoken } from './spoken.ts';

/** Words of the passage plan's form. */
export const passageWords = spoken('passageWords', {
  title: 'Passage plan',
  empty: 'The passage plan shows once there is an answer.',
  about:
    'For somebody ashore who will miss you. What you type here stays on this device. Leave it with them before you go, and tell them when you are back.',
  noFit: 'This trip does not fit: change it before you leave word of it.',
  who: 'Who is aboard: names, ages, anything a rescuer should know',
  marks: "The boat's name or number, and how it looks",
  reach: 'Phone and radio aboard',
  contact: 'Shore contact and phone',
  rescue: 'Whom the contact calls for help',
  rescueHint: 'The number of the coastguard or the emergency number there.',
  vehicle: 'Car or trailer, and where it stands',
  gear: 'Safety gear aboard',
  margin: 'Back at the latest',
  marginOn: (time: string) => `at ${time}, as planned`,
  marginAfter: (time: string, minutes: number) => `at ${time}, ${minutes} min later`,
  onPaper: 'Print what I typed',
  inMessages: 'Send what I typed along: in the message, the text and the calendar',
  print: 'Print passage plan',
  send: 'Send as message',
  copy: 'Copy as message',
  saveText: 'Save as text',
  calendar: 'Calendar file: overdue',
  gpx: 'Route as GPX',
  geojson: 'Route as GeoJSON',
  noDeparture: 'Give a departure time under "The day", and the plan gets clock times and a calendar file.',
  copied: 'Copied.',
  copyByHand: 'This browser did not let the page copy or send. Mark the text below and copy it by hand.',
  saved: (name: string) => `Saved as ${name}.`,
  unread:
    'What was kept on this device comes from another version and could not be read. It is still there; this is a new start.',
  notKept: 'This browser does not let the page keep what you type here: print or send it before you leave the page.',
  working: 'Working out how late you may leave',
  preview: 'What it says',
});

/** Words of the sheet itself. */
export const passageSheetWords = spoken('passageSheetWords', {
  title: (name: string) => `Passage plan: ${name}`,
  trip: 'a trip',
  answer: 'Answer',
  boat: 'Boat',
  marks: 'Marks',
  aboard: 'Aboard',
  aboardOf: (people: number, mass: string) => `${people} ${people === 1 ? 'person' : 'people'}; with gear ${mass}`,
  names: 'Who',
  reach: 'Reach us by',
  gear: 'Safety gear',
  vehicle: 'Car, trailer',
  route: 'Route',
  outAndHome: 'home by the same way',
  loop: 'and round to the start',
  unnamed: (n: number) => (n === 1 ? '1 more point' : `${n} more points`),
  leaves: 'Leaves',
  clock: (offset: string) => `clock of ${offset}`,
  goodUntil: 'Plan good if under way by',
  ends: {
    answer: 'later the answer gets worse',
    forecast: 'the forecast ends',
    'one-figure': 'wind or stream was told as one figure',
    search: 'not looked at further',
  },
  turn: 'Turn back by',
  turnAt: (time: string, distance: string) => `${time}, after ${distance} at the latest`,
  noTurn: 'anywhere on the way',
  fuel: { fuel: 'Fuel', charge: 'Charge' },
  fuelOf: (usable: string, need: string, reserve: string) =>
    `${usable} usable at departure, ${need} needed; ${reserve} is kept as reserve`,
  home: 'Planned back',
  there: 'Planned there',
  due: 'Back at the latest',
  contact: 'Shore contact',
  rescue: 'Help is called at',
  points:
    'With less than this at a point, or later than this, turn for home; on the way home, slow down or make for a landing.',
  point: 'Point',
  arrives: 'Arrives',
  below: { fuel: 'Least fuel', charge: 'Least charge' },
  latest: 'Latest',
  overdue: 'If we are not back',
  steps: {
    due: (time: string) => `${time}: we are back, and tell you. Until you have heard that, the plan is open.`,
    phone: (time: string, reach: string) => `${time}: call us${reach ? ` (${reach})` : ''}, then the harbour or club.`,
    rescue: (time: string, whom: string) =>
      `${time}, or at once in bad weather or when night falls: call ${whom || 'the coastguard or the emergency number'}, say "boat overdue", and read out this plan. Stay where they can call you back.`,
    changed: 'We tell you of every change of plan at once. When we are back, tell everybody you called.',
  },
  turnedOut: 'What you measure aboard goes before what is written here.',
});

/** The short message, and the calendar. */
export const messageWords = spoken('messageWords', {
  leaves: (boat: string, people: number, when: string) => `Passage plan. ${boat}, ${people} aboard, leaves ${when}.`,
  by: (places: string) => `By way of ${places}.`,
  back: (planned: string, due: string) => `Planned back ${planned}, at the latest ${due}.`,
  turn: (time: string) => `Turns for home by ${time}.`,
  overdue: (phone: string, rescue: string) =>
    `Not heard from us: call us from ${phone}; at ${rescue}, or at once in bad weather or when night falls, call the coastguard or the emergency number and say "boat overdue".`,
  noFit: 'This trip does not fit as planned.',
  overdueTitle: (boat: string) => `Is ${boat} back?`,
  phoneNow: (boat: string) => `${boat} should be back. Call them, then the harbour or club.`,
  rescueNow: (boat: string) => `${boat} is overdue. Call the coastguard or the emergency number now.`,
});
