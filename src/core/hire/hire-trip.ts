import type { Craft } from '../craft/shapes.ts';
import { craftFrom } from '../files/catalogue.ts';
import type { Trip } from '../trip/shapes.ts';
import { type HireRequest, hiredTrip } from './hired-trip.ts';
import { ownCraft } from './own-craft.ts';
import type { HireBoat } from './shapes.ts';

/** The trip behind a reserve check. */
export function hireTrip(request: HireRequest): Trip {
  return hiredTrip(hireCraft(request.boat), request);
}

/** What a boat is: its own figures, its profile, or parts of the catalogue. */
export function hireCraft(boat: HireBoat): Craft {
  if (boat.craft === undefined && boat.profile === undefined)
    return craftFrom(boat.hullId, boat.engineId, boat.storeId);
  return ownCraft(boat)!;
}
