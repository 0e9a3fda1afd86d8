import type { BatteryBank } from './battery.ts';
import { openCircuitVoltage } from './battery-sag.ts';

/** Lowest terminal voltage over nominal (common practice, no source). */
const LEAST_VOLTAGE = 0.86;

/**
 * Highest power, W, at a charge of 0 to 1, by the least voltage and by the current limit of the battery management.
 * Falls with charge and cold; the bank carries its temperature.
 */
export function batteryPowerLimit(bank: BatteryBank, charge: number): number {
  if (bank.capacityAh <= 0) return 0;
  const open = openCircuitVoltage(bank.nominalVoltage, charge);
  const bySag = (open - LEAST_VOLTAGE * bank.nominalVoltage) / bank.resistance;
  const current = Math.max(Math.min(bySag, bank.maxCurrent), 0);
  return current * (open - current * bank.resistance);
}
