import { describe, expect, it } from 'vitest';
import { addStation, stationOf, stationTide, tideStations } from '../../../src/components/conditions-form/stations.ts';
import { HOUR } from '../../../src/core/units/convert.ts';
import { secondsOf } from '../../../src/core/water/clock.ts';

const noon = secondsOf('2027-06-19T12:00:00Z');

describe('tide stations', () => {
  it('begin with the invented one, and all name where they are from', async () => {
    const stations = await tideStations();
    expect(stations[0]!.name).toMatch(/invented/);
    expect(stations.length).toBeGreaterThan(5);
    for (const { attribution } of stations) expect(attribution).toBeTruthy();
  });

  it('tell the high water nearest to a trip, with the ranges of M2 and S2', async () => {
    const [haven] = await tideStations();
    const found = await stationTide(haven!, noon, noon);
    const tide = found.ok ? found.value.tideAt(noon, -7200) : undefined;
    expect(tide!.meanSpringRange).toBeCloseTo(4, 9);
    expect(tide!.meanNeapRange).toBeCloseTo(1.9, 9);
    expect(tide!.highWater).toMatch(/-02:00$/);
    expect(Math.abs(secondsOf(tide!.highWater) - noon)).toBeLessThan(6.5 * HOUR);
    expect(tide!.highWaterHeight! - tide!.range).toBeLessThan(2.6);
  });

  it('are recognised by the tide that they made, and not by one that was typed under their name', async () => {
    const [haven] = await tideStations();
    const found = await stationTide(haven!, noon, noon);
    const tide = found.ok ? found.value.tideAt(noon, 0)! : undefined!;
    expect(await stationOf(tide)).toBe(haven);
    expect(await stationOf({ ...tide, highWaterHeight: tide.highWaterHeight! + 0.2 })).toBeUndefined();
    expect(await stationOf({ ...tide, port: 'Elsewhere' })).toBeUndefined();
    expect(await stationOf(undefined)).toBeUndefined();
  });

  it("of the user's own stand beside them, each once", async () => {
    const own = { ...(await tideStations())[0]!, id: 'own/creek', name: 'Creek' };
    addStation(own);
    addStation({ ...own, name: 'The creek' });
    expect((await tideStations()).filter(({ id }) => id === 'own/creek').map(({ name }) => name)).toEqual([
      'The creek',
    ]);
  });
});
