import type { ZoneKind } from '../../../src/core/route/shapes.ts';
import type { Bar, Obstacles, Place } from '../../../src/core/route/take-round-obstacles.ts';
import { prepareWaters } from '../../../src/core/route/waters.ts';
import { seededChance } from '../../../src/core/trip/chance.ts';
import { waters, zone } from './made-waters.ts';

/** Metres per degree: so that a slip between the two is seen. */
const KX = 60_000;
const KY = 110_000;

/** m east and north */
export type Point = readonly [number, number];

/** What bars a way, by rings in metres: the shore and its ponds. */
export interface Shore {
  readonly bar: Bar;
  readonly rings: readonly (readonly Point[])[];
}

const KINDS: Record<Bar, ZoneKind> = { hard: 'land', soft: 'shoal', beach: 'shoal', none: 'speed-limit' };

/** These shores as obstacles, in waters so many metres to every side. */
export function sea(shores: readonly Shore[], side = 10_000): Obstacles {
  const zones = shores.map(({ bar, rings }, i) => {
    const inDegrees = rings.map((ring) => ring.map(([x, y]): [number, number] => [x / KX, y / KY]));
    return zone({ kind: KINDS[bar], name: `${bar} ${i}` }, ...inDegrees);
  });
  const known: [number, number, number, number] = [-side / KX, -side / KY, side / KX, side / KY];
  return { waters: prepareWaters(waters(zones, known)), kx: KX, ky: KY, bars: shores.map(({ bar }) => bar) };
}

export const place = (x: number, y: number): Place => ({ x, y });

export function boxed(west: number, south: number, east: number, north: number): Point[] {
  return [
    [west, south],
    [east, south],
    [east, north],
    [west, north],
  ];
}

/** Edges of a shore with its ponds. */
export function edgesOf({ rings }: Shore): (readonly [Point, Point])[] {
  return rings.flatMap((ring) => ring.map((b, i) => [ring.at(i - 1)!, b] as const));
}

/** m from a place to an edge: square off it where it lies abreast, else to the nearer end. */
export function offEdge({ x, y }: Place, [[ax, ay], [bx, by]]: readonly [Point, Point]): number {
  const toEnds = Math.min(Math.hypot(x - ax, y - ay), Math.hypot(x - bx, y - by));
  const pastA = (x - ax) * (bx - ax) + (y - ay) * (by - ay);
  const pastB = (x - bx) * (ax - bx) + (y - by) * (ay - by);
  if (pastA <= 0 || pastB <= 0) return toEnds;
  return Math.abs((bx - ax) * (ay - y) - (ax - x) * (by - ay)) / Math.hypot(bx - ax, by - ay);
}

/** m from a place to the nearest edge of these shores; Infinity: there are none. */
export function offShores(at: Place, shores: readonly Shore[]): number {
  let least = Infinity;
  for (const shore of shores) for (const edge of edgesOf(shore)) least = Math.min(least, offEdge(at, edge));
  return least;
}

/** Whether a shore holds a place: its rings together turn once about it, or thrice, seen from there. */
export function lies({ x, y }: Place, { rings }: Shore): boolean {
  const turns = rings.map((ring) => {
    let turn = 0;
    ring.forEach(([bx, by], i) => {
      const [ax, ay] = ring.at(i - 1)!;
      turn += Math.atan2((ax - x) * (by - y) - (ay - y) * (bx - x), (ax - x) * (bx - x) + (ay - y) * (by - y));
    });
    return Math.round(Math.abs(turn) / (2 * Math.PI));
  });
  return turns.reduce((a, b) => a + b, 0) % 2 === 1;
}

/**
 * Share of a straight track on which a margin is above nought. The margin changes by no more than a metre for every
 * metre sailed, so that where it is larger than half a stretch it has the same sign all along.
 */
export function shareWhere(from: Place, to: Place, margin: (at: Place) => number): number {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  const looked = (start: number, end: number): number => {
    const middle = (start + end) / 2;
    const long = end - start;
    const here = margin({ x: from.x + (to.x - from.x) * middle, y: from.y + (to.y - from.y) * middle });
    if (Math.abs(here) >= (long * length) / 2 || long * length < 1e-6) return here > 0 ? long : 0;
    return looked(start, middle) + looked(middle, end);
  };
  return looked(0, 1);
}

/** m to the nearest edge of a shore, counted above nought inside it. */
export function depthIn(at: Place, shore: Shore): number {
  return offShores(at, [shore]) * (lies(at, shore) ? 1 : -1);
}

/** Numbers in a range by chance, the same on every run. */
export function drawn(seed: number): (least: number, most: number) => number {
  const chance = seededChance(seed);
  return (least, most) => least + (most - least) * chance();
}

/** A ragged island about a place, drawn either way round. */
export function island(between: (least: number, most: number) => number, { x, y }: Place, most: number): Point[] {
  const count = Math.floor(between(3, 9));
  const ring = Array.from({ length: count }, (_, i): Point => {
    const angle = ((i + between(0, 0.8)) / count) * 2 * Math.PI;
    const radius = between(most / 3, most);
    return [x + radius * Math.cos(angle), y + radius * Math.sin(angle)];
  });
  return between(0, 1) < 0.5 ? ring : ring.reverse();
}
