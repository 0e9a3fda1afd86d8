import type { Route } from '../../core/route/shapes.ts';
import type { Plan, Trip, Verdict } from '../../core/trip/shapes.ts';
import { tripText } from './trip-text.ts';

/** A new plan is ready; `plan` is undefined while the trip is incomplete. */
export type PlanEvent = CustomEvent<{ trip: Trip; plan: Plan | undefined }>;
/** The answer became another one. */
export type VerdictEvent = CustomEvent<{ verdict: Verdict | undefined; before: Verdict | undefined }>;
/** The route became another one. */
export type RouteEvent = CustomEvent<{ route: Route }>;
/** As what a trip leaves: a file, a file of its route or plan, on paper, a link, a message, a code to scan. */
export type TripWay = 'file' | 'gpx' | 'geojson' | 'text' | 'calendar' | 'print' | 'link' | 'message' | 'code';
/** The user handed the trip on; `text` is the trip as a trip file. */
export type TripEvent = CustomEvent<{ trip: Trip; text: string; way: TripWay }>;

declare global {
  interface HTMLElementEventMap {
    'homeleg-plan': PlanEvent;
    'homeleg-verdict': VerdictEvent;
    'homeleg-route': RouteEvent;
    'homeleg-trip': TripEvent;
  }
}

/** Tells the page that a trip was handed on. */
export function tellTrip(from: HTMLElement, trip: Trip, way: TripWay): void {
  tellPage(from, 'homeleg-trip', { trip, text: tripText(trip), way });
}

/** Tells the page what happened, across all shadow roots. */
export function tellPage<K extends 'homeleg-plan' | 'homeleg-verdict' | 'homeleg-route' | 'homeleg-trip'>(
  from: HTMLElement,
  type: K,
  detail: HTMLElementEventMap[K]['detail'],
): void {
  from.dispatchEvent(new CustomEvent(type, { detail, bubbles: true, composed: true }));
}
