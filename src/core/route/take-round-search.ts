import FlatQueue from 'flatqueue';
import type { Place } from './take-round-obstacles.ts';

/** Places of the cheapest way, first and last included, and its cost; undefined: there is none. */
export type Way = { readonly places: readonly number[]; readonly cost: number } | undefined;

export interface Haste {
  /** The way found may cost so many times the least, 1 or more. */
  readonly hurry?: number;
  /** Whether a track from one place to another may help; `before` is where its start was come to from, or -1. */
  readonly helps?: (before: number, from: number, to: number) => boolean;
}

/**
 * Cheapest way from the first place to the second, turning at others (A*, Hart, Nilsson and Raphael 1968). A track
 * costs at least its length, so its real cost is asked only when it would be the next to be sailed. `cost` may give up
 * by returning undefined; then so does the search, with 'too-many'.
 */
export function cheapestWay(
  places: readonly Place[],
  cost: (from: number, to: number) => number | undefined,
  { hurry = 1, helps }: Haste = {},
): Way | 'too-many' {
  const count = places.length;
  const goal = places[1]!;
  const ahead = places.map((place) => hurry * between(place, goal));
  const best = new Float64Array(count).fill(Infinity);
  const settled = new Uint8Array(count);
  const before = new Int32Array(count).fill(-1);
  const sailed = new Float64Array(count);
  /** Tracks under way: from, to and whether the cost so far is the real one; entry numbers wait in the queue. */
  const entries: { readonly from: number; readonly to: number; readonly sum: number; readonly real: boolean }[] = [];
  const queue = new FlatQueue();
  const push = (from: number, to: number, sum: number, real: boolean): void => {
    entries.push({ from, to, sum, real });
    queue.push(entries.length - 1, sum + ahead[to]!);
  };
  push(-1, 0, 0, true);
  for (let next = queue.pop(); next !== undefined; next = queue.pop()) {
    const { from, to, sum, real } = entries[next]!;
    if (settled[to] || sum > best[to]!) continue;
    if (!real) {
      const price = cost(from, to);
      if (price === undefined) return 'too-many';
      const total = sailed[from]! + price;
      if (total >= best[to]!) continue;
      best[to] = total;
      push(from, to, total, true);
      continue;
    }
    settled[to] = 1;
    sailed[to] = sum;
    before[to] = from;
    if (to === 1) return { places: traced(before), cost: sum };
    for (let other = 1; other < count; other++) {
      if (settled[other]) continue;
      const least = sum + between(places[to]!, places[other]!);
      if (least < best[other]! && (!helps || helps(from, to, other))) push(to, other, least, false);
    }
  }
  return undefined;
}

function between(a: Place, b: Place): number {
  const dx = a.x - b.x;
  const dy = a.y - b.y;
  return Math.sqrt(dx * dx + dy * dy);
}

function traced(before: Int32Array): number[] {
  const places: number[] = [];
  for (let at = 1; at >= 0; at = before[at]!) places.unshift(at);
  return places;
}
