import { describe, expect, it } from 'vitest';
import { destination } from '../../../src/core/route/distance.ts';
import { judgeRefill } from '../../../src/core/trip/judge-refill.ts';
import type { Prepared } from '../../../src/core/trip/prepare.ts';

const quay = { lat: 46, lon: -32 };
const landing = (offers: object, at = quay) => ({
  geometry: { coordinates: [at.lon, at.lat] },
  properties: { name: 'Quay', ...offers },
});

function judged(waypoints: readonly object[], landings?: readonly object[], kind = 'tank') {
  const trip = { craft: { store: { kind } }, route: { waypoints } };
  return judgeRefill({ trip, waters: landings && { landings } } as unknown as Prepared);
}

describe('filling up on the way', () => {
  const stop = { ...quay, name: 'Quay', refill: 0.9 };

  it('counts where a landing is known to offer it', () => {
    expect(judged([stop], [landing({ fuel: true })])).toEqual([]);
    expect(judged([stop], [landing({ power: true })], 'battery')).toEqual([]);
    expect(judged([stop], [landing({}), landing({ fuel: true })])).toEqual([]);
  });

  it('is marginal where none is: no waters, no landing, or one that offers the other thing or does not say', () => {
    const unknown = [{ code: 'refill-not-known', level: 'marginal', name: 'Quay', at: stop }];
    expect(judged([stop])).toEqual(unknown);
    expect(judged([stop], [])).toEqual(unknown);
    for (const offers of [{}, { fuel: false }, { power: true }])
      expect(judged([stop], [landing(offers)])).toEqual(unknown);
    expect(judged([stop], [landing({ fuel: true })], 'battery')).toEqual(unknown);
  });

  it('takes a landing for the one meant within 150 m', () => {
    const off = (metres: number) => judged([stop], [landing({ fuel: true }, destination(quay, 60, metres))]);
    expect(off(149)).toEqual([]);
    expect(off(151)).toHaveLength(1);
  });

  it('asks nothing of a waypoint that only passes, and tells of one without a name by its place', () => {
    expect(judged([quay, { ...quay, name: 'Buoy' }])).toEqual([]);
    const nameless = { ...quay, refill: 0 };
    expect(judged([nameless])).toEqual([{ code: 'refill-not-known', level: 'marginal', at: nameless }]);
  });
});
