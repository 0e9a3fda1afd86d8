import { describe, expect, it } from 'vitest';
import { DEMO_FLEET } from '../../../src/components/reserve-check/demo-fleet.ts';
import { type CardAsked, seasonCard } from '../../../src/core/hire/season-card.ts';

const asked: CardAsked = {
  boat: DEMO_FLEET.boats[0]!,
  water: 'sea',
  fill: 1,
  fetch: 1000,
  stream: 0,
  reserve: [{ kind: 'thirds' }],
};

function card(change: Partial<CardAsked> = {}) {
  const work = seasonCard({ ...asked, ...change }, (trip) => trip);
  const shares: number[] = [];
  for (;;) {
    const { done, value } = work.next();
    if (done) return { ...value, shares };
    shares.push(value);
  }
}

describe('seasonCard', () => {
  const full = card();

  it('lets a light crew in little wind go for hours', () => {
    expect(full.longest[0]![0]).toBeGreaterThanOrEqual(3600);
  });

  it('never gives more with more weight or wind', () => {
    full.longest.forEach((row, i) => {
      row.forEach((time, j) => {
        expect(time).toBeLessThanOrEqual(full.longest[i - 1]?.[j] ?? Infinity);
        expect(time).toBeLessThanOrEqual(row[j - 1] ?? Infinity);
      });
    });
  });

  it('has no row beyond the plate', () => {
    expect(full.rows.at(-1)).toEqual({ mass: 320, persons: 4 });
  });

  it('gives less with half a tank, and none in a force that no small boat goes out in', () => {
    const half = card({ fill: 0.5 });
    expect(half.longest[0]![0]).toBeLessThan(full.longest[0]![0]!);
    expect(full.longest[0]![4]).toBe(0);
  });

  it('tells how far it has come', () => {
    expect(full.shares.at(-1)).toBe(1);
    expect([...full.shares].sort((a, b) => a - b)).toEqual(full.shares);
  });
});
