import { describe, expect, it } from 'vitest';
import { decimalSignOf } from '../../../src/core/files/table-cells.ts';

describe('the decimal sign of a table', () => {
  it('is that of the cells that leave no doubt', () => {
    expect(decimalSignOf(['1,5', '2,75', '1.234'], ';')).toBe(',');
    expect(decimalSignOf(['1.5', '2.75', '1,234'], ';')).toBe('.');
    expect(decimalSignOf(['0,123'], ';')).toBe(',');
    expect(decimalSignOf(['1.234,5'], ';')).toBe(',');
  });

  it('of three figures after a comma is the comma where it does not part the cells, of three after a point the point', () => {
    expect(decimalSignOf(['1,234', '12,500'], ';')).toBe(',');
    expect(decimalSignOf(['1,234'], ',')).toBe('.');
    expect(decimalSignOf(['1.234', '12.500'], ';')).toBe('.');
    expect(decimalSignOf(['1.234'], '\t')).toBe('.');
  });

  it('is the point where a sign only groups figures, or none stands', () => {
    expect(decimalSignOf(['1,234,567'], ';')).toBe('.');
    expect(decimalSignOf(['1.234.567'], ';')).toBe('.');
    expect(decimalSignOf(['12', 'slow', ''], ';')).toBe('.');
  });
});
