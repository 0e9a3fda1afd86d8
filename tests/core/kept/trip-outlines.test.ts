import { type OutlineQuestion, rangeOutline } from '../../../src/core/trip/range-outline.ts';
import type { Trip } from '../../../src/core/trip/shapes.ts';
import { haven } from '../../trips.ts';
import { keeping } from './keeping.ts';
import {
  at,
  conditions,
  craft,
  crew,
  electricTrip,
  madeTrips,
  OFFING,
  petrolTrip,
  route,
  tidal,
  two,
} from './made-trips.ts';

const outline =
  (trip: Trip, question: OutlineQuestion, waters = true) =>
  () =>
    rangeOutline(trip, waters ? haven() : undefined, question);

const day = madeTrips['the shipped day out']!;

keeping('trip-outlines', {
  'from the start, all open': outline(petrolTrip(), { directions: 5 }, false),
  'from the start, within the estuary': outline(petrolTrip(), { directions: 7 }),
  'from a later waypoint of a loop': outline(day, { directions: 5, from: 6 }),
  'from the far end of a loop': outline(day, { directions: 5, from: 27 }),
  'from beyond the turn of a loop': outline(day, { directions: 5, from: 17 }),
  'from the race by the tide': outline({ ...day, conditions: tidal }, { directions: 5, from: 7 }),
  'from the second waypoint by the tide': outline(
    petrolTrip({ conditions: tidal, load: crew(two, { fill: 0.5, fillKnownBy: 'gauge' }) }),
    { directions: 5, from: 1 },
  ),
  'for a tender with little charge': outline(electricTrip({ load: crew(two.slice(0, 2), { fill: 0.35 }) }), {
    directions: 7,
  }),
  'with speeds by the leg, filled up on the way': outline(madeTrips['filled up on the way']!, {
    directions: 4,
    from: 5,
  }),
  'against a stream that is faster at times': outline(
    petrolTrip({
      craft: craft('rigid-flat-3-8', 'petrol-2-5hp-4s', 'tank-built-in-1-1-can-5'),
      route: route('one-way', OFFING, 1.6),
      conditions: conditions({ stream: { setDeg: 90, rate: 1.3 } }),
    }),
    { directions: 6 },
  ),
  'from a place alone': outline(petrolTrip({ route: route('out-and-home', [at(45.98, -32.06)], 'best') }), {
    directions: 4,
  }),
  'from nowhere': outline(petrolTrip(), { from: 9 }),
});
