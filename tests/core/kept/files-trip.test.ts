import { contradictions, trialsContradictions } from '../../../src/core/files/trip-contradictions.ts';
import { readDraft, readTrip, readTripText } from '../../../src/core/files/trip-schema.ts';
import { withoutNames } from '../../../src/core/files/without-names.ts';
import type { Trip } from '../../../src/core/trip/shapes.ts';
import { electricTrip, petrolTrip, withAt } from '../files/full-trips.ts';
import { keeping } from './keeping.ts';
import { spoilt } from './spoilt.ts';

const petrol = petrolTrip();
const short = { ...petrol, route: { ...petrol.route, waypoints: petrol.route.waypoints.slice(0, 4) } };
const { craft, load, conditions, policy, trials, route } = short;
const bare = { ...short, trials: undefined };
const forecast = { forecast: [{ time: '2027-06-19T09:00:00Z', fromDeg: 20, speed: 4, gust: 6 }] };
const tide = {
  port: 'Port',
  highWater: '2027-06-19T09:00:00Z',
  range: 3,
  meanSpringRange: 4,
  meanNeapRange: 2,
  highWaterHeight: 4,
};

/** Faults in one part of a trip, the others left as they are. */
const within = (key: keyof Trip, part: unknown) => spoilt(part, (value) => readTrip({ ...bare, [key]: value }));

keeping('files-trip', {
  'the hull and its engine': () => spoilt(craft, (value) => readTrip({ ...bare, craft: value })),
  'an electric craft': () => spoilt(electricTrip().craft, (value) => readTrip({ ...electricTrip(), craft: value })),
  'the load': () => within('load', load),
  'the route': () => within('route', route),
  'conditions told as one figure each': () => within('conditions', conditions),
  'conditions by the hour and the tide': () =>
    within('conditions', {
      ...conditions,
      wind: forecast,
      stream: 'by-tide',
      tide,
      sea: { swell: 0.2 },
      timezone: 'Europe/Berlin',
    }),
  'the policy': () => within('policy', policy),
  trials: () =>
    spoilt({ ...trials, hull: 0 }, (value) =>
      readTrip({ ...bare, trials: { ...(value as object), hull: craft.hull } }),
    ),
  'what contradicts itself': () =>
    (
      [
        [['craft', 'hull', 'wettedLength'], 9],
        [['craft', 'hull', 'planingBeam'], 5],
        [['craft', 'drive', 'propeller', 'pitch'], 0.01],
        [['craft', 'drive', 'propeller', 'pitch'], 0.6],
        [['craft', 'store', 'tanks', '0', 'unusableL'], 50],
        [['craft', 'store'], electricTrip().craft.store],
        [['load', 'items', '0', 'id'], 'mate'],
        [['load', 'items', '0', 'helm'], false],
        [['load', 'items', '1', 'helm'], true],
        [['conditions', 'tide'], { ...tide, meanNeapRange: 5 }],
        [['craft', 'hull', 'stations', '0', 'id'], 'seat-mid'],
        [['trials', 'runs', '0', 'setup'], 'none'],
        [['trials', 'runs', '1', 'id'], 'first'],
        [['trials', 'refills', '0', 'id'], 'first'],
        [['trials', 'setups', '0', 'drive'], electricTrip().craft.drive],
      ] as const
    ).map(([keys, value]) => {
      const made = withAt(petrol, keys, value);
      return [contradictions(made), trialsContradictions(made.trials, 'trials').length];
    }),
  'drafts, texts and names': () => [
    readDraft({ ...bare, route: { ...route, waypoints: [] } }).ok,
    readTrip({ ...bare, route: { ...route, waypoints: route.waypoints.slice(0, 1) } }),
    readTripText('nothing'),
    readTripText('{"version":1,}'),
    readTripText(JSON.stringify({ ...bare, version: 2 })),
    readTripText(JSON.stringify({ ...bare, $schema: '/schemas/trip.json' })).ok,
    withoutNames(petrol).load,
    withoutNames(petrol).route.waypoints[0],
    Object.keys(withoutNames(petrol)),
  ],
});
