import { describe, expect, it } from 'vitest';
import { bestSpeed } from '../../../src/core/curve/best-speed.ts';
import { marginOf, speedAtFroude } from '../../../src/core/curve/hump.ts';
import { CALM, steady } from '../../../src/core/curve/steady.ts';
import { loaded } from './loaded.ts';

const { boat, afloat } = loaded('catamaran-3-6', 'petrol-15hp-4s', 'tank-25');
const through = (speed: number) => speed;
const cost = (speed: number, overGround = through) => steady(boat, afloat, speed, CALM).flow / overGround(speed);
const holds = (speed: number) => marginOf(boat, afloat, steady(boat, afloat, speed, CALM).drive) >= 1;
const planing = speedAtFroude(boat, afloat, 2.2);

/** The cheapest of all speeds that are held, a centimetre a second apart. */
function searched(from: number, overGround = through): number {
  let best = from;
  for (let speed = from; speed <= 15; speed += 0.01)
    if (holds(speed) && cost(speed, overGround) < cost(best, overGround)) best = speed;
  return best;
}

describe('the speed of least use', () => {
  it.each([
    ['at any speed', false, 1.2],
    ['on the plane', true, planing],
  ] as const)('%s costs what the cheapest of all speeds costs', (_, onPlane, from) => {
    const best = bestSpeed(boat, afloat, CALM, through, onPlane)!;
    expect(best).toBeGreaterThanOrEqual(from);
    expect(holds(best)).toBe(true);
    expect(cost(best) / cost(searched(from))).toBeLessThan(1.001);
  });

  it('is faster against a stream', () => {
    const against = (speed: number) => speed - 1;
    const best = bestSpeed(boat, afloat, CALM, against, false)!;
    expect(best).toBeGreaterThan(bestSpeed(boat, afloat, CALM, through, false)!);
    expect(cost(best, against) / cost(searched(1.3, against), against)).toBeLessThan(1.001);
  });

  it('is none where no speed makes headway, also where all of them just stand', () => {
    expect(bestSpeed(boat, afloat, CALM, () => -1, false)).toBeUndefined();
    expect(bestSpeed(boat, afloat, CALM, () => 0, false)).toBeUndefined();
  });

  it('is none on the plane for a boat too heavy to plane', () => {
    const heavy = { ...afloat, mass: 3 * afloat.mass };
    expect(bestSpeed(boat, heavy, CALM, through, true)).toBeUndefined();
    expect(bestSpeed(boat, heavy, CALM, through, false)).toBeGreaterThanOrEqual(1.2);
  });
});
