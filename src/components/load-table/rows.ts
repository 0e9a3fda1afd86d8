import { type Seating, seatedCrew, stowedGear } from '../../core/compare/seat-crew.ts';
import type { LoadRow } from '../../core/compare/shapes.ts';
import type { Hull } from '../../core/craft/shapes.ts';
import { parseDecimal } from '../units/decimal.ts';
import { figureList } from '../units/figure-list.ts';
import type { Measures } from '../units/measures.ts';
import { compareWords as words } from '../words/en-compare.ts';

/** A load beside the crews of one to four: its weights as typed. */
export interface OtherLoad {
  readonly id: string;
  readonly text: string;
}

export interface LoadsAsked {
  readonly eachMass: number;
  readonly gear: number;
  readonly seating: Seating;
  readonly others: readonly OtherLoad[];
}

export interface NamedRow extends LoadRow {
  readonly name: string;
}

const CREWS = [1, 2, 3, 4];
/** Nobody is lighter or heavier, and no small boat has more aboard, kg and count. */
const HEAVIEST = 300;
const MOST_PEOPLE = 12;
const LONGEST_NAME = 40;

/** Weights as typed, kg; undefined where one cannot be read or there are too many, empty while nothing is typed. */
export function weightsIn(text: string, measures: Measures): readonly number[] | undefined {
  const parts = figureList(text, measures.lang);
  const kg = parts.map((part) => {
    const shown = parseDecimal(part, measures.lang);
    return shown === undefined ? Number.NaN : measures.toSi('mass', shown);
  });
  return kg.length <= MOST_PEOPLE && kg.every((mass) => mass > 0 && mass <= HEAVIEST) ? kg : undefined;
}

/** A load as typed: "85, 32", or with a name of its own "Family: 85, 70, 32". Undefined where a weight cannot be read. */
export function loadIn(
  text: string,
  m: Measures,
): { readonly name: string; readonly masses: readonly number[] } | undefined {
  const [, name = '', weights = ''] = /^(?:([^:]*):)?([^:]*)$/.exec(text) ?? [undefined, '', 'x'];
  const masses = weightsIn(weights, m);
  return masses && { name: name.trim().slice(0, LONGEST_NAME), masses };
}

/** The same load in other units; what cannot be read stays as it is. */
export function rewritten(text: string, from: Measures, to: Measures): string {
  const load = loadIn(text, from);
  if (!load) return text;
  const weights = load.masses.map((mass) => to.figure('mass', mass)).join(', ');
  return load.name ? `${load.name}: ${weights}` : weights;
}

/** Crews of one to four, and the other loads that can be read. */
export function rowsOf(hull: Hull, { eachMass, gear, seating, others }: LoadsAsked, m: Measures): readonly NamedRow[] {
  const row = (id: string, name: string, masses: readonly number[]): NamedRow => ({
    id,
    name,
    load: { items: [...seatedCrew(hull, masses, seating), ...stowedGear(hull, gear)] },
  });
  const crews = CREWS.map((count) => row(`crew-${count}`, words.people(count), Array(count).fill(eachMass)));
  const more = others.flatMap(({ id, text }) => {
    const load = loadIn(text, m);
    if (!load || load.masses.length === 0) return [];
    const figures = load.masses.map((mass) => m.figure('mass', mass)).join(' + ');
    return [row(id, load.name || words.otherName(`${figures}\u00a0${m.unit('mass')}`), load.masses)];
  });
  return [...crews, ...more];
}
