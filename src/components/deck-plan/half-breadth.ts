import { ends, fullness, tubeDiameter } from '../../core/craft/plan-form.ts';
import type { Hull } from '../../core/craft/shapes.ts';

/** Length of the pointed bow of a catamaran's tube, as a share of the boat's (common practice, no source). */
const CONE = 0.34;

/** Share of the way along the pointed bow of a catamaran's tube: 0 where it begins, 1 at the tip. */
function alongCone(hull: Hull, x: number): number {
  const { bow } = ends(hull);
  const cone = CONE * hull.length;
  return Math.min(1, Math.max(0, (x - (bow - cone)) / cone));
}

/** Middle and radius of a catamaran's starboard tube at x, m; the bows turn in a little. */
export function catamaranTube(hull: Hull, x: number): { middle: number; radius: number } {
  const d = tubeDiameter(hull);
  const u = alongCone(hull, x);
  return { middle: hull.beam / 2 - d / 2 - 0.16 * d * u * u, radius: (d / 2) * (1 - u ** 2.1) ** 0.85 };
}

/** Half the breadth of the boat at x, m, seen from above; 0 beyond its ends. */
export function halfBreadth(hull: Hull, x: number): number {
  const { aft, bow } = ends(hull);
  if (x < aft || x > bow) return 0;
  if (hull.form === 'inflatable-catamaran') {
    const { middle, radius } = catamaranTube(hull, x);
    return middle + radius;
  }
  return (hull.beam / 2) * fullness(hull.form, (x - aft) / (bow - aft));
}
