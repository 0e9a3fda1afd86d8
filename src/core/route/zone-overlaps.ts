import { area } from '@turf/area';
import { intersect } from '@turf/intersect';
import type { MultiPolygon, Polygon, Position } from 'geojson';
import type { ZoneFeature } from './shapes.ts';

export interface ZoneOverlap {
  /** Places of the two in the list. */
  readonly one: number;
  readonly other: number;
  readonly areaM2: number;
}

/** Less than this, m2, is left by rounding along a common edge. */
const ROUNDING = 100;
/** Pairs with more positions than this are too slow to cut while somebody draws. */
const MOST_POSITIONS = 20_000;

/** Zones of the same kind that lie over each other, and how many pairs could not be told. */
export function zoneOverlaps(zones: readonly ZoneFeature[]): {
  readonly overlaps: readonly ZoneOverlap[];
  readonly untold: number;
} {
  const boxes = zones.map(({ geometry }) => boxOf(geometry));
  const overlaps: ZoneOverlap[] = [];
  let untold = 0;
  for (let one = 0; one < zones.length; one++) {
    for (let other = one + 1; other < zones.length; other++) {
      const [a, b] = [zones[one]!, zones[other]!];
      const [boxA, boxB] = [boxes[one]!, boxes[other]!];
      if (a.properties.kind !== b.properties.kind || !meet(boxA, boxB)) continue;
      if (boxA.count + boxB.count > MOST_POSITIONS) {
        untold++;
        continue;
      }
      const areaM2 = shared(a, b);
      if (areaM2 === undefined) untold++;
      else if (areaM2 > ROUNDING) overlaps.push({ one, other, areaM2 });
    }
  }
  return { overlaps, untold };
}

/** m2 that two zones share; undefined where the cutter gives up, as on outlines that cross themselves. */
function shared(a: ZoneFeature, b: ZoneFeature): number | undefined {
  try {
    const features = [a, b].map(({ geometry }) => ({ type: 'Feature' as const, properties: {}, geometry }));
    const found = intersect({ type: 'FeatureCollection', features });
    return found ? area(found) : 0;
  } catch {
    return undefined;
  }
}

interface Box {
  west: number;
  south: number;
  east: number;
  north: number;
  count: number;
}

function boxOf({ type, coordinates }: Polygon | MultiPolygon): Box {
  const box: Box = { west: Infinity, south: Infinity, east: -Infinity, north: -Infinity, count: 0 };
  const rings: Position[][] = type === 'Polygon' ? coordinates : coordinates.flat();
  for (const ring of rings) {
    for (const [lon = 0, lat = 0] of ring) {
      box.west = Math.min(box.west, lon);
      box.east = Math.max(box.east, lon);
      box.south = Math.min(box.south, lat);
      box.north = Math.max(box.north, lat);
      box.count++;
    }
  }
  return box;
}

function meet(a: Box, b: Box): boolean {
  return a.west < b.east && b.west < a.east && a.south < b.north && b.south < a.north;
}
