import { describe, expect, it } from 'vitest';
import { fiftyNinety, heightBetween, rateOfRange, twelfths } from '../../src/core/water/tidal-rules.ts';
import { entry, holds, holdsAll } from './sea-checks.ts';

// Tide rule of thumb pages.
describe('twelfths', () => {
  const check = entry('twelfths');

  it('rises by the rule of the pages', () => {
    const range = check.inputs.range_m!;
    holdsAll(
      check,
      'rise_m_by_hour',
      [1, 2, 3, 4, 5, 6].map((sixth) => range * twelfths(sixth / 6)),
    );
  });

  it('lies within 1.7 % of the range of the cosine', () => {
    for (let sixth = 0; sixth <= 6; sixth++) {
      expect(Math.abs(twelfths(sixth / 6) - heightBetween(0, 1, sixth / 6))).toBeLessThan(0.017);
    }
  });
});

// Tidal stream rule of thumb.
describe('fiftyNinety', () => {
  it('has the rate of the rule at every hour', () => {
    const check = entry('rule-50-90');
    const most = check.inputs.max_rate_kn!;
    holdsAll(
      check,
      'rate_kn_by_hour',
      [0, 1, 2, 3, 4, 5, 6].map((hour) => most * fiftyNinety(hour / 6)),
    );
  });

  it('lies within 4 % of the sine', () => {
    for (let sixth = 0; sixth <= 6; sixth++) {
      expect(Math.abs(fiftyNinety(sixth / 6) - Math.sin((sixth / 6) * Math.PI))).toBeLessThan(0.04);
    }
  });
});

// Yachting article on the computation of rates.
describe('rateOfRange', () => {
  it('meets the example of the article', () => {
    const check = entry('rate-interp-read');
    const { neap_rate_kn, spring_rate_kn, neap_range_m, spring_range_m, range_m } = check.inputs;
    const rate = rateOfRange(range_m!, {
      neapRate: neap_rate_kn!,
      springRate: spring_rate_kn!,
      neapRange: neap_range_m!,
      springRange: spring_range_m!,
    });
    holds(check, 'rate_kn', rate!);
  });
});
