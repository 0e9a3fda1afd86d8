import { AIR_DENSITY } from '../units/constants.ts';

/**
 * Air drag along the course, N; negative when a tail wind faster than the boat pushes. Area m2, speeds m/s, headwind
 * positive from ahead. Drag coefficient 0.9 and about 0.40 + 0.15 m2 per person for open boats (common practice, no
 * source).
 */
export function airDrag(
  area: number,
  dragCoefficient: number,
  { speed, headwind }: { readonly speed: number; readonly headwind: number },
): number {
  const apparent = speed + headwind;
  return 0.5 * AIR_DENSITY * dragCoefficient * area * apparent * Math.abs(apparent);
}
