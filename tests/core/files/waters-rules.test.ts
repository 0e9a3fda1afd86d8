import { expect, it } from 'vitest';
import { degrees } from '../../../src/core/files/waters-rules.ts';

it('a direction is from north round to north again', () => {
  const fine = (value: unknown) => degrees.fault(value) === undefined;
  expect([0, 0.5, 180, 360].map(fine)).toEqual([true, true, true, true]);
  expect([-0.1, 360.1, Number.NaN, '90', undefined].map(fine)).toEqual(Array(5).fill(false));
  expect(degrees.schema).toEqual({ type: 'number', minimum: 0, maximum: 360 });
});
