import { describe, expect, it } from 'vitest';
import { figureList } from '../../../src/components/units/figure-list.ts';

describe('figureList', () => {
  it('cuts at commas, semicolons and spaces', () => {
    expect(figureList('85, 70;32  20', 'en')).toEqual(['85', '70', '32', '20']);
    expect(figureList('85,70,32', 'en')).toEqual(['85', '70', '32']);
    expect(figureList('85.5,70', 'en')).toEqual(['85.5', '70']);
    expect(figureList(' ', 'de')).toEqual([]);
  });

  it('takes one digit after a comma as a decimal where the comma is the decimal sign', () => {
    expect(figureList('85,5', 'de')).toEqual(['85.5']);
    expect(figureList('85,5, 70', 'fr')).toEqual(['85.5', '70']);
    expect(figureList('85,5 70,5; 32', 'es')).toEqual(['85.5', '70.5', '32']);
    expect(figureList('85,5', 'en')).toEqual(['85', '5']);
  });

  it('never makes one light person of two', () => {
    expect(figureList('85,70', 'de')).toEqual(['85', '70']);
    expect(figureList('85,70,32', 'de')).toEqual(['85', '70', '32']);
    expect(figureList('85,70,9', 'de')).toEqual(['85', '70', '9']);
  });
});
