import { describe, expect, it } from 'vitest';
import type { Craft, Hull } from '../../../src/core/craft/shapes.ts';
import { craftFrom, hulls } from '../../../src/core/files/catalogue.ts';
import { balance } from '../../../src/core/load/balance.ts';
import { equilibrium, type Floating, stiffness } from '../../../src/core/load/equilibrium.ts';
import { type FloatBody, floatBody } from '../../../src/core/load/float-body.ts';
import { type Float, floatOf } from '../../../src/core/load/float-of.ts';
import { tubesAtRest } from '../../../src/core/load/tube-hydrostatics.ts';
import { DEGREE } from '../../../src/core/units/convert.ts';
import { aboard, craft as made } from './made-craft.ts';

const SEA = 1025;

/** A box without taper: length, breadth, depth; its keel line from x = 0. */
function box(length: number, breadth: number, depth: number): FloatBody {
  const half = breadth / 2;
  const ring = [half, 0, half, depth, -half, depth, -half, 0];
  // Two-point Gauss slices in ten pieces: exact for moments of a straight box.
  const slices = Array.from({ length: 10 }, (_, i) => i).flatMap((i) =>
    [-1, 1].map((side) => ({
      x: ((i + 0.5 + side / (2 * Math.sqrt(3))) * length) / 10,
      thickness: length / 20,
      ring,
    })),
  );
  const edges = [0, length].flatMap((x) =>
    [-half, half].map((y) => ({ part: 'gunwale' as const, x, y, z: depth, radius: 0 })),
  );
  const volume = length * breadth * depth;
  return {
    slices,
    edges,
    symmetric: true,
    middle: length / 2,
    tubeVolume: 0,
    volume,
    side: { outer: half, inner: half },
  };
}

function afloat(floating: Floating) {
  if (floating.state !== 'afloat') throw new Error(`it should float but ${floating.state}`);
  return floating;
}

function floatingOf(craft: Craft, items: readonly ReturnType<typeof aboard>[], storeMass = 0): Float {
  const found = floatOf(craft, { items }, { storeMass, density: SEA });
  if (typeof found === 'string') throw new Error(found);
  return found;
}

/** Barge 4 x 1.6 x 0.5 m: draft, metacentric heights and angles by the formulas of any textbook. */
describe('equilibrium of a box', () => {
  const barge = box(4, 1.6, 0.5);
  const mass = SEA * 4 * 1.6 * 0.2;
  const upright = { mass, x: 2, y: 0, z: 0.45 };

  it('floats at the draft its weight displaces, level, with the freeboard left', () => {
    const rest = afloat(equilibrium(barge, upright, SEA));
    expect(rest.draft).toBeCloseTo(0.2, 6);
    expect(rest.freeboard).toBeCloseTo(0.3, 6);
    expect(rest.trimDeg).toBeCloseTo(0, 6);
    expect(rest.heelDeg).toBe(0);
  });

  it('has BM = B^2 / 12 T and L^2 / 12 T', () => {
    const rest = afloat(equilibrium(barge, upright, SEA));
    const { across, along, waterplane } = stiffness(barge.slices, barge.middle, upright, rest.surface);
    expect(across).toBeCloseTo(0.1 + 1.6 ** 2 / (12 * 0.2) - 0.45, 6);
    expect(along).toBeCloseTo(0.1 + 4 ** 2 / (12 * 0.2) - 0.45, 6);
    expect(waterplane).toBeCloseTo(6.4, 6);
  });

  it('heels under an offset weight as the wall-sided formula says', () => {
    // GZ = sin(heel) (GM + BM tan^2(heel) / 2) holds for a box until an edge or the bilge crosses the water.
    const offset = 0.06;
    const { heelDeg } = afloat(equilibrium(barge, { ...upright, y: offset }, SEA));
    const bm = 1.6 ** 2 / (12 * 0.2);
    const gm = 0.1 + bm - 0.45;
    const heel = heelDeg * DEGREE;
    expect(heelDeg).toBeGreaterThan(3);
    expect(Math.sin(heel) * (gm + (bm * Math.tan(heel) ** 2) / 2)).toBeCloseTo(offset * Math.cos(heel), 6);
  });

  it('trims by the stern as far as the same formula lengthwise says', () => {
    const { trimDeg } = afloat(equilibrium(barge, { ...upright, x: 1.8 }, SEA));
    const bm = 4 ** 2 / (12 * 0.2);
    const gm = 0.1 + bm - 0.45;
    const trim = trimDeg * DEGREE;
    expect(trimDeg).toBeGreaterThan(1);
    expect(Math.sin(trim) * (gm + (bm * Math.tan(trim) ** 2) / 2)).toBeCloseTo(0.2 * Math.cos(trim), 5);
  });

  it('says when nothing carries the weight, when it turns over, and when it does not stay upright', () => {
    expect(equilibrium(barge, { ...upright, mass: SEA * 3.3 }, SEA).state).toBe('sinks');
    expect(equilibrium(barge, { ...upright, y: 0.75 }, SEA).state).toBe('capsizes');
    const topHeavy = equilibrium(barge, { ...upright, z: 1.25 }, SEA);
    expect(topHeavy.state === 'afloat' ? Math.abs(topHeavy.heelDeg) : 90).toBeGreaterThan(5);
  });
});

/** Two cylinders against the closed form of the segment and BM = I / V. */
describe('equilibrium of two tubes', () => {
  const tube = { diameter: 0.4, spacing: 1.1, length: 3 };
  const hull: Hull = { ...made().hull, tube };
  const body = floatBody(hull) as FloatBody;
  const middle = body.slices.filter(({ round }) => round).reduce((sum, s) => sum + s.x * s.thickness, 0) / 6;
  const weight = { mass: 300, x: middle, y: 0, z: 0.45 };

  it('agrees with the circular segment in draft, waterplane and both metacentric heights', () => {
    const closed = tubesAtRest(tube, { mass: 300, centreHeight: 0.45, density: SEA })!;
    const rest = afloat(equilibrium(body, weight, SEA));
    const stiff = stiffness(body.slices, body.middle, weight, rest.surface);
    expect(rest.draft).toBeCloseTo(closed.draft, 6);
    expect(rest.freeboard).toBeCloseTo(closed.freeboard, 6);
    expect(stiff.across).toBeCloseTo(closed.metacentricHeight, 5);
    expect(stiff.along).toBeCloseTo(closed.longitudinalMetacentricHeight, 4);
    expect(stiff.waterplane).toBeCloseTo(closed.waterplane, 6);
  });

  it('is half immersed by rho L pi r^2', () => {
    const rest = afloat(equilibrium(body, { ...weight, mass: SEA * 3 * Math.PI * 0.04 }, SEA));
    expect(rest.draft).toBeCloseTo(0.2, 6);
  });
});

describe('floatOf', () => {
  const boat = () => craftFrom('catamaran-3-6', 'petrol-15hp-4s', 'tank-25');

  it('shows the larger of the simple and the exact heel', () => {
    const float = floatingOf(boat(), [aboard('a', 90, { at: { x: 1.2, y: 0.42, z: 0.6 } })]);
    expect(float.heelDeg).toBe(Math.max(float.simpleHeelDeg!, float.exactHeelDeg!));
    expect(float.heelDeg).toBeGreaterThan(1);
    expect(float.simpleHeelDeg! / float.exactHeelDeg!).toBeCloseTo(1, 1);
  });

  it('tells stiffness at the trim the boat takes, upright, wherever those aboard sit', () => {
    const at = (y: number) => floatingOf(boat(), [aboard('a', 90, { at: { x: 0.3, y, z: 0.6 } })]);
    const [amid, aside] = [at(0), at(0.3)];
    const { trimDeg, surface } = afloat(amid.rest);
    expect(trimDeg).toBeGreaterThan(1);
    const body = floatBody(boat().hull) as FloatBody;
    const { allUpMass, lcg, vcg } = balance(boat(), { items: [aboard('a', 90, { at: { x: 0.3, y: 0, z: 0.6 } })] }, 0);
    const weight = { mass: allUpMass, x: lcg, y: 0, z: vcg };
    const { across, along, waterplane } = stiffness(body.slices, body.middle, weight, surface);
    for (const float of [amid, aside]) {
      expect(float.metacentricHeight).toBeCloseTo(across, 9);
      expect(float.longitudinalMetacentricHeight).toBeCloseTo(along, 9);
      expect(float.massPerMetre).toBeCloseTo(waterplane * SEA, 6);
    }
    expect(amid.simpleHeelDeg).toBe(0);
  });

  it('sends everybody to the side to which the rest of the load leans', () => {
    const crowded = (y: number) => {
      const gear = aboard('g', 40, { kind: 'gear', at: { x: 1.2, y, z: 0.3 } });
      return afloat(floatingOf(boat(), [aboard('a', 70, { at: { x: 1.2, y: 0, z: 0.5 } }), gear]).crowded!).heelDeg;
    };
    expect(crowded(0.3)).toBeGreaterThan(0);
    expect(crowded(-0.3)).toBeCloseTo(-crowded(0.3), 6);
    expect(crowded(0.3)).toBeGreaterThan(crowded(0));
  });

  it('loses freeboard and heels when everybody goes to one side', () => {
    const float = floatingOf(boat(), [
      aboard('a', 85, { station: 'helm' }),
      aboard('b', 85, { station: 'seat-fore-port' }),
    ]);
    const rest = afloat(float.rest);
    const crowded = afloat(float.crowded!);
    expect(crowded.freeboard).toBeLessThan(rest.freeboard);
    expect(Math.abs(crowded.heelDeg)).toBeGreaterThan(Math.abs(rest.heelDeg));
  });

  it('carries on one chamber fewer, and swamped, what the tubes left displace', () => {
    const float = floatingOf(boat(), [aboard('a', 85, { station: 'helm' })]);
    const { diameter, length } = boat().hull.tube!;
    const whole = 2 * SEA * Math.PI * (diameter / 2) ** 2 * length;
    expect(float.swamped!.margin).toBeCloseTo(whole - float.mass, 6);
    expect(float.chamberLost!.margin).toBeCloseTo(0.75 * whole - float.mass, 6);
  });

  it('knows nothing of foam in a rigid boat, nor of a boat whose record lacks tubes or transom', () => {
    const rigid = craftFrom('rigid-v-4-2', 'petrol-15hp-4s', 'tank-25');
    const float = floatingOf(rigid, [aboard('a', 85, { station: 'helm' })]);
    expect(float.swamped).toBeUndefined();
    expect(float.chamberLost).toBeUndefined();
    const asked = { storeMass: 0, density: SEA };
    const { transomHeight: _cut, ...bare } = rigid.hull;
    expect(floatOf({ ...rigid, hull: bare }, { items: [] }, asked)).toBe('transom-height');
    expect(floatOf(made(), { items: [] }, asked)).toBe('tubes');
  });

  it('says that a boat goes down under far too much', () => {
    const crowd = Array.from({ length: 24 }, (_, i) => aboard(`p${i}`, 110, { station: 'seat-mid' }));
    expect(floatingOf(boat(), crowd).rest.state).toBe('sinks');
  });
});

describe('a lost chamber', () => {
  it('lets the boat float on the other three once everybody has gone to the far corner', () => {
    const boat = craftFrom('catamaran-4-3', 'electric-0-55kw', 'battery-1-0-nmc');
    const { floating, margin } = floatingOf(boat, [
      aboard('a', 80, { station: 'helm' }),
      aboard('b', 80, { station: 'seat-fore-port' }),
    ]).chamberLost!;
    expect(margin).toBeGreaterThan(0);
    expect(afloat(floating).draft).toBeGreaterThan(0.1);
  });

  it('goes under at that corner with a heavy engine and nobody to move', () => {
    const boat = craftFrom('catamaran-3-6', 'petrol-20hp-4s', 'tank-25');
    const { chamber, floating } = floatingOf(boat, [aboard('a', 80, { kind: 'gear', station: 'gear-aft' })])
      .chamberLost!;
    expect(chamber).toMatch(/-aft$/);
    expect(floating.state).not.toBe('afloat');
  });
});

describe('every shipped hull', () => {
  it.each(hulls.map(({ id, typicalPlate }) => [id, typicalPlate] as const))(
    '%s floats with its usual plate load, stern a little down and the edge clear of the water',
    (id, plate) => {
      const craft = craftFrom(id, 'petrol-15hp-4s', 'tank-25');
      const load = aboard('all', plate.maxLoad! * 0.8, { at: { x: 0.42 * craft.hull.wettedLength, y: 0, z: 0.5 } });
      const rest = afloat(floatingOf(craft, [load]).rest);
      expect(rest.freeboard).toBeGreaterThan(0.1);
      expect(rest.trimDeg).toBeGreaterThan(-1);
      expect(rest.trimDeg).toBeLessThan(4);
    },
  );
});
