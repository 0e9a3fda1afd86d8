import type { Route, WatersFile } from '../../core/route/shapes.ts';
import type { Assumption, Plan } from '../../core/trip/shapes.ts';
import type { Measures } from '../units/measures.ts';
import { reasonText } from '../words/en-reasons.ts';

/** Where an assumption is changed; the rest under what is kept back. */
export const ASSUMED_IN: Partial<Record<Assumption['code'], 'boat' | 'aboard' | 'day'>> = {
  fill: 'aboard',
  'fill-gauge': 'aboard',
  seat: 'aboard',
  'extra-load-at-centre': 'aboard',
  wind: 'day',
  stream: 'day',
  sea: 'day',
  'sea-from-wind': 'day',
  'stream-by-tide': 'day',
  'stream-spread': 'day',
  daylight: 'day',
  'speed-in-waves': 'day',
  'battery-temperature': 'day',
  'keep-out-season': 'day',
  'waters-date-unknown': 'day',
  'unmeasured-boat': 'boat',
  'measured-boat': 'boat',
  'petrol-density': 'boat',
};

/** Speed of the stretch most of the way is sailed at; before there is a plan what was planned as a figure. */
export function plannedSpeed(plan: Plan | undefined, route: Route): number | undefined {
  if (!plan) return typeof route.speed === 'number' ? route.speed : undefined;
  const longest = plan.legs.reduce((a, b) => (b.distance > a.distance ? b : a), plan.legs[0]!);
  return longest.speedThroughWater;
}

/** What the plan holds against places of the route, for the map. */
export function hazardsOf(plan: Plan | undefined, measures: Measures) {
  return (plan?.reasons ?? [])
    .filter((reason) => reason.at !== undefined && reason.level !== 'note')
    .map((reason) => ({ at: reason.at!, text: reasonText(reason, measures, plan!.store) }));
}

/** Whether anything in these waters goes by the tide. */
export function tidal(waters: WatersFile | undefined): boolean {
  return (waters?.features ?? []).some(
    ({ properties }) => properties?.kind === 'stream' || properties?.dries_m !== undefined,
  );
}
