export interface Sag {
  /** A */
  readonly current: number;
  /** V at the terminals. */
  readonly voltage: number;
}

/** V at rest, at a charge of 0 to 1 (common practice, no source). */
export function openCircuitVoltage(nominalVoltage: number, charge: number): number {
  return nominalVoltage * (0.9 + 0.2 * charge);
}

/** Ohm, at the battery's own temperature, C (common practice, no source). */
export function internalResistance(nominalVoltage: number, capacityAh: number, temperatureC: number): number {
  return ((0.03 * nominalVoltage) / capacityAh) * Math.exp(0.015 * (25 - temperatureC));
}

/** Current and voltage that deliver `power`, W; undefined beyond what the source can give at any current. */
export function sag(openCircuit: number, resistance: number, power: number): Sag | undefined {
  const root = openCircuit * openCircuit - 4 * resistance * power;
  if (root < 0) return undefined;
  // The stable form: it stays exact when resistance goes to zero.
  const current = (2 * power) / (openCircuit + Math.sqrt(root));
  return { current, voltage: openCircuit - current * resistance };
}
