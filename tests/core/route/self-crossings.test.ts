import type { Position } from 'geojson';
import { describe, expect, it } from 'vitest';
import { selfCrossings } from '../../../src/core/route/self-crossings.ts';

/** The ring begun at every corner, both ways round, open and closed. */
function written(ring: readonly Position[]): Position[][] {
  return ring.flatMap((_, at) => {
    const turned = [...ring.slice(at), ...ring.slice(0, at)];
    const back = [...turned].reverse();
    return [turned, back, [...turned, turned[0]!], [...back, back[0]!]];
  });
}

describe('selfCrossings', () => {
  it('finds the one place at which a shore crosses itself, once, however it is written', () => {
    for (const ring of [
      [
        [0, 0],
        [2, 2],
        [2, 0],
        [0, 2],
      ],
      [
        [0, 0],
        [2, 2],
        [0, 2],
        [2, 0],
      ],
    ]) {
      for (const each of written(ring)) expect(selfCrossings([each])).toEqual([{ lat: 1, lon: 1 }]);
    }
  });

  it('tells where along the edges it is', () => {
    // From 0, 0 to 4, 2 across the line lon = 1.
    const [found, ...more] = selfCrossings([
      [
        [0, 0],
        [4, 2],
        [4, 3],
        [1, 3],
        [1, 0.2],
      ],
    ]);
    expect(more).toEqual([]);
    expect(found!.lon).toBeCloseTo(1, 12);
    expect(found!.lat).toBeCloseTo(0.5, 12);
  });

  it('finds the five of a star drawn in one go, or as many as are asked for', () => {
    const star = [0, 2, 4, 1, 3].map((corner) => {
      const angle = (corner * 2 * Math.PI) / 5;
      return [Math.sin(angle), Math.cos(angle)];
    });
    expect(selfCrossings([star]).length).toBe(5);
    expect(selfCrossings([star], 2).length).toBe(2);
  });

  it('tells of twenty unless more are asked for, and never of more, though one edge crosses them all', () => {
    // A comb whose teeth reach over its own back.
    const teeth = Array.from({ length: 30 }, (_, i) => [
      [i, 2],
      [i + 0.5, -2],
    ]).flat();
    const comb = [[-1, 0], [31, 0], [31, 3], ...teeth.reverse(), [-1, 3]];
    expect(selfCrossings([comb])).toHaveLength(20);
    expect(selfCrossings([comb], 1)).toHaveLength(1);
    expect(selfCrossings([comb], 7)).toHaveLength(7);
    const all = selfCrossings([comb], 1000);
    // Down and up each of thirty teeth.
    expect(all).toHaveLength(60);
    for (const { lat } of all) expect(lat).toBeCloseTo(0, 12);
  });

  it('finds a hole that reaches over the shore, twice', () => {
    const shore = [
      [0, 0],
      [4, 0],
      [4, 4],
      [0, 4],
    ];
    const hole = [
      [3, 1],
      [6, 1],
      [6, 2],
      [3, 2],
    ];
    expect(selfCrossings([shore, hole]).sort((a, b) => a.lat - b.lat)).toEqual([
      { lat: 1, lon: 4 },
      { lat: 2, lon: 4 },
    ]);
  });

  it('calls it no crossing where shores only touch', () => {
    const shore = [
      [0, 0],
      [4, 0],
      [4, 4],
      [0, 4],
    ];
    expect(
      selfCrossings([
        shore,
        [
          [4, 2],
          [3, 1],
          [3, 3],
        ],
      ]),
    ).toEqual([]);
    // Whichever way both are drawn, and mirrored.
    for (const each of written(shore)) {
      for (const hole of written([
        [4, 2],
        [3, 1],
        [3, 3],
      ])) {
        for (const turn of [1, -1]) {
          const mirrored = (ring: readonly Position[]) => ring.map(([x, y]) => [turn * x!, y!]);
          expect(selfCrossings([mirrored(each), mirrored(hole)])).toEqual([]);
        }
      }
    }
    expect(selfCrossings([shore])).toEqual([]);
    expect(selfCrossings([])).toEqual([]);
  });
});
