import { KMH, KNOT, MPH } from './convert.ts';

/** Units in which forecasts tell the wind. */
export const WIND_UNITS = ['m/s', 'kn', 'km/h', 'mph', 'Bft'] as const;
export type WindUnit = (typeof WIND_UNITS)[number];

const FACTORS = { 'm/s': 1, kn: KNOT, 'km/h': KMH, mph: MPH };

/**
 * Wind in a unit as m/s. A Beaufort force by the scale's formula 0.836 B^1.5 (from memory), within 0.1 m/s of the middles of
 * its classes up to force 8.
 */
export function windSpeed(value: number, unit: WindUnit): number {
  return unit === 'Bft' ? 0.836 * value ** 1.5 : value * FACTORS[unit];
}
