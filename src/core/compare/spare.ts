import { largestHolding } from '../trip/bisect.ts';
import { heaviestFloating } from '../trip/floating.ts';
import type { Loaded } from './loaded.ts';
import { planing } from './planing.ts';

/** kg; negative: so much has to stay ashore. */
export interface Spare {
  /** What plate and floating allow on top. */
  readonly extra: number;
  readonly binds: 'plate' | 'floating' | 'search-limit';
  /** No plate was read: what floats is no leave to load it. */
  readonly plateKnown: boolean;
  /** What may come aboard and the boat still planes surely; undefined: not even with nobody aboard. */
  readonly planing: number | undefined;
}

/** No small open boat is asked to take more than this on top, kg. */
const SEARCH_LIMIT = 600;
const STEP = 1;

/** What may still come aboard, at the boat's own centre of gravity. Consumption is another matter. */
export function spare(loaded: Loaded): Spare {
  const { craft, boat, afloat, balance } = loaded;
  const { plate } = craft.hull;
  const allowed = plate && plate !== 'none' ? plate.maxLoad : undefined;
  const byPlate = allowed === undefined ? Infinity : allowed - balance.counted;
  const byFloating = heaviestFloating({ trip: { craft }, density: boat.water.density }, 'go') - afloat.mass;
  const extra = Math.min(byPlate, byFloating, SEARCH_LIMIT);
  const planes = (kg: number) =>
    planing({ ...loaded, afloat: { ...afloat, mass: afloat.mass + kg } }).planes === 'planes';
  return {
    extra,
    binds: extra === byPlate ? 'plate' : extra === byFloating ? 'floating' : 'search-limit',
    plateKnown: allowed !== undefined,
    planing: largestHolding(planes, -balance.peopleAndGear, SEARCH_LIMIT, STEP),
  };
}
