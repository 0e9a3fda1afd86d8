import type { Afloat } from '../curve/boat.ts';
import type { Prepared } from './prepare.ts';
import type { Scenario } from './scenario.ts';

/** Changes to a trip under which tipping values and payload are sought. */
export interface Tweak {
  /** kg at the boat's own centre of gravity, so that its balance stays. */
  readonly extraMass: number;
  /** Factor on every consumption. */
  readonly use: number;
}

export const AS_PLANNED: Tweak = { extraMass: 0, use: 1 };

/** Mass, centre of gravity, frontal area and charge with this much (kg) in the tanks. */
export function afloatIn(
  prepared: Prepared,
  scenario: Scenario,
  storeMass: number,
  { tweak = AS_PLANNED, charge = scenario.fill }: { readonly tweak?: Tweak; readonly charge?: number } = {},
): Afloat {
  const { base, burns, forwardMoment } = prepared;
  const carried = burns ? storeMass : 0;
  const mass = base.mass + carried;
  const moment = base.momentX + carried * base.storeAt.x + (scenario.forward ? forwardMoment : 0);
  return { mass: mass + tweak.extraMass, lcg: moment / mass, airArea: base.airArea, charge };
}
