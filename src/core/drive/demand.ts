import type { Drive, HullForm } from '../craft/shapes.ts';
import { type OpenWater, openWaterPitchSlope } from './b-series.ts';
import {
  type Engine,
  engineFlow,
  engineIdleFlow,
  engineLimitShare,
  engineOf,
  engineRevLimit,
  engineSlopes,
} from './engine.ts';
import {
  apparentSlip,
  type PropellerModel,
  type PropellerPoint,
  propellerModel,
  propellerPoint,
  propellerSlopes,
} from './propeller.ts';

/** Factors fitted to trial runs. */
export interface DriveFactors {
  /** m added to pitch */
  readonly pitchShift: number;
  /** Factor on consumption (petrol) or on losses (electric). */
  readonly fuel: number;
  /** Added to the friction share f (petrol) or to the standby share c0 (electric). */
  readonly friction: number;
}

const UNMEASURED_DRIVE: DriveFactors = { pitchShift: 0, fuel: 1, friction: 0 };

/** Wake and thrust deduction of small planing craft (Blount and Fox 1976 give factors near 1, from memory). */
const WAKE = 0.02;
const THRUST_DEDUCTION = 0.02;

export interface DriveOptions {
  /** Of the water, kg/m3. */
  readonly density: number;
  readonly form: HullForm;
  readonly factors?: DriveFactors;
  /** Full-throttle power of a petrol engine over rated: as measured, or 1 / `ambientCorrection`. */
  readonly fullPower?: number;
}

/** A drive made ready for many demands: propeller collapsed, factors and water chosen. */
export interface DriveModel {
  readonly propeller: PropellerModel;
  readonly pitchSlope: OpenWater;
  readonly engine: Engine;
  readonly wake: number;
  readonly thrustDeduction: number;
  readonly gearRatio: number;
  /** W at rated revs and full throttle, in the air of the day. */
  readonly fullPower: number;
  readonly revLimit: number;
}

/** A thrust demand met. One past full throttle is computed all the same; `held` says so. */
export interface DrivePoint {
  /** rev/s */
  readonly propellerRevs: number;
  readonly rpm: number;
  /** At the propshaft, W, and what full throttle gives at these revs. */
  readonly power: number;
  readonly available: number;
  readonly throttle: number;
  readonly revShare: number;
  /** Apparent, of the corrected pitch. */
  readonly slip: number;
  /** Thrust times boat speed over power. */
  readonly efficiency: number;
  /** kg/s of petrol, or W of electrical input before the battery's rate loss. */
  readonly flow: number;
  readonly held: boolean;
  /** The nearer of the two limits. */
  readonly limit: 'power' | 'revs';
}

export interface FlowGradient {
  readonly base: DrivePoint;
  /** Per N. */
  readonly dFlow_dResistance: number;
  /** Per m of pitch. */
  readonly dFlow_dPitch: number;
  readonly dFlow_dFuel: number;
  readonly dFlow_dFriction: number;
}

/**
 * Wake 0.02, or 0 for a catamaran with the leg between its hulls (common practice); thrust deduction 0.02. Leg drag is
 * part of the resistance, not of the drive.
 */
export function driveModel(drive: Drive, options: DriveOptions): DriveModel {
  const { pitchShift, fuel, friction } = options.factors ?? UNMEASURED_DRIVE;
  const propeller = { ...drive.propeller, pitch: drive.propeller.pitch + pitchShift };
  const engine = engineOf(drive, fuel, friction);
  return {
    propeller: propellerModel(propeller, options.density),
    pitchSlope: openWaterPitchSlope(propeller),
    engine,
    wake: options.form === 'inflatable-catamaran' ? 0 : WAKE,
    thrustDeduction: THRUST_DEDUCTION,
    gearRatio: drive.gearRatio,
    fullPower: drive.ratedPower * (drive.kind === 'petrol' ? (options.fullPower ?? 1) : 1),
    revLimit: engineRevLimit(engine),
  };
}

/**
 * Revs, power and flow for a resistance, N, at a speed through the water, m/s, from 0 up. Smooth in both (continuous
 * slope). Resistance below zero (wind from astern) is nearly no thrust, never negative power.
 */
export function drivePoint(model: DriveModel, resistance: number, speed: number): DrivePoint {
  return pointOf(model, demanded(model, resistance, speed), speed);
}

/** `drivePoint` with the exact slopes of its flow. */
export function flowGradient(model: DriveModel, resistance: number, speed: number): FlowGradient {
  const point = demanded(model, resistance, speed);
  const thrust = resistance / (1 - model.thrustDeduction);
  const shaft = propellerSlopes(model.propeller, model.pitchSlope, { thrust, point });
  const { byRevs, byTorque, byFuel, byFriction } = engineSlopes(model.engine, point.revs, point.torque);
  return {
    base: pointOf(model, point, speed),
    dFlow_dResistance: (byRevs * shaft.revsByThrust + byTorque * shaft.torqueByThrust) / (1 - model.thrustDeduction),
    dFlow_dPitch: byRevs * shaft.revsByPitch + byTorque * shaft.torqueByPitch,
    dFlow_dFuel: byFuel,
    dFlow_dFriction: byFriction,
  };
}

/** Flow with no thrust asked: kg/s of petrol in neutral, or W of standby and accessories. */
export function idleFlow(model: DriveModel): number {
  return engineIdleFlow(model.engine);
}

function demanded(model: DriveModel, resistance: number, speed: number): PropellerPoint {
  return propellerPoint(model.propeller, resistance / (1 - model.thrustDeduction), speed * (1 - model.wake));
}

function pointOf(model: DriveModel, point: PropellerPoint, speed: number): DrivePoint {
  const { engine, revLimit } = model;
  const { revs, power, torque, thrust } = point;
  const revShare = revs / engine.ratedRevs;
  const available = model.fullPower * engineLimitShare(engine, revShare);
  const throttle = power / available;
  return {
    propellerRevs: revs,
    rpm: revs * model.gearRatio * 60,
    power,
    available,
    throttle,
    revShare,
    slip: apparentSlip(revs, model.propeller.pitch, speed),
    efficiency: (thrust * speed) / power,
    flow: engineFlow(engine, revs, torque),
    held: throttle <= 1 && revShare <= revLimit,
    limit: throttle >= revShare / revLimit ? 'power' : 'revs',
  };
}
