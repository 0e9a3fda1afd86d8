import { contingencies, towsHome } from '../../../src/core/trip/contingencies.ts';
import { minimums } from '../../../src/core/trip/minimums.ts';
import { risk, sampleRisk } from '../../../src/core/trip/risk.ts';
import { type Standing, standingOf } from '../../../src/core/trip/standing.ts';
import { haven } from '../../trips.ts';
import { drawnTrips } from './drawn-trips.ts';
import { keeping } from './keeping.ts';
import { madeTrips } from './made-trips.ts';

/** What may go wrong: shares of doubt, trips played many times, mishaps, and what must be aboard at each waypoint. */
const asked = [
  'petrol catamaran on the plane',
  'the shipped day out by the tide and the hour',
  'an electric tender in the cold',
  'nothing known but the route',
  'a calibrated boat with slime on the bottom',
  'a launch under way slowly, one way with a stop',
  'a stream that is nearly as fast as the boat',
  'a stream faster than the boat',
  'filled up on the way',
  'charged where there is power',
  'two batteries, one of them old',
  'four aboard at the hump',
] as const;

function standing(name: string): Standing {
  const found = standingOf(madeTrips[name]!, haven());
  if (!found.ok) throw new Error(name);
  return found.value;
}

keeping('trip-doubts', {
  ...Object.fromEntries(
    asked.map((name) => [
      name,
      () => {
        const one = standing(name);
        return {
          risk: risk(one),
          sampled: sampleRisk(one, { samples: 301, seed: 5 }),
          mishaps: contingencies(one),
          minimums: minimums(one),
        };
      },
    ]),
  ),
  'a launch towed home by the catamaran, and the other way about': () => {
    const [cat, launch] = [standing(asked[0]), standing(asked[5])];
    return [towsHome(cat, launch), towsHome(launch, cat)];
  },
  'many drawn trips played': () =>
    drawnTrips(24, 7).map((trip) => {
      const found = standingOf(trip, haven());
      if (!found.ok) return found;
      const { reserveWhole, homeAtAll, shares } = risk(found.value);
      const { reserveWhole: whole, homeAtAll: home } = sampleRisk(found.value, { samples: 200, seed: 3 });
      return { reserveWhole, homeAtAll, whole, home, first: shares[0]?.doubt, least: shares.at(-1)?.share };
    }),
});
