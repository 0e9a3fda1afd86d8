import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readWatersText } from '../../../src/core/files/waters-file.ts';
import type { WatersFile } from '../../../src/core/route/shapes.ts';
import { streamPlaces } from '../../../src/core/route/stream-places.ts';
import { prepareWaters, zonesAlong } from '../../../src/core/route/waters.ts';
import { HOUR, KNOT } from '../../../src/core/units/convert.ts';
import { secondsOf } from '../../../src/core/water/clock.ts';
import { reachOf, streamAt, streamTable } from '../../../src/core/water/streams.ts';
import { tide } from '../water/made-streams.ts';

const read = readWatersText(readFileSync(new URL('../../../shared/waters/haven.geojson', import.meta.url), 'utf8'));
if (!read.ok) throw new Error('the shipped waters are read');
const haven = read.value;

describe('streamPlaces', () => {
  const { places, leftOut } = streamPlaces(haven);

  it('has every stream of the invented haven, thirteen hours of each', () => {
    expect(leftOut).toEqual([]);
    expect(places).toHaveLength(11);
    for (const { firstHour, springs, neaps } of places) {
      expect(firstHour).toBe(-6);
      expect(springs).toHaveLength(13);
      expect(neaps).toHaveLength(13);
    }
    // The waters tell 2.9 kn of ebb in The Gut at springs.
    expect(Math.max(...places.flatMap(({ springs }) => springs.map(({ rate }) => rate)))).toBeCloseTo(2.9 * KNOT, 9);
  });

  it('leaves out and names a place without a row for every hour', () => {
    const [first, ...rest] = haven.features.filter(({ properties }) => properties?.kind === 'stream');
    const hours = first!.properties!.hours.filter(({ h }: { h: number }) => h !== 2);
    const cut = { ...first!, properties: { ...first!.properties, hours } };
    const found = streamPlaces({ ...haven, features: [cut, ...rest] } as WatersFile);
    expect(found.places).toHaveLength(10);
    expect(found.leftOut).toMatchObject([{ code: 'streams-not-hourly', path: 'features.0.properties.hours' }]);
  });

  it('takes directions as 0 up to 360 and rates in knots, at springs and at neaps', () => {
    const at = haven.features.findIndex(({ properties }) => properties?.kind === 'stream');
    const first = haven.features[at]!;
    const hours = [
      { h: -1, set_deg: 360, spring_kn: 2, neap_kn: 1 },
      { h: 0, set_deg: 190, spring_kn: 3, neap_kn: 1.5 },
    ];
    const turned = { ...first, properties: { ...first.properties, hours } };
    const [place] = streamPlaces({ ...haven, features: [turned] } as WatersFile).places;
    expect(place!.firstHour).toBe(-1);
    expect(place!.springs).toEqual([
      { setDeg: 0, rate: 2 * KNOT },
      { setDeg: 190, rate: 3 * KNOT },
    ]);
    expect(place!.neaps).toEqual([
      { setDeg: 0, rate: KNOT },
      { setDeg: 190, rate: 1.5 * KNOT },
    ]);
  });

  it('speaks for the water in sight only: no place answers across an island', () => {
    const waters = prepareWaters(haven);
    const crosses = (from: { lat: number; lon: number }, to: { lat: number; lon: number }) =>
      zonesAlong(waters, from, to).crossings.some(({ kind }) => kind === 'land');
    const table = streamTable(places, { ...tide, meanSpringRange: 4, meanNeapRange: 1.9, range: 4 });
    for (const place of places) {
      const reach = reachOf(table, place, crosses);
      const found = streamAt(table, reach, { seconds: secondsOf(tide.highWater) - 3 * HOUR, courseDeg: 0 });
      expect(found).toMatchObject({ known: true, place: place.name, distance: 0, insteadOf: [] });
      if (!found.known) continue;
      expect(found.stream.rate).toBeCloseTo(place.springs[3]!.rate, 9);
    }
  });
});
