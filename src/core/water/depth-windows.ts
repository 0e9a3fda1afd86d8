import { MINUTE } from '../units/convert.ts';
import type { HeightAt } from './tide-height.ts';

/** Instants, s since 1970. */
export interface Interval {
  readonly from: number;
  readonly to: number;
}

export interface DepthWindows {
  /** There is water enough. */
  readonly open: readonly Interval[];
  /** Nothing is known of the tide: not open. */
  readonly unknown: readonly Interval[];
}

export interface Shallow {
  /** Height above chart datum, m; negative is a least depth (`dries_m` of the waters file). */
  readonly dries: number;
  /** Depth of water wanted, m: draught and what is to be under it. */
  readonly depth: number;
}

/** Step of the search, s: a tide does not open and close within it. */
const STEP = 5 * MINUTE;
/** Edges are found to this, s. */
const EDGE = 1;

/** The hours within a span at which a bar or landing has water enough, edges to a second of the tide given. */
export function depthWindows(heightAt: HeightAt, { dries, depth }: Shallow, span: Interval): DepthWindows {
  const stateAt = (seconds: number): State => {
    const tide = heightAt(seconds);
    return !tide.known ? 'unknown' : tide.height - dries >= depth ? 'open' : 'shut';
  };
  const found: { state: State; from: number; to: number }[] = [];
  let before = span.from;
  let state = stateAt(before);
  let from = before;
  while (before < span.to) {
    const at = Math.min(before + STEP, span.to);
    const next = stateAt(at);
    if (next !== state) {
      const edge = edgeBetween(stateAt, before, at);
      found.push({ state, from, to: edge });
      from = edge;
      state = next;
    }
    before = at;
  }
  found.push({ state, from, to: span.to });
  const of = (wanted: State) => found.filter((f) => f.state === wanted).map((f) => ({ from: f.from, to: f.to }));
  return { open: of('open'), unknown: of('unknown') };
}

type State = 'open' | 'shut' | 'unknown';

/** Where the state of `low` ends, from the side that is not open, so that no interval promises too much. */
function edgeBetween(stateAt: (seconds: number) => State, from: number, to: number): number {
  const before = stateAt(from);
  let low = from;
  let high = to;
  while (high - low > EDGE) {
    const middle = (low + high) / 2;
    if (stateAt(middle) === before) low = middle;
    else high = middle;
  }
  return before === 'open' ? low : high;
}
