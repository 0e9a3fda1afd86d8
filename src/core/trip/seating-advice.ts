import type { Position, Store } from '../craft/shapes.ts';
import { humpOf } from '../curve/hump.ts';
import { CALM, steady } from '../curve/steady.ts';
import { balanceAt, balanceBase } from '../load/balance.ts';
import { equilibrium, type Floating } from '../load/equilibrium.ts';
import type { Load } from '../load/shapes.ts';
import { weightOf } from '../load/weight-of.ts';
import type { Waters } from '../route/waters.ts';
import { planesFrom } from './attitude.ts';
import { planTrip } from './plan-trip.ts';
import { type Prepared, prepare } from './prepare.ts';
import { type Aim, aimFor } from './seating-aim.ts';
import { type Movable, movables, type Purpose } from './seating-places.ts';
import { bestPlacement, type Rest, spreadOf } from './seating-search.ts';
import type { Amount, Trip, Verdict } from './shapes.ts';
import { storeGiven } from './store-given.ts';
import { tripCurve } from './trip-curve.ts';

/** What a placement makes of the boat. Speeds m/s, angles degrees. */
export interface SeatingFigures {
  readonly lcg: number;
  readonly lcgShare: number;
  readonly lateral: number;
  readonly rest: Floating | undefined;
  /** Power over need at the hump; on the plane, bow down, from here on, undefined where it does not; and the top. */
  readonly humpMargin: number;
  readonly planingSpeed: number | undefined;
  readonly topSpeed: number;
  /** At the planned speed: trim, and use per metre through the water. */
  readonly runningTrimDeg: number;
  readonly perMetre: number;
  /** Of the trip, where it has a route. */
  readonly left: Amount | undefined;
  readonly verdict: Verdict | undefined;
}

export interface Move {
  readonly who: { readonly id: string } | { readonly store: number };
  readonly to: Position;
  /** Station it goes to. */
  readonly station: string | undefined;
}

export interface SeatingAdvice {
  readonly purpose: Purpose;
  /** The trip's load and store with the advice taken. */
  readonly load: Load;
  readonly store: Store;
  readonly moves: readonly Move[];
  readonly now: SeatingFigures;
  readonly advised: SeatingFigures;
  /**
   * Cost of both, of the best placement found, and below which none can be. The advice asks for as few moves as come
   * within `WORTH_MOVING` of the best. `exact`: all placements were looked at.
   */
  readonly cost: { readonly now: number; readonly advised: number; readonly best: number; readonly bound: number };
  readonly exact: boolean;
}

/** Share of power for which nobody and nothing is asked to move. */
export const WORTH_MOVING = 0.01;

/**
 * Where everybody, the gear and the loose tanks or batteries best go for a purpose, and what the present placement
 * costs against it. Undefined where more people are aboard than there are seats. `speed` is the planned one, m/s.
 */
export function seatingAdvice(
  trip: Trip,
  waters: Waters | undefined,
  { purpose, speed }: { readonly purpose: Purpose; readonly speed: number },
): SeatingAdvice | undefined {
  const judged = judge(trip, { purpose, speed });
  const { pieces, rest, aim, present } = judged;
  const found = bestPlacement(pieces, rest, aim);
  if (!found) return undefined;
  // Who has no place yet is where it does most harm.
  const costNow = present ? aim.cost(spreadOf(pieces, rest, present)) : aim.cost(presentSpread(trip));
  const places = present ? fewestMoves(judged, present, found) : found.places;
  const moves = movesOf(trip, pieces, places);
  const after = moved(trip, moves);
  return {
    purpose,
    load: after.load,
    store: after.craft.store,
    moves,
    now: figuresOf(trip, waters, speed),
    advised: figuresOf(after, waters, speed),
    cost: {
      now: costNow,
      advised: aim.cost(spreadOf(pieces, rest, places)),
      best: found.cost,
      bound: found.bound,
    },
    exact: found.exact,
  };
}

/** Moves taken back one by one, the least useful first, while the placement stays as good as the best. */
function fewestMoves(
  { pieces, rest, aim }: Judged,
  present: readonly Position[],
  found: { readonly places: readonly Position[]; readonly cost: number },
): readonly Position[] {
  const places = [...found.places];
  const same = (a: Position, b: Position) => a.x === b.x && a.y === b.y;
  for (;;) {
    let least: { index: number; cost: number } | undefined;
    for (let i = 0; i < pieces.length; i++) {
      const back = present[i]!;
      const taken = pieces[i]!.alone && places.some((place, j) => j !== i && pieces[j]!.alone && same(place, back));
      // Somebody on a tube or out of reach is not left there.
      if (same(places[i]!, back) || taken || !pieces[i]!.places.some((place) => same(place, back))) continue;
      const here = places[i]!;
      places[i] = back;
      const cost = aim.cost(spreadOf(pieces, rest, places));
      places[i] = here;
      if (cost <= found.cost + WORTH_MOVING && (!least || cost < least.cost)) least = { index: i, cost };
    }
    if (!least) return places;
    places[least.index] = present[least.index]!;
  }
}

/** Cost of the placement as it is, for a purpose; for comparing placements. */
export function placementCost(trip: Trip, asked: { readonly purpose: Purpose; readonly speed: number }): number {
  const { pieces, rest, aim, present } = judge(trip, asked);
  return aim.cost(present ? spreadOf(pieces, rest, present) : presentSpread(trip));
}

interface Judged {
  readonly pieces: readonly Movable[];
  readonly rest: Rest;
  readonly aim: Aim;
  /** Where everything movable is now; undefined where something has no place. */
  readonly present: readonly Position[] | undefined;
}

function judge(trip: Trip, { purpose, speed }: { readonly purpose: Purpose; readonly speed: number }): Judged {
  const prepared = prepare(trip, undefined);
  const { craft, load } = trip;
  const { fill, weighs, batteryTemperatureC } = storeGiven(trip);
  const pieces = movables(craft, load, weighs, purpose);
  const balance = balanceAt(balanceBase(craft, load), prepared.storeMass(weighs));
  const afloat = { mass: balance.allUpMass, lcg: balance.lcg, airArea: balance.airArea, charge: fill };
  const boat = prepared.boatAt(batteryTemperatureC);
  const aim = aimFor(purpose, craft, { boat, body: prepared.body, afloat, vcg: balance.vcg, speed });
  const present = pieces.map(({ now }) => now);
  return {
    pieces,
    rest: restOf(trip, pieces, prepared),
    aim,
    present: present.every((place) => place !== undefined) ? present : undefined,
  };
}

/** What is left when everything movable is out of the boat. */
function restOf(trip: Trip, pieces: readonly Movable[], { storeMass }: Prepared): Rest {
  const { craft, load } = trip;
  const { hull, drive, store } = craft;
  const items = new Set(pieces.flatMap(({ who }) => ('item' in who ? [who.item] : [])));
  const loose = new Set(pieces.flatMap(({ who }) => ('store' in who ? [who.store] : [])));
  const parts: { mass: number; at: Position }[] = [
    { mass: hull.mass, at: hull.centre },
    { mass: drive.mass, at: hull.engine },
  ];
  for (const item of load.items) {
    const at = item.at ?? hull.stations.find(({ id }) => id === item.station) ?? { x: 0, y: 0 };
    if (!items.has(item)) parts.push({ mass: item.mass, at });
  }
  if (store.kind === 'tank') {
    const capacity = store.tanks.reduce((sum, { capacityL }) => sum + capacityL, 0);
    const fuel = storeMass(storeGiven(trip).weighs);
    store.tanks.forEach(({ emptyMass, capacityL, at }, i) => {
      if (!loose.has(i)) parts.push({ mass: emptyMass + (fuel * capacityL) / capacity, at });
    });
  } else {
    store.batteries.forEach(({ mass, at }, i) => {
      if (!loose.has(i)) parts.push({ mass, at });
    });
  }
  const rest = { mass: 0, x: 0, y: 0, z: 0, xx: 0 };
  for (const { mass, at } of parts) {
    rest.mass += mass;
    rest.x += mass * at.x;
    rest.y += mass * at.y;
    rest.z += mass * (at.z ?? 0.45);
    rest.xx += mass * at.x * at.x;
  }
  return rest;
}

function presentSpread(trip: Trip) {
  const prepared = prepare(trip, undefined);
  const { lcg, lateral, vcg } = balanceAt(prepared.base, prepared.storeMass(storeGiven(trip).weighs));
  return { lcg, lateral, vcg, pitch: (0.2 * trip.craft.hull.wettedLength) ** 2 };
}

function movesOf({ craft }: Trip, pieces: readonly Movable[], places: readonly Position[]): Move[] {
  return pieces.flatMap(({ who, now }, i) => {
    const to = places[i]!;
    if (now && now.x === to.x && now.y === to.y) return [];
    const station = craft.hull.stations.find((one) => one === to)?.id;
    return [{ who: 'item' in who ? { id: who.item.id } : { store: who.store }, to, station }];
  });
}

/** The trip with moves made. */
export function moved(trip: Trip, moves: readonly Move[]): Trip {
  const { craft, load } = trip;
  const to = new Map<string | number, Move>(
    moves.map((move) => ['id' in move.who ? move.who.id : move.who.store, move]),
  );
  const items = load.items.map((item) => {
    const move = to.get(item.id);
    if (!move) return item;
    const { at: _at, station: _station, ...bare } = item;
    return move.station === undefined ? { ...bare, at: move.to } : { ...bare, station: move.station };
  });
  const placeOf = <T extends { readonly at: Position }>(holder: T, i: number): T => {
    const move = to.get(i);
    if (!move) return holder;
    const { x, y, z } = move.to;
    return { ...holder, at: { x, y, ...(z !== undefined && { z }) } };
  };
  const store: Store =
    craft.store.kind === 'tank'
      ? { ...craft.store, tanks: craft.store.tanks.map(placeOf) }
      : { ...craft.store, batteries: craft.store.batteries.map(placeOf) };
  return { ...trip, craft: { ...craft, store }, load: { ...load, items } };
}

/** What a placement makes of the boat and, where there is a route, of the trip. */
function figuresOf(trip: Trip, waters: Waters | undefined, speed: number): SeatingFigures {
  const prepared = prepare(trip, undefined);
  const { weighs, fill, batteryTemperatureC } = storeGiven(trip);
  const balance = balanceAt(prepared.base, prepared.storeMass(weighs));
  const boat = prepared.boatAt(batteryTemperatureC);
  const afloat = { mass: balance.allUpMass, lcg: balance.lcg, airArea: balance.airArea, charge: fill };
  const curve = tripCurve(trip);
  const running = steady(boat, afloat, speed);
  const plan = trip.route.waypoints.length > 1 ? planTrip(trip, waters, { quick: true }) : undefined;
  return {
    lcg: balance.lcg,
    lcgShare: balance.lcgShare,
    lateral: balance.lateral,
    rest: prepared.body && equilibrium(prepared.body, weightOf(balance), prepared.density),
    humpMargin: humpOf(boat, afloat, CALM).margin,
    planingSpeed: planesFrom(boat, afloat, curve),
    topSpeed: curve.topSpeed.median,
    runningTrimDeg: running.hull.trimDeg,
    perMetre: running.flow / speed,
    left: plan?.ok ? plan.value.left.median : undefined,
    verdict: plan?.ok ? plan.value.verdict : undefined,
  };
}
