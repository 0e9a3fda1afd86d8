import type { Load } from '../../core/load/shapes.ts';
import type { Refill, Trials } from '../../core/trials/shapes.ts';
import { freshId, lastLoad } from './edit-trials.ts';

export interface SpentEntry {
  readonly speed?: number | undefined;
  readonly seconds?: number | undefined;
}

/** The form of a refill as far as it is filled in; SI. */
export interface RefillEntry {
  readonly id?: string;
  readonly day: string;
  readonly setup: string;
  readonly load: Load;
  readonly spent: readonly SpentEntry[];
  readonly amount?: number | undefined;
  readonly readAt?: 'battery' | 'socket';
  readonly waveHeight?: number | undefined;
  readonly leftOut?: boolean;
  readonly note: string;
}

export interface RefillProblem {
  readonly field: 'spent' | 'amount' | 'load';
  readonly code: 'no-time' | 'half-time' | 'no-amount' | 'nobody';
}

export function blankRefill(trials: Trials, usual: string, today: string): RefillEntry {
  return {
    day: today,
    setup: trials.refills.at(-1)?.setup ?? usual,
    load: lastLoad(trials),
    spent: [{}, {}],
    note: '',
  };
}

export function refillEntryOf(refill: Refill): RefillEntry {
  return { ...refill, day: refill.day ?? '', note: refill.note ?? '' };
}

export function refillProblems({ spent, amount, load }: RefillEntry): readonly RefillProblem[] {
  const found: RefillProblem[] = [];
  const half = spent.some(({ speed, seconds }) => (speed === undefined) !== (seconds === undefined));
  if (half) found.push({ field: 'spent', code: 'half-time' });
  else if (!spent.some(({ seconds = 0 }) => seconds > 0)) found.push({ field: 'spent', code: 'no-time' });
  if (amount === undefined) found.push({ field: 'amount', code: 'no-amount' });
  if (!load.items.some(({ kind }) => kind === 'adult' || kind === 'child'))
    found.push({ field: 'load', code: 'nobody' });
  return found;
}

/** The refill of a form without problems. */
export function refillOf(entry: RefillEntry, trials: Trials): Refill {
  const spent = entry.spent.flatMap(({ speed, seconds }) =>
    speed === undefined || seconds === undefined || seconds <= 0 ? [] : [{ speed, seconds }],
  );
  return {
    id: entry.id ?? freshId('f', trials.refills),
    ...(entry.day && { day: entry.day }),
    setup: entry.setup,
    load: entry.load,
    spent,
    amount: entry.amount ?? 0,
    ...(entry.readAt && { readAt: entry.readAt }),
    ...(entry.waveHeight !== undefined && { waveHeight: entry.waveHeight }),
    ...(entry.leftOut && { leftOut: true }),
    ...(entry.note.trim() && { note: entry.note.trim() }),
  };
}
