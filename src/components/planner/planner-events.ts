import type { Route } from '../../core/route/shapes.ts';
import type { Plan, Trip, Verdict } from '../../core/trip/shapes.ts';

/** A new plan is ready; `plan` is undefined while the trip is incomplete. */
export type PlanEvent = CustomEvent<{ trip: Trip; plan: Plan | undefined }>;
/** The answer became another one. */
export type VerdictEvent = CustomEvent<{ verdict: Verdict | undefined; before: Verdict | undefined }>;
/** The route became another one. */
export type RouteEvent = CustomEvent<{ route: Route }>;
/** The user saved the trip as a file; `text` is what stands in it. */
export type TripEvent = CustomEvent<{ trip: Trip; text: string }>;

declare global {
  interface HTMLElementEventMap {
    'homeleg-plan': PlanEvent;
    'homeleg-verdict': VerdictEvent;
    'homeleg-route': RouteEvent;
    'homeleg-trip': TripEvent;
  }
}

/** Tells the page what happened, across all shadow roots. */
export function tellPage<K extends 'homeleg-plan' | 'homeleg-verdict' | 'homeleg-route' | 'homeleg-trip'>(
  from: HTMLElement,
  type: K,
  detail: HTMLElementEventMap[K]['detail'],
): void {
  from.dispatchEvent(new CustomEvent(type, { detail, bubbles: true, composed: true }));
}
