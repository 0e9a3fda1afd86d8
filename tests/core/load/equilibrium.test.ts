import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { equilibrium, levelFor, stiffness, type Weight } from '../../../src/core/load/equilibrium.ts';
import type { FloatBody, Slice } from '../../../src/core/load/float-body.ts';
import { DEGREE } from '../../../src/core/units/convert.ts';

const SEA = 1025;
const [LENGTH, BREADTH, DEPTH] = [4, 1.6, 6];

/** Two-point Gauss slices of a straight prism: exact for its moments. */
function slicesOf(ring: readonly number[], length = LENGTH): Slice[] {
  return Array.from({ length: 10 }, (_, i) => i).flatMap((i) =>
    [-1, 1].map((side) => ({
      x: ((i + 0.5 + side / (2 * Math.sqrt(3))) * length) / 10,
      thickness: length / 20,
      ring,
    })),
  );
}

/** A deep box, whose walls reach far over and under any waterline here. */
function box(change: Partial<FloatBody> = {}): FloatBody {
  const half = BREADTH / 2;
  return {
    slices: slicesOf([half, 0, half, DEPTH, -half, DEPTH, -half, 0]),
    edges: [0, LENGTH].flatMap((x) =>
      [-half, half].map((y) => ({ part: 'gunwale' as const, x, y, z: DEPTH, radius: 0 })),
    ),
    symmetric: true,
    middle: LENGTH / 2,
    tubeVolume: 0,
    volume: LENGTH * BREADTH * DEPTH,
    side: { outer: half, inner: half },
    ...change,
  };
}

interface Attitude {
  readonly draft: number;
  readonly bowUp: number;
  readonly heel: number;
}

/** Where the centre of gravity of a wall-sided box has to be, at a height z, to float so: closed form, any angle. */
function weightFor({ draft, bowUp, heel }: Attitude, z: number): Weight {
  const area = LENGTH * BREADTH;
  const volume = area * draft;
  const along = (BREADTH * LENGTH ** 3) / 12;
  const across = (LENGTH * BREADTH ** 3) / 12;
  const up = (area * draft ** 2 + bowUp ** 2 * along + heel ** 2 * across) / 2 - z * volume;
  return {
    mass: volume * SEA,
    x: LENGTH / 2 + (-bowUp * along - bowUp * up) / volume,
    y: (heel * across + heel * up) / volume,
    z,
  };
}

const attitudes = fc.record({
  draft: fc.double({ min: 1.6, max: 1.9, noNaN: true }),
  bowUp: fc.double({ min: -0.44, max: 0.44, noNaN: true }),
  heel: fc.double({ min: -0.7, max: 0.7, noNaN: true }),
});

describe('a wall-sided box', () => {
  it('floats in the attitude that its weight was placed for, at large angles of trim and heel together', () => {
    fc.assert(
      fc.property(attitudes, fc.double({ min: 0.2, max: 0.7, noNaN: true }), (attitude, z) => {
        const { draft, bowUp, heel } = attitude;
        const found = equilibrium(box(), weightFor(attitude, z), SEA);
        if (found.state !== 'afloat') throw new Error(found.state);
        // Newton's last step is below 1e-6, so that what is left is about its square.
        expect(found.surface.level).toBeCloseTo(draft, 9);
        expect(found.surface.bowUp).toBeCloseTo(bowUp, 9);
        expect(found.surface.heel).toBeCloseTo(heel, 9);
        const norm = Math.hypot(1, bowUp, heel);
        expect(found.draft).toBeCloseTo(draft / norm, 9);
        expect(Math.tan(found.trimDeg * DEGREE)).toBeCloseTo(bowUp, 9);
        expect(Math.tan(found.heelDeg * DEGREE)).toBeCloseTo(heel, 9);
        const lowest = DEPTH - draft - Math.abs(bowUp) * (LENGTH / 2) - Math.abs(heel) * (BREADTH / 2);
        expect(found.freeboard).toBeCloseTo(lowest / norm, 9);
        // Bow up, the stern is low; heeled to starboard, that side.
        if (Math.abs(bowUp) > 1e-3) expect(found.lowest.x).toBe(bowUp > 0 ? 0 : LENGTH);
        if (Math.abs(heel) > 1e-3) expect(Math.sign(found.lowest.y)).toBe(Math.sign(heel));
      }),
      { numRuns: 60, seed: 3 },
    );
  });

  it('floats the same seen from another place: its middle line and middle are only where heights are told', () => {
    const [aside, middle] = [0.3, 1.1];
    const half = BREADTH / 2;
    const [port, starboard] = [aside - half, aside + half];
    const body = box({
      slices: slicesOf([starboard, 0, starboard, DEPTH, port, DEPTH, port, 0]),
      symmetric: false,
      middle,
    });
    fc.assert(
      fc.property(attitudes, fc.double({ min: 0.2, max: 0.7, noNaN: true }), (attitude, z) => {
        const { draft, bowUp, heel } = attitude;
        const weight = weightFor(attitude, z);
        const found = equilibrium(body, { ...weight, y: weight.y + aside }, SEA);
        if (found.state !== 'afloat') throw new Error(found.state);
        expect(found.surface.bowUp).toBeCloseTo(bowUp, 9);
        expect(found.surface.heel).toBeCloseTo(heel, 9);
        expect(found.surface.level).toBeCloseTo(draft + bowUp * (LENGTH / 2 - middle) - heel * aside, 9);
      }),
      { numRuns: 60, seed: 4 },
    );
  });

  it('is lost beyond 45 degrees of heel and 25 of trim, not before', () => {
    const state = (bowUpDeg: number, heelDeg: number) => {
      const attitude = { draft: 1.9, bowUp: Math.tan(bowUpDeg * DEGREE), heel: Math.tan(heelDeg * DEGREE) };
      return equilibrium(box(), weightFor(attitude, 0.2), SEA).state;
    };
    for (const side of [-1, 1]) {
      expect([44.5, 45.5].map((heel) => state(0, side * heel))).toEqual(['afloat', 'capsizes']);
      expect([24.5, 25.5].map((trim) => state(side * trim, 0))).toEqual(['afloat', 'upends']);
    }
  });

  it('sinks under what it displaces whole, and under more', () => {
    const weight = (share: number): Weight => ({ mass: share * LENGTH * BREADTH * DEPTH * SEA, x: 2, y: 0, z: 0.5 });
    expect(equilibrium(box(), weight(1), SEA).state).toBe('sinks');
    expect(equilibrium(box(), weight(1.2), SEA).state).toBe('sinks');
  });

  it('leans to the angle of loll where it does not stay upright: tan^2 = -2 GM / BM', () => {
    const draft = 1.5;
    const bm = BREADTH ** 2 / (12 * draft);
    for (const gm of [-0.002, -0.01, -0.03]) {
      const weight = { mass: LENGTH * BREADTH * draft * SEA, x: 2, y: 0, z: draft / 2 + bm - gm };
      const found = equilibrium(box(), weight, SEA);
      if (found.state !== 'afloat') throw new Error(found.state);
      expect(Math.tan(found.heelDeg * DEGREE) ** 2).toBeCloseTo((-2 * gm) / bm, 6);
      expect(found.trimDeg).toBeCloseTo(0, 6);
    }
    // Loll beyond 45 degrees is none.
    const high = { mass: LENGTH * BREADTH * draft * SEA, x: 2, y: 0, z: draft / 2 + 1.6 * bm };
    expect(equilibrium(box(), high, SEA).state).toBe('capsizes');
  });

  it('floats the same whether or not it is known to be alike on both sides', () => {
    const weight = weightFor({ draft: 1.7, bowUp: 0.2, heel: 0 }, 0.5);
    const alike = equilibrium(box(), weight, SEA);
    const other = equilibrium(box({ symmetric: false }), weight, SEA);
    if (alike.state !== 'afloat' || other.state !== 'afloat') throw new Error('lost');
    expect(alike.heelDeg).toBe(0);
    expect(other.heelDeg).toBeCloseTo(0, 9);
    expect(other.surface.bowUp).toBeCloseTo(alike.surface.bowUp, 9);
    expect(other.surface.level).toBeCloseTo(alike.surface.level, 9);
  });

  it('has the metacentric heights of its waterplane, upright: BM = I / V', () => {
    const draft = 1.7;
    const weight = weightFor({ draft, bowUp: 0, heel: 0 }, 0.5);
    const { across, along, waterplane } = stiffness(box().slices, 2, weight, { level: draft, bowUp: 0, heel: 0 });
    expect(across).toBeCloseTo(draft / 2 + BREADTH ** 2 / (12 * draft) - 0.5, 9);
    expect(along).toBeCloseTo(draft / 2 + LENGTH ** 2 / (12 * draft) - 0.5, 9);
    expect(waterplane).toBeCloseTo(LENGTH * BREADTH, 9);
  });

  it('turns about the middle of its waterplane where that is not the middle of the boat', () => {
    // Half of it told from another middle is the same boat.
    const draft = 1.2;
    const slices = slicesOf([0, 0, 0.8, 0, 0.8, DEPTH, 0, DEPTH], 3);
    const weight = { mass: 3 * 0.8 * draft * SEA, x: 1.5, y: 0.4, z: 0.5 };
    // And how stiff it is does not ask where along or across the weight sits, only how high.
    for (const put of [weight, { ...weight, x: 0.9, y: 0.1 }]) {
      const { across, along } = stiffness(slices, 0.2, put, { level: draft, bowUp: 0, heel: 0 });
      expect(across).toBeCloseTo(draft / 2 + 0.8 ** 2 / (12 * draft) - 0.5, 9);
      expect(along).toBeCloseTo(draft / 2 + 3 ** 2 / (12 * draft) - 0.5, 9);
    }
  });
});

describe('the level of a volume', () => {
  const prism = slicesOf([0, 0, 1, 1, 1, 3, -1, 3, -1, 1]);

  it('of a box is volume over area', () => {
    for (const level of [0.001, 0.05, 0.2, 0.7, 1.5, 1.99]) {
      expect(levelFor(box().slices, 2, LENGTH * BREADTH * level)).toBeCloseTo(level, 6);
    }
  });

  it('of a V bottom goes with its root, straight sides above', () => {
    for (const level of [0.01, 0.1, 0.5, 0.9]) expect(levelFor(prism, 2, LENGTH * level ** 2)).toBeCloseTo(level, 5);
    for (const level of [1.1, 1.9]) expect(levelFor(prism, 2, LENGTH * (2 * level - 1))).toBeCloseTo(level, 5);
  });

  it('of a tube is that of the circular segment', () => {
    const radius = 0.25;
    const tube = slicesOf([]).map(({ x, thickness }) => ({ x, thickness, round: { y: 0.6, z: radius, radius } }));
    for (const angle of [0.2, 0.8, 1.5, 2, 2.6]) {
      const area = radius ** 2 * (angle - Math.sin(angle) * Math.cos(angle));
      expect(levelFor(tube, 2, LENGTH * area)).toBeCloseTo(radius * (1 - Math.cos(angle)), 5);
    }
  });
});
