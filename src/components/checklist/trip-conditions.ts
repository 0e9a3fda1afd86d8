import { inflatable } from '../../core/craft/plan-form.ts';
import type { Plan, Trip } from '../../core/trip/shapes.ts';
import type { Conditions } from '../../core/water/shapes.ts';
import { firstDraft } from '../planner/first-trip.ts';
import type { Holding } from './shapes.ts';

/** Mean wind from which a small open boat gets wet and slow, m/s: the lower end of 4 Beaufort (our judgement). */
const FRESH_WIND = 5.5;
/** Water in which time to act is short, C (teaching differs; our judgement). */
const COLD_WATER = 15;

/**
 * Which conditions hold for a trip; undefined where the trip does not tell. Whether it ends in the dark needs its plan.
 */
export function tripConditions(trip: Trip, plan?: Plan): Holding {
  const { craft, load, route, conditions } = trip;
  const { hull, drive, store } = craft;
  const aboard = (kind: string) => load.items.filter((item) => item.kind === kind).length;
  // The load the planner starts with is nobody's, and without people a crew has not been entered.
  const entered = JSON.stringify(load.items) !== JSON.stringify(firstDraft().trip.load.items);
  const people = entered ? aboard('adult') + aboard('child') : 0;
  const petrol = drive.kind === 'petrol';
  const twoStroke = petrol && drive.cycle.startsWith('2s');
  const tanks = store.kind === 'tank' ? store.tanks : [];
  const batteries = store.kind === 'battery' ? store.batteries : [];
  const lead = batteries.filter(({ chemistry }) => chemistry === 'agm' || chemistry === 'flooded-lead').length;
  const { wind, stream, water, waterTemperatureC } = conditions;
  return {
    petrol,
    electric: !petrol,
    'two-stroke': twoStroke,
    'four-stroke': petrol && !twoStroke,
    'portable-tank': tanks.some(({ fixed }) => !fixed),
    'fixed-tank': tanks.some(({ fixed }) => fixed),
    lithium: lead < batteries.length,
    'lead-acid': lead > 0,
    inflatable: inflatable(hull.form),
    alone: people === 0 ? undefined : people === 1,
    crew: people === 0 ? undefined : people > 1,
    children: people === 0 ? undefined : aboard('child') > 0,
    dog: people === 0 ? undefined : aboard('dog') > 0,
    sea: water === 'sea',
    // Sea water stands there until somebody says otherwise, so it rules no river out.
    fresh: water === 'fresh' ? true : undefined,
    stream: stream === undefined ? undefined : stream !== 'slack',
    'fresh-wind': wind === undefined ? undefined : strongest(wind) >= FRESH_WIND,
    'cold-water': waterTemperatureC === undefined ? undefined : waterTemperatureC < COLD_WATER,
    dark: darkAt(trip, plan),
    'one-way': route.waypoints.length < 2 ? undefined : route.shape === 'one-way',
  };
}

/** The strongest mean wind named, at whatever hour: the boat may be late. */
function strongest(wind: NonNullable<Conditions['wind']>): number {
  if (wind === 'calm') return 0;
  return 'forecast' in wind ? Math.max(...wind.forecast.map(({ speed }) => speed)) : wind.speed;
}

/** Under way after sunset, or home so shortly before it that a slow way back would be. */
function darkAt(trip: Trip, plan: Plan | undefined): boolean | undefined {
  if (!plan) return undefined;
  if (plan.reasons.some(({ code }) => code === 'after-dark' || code === 'near-dark')) return true;
  return trip.conditions.departure === undefined || !Number.isFinite(plan.need.median) ? undefined : false;
}
