import type { Drive, Hull, Plate, Store } from '../craft/shapes.ts';
import type { Band } from '../curve/shapes.ts';
import type { LatLon, Route, WatersFile, Waypoint } from '../route/shapes.ts';
import type { BoatProfile, Refill } from '../trials/shapes.ts';
import type { Amount, Trip, Verdict } from '../trip/shapes.ts';
import type { Conditions } from '../water/shapes.ts';

/** A boat of a hire desk, with the plate as the desk read it: from shipped parts, from its own figures, or as measured. */
export type HireBoat = HiredOut & (ShippedParts | OwnFigures | Measured);

export interface HiredOut {
  readonly id: string;
  readonly name: string;
  /** Speed through the water it is hired out for, m/s. */
  readonly speed: number;
  readonly plate: Plate | 'none';
}

interface ShippedParts {
  readonly hullId: string;
  readonly engineId: string;
  readonly storeId: string;
  readonly craft?: undefined;
  readonly profile?: undefined;
}

interface OwnFigures {
  readonly craft: { readonly hull: Hull; readonly drive: Drive; readonly store: Store };
  readonly profile?: undefined;
}

interface Measured {
  readonly profile: BoatProfile;
  readonly craft?: undefined;
}

export interface HireRoute {
  readonly id: string;
  readonly name: string;
  readonly shape: Route['shape'];
  readonly waypoints: readonly Waypoint[];
}

/** The boats of a desk and who answers for what is said of them. */
export interface Fleet {
  readonly format: 'homeleg-fleet';
  readonly version: 1;
  readonly name: string;
  /** Who answers for boats, plates, routes and area. */
  readonly answers: string;
  /** Days, ISO dates: when that was looked over, and the last day on which it may be relied on. */
  readonly surveyed: string;
  readonly until: string;
  /** Whom a hirer calls, and whom the desk calls for rescue. */
  readonly call?: string;
  readonly rescue?: string;
  /** Where boats without a set route may go, in words a hirer keeps to; the desk answers for depth and dangers in it. */
  readonly area?: string;
  /** Where the desk lies; for daylight. Absent: where the first set route starts. */
  readonly at?: LatLon;
  /** Local waters of the routes: the name of shipped ones, or their own. */
  readonly waters?: string;
  readonly localWaters?: WatersFile;
  /** Address at which a hirer's phone finds the planner, when it is not that of this page. */
  readonly site?: string;
  readonly note?: string;
  readonly boats: readonly HireBoat[];
  readonly routes: readonly HireRoute[];
}

/** What the hirer has done before, by which the desk's limits are chosen. */
export type Experience = 'new' | 'some' | 'used';
export const EXPERIENCES: readonly Experience[] = ['new', 'some', 'used'];

/** m/s of mean wind and m of waves; absent: no limit of the desk beyond the usual ones. */
export interface Limits {
  readonly maxWind?: number;
  readonly maxWave?: number;
}

/** What the desk sets once a day. Times are s since 1970. */
export interface Morning {
  readonly setAt: number;
  /** Past this nothing in it counts as known. */
  readonly until: number;
  readonly conditions: Conditions;
  /** Every boat back by then. */
  readonly lastReturn?: number;
  readonly limits: Readonly<Record<Experience, Limits>>;
  /** How long an answer may wait for the departure, s. */
  readonly slipLife: number;
}

/** When a boat is due: so long after the actual departure, s, or at a time. */
export type DueRule =
  | { readonly kind: 'after'; readonly seconds: number }
  | { readonly kind: 'at'; readonly time: number };

/** What is shown and initialled at the handover. */
export type HandoverPoint = 'plate' | 'kill-cord' | 'jackets' | 'reverse-stop' | 'paddles' | 'area' | 'return' | 'call';
export const HANDOVER: readonly HandoverPoint[] = [
  'plate',
  'kill-cord',
  'jackets',
  'reverse-stop',
  'paddles',
  'area',
  'return',
  'call',
];

/** The answer as the hirer got it. Amounts kg or J, times s from departure. */
export interface Told {
  readonly verdict: Verdict;
  /** Why, in the words shown then. */
  readonly lines: readonly string[];
  readonly store: 'fuel' | 'charge';
  readonly full: Amount;
  /** Aboard at departure, unusable rest included; absent: not known. */
  readonly start?: Amount;
  readonly left: Band;
  readonly reserve: Amount;
  readonly time: number;
  readonly distance: number;
  /** Aboard at the turn, unusable rest included: with less, turn at once. */
  readonly turnWith?: Amount;
  readonly turnAfter?: number;
}

/** One boat going out, from the check to the return. Times are s since 1970. */
export interface Hire {
  readonly id: string;
  readonly boatId: string;
  readonly boat: string;
  /** Name of the set route; absent: the time allowed, inside the area. */
  readonly route?: string;
  readonly area?: string;
  readonly trip: Trip;
  readonly experience: Experience;
  readonly rule: DueRule;
  readonly lastReturn?: number;
  readonly told: Told;
  readonly checkedAt: number;
  readonly validUntil: number;
  /** Initials of who showed it. */
  readonly shown: Readonly<Partial<Record<HandoverPoint, string>>>;
  /** How to reach the hirer, if the desk wants to know. */
  readonly contact?: string;
  readonly leftAt?: number;
  readonly due?: number;
  readonly returnedAt?: number;
  readonly back?: ReturnNote;
}

/** What was noted at the return. */
export interface ReturnNote {
  /** kg or J put back. */
  readonly amount?: Amount;
  /** How the amount was used: as planned, at the hire speed for so long (s), or nobody knows. */
  readonly used: 'as-planned' | 'unknown' | { readonly running: number };
  readonly note?: string;
}

/** What a return tells of the boat's consumption; nothing in it tells one hirer from another. */
export interface FuelNote {
  readonly id: string;
  readonly boatId: string;
  readonly refill: Refill;
}
