import { describe, expect, it } from 'vitest';
import { crowdedTo } from '../../../src/core/load/crowded.ts';
import { equilibrium, type Floating } from '../../../src/core/load/equilibrium.ts';
import { LEAST_FREEBOARD, TUBES_USED } from '../../../src/core/load/float-margins.ts';
import { placed } from '../../../src/core/load/placing.ts';
import { sidewards } from '../../../src/core/load/sidewards.ts';
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

/** A shipped boat whose sides lie so many times as far out, with so much more aboard. */
function wider(name: Parameters<typeof shipped>[0], times: number, more = 0) {
  const { prepared, balance } = opened(name);
  const { side } = prepared.body!;
  const body = { ...prepared.body!, side: { outer: times * side.outer, inner: times * side.inner } };
  return { prepared: { ...prepared, body } as Prepared, balance: { ...balance, allUpMass: balance.allUpMass + more } };
}

describe('everybody on one side', () => {
  const { prepared, balance } = opened('petrol-day');

  it('is the weight of the people, midway between tube and floor, and all else where it lies', () => {
    const items = placed(prepared.trip.craft.hull, prepared.trip.load).items;
    const people = items.filter(({ kind }) => kind === 'adult' || kind === 'child');
    const mass = people.reduce((sum, item) => sum + item.mass, 0);
    const rest = balance.lateral * balance.allUpMass - people.reduce((sum, item) => sum + item.mass * item.place.y, 0);
    const { outer, inner } = prepared.body!.side;
    const crowd = (mass * (outer + inner)) / 2;
    const weight = weightOf(balance);
    const floatingAt = (y: number) => equilibrium(prepared.body!, { ...weight, y }, prepared.density);
    const limits = new FloatLimits(prepared, balance);
    expect(limits.rest).toEqual(floatingAt(weight.y));
    // On the side to which the rest leans already.
    const y = (rest + (rest < 0 ? -crowd : crowd)) / weight.mass;
    expect(limits.oneSide).toEqual(floatingAt(y));
    const { rest: level, oneSide } = limits;
    if (level?.state !== 'afloat' || oneSide?.state !== 'afloat') throw new Error('afloat');
    expect(oneSide.freeboard).toBeLessThan(level.freeboard);
    expect(Math.abs(oneSide.heelDeg)).toBeGreaterThan(Math.abs(level.heelDeg));
  });

  it('is not told of a boat that nobody is aboard', () => {
    const trip = { ...prepared.trip, load: { ...prepared.trip.load, items: [] } };
    const empty = standingOf(trip, haven());
    if (!empty.ok) throw new Error('the trip can be planned');
    const limits = new FloatLimits(empty.value.prepared, empty.value.balance);
    expect(limits.oneSide).toBeUndefined();
    expect(limits.rest).toMatchObject({ state: 'afloat' });
    expect(limits.most('go').binds).not.toBe('stability');
  });

  it('is that of the mass asked about, the first of it people: half a kilogram of somebody as well', () => {
    const { trip } = prepared;
    const [one] = trip.load.items;
    const load = { ...trip.load, items: [{ ...one!, kind: 'adult' as const, mass: 0.5 }] };
    const light = standingOf({ ...trip, load }, haven());
    if (!light.ok) throw new Error('the trip can be planned');
    expect(new FloatLimits(light.value.prepared, light.value.balance).oneSide).toMatchObject({ state: 'afloat' });
  });
});

describe('the most that may come aboard, beside looking at every half kilogram', () => {
  const boats = [
    ['petrol-day', 1, 0],
    ['petrol-day', 1.5, 0],
    ['petrol-day', 2, 0],
    ['petrol-day', 3, 0],
    ['petrol-day', 1, 260],
    ['petrol-day', 1.5, 320],
    ['petrol-day', 8, 0],
    ['hire-hull', 1, 0],
    ['hire-hull', 1, 150],
    ['hire-hull', 1, 300],
    ['hire-hull', 1, 420],
    ['hire-hull', 1, 700],
    ['electric-tender', 1, 0],
    ['electric-tender', 1.5, 0],
    ['electric-tender', 2, 0],
    ['electric-tender', 3, 60],
  ] as const;

  it.each(boats)('%s, sides %s times as far out and %s kg heavier', (name, times, more) => {
    const { prepared, balance } = wider(name, times, more);
    const { trip, body, density } = prepared;
    const weight = weightOf(balance);
    const { people, rest } = sidewards(trip.craft, trip.load, balance);
    const over = (floating: Floating, least: number) => floating.state === 'afloat' && floating.freeboard >= least;
    const level = (extra: number) => equilibrium(body!, { ...weight, mass: weight.mass + extra }, density);
    const crowded = (extra: number) => {
      const mass = weight.mass + extra;
      return crowdedTo(body!, { ...weight, mass }, density, { mass: people + extra, rest });
    };
    const tubed = body!.tubeVolume > 0;
    const holds = (extra: number, wanted: 'go' | 'marginal') =>
      balance.allUpMass + extra <= heaviestFloating(prepared, wanted) &&
      over(level(extra), wanted === 'go' ? LEAST_FREEBOARD : 0) &&
      (wanted === 'marginal' || !tubed || people + extra <= 0 || over(crowded(extra), 0));
    const limits = new FloatLimits(prepared, balance);
    for (const wanted of ['go', 'marginal'] as const) {
      const { extra, binds } = limits.most(wanted);
      const least = -balance.peopleAndGear;
      let most = least;
      while (most + 0.5 <= 1000 && holds(most + 0.5, wanted)) most += 0.5;
      if (extra < least) {
        // By mass alone more would have to go than there is.
        expect(balance.allUpMass + extra).toBeCloseTo(heaviestFloating(prepared, wanted), 9);
        continue;
      }
      expect(extra).toBeGreaterThan(most - 0.25);
      expect(extra).toBeLessThan(most + 0.5);
      // What ends it: a little more breaks that and, but for what lies within the search, nothing else.
      const beyond = extra + 0.3;
      if (extra > least + 0.5) {
        const broken = {
          floating: balance.allUpMass + beyond > heaviestFloating(prepared, wanted) || beyond > 1000,
          freeboard: !over(level(beyond), wanted === 'go' ? LEAST_FREEBOARD : 0),
          stability: tubed && !over(crowded(beyond), 0),
        };
        expect(broken[binds]).toBe(true);
      }
      expect(limits.verdict(extra)).toBe(wanted);
      expect(limits.most(wanted)).toBe(limits.most(wanted));
    }
  });

  it('is ended by each of tubes, freeboard and one side, and also below what is aboard', () => {
    const found = boats.map(([name, times, more]) => {
      const { prepared, balance } = wider(name, times, more);
      return new FloatLimits(prepared, balance).most('go');
    });
    expect(new Set(found.map(({ binds }) => binds))).toEqual(new Set(['floating', 'freeboard', 'stability']));
    for (const binds of ['freeboard', 'stability']) {
      expect(found.some((each) => each.binds === binds && each.extra < 0)).toBe(true);
    }
  });
});
