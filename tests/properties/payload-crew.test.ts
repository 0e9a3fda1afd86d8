import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { holds } from './hold.ts';
import { between, heavier, likelyTrips, planned, sameSpeeds } from './trip-makers.ts';

describe('safe payload', () => {
  it('is never gained by a heavier crew', () => {
    let compared = 0;
    holds(
      fc.property(likelyTrips(), between(3, 60), (trip, more) => {
        const light = planned(trip, undefined, false);
        const heavy = planned(heavier(trip, light, more), undefined, false);
        if (light.payload.extra === undefined || heavy.payload.extra === undefined) return;
        if (!sameSpeeds(light, heavy)) return;
        compared++;
        // To the step of the search.
        expect(heavy.payload.extra).toBeLessThanOrEqual(
          Math.max(light.payload.extra, -light.balance.peopleAndGear) + 1,
        );
      }),
      { seed: 71, numRuns: 60, share: 0.2 },
    );
    expect(compared).toBeGreaterThan(20);
  });
});
