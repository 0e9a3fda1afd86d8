import { describe, expect, it } from 'vitest';
import { DeckMoves, type LoadKeeper } from '../../../src/components/deck-plan/deck-moves.ts';
import type { Said } from '../../../src/components/deck-plan/deck-said.ts';
import { pieces } from '../../../src/components/deck-plan/pieces.ts';
import type { Craft, Store } from '../../../src/core/craft/shapes.ts';
import type { Load } from '../../../src/core/load/shapes.ts';
import { aboard } from '../../core/load/made-craft.ts';
import { boat, craftWith, load } from './boats.ts';

/** Keeps a load as a page does: what it is told, live or not, comes back as the load. */
class Page implements LoadKeeper {
  craft: Craft = craftWith(boat('catamaran-3-6'));
  load: Load = load(
    aboard('anna', 80, { station: 'helm', helm: true }),
    aboard('ben', 70, { station: 'seat-fore-port' }),
  );
  told: { load: Load; live: boolean }[] = [];
  last: Said | undefined;
  updateComplete = Promise.resolve(true);

  addController(): void {}
  removeController(): void {}
  requestUpdate(): void {}

  pieces() {
    return pieces(this.craft, this.load);
  }

  loadEdited(next: Load, live: boolean): void {
    this.told.push({ load: next, live });
    this.load = next;
  }

  storeEdited(store: Store): void {
    this.craft = { ...this.craft, store };
  }

  said(what: Said | undefined): void {
    this.last = what;
  }

  seats() {
    return Object.fromEntries(this.load.items.map(({ id, station, at }) => [id, station ?? at]));
  }
}

function begun() {
  const page = new Page();
  return { page, moves: new DeckMoves(page) };
}

const HELM = { x: 0.95, y: 0.42 };
const AFT_PORT = { x: 0.6, y: -0.42 };
const ON_BOW = { x: 3.1, y: 0 };

describe('a drag', () => {
  it('tells every place on the way as live and the last one once as done', () => {
    const { page, moves } = begun();
    moves.hold('aboard:ben', 'pointer', { x: 1.5, y: -0.7 });
    moves.hold('aboard:ben', 'pointer', AFT_PORT);
    moves.settle();
    expect(page.told.map(({ live }) => live)).toEqual([true, true, false]);
    expect(page.seats()).toEqual({ anna: 'helm', ben: 'seat-aft-port' });
  });

  it('says nothing twice while the place stays the same', () => {
    const { page, moves } = begun();
    moves.hold('aboard:ben', 'pointer', AFT_PORT);
    moves.hold('aboard:ben', 'pointer', { x: 0.62, y: -0.4 });
    expect(page.told).toHaveLength(1);
  });

  it('past a taken seat leaves the other where they sit', () => {
    const { page, moves } = begun();
    moves.hold('aboard:ben', 'pointer', HELM);
    expect(page.seats()).toEqual({ anna: 'seat-fore-port', ben: 'helm' });
    moves.hold('aboard:ben', 'pointer', AFT_PORT);
    moves.settle();
    expect(page.seats()).toEqual({ anna: 'helm', ben: 'seat-aft-port' });
    expect(page.load.items.filter(({ helm }) => helm).map(({ id }) => id)).toEqual(['anna']);
  });

  it('onto a taken seat changes places and says with whom', () => {
    const { page, moves } = begun();
    moves.hold('aboard:ben', 'pointer', HELM);
    moves.settle();
    expect(page.seats()).toEqual({ anna: 'seat-fore-port', ben: 'helm' });
    expect(page.last).toEqual({ kind: 'moved', key: 'aboard:ben', swapped: 'aboard:anna' });
  });

  it('onto the bow tube ends where it began, with a reason', () => {
    const { page, moves } = begun();
    const before = page.load;
    moves.hold('aboard:ben', 'pointer', ON_BOW);
    moves.settle();
    expect(page.load).toEqual(before);
    expect(page.told.at(-1)?.live).toBe(false);
    expect(page.last).toEqual({ kind: 'refused', why: 'bow-tube' });
  });

  it('that is broken off puts everything back', () => {
    const { page, moves } = begun();
    const before = page.load;
    moves.hold('aboard:ben', 'pointer', HELM);
    moves.drop();
    expect(page.load).toBe(before);
    expect(moves.hand).toBeUndefined();
  });

  it('of the tank is told while it goes on, and taken back when it is dropped', () => {
    const { page, moves } = begun();
    const before = page.craft.store;
    moves.hold('store:0', 'pointer', { x: 2.6, y: 0.05 });
    expect(page.craft.store).not.toBe(before);
    moves.drop();
    expect(page.craft.store).toBe(before);
  });

  it('of the tank ends where it is put down', () => {
    const { page, moves } = begun();
    moves.hold('store:0', 'pointer', { x: 2.6, y: 0.05 });
    moves.settle();
    expect(page.craft.store).toMatchObject({ tanks: [{ at: { x: 2.6, y: 0, z: 0.18 } }] });
    expect(page.told).toHaveLength(0);
  });
});

describe('arrow keys', () => {
  it('move by so much exactly, off the seat and without finding another', () => {
    const { page, moves } = begun();
    moves.nudge('aboard:ben', 0.05, 0);
    moves.nudge('aboard:ben', 0, 0.05);
    moves.settle();
    expect(page.load.items[1]?.at).toEqual({ x: 1.81, y: -0.37, z: 0.6 });
  });

  it('stop before the bow tube', () => {
    const { page, moves } = begun();
    for (let i = 0; i < 40; i++) moves.nudge('aboard:ben', 0.25, 0);
    moves.settle();
    expect(page.load.items[1]?.at?.x).toBeLessThan(2.94);
    for (let i = 0; i < 40; i++) moves.nudge('aboard:ben', 0.25, 0);
    expect(page.last).toEqual({ kind: 'refused', why: 'bow-tube' });
  });

  it('are taken back by Escape even after they were let go', () => {
    const { page, moves } = begun();
    const before = page.load;
    moves.nudge('aboard:ben', 0.25, 0);
    moves.settle();
    moves.nudge('aboard:ben', 0, 0.25);
    moves.settle();
    expect(moves.takeBackKeys()).toBe(true);
    expect(page.load).toEqual(before);
    expect(moves.takeBackKeys()).toBe(false);
  });

  it('bring one without a place aboard', () => {
    const { page, moves } = begun();
    page.load = load(...page.load.items, aboard('cleo', 60));
    moves.nudge('aboard:cleo', 0.05, 0);
    moves.settle();
    expect(page.load.items[2]?.at).toBeDefined();
  });
});

describe('a tank that is built in', () => {
  it('stays where it is', () => {
    const { page, moves } = begun();
    const at = { x: -0.1, y: 0, z: 0.8 };
    const tank = { name: 'Built in', capacityL: 1, emptyMass: 0, unusableL: 0, fixed: true, at };
    page.craft = { ...page.craft, store: { kind: 'tank', tanks: [tank] } };
    moves.nudge('store:0', 0.5, 0);
    moves.toNextPlace('store:0');
    expect(page.craft.store).toMatchObject({ tanks: [{ at }] });
    expect(page.last).toEqual({ kind: 'refused', why: 'fixed' });
  });
});

describe('one who is removed', () => {
  it('can be put back, at the helm again', () => {
    const { page, moves } = begun();
    const before = page.load;
    moves.remove('aboard:anna');
    expect(page.seats()).toEqual({ ben: 'seat-fore-port' });
    moves.putBack();
    expect(page.load).toEqual(before);
  });
});
