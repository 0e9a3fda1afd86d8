import type { HullForm } from '../craft/shapes.ts';
import { FOOT, HORSEPOWER, INCH, POUND } from '../units/convert.ts';

/** How the boat is driven, as the US rule tells them apart. */
export type UsRating = 'outboard' | '2hp-or-less' | 'manual';

/** Whether 33 CFR 183 subparts C and D cover the boat: monohulls under 20 ft, no inflatables (183.3, and its scope as a boatbuilding guide gives it). */
export function usRuleCovers(form: HullForm, length: number): boolean {
  const monohull = form === 'rigid-v' || form === 'rigid-flat' || form === 'displacement';
  return monohull && length < 20 * FOOT;
}

/**
 * Maximum weight capacity, kg of persons, motor and gear, from the displacement at which water first comes in and the
 * boat's own mass, kg (33 CFR 183.35 for outboards, 183.37 for the others; both from memory).
 */
export function usMaxLoad(maxDisplacement: number, boatMass: number, rating: UsRating): number {
  const carried = Math.max(0, maxDisplacement - boatMass);
  return rating === 'outboard' ? carried / 5 : 0.3 * carried;
}

export interface UsOutboardPersons {
  /** Maximum weight capacity, kg. */
  readonly maxLoad: number;
  /** Motor, controls, battery and full portable tank, kg, by the rule's table. */
  readonly motorMass: number;
  /** Mass along one side at which water just does not come in, kg, where it was tried. */
  readonly sideMass?: number;
}

/** Persons capacity of an outboard boat, kg (33 CFR 183.41(a)). Undefined: small enough to need the side test, which is missing. */
export function usPersonsMassOutboard({ maxLoad, motorMass, sideMass }: UsOutboardPersons): number | undefined {
  const left = Math.max(0, maxLoad - motorMass);
  if (left >= 550 * POUND) return left;
  return sideMass === undefined ? undefined : Math.min(left, usPersonsMassBySide(sideMass));
}

/** Persons capacity, kg, by the side test (33 CFR 183.41(a)). */
export function usPersonsMassBySide(sideMass: number): number {
  return sideMass / 0.6;
}

/** Persons capacity, kg, of a boat rowed or with up to 2 hp, from its maximum weight capacity, kg (33 CFR 183.43). */
export function usPersonsMass(maxLoad: number, rating: 'manual' | '2hp-or-less'): number {
  return Math.max(0, 0.9 * maxLoad - (rating === 'manual' ? 0 : 25 * POUND));
}

/** Whole persons for a persons capacity, kg (33 CFR 183.41(b), 183.43(c)); embodies 141 lb a person, low today. */
export function usPersons(personsMass: number): number {
  return personsMass > 0 ? Math.floor((personsMass / POUND + 32) / 141 + 0.5 + ROUNDING) : 0;
}

export interface UsPowerBoat {
  /** m */
  readonly length: number;
  /** m; without a full transom the broadest beam in the aftermost quarter. */
  readonly transomWidth: number;
  readonly remoteSteering: boolean;
  /** m */
  readonly transomHeight: number;
  readonly flatBottomHardChine: boolean;
}

export interface UsPower {
  /** Length times transom width, ft2. */
  readonly factor: number;
  /** W */
  readonly maxPower: number;
}

/** Highest factor of each row, and its horsepower (33 CFR Table 183.53). */
const POWER_ROWS = [
  [35, 3],
  [39, 5],
  [42, 7.5],
  [45, 10],
  [52, 15],
] as const;

/** Feet made of metres miss whole numbers by less than this. */
const ROUNDING = 1e-9;

/** Highest outboard power (33 CFR 183.53), formula results raised to the next 5 hp as it allows. */
export function usMaxPower(boat: UsPowerBoat): UsPower {
  const factor = (boat.length / FOOT) * (boat.transomWidth / FOOT);
  const nearest = Math.floor(factor + 0.5 + ROUNDING);
  const row = POWER_ROWS.findIndex(([upTo]) => nearest <= upTo);
  const horsepower = row >= 0 ? byTable(row, boat) : byFormula(factor, boat);
  return { factor, maxPower: horsepower * HORSEPOWER };
}

/** A flat bottom with hard chines takes one row less; the first row has none below. */
function byTable(row: number, { flatBottomHardChine }: UsPowerBoat): number {
  return POWER_ROWS[flatBottomHardChine ? Math.max(0, row - 1) : row]![1];
}

function byFormula(factor: number, { remoteSteering, transomHeight, flatBottomHardChine }: UsPowerBoat): number {
  const steady = remoteSteering && transomHeight >= 20 * INCH - ROUNDING;
  const raw = steady ? 2 * factor - 90 : flatBottomHardChine ? 0.5 * factor - 15 : 0.8 * factor - 25;
  return Math.ceil(raw / 5 - ROUNDING) * 5;
}
