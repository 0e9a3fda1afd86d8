import { describe, expect, it } from 'vitest';
import { type CostOptions, clearTrack, trackCost } from '../../../src/core/route/take-round-cost.ts';
import type { Place } from '../../../src/core/route/take-round-obstacles.ts';
import { boxed, depthIn, drawn, island, offShores, place, type Shore, sea, shareWhere } from './made-shores.ts';

/** What a metre too near costs more than one in the clear: by how often the clearance has been halved. */
const NEAR_PRICES = [1000, 4000, 16_000, 64_000, 256_000];
const SHOAL = 1e8;
const BEACH = 4;

/** The price of a track told by looking at it place by place. */
function lookedAt(shores: readonly Shore[], from: Place, to: Place, options: CostOptions): number {
  const { levels, least, ends, counted, strict } = options;
  const looked = shores.filter((_, i) => !counted || counted[i]);
  const of = (...bars: Shore['bar'][]) => looked.filter(({ bar }) => bars.includes(bar));
  const share = (margin: (at: Place) => number) => shareWhere(from, to, margin);
  const inside = (bar: Shore['bar']) => of(bar).reduce((sum, shore) => sum + share((at) => depthIn(at, shore)), 0);
  if (share((at) => least - offShores(at, of('hard'))) > 0) return Infinity;
  if (strict && inside('soft') > 0) return Infinity;
  const near = levels.map((level) =>
    share((at) => {
      const close = ends.filter(({ room }) => room < level);
      const past = close.map((end) => Math.hypot(at.x - end.x, at.y - end.y) - 2 * level);
      return Math.min(level - offShores(at, of('hard', 'soft')), ...past);
    }),
  );
  if (strict && near.some((part) => part > 0)) return Infinity;
  const dear = near.reduce((sum, part, i) => sum + part * NEAR_PRICES[i]!, 0);
  return apart(from, to) * (1 + dear + SHOAL * inside('soft') + BEACH * inside('beach'));
}

const LEVELS = [80, 40, 20, 10, 5];
const plain: CostOptions = { levels: LEVELS, least: 0.9, ends: [] };

describe('the price of a straight track', () => {
  it('is that of looking at every place along it, by land, shoals and a beach', () => {
    const between = drawn(7);
    let barred = 0;
    let dear = 0;
    for (let round = 0; round < 160; round++) {
      const at = () => place(between(-700, 700), between(-700, 700));
      const bars = (['hard', 'soft', 'soft', 'beach', 'none'] as const).filter(() => between(0, 1) < 0.7);
      const shores = bars.map((bar): Shore => ({ bar, rings: [island(between, at(), 160)] }));
      const [from, to] = [at(), at()];
      const room = (end: Place) =>
        Math.min(
          80,
          offShores(
            end,
            shores.filter(({ bar }) => bar !== 'none'),
          ),
        );
      const options: CostOptions = {
        levels: LEVELS.slice(0, Math.ceil(between(0, 5))),
        least: 0.9,
        ends: [from, to, at()].slice(Math.floor(between(0, 4))).map((end) => ({ ...end, room: room(end) })),
        ...(between(0, 1) < 0.3 && { counted: Uint8Array.from(shores, () => (between(0, 1) < 0.7 ? 1 : 0)) }),
        strict: between(0, 1) < 0.25,
      };
      const cost = trackCost(sea(shores), from, to, options);
      const expected = lookedAt(shores, from, to, options);
      if (expected === Infinity) barred++;
      else if (expected > 1.01 * apart(from, to)) dear++;
      if (expected === Infinity) expect(cost).toBe(Infinity);
      else expect(Math.abs(cost / expected - 1)).toBeLessThan(1e-6);
    }
    // Enough of each kind were among them.
    expect(barred).toBeGreaterThan(15);
    expect(dear).toBeGreaterThan(25);
  });

  it('is that of looking at every place along it where quays lie square to it', () => {
    const between = drawn(8);
    const levels = [77, 38.5, 19.25, 9.625];
    for (let round = 0; round < 120; round++) {
      const on = (least: number, most: number) => 5 * Math.round(between(least, most) / 5);
      const shores = [0, 1, 2].map((): Shore => {
        const [x, y] = [on(-200, 200), on(-200, 200)];
        return { bar: between(0, 1) < 0.5 ? 'hard' : 'soft', rings: [boxed(x, y, x + on(10, 120), y + on(10, 120))] };
      });
      const [along, off] = [on(-250, 0), on(-250, 250)];
      const [from, to] = round % 2 ? [place(off, along), place(off, -along + 5)] : [place(along, off), place(300, off)];
      const turned = round % 4 > 1 ? ([from, to] as const) : ([to, from] as const);
      const options = { levels, least: 0.9, ends: [] };
      const [cost, expected] = [trackCost(sea(shores), ...turned, options), lookedAt(shores, ...turned, options)];
      if (expected === Infinity) expect(cost).toBe(Infinity);
      else expect(Math.abs(cost / expected - 1)).toBeLessThan(1e-6);
    }
  });

  it('is nothing from a place to itself, and a metre for a metre', () => {
    const quay = sea([{ bar: 'hard', rings: [boxed(0, 0, 100, 100)] }]);
    expect(trackCost(quay, place(-10, 50), place(-10, 50), plain)).toBe(0);
    expect(trackCost(quay, place(-500, 50), place(-500, 50), plain)).toBe(0);
    expect(trackCost(quay, place(-500, 50), place(-501, 50), plain)).toBe(1);
  });

  it('is the same there and back, and with the chart mirrored', () => {
    const between = drawn(9);
    for (let round = 0; round < 30; round++) {
      const at = () => place(between(-400, 400), between(-400, 400));
      const shores = (['hard', 'soft'] as const).map((bar): Shore => ({ bar, rings: [island(between, at(), 160)] }));
      const mirrored = shores.map(
        (shore): Shore => ({
          ...shore,
          rings: shore.rings.map((ring) => ring.map(([x, y]) => [-x, y] as const)),
        }),
      );
      const [from, to] = [at(), at()];
      const out = trackCost(sea(shores), from, to, plain);
      const across = trackCost(sea(mirrored), place(-from.x, from.y), place(-to.x, to.y), plain);
      for (const other of [trackCost(sea(shores), to, from, plain), across]) {
        if (out === Infinity) expect(other).toBe(Infinity);
        else expect(Math.abs(other / out - 1)).toBeLessThan(1e-9);
      }
    }
  });

  it('counts a metre of passing too near a spit', () => {
    const spit = sea([
      {
        bar: 'hard',
        rings: [
          [
            [0, 0],
            [1, -500],
            [-1, -500],
          ],
        ],
      },
    ]);
    // Half a metre to both sides of abreast the spit is as near as 80 m.
    const off = Math.sqrt(80 ** 2 - 0.5 ** 2);
    const cost = trackCost(spit, place(-300, off), place(300, off), plain);
    expect(cost).toBeCloseTo(600 + 1000, 5);
  });

  it('leaves no gap in a shore drawn every 80 cm, nor anywhere along a wall', () => {
    const fine = Array.from({ length: 50 }, (_, i) => [0.8 * i, 0] as const);
    const shore = sea([{ bar: 'hard', rings: [[...fine, [40, 90], [0, 90]]] }]);
    const narrow: CostOptions = { levels: [5], least: 0.1, ends: [] };
    for (let x = 0.2; x < 39; x += 0.3) {
      expect(trackCost(shore, place(x, -5), place(x, 5), narrow)).toBe(Infinity);
      expect(trackCost(shore, place(x, 85), place(x, 95), narrow)).toBe(Infinity);
    }
    const wall = sea([{ bar: 'hard', rings: [boxed(-20, 0, 20, 1)] }]);
    for (let x = -20; x <= 20; x += 0.25) {
      expect(trackCost(wall, place(x, -5), place(x, 5), narrow)).toBe(Infinity);
    }
  });

  it('takes no account of land behind the start or beyond the end', () => {
    for (const [x, y] of [
      [70, -75],
      [-70, -75],
      [70, 575],
      [-70, 575],
    ] as const) {
      const rock = sea([
        {
          bar: 'hard',
          rings: [
            boxed(
              Math.min(x, 2 * x),
              Math.min(y, y + Math.sign(y) * 50),
              Math.max(x, 2 * x),
              Math.max(y, y + Math.sign(y) * 50),
            ),
          ],
        },
      ]);
      for (const strict of [true, false]) {
        expect(trackCost(rock, place(0, 0), place(0, 500), { ...plain, strict })).toBe(500);
      }
    }
  });

  it('keeps the clearance at exactly the clearance, however the shore is drawn', () => {
    const drawnSo = boxed(-300, -50, 300, 0);
    for (const ring of [drawnSo, [...drawnSo].reverse()]) {
      const quay = sea([{ bar: 'hard', rings: [ring] }]);
      const strict: CostOptions = { ...plain, strict: true };
      expect(trackCost(quay, place(0, 80), place(0, 500), strict)).toBe(420);
      expect(trackCost(quay, place(0, 500), place(0, 80), strict)).toBe(420);
      expect(trackCost(quay, place(-200, 80), place(200, 80), strict)).toBe(400);
      expect(trackCost(quay, place(-200, 79.9), place(200, 79.9), strict)).toBe(Infinity);
    }
  });
});

describe('a strict track', () => {
  const strict: CostOptions = { ...plain, strict: true };

  it('is barred on a shoal, however far its edge, and not on the beach it begins at', () => {
    const bank = (bar: Shore['bar']) => sea([{ bar, rings: [boxed(-1000, -1000, 1000, 1000)] }]);
    expect(trackCost(bank('soft'), place(-100, 0), place(100, 0), strict)).toBe(Infinity);
    expect(trackCost(bank('soft'), place(-100, 0), place(100, 0), plain)).toBeCloseTo(200 * (1 + SHOAL), 0);
    expect(trackCost(bank('soft'), place(10, 20), place(10, 20), strict)).toBe(0);
    expect(trackCost(bank('beach'), place(-100, 0), place(100, 0), strict)).toBeCloseTo(200 * (1 + BEACH), 9);
  });

  it('may be as near to land as its end is within twice the clearance of it, not farther on', () => {
    const land = (east: number) => sea([{ bar: 'hard', rings: [boxed(-50, -100, east, 0)] }]);
    const from = place(0, 30);
    const ends = [{ ...from, room: 30 }];
    expect(trackCost(land(50), from, place(600, 30), { ...strict, ends })).toBe(600);
    expect(trackCost(land(60), from, place(600, 30), { ...strict, ends })).toBe(Infinity);
    expect(trackCost(land(50), from, place(600, 30), strict)).toBe(Infinity);
  });

  it('may touch the corner of a shoal near a quay, which is not crossing it', () => {
    const from = place(0, 30);
    const ends = [{ ...from, room: 20 }];
    for (let deg = 1; deg < 180; deg += 2) {
      const [x, y] = [Math.cos((deg * Math.PI) / 180), Math.sin((deg * Math.PI) / 180)];
      // A shoal to the right of the track, whose corner is abreast 25 m on.
      const corner = [25 * x, 30 + 25 * y] as const;
      const shoal = sea([
        {
          bar: 'soft',
          rings: [
            [
              corner,
              [corner[0] + 40 * y + 10 * x, corner[1] - 40 * x + 10 * y],
              [corner[0] + 40 * y - 10 * x, corner[1] - 40 * x - 10 * y],
            ],
          ],
        },
      ]);
      const to = place(120 * x, 30 + 120 * y);
      expect(trackCost(shoal, from, to, { ...strict, levels: [80], ends })).toBeLessThan(121);
    }
  });
});

describe('a clear track', () => {
  it('costs its length and nothing for what it meets', () => {
    for (const [from, to] of [
      [place(300, 200), place(400, 200)],
      [place(-20, 70), place(-9020, 12_070)],
      [place(5, 5), place(5, 5)],
    ] as const) {
      const length = apart(from, to);
      expect(clearTrack(length, from, to)).toBe(true);
      // Ten centimetres too near, at the least that costs.
      expect(clearTrack(length + 0.1 * NEAR_PRICES[0]!, from, to)).toBe(false);
      expect(clearTrack(length + 0.001, from, to)).toBe(false);
      expect(clearTrack(Infinity, from, to)).toBe(false);
    }
  });
});

function apart(from: Place, to: Place): number {
  return Math.hypot(to.x - from.x, to.y - from.y);
}
