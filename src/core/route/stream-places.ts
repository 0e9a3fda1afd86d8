import { KNOT } from '../units/convert.ts';
import type { Problem } from '../units/result.ts';
import type { StreamPlace } from '../water/shapes.ts';
import type { WatersFile } from './shapes.ts';

/** A row of hours from local high water, as `readWaters` has checked it. */
interface Row {
  readonly h: number;
  readonly set_deg: number;
  readonly spring_kn: number;
  readonly neap_kn: number;
}

/**
 * The streams of a checked waters file by place, rates m/s. A place whose rows are not an hour apart, or that has none, is
 * left out and told: between them nothing would be known.
 */
export function streamPlaces(waters: WatersFile): {
  readonly places: readonly StreamPlace[];
  readonly leftOut: readonly Problem[];
} {
  const places: StreamPlace[] = [];
  const leftOut: Problem[] = [];
  for (const [index, { geometry, properties }] of waters.features.entries()) {
    if (properties?.kind !== 'stream' || geometry?.type !== 'Point') continue;
    const { name, hours } = properties as { name: string; hours?: readonly Row[] };
    const hourly = hours?.every(({ h }, i) => i === 0 || h - hours[i - 1]!.h === 1);
    const [lon, lat] = geometry.coordinates;
    if (!hours?.[0] || !hourly || lon === undefined || lat === undefined) {
      const message = `The streams of ${JSON.stringify(name)} are not told hour by hour, so they are not used`;
      leftOut.push({ code: 'streams-not-hourly', path: `features.${index}.properties.hours`, message });
      continue;
    }
    places.push({
      name,
      lat,
      lon,
      firstHour: hours[0].h,
      springs: hours.map(({ set_deg, spring_kn }) => ({ setDeg: set_deg % 360, rate: spring_kn * KNOT })),
      neaps: hours.map(({ set_deg, neap_kn }) => ({ setDeg: set_deg % 360, rate: neap_kn * KNOT })),
    });
  }
  return { places, leftOut };
}
