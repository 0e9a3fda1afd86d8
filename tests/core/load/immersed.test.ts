import { describe, expect, it } from 'vitest';
import type { Slice } from '../../../src/core/load/float-body.ts';
import { immersedUnder, type Surface } from '../../../src/core/load/immersed.ts';

const under = (slice: Partial<Slice>, surface: Partial<Surface>, middle = 0) =>
  immersedUnder([{ x: 0, thickness: 1, ...slice }], middle, { level: 0, bowUp: 0, heel: 0, ...surface });
/** Of radius 1, its middle at the height of the keel line. */
const tube = { round: { y: 0, z: 0, radius: 1 } };
/** 2 m broad and deep. */
const box = { ring: [1, 0, 1, 2, -1, 2, -1, 0] };

describe('immersedUnder a round tube', () => {
  it('has half of it in water up to its middle, and the centre of that half 4r / 3 pi below', () => {
    const found = under(tube, {});
    expect(found.volume).toBeCloseTo(Math.PI / 2, 12);
    expect(found.z).toBeCloseTo(-2 / 3, 12);
    expect(found.y).toBeCloseTo(0, 12);
    expect(found.area).toBeCloseTo(2, 12);
    expect(found.ayy).toBeCloseTo(2 ** 3 / 12, 12);
  });

  it('has more than half of it in deeper water: the segment of 240 degrees', () => {
    const found = under(tube, { level: 0.5 });
    expect(found.volume).toBeCloseTo((2 * Math.PI) / 3 + 0.5 * Math.sin(Math.PI / 3), 12);
    expect(found.area).toBeCloseTo(2 * Math.sin(Math.PI / 3), 12);
    expect(found.z).toBeCloseTo((-2 / 3) * Math.sin(Math.PI / 3) ** 3, 12);
  });

  it('has none of it where the water only touches, and all of it without a waterline where it is just covered', () => {
    expect(under(tube, { level: -1 })).toMatchObject({ volume: 0, area: 0 });
    const covered = under({ round: { y: 3, z: 0.5, radius: 1 } }, { level: 1.5 });
    expect(covered.volume).toBeCloseTo(Math.PI, 12);
    expect([covered.y, covered.z].map((each) => each / Math.PI)).toEqual([expect.closeTo(3), expect.closeTo(0.5)]);
    expect(covered.area).toBe(0);
  });

  it('is cut at right angles to a sloping surface', () => {
    // At 45 degrees through its middle: half of it, its centre to starboard and down alike, the waterline seen from above.
    const found = under(tube, { heel: 1 });
    expect(found.volume).toBeCloseTo(Math.PI / 2, 12);
    expect(found.y).toBeCloseTo((2 / 3) * Math.SQRT1_2, 12);
    expect(found.z).toBeCloseTo((-2 / 3) * Math.SQRT1_2, 12);
    expect(found.area).toBeCloseTo(2 * Math.SQRT1_2, 12);
    // The same tube aside and higher, cut through its middle again.
    const aside = under({ round: { y: 2, z: 2, radius: 1 } }, { heel: 1 });
    expect(aside.volume).toBeCloseTo(Math.PI / 2, 12);
    expect(aside.y - 2 * aside.volume).toBeCloseTo((2 / 3) * Math.SQRT1_2, 12);
    expect(aside.ay / aside.area).toBeCloseTo(2, 12);
  });

  it('is cut off its middle where the water slopes past it', () => {
    // Half a radius under a surface at 45 degrees: the foot of the square from the middle lies to port.
    const found = under(tube, { heel: 1, level: 0.5 * Math.SQRT2 });
    expect(found.volume).toBeCloseTo((2 * Math.PI) / 3 + 0.5 * Math.sin(Math.PI / 3), 12);
    expect(found.ay / found.area).toBeCloseTo(-0.5 * Math.SQRT1_2, 12);
    expect(found.area).toBeCloseTo(2 * Math.sin(Math.PI / 3) * Math.SQRT1_2, 12);
  });
});

describe('immersedUnder a box', () => {
  it('has breadth times draft, its centre halfway down, whichever way its ring is written', () => {
    for (const ring of [box.ring, [-1, 0, -1, 2, 1, 2, 1, 0]]) {
      const found = under({ ring }, { level: 0.5 });
      expect(found).toMatchObject({ volume: 1, y: 0, z: 0.25, area: 2, ay: 0 });
      expect(found.ayy).toBeCloseTo(8 / 12, 12);
    }
  });

  it('heeled has the wedge on one side that it lacks on the other', () => {
    // Depth 1 + y / 2 from y = -1 to 1: moments 2/3 of a half, and half the mean square of the depth.
    const found = under(box, { level: 1, heel: 0.5 });
    expect(found.volume).toBeCloseTo(2, 12);
    expect(found.y).toBeCloseTo(1 / 3, 12);
    expect(found.z).toBeCloseTo((2 + 0.25 * (2 / 3)) / 2, 12);
    expect(found.area).toBeCloseTo(2, 12);
    expect(under(box, { level: 1, heel: -0.5 }).y).toBeCloseTo(-1 / 3, 12);
  });

  it('is a triangle where one side lies dry', () => {
    // The water begins at the keel in the middle: 1 m deep at the starboard side.
    const found = under(box, { heel: 1 });
    expect(found.volume).toBeCloseTo(0.5, 12);
    expect(found.y).toBeCloseTo(1 / 3, 12);
    expect(found.z).toBeCloseTo(1 / 6, 12);
    expect(found.area).toBeCloseTo(1, 12);
    expect(found.ay).toBeCloseTo(0.5, 12);
  });

  it('is dry above the water, and has no waterline under it', () => {
    expect(under(box, { level: -0.1 })).toMatchObject({ volume: 0, area: 0 });
    expect(under(box, { level: 2.5 })).toMatchObject({ volume: 4, z: 4, area: 0 });
  });

  it('weighs slices by their thickness and place along, in water that falls forward as the bow rises', () => {
    const found = under({ ...box, x: 3, thickness: 0.25 }, { level: 1, bowUp: 0.25 }, 1);
    // 2 m forward of the middle the water stands half a metre lower.
    expect(found).toMatchObject({ volume: 0.25, x: 0.5, area: 0.5, ax: 1, axx: 2, ay: 0, axy: 0 });
    const starboard = under({ ring: [1, 0, 1, 2, 0, 2, 0, 0], x: 3, thickness: 0.25 }, { level: 1 }, 1);
    expect(starboard.axy).toBeCloseTo(0.25 * 2 * 0.5, 12);
  });

  it('is the sum of its slices', () => {
    const slices = [-1, 1].map((x) => ({ ...box, x, thickness: 1 }));
    expect(immersedUnder(slices, 0, { level: 1, bowUp: 0.5, heel: 0 })).toMatchObject({
      volume: 2 * 1.5 + 2 * 0.5,
      x: -2 * 1.5 + 2 * 0.5,
      area: 4,
      ax: 0,
      axx: 4,
    });
  });
});
