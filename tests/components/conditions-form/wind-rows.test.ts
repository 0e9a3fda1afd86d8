import { describe, expect, it } from 'vitest';
import { aroundTrip } from '../../../src/components/conditions-form/around-trip.ts';
import { forecastGuess } from '../../../src/components/conditions-form/forecast-guess.ts';
import { offsetText, placeClock } from '../../../src/components/conditions-form/place-clock.ts';
import { windReach } from '../../../src/components/conditions-form/wind-reach.ts';
import {
  directionOf,
  inOrder,
  nextRow,
  readRow,
  rowOf,
  sortedRows,
  type WindRow,
} from '../../../src/components/conditions-form/wind-rows.ts';
import { measuresFor } from '../../../src/components/units/measures.ts';
import { HOUR, KNOT } from '../../../src/core/units/convert.ts';
import type { WindAt } from '../../../src/core/water/shapes.ts';

const knots = measuresFor('nautical', 'en');
const clock = placeClock({ departure: '2027-06-19T10:00:00-02:00' });
const row = (change: Partial<WindRow> = {}): WindRow => ({
  key: 1,
  time: '2027-06-19T09:00',
  from: 'SW',
  speed: '10',
  gust: '',
  ...change,
});

describe('a row of the wind', () => {
  it('is read on the clock of the place and in the units shown', () => {
    expect(readRow(row(), clock, knots).wind).toEqual({
      time: '2027-06-19T09:00:00-02:00',
      fromDeg: 225,
      speed: 10 * KNOT,
    });
    expect(readRow(row({ from: '240', speed: '10,5' }), clock, measuresFor('metric', 'de')).wind).toMatchObject({
      fromDeg: 240,
      speed: expect.closeTo(10.5 / 3.6, 9),
    });
  });

  it('half filled in tells nothing, and says which cell is missing', () => {
    expect(readRow(row({ speed: '' }), clock, knots)).toEqual({ wind: undefined, faults: { speed: 'no-speed' } });
    expect(readRow(row({ from: 'seaward' }), clock, knots).faults).toEqual({ from: 'no-from' });
    expect(readRow(row({ time: '' }), clock, knots).faults).toEqual({ time: 'no-time' });
  });

  it('may be calm without a direction', () => {
    expect(readRow(row({ from: '', speed: '0' }), clock, knots).wind).toMatchObject({ speed: 0 });
  });

  it('is refused where it cannot be wind: a storm, or gusts below the mean', () => {
    expect(readRow(row({ speed: '95' }), clock, knots).faults).toEqual({ speed: 'too-much' });
    expect(readRow(row({ speed: '-4' }), clock, knots).faults).toEqual({ speed: 'no-speed' });
    expect(readRow(row({ gust: '6' }), clock, knots).faults).toEqual({ gust: 'gust-below' });
    expect(readRow(row({ gust: '16' }), clock, knots).wind).toMatchObject({ gust: 16 * KNOT });
  });

  it('written and read again is the same wind to the figures shown', () => {
    const wind: WindAt = { time: '2027-06-19T12:00:00Z', fromDeg: 200, speed: 5, gust: 8 };
    const read = readRow(rowOf(wind, 1, clock, knots), clock, knots).wind!;
    expect(Date.parse(read.time)).toBe(Date.parse(wind.time));
    expect(read.fromDeg).toBe(200);
    expect(Math.abs(read.speed - 5)).toBeLessThan(0.05);
  });

  it('goes on three hours after the last, over midnight too', () => {
    expect(nextRow([row({ time: '2027-06-19T22:30' })], 2, undefined, clock)).toMatchObject({
      time: '2027-06-20T01:30',
      from: 'SW',
      speed: '',
    });
    expect(nextRow([], 1, '2027-06-19T10:20:00-02:00', clock).time).toBe('2027-06-19T10:00');
  });
});

describe('directions', () => {
  it('are degrees or points, and nothing else', () => {
    expect(['SW', 'sw', ' 225° ', '360', 'NNE'].map((text) => directionOf(text, 'en'))).toEqual([
      225, 225, 225, 0, 22.5,
    ]);
    expect(['', '361', '-5', 'south'].map((text) => directionOf(text, 'en'))).toEqual(Array(4).fill(undefined));
  });
});

describe('rows', () => {
  it('are put in order of time, those without one last', () => {
    const rows = [row({ key: 1, time: '' }), row({ key: 2, time: '2027-06-19T12:00' }), row({ key: 3 })];
    expect(inOrder(rows)).toBe(false);
    expect(sortedRows(rows).map(({ key }) => key)).toEqual([3, 2, 1]);
    expect(inOrder(sortedRows(rows))).toBe(true);
  });
});

describe('the clock of the place', () => {
  it('is that of its zone, summer and winter', () => {
    const paris = placeClock({ timezone: 'Europe/Paris' });
    expect(paris.instant('2027-07-01T10:00')).toBe('2027-07-01T10:00:00+02:00');
    expect(paris.instant('2027-01-01T10:00')).toBe('2027-01-01T10:00:00+01:00');
    expect(paris.reading('2027-07-01T08:00:00Z')).toBe('2027-07-01T10:00');
  });

  it('has no such time in the hour that is skipped, and the first of an hour shown twice', () => {
    const paris = placeClock({ timezone: 'Europe/Paris' });
    expect(paris.instant('2027-03-28T02:30')).toBeUndefined();
    expect(paris.instant('2027-10-31T02:30')).toBe('2027-10-31T02:30:00+02:00');
  });

  it('of a trip without zone is the offset that the trip was written with', () => {
    expect(clock.instant('2027-12-24T10:00')).toBe('2027-12-24T10:00:00-02:00');
    expect(offsetText(clock.offsetAt(0))).toBe('UTC\u221202:00');
    expect(offsetText(5.75 * HOUR)).toBe('UTC+05:45');
  });

  it('of an unknown zone falls back to the offset', () => {
    const mars = placeClock({ timezone: 'Mars/Base', departure: '2027-06-19T10:00:00+01:00' });
    expect(mars.instant('2027-06-19T11:00')).toBe('2027-06-19T11:00:00+01:00');
  });
});

describe('how far a forecast reaches', () => {
  const forecast = [9, 12, 15].map(
    (hour): WindAt => ({
      time: `2027-06-19T${String(hour).padStart(2, '0')}:00:00Z`,
      fromDeg: 200,
      speed: 4,
    }),
  );
  const at = (hour: number) => `2027-06-19T${String(hour).padStart(2, '0')}:00:00Z`;

  it('covers a trip that it outlasts', () => {
    expect(windReach(forecast, at(10), 4 * HOUR)).toEqual({ kind: 'covers', until: at(15) });
  });

  it('ends early, starts late or is unknown, and that is told apart', () => {
    expect(windReach(forecast, at(10), 6 * HOUR)).toEqual({ kind: 'ends-early', at: at(15) });
    expect(windReach(forecast, at(8), 2 * HOUR)).toEqual({ kind: 'starts-late', at: at(9) });
    expect(windReach(forecast, undefined, 2 * HOUR)).toEqual({ kind: 'no-departure' });
    expect(windReach([], at(8), 2 * HOUR)).toEqual({ kind: 'empty' });
  });

  it('does not reach over a gap of more than half a day', () => {
    const later = { ...forecast[0]!, time: '2027-06-20T09:00:00Z' };
    expect(windReach([...forecast, later], at(14), 8 * HOUR)).toEqual({ kind: 'gap', at: later.time });
  });
});

describe('guessing the columns of a forecast', () => {
  it('goes by headings and their units', () => {
    expect(forecastGuess(['Valid time', 'Wind dir (deg)', 'Wind speed (kn)', 'Gust (kn)'], [])).toEqual({
      time: 'Valid time',
      direction: 'Wind dir (deg)',
      speed: 'Wind speed (kn)',
      gust: 'Gust (kn)',
      speedUnit: 'kn',
      gustUnit: 'kn',
    });
  });

  it('reads headings joined by underscores, and never guesses a unit that is not there', () => {
    expect(forecastGuess(['time', 'wind_speed_10m', 'wind_direction_10m', 'wind_gusts_10m'], [])).toEqual({
      time: 'time',
      speed: 'wind_speed_10m',
      direction: 'wind_direction_10m',
      gust: 'wind_gusts_10m',
    });
  });

  it('looks at the first row where the headings say nothing', () => {
    expect(forecastGuess(['a', 'b', 'Wind m/s'], ['2027-06-19T09:00', 'SW', '4'])).toEqual({
      time: 'a',
      direction: 'b',
      speed: 'Wind m/s',
      speedUnit: 'm/s',
    });
  });
});

describe('of a long forecast', () => {
  const hourly = Array.from(
    { length: 240 },
    (_, i): WindAt => ({
      time: new Date(Date.UTC(2027, 5, 18) + i * 3_600_000).toISOString(),
      fromDeg: 0,
      speed: 1,
    }),
  );

  it('the days of the trip are kept, a short one whole', () => {
    const kept = aroundTrip(hourly, '2027-06-19T10:00:00Z');
    expect(kept[0]!.time).toBe('2027-06-18T22:00:00.000Z');
    expect(kept.length).toBeLessThan(100);
    expect(aroundTrip(hourly.slice(0, 50), undefined)).toHaveLength(50);
  });

  it('of other days than the trip nothing is made up', () => {
    expect(aroundTrip(hourly, '2028-01-01T10:00:00Z')).toEqual(hourly);
  });
});
