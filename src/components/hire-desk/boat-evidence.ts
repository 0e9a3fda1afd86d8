import { deskTrials } from '../../core/hire/hire-refill.ts';
import type { FuelNote, HireBoat } from '../../core/hire/shapes.ts';
import type { Trials } from '../../core/trials/shapes.ts';
import type { Trip } from '../../core/trip/shapes.ts';
import { measuredTrip } from '../planner/fitter.ts';

interface Known {
  readonly boat: HireBoat;
  readonly notes: readonly FuelNote[];
  readonly water: 'sea' | 'fresh';
  readonly trials: Trials | undefined;
}

/** The evidence of each boat, kept the same as long as nothing is added, so that its fit is made once. */
export class BoatEvidence {
  readonly #known = new Map<string, Known>();

  /** The trip as the boat's profile and the desk's own refills say it goes, as of an ISO date. */
  measured(trip: Trip, boat: HireBoat, all: readonly FuelNote[], day: string): Trip {
    const trials = this.#trialsOf(boat, all, trip.conditions.water);
    return trials ? measuredTrip({ ...trip, trials }, day).trip : trip;
  }

  #trialsOf(boat: HireBoat, all: readonly FuelNote[], water: 'sea' | 'fresh'): Trials | undefined {
    const notes = all.filter(({ boatId }) => boatId === boat.id);
    const known = this.#known.get(boat.id);
    if (known && known.water === water && same(known.boat, boat) && same(known.notes, notes)) return known.trials;
    const trials = deskTrials(boat, notes, water);
    this.#known.set(boat.id, { boat, notes, water, trials });
    return trials;
  }
}

/** Read anew from storage things are other objects, and the same. */
function same(a: unknown, b: unknown): boolean {
  return a === b || JSON.stringify(a) === JSON.stringify(b);
}
