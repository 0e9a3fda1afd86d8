import { readFileSync } from 'node:fs';
import type { WatersFile } from '../src/core/route/shapes.ts';
import { prepareWaters, type Waters } from '../src/core/route/waters.ts';
import { planTrip } from '../src/core/trip/plan-trip.ts';
import type { Plan, Reason, Trip } from '../src/core/trip/shapes.ts';

const root = new URL('../shared/', import.meta.url);

/** A shipped trip file, as its door would hand it on. */
export function shipped(name: 'petrol-day' | 'electric-tender' | 'hire-hull'): Trip {
  return JSON.parse(readFileSync(new URL(`trips/${name}.json`, root), 'utf8')) as Trip;
}

let waters: Waters | undefined;

/** The invented estuary of the demonstration. */
export function haven(): Waters {
  waters ??= prepareWaters(JSON.parse(readFileSync(new URL('waters/haven.geojson', root), 'utf8')) as WatersFile);
  return waters;
}

/** The plan of a complete trip on the invented estuary. */
export function planOf(trip: Trip, options?: { quick?: boolean }): Plan {
  const result = planTrip(trip, haven(), options);
  if (!result.ok) throw new Error(result.problems.map((p) => p.message).join(' '));
  return result.value;
}

export function reasonOf(plan: Plan, code: Reason['code']): Reason | undefined {
  return plan.reasons.find((r) => r.code === code);
}

/** Everything given and in order, on open water of the estuary: a short straight trip out and home. */
export function soundTrip(): Trip {
  const trip = shipped('petrol-day');
  return {
    ...trip,
    route: {
      shape: 'out-and-home',
      waypoints: [
        { lat: 45.985, lon: -32.07 },
        { lat: 45.962, lon: -32.07 },
      ],
      speed: trip.route.speed,
    },
  };
}
