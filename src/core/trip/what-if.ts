import type { Aboard, Load } from '../load/shapes.ts';
import type { Waters } from '../route/waters.ts';
import { planTrip } from './plan-trip.ts';
import { placementCost } from './seating-advice.ts';
import type { Amount, Payload, Trip, Verdict } from './shapes.ts';
import { tripCurve } from './trip-curve.ts';

/** A trip with another load, in the figures that people ask for. */
export interface WhatIfAnswer {
  readonly verdict: Verdict;
  readonly left: Amount;
  readonly payload: Payload;
  /** m/s; undefined: does not plane. */
  readonly planingSpeed: number | undefined;
  readonly topSpeed: number;
}

/** Mass of one more person when nobody says, kg (common practice, no source: an adult clothed, with their things). */
export const ONE_MORE = 85;

/** What the trip comes to with this load; undefined where it cannot be planned at all. */
export function whatIf(trip: Trip, waters: Waters | undefined, load: Load): WhatIfAnswer | undefined {
  const changed = { ...trip, load };
  const plan = planTrip(changed, waters);
  if (!plan.ok) return undefined;
  const { planingSpeed, topSpeed } = tripCurve(changed);
  const { verdict, left, payload } = plan.value;
  return { verdict, left: left.median, payload, planingSpeed, topSpeed: topSpeed.median };
}

/** The load without one; if that one steered, the first adult left does. */
export function leftBehind(load: Load, id: string): Load {
  const leaver = load.items.find((item) => item.id === id);
  const items = load.items.filter((item) => item !== leaver);
  const next = leaver?.helm ? items.find(({ kind }) => kind === 'adult') : undefined;
  return { ...load, items: items.map((item) => (item === next ? { ...item, helm: true } : item)) };
}

/** One more person on the free seat that suits the boat best; without a free seat they have none. */
export function oneMore(trip: Trip, mass: number, speed: number): Load {
  const { hull } = trip.craft;
  const { load } = trip;
  const ids = new Set(load.items.map(({ id }) => id));
  let id = 'one-more';
  while (ids.has(id)) id += '-more';
  const person: Aboard = { id, kind: 'adult', mass };
  const taken = new Set(load.items.map(({ at, station }) => (at ? undefined : station)));
  const free = hull.stations.filter(({ use, id: seat }) => use === 'seat' && !taken.has(seat));
  const withSeat = (station: string): Load => ({ ...load, items: [...load.items, { ...person, station }] });
  let best: { load: Load; cost: number } | undefined;
  for (const { id: seat } of free) {
    const tried = withSeat(seat);
    const cost = placementCost({ ...trip, load: tried }, { purpose: 'planing', speed });
    if (!best || cost < best.cost) best = { load: tried, cost };
  }
  return best?.load ?? { ...load, items: [...load.items, person] };
}
