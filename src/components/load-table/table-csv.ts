import type { Cell, LoadTable } from '../../core/compare/shapes.ts';
import type { Band } from '../../core/curve/shapes.ts';
import { INCH } from '../../core/units/convert.ts';
import type { Measures } from '../units/measures.ts';
import { noteText, planesText, csvWords as words } from '../words/en-compare.ts';
import { dataName } from '../words/en-data.ts';
import { reasonText } from '../words/en-reasons.ts';
import { type CsvCell, csvText } from './csv.ts';
import type { NamedRow } from './rows.ts';
import { storeName } from './setups.ts';

const SIDES = ['low', 'median', 'high'] as const;

/** The table as CSV, a row for each load with each engine, in the units on the screen; consumption by what is used. */
export function tableCsv(table: LoadTable, rows: readonly NamedRow[], m: Measures): string {
  const speed = m.unit('speed');
  const distance = m.unit('distance');
  const mass = m.unit('mass');
  const banded = (name: string, unit: string) => SIDES.map((side) => words.banded(name, side, unit));
  const head: CsvCell[] = [
    words.load,
    words.engine,
    words.pitch,
    words.store,
    words.allUp(mass),
    words.planes,
    words.planingShare,
    ...banded(words.top, speed),
    words.cruise(speed),
    words.cruiseHeld,
    ...banded(words.use, words.usePer(distance)),
    ...banded(words.range, distance),
    words.rangeKept(distance),
    words.spare(mass),
    words.sparePlaning(mass),
    words.cautions,
  ];
  const lines = rows.flatMap((row, i) => table.columns.map((_, j) => line(row, table.cells[i]![j]!, table, j, m)));
  return csvText([head, ...lines]);
}

function line(row: NamedRow, cell: Cell, { columns }: LoadTable, at: number, m: Measures): CsvCell[] {
  const { drive, store } = columns[at]!;
  const { cruise } = cell;
  const in_ = (measure: 'speed' | 'distance' | 'mass', si: number | undefined) =>
    si === undefined ? undefined : m.fromSi(measure, si);
  const perDistance = m.toSi('distance', 1) / m.toSi('amount', 1, cell.store);
  const banded = (measure: 'speed' | 'distance', band: Band) => SIDES.map((side) => in_(measure, band[side]));
  return [
    row.name,
    dataName(drive.name),
    drive.propeller.pitch / INCH,
    storeName(store),
    in_('mass', cell.mass),
    planesText(cell.planing),
    cell.planing.chance,
    ...banded('speed', cell.topSpeed),
    in_('speed', cruise.speed),
    cruise.held ? words.yes : words.no,
    ...SIDES.map((side) => (cruise.held ? cruise.perMetre[side] * perDistance : undefined)),
    ...SIDES.map((side) => (cruise.held ? in_('distance', cruise.range[side]) : undefined)),
    cruise.held ? in_('distance', cruise.rangeKept.median) : undefined,
    cell.spare.plateKnown ? in_('mass', cell.spare.extra) : undefined,
    in_('mass', cell.spare.planing),
    [
      ...cell.reasons.map((reason) => reasonText(reason, m, cell.store)),
      ...cell.notes.map((note) => noteText(note, m)),
    ].join(' '),
  ];
}
