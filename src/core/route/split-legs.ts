import { KNOT } from '../units/convert.ts';
import { interpolate, legBetween } from './distance.ts';
import type { SailedLeg } from './sailed-legs.ts';
import type { LatLon, PlannedSpeed, ZoneProperties } from './shapes.ts';
import { type Crossing, insideWaters, type Waters, zonesAlong } from './waters.ts';

/** A sailed leg, or the part of it under one speed limit or under none. */
export interface Stretch {
  /** Index of its sailed leg. */
  readonly leg: number;
  readonly from: LatLon;
  readonly to: LatLon;
  readonly part: 'out' | 'home';
  /** m */
  readonly distance: number;
  readonly trackDeg: number;
  readonly speed: PlannedSpeed;
  /** Lowest speed limit here, m/s through the water, and the zone that sets it. */
  readonly limit?: number;
  readonly limitName?: string;
  /** Time stood still at its end, s. */
  readonly stop: number;
  /** Share of capacity to which tank or battery is filled at its end. */
  readonly refill?: number;
  /** Name of the place whose stream it takes; absent: the nearest. */
  readonly streamPlace?: string;
  /** Its place among all stretches, where they are cut short for what changes by place. */
  readonly spot?: number;
}

/** What a leg should not cross, or that it leaves the known waters. `at` is where that begins. */
export interface Hazard {
  readonly kind: 'land' | 'keep-out' | 'shoal' | 'outside';
  readonly leg: number;
  readonly at: LatLon;
  /** m of the leg inside; absent for `outside`. */
  readonly length?: number;
  /** Absent for `outside`. */
  readonly name?: string;
  readonly zone?: ZoneProperties;
}

export interface SplitLegs {
  readonly stretches: readonly Stretch[];
  readonly hazards: readonly Hazard[];
}

/** Limits that begin or end this near to each other or to a waypoint, m, are one: errors of position are larger. */
const SHORTEST_STRETCH = 1;

/** Cuts sailed legs where speed limits begin and end, and lists what they cross. Without waters nothing is cut or found. */
export function splitLegs(legs: readonly SailedLeg[], waters: Waters | undefined): SplitLegs {
  const stretches: Stretch[] = [];
  const hazards: Hazard[] = [];
  legs.forEach((leg, index) => {
    const whole = legBetween(leg.from, leg.to);
    const along = waters ? zonesAlong(waters, leg.from, leg.to) : { crossings: [], outside: false };
    const pieces = piecesOf(along.crossings, whole.distance);
    for (const { from, to, governing } of pieces) {
      stretches.push({
        leg: index,
        from: interpolate(leg.from, leg.to, from),
        to: interpolate(leg.from, leg.to, to),
        part: leg.part,
        distance: whole.distance * (to - from),
        trackDeg: whole.trackDeg,
        speed: leg.speed,
        limit: governing && limitOf(governing),
        limitName: governing?.name,
        stop: to === 1 ? leg.stop : 0,
        refill: to === 1 ? leg.refill : undefined,
        streamPlace: leg.streamPlace,
      });
    }
    for (const { kind, zone, from, to, at } of along.crossings) {
      if (kind === 'speed-limit') continue;
      hazards.push({ kind, leg: index, at, length: whole.distance * (to - from), name: zone.name, zone });
    }
    if (waters && along.outside) {
      hazards.push({ kind: 'outside', leg: index, at: insideWaters(waters, leg.from) ? leg.to : leg.from });
    }
  });
  return { stretches, hazards };
}

function limitOf(zone: ZoneProperties): number | undefined {
  return zone.limit_kn === undefined ? undefined : zone.limit_kn * KNOT;
}

interface Piece {
  readonly from: number;
  readonly to: number;
  readonly governing: ZoneProperties | undefined;
}

/** Shares of a leg, each with the limit that governs it; neighbours differ in it. */
function piecesOf(crossings: readonly Crossing[], distance: number): Piece[] {
  const shortest = distance > SHORTEST_STRETCH ? SHORTEST_STRETCH / distance : 1;
  const limits = crossings.filter(
    ({ kind, zone, from, to }) => kind === 'speed-limit' && limitOf(zone) !== undefined && to - from >= shortest,
  );
  const cuts = [0];
  for (const share of limits.flatMap(({ from, to }) => [from, to]).sort((a, b) => a - b)) {
    if (share - cuts[cuts.length - 1]! >= shortest && 1 - share >= shortest) cuts.push(share);
  }
  const pieces: Piece[] = [];
  cuts.forEach((from, cut) => {
    const to = cuts[cut + 1] ?? 1;
    const governing = lowest(limits, (from + to) / 2);
    const last = pieces[pieces.length - 1];
    if (last && last.governing === governing) pieces[pieces.length - 1] = { from: last.from, to, governing };
    else pieces.push({ from, to, governing });
  });
  return pieces;
}

function lowest(limits: readonly Crossing[], share: number): ZoneProperties | undefined {
  let governing: ZoneProperties | undefined;
  for (const { zone, from, to } of limits) {
    if (share < from || share > to) continue;
    if (!governing || zone.limit_kn! < governing.limit_kn!) governing = zone;
  }
  return governing;
}
