import { type Change, type Changes, changeSteps } from '../../core/compare/changes.ts';
import { boatOfColumn, cellOf } from '../../core/compare/load-table.ts';
import { loaded, type Setting } from '../../core/compare/loaded.ts';
import { type PropellerAdvice, propellerAdvice } from '../../core/compare/propeller-advice.ts';
import type { LoadColumn, LoadRow } from '../../core/compare/shapes.ts';
import type { Hull } from '../../core/craft/shapes.ts';

export interface LookWork {
  readonly look: 'closer';
  readonly hull: Hull;
  readonly row: LoadRow;
  readonly column: LoadColumn;
  readonly setting: Setting;
  /** Revs between which the engine is at home, rpm. */
  readonly window: { readonly low: number; readonly high: number };
  readonly measuredRpm: number | undefined;
  readonly crewMove: number;
  readonly trimDeg: number;
}

/** What was seen so far: the propeller first, then the changes one by one. */
export type Looked =
  | { readonly advice: PropellerAdvice }
  | { readonly now: Changes['now']; readonly cruise: number }
  | { readonly change: Change };

/** One load on one engine: its propeller, and what the usual tricks change. */
export function* lookWork(asked: LookWork): Generator<Looked> {
  const { hull, row, column, setting, crewMove, trimDeg } = asked;
  const boat = boatOfColumn(hull, column, setting);
  const load = loaded(boat, row.load);
  yield { advice: propellerAdvice(boat, load.afloat, asked.window, asked.measuredRpm) };
  const cruise = cellOf(boat, row.load).cruise.speed;
  const { now, next } = changeSteps(load, { cruise, crewMove, trimDeg });
  yield { now, cruise };
  for (const change of next) yield { change };
}
