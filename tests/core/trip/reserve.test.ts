import { describe, expect, it } from 'vitest';
import { reserveOf, strictestReserve } from '../../../src/core/trip/reserve.ts';
import type { Policy } from '../../../src/core/trip/shapes.ts';

const policy = (...reserve: Policy['reserve']) => ({ reserve }) as Policy;

describe('the reserve', () => {
  it('is a third, a share, or so many minutes at the mean flow, but not more than there is', () => {
    expect(reserveOf({ kind: 'thirds' }, 12, 1)).toBe(4);
    expect(reserveOf({ kind: 'share', share: 0.25 }, 12, 1)).toBe(3);
    // Half an hour at 2 kg an hour.
    expect(reserveOf({ kind: 'minutes', minutes: 30 }, 12, 2 / 3600)).toBeCloseTo(1, 12);
    expect(reserveOf({ kind: 'minutes', minutes: 600 }, 12, 2 / 3600)).toBe(12);
  });

  it('is that of the strictest rule, wherever it stands, and of the first of two that ask the same', () => {
    const share = { kind: 'share', share: 0.5 } as const;
    const thirds = { kind: 'thirds' } as const;
    expect(strictestReserve(policy(thirds, share), 12, 0)).toEqual({ rule: share, amount: 6 });
    expect(strictestReserve(policy(share, thirds), 12, 0)).toEqual({ rule: share, amount: 6 });
    const third = { kind: 'share', share: 1 / 3 } as const;
    expect(strictestReserve(policy(thirds, third), 12, 0).rule).toBe(thirds);
    expect(strictestReserve(policy(third, thirds), 12, 0).rule).toBe(third);
  });

  it('is thirds where no rule is chosen, and nothing of an empty tank', () => {
    expect(strictestReserve(policy(), 12, 0)).toEqual({ rule: { kind: 'thirds' }, amount: 4 });
    const minutes = { kind: 'minutes', minutes: 30 } as const;
    expect(strictestReserve(policy(minutes), 0, 1)).toEqual({ rule: minutes, amount: 0 });
  });
});
