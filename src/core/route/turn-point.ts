/** A time, s, and a distance from the start, m. */
export interface PointAlong {
  readonly time: number;
  readonly distance: number;
}

/**
 * Point of no return from endurance, s, without the reserve, and ground speeds out and home, m/s:
 * t = E G_home / (G_out + G_home) (air navigation texts).
 */
export function pointOfNoReturn(endurance: number, speedOut: number, speedHome: number): PointAlong {
  const time = speedOut + speedHome > 0 ? (endurance * speedHome) / (speedOut + speedHome) : 0;
  return { time, distance: time * speedOut };
}

/** Flow, kg/s or W, and ground speed, m/s, of one way. */
export interface Way {
  readonly flow: number;
  readonly speed: number;
}

/** Point of no return where out and home differ in flow: available, kg or J without the reserve, over need per metre. */
export function pointOfNoReturnByAmount(available: number, out: Way, home: Way): PointAlong {
  if (!(out.speed > 0) || !(home.speed > 0)) return { time: 0, distance: 0 };
  const perMetre = out.flow / out.speed + home.flow / home.speed;
  const distance = perMetre > 0 ? available / perMetre : Infinity;
  return { time: distance / out.speed, distance };
}

/** Equal-time point of one leg, m, at ground speeds on and back, m/s: D G_back / (G_on + G_back) (air navigation texts). */
export function equalTimePoint(distance: number, speedOn: number, speedBack: number): PointAlong {
  if (!(speedOn > 0)) return { time: 0, distance: 0 };
  const turn = (distance * speedBack) / (speedOn + speedBack);
  return { time: turn / speedOn, distance: turn };
}

/** One stretch of a route: m; kg or J onward along it and back over it; s likewise. Infinity where it cannot be sailed. */
export interface TurnStretch {
  readonly distance: number;
  readonly needOnward: number;
  readonly needBack: number;
  readonly timeOnward: number;
  readonly timeBack: number;
}

export interface TurnPoint extends PointAlong {
  /** Stretch it lies on and the share of it done; the number of stretches and 0 at the end of the route. */
  readonly stretch: number;
  readonly share: number;
  /** False: the point lies beyond the end, and the end is given. */
  readonly onRoute: boolean;
}

/** Last point of a route from which the start can be reached again on what is available, kg or J, reserve taken off. */
export function lastReturnPoint(stretches: readonly TurnStretch[], available: number): TurnPoint {
  return along(stretches, available, ({ needOnward, needBack }) => needOnward + needBack);
}

/** Point of a route from which its end is as far in time as its start. Time stood still is left out. */
export function equalTimeAlong(stretches: readonly TurnStretch[]): TurnPoint {
  // Time to the end falls and time back rises: they meet where onward and back time together pass the onward total.
  const total = stretches.reduce((sum, { timeOnward }) => sum + timeOnward, 0);
  return along(stretches, total, ({ timeOnward, timeBack }) => timeOnward + timeBack);
}

/** Walks the route until the costs, linear within a stretch, have used up the budget. */
function along(stretches: readonly TurnStretch[], budget: number, costOf: (stretch: TurnStretch) => number): TurnPoint {
  let left = Math.max(0, budget);
  let distance = 0;
  let time = 0;
  for (let stretch = 0; stretch < stretches.length; stretch++) {
    const piece = stretches[stretch]!;
    const cost = costOf(piece);
    if (cost > left || cost === Infinity) {
      const share = cost < Infinity ? left / cost : 0;
      const spent = share > 0 ? piece.timeOnward * share : 0;
      return { distance: distance + piece.distance * share, time: time + spent, stretch, share, onRoute: true };
    }
    left -= cost;
    distance += piece.distance;
    time += piece.timeOnward;
  }
  return { distance, time, stretch: stretches.length, share: 0, onRoute: false };
}
