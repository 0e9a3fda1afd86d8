import { DAY } from '../water/clock.ts';
import type { DueRule, Fleet, Hire, Morning } from './shapes.ts';

/** When the boat is due if it leaves then; never after the last return. Times s since 1970. */
export function dueBack(rule: DueRule, leaves: number, lastReturn: number | undefined): number {
  const due = rule.kind === 'after' ? leaves + rule.seconds : rule.time;
  return lastReturn === undefined ? due : Math.min(due, lastReturn);
}

interface Checked {
  readonly now: number;
  readonly morning: Morning | undefined;
  readonly fleet: Pick<Fleet, 'until'>;
  /** End of the calendar day of `now` where the desk lies. */
  readonly dayEnd: number;
}

/** How long an answer may wait without a morning set, s (our choice, no source). */
export const SLIP_LIFE = 30 * 60;

/**
 * Latest departure for which an answer of now may stand: its life, cut at the expiry of the morning, the end of the
 * day and the last return.
 */
export function slipEnd({ now, morning, dayEnd }: Checked): number {
  const ends = [now + (morning?.slipLife ?? SLIP_LIFE), dayEnd];
  if (morning && morning.until > now) ends.push(morning.until);
  if (morning?.lastReturn !== undefined && morning.lastReturn > now) ends.push(morning.lastReturn);
  return Math.min(...ends);
}

/** The hire as it leaves: its clock starts now. Undefined where the slip is too old or the boat has left already. */
export function departed(hire: Hire, now: number): Hire | undefined {
  if (hire.leftAt !== undefined || now > hire.validUntil) return undefined;
  return { ...hire, leftAt: now, due: dueBack(hire.rule, now, hire.lastReturn) };
}

/** Last second on which a fleet may be relied on, on a clock `offset` s east of UTC. */
export function fleetEnd({ until }: Pick<Fleet, 'until'>, offset: number): number {
  return Date.parse(`${until}T00:00Z`) / 1000 - offset + DAY - 1;
}
