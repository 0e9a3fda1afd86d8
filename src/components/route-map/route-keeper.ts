import type { Waypoint } from '../../core/route/shapes.ts';
import type { RouteEdit } from './waypoint-edits.ts';

/** The route as the map shows it, drafts included. */
export interface Drawing {
  readonly waypoints: readonly Waypoint[];
  /** Its last leg runs back to the first waypoint. */
  readonly closed: boolean;
  readonly selected: number | undefined;
  /** What a waypoint is called, and the word beside it if it has one. */
  nameOf(index: number): string;
  roleOf(index: number): string | undefined;
}

/** Whoever keeps the route: the editor tells what the user does and is told to draw. */
export interface RouteKeeper {
  drawing(): Drawing;
  /** Live edits may still be taken back by `editDropped`. */
  edited(edit: RouteEdit): void;
  editDropped(): void;
  selected(index: number | undefined): void;
  /** Some waypoints have no handle at this zoom. */
  thinned(some: boolean): void;
}
