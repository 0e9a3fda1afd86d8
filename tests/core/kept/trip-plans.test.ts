import { planTrip } from '../../../src/core/trip/plan-trip.ts';
import { haven } from '../../trips.ts';
import { keeping } from './keeping.ts';
import { madeTrips } from './made-trips.ts';

keeping(
  'trip-plans',
  Object.fromEntries(
    Object.entries(madeTrips).map(([name, trip]) => [name, () => planTrip(trip, haven(), { quick: true })]),
  ),
);
