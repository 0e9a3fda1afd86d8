import { describe, expect, it } from 'vitest';
import {
  addedAtEnd,
  changedAt,
  deletedAt,
  insertedAt,
  movedTo,
  place,
  placeToInsert,
  reordered,
  reversed,
  sameWaypoints,
} from '../../../src/components/route-map/waypoint-edits.ts';
import { legBetween } from '../../../src/core/route/distance.ts';
import type { Waypoint } from '../../../src/core/route/shapes.ts';

const harbour: Waypoint = { lat: 46.02, lon: -32, name: 'Harbour', speed: 2 };
const bar: Waypoint = { lat: 46.01, lon: -32 };
const cove: Waypoint = { lat: 46, lon: -31.98, name: 'Cove', stop: 3600, speed: 'best-planing' };
const route = [harbour, bar, cove];

describe('place', () => {
  it('keeps a place to about a tenth of a metre', () => {
    const exact = { lat: 46.123456789, lon: -32.987654321 };
    expect(legBetween(exact, place(exact)).distance).toBeLessThan(0.1);
    expect(String(place(exact).lat)).toBe('46.123457');
  });

  it('brings a longitude from another turn of the map back within 180 degrees', () => {
    expect(place({ lat: 10, lon: 190 }).lon).toBe(-170);
    expect(place({ lat: 10, lon: -545 }).lon).toBe(175);
  });

  it('stays where legs can be laid', () => {
    expect(place({ lat: 89, lon: 0 }).lat).toBe(85);
  });
});

describe('editing the waypoints', () => {
  it('leaves the route it was given as it was', () => {
    const before = structuredClone(route);
    addedAtEnd(route, bar);
    insertedAt(route, 1, bar);
    movedTo(route, 1, cove);
    deletedAt(route, 0);
    reversed(route);
    reordered(route, 0, 1);
    changedAt(route, 2, { stop: undefined });
    expect(route).toEqual(before);
  });

  it('adds at the end', () => {
    expect(addedAtEnd(route, { lat: 45.9, lon: -32 }).at(-1)).toEqual({ lat: 45.9, lon: -32 });
  });

  it('keeps the speed of a leg on both halves when it is split', () => {
    const split = insertedAt(route, 1, { lat: 46.015, lon: -32 });
    expect(split.map((waypoint) => waypoint.speed)).toEqual([2, 2, undefined, 'best-planing']);
  });

  it('keeps the place whose stream a leg takes, split or sailed the other way', () => {
    const picked = changedAt(route, 0, { streamPlace: 'Race' });
    const split = insertedAt(picked, 1, { lat: 46.015, lon: -32 });
    expect(split.map(({ streamPlace }) => streamPlace)).toEqual(['Race', 'Race', undefined, undefined]);
    expect(reversed(picked).map(({ streamPlace }) => streamPlace)).toEqual([undefined, 'Race', undefined]);
    expect(sameWaypoints(route, picked)).toBe(false);
  });

  it('moves a place, and nothing else about the waypoint', () => {
    expect(movedTo(route, 2, { lat: 46.1, lon: -32 })[2]).toEqual({ ...cove, lat: 46.1, lon: -32 });
  });

  it('takes a waypoint out and leaves its neighbours', () => {
    expect(deletedAt(route, 1)).toEqual([harbour, cove]);
  });

  it('sets a field, and takes it away with undefined', () => {
    expect(changedAt(route, 1, { name: 'Bar' })[1]).toEqual({ ...bar, name: 'Bar' });
    expect(changedAt(route, 0, { name: undefined })[0]).not.toHaveProperty('name');
  });

  it('changes places with a neighbour, and not beyond the ends', () => {
    expect(reordered(route, 2, -1)).toEqual([harbour, cove, bar]);
    expect(reordered(route, 0, -1)).toEqual(route);
    expect(reordered(route, 2, 1)).toEqual(route);
  });
});

describe('reversed', () => {
  it('sails the same water the other way: names and stops go with the place, speeds with the leg', () => {
    const back = reversed(route);
    expect(back.map(({ name }) => name)).toEqual(['Cove', undefined, 'Harbour']);
    expect(back[0]?.stop).toBe(3600);
    // Bar to cove had no speed of its own; harbour to bar had 2 m/s.
    expect(back.map(({ speed }) => speed).slice(0, 2)).toEqual([undefined, 2]);
  });

  it('done twice is the route again', () => {
    expect(reversed(reversed(route))).toEqual(route);
  });

  it('takes an empty route and a single place', () => {
    expect(reversed([])).toEqual([]);
    expect(reversed([bar])).toEqual([bar]);
  });
});

describe('placeToInsert', () => {
  it('is the middle of the leg that is split', () => {
    const at = placeToInsert(route, 1, false)!;
    const half = legBetween(harbour, bar).distance / 2;
    expect(legBetween(harbour, at).distance).toBeCloseTo(half, 0);
    expect(legBetween(at, bar).distance).toBeCloseTo(half, 0);
  });

  it('goes on beyond an end by half the leg there', () => {
    const before = placeToInsert(route, 0, false)!;
    expect(before.lat).toBeCloseTo(46.025, 6);
    const after = placeToInsert(route, 3, false)!;
    expect(legBetween(cove, after).distance).toBeCloseTo(legBetween(bar, cove).distance / 2, 0);
  });

  it('is on the closing leg at either end of a round trip', () => {
    expect(placeToInsert(route, 3, true)).toEqual({ lat: 46.01, lon: -31.99 });
    expect(placeToInsert(route, 0, true)).toEqual({ lat: 46.01, lon: -31.99 });
  });

  it('takes the short way over the 180th meridian', () => {
    const middle = placeToInsert(
      [
        { lat: 0, lon: 179.9 },
        { lat: 0, lon: -179.9 },
      ],
      1,
      false,
    )!;
    expect(Math.abs(middle.lon)).toBe(180);
  });

  it('is unknown where there is no leg to go by', () => {
    expect(placeToInsert([], 0, false)).toBeUndefined();
    expect(placeToInsert([bar], 1, true)).toBeUndefined();
  });
});

describe('sameWaypoints', () => {
  it('compares what a copy says, not which object it is', () => {
    expect(sameWaypoints(route, structuredClone(route))).toBe(true);
  });

  it('sees a changed stop, and a waypoint more', () => {
    expect(sameWaypoints(route, changedAt(route, 2, { stop: 60 }))).toBe(false);
    expect(sameWaypoints(route, [...route, bar])).toBe(false);
  });
});
