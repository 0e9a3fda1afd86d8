import { describe, expect, it } from 'vitest';
import { departureAt, localReading } from '../../../src/components/conditions-form/departure.ts';

describe('departureAt', () => {
  it('writes the clock of the place with its offset', () => {
    expect(departureAt('2027-06-19T10:00', () => 60)).toBe('2027-06-19T10:00:00+01:00');
    expect(departureAt('2027-06-19T10:00', () => -210)).toBe('2027-06-19T10:00:00-03:30');
    expect(departureAt('2027-06-19T10:00', () => 0)).toBe('2027-06-19T10:00:00+00:00');
    expect(departureAt('2027-06-19T10:00:30', () => 60)).toBe('2027-06-19T10:00:00+01:00');
  });

  it('asks for the offset at that day, not today', () => {
    const asked: number[] = [];
    departureAt('2027-01-02T10:00', (local) => asked.push(local.getMonth()));
    expect(asked).toEqual([0]);
  });

  it('knows the offset of the device', () => {
    const written = departureAt('2027-06-19T10:00');
    expect(new Date(written!).getTime()).toBe(new Date(2027, 5, 19, 10).getTime());
  });

  it('gives nothing for an emptied or half filled field', () => {
    for (const reading of ['', '2027-06', 'tomorrow']) expect(departureAt(reading)).toBeUndefined();
  });
});

describe('localReading', () => {
  it('shows a departure in its own zone, wherever the device is', () => {
    expect(localReading('2027-06-19T10:00:00-02:00')).toBe('2027-06-19T10:00');
    expect(localReading('2027-06-19T10:00Z')).toBe('2027-06-19T10:00');
  });

  it('comes back through an edit unchanged', () => {
    const departure = '2027-06-19T10:00:00+05:45';
    expect(departureAt(localReading(departure), () => 345)).toBe(departure);
  });

  it('is empty where there is none', () => {
    expect(localReading(undefined)).toBe('');
    expect(localReading('soon')).toBe('');
  });
});
