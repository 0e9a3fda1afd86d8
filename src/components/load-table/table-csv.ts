import type { Cell, LoadTable } from '../../core/compare/shapes.ts';
import type { Band } from '../../core/curve/shapes.ts';
import { INCH } from '../../core/units/convert.ts';
import type { Measures } from '../units/measures.ts';
import { reasonText } from '../words/en.ts';
import { noteText, planesText } from '../words/en-compare.ts';
import { type CsvCell, csvText } from './csv.ts';
import type { NamedRow } from './rows.ts';
import { storeName } from './setups.ts';

const SIDES = ['low', 'median', 'high'] as const;

/** The table as CSV, a row for each load with each engine, in the units on the screen; consumption by what is used. */
export function tableCsv(table: LoadTable, rows: readonly NamedRow[], m: Measures): string {
  const speed = m.unit('speed');
  const distance = m.unit('distance');
  const mass = m.unit('mass');
  const banded = (name: string, unit: string) =>
    SIDES.map((side) => `${name} ${side === 'median' ? '' : `${side} `}(${unit})`);
  const head: CsvCell[] = [
    'load',
    'engine',
    'propeller pitch (in)',
    'tank or battery',
    `all-up weight (${mass})`,
    'planes',
    'share of such boats that plane',
    ...banded('top speed', speed),
    `cruising speed (${speed})`,
    'cruising speed held',
    ...banded('consumption', `L or Wh per ${distance}`),
    ...banded('range', distance),
    `range with a third kept (${distance})`,
    `to spare by plate and floating (${mass})`,
    `to spare and still planing (${mass})`,
    'cautions',
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
    drive.name,
    drive.propeller.pitch / INCH,
    storeName(store),
    in_('mass', cell.mass),
    planesText(cell.planing),
    cell.planing.chance,
    ...banded('speed', cell.topSpeed),
    in_('speed', cruise.speed),
    cruise.held ? 'yes' : 'no',
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
