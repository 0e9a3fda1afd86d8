import { describe, expect, it } from 'vitest';
import { loadIn, rewritten, rowsOf, weightsIn } from '../../../src/components/load-table/rows.ts';
import { measuresFor } from '../../../src/components/units/measures.ts';
import { hulls } from '../../../src/core/files/catalogue.ts';

const metric = measuresFor('metric', 'en');
const { hull } = hulls[1]!;
const asked = { eachMass: 85, gear: 0, seating: 'spread', others: [] } as const;

describe('weightsIn', () => {
  it('reads weights with commas, spaces or semicolons between, in the units of the page', () => {
    expect(weightsIn('85, 70 32;20', metric)).toEqual([85, 70, 32, 20]);
    expect(weightsIn('200', measuresFor('imperial', 'en'))![0]).toBeCloseTo(90.7, 1);
    expect(weightsIn('', metric)).toEqual([]);
  });

  it('refuses words, nothing, giants and crowds', () => {
    for (const text of ['85, heavy', '0', '-70', '900', Array(13).fill('70').join(' ')]) {
      expect(weightsIn(text, metric)).toBeUndefined();
    }
  });
});

describe('loadIn', () => {
  it('takes a name before the weights, and none but one', () => {
    expect(loadIn('Family: 85, 70 32', metric)).toEqual({ name: 'Family', masses: [85, 70, 32] });
    expect(loadIn('85', metric)).toEqual({ name: '', masses: [85] });
    expect(loadIn('a: b: 85', metric)).toBeUndefined();
    expect(loadIn('Family: many', metric)).toBeUndefined();
  });

  it('keeps everybody as heavy in other units', () => {
    const imperial = measuresFor('imperial', 'en');
    expect(rewritten('Family: 85, 70', metric, imperial)).toBe('Family: 187, 154');
    expect(rewritten('heavy', metric, imperial)).toBe('heavy');
  });
});

describe('rowsOf', () => {
  it('has crews of one to four and the other loads that can be read', () => {
    const rows = rowsOf(
      hull,
      {
        ...asked,
        others: [
          { id: 'load-1', text: '85, 32' },
          { id: 'load-2', text: 'nobody' },
          { id: 'load-3', text: '' },
          { id: 'load-4', text: 'Divers: 90, 90' },
        ],
      },
      metric,
    );
    expect(rows.map(({ id }) => id)).toEqual(['crew-1', 'crew-2', 'crew-3', 'crew-4', 'load-1', 'load-4']);
    expect(rows.map(({ load }) => load.items.reduce((sum, { mass }) => sum + mass, 0))).toEqual([
      85, 170, 255, 340, 117, 180,
    ]);
    expect(rows.slice(-2).map(({ name }) => name.replaceAll('\u00a0', ' '))).toEqual(['Load of 85 + 32 kg', 'Divers']);
  });

  it('stows the gear with every crew and seats people where they are wanted', () => {
    const middle = (seating: 'forward' | 'aft' | 'spread') => {
      const { items } = rowsOf(hull, { ...asked, seating, gear: 30 }, metric)[2]!.load;
      expect(items.at(-1)).toMatchObject({ kind: 'gear', mass: 30 });
      const seats = items.slice(1, 3).map(({ station }) => hull.stations.find(({ id }) => id === station)!.x);
      return seats.reduce((sum, x) => sum + x, 0);
    };
    expect(middle('forward')).toBeGreaterThan(middle('spread'));
    expect(middle('spread')).toBeGreaterThan(middle('aft'));
  });
});
