import type { ElectricDrive } from '../craft/shapes.ts';

/** Highest share of rated revs (common practice, no source). */
export const ELECTRIC_REV_LIMIT = 1.1;

/** Where the corner between torque and power limit begins, as a share of rated revs. */
const CORNER = 0.96;

/** Losses of motor and controller, W: standby + speed x share of rated revs + torque x (share of rated torque)^2. */
export interface MotorLosses {
  readonly standby: number;
  readonly speed: number;
  readonly torque: number;
  /** Drawn besides the motor, W. */
  readonly accessories: number;
}

/**
 * `factor` multiplies all losses, `standbyShift` adds to c0; 1 and 0 for an unmeasured motor. Usual coefficients are
 * c0 0.008, c1 0.045, c2 0.120 of rated power: 0.85 at rated load, 0.83 at 40 %, 0.60 at 3 % (derived for this
 * project from common practice).
 */
export function motorLosses(drive: ElectricDrive, factor = 1, standbyShift = 0): MotorLosses {
  const scale = factor * drive.ratedPower;
  return {
    standby: scale * Math.max(drive.standbyLoss + standbyShift, 0),
    speed: scale * drive.speedLoss,
    torque: scale * drive.torqueLoss,
    accessories: drive.accessoryPower,
  };
}

/** Lost between battery and propshaft, W, at shares of rated torque and revs. */
export function lossPower(losses: MotorLosses, torqueShare: number, revShare: number): number {
  return losses.standby + losses.speed * revShare + losses.torque * torqueShare * torqueShare;
}

/**
 * Highest shaft power over rated power: constant torque up to rated revs, constant power above (common practice, no
 * source). The corner is rounded from 0.96 to 1 of rated revs and meets rated power exactly at rated revs, for which
 * the torque limit stands 2 % above rated.
 */
export function motorLimitShare(revShare: number): number {
  if (revShare >= 1) return 1;
  const slope = 2 / (1 + CORNER);
  if (revShare <= CORNER) return slope * revShare;
  const below = 1 - revShare;
  return 1 - (slope * below * below) / (2 * (1 - CORNER));
}
