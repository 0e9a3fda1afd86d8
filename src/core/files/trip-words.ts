import type { BaseIssue } from 'valibot';
import type { Problem } from '../units/result.ts';

/** What a field is called to a boat owner, and its unit. */
const NOUNS: Readonly<Record<string, readonly [noun: string, unit?: string]>> = {
  version: ['version'],
  name: ['name'],
  id: ['id'],
  label: ['label'],
  waters: ['name of the local waters'],
  craft: ['boat'],
  hull: ['hull'],
  form: ['hull form'],
  length: ['length', 'm'],
  beam: ['beam', 'm'],
  wettedLength: ['wetted length', 'm'],
  planingBeam: ['planing beam', 'm'],
  deadriseDeg: ['deadrise', 'degrees'],
  wettedSurfaceCoefficient: ['wetted surface coefficient'],
  formFactor: ['form factor'],
  planingSurfaceFactor: ['planing surface factor'],
  roughness: ['roughness allowance'],
  airDragCoefficient: ['air drag coefficient'],
  airArea: ['frontal area', 'm2'],
  airAreaPerPerson: ['frontal area per person', 'm2'],
  mass: ['weight', 'kg'],
  centre: ['centre of gravity'],
  engine: ['place of the engine'],
  x: ['distance forward (x)', 'm'],
  y: ['distance to starboard (y)', 'm'],
  z: ['height (z)', 'm'],
  at: ['place'],
  transomHeight: ['transom height', 'm'],
  tube: ['tubes'],
  diameter: ['diameter', 'm'],
  spacing: ['spacing', 'm'],
  stations: ['list of places aboard'],
  use: ['use'],
  plate: ['plate'],
  scheme: ['kind of plate'],
  maxLoad: ['greatest load', 'kg'],
  persons: ['number of persons'],
  maxPower: ['greatest engine power', 'W'],
  maxEngineMass: ['greatest engine weight', 'kg'],
  category: ['design category'],
  drive: ['engine'],
  kind: ['kind'],
  cycle: ['engine cycle'],
  ratedPower: ['rated power', 'W'],
  ratedRpm: ['rated speed', 'rpm'],
  gearRatio: ['gear ratio'],
  propeller: ['propeller'],
  pitch: ['pitch', 'm'],
  blades: ['number of blades'],
  areaRatio: ['blade area ratio'],
  quality: ['quality factor'],
  legDragArea: ['drag area of the leg', 'm2'],
  shaft: ['shaft length'],
  standbyLoss: ['standby loss'],
  speedLoss: ['loss with speed'],
  torqueLoss: ['loss with torque'],
  accessoryPower: ['power of lights and pumps', 'W'],
  store: ['tank or battery'],
  tanks: ['list of tanks'],
  capacityL: ['capacity', 'L'],
  emptyMass: ['empty weight', 'kg'],
  unusableL: ['unusable rest', 'L'],
  fixed: ['mark for a built-in tank'],
  batteries: ['list of batteries'],
  chemistry: ['chemistry'],
  energyWh: ['energy', 'Wh'],
  voltage: ['voltage', 'V'],
  health: ['state of health'],
  maxCurrent: ['greatest current', 'A'],
  fouling: ['state of the bottom'],
  trials: ['record of trials'],
  measuredBy: ['name of who measured'],
  setups: ['list of engines and propellers tried'],
  setup: ['engine and propeller tried'],
  runs: ['list of runs'],
  refills: ['list of refills'],
  day: ['date'],
  passes: ['list of passes'],
  over: ['speed over ground', 'm/s'],
  way: ['way'],
  rpm: ['engine speed', 'rpm'],
  fullThrottle: ['mark for full throttle'],
  consumed: ['reading of consumption'],
  amount: ['amount'],
  seconds: ['time', 's'],
  consumedError: ['error of the reading'],
  offBowDeg: ['angle off the bow', 'degrees'],
  waveHeight: ['wave height', 'm'],
  leftOut: ['mark for left out'],
  note: ['note'],
  spent: ['list of times at a speed'],
  readAt: ['place of reading'],
  usual: ['usual engine and propeller'],
  format: ['format'],
  load: ['load'],
  items: ['list of people and gear'],
  station: ['seat'],
  helm: ['mark for the helm'],
  fill: ['fill level'],
  fillKnownBy: ['way the fill level is known'],
  route: ['route'],
  shape: ['shape of the route'],
  waypoints: ['list of waypoints'],
  lat: ['latitude', 'degrees'],
  lon: ['longitude', 'degrees'],
  stop: ['stop', 's'],
  refill: ['fill level after filling up'],
  speed: ['speed', 'm/s'],
  conditions: ['conditions'],
  departure: ['departure'],
  wind: ['wind'],
  fromDeg: ['direction', 'degrees'],
  stream: ['stream'],
  setDeg: ['direction', 'degrees'],
  rate: ['rate', 'm/s'],
  forecast: ['list of forecast winds'],
  time: ['time'],
  timezone: ['time zone'],
  gust: ['gust', 'm/s'],
  streamPlace: ['place whose stream is taken'],
  streamPlaces: ['list of places with streams'],
  firstHour: ['first hour from high water'],
  springs: ['list of streams at springs'],
  neaps: ['list of streams at neaps'],
  spread: ['strongest flood and ebb'],
  flood: ['strongest flood'],
  ebb: ['strongest ebb'],
  turns: ['turn of the stream', 'hours from high water'],
  tide: ['tide'],
  port: ['standard port'],
  highWater: ['time of high water'],
  range: ['range of the tide', 'm'],
  meanSpringRange: ['mean range at springs', 'm'],
  meanNeapRange: ['mean range at neaps', 'm'],
  highWaterHeight: ['height of high water', 'm'],
  sea: ['sea state'],
  height: ['wave height', 'm'],
  swell: ['swell', 'm'],
  water: ['kind of water'],
  batteryTemperatureC: ['battery temperature', 'C'],
  waterTemperatureC: ['temperature of the water', 'C'],
  policy: ['reserve and limits'],
  reserve: ['list of reserve rules'],
  share: ['share kept as reserve'],
  minutes: ['time kept as reserve', 'minutes'],
  manoeuvring: ['time for manoeuvring', 's'],
  drawnFactor: ['factor on the drawn distance'],
  maxWind: ['wind limit', 'm/s'],
  maxWave: ['wave limit', 'm'],
  depth: ['depth of water wanted', 'm'],
  timeAllowed: ['time allowed', 's'],
  answers: ['name of who answers'],
  surveyed: ['date of the survey'],
  until: ['last day'],
  call: ['number to call'],
  rescue: ['number of the rescue'],
  area: ['area'],
  site: ['address of the site'],
  boats: ['list of boats'],
  routes: ['list of set routes'],
  hullId: ['hull'],
  engineId: ['engine'],
  storeId: ['tank or battery'],
};

/** One entry of a list, counted from 1. */
const ENTRIES: Readonly<Record<string, string>> = {
  stations: 'place aboard',
  tanks: 'tank',
  batteries: 'battery',
  items: 'item',
  waypoints: 'waypoint',
  reserve: 'reserve rule',
  setups: 'setup',
  runs: 'run',
  refills: 'refill',
  passes: 'pass',
  spent: 'time at a speed',
  forecast: 'forecast wind',
  streamPlaces: 'stream place',
  springs: 'hour',
  neaps: 'hour',
  boats: 'boat',
  routes: 'set route',
};

/** Parts worth naming when one of their fields is wrong; the others are clear from the field. */
const OWNERS = ['hull', 'tube', 'plate', 'centre', 'engine', 'drive', 'propeller', 'wind', 'stream'];

/** A problem a boat owner understands, out of what the schema library found. */
export function problemOf(issue: BaseIssue<unknown>): Problem {
  const keys = issue.path?.map((step) => String(step.key)) ?? [];
  const path = keys.join('.');
  const limit = typeof issue.requirement === 'number' ? { limit: issue.requirement } : {};
  if (issue.type === 'strict_object' && issue.expected === 'never') {
    const noun = NOUNS[keys.at(-2) ?? '']?.[0];
    const owner = ownerOf(keys.slice(0, -1)) ?? (noun === undefined ? 'a trip' : `the ${noun}`);
    const key = JSON.stringify(keys.at(-1)?.slice(0, 40));
    return { code: 'unknown-field', path, message: `There is no field ${key} in ${owner}` };
  }
  const [code, predicate] = fault(issue, NOUNS[keys.at(-1) ?? '']?.[1]);
  return { code, path, message: `${subjectOf(keys)} ${predicate}`, ...limit };
}

/** "The weight of item 3". */
function subjectOf(keys: readonly string[]): string {
  const last = keys.at(-1) ?? '';
  const noun = NOUNS[last]?.[0];
  const owner = ownerOf(keys.slice(0, -1));
  if (noun === undefined) return capitalised(ownerOf(keys) ?? `entry ${Number(last) + 1} of ${owner}`);
  return owner === undefined ? `The ${noun}` : `The ${noun} of ${owner}`;
}

/** "item 3", "the propeller", "the place of tank 1": the innermost part worth naming. */
function ownerOf(keys: readonly string[]): string | undefined {
  const last = keys.at(-1);
  if (last === undefined) return undefined;
  const entry = ENTRIES[keys.at(-2) ?? ''];
  if (entry !== undefined && /^\d+$/.test(last)) return `${entry} ${Number(last) + 1}`;
  if (last === 'at') return `the place of ${ownerOf(keys.slice(0, -1)) ?? 'this'}`;
  return OWNERS.includes(last) ? `the ${NOUNS[last]![0]}` : undefined;
}

function capitalised(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}

function fault(issue: BaseIssue<unknown>, unit: string | undefined): readonly [code: string, predicate: string] {
  const amount = unit ? `${issue.requirement} ${unit}` : `${issue.requirement}`;
  // Only a schema with words of its own brings a message.
  if (issue.message !== '') return [issue.type === 'check' ? 'not-a-time' : 'not-listed', issue.message];
  if (issue.input === undefined) return ['missing', 'is missing'];
  switch (issue.type) {
    case 'min_value':
      return ['too-small', `must be at least ${amount}`];
    case 'gt_value':
      return ['too-small', `must be more than ${amount}`];
    case 'max_value':
      return ['too-large', `must be at most ${amount}`];
    case 'min_length':
      return Array.isArray(issue.input)
        ? ['too-few', `must have at least ${issue.requirement} ${issue.requirement === 1 ? 'entry' : 'entries'}`]
        : ['missing', 'must not be empty'];
    case 'max_length':
      return Array.isArray(issue.input)
        ? ['too-many', `may have at most ${issue.requirement} entries`]
        : ['too-long', `may have at most ${issue.requirement} characters`];
    case 'integer':
      return ['wrong-type', 'must be a whole number'];
    case 'number':
      return ['wrong-type', 'must be a number'];
    case 'string':
      return ['wrong-type', 'must be text'];
    case 'boolean':
      return ['wrong-type', 'must be true or false'];
    case 'array':
      return ['wrong-type', 'must be a list'];
    case 'picklist':
    case 'literal':
      return ['not-listed', `must be ${choices(issue.expected)}`];
    case 'variant':
      return issue.expected === 'Object'
        ? ['wrong-type', 'must be a set of fields']
        : ['not-listed', `must be ${choices(issue.expected)}`];
    case 'strict_object':
      return ['wrong-type', 'must be a set of fields'];
    default:
      return ['invalid', 'cannot be read'];
  }
}

/** `("a" | "b" | "c")` as the library writes it, in words. */
function choices(expected: string | null): string {
  const words = (expected ?? '').replace(/[()]/g, '').split(' | ');
  const last = words.pop();
  return words.length > 0 ? `${words.join(', ')} or ${last}` : `${last}`;
}
