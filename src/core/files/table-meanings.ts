import { type Dimension, type TableUnit, unitInHead, unitsOf } from './table-units.ts';

/** What a column of a table of runs may stand for. */
export type Meaning =
  | 'id'
  | 'date'
  | 'setup'
  | 'aboard'
  | 'load'
  | 'persons'
  | 'fill'
  | 'fill-known-by'
  | 'speed'
  | 'speed-out'
  | 'speed-back'
  | 'speed-mean'
  | 'stream'
  | 'rpm'
  | 'full-throttle'
  | 'flow'
  | 'power'
  | 'current'
  | 'voltage'
  | 'fuel'
  | 'energy'
  | 'time'
  | 'consumed-error'
  | 'wind'
  | 'wind-from'
  | 'waves'
  | 'left-out'
  | 'note';

/** In what each is measured, and what is credible, in SI; the same as a trials file takes. */
export const MEASURED: Readonly<
  Partial<Record<Meaning, { readonly in: Dimension; readonly least: number; readonly most: number }>>
> = {
  load: { in: 'mass', least: 1, most: 2000 },
  fill: { in: 'share', least: 0, most: 1 },
  speed: { in: 'speed', least: 0.05, most: 40 },
  'speed-out': { in: 'speed', least: 0.05, most: 40 },
  'speed-back': { in: 'speed', least: 0.05, most: 40 },
  'speed-mean': { in: 'speed', least: 0.05, most: 40 },
  stream: { in: 'speed', least: -10, most: 10 },
  rpm: { in: 'revs', least: 50, most: 20_000 },
  flow: { in: 'flow', least: 1e-7, most: 0.1 },
  power: { in: 'power', least: 0.1, most: 1e6 },
  current: { in: 'current', least: 0.01, most: 5000 },
  voltage: { in: 'voltage', least: 1, most: 1000 },
  fuel: { in: 'fuel', least: 1e-4, most: 2000 },
  energy: { in: 'energy', least: 1, most: 1e10 },
  time: { in: 'time', least: 1, most: 86_400 },
  'consumed-error': { in: 'share', least: 0.005, most: 0.5 },
  wind: { in: 'wind', least: 0, most: 40 },
  'wind-from': { in: 'angle', least: 0, most: 360 },
  waves: { in: 'height', least: 0, most: 5 },
};

/** Units a column of this meaning may be in; none where it is not measured in any. */
export function unitsFor(meaning: Meaning): readonly TableUnit[] {
  const measured = MEASURED[meaning];
  return measured ? unitsOf(measured.in) : [];
}

const SPEED: readonly Dimension[] = ['speed'];

/** Words in the head of a column, in the order asked; the first that fits counts. `units` must not find another. */
const WORDS: readonly { readonly meaning: Meaning; readonly words: RegExp; readonly units?: readonly Dimension[] }[] = [
  { meaning: 'id', words: /^(?:run )?id$/ },
  { meaning: 'date', words: /\b(?:date|day)\b/ },
  { meaning: 'note', words: /\b(?:notes?|remarks?|comments?)\b/ },
  { meaning: 'left-out', words: /\b(?:left out|excluded?|skip)\b/ },
  { meaning: 'consumed-error', words: /\berror\b/ },
  { meaning: 'fill-known-by', words: /\bfill known\b/ },
  { meaning: 'fill', words: /\b(?:fill|tank level|fuel level|state of charge|soc)\b/ },
  { meaning: 'wind-from', words: /\bwind\b.*(?:from|dir|angle|bow|°|\bdeg)/ },
  { meaning: 'wind', words: /\bwind\b|\bbeaufort\b|\bbft\b/ },
  { meaning: 'waves', words: /\b(?:waves?|sea|hs|chop)\b/ },
  { meaning: 'full-throttle', words: /\b(?:throttle|wot)\b/ },
  { meaning: 'rpm', words: /\b(?:rpm|revs?|revolutions)\b|1\/min|\bmin-1\b/ },
  { meaning: 'current', words: /\b(?:current|amps?|amperes?)\b|^a$|[([] ?a ?[)\]]/, units: ['current'] },
  { meaning: 'voltage', words: /\b(?:volts?|voltage)\b|^v$|[([] ?v ?[)\]]/ },
  { meaning: 'stream', words: /\b(?:stream|current|tide|tidal)\b/, units: SPEED },
  { meaning: 'flow', words: /./, units: ['flow'] },
  { meaning: 'energy', words: /./, units: ['energy'] },
  { meaning: 'power', words: /./, units: ['power'] },
  {
    meaning: 'fuel',
    words: /\b(?:fuel|petrol|used|consumed|amount|litres?|liters?|l|gal|gallons?|ml)\b/,
    units: ['fuel'],
  },
  { meaning: 'flow', words: /\b(?:flow|burn|consumption|fuel rate)\b/ },
  { meaning: 'power', words: /\bpower\b/ },
  { meaning: 'speed-mean', words: /\b(?:mean|average|avg)\b/, units: SPEED },
  { meaning: 'speed-mean', words: /\b(?:mean|average|avg) speed\b|\bspeed (?:mean|average|avg)\b/ },
  { meaning: 'speed-out', words: /\b(?:out|outward|outbound|there)\b/, units: SPEED },
  { meaning: 'speed-back', words: /\b(?:back|return|home|homeward|inbound|in)\b/, units: SPEED },
  {
    meaning: 'speed-out',
    words: /^(?:out|outward|there)\b|\b(?:speed|sog|gps|pass|run|leg)\b.*\b(?:out|outward|there)\b/,
  },
  {
    meaning: 'speed-back',
    words: /^(?:back|return|home)\b|\b(?:speed|sog|gps|pass|run|leg)\b.*\b(?:back|return|home|in)\b/,
  },
  { meaning: 'speed-out', words: /\b(?:pass|run|leg|speed|way) ?[13579]\b/ },
  { meaning: 'speed-back', words: /\b(?:pass|run|leg|speed|way) ?[2468]\b/ },
  { meaning: 'speed', words: /\b(?:speed|sog|gps|velocity)\b/ },
  { meaning: 'speed', words: /./, units: SPEED },
  { meaning: 'aboard', words: /^(?:aboard|on board|who is aboard)$/ },
  { meaning: 'load', words: /./, units: ['mass'] },
  { meaning: 'persons', words: /\b(?:persons?|people|crew|pax|aboard)\b/ },
  { meaning: 'load', words: /\b(?:load|payload|weight|mass)\b/ },
  { meaning: 'setup', words: /\b(?:engine|motor|outboard|setup|propeller|prop)\b/ },
  { meaning: 'time', words: /\b(?:time|duration)\b/ },
  { meaning: 'time', words: /./, units: ['time'] },
];

export interface Recognised {
  readonly meaning: Meaning;
  readonly unit?: string;
}

/** What the head of a column says it is, and in what unit. Undefined where it says nothing that is known. */
export function recognised(head: string): Recognised | undefined {
  const text = head
    .replace(/([a-z]{2})([A-Z])(?=[a-z])/g, '$1 $2')
    .replace(/[_\s]+/g, ' ')
    .trim()
    .toLowerCase();
  for (const { meaning, words, units } of WORDS) {
    if (!words.test(text) || (units && !unitInHead(text, units))) continue;
    const measured = MEASURED[meaning];
    if (!measured) return { meaning };
    // Without a unit of its own the first of its dimension is meant.
    return { meaning, unit: (unitInHead(text, [measured.in]) ?? unitsOf(measured.in)[0]!).sign };
  }
  return undefined;
}
