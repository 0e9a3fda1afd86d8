import type { Load } from '../../core/load/shapes.ts';
import type { MeasuredTrack } from '../../core/track/measured-track.ts';
import { pairPasses } from '../../core/track/pair-passes.ts';
import { passGroup, wayOf } from '../../core/track/pass-group.ts';
import type { PassGroup, Stretch, Track, TrackNote } from '../../core/track/shapes.ts';
import { stretchOf, type Times } from '../../core/track/stretch.ts';
import type { Pass, Run, Trials } from '../../core/trials/shapes.ts';
import { type StillWater, stillWater } from '../../core/trials/still-water.ts';
import { freshId } from './edit-trials.ts';
import { consumedOf, type ReadingEntry } from './run-entry.ts';

/** A track as opened: cleaned, and measured once for all its stretches. */
export interface OpenTrack {
  readonly id: string;
  readonly track: Track;
  readonly measured: MeasuredTrack;
  readonly notes: readonly TrackNote[];
}

/** A stretch of an open track and the run it belongs to; "" belongs to none. */
export interface Found {
  readonly id: string;
  readonly track: string;
  readonly stretch: Stretch;
  readonly run: string;
}

/** What was read during the passes of a run to be. */
export interface GroupReadings {
  readonly setup: string;
  readonly load: Load;
  readonly rpm?: number | undefined;
  readonly fullThrottle: boolean;
  readonly reading: ReadingEntry;
}

/** Passes that become a run, in the order sailed. */
export interface RunToBe {
  /** "A", "B", as named in the table of stretches. */
  readonly name: string;
  readonly found: readonly Found[];
  readonly passes: readonly Pass[];
  /** With passes both ways. */
  readonly group: PassGroup | undefined;
  readonly still: StillWater;
}

/** As many as a run holds. */
const MOST_PASSES = 20;

const LETTERS = 'ABCDEFGHIJKLMNOPQRSTUVWXYZ';

export function runName(index: number): string {
  const letter = LETTERS[index % LETTERS.length]!;
  return index < LETTERS.length ? letter : `${letter}${Math.floor(index / LETTERS.length) + 1}`;
}

/** Stretches in order of time, each with the run that pairing gives it. */
export function paired(tracks: readonly { readonly id: string; readonly stretches: readonly Stretch[] }[]): Found[] {
  const all = tracks.flatMap(({ id, stretches }) => stretches.map((stretch) => ({ track: id, stretch })));
  all.sort((a, b) => a.stretch.start - b.stretch.start);
  const { groups } = pairPasses(all.map(({ stretch }) => stretch));
  const runs = new Map(groups.flatMap(({ passes }, i) => passes.map(({ stretch }) => [stretch, runName(i)] as const)));
  return all.map(({ track, stretch }, i) => ({ id: `p${i + 1}`, track, stretch, run: runs.get(stretch) ?? '' }));
}

/** The runs that the stretches make as they are grouped now. */
export function runsToBe(found: readonly Found[]): readonly RunToBe[] {
  const names = [...new Set(found.map(({ run }) => run))].filter(Boolean);
  const runs = names.map((name): RunToBe => {
    const own = found.filter(({ run }) => run === name).toSorted((a, b) => a.stretch.start - b.stretch.start);
    const outDeg = own[0]!.stretch.headingDeg;
    const passes = own.map(({ stretch }): Pass => ({ over: stretch.speed, way: wayOf(stretch, outDeg) }));
    const group = passGroup(own.map(({ stretch }) => stretch));
    return { name, found: own, passes, group, still: stillWater(passes) };
  });
  return runs.toSorted((a, b) => a.found[0]!.stretch.start - b.found[0]!.stretch.start);
}

/** A name that no run carries yet. */
export function nextRunName(found: readonly Found[]): string {
  const taken = new Set(found.map(({ run }) => run));
  for (let i = 0; ; i++) if (!taken.has(runName(i))) return runName(i);
}

/** One stretch between other times; unchanged where too little would be left. */
export function moved(found: readonly Found[], id: string, times: Times, { track, measured }: OpenTrack): Found[] {
  return found.map((one) => {
    if (one.id !== id) return one;
    const stretch = stretchOf(track, times, measured);
    return stretch ? { ...one, stretch } : one;
  });
}

/** One more stretch, in no run yet; undefined where the track is too short there. */
export function addedStretch(found: readonly Found[], open: OpenTrack, times: Times): Found[] | undefined {
  const stretch = stretchOf(open.track, times, open.measured);
  if (!stretch) return undefined;
  const one: Found = { id: freshId('p', found), track: open.id, stretch, run: '' };
  return [...found, one].toSorted((a, b) => a.stretch.start - b.stretch.start);
}

/** The run for the trial table. */
export function runFrom(toBe: RunToBe, readings: GroupReadings, trials: Trials): Run {
  const consumed = consumedOf(readings.reading);
  return {
    id: freshId('r', trials.runs),
    day: dayOf(toBe.found[0]!.stretch.start),
    setup: readings.setup,
    load: readings.load,
    passes: toBe.passes.slice(0, MOST_PASSES).map(({ over, way }) => ({ over: Math.round(over * 1000) / 1000, way })),
    ...(readings.rpm !== undefined && { rpm: readings.rpm }),
    ...(readings.fullThrottle && { fullThrottle: true }),
    ...(consumed && { consumed }),
  };
}

/** Date on this device of a time, s since 1970. */
export function dayOf(time: number): string {
  const at = new Date(time * 1000);
  return [at.getFullYear(), at.getMonth() + 1, at.getDate()].map((part) => String(part).padStart(2, '0')).join('-');
}

/** Clock of this device, "14:03:20". */
export function clockOf(time: number): string {
  const at = new Date(Math.round(time) * 1000);
  return [at.getHours(), at.getMinutes(), at.getSeconds()].map((part) => String(part).padStart(2, '0')).join(':');
}

/** The time that a clock reading means, next to `near`; undefined where it is none. */
export function timeAt(reading: string, near: number): number | undefined {
  const parts = /^\s*(\d{1,2}):(\d{2})(?::(\d{2}))?\s*$/.exec(reading);
  if (!parts) return undefined;
  const [hours, minutes, seconds] = [Number(parts[1]), Number(parts[2]), Number(parts[3] ?? 0)];
  if (hours > 23 || minutes > 59 || seconds > 59) return undefined;
  const at = new Date(near * 1000);
  at.setHours(hours, minutes, seconds, 0);
  const day = 86_400;
  const time = at.getTime() / 1000;
  // Past midnight the nearest of the three days is meant.
  return [time - day, time, time + day].reduce((a, b) => (Math.abs(b - near) < Math.abs(a - near) ? b : a));
}
