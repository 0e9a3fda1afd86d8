import { describe, expect, it } from 'vitest';
import { orderedReasons } from '../../../src/components/answer/ordered-reasons.ts';
import type { Reason } from '../../../src/core/trip/shapes.ts';

const reason = (level: Reason['level'], name: string): Reason => ({ code: 'crosses-shoal', level, name });

describe('orderedReasons', () => {
  it('puts what stands against the trip before doubts, and doubts before notes', () => {
    const groups = orderedReasons([
      reason('note', 'a'),
      reason('marginal', 'b'),
      reason('no-go', 'c'),
      reason('note', 'd'),
    ]);
    expect(groups.map((group) => [group.level, group.first.map((one) => one.name)])).toEqual([
      ['no-go', ['c']],
      ['marginal', ['b']],
      ['note', ['a', 'd']],
    ]);
  });

  it('keeps most of two hundred behind a button and loses none', () => {
    const [group] = orderedReasons(Array.from({ length: 200 }, (_, i) => reason('no-go', String(i))));
    expect(group!.first.length).toBeLessThan(10);
    expect([...group!.first, ...group!.more].map((one) => one.name)).toEqual(
      Array.from({ length: 200 }, (_, i) => String(i)),
    );
  });

  it('does not hide a single row behind a button as large', () => {
    const [group] = orderedReasons(Array.from({ length: 7 }, (_, i) => reason('note', String(i))));
    expect(group!.more).toEqual([]);
  });

  it('has nothing to say without reasons', () => {
    expect(orderedReasons([])).toEqual([]);
  });
});
