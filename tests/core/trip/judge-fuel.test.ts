import { describe, expect, it } from 'vitest';
import type { FuelVerdict } from '../../../src/core/trip/fuel-verdict.ts';
import { type FuelFixes, judgeFuel } from '../../../src/core/trip/judge-fuel.ts';

const NOTHING: FuelFixes = { add: undefined, distance: undefined, speed: undefined };

interface Made {
  readonly usable?: number;
  readonly need?: number;
  readonly need90?: number;
  readonly keeps?: number;
  readonly badNeed?: number;
  readonly possible?: boolean;
}

/** 12 usable, of which 4 are the reserve; the bad case has 11. */
function judged(
  { usable = 12, need = 5, need90 = 7, keeps = need, badNeed = 9, possible = true }: Made,
  fixes = NOTHING,
) {
  const badCase = { kinds: ['home-slow', 'less-in-tank'], need: badNeed, left: 11 - badNeed, time: 1 };
  const fuel = { run: { need, possible }, usable, reserve: 4, need90, keeps, badCase, badUsable: 11 };
  return judgeFuel(fuel as unknown as FuelVerdict, fixes);
}

describe('fuel or charge', () => {
  it('that keeps the reserve, also to the last drop, says nothing', () => {
    expect(judged({})).toEqual([]);
    expect(judged({ need: 8 })).toEqual([]);
    expect(judged({ need90: 12 })).toEqual([]);
    expect(judged({ badNeed: 10.99 })).toEqual([]);
  });

  it('short of the reserve is a no-go that tells what would be left beside the reserve', () => {
    expect(judged({ need: 8.5 })).toEqual([
      { code: 'reserve-broken', level: 'no-go', measure: 'amount', value: 3.5, limit: 4, fixes: [] },
    ]);
  });

  it('that one trip in ten uses up is a no-go, with the reserve broken beside it or not', () => {
    const dry = { code: 'runs-dry', level: 'no-go', measure: 'amount', value: 12.5, limit: 12, fixes: [] };
    expect(judged({ need90: 12.5 })).toEqual([dry]);
    expect(judged({ need: 9, need90: 12.5 }).map(({ code }) => code)).toEqual(['reserve-broken', 'runs-dry']);
  });

  it('with nothing left in the bad case is marginal, where nothing worse is said', () => {
    expect(judged({ badNeed: 11 })).toEqual([
      {
        code: 'bad-case-dry',
        level: 'marginal',
        measure: 'amount',
        value: 11,
        limit: 11,
        name: 'home-slow less-in-tank',
        fixes: [],
      },
    ]);
    expect(judged({ need: 9, badNeed: 11 }).map(({ code }) => code)).toEqual(['reserve-broken']);
  });

  it('that keeps the reserve in fewer than two trips of three is marginal, told with the reserve on top', () => {
    const unsure = { code: 'reserve-unsure', level: 'marginal', measure: 'amount', value: 12.5, limit: 12, fixes: [] };
    expect(judged({ need: 8, keeps: 8.5 })).toEqual([unsure]);
    expect(judged({ need: 8, keeps: 8 })).toEqual([]);
    expect(judged({ need: 8.5, keeps: 9 }).map(({ code }) => code)).toEqual(['reserve-broken']);
    expect(judged({ keeps: 8.5, badNeed: 11 }).map(({ code }) => code)).toEqual(['reserve-unsure', 'bad-case-dry']);
  });

  it('of which nothing can be used is told before all else, also on a trip that cannot be sailed', () => {
    const empty = [{ code: 'nothing-usable', level: 'no-go', measure: 'amount', value: 0 }];
    expect(judged({ usable: 0 })).toEqual(empty);
    expect(judged({ usable: 0, possible: false })).toEqual(empty);
    expect(judged({ usable: 0.1, need: 0.01, need90: 0.02, badNeed: 1 })).not.toEqual(empty);
  });

  it('does not judge a trip that cannot be sailed', () => {
    expect(judged({ need: Infinity, need90: Infinity, badNeed: Infinity, possible: false })).toEqual([]);
  });

  it('tells what would mend it: more in the tank, slower, shorter', () => {
    const fixes = (given: Partial<FuelFixes>) => judged({ need: 9 }, { ...NOTHING, ...given })[0]!.fixes;
    expect(fixes({ add: 2, distance: 5000, speed: 3 })).toEqual([
      { code: 'add-fuel', measure: 'amount', value: 2 },
      { code: 'slow-down', measure: 'speed', value: 3 },
      { code: 'shorten-route', measure: 'distance', value: 5000 },
    ]);
    expect(fixes({ distance: 5000 })!.map(({ code }) => code)).toEqual(['shorten-route']);
  });
});
