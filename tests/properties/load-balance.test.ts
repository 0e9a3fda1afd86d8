import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { balance, balanceAt, balanceBase } from '../../src/core/load/balance.ts';
import { plateFindings } from '../../src/core/load/plate.ts';
import type { Aboard } from '../../src/core/load/shapes.ts';
import { tubesAtRest, tubesHeeled } from '../../src/core/load/tube-hydrostatics.ts';
import { craft } from '../core/load/made-craft.ts';

const runs = { seed: 21, numRuns: 300 };
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const someone: fc.Arbitrary<Aboard> = fc.record({
  id: fc.uuid(),
  kind: fc.constantFrom('adult' as const, 'child' as const, 'dog' as const, 'gear' as const),
  mass: between(0, 150),
  at: fc.record({ x: between(0, 3), y: between(-0.8, 0.8), z: between(0, 0.8) }),
});
const crew = fc.array(someone, { maxLength: 8 });

describe('balance', () => {
  it('has moments that are linear in every mass', () => {
    fc.assert(
      fc.property(crew, someone, between(0, 25), between(0, 100), (others, one, fuel, extra) => {
        const light = balance(craft(), { items: [...others, one] }, fuel);
        const heavy = balance(craft(), { items: [...others, { ...one, mass: one.mass + extra }] }, fuel);
        expect(heavy.allUpMass - light.allUpMass).toBeCloseTo(extra, 9);
        expect(heavy.allUpMass * heavy.lcg - light.allUpMass * light.lcg).toBeCloseTo(extra * one.at!.x, 8);
        expect(heavy.allUpMass * heavy.lateral - light.allUpMass * light.lateral).toBeCloseTo(extra * one.at!.y, 8);
        expect(heavy.allUpMass * heavy.vcg - light.allUpMass * light.vcg).toBeCloseTo(extra * one.at!.z!, 8);
      }),
      runs,
    );
  });

  it('has moments that are linear in the fuel', () => {
    fc.assert(
      fc.property(crew, between(0, 25), (items, fuel) => {
        const base = balanceBase(craft(), { items });
        const moment = (mass: number) => balanceAt(base, mass).allUpMass * balanceAt(base, mass).lcg;
        expect(moment(fuel)).toBeCloseTo((moment(0) + moment(2 * fuel)) / 2, 8);
      }),
      runs,
    );
  });

  it('lies mirrored when everybody changes sides', () => {
    fc.assert(
      fc.property(crew, (items) => {
        const boat = craft({ store: { kind: 'tank', tanks: [] } });
        const mirrored = items.map((item) => ({ ...item, at: { ...item.at!, y: -item.at!.y } }));
        expect(balance(boat, { items: mirrored }, 0).lateral).toBeCloseTo(-balance(boat, { items }, 0).lateral, 12);
      }),
      runs,
    );
  });

  it('never counts less against an unknown plate than against a European or an American one', () => {
    fc.assert(
      fc.property(crew, between(0, 25), between(1000, 20000), (items, fuel, ratedPower) => {
        const counted = (scheme: 'eu' | 'us' | 'unknown') =>
          balance(craft({ plate: { scheme }, ratedPower }), { items }, fuel).counted;
        expect(counted('unknown')).toBeGreaterThanOrEqual(counted('eu'));
        expect(counted('unknown')).toBeGreaterThanOrEqual(counted('us'));
      }),
      runs,
    );
  });

  it('leans at least as much for a seat nobody gave as for any given seat', () => {
    fc.assert(
      fc.property(crew, between(40, 120), (items, mass) => {
        const boat = craft({ store: { kind: 'tank', tanks: [] } });
        const one: Aboard = { id: 'one', kind: 'adult', mass };
        const unknown = balance(boat, { items: [...items, one] }, 0);
        for (const station of ['helm', 'aft', 'bow']) {
          const seated = balance(boat, { items: [...items, { ...one, station }] }, 0);
          expect(Math.abs(unknown.lateral)).toBeGreaterThanOrEqual(Math.abs(seated.lateral) - 1e-12);
          expect(unknown.lcg).toBeLessThanOrEqual(seated.lcg + 1e-12);
        }
      }),
      runs,
    );
  });
});

describe('plateFindings', () => {
  it('stay found when more comes aboard', () => {
    fc.assert(
      fc.property(crew, someone, between(50, 600), (items, more, maxLoad) => {
        const boat = craft({ plate: { scheme: 'eu', maxLoad, persons: 3 } });
        const before = plateFindings(boat, balance(boat, { items }, 5)).map(({ over }) => over);
        const after = plateFindings(boat, balance(boat, { items: [...items, more] }, 5)).map(({ over }) => over);
        expect(after).toEqual(expect.arrayContaining(before));
      }),
      runs,
    );
  });
});

describe('two tubes', () => {
  const tubes = fc.record({ diameter: between(0.3, 0.5), spacing: between(0.8, 1.6), length: between(2, 4.5) });

  it('sink deeper and heel further the more they carry and the farther out it sits', () => {
    fc.assert(
      fc.property(tubes, between(50, 250), between(1, 50), between(0.01, 0.2), (twin, mass, more, arm) => {
        const afloat = { mass, centreHeight: 0.4, density: 1025 };
        const light = tubesAtRest(twin, afloat);
        const heavy = tubesAtRest(twin, { ...afloat, mass: mass + more });
        if (!light || !heavy) return;
        expect(heavy.draft).toBeGreaterThan(light.draft);
        const near = tubesHeeled(twin, afloat, mass * arm);
        const far = tubesHeeled(twin, afloat, mass * arm * 1.5);
        if (near.state !== 'afloat' || far.state !== 'afloat') return;
        expect(far.heelDeg).toBeGreaterThan(near.heelDeg);
        expect(far.loadedFreeboard).toBeLessThan(near.loadedFreeboard);
      }),
      runs,
    );
  });
});
