import type { Craft } from '../craft/shapes.ts';

/** Transom heights that shafts are made for, m (outboard sizing guides: 15, 20 and 25 in). */
export const SHAFT_LENGTH = { short: 0.381, long: 0.508, 'extra-long': 0.635 } as const;

/** The plate above the propeller lies level with the bottom, or this much off as trials show, m (outboard sizing guides). */
const TOLERANCE = 0.025;
/** A transom cut for a shaft is a little higher than its name; so far it still fits, m (common practice, no source). */
const CUT = 0.05;

export interface ShaftFit {
  readonly fit: 'fits' | 'too-long' | 'too-short';
  /** m */
  readonly shaft: number;
  readonly transom: number;
  /** Plate below the bottom of the boat, m; above it where negative. */
  readonly below: number;
}

/** Whether the engine's leg suits the transom; undefined where the record gives only one of them. */
export function shaftFit({ hull, drive }: Craft): ShaftFit | undefined {
  if (hull.transomHeight === undefined || drive.shaft === undefined) return undefined;
  const shaft = SHAFT_LENGTH[drive.shaft];
  const transom = hull.transomHeight;
  const below = shaft - transom;
  const fit = below > TOLERANCE + CUT ? 'too-long' : below < -(TOLERANCE + CUT) ? 'too-short' : 'fits';
  return { fit, shaft, transom, below };
}
