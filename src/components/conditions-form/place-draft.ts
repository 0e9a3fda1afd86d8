import type { TabledPlace } from '../../core/files/stream-table.ts';
import { chartable } from '../../core/route/distance.ts';
import type { LatLon } from '../../core/route/shapes.ts';
import type { StreamPlace, StrongestRun } from '../../core/water/shapes.ts';
import { spreadStream } from '../../core/water/spread-stream.ts';
import { parsePosition, showPosition } from '../units/coordinates.ts';
import { parseDecimal } from '../units/decimal.ts';
import type { Measures } from '../units/measures.ts';
import { directionOf } from './wind-rows.ts';

/** One hour of a place as it is being typed, or one of its two runs. */
export interface RunTexts {
  readonly set: string;
  readonly springs: string;
  readonly neaps: string;
  /** Only where it sets another way at neaps. */
  readonly neapSet: string;
}

export interface HourTexts extends RunTexts {
  /** From high water. */
  readonly hour: number;
}

/** A place with streams as it is being typed. */
export interface PlaceDraft {
  readonly key: number;
  readonly name: string;
  readonly position: string;
  readonly known: 'hourly' | 'two-runs';
  readonly hours: readonly HourTexts[];
  readonly flood: RunTexts;
  readonly ebb: RunTexts;
  readonly turns: string;
  /** What the trip holds of it; absent until it is whole for the first time. */
  readonly whole?: StreamPlace;
  /** Not typed here: what is wrong with it is said at once. */
  readonly checked?: boolean;
}

export type PlaceFault =
  | 'no-name'
  | 'same-name'
  | 'no-place'
  | 'far-north'
  | 'no-set'
  | 'no-rate'
  | 'too-much'
  | 'no-hours'
  | 'gap'
  | 'no-turn';

/** By field: `name`, `position`, `turns`, `hours`, or part and cell such as `flood set` and `3 springs`. */
export type PlaceFaults = Readonly<Record<string, PlaceFault>>;

/** No stream that a small boat plans for runs faster, m/s. */
export const FASTEST = 10;
const FIRST = -6;
const LAST = 6;
const NOTHING: RunTexts = { set: '', springs: '', neaps: '', neapSet: '' };

export function newDraft(key: number): PlaceDraft {
  const hours = hoursFrom(FIRST, LAST).map((hour) => ({ hour, ...NOTHING }));
  return { key, name: '', position: '', known: 'hourly', hours, flood: NOTHING, ebb: NOTHING, turns: '' };
}

export function draftOf(whole: StreamPlace, key: number, m: Measures): PlaceDraft {
  const { name, firstHour, springs, neaps, spread } = whole;
  const own = new Map(
    springs.map(({ setDeg, rate }, i): [number, RunTexts] => {
      const neap = neaps[i] ?? { setDeg, rate };
      const turned = neap.rate > 0 && rate > 0 && neap.setDeg !== setDeg;
      const set = rate === 0 && neap.rate > 0 ? neap.setDeg : setDeg;
      return [
        firstHour + i,
        texts({ setDeg: set, springs: rate, neaps: neap.rate }, m, turned ? neap.setDeg : undefined),
      ];
    }),
  );
  const last = firstHour + springs.length - 1;
  // A place of other than whole hours keeps its own rows.
  const all = Number.isInteger(firstHour)
    ? hoursFrom(Math.min(FIRST, firstHour), Math.max(LAST, last))
    : [...own.keys()];
  return {
    ...newDraft(key),
    name,
    position: showPosition(whole, m.system),
    known: spread ? 'two-runs' : 'hourly',
    hours: all.map((hour) => ({ hour, ...(own.get(hour) ?? NOTHING) })),
    ...(spread && {
      flood: texts(spread.flood, m),
      ebb: texts(spread.ebb, m),
      turns: String(spread.turns),
    }),
    whole,
  };
}

/** A place out of a table, what it leaves out still empty. */
export function draftOfTable({ name = '', lat, lon, hours }: TabledPlace, key: number, m: Measures): PlaceDraft {
  const own = new Map(hours.map(({ hour, ...run }) => [hour, texts(run, m)]));
  const [first, last] = [hours[0]?.hour ?? FIRST, hours.at(-1)?.hour ?? LAST];
  const all = hoursFrom(Math.min(FIRST, first), Math.max(LAST, last));
  return {
    ...newDraft(key),
    name,
    position: lat === undefined || lon === undefined ? '' : showPosition({ lat, lon }, m.system),
    hours: all.map((hour) => ({ hour, ...(own.get(hour) ?? NOTHING) })),
  };
}

/** The same draft in other units or another language; what reads as no figure stays as it was typed. */
export function redrafted(draft: PlaceDraft, before: Measures, m: Measures): PlaceDraft {
  const { whole, key, hours, flood, ebb } = draft;
  if (whole && Object.keys(readPlace(draft, new Set(), before).faults).length === 0) return draftOf(whole, key, m);
  const rate = (text: string) => {
    const shown = parseDecimal(text, before.lang);
    return shown === undefined ? text : figure(before.toSi('speed', shown), m);
  };
  const turned = <T extends RunTexts>(run: T): T => ({ ...run, springs: rate(run.springs), neaps: rate(run.neaps) });
  return { ...draft, hours: hours.map(turned), flood: turned(flood), ebb: turned(ebb) };
}

/** The place a draft tells, once it is whole, and what is wrong or missing until then. */
export function readPlace(
  draft: PlaceDraft,
  taken: ReadonlySet<string>,
  m: Measures,
): { readonly place: StreamPlace | undefined; readonly faults: PlaceFaults } {
  const faults: Record<string, PlaceFault> = {};
  const name = draft.name.trim();
  if (name === '') faults.name = 'no-name';
  else if (taken.has(name)) faults.name = 'same-name';
  const at = positionOf(draft, m);
  if (!at) faults.position = 'no-place';
  else if (!chartable(at)) faults.position = 'far-north';
  const streams = draft.known === 'hourly' ? readHours(draft, faults, m) : readRuns(draft, faults, m);
  if (!at || !streams || Object.keys(faults).length > 0) return { place: undefined, faults };
  return { place: { name, lat: at.lat, lon: at.lon, ...streams }, faults };
}

function readHours({ hours, whole }: PlaceDraft, faults: Record<string, PlaceFault>, m: Measures) {
  const filled = hours.filter((row) => !blank(row));
  const [first, last] = [filled[0]?.hour, filled.at(-1)?.hour];
  if (first === undefined || last === undefined) {
    faults.hours = 'no-hours';
    return undefined;
  }
  const span = hours.filter(({ hour }) => hour >= first && hour <= last);
  if (span.some(blank)) faults.hours = 'gap';
  const read = span
    .filter((row) => !blank(row))
    .map((row) => {
      const i = row.hour - (whole?.firstHour ?? Number.NaN);
      const before = whole && !whole.spread && Number.isInteger(i) ? [whole.springs[i], whole.neaps[i]] : [];
      const told = before[0] &&
        before[1] && { springs: before[0].rate, neaps: before[1].rate, setDeg: before[0].setDeg };
      return { row, run: readRun(row, `${row.hour}`, faults, m, told) };
    });
  return {
    firstHour: first,
    springs: read.map(({ run }) => ({ setDeg: run.setDeg, rate: run.springs })),
    neaps: read.map(({ row: { neapSet, hour }, run }) => {
      const turned = neapSet.trim() === '' ? run.setDeg : directionOf(neapSet, m.lang);
      if (turned === undefined) faults[`${hour} neapSet`] = 'no-set';
      return { setDeg: turned ?? 0, rate: run.neaps };
    }),
  };
}

function readRuns({ flood, ebb, turns, whole }: PlaceDraft, faults: Record<string, PlaceFault>, m: Measures) {
  const told = whole?.spread;
  const runs = {
    flood: readRun(flood, 'flood', faults, m, told?.flood),
    ebb: readRun(ebb, 'ebb', faults, m, told?.ebb),
  };
  if (turns === '') faults.turns = 'no-turn';
  return spreadStream({ ...runs, turns: Number(turns) });
}

/** `told`: figures behind the texts, which are rounded; a text that still reads as such a figure stands for it. */
function readRun(
  { set, springs, neaps }: RunTexts,
  part: string,
  faults: Record<string, PlaceFault>,
  m: Measures,
  told: StrongestRun | undefined,
): StrongestRun {
  const rate = (cell: 'springs' | 'neaps', text: string) => {
    if (told && text === figure(told[cell], m)) return told[cell];
    const shown = parseDecimal(text, m.lang);
    const si = shown === undefined || shown < 0 ? undefined : m.toSi('speed', shown);
    if (si === undefined) faults[`${part} ${cell}`] = 'no-rate';
    else if (si > FASTEST) faults[`${part} ${cell}`] = 'too-much';
    return si ?? 0;
  };
  const [spring, neap] = [rate('springs', springs), rate('neaps', neaps)];
  const same = told && set === bearing(told.setDeg);
  const setDeg = same ? told.setDeg : directionOf(set, m.lang);
  // Slack water sets nowhere.
  const slack = set.trim() === '' && spring === 0 && neap === 0;
  if (setDeg === undefined && !slack) faults[`${part} set`] = 'no-set';
  return { setDeg: setDeg ?? 0, springs: spring, neaps: neap };
}

function positionOf({ position, whole }: PlaceDraft, m: Measures): LatLon | undefined {
  return whole && position === showPosition(whole, m.system) ? whole : parsePosition(position);
}

function texts(
  run: { readonly setDeg: number; readonly springs: number; readonly neaps: number | undefined },
  m: Measures,
  neapDeg?: number,
): RunTexts {
  return {
    set: bearing(run.setDeg),
    springs: figure(run.springs, m),
    neaps: run.neaps === undefined ? '' : figure(run.neaps, m),
    neapSet: neapDeg === undefined ? '' : bearing(neapDeg),
  };
}

function figure(rate: number, m: Measures): string {
  return m.figure('speed', rate);
}

function bearing(deg: number): string {
  return String(Math.round(deg) % 360);
}

function blank({ set, springs, neaps }: RunTexts): boolean {
  return [set, springs, neaps].every((text) => text.trim() === '');
}

function hoursFrom(first: number, last: number): readonly number[] {
  return Array.from({ length: last - first + 1 }, (_, i) => first + i);
}
