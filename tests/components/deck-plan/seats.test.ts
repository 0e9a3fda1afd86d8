import { describe, expect, it } from 'vitest';
import { asked } from '../../../src/components/deck-plan/aboard-asks.ts';
import {
  everyoneSeated,
  freePlaces,
  nextFreePlace,
  steadiestPlace,
  unseated,
} from '../../../src/components/deck-plan/seats.ts';
import { balance } from '../../../src/core/load/balance.ts';
import type { Aboard } from '../../../src/core/load/shapes.ts';
import { aboard } from '../../core/load/made-craft.ts';
import { boat, boats, craftWith, load } from './boats.ts';

const cat = boat('catamaran-3-6');
const craft = craftWith(cat);
const helm = aboard('helm', 85, { station: 'helm', helm: true });
const seatOf = (items: readonly Aboard[], id: string) => items.find((item) => item.id === id)?.station;

describe('nextFreePlace', () => {
  it('goes forward seat by seat past those that are taken, and from the bow starts aft again', () => {
    const now = load(helm, aboard('guest', 70, { station: 'seat-aft-starboard' }));
    expect(nextFreePlace(cat, now, now.items[1]!)?.id).toBe('seat-mid');
    const forward = load(helm, aboard('guest', 70, { station: 'seat-fore-starboard' }));
    expect(nextFreePlace(cat, forward, forward.items[1]!)?.id).toBe('seat-aft-port');
  });

  it('gives one without a seat the first that is free', () => {
    const now = load(helm, aboard('guest', 70));
    expect(nextFreePlace(cat, now, now.items[1]!)?.id).toBe('seat-aft-port');
  });

  it('finds none when every seat is taken', () => {
    const seats = cat.stations.filter(({ use }) => use === 'seat' || use === 'helm');
    const full = load(...seats.map(({ id }) => aboard(id, 70, { station: id })), aboard('late', 70));
    expect(nextFreePlace(cat, full, full.items.at(-1)!)).toBeUndefined();
    expect(freePlaces(cat, full, full.items.at(-1)!)).toEqual([]);
  });
});

describe('steadiestPlace', () => {
  it('puts a second person on the other side than the helm, and forward (common practice for two)', () => {
    const tillers = boats.filter(({ hull }) => Math.abs(hull.stations.find(({ use }) => use === 'helm')!.y) > 0.3);
    expect(tillers.map(({ id }) => id)).toHaveLength(8);
    for (const { id, hull } of tillers) {
      const now = load({ ...helm }, aboard('guest', 85));
      const place = steadiestPlace(craftWith(hull), now, now.items[1]!, 8)!;
      const at = hull.stations.find((station) => station.id === 'helm')!;
      expect(place.y * at.y, id).toBeLessThan(0);
      expect(place.x, id).toBeGreaterThan(at.x);
    }
  });

  it('puts a second person in the middle, not across, where the helm stands at a console near the middle line', () => {
    const rib = boat('rib-4-7');
    const now = load({ ...helm }, aboard('guest', 85));
    expect(steadiestPlace(craftWith(rib), now, now.items[1]!, 8)?.id).toBe('seat-mid');
  });

  it("keeps the helm's seat for one who steers", () => {
    const now = load(aboard('first', 85, { helm: true }));
    expect(steadiestPlace(craft, now, now.items[0]!, 8)?.id).toBe('helm');
  });

  it('puts bags on places for gear, and shares one when all are taken', () => {
    const taken = cat.stations
      .filter(({ use }) => use === 'gear')
      .map(({ id }) => aboard(id, 5, { kind: 'gear', station: id }));
    const now = load(helm, ...taken, aboard('more', 5, { kind: 'gear' }));
    expect(steadiestPlace(craft, now, now.items.at(-1)!, 8)?.use).toBe('gear');
  });
});

describe('everyoneSeated', () => {
  it('sits four people two on each side (common practice for four)', () => {
    const four = load({ ...helm, station: undefined }, aboard('b', 85), aboard('c', 85), aboard('d', 85));
    const after = everyoneSeated(craft, four, 8);
    const sides = after.items.map(({ station }) => Math.sign(cat.stations.find(({ id }) => id === station)!.y));
    expect(sides.filter((side) => side < 0)).toHaveLength(2);
    expect(sides.filter((side) => side > 0)).toHaveLength(2);
  });

  it('leaves those alone who have a seat', () => {
    const some = load({ ...helm, station: 'seat-mid' }, aboard('b', 70));
    expect(seatOf(everyoneSeated(craft, some, 8).items, 'helm')).toBe('seat-mid');
  });

  it('leaves one without a seat when there is none, and puts no two on one', () => {
    const many = load(helm, ...Array.from({ length: 7 }, (_, i) => aboard(`p${i}`, 70)));
    const after = everyoneSeated(craft, many, 8);
    const taken = after.items.flatMap(({ station }) => station ?? []);
    expect(new Set(taken).size).toBe(taken.length);
    expect(unseated(cat, after)).toHaveLength(2);
  });

  it('lies better than with everybody on the worst seats', () => {
    const three = load(helm, aboard('b', 90), aboard('c', 60));
    const off = (of: typeof three) => Math.abs(balance(craft, of, 8).lateral);
    expect(off(everyoneSeated(craft, three, 8))).toBeLessThan(off(three));
  });
});

describe('unseated', () => {
  it('counts a seat that this boat does not have as none', () => {
    expect(unseated(cat, load(aboard('a', 80, { station: 'flybridge' }), helm)).map(({ id }) => id)).toEqual(['a']);
  });
});

describe('asked', () => {
  it('takes a new adult aboard on a seat that shows, and says who moved', () => {
    const { load: after, said } = asked(craft, load(helm), { what: 'add', kind: 'adult' });
    expect(after.items).toHaveLength(2);
    expect(after.items[1]).toMatchObject({ kind: 'adult', mass: 85 });
    expect(after.items[1]?.station).toBeDefined();
    expect(said).toEqual({ kind: 'moved', key: `aboard:${after.items[1]?.id}` });
  });

  it('leaves a new person without a seat on a boat that describes none', () => {
    const bare = { ...craft, hull: { ...cat, stations: [] } };
    expect(asked(bare, load(), { what: 'add', kind: 'adult' }).load.items[0]?.station).toBeUndefined();
  });
});
