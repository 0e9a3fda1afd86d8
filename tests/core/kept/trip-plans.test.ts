import { planTrip } from '../../../src/core/trip/plan-trip.ts';
import type { Trip } from '../../../src/core/trip/shapes.ts';
import { haven } from '../../trips.ts';
import { digest } from './digest.ts';
import { keeping } from './keeping.ts';
import { madeTrips } from './made-trips.ts';

/** Of so many the legs are kept one by one, of the others in sums. */
const WHOLE = 8;

function planned(trip: Trip, i: number): unknown {
  const plan = planTrip(trip, haven(), { quick: true });
  if (!plan.ok || i < WHOLE) return plan;
  const { legs, balance, ...rest } = plan.value;
  return { ...rest, ...(digest({ legs, balance }) as object) };
}

keeping(
  'trip-plans',
  Object.fromEntries(Object.entries(madeTrips).map(([name, trip], i) => [name, () => planned(trip, i)])),
);
