import type { Position } from 'geojson';
import type { LandingFeature, LatLon, WatersFile, ZoneFeature, ZoneProperties } from '../../core/route/shapes.ts';
import type { Measure } from '../../core/trip/shapes.ts';
import { KNOT } from '../../core/units/convert.ts';
import type { Measures } from '../units/measures.ts';
import { mapWords as words } from './words.ts';

/** A word on the map. Where two would overlap, the one with the lower rank stays. */
export interface MapLabel {
  /** Where it may stand, best first. */
  readonly at: readonly LatLon[];
  readonly text: string;
  readonly kind: 'landing' | ZoneProperties['kind'];
  readonly rank: number;
}

/** Shares of an area's height at which its word may stand. */
const HEIGHTS = [0.5, 0.7, 0.3, 0.85, 0.15];

const RANKS: Record<MapLabel['kind'], number> = {
  'speed-limit': 0,
  'keep-out': 1,
  landing: 2,
  shoal: 3,
  land: 4,
};

/** The words of local waters, most needed first: limits, keep-outs, landings, shoals, names of land. */
export function watersLabels(waters: WatersFile | undefined, measures: Measures): MapLabel[] {
  const labels: MapLabel[] = [];
  for (const feature of waters?.features ?? []) {
    const label = isZone(feature)
      ? zoneLabel(feature, measures)
      : isLanding(feature)
        ? landingLabel(feature)
        : undefined;
    if (label) labels.push(label);
  }
  return labels.sort((a, b) => a.rank - b.rank);
}

export function isZone(feature: WatersFile['features'][number]): feature is ZoneFeature {
  const { type } = feature.geometry ?? {};
  const kind = feature.properties?.kind;
  return (type === 'Polygon' || type === 'MultiPolygon') && kind !== 'landing' && kind in RANKS;
}

function isLanding(feature: WatersFile['features'][number]): feature is LandingFeature {
  return feature.geometry?.type === 'Point' && feature.properties?.kind === 'landing';
}

function zoneLabel({ geometry, properties }: ZoneFeature, measures: Measures): MapLabel | undefined {
  const rings = geometry.type === 'Polygon' ? [geometry.coordinates[0]] : geometry.coordinates.map((one) => one[0]);
  const largest = rings.reduce((best, ring) => ((ring?.length ?? 0) > (best?.length ?? 0) ? ring : best));
  const at = HEIGHTS.map((share) => insidePoint(largest ?? [], share)).filter((point) => point !== undefined);
  const { kind } = properties;
  return { at, kind, rank: RANKS[kind], text: zoneText(properties, measures) };
}

function zoneText({ kind, name, limit_kn, dries_m }: ZoneProperties, measures: Measures): string {
  switch (kind) {
    case 'speed-limit':
      return limit_kn === undefined ? name : plainly('speed', limit_kn * KNOT, measures);
    case 'keep-out':
      return name;
    case 'shoal':
      if (dries_m === undefined) return name;
      return dries_m > 0
        ? words.shoalDries(name, plainly('length', dries_m, measures))
        : words.shoalDeep(name, plainly('length', -dries_m, measures));
    case 'land':
      return name;
    default:
      return kind satisfies never;
  }
}

/** A round figure from a sign or a chart, without decimals that it never had. */
function plainly(measure: Measure, si: number, measures: Measures): string {
  return `${measures.figure(measure, si)}\u00a0${measures.unit(measure)}`;
}

function landingLabel({ geometry, properties }: LandingFeature): MapLabel {
  const [lon = 0, lat = 0] = geometry.coordinates;
  return { at: [{ lat, lon }], kind: 'landing', rank: RANKS.landing, text: properties.name };
}

/** A point inside a ring: the middle of its widest stretch at a share of its height. */
export function insidePoint(ring: readonly Position[], share: number): LatLon | undefined {
  let south = Infinity;
  let north = -Infinity;
  // By index: coasts are long, and this is among the first things a phone does.
  for (let i = 0; i < ring.length; i++) {
    const lat = ring[i]![1] ?? 0;
    if (lat < south) south = lat;
    if (lat > north) north = lat;
  }
  // A hair off, so that the line runs through no vertex of a square grid.
  const lat = south + (north - south) * share + 1e-9;
  const crossings: number[] = [];
  for (let i = 1; i < ring.length; i++) {
    const lat1 = ring[i - 1]![1] ?? 0;
    const lat2 = ring[i]![1] ?? 0;
    if (lat1 > lat === lat2 > lat) continue;
    const lon1 = ring[i - 1]![0] ?? 0;
    const lon2 = ring[i]![0] ?? 0;
    crossings.push(lon1 + ((lat - lat1) / (lat2 - lat1)) * (lon2 - lon1));
  }
  crossings.sort((a, b) => a - b);
  let best: LatLon | undefined;
  let widest = 0;
  for (let i = 1; i < crossings.length; i += 2) {
    const width = crossings[i]! - crossings[i - 1]!;
    if (width > widest) best = { lat, lon: crossings[i - 1]! + width / 2 };
    widest = Math.max(widest, width);
  }
  return best;
}

/** CSS pixels: the middle of a word and what it takes up. */
export interface LabelBox {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/**
 * For each word the place it gets, as an index into its boxes, or -1 where none is free. Earlier words go first, `taken`
 * before all; at most `most` words.
 */
export function withoutOverlap(words: readonly (readonly LabelBox[])[], taken: LabelBox[], most: number): number[] {
  const used = [...taken];
  let free = most;
  return words.map((boxes) => {
    if (free <= 0) return -1;
    const chosen = boxes.findIndex((box) => used.every((other) => apart(box, other)));
    if (chosen >= 0) {
      used.push(boxes[chosen]!);
      free--;
    }
    return chosen;
  });
}

function apart(a: LabelBox, b: LabelBox): boolean {
  return Math.abs(a.x - b.x) * 2 >= a.width + b.width || Math.abs(a.y - b.y) * 2 >= a.height + b.height;
}

export function inside({ x, y, width, height }: LabelBox, view: { width: number; height: number }): boolean {
  return x * 2 >= width && y * 2 >= height && (view.width - x) * 2 >= width && (view.height - y) * 2 >= height;
}
