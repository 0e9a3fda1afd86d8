import type { EngineCycle, PetrolDrive } from '../craft/shapes.ts';

interface FuelDefaults {
  /** b: full-throttle consumption at 11.2 kW, g/kWh. */
  readonly consumption: number;
  /** m: b grows as rated power to this. */
  readonly sizeExponent: number;
  /** f: friction and pumping share. */
  readonly friction: number;
  /** g: how friction bends away from growing as revs. */
  readonly growth: number;
  /** e: full-throttle enrichment. */
  readonly enrichment: number;
  /** Idle over rated revs. */
  readonly idle: number;
}

/**
 * Derived for this project: b and m from full-throttle rules of the trade and the US EPA NONROAD2008 averages over
 * the E4 cycle; f and idle revs are common practice, no source. g and e: friction over a turn grows with speed
 * (Barnes-Moss 1975 in Heywood 1988, Internal Combustion Engine Fundamentals, from memory), and a mixture a seventh
 * richer at full throttle than at cruise costs e of about 0.2; held against two carburetted four-strokes on their
 * propeller curve (see the published tests of part load). Nothing measured at part load speaks against the plain line
 * for carburetted two-strokes.
 */
const FUEL_DEFAULTS: Readonly<Record<EngineCycle, FuelDefaults>> = {
  '4s-carb': { consumption: 380, sizeExponent: -0.06, friction: 0.55, growth: 0.8, enrichment: 0.2, idle: 0.16 },
  '4s-efi': { consumption: 345, sizeExponent: -0.06, friction: 0.45, growth: 0.8, enrichment: 0.2, idle: 0.14 },
  '2s-carb': { consumption: 515, sizeExponent: -0.12, friction: 1.2, growth: 0, enrichment: 0.12, idle: 0.17 },
  '2s-di': { consumption: 350, sizeExponent: -0.06, friction: 0.55, growth: 0.8, enrichment: 0.2, idle: 0.13 },
};

/** Rated power the consumption defaults hold at, W. */
const REFERENCE_POWER = 11_200;

/** kg/J in a g/kWh. */
const GRAM_PER_KWH = 1e-3 / 3.6e6;

/** Share of rated revs the ignition cuts at (common practice, no source: 1.08 to 1.10). */
export const PETROL_REV_LIMIT = 1.08;

/** Fuel flow of one engine as (q + f t(nu) + e q^3) x scale, t = nu - g nu^3 (1 - nu), never below idle. */
export interface FuelLaw {
  /** kg/s */
  readonly scale: number;
  readonly friction: number;
  readonly growth: number;
  readonly enrichment: number;
  /** Idle over rated revs. */
  readonly idle: number;
}

export interface FlowSlopes {
  /** kg/s per share of rated power, of rated revs, and per unit of the friction share f. */
  readonly byPower: number;
  readonly byRevs: number;
  readonly byFriction: number;
}

/** `fuel` multiplies consumption, `friction` adds to f (never below 0); 1 and 0 for an unmeasured engine. */
export function fuelLaw(drive: PetrolDrive, fuel = 1, friction = 0): FuelLaw {
  const defaults = FUEL_DEFAULTS[drive.cycle];
  const f = Math.max(defaults.friction + friction, 0);
  const grams = defaults.consumption * (drive.ratedPower / REFERENCE_POWER) ** defaults.sizeExponent;
  const full = fuel * grams * GRAM_PER_KWH * drive.ratedPower;
  return {
    scale: full / (1 + f + defaults.enrichment),
    friction: f,
    growth: defaults.growth,
    enrichment: defaults.enrichment,
    idle: defaults.idle,
  };
}

/**
 * Fuel flow, kg/s, at shares of rated power and revs: a Willans line with friction growing with speed, enrichment
 * near full throttle, and friction that never falls below that of idle. Fuel-rate models linear in power hold within
 * 5 % outside enrichment (SAE 1999, Spark-ignition engine fuel consumption modeling, abstract).
 */
export function fuelFlow(law: FuelLaw, powerShare: number, revShare: number): number {
  const enriched = 1 + law.enrichment * powerShare * powerShare;
  return law.scale * (powerShare * enriched + law.friction * turning(law, revShare));
}

export function fuelFlowSlopes(law: FuelLaw, powerShare: number, revShare: number): FlowSlopes {
  const turned = turning(law, revShare);
  const flow = law.scale * (powerShare * (1 + law.enrichment * powerShare * powerShare) + law.friction * turned);
  const r = dragged(law, revShare) / turned;
  const steepness = 1 - law.growth * revShare * revShare * (3 - 4 * revShare);
  return {
    byPower: law.scale * (1 + 3 * law.enrichment * powerShare * powerShare),
    byRevs: law.scale * law.friction * steepness * r * r * r * r * r * r * r,
    byFriction: law.scale * turned - flow / (1 + law.friction + law.enrichment),
  };
}

/** Flow with the engine running and no thrust, kg/s; small carburetted engines +-50 % (common practice, no source). */
export function idleFuelFlow(law: FuelLaw): number {
  return fuelFlow(law, 0, 0);
}

/**
 * Full-throttle power over rated power: nu + nu^2 - nu^3 from 0.3 to 1.1 of rated revs (Artamonov's form for petrol
 * engines, from memory). Below, the same cubic goes to 0 at rest; above, it falls off smoothly and stays positive.
 */
export function fullThrottleShare(revShare: number): number {
  if (revShare > 1.1) return 0.979 / (1 + (0.43 / 0.979) * (revShare - 1.1));
  return revShare * (1 + revShare - revShare * revShare);
}

/** Friction over that at rated revs. */
function dragged({ growth }: FuelLaw, revShare: number): number {
  return revShare * (1 - growth * revShare * revShare * (1 - revShare));
}

/** (t^8 + idle^8)^(1/8): friction, but never below that of idle. */
function turning(law: FuelLaw, revShare: number): number {
  const t = dragged(law, revShare);
  const a = t * t;
  const b = law.idle * law.idle;
  return Math.sqrt(Math.sqrt(Math.sqrt(a * a * (a * a) + b * b * (b * b))));
}
