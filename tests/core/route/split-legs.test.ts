import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { legBetween } from '../../../src/core/route/distance.ts';
import { sailedLegs } from '../../../src/core/route/sailed-legs.ts';
import type { Route, WatersFile } from '../../../src/core/route/shapes.ts';
import { splitLegs } from '../../../src/core/route/split-legs.ts';
import { prepareWaters } from '../../../src/core/route/waters.ts';
import { KNOT, NAUTICAL_MILE } from '../../../src/core/units/convert.ts';
import { box, waters, zone } from './made-waters.ts';

function shared<T>(path: string): T {
  return JSON.parse(readFileSync(new URL(`../../../shared/${path}`, import.meta.url), 'utf8')) as T;
}

const haven = prepareWaters(shared<WatersFile>('waters/haven.geojson'));

const route: Route = {
  shape: 'out-and-home',
  waypoints: [
    { lon: 0, lat: 0.005 },
    { lon: 0.1, lat: 0.005, stop: 300 },
  ],
  speed: 'best',
};
const { legs } = sailedLegs(route);
const fairway = zone({ kind: 'speed-limit', name: 'Fairway', limit_kn: 6 }, box(0.02, 0, 0.06, 0.01));
const harbour = zone({ kind: 'speed-limit', name: 'Harbour', limit_kn: 4 }, box(0.05, 0, 0.08, 0.01));

describe('splitLegs', () => {
  it('leaves legs whole without waters', () => {
    const { stretches, hazards } = splitLegs(legs, undefined);
    expect(stretches.map(({ leg, part, stop, limit }) => [leg, part, stop, limit])).toEqual([
      [0, 'out', 300, undefined],
      [1, 'home', 0, undefined],
    ]);
    expect(hazards).toEqual([]);
  });

  it('cuts where a limit begins and ends; the lowest holds where two overlap', () => {
    const { stretches } = splitLegs(legs, prepareWaters(waters([fairway, harbour])));
    const whole = legBetween(route.waypoints[0]!, route.waypoints[1]!).distance;
    const out = stretches.filter(({ part }) => part === 'out');
    expect(out.map(({ limitName }) => limitName)).toEqual([undefined, 'Fairway', 'Harbour', undefined]);
    expect(out.map(({ distance }) => Math.round((100 * distance) / whole))).toEqual([20, 30, 30, 20]);
    expect(out[1]!.limit).toBeCloseTo(6 * KNOT, 12);
    expect(out[2]!.limit).toBeCloseTo(4 * KNOT, 12);
  });

  it('stops after the last stretch of a leg only', () => {
    const { stretches } = splitLegs(legs, prepareWaters(waters([fairway])));
    expect(stretches.map(({ leg, stop }) => [leg, stop])).toEqual([
      [0, 0],
      [0, 0],
      [0, 300],
      [1, 0],
      [1, 0],
      [1, 0],
    ]);
  });

  it('does not cut for a limit that is not given or under a metre long', () => {
    const untold = zone({ kind: 'speed-limit', name: 'Untold' }, box(0.02, 0, 0.06, 0.01));
    const sliver = zone({ kind: 'speed-limit', name: 'Sliver', limit_kn: 3 }, box(0.05, 0, 0.050005, 0.01));
    expect(splitLegs(legs, prepareWaters(waters([untold, sliver]))).stretches).toHaveLength(2);
  });

  it('keeps a leg without length, for its stop', () => {
    const here = { lon: 0.03, lat: 0.005 };
    const still = sailedLegs({ shape: 'out-and-home', waypoints: [here, { ...here, stop: 60 }], speed: 3 });
    const { stretches } = splitLegs(still.legs, prepareWaters(waters([fairway])));
    expect(stretches[0]).toMatchObject({ distance: 0, trackDeg: 0, stop: 60, limitName: 'Fairway' });
  });

  it('lists land, shoals and keep-outs crossed, with where, how far and the season', () => {
    const reserve = zone({ kind: 'keep-out', name: 'Terns', season: '04-01/07-31' }, box(0.07, 0, 0.08, 0.01));
    const rock = zone({ kind: 'land', name: 'Rock' }, box(0.09, 0, 0.095, 0.01));
    const { hazards } = splitLegs(legs, prepareWaters(waters([reserve, rock], [-1, -1, 1, 1])));
    expect(hazards.map(({ kind, name, leg }) => [kind, name, leg])).toEqual([
      ['keep-out', 'Terns', 0],
      ['land', 'Rock', 0],
      ['land', 'Rock', 1],
      ['keep-out', 'Terns', 1],
    ]);
    expect(hazards[0]!.zone?.season).toBe('04-01/07-31');
    expect(hazards[0]!.at.lon).toBeCloseTo(0.07, 12);
    expect(hazards[0]!.length).toBeCloseTo(
      legBetween({ lon: 0.07, lat: 0.005 }, { lon: 0.08, lat: 0.005 }).distance,
      4,
    );
  });

  it('says where the route leaves the known waters', () => {
    const { hazards } = splitLegs(legs, prepareWaters(waters([fairway], [-0.01, -0.01, 0.08, 0.08])));
    expect(hazards).toEqual([
      { kind: 'outside', leg: 0, at: route.waypoints[1] },
      { kind: 'outside', leg: 1, at: route.waypoints[1] },
    ]);
  });
});

// Distances of the three demonstration trips as their author summed them apart, over great circles, to 0.01 nautical miles.
describe('the demonstration trips', () => {
  it.each([
    { trip: 'petrol-day', total: 20.1, limits: { 'Marl Haven harbour': 1.24, 'The Gut': 0.87 }, crossed: [] },
    { trip: 'electric-tender', total: 6.1, limits: { 'Marl Haven harbour': 1.23, 'The Gut': 1.5 }, crossed: [] },
    { trip: 'hire-hull', total: 11, limits: { 'Marl Haven harbour': 1.23 }, crossed: ['Sorrel Sand', 'Sorrel Sand'] },
  ])('are as long as drawn and run clear of land: $trip', ({ trip, total, limits, crossed }) => {
    const drawn = sailedLegs(shared<{ route: Route }>(`trips/${trip}.json`).route);
    const { stretches, hazards } = splitLegs(drawn.legs, haven);
    const miles = (name?: string) =>
      stretches
        .filter(({ limitName }) => name === undefined || limitName === name)
        .reduce((sum, { distance }) => sum + distance / NAUTICAL_MILE, 0);
    expect(Math.abs(miles() - total)).toBeLessThan(0.05);
    for (const [name, length] of Object.entries(limits)) expect(Math.abs(miles(name) - length)).toBeLessThan(0.01);
    expect(new Set(stretches.map(({ limitName }) => limitName))).toEqual(new Set([undefined, ...Object.keys(limits)]));
    // The hire boat's route ends at the beach, 0.02 nautical miles into the sand.
    expect(hazards.map(({ name }) => name)).toEqual(crossed);
  });
});
