import { describe, expect, it } from 'vitest';
import { concern } from '../../../src/components/checklist/concern.ts';
import { CONDITIONS, type Condition, type Holding } from '../../../src/components/checklist/shapes.ts';

const holding = (known: Partial<Record<Condition, boolean>>): Holding =>
  Object.fromEntries(CONDITIONS.map((each) => [each, known[each]])) as Holding;

describe('concern', () => {
  it('is everybody where a point names no condition', () => {
    expect(concern(undefined, holding({}))).toBe('everybody');
  });

  it('is yes only where all conditions hold', () => {
    expect(concern(['alone', 'electric'], holding({ alone: true, electric: true }))).toBe('yes');
    expect(concern(['alone', 'electric'], holding({ alone: true }))).toBe('unknown');
  });

  it('is no where the trip says so, and never for want of an answer', () => {
    expect(concern(['alone', 'electric'], holding({ electric: false }))).toBe('no');
    for (const condition of CONDITIONS) expect(concern([condition], holding({}))).toBe('unknown');
  });
});
