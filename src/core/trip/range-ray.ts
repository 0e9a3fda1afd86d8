import { chartable, compass, destination, legBetween } from '../route/distance.ts';
import { inSeason } from '../route/season.ts';
import type { LatLon, PlannedSpeed } from '../route/shapes.ts';
import { type Hazard, type Stretch, splitLegs } from '../route/split-legs.ts';
import type { Waters } from '../route/waters.ts';
import { needPerMetre } from './per-metre.ts';
import type { Prepared } from './prepare.ts';
import type { Run } from './sail.ts';

/** How far in one direction, and what ends it there. */
export interface Reach {
  /** As sailed, m: drawn distance times the drawn factor. */
  readonly distance: number;
  /** Where that ends on the chart. */
  readonly at: LatLon;
  /**
   * `store`: what may be used is used; `land`, `keep-out`: the next stands in the way; `no-headway`: wind or stream let
   * nobody get on there or back; `far`: farther than anybody plans for.
   */
  readonly ends: 'store' | 'land' | 'keep-out' | 'no-headway' | 'far';
  /** Of the land or keep-out. */
  readonly name?: string;
}

export interface OutlinePoint {
  readonly bearingDeg: number;
  readonly outAndHome: Reach;
  readonly oneWay: Reach;
}

/** Nobody plans farther than this, m. */
export const FARTHEST = 200_000;

/** What the rays of one outline share. */
export interface Rays {
  readonly prepared: Prepared;
  readonly run: Run;
  readonly waters: Waters | undefined;
  readonly place: LatLon;
  readonly speed: PlannedSpeed;
  /** m drawn, beyond which nothing is known of land and limits */
  readonly length: number;
  /** Use per metre by part, track and limit. */
  readonly costs: Map<string, number>;
}

/** How far in one direction on what may be used out and home, and one way, kg or J. */
export function reachesAlong(ray: Rays, bearingDeg: number, spare: number, spareOneWay: number): OutlinePoint {
  const { prepared, waters, place, length } = ray;
  const cost = costsAlong(ray, bearingDeg);
  let to = destination(place, bearingDeg, length);
  // Towards a pole no leg is laid past the last parallel.
  for (let less = length / 2; !chartable(to); less /= 2) to = destination(place, bearingDeg, less);
  const leg = { from: place, to, part: 'out' as const, stop: 0, speed: ray.speed };
  const cut = waters ? splitLegs([leg], waters) : { stretches: [], hazards: [] };
  const bar = firstBar(cut.hazards, prepared.trip.conditions.departure);
  const barAt = bar ? legBetween(place, bar.at).distance * prepared.drawnFactor : Infinity;
  const reach = (budget: number, which: 'both' | 'alone'): Reach => {
    const { distance, ends } = walked(
      cut.stretches,
      prepared.drawnFactor,
      budget,
      barAt,
      (limit) => cost(limit)[which],
    );
    const at = destination(place, bearingDeg, distance / prepared.drawnFactor);
    return { distance, at, ...(ends === 'bar' ? { ends: bar!.kind, name: bar!.name } : { ends }) };
  };
  return { bearingDeg, outAndHome: reach(spare, 'both'), oneWay: reach(spareOneWay, 'alone') };
}

interface Costs {
  /** Out and home over the same metre, and one way. */
  readonly both: number;
  readonly alone: number;
}

/** Use per metre in a direction under a speed limit or none. */
function costsAlong(
  { prepared, run, place, speed, costs }: Rays,
  bearingDeg: number,
): (limit: number | undefined) => Costs {
  const { headwindHome, foulHome, oneWay } = run.scenario;
  // Where wind and stream are known the way home costs what the way out would in that direction.
  const told = oneWay || (headwindHome === undefined && foulHome === undefined);
  const cost = (part: 'out' | 'home' | 'alone', trackDeg: number, limit: number | undefined): number => {
    const key = `${told ? 'out' : part} ${trackDeg} ${limit}`;
    let known = costs.get(key);
    if (known === undefined) {
      const scenario = part === 'alone' ? { ...run.scenario, oneWay: true } : run.scenario;
      const slowed = limit === undefined ? {} : { limit };
      const way = part === 'home' ? part : 'out';
      const stretch = {
        leg: 0,
        from: place,
        to: place,
        part: way,
        distance: 1,
        trackDeg,
        speed,
        ...slowed,
        stop: 0,
      } as const;
      known = needPerMetre(prepared, { ...scenario, waves: undefined }, stretch, run.time);
      costs.set(key, known);
    }
    return known;
  };
  return (limit) => {
    const out = cost('out', bearingDeg, limit);
    // Nobody promised a one-way trip fair wind and stream: what is unknown stands against it too.
    const alone = cost('alone', bearingDeg, limit);
    return { both: out + cost('home', compass(bearingDeg + 180), limit), alone: Math.max(out, alone) };
  };
}

/** Walks stretches of the ray, then open water, until the budget is used or something bars the way; distances sailed, m. */
function walked(
  stretches: readonly Stretch[],
  factor: number,
  budget: number,
  barAt: number,
  perMetre: (limit: number | undefined) => number,
): { distance: number; ends: 'store' | 'bar' | 'no-headway' | 'far' } {
  let left = budget;
  let distance = 0;
  const most = Math.min(barAt, FARTHEST);
  for (const { limit, distance: drawn } of [...stretches, { limit: undefined, distance: Infinity }]) {
    const cost = perMetre(limit);
    if (cost === Infinity) return { distance, ends: 'no-headway' };
    const room = Math.min(drawn * factor, most - distance);
    if (cost * room > left) return { distance: distance + left / cost, ends: 'store' };
    left -= cost * room;
    distance += room;
    if (distance >= most) return { distance: most, ends: barAt <= FARTHEST ? 'bar' : 'far' };
  }
  return { distance, ends: 'far' };
}

export type Bar = Hazard & { readonly kind: 'land' | 'keep-out' };

/** The first land, or keep-out in season, among hazards of one leg. */
export function firstBar(hazards: readonly Hazard[], departure: string | undefined): Bar | undefined {
  return hazards.find(
    (hazard): hazard is Bar =>
      hazard.kind === 'land' || (hazard.kind === 'keep-out' && inSeason(hazard.zone?.season, departure)),
  );
}
