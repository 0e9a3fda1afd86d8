import type { Craft, Drive, Hull, Plate, Store } from '../craft/shapes.ts';
import type { Band } from '../curve/shapes.ts';
import type { Reason } from '../trip/shapes.ts';

/** What somebody wants a boat for; kg, m, m/s, C. */
export interface Use {
  /** Mass of everybody, the one at the helm first. */
  readonly crew: readonly number[];
  readonly gear: number;
  /** Out and home together. */
  readonly distance: number;
  readonly water: 'sea' | 'fresh';
  /** Significant; 0 is flat. */
  readonly waveHeight: number;
  /** Through the water; absent: each hull's own easy speed without planing. */
  readonly speed?: number | undefined;
  /** What one person may carry to the water; absent: there is a trailer or a berth. */
  readonly carry?: number | undefined;
  readonly energy: 'petrol' | 'electric' | 'either';
  readonly batteryTemperatureC: number;
}

/** Boats, engines, tanks and batteries to choose from. */
export interface Catalogue {
  readonly hulls: readonly { readonly id: string; readonly hull: Hull; readonly typicalPlate: Plate }[];
  readonly engines: readonly { readonly id: string; readonly drive: Drive }[];
  readonly stores: readonly { readonly id: string; readonly store: Store }[];
  craftFrom(hullId: string, engineId: string, storeId: string): Craft;
}

export type Piece = 'hull' | 'engine' | 'tank' | 'battery';

/** Why a combination falls out or is in doubt: a reason of the trip's plan, or one of ours. */
export type SuitReason =
  | { readonly kind: 'plan'; readonly reason: Reason }
  /** kg each carrier would have, and may have. */
  | { readonly kind: 'carry'; readonly piece: Piece; readonly value: number; readonly limit: number }
  | { readonly kind: 'seats'; readonly value: number; readonly limit: number }
  | { readonly kind: 'no-store' };

export type Standing = 'fits' | 'doubtful' | 'out';

/** The trip of the use with one combination. */
export interface SuitTrip {
  readonly store: 'fuel' | 'charge';
  readonly usable: number;
  readonly reserve: number;
  readonly need: Band;
  readonly left: Band;
  /** That the reserve stays whole. */
  readonly probability: number;
  /** Out and home, with the reserve kept, m. */
  readonly range: number;
  /** Through the water on the way out, m/s, and how the boat runs there. */
  readonly speed: number;
  readonly planing: boolean;
  readonly time: number;
}

/** One hull with one engine and the tank or battery that serves best with them. */
export interface Suited {
  readonly hullId: string;
  readonly engineId: string;
  /** Absent: it fell out before any was looked at. */
  readonly storeId?: string;
  readonly craft?: Craft;
  /** Of the propeller against the usual one, m. */
  readonly pitchChange: number;
  readonly standing: Standing;
  /** The worst first. */
  readonly reasons: readonly SuitReason[];
  readonly trip?: SuitTrip;
  /** Hull, engine, full tanks or batteries, kg. */
  readonly mass: number;
  /** What the heaviest piece for one person weighs, and the hull for each who carries it, kg. */
  readonly heaviest: number;
  readonly hullShare: number;
}
