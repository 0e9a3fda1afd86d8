import before from '../../shared/checks/measured-before.json' with { type: 'json' };
import type { Kind, MeasuredRow } from './rows.ts';

/** How one kind of figure fares over all boats, beside how it fared before the part-load law was bent. */
export interface KindSummary {
  readonly kind: Kind;
  /** Boats (or engines, where an engine alone was measured) and figures behind it. */
  readonly boats: number;
  readonly figures: number;
  readonly mean: Spread;
  /** How many have a band, and how many measured figures lie in it. */
  readonly banded: number;
  readonly inside: number;
  readonly before: Spread & { readonly inside: number };
}

/** Mean error (of logarithms), and the lowest and highest. */
interface Spread {
  readonly mean: number;
  readonly lowest: number;
  readonly highest: number;
}

interface Figure {
  readonly check: string;
  readonly what: string;
  readonly error: number;
  readonly inside?: boolean;
}

export function summaryOf(rows: readonly MeasuredRow[]): readonly KindSummary[] {
  const kinds = [...new Set(rows.map(({ kind }) => kind))];
  return kinds.map((kind) => {
    const of = rows.filter((row) => row.kind === kind);
    const then = of.map((row) => beforeOf(row)!);
    const banded = of.filter(({ inside }) => inside !== undefined);
    return {
      kind,
      boats: new Set(of.map(({ check, what }) => (kind === 'engine flat out' ? what : check))).size,
      figures: of.length,
      mean: spreadOf(of),
      banded: banded.length,
      inside: banded.filter(({ inside }) => inside).length,
      before: { ...spreadOf(then), inside: then.filter(({ inside }) => inside).length },
    };
  });
}

/** The same figure as the method had it before. */
export function beforeOf({ check, what }: MeasuredRow): Figure | undefined {
  return (before.rows as readonly Figure[]).find((row) => row.check === check && row.what === what);
}

function spreadOf(figures: readonly { readonly error: number }[]): Spread {
  const errors = figures.map(({ error }) => error);
  const log = errors.reduce((sum, error) => sum + Math.log1p(error), 0) / errors.length;
  return { mean: rounded(Math.expm1(log)), lowest: Math.min(...errors), highest: Math.max(...errors) };
}

function rounded(value: number): number {
  return Math.round(value * 1000) / 1000;
}
