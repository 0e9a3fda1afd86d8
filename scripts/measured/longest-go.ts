import { largestHolding } from '../../src/core/trip/bisect.ts';
import { pointsOf } from './loaded.ts';
import { ELECTRIC_BOATS, PETROL_BOATS } from './records.ts';
import { verdictOf } from './usefulness.ts';

/** How long a trip may be that still gets a go, over all speeds a boat was measured at. */
export interface LongestGo {
  readonly check: string;
  readonly speeds: number;
  /**
   * What the longest trip with a go takes by the measured consumption, over what it may take with a third kept: 1 would
   * be exact, more breaks the reserve, 0 is never a go. At the speed where it is least, and where it is most.
   */
  readonly least: number;
  readonly most: number;
  /** m/s */
  readonly mostAt: number;
}

const MAY_TAKE = 2 / 3;
/** Nobody is so far off that a trip of three full tanks would be a go. */
const BEYOND = 3;
const STEP = 0.002;

/** For each boat as nobody measured it; petrol at full throttle is never a go and left out. */
export function longestGo(): readonly LongestGo[] {
  return [...PETROL_BOATS, ...ELECTRIC_BOATS].map((check) => {
    const consumed = pointsOf(check).filter(({ flow }) => flow !== undefined);
    const points = check.startsWith('P-') ? consumed.slice(0, -1) : consumed;
    const shares = points.map((point) => {
      const share = largestHolding((taken) => verdictOf(point, taken) === 'go', STEP, BEYOND, STEP) ?? 0;
      return { at: point.speed, share: share / MAY_TAKE };
    });
    const most = shares.reduce((a, b) => (b.share > a.share ? b : a));
    return {
      check,
      speeds: points.length,
      least: rounded(Math.min(...shares.map(({ share }) => share))),
      most: rounded(most.share),
      mostAt: rounded(most.at),
    };
  });
}

function rounded(value: number): number {
  return Math.round(value * 100) / 100;
}
