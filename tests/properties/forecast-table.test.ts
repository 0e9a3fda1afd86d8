import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { forecastHeadings, readForecastTable } from '../../src/core/files/forecast-table.ts';

const columns = { time: 'time', direction: 'dir', speed: 'wind', gust: 'gust', speedUnit: 'm/s' } as const;

describe('readForecastTable', () => {
  it('gives back every row that was written, as CSV and as JSON', () => {
    const row = fc.record({
      time: fc.integer({ min: 1.6e9, max: 2e9 }).map((at) => `${new Date(at * 1000).toISOString().slice(0, 19)}Z`),
      dir: fc.integer({ min: 0, max: 359 }),
      wind: fc.integer({ min: 0, max: 300 }).map((tenths) => tenths / 10),
      gust: fc.integer({ min: 0, max: 400 }).map((tenths) => tenths / 10),
    });
    fc.assert(
      fc.property(fc.array(row, { minLength: 1, maxLength: 30 }), fc.constantFrom(',', ';', '\t'), (rows, mark) => {
        const wanted = rows.map(({ time, dir, wind, gust }) => ({ time, fromDeg: dir, speed: wind, gust }));
        const lines = rows.map(({ time, dir, wind, gust }) => [time, dir, wind, gust].join(mark));
        const csv = [['time', 'dir', 'wind', 'gust'].join(mark), ...lines].join('\n');
        expect(readForecastTable(csv, columns)).toEqual({ ok: true, value: wanted });
        expect(readForecastTable(JSON.stringify(rows), columns)).toEqual({ ok: true, value: wanted });
      }),
      { seed: 47, numRuns: 100 },
    );
  });

  it('never throws, whatever it is given', () => {
    const text = fc.oneof(
      fc.string({ maxLength: 300, unit: 'binary' }),
      fc.string({
        maxLength: 200,
        unit: fc.constantFrom('time', 'dir', 'wind', 'gust', ',', ';', '\n', '"', '1', '-', '.'),
      }),
      fc.json(),
    );
    fc.assert(
      fc.property(text, (given) => {
        const found = readForecastTable(given, columns);
        if (!found.ok) expect(found.problems.length).toBeGreaterThan(0);
        else expect(found.value.length).toBeGreaterThan(0);
        forecastHeadings(given);
      }),
      { seed: 48, numRuns: 500 },
    );
  });
});
