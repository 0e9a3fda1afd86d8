import { describe, expect, it } from 'vitest';
import { balance } from '../../../src/core/load/balance.ts';
import type { Load } from '../../../src/core/load/shapes.ts';
import { type OnTheWay, onTheWay, type Underway } from '../../../src/core/trip/on-the-way.ts';
import { planTrip } from '../../../src/core/trip/plan-trip.ts';
import type { Plan, Trip } from '../../../src/core/trip/shapes.ts';
import { haven, shipped, soundTrip } from '../../trips.ts';

function planOf(trip: Trip): Plan {
  const found = planTrip(trip, haven(), { quick: true });
  if (!found.ok) throw new Error(found.problems[0]!.message);
  return found.value;
}

const day = soundTrip();
const plan = planOf(day);
const points = (underway?: Underway, trip = day, of = plan): readonly OnTheWay[] => onTheWay(trip, of, underway);
const at = (list: readonly OnTheWay[], name: OnTheWay['at']) => list.find((point) => point.at === name)!;
const full = (0.95 * 12 * 0.745) as number;

describe('a boat on its way', () => {
  it('is told at departure, at the turn and at home, lighter by what the plan burns', () => {
    const list = points();
    expect(list.map((point) => point.at)).toEqual(['departure', 'turn', 'home']);
    const [departure, turn, home] = list as [OnTheWay, OnTheWay, OnTheWay];
    expect(Math.abs(departure.fuelMass - full)).toBeLessThan(0.2);
    expect(departure.fuelMass - turn.fuelMass).toBeCloseTo(plan.usable - plan.legs[0]!.left.median, 9);
    expect(departure.fuelMass - home.fuelMass).toBeCloseTo(plan.usable - plan.left.median, 9);
    expect(turn.balance.allUpMass).toBeCloseTo(departure.balance.allUpMass - (departure.fuelMass - turn.fuelMass), 9);
  });

  it('is balanced, floated and brought over its hump as it is at each point', () => {
    for (const { fuelMass, balance: told, rest, humpMargin } of points()) {
      expect(told).toEqual(balance(day.craft, day.load, fuelMass));
      expect(rest!.state).toBe('afloat');
      expect(humpMargin).toBeGreaterThan(0);
    }
    const [departure, , home] = points() as [OnTheWay, OnTheWay, OnTheWay];
    // Lighter it planes more easily, unless the tank aft held the stern down.
    expect(home.humpMargin).not.toBe(departure.humpMargin);
  });

  it('never has less than no fuel, nor more than it left with', () => {
    const dry = { ...plan, left: { ...plan.left, median: -99 } };
    expect(at(points({}, day, dry), 'home').fuelMass).toBe(0);
    const odd = { ...plan, left: { ...plan.left, median: plan.usable + 5 } };
    expect(at(points({}, day, odd), 'home').fuelMass).toBeCloseTo(at(points(), 'departure').fuelMass, 9);
  });

  it('turns at the last stretch of the way out', () => {
    const [out, home] = plan.legs as [Plan['legs'][number], Plan['legs'][number]];
    const two = { ...plan, legs: [{ ...out, left: { ...out.left, median: plan.usable - 0.1 } }, out, home] };
    expect(at(points({}, day, two), 'turn').fuelMass).toBeCloseTo(at(points(), 'turn').fuelMass, 9);
    const onlyHome = { ...plan, legs: [home] };
    expect(at(points({}, day, onlyHome), 'turn').fuelMass).toBe(at(points(), 'departure').fuelMass);
  });

  it('with batteries keeps its mass, and weighs no fuel', () => {
    const tender = shipped('electric-tender');
    const list = points({}, tender, planOf(tender));
    expect(list.map(({ fuelMass }) => fuelMass)).toEqual([0, 0, 0]);
    expect(new Set(list.map(({ balance: told }) => told.allUpMass)).size).toBe(1);
  });
});

describe('what comes aboard at the turn', () => {
  const { stations, wettedLength } = day.craft.hull;
  const moved = (underway: Underway, of: 'turn-loaded' | 'home') => at(points(underway), of).balance;

  it('lies on the floor amidships: the middle of the places for gear', () => {
    const floor = stations.filter(({ use }) => use === 'gear').sort((a, b) => a.x - b.x);
    const middle = floor[Math.floor(floor.length / 2)]!;
    const before = at(points(), 'turn').balance;
    const after = moved({ catchMass: 40 }, 'turn-loaded');
    expect(after.allUpMass).toBeCloseTo(before.allUpMass + 40, 9);
    expect(after.lcg).toBeCloseTo((before.lcg * before.allUpMass + 40 * middle.x) / after.allUpMass, 6);
  });

  it('on a boat without places for gear lies at 0.4 of its length', () => {
    const seats = stations.filter(({ use }) => use !== 'gear');
    const items = day.load.items.filter(({ kind }) => kind !== 'gear');
    const bare = {
      ...day,
      craft: { ...day.craft, hull: { ...day.craft.hull, stations: seats } },
      load: { ...day.load, items },
    };
    const list = onTheWay(bare, plan, { catchMass: 40 });
    const [before, after] = [at(list, 'turn').balance, at(list, 'turn-loaded').balance];
    expect(after.lcg).toBeCloseTo((before.lcg * before.allUpMass + 40 * 0.4 * wettedLength) / after.allUpMass, 6);
    expect(after.lateral).toBeCloseTo((before.lateral * before.allUpMass) / after.allUpMass, 6);
  });

  it('is water in the bilge, 0.12 of the length from aft', () => {
    const before = at(points(), 'turn').balance;
    const after = moved({ waterMass: 30 }, 'turn-loaded');
    expect(after.allUpMass).toBeCloseTo(before.allUpMass + 30, 9);
    expect(after.lcg).toBeCloseTo((before.lcg * before.allUpMass + 30 * 0.12 * wettedLength) / after.allUpMass, 6);
    expect(at(points({ waterMass: 30 }), 'turn-loaded').rest!.state).toBe('afloat');
  });

  it('stays aboard on the way home, both together', () => {
    const list = points({ catchMass: 40, waterMass: 30 });
    expect(list.map((point) => point.at)).toEqual(['departure', 'turn', 'turn-loaded', 'home']);
    expect(at(list, 'home').balance.allUpMass).toBeCloseTo(at(points(), 'home').balance.allUpMass + 70, 9);
    expect(at(list, 'turn').balance.allUpMass).toBe(at(points(), 'turn').balance.allUpMass);
  });

  it('is told as a point of its own only where something changes', () => {
    expect(points({ catchMass: 0, waterMass: 0 })).toHaveLength(3);
    expect(points({ catchMass: 0.1 })).toHaveLength(4);
    expect(points({ home: day.load })).toHaveLength(3);
    const across: Load = {
      ...day.load,
      items: day.load.items.map((item) => (item.id === 'mate' ? { ...item, station: 'seat-fore-starboard' } : item)),
    };
    const list = points({ home: across });
    expect(list).toHaveLength(4);
    const y = (id: string) => stations.find((station) => station.id === id)!.y;
    const shifted = 85 * (y('seat-fore-starboard') - y('seat-fore-port'));
    const [now, before] = [at(list, 'home').balance, at(points(), 'home').balance];
    expect((now.lateral - before.lateral) * now.allUpMass).toBeCloseTo(shifted, 6);
    const ashore: Load = { ...day.load, items: day.load.items.slice(0, 1) };
    expect(points({ home: ashore })).toHaveLength(4);
  });
});
