import type { Position } from '../craft/shapes.ts';
import type { Aim, Spread } from './seating-aim.ts';
import type { Movable } from './seating-places.ts';

/** What does not move: mass, its moments about the aft end, middle line and keel, and its second moment along the boat. */
export interface Rest {
  readonly mass: number;
  readonly x: number;
  readonly y: number;
  readonly z: number;
  readonly xx: number;
}

export interface Placement {
  /** Where each movable goes, in their order. */
  readonly places: readonly Position[];
  readonly cost: number;
  /** All placements were looked at. */
  readonly exact: boolean;
  /** No placement costs less than this. */
  readonly bound: number;
}

/** So many placements are looked at one by one; beyond that the best is approached. */
const MOST = 250_000;
const ROUNDS = 20;
/** Height of a place that gives none, m (common practice, no source). */
const HEIGHT = 0.45;

/**
 * The placement with the least cost: exact while there are few enough, else the best found by moving and swapping from
 * the present one and from both ends, with a bound that no placement can beat. Undefined: not everybody finds a place.
 */
export function bestPlacement(movables: readonly Movable[], rest: Rest, aim: Aim): Placement | undefined {
  const bound = boundOf(movables, rest, aim);
  if (countOf(movables) <= MOST) {
    const found = searched(movables, rest, aim);
    return found && { ...found, exact: true, bound: found.cost };
  }
  const starts = [startOf(movables, 'now'), startOf(movables, 'aft'), startOf(movables, 'forward')];
  let best: { places: readonly Position[]; cost: number } | undefined;
  for (const start of starts) {
    const found = start && climbed(movables, rest, aim, start);
    if (found && (!best || found.cost < best.cost)) best = found;
  }
  return best && { ...best, exact: false, bound };
}

/** What a placement comes to. */
export function spreadOf(movables: readonly Movable[], rest: Rest, places: readonly Position[]): Spread {
  let { mass, x, y, z, xx } = rest;
  movables.forEach((movable, i) => {
    const place = places[i]!;
    mass += movable.mass;
    x += movable.mass * place.x;
    y += movable.mass * place.y;
    z += movable.mass * (place.z ?? HEIGHT);
    xx += movable.mass * place.x * place.x;
  });
  const lcg = x / mass;
  return { lcg, lateral: y / mass, vcg: z / mass, pitch: xx / mass - lcg * lcg };
}

function countOf(movables: readonly Movable[]): number {
  let count = 1;
  let taken = 0;
  for (const { alone, places } of movables) count *= alone ? Math.max(places.length - taken++, 1) : places.length;
  return count;
}

/** Depth first over everybody's places. */
function searched(movables: readonly Movable[], rest: Rest, aim: Aim) {
  const chosen: Position[] = [];
  let best: { places: readonly Position[]; cost: number } | undefined;
  const visit = (index: number): void => {
    if (index === movables.length) {
      const cost = aim.cost(spreadOf(movables, rest, chosen));
      // Of equals the first found stands: those who may stay do.
      if (!best || cost < best.cost - 1e-9) best = { places: [...chosen], cost };
      return;
    }
    const { alone, places, now } = movables[index]!;
    for (const place of nowFirst(places, now)) {
      if (alone && taken(movables, chosen, place)) continue;
      chosen.push(place);
      visit(index + 1);
      chosen.pop();
    }
  };
  visit(0);
  return best;
}

function nowFirst(places: readonly Position[], now: Position | undefined): readonly Position[] {
  const stays = now && places.find((place) => place.x === now.x && place.y === now.y);
  return stays ? [stays, ...places.filter((place) => place !== stays)] : places;
}

function taken(movables: readonly Movable[], chosen: readonly Position[], place: Position): boolean {
  return chosen.some((other, i) => other === place && movables[i]!.alone);
}

/** One after another onto the first free place: where each is now, from aft, or from forward. */
function startOf(movables: readonly Movable[], from: 'now' | 'aft' | 'forward'): Position[] | undefined {
  const chosen: Position[] = [];
  for (const { alone, places, now } of movables) {
    const order =
      from === 'now' ? nowFirst(places, now) : [...places].sort((a, b) => (from === 'aft' ? a.x - b.x : b.x - a.x));
    const place = order.find((one) => !alone || !taken(movables, chosen, one));
    if (!place) return undefined;
    chosen.push(place);
  }
  return chosen;
}

/** Each moved to a better place, or swapped with another of its kind, until nothing gets better. */
function climbed(movables: readonly Movable[], rest: Rest, aim: Aim, start: readonly Position[]) {
  const places = [...start];
  let cost = aim.cost(spreadOf(movables, rest, places));
  for (let round = 0; round < ROUNDS; round++) {
    const before = cost;
    for (let i = 0; i < movables.length; i++) {
      const { alone, places: own } = movables[i]!;
      for (const place of own) {
        const here = places[i]!;
        const other = alone ? places.findIndex((one, j) => j !== i && one === place && movables[j]!.alone) : -1;
        if (other >= 0 && !movables[other]!.places.some((one) => one === here)) continue;
        places[i] = place;
        if (other >= 0) places[other] = here;
        const now = aim.cost(spreadOf(movables, rest, places));
        if (now < cost - 1e-9) cost = now;
        else {
          places[i] = here;
          if (other >= 0) places[other] = place;
        }
      }
    }
    if (cost > before - 1e-9) break;
  }
  return { places, cost };
}

/** Everybody on any of their places at once: what no real placement reaches. */
function boundOf(movables: readonly Movable[], rest: Rest, aim: Aim): number {
  let mass = rest.mass;
  let low = rest.x;
  let high = rest.x;
  for (const movable of movables) {
    const xs = movable.places.map(({ x }) => x);
    mass += movable.mass;
    low += movable.mass * Math.min(...xs);
    high += movable.mass * Math.max(...xs);
  }
  return aim.bound(low / mass, high / mass, 0);
}
