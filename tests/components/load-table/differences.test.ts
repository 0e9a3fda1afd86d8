import { expect, it } from 'vitest';
import { difference, span } from '../../../src/components/load-table/differences.ts';

const knots = (value: number) => `${value.toFixed(1)}\u00a0kn`;

it('signs a change and calls what rounds to nothing no change', () => {
  expect(difference(1.23, knots)).toBe('+1.2\u00a0kn');
  expect(difference(-0.3, knots)).toBe('\u22120.3\u00a0kn');
  expect(difference(0.04, knots)).toBe('no change');
});

it('names the unit of two ends once', () => {
  expect(span('+1.2\u00a0kn', '+1.2\u00a0kn')).toBe('+1.2\u00a0kn');
  expect(span('+1.2\u00a0kn', '+2.0\u00a0kn')).toBe('+1.2 to +2.0\u00a0kn');
  expect(span('no change', '\u22123%')).toBe('no change to \u22123%');
});
