import type { Turning } from './take-round-corners.ts';
import type { Place } from './take-round-obstacles.ts';

/** Sine of the angle from square within which a track passes a corner at its side. */
const ASIDE = 0.5;

/** Whether a way turns round the corner it is at and passes the next at its side: seldom the shortest does not. */
export function taut(before: Place | undefined, at: Place | Turning, next: Place | Turning): boolean {
  if ('nx' in next && !passes(next, at, next)) return false;
  if (!('nx' in at) || !before) return true;
  if (!passes(at, at, next)) return false;
  const turn = (at.x - before.x) * (next.y - at.y) - (at.y - before.y) * (next.x - at.x);
  const side = (at.y - before.y) * at.nx - (at.x - before.x) * at.ny;
  return turn * side >= 0;
}

function passes({ nx, ny }: Turning, from: Place, to: Place): boolean {
  const x = to.x - from.x;
  const y = to.y - from.y;
  return Math.abs(x * nx + y * ny) <= ASIDE * Math.sqrt(x * x + y * y);
}
