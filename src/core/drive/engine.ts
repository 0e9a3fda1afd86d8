import type { Drive } from '../craft/shapes.ts';
import { ELECTRIC_REV_LIMIT, lossPower, type MotorLosses, motorLimitShare, motorLosses } from './electric.ts';
import {
  type FuelLaw,
  fuelFlow,
  fuelFlowSlopes,
  fuelLaw,
  fullThrottleShare,
  idleFuelFlow,
  PETROL_REV_LIMIT,
} from './petrol.ts';

interface EngineBase {
  /** W, rev/s and N m at the propshaft. */
  readonly ratedPower: number;
  readonly ratedRevs: number;
  readonly ratedTorque: number;
  /** Calibration factor on consumption or losses that is already in the law. */
  readonly fuel: number;
}

/** Engine or motor as the propeller shaft sees it. */
export type Engine =
  | (EngineBase & { readonly kind: 'petrol'; readonly law: FuelLaw })
  | (EngineBase & { readonly kind: 'electric'; readonly losses: MotorLosses });

/** Slopes of flow: per rev/s, per N m, and per unit of the two calibration factors. */
export interface EngineSlopes {
  readonly byRevs: number;
  readonly byTorque: number;
  readonly byFuel: number;
  readonly byFriction: number;
}

const TURN = 2 * Math.PI;

/** Outboards are rated at the propshaft, so no gear loss is taken. Factors 1 and 0 for an unmeasured engine. */
export function engineOf(drive: Drive, fuel: number, friction: number): Engine {
  const { ratedPower } = drive;
  const ratedRevs = drive.ratedRpm / drive.gearRatio / 60;
  const base = { ratedPower, ratedRevs, ratedTorque: ratedPower / (TURN * ratedRevs), fuel };
  return drive.kind === 'petrol'
    ? { ...base, kind: 'petrol', law: fuelLaw(drive, fuel, friction) }
    : { ...base, kind: 'electric', losses: motorLosses(drive, fuel, friction) };
}

/** kg/s of petrol or W of electrical input, for propeller revs, rev/s, and torque, N m. */
export function engineFlow(engine: Engine, revs: number, torque: number): number {
  const power = TURN * revs * torque;
  const revShare = revs / engine.ratedRevs;
  if (engine.kind === 'petrol') return fuelFlow(engine.law, power / engine.ratedPower, revShare);
  const { losses, ratedTorque } = engine;
  return power + lossPower(losses, torque / ratedTorque, revShare) + losses.accessories;
}

export function engineSlopes(engine: Engine, revs: number, torque: number): EngineSlopes {
  const { ratedPower, ratedRevs, ratedTorque } = engine;
  const revShare = revs / ratedRevs;
  if (engine.kind === 'petrol') {
    const powerShare = (TURN * revs * torque) / ratedPower;
    const { byPower, byRevs, byFriction } = fuelFlowSlopes(engine.law, powerShare, revShare);
    return {
      byRevs: (byPower * TURN * torque) / ratedPower + byRevs / ratedRevs,
      byTorque: (byPower * TURN * revs) / ratedPower,
      byFuel: fuelFlow(engine.law, powerShare, revShare) / engine.fuel,
      byFriction,
    };
  }
  const { losses } = engine;
  const torqueShare = torque / ratedTorque;
  return {
    byRevs: TURN * torque + losses.speed / ratedRevs,
    byTorque: TURN * revs + (2 * losses.torque * torqueShare) / ratedTorque,
    byFuel: lossPower(losses, torqueShare, revShare) / engine.fuel,
    byFriction: engine.fuel * ratedPower,
  };
}

/** Highest shaft power over rated power at a share of rated revs. */
export function engineLimitShare(engine: Engine, revShare: number): number {
  return engine.kind === 'petrol' ? fullThrottleShare(revShare) : motorLimitShare(revShare);
}

/** Highest share of rated revs. */
export function engineRevLimit(engine: Engine): number {
  return engine.kind === 'petrol' ? PETROL_REV_LIMIT : ELECTRIC_REV_LIMIT;
}

/** Flow with no thrust asked: petrol in neutral, or standby and accessories. */
export function engineIdleFlow(engine: Engine): number {
  return engine.kind === 'petrol' ? idleFuelFlow(engine.law) : engine.losses.standby + engine.losses.accessories;
}
