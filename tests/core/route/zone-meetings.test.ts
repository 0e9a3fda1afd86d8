import { describe, expect, it } from 'vitest';
import { edgeTree } from '../../../src/core/route/edge-tree.ts';
import { addMeetings, boxOf, type ChartLine, holds } from '../../../src/core/route/zone-meetings.ts';
import { seededChance } from '../../../src/core/trip/chance.ts';

const same = (lon: number) => lon;
type Ring = readonly (readonly [number, number])[];
const shoreOf = (...rings: Ring[]) =>
  edgeTree(
    rings.map((ring) => ring.map((point) => [...point])),
    same,
  );
const square = (minX: number, minY: number, maxX: number, maxY: number): Ring => [
  [minX, minY],
  [maxX, minY],
  [maxX, maxY],
  [minX, maxY],
];
const line = (x0: number, y0: number, x1: number, y1: number): ChartLine => ({ x0, y0, x1, y1 });

/** A field of 10 by 4 with a pond in it. */
const field = shoreOf(square(10, 10, 20, 14), square(13, 11, 15, 13));

/** Each once, in order, to a millionth. */
function meetings(shore: ReturnType<typeof shoreOf>, of: ChartLine): number[] {
  const shares: number[] = [];
  addMeetings(shore, of, shares);
  return [...new Set(shares.map((share) => Math.round(share * 1e6) / 1e6))].sort((a, b) => a - b);
}

describe('what a zone holds', () => {
  it('is what lies within its shore and outside its holes', () => {
    for (const [x, y, inside] of [
      [11, 12, true],
      [12.99, 12, true],
      [14, 12, false],
      [15.01, 12, true],
      [19.9, 13.9, true],
      [16, 10.5, true],
      [9.9, 12, false],
      [20.1, 12, false],
      [15, 9.9, false],
      [15, 14.1, false],
      [14, 13.5, true],
      [14, 10.5, true],
    ] as const) {
      expect(holds(field, x, y), `${x} ${y}`).toBe(inside);
    }
  });

  it('is its shore too, corners and the shore of a hole included, to a micrometre', () => {
    for (const [x, y] of [
      [10, 12],
      [20, 12],
      [15, 10],
      [15, 14],
      [10, 10],
      [20, 14],
      [10, 14],
      [20, 10],
      [13, 12],
      [15, 12],
      [14, 11],
      [14, 13],
      [13, 13],
    ] as const) {
      expect(holds(field, x, y), `${x} ${y}`).toBe(true);
    }
    expect([holds(field, 13 + 5e-12, 12), holds(field, 13 + 5e-11, 12)]).toEqual([true, false]);
    expect([holds(field, 14, 11 + 5e-12), holds(field, 14, 11 + 5e-11)]).toEqual([true, false]);
    expect([holds(field, 15 - 5e-12, 12), holds(field, 15 - 5e-11, 12)]).toEqual([true, false]);
    // Beside the end of an edge, not of the line it lies on.
    expect(holds(field, 15 - 1e-3, 11 - 0)).toBe(true);
    expect(holds(field, 17, 11)).toBe(true);
  });

  it('is told the same level with a corner', () => {
    const kite = shoreOf([
      [0, 0],
      [5, -3],
      [10, 0],
      [5, 3],
    ]);
    for (const [x, inside] of [
      [-1, false],
      [0.5, true],
      [5, true],
      [9.5, true],
      [11, false],
    ] as const) {
      expect(holds(kite, x, 0), String(x)).toBe(inside);
    }
    const teeth = shoreOf([
      [0, 0],
      [8, 0],
      [8, 4],
      [6, 2],
      [4, 4],
      [2, 2],
      [0, 4],
    ]);
    expect([1, 3, 4, 5, 7].map((x) => holds(teeth, x, 2.5))).toEqual([true, true, true, true, true]);
    expect([2, 6].map((x) => holds(teeth, x, 2.5))).toEqual([false, false]);
    expect([1, 4, 7].map((x) => holds(teeth, x, 2))).toEqual([true, true, true]);
    expect([0.5, 3.9, 7.5].map((x) => holds(teeth, x, 3.9))).toEqual([false, true, false]);
  });

  it('is that of walking round every edge, on a ragged shore', () => {
    const random = seededChance(3);
    const ring: Ring = Array.from({ length: 90 }, (_, i) => {
      const radius = 5 + 10 * random();
      return [radius * Math.cos((i / 45) * Math.PI), radius * Math.sin((i / 45) * Math.PI)] as const;
    });
    const shore = shoreOf(ring);
    for (let round = 0; round < 300; round++) {
      const [x, y] = [-16 + 32 * random(), -16 + 32 * random()];
      // How often the shore winds round the point.
      const winding = ring.reduce((sum, [bx, by], i) => {
        const [ax, ay] = ring.at(i - 1)!;
        const turn = Math.atan2((ax - x) * (by - y) - (ay - y) * (bx - x), (ax - x) * (bx - x) + (ay - y) * (by - y));
        return sum + turn;
      }, 0);
      expect(holds(shore, x, y)).toBe(Math.abs(winding) > 3);
    }
  });
});

describe('where a line meets a zone', () => {
  it('is where it crosses the shore and that of a hole, as shares of the line', () => {
    expect(meetings(field, line(0, 12, 40, 12))).toEqual([0.25, 0.325, 0.375, 0.5]);
    expect(meetings(field, line(40, 12, 0, 12))).toEqual([0.5, 0.625, 0.675, 0.75]);
    expect(meetings(field, line(14, 0, 14, 20))).toEqual([0.5, 0.55, 0.65, 0.7]);
    expect(meetings(field, line(12, 20, 12, 0))).toEqual([0.3, 0.5]);
    expect(meetings(field, line(17, 8, 23, 14))).toEqual([0.333333, 0.5]);
  });

  it('is nowhere for a line beside it, short of it or within', () => {
    for (const beside of [
      line(0, 9, 40, 9),
      line(0, 15, 40, 15),
      line(0, 12, 9, 12),
      line(21, 12, 40, 12),
      line(16, 11, 19, 13),
      line(8, 10.5, 10.4, 14.6),
    ]) {
      if (beside.x1 === 10.4) expect(meetings(field, line(8, 12.5, 9.9, 14.6))).toEqual([]);
      else expect(meetings(field, beside)).toEqual([]);
    }
    expect(meetings(field, line(15, 12, 15, 12))).toEqual([]);
  });

  it('leaves out the ends of the line itself', () => {
    expect(meetings(field, line(10, 10.5, 20, 10.5))).toEqual([]);
    expect(meetings(field, line(10, 10.5, 30, 10.5))).toEqual([0.5]);
  });

  it('is both ends of an edge that it runs along, and a corner that it touches', () => {
    expect(meetings(field, line(0, 10, 40, 10))).toEqual([0.25, 0.5]);
    expect(meetings(field, line(20, 0, 20, 40))).toEqual([0.25, 0.35]);
    expect(meetings(field, line(5, 15, 15, 5))).toEqual([0.5]);
    // A slanting shore, run along.
    const slant = shoreOf([
      [0, 0],
      [6, 3],
      [0, 3],
    ]);
    expect(meetings(slant, line(-2, -1, 10, 5))).toEqual([0.166667, 0.666667]);
    expect(meetings(slant, line(10, 5, -2, -1))).toEqual([0.333333, 0.833333]);
    expect(meetings(slant, line(-2, -1 - 1e-4, 10, 5 - 1e-4))).toEqual([]);
  });

  it('misses none on a long slanting line past a shore of many edges', () => {
    const random = seededChance(8);
    const ring: Ring = Array.from({ length: 100 }, (_, i) => {
      const radius = 5 + 10 * random();
      return [radius * Math.cos((i / 50) * Math.PI), radius * Math.sin((i / 50) * Math.PI)] as const;
    });
    const shore = shoreOf(ring);
    for (let round = 0; round < 150; round++) {
      const at = () => -25 + 50 * random();
      const { x0, y0, x1, y1 } = line(at(), at(), at(), at());
      const found: number[] = [];
      ring.forEach(([bx, by], i) => {
        const [ax, ay] = ring.at(i - 1)!;
        const turn = (x1 - x0) * (by - ay) - (y1 - y0) * (bx - ax);
        const along = ((ax - x0) * (by - ay) - (ay - y0) * (bx - ax)) / turn;
        const share = ((ax - x0) * (y1 - y0) - (ay - y0) * (x1 - x0)) / turn;
        if (along > 0 && along < 1 && share >= 0 && share <= 1) found.push(along);
      });
      const told = meetings(shore, { x0, y0, x1, y1 });
      expect(told).toEqual([...new Set(found.map((share) => Math.round(share * 1e6) / 1e6))].sort((a, b) => a - b));
    }
  });
});

describe('the box of a line', () => {
  it('is a hair wider than the line, whichever way it goes', () => {
    for (const one of [line(1, 2, 5, 9), line(5, 9, 1, 2)]) {
      expect(boxOf(one)).toEqual({ minX: 1 - 1e-11, minY: 2 - 1e-11, maxX: 5 + 1e-11, maxY: 9 + 1e-11 });
    }
  });
});
