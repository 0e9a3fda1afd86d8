/**
 * Correction factor of a petrol engine's power: available power is rated power over it. Dry air pressure kPa, air
 * temperature C. Source: SAE J1349 (June 1990) as quoted in trade articles. Consumption at a given power is unchanged.
 */
export function ambientCorrection(dryPressureKPa: number, airTemperatureC: number): number {
  return 1.18 * (99 / dryPressureKPa) * Math.sqrt((airTemperatureC + 273) / 298) - 0.18;
}
