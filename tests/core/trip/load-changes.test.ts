import { describe, expect, it } from 'vitest';
import tender from '../../../shared/trips/electric-tender.json' with { type: 'json' };
import petrolDay from '../../../shared/trips/petrol-day.json' with { type: 'json' };
import { onTheWay } from '../../../src/core/trip/on-the-way.ts';
import {
  payloadOverLength,
  payloadOverSpeed,
  payloadStretches,
  tripLength,
} from '../../../src/core/trip/payload-curve.ts';
import { planTrip } from '../../../src/core/trip/plan-trip.ts';
import type { Plan, Trip } from '../../../src/core/trip/shapes.ts';
import { leftBehind, oneMore, whatIf } from '../../../src/core/trip/what-if.ts';

const day = petrolDay as unknown as Trip;
const electric = tender as unknown as Trip;

function planOf(trip: Trip): Plan {
  const plan = planTrip(trip, undefined);
  if (!plan.ok) throw new Error('no plan');
  return plan.value;
}

describe('safe payload over the length of the trip', () => {
  const length = tripLength(day, undefined);
  const points = [
    ...payloadOverLength(
      day,
      undefined,
      [0.2, 0.5, 1, 1.3, 1.6, 2.2].map((share) => share * length),
    ),
  ];

  it('is what the plan says at the length planned', () => {
    expect(points[2]!.payload.extra).toBeCloseTo(planOf(day).payload.extra!, 6);
    expect(points[2]!.payload.binds).toBe(planOf(day).payload.binds);
  });

  it('never grows with the way, and in the end the reserve binds', () => {
    for (let i = 1; i < points.length; i++) {
      expect(points[i]!.payload.extra!).toBeLessThanOrEqual(points[i - 1]!.payload.extra! + 0.5);
    }
    expect(points.at(-1)!.payload.binds).toBe('reserve');
  });

  it('falls into stretches with one limit each that cover it without a gap', () => {
    const stretches = payloadStretches(points);
    expect(stretches[0]!.from).toBe(points[0]!.at);
    expect(stretches.at(-1)!.to).toBe(points.at(-1)!.at);
    for (let i = 1; i < stretches.length; i++) expect(stretches[i]!.from).toBe(stretches[i - 1]!.to);
    expect(stretches.length).toBeGreaterThan(1);
  });
});

describe('safe payload over speed', () => {
  it('is never above the plate, and says where a heavier boat would drop off the plane', () => {
    const fast = [...payloadOverSpeed(electric, undefined, [1, 1.6, 6, 7])];
    for (const { payload } of fast)
      expect(payload.counted + payload.extra!).toBeLessThanOrEqual(payload.allowed! + 1e-9);
    expect(fast[0]!.dropsOff).toBe(false);
    expect(fast.slice(2).every(({ planes, dropsOff }) => planes && dropsOff)).toBe(true);
  });
});

describe('what if', () => {
  it('one is left behind: lighter, no slower, and at least as much payload', () => {
    const now = whatIf(day, undefined, day.load)!;
    const lighter = whatIf(day, undefined, leftBehind(day.load, day.load.items[1]!.id))!;
    expect(lighter.topSpeed).toBeGreaterThanOrEqual(now.topSpeed);
    expect(lighter.payload.extra!).toBeGreaterThan(now.payload.extra!);
  });

  it('the helm is left behind: the next adult steers', () => {
    const helm = day.load.items.find((item) => item.helm)!;
    const { items } = leftBehind(day.load, helm.id);
    expect(items.filter((item) => item.helm)).toHaveLength(1);
    expect(items.find((item) => item.helm)!.kind).toBe('adult');
  });

  it('one more comes: on a free seat, never the bow tube, and the payload falls by about as much', () => {
    const load = oneMore(day, 60, 7);
    const newcomer = load.items.at(-1)!;
    const seat = day.craft.hull.stations.find(({ id }) => id === newcomer.station)!;
    expect(seat.use).toBe('seat');
    expect(day.load.items.some(({ station }) => station === newcomer.station)).toBe(false);
    const before = whatIf(day, undefined, day.load)!.payload;
    const after = whatIf(day, undefined, load)!.payload;
    expect(after.counted - before.counted).toBeCloseTo(60, 6);
    expect(after.extra!).toBeLessThan(before.extra!);
  });
});

describe('onTheWay', () => {
  const plan = planOf(day);

  it('burns off the fuel that the plan says is burnt', () => {
    const [departure, turn, home] = onTheWay(day, plan);
    expect(departure!.fuelMass).toBeGreaterThan(turn!.fuelMass);
    expect(turn!.fuelMass).toBeGreaterThan(home!.fuelMass);
    expect(departure!.fuelMass - home!.fuelMass).toBeCloseTo(plan.need.median, 6);
    expect(departure!.balance.allUpMass - home!.balance.allUpMass).toBeCloseTo(plan.need.median, 6);
  });

  it('leaves a battery boat as heavy as it was', () => {
    const points = onTheWay(electric, planOf(electric));
    expect(new Set(points.map(({ balance }) => balance.allUpMass)).size).toBe(1);
  });

  it('floats lower, by the stern, with catch and water aboard from the turn on', () => {
    const points = onTheWay(day, plan, { catchMass: 30, waterMass: 40 });
    expect(points.map(({ at }) => at)).toEqual(['departure', 'turn', 'turn-loaded', 'home']);
    const [, turn, loaded] = points;
    expect(loaded!.balance.allUpMass - turn!.balance.allUpMass).toBeCloseTo(70, 9);
    if (turn!.rest?.state !== 'afloat' || loaded!.rest?.state !== 'afloat') throw new Error('it floats');
    expect(loaded!.rest.freeboard).toBeLessThan(turn!.rest.freeboard);
    expect(loaded!.rest.trimDeg).toBeGreaterThan(turn!.rest.trimDeg);
    expect(loaded!.humpMargin).toBeLessThan(turn!.humpMargin);
  });

  it('takes the crew as they sit on the way home', () => {
    const home = {
      ...day.load,
      items: day.load.items.map((item) => (item.helm ? item : { ...item, at: { x: 0.4, y: 0 } })),
    };
    const points = onTheWay(day, plan, { home });
    expect(points.at(-1)!.balance.lcg).toBeLessThan(points[0]!.balance.lcg);
  });
});
