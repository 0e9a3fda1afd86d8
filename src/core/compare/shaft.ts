import type { Drive, Hull } from '../craft/shapes.ts';
import { DEEP_LEG_AREA } from '../hull/leg-drag.ts';
import { SHAFT_LENGTH } from '../load/shaft-fit.ts';

type Shaft = NonNullable<Drive['shaft']>;

const SHAFTS = ['short', 'long', 'extra-long'] as const;
/** How much deeper `DEEP_LEG_AREA` stands for, m. */
const DEEP = 0.125;
/** A longer shaft weighs 1 to 3 kg more a step (common practice, no source). */
const STEP_MASS = 2;

/** The shaft class for a transom height, m: the one whose plate comes nearest to the bottom's level. */
export function shaftFor(transomHeight: number): Shaft {
  // Transoms are built about an inch higher than the shaft they are named for.
  return SHAFTS.reduce((best, next) => (off(next, transomHeight) < off(best, transomHeight) ? next : best));
}

function off(shaft: Shaft, transomHeight: number): number {
  return Math.abs(SHAFT_LENGTH[shaft] + 0.025 - transomHeight);
}

/**
 * How much deeper the engine's leg reaches than one made for this transom, m; negative: it hangs too high. Undefined
 * where transom or shaft are not known.
 */
export function legDepth({ transomHeight }: Hull, { shaft }: Drive): number | undefined {
  return transomHeight === undefined || shaft === undefined
    ? undefined
    : SHAFT_LENGTH[shaft] - SHAFT_LENGTH[shaftFor(transomHeight)];
}

/** The drive with the drag of a leg that reaches this much too deep, m; one that hangs too high drags as one that fits. */
export function withDeepLeg<T extends Drive>(drive: T, depth: number, area = DEEP_LEG_AREA): T {
  return depth > 0 ? { ...drive, legDragArea: drive.legDragArea + (area * depth) / DEEP } : drive;
}

/** The same engine with another shaft and its mass; a shaft that was not known counts as short. */
export function withShaft<T extends Drive>(drive: T, shaft: Shaft): T {
  const steps = SHAFTS.indexOf(shaft) - SHAFTS.indexOf(drive.shaft ?? 'short');
  return { ...drive, shaft, mass: drive.mass + steps * STEP_MASS };
}
