import type { Battery } from '../craft/shapes.ts';
import { HOUR, WATT_HOUR } from '../units/convert.ts';
import { CHEMISTRIES, coldFactor } from './battery-chemistry.ts';
import { rateFactor } from './battery-rate.ts';
import { internalResistance } from './battery-sag.ts';

/** All batteries of one chemistry. Current parts by energy, so each of them works at the same rate. */
interface BankPart {
  /** Share of the bank's current. */
  readonly share: number;
  /** J when full, at its health and temperature, and the share of it that stays in. */
  readonly energy: number;
  readonly floor: number;
  /** W that empties it in the hours its printed capacity holds for. */
  readonly ratedPower: number;
  readonly peukert: number;
}

/** Batteries of one voltage side by side, at one temperature. */
export interface BatteryBank {
  /** J from full, before rate losses. */
  readonly usable: number;
  readonly nominalVoltage: number;
  /** At its health. */
  readonly capacityAh: number;
  /** Ohm */
  readonly resistance: number;
  /** A, when the first battery management cuts; Infinity when none is known. */
  readonly maxCurrent: number;
  readonly parts: readonly BankPart[];
}

/** Usable energy is nominal x health x use x cold factor; `temperatureC` is the batteries' own. */
export function batteryBank(batteries: readonly Battery[], temperatureC: number): BatteryBank {
  const alive = batteries.filter((battery) => healthyEnergy(battery) > 0);
  const total = sumOf(alive, healthyEnergy);
  if (total === 0) {
    return { usable: 0, nominalVoltage: 0, capacityAh: 0, resistance: Infinity, maxCurrent: 0, parts: [] };
  }
  const parts = [...new Set(alive.map((battery) => battery.chemistry))].map((chemistry) => {
    const { use, peukert, ratedHours } = CHEMISTRIES[chemistry];
    const energy = sumOf(
      alive.filter((battery) => battery.chemistry === chemistry),
      healthyEnergy,
    );
    return {
      share: energy / total,
      energy: energy * coldFactor(chemistry, temperatureC),
      floor: 1 - use,
      ratedPower: energy / (ratedHours * HOUR),
      peukert,
    };
  });
  const capacityAh = sumOf(alive, (battery) => healthyEnergy(battery) / WATT_HOUR / battery.voltage);
  const nominalVoltage = total / WATT_HOUR / capacityAh;
  return {
    usable: usableOf(parts, 1),
    nominalVoltage,
    capacityAh,
    resistance: internalResistance(nominalVoltage, capacityAh, temperatureC),
    maxCurrent: Math.min(
      ...alive.map((battery) => ((battery.maxCurrent ?? Infinity) * total) / healthyEnergy(battery)),
    ),
    parts,
  };
}

/** J that may be taken out from a charge of 0 to 1, before rate losses. */
export function usableCharge(bank: BatteryBank, charge: number): number {
  return usableOf(bank.parts, Math.min(Math.max(charge, 0), 1));
}

/** W drawn from the usable energy for an electrical power, W: each part times its rate factor. */
export function storeFlow(inputPower: number, bank: BatteryBank): number {
  let drawn = bank.parts.length > 0 ? 0 : inputPower;
  for (const { share, ratedPower, peukert } of bank.parts) {
    const power = share * inputPower;
    drawn += power * rateFactor(power / ratedPower, peukert);
  }
  return drawn;
}

function healthyEnergy(battery: Battery): number {
  return battery.energyWh * WATT_HOUR * battery.health;
}

function usableOf(parts: readonly BankPart[], charge: number): number {
  return sumOf(parts, ({ energy, floor }) => energy * Math.max(charge - floor, 0));
}

function sumOf<T>(list: readonly T[], figure: (entry: T) => number): number {
  return list.reduce((sum, entry) => sum + figure(entry), 0);
}
