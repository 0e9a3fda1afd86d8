import type { Plan, Trip } from '../../core/trip/shapes.ts';
import type { Holding } from './shapes.ts';

/** Where the planner keeps its trip on this device. */
export const PLANNER_KEY = 'homeleg-trip';

/** The trip kept under `key`; none without a route, for then nobody has planned anything yet. */
export async function keptTrip(key: string): Promise<Trip | undefined> {
  try {
    const text = localStorage.getItem(key);
    if (text === null) return undefined;
    const value: unknown = JSON.parse(text);
    if (typeof value !== 'object' || value === null || !('trip' in value)) return undefined;
    const { readDraft } = await import('../../core/files/trip-schema.ts');
    const trip = readDraft(value.trip);
    return trip.ok && trip.value.route.waypoints.length > 1 ? trip.value : undefined;
  } catch {
    // Storage that is blocked or damaged: as without a trip.
    return undefined;
  }
}

/** Which conditions hold for a trip, with its plan behind them where one can be made. */
export async function holdingOf(trip: Trip): Promise<Holding> {
  const [{ tripConditions }, plan] = await Promise.all([import('./trip-conditions.ts'), planOf(trip)]);
  return tripConditions(trip, plan);
}

async function planOf(trip: Trip): Promise<Plan | undefined> {
  // Only the hour at home is wanted of it.
  if (trip.conditions.departure === undefined) return undefined;
  try {
    const [{ planTrip }, { prepareWaters }, { fetchWaters, SHIPPED_WATERS }] = await Promise.all([
      import('../../core/trip/plan-trip.ts'),
      import('../../core/route/waters.ts'),
      import('../planner/fetch-waters.ts'),
    ]);
    const waters = await fetchWaters(SHIPPED_WATERS);
    const plan = planTrip(trip, waters && prepareWaters(waters), { quick: true });
    return plan.ok ? plan.value : undefined;
  } catch {
    return undefined;
  }
}
