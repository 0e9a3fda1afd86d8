import first from '../../../shared/trips/first.json' with { type: 'json' };
import type { Trip } from '../../core/trip/shapes.ts';

/** Which shipped example the boat, engine and store of a trip came from; absent once they are the owner's own. */
export interface CraftOrigin {
  readonly hullId?: string | undefined;
  readonly engineId?: string | undefined;
  readonly storeId?: string | undefined;
}

export interface Draft {
  readonly trip: Trip;
  readonly origin: CraftOrigin;
}

/** What a newcomer sees: an example boat with one adult at the helm, no route, and nothing said about the day. */
export function firstDraft(): Draft {
  // A test holds the file against the catalogue and the trip's own door.
  return first as Draft;
}
