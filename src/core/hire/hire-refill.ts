import type { Trials } from '../trials/shapes.ts';
import { hireCraft } from './hire-trip.ts';
import type { FuelNote, Hire, HireBoat } from './shapes.ts';

export interface Spent {
  readonly speed: number;
  readonly seconds: number;
}

/**
 * What a return tells of the boat's consumption; undefined where nobody knows how the amount was used. The weights of
 * a crew become equal ones, so that no hirer can be told from them.
 */
export function fuelNote(
  hire: Hire,
  boat: HireBoat,
  { day, planned }: { readonly day: string; readonly planned: readonly Spent[] },
): FuelNote | undefined {
  const { back, trip } = hire;
  if (!back?.amount || back.used === 'unknown') return undefined;
  const spent = back.used === 'as-planned' ? planned : [{ speed: boat.speed, seconds: back.used.running }];
  if (spent.every(({ seconds }) => seconds <= 0)) return undefined;
  const { items } = trip.load;
  const mass = items.reduce((sum, item) => sum + item.mass, 0) / Math.max(items.length, 1);
  const { sea } = trip.conditions;
  return {
    id: hire.id,
    boatId: boat.id,
    refill: {
      id: hire.id,
      day,
      setup: boat.profile?.usual ?? SETUP,
      load: { ...trip.load, items: items.map(({ name: _, ...item }) => ({ ...item, kind: 'adult', mass })) },
      spent,
      amount: back.amount,
      ...(typeof sea === 'object' && 'height' in sea && { waveHeight: sea.height }),
    },
  };
}

/** Setup of a boat that only a desk's notes have measured. */
const SETUP = 'desk';

/** A boat's evidence: its profile's, with the desk's own notes; undefined where there is none. */
export function deskTrials(boat: HireBoat, notes: readonly FuelNote[], water: 'sea' | 'fresh'): Trials | undefined {
  const refills = notes.filter(({ boatId }) => boatId === boat.id).map(({ refill }) => refill);
  if (boat.profile) {
    const { trials } = boat.profile;
    return refills.length === 0 ? trials : { ...trials, refills: [...trials.refills, ...refills] };
  }
  if (refills.length === 0) return undefined;
  const { hull, drive, store } = hireCraft(boat);
  return { hull, water, setups: [{ id: SETUP, drive, store }], runs: [], refills };
}
