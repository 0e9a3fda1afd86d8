import { describe, expect, it } from 'vitest';
import { cornersOf, levelsOf, type Turning } from '../../../src/core/route/take-round-corners.ts';
import type { Place } from '../../../src/core/route/take-round-obstacles.ts';
import { boxed, drawn, island, offEdge, offShores, type Point, place, type Shore, sea } from './made-shores.ts';

/** Added to every clearance for rounding, m; the least a shore in open water is simplified by, m. */
const ROUNDING = 0.3;
const COARSE = 12;

type Step = { readonly level: number; readonly within: number };

/** The corners that Douglas and Peucker keep, by their own words: the farthest one, while it is farther than so much. */
function simplest(ring: readonly Point[], within: number): Point[] {
  const line = (points: readonly Point[]): Point[] => {
    const [first, last] = [points[0]!, points.at(-1)!];
    const off = ([x, y]: Point) =>
      first === last ? Math.hypot(x - first[0], y - first[1]) : offEdge({ x, y }, [first, last]);
    const away = points.slice(1, -1).map(off);
    const most = Math.max(...away);
    if (!(most > within)) return [first];
    const at = away.indexOf(most) + 1;
    return [...line(points.slice(0, at + 1)), ...line(points.slice(at))];
  };
  const fromFirst = ring.map(([x, y]) => Math.hypot(x - ring[0]![0], y - ring[0]![1]));
  const far = fromFirst.indexOf(Math.max(...fromFirst));
  return [...line(ring.slice(0, far + 1)), ...line([...ring.slice(far), ring[0]!])];
}

const unit = (a: Point, b: Point): Point => {
  const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
  return [(b[0] - a[0]) / length, (b[1] - a[1]) / length];
};

/** Whether a ring runs anticlockwise, by the sum of its trapezoids. */
const anticlockwise = (ring: readonly Point[]) =>
  ring.reduce((sum, [x, y], i) => sum + (x - ring.at(i - 1)![0]) * (y + ring.at(i - 1)![1]), 0) < 0;

/** Off every corner that points into the water, which lies to the right: corner, and directions at most 60 degrees apart. */
function convexCorners(shore: readonly Point[]) {
  return shore.flatMap((corner, i) => {
    const [a, b] = [unit(shore.at(i - 1)!, corner), unit(corner, shore[(i + 1) % shore.length]!)];
    const turn = Math.acos(Math.min(1, Math.max(-1, a[0] * b[0] + a[1] * b[1])));
    // A rock that is but a line turns back at both its ends.
    if (a[0] * b[1] - a[1] * b[0] <= 1e-6 && turn < 3) return [];
    const count = Math.ceil(turn / (Math.PI / 3));
    return Array.from({ length: count }, (_, k) => {
      const [cos, sin] = [Math.cos((turn * (k + 0.5)) / count), Math.sin((turn * (k + 0.5)) / count)];
      // Square to the arriving shore, turned towards the leaving one.
      const away: Point = [a[1] * cos + a[0] * sin, -a[0] * cos + a[1] * sin];
      const at = ({ level, within }: Step): Place => {
        const far = (level + within + ROUNDING) / Math.cos(turn / count / 2);
        return place(corner[0] + far * away[0], corner[1] + far * away[1]);
      };
      return { at, away };
    });
  });
}

/** Places off one shore told corner by corner: coarsely at the clearance, ever finer where there is no room for it. */
function told(shores: readonly Shore[], which: number, levels: readonly number[], side: number): Turning[] {
  const steps: Step[] = [
    { level: levels[0]!, within: Math.max(levels[0]! / 4, COARSE) },
    ...levels.map((level) => ({ level, within: level / 8 })),
  ];
  const known = ({ x, y }: Place) => Math.max(Math.abs(x), Math.abs(y)) <= side;
  const room = (at: Place, ...bars: Shore['bar'][]) =>
    offShores(
      at,
      shores.filter(({ bar }) => bars.includes(bar)),
    );
  return shores[which]!.rings.flatMap((ring, pond) => {
    const shore = anticlockwise(ring) === (pond === 0) ? ring : [...ring].reverse();
    return steps.flatMap((step, k) =>
      convexCorners(simplest(shore, step.within)).flatMap(({ at, away: [nx, ny] }) => {
        const wider = k > 0 ? steps[k - 1]! : undefined;
        if (wider && known(at(wider)) && room(at(wider), 'hard', 'soft') >= wider.level) return [];
        return known(at(step)) && room(at(step), 'hard') >= step.level ? [{ ...at(step), nx, ny }] : [];
      }),
    );
  });
}

function inOrder(places: readonly Turning[]): Turning[] {
  return [...places].sort((a, b) => Math.round((a.x - b.x) * 1e4) || a.y - b.y);
}

function same(places: readonly Turning[], expected: readonly Turning[]): void {
  expect(places.length).toBe(expected.length);
  const those = inOrder(expected);
  inOrder(places).forEach((one, i) => {
    for (const key of ['x', 'y', 'nx', 'ny'] as const) expect(Math.abs(one[key] - those[i]![key])).toBeLessThan(1e-5);
  });
}

/** Such islands as these, each with corners drawn finely on a slant. */
function ragged(between: (least: number, most: number) => number, at: Place, most: number, by = 12): Point[] {
  const ring = island(between, at, most);
  return ring.flatMap((b, i): Point[] => {
    const a = ring.at(i - 1)!;
    const more = Math.floor(between(0, 6));
    const points = Array.from({ length: more }, (_, k): Point => {
      const share = (k + 1) / (more + 1);
      return [a[0] + (b[0] - a[0]) * share + between(-by, by), a[1] + (b[1] - a[1]) * share + between(-by, by)];
    });
    return [...points, b];
  });
}

describe('the distances at which corners are rounded', () => {
  it('are the clearance and its halves, down to four metres', () => {
    expect(levelsOf(64)).toEqual([64, 32, 16, 8, 4]);
    expect(levelsOf(63)).toEqual([63, 31.5, 15.75, 7.875]);
    expect(levelsOf(5)).toEqual([5]);
    for (let clearance = 5; clearance <= 1000; clearance += 3.7) {
      const levels = levelsOf(clearance);
      expect(levels[0]).toBe(clearance);
      levels.slice(1).forEach((level, i) => {
        expect(level).toBe(levels[i]! / 2);
      });
      expect(levels.length === 1 || levels.at(-1)! >= 4).toBe(true);
      expect(levels.at(-1)!).toBeLessThan(8);
    }
  });
});

describe('places to turn at off a shore', () => {
  it('are those told corner by corner, on ragged islands with ponds, shoals beside and the end of the chart', () => {
    const between = drawn(31);
    let nearer = 0;
    let all = 0;
    for (let round = 0; round < 32; round++) {
      const at = () => place(between(-260, 260), between(-260, 260));
      const shores: Shore[] = [
        { bar: 'hard', rings: [ragged(between, at(), 200)] },
        { bar: 'hard', rings: [island(between, at(), 60)] },
        { bar: 'soft', rings: [island(between, at(), 60)] },
        { bar: 'hard', rings: [boxed(-480, -480, 480, 480), ragged(between, place(0, 0), 460)] },
      ];
      const side = between(200, 500);
      const levels = levelsOf(between(5, 120));
      const there = sea(shores, side);
      shores.forEach((_, which) => {
        const places = cornersOf(there, which, levels);
        same(places, told(shores, which, levels, side));
        all += places.length;
        nearer += places.filter((one) => offShores(one, [shores[which]!]) < levels[0]!).length;
      });
    }
    expect(all).toBeGreaterThan(400);
    expect(nearer).toBeGreaterThan(100);
  });

  it('let a boat go round a smooth island at the clearance, straight from place to place', () => {
    const between = drawn(32);
    for (let round = 0; round < 20; round++) {
      const clearance = between(5, 300);
      const [long, short, turned] = [between(100, 600), between(60, 400), between(0, Math.PI)];
      const ring = Array.from({ length: 120 }, (_, i): Point => {
        const angle = (i / 120) * 2 * Math.PI;
        const [x, y] = [long * Math.cos(angle), short * Math.sin(angle)];
        return [x * Math.cos(turned) - y * Math.sin(turned), x * Math.sin(turned) + y * Math.cos(turned)];
      });
      const shore: Shore = { bar: 'hard', rings: [ring] };
      const places = cornersOf(sea([shore]), 0, levelsOf(clearance));
      // Few places for the many vertices, and none far out.
      expect(places.length).toBeLessThan(40);
      places.forEach((to, i) => {
        const from = places.at(i - 1)!;
        for (let share = 0; share < 1; share += 0.1) {
          const at = place(from.x + (to.x - from.x) * share, from.y + (to.y - from.y) * share);
          expect(offShores(at, [shore])).toBeGreaterThan(clearance);
        }
        expect(offShores(to, [shore])).toBeLessThan(clearance * 1.16 + 2.5 * Math.max(clearance / 4, 12));
      });
    }
  });

  it('turn and move with the shore', () => {
    const between = drawn(33);
    for (let round = 0; round < 20; round++) {
      const ring = ragged(between, place(0, 0), 200);
      const levels = levelsOf(between(5, 120));
      const here = cornersOf(sea([{ bar: 'hard', rings: [ring] }]), 0, levels);
      for (let deg = 10; deg < 360; deg += 35) {
        const [cos, sin] = [Math.cos((deg * Math.PI) / 180), Math.sin((deg * Math.PI) / 180)];
        const turned = (x: number, y: number) => [x * cos - y * sin, x * sin + y * cos] as const;
        const there: Shore = {
          bar: 'hard',
          rings: [ring.map(([x, y]) => [turned(x, y)[0] + 30, turned(x, y)[1] - 70] as const)],
        };
        same(
          cornersOf(sea([there]), 0, levels),
          here.map(({ x, y, nx, ny }) => ({
            x: turned(x, y)[0] + 30,
            y: turned(x, y)[1] - 70,
            nx: turned(nx, ny)[0],
            ny: turned(nx, ny)[1],
          })),
        );
      }
    }
  });

  it('are one, two and three off blunter and sharper corners, all as far off as each other', () => {
    // Corners of 50, 130 and 180 less 10 degrees to turn.
    const spit: Point[] = [
      [0, 0],
      [-1000, 90],
      [-1000, -90],
    ];
    const places = cornersOf(sea([{ bar: 'hard', rings: [spit] }]), 0, [100]);
    const tip = places.filter(({ x }) => x > 0 - 70);
    expect(tip).toHaveLength(3);
    for (const { x, y } of tip) expect(Math.hypot(x, y)).toBeCloseTo(Math.hypot(tip[0]!.x, tip[0]!.y), 6);
    // Abreast of the tip, and ahead of it.
    expect(tip.map(({ y }) => Math.sign(Math.round(y)))).toEqual([-1, 0, 1]);
    expect(places.length).toBe(3 + 2 * 2);
  });

  it('are all round a rock, however small against the clearance and however it is drawn', () => {
    const between = drawn(34);
    for (let round = 0; round < 120; round++) {
      const ring = island(between, place(between(-90, 90), between(-90, 90)), [0.4, 2, 8][round % 3]!);
      const shores: Shore[] = [{ bar: 'hard', rings: [ring] }];
      const levels = levelsOf(between(5, 60));
      const places = cornersOf(sea(shores), 0, levels);
      if (ring.length > 3) same(places, told(shores, 0, levels, 10_000));
      const bearings = places.map(({ nx, ny }) => Math.atan2(ny, nx)).sort((a, b) => a - b);
      // Wherever one comes from, a place to turn at lies within 60 degrees; off a corner of 180 they are so far apart.
      bearings.forEach((bearing, i) => {
        const gap = i > 0 ? bearing - bearings[i - 1]! : bearing + 2 * Math.PI - bearings.at(-1)!;
        expect(gap).toBeLessThan((2 * Math.PI) / 3);
      });
      expect(places.length).toBeGreaterThan(3);
    }
  });

  it('are those told corner by corner on a shore drawn every few decimetres', () => {
    const between = drawn(35);
    for (let round = 0; round < 40; round++) {
      const shores: Shore[] = [{ bar: 'hard', rings: [ragged(between, place(50, 20), 4, 1)] }];
      same(cornersOf(sea(shores), 0, [5]), told(shores, 0, [5], 10_000));
    }
  });

  it('are in the same directions off a small triangle as off a large one', () => {
    const corners = (size: number) => {
      const ring: Point[] = [
        [0, 0],
        [7 * size, size],
        [2 * size, 5 * size],
      ];
      return cornersOf(sea([{ bar: 'hard', rings: [ring] }]), 0, [50]).map(({ nx, ny }) => Math.atan2(ny, nx));
    };
    const large = corners(100);
    corners(0.5).forEach((bearing, i) => {
      expect(bearing).toBeCloseTo(large[i]!, 6);
    });
    expect(corners(0.5)).toHaveLength(large.length);
  });

  it('may lie on the very end of the chart, not beyond', () => {
    const shore: Shore = { bar: 'hard', rings: [boxed(-40, -60, 50, 70)] };
    const far = 1000;
    const all = cornersOf(sea([shore]), 0, [50]);
    const least = { x: Math.min(...all.map(({ x }) => x)), y: Math.min(...all.map(({ y }) => y)) };
    const most = { x: Math.max(...all.map(({ x }) => x)), y: Math.max(...all.map(({ y }) => y)) };
    const there = sea([shore]);
    const within = (minX: number, minY: number, maxX: number, maxY: number) => {
      const bounds = { minX: minX / there.kx, minY: minY / there.ky, maxX: maxX / there.kx, maxY: maxY / there.ky };
      return cornersOf({ ...there, waters: { ...there.waters, bounds } }, 0, [50]);
    };
    same(within(least.x, least.y, most.x, most.y), all);
    for (const [end, known] of [
      [within(least.x + 0.1, -far, far, far), ({ x }: Place) => x >= least.x + 0.1],
      [within(-far, least.y + 0.1, far, far), ({ y }: Place) => y >= least.y + 0.1],
      [within(-far, -far, most.x - 0.1, far), ({ x }: Place) => x <= most.x - 0.1],
      [within(-far, -far, far, most.y - 0.1), ({ y }: Place) => y <= most.y - 0.1],
    ] as const) {
      // Two go nearer to the shore instead.
      expect(end.filter((one) => all.some(({ x, y }) => Math.hypot(x - one.x, y - one.y) < 1e-6))).toHaveLength(6);
      expect(end).toHaveLength(8);
      expect(end.every(known)).toBe(true);
    }
    expect(cornersOf({ ...there, waters: { ...there.waters, bounds: undefined } }, 0, [50])).toEqual([]);
  });

  it('are none in a bay, and none where a shore goes straight on', () => {
    const bay: Point[] = [
      [0, 0],
      [500, 0],
      [1000, 0],
      [1000, 800],
      [500, 300],
      [0, 800],
    ];
    const places = cornersOf(sea([{ bar: 'hard', rings: [bay] }]), 0, [50]);
    expect(places.filter(({ x }) => Math.abs(x - 500) < 300)).toEqual([]);
    expect(places.length).toBe(2 + 2 + 3 + 3);
  });
});
