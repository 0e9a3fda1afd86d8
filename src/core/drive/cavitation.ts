import type { Propeller } from '../craft/shapes.ts';
import { GRAVITY } from '../units/constants.ts';

/** Atmosphere, Pa, and vapour pressure of water at 15 C, Pa. */
const ATMOSPHERE = 101_325;
const VAPOUR = 1700;

/** Keller's k of a single screw (from memory; a fast twin screw has 0.1). */
const KELLER_SINGLE_SCREW = 0.2;

/** A propeller at work: thrust N, advance speed m/s, revs rev/s, shaft immersion m, water kg/m3. */
export interface LoadedPropeller {
  readonly propeller: Propeller;
  readonly thrust: number;
  readonly advanceSpeed: number;
  readonly revs: number;
  readonly immersion: number;
  readonly density: number;
}

export interface Cavitation {
  /** Cavitation number at 0.7 radius, and thrust load on the projected blade area. */
  readonly sigma: number;
  readonly load: number;
  /** Load past the line where it begins, and past 10 % back cavitation. A warning, never a power correction. */
  readonly begins: boolean;
  readonly heavy: boolean;
}

/**
 * Blade area ratio below which a propeller cavitates. Source: Keller's formula, secondary; k from memory.
 */
export function kellerAreaRatio(loaded: LoadedPropeller): number {
  const { propeller, thrust } = loaded;
  const pressure = shaftPressure(loaded) * propeller.diameter * propeller.diameter;
  return ((1.3 + 0.3 * propeller.blades) * thrust) / pressure + KELLER_SINGLE_SCREW;
}

/**
 * Burrill's diagram: load against 0.26 sigma^0.57 (curve fit in public code, secondary) and 0.494 sigma^0.88 (10 %
 * back cavitation, Gawn type sections, from memory).
 */
export function burrill(loaded: LoadedPropeller): Cavitation {
  const { propeller, thrust, advanceSpeed, revs, density } = loaded;
  const { diameter, pitch, areaRatio } = propeller;
  const swirl = 0.7 * Math.PI * revs * diameter;
  const dynamic = 0.5 * density * (advanceSpeed * advanceSpeed + swirl * swirl);
  const expanded = (areaRatio * Math.PI * diameter * diameter) / 4;
  const projected = expanded * (1.067 - (0.229 * pitch) / diameter);
  const sigma = shaftPressure(loaded) / dynamic;
  const load = thrust / (dynamic * projected);
  return { sigma, load, begins: load > 0.26 * sigma ** 0.57, heavy: load > 0.494 * sigma ** 0.88 };
}

function shaftPressure({ density, immersion }: LoadedPropeller): number {
  return ATMOSPHERE + density * GRAVITY * immersion - VAPOUR;
}
