import type { Hull } from '../craft/shapes.ts';
import type { Boat } from '../curve/boat.ts';
import { curve } from '../curve/curve.ts';
import type { Curve } from '../curve/shapes.ts';
import { steady } from '../curve/steady.ts';
import { atSpeed } from './at-speed.ts';
import { easySpeed } from './easy-speed.ts';
import { loadReasons } from './load-reasons.ts';
import { type Loaded, loaded, type Setting, setUp } from './loaded.ts';
import { planing } from './planing.ts';
import { legDepth } from './shaft.ts';
import type { Cell, CellNote, CruiseRule, LoadColumn, LoadRow, LoadTable } from './shapes.ts';
import { spare } from './spare.ts';

export interface TableQuestion extends Setting {
  /** Speed all cells are asked about, m/s; absent: each its own cruising speed. */
  readonly speed?: number | undefined;
}

/** Revs at full throttle over rated revs that call for another propeller (common practice, no source). */
const REVS = { low: 0.92, high: 1.05 };

/**
 * Loads against engines, propellers and batteries of one hull, in calm water with what the tank or battery holds full
 * unless a load says otherwise. Cruising speed: on the plane the one of least use per distance; where the boat does
 * not plane, length Froude number 0.35 or, if less, what the engine makes.
 */
export function loadTable(
  hull: Hull,
  rows: readonly LoadRow[],
  columns: readonly LoadColumn[],
  question: TableQuestion,
): LoadTable {
  const boats = columns.map((column) => boatOfColumn(hull, column, question));
  return {
    rows,
    columns,
    cells: rows.map((row) =>
      columns.map((column, i) => ({ row: row.id, column: column.id, ...cellOf(boats[i]!, row.load, question.speed) })),
    ),
  };
}

/** The hull with the engine and store of a column, made ready. */
export function boatOfColumn(hull: Hull, { drive, store, calibration }: LoadColumn, setting: Setting): Boat {
  // As clean or foul as it was measured.
  const measured = calibration && { calibration, ...(calibration.fouling && { fouling: calibration.fouling }) };
  return setUp({ hull, drive, store, ...measured }, setting);
}

/** One load on one boat. */
export function cellOf(boat: Boat, load: LoadRow['load'], speed?: number): Omit<Cell, 'row' | 'column'> {
  const now = loaded(boat, load);
  const drawn = curve(boat, now.afloat, now.usable);
  const climb = planing(now);
  const { rule, at } = cruiseOf(now, drawn, speed);
  const cruise = atSpeed(now, at);
  const { low, median, high, limit, reached } = drawn.topSpeed;
  const top = reached ? median : (drawn.stuckSpeed ?? median);
  return {
    store: drawn.store,
    mass: now.afloat.mass,
    planing: climb,
    topSpeed: { low: Math.min(low, top), median: top, high: Math.max(high, top), limit },
    cruise,
    cruiseRule: rule,
    spare: spare(now),
    reasons: loadReasons(now, cruise),
    notes: notesOf(now, top),
  };
}

function cruiseOf({ craft }: Loaded, drawn: Curve, wished?: number): { rule: CruiseRule; at: number } {
  if (wished !== undefined) return { rule: 'wished', at: wished };
  const { topSpeed, bestPlaning, stuckSpeed } = drawn;
  if (topSpeed.reached && bestPlaning && craft.hull.form !== 'displacement') {
    return { rule: 'least-use-planing', at: bestPlaning.speed };
  }
  const easy = easySpeed(craft.hull);
  const most = stuckSpeed ?? topSpeed.median;
  return { rule: 'below-hull-speed', at: most > 0 ? Math.min(easy, most) : easy };
}

function notesOf({ craft, boat, afloat }: Loaded, top: number): readonly CellNote[] {
  const notes: CellNote[] = [];
  const depth = legDepth(craft.hull, craft.drive);
  if (depth === undefined) notes.push({ code: 'shaft-unknown' });
  else if (depth > 0) notes.push({ code: 'leg-deep', by: depth });
  else if (depth < 0) notes.push({ code: 'leg-high', by: -depth });
  if (top > 0) {
    const { rpm, revShare } = steady(boat, afloat, top).drive;
    const rated = craft.drive.ratedRpm;
    if (revShare > REVS.high) notes.push({ code: 'revs-high', rpm, rated });
    else if (revShare < REVS.low) notes.push({ code: 'revs-low', rpm, rated });
  }
  return notes;
}
