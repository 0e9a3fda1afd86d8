import type { Hire } from '../../core/hire/shapes.ts';
import type { Measures } from '../units/measures.ts';
import { checkWords, hirerWords, logWords as words } from '../words/en-desk.ts';
import { clockText, dayOf } from './desk-time.ts';

/** Hires of a day, by departure or check. */
export function hiresOn(hires: readonly Hire[], day: string): readonly Hire[] {
  return hires
    .filter((hire) => dayOf(hire.leftAt ?? hire.checkedAt) === day)
    .sort((a, b) => (a.leftAt ?? a.checkedAt) - (b.leftAt ?? b.checkedAt));
}

/** Days with hires and today, the latest first. */
export function logDays(hires: readonly Hire[], today: string): readonly string[] {
  return [...new Set([today, ...hires.map((hire) => dayOf(hire.leftAt ?? hire.checkedAt))])].sort().reverse();
}

/** What the log says of a hire, by column. */
export interface LogRow {
  readonly boat: string;
  readonly where: string;
  readonly people: number;
  readonly weight: string;
  readonly answer: string;
  readonly experience: string;
  readonly checked: string;
  readonly left: string;
  readonly due: string;
  readonly back: string;
  readonly late: string;
  readonly used: string;
  readonly shown: string;
  readonly note: string;
}

export function logRow(hire: Hire, now: number, m: Measures): LogRow {
  const { trip, told, leftAt, due, returnedAt, back } = hire;
  const day = leftAt ?? hire.checkedAt;
  const clock = (seconds: number | undefined) => (seconds === undefined ? '' : clockText(seconds, day, m.lang));
  const mass = trip.load.items.reduce((sum, item) => sum + item.mass, 0);
  const ended = returnedAt ?? (leftAt === undefined ? undefined : now);
  const late = due !== undefined && ended !== undefined && ended > due ? ended - due : 0;
  return {
    boat: hire.boat,
    where: hire.route ?? '',
    people: trip.load.items.length,
    weight: m.show('mass', mass),
    answer: hirerWords.verdicts[told.verdict],
    experience: checkWords.experiences[hire.experience],
    checked: clock(hire.checkedAt),
    left: leftAt === undefined ? words.notLeft : clock(leftAt),
    due: clock(due),
    back: returnedAt === undefined ? (late > 0 ? words.overdue : '') : clock(returnedAt),
    late: late > 0 ? m.time(late) : '',
    used: back?.amount === undefined ? '' : m.show('amount', back.amount, told.store),
    shown: [...new Set(Object.values(hire.shown))].join(' '),
    note: back?.note ?? '',
  };
}
