import type { Waypoint } from '../../core/route/shapes.ts';
import { sameWaypoint } from '../route-map/waypoint-edits.ts';

/**
 * Keys that stay with a waypoint's row while waypoints come, go, move and change, so that what is typed in a row and
 * not yet usable stays with it. `before` are the waypoints the keys were for; `fresh` makes new ones.
 */
export function carryKeys(
  before: readonly Waypoint[],
  keys: readonly number[],
  after: readonly Waypoint[],
  fresh: () => number,
): number[] {
  const shorter = Math.min(before.length, after.length);
  let head = 0;
  while (head < shorter && sameWaypoint(before[head]!, after[head]!)) head++;
  let tail = 0;
  while (tail < shorter - head && sameWaypoint(before.at(-1 - tail)!, after.at(-1 - tail)!)) tail++;

  const gone = new Map<string, number[]>();
  for (let i = before.length - tail - 1; i >= head; i--) {
    const there = placeKey(before[i]!);
    gone.set(there, [...(gone.get(there) ?? []), keys[i]!]);
  }
  const middle = after.slice(head, after.length - tail);
  const moved = middle.map((waypoint) => gone.get(placeKey(waypoint))?.pop());
  const kept = new Set(moved);
  const left = keys.slice(head, before.length - tail).filter((key) => !kept.has(key));
  // As many rows as before: those that match nothing are the old ones, changed.
  const changed = middle.length === before.length - tail - head;
  let used = 0;
  const between = moved.map((key) => key ?? (changed ? left[used++] : undefined) ?? fresh());
  return [...keys.slice(0, head), ...between, ...keys.slice(before.length - tail, before.length)];
}

function placeKey({ lat, lon }: Waypoint): string {
  return `${lat} ${lon}`;
}
