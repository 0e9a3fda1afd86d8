import { describe, expect, it } from 'vitest';
import { easySpeed } from '../../../src/core/compare/easy-speed.ts';
import type { Use } from '../../../src/core/compare/suit-shapes.ts';
import { planOfUse, tripOfUse, windFor } from '../../../src/core/compare/suit-trip.ts';
import type { Craft } from '../../../src/core/craft/shapes.ts';
import { craftFrom } from '../../../src/core/files/catalogue.ts';
import { legBetween } from '../../../src/core/route/distance.ts';
import { planTrip } from '../../../src/core/trip/plan-trip.ts';
import { BEAUFORT, beaufortMiddle } from '../../../src/core/water/beaufort.ts';
import { hullOf } from './boats.ts';

const craft = { ...craftFrom('catamaran-3-6', 'petrol-15hp-4s', 'tank-25'), hull: hullOf('catamaran-3-6') };
const use: Use = {
  crew: [85, 75],
  gear: 20,
  distance: 20_000,
  water: 'sea',
  waveHeight: 0.2,
  speed: 7,
  energy: 'either',
  batteryTemperatureC: 10,
};

describe('the wind that raises waves', () => {
  it('is that in the middle of the class whose probable waves they are', () => {
    for (let force = 1; force <= 12; force++) {
      expect(windFor(BEAUFORT[force]!.probableWave), `force ${force}`).toBeCloseTo(beaufortMiddle(force), 9);
    }
  });

  it('is half way between two classes for waves half way between theirs, and rises from a calm', () => {
    for (let force = 2; force <= 12; force++) {
      const between = (BEAUFORT[force - 1]!.probableWave + BEAUFORT[force]!.probableWave) / 2;
      expect(windFor(between)).toBeCloseTo((beaufortMiddle(force - 1) + beaufortMiddle(force)) / 2, 9);
    }
    expect(windFor(0.05)).toBeCloseTo(beaufortMiddle(1) / 2, 9);
    expect(windFor(0)).toBe(0);
  });

  it('is never told beyond the last class', () => {
    expect(windFor(20)).toBe(beaufortMiddle(12));
  });
});

describe('the trip of a use', () => {
  it('goes half the distance south and comes home north into the wind', () => {
    const { version, route, conditions } = tripOfUse(craft, use);
    expect(version).toBe(1);
    const [start, turn] = route.waypoints;
    expect(route.shape).toBe('out-and-home');
    const leg = legBetween(start!, turn!);
    expect(leg.distance).toBeCloseTo(10_000, 3);
    expect(leg.trackDeg).toBeCloseTo(180, 6);
    expect(conditions.wind).toEqual({ fromDeg: 0, speed: windFor(0.2) });
    expect(conditions.sea).toEqual({ height: 0.2 });
  });

  it('starts full, with everybody and the gear aboard, and keeps a third', () => {
    const { load, policy } = tripOfUse(craft, use);
    expect(load.items.map(({ mass }) => mass)).toEqual([85, 75, 20]);
    expect([load.fill, load.fillKnownBy]).toEqual([1, 'measured']);
    expect(policy.reserve).toEqual([{ kind: 'thirds' }]);
  });

  it('is calm in flat water', () => {
    const { conditions } = tripOfUse(craft, { ...use, waveHeight: 0 });
    expect([conditions.wind, conditions.sea]).toEqual(['calm', 'calm']);
    const faint = tripOfUse(craft, { ...use, waveHeight: 0.02 }).conditions;
    expect([faint.wind, faint.sea]).toEqual([{ fromDeg: 0, speed: windFor(0.02) }, { height: 0.02 }]);
  });

  it("is made at the speed wished, or at the hull's own easy one", () => {
    expect(tripOfUse(craft, use).route.speed).toBe(7);
    expect(tripOfUse(craft, { ...use, speed: undefined }).route.speed).toBe(easySpeed(craft.hull));
  });
});

describe('the plan of a use', () => {
  it('tells the figures of the whole plan, those of the way out among them', () => {
    const { trip, reasons } = planOfUse(craft, use);
    const plan = planTrip(tripOfUse(craft, use), undefined, { quick: true });
    if (!plan.ok) throw new Error('no plan');
    const { store, usable, reserve, need, left, probability, range, time, legs } = plan.value;
    expect(trip).toMatchObject({ store, usable, reserve, need, left, probability, range: range.outAndHome, time });
    expect(legs).toHaveLength(2);
    expect(legs[1]!.distance).toBeCloseTo(legs[0]!.distance, 6);
    expect(trip.speed).toBe(legs[0]!.speedThroughWater);
    expect(trip.planing).toBe(legs[0]!.regime === 'planing');
    expect(reasons).toEqual([]);
  });

  it('says nothing of notes, nor that no chart was looked at', () => {
    const plan = planTrip(tripOfUse(craft, use), undefined, { quick: true });
    if (!plan.ok) throw new Error('no plan');
    expect(plan.value.reasons.map(({ code }) => code)).toContain('waters-unknown');
    expect(plan.value.reasons.some(({ level }) => level === 'note')).toBe(true);
    expect(planOfUse(craft, { ...use, distance: 200_000 }).reasons.map(({ level }) => level)).not.toContain('note');
  });

  it('has the reasons of its own day where that is no go', () => {
    const far = { ...use, distance: 200_000, waveHeight: 0 };
    const codes = planOfUse(craft, far).reasons.map(({ code }) => code);
    expect(codes).toContain('runs-dry');
  });

  it('is none of a trip that goes nowhere', () => {
    expect(() => planOfUse(craft, { ...use, distance: Number.NaN })).toThrow();
  });

  const serious = (made: Craft, asked: Use) => {
    const plan = planTrip(tripOfUse(made, asked), undefined, { quick: true });
    if (!plan.ok) throw new Error('no plan');
    return plan.value.reasons.filter(({ code, level }) => code !== 'waters-unknown' && level !== 'note');
  };

  it('is no go in waves that slow the boat below a speed which is too much for it on a flat day', () => {
    const flat = { ...craftFrom('rigid-flat-3-8', 'petrol-15hp-4s', 'tank-25-25'), hull: hullOf('rigid-flat-3-8') };
    const asked: Use = { ...use, crew: [85, 85, 85], gear: 0, distance: 70_000, speed: 5.75 };
    const calm = serious(flat, { ...asked, waveHeight: 0 });
    expect(calm.length).toBeGreaterThan(0);
    for (const waveHeight of [0.1, 0.2, 0.3]) {
      expect(serious(flat, { ...asked, waveHeight })).toEqual([]);
      expect(planOfUse(flat, { ...asked, waveHeight }).reasons).toEqual(calm);
    }
  });

  it('is no go in waves where it is none in waves half as high', () => {
    const asked: Use = { ...use, gear: 60, distance: 40_000, speed: 8 };
    const [none, half, whole] = [0, 0.1, 0.2].map((waveHeight) => serious(craft, { ...asked, waveHeight }));
    expect([none, whole]).toEqual([[], []]);
    expect(half!.length).toBeGreaterThan(0);
    const found = planOfUse(craft, { ...asked, waveHeight: 0.2 });
    expect(found.reasons).toEqual(half);
    // The figures stay those of the waves that were asked for.
    expect(found.trip).toEqual(planOfUse(craft, { ...asked, waveHeight: 0.2, crew: asked.crew }).trip);
  });
});
