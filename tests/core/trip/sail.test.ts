import { describe, expect, it } from 'vitest';
import { AS_PLANNED } from '../../../src/core/trip/afloat-in.ts';
import { givenOf, prepare } from '../../../src/core/trip/prepare.ts';
import { sail } from '../../../src/core/trip/sail.ts';
import { badCases, expected } from '../../../src/core/trip/scenario.ts';
import type { Trip } from '../../../src/core/trip/shapes.ts';
import { haven, shipped, soundTrip } from '../../trips.ts';

const SAND = { lat: 45.974, lon: -32.07 };

/** Out over a point on the way where it fills up or not, in known or flat water. */
function trip(refill: number | undefined, fill = 0.3): Trip {
  const sound = soundTrip();
  const [start, end] = sound.route.waypoints;
  const middle = { ...SAND, name: 'Sand', stop: 600, ...(refill !== undefined && { refill }) };
  return {
    ...sound,
    load: { ...sound.load, fill },
    route: { ...sound.route, waypoints: [start!, middle, end!] },
  };
}

const prepared = (refill: number | undefined, fill?: number) => prepare(trip(refill, fill), haven());

describe.each([
  ['fills up on the way', 0.9],
  ['is to be filled to less than is aboard', 0.1],
  ['fills up nowhere', undefined],
] as const)('a trip that %s', (_, refill) => {
  const ready = prepared(refill);
  const scenario = expected(givenOf(ready));
  const run = sail(ready, scenario);

  it('sailed with the way out of a like run is the same trip', () => {
    const again = sail(ready, scenario, AS_PLANNED, { like: run });
    const { slows: _, ...first } = run;
    const { slows: __, ...second } = again;
    expect(second).toEqual(first);
  });

  it('takes manoeuvring, legs and stops, and uses what the parts use', () => {
    const legs = run.sailed.reduce((sum, s) => sum + s.time, 0);
    // Both ways past the place where it stops.
    const stops = run.sailed.reduce((sum, s) => sum + s.stretch.stop, 0);
    expect(run.time).toBeCloseTo(ready.manoeuvring + legs + stops, 6);
    expect(run.used).toBeCloseTo(run.manoeuvring + run.needOut + run.needHome, 9);
    expect(run.manoeuvring).toBeCloseTo(run.manoeuvringFlow * ready.manoeuvring, 12);
    for (const s of run.sailed) expect(s.use).toBeCloseTo(s.flow * s.time, 9);
  });
});

describe('petrol that burns', () => {
  it('leaves the boat lighter by what was used, stretch for stretch', () => {
    const ready = prepared(undefined, 0.9);
    const { sailed, atStart } = sail(ready, expected(givenOf(ready)));
    let mass = atStart.mass;
    for (const { afloat, use } of sailed) {
      expect(afloat.mass).toBeCloseTo(mass, 9);
      mass -= use;
    }
  });

  it('comes aboard again where the trip fills up', () => {
    const ready = prepared(0.9);
    const { sailed, atStart } = sail(ready, expected(givenOf(ready)));
    const more = sailed.find(({ stretch }) => stretch.leg === 1)!.afloat.mass - atStart.mass;
    expect(more).toBeCloseTo(ready.storeMass(0.9) - ready.storeMass(0.3), 9);
  });
});

describe('a long leg', () => {
  it('needs what its halves need, though the boat grows lighter along it', () => {
    const sound = { ...trip(undefined, 0.9), conditions: { ...soundTrip().conditions, wind: 'calm' as const } };
    const [start, , end] = sound.route.waypoints;
    const far = { ...end!, lat: start!.lat - 0.2 };
    const half = { ...end!, lat: start!.lat - 0.1 };
    const way = (...waypoints: (typeof far)[]) => {
      const ready = prepare({ ...sound, route: { ...sound.route, shape: 'one-way', waypoints } }, undefined);
      return sail(ready, expected(givenOf(ready)));
    };
    const [whole, halves] = [way(start!, far), way(start!, half, far)];
    // A kilogram and more burns on the way, and the need differs by less than a part in two thousand.
    expect(whole.needOut).toBeGreaterThan(1);
    expect(Math.abs(whole.needOut / halves.needOut - 1)).toBeLessThan(0.0005);
  });
});

describe('a battery', () => {
  it('holds what was left and drawn, and what it is charged to where it is charged', () => {
    const tender = shipped('electric-tender');
    const [start, ...rest] = tender.route.waypoints;
    const charged = (refill: number) => {
      const waypoints = [start!, ...rest.map((point, i) => (i === 1 ? { ...point, stop: 3600, refill } : point))];
      const ready = prepare({ ...tender, route: { ...tender.route, waypoints } }, haven());
      const { sailed } = sail(ready, expected(givenOf(ready)));
      const after = sailed.findIndex(({ stretch }) => stretch.refill !== undefined) + 1;
      // Told at the end of a stretch, when it gives least.
      return [sailed[after - 1]!.afloat.charge!, sailed[after]!.afloat.charge!] as const;
    };
    const [before, full] = charged(1);
    expect(full).toBeGreaterThan(before);
    expect(full).toBeLessThan(1);
    const [left, kept] = charged(0.05);
    expect(left).toBe(before);
    expect(kept).toBeLessThan(left);
    expect(kept).toBeGreaterThan(0.05);
    // The same stretch takes the same off, wherever it begins.
    expect(1 - full).toBeCloseTo(left - kept, 3);
  });
});

describe('a factor on every consumption', () => {
  it('makes all uses larger alike, and no trip slower', () => {
    const ready = prepared(undefined, 0.9);
    const scenario = expected(givenOf(ready));
    const [plain, hungry] = [1, 1.5].map((use) => sail(ready, scenario, { extraMass: 0, use }));
    expect(hungry!.manoeuvring / plain!.manoeuvring).toBeCloseTo(1.5, 9);
    expect(hungry!.need / plain!.need).toBeCloseTo(1.5, 2);
    expect(hungry!.time).toBeCloseTo(plain!.time, 9);
  });
});

describe('the bad cases', () => {
  it('are sailed no faster home than they say', () => {
    const ready = prepared(undefined);
    const cases = badCases(givenOf(ready), { slow: 2, hump: undefined, electric: false });
    const slow = cases.find(({ homeCap }) => homeCap !== undefined)!;
    for (const s of sail(ready, slow, AS_PLANNED, { yielding: true }).sailed) {
      if (s.stretch.part === 'home') expect(s.speed).toBeLessThanOrEqual(2);
      else expect(s.speed).toBeGreaterThan(2);
    }
  });
});
