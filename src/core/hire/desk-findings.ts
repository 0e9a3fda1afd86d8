import type { Verdict } from '../trip/shapes.ts';
import { fleetEnd } from './hire-times.ts';
import { morningHolds } from './morning-now.ts';
import type { Fleet, Morning } from './shapes.ts';

/** What the desk itself knows against an answer, beside what the plan says. */
export interface DeskFinding {
  readonly code:
    | 'morning-missing'
    | 'morning-expired'
    | 'fleet-expired'
    | 'fleet-not-yet'
    | 'no-time-left'
    | 'boat-out'
    | 'area-unnamed';
  readonly level: 'no-go' | 'marginal' | 'note';
}

export interface DeskSituation {
  readonly now: number;
  /** s east of UTC where the desk lies. */
  readonly offset: number;
  readonly fleet: Pick<Fleet, 'surveyed' | 'until' | 'area'>;
  readonly morning: Morning | undefined;
  /** s from the latest departure to the time due. */
  readonly allowed: number;
  /** The boat has not come back from its last hire. */
  readonly boatOut: boolean;
  readonly routeSet: boolean;
}

export function deskFindings(situation: DeskSituation): readonly DeskFinding[] {
  const { now, offset, fleet, morning } = situation;
  const found: DeskFinding[] = [];
  if (situation.allowed <= 0) found.push({ code: 'no-time-left', level: 'no-go' });
  if (situation.boatOut) found.push({ code: 'boat-out', level: 'no-go' });
  if (!morning) found.push({ code: 'morning-missing', level: 'marginal' });
  else if (!morningHolds(morning, now)) found.push({ code: 'morning-expired', level: 'marginal' });
  if (now > fleetEnd(fleet, offset)) found.push({ code: 'fleet-expired', level: 'marginal' });
  else if (now < Date.parse(`${fleet.surveyed}T00:00Z`) / 1000 - offset)
    found.push({ code: 'fleet-not-yet', level: 'marginal' });
  if (!situation.routeSet && !fleet.area) found.push({ code: 'area-unnamed', level: 'marginal' });
  return found;
}

/** The worse of a plan's verdict and what the desk knows against it. */
export function deskVerdict(verdict: Verdict, findings: readonly DeskFinding[]): Verdict {
  if (verdict === 'no-go' || findings.some(({ level }) => level === 'no-go')) return 'no-go';
  return verdict === 'marginal' || findings.some(({ level }) => level === 'marginal') ? 'marginal' : 'go';
}
