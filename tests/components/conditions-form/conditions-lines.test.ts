import { describe, expect, it } from 'vitest';
import { conditionsLines } from '../../../src/components/conditions-form/conditions-lines.ts';
import { measuresFor } from '../../../src/components/units/measures.ts';
import type { Conditions } from '../../../src/core/water/shapes.ts';
import { SPRINGS } from '../../core/trip/day-on-the-water.ts';

const lines = (conditions: Partial<Conditions>) =>
  conditionsLines({ water: 'sea', ...conditions }, measuresFor('metric', 'en')).map((line) =>
    line.replaceAll('\u00a0', ' '),
  );

describe('the day in lines', () => {
  it('says what was not given', () => {
    expect(lines({})).toEqual(['Not given: departure, wind, stream, and sea.']);
  });

  it('tells departure, forecast, tide and swell on the clock of the place', () => {
    const told = lines({
      departure: '2027-06-19T10:00:00-02:00',
      wind: { forecast: [{ time: '2027-06-19T14:00:00Z', fromDeg: 225, speed: 5, gust: 9 }] },
      stream: 'by-tide',
      tide: SPRINGS,
      sea: { swell: 0.3 },
    });
    expect(told).toEqual([
      'Departure Sat, Jun 19, 10:00 (UTC\u221202:00).',
      'Wind by time: Sat, Jun 19, 12:00 18.0 km/h from SW, gusts 32.4 km/h.',
      'Streams by place and tide, indicative.',
      'High water at Marl Haven Sat, Jun 19, 13:00, 4.6 m, range 4 m.',
      'Waves worked out from the wind, with a swell of 0.3 m.',
    ]);
  });

  it('shortens a long forecast and says so', () => {
    const forecast = Array.from({ length: 20 }, (_, i) => ({
      time: `2027-06-19T${String(i).padStart(2, '0')}:00:00Z`,
      fromDeg: 0,
      speed: 1,
    }));
    expect(lines({ wind: { forecast } })[0]).toMatch(/; and 8 more\.$/);
  });
});
