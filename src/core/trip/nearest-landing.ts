import { legBetween } from '../route/distance.ts';
import { inSeason } from '../route/season.ts';
import type { LandingFeature, LatLon, PlannedSpeed } from '../route/shapes.ts';
import { splitLegs } from '../route/split-legs.ts';
import { takeRound } from '../route/take-round.ts';
import { type Waters, zonesAlong } from '../route/waters.ts';
import { afloatIn } from './afloat-in.ts';
import { DEPTH_WANTED } from './defaults.ts';
import { overWay } from './over-way.ts';
import type { Prepared } from './prepare.ts';
import type { Run } from './sail.ts';
import type { Amount } from './shapes.ts';
import type { Standing } from './standing.ts';

/** Where a landing is asked for: a waypoint as it is come to. */
export interface Asked {
  readonly at: LatLon;
  /** Leg that ends there, counted as sailed from 0. */
  readonly leg: number;
  /** s from departure */
  readonly arrives: number;
}

/** The landing that is reached soonest over water. Amounts kg or J, times s, distances m. */
export interface NearestLanding {
  readonly name: string;
  readonly at: LatLon;
  readonly distance: number;
  /** Infinity where the boat makes no way there at that hour. */
  readonly need: Amount;
  readonly time: number;
  readonly fuel: boolean;
  readonly power: boolean;
  /** As the waters say: by the tide, the wind or the season. */
  readonly usable?: string;
  /** Shoals that lie across the way, without a way round them. */
  readonly shoals: readonly string[];
}

/** Landings farther than this are no help, m. */
const FAR = 30_000;
/** Ways round that are looked for from one waypoint. */
const MOST_ROUNDS = 3;
/** Kept off land, shoals and keep-outs, m (common practice, no source). */
const CLEARANCE = 50;

/**
 * For each place the nearest landing that can be reached over water: straight where neither land, shoal nor keep-out in
 * season lies between, otherwise by a way round, looked for to the few nearest only. One place in each turn; undefined
 * where none is found. Landings that are known to have too little water on arrival do not count.
 */
export function* nearestLandings(
  { prepared, fuel: { run } }: Standing,
  places: readonly Asked[],
): Generator<NearestLanding | undefined, void> {
  const known = new Map<string, Way | undefined>();
  for (const place of places) yield nearest(prepared, run, place, known);
}

interface Way {
  /** From the place asked about to the landing, both included. */
  readonly track: readonly LatLon[];
  readonly distance: number;
  readonly shoals: readonly string[];
}

function nearest(
  prepared: Prepared,
  run: Run,
  place: Asked,
  known: Map<string, Way | undefined>,
): NearestLanding | undefined {
  const { waters } = prepared;
  if (!waters) return undefined;
  const near = waters.landings
    .map((landing) => ({ landing, straight: legBetween(place.at, placeOf(landing)).distance }))
    .filter(({ straight, landing }) => straight < FAR && !tooShallow(prepared, landing, place.arrives))
    .sort((a, b) => a.straight - b.straight);
  let best: { landing: LandingFeature; way: Way } | undefined;
  let rounds = 0;
  for (const { landing, straight } of near) {
    if (best && straight >= best.way.distance) break;
    const to = placeOf(landing);
    const key = `${place.at.lat} ${place.at.lon} ${to.lat} ${to.lon}`;
    let way = known.get(key);
    if (!known.has(key)) {
      const clear = clearOf(waters, place.at, to, prepared.trip.conditions.departure);
      if (!clear && ++rounds > MOST_ROUNDS) continue;
      way = clear ? { track: [place.at, to], distance: straight, shoals: [] } : roundTo(prepared, waters, place.at, to);
      known.set(key, way);
    }
    if (way && (!best || way.distance < best.way.distance)) best = { landing, way };
  }
  if (!best) return undefined;
  const { properties } = best.landing;
  return {
    name: properties.name,
    at: placeOf(best.landing),
    distance: best.way.distance,
    ...costOf(prepared, run, place, best.way),
    fuel: properties.fuel === true,
    power: properties.power === true,
    ...(properties.usable && { usable: properties.usable }),
    shoals: best.way.shoals,
  };
}

function placeOf({ geometry }: LandingFeature): LatLon {
  const [lon = 0, lat = 0] = geometry.coordinates;
  return { lat, lon };
}

function clearOf(waters: Waters, from: LatLon, to: LatLon, departure: string | undefined): boolean {
  const { crossings, outside } = zonesAlong(waters, from, to);
  return (
    !outside &&
    crossings.every(
      ({ kind, zone }) => kind === 'speed-limit' || (kind === 'keep-out' && !inSeason(zone.season, departure)),
    )
  );
}

function roundTo({ trip }: Prepared, waters: Waters, from: LatLon, to: LatLon): Way | undefined {
  const found = takeRound(waters, from, to, { clearance: CLEARANCE, departure: trip.conditions.departure });
  if (!found.ok) return undefined;
  const { via, distance, shoals } = found.value;
  return { track: [from, ...via, to], distance, shoals };
}

/** Known not to float the boat when it comes; a height that nobody tells keeps nobody away. */
function tooShallow({ around, trip }: Prepared, { properties }: LandingFeature, arrives: number): boolean {
  const { departs, height } = around;
  if (properties.dries_m === undefined || departs === undefined || !height) return false;
  const tide = height(departs + arrives);
  return tide.known && tide.height - properties.dries_m < (trip.policy.depth ?? DEPTH_WANTED);
}

/** Use and time of a way, at the speed planned for the leg that ends there, in the wind and stream of that hour. */
function costOf(prepared: Prepared, run: Run, { leg, arrives }: Asked, { track }: Way): { need: Amount; time: number } {
  const { scenario } = run;
  const speed: PlannedSpeed = run.sailed.find(({ stretch }) => stretch.leg === leg)?.stretch.speed ?? 'best';
  const legs = track.slice(1).map((to, i) => ({ from: track[i]!, to, part: 'home' as const, stop: 0, speed }));
  // As heavy as at departure: nobody knows how full it will be when somebody has to make for it.
  const afloat = afloatIn(prepared, scenario, prepared.storeMass(scenario.weighs));
  let need = 0;
  let time = 0;
  for (const piece of splitLegs(legs, prepared.waters).stretches) {
    const way = { ...piece, leg, distance: piece.distance * prepared.drawnFactor };
    const { ground, flow } = overWay(prepared, scenario, way, { at: arrives + time, afloat });
    if (!(ground > 0)) return { need: Infinity, time: Infinity };
    time += way.distance / ground;
    need += (flow * way.distance) / ground;
  }
  return { need, time };
}
