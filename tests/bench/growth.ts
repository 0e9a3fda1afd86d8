import type { LatLon } from '../../src/core/route/shapes.ts';
import { prepareWaters, zonesAlong } from '../../src/core/route/waters.ts';
import { circleWaters, meander } from '../core/route/made-waters.ts';
import { loopOf, plan } from './cases.ts';
import { type Cost, costOf, kept } from './cost.ts';
import { trackDay } from './track-day.ts';

/** A ratio of two costs against the most it may be. */
export interface Growth {
  readonly name: string;
  readonly budget: number;
  measure(): { readonly from: Cost; readonly to: Cost };
}

function zoneTest(points: number, islands: number, vertices: number): () => void {
  const waters = prepareWaters(circleWaters(islands, vertices));
  const route: readonly LatLon[] = meander(points);
  return () => {
    for (let i = 1; i < route.length; i++) kept.sum += zonesAlong(waters, route[i - 1]!, route[i]!).crossings.length;
  };
}

function legs(count: number): Cost {
  const trip = loopOf(count);
  return costOf(() => plan(trip, true), 21);
}

/** Five times the legs may cost six times as much: linear, with room for what the cache does. */
const LINEAR = 1.2;

export const growths: readonly Growth[] = [
  {
    name: '5,000 points over 50,000 vertices against 100 over 1,000, 10 islands',
    budget: 50,
    measure: () => ({ from: costOf(zoneTest(100, 10, 100), 21), to: costOf(zoneTest(5000, 10, 5000), 21) }),
  },
  {
    name: 'the same, islands of 20 vertices',
    budget: 50,
    measure: () => ({ from: costOf(zoneTest(100, 50, 20), 21), to: costOf(zoneTest(5000, 2500, 20), 21) }),
  },
  {
    name: 'a track of 100,000 points against 20,000',
    budget: 5 * LINEAR,
    measure: () => ({ from: costOf(trackDay(20_000), 7), to: costOf(trackDay(100_000), 5) }),
  },
  { name: 'a plan of 50 legs against 10', budget: 5 * LINEAR, measure: () => ({ from: legs(10), to: legs(50) }) },
  { name: 'a plan of 200 legs against 50', budget: 4 * LINEAR, measure: () => ({ from: legs(50), to: legs(200) }) },
];
