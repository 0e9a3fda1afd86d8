import type { Feature, LineString, Point, Position } from 'geojson';
import { selfCrossings } from './self-crossings.ts';
import type { LatLon, WatersFile, ZoneFeature } from './shapes.ts';
import { insideWaters, prepareWaters, type Waters, zonesAlong } from './waters.ts';
import { zoneOverlaps } from './zone-overlaps.ts';

/** What looks wrong in local waters though every value in them is sound. */
export interface ChartDoubt {
  readonly code:
    | 'crosses-itself'
    | 'overlap'
    | 'overlap-untold'
    | 'on-land'
    | 'route-over-land'
    | 'route-in-keep-out'
    | 'outside-box'
    | 'no-box'
    | 'no-land'
    | 'not-hourly';
  /** Place in the list of features; absent where it is about the whole. */
  readonly feature?: number;
  readonly other?: number;
  readonly at?: LatLon;
  /** m2 of an overlap, pairs untold, or legs of a route concerned. */
  readonly value?: number;
}

/** Looks over waters that have passed their door. Nothing here is an error; all of it wants a second look. */
export function chartDoubts(file: WatersFile): readonly ChartDoubt[] {
  const waters = prepareWaters(file);
  const doubts: ChartDoubt[] = [];
  if (!file.bbox) doubts.push({ code: 'no-box' });
  if (!waters.zones.some(({ kind }) => kind === 'land')) doubts.push({ code: 'no-land' });
  for (const [feature, one] of file.features.entries()) doubts.push(...featureDoubts(waters, one, feature));
  const zones = file.features.flatMap((one, feature) => (describesArea(one) ? [{ one, feature }] : []));
  const { overlaps, untold } = zoneOverlaps(zones.map(({ one }) => one));
  for (const { one, other, areaM2 } of overlaps) {
    doubts.push({ code: 'overlap', feature: zones[one]!.feature, other: zones[other]!.feature, value: areaM2 });
  }
  if (untold > 0) doubts.push({ code: 'overlap-untold', value: untold });
  for (const { path } of waters.streamsLeftOut)
    doubts.push({ code: 'not-hourly', feature: Number(path.split('.')[1]) });
  return doubts;
}

function featureDoubts(waters: Waters, one: Feature, feature: number): ChartDoubt[] {
  if (describesArea(one)) return areaDoubts(waters, one, feature);
  if (one.geometry.type === 'Point') return pointDoubts(waters, one as Feature<Point>, feature);
  if (one.geometry.type === 'LineString') return routeDoubts(waters, one as Feature<LineString>, feature);
  return [];
}

function areaDoubts(waters: Waters, { geometry }: ZoneFeature, feature: number): ChartDoubt[] {
  const parts = geometry.type === 'Polygon' ? [geometry.coordinates] : geometry.coordinates;
  const at = parts.flatMap((rings) => selfCrossings(rings, 1))[0];
  const doubts: ChartDoubt[] = at ? [{ code: 'crosses-itself', feature, at }] : [];
  if (!parts.flat(2).some((position) => insideWaters(waters, placeOf(position)))) {
    doubts.push({ code: 'outside-box', feature });
  }
  return doubts;
}

function pointDoubts(waters: Waters, { geometry }: Feature<Point>, feature: number): ChartDoubt[] {
  const at = placeOf(geometry.coordinates);
  if (!insideWaters(waters, at)) return [{ code: 'outside-box', feature, at }];
  const land = zonesAlong(waters, at, at).crossings.some(({ kind }) => kind === 'land');
  return land ? [{ code: 'on-land', feature, at }] : [];
}

function routeDoubts(waters: Waters, { geometry, properties }: Feature<LineString>, feature: number): ChartDoubt[] {
  const places = geometry.coordinates.map(placeOf);
  const closed = properties?.shape === 'loop' ? [...places, places[0]!] : places;
  const found = { land: [] as LatLon[], 'keep-out': [] as LatLon[], outside: [] as LatLon[] };
  for (let leg = 1; leg < closed.length; leg++) {
    const { crossings, outside } = zonesAlong(waters, closed[leg - 1]!, closed[leg]!);
    for (const kind of ['land', 'keep-out'] as const) {
      const met = crossings.find((crossing) => crossing.kind === kind);
      if (met) found[kind].push(met.at);
    }
    if (outside) found.outside.push(closed[leg]!);
  }
  const told = (code: ChartDoubt['code'], places: readonly LatLon[]): ChartDoubt[] =>
    places[0] ? [{ code, feature, at: places[0], value: places.length }] : [];
  return [
    ...told('route-over-land', found.land),
    ...told('route-in-keep-out', found['keep-out']),
    ...told('outside-box', found.outside),
  ];
}

function describesArea(feature: Feature): feature is ZoneFeature {
  return feature.geometry.type === 'Polygon' || feature.geometry.type === 'MultiPolygon';
}

function placeOf([lon = 0, lat = 0]: Position): LatLon {
  return { lat, lon };
}
