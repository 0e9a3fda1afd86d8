import { ends, tubeDiameter } from '../../core/craft/plan-form.ts';
import type { Hull, Position } from '../../core/craft/shapes.ts';
import { bowTubeFrom, HOLLOW } from './bow-tube.ts';
import { halfBreadth } from './half-breadth.ts';
import type { Spot } from './hull-plan.ts';

/** A centre of mass stays this far inside the edge, m: half of one who sits on a tube hangs outside already. */
const EDGE = 0.1;

/** The nearest spot aboard along and across the boat, in whole centimetres; one aboard already stays where it is. */
export function aboardAt(hull: Hull, { x, y }: Spot): Spot {
  const { aft, fore } = reach(hull);
  const along = within(whole(x), aft, fore);
  const side = sideAt(hull, along);
  return { x: along, y: within(whole(y), -side, side) };
}

/** How far aft and forward something can stand, m, in whole centimetres. */
export function reach(hull: Hull): { aft: number; fore: number } {
  const { bow } = ends(hull);
  const d = tubeDiameter(hull);
  const fore = hull.form === 'inflatable-catamaran' ? bowTubeFrom(hull).fore - HOLLOW : bow - Math.max(d / 2, 3 * EDGE);
  return { aft: EDGE, fore: Math.max(EDGE, Math.floor(fore * 100) / 100) };
}

/** How far from the middle line something can stand at x, m, in whole centimetres. */
export function sideAt(hull: Hull, x: number): number {
  return Math.max(0, Math.floor((halfBreadth(hull, x) - EDGE) * 100) / 100);
}

/** Whether a place given by somebody else, such as a file, is on the boat at all. */
export function outside(hull: Hull, { x, y }: Position): boolean {
  const { aft, bow } = ends(hull);
  return x < aft || x > bow || Math.abs(y) > Math.max(halfBreadth(hull, x), EDGE);
}

function within(value: number, least: number, most: number): number {
  return Math.min(most, Math.max(least, value));
}

function whole(value: number): number {
  return Math.round(value * 100) / 100 + 0;
}
