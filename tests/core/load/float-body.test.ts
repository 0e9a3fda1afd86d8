import { describe, expect, it } from 'vitest';
import { ends, fullness, type OneBow } from '../../../src/core/craft/plan-form.ts';
import type { Hull } from '../../../src/core/craft/shapes.ts';
import { hulls } from '../../../src/core/files/catalogue.ts';
import { type Edge, type FloatBody, floatBody, type Slice, tubesAlone } from '../../../src/core/load/float-body.ts';
import { immersedUnder } from '../../../src/core/load/immersed.ts';
import { DEGREE } from '../../../src/core/units/convert.ts';

const hullOf = (id: string, change: Partial<Hull> = {}): Hull => ({
  ...hulls.find((hull) => hull.id === id)!.hull,
  ...change,
});
const bodyOf = (hull: Hull): FloatBody => {
  const body = floatBody(hull);
  if (typeof body === 'string') throw new Error(body);
  return body;
};
const [catamaran, rib, floor] = [hullOf('catamaran-3-6'), hullOf('rib-4-7'), hullOf('flat-floor-2-7')];
const rigid = ['rigid-v-4-2', 'rigid-flat-3-8', 'launch-4-9'].map((id) => hullOf(id));

const under = (slices: readonly Slice[], level: number) => immersedUnder(slices, 0, { level, bowUp: 0, heel: 0 });
const tubesOf = ({ tube }: Hull) => 2 * Math.PI * (tube!.diameter / 2) ** 2 * tube!.length;
const between = ({ tube }: Hull) => tube!.spacing - tube!.diameter;
/** Mean breadth over the greatest of a bow, in a thousand strips. */
const meanFullness = (form: OneBow) =>
  Array.from({ length: 1000 }, (_, i) => fullness(form, (i + 0.5) / 1000)).reduce((sum, each) => sum + each / 1000, 0);
/** To a nanometre; no minus before 0. */
const rounded = (metres: number) => Math.round(metres * 1e9) / 1e9 + 0;
const places = (edges: readonly Edge[], part: Edge['part']) =>
  edges
    .filter((edge) => edge.part === part)
    .map(({ x, y, z }) => [x, y, z].map(rounded))
    .toSorted((a, b) => a[0]! - b[0]! || a[1]! - b[1]!);

describe('any body', () => {
  it('is alike on both sides, whole and under any level', () => {
    for (const hull of [catamaran, rib, floor, ...rigid]) {
      const body = bodyOf(hull);
      expect(body.symmetric).toBe(true);
      expect(body.middle).toBe(hull.wettedLength / 2);
      for (const level of [0.1, 0.3, 2]) {
        expect(under(body.slices, level).y).toBeCloseTo(0, 12);
        expect(under(body.slices, level).ay).toBeCloseTo(0, 12);
      }
      const sum = body.edges.reduce((total, { y }) => total + y, 0);
      expect(sum).toBeCloseTo(0, 12);
    }
  });

  it('is worked out once for a hull', () => {
    expect(floatBody(catamaran)).toBe(floatBody(catamaran));
    expect(floatBody({ ...catamaran })).toEqual(floatBody(catamaran));
  });

  it('is not known without tubes, or without the height of the transom', () => {
    const { tube: _, ...bare } = catamaran;
    const { transomHeight: __, ...low } = rigid[0]!;
    expect([floatBody(bare), floatBody(low)]).toEqual(['tubes', 'transom-height']);
  });
});

describe('the tubes of an inflatable', () => {
  it('hold what two cylinders hold, in four equal chambers', () => {
    for (const hull of [catamaran, rib, floor]) {
      const body = bodyOf(hull);
      expect(body.tubeVolume).toBeCloseTo(tubesOf(hull), 12);
      const whole = tubesAlone(body);
      expect(whole.volume).toBeCloseTo(tubesOf(hull), 9);
      expect(whole.symmetric).toBe(true);
      for (const chamber of ['port-aft', 'port-fore', 'starboard-aft', 'starboard-fore'] as const) {
        const left = tubesAlone(body, chamber);
        expect(left.volume).toBeCloseTo(0.75 * tubesOf(hull), 9);
        expect(left.symmetric).toBe(false);
        const { volume, x, y } = under(
          whole.slices.filter((slice) => slice.chamber === chamber),
          5,
        );
        const { aft } = ends(hull);
        const quarter = chamber.endsWith('aft') ? 0.25 : 0.75;
        expect(x / volume).toBeCloseTo(aft + quarter * hull.tube!.length, 9);
        expect(y / volume).toBeCloseTo(((chamber.startsWith('port') ? -1 : 1) * hull.tube!.spacing) / 2, 9);
      }
    }
  });

  it('are an edge at both ends of each, and alone the only one', () => {
    for (const hull of [catamaran, rib, floor]) {
      const { aft } = ends(hull);
      const { spacing, length, diameter } = hull.tube!;
      const body = bodyOf(hull);
      const tubes = body.edges.filter(({ part }) => part === 'tube');
      const z = tubes[0]!.z;
      expect(places(body.edges, 'tube')).toEqual(
        [aft, aft + length].flatMap((x) => [-spacing / 2, spacing / 2].map((y) => [x, y, z].map(rounded))),
      );
      for (const { radius } of tubes) expect(radius).toBe(diameter / 2);
      expect(tubesAlone(body).edges).toEqual(tubes);
    }
  });

  it('lie on the water of a catamaran and a tender, on the chine of a RIB', () => {
    const heights = (hull: Hull) => new Set(bodyOf(hull).edges.flatMap(({ part, z }) => (part === 'tube' ? [z] : [])));
    for (const hull of [catamaran, floor]) expect(heights(hull)).toEqual(new Set([hull.tube!.diameter / 2]));
    const radius = rib.tube!.diameter / 2;
    const chine = (between(rib) / 2) * Math.tan(rib.deadriseDeg * DEGREE);
    const [height] = heights(rib);
    expect(height! - chine).toBeCloseTo(0.4 * radius, 9);
    expect(heights({ ...catamaran, deadriseDeg: 60 })).toEqual(new Set([catamaran.tube!.diameter / 2]));
    // A flat RIB has no chine to sit on.
    expect(heights({ ...rib, deadriseDeg: 0 })).toEqual(new Set([radius]));
  });

  it('have people on the tube or 0.1 m inside of it', () => {
    for (const hull of [catamaran, rib, floor]) {
      const { side } = bodyOf(hull);
      expect(side.outer).toBe(hull.tube!.spacing / 2);
      expect(side.inner).toBeCloseTo(between(hull) / 2 - 0.1, 12);
    }
    const close = bodyOf({ ...catamaran, tube: { ...catamaran.tube!, spacing: catamaran.tube!.diameter + 0.1 } });
    expect(close.side.inner).toBe(0);
  });

  it('have nothing between them where they touch', () => {
    for (const hull of [catamaran, rib, floor]) {
      for (const spacing of [hull.tube!.diameter, 0.9 * hull.tube!.diameter]) {
        const body = bodyOf({ ...hull, tube: { ...hull.tube!, spacing } });
        expect(body.slices.every(({ round }) => round !== undefined)).toBe(true);
        expect(body.volume).toBeCloseTo(tubesOf(hull), 9);
      }
    }
  });
});

describe('the bottom of an inflatable', () => {
  const bottom = (hull: Hull) => bodyOf(hull).slices.filter(({ ring }) => ring);
  const held = (hull: Hull) => bodyOf(hull).volume - tubesOf(hull);

  it('of a catamaran is a floor at half the height of the tubes, over four fifths of the length', () => {
    const reach = 0.8 * catamaran.wettedLength;
    expect(held(catamaran)).toBeCloseTo((between(catamaran) * reach * catamaran.tube!.diameter) / 2, 9);
    const { volume, x } = under(bottom(catamaran), 5);
    expect(x / volume).toBeCloseTo(reach / 2, 9);
    expect(under(bottom(catamaran), catamaran.tube!.diameter / 2 - 0.01).volume).toBe(0);
    expect(under(bottom(catamaran), catamaran.tube!.diameter / 2 + 0.01).volume).toBeGreaterThan(0);
  });

  it('of a tender is a floor low between the tubes that narrows as its bow does', () => {
    const { diameter } = floor.tube!;
    const area = between(floor) * floor.wettedLength * meanFullness('flat-floor-inflatable');
    // Four points in each half of the length follow the round of the bow to half a hundredth.
    expect(held(floor) / (area * (1 - 0.146) * diameter)).toBeCloseTo(1, 2);
    const sum = under(bottom(floor), 0.146 * diameter + 0.02);
    expect(sum.area / area).toBeCloseTo(1, 2);
    expect(sum.volume / (0.02 * area)).toBeCloseTo(1, 2);
  });

  it('of a RIB is a V up to the chine and straight above', () => {
    const half = between(rib) / 2;
    const chine = half * Math.tan(rib.deadriseDeg * DEGREE);
    const top = bodyOf(rib).edges.find(({ part }) => part === 'tube')!.z + rib.tube!.diameter / 2;
    const mean = rib.wettedLength * meanFullness('rib');
    expect(held(rib) / (mean * half * (2 * top - chine))).toBeCloseTo(1, 2);
    // Half way up the V half the breadth is under water.
    const sum = under(bottom(rib), chine / 2);
    expect(sum.area / (mean * half)).toBeCloseTo(1, 2);
    expect(sum.volume / ((mean * half * chine) / 4)).toBeCloseTo(1, 2);
    expect(under(bottom(rib), chine).area / (2 * mean * half)).toBeCloseTo(1, 2);
  });

  it('ends at a transom whose cut is an edge where its height is known', () => {
    for (const hull of [catamaran, rib, floor]) {
      const half = between(hull) / 2;
      const z = hull.transomHeight!;
      expect(places(bodyOf(hull).edges, 'transom')).toEqual([
        [0, rounded(-half), z],
        [0, rounded(half), z],
      ]);
      for (const { part, radius } of bodyOf(hull).edges) if (part === 'transom') expect(radius).toBe(0);
      const { transomHeight: _, ...unknown } = hull;
      expect(places(bodyOf(unknown).edges, 'transom')).toEqual([]);
    }
  });
});

describe('the body of a rigid boat', () => {
  it('displaces its volume level as water comes in over the cut', () => {
    for (const hull of rigid) {
      const { slices, volume, tubeVolume } = bodyOf(hull);
      expect(volume).toBeCloseTo(under(slices, hull.transomHeight!).volume, 9);
      expect(tubeVolume).toBe(0);
      for (const { ring, round, chamber } of slices)
        expect([ring!.length, round, chamber]).toEqual([10, undefined, undefined]);
    }
  });

  it('has the deadrise of its record up to the chine, and its beam at the gunwale', () => {
    for (const hull of rigid) {
      const form = hull.form as OneBow;
      const chine = Math.min(hull.planingBeam, hull.beam) / 2;
      const rise = chine * Math.tan(hull.deadriseDeg * DEGREE);
      const top = hull.transomHeight! + 0.1;
      for (const { x, ring } of bodyOf(hull).slices) {
        const [keelY, keelZ, c, chineZ, b, gunwale] = ring!;
        expect([keelY, keelZ]).toEqual([0, 0]);
        expect(b).toBeCloseTo((hull.beam / 2) * fullness(form, x / ends(hull).bow), 9);
        expect(c).toBeCloseTo(Math.min(chine * fullness(form, x / hull.wettedLength), b!), 9);
        expect(chineZ).toBeCloseTo(rise, 9);
        expect(gunwale).toBeCloseTo(top, 9);
      }
      // From the transom to the end of the bottom: the integrals of 1, x and x^2.
      const moment = (power: number) =>
        bodyOf(hull).slices.reduce((sum, { x, thickness }) => sum + thickness * x ** power, 0);
      for (const power of [0, 1, 2]) {
        expect(moment(power)).toBeCloseTo(hull.wettedLength ** (power + 1) / (power + 1), 9);
      }
    }
  });

  it('never has its chine over nine tenths of the cut, nor outside of its gunwale', () => {
    const [steep] = [{ ...rigid[0]!, deadriseDeg: 60, transomHeight: 0.3 }];
    for (const { ring } of bodyOf(steep).slices) expect(ring![3]).toBeCloseTo(0.27, 9);
    const wide = { ...rigid[0]!, planingBeam: 3 };
    for (const { ring } of bodyOf(wide).slices) expect(ring![2]!).toBeLessThanOrEqual(ring![4]! + 1e-12);
  });

  it('has its edge at the cut for the engine, 0.1 m over it along the gunwale, and at the bow', () => {
    for (const hull of rigid) {
      const { bow } = ends(hull);
      const z = hull.transomHeight!;
      const { edges } = bodyOf(hull);
      expect(places(edges, 'transom')).toEqual([
        [0, -0.25, z],
        [0, 0.25, z],
      ]);
      const gunwale = [0, 0.25, 0.5, 0.75].flatMap((share) => {
        const y = (hull.beam / 2) * fullness(hull.form as OneBow, share);
        return [-y, y].map((each) => [share * bow, each, z + 0.1].map(rounded));
      });
      expect(places(edges, 'gunwale')).toEqual([...gunwale, [bow, 0, z + 0.1].map(rounded)]);
      for (const { radius } of edges) expect(radius).toBe(0);
    }
  });

  it('has people 0.2 m inside of its gunwale, or half way out', () => {
    for (const hull of rigid) {
      const { side } = bodyOf(hull);
      expect(side.outer).toBeCloseTo(hull.beam / 2 - 0.2, 12);
      expect(side.inner).toBe(hull.beam / 4);
    }
    expect(bodyOf({ ...rigid[0]!, beam: 0.3 }).side.outer).toBe(0);
  });
});
