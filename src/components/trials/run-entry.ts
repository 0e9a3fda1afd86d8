import type { Load } from '../../core/load/shapes.ts';
import type { Consumed, Pass, Run, Trials } from '../../core/trials/shapes.ts';
import { freshId, lastLoad } from './edit-trials.ts';

/** How consumption was read. */
export type ReadingKind = 'none' | 'rate' | 'amount' | 'current';

/** What consumption was read as, field by field; SI. */
export interface ReadingEntry {
  readonly kind: ReadingKind;
  /** kg/s or W. */
  readonly rate?: number | undefined;
  /** kg or J, over s. */
  readonly amount?: number | undefined;
  readonly seconds?: number | undefined;
  readonly amps?: number | undefined;
  readonly volts?: number | undefined;
}

export interface PassEntry {
  readonly way: Pass['way'];
  readonly over?: number | undefined;
}

/** The form of a run as far as it is filled in; SI. */
export interface RunEntry {
  /** Of the run being changed; absent: a new one. */
  readonly id?: string;
  readonly day: string;
  readonly setup: string;
  readonly load: Load;
  readonly passes: readonly PassEntry[];
  /** Along the way out, m/s, with the boat above 0; only where there is no pass back. */
  readonly stream?: number | undefined;
  readonly rpm?: number | undefined;
  readonly fullThrottle: boolean;
  readonly reading: ReadingEntry;
  readonly consumedError?: number | undefined;
  readonly windSpeed?: number | undefined;
  readonly windOffBowDeg?: number | undefined;
  readonly waveHeight?: number | undefined;
  readonly leftOut?: boolean;
  readonly note: string;
}

/** Names of the fields that a problem stands at. */
export type RunField = 'passes' | 'reading' | 'wind' | 'load';
export type RunProblem = {
  readonly field: RunField;
  readonly code: 'no-speed' | 'half-reading' | 'no-bearing' | 'nobody';
};

/** An empty form with the setup and the load of the last run. */
export function blankEntry(trials: Trials, usual: string, today: string): RunEntry {
  const last = trials.runs.at(-1);
  return {
    day: today,
    setup: last?.setup ?? usual,
    load: lastLoad(trials),
    passes: [{ way: 'out' }, { way: 'back' }],
    fullThrottle: false,
    reading: { kind: last ? readingOf(last.consumed).kind : 'rate' },
    note: '',
  };
}

/** A run opened in the form. */
export function entryOf(run: Run): RunEntry {
  return {
    id: run.id,
    day: run.day ?? '',
    setup: run.setup,
    load: run.load,
    passes: run.passes,
    stream: run.stream,
    rpm: run.rpm,
    fullThrottle: run.fullThrottle ?? false,
    reading: readingOf(run.consumed),
    consumedError: run.consumedError,
    windSpeed: run.wind?.speed,
    windOffBowDeg: run.wind?.offBowDeg,
    waveHeight: run.waveHeight,
    ...(run.leftOut && { leftOut: true }),
    note: run.note ?? '',
  };
}

/** What keeps a form from being a run. */
export function problemsOf(entry: RunEntry): readonly RunProblem[] {
  const found: RunProblem[] = [];
  if (!entry.passes.some(({ over }) => over !== undefined)) found.push({ field: 'passes', code: 'no-speed' });
  if (halfFilled(entry.reading)) found.push({ field: 'reading', code: 'half-reading' });
  if (entry.windSpeed !== undefined && entry.windSpeed > 0 && entry.windOffBowDeg === undefined)
    found.push({ field: 'wind', code: 'no-bearing' });
  if (!entry.load.items.some(({ kind }) => kind === 'adult' || kind === 'child'))
    found.push({ field: 'load', code: 'nobody' });
  return found;
}

/** The run of a form without problems. */
export function runOf(entry: RunEntry, trials: Trials): Run {
  const passes = entry.passes.flatMap(({ way, over }) => (over === undefined ? [] : [{ way, over }]));
  const oneWay = passes.every(({ way }) => way === passes[0]?.way);
  const consumed = consumedOf(entry.reading);
  const { windSpeed } = entry;
  return {
    id: entry.id ?? freshId('r', trials.runs),
    ...(entry.day && { day: entry.day }),
    setup: entry.setup,
    load: entry.load,
    passes,
    ...(oneWay && entry.stream !== undefined && { stream: entry.stream }),
    ...(entry.rpm !== undefined && { rpm: entry.rpm }),
    ...(entry.fullThrottle && { fullThrottle: true }),
    ...(consumed && { consumed }),
    ...(entry.consumedError !== undefined && { consumedError: entry.consumedError }),
    ...(windSpeed !== undefined && { wind: { speed: windSpeed, offBowDeg: entry.windOffBowDeg ?? 0 } }),
    ...(entry.waveHeight !== undefined && { waveHeight: entry.waveHeight }),
    ...(entry.leftOut && { leftOut: true }),
    ...(entry.note.trim() && { note: entry.note.trim() }),
  };
}

/** Amps times volts are a power; the rest as read. */
export function consumedOf({ kind, rate, amount, seconds, amps, volts }: ReadingEntry): Consumed | undefined {
  if (kind === 'rate' && rate !== undefined) return { kind: 'rate', rate };
  if (kind === 'current' && amps !== undefined && volts !== undefined) return { kind: 'rate', rate: amps * volts };
  if (kind === 'amount' && amount !== undefined && seconds !== undefined && seconds > 0)
    return { kind: 'amount', amount, seconds };
  return undefined;
}

function readingOf(consumed: Consumed | undefined): ReadingEntry {
  return consumed ?? { kind: 'none' };
}

function halfFilled({ kind, amount, seconds, amps, volts }: ReadingEntry): boolean {
  if (kind === 'amount') return (amount === undefined) !== (seconds === undefined);
  return kind === 'current' && (amps === undefined) !== (volts === undefined);
}
