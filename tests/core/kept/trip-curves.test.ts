import { openWaypoint } from '../../../src/core/trip/open-waypoint.ts';
import {
  payloadOverLength,
  payloadOverSpeed,
  payloadStretches,
  tripLength,
} from '../../../src/core/trip/payload-curve.ts';
import type { Trip } from '../../../src/core/trip/shapes.ts';
import { speedChoices } from '../../../src/core/trip/speed-choices.ts';
import { tightened } from '../../../src/core/trip/tightened.ts';
import { tripCurve } from '../../../src/core/trip/trip-curve.ts';
import { haven } from '../../trips.ts';
import { keeping } from './keeping.ts';
import { calibration, craft, crew, electricTrip, madeTrips, OFFING, petrolTrip, route, two } from './made-trips.ts';

const strong = petrolTrip({
  craft: craft('rib-4-7', 'petrol-30hp-4s', 'tank-25', { scheme: 'eu', maxLoad: 720, persons: 7 }),
  load: crew(two, { fill: 0.5, fillKnownBy: 'measured' }),
});
const plateless = petrolTrip({ craft: craft('catamaran-2-9', 'petrol-6hp-4s', 'tank-12', 'none') });

const lengths = (trip: Trip, all: readonly number[]) => () => {
  const points = [...payloadOverLength(trip, haven(), all)];
  return { length: tripLength(trip, haven()), points, stretches: payloadStretches(points) };
};
const speeds = (trip: Trip, all: readonly number[]) => () => {
  const points = [...payloadOverSpeed(trip, haven(), all)];
  return { points, stretches: payloadStretches(points) };
};

keeping('trip-curves', {
  'payload over the length of the way': lengths(strong, [2000, 12000, 30000, 45000, 60000, 90000]),
  'payload over length without a plate': lengths(plateless, [3000, 20000, 50000]),
  'payload over length for a tender': lengths(electricTrip(), [1000, 4000, 9000, 15000]),
  'payload over speed': speeds(strong, [1.5, 3, 4.5, 6, 8, 10, 12]),
  'payload over speed for a small boat': speeds(petrolTrip(), [1, 3, 5, 7, 9]),
  'speeds to choose from': () => speedChoices(petrolTrip(), haven()),
  'speeds to choose from by the tide, in a time': () => {
    const tide = madeTrips['the shipped day out by the tide and the hour']!;
    return speedChoices({ ...tide, policy: { ...tide.policy, timeAllowed: 14000 } }, haven());
  },
  'speeds of an electric launch in the evening': () =>
    speedChoices(
      petrolTrip({
        craft: craft('launch-4-9', 'electric-2-2kw', 'battery-5-nmc'),
        route: route('out-and-home', OFFING, 2),
        conditions: { ...petrolTrip().conditions, departure: '2027-06-19T18:00:00-02:00', batteryTemperatureC: 18 },
      }),
      haven(),
    ),
  'the curve of a boat': () => tripCurve(petrolTrip()),
  'the curve of a boat against the wind': () => tripCurve(petrolTrip(), 6),
  'the curve of a measured boat': () =>
    tripCurve(
      petrolTrip({ craft: { ...craft('rib-3-4', 'petrol-20hp-4s', 'tank-12-can-5'), calibration: calibration() } }),
    ),
  'the curve of a tender': () => tripCurve(electricTrip()),
  'the curve with nothing known of the fill': () =>
    tripCurve(electricTrip({ load: crew(two, {}), conditions: { water: 'fresh' } })),
  'where open water begins': () => [
    openWaypoint(madeTrips['the shipped day out']!, haven()),
    openWaypoint(petrolTrip(), haven()),
    openWaypoint(electricTrip(), haven()),
    openWaypoint(electricTrip(), undefined),
  ],
  'a policy that a host tightens': () => [
    tightened(
      { reserve: [] },
      { reserve: [{ kind: 'minutes', minutes: 20 }], maxWind: 6, depth: 0.5, manoeuvring: 400, drawnFactor: 1.1 },
    ),
    tightened(
      {
        reserve: [{ kind: 'share', share: 0.2 }],
        maxWind: 5,
        maxWave: 0.4,
        timeAllowed: 7000,
        depth: 1,
        manoeuvring: 700,
        drawnFactor: 1.2,
      },
      { maxWind: 8, maxWave: 0.3, timeAllowed: 9000, manoeuvring: 600 },
    ),
  ],
});
