import type { Answerable, LatLon } from '../route/shapes.ts';
import { prepareWaters, type Waters } from '../route/waters.ts';

/** Degrees about the start that the box reaches: farther than any hire of a day. */
const REACH = 4;

/**
 * Open water about a start, for hires that stay inside an area whose depth and dangers the desk answers for: nothing
 * in it stands in the way, and nothing outside it is claimed, since the hirer may not go there.
 */
export function areaWaters(name: string, { lat, lon }: LatLon, answerable: Answerable = {}): Waters {
  const wrapped = (degrees: number) => ((((degrees + 180) % 360) + 360) % 360) - 180;
  const bbox: [number, number, number, number] = [
    wrapped(lon - REACH),
    Math.max(lat - REACH, -85),
    wrapped(lon + REACH),
    Math.min(lat + REACH, 85),
  ];
  return prepareWaters({ type: 'FeatureCollection', name, bbox, ...answerable, features: [] });
}
