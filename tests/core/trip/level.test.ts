import { describe, expect, it } from 'vitest';
import { Level } from '../../../src/core/trip/level.ts';

describe('what is left on the way', () => {
  it('falls with what is used: the need of a trip that never fills up is all of it', () => {
    const level = new Level(20);
    level.draw(5);
    level.draw(3);
    expect([level.need, level.unsure]).toEqual([8, 8]);
  });

  it('rises to what it is filled to: the need is what the leaner part left of the start', () => {
    const level = new Level(20);
    level.draw(5);
    level.fillTo(18);
    level.draw(10);
    // 8 left of 20, after 10 drawn since the filling.
    expect([level.need, level.unsure]).toEqual([12, 10]);
  });

  it('keeps the need of the leaner part before the filling', () => {
    const level = new Level(20);
    level.draw(15);
    level.fillTo(18);
    level.draw(10);
    expect([level.need, level.unsure]).toEqual([15, 15]);
  });

  it('can be less than nothing', () => {
    const level = new Level(4);
    level.draw(6);
    expect(level.need).toBe(6);
  });

  it('is not let out, and nothing is settled, where as much or more is aboard', () => {
    for (const filled of [3, 15]) {
      const level = new Level(20);
      level.draw(5);
      level.fillTo(filled);
      level.draw(3);
      expect([level.need, level.unsure]).toEqual([8, 8]);
    }
  });

  it('of two parts equally lean counts the first', () => {
    const level = new Level(20);
    level.draw(5);
    level.fillTo(18);
    level.draw(3);
    expect([level.need, level.unsure]).toEqual([5, 5]);
  });
});
