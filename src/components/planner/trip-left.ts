import type { TripWay } from './planner-events.ts';

/** A part of the planner handed the trip on; the planner tells the page, which knows no part. */
export type TripLeft = CustomEvent<{ way: TripWay }>;

export function tellLeft(from: HTMLElement, way: TripWay): void {
  from.dispatchEvent(new CustomEvent('trip-left', { detail: { way }, bubbles: true }) satisfies TripLeft);
}
