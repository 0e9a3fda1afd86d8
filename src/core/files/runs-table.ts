import type { Aboard, Load } from '../load/shapes.ts';
import type { Consumed, Pass, Run } from '../trials/shapes.ts';
import type { Problem } from '../units/result.ts';
import { aboardFromText } from './aboard-text.ts';
import { RowCells } from './row-cells.ts';
import { dayOf, yesOrNo } from './table-cells.ts';
import type { RunsTable, TableMapping } from './table-columns.ts';
import type { Meaning } from './table-meanings.ts';

/** What a table does not say itself. */
export interface TableContext {
  /** Setups of the trials; a row that names none belongs to the first. */
  readonly setups: readonly { readonly id: string; readonly name: string; readonly kind: 'petrol' | 'electric' }[];
  /** Of rows that say nothing of who is aboard. */
  readonly load: Load;
  /** Ids that are taken: a row with one of these gets another. */
  readonly taken: readonly string[];
}

export interface TableRuns {
  readonly runs: readonly Run[];
  /** At `rows.N` for a row left out, `rows.N.HEAD` for the cell it is left out for, `columns.HEAD` for a whole column. */
  readonly problems: readonly Problem[];
}

/**
 * Runs of a table by the meaning given to its columns. A row with a cell that cannot be read, or is beyond belief, is
 * left out and each such cell named; the other rows are kept.
 */
export function runsFromTable(table: RunsTable, mapping: TableMapping, context: TableContext): TableRuns {
  const problems: Problem[] = [...columnProblems(table, mapping)];
  const ids = new Set(context.taken);
  const runs: Run[] = [];
  for (const row of table.rows) {
    const cells = new RowCells(table, mapping, row);
    const run = runOf(cells, context);
    if (cells.problems.length > 0) {
      problems.push(...cells.problems);
      continue;
    }
    const id = freshId(cells.text('id'), ids);
    ids.add(id);
    runs.push({ id, ...run });
  }
  return { runs, problems };
}

function* columnProblems({ columns }: RunsTable, mapping: TableMapping): Generator<Problem> {
  const has = (meaning: Meaning) => mapping.findIndex((each) => each?.meaning === meaning);
  const half = (one: Meaning, other: Meaning, message: string): Problem[] => {
    const at = has(one);
    return at >= 0 && has(other) < 0
      ? [
          {
            code: 'half-reading',
            path: `columns.${columns[at]!.header}`,
            message: `Column "${columns[at]!.header}": ${message}`,
          },
        ]
      : [];
  };
  yield* half('current', 'voltage', 'amperes say nothing without volts; not used');
  yield* half('voltage', 'current', 'volts say nothing without amperes; not used');
  yield* half('fuel', 'time', 'an amount says nothing without the time it took; not used');
  yield* half('energy', 'time', 'an amount says nothing without the time it took; not used');
  yield* half('wind', 'wind-from', 'wind says nothing without its direction off the bow on the way out; not used');
}

function runOf(row: RowCells, context: TableContext): Omit<Run, 'id'> {
  const setup = setupOf(row, context);
  const passes = passesOf(row);
  const load = loadOf(row, context.load);
  const consumed = consumedOf(row, setup.kind);
  const day = row.read('date', dayOf, 'not a date that can be read one way only, such as 2026-07-15');
  const fullThrottle = row.read('full-throttle', yesOrNo, 'neither yes nor no');
  const leftOut = row.read('left-out', yesOrNo, 'neither yes nor no');
  const [rpm, error] = [row.figure('rpm'), row.figure('consumed-error')];
  const [speed, offBowDeg, waveHeight] = [row.figure('wind'), row.figure('wind-from'), row.figure('waves')];
  const stream = row.figure('stream');
  const note = row.text('note')?.slice(0, NOTE_LENGTH);
  // A speed that cannot be read is told already.
  if (passes.length === 0 && row.problems.length === 0) row.refuse('no-speed', 'it has no speed');
  return {
    ...(day !== undefined && { day }),
    setup: setup.id,
    load,
    passes,
    ...(stream !== undefined && { stream }),
    ...(rpm !== undefined && { rpm }),
    ...(fullThrottle && { fullThrottle }),
    ...(consumed && { consumed }),
    ...(error !== undefined && { consumedError: error }),
    ...(speed !== undefined && offBowDeg !== undefined && { wind: { speed, offBowDeg } }),
    ...(waveHeight !== undefined && { waveHeight }),
    ...(leftOut && { leftOut }),
    ...(note !== undefined && { note }),
  };
}

const NOTE_LENGTH = 200;
const MOST_PASSES = 20;

function setupOf(row: RowCells, { setups }: TableContext): TableContext['setups'][number] {
  const named = row.text('setup');
  if (named === undefined) return setups[0]!;
  const same = (text: string) => text.trim().toLowerCase() === named.toLowerCase();
  const found = setups.find(({ id }) => same(id)) ?? setups.find(({ name }) => same(name));
  if (!found) row.refuse('no-such-setup', `no engine is called "${named.slice(0, 60)}"`, 'setup');
  return found ?? setups[0]!;
}

/** Columns out and back in the order they stand in; a mean of both ways is as good as a pass each way. */
function passesOf(row: RowCells): Pass[] {
  const passes: Pass[] = [];
  for (const { meaning, value } of row.speeds()) {
    if (meaning !== 'speed-back') passes.push({ over: value, way: 'out' });
    if (meaning === 'speed-back' || meaning === 'speed-mean') passes.push({ over: value, way: 'back' });
  }
  if (passes.length > MOST_PASSES) row.refuse('too-many', `it has more than ${MOST_PASSES} passes`);
  return passes;
}

/** A mass without heads is shared out among as many as usually make it up, kg each with their things. */
const EACH = 85;
const MOST_PERSONS = 20;

function loadOf(row: RowCells, usual: Load): Load {
  const fill = row.figure('fill');
  const knownBy = row.read('fill-known-by', fillKnownBy, 'neither "measured" nor "gauge"');
  const level = { ...(fill !== undefined && { fill }), ...(knownBy !== undefined && { fillKnownBy: knownBy }) };
  const items = row.read('aboard', aboardFromText, 'not read: write "adult 85 @helm helm; gear 20"');
  if (items) return { items, ...level };
  const mass = row.figure('load');
  const heads = row.read('persons', headsOf, `not a number of people from 1 to ${MOST_PERSONS}`);
  if (mass === undefined && heads !== undefined) {
    row.refuse('no-mass', 'it says how many are aboard, but not their mass', 'persons');
  }
  if (mass === undefined) return { ...usual, ...level };
  const count = heads ?? Math.min(MOST_PERSONS, Math.max(1, Math.round(mass / EACH)));
  return {
    items: Array.from({ length: count }, (_, at): Aboard => ({ id: `a${at + 1}`, kind: 'adult', mass: mass / count })),
    ...level,
  };
}

function headsOf(cell: string): number | undefined {
  const count = /^\d{1,2}$/.test(cell) ? Number(cell) : 0;
  return count >= 1 && count <= MOST_PERSONS ? count : undefined;
}

function fillKnownBy(cell: string): Load['fillKnownBy'] {
  const word = cell.toLowerCase();
  return word === 'measured' || word === 'gauge' ? word : undefined;
}

/** A rate before an amount over a time; a reading that the engine cannot have is refused. */
function consumedOf(row: RowCells, kind: 'petrol' | 'electric'): Consumed | undefined {
  const [flow, power, amps, volts] = [
    row.figure('flow'),
    row.figure('power'),
    row.figure('current'),
    row.figure('voltage'),
  ];
  const [fuel, energy, seconds] = [row.figure('fuel'), row.figure('energy'), row.figure('time')];
  const [foreign] = (['flow', 'power', 'current', 'fuel', 'energy'] as const).filter(
    (meaning) => row.text(meaning) !== undefined && (kind === 'petrol') !== (meaning === 'flow' || meaning === 'fuel'),
  );
  if (foreign) {
    const message = kind === 'petrol' ? 'a petrol engine takes no current' : 'an electric motor takes no petrol';
    row.refuse('wrong-reading', message, foreign);
  }
  const rate =
    kind === 'petrol' ? flow : (power ?? (amps === undefined || volts === undefined ? undefined : amps * volts));
  if (rate !== undefined) return { kind: 'rate', rate };
  const amount = kind === 'petrol' ? fuel : energy;
  if (amount === undefined) return undefined;
  if (seconds !== undefined) return { kind: 'amount', amount, seconds };
  if (row.maps('time')) row.refuse('no-time', 'it has an amount but not the time it took', 'time');
  return undefined;
}

function freshId(wished: string | undefined, taken: ReadonlySet<string>): string {
  if (wished !== undefined && wished.length <= NOTE_LENGTH && !taken.has(wished)) return wished;
  let number = 1;
  while (taken.has(`r${number}`)) number++;
  return `r${number}`;
}
