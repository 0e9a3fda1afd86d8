import type { Problem } from '../units/result.ts';
import { legBetween } from './distance.ts';
import type { Route, Waypoint } from './shapes.ts';
import { type RoundChoice, type RoundTrack, takeRound } from './take-round.ts';
import type { Waters } from './waters.ts';

export interface RoundRoute {
  readonly waypoints: readonly Waypoint[];
  /** Waypoints put in between. */
  readonly added: number;
  /** Legs as drawn that now go round, counted from 0, and how; and those for which there is no way, and why. */
  readonly rounded: readonly { readonly leg: number; readonly track: RoundTrack }[];
  readonly refused: readonly { readonly leg: number; readonly problems: readonly Problem[] }[];
}

/** Two waypoints nearer than this, m, are one place: a loop that ends there is closed already. */
const SAME_PLACE = 1;

/**
 * The route with waypoints put in between, so that its legs keep off land, shoals and keep-outs by a shortest way.
 * `legs` names the drawn legs to look at; all if absent. Waypoints drawn stay; new ones carry on the speed of their
 * leg and the place of its stream. Problems name the waypoint as `waypoints.N`.
 */
export function takeRouteRound(
  route: Route,
  waters: Waters,
  choice: RoundChoice,
  legs?: readonly number[],
): RoundRoute {
  const { waypoints } = route;
  const all: Waypoint[] = [];
  const rounded: { leg: number; track: RoundTrack }[] = [];
  const refused: { leg: number; problems: readonly Problem[] }[] = [];
  waypoints.forEach((from, leg) => {
    all.push(from);
    const next = nextOf(route, leg);
    if (next === undefined || (legs && !legs.includes(leg))) return;
    const found = takeRound(waters, from, waypoints[next]!, choice);
    if (!found.ok) {
      refused.push({ leg, problems: found.problems.map((problem) => named(problem, leg, next)) });
      return;
    }
    if (found.value.via.length === 0) return;
    rounded.push({ leg, track: found.value });
    const { speed, streamPlace } = from;
    const carried = { ...(speed !== undefined && { speed }), ...(streamPlace !== undefined && { streamPlace }) };
    all.push(...found.value.via.map((at) => ({ ...at, ...carried })));
  });
  const added = all.length - waypoints.length;
  return { waypoints: added > 0 ? all : waypoints, added, rounded, refused };
}

/** The drawn leg of one that is sailed: the way home doubles back over the way out. */
export function drawnLegOf(route: Route, sailed: number): number {
  const out = route.waypoints.length - 1;
  return route.shape === 'out-and-home' && sailed >= out ? 2 * out - 1 - sailed : sailed;
}

function nextOf({ shape, waypoints }: Route, leg: number): number | undefined {
  if (leg + 1 < waypoints.length) return leg + 1;
  const open = shape === 'loop' && leg > 0 && legBetween(waypoints[0]!, waypoints[leg]!).distance >= SAME_PLACE;
  return open ? 0 : undefined;
}

function named(problem: Problem, from: number, to: number): Problem {
  const which = problem.path === 'from' ? from : problem.path === 'to' ? to : undefined;
  return which === undefined ? problem : { ...problem, path: `waypoints.${which}` };
}
