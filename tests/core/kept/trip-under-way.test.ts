import { company } from '../../../src/core/trip/company.ts';
import { fromHere, type Here } from '../../../src/core/trip/from-here.ts';
import { nearestLandings } from '../../../src/core/trip/nearest-landing.ts';
import { onTheWay } from '../../../src/core/trip/on-the-way.ts';
import { planTrip } from '../../../src/core/trip/plan-trip.ts';
import type { Plan, Trip } from '../../../src/core/trip/shapes.ts';
import { standingOf } from '../../../src/core/trip/standing.ts';
import { haven, shipped } from '../../trips.ts';
import { digest } from './digest.ts';
import { keeping } from './keeping.ts';
import { craft, crew, electricTrip, madeTrips, petrolTrip, tidal, two } from './made-trips.ts';

function planned(trip: Trip): Plan {
  const found = planTrip(trip, haven(), { quick: true });
  if (!found.ok) throw new Error(found.problems[0]?.message);
  return found.value;
}

function here(trip: Trip, place: Here): unknown {
  const found = fromHere(trip, planned(trip), haven(), place);
  if (!found.ok) return found;
  return {
    ...found.value,
    ways: found.value.ways.map(({ plan, ...way }) => ({ ...way, plan: digest({ legs: plan.legs }) })),
  };
}

function landings(trip: Trip): unknown {
  const found = standingOf(trip, haven());
  if (!found.ok) return found;
  const legs = found.value.fuel.run.sailed;
  const places = legs
    .filter((one, i) => legs[i + 1]?.stretch.leg !== one.stretch.leg)
    .map(({ stretch, at, time }) => ({ at: stretch.to, leg: stretch.leg, arrives: at + time }));
  return [
    ...nearestLandings(
      found.value,
      places.filter((_, i) => i % 3 === 0),
    ),
  ];
}

const day = shipped('petrol-day');
const filled = madeTrips['filled up on the way']!;
const tender = electricTrip({ waters: 'haven' });

function boats(...trips: readonly Trip[]): unknown {
  const found = company(
    trips.map((trip, i) => ({ name: `boat ${i}`, trip })),
    haven(),
  );
  if (!found.ok) return found;
  return {
    ...found.value,
    boats: found.value.boats.map(({ plan, alone, trip, ...boat }) => ({
      ...boat,
      ...{ plan: digest(plan), alone: digest({ legs: alone.legs }), speed: trip.route.speed },
    })),
  };
}

keeping('trip-under-way', {
  'from here, at the start of the way out': () =>
    here(day, { at: { lat: 46.0245, lon: -31.991 }, time: '2027-06-19T10:12:00-02:00', fill: 0.94 }),
  'from here, with more used than planned': () =>
    here(day, { at: { lat: 45.985, lon: -32.04 }, time: '2027-06-19T11:20:00-02:00', fill: 0.52 }),
  'from here, with little left and homeward': () =>
    here(
      { ...day, policy: { ...day.policy, timeAllowed: 14400 } },
      { at: { lat: 45.994, lon: -31.954 }, time: '2027-06-19T12:40:00-02:00', fill: 0.15, homeward: true },
    ),
  'from here, by the tide, filling up still to come': () =>
    here(
      { ...filled, conditions: tidal },
      { at: { lat: 46.0, lon: -32.041 }, time: '2027-06-19T10:40:00-02:00', fill: 0.4 },
    ),
  'from here, an electric tender off its line': () =>
    here(tender, { at: { lat: 46.018, lon: -31.985 }, time: '2027-06-19T10:30:00-02:00', fill: 0.6 }),
  'from here, homeward out and home': () =>
    here(tender, { at: { lat: 46.0165, lon: -31.9914 }, time: '2027-06-19T11:30:00-02:00', fill: 0.3, homeward: true }),
  'from nowhere': () => here(day, { at: { lat: 88, lon: 200 }, time: 'soon', fill: 1.2 }),
  'landings along the day out': () => landings(day),
  'landings by the tide': () => landings({ ...day, conditions: { ...tidal, departure: '2027-06-19T17:30:00-02:00' } }),
  'landings for the tender': () => landings(tender),
  'balance on the way, fuel burnt': () => onTheWay(day, planned(day)),
  'balance on the way, a catch and water aboard': () =>
    onTheWay(day, planned(day), { catchMass: 35, waterMass: 20, home: crew(two.toReversed()) }),
  'balance on the way, batteries': () => onTheWay(tender, planned(tender), { waterMass: 12 }),
  'two boats in company': () =>
    boats(
      petrolTrip({
        load: crew(two, { fill: 0.8, fillKnownBy: 'gauge' }),
        policy: { reserve: [{ kind: 'share', share: 0.2 }], timeAllowed: 20000 },
      }),
      petrolTrip({
        craft: craft('rigid-v-4-2', 'petrol-9-9hp-4s', 'tank-12'),
        route: { ...petrolTrip().route, speed: 4.5 },
      }),
    ),
  'three boats, one electric, by the tide': () =>
    boats(
      { ...petrolTrip(), conditions: tidal },
      electricTrip({
        craft: craft('catamaran-2-9', 'electric-5-2kw', 'battery-5-nmc'),
        load: crew(two.slice(0, 1), { fill: 1, fillKnownBy: 'measured' }),
        route: { ...petrolTrip().route, speed: 2.4 },
      }),
      petrolTrip({
        craft: craft('launch-4-9', 'petrol-6hp-2s', 'tank-25'),
        route: { ...petrolTrip().route, speed: 'best' },
      }),
    ),
  'a company one of which has no way': () => boats(petrolTrip({ route: { ...petrolTrip().route, waypoints: [] } })),
});
