import { describe, expect, it } from 'vitest';
import { edgeTree } from '../../../src/core/route/edge-tree.ts';
import { firstShore, type Ray } from '../../../src/core/route/first-shore.ts';
import { seededChance } from '../../../src/core/trip/chance.ts';

const same = (lon: number) => lon;
type Ring = readonly (readonly [number, number])[];
const square = (minX: number, minY: number, maxX: number, maxY: number): Ring => [
  [minX, minY],
  [maxX, minY],
  [maxX, maxY],
  [minX, maxY],
];
const shoreOf = (...rings: Ring[]) =>
  edgeTree(
    rings.map((ring) => ring.map((point) => [...point])),
    same,
  );
/** From a point, in a direction on the chart, so many chart degrees a metre. */
const ray = (x: number, y: number, dx: number, dy: number): Ray => ({ x, y, dx, dy });

const island = shoreOf(square(10, 10, 20, 14));

describe('the first shore on a ray', () => {
  it('is as far off as its nearer side, from north, east, south and west', () => {
    expect(firstShore(island, ray(0, 12, 1, 0), 100)).toBe(10);
    expect(firstShore(island, ray(30, 12, -1, 0), 100)).toBe(10);
    expect(firstShore(island, ray(15, 0, 0, 1), 100)).toBe(10);
    expect(firstShore(island, ray(15, 30, 0, -1), 100)).toBe(16);
  });

  it('is told in metres: half of a degree a metre takes twice as many', () => {
    expect(firstShore(island, ray(0, 12, 0.5, 0), 100)).toBe(20);
    expect(firstShore(island, ray(0, 2, 0.1, 0.1), 1000)).toBeCloseTo(100, 9);
    expect(firstShore(island, ray(30, 2, -2, 1), 100)).toBe(8);
  });

  it('is none within reach where it lies farther', () => {
    expect(firstShore(island, ray(0, 12, 1, 0), 9.99)).toBe(9.99);
    expect(firstShore(island, ray(0, 12, 1, 0), 10.01)).toBe(10);
    expect(firstShore(island, ray(0, 12, 1, 0), 10)).toBe(10);
  });

  it('is none where the ray goes the other way or past it', () => {
    for (const past of [
      ray(0, 12, -1, 0),
      ray(30, 12, 1, 0),
      ray(15, 0, 0, -1),
      ray(15, 30, 0, 1),
      ray(0, 9, 1, 0),
      ray(0, 15, 1, 0),
      ray(9, 0, 0, 1),
      ray(21, 0, 0, 1),
      ray(0, 0, 1, 0.1),
      ray(0, 0, 1, 2),
    ]) {
      expect(firstShore(island, past, 100)).toBe(100);
    }
  });

  it('is seen from inside as well: the way out of a lagoon', () => {
    expect(firstShore(island, ray(15, 12, 1, 0), 100)).toBe(5);
    expect(firstShore(island, ray(15, 12, -1, 0), 100)).toBe(5);
    expect(firstShore(island, ray(15, 12, 0, 1), 100)).toBe(2);
    expect(firstShore(island, ray(15, 12, 0, -1), 100)).toBe(2);
    expect(firstShore(island, ray(15, 12, 1, 1), 100)).toBe(2);
  });

  it('is the nearer of two, in whichever order they are drawn', () => {
    const [near, far] = [square(10, 10, 11, 14), square(40, 10, 41, 14)];
    for (const shore of [shoreOf(near, far), shoreOf(far, near)]) {
      expect(firstShore(shore, ray(0, 12, 1, 0), 100)).toBe(10);
      expect(firstShore(shore, ray(12, 12, 1, 0), 100)).toBe(28);
    }
  });

  it('counts a corner that is only touched where its shore lies to the right, and no shore run along', () => {
    const roof: Ring = [
      [10, 10],
      [20, 10],
      [15, 20],
    ];
    expect(firstShore(shoreOf(roof), ray(0, 20, 1, 0), 100)).toBe(15);
    expect(firstShore(shoreOf(roof), ray(40, 20, -1, 0), 100)).toBe(100);
    const one = shoreOf([
      [10, 10],
      [20, 10],
      [20, 12],
    ]);
    expect(firstShore(one, ray(0, 10, 1, 0), 100)).toBe(100);
    expect(firstShore(one, ray(40, 10, -1, 0), 100)).toBe(20);
  });

  it('is that of looking at every edge, on a ragged shore with many', () => {
    const random = seededChance(11);
    const between = (least: number, most: number) => least + (most - least) * random();
    const ring: Ring = Array.from({ length: 120 }, (_, i) => {
      const angle = (i / 120) * 2 * Math.PI;
      const radius = between(5, 20);
      return [radius * Math.cos(angle), radius * Math.sin(angle)] as const;
    });
    const shore = shoreOf(ring);
    for (let round = 0; round < 400; round++) {
      const one = ray(between(-30, 30), between(-30, 30), between(-1, 1), between(-1, 1));
      const reach = between(1, 80);
      let nearest = reach;
      ring.forEach(([bx, by], i) => {
        const [ax, ay] = ring.at(i - 1)!;
        // Where ray and edge meet, by Cramer's rule.
        const turn = one.dx * (by - ay) - one.dy * (bx - ax);
        if (turn === 0) return;
        const along = ((ax - one.x) * (by - ay) - (ay - one.y) * (bx - ax)) / turn;
        const share = ((ax - one.x) * one.dy - (ay - one.y) * one.dx) / turn;
        if (along >= 0 && share >= 0 && share <= 1) nearest = Math.min(nearest, along);
      });
      expect(firstShore(shore, one, reach)).toBeCloseTo(nearest, 9);
    }
  });

  it('is looked for along the axes of the chart as elsewhere', () => {
    const ring: Ring = Array.from({ length: 60 }, (_, i) => {
      const angle = (i / 60) * 2 * Math.PI + 0.01;
      return [10 * Math.cos(angle), 10 * Math.sin(angle)] as const;
    });
    const shore = shoreOf(ring);
    for (const [dx, dy] of [
      [1, 0],
      [-1, 0],
      [0, 1],
      [0, -1],
    ] as const) {
      expect(firstShore(shore, ray(0, 0, dx, dy), 100)).toBeCloseTo(10, 1);
      expect(firstShore(shore, ray(-30 * dx, -30 * dy, dx, dy), 100)).toBeCloseTo(20, 1);
      expect(firstShore(shore, ray(-30 * dx + 11 * dy, -30 * dy + 11 * dx, dx, dy), 100)).toBe(100);
    }
  });
});
