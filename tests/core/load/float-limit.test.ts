import { describe, expect, it } from 'vitest';
import type { Craft } from '../../../src/core/craft/shapes.ts';
import { craftFrom } from '../../../src/core/files/catalogue.ts';
import { balance } from '../../../src/core/load/balance.ts';
import { crowdedTo } from '../../../src/core/load/crowded.ts';
import { equilibrium, type Floating, stiffness, type Weight } from '../../../src/core/load/equilibrium.ts';
import { type Chamber, type FloatBody, floatBody, tubesAlone } from '../../../src/core/load/float-body.ts';
import { heaviestAtFreeboard, sideTestMass, spareOnOneSide } from '../../../src/core/load/float-limit.ts';
import { type Float, floatOf } from '../../../src/core/load/float-of.ts';
import type { Aboard } from '../../../src/core/load/shapes.ts';
import { sidewards } from '../../../src/core/load/sidewards.ts';
import { weightOf } from '../../../src/core/load/weight-of.ts';
import { DEGREE } from '../../../src/core/units/convert.ts';
import { aboard } from './made-craft.ts';

const SEA = 1025;

/** A barge 4 x 1.6 x 0.5 m. */
const barge: FloatBody = {
  slices: Array.from({ length: 8 }, (_, i) => ({
    x: 0.25 + i * 0.5,
    thickness: 0.5,
    ring: [0.8, 0, 0.8, 0.5, -0.8, 0.5, -0.8, 0],
  })),
  edges: [0, 4].flatMap((x) => [-0.8, 0.8].map((y) => ({ part: 'gunwale' as const, x, y, z: 0.5, radius: 0 }))),
  symmetric: true,
  middle: 2,
  tubeVolume: 0,
  volume: 3.2,
  side: { outer: 0.7, inner: 0.3 },
};
const amid = (mass: number): Weight => ({ mass, x: 2, y: 0, z: 0.3 });
const dry = (floating: Floating) => floating.state === 'afloat' && floating.freeboard >= 0;

describe('the heaviest with a freeboard', () => {
  it('on a barge displaces what is left of its depth, to a quarter of a kilogram', () => {
    for (const freeboard of [0.1, 0.3]) {
      const right = SEA * 4 * 1.6 * (0.5 - freeboard);
      for (const mass of [200, 800, 1600]) {
        const found = heaviestAtFreeboard(barge, amid(mass), SEA, freeboard);
        // No small boat is asked for more than 2000 kg.
        expect(found).toBeLessThanOrEqual(Math.min(right, 2000));
        expect(found).toBeGreaterThan(Math.min(right, 2000) - 0.25);
      }
    }
  });

  it('is nothing where not even an empty boat has it', () => {
    expect(heaviestAtFreeboard(barge, amid(300), SEA, 0.6)).toBeLessThan(0.25);
  });
});

describe('the mass along one side', () => {
  it('leaves the edge dry, and half a kilogram more does not', () => {
    for (const mass of [150, 400]) {
      const side = sideTestMass(barge, amid(mass), SEA);
      const with_ = (added: number) => {
        const whole = mass + added;
        return equilibrium(barge, { ...amid(whole), y: (added * 0.7) / whole }, SEA);
      };
      expect(side).toBeGreaterThan(50);
      expect([dry(with_(side)), dry(with_(side + 0.5))]).toEqual([true, false]);
    }
  });
});

describe('everybody on one side', () => {
  it('sits half way between the outer and the inner place, where the rest leans already', () => {
    for (const rest of [-40, 0, 40]) {
      const y = (rest + (rest < 0 ? -1 : 1) * 150 * 0.5) / 600;
      const found = crowdedTo(barge, amid(600), SEA, { mass: 150, rest });
      expect(found).toEqual(equilibrium(barge, { ...amid(600), y }, SEA));
    }
  });

  it('leaves as much more to come as keeps the edge dry, and sends ashore what does not', () => {
    for (const [people, rest] of [
      [150, 10],
      [150, -10],
      [900, 0],
    ] as const) {
      const mass = 400 + people;
      const spare = spareOnOneSide(barge, amid(mass), SEA, { people, rest });
      const holds = (extra: number) => dry(crowdedTo(barge, amid(mass + extra), SEA, { mass: people + extra, rest }));
      expect([holds(spare), holds(spare + 0.5)]).toEqual([true, false]);
      expect(spare < 0).toBe(people === 900);
    }
  });

  it('sends nobody ashore who is not aboard', () => {
    // So leaning by itself that nothing helps.
    expect(spareOnOneSide(barge, amid(600), SEA, { people: 100, rest: 400 })).toBeCloseTo(-100, 0);
  });
});

const catamaran = craftFrom('catamaran-3-6', 'petrol-15hp-4s', 'tank-25');
const crew: readonly Aboard[] = [
  aboard('a', 90, { at: { x: 1.1, y: 0.5, z: 0.5 } }),
  aboard('b', 60, { at: { x: 0.7, y: 0.2, z: 0.5 } }),
  aboard('c', 30, { kind: 'child', at: { x: 2, y: -0.1, z: 0.5 } }),
  aboard('d', 25, { kind: 'gear', at: { x: 2.4, y: 0.3, z: 0.2 } }),
];
const floatFor = (items: readonly Aboard[], craft: Craft = catamaran): Float => {
  const found = floatOf(craft, { items }, { storeMass: 12, density: SEA });
  if (typeof found === 'string') throw new Error(found);
  return found;
};
const body = floatBody(catamaran.hull) as FloatBody;

it('the moment sidewards is that of all but the people', () => {
  const now = balance(catamaran, { items: crew }, 12);
  const { people, rest } = sidewards(catamaran, { items: crew }, now);
  expect(people).toBe(180);
  // Hull, engine and tank lie on the middle line.
  expect(rest).toBeCloseTo(25 * 0.3, 9);
});

describe('how a loaded boat floats', () => {
  const weight = weightOf(balance(catamaran, { items: crew }, 12));

  it('is told with what it carries and what is left', () => {
    const float = floatFor(crew);
    expect(float.mass).toBe(weight.mass);
    expect(float.buoyancy).toBeCloseTo(body.volume * SEA, 9);
    expect(float.reserve).toBeCloseTo(body.volume * SEA - weight.mass, 9);
    expect(float.tubesUsed).toBeCloseTo(weight.mass / (body.tubeVolume * SEA), 12);
    expect(float.swamped!.margin).toBeCloseTo(body.tubeVolume * SEA - weight.mass, 6);
    expect(float.swamped!.floating).toEqual(equilibrium(tubesAlone(body), weight, SEA));
  });

  it('heels by the larger of two sums, to the side where the weight is', () => {
    for (const side of [-1, 1]) {
      const float = floatFor([aboard('a', 90, { at: { x: 1.1, y: side * 0.5, z: 0.5 } })]);
      const [simple, exact] = [float.simpleHeelDeg!, float.exactHeelDeg!];
      expect([Math.sign(simple), Math.sign(exact)]).toEqual([side, side]);
      expect(Math.abs(float.heelDeg!)).toBe(Math.max(Math.abs(simple), Math.abs(exact)));
      expect(Math.sign(float.heelDeg!)).toBe(side);
      const now = weightOf(
        balance(catamaran, { items: [aboard('a', 90, { at: { x: 1.1, y: side * 0.5, z: 0.5 } })] }, 12),
      );
      expect(Math.tan(simple * DEGREE)).toBeCloseTo(now.y / float.metacentricHeight!, 9);
    }
  });

  it('is as stiff as its waterplane upright says, level or not', () => {
    const float = floatFor(crew);
    const upright = equilibrium(body, { ...weight, y: 0 }, SEA);
    if (upright.state !== 'afloat') throw new Error('lost');
    const { across, along, waterplane } = stiffness(body.slices, body.middle, { ...weight, y: 0 }, upright.surface);
    expect(float.metacentricHeight).toBeCloseTo(across, 9);
    expect(float.longitudinalMetacentricHeight).toBeCloseTo(along, 9);
    expect(float.massPerMetre).toBeCloseTo(SEA * waterplane, 6);
  });

  it('heels by nothing with nobody out of the middle', () => {
    expect(floatFor([aboard('a', 80, { at: { x: 1, y: 0, z: 0.5 } })]).heelDeg).toBe(0);
  });

  it('falls over where nothing rights it', () => {
    const high = (y: number) => floatFor([aboard('a', 300, { at: { x: 1.3, y, z: 9 } })]);
    for (const side of [-1, 1]) {
      const float = high(side * 0.1);
      expect(float.metacentricHeight!).toBeLessThan(0);
      expect(float.simpleHeelDeg).toBe(side * 90);
      if (float.rest.state !== 'afloat') expect([float.exactHeelDeg, float.heelDeg]).toEqual([undefined, undefined]);
    }
  });

  it('under more than it displaces is told as sinking, with no angles', () => {
    const float = floatFor([aboard('a', 3000, { at: { x: 1.3, y: 0.1, z: 0.3 } })]);
    expect(float.rest.state).toBe('sinks');
    expect(float.reserve).toBeLessThan(0);
    expect([float.metacentricHeight, float.simpleHeelDeg, float.exactHeelDeg, float.heelDeg]).toEqual(
      Array(4).fill(undefined),
    );
  });

  it('with everybody on the worse side is what the rest lets them do', () => {
    const float = floatFor(crew);
    expect(float.crowded).toEqual(crowdedTo(body, weight, SEA, { mass: 180, rest: 7.5 }));
    expect(floatFor([aboard('d', 25, { kind: 'gear' })]).crowded).toBeUndefined();
    expect(floatFor([aboard('c', 0.5, { kind: 'child' })]).crowded).toBeDefined();
  });

  it('on the tubes but for one chamber is told for the worst, everybody gone to the far corner from it', () => {
    // Of everything but the people: moments along and to starboard.
    const fixed = crew
      .filter(({ kind }) => kind !== 'gear')
      .reduce((sum, { mass, at }) => ({ x: sum.x - mass * at!.x, y: sum.y - mass * at!.y }), {
        x: weight.x * weight.mass,
        y: weight.y * weight.mass,
      });
    const { wettedLength } = catamaran.hull;
    const lost = (chamber: Chamber, side: number, share: number) => {
      const moved = {
        ...weight,
        x: (fixed.x + 180 * share * wettedLength) / weight.mass,
        y: (fixed.y + 180 * side * body.side.inner) / weight.mass,
      };
      return { chamber, floating: equilibrium(tubesAlone(body, chamber), moved, SEA) };
    };
    const all = [
      lost('port-aft', 1, 0.6),
      lost('port-fore', 1, 0.25),
      lost('starboard-aft', -1, 0.6),
      lost('starboard-fore', -1, 0.25),
    ];
    const bad = ({ floating }: (typeof all)[number]) =>
      floating.state === 'afloat' ? Math.abs(floating.heelDeg) + Math.abs(floating.trimDeg) : Infinity;
    const worst = all.reduce((a, b) => (bad(b) > bad(a) ? b : a));
    const { chamberLost } = floatFor(crew);
    expect(chamberLost).toMatchObject(worst);
    expect(chamberLost!.margin).toBeCloseTo(0.75 * body.tubeVolume * SEA - weight.mass, 6);
  });

  it('has no chambers, and is not known swamped, without tubes', () => {
    const rigid = floatFor([aboard('a', 80)], craftFrom('rigid-v-4-2', 'petrol-15hp-4s', 'tank-25'));
    expect([rigid.tubesUsed, rigid.chamberLost, rigid.swamped]).toEqual([undefined, undefined, undefined]);
  });
});
