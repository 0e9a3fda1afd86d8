import { describe, expect, it } from 'vitest';
import { equilibrium } from '../../../src/core/load/equilibrium.ts';
import { LEAST_FREEBOARD, TUBES_USED } from '../../../src/core/load/float-margins.ts';
import { weightOf } from '../../../src/core/load/weight-of.ts';
import { FloatLimits, floatVerdict, heaviestFloating, tubeBuoyancy } from '../../../src/core/trip/floating.ts';
import type { Prepared } from '../../../src/core/trip/prepare.ts';
import { standingOf } from '../../../src/core/trip/standing.ts';
import { haven, shipped } from '../../trips.ts';

const inWater = (tube: object | undefined) => ({ trip: { craft: { hull: { tube } } }, density: 1000 }) as never;
/** Two tubes of 0.4 m across and 2 m long. */
const tubes = inWater({ diameter: 0.4, length: 2, spacing: 1 });
const CARRIED = 2 * Math.PI * 0.2 ** 2 * 2 * 1000;

describe('two tubes', () => {
  it('carry the water that they displace', () => {
    expect(tubeBuoyancy(tubes)).toBeCloseTo(CARRIED, 9);
    expect(tubeBuoyancy(inWater(undefined))).toBeUndefined();
  });

  it('are well used to their share and sink beyond 80 % of it', () => {
    const fine = TUBES_USED * CARRIED;
    expect(heaviestFloating(tubes, 'go')).toBeCloseTo(fine, 9);
    expect(heaviestFloating(tubes, 'marginal')).toBeCloseTo(0.8 * CARRIED, 9);
    expect(floatVerdict(tubes, heaviestFloating(tubes, 'go'))).toBe('go');
    expect(floatVerdict(tubes, fine + 0.01)).toBe('marginal');
    expect(floatVerdict(tubes, heaviestFloating(tubes, 'marginal'))).toBe('marginal');
    expect(floatVerdict(tubes, 0.8 * CARRIED + 0.01)).toBe('no-go');
  });
});

describe('the reach of the method', () => {
  it('ends a go at 900 kg, whatever floats', () => {
    expect(heaviestFloating(inWater({ diameter: 0.8, length: 5, spacing: 1 }), 'go')).toBe(900);
    expect(floatVerdict(inWater(undefined), 900)).toBe('go');
    expect(floatVerdict(inWater(undefined), 901)).toBe('marginal');
    expect(heaviestFloating(inWater(undefined), 'marginal')).toBe(Infinity);
  });
});

function opened(name: Parameters<typeof shipped>[0]) {
  const found = standingOf(shipped(name), haven());
  if (!found.ok) throw new Error('the trip can be planned');
  return found.value;
}

describe('the most that may come aboard', () => {
  it('of a boat without lines or tubes goes to the reach of the method, and to a ton where nothing ends it', () => {
    const { prepared, balance } = opened('hire-hull');
    const bare = {
      ...prepared,
      body: undefined,
      trip: {
        ...prepared.trip,
        craft: { ...prepared.trip.craft, hull: { ...prepared.trip.craft.hull, tube: undefined } },
      },
    } as Prepared;
    const limits = new FloatLimits(bare, balance);
    expect(limits.rest).toBeUndefined();
    expect(limits.oneSide).toBeUndefined();
    expect(limits.most('go')).toEqual({ extra: 900 - balance.allUpMass, binds: 'floating' });
    expect(limits.most('marginal')).toEqual({ extra: 1000, binds: 'floating' });
    expect(limits.verdict(900 - balance.allUpMass)).toBe('go');
    expect([900 - balance.allUpMass + 0.1, 1000, 1000.1].map((extra) => limits.verdict(extra))).toEqual([
      'marginal',
      'marginal',
      'no-go',
    ]);
  });

  it('of a boat whose sides are low ends where a hand of freeboard is left, to a quarter of a kilogram', () => {
    const { prepared, balance } = opened('petrol-day');
    const body = prepared.body!;
    // Nothing but the freeboard ends it: no tubes to use up or to crowd to.
    const hull = { ...prepared.trip.craft.hull, tube: undefined };
    const low = {
      ...prepared,
      body: { ...body, tubeVolume: 0 },
      trip: { ...prepared.trip, craft: { ...prepared.trip.craft, hull } },
    } as Prepared;
    const freeboard = (extra: number) => {
      const weight = weightOf(balance);
      const found = equilibrium(low.body!, { ...weight, mass: weight.mass + extra }, low.density);
      return found.state === 'afloat' ? found.freeboard : -1;
    };
    const limits = new FloatLimits(low, balance);
    expect(limits.rest).toMatchObject({ state: 'afloat' });
    for (const [wanted, least] of [
      ['go', LEAST_FREEBOARD],
      ['marginal', 0],
    ] as const) {
      const { extra, binds } = limits.most(wanted);
      expect(binds).toBe('freeboard');
      expect(freeboard(extra)).toBeGreaterThanOrEqual(least);
      expect(freeboard(extra + 0.25)).toBeLessThan(least);
    }
  });
});
