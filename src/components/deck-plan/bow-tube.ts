import { ends, inflatable, tubeDiameter } from '../../core/craft/plan-form.ts';
import type { Hull } from '../../core/craft/shapes.ts';

/** Of what joins a catamaran's bows: how far it reaches behind and before its middle, in diameters of the tubes. */
const JOIN = { aft: 0.36, fore: 0.16 };
/** How much it is hollowed in the middle, m. */
export const HOLLOW = 0.05;
/** Depth of a foredeck behind the place marked on it, m. */
const FOREDECK = 0.3;

/** Where along the boat the bow tube or foredeck lies, m; `aft` is the tip of the bow where there is none. */
export function bowTubeFrom(hull: Hull): { aft: number; fore: number } {
  const { bow } = ends(hull);
  const d = tubeDiameter(hull);
  const station = hull.stations.find(({ use, x }) => use === 'bow-tube' && x > bow / 2 && x < bow);
  if (hull.form === 'inflatable-catamaran') {
    const middle = station?.x ?? bow - 0.6 * d;
    return { aft: middle - JOIN.aft * d, fore: Math.min(middle + JOIN.fore * d, bow - 0.1 * d) };
  }
  if (inflatable(hull.form)) return { aft: bow - d, fore: bow };
  return { aft: station ? station.x - FOREDECK : bow, fore: bow };
}
