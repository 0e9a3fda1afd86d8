import type { Drive, Fouling } from '../../core/craft/shapes.ts';
import type { Meaning } from '../../core/files/table-meanings.ts';
import type { FactorFound, FitLimit, RunFound } from '../../core/trials/fit-shapes.ts';
import type { StoreKind } from '../units/measures.ts';
import { spoken } from './spoken.ts';

/** Words of the trials page. */
export const trialWords = spoken('trialWords', {
  boat: 'Boat and setups',
  runs: 'Runs',
  tracks: 'From a track or a table',
  refills: 'Refills',
  found: 'What the runs say',
  sheet: 'Run sheet for a trial day',
  profile: 'Boat profile',
  units: 'Units',
  sample: 'Load a sample',
  sampleLoaded: 'Sample loaded: an invented boat with invented runs, to see how it works.',
  sampleFailed: 'The sample could not be loaded. Nothing was changed.',
  fresh: 'Start again',
  freshDone: 'Started again. What you had is not lost yet.',
  takeBack: 'Take back',
  unreadable:
    'What was kept on this device comes from another version and could not be read. It is still there; this is a new start.',
  notKept: 'This browser does not let the page keep anything: a reload loses what you enter.',
  partFailed: 'A part of this page could not be loaded. The rest works; reload when the network is back.',
  count: (runs: number, refills: number) =>
    [plural(runs, 'run', 'runs'), ...(refills > 0 ? [plural(refills, 'refill', 'refills')] : [])].join(', '),
  noRuns: 'no runs yet',
  edit: 'Edit',
  duplicate: 'Duplicate',
  leaveOut: 'Leave out',
  putBack: 'Put back',
  delete: 'Delete',
  save: 'Save',
  cancel: 'Cancel',
  runDeleted: (n: number) => `Run ${n} deleted.`,
  runSaved: (n: number) => `Run ${n} saved.`,
  runLeftOut: (n: number, out: boolean) => (out ? `Run ${n} left out.` : `Run ${n} counts again.`),
  runDoubled: (n: number) => `Run ${n} doubled; the copy is right after it.`,
  runsFull: (kept: number, left: number) =>
    `${plural(kept, 'run', 'runs')} added; ${left} left over, since a profile holds no more.`,
  runsAdded: (n: number) => `${plural(n, 'run', 'runs')} added.`,
  refillDeleted: 'Refill deleted.',
  refillSaved: 'Refill saved.',
  setupDeleted: 'Setup deleted.',
});

export const setupWords = spoken('setupWords', {
  water: 'Water',
  salt: 'Sea water',
  fresh: 'Fresh water',
  setups: 'Setups',
  setupsHint:
    'A setup is an engine with its propeller and its tank or battery. Make another one when something is changed over; runs are made with one each.',
  one: (n: number) => `Setup ${n}`,
  add: 'Another setup',
  remove: 'Delete this setup',
  inUse: (n: number) => `${plural(n, 'run or refill was', 'runs or refills were')} made with it, so it stays.`,
  usual: 'The boat usually goes like this',
  propeller: (size: string) => `propeller ${size} in`,
  fromPlanner: 'Take the boat of the planner',
  noPlanner: 'The planner on this device has no boat to take.',
  taken: 'Boat of the planner taken; runs were kept.',
  otherKind: 'Runs were made with the engine before, so this one is a setup of its own.',
});

export const runWords = spoken('runWords', {
  title: (n: number | undefined) => (n === undefined ? 'New run' : `Change run ${n}`),
  add: 'Add a run',
  date: 'Date',
  setup: 'Setup',
  aboard: 'Aboard',
  people: (n: number) => plural(n, 'person', 'people'),
  allUp: (mass: string) => `boat and all in it ${mass}`,
  changeLoad: 'Who and what is aboard, and where',
  speeds: 'Speed over ground',
  speedsHint:
    'A minute or more of steady speed, out and back on the same line, so that the stream cancels. Average of the GPS, not its best figure.',
  pass: (n: number, way: 'out' | 'back') => `Pass ${n}, ${way}`,
  ways: { out: 'out', back: 'back' },
  turnWay: (way: 'out' | 'back') => (way === 'out' ? 'Make it a pass back' : 'Make it a pass out'),
  addPass: 'Another pass',
  removePass: (n: number) => `Remove pass ${n}`,
  oneWay: 'One way only',
  stream: 'Stream along the way',
  streamWith: 'With the boat',
  streamAgainst: 'Against the boat',
  streamUnknown: 'Not known',
  streamHint: 'With passes one way only, a stream that nobody knows makes the run less sure.',
  through: (speed: string) => `Through still water ${speed}`,
  streamFound: (speed: string, way: 'with' | 'against' | 'none') =>
    way === 'none' ? 'no stream to speak of' : `stream ${speed} ${way} the way out`,
  rpm: 'Engine speed',
  rpmHint: 'Of the engine, not the propeller',
  motorRpm: 'Motor speed',
  fullThrottle: 'Full throttle',
  reading: (store: StoreKind) => (store === 'fuel' ? 'Consumption' : 'Power drawn'),
  kinds: {
    none: 'Not read',
    rate: { fuel: 'Flow meter', charge: 'Power' },
    amount: { fuel: 'Amount over time', charge: 'Energy over time' },
    current: 'Amps and volts',
  },
  rate: { fuel: 'Flow', charge: 'Power out of the battery' },
  amount: { fuel: 'Used', charge: 'Used' },
  over: 'In',
  amps: 'Current',
  volts: 'Voltage',
  makes: (power: string) => `makes ${power}`,
  error: 'Error of this reading',
  errorHint: (usual: string) => `Left empty: about ${usual}`,
  conditions: 'Wind, waves, note',
  wind: 'Wind',
  windHint: 'Mean, over the ground',
  windFrom: 'On the way out it blew from',
  choose: 'Choose',
  bearings: { 0: 'ahead', 45: 'the bow', 90: 'the side', 135: 'the quarter', 180: 'astern' } as Record<number, string>,
  waves: 'Waves',
  wavesHint: 'Significant height. Empty: flat',
  note: 'Note',
  problems: {
    'no-speed': 'At least one speed is needed.',
    'half-reading': 'Both figures are needed, or neither.',
    'no-bearing': 'Say where the wind came from.',
    nobody: 'Somebody must be aboard.',
  },
  nothingRead: 'No consumption, engine speed or full throttle: such a run tells nothing about the curve yet.',
  number: 'Run',
  when: 'When',
  speed: 'Through water',
  engine: 'Engine',
  consumption: 'Consumption',
  state: 'In the fit',
  actions: 'Change',
  empty:
    'No runs yet. Three with a watch and a flow meter narrow the band visibly; twelve at several speeds and loads make it trustworthy.',
  rpmText: (rpm: string) => `${rpm} rpm`,
  full: 'full throttle',
  overTime: (amount: string, time: string) => `${amount} in ${time}`,
  counts: 'counts',
  asides: {
    'left-out': 'left out by you',
    contradicts: 'set aside: contradicts the others',
    'nothing-read': 'nothing read that tells',
    'beyond-model': 'the model cannot make this speed',
  } satisfies Record<NonNullable<RunFound['setAside']>, string>,
  doThis: (what: string, n: number) => `${what} run ${n}`,
});

export const refillWords = spoken('refillWords', {
  title: (changing: boolean) => (changing ? 'Change refill' : 'New refill'),
  why: 'No flow meter? What went back into the tank or battery after a trip you know is worth something too, with a larger error of its own.',
  add: 'Add a refill',
  spent: 'Time at each speed',
  spentHint: 'Over ground. Speed 0 is the engine running in neutral.',
  speed: (n: number) => `Speed ${n}`,
  time: 'Time',
  addSpeed: 'Another speed',
  removeSpeed: (n: number) => `Remove speed ${n}`,
  fromTrack: 'Take the times from a track (GPX)',
  fromPlan: 'Take the times from the trip in the planner',
  noPlan: 'The planner on this device has no whole trip.',
  taken: (n: number) => `Times at ${plural(n, 'speed', 'speeds')} taken.`,
  nothingTaken: 'The track holds no speeds.',
  amount: { fuel: 'Put back', charge: 'Put back' },
  readAt: 'Read where?',
  readAtPlaces: { battery: 'At the battery', socket: 'At the socket' },
  problems: {
    'no-time': 'At least one speed with its time is needed.',
    'half-time': 'A speed needs its time, and a time its speed.',
    'no-amount': 'How much was put back is needed.',
    nobody: 'Somebody must be aboard.',
  },
  doThis: (what: string, n: number) => `${what} refill ${n}`,
  one: 'Refill',
  line: (amount: string, time: string) => `${amount} put back after ${time}`,
});

/** "Fuel, full throttle" and so on; what each factor stands for, as a reader would say it. */
export const factorWords = spoken<Record<FactorFound['factor'], string>>('factorWords', {
  kd: 'resistance at displacement speed',
  kp: 'planing resistance',
  kh: 'resistance of the hump',
  lcgShift: 'the centre of gravity that the water feels',
  pitchShift: 'pitch of the propeller',
  fuel: 'consumption of the engine',
  friction: 'consumption at little throttle',
  power: 'power at full throttle',
});

export const electricFactorWords = spoken<Partial<Record<FactorFound['factor'], string>>>('electricFactorWords', {
  fuel: 'losses of the motor',
  friction: 'standby consumption',
});

export const fitWords = spoken('fitWords', {
  noRuns: 'Nothing counts yet. Add runs, and the measured band appears beside the unmeasured one.',
  before: 'Unmeasured',
  after: 'Measured',
  bandTitle: (flow: string) => `Consumption (${flow}) against speed through the water`,
  bandNote: '8 of 10 boats, or of 10 days, lie inside a band.',
  bandAt: (speed: string, before: string, after: string) =>
    `At ${speed}: ${before} unmeasured, ${after} with the runs.`,
  narrower: (speed: string, before: string, after: string) =>
    `At ${speed} consumption is known to \u00b1${after} instead of \u00b1${before}.`,
  pointsNear: 'Runs at about this load',
  pointsFar: 'Runs at another load',
  pointsAside: 'Runs that do not count',
  shownFor: 'Shown for the setup',
  shownLoad: 'Shown for the load',
  table: 'As a table',
  speed: 'Speed',
  unmeasured: 'Unmeasured, 8 of 10',
  measured: 'Measured, 8 of 10',
  residuals: 'How far each reading lies from the fitted curve',
  residualsNote: 'In expected errors of that reading; inside the shaded field is usual.',
  residual: (reading: string, share: string) => `${reading} ${share}`,
  more: (share: string) => `${share} more than the curve`,
  less: (share: string) => `${share} less than the curve`,
  same: 'as the curve',
  readings: { consumed: 'Consumption', rpm: 'Engine speed', power: 'Power' },
  expectedErrors: (n: string) => `${n} times the expected error`,
  scatter: (n: string) => `The readings scatter ${n} times as much as expected of them.`,
  offCurve: 'Not all runs lie on the curve, so the band is wider between them too. Leave out a run that was misread.',
  factors: 'What was learned',
  limits: 'What the runs cannot say',
  helpful: 'One more run would help most here',
  helpfulRun: (speed: string, mass: string, setup: string) => `${speed} with ${mass} in all${setup && `, ${setup}`}`,
  helpfulBand: (now: string, then: string) => `\u00b1${now} now, about \u00b1${then} then`,
  fouling: 'Bottom during the runs',
  foulings: {
    clean: 'Clean',
    slime: 'Slime',
    weed: 'Weed or light shell',
    shell: 'Shell',
  } satisfies Record<Fouling, string>,
  tried: (mass: string, speed: string) => `Tried at ${mass} in all and ${speed}. Outside that the band widens again.`,
  counted: (n: number) => `${plural(n, 'run or refill counts', 'runs and refills count')}.`,
});

/** "8 % above our estimate, \u00b16 %"; shifts with their unit. */
export const factorText = spoken('factorText', {
  above: (share: string, sure: string) => `${share} above our estimate, \u00b1${sure}`,
  below: (share: string, sure: string) => `${share} below our estimate, \u00b1${sure}`,
  as: (sure: string) => `as we estimated, \u00b1${sure}`,
  along: (size: string, forward: boolean, sure: string) =>
    `${size} further ${forward ? 'forward' : 'aft'} than the seats say, \u00b1${sure}`,
  pitch: (size: string, more: boolean, sure: string) =>
    `${size} in ${more ? 'more' : 'less'} than stamped, \u00b1${sure} in`,
  shifted: (more: boolean, clearly: boolean) =>
    `${clearly ? '' : 'perhaps '}${more ? 'more' : 'less'} than we estimated`,
  unknown: 'not learned from these runs',
  atBound: 'as far off as is credible; look at the runs again',
  note: 'The figure after \u00b1 holds in 8 of 10 cases.',
});

export const limitWords = spoken('limitWords', {
  onlyTogether: (one: string, other: string) =>
    `${capital(one)} and ${other}: only together. The runs say how much the boat uses, not which of the two is the cause.`,
  notLearned: (factor: string) => `${capital(factor)}: the runs tell little of it, and it stays as we estimated.`,
  oneLoad: 'All runs are at about one load: what more or fewer aboard would change is still our estimate.',
  noConsumption: 'No run has consumption: range and reserve are hardly surer than before.',
  disagree: (runs: string) =>
    `Runs ${runs} disagree, and nothing says which one is right. Look for a wrong load, propeller or unit.`,
  atBound: (factor: string) =>
    `${capital(factor)} would have to be beyond what is credible. Look for a wrong load, propeller or unit.`,
});

export function limitText(limit: FitLimit, numbers: (ids: readonly string[]) => string, kind: Drive['kind']): string {
  const name = (factor: FactorFound['factor']) =>
    (kind === 'electric' ? electricFactorWords[factor] : undefined) ?? factorWords[factor];
  switch (limit.code) {
    case 'only-together':
      return limitWords.onlyTogether(name(limit.factors[0]), name(limit.factors[1]));
    case 'not-learned':
      return limitWords.notLearned(name(limit.factor));
    case 'one-load':
      return limitWords.oneLoad;
    case 'no-consumption':
      return limitWords.noConsumption;
    case 'runs-disagree':
      return limitWords.disagree(numbers(limit.runs));
    case 'at-bound':
      return limitWords.atBound(name(limit.factor));
    default:
      return limit satisfies never;
  }
}

export const profileWords = spoken('profileWords', {
  why: 'One file with the boat and every run behind it. Whoever loads it works the curves out anew from the runs.',
  name: 'Name of the boat',
  measuredBy: 'Measured by',
  usual: 'Usual setup',
  download: 'Download the profile',
  upload: 'Open a profile',
  usePlanner: 'Use in the planner',
  used: 'The planner on this device now has this boat with its runs.',
  notUsed: 'This browser does not let the page hand anything to the planner. Download the profile and open it there.',
  toPlanner: 'To the planner',
  link: 'On your own site, a link to the planner with ?boat= and the address of this file opens it with this boat.',
  opened: (name: string) => `Opened ${name}.`,
  notOpened: 'This file could not be read as a boat profile, and nothing was changed.',
  facts: (runs: string, by: string | undefined, last: string | undefined) =>
    [runs, ...(by ? [`measured by ${by}`] : []), ...(last ? [`last on ${last}`] : [])].join(', '),
});

function plural(n: number, one: string, many: string): string {
  return `${n} ${n === 1 ? one : many}`;
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** Tracks opened and made into runs. */
export const trackWords = spoken('trackWords', {
  why: 'A track of the trial day, as a GPX file. Steady passes are found in it and paired out and back; add what was read meanwhile, then take the runs over. The file stays on this device.',
  open: 'Open tracks (GPX)',
  sample: 'Try the sample tracks',
  sampleFailed: 'The sample tracks could not be loaded.',
  close: 'Close the tracks',
  cancel: 'Cancel',
  failed: 'The tracks could not be read here: a part of this page could not be loaded, or the file was taken away.',
  reading: (file: string) => `Reading ${file}`,
  of: (name: string, message: string) => `${name}: ${message}.`,
  ashore: (numbers: string) => `Stretch ${numbers} goes over land of the local waters: is this the right file?`,
  foundSaid: (stretches: number, runs: number) =>
    stretches === 0
      ? 'No steady stretch was found. Add one by hand where the speed was held.'
      : `${plural(stretches, 'steady stretch', 'steady stretches')} found, ${plural(runs, 'run', 'runs')} out and back.`,
  tooShort: 'Too little of the track lies there for a stretch.',
  plotTitle: (name: string) => `${name}: speed over ground`,
  plot: 'Speed over time, with the stretches',
  view: 'What is shown of the track',
  closer: 'Closer',
  wider: 'Wider',
  earlier: 'Earlier',
  later: 'Later',
  whole: 'Whole track',
  addStretch: 'Add a stretch here',
  handlesHint:
    'Drag the ends of a stretch, or move them with the arrow keys: 1 s, with Shift 10 s. Times are those of this device.',
  end: (n: number, end: 'start' | 'end') => `${end === 'start' ? 'Start' : 'End'} of stretch ${n}`,
  endSaid: (clock: string, speed: string) => `${clock}, stretch at ${speed}`,
  stretches: 'Stretches of the track',
  stretch: 'Stretch',
  from: 'From',
  to: 'To',
  overGround: 'Over ground',
  heading: 'Heading',
  run: 'Run',
  change: 'Change',
  startOf: (n: number) => `Start of stretch ${n}`,
  endOf: (n: number) => `End of stretch ${n}`,
  runOf: (n: number) => `Run of stretch ${n}`,
  during: (seconds: string) => `for ${seconds} s`,
  unsteady: 'not steady',
  noRun: 'Not used',
  runNamed: (name: string) => `Run ${name}`,
  show: 'Show',
  showOne: (n: number) => `Show stretch ${n} close up`,
  remove: 'Remove',
  removeOne: (n: number) => `Remove stretch ${n}`,
  noStretches: 'No stretch yet.',
  map: 'On a map',
  mapOf: 'Map of the tracks',
  passes: (n: number) => plural(n, 'pass', 'passes'),
  oneWay: 'One way only: the stream is not known.',
  odd: (numbers: string) => `Pass ${numbers} does not fit the others.`,
  allRuns: (n: number) => `Show all ${n} runs`,
  allStretches: (n: number) => `Show all ${n} stretches`,
  take: (n: number) => `Take over ${plural(n, 'run', 'runs')}`,
  saveTracks: 'Save the tracks as GPX',
});

/** The run sheet of a trial day. */
export const sheetWords = spoken('sheetWords', {
  why: 'Which runs narrow the band most for the crew, the setups and the time there is, in an order that changes people and engines least. Passes are made out and back, a minute each way.',
  crewHint:
    'Put in everyone who can come, with their seats. The sheet asks for the helm alone, about half of them, and all.',
  setups: 'Setups at hand',
  hours: 'Hours on the water',
  reads: 'Consumption is read by',
  propose: 'Propose a day',
  failed: 'The sheet could not be worked out: a part of this page could not be loaded.',
  nothingWorth: 'No run in this time would narrow the band worth the fuel.',
  load: (persons: number, mass: string) => `${persons} aboard, ${mass}`,
  title: (name: string) => `Run sheet: ${name}`,
  sum: (runs: number, time: string, before: string, after: string) =>
    `${plural(runs, 'run', 'runs')} in ${time}. Over all loads and speeds of the day consumption is known to \u00b1${before} before, about \u00b1${after} after.`,
  helm: 'Fill in at the helm',
  print: 'Print the sheet',
  day: 'Date',
  windAndSea: 'Wind, sea, stream',
  after: 'After',
  step: 'What to do',
  out: 'Out',
  back: 'Back',
  rpm: 'rpm',
  noteColumn: 'Note',
  about: (speed: string) => `about ${speed}, out and back`,
  paperHint:
    'Speeds are set by throttle: write down what came of it. A lookout besides the one who notes; kill cord on.',
  warmUp: (time: string) => `Warm up, ${time}`,
  changeSetup: (setup: string) => `Ashore: change over to ${setup}`,
  changeLoad: (load: string) => `Now ${load}`,
});

/** The form at the helm. */
export const helmWords = spoken('helmWords', {
  place: (n: number, of: number) => `Step ${n} of ${of}`,
  close: 'Close',
  back: 'Back',
  next: 'Next',
  finish: 'Finish',
  erase: 'Erase a digit',
  figures: 'Figures of this run',
  inAll: (mass: string) => `${mass} in all`,
  sail: (speed: string) => `About ${speed}`,
  fields: { out: 'Out', back: 'Back', rpm: 'rpm', rate: 'Flow', amps: 'Amps', volts: 'Volts' },
});

/** Runs in a table. */
export const tableWords = spoken('tableWords', {
  why: 'A table of runs, from a spreadsheet as CSV: one row for each run, heads in the first row, in any usual unit. What each column means is shown before anything is taken over.',
  open: 'Open a table (CSV)',
  save: 'Save the runs as a table (CSV)',
  paste: 'Or paste from a spreadsheet',
  pasteLabel: 'Rows with their heads',
  read: 'Read',
  pastedName: 'Pasted table',
  failed: 'The table could not be read here: a part of this page could not be loaded.',
  columnsOf: (name: string) => `Columns of ${name}`,
  column: 'Column',
  firstCell: 'First cell',
  means: 'Means',
  unit: 'Unit',
  unnamed: (n: number) => `Column ${n}`,
  meaningOf: (column: string) => `Meaning of ${column}`,
  unitOf: (column: string) => `Unit of ${column}`,
  notRead: 'Not read',
  readable: (n: number) =>
    n === 0 ? 'No row makes a run like this.' : `${plural(n, 'row makes a run', 'rows make runs')}.`,
  more: (n: number) => `${n} more.`,
  take: (n: number) => `Take over ${plural(n, 'run', 'runs')}`,
  close: 'Close the table',
});

/** What a column may stand for. */
export const meaningWords = spoken<Record<Meaning, string>>('meaningWords', {
  id: 'Name of the run',
  date: 'Date',
  setup: 'Setup',
  aboard: 'Who is aboard, one by one',
  load: 'People and gear, together',
  persons: 'Number of people',
  fill: 'Tank or battery level',
  'fill-known-by': 'How the level is known',
  speed: 'Speed, one way',
  'speed-out': 'Speed out',
  'speed-back': 'Speed back',
  'speed-mean': 'Speed, mean of both ways',
  stream: 'Stream with the way out',
  rpm: 'Engine speed',
  'full-throttle': 'Full throttle',
  flow: 'Fuel flow',
  power: 'Power',
  current: 'Amps',
  voltage: 'Volts',
  fuel: 'Fuel used',
  energy: 'Energy used',
  time: 'Time it was used in',
  'consumed-error': 'Error of the consumption',
  wind: 'Wind',
  'wind-from': 'Wind from, off the bow',
  waves: 'Wave height',
  'left-out': 'Left out',
  note: 'Note',
});
