import { describe, expect, it } from 'vitest';
import { bowTubeFrom } from '../../../src/components/deck-plan/bow-tube.ts';
import { freeSpot, landing, onBowTube, placesFor, reachFor } from '../../../src/components/deck-plan/landing.ts';
import { boat, boats } from './boats.ts';

const cat = boat('catamaran-3-6');

describe('landing', () => {
  it('puts a person let go near a seat onto it', () => {
    for (const seat of cat.stations.filter(({ use }) => use === 'seat')) {
      expect(landing(cat, 'adult', { x: seat.x + 0.1, y: seat.y - 0.05 })).toEqual({ station: seat });
    }
  });

  it('takes the nearer of two seats', () => {
    const to = landing(cat, 'adult', { x: 0.8, y: 0.42 });
    expect(to).toMatchObject({ station: { id: 'helm' } });
  });

  it('leaves a person on the tube beside a seat', () => {
    expect(landing(cat, 'adult', { x: 0.6, y: 0.72 })).toMatchObject({ at: { x: 0.6, y: 0.72 } });
  });

  it('puts one who is let go in the water back over the side', () => {
    const to = landing(cat, 'adult', { x: 2.2, y: 3 });
    expect(to).toMatchObject({ at: { x: 2.2 } });
    expect('at' in to && to.at.y).toBeLessThan(cat.beam / 2);
  });

  it('lets no adult, child or dog ride on the bow tube of any boat', () => {
    for (const { id, hull } of boats) {
      const bow = hull.stations.find(({ use }) => use === 'bow-tube')!;
      for (const kind of ['adult', 'child', 'dog'] as const) {
        expect(landing(hull, kind, bow), `${id} ${kind}`).toMatchObject({ refused: 'bow-tube' });
      }
    }
  });

  it('lets gear lie there', () => {
    const bow = cat.stations.find(({ use }) => use === 'bow-tube')!;
    expect(landing(cat, 'gear', bow)).toMatchObject({ at: { x: bow.x } });
  });

  it('puts a bag on a place for gear even where one for the tank is as near, and a tank the other way round', () => {
    expect(landing(cat, 'gear', { x: 0.37, y: 0 })).toMatchObject({ station: { id: 'gear-aft' } });
    expect(landing(cat, 'tank', { x: 0.37, y: 0 })).toMatchObject({ station: { id: 'store-aft' } });
    expect(landing(cat, 'battery', { x: 2.65, y: 0 })).toMatchObject({ station: { id: 'store-bow' } });
  });

  it('gives a free spot the height of the nearest place of its kind', () => {
    expect(landing(cat, 'adult', { x: 2.2, y: 0 })).toMatchObject({ at: { z: 0.6 } });
    expect(landing(cat, 'gear', { x: 2.2, y: 0.3 })).toMatchObject({ at: { z: 0.18 } });
  });

  it('leaves people anywhere on a boat that describes no seats', () => {
    const bare = { ...cat, stations: [] };
    expect(landing(bare, 'adult', { x: 1, y: 0 })).toEqual({ at: { x: 1, y: 0, z: undefined } });
  });
});

describe('placesFor', () => {
  it('offers people seats and the helm only, from aft to the bow', () => {
    expect(placesFor(cat, 'adult').map(({ id }) => id)).toEqual([
      'seat-aft-port',
      'seat-aft-starboard',
      'helm',
      'seat-mid',
      'seat-fore-port',
      'seat-fore-starboard',
    ]);
  });

  it('never offers the bow tube', () => {
    for (const kind of ['adult', 'child', 'dog', 'gear', 'tank', 'battery'] as const) {
      expect(placesFor(cat, kind).some(({ use }) => use === 'bow-tube')).toBe(false);
    }
  });
});

describe('freeSpot', () => {
  it('keeps one who sits somewhere exactly there', () => {
    expect(freeSpot(cat, 'adult', { x: 0.95, y: 0.42 })).toMatchObject({ x: 0.95, y: 0.42 });
  });

  it('brings one whose place nobody knows to the middle of the boat, never onto the bow tube', () => {
    for (const { hull } of boats) {
      const spot = freeSpot(hull, 'adult', undefined);
      expect(spot.y).toBe(0);
      expect(onBowTube(hull, 'adult', spot)).toBe(false);
    }
  });

  it('pulls one whose place is on the bow tube back from it', () => {
    expect(freeSpot(cat, 'child', { x: 3.1, y: 0 }).x).toBeLessThanOrEqual(bowTubeFrom(cat).aft);
  });
});

describe('reachFor', () => {
  it('lets gear farther forward than people', () => {
    expect(reachFor(cat, 'gear').fore).toBeGreaterThan(reachFor(cat, 'adult').fore);
  });
});
