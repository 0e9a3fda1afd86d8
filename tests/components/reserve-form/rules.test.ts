import { describe, expect, it } from 'vitest';
import { ruleOf, withoutRule, withRule } from '../../../src/components/reserve-form/rules.ts';

describe('reserve rules of a policy', () => {
  const policy = {
    reserve: [{ kind: 'share', share: 0.2 }, { kind: 'thirds' }, { kind: 'share', share: 0.4 }],
    maxWind: 8,
  } as const;

  it('show the largest of a kind, which is the one that could hold', () => {
    expect(ruleOf(policy, 'share')).toEqual({ kind: 'share', share: 0.4 });
    expect(ruleOf(policy, 'minutes')).toBeUndefined();
  });

  it('keep one of a kind once edited, and everything else', () => {
    expect(withRule(policy, { kind: 'share', share: 0.3 })).toEqual({
      reserve: [{ kind: 'thirds' }, { kind: 'share', share: 0.3 }],
      maxWind: 8,
    });
    expect(withoutRule(policy, 'share')).toEqual({ reserve: [{ kind: 'thirds' }], maxWind: 8 });
    expect(withoutRule(policy, 'minutes').reserve).toHaveLength(3);
  });
});
