import { craftFrom } from '../../core/files/catalogue.ts';
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

const ORIGIN = { hullId: 'catamaran-3-6', engineId: 'petrol-15hp-4s', storeId: 'tank-12' } as const;

/** What a newcomer sees: an example boat with one adult at the helm, no route, and nothing said about the day. */
export function firstDraft(): Draft {
  const craft = craftFrom(ORIGIN.hullId, ORIGIN.engineId, ORIGIN.storeId);
  const helm = craft.hull.stations.find((station) => station.use === 'helm');
  return {
    origin: ORIGIN,
    trip: {
      version: 1,
      craft,
      load: { items: [{ id: 'p1', kind: 'adult', mass: 85, station: helm?.id, helm: true }] },
      route: { shape: 'out-and-home', waypoints: [], speed: 'best-planing' },
      conditions: { water: 'sea' },
      policy: { reserve: [{ kind: 'thirds' }] },
    },
  };
}
