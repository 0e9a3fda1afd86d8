import { legBetween } from './distance.ts';
import { visitEdgesNear } from './edges-near.ts';
import { inSeason } from './season.ts';
import type { LatLon, ZoneProperties } from './shapes.ts';
import { chartX, type Waters } from './waters.ts';
import { holds } from './zone-meetings.ts';

/** A place in a plane of metres, straight where the chart is straight. */
export interface Place {
  readonly x: number;
  readonly y: number;
}

/** What a track is taken round. */
export interface Obstacles {
  readonly waters: Waters;
  /** Metres per degree of longitude and latitude here; below 1 % off within 0.5 degrees of latitude at 60 north. */
  readonly kx: number;
  readonly ky: number;
  /** By polygon of the waters. */
  readonly bars: readonly Bar[];
}

/** Not to be entered; to be kept off where there is a way; a shoal that an end lies on, to be left soon; or no matter. */
export type Bar = 'hard' | 'soft' | 'beach' | 'none';

/** Land, keep-outs in season on an ISO 8601 date (or unknown) and shoals, measured about a place. */
export function obstaclesOf(waters: Waters, about: LatLon, departure: string | undefined): Obstacles {
  const lat = Math.max(-84, Math.min(84, about.lat));
  const kx = legBetween({ lat, lon: 0 }, { lat, lon: 0.1 }).distance * 10;
  const ky = legBetween({ lat: lat - 0.05, lon: 0 }, { lat: lat + 0.05, lon: 0 }).distance * 10;
  return { waters, kx, ky, bars: waters.zoneOfPart.map((zone) => barOf(waters.zones[zone]!, departure)) };
}

function barOf({ kind, season }: ZoneProperties, departure: string | undefined): Bar {
  switch (kind) {
    case 'land':
      return 'hard';
    case 'keep-out':
      return inSeason(season, departure) ? 'hard' : 'none';
    case 'shoal':
      return 'soft';
    case 'speed-limit':
      return 'none';
    default:
      return kind satisfies never;
  }
}

export function placeOf({ waters, kx, ky }: Obstacles, point: LatLon): Place {
  return { x: chartX(waters, point.lon) * kx, y: point.lat * ky };
}

/** Calls `see` with edges of one polygon, m, that may lie within reach of a track, until it says true. */
export function edgesNear(
  { waters, kx, ky }: Obstacles,
  part: number,
  [from, to]: readonly [Place, Place],
  reach: number,
  see: (ax: number, ay: number, bx: number, by: number) => boolean,
): boolean {
  const line = { x0: from.x / kx, y0: from.y / ky, x1: to.x / kx, y1: to.y / ky };
  return visitEdgesNear(waters.parts[part]!, line, { x: reach / kx, y: reach / ky }, (ax, ay, bx, by) =>
    see(ax * kx, ay * ky, bx * kx, by * ky),
  );
}

/** Polygons whose box comes within reach of the box of a track, m. */
export function partsNear({ waters, kx, ky, bars }: Obstacles, from: Place, to: Place, reach: number): number[] {
  return (
    waters.index?.search(
      (Math.min(from.x, to.x) - reach) / kx,
      (Math.min(from.y, to.y) - reach) / ky,
      (Math.max(from.x, to.x) + reach) / kx,
      (Math.max(from.y, to.y) + reach) / ky,
      (part) => bars[part] !== 'none',
    ) ?? []
  );
}

/** How far the nearest edge of what bars the way is, m, up to `most`; `of` chooses which bars count. */
export function roomAt(obstacles: Obstacles, at: Place, most: number, of?: 'hard'): number {
  let least = most;
  for (const part of partsNear(obstacles, at, at, most)) {
    if (of ? obstacles.bars[part] !== of : obstacles.bars[part] === 'beach') continue;
    edgesNear(obstacles, part, [at, at], least, (ax, ay, bx, by) => {
      least = Math.min(least, distanceToEdge(at, ax, ay, bx, by));
      return false;
    });
  }
  return least;
}

/** Polygons that hold a place. */
export function partsAt(obstacles: Obstacles, at: Place): number[] {
  const { waters, kx, ky } = obstacles;
  return partsNear(obstacles, at, at, 0).filter((part) => holds(waters.parts[part]!, at.x / kx, at.y / ky));
}

/** The same with the shoals that hold one of these places as beaches. */
export function withBeaches(obstacles: Obstacles, places: readonly Place[]): Obstacles {
  const bars = [...obstacles.bars];
  for (const part of places.flatMap((place) => partsAt(obstacles, place))) {
    if (bars[part] === 'soft') bars[part] = 'beach';
  }
  return { ...obstacles, bars };
}

function distanceToEdge({ x, y }: Place, ax: number, ay: number, bx: number, by: number): number {
  const sx = bx - ax;
  const sy = by - ay;
  const long2 = sx * sx + sy * sy;
  const share = long2 > 0 ? Math.min(1, Math.max(0, ((x - ax) * sx + (y - ay) * sy) / long2)) : 0;
  const dx = x - ax - share * sx;
  const dy = y - ay - share * sy;
  return Math.sqrt(dx * dx + dy * dy);
}
