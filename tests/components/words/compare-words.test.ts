import { describe, expect, it } from 'vitest';
import { measuresFor } from '../../../src/components/units/measures.ts';
import {
  adviceText,
  chanceText,
  changeWords,
  noteText,
  planesText,
  sparePlaningText,
  spareText,
  standingWords,
  suitReasonText,
  suitsBecause,
  surenessWords,
} from '../../../src/components/words/en-compare.ts';
import { propellerAdvice } from '../../../src/core/compare/propeller-advice.ts';
import { suited } from '../../../src/core/compare/suit.ts';
import * as catalogue from '../../../src/core/files/catalogue.ts';
import { loadedWith } from '../../core/compare/boats.ts';

const m = measuresFor('metric', 'en');
const BROKEN = /undefined|NaN|Infinity|null|\[object|\( | {2}|\(\)|,\)|\.\.| \.|:\.|: ?$|, ?$/;
const plain = (text: string) => text.replaceAll('\u00a0', ' ');

describe('words of the comparison', () => {
  it('give every combination of the catalogue a whole sentence for each reason, or say why it suits', () => {
    for (const use of [{ crew: [85, 75, 70, 60], carry: 25 }, { crew: [85, 75] }, { crew: Array(8).fill(70) }]) {
      const asked = {
        gear: 20,
        distance: 30_000,
        water: 'sea' as const,
        waveHeight: 0.3,
        speed: 7,
        energy: 'either' as const,
        batteryTemperatureC: 5,
        ...use,
      };
      for (const one of suited(asked, catalogue)) {
        const store = one.trip?.store ?? 'fuel';
        const sentences = one.reasons.map((reason) => suitReasonText(reason, m, store));
        if (one.standing === 'fits') sentences.push(suitsBecause(one, 7, m));
        expect(sentences.length).toBeGreaterThan(0);
        for (const sentence of sentences) {
          expect(plain(sentence)).toMatch(/^[A-Z].{8,}\.$/);
          expect(plain(sentence)).not.toMatch(BROKEN);
        }
        expect(standingWords[one.standing]).toMatch(/^[A-Z]/);
      }
    }
  });

  it('say of a propeller what is wrong and by how much, with the rule of thumb marked as one', () => {
    const { boat, afloat } = loadedWith('catamaran-3-6', 'petrol-15hp-4s', 'tank-25');
    const low = adviceText(propellerAdvice(boat, afloat, { low: 5000, high: 6000 }, 4500), 'en').map(plain);
    expect(low[0]).toBe('Measured 4,500 rpm at full throttle; our model says 6,080. Wanted are 5,000 to 6,000.');
    expect(low.join(' ')).toMatch(/less pitch/);
    expect(low.at(-1)).toMatch(/rule of thumb/);
    const fine = adviceText(propellerAdvice(boat, afloat, { low: 5000, high: 6000 }, 5500), 'en');
    expect(fine).toHaveLength(2);
    for (const sentence of [...low, ...fine.map(plain)]) expect(sentence).not.toMatch(BROKEN);
  });

  it('put the weight before the propeller where the boat stays below the hump', () => {
    const { boat, afloat } = loadedWith('catamaran-3-6', 'petrol-8hp-4s', 'tank-12', { count: 4 });
    const text = adviceText(propellerAdvice(boat, afloat, { low: 5000, high: 6000 }), 'en').join(' ');
    expect(text).toMatch(/below the hump/);
    expect(text).not.toMatch(/in less pitch/);
  });

  it('tell a chance without false precision', () => {
    expect([0, 0.03, 0.26, 0.5, 0.93, 0.97, 1].map(chanceText)).toEqual([
      'hardly any such boat',
      'hardly any such boat',
      '3 in 10 such boats',
      '5 in 10 such boats',
      '9 in 10 such boats',
      'nearly all such boats',
      'nearly all such boats',
    ]);
    for (const planes of ['planes', 'marginal', 'not'] as const) {
      expect(planesText({ planes, chance: 0.5, humpSpeed: 4, humpMargin: 1 })).toMatch(/plane/i);
    }
  });

  it('tell what is to spare, what is too much, and that nobody knows without a plate', () => {
    const spare = { extra: 34, binds: 'plate', plateKnown: true, planing: -12 } as const;
    expect(plain(spareText(spare, m))).toBe('34 kg (plate)');
    expect(plain(spareText({ ...spare, extra: -34 }, m))).toBe('34 kg too much (plate)');
    expect(plain(spareText({ ...spare, plateKnown: false }, m))).toMatch(/^not known without a plate/);
    expect(plain(sparePlaningText(spare, m))).toBe('with 12 kg less');
    expect(sparePlaningText({ ...spare, planing: undefined }, m)).toBe('not even empty');
  });

  it('have a name for every change, its sureness and every note', () => {
    for (const { name } of Object.values(changeWords)) expect(name('0.3 m')).toMatch(/^[A-Z]/);
    for (const words of Object.values(surenessWords)) expect(words).toMatch(/^[A-Z]/);
    for (const note of [
      { code: 'leg-deep', by: 0.127 },
      { code: 'leg-high', by: 0.127 },
      { code: 'shaft-unknown' },
      { code: 'revs-high', rpm: 6100, rated: 5500 },
      { code: 'revs-low', rpm: 4700, rated: 5500 },
    ] as const) {
      expect(plain(noteText(note, m))).toMatch(/^[A-Z].*\.$/);
    }
  });
});
