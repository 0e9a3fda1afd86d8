import type { Position } from 'geojson';
import { describe, expect, it } from 'vitest';
import { edgeTree, visitEdges } from '../../../src/core/route/edge-tree.ts';
import { visitEdgesNear } from '../../../src/core/route/edges-near.ts';
import { ringsOf } from '../../../src/core/route/rings-of.ts';
import { seededChance } from '../../../src/core/trip/chance.ts';

type Edge = readonly [number, number, number, number];
const same = (lon: number) => lon;
const random = seededChance(5);
const whole = (most: number) => Math.floor(random() * most);
/** A shore of 80 corners on whole degrees, so that boxes often touch exactly; 10 boxes of edges under 2 under one. */
const shore: Position[] = Array.from({ length: 80 }, () => [whole(40), whole(30)]);
const islet: Position[] = [
  [50, 10],
  [52, 10],
  [52, 13],
];
const tree = edgeTree([shore, islet], same);

function edgesOf(ring: readonly Position[]): Edge[] {
  return ring.flatMap(([bx, by], at) => {
    const [ax, ay] = ring.at(at - 1)!;
    return ax === bx && ay === by ? [] : [[ax!, ay!, bx!, by!] as const];
  });
}
const edges = [...edgesOf(shore), ...edgesOf(islet)];
const sorted = (list: readonly Edge[]) => list.map((edge) => edge.join(' ')).sort();

describe('visitEdges', () => {
  it('sees exactly the edges whose boxes meet a box or touch it', () => {
    for (let round = 0; round < 300; round++) {
      const [minX, minY] = [whole(60) - 3, whole(36) - 3];
      const box = { minX, minY, maxX: minX + whole(6), maxY: minY + whole(6) };
      const seen: Edge[] = [];
      visitEdges(tree, box, (...edge) => seen.push(edge));
      const met = edges.filter(
        ([ax, ay, bx, by]) =>
          Math.min(ax, bx) <= box.maxX &&
          Math.max(ax, bx) >= box.minX &&
          Math.min(ay, by) <= box.maxY &&
          Math.max(ay, by) >= box.minY,
      );
      expect(sorted(seen)).toEqual(sorted(met));
    }
  });

  it('sees a shore that only touches the box with its farthest point, from any side', () => {
    const { minX, minY, maxX, maxY } = tree;
    for (const box of [
      { minX: maxX, minY: -99, maxX: 99, maxY: 99 },
      { minX: -99, minY: -99, maxX: minX, maxY: 99 },
      { minX: -99, minY: maxY, maxX: 99, maxY: 99 },
      { minX: -99, minY: -99, maxX: 99, maxY: minY },
    ]) {
      let seen = 0;
      visitEdges(tree, box, () => seen++);
      expect(seen).toBeGreaterThan(0);
    }
  });
});

describe('visitEdgesNear', () => {
  /** Whether some point of the edge lies within reach of the line, in both axes at once: looked for point by point. */
  function near([ax, ay, bx, by]: Edge, line: { x0: number; y0: number; x1: number; y1: number }, reach: number) {
    for (let i = 0; i <= 100; i++) {
      const [x, y] = [ax + ((bx - ax) * i) / 100, ay + ((by - ay) * i) / 100];
      for (let k = 0; k <= 100; k++) {
        const [u, v] = [line.x0 + ((line.x1 - line.x0) * k) / 100, line.y0 + ((line.y1 - line.y0) * k) / 100];
        if (Math.abs(x - u) <= reach && Math.abs(y - v) <= reach) return true;
      }
    }
    return false;
  }

  it('misses no edge within reach of a line, and none it sees lies beyond the box about it', () => {
    for (let round = 0; round < 12; round++) {
      const line = { x0: whole(56), y0: whole(30), x1: whole(56), y1: whole(30) };
      const reach = whole(3);
      const seen: Edge[] = [];
      visitEdgesNear(tree, line, { x: reach, y: reach }, (...edge) => {
        seen.push(edge);
        return false;
      });
      const names = new Set(sorted(seen));
      for (const edge of edges) if (near(edge, line, reach)) expect(names).toContain(edge.join(' '));
      for (const [ax, , bx] of seen) {
        expect(Math.min(ax, bx)).toBeLessThanOrEqual(Math.max(line.x0, line.x1) + reach);
        expect(Math.max(ax, bx)).toBeGreaterThanOrEqual(Math.min(line.x0, line.x1) - reach);
      }
    }
  });

  it('leaves out what a slanting line passes at a distance, though it lies in the box of the line', () => {
    const corner = edgeTree(
      [
        [
          [8, 1],
          [9, 1],
          [9, 2],
        ],
      ],
      same,
    );
    const asked = (reach: number) => {
      let seen = 0;
      visitEdgesNear(corner, { x0: 0, y0: 0, x1: 10, y1: 10 }, { x: reach, y: reach }, () => {
        seen++;
        return false;
      });
      return seen;
    };
    expect(asked(1)).toBe(0);
    expect(asked(4)).toBe(3);
  });

  it('stops at the first edge that is enough, and says whether there was one', () => {
    let seen = 0;
    const line = { x0: 0, y0: 0, x1: 40, y1: 30 };
    expect(visitEdgesNear(tree, line, { x: 9, y: 9 }, () => ++seen === 2)).toBe(true);
    expect(seen).toBe(2);
    expect(visitEdgesNear(tree, line, { x: 9, y: 9 }, () => false)).toBe(false);
  });
});

describe('edgeTree', () => {
  it('has the box of all, and one that nothing meets of no ring', () => {
    const xs = [...shore, ...islet].map(([x]) => x!);
    const ys = [...shore, ...islet].map(([, y]) => y!);
    expect(tree).toMatchObject({ minX: Math.min(...xs), maxX: Math.max(...xs) });
    expect(tree).toMatchObject({ minY: Math.min(...ys), maxY: Math.max(...ys) });
    expect(edgeTree([], same)).toMatchObject({ minX: Infinity, minY: Infinity, maxX: -Infinity, maxY: -Infinity });
  });

  it('gives rings back without their closing corner, closed or not, and without corners written twice', () => {
    const [a, b, c] = [islet[0]!, islet[1]!, islet[2]!];
    const other = [
      [1, 2],
      [3, 4],
      [5, 0],
    ];
    // A ring may begin at any of its corners: told from the first one on.
    const from = (corner: Position, ring: Float64Array) => {
      const corners = Array.from({ length: ring.length / 2 }, (_, at) => [ring[2 * at]!, ring[2 * at + 1]!]);
      const first = corners.findIndex(([x, y]) => x === corner[0] && y === corner[1]);
      return [...corners.slice(first), ...corners.slice(0, first)];
    };
    for (const ring of [
      [a, b, c],
      [a, b, c, a],
      [a, a, b, c, c],
    ]) {
      const [first, second, ...rest] = ringsOf(edgeTree([ring, other], same));
      expect(from(a, first!)).toEqual(islet);
      expect(from(other[0]!, second!)).toEqual(other);
      expect(rest).toEqual([]);
    }
  });

  it('makes longitudes continuous as it is told', () => {
    expect(edgeTree([islet], (lon) => lon + 360)).toMatchObject({ minX: 410, maxX: 412 });
  });
});
