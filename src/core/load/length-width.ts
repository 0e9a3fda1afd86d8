import type { HullForm } from '../craft/shapes.ts';
import { FOOT, POUND } from '../units/convert.ts';

/** Whether the rule of thumb covers the boat: rigid monohulls under 20 ft, without a plate, in fair weather. */
export function lengthWidthCovers(form: HullForm, length: number): boolean {
  const rigid = form === 'rigid-v' || form === 'rigid-flat' || form === 'displacement';
  return rigid && length < 20 * FOOT;
}

export interface LengthWidthPersons {
  readonly persons: number;
  /** kg */
  readonly mass: number;
}

/** Persons by length times width in feet over 15, rounded down, at 150 lb each (US state boating study guides); m in. */
export function lengthWidthPersons(length: number, width: number): LengthWidthPersons {
  // Feet made of metres may fall just short of a whole person.
  const persons = Math.floor(((length / FOOT) * (width / FOOT)) / 15 + 1e-9);
  return { persons, mass: persons * 150 * POUND };
}
