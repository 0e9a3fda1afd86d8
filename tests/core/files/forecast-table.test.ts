import { describe, expect, it } from 'vitest';
import { type ForecastColumns, forecastHeadings, readForecastTable } from '../../../src/core/files/forecast-table.ts';
import { KNOT } from '../../../src/core/units/convert.ts';

const columns: ForecastColumns = {
  time: 'time',
  direction: 'dir',
  speed: 'wind',
  gust: 'gust',
  speedUnit: 'kn',
  offset: 'Z',
};

function read(text: string, more: Partial<ForecastColumns> = {}) {
  const found = readForecastTable(text, { ...columns, ...more });
  if (!found.ok) throw new Error(found.problems.map(({ message }) => message).join('; '));
  return found.value;
}

function faults(text: string, more: Partial<ForecastColumns> = {}): string[] {
  const found = readForecastTable(text, { ...columns, ...more });
  return found.ok ? [] : found.problems.map(({ message }) => message);
}

const CSV = 'time,dir,wind,gust\n2026-07-15T09:00,240,10,15\n2026-07-15 12:00:00+02:00,SSW,"12,5",\n';

describe('readForecastTable', () => {
  it('reads a table as spreadsheets write it', () => {
    const wanted = [
      { time: '2026-07-15T09:00Z', fromDeg: 240, speed: 10 * KNOT, gust: 15 * KNOT },
      { time: '2026-07-15T12:00:00+02:00', fromDeg: 202.5, speed: 12.5 * KNOT },
    ];
    expect(read(CSV)).toEqual(wanted);
    expect(read(CSV.replaceAll('\n', '\r\n'))).toEqual(wanted);
    expect(read(`\uFEFF${CSV}\n\n`)).toEqual(wanted);
    expect(read('time;dir;wind;gust\n2026-07-15T09:00;240;10;15\n2026-07-15 12:00:00+02:00;ssw;12,5;-\n')).toEqual(
      wanted,
    );
    expect(read(CSV.replace('"12,5"', '12.5').replaceAll(',', '\t'))).toEqual(wanted);
  });

  it('finds the headings below rows about the place, whatever their case', () => {
    expect(read(`latitude,longitude\n46.0,-32.0\n\n${CSV.replace('time,dir,wind', 'Time,Dir,Wind')}`)).toHaveLength(2);
  });

  it('knows the units of the wind', () => {
    const one = (speedUnit: ForecastColumns['speedUnit'], cell: string) =>
      read(`time,dir,wind\n2026-07-15T09:00,0,${cell}\n`, { speedUnit, gust: undefined })[0]!.speed;
    expect(one('m/s', '5')).toBe(5);
    expect(one('km/h', '36')).toBeCloseTo(10, 12);
    expect(one('mph', '10')).toBeCloseTo(4.4704, 12);
    expect(one('kn', '10')).toBeCloseTo(5.1444, 4);
    // Middle of force 4, 5.5 to 7.9 m/s.
    expect(one('Bft', '4')).toBeCloseTo(6.7, 1);
    expect(one('Bft', '3-4')).toBe(one('Bft', '4'));
  });

  it('turns directions that tell where the wind blows to', () => {
    expect(read(CSV, { directionMeans: 'towards' }).map(({ fromDeg }) => fromDeg)).toEqual([60, 22.5]);
  });

  it('reads a list of objects, nested or not', () => {
    const list = [
      { at: 1784106000, wind: { from: 200, mean: 4, gusts: 7 } },
      { at: 1784109600000, wind: { from: 'NW', mean: 5 } },
    ];
    const named = {
      time: 'at',
      direction: 'wind.from',
      speed: 'wind.mean',
      gust: 'wind.gusts',
      speedUnit: 'm/s',
    } as const;
    const wanted = [
      { time: '2026-07-15T09:00:00.000Z', fromDeg: 200, speed: 4, gust: 7 },
      { time: '2026-07-15T10:00:00.000Z', fromDeg: 315, speed: 5 },
    ];
    expect(read(JSON.stringify(list), named)).toEqual(wanted);
    expect(read(JSON.stringify({ place: 'x', entries: list }), named)).toEqual(wanted);
    expect(read(JSON.stringify({ a: { b: { list } } }), { ...named, within: 'a.b.list' })).toEqual(wanted);
  });

  it('reads lists side by side', () => {
    const hourly = {
      time: ['2026-07-15T09:00', '2026-07-15T10:00'],
      dir: [240, 250],
      wind: [10, 11],
      gust: [null, 15],
    };
    expect(read(JSON.stringify({ latitude: 46, hourly }))).toEqual([
      { time: '2026-07-15T09:00Z', fromDeg: 240, speed: 10 * KNOT },
      { time: '2026-07-15T10:00Z', fromDeg: 250, speed: 11 * KNOT, gust: 15 * KNOT },
    ]);
    const short = { ...hourly, wind: [10] };
    expect(faults(JSON.stringify({ hourly: short }))).toEqual(['Row 2, wind: the wind is missing']);
  });

  it('needs no direction in a calm', () => {
    expect(read('time,dir,wind,gust\n2026-07-15T09:00,,0,\n')).toEqual([
      { time: '2026-07-15T09:00Z', fromDeg: 0, speed: 0 },
    ]);
  });

  it('names row, column and fault of everything it cannot read, and then reads nothing', () => {
    const text =
      'time,dir,wind,gust\n2026-07-15T09:00,240,10,\n15/07/2026,240,10,\n\n2026-02-30T09:00,240,10,\n2026-07-15T12:00,VRB,-3,x\n';
    expect(faults(text)).toEqual([
      'Row 3, time: "15/07/2026" is no time such as 2026-07-15T09:00 or 2026-07-15T09:00+01:00',
      'Row 5, time: "2026-02-30T09:00" is no time of the calendar',
      'Row 6, wind: the wind is below zero',
      'Row 6, gust: "x" is no number',
      'Row 6, dir: "VRB" is neither degrees nor a point of the compass',
    ]);
  });

  it('refuses winds of a wrong unit or column, and directions beyond the circle', () => {
    expect(faults('time,dir,wind,gust\n2026-07-15T09:00,361,400,\n')).toEqual([
      'Row 2, wind: 400 kn is no wind: a wrong unit or column?',
      'Row 2, dir: 361 degrees are not within 0 to 360',
    ]);
    expect(faults('time,dir,wind,gust\n2026-07-15T09:00,0,13,\n', { speedUnit: 'Bft' })).toHaveLength(1);
  });

  it('refuses a time without an offset where none is given for the table', () => {
    expect(faults(CSV, { offset: undefined })).toEqual([
      'Row 2, time: the time has no offset from UTC, and none is given for the table',
    ]);
  });

  it('says which column is not there', () => {
    expect(faults(CSV, { speed: 'speed', gust: 'blast' })).toEqual([
      'The table has no column "speed"',
      'The table has no column "blast"',
    ]);
    expect(faults('[{"time":"x"}]')).toContain('The table has no column "wind"');
  });

  it('refuses what is no table', () => {
    expect(faults('')).toEqual(['The table is empty']);
    expect(faults('time,dir,wind,gust\n')).toEqual(['The table has no rows']);
    expect(faults('{"a": 1}')).toEqual(['The file holds no list of forecast times']);
    expect(faults('[1, 2]')).toEqual(['The file holds no list of forecast times']);
    expect(faults('{"a": [1,')[0]).toContain('ends too early');
    expect(faults('time,dir,wind,gust\n"2026-07-15T09:00,240,10,15\n')[0]).toContain('quote');
    expect(faults('{"__proto__": [1], "b": [2]}')).not.toEqual([]);
    expect(faults(CSV, { within: 'hourly' })).toEqual([]);
    expect(faults('{"x": []}', { within: 'hourly' })).toEqual(['The file has no part "hourly"']);
  });

  it('tells at most twenty faults one by one and how many more there are', () => {
    const rows = Array.from({ length: 50 }, () => '2026-07-15T09:00,240,x,').join('\n');
    const told = faults(`time,dir,wind,gust\n${rows}\n`);
    expect(told).toHaveLength(21);
    expect(told[20]).toBe('And 30 more');
  });

  it('refuses more rows than a forecast has', () => {
    const rows = Array.from({ length: 5001 }, () => '2026-07-15T09:00,240,5,').join('\n');
    expect(faults(`time,dir,wind,gust\n${rows}\n`)).toEqual(['At most 5000 rows are read']);
  });
});

describe('forecastHeadings', () => {
  it('offers the columns and the first row to choose from', () => {
    expect(forecastHeadings(CSV)).toEqual({
      ok: true,
      value: { columns: ['time', 'dir', 'wind', 'gust'], first: ['2026-07-15T09:00', '240', '10', '15'], rows: 2 },
    });
    const nested = forecastHeadings('[{"at": 1, "wind": {"from": 2}}]');
    expect(nested).toMatchObject({ ok: true, value: { columns: ['at', 'wind.from'], first: ['1', '2'] } });
  });
});
