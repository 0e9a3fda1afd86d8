import { attitudeOf } from '../../../src/core/trip/attitude.ts';
import { placementCost, seatingAdvice } from '../../../src/core/trip/seating-advice.ts';
import type { Purpose } from '../../../src/core/trip/seating-places.ts';
import type { Trip } from '../../../src/core/trip/shapes.ts';
import { leftBehind, oneMore, whatIf } from '../../../src/core/trip/what-if.ts';
import { haven } from '../../trips.ts';
import { keeping } from './keeping.ts';
import { craft, crew, electricTrip, madeTrips, petrolTrip, two } from './made-trips.ts';

const family = petrolTrip({
  craft: craft('rib-3-4', 'petrol-15hp-4s', 'tank-12-can-5'),
  load: crew([
    ['adult', 92, 'helm'],
    ['adult', 64, 'seat-aft-starboard'],
    ['child', 31, 'seat-aft-port'],
    ['gear', 22, 'gear-aft'],
    ['dog', 19, 'gear-aft'],
  ]),
});
const launch = petrolTrip({
  craft: craft('launch-4-9', 'electric-3-1kw', 'battery-agm-100-100'),
  load: crew([...two, ['adult', 66, 'bow-tube'], ['child', 25]]),
});
const full = petrolTrip({
  craft: craft('rib-4-7', 'petrol-30hp-4s', 'tank-25-25'),
  load: crew([
    ['adult', 92, 'helm'],
    ['adult', 64, 'seat-aft-starboard'],
    ['adult', 75, 'seat-aft-port'],
    ['child', 31, 'seat-mid'],
    ['child', 36, 'seat-fore-port'],
    ['gear', 22, 'gear-aft'],
    ['gear', 12, 'gear-aft'],
    ['dog', 19, 'gear-aft'],
    ['gear', 8, 'gear-mid'],
  ]),
});

const advice = (trip: Trip, purpose: Purpose, speed: number) => () => {
  const found = seatingAdvice(trip, haven(), { purpose, speed });
  if (!found) return found;
  const { load, store, ...rest } = found;
  return {
    ...rest,
    places: load.items.map(({ station, at }) => station ?? at),
    now: placementCost(trip, { purpose, speed }),
  };
};

keeping('trip-seats', {
  'a family seated for planing': advice(family, 'planing', 7),
  'a family seated to lie level': advice(family, 'level', 3),
  'a family seated for range': advice(family, 'range', 6),
  'a family seated for a rough sea': advice(family, 'rough', 4),
  'a family seated with a long tiller': advice(family, 'tiller', 7),
  'a launch, one seat not given': advice(launch, 'range', 2),
  'a launch seated to lie level': advice(launch, 'level', 2),
  'too many to look at each': advice(full, 'planing', 8),
  'more people than seats': advice(
    petrolTrip({ load: crew(Array.from({ length: 8 }, () => ['adult', 70, 'seat-mid'] as const)) }),
    'planing',
    7,
  ),
  'attitude of the family': () => attitudeOf(family, 7),
  'attitude of the launch': () => attitudeOf(launch, 2.2),
  'attitude of a tender with a battery': () => attitudeOf(electricTrip(), 1.5),
  'attitude of five with one on the bow tube': () =>
    attitudeOf(madeTrips['five in a boat for four, one on the bow tube']!, 5),
  'what if one more came': () => [whatIf(family, haven(), oneMore(family, 85, 7)), oneMore(family, 85, 7)],
  'what if the helm stayed ashore': () => [
    whatIf(family, haven(), leftBehind(family.load, 'adult-0')),
    leftBehind(family.load, 'adult-0'),
    leftBehind(family.load, 'dog-4').items.length,
  ],
  'what if without a way': () =>
    whatIf(petrolTrip({ route: { ...family.route, waypoints: [] } }), haven(), family.load),
});
