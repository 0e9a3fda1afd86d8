import { describe, expect, it } from 'vitest';
import type { Turning } from '../../../src/core/route/take-round-corners.ts';
import type { Place } from '../../../src/core/route/take-round-obstacles.ts';
import { taut } from '../../../src/core/route/take-round-taut.ts';

const place = (x: number, y: number): Place => ({ x, y });
/** Off a corner of the shore, with the direction away from the land. */
const corner = (x: number, y: number, nx: number, ny: number): Turning => ({ x, y, nx, ny });

/** The same turned by so many degrees about the origin, and moved, as a chart may lie. */
function laid<T extends Place | Turning>(one: T, deg: number, [dx, dy]: readonly [number, number]): T {
  const [cos, sin] = [Math.cos((deg * Math.PI) / 180), Math.sin((deg * Math.PI) / 180)];
  const turned = (x: number, y: number) => [x * cos - y * sin, x * sin + y * cos] as const;
  const [x, y] = turned(one.x, one.y);
  const at = { x: x + dx, y: y + dy };
  if (!('nx' in one)) return at as T;
  const [nx, ny] = turned(one.nx, one.ny);
  return { ...at, nx, ny } as T;
}

/** However the chart lies, and with port and starboard changed. */
function tautEverywhere(before: Place | undefined, at: Place | Turning, next: Place | Turning): boolean {
  const mirrored = <T extends Place | Turning>(one: T): T =>
    'nx' in one ? { ...one, x: -one.x, nx: -one.nx } : { ...one, x: -one.x };
  const found = new Set<boolean>();
  for (const [a, b, c] of [
    [before, at, next],
    [before && mirrored(before), mirrored(at), mirrored(next)],
  ] as const) {
    for (const deg of [0, 37, 90, 152, 180, 271]) {
      for (const by of [
        [0, 0],
        [300, -170],
      ] as const) {
        found.add(taut(a && laid(a, deg, by), laid(b, deg, by), laid(c, deg, by)));
      }
    }
  }
  expect(found.size).toBe(1);
  return found.has(true);
}

describe('a taut way', () => {
  const south = place(0, -10);
  const landWest = corner(0, 0, 1, 0);

  it('turns round the land at a corner, never away from it', () => {
    expect(tautEverywhere(south, landWest, place(-4, 10))).toBe(true);
    expect(tautEverywhere(south, landWest, place(4, 10))).toBe(false);
    expect(tautEverywhere(south, landWest, place(-0.1, 10))).toBe(true);
    expect(tautEverywhere(south, landWest, place(0.1, 10))).toBe(false);
    // Coming in at a slant: what counts is which way it bends.
    expect(tautEverywhere(place(-3, -10), landWest, place(2, 10))).toBe(true);
    expect(tautEverywhere(place(-3, -10), landWest, place(4, 10))).toBe(false);
    expect(tautEverywhere(place(3, -10), landWest, place(-4, 10))).toBe(true);
    expect(tautEverywhere(place(3, -10), landWest, place(-2, 10))).toBe(false);
  });

  it('goes straight on past a corner', () => {
    expect(taut(south, landWest, place(0, 10))).toBe(true);
    expect(taut(place(0, 20), corner(0, 0, 1, 0), place(0, -5))).toBe(true);
  });

  it('leaves a corner within thirty degrees of square to its side', () => {
    // Half of the way counts: 4.9 of 10 along the direction away from the land, and 5.1.
    const off = (share: number) => place(-10 * share, 10 * Math.sqrt(1 - share * share));
    expect(tautEverywhere(south, landWest, off(0.49))).toBe(true);
    expect(tautEverywhere(south, landWest, off(0.51))).toBe(false);
    expect(tautEverywhere(south, landWest, place(-10, 0))).toBe(false);
    // Three times as far it is the same.
    expect(tautEverywhere(south, landWest, place(-14.7, 30 * Math.sqrt(1 - 0.49 * 0.49)))).toBe(true);
    expect(tautEverywhere(south, landWest, place(-15.3, 30 * Math.sqrt(1 - 0.51 * 0.51)))).toBe(false);
  });

  it('comes to the next corner within thirty degrees of square to its side, from the start too', () => {
    const next = (deg: number) => corner(0, 10, Math.cos((deg * Math.PI) / 180), Math.sin((deg * Math.PI) / 180));
    for (const deg of [0, 29, -29, 180, 151, 209]) expect(tautEverywhere(undefined, place(0, 0), next(deg))).toBe(true);
    for (const deg of [31, -31, 90, 149, 211]) expect(tautEverywhere(undefined, place(0, 0), next(deg))).toBe(false);
    // Slanting as well.
    expect(tautEverywhere(undefined, place(0, 0), corner(10, 10, Math.SQRT1_2, -Math.SQRT1_2))).toBe(true);
    expect(tautEverywhere(undefined, place(0, 0), corner(10, 10, Math.SQRT1_2, Math.SQRT1_2))).toBe(false);
  });

  it('from corner to corner is asked of both', () => {
    const good = corner(-2, 10, 1, 0);
    const bad = corner(-2, 10, 0, 1);
    expect(tautEverywhere(south, landWest, good)).toBe(true);
    expect(tautEverywhere(south, landWest, bad)).toBe(false);
    expect(tautEverywhere(south, landWest, corner(2, 10, 1, 0))).toBe(false);
  });

  it('is any from where it starts, and any away from a corner that it starts at', () => {
    expect(tautEverywhere(south, place(0, 0), place(4, 10))).toBe(true);
    expect(tautEverywhere(undefined, place(0, 0), place(4, 10))).toBe(true);
    expect(tautEverywhere(undefined, landWest, place(4, 10))).toBe(true);
    expect(tautEverywhere(undefined, landWest, place(10, 0))).toBe(true);
  });
});
