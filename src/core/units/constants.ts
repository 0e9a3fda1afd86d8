/** Standard gravity, m/s2 (CGPM 1901). */
export const GRAVITY = 9.80665;

/** Air density, kg/m3 (ISO 2533 standard atmosphere at sea level). */
export const AIR_DENSITY = 1.225;

export interface Water {
  /** kg/m3 */
  readonly density: number;
  /** Kinematic viscosity, m2/s. */
  readonly viscosity: number;
}

/** Sea water at 15 C (ITTC fresh and sea water properties, from memory). */
export const SEA_WATER: Water = { density: 1025, viscosity: 1.19e-6 };

/** Fresh water at 15 C (ITTC fresh and sea water properties, from memory). */
export const FRESH_WATER: Water = { density: 1000, viscosity: 1.14e-6 };

/** Petrol, kg/L. EN 228 allows 0.720 to 0.775 (from memory); 6.2 lb per US gallon is 0.743. */
export const PETROL_DENSITY = 0.745;
