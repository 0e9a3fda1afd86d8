/**
 * CdA that a leg 12.5 cm too deep for the transom adds, m2. Derived for this project from strut area and Cd 0.15-0.25;
 * the trade says 1-3 km/h at 30 km/h.
 */
export const DEEP_LEG_AREA = 0.0023;

/** Drag of the engine's leg in the water, N. Drag area CdA m2, speed m/s, water kg/m3. */
export function legDrag(dragArea: number, speed: number, density: number): number {
  return 0.5 * density * dragArea * speed * speed;
}
