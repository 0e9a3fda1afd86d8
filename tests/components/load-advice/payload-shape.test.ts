import { describe, expect, it } from 'vitest';
import { payloadPicture } from '../../../src/components/load-advice/payload-shape.ts';
import { type PayloadPoint, payloadStretches } from '../../../src/core/trip/payload-curve.ts';
import type { Payload } from '../../../src/core/trip/shapes.ts';

const box = { left: 40, right: 440, top: 40, bottom: 260 };

function point(at: number, extra: number, binds: Payload['binds']): PayloadPoint {
  return { at, payload: { extra, binds, counted: 200, allowed: 400 }, planes: false, dropsOff: false };
}

const points = [
  point(1000, 120, 'plate'),
  point(2000, 120, 'plate'),
  point(3000, 60, 'reserve'),
  point(4000, -400, 'reserve'),
];
const picture = payloadPicture(points, payloadStretches(points), box, { at: 1000, mass: 1 });

describe('payloadPicture', () => {
  it('draws more payload higher and a longer way further right', () => {
    expect(picture.x(4000)).toBe(box.right);
    expect(picture.y(120)).toBeLessThan(picture.y(60));
    expect(picture.zero).toBe(picture.y(0));
  });

  it('fills one area for each limit, side by side without a gap', () => {
    expect(picture.areas.map(({ stretch }) => stretch.binds)).toEqual(['plate', 'reserve']);
    expect(picture.areas[0]!.to).toBe(picture.areas[1]!.from);
    expect(picture.areas[0]!.from).toBe(box.left);
    expect(picture.areas[1]!.to).toBe(box.right);
  });

  it('stays in its box however much has to stay ashore', () => {
    expect(picture.y(-400)).toBeLessThanOrEqual(box.bottom);
    expect(picture.line).not.toMatch(/NaN|Infinity/);
    for (const { at } of picture.yTicks) expect(at).toBeLessThanOrEqual(box.bottom + 1e-9);
  });
});
