import type { Interval } from '../water/depth-windows.ts';
import { type DepthWindows, depthWindows } from '../water/depth-windows.ts';
import type { HeightAt } from '../water/tide-height.ts';
import { DEPTH_WANTED } from './defaults.ts';
import { WEATHER } from './judge-depth.ts';
import type { Prepared } from './prepare.ts';

/** When a shoal on the route or a landing has water enough. */
export interface DepthHours extends DepthWindows {
  readonly kind: 'shoal' | 'landing';
  readonly name: string;
  /** Height above chart datum, m; negative is a least depth. */
  readonly dries: number;
  /** Depth asked for, the allowance for weather included, m. */
  readonly depth: number;
}

/** Landings told at most, nearest to the start first. */
const MOST_LANDINGS = 12;

/**
 * The hours of a span at which the shoals that the route crosses and the landings whose height is told have the depth
 * wanted, with 0.3 m more for pressure and wind, as the plan asks it. Empty where no height of the tide is told.
 */
export function depthHours(
  { trip, waters, hazards, around }: Pick<Prepared, 'trip' | 'waters' | 'hazards' | 'around'>,
  span: Interval,
  heightAt: HeightAt | undefined = around.height,
): readonly DepthHours[] {
  if (!heightAt) return [];
  const depth = (trip.policy.depth ?? DEPTH_WANTED) + WEATHER;
  const shallow = new Map<string, { kind: DepthHours['kind']; name: string; dries: number }>();
  for (const { kind, zone } of hazards) {
    const dries = zone?.dries_m;
    if (kind !== 'shoal' || !zone || dries === undefined) continue;
    const key = `shoal ${zone.name}`;
    if ((shallow.get(key)?.dries ?? -Infinity) < dries) shallow.set(key, { kind: 'shoal', name: zone.name, dries });
  }
  const start = trip.route.waypoints[0];
  const landings = (waters?.landings ?? [])
    .flatMap(({ properties: { name, dries_m: dries }, geometry }) => {
      const [lon = 0, lat = 0] = geometry.coordinates;
      // For the order alone; a degree of longitude counts as one of latitude.
      const away = start ? Math.hypot(lat - start.lat, lon - start.lon) : 0;
      return dries === undefined ? [] : [{ name, dries, away }];
    })
    .sort((a, b) => a.away - b.away)
    .slice(0, MOST_LANDINGS);
  for (const { name, dries } of landings) shallow.set(`landing ${name}`, { kind: 'landing', name, dries });
  return [...shallow.values()].map((place) => ({
    ...place,
    depth,
    ...depthWindows(heightAt, { dries: place.dries, depth }, span),
  }));
}
