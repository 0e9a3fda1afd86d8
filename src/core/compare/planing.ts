import { HUMP_MARGIN, marginOf, PLANING_FROUDE, speedAtFroude } from '../curve/hump.ts';
import { steady } from '../curve/steady.ts';
import { HELD_IN, heldProbability } from '../trip/held.ts';
import type { Loaded } from './loaded.ts';

export type Planes = 'planes' | 'marginal' | 'not';

export interface Planing {
  readonly planes: Planes;
  /** How many of such boats get onto the plane, 0 to 1: from the spread of resistance and rated power. */
  readonly chance: number;
  /** Where power is tightest on the way up, m/s, and power there is over power asked. */
  readonly humpSpeed: number;
  readonly humpMargin: number;
}

/** The climb onto the plane as volume Froude numbers; the same that the curve looks at. */
const FROM = 1.2;
const STEPS = 10;

/**
 * Whether a loaded boat gets onto the plane in calm water. Planes: three of four such boats do, with 5 % of power to
 * spare; not: fewer than one of four (our rule). A displacement hull never does.
 */
export function planing({ craft, boat, afloat }: Loaded): Planing {
  let humpSpeed = 0;
  let humpMargin = Infinity;
  let chance = 1;
  for (let i = 0; i <= STEPS; i++) {
    const speed = speedAtFroude(boat, afloat, FROM + ((PLANING_FROUDE - FROM) * i) / STEPS);
    const now = steady(boat, afloat, speed);
    const margin = marginOf(boat, afloat, now.drive);
    chance = Math.min(chance, heldProbability(boat, { afloat, speed, steady: now }));
    if (margin < humpMargin) {
      humpMargin = margin;
      humpSpeed = speed;
    }
  }
  if (craft.hull.form === 'displacement') return { planes: 'not', chance: 0, humpSpeed, humpMargin };
  const sure = chance >= HELD_IN && humpMargin >= HUMP_MARGIN;
  return { planes: sure ? 'planes' : chance < 1 - HELD_IN ? 'not' : 'marginal', chance, humpSpeed, humpMargin };
}
