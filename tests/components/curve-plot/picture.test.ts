import { describe, expect, it } from 'vitest';
import { type PlotSize, plotPicture, spot } from '../../../src/components/curve-plot/picture.ts';
import { readAt } from '../../../src/components/curve-plot/read-at.ts';
import type { Curve } from '../../../src/core/curve/shapes.ts';
import { KNOT } from '../../../src/core/units/convert.ts';
import { electricCurve, planingCurve, stuckCurve } from '../answer/fixtures.ts';

const size: PlotSize = { width: 358, height: 264, left: 36, bottom: 26, top: 26, foot: 20 };
const units = { speed: KNOT, use: 4e-4 };

function drawn(curve: Curve, mode: 'distance' | 'hour' = 'distance', marked: number[] = []) {
  return plotPicture(curve, mode, size, units, marked);
}

function everything(curve: Curve): string {
  return (['distance', 'hour'] as const)
    .map((mode) => {
      const picture = drawn(curve, mode);
      const at = spot(curve, mode, picture, 3);
      return JSON.stringify([picture.bands, picture.lines, picture.zones, picture.xTicks, picture.yTicks, at]);
    })
    .join('');
}

/** The same use at every speed. */
const flat: Curve = {
  ...planingCurve,
  points: planingCurve.points.map((point) => {
    const band = { low: 1e-4, median: 1e-4, high: 1e-4 };
    return { ...point, perMetre: band, flow: band };
  }),
};

const huge: Curve = {
  ...planingCurve,
  points: planingCurve.points.map((point, i) => {
    const band = { low: 1e9, median: 1e12 * (i + 1), high: i % 7 === 0 ? Infinity : 1e15 };
    return { ...point, perMetre: band, flow: band };
  }),
};

const nothing: Curve = {
  ...planingCurve,
  points: planingCurve.points.map((point) => {
    const band = { low: 0, median: 0, high: 0 };
    return { ...point, perMetre: band, flow: band, held: false };
  }),
};

describe('plotPicture', () => {
  it.each([
    ['a planing boat', planingCurve],
    ['a boat stuck before its hump', stuckCurve],
    ['a launch on a battery', electricCurve],
    ['a flat curve', flat],
    ['huge figures', huge],
    ['nothing held and nothing used', nothing],
    ['a single point', { ...planingCurve, points: planingCurve.points.slice(0, 1) }],
  ])('draws %s with finite figures only', (_, curve) => {
    expect(everything(curve)).not.toMatch(/NaN|null|Infinity/);
  });

  it('ends the solid line at the top speed', () => {
    const picture = drawn(planingCurve);
    const [solid, dashed, ...more] = picture.lines;
    expect([solid!.held, dashed!.held, more.length]).toEqual([true, false, 0]);
    const top = picture.x(planingCurve.topSpeed.median);
    expect(solid!.path).toMatch(new RegExp(`${Math.round(top * 100) / 100} [\\d.]+$`));
  });

  it('dashes what lies behind a hump that is not crossed', () => {
    const held = drawn(stuckCurve).lines.map((line) => line.held);
    expect(held).toEqual([true, false, true, false]);
  });

  it('shows the zones in order, from rest to the edge', () => {
    const picture = drawn(planingCurve);
    expect(picture.zones.map((zone) => zone.regime)).toEqual(['displacement', 'hump', 'planing']);
    expect(picture.zones[0]!.from).toBeCloseTo(picture.box.left, 9);
    expect(picture.zones.at(-1)!.to).toBeCloseTo(picture.box.right, 9);
    expect(drawn(electricCurve).zones.map((zone) => zone.regime)).toEqual(['displacement']);
  });

  it('has room for a planned speed that the boat cannot hold', () => {
    const planned = 23.5 * KNOT;
    const picture = drawn(planingCurve, 'distance', [planned]);
    expect(picture.x(planned)).toBeLessThanOrEqual(picture.box.right);
  });

  it('keeps the use of drifting along from flattening the rest', () => {
    const picture = drawn(planingCurve);
    const hump = readAt(planingCurve, planingCurve.humpSpeed)!;
    const share = (picture.zero - picture.y(hump.perMetre.high)) / (picture.zero - picture.box.top);
    expect(share).toBeGreaterThan(0.5);
    expect(share).toBeLessThanOrEqual(1);
  });

  it('finds the speed under the pointer again', () => {
    const picture = drawn(planingCurve);
    for (const kn of [1, 6, 12, 20]) expect(picture.speedAt(picture.x(kn * KNOT))).toBeCloseTo(kn * KNOT, 9);
    expect(picture.speedAt(-500)).toBe(planingCurve.points[0]!.speed);
    expect(picture.speedAt(5000)).toBe(picture.fastest);
  });
});

describe('readAt', () => {
  it('is the point itself at a point and half way between two half way', () => {
    const [a, b] = planingCurve.points.slice(10, 12);
    expect(readAt(planingCurve, a!.speed)).toEqual(a);
    const between = readAt(planingCurve, (a!.speed + b!.speed) / 2)!;
    expect(between.rpm).toBeCloseTo((a!.rpm + b!.rpm) / 2, 9);
    expect(between.perMetre.high).toBeCloseTo((a!.perMetre.high + b!.perMetre.high) / 2, 12);
  });

  it('holds at its ends and has nothing to say without points', () => {
    expect(readAt(planingCurve, 0)).toBe(planingCurve.points[0]);
    expect(readAt(planingCurve, 99)).toBe(planingCurve.points.at(-1));
    expect(readAt({ points: [] }, 3)).toBeUndefined();
  });
});
