import type { Calibration, Drive, Store } from '../craft/shapes.ts';
import type { Band } from '../curve/shapes.ts';
import type { Load } from '../load/shapes.ts';
import type { Reason } from '../trip/shapes.ts';
import type { AtSpeed } from './at-speed.ts';
import type { Planing } from './planing.ts';
import type { Spare } from './spare.ts';

/** A row: who and what is aboard, and where. */
export interface LoadRow {
  readonly id: string;
  readonly load: Load;
}

/** A column: an engine with its propeller and its tanks or batteries, measured or not. */
export interface LoadColumn {
  readonly id: string;
  readonly drive: Drive;
  readonly store: Store;
  readonly calibration?: Calibration;
}

/** What else is worth saying of a cell. */
export type CellNote =
  | { readonly code: 'leg-deep' | 'leg-high'; readonly by: number }
  | { readonly code: 'shaft-unknown' }
  /** Revs at full throttle, over and under rated. */
  | { readonly code: 'revs-high' | 'revs-low'; readonly rpm: number; readonly rated: number };

/** How the cruising speed of a cell was chosen. */
export type CruiseRule = 'least-use-planing' | 'below-hull-speed' | 'wished';

export interface Cell {
  readonly row: string;
  readonly column: string;
  readonly store: 'fuel' | 'charge';
  /** All-up, kg. */
  readonly mass: number;
  readonly planing: Planing;
  /** m/s; where the hump is not crossed the speed below it at which full throttle stays. */
  readonly topSpeed: Band & { readonly limit: 'power' | 'revs' | 'battery' };
  readonly cruise: AtSpeed;
  readonly cruiseRule: CruiseRule;
  readonly spare: Spare;
  /** Plate, floating and balance; a no-go here is one whatever the figures say. */
  readonly reasons: readonly Reason[];
  readonly notes: readonly CellNote[];
}

export interface LoadTable {
  readonly rows: readonly LoadRow[];
  readonly columns: readonly LoadColumn[];
  /** By row, then column. */
  readonly cells: readonly (readonly Cell[])[];
}
