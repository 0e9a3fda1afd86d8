import { legBetween } from './distance.ts';
import type { PlannedSpeed, Route, Waypoint } from './shapes.ts';

export interface SailedLeg {
  readonly from: Waypoint;
  readonly to: Waypoint;
  readonly part: 'out' | 'home';
  /** Time stood still at its end, s. */
  readonly stop: number;
  /** Share of capacity to which tank or battery is filled at its end. */
  readonly refill?: number;
  readonly speed: PlannedSpeed;
  /** Name of the place whose stream it takes; absent: the nearest. */
  readonly streamPlace?: string;
}

export interface SailedLegs {
  readonly legs: readonly SailedLeg[];
  /** Waypoint at which the way home begins, and so the number of legs out. */
  readonly turningIndex: number;
}

/** Two waypoints nearer than this, m, are one place. */
const SAME_PLACE = 1;

/**
 * The legs as they are sailed. Out-and-home doubles back at the same speeds over the same water in its stream and stops on the way
 * out and at the turn; a loop closes to its start and turns at the waypoint farthest from it; one way is all out.
 * A stop or a filling up where the trip ends is not part of it.
 */
export function sailedLegs(route: Route): SailedLegs {
  const points = route.shape === 'loop' ? closed(route.waypoints) : route.waypoints;
  const out = drawnLegs(points, route);
  if (out.length === 0) return { legs: [], turningIndex: 0 };
  switch (route.shape) {
    case 'out-and-home':
      return { legs: [...out, ...mirrored(out)], turningIndex: out.length };
    case 'loop': {
      const turningIndex = farthest(points);
      const legs = out.map((leg, index) => (index < turningIndex ? leg : { ...leg, part: 'home' as const }));
      return { legs: withoutLastStop(legs), turningIndex };
    }
    case 'one-way':
      return { legs: withoutLastStop(out), turningIndex: out.length };
    default:
      return route.shape satisfies never;
  }
}

function drawnLegs(points: readonly Waypoint[], route: Route): SailedLeg[] {
  const legs: SailedLeg[] = [];
  for (let index = 1; index < points.length; index++) {
    const from = points[index - 1]!;
    const to = points[index]!;
    const refill = to.refill === undefined ? {} : { refill: to.refill };
    const taken = from.streamPlace === undefined ? {} : { streamPlace: from.streamPlace };
    legs.push({ from, to, part: 'out', stop: to.stop ?? 0, ...refill, speed: from.speed ?? route.speed, ...taken });
  }
  return legs;
}

function mirrored(out: readonly SailedLeg[]): SailedLeg[] {
  return out
    .map(({ from, to, refill: _, ...leg }) => ({ ...leg, from: to, to: from, part: 'home' as const, stop: 0 }))
    .reverse();
}

function closed(points: readonly Waypoint[]): readonly Waypoint[] {
  const first = points[0];
  const last = points[points.length - 1];
  if (!first || !last || points.length < 2 || legBetween(first, last).distance < SAME_PLACE) return points;
  return [...points, first];
}

function farthest(points: readonly Waypoint[]): number {
  let best = 1;
  let reach = 0;
  for (let index = 1; index < points.length; index++) {
    const { distance } = legBetween(points[0]!, points[index]!);
    if (distance > reach) {
      reach = distance;
      best = index;
    }
  }
  return best;
}

function withoutLastStop(legs: readonly SailedLeg[]): SailedLeg[] {
  return legs.map((leg, index) => {
    if (index < legs.length - 1) return leg;
    const { refill: _, ...rest } = leg;
    return { ...rest, stop: 0 };
  });
}
