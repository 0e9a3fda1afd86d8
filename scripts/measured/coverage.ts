import type { LeftOut } from './leave-out.ts';
import { checkOf, checks } from './records.ts';
import type { Kind, MeasuredRow } from './rows.ts';

/** How often the measured figure lay in the band, and how many boats say so. */
export interface Coverage {
  readonly of:
    | 'all figures'
    | 'consumption, not measured'
    | 'consumption, calibrated'
    | 'resistance, its doubt from the other boats';
  readonly boats: number;
  readonly figures: number;
  readonly inside: number;
  /** Mean of the boats' own shares, so that a boat tried at twelve speeds counts once. */
  readonly byBoat: number;
}

/** What a boat uses or needs; revs and speeds err another way. */
const USED: ReadonlySet<Kind> = new Set([
  'consumption slow',
  'consumption planing',
  'consumption flat out',
  'power drawn slow',
  'resistance slow',
]);
const SLOW: ReadonlySet<Kind> = new Set(['power drawn slow', 'resistance slow']);
/** From the middle to the 90th percentile of the normal law. */
const TENTH = 1.2816;

export function coverageOf(rows: readonly MeasuredRow[], left: readonly LeftOut[]): readonly Coverage[] {
  const apart = left.filter(({ from }) => from === 'all others');
  return [
    shareOf(
      'all figures',
      rows.filter((row) => row.inside !== undefined).map(({ check, inside }) => ({ check, inside: inside === true })),
    ),
    shareOf(
      'consumption, not measured',
      apart.map(({ check, unmeasuredInside }) => ({ check, inside: unmeasuredInside })),
    ),
    shareOf('consumption, calibrated', apart),
    shareOf('resistance, its doubt from the other boats', slowByOthers(rows)),
  ];
}

/**
 * The doubt of resistance at displacement speed was set to cover the boats measured there, so that they lie in it proves
 * little: each held against the spread of the others alone.
 */
function slowByOthers(rows: readonly MeasuredRow[]): readonly Inside[] {
  const slow = rows.filter(({ kind }) => SLOW.has(kind));
  const means = [...new Set(slow.map(({ check }) => check))].map((check) => {
    const logs = slow.filter((row) => row.check === check).map(({ error }) => Math.log1p(error));
    return { check, mean: logs.reduce((sum, log) => sum + log, 0) / logs.length };
  });
  return means.map(({ check, mean }) => {
    const others = means.filter((other) => other.check !== check);
    const spread = Math.sqrt(others.reduce((sum, other) => sum + other.mean ** 2, 0) / others.length);
    return { check, inside: Math.abs(mean) <= TENTH * spread };
  });
}

interface Inside {
  readonly check: string;
  readonly inside: boolean;
}

function shareOf(of: Coverage['of'], figures: readonly Inside[]): Coverage {
  const boats = [...new Set(figures.map(({ check }) => check))];
  const shares = boats.map((boat) => {
    const own = figures.filter(({ check }) => check === boat);
    return own.filter(({ inside }) => inside).length / own.length;
  });
  return {
    of,
    boats: boats.length,
    figures: figures.length,
    inside: figures.filter(({ inside }) => inside).length,
    byBoat: Math.round((shares.reduce((sum, share) => sum + share, 0) / boats.length) * 100) / 100,
  };
}

/** The figure that was worked out furthest from what was measured, on the side that hurts and on the other. */
export interface Worst {
  readonly side: 'too little' | 'too much';
  readonly check: string;
  readonly source: string;
  readonly boat: string;
  readonly what: string;
  /** Measured over worked out. */
  readonly times: number;
  readonly inside: boolean | undefined;
}

/** Of each boat its worst on either side, worst first. */
export function worstOf(rows: readonly MeasuredRow[]): readonly Worst[] {
  const used = rows.filter(({ kind }) => USED.has(kind));
  const furthest = (side: Worst['side']): Worst[] =>
    [...new Set(used.map(({ check }) => check))]
      .map((check) => {
        const own = used.filter((row) => row.check === check);
        const row = own.reduce((a, b) => ((side === 'too little' ? b.error < a.error : b.error > a.error) ? b : a));
        return {
          side,
          check,
          source: row.source,
          boat: String(checkOf(check).inputs.hull),
          what: row.what,
          times: Math.round((100 * row.measured) / row.predicted) / 100,
          inside: row.inside,
        };
      })
      .filter(({ times }) => (side === 'too little' ? times > 1 : times < 1))
      .sort((a, b) => (side === 'too little' ? b.times - a.times : a.times - b.times));
  return [...furthest('too little'), ...furthest('too much')];
}

/** Measurements that were found but are held against no figure, and why. */
export const NOT_HELD: Readonly<Record<string, string>> = {
  'E-dinghy': 'Its motor is switched in steps, which the method does not know.',
  'E-trolling': 'Its motor is switched in steps, which the method does not know.',
  'P-load-6m-runabout': '150 hp on 6 m, outside of what the method is made for; the revs were held, not the speed.',
  'P-day-outing': 'Totals of two days; neither the boats nor their engines are told.',
  'P-yacht-aux': 'A yacht of about two tonnes, outside of what the method is made for.',
  'GPS-doppler': 'About receivers, not boats: taken as the error of a speed in trial runs.',
  'T-boston': 'About tides: a test holds heights and times of high water to within bounds.',
  'T-eastport': 'About tides: a test holds heights and times of high water to within bounds.',
};

/** Checks of the file of measurements that are neither told of in a table nor excused. */
export function forgotten(rows: readonly MeasuredRow[], told: readonly string[]): readonly string[] {
  const held = new Set([...rows.map(({ check }) => check), ...told, ...Object.keys(NOT_HELD)]);
  return checks.map(({ id }) => id).filter((id) => !held.has(id));
}
