import { inflatable } from '../craft/plan-form.ts';
import type { HullForm } from '../craft/shapes.ts';

/** Tube volume, m3, and floor, m2, that a liferaft needs for one 75 kg person (liferaft capacity comparison sheet). */
const VOLUME_PER_PERSON = 0.096;
const FLOOR_PER_PERSON = 0.372;

/** Whether the comparison means anything: inflatables only. */
export function liferaftSanityCovers(form: HullForm, _length: number): boolean {
  return inflatable(form);
}

export interface LiferaftPersons {
  readonly byVolume: number;
  readonly byFloor: number;
  readonly persons: number;
}

/**
 * Persons a liferaft of this tube volume, m3, and floor, m2, would take. A ceiling for sanity, never an allowance: a
 * boat with an engine must stay well below (common practice).
 */
export function liferaftPersons(tubeVolume: number, floorArea: number): LiferaftPersons {
  const byVolume = Math.floor(tubeVolume / VOLUME_PER_PERSON);
  const byFloor = Math.floor(floorArea / FLOOR_PER_PERSON);
  return { byVolume, byFloor, persons: Math.min(byVolume, byFloor) };
}
