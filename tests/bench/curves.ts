import { prepareWaters, zonesAlong } from '../../src/core/route/waters.ts';
import { sampleRisk } from '../../src/core/trip/risk.ts';
import { standingOf } from '../../src/core/trip/standing.ts';
import { circleWaters, meander } from '../core/route/made-waters.ts';
import { loopOf, petrolDay, plan, waters } from './cases.ts';
import { costOf, kept } from './cost.ts';

/** How a cost grows with the size of what is asked. */
export interface GrowthCurve {
  readonly name: string;
  /** What is counted along. */
  readonly of: string;
  readonly points: readonly { readonly size: number; readonly units: number; readonly microseconds: number }[];
}

const ROUNDS = 9;

function curve(
  what: (typeof DRAWN)[number],
  sizes: readonly number[],
  work: (size: number) => () => void,
): GrowthCurve {
  return { ...what, points: sizes.map((size) => ({ size, ...costOf(work(size), ROUNDS) })) };
}

/** What is drawn, in this order. */
export const DRAWN = [
  { name: 'A plan with bands', of: 'legs' },
  { name: 'A route of 200 points held against land and zones', of: 'zones' },
  { name: 'Days of one trip drawn', of: 'days' },
] as const;

export function growthCurves(): readonly GrowthCurve[] {
  const standing = standingOf(petrolDay, waters);
  if (!standing.ok) throw new Error('the trip can be planned');
  const [plans, zonesMet, days] = DRAWN;
  return [
    curve(plans, [5, 10, 20, 50, 100, 200], (legs) => {
      const trip = loopOf(legs);
      return () => plan(trip, true);
    }),
    curve(zonesMet, [1, 3, 10, 30, 100, 300], (zones) => {
      const made = prepareWaters(circleWaters(zones, 100));
      const route = meander(200);
      return () => {
        for (let i = 1; i < route.length; i++) kept.sum += zonesAlong(made, route[i - 1]!, route[i]!).crossings.length;
      };
    }),
    curve(days, [100, 300, 1000, 3000, 10_000], (samples) => () => {
      kept.sum += sampleRisk(standing.value, { samples, seed: 7 }).homeAtAll;
    }),
  ];
}
