import { describe, expect, it } from 'vitest';
import petrolDay from '../../../shared/trips/petrol-day.json' with { type: 'json' };
import { attitudeFigures, bowText, floatFigures, heelText } from '../../../src/components/attitude/attitude-texts.ts';
import {
  capacityAnswer,
  capacityRows,
  fitRows,
  notCovering,
} from '../../../src/components/load-advice/capacity-texts.ts';
import { adviceRows, adviceText } from '../../../src/components/load-advice/seat-texts.ts';
import { measuresFor } from '../../../src/components/units/measures.ts';
import type { Hull } from '../../../src/core/craft/shapes.ts';
import { craftFrom } from '../../../src/core/files/catalogue.ts';
import { capacityOf } from '../../../src/core/load/capacity.ts';
import { attitudeOf } from '../../../src/core/trip/attitude.ts';
import { seatingAdvice } from '../../../src/core/trip/seating-advice.ts';
import type { Trip } from '../../../src/core/trip/shapes.ts';

const m = measuresFor('nautical', 'en');
const day = petrolDay as unknown as Trip;
const BROKEN = /undefined|NaN|\[object|Infinity/;
const plain = (text: string) => text.replaceAll('\u00a0', ' ');
const asked = { storeMass: 8, density: 1025 };

function withHull(change: Partial<Hull>): Trip {
  return { ...day, craft: { ...day.craft, hull: { ...day.craft.hull, ...change } } };
}

describe('words of attitude', () => {
  it('say which way the bow and the boat lean', () => {
    expect(plain(bowText(2.2, m))).toBe('2° bow up');
    expect(plain(bowText(-1.4, m))).toBe('1° bow down');
    expect(bowText(0.1, m)).toBe('level');
    expect(plain(heelText(-4, m))).toBe('4° to port');
    expect(heelText(0, m)).toBe('upright');
  });

  it('turn to stop where the edge is under water', () => {
    const anvil = { id: 'anvil', kind: 'gear' as const, mass: 400, at: { x: 0.1, y: 0, z: 0.2 } };
    const heavy = { ...day, load: { ...day.load, items: [...day.load.items, anvil] } };
    const edge = attitudeFigures(attitudeOf(heavy, 7), undefined, m).find(({ name }) => name === 'edge')!;
    expect(edge.tone).toBe('over');
    expect(plain(edge.figure)).toMatch(/under/);
  });

  it('are whole for every figure, with tubes and without', () => {
    for (const craft of [day.craft, craftFrom('rigid-v-4-2', 'petrol-15hp-4s', 'tank-25')]) {
      const { float } = attitudeOf({ ...day, craft }, 7);
      if (typeof float === 'string') throw new Error(float);
      for (const [term, figure] of floatFigures(float, m)) expect(`${term} ${figure}`).not.toMatch(BROKEN);
    }
  });
});

describe('words of what the boat may carry', () => {
  it('let the plate lead and name the rules that do not cover an inflatable catamaran', () => {
    const capacity = capacityOf(day.craft, day.load, asked);
    expect(plain(capacityAnswer(capacity, m))).toMatch(/may still come aboard\. The limit: the boat's plate\./);
    expect(capacityRows(capacity, m)[0]!.tone).toBe('leads');
    expect(notCovering(capacity)).toContain('Length times width');
  });

  it('say that the plate has to be read before anything is told', () => {
    const { craft, load } = withHull({ plate: undefined });
    expect(capacityAnswer(capacityOf(craft, load, asked), m)).toMatch(/^Not known: read the plate first/);
  });

  it('say that nothing is known of a boat without plate, rule and tubes', () => {
    const { craft, load } = withHull({ plate: 'none', tube: undefined });
    expect(capacityAnswer(capacityOf(craft, load, asked), m)).toMatch(/^Not known: no plate/);
  });

  it('name a shaft too long and one too short, with the cost of the first', () => {
    const shaft = (height: number, length: 'short' | 'long') => {
      const trip = withHull({ transomHeight: height });
      const changed = { ...trip, craft: { ...trip.craft, drive: { ...trip.craft.drive, shaft: length } } };
      const capacity = capacityOf(changed.craft, changed.load, asked);
      return plain(fitRows(changed, capacity, 7, m)[2]![1]);
    };
    expect(shaft(0.4, 'long')).toMatch(
      /^too long by 0\.11 m: it drags, about .* of top speed and .* more consumption$/,
    );
    expect(shaft(0.53, 'short')).toMatch(/^too short by 0\.15 m/);
    expect(shaft(0.4, 'short')).toMatch(/^the plate over the propeller lies level/);
  });
});

describe('words of the advice', () => {
  it('say who goes where, why, and what it costs to stay', () => {
    const items = day.load.items.map((item) => (item.name === 'Mate' ? { ...item, station: 'seat-aft-port' } : item));
    const trip: Trip = { ...day, load: { ...day.load, items } };
    for (const purpose of ['planing', 'level', 'range', 'rough', 'tiller'] as const) {
      const advice = seatingAdvice(trip, undefined, { purpose, speed: 7.7 })!;
      const { says, costs } = adviceText(trip, advice, m);
      expect(`${says} ${costs}`).not.toMatch(BROKEN);
      if (purpose === 'planing') {
        expect(says).toMatch(/^Mate to forward seat, port/);
        expect(plain(costs)).toMatch(/more speed before the bow comes down/);
      }
      for (const row of adviceRows(advice, 'fuel', m)) expect(row.join(' ')).not.toMatch(BROKEN);
    }
  });
});
