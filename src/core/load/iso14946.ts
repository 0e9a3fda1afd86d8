import type { HullForm } from '../craft/shapes.ts';

/** Mass of one adult and one child, kg, for checking a plate only (ISO 14946:2021, clause 5); planning wants real masses. */
const ADULT = 75;
const CHILD = 37.5;

/** Filling that the standard counts for tanks (ISO 14946:2021, clause 5). */
const TANK_FILLING = 0.95;

/** Whether ISO 14946 covers the boat: any form, hull length up to 24 m. */
export function iso14946Covers(_form: HullForm, length: number): boolean {
  return length <= 24;
}

/** Mass of the crew, kg, children being up to 37.5 kg each (ISO 14946:2021, clause 5). */
export function isoCrewMass(adults: number, children: number): number {
  return adults * ADULT + children * CHILD;
}

/** Load, kg: crew and everything else carried, kg (ISO 14946:2021, clause 5). */
export function isoLoad(adults: number, children: number, other: number): number {
  return isoCrewMass(adults, children) + other;
}

/** Mass counted for a tank's contents, kg, from its capacity, L, and the liquid's density, kg/L. */
export function isoTankContents(capacityL: number, density: number): number {
  return TANK_FILLING * capacityL * density;
}
