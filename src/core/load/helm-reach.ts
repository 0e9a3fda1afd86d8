import type { Hull, Position } from '../craft/shapes.ts';

/** A kill cord reaches this far from its switch without pulling, m (common practice, no source). */
const KILL_CORD = 1.4;
/** Grip and switch of a tiller engine ahead of where its mass is, m (common practice, no source). */
const TILLER = 0.45;

/**
 * Whether somebody at this place can steer and wear the kill cord: within its reach of the tiller's grip or, where the
 * helm's own seat is farther from the engine than that, of that seat, as with a console.
 */
export function helmReaches(hull: Hull, place: Position): boolean {
  const grip = { x: hull.engine.x + TILLER, y: hull.engine.y };
  const seats = hull.stations.filter(({ use }) => use === 'helm');
  if (seats.some((seat) => apart(seat, place) < 0.01)) return true;
  const console = seats.length > 0 && seats.every((seat) => apart(seat, grip) > KILL_CORD);
  const from = console ? seats : [grip];
  return from.some((point) => apart(point, place) <= (console ? KILL_CORD / 2 : KILL_CORD));
}

function apart(a: Position, b: Position): number {
  return Math.hypot(a.x - b.x, a.y - b.y);
}
