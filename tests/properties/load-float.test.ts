import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { craftFrom, hulls } from '../../src/core/files/catalogue.ts';
import { equilibrium } from '../../src/core/load/equilibrium.ts';
import { floatBody } from '../../src/core/load/float-body.ts';
import { type Float, floatOf } from '../../src/core/load/float-of.ts';
import type { Aboard } from '../../src/core/load/shapes.ts';

const runs = { seed: 51, numRuns: 200 };
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const boats = fc.constantFrom(...hulls.map(({ id }) => craftFrom(id, 'petrol-15hp-4s', 'tank-25')));
/** Shares of length and beam, so that they suit any boat. */
const crew = fc.array(fc.record({ mass: between(20, 95), along: between(0.15, 0.7), across: between(-0.25, 0.25) }), {
  minLength: 1,
  maxLength: 4,
});
type Crew = readonly { readonly mass: number; readonly along: number; readonly across: number }[];
type Boat = ReturnType<typeof craftFrom>;

function items({ hull }: Boat, all: Crew): Aboard[] {
  return all.map(({ mass, along, across }, i) => ({
    id: `p${i}`,
    kind: 'adult',
    mass,
    at: { x: along * hull.wettedLength, y: across * hull.beam, z: 0.5 },
  }));
}

function float(boat: Boat, all: Crew): Float {
  const found = floatOf(boat, { items: items(boat, all) }, { storeMass: 8, density: 1025 });
  if (typeof found === 'string') throw new Error(found);
  return found;
}

describe('floatOf', () => {
  it('heels to the other side, and no differently, when everybody changes sides', () => {
    fc.assert(
      fc.property(boats, crew, (boat, all) => {
        const here = float(boat, all).rest;
        const there = float(
          boat,
          all.map((one) => ({ ...one, across: -one.across })),
        ).rest;
        expect(there.state).toBe(here.state);
        if (here.state !== 'afloat' || there.state !== 'afloat') return;
        expect(there.heelDeg).toBeCloseTo(-here.heelDeg, 4);
        expect(there.trimDeg).toBeCloseTo(here.trimDeg, 4);
        expect(there.freeboard).toBeCloseTo(here.freeboard, 5);
      }),
      runs,
    );
  });

  it('never raises the bow when a weight moves forward', () => {
    fc.assert(
      fc.property(boats, crew, between(0.01, 0.2), (boat, all, step) => {
        const before = float(boat, all).rest;
        const after = float(boat, [{ ...all[0]!, along: all[0]!.along + step }, ...all.slice(1)]).rest;
        if (before.state !== 'afloat' || after.state !== 'afloat') return;
        expect(after.trimDeg).toBeLessThanOrEqual(before.trimDeg + 1e-6);
      }),
      runs,
    );
  });

  it('has less freeboard the heavier it is, with the balance kept', () => {
    fc.assert(
      fc.property(boats, between(0, 300), between(1, 100), between(0.3, 0.45), (boat, load, more, along) => {
        const body = floatBody(boat.hull);
        if (typeof body === 'string') throw new Error(body);
        const at = { x: along * boat.hull.wettedLength, y: 0, z: 0.5 };
        const light = equilibrium(body, { mass: boat.hull.mass + load, ...at }, 1025);
        const heavy = equilibrium(body, { mass: boat.hull.mass + load + more, ...at }, 1025);
        if (light.state !== 'afloat' || heavy.state !== 'afloat') return;
        expect(heavy.freeboard).toBeLessThan(light.freeboard + 1e-6);
      }),
      runs,
    );
  });

  it('has less reserve the heavier the crew', () => {
    fc.assert(
      fc.property(boats, crew, between(1.01, 1.3), (boat, all, heavier) => {
        const heavy = all.map((one) => ({ ...one, mass: one.mass * heavier }));
        expect(float(boat, heavy).reserve).toBeLessThan(float(boat, all).reserve);
      }),
      runs,
    );
  });

  it('has finite figures or a named end', () => {
    fc.assert(
      fc.property(
        boats,
        fc.array(fc.record({ mass: between(0, 500), along: between(-1, 2), across: between(-1, 1) }), { maxLength: 8 }),
        (boat, all) => {
          const { rest, crowded, chamberLost, swamped } = float(boat, all);
          for (const one of [rest, crowded, chamberLost?.floating, swamped?.floating]) {
            if (one?.state !== 'afloat') continue;
            expect(Number.isFinite(one.draft + one.trimDeg + one.heelDeg + one.freeboard)).toBe(true);
          }
        },
      ),
      runs,
    );
  });
});
