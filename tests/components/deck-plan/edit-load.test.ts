import { describe, expect, it } from 'vitest';
import {
  added,
  moved,
  putBack,
  putDown,
  removed,
  renamed,
  reweighed,
  steeredBy,
} from '../../../src/components/deck-plan/edit-load.ts';
import { aboard } from '../../core/load/made-craft.ts';
import { boat, load } from './boats.ts';

const cat = boat('catamaran-3-6');
const station = (id: string) => cat.stations.find((each) => each.id === id)!;
const two = load(
  aboard('anna', 80, { station: 'helm', helm: true }),
  aboard('ben', 70, { station: 'seat-fore-port' }),
  aboard('bag', 9, { kind: 'gear', station: 'gear-mid' }),
);
const seats = (of: typeof two) => Object.fromEntries(of.items.map(({ id, station, at }) => [id, at ?? station]));

describe('moved', () => {
  it('puts somebody on a free seat and leaves the others', () => {
    const after = moved(two, 'ben', { station: station('seat-aft-port') });
    expect(seats(after)).toEqual({ anna: 'helm', ben: 'seat-aft-port', bag: 'gear-mid' });
  });

  it('lets two people change places', () => {
    const after = moved(two, 'anna', { station: station('seat-fore-port') });
    expect(seats(after)).toEqual({ anna: 'seat-fore-port', ben: 'helm', bag: 'gear-mid' });
  });

  it('gives the other the free spot of the one who takes the seat', () => {
    const loose = moved(two, 'ben', { at: { x: 1, y: -0.7, z: 0.6 } });
    const after = moved(loose, 'ben', { station: station('helm') });
    expect(seats(after)).toEqual({ anna: { x: 1, y: -0.7, z: 0.6 }, ben: 'helm', bag: 'gear-mid' });
  });

  it("lets whoever takes the helm's seat steer, and nobody else", () => {
    const after = moved(two, 'ben', { station: station('helm') });
    expect(after.items.filter(({ helm }) => helm).map(({ id }) => id)).toEqual(['ben']);
  });

  it('lets one who steers sit elsewhere and still steer, with a tiller extension', () => {
    const after = moved(two, 'anna', { station: station('seat-mid') });
    expect(after.items.find(({ id }) => id === 'anna')?.helm).toBe(true);
  });

  it('lets bags share a place', () => {
    const more = load(...two.items, aboard('box', 5, { kind: 'gear', station: 'gear-bow' }));
    expect(seats(moved(more, 'box', { station: station('gear-mid') }))).toMatchObject({
      bag: 'gear-mid',
      box: 'gear-mid',
    });
  });

  it('keeps fill, names and weights as they are', () => {
    const filled = { ...two, fill: 0.5, fillKnownBy: 'gauge' as const };
    expect(moved(filled, 'ben', undefined)).toMatchObject({ fill: 0.5, fillKnownBy: 'gauge' });
    expect(moved(filled, 'ben', undefined).items[1]).toEqual({ id: 'ben', kind: 'adult', mass: 70 });
  });
});

describe('putDown', () => {
  it('refuses a taken seat to one who has none to give in exchange', () => {
    const third = load(...two.items, aboard('cleo', 60));
    const put = putDown(cat, third, 'cleo', { station: station('helm') });
    expect(put).toMatchObject({ refused: 'taken', by: { id: 'anna' } });
  });

  it('says why nobody comes onto the bow tube', () => {
    expect(putDown(cat, two, 'ben', { refused: 'bow-tube', at: { x: 3, y: 0 } })).toEqual({ refused: 'bow-tube' });
  });
});

describe('added and removed', () => {
  it('makes the first person aboard the helm, and not the first bag', () => {
    expect(added(load(), 'gear').load.items[0]?.helm).toBeUndefined();
    expect(added(load(), 'adult').load.items[0]?.helm).toBe(true);
    expect(added(two, 'adult').load.items[3]?.helm).toBeUndefined();
  });

  it('gives each a name of its own that nobody had', () => {
    let now = load(aboard('p2', 80), aboard('p3', 80));
    for (let i = 0; i < 5; i++) now = added(now, 'child').load;
    expect(new Set(now.items.map(({ id }) => id)).size).toBe(7);
  });

  it('hands the helm to an adult before a child when the one who steers goes ashore', () => {
    const family = load(
      aboard('dad', 80, { helm: true }),
      aboard('kid', 30, { kind: 'child' }),
      aboard('mum', 65),
      aboard('rex', 20, { kind: 'dog' }),
    );
    const without = removed(family, 'dad');
    expect(without.items.filter(({ helm }) => helm).map(({ id }) => id)).toEqual(['mum']);
    expect(
      removed(without, 'mum')
        .items.filter(({ helm }) => helm)
        .map(({ id }) => id),
    ).toEqual(['kid']);
  });

  it('brings one who was removed back exactly as they were', () => {
    expect(putBack(removed(two, 'anna'), two.items[0]!, 0)).toEqual(two);
  });
});

describe('steeredBy', () => {
  it('has exactly one person at the helm, never a dog or a bag', () => {
    expect(steeredBy(two, 'ben').items.map(({ helm }) => helm === true)).toEqual([false, true, false]);
    expect(steeredBy(two, 'bag').items.some(({ kind, helm }) => kind === 'gear' && helm)).toBe(false);
  });
});

describe('renamed and reweighed', () => {
  it('change the one and nothing else', () => {
    expect(renamed(two, 'ben', 'Benno').items[1]).toEqual({ ...two.items[1], name: 'Benno' });
    expect('name' in renamed(renamed(two, 'ben', 'Benno'), 'ben', '').items[1]!).toBe(false);
    expect(reweighed(two, 'bag', 12).items.map(({ mass }) => mass)).toEqual([80, 70, 12]);
  });
});
