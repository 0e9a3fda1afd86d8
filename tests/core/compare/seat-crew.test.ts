import { describe, expect, it } from 'vitest';
import { type Seating, seatedCrew, stowedGear } from '../../../src/core/compare/seat-crew.ts';
import type { Hull, Station } from '../../../src/core/craft/shapes.ts';
import { hullOf } from './boats.ts';

const hull = hullOf('catamaran-3-6');
const at = (id: string | undefined): Station => hull.stations.find((station) => station.id === id)!;
const withStations = (stations: readonly Station[]): Hull => ({ ...hull, stations });

describe('a crew', () => {
  it('has its first at the helm, everybody else on a seat of their own', () => {
    const crew = seatedCrew(hull, [80, 70, 60, 50, 46]);
    expect(crew.map(({ helm }) => helm)).toEqual([true, undefined, undefined, undefined, undefined]);
    expect(at(crew[0]!.station).use).toBe('helm');
    for (const { station } of crew.slice(1)) expect(at(station).use).toBe('seat');
    expect(new Set(crew.map(({ station }) => station)).size).toBe(5);
    expect(crew.map(({ mass }) => mass)).toEqual([80, 70, 60, 50, 46]);
    expect(crew.map(({ id }) => id)).toEqual(['p1', 'p2', 'p3', 'p4', 'p5']);
  });

  it('has children below 45 kg and adults from there on', () => {
    expect(seatedCrew(hull, [80, 44.9, 45]).map(({ kind }) => kind)).toEqual(['adult', 'child', 'adult']);
  });

  it('has no seat for those more than there are', () => {
    const seats = hull.stations.filter(({ use }) => use === 'seat').length;
    const crew = seatedCrew(hull, Array(seats + 3).fill(70));
    expect(crew.filter(({ station }) => station === undefined)).toHaveLength(2);
    expect('station' in crew.at(-1)!).toBe(false);
  });

  it('steers from the first seat of a boat that has no helm', () => {
    const crew = seatedCrew(withStations(hull.stations.filter(({ use }) => use !== 'helm')), [80, 70]);
    expect(crew[0]!.helm).toBe(true);
    expect(at(crew[0]!.station).use).toBe('seat');
    expect(crew[1]!.station).not.toBe(crew[0]!.station);
  });

  /** The same seats in three orders of their list. */
  const listed = [hull, withStations(hull.stations.toReversed()), withStations(hull.stations.toSorted(byName))];
  const places = (seating: Seating | undefined, boat = hull) =>
    seatedCrew(boat, Array(6).fill(70), seating)
      .slice(1)
      .map(({ station }) => at(station));

  it('sits the same in whatever order the seats are listed', () => {
    for (const seating of [undefined, 'forward', 'aft'] as const) {
      const [first, ...others] = listed.map((boat) => places(seating, boat));
      for (const other of others) expect(other).toEqual(first);
    }
  });

  it('sits on the middle line first and then in pairs from forward aft, port before starboard', () => {
    const seats = places(undefined);
    const middle = seats.findIndex(({ y }) => y !== 0);
    expect(middle).toBeGreaterThan(0);
    expect(seats.slice(middle).every(({ y }) => y !== 0)).toBe(true);
    for (let i = middle; i + 1 < seats.length; i += 2) {
      expect(seats[i]!.x).toBe(seats[i + 1]!.x);
      expect(seats[i]!.y).toBeLessThan(seats[i + 1]!.y);
      if (i > middle) expect(seats[i]!.x).toBeLessThan(seats[i - 1]!.x);
    }
  });

  it('sits as far forward or aft as it goes where that is asked', () => {
    const forward = places('forward');
    const aft = places('aft');
    for (let i = 1; i < forward.length; i++) {
      expect(forward[i]!.x).toBeLessThanOrEqual(forward[i - 1]!.x);
      expect(aft[i]!.x).toBeGreaterThanOrEqual(aft[i - 1]!.x);
    }
    for (const seats of [forward, aft]) {
      for (let i = 1; i < seats.length; i++) {
        if (seats[i]!.x === seats[i - 1]!.x) expect(seats[i]!.y).toBeGreaterThan(seats[i - 1]!.y);
      }
    }
  });
});

describe('gear', () => {
  it('lies in the middle of its places, however they are listed', () => {
    const xs = hull.stations.filter(({ use }) => use === 'gear').map(({ x }) => x);
    const middle = xs.toSorted((a, b) => a - b)[1];
    // The places as they are, the middle one first, and last.
    const gear = hull.stations.filter(({ use }) => use === 'gear').toSorted((a, b) => a.x - b.x);
    const orders = [gear, [gear[1]!, gear[0]!, gear[2]!], [gear[2]!, gear[0]!, gear[1]!]];
    for (const one of [hull, ...orders.map(withStations)]) {
      expect(stowedGear(one, 20)).toEqual([{ id: 'gear', kind: 'gear', mass: 20, station: expect.any(String) }]);
      expect(at(stowedGear(one, 20)[0]!.station)).toMatchObject({ use: 'gear', x: middle });
    }
  });

  it('lies somewhere nobody said in a boat without a place for it', () => {
    const [gear] = stowedGear(withStations(hull.stations.filter(({ use }) => use !== 'gear')), 20);
    expect(gear).toEqual({ id: 'gear', kind: 'gear', mass: 20 });
  });

  it('is none where it weighs nothing, and some from half a kilogram', () => {
    expect(stowedGear(hull, 0)).toEqual([]);
    expect(stowedGear(hull, -1)).toEqual([]);
    expect(stowedGear(hull, 0.5)).toHaveLength(1);
  });
});

/** No order of places. */
function byName(a: Station, b: Station): number {
  const key = ({ id }: Station) => [...id].toReversed().join('');
  return key(a) < key(b) ? -1 : 1;
}
