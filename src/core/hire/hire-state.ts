import type { Hire } from './shapes.ts';

/** Where a hire stands at a time. `seconds` runs to the next step, or since it became due. */
export type HireState =
  | { readonly is: 'checked'; readonly seconds: number }
  | { readonly is: 'stale' }
  | { readonly is: 'out'; readonly seconds: number }
  | { readonly is: 'due-soon'; readonly seconds: number }
  | { readonly is: 'overdue'; readonly seconds: number; readonly step: OverdueStep }
  | { readonly is: 'returned' };

/** What the desk does: look and call; then the harbour and others; then rescue. */
export type OverdueStep = 'call' | 'ask-round' | 'raise-alarm';

/** From this long before the due time a boat is watched, s (our choice, no source). */
const SOON = 15 * 60;
/** After the due time, s (practice of overdue forms for small craft). */
const ASK_ROUND = 30 * 60;
const RAISE_ALARM = 60 * 60;

export function hireState(hire: Hire, now: number): HireState {
  if (hire.returnedAt !== undefined) return { is: 'returned' };
  if (hire.leftAt === undefined || hire.due === undefined) {
    return now > hire.validUntil ? { is: 'stale' } : { is: 'checked', seconds: hire.validUntil - now };
  }
  const left = hire.due - now;
  if (left > SOON) return { is: 'out', seconds: left };
  if (left > 0) return { is: 'due-soon', seconds: left };
  const late = now - hire.due;
  return { is: 'overdue', seconds: late, step: overdueStep(late) };
}

/** The step whose time has come. */
function overdueStep(late: number): OverdueStep {
  return late >= RAISE_ALARM ? 'raise-alarm' : late >= ASK_ROUND ? 'ask-round' : 'call';
}

/** The next time at which something of these hires changes by the clock alone; undefined: nothing will. */
export function nextChange(hires: readonly Hire[], now: number): number | undefined {
  const times = hires.flatMap(({ returnedAt, due, leftAt, validUntil }) => {
    if (returnedAt !== undefined) return [];
    if (leftAt === undefined || due === undefined) return [validUntil + 1];
    return [due - SOON, due, due + ASK_ROUND, due + RAISE_ALARM];
  });
  const coming = times.filter((time) => time > now);
  return coming.length > 0 ? Math.min(...coming) : undefined;
}

/** Overdue first, by how late; then by when they are due. */
export function outFirst(hires: readonly Hire[]): readonly Hire[] {
  return hires
    .filter(({ leftAt, returnedAt }) => leftAt !== undefined && returnedAt === undefined)
    .sort((a, b) => (a.due ?? 0) - (b.due ?? 0));
}
