import { readWaters } from '../../core/files/waters-file.ts';
import { legBetween } from '../../core/route/distance.ts';
import type { LatLon } from '../../core/route/shapes.ts';
import { prepareWaters, zonesAlong } from '../../core/route/waters.ts';
import { geometryOf, outlinesOf, type Sheet } from './sheet.ts';

/** How near a tap has to be to a point or a set route's bend, m. */
const NEAR = 150;

/** The feature at a place: a point nearby first, then the smallest zone; undefined where there is open water. */
export function featureUnder(sheet: Sheet, at: LatLon): number | undefined {
  let best: { index: number; distance: number } | undefined;
  const areas: number[] = [];
  for (const [index, feature] of sheet.features.entries()) {
    const type = geometryOf(feature)?.type;
    if (type === 'Polygon' || type === 'MultiPolygon') {
      areas.push(index);
      continue;
    }
    for (const place of outlinesOf(feature)[0]?.places ?? []) {
      const { distance } = legBetween(at, place);
      if (distance < NEAR && (!best || distance < best.distance)) best = { index, distance };
    }
  }
  if (best) return best.index;
  const holding = areas.filter((index) => {
    const read = readWaters({ type: 'FeatureCollection', features: [sheet.features[index]] });
    return read.ok && zonesAlong(prepareWaters(read.value), at, at).crossings.length > 0;
  });
  const corners = (index: number) => extent(outlinesOf(sheet.features[index])[0]?.places ?? []);
  return holding.sort((a, b) => corners(a) - corners(b))[0];
}

/** Size of the box round places, square degrees; enough to tell the smaller of two. */
function extent(places: readonly LatLon[]): number {
  const lats = places.map(({ lat }) => lat);
  const lons = places.map(({ lon }) => lon);
  const span = (values: readonly number[]) =>
    values.reduce((most, value) => Math.max(most, value), -Infinity) -
    values.reduce((least, value) => Math.min(least, value), Infinity);
  return span(lats) * span(lons);
}
