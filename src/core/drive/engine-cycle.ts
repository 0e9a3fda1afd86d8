import { type FuelLaw, fuelFlow } from './petrol.ts';

export interface CycleMode {
  /** Share of rated revs; idle as the engine idles. */
  readonly revShare: number | 'idle';
  readonly torqueShare: number;
  /** Share of running time. */
  readonly weight: number;
}

/** E4 duty cycle of marine spark-ignition engines (40 CFR part 1045, Appendix II (a); ISO 8178-4 E4). */
export const E4_CYCLE: readonly CycleMode[] = [
  { revShare: 1, torqueShare: 1, weight: 0.06 },
  { revShare: 0.8, torqueShare: 0.716, weight: 0.14 },
  { revShare: 0.6, torqueShare: 0.465, weight: 0.15 },
  { revShare: 0.4, torqueShare: 0.253, weight: 0.25 },
  { revShare: 'idle', torqueShare: 0, weight: 0.4 },
];

/** Share of rated torque that boats ask for at a share of rated revs (ICOMIA 36-88, power law 1.5). */
export function boatTorqueShare(revShare: number): number {
  return revShare ** 1.5;
}

/** Mean power over the E4 cycle as a share of rated power. */
export function cycleLoadFactor(): number {
  let sum = 0;
  for (const { revShare, torqueShare, weight } of E4_CYCLE) {
    if (revShare !== 'idle') sum += weight * revShare * torqueShare;
  }
  return sum;
}

/** Mean fuel flow over the E4 cycle, kg/s. */
export function cycleFlow(law: FuelLaw): number {
  let sum = 0;
  for (const { revShare, torqueShare, weight } of E4_CYCLE) {
    sum +=
      weight * (revShare === 'idle' ? fuelFlow(law, 0, law.idle) : fuelFlow(law, revShare * torqueShare, revShare));
  }
  return sum;
}
