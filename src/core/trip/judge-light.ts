import { offsetOf, secondsOf } from '../water/clock.ts';
import { BEFORE_SUNSET, daylightOn, lightOfTrip } from '../water/daylight.ts';
import type { FuelVerdict } from './fuel-verdict.ts';
import type { Prepared } from './prepare.ts';
import type { Reason } from './shapes.ts';

/**
 * Home before dark: by sunset at the latest, as a boat without lights must be, and an hour before it with a margin
 * (common practice, no source). Without a date nothing can be said, and the plan lists that as an assumption.
 */
export function judgeLight({ trip }: Prepared, { run, slowest }: FuelVerdict): readonly Reason[] {
  const { departure } = trip.conditions;
  const start = trip.route.waypoints[0];
  if (departure === undefined || start === undefined || !run.possible) return [];
  const leaves = secondsOf(departure);
  const light = lightOfTrip(start, { departure: leaves, home: leaves + slowest });
  if (light.answer === 'kept' || light.answer === 'polar-day') return [];
  // Under way in the dark from the start, or all day: no margin to tell.
  if (light.margin === undefined) return [{ code: 'after-dark', level: 'no-go', fixes: [{ code: 'wait' }] }];
  const early = BEFORE_SUNSET - light.margin;
  return [
    {
      code: light.answer === 'dark' ? 'after-dark' : 'near-dark',
      level: light.answer === 'dark' ? 'no-go' : 'marginal',
      measure: 'time',
      value: light.margin,
      limit: light.answer === 'dark' ? 0 : BEFORE_SUNSET,
      fixes: leavesInLight(trip.route.waypoints[0]!, departure, early)
        ? [{ code: 'leave-earlier', measure: 'time', value: early }, { code: 'shorten-route' }]
        : [{ code: 'shorten-route' }],
    },
  ];
}

/** Whether that much earlier, s, the sun is up already. */
function leavesInLight(
  place: { readonly lat: number; readonly lon: number },
  departure: string,
  early: number,
): boolean {
  const seconds = secondsOf(departure);
  const { sunrise } = daylightOn(place, seconds, offsetOf(departure));
  return sunrise === undefined || seconds - early >= sunrise;
}
