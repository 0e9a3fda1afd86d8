import { describe, expect, it } from 'vitest';
import { type AimAsked, aimFor, type Spread } from '../../../src/core/trip/seating-aim.ts';

const LENGTH = 3;
const BEAM = 1.6;
const craft = (form: string) => ({ hull: { form, wettedLength: LENGTH, beam: BEAM, deadriseDeg: 10 } }) as never;
const asked = { boat: { craft: craft('rib') }, afloat: { mass: 400 }, vcg: 0.4, speed: 7 } as unknown as AimAsked;
const lying = (share: number, rest: Partial<Spread> = {}): Spread => ({
  lcg: share * LENGTH,
  lateral: 0,
  vcg: 0.4,
  pitch: 0,
  ...rest,
});

describe('in a rough sea', () => {
  const aim = aimFor('rough', craft('rib'), asked);
  const cost = (share: number, rest: Partial<Spread> = {}) => aim.cost(lying(share, rest));

  it('a planing boat lies best in the middle between 33 and 40 % of its length', () => {
    expect(cost(0.365)).toBeCloseTo(0, 12);
    // Half the range off, 3.5 %: nothing past it, and 0.1 by the square of 3.5 over 5.
    for (const share of [0.33, 0.4]) expect(cost(share)).toBeCloseTo(0.1 * 0.7 ** 2, 12);
  });

  it('pays a tenth for each square of 5 % past the good range, forward and aft, beside that', () => {
    expect(cost(0.45)).toBeCloseTo(0.1 * 1 + 0.1 * 1.7 ** 2, 12);
    expect(cost(0.28)).toBeCloseTo(0.1 * 1 + 0.1 * 1.7 ** 2, 12);
    expect(cost(0.5)).toBeCloseTo(0.1 * 4 + 0.1 * 2.7 ** 2, 12);
  });

  it('pays a fifth for a twentieth of the beam off the middle, to either side', () => {
    for (const lateral of [0.05 * BEAM, -0.05 * BEAM]) expect(cost(0.365, { lateral })).toBeCloseTo(0.2, 12);
    expect(cost(0.365, { lateral: 0.1 * BEAM })).toBeCloseTo(0.8, 12);
  });

  it('pays a tenth for weight spread along by 18 % of the length', () => {
    expect(cost(0.365, { pitch: (0.18 * LENGTH) ** 2 })).toBeCloseTo(0.1, 12);
  });

  it('is bound by the best between two centres, with the least spread', () => {
    expect(aim.bound(0.3 * LENGTH, 0.43 * LENGTH, 0)).toBeCloseTo(0, 6);
    expect(aim.bound(0.45 * LENGTH, 0.5 * LENGTH, 0)).toBeCloseTo(cost(0.45), 12);
    expect(aim.bound(0.2 * LENGTH, 0.28 * LENGTH, 0)).toBeCloseTo(cost(0.28), 12);
    expect(aim.bound(0.45 * LENGTH, 0.5 * LENGTH, (0.18 * LENGTH) ** 2)).toBeCloseTo(cost(0.45) + 0.1, 12);
  });

  it('a displacement boat lies best between 42 and 50 %', () => {
    const slow = aimFor('rough', craft('displacement'), asked);
    expect(slow.cost(lying(0.46))).toBeCloseTo(0, 12);
    expect(slow.cost(lying(0.42))).toBeCloseTo(0.1 * 0.8 ** 2, 12);
    expect(slow.cost(lying(0.55))).toBeCloseTo(0.1 + 0.1 * 1.8 ** 2, 12);
  });
});

describe('level at rest, of a boat whose lines nobody knows', () => {
  const aim = aimFor('level', craft('displacement'), asked);
  const cost = (share: number) => aim.cost(lying(share));
  /** A tenth for a degree; a quarter of the share of the length off 42 % taken as the angle. */
  const trim = (share: number) => 0.1 * ((0.42 - share) / 4 / (Math.PI / 180)) ** 2;

  it('is the middle of the length, nearer than its neighbours', () => {
    // Figures stand every 3 % of the length, at 0.42 among them.
    expect(cost(0.42)).toBeCloseTo(0, 9);
    expect(cost(0.45)).toBeCloseTo(trim(0.45), 9);
    expect(cost(0.48)).toBeCloseTo(trim(0.48), 9);
  });

  it('is taken straight between two figures, and stays the last one beyond them', () => {
    expect(cost(0.435)).toBeCloseTo(trim(0.45) / 2, 9);
    const past = (share: number) => 0.1 * ((share - 0.5) / 0.05) ** 2;
    expect(cost(0.6) - past(0.6)).toBeCloseTo(trim(0.6), 6);
    expect(cost(0.7) - past(0.7)).toBeCloseTo(trim(0.6), 6);
    const aft = (share: number) => 0.1 * ((0.42 - share) / 0.05) ** 2;
    expect(cost(0.12) - aft(0.12)).toBeCloseTo(trim(0.12), 9);
    expect(cost(0.05) - aft(0.05)).toBeCloseTo(trim(0.12), 9);
  });
});
