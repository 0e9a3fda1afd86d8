import { describe, expect, it } from 'vitest';
import { across, along } from '../../../src/components/deck-plan/good-balance.ts';
import { fuelAboard, pieces, storeMoved } from '../../../src/components/deck-plan/pieces.ts';
import { fullName } from '../../../src/components/deck-plan/place-names.ts';
import { totals } from '../../../src/components/deck-plan/totals.ts';
import { measuresFor } from '../../../src/components/units/measures.ts';
import type { Hull } from '../../../src/core/craft/shapes.ts';
import { balance } from '../../../src/core/load/balance.ts';
import type { Load } from '../../../src/core/load/shapes.ts';
import { aboard, twoTanks } from '../../core/load/made-craft.ts';
import { boat, craftWith, load } from './boats.ts';

const metric = measuresFor('metric', 'en');
const cat = boat('catamaran-3-6');

/** Spaces that do not break read like others here. */
const plain = (text: string) => text.replace(/\u00a0/g, ' ');

function said(hull: Hull, of: Load) {
  const craft = craftWith(hull);
  const lines = totals(craft, of, balance(craft, of, fuelAboard(craft, of)), metric);
  return Object.fromEntries(
    lines.map(({ name, figure, notes, tone }) => [name, { figure: plain(figure), notes: notes.map(plain), tone }]),
  );
}

describe('along', () => {
  it('calls a third to two fifths of the length good on a boat that planes', () => {
    const word = (lcgShare: number) => along({ lcgShare }, { form: 'rib' });
    expect([0.2, 0.3, 0.33, 0.36, 0.4, 0.43, 0.5].map(word)).toEqual([
      'aft',
      'little-aft',
      'good',
      'good',
      'good',
      'little-forward',
      'forward',
    ]);
  });

  it('wants it nearer the middle on a boat that never planes', () => {
    expect(along({ lcgShare: 0.36 }, { form: 'displacement' })).toBe('aft');
    expect(along({ lcgShare: 0.46 }, { form: 'displacement' })).toBe('good');
  });
});

describe('across', () => {
  it('judges both sides alike, by the beam', () => {
    for (const side of [-1, 1]) {
      const word = (lateral: number) => across({ lateral: side * lateral }, { beam: 2 });
      expect([0, 0.08, 0.15, 0.25].map(word)).toEqual(['middle', 'good', 'little', 'off']);
    }
  });
});

describe('totals', () => {
  const crew = load(aboard('a', 85, { station: 'helm' }), aboard('b', 85, { station: 'seat-fore-port' }));

  it('adds up people and gear, and boat, engine and fuel on top', () => {
    const { people, 'all-up': allUp } = said(cat, { ...crew, fill: 0.5 });
    expect(people).toEqual({ figure: '170 kg', notes: ['2 people'], tone: 'plain' });
    // 58 hull + 50 engine + 3 tank + 170 + 12 L x 0.5 x 0.745 kg/L
    expect(allUp?.figure).toBe('285 kg');
    expect(allUp?.notes).toEqual(['with the tank 50% full']);
  });

  it('says that the level of the tank is a guess when nobody gave it', () => {
    expect(said(cat, crew)['all-up']?.notes).toEqual(['the tank taken as half full: nobody said']);
  });

  it('calls nothing fine while the plate is not read, and says when there is none', () => {
    expect(said(cat, crew).counted).toMatchObject({ notes: ['the plate is not read yet'], tone: 'doubt' });
    expect(said({ ...cat, plate: 'none' }, crew).counted).toMatchObject({
      notes: ['this boat has no plate'],
      tone: 'doubt',
    });
  });

  it('holds what the plate counts against it, engine left out on a European one', () => {
    const { counted } = said({ ...cat, plate: { scheme: 'eu', maxLoad: 420 } }, { ...crew, fill: 0 });
    expect(counted).toEqual({ figure: '173 kg', notes: ['the plate allows 420 kg'], tone: 'plain' });
  });

  it('says how much is too much, and how many too many', () => {
    const { counted, people } = said(
      { ...cat, plate: { scheme: 'eu', maxLoad: 150, persons: 1 } },
      { ...crew, fill: 0 },
    );
    expect(counted).toEqual({ figure: '173 kg', notes: ['the plate allows 150 kg', '23 kg too much'], tone: 'over' });
    expect(people?.notes).toEqual(['2 people, the plate allows 1 person']);
    expect(people?.tone).toBe('over');
  });

  it('names the side the boat leans to', () => {
    expect(said(cat, load(aboard('a', 85, { station: 'helm' }))).across?.notes[0]).toMatch(/to starboard$/);
    expect(said(cat, load(aboard('a', 85, { station: 'seat-aft-port' }))).across?.notes[0]).toMatch(/to port$/);
  });
});

describe('fullName', () => {
  it('says who, how heavy, where and which of how many', () => {
    const craft = craftWith(cat);
    const crew = load(
      aboard('a', 85, { name: 'Skipper', station: 'helm', helm: true }),
      aboard('b', 35, { kind: 'child', at: { x: 1.2, y: -0.7 } }),
      aboard('c', 15, { kind: 'gear' }),
    );
    const all = pieces(craft, { ...crew, fill: 1 });
    expect(all.map((piece) => plain(fullName(cat, all, piece, metric)))).toEqual([
      'Skipper 85 kg, Helm, starboard aft, at the helm; piece 1 of 4',
      'Child 35 kg, free spot 1.2 m forward, 0.7 m to port; piece 2 of 4',
      'Gear 15 kg, place not known; piece 3 of 4',
      'Portable 11 kg, Tank or battery aft; piece 4 of 4',
    ]);
  });

  it('says when a place from elsewhere is not on the boat', () => {
    const craft = craftWith(cat);
    const all = pieces(craft, load(aboard('a', 85, { at: { x: 9, y: 0 } })));
    expect(plain(fullName(cat, all, all[0]!, metric))).toContain('outside the boat');
  });
});

describe('pieces', () => {
  it('weighs a tank with the fuel in it, and a full one with room left to expand', () => {
    const craft = craftWith(cat);
    const mass = (fill: number) => pieces(craft, { items: [], fill })[0]!.mass;
    expect(mass(0)).toBeCloseTo(3, 9);
    expect(mass(0.5)).toBeCloseTo(3 + 6 * 0.745, 9);
    expect(mass(1)).toBeCloseTo(3 + 12 * 0.95 * 0.745, 9);
  });
});

describe('storeMoved', () => {
  it('moves the one tank that is meant, and none that is built in', () => {
    const to = { x: 1, y: 0.2, z: 0.1 };
    expect(storeMoved(twoTanks, 0, to)).toMatchObject({ tanks: [{ at: to }, { at: { x: 0.5 } }] });
    expect(storeMoved(twoTanks, 1, to)).toEqual(twoTanks);
  });
});
