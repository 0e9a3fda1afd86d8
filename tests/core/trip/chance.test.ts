import { describe, expect, it } from 'vitest';
import { normalDeviates, seededChance } from '../../../src/core/trip/chance.ts';

const whole = 2 ** 32;

describe('chance by a seed', () => {
  it('is that of the published generator, worked out in whole numbers of any length', () => {
    const one = seededChance(1);
    expect([one(), one(), one()]).toEqual([2693262067 / whole, 11749833 / whole, 2265367787 / whole]);
    const none = seededChance(0);
    expect([none(), none()]).toEqual([1144304738 / whole, 1416247 / whole]);
    const last = seededChance(whole - 1);
    expect([last(), last()]).toEqual([3850105811 / whole, 813802916 / whole]);
  });
});

describe('normal deviates', () => {
  const given = (...values: number[]) => {
    const left = [...values];
    return normalDeviates(() => left.shift()!);
  };

  it('are the two legs of a radius and an angle, one after the other', () => {
    // 1 - e^-2 is a radius of 2, a twelfth a turn of 30 degrees.
    const normal = given(1 - Math.exp(-2), 1 / 12, 1 - Math.exp(-0.5), 3 / 4);
    expect(normal()).toBeCloseTo(Math.sqrt(3), 12);
    expect(normal()).toBeCloseTo(1, 12);
    expect(normal()).toBeCloseTo(0, 12);
    expect(normal()).toBeCloseTo(-1, 12);
  });

  it('stay finite where chance gives nought', () => {
    expect(given(0, 0)()).toBeCloseTo(0, 12);
  });
});
