import { fuelMass } from '../../core/drive/tank.ts';
import type { PlannedSpeed } from '../../core/route/shapes.ts';
import type { Fix, Reason, Trip } from '../../core/trip/shapes.ts';
import { WATT_HOUR } from '../../core/units/convert.ts';
import { offsetOf, secondsOf, timeAt } from '../../core/water/clock.ts';

type Card = 'boat' | 'aboard' | 'route' | 'day' | 'kept';

/** What pressing a fix does: change the trip, or take the user to where only they can. */
export interface Mended {
  readonly trip?: Trip;
  readonly card?: Card;
}

const WHERE: Partial<Record<Reason['code'], Card>> = {
  'wind-unknown': 'day',
  'stream-unknown': 'day',
  'sea-unknown': 'day',
  'swell-unknown': 'day',
  'departure-unknown': 'day',
  'forecast-short': 'day',
  'streams-short': 'day',
  'temperature-unknown': 'day',
  'fill-unknown': 'aboard',
  'seat-unknown': 'aboard',
  'nobody-aboard': 'aboard',
  'no-helm': 'aboard',
  'no-adult': 'aboard',
  'helm-far': 'aboard',
  'odd-weight': 'aboard',
  'on-bow-tube': 'aboard',
  'outside-boat': 'aboard',
};

const CARDS: Record<Fix['code'], Card> = {
  'add-fuel': 'aboard',
  'shorten-route': 'route',
  'slow-down': 'route',
  'ease-speed': 'route',
  'leave-behind': 'aboard',
  'give-value': 'day',
  'move-forward': 'aboard',
  'move-across': 'aboard',
  'draw-round': 'route',
  wait: 'day',
  'leave-earlier': 'day',
  'read-plate': 'boat',
  'smaller-engine': 'boat',
};

export function mended(trip: Trip, fix: Fix, reason: Reason): Mended {
  const { code, value } = fix;
  if ((code === 'slow-down' || code === 'ease-speed') && value !== undefined) {
    // A figure just below the limit, so that rounding on screen does not put it over again.
    const speed = Math.floor(value * 100) / 100;
    const eased = (own: PlannedSpeed): PlannedSpeed => (typeof own === 'number' && own <= speed ? own : speed);
    // No leg is made faster by slowing another.
    const waypoints = trip.route.waypoints.map((point) =>
      point.speed === undefined ? point : { ...point, speed: eased(point.speed) },
    );
    return { trip: { ...trip, route: { ...trip.route, speed: eased(trip.route.speed), waypoints } } };
  }
  const { departure } = trip.conditions;
  if (code === 'leave-earlier' && value !== undefined && departure !== undefined) {
    const earlier = timeAt(secondsOf(departure) - 60 * Math.ceil(value / 60), offsetOf(departure));
    return { trip: { ...trip, conditions: { ...trip.conditions, departure: earlier } } };
  }
  if (code === 'add-fuel' && value !== undefined && trip.load.fill !== undefined) {
    const fill = Math.min(trip.load.fill + value / capacity(trip), 1);
    return { trip: { ...trip, load: { ...trip.load, fill: Math.ceil(fill * 100) / 100 } } };
  }
  return { card: WHERE[reason.code] ?? CARDS[code] };
}

function capacity({ craft }: Trip): number {
  return craft.store.kind === 'tank'
    ? fuelMass(craft.store.tanks, 1)
    : craft.store.batteries.reduce((sum, b) => sum + b.energyWh * WATT_HOUR * b.health, 0);
}
