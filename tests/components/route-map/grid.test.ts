import { describe, expect, it } from 'vitest';
import { gridLabel, gridStep, gridValues } from '../../../src/components/route-map/grid.ts';
import { roundDistance } from '../../../src/components/route-map/scale-bar.ts';
import { measuresFor } from '../../../src/components/units/measures.ts';

describe('the grid', () => {
  it('has steps that read well on a chart', () => {
    expect(gridStep(0.09, 6)).toBe(1);
    expect(gridStep(160, 6)).toBe(1800);
  });

  it('runs through whole steps only', () => {
    expect(gridValues(45.99, 46.04, 1).map((degrees) => Math.round(degrees * 60))).toEqual([2760, 2761, 2762]);
  });

  it('is labelled in degrees and minutes, with tenths where it has them', () => {
    expect(gridLabel(46 + 2 / 60, 'lat', 1)).toBe('46°02′N');
    expect(gridLabel(-32.025, 'lon', 0.5)).toBe('32°01.5′W');
    expect(gridLabel(-10, 'lat', 600)).toBe('10°S');
    expect(gridLabel(0, 'lat', 60)).toBe('0°');
  });

  it('names a longitude of the next turn of the map as it is called', () => {
    expect(gridLabel(190, 'lon', 60)).toBe('170°W');
  });
});

describe('the scale bar', () => {
  it('is a round figure in the units of the page that fits the room', () => {
    expect(roundDistance(1000, measuresFor('nautical', 'en'))).toBeCloseTo(926, 6);
    expect(roundDistance(1000, measuresFor('metric', 'en'))).toBeCloseTo(1000, 6);
    expect(roundDistance(999, measuresFor('metric', 'en'))).toBeCloseTo(500, 6);
  });
});
