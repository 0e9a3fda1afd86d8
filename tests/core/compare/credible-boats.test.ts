import { expect, it } from 'vitest';
import { credibleBoats, tenToNinety } from '../../../src/core/compare/credible-boats.ts';
import { priorDeviations } from '../../../src/core/curve/factors.ts';
import { loadedWith } from './boats.ts';

const { boat, craft } = loadedWith('rib-4-7', 'petrol-40hp-4s', 'tank-25-25');

it('draws boats that lie round the one in the middle as far as its factors may', () => {
  const boats = credibleBoats(boat);
  const [, kp] = priorDeviations(craft.drive);
  const drawn = boats.map(({ factors }) => factors.hull.kp);
  const mean = drawn.reduce((sum, each) => sum + each, 0) / drawn.length;
  const deviation = Math.sqrt(drawn.reduce((sum, each) => sum + (each - mean) ** 2, 0) / drawn.length);
  expect(mean).toBeCloseTo(1, 1);
  expect(deviation / kp!).toBeGreaterThan(0.7);
  expect(deviation / kp!).toBeLessThan(1.2);
  for (const { factors } of boats) expect(Math.min(factors.hull.kd, factors.hull.kp)).toBeGreaterThan(0);
});

it('draws the same boats every time, and none of a boat that is known exactly', () => {
  const factors = (all: ReturnType<typeof credibleBoats>) => all.map((each) => each.factors.hull);
  expect(factors(credibleBoats(boat))).toEqual(factors(credibleBoats(boat)));
  const known = { ...boat, factors: { ...boat.factors, covariance: new Float64Array(64) } };
  expect(credibleBoats(known)).toEqual([]);
});

it('leaves out the outermost of thirteen on both sides', () => {
  expect(tenToNinety([13, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12])).toEqual({ low: 2, high: 12 });
  expect(tenToNinety([5])).toEqual({ low: 5, high: 5 });
});
