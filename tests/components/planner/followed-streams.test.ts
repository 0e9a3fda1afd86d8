import { describe, expect, it } from 'vitest';
import { followedStreams } from '../../../src/components/planner/followed-streams.ts';
import type { Route } from '../../../src/core/route/shapes.ts';
import { place, reversing } from '../../core/water/made-streams.ts';

const [gap, race] = [place('Gap', 46, -32, reversing(90, 1)), place('Race', 46.1, -32, reversing(90, 1))];
const route: Route = {
  shape: 'one-way',
  speed: 5,
  waypoints: [
    { lat: 46, lon: -32, streamPlace: 'Gap' },
    { lat: 46.1, lon: -32, streamPlace: 'Marl' },
    { lat: 46.2, lon: -32 },
  ],
};
const picks = (after: Route) => after.waypoints.map(({ streamPlace }) => streamPlace);

describe('a leg that takes the stream of a place of one’s own', () => {
  it('goes along with its new name', () => {
    expect(picks(followedStreams(route, [race, gap], [race, { ...gap, name: 'Sill' }]))).toEqual([
      'Sill',
      'Marl',
      undefined,
    ]);
  });

  it('is left to the nearest when the place is gone', () => {
    const after = followedStreams(route, [race, gap], [race]);
    expect(picks(after)).toEqual([undefined, 'Marl', undefined]);
    expect('streamPlace' in after.waypoints[0]!).toBe(false);
  });

  it('stays as it is when others change', () => {
    expect(followedStreams(route, [gap], [gap, race])).toBe(route);
    expect(followedStreams(route, [race, gap], [gap])).toBe(route);
    expect(followedStreams(route)).toBe(route);
  });
});
