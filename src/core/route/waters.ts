import Flatbush from 'flatbush';
import type { Position } from 'geojson';
import type { Problem } from '../units/result.ts';
import type { StreamPlace } from '../water/shapes.ts';
import { interpolate, lonBetween } from './distance.ts';
import { type ChartBox, type EdgeTree, edgeTree } from './edge-tree.ts';
import type {
  Answerable,
  LandingFeature,
  LatLon,
  WatersFile,
  ZoneFeature,
  ZoneKind,
  ZoneProperties,
} from './shapes.ts';
import { streamPlaces } from './stream-places.ts';
import { boundsOf, unfolded } from './water-bounds.ts';
import { addMeetings, boxOf, type ChartLine, holds } from './zone-meetings.ts';

/** Local waters ready for many legs; made once by `prepareWaters`. */
export interface Waters {
  readonly name?: string;
  readonly answerable: Answerable;
  /** What is known, in chart degrees; x may pass 180. Undefined: nothing is. */
  readonly bounds: ChartBox | undefined;
  readonly landings: readonly LandingFeature[];
  /** Places whose streams are told by the hour from high water, and what is wrong with those left out. */
  readonly streams: readonly StreamPlace[];
  readonly streamsLeftOut: readonly Problem[];
  readonly zones: readonly ZoneProperties[];
  /** Polygons, each of the zone at the same place of `zoneOfPart`. */
  readonly parts: readonly EdgeTree[];
  readonly zoneOfPart: readonly number[];
  readonly index: Flatbush | undefined;
}

/** One stay of a leg in a zone. `from` and `to` are shares of the leg, 0 to 1; `at` is where the stay begins. */
export interface Crossing {
  readonly kind: ZoneKind;
  readonly zone: ZoneProperties;
  readonly from: number;
  readonly to: number;
  readonly at: LatLon;
}

export interface ZonesAlong {
  /** In order along the leg. */
  readonly crossings: readonly Crossing[];
  /** Some of the leg lies where nothing is known. */
  readonly outside: boolean;
}

const ZONE_KINDS: readonly unknown[] = ['land', 'shoal', 'speed-limit', 'keep-out'] satisfies ZoneKind[];

/** Stays shorter than this share of the leg are touches, not crossings. */
const TOUCH = 1e-9;

/** Indexes the zones, bounds and landings of local waters (RFC 7946). Without a bbox the shapes' own extent is known. */
export function prepareWaters(file: WatersFile): Waters {
  const zoneFeatures = file.features.filter(describesZone);
  const landings = file.features.filter(describesLanding);
  const bounds = boundsOf(file, [...zoneFeatures.flatMap(polygonsOf), [landings.map(placeOf)]]);
  const parts: EdgeTree[] = [];
  const zoneOfPart: number[] = [];
  zoneFeatures.forEach((feature, zone) => {
    for (const rings of polygonsOf(feature)) {
      const part = edgeTree(rings, (lon) => unfolded(lon, bounds));
      if (part.numbers.length === 0) continue;
      parts.push(part);
      zoneOfPart.push(zone);
    }
  });
  const index = parts.length > 0 ? new Flatbush(parts.length) : undefined;
  for (const part of parts) index?.add(part.minX, part.minY, part.maxX, part.maxY);
  index?.finish();
  const { places, leftOut } = streamPlaces(file);
  return {
    name: file.name,
    answerable: { responsible: file.responsible, surveyed: file.surveyed, validUntil: file.validUntil },
    bounds,
    landings,
    streams: places,
    streamsLeftOut: leftOut,
    zones: zoneFeatures.map((feature) => feature.properties),
    parts,
    zoneOfPart,
    index,
  };
}

/** Where the leg between two points runs inside zones, edges included, and whether it leaves the known waters. */
export function zonesAlong(waters: Waters, from: LatLon, to: LatLon): ZonesAlong {
  const line = chartLine(waters, from, to);
  const spans = new Map<number, Span[]>();
  const box = boxOf(line);
  for (const part of waters.index?.search(box.minX, box.minY, box.maxX, box.maxY) ?? []) {
    const zone = waters.zoneOfPart[part]!;
    const inside = spansInside(waters.parts[part]!, line);
    if (inside.length === 0) continue;
    const before = spans.get(zone);
    if (before) before.push(...inside);
    else spans.set(zone, inside);
  }
  const crossings: Crossing[] = [];
  for (const [index, found] of spans) {
    const zone = waters.zones[index]!;
    for (const span of joined(found)) {
      crossings.push({ kind: zone.kind, zone, ...span, at: interpolate(from, to, span.from) });
    }
  }
  crossings.sort((a, b) => a.from - b.from);
  return { crossings, outside: !known(waters, line.x0, line.y0) || !known(waters, line.x1, line.y1) };
}

/** Whether a point lies where the local waters say what is there. */
export function insideWaters(waters: Waters, point: LatLon): boolean {
  const { x0, y0 } = chartLine(waters, point, point);
  return known(waters, x0, y0);
}

interface Span {
  readonly from: number;
  readonly to: number;
}

/** Cuts the line at every edge it meets and asks of each piece's middle whether it is inside. */
function spansInside(part: EdgeTree, line: ChartLine): Span[] {
  const cuts: number[] = [0, 1];
  addMeetings(part, line, cuts);
  cuts.sort((a, b) => a - b);
  const spans: Span[] = [];
  let from = 0;
  for (const to of cuts) {
    if (to - from <= TOUCH) continue;
    const middle = (from + to) / 2;
    if (holds(part, line.x0 + (line.x1 - line.x0) * middle, line.y0 + (line.y1 - line.y0) * middle))
      spans.push({ from, to });
    from = to;
  }
  return joined(spans);
}

/** Spans in order, those that meet or overlap made one. */
function joined(spans: readonly Span[]): Span[] {
  const result: Span[] = [];
  for (const span of [...spans].sort((a, b) => a.from - b.from)) {
    const last = result[result.length - 1];
    if (last && span.from - last.to <= TOUCH)
      result[result.length - 1] = { from: last.from, to: Math.max(last.to, span.to) };
    else result.push(span);
  }
  return result;
}

/** Longitude as these waters count it, so that it is continuous across them. */
export function chartX({ bounds }: Waters, lon: number): number {
  const centre = bounds ? (bounds.minX + bounds.maxX) / 2 : 0;
  return centre + lonBetween(centre, lon);
}

function chartLine(waters: Waters, from: LatLon, to: LatLon): ChartLine {
  const x0 = chartX(waters, from.lon);
  return { x0, y0: from.lat, x1: x0 + lonBetween(from.lon, to.lon), y1: to.lat };
}

function known({ bounds }: Waters, x: number, y: number): boolean {
  return bounds !== undefined && x >= bounds.minX && x <= bounds.maxX && y >= bounds.minY && y <= bounds.maxY;
}

function describesZone(feature: WatersFile['features'][number]): feature is ZoneFeature {
  const { geometry, properties } = feature;
  return (geometry?.type === 'Polygon' || geometry?.type === 'MultiPolygon') && ZONE_KINDS.includes(properties?.kind);
}

function describesLanding(feature: WatersFile['features'][number]): feature is LandingFeature {
  return feature.geometry?.type === 'Point' && feature.properties?.kind === 'landing';
}

function polygonsOf({ geometry }: ZoneFeature): Position[][][] {
  return geometry.type === 'Polygon' ? [geometry.coordinates] : geometry.coordinates;
}

function placeOf(landing: LandingFeature): Position {
  return landing.geometry.coordinates;
}
