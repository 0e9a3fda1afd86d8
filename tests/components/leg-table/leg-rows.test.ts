import { describe, expect, it } from 'vitest';
import { legGroups } from '../../../src/components/leg-table/leg-rows.ts';
import { NAUTICAL_MILE } from '../../../src/core/units/convert.ts';
import { go, litre, oneWay } from '../answer/fixtures.ts';

describe('legGroups', () => {
  it('sums the way out and the way home', () => {
    const [out, home] = legGroups(go);
    expect(out!.distance).toBeCloseTo(7.8 * NAUTICAL_MILE, 6);
    expect(home!.distance).toBeCloseTo(7.8 * NAUTICAL_MILE, 6);
    expect(out!.use).toBeCloseTo(litre(7.8 * 0.385), 9);
    // Half an hour ashore at the turn belongs to the way out.
    const sailing = go.legs.filter((leg) => leg.part === 'out').reduce((sum, leg) => sum + leg.time, 0);
    expect(out!.time).toBeCloseTo(sailing + 1800, 6);
  });

  it('has no way home on a trip one way', () => {
    expect(legGroups(oneWay).map((group) => group.part)).toEqual(['out']);
  });

  it('numbers drawn legs from 1 and letters their parts where a zone splits them', () => {
    const legs = go.legs.flatMap((leg, i) => (i === 1 ? [leg, leg, leg] : [leg]));
    const [out] = legGroups({ legs });
    expect(out!.rows.map((row) => row.number)).toEqual(['1', '2a', '2b', '2c', '3', '4']);
  });

  it('goes on after z', () => {
    const [out] = legGroups({ legs: Array.from({ length: 30 }, () => go.legs[0]!) });
    expect(out!.rows.slice(24, 28).map((row) => row.number)).toEqual(['1y', '1z', '1aa', '1ab']);
  });

  it('names the point where a drawn leg ends, once', () => {
    const legs = [go.legs[0]!, go.legs[1]!, go.legs[1]!];
    const [out] = legGroups({ legs }, ['Bar buoy', 'Outer skerry']);
    expect(out!.rows.map((row) => row.ends)).toEqual(['Bar buoy', undefined, 'Outer skerry']);
  });
});
