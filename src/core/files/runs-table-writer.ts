import Papa from 'papaparse';
import type { Pass, Run, Trials } from '../trials/shapes.ts';
import { PETROL_DENSITY } from '../units/constants.ts';
import { HOUR, KNOT, WATT_HOUR } from '../units/convert.ts';
import { aboardText } from './aboard-text.ts';

type Cell = string | number | undefined;

interface Column {
  readonly head: string;
  cell(run: Run): Cell;
}

/** Writes runs as comma separated text that spreadsheets open and that reads back to the same runs. */
export function runsTable({ setups, runs }: Pick<Trials, 'setups' | 'runs'>): string {
  const petrol = new Set(setups.filter(({ drive }) => drive.kind === 'petrol').map(({ id }) => id));
  const columns = [...about(setups), ...passColumns(runs), ...consumption(petrol), ...around].filter(({ cell }) =>
    runs.some((run) => cell(run) !== undefined),
  );
  const rows = runs.map((run) => columns.map(({ cell }) => plain(cell(run) ?? '')));
  return Papa.unparse([columns.map(({ head }) => head), ...rows]);
}

/** Text that a spreadsheet would take for a formula gets an apostrophe in front, which says that it is none. */
function plain(cell: string | number): string | number {
  return typeof cell === 'string' && /^[=+\-@\t\r]/.test(cell) ? `'${cell}` : cell;
}

/** More than was ever measured, so that what is written reads back as the same figure. */
const FIGURES = 14;

function inUnit(value: number | undefined, one: number): number | undefined {
  return value === undefined ? undefined : Number((value / one).toPrecision(FIGURES));
}

function about(setups: Trials['setups']): Column[] {
  const names = setups.map(({ drive }) => drive.name.trim());
  // Setups of one engine differ in the propeller: their ids tell them apart.
  const nameOf = (id: string): string => {
    const name = names[setups.findIndex((setup) => setup.id === id)];
    return name && names.indexOf(name) === names.lastIndexOf(name) ? name : id;
  };
  return [
    { head: 'Id', cell: ({ id }) => id },
    { head: 'Date', cell: ({ day }) => day },
    { head: 'Setup', cell: ({ setup }) => nameOf(setup) },
    // For the reader; what counts is in the column after it.
    {
      head: 'Load (kg)',
      cell: ({ load }) =>
        inUnit(
          load.items.reduce((sum, { mass }) => sum + mass, 0),
          1,
        ) || undefined,
    },
    { head: 'Aboard', cell: ({ load }) => aboardText(load.items) },
    { head: 'Fill (%)', cell: ({ load }) => inUnit(load.fill, 0.01) },
    { head: 'Fill known by', cell: ({ load }) => load.fillKnownBy },
  ];
}

/** Columns out and back by turns, as many as the longest run needs when each pass goes to the next of its way. */
function passColumns(runs: readonly Run[]): Column[] {
  const placed = new Map(runs.map((run) => [run, placesOf(run.passes)]));
  const most = Math.max(0, ...[...placed.values()].map((places) => places.length));
  return Array.from(
    { length: most },
    (_, at): Column => ({
      head: `Speed ${at % 2 === 0 ? 'out' : 'back'} ${Math.floor(at / 2) + 1} (kn)`,
      cell: (run) => inUnit(placed.get(run)?.[at], KNOT),
    }),
  );
}

function placesOf(passes: readonly Pass[]): (number | undefined)[] {
  const places: (number | undefined)[] = [];
  for (const { over, way } of passes) {
    if ((places.length % 2 === 0) !== (way === 'out')) places.push(undefined);
    places.push(over);
  }
  return places;
}

function consumption(petrol: ReadonlySet<string>): Column[] {
  const column = (head: string, kind: 'rate' | 'amount', [ofPetrol, one]: readonly [boolean, number]): Column => ({
    head,
    cell: ({ consumed, setup }) => {
      if (consumed?.kind !== kind || petrol.has(setup) !== ofPetrol) return undefined;
      return inUnit(consumed.kind === 'rate' ? consumed.rate : consumed.amount, one);
    },
  });
  return [
    { head: 'Stream (kn)', cell: ({ stream }) => inUnit(stream, KNOT) },
    { head: 'RPM', cell: ({ rpm }) => inUnit(rpm, 1) },
    { head: 'Full throttle', cell: ({ fullThrottle }) => (fullThrottle ? 'yes' : undefined) },
    column('Flow (L/h)', 'rate', [true, PETROL_DENSITY / HOUR]),
    column('Power (W)', 'rate', [false, 1]),
    column('Fuel used (L)', 'amount', [true, PETROL_DENSITY]),
    column('Energy used (Wh)', 'amount', [false, WATT_HOUR]),
    {
      head: 'Time (s)',
      cell: ({ consumed }) => (consumed?.kind === 'amount' ? inUnit(consumed.seconds, 1) : undefined),
    },
    { head: 'Consumption error (%)', cell: ({ consumedError }) => inUnit(consumedError, 0.01) },
  ];
}

const around: readonly Column[] = [
  { head: 'Wind (m/s)', cell: ({ wind }) => inUnit(wind?.speed, 1) },
  { head: 'Wind from (° off bow)', cell: ({ wind }) => inUnit(wind?.offBowDeg, 1) },
  { head: 'Waves (m)', cell: ({ waveHeight }) => inUnit(waveHeight, 1) },
  { head: 'Left out', cell: ({ leftOut }) => (leftOut ? 'yes' : undefined) },
  { head: 'Note', cell: ({ note }) => note?.trim() || undefined },
];
