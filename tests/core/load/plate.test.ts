import { describe, expect, it } from 'vitest';
import { balance } from '../../../src/core/load/balance.ts';
import { categoryCovers, plateFindings } from '../../../src/core/load/plate.ts';
import { aboard, craft } from './made-craft.ts';

const crew = { items: [aboard('a', 100, { station: 'helm' }), aboard('b', 100, { station: 'bow' })] };

describe('plateFindings', () => {
  it('finds nothing at the limits themselves', () => {
    const full = craft({
      plate: { scheme: 'eu', maxLoad: 203, persons: 2, maxPower: 11000, maxEngineMass: 50, category: 'C' },
    });
    expect(plateFindings(full, balance(full, crew, 0))).toEqual([]);
  });

  it('finds each limit that is exceeded, with figure and limit', () => {
    const small = craft({ plate: { scheme: 'eu', maxLoad: 202, persons: 1, maxPower: 10000, maxEngineMass: 49 } });
    expect(plateFindings(small, balance(small, crew, 0))).toEqual([
      { over: 'load', value: 203, limit: 202 },
      { over: 'persons', value: 2, limit: 1 },
      { over: 'power', value: 11000, limit: 10000 },
      { over: 'engine-mass', value: 50, limit: 49 },
    ]);
  });

  it('has nothing to hold the load against without a plate or a figure on it', () => {
    for (const plate of [undefined, 'none', { scheme: 'us' }] as const) {
      const boat = craft({ plate });
      expect(plateFindings(boat, balance(boat, crew, 20))).toEqual([]);
    }
  });
});

describe('categoryCovers', () => {
  it('gives no design category to a boat under 2.5 m', () => {
    expect(categoryCovers(2.3)).toBe(false);
    expect(categoryCovers(2.5)).toBe(true);
    expect(categoryCovers(24.1)).toBe(false);
  });
});
