import { describe, expect, it } from 'vitest';
import { tubesAtRest, tubesHeeled, tubesTrimmed } from '../../../src/core/load/tube-hydrostatics.ts';
import { DEGREE } from '../../../src/core/units/convert.ts';

const tubes = { diameter: 0.4, spacing: 1.1, length: 3 };
const afloat = { mass: 300, centreHeight: 0.45, density: 1025 };

/** Area below a waterline of a tube whose middle lies at y0; strips, no formula. */
function strips(y0: number, waterline: number): number {
  const r = tubes.diameter / 2;
  const count = 4000;
  const depth = Math.min(2 * r, Math.max(0, waterline - y0 + r));
  let area = 0;
  for (let strip = 0; strip < count; strip++) {
    const y = ((strip + 0.5) * depth) / count - r;
    area += 2 * Math.sqrt(r * r - y * y) * (depth / count);
  }
  return area;
}

/** Righting arm, m, of both tubes turned by an angle at constant displacement. */
function rightingArm(angle: number): number {
  const r = tubes.diameter / 2;
  const turn = (x: number, y: number) => ({
    x: x * Math.cos(angle) + y * Math.sin(angle),
    y: y * Math.cos(angle) - x * Math.sin(angle),
  });
  const left = turn(-tubes.spacing / 2, r);
  const right = turn(tubes.spacing / 2, r);
  const gravity = turn(0, afloat.centreHeight);
  const wanted = afloat.mass / afloat.density / tubes.length;
  let low = -1;
  let high = 1;
  for (let halving = 0; halving < 50; halving++) {
    const middle = (low + high) / 2;
    if (strips(left.y, middle) + strips(right.y, middle) < wanted) low = middle;
    else high = middle;
  }
  const a = strips(left.y, low);
  const b = strips(right.y, low);
  return (a * left.x + b * right.x) / (a + b) - gravity.x;
}

describe('tubesAtRest', () => {
  it('has the stiffness that turning two cylinders by hand finds', () => {
    const angle = 0.5 * DEGREE;
    const { metacentricHeight } = tubesAtRest(tubes, afloat)!;
    expect(rightingArm(angle) / Math.sin(angle)).toBeCloseTo(metacentricHeight, 3);
  });

  it('displaces the mass it carries', () => {
    const { draft } = tubesAtRest(tubes, afloat)!;
    const r = tubes.diameter / 2;
    expect(2 * strips(r, draft) * tubes.length * afloat.density).toBeCloseTo(300, 1);
  });

  it('does not carry more than the tubes displace', () => {
    const whole = 2 * 1025 * 3 * Math.PI * 0.2 ** 2;
    expect(tubesAtRest(tubes, { ...afloat, mass: whole + 1 })).toBeUndefined();
    expect(tubesAtRest(tubes, { ...afloat, mass: whole - 1 })!.freeboard).toBeGreaterThan(0);
  });
});

describe('tubesHeeled', () => {
  it('heels alike to both sides and not at all when balanced', () => {
    expect(tubesHeeled(tubes, afloat, -20)).toEqual(tubesHeeled(tubes, afloat, 20));
    expect(tubesHeeled(tubes, afloat, 0)).toMatchObject({ state: 'afloat', heelDeg: 0, smallAngleDeg: 0 });
  });

  it('says when a tube lifts or goes under', () => {
    expect(tubesHeeled(tubes, afloat, 300 * 0.56)).toEqual({ state: 'tube-lifts' });
    expect(tubesHeeled(tubes, { ...afloat, mass: 700 }, 700 * 0.3)).toEqual({ state: 'tube-under' });
  });

  it('shows less heel by the tubes than by the metacentre', () => {
    const heeled = tubesHeeled(tubes, afloat, 60);
    if (heeled.state !== 'afloat') throw new Error('it floats');
    expect(heeled.smallAngleDeg).toBeGreaterThan(heeled.heelDeg);
  });
});

describe('tubesTrimmed', () => {
  it('goes bow down under a moment forward and level without', () => {
    expect(tubesTrimmed(tubes, afloat, 50)!.trimDeg).toBeGreaterThan(0);
    expect(tubesTrimmed(tubes, afloat, 0)).toEqual({ trimDeg: 0, trimOverLength: 0 });
    expect(tubesTrimmed(tubes, { ...afloat, mass: 2000 }, 0)).toBeUndefined();
  });
});
