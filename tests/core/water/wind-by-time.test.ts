import { describe, expect, it } from 'vitest';
import { HOUR, MINUTE } from '../../../src/core/units/convert.ts';
import { secondsOf } from '../../../src/core/water/clock.ts';
import { meanWindBefore, strongestWind, windAt, windTable } from '../../../src/core/water/wind-by-time.ts';

const nine = secondsOf('2026-07-15T09:00:00+01:00');
const table = windTable([
  { time: '2026-07-15T12:00:00+01:00', fromDeg: 280, speed: 8, gust: 12 },
  { time: '2026-07-15T09:00:00+01:00', fromDeg: 190, speed: 6 },
  { time: '2026-07-15T16:00:00+02:00', fromDeg: 280, speed: 5, gust: 8 },
]);

function known(at: number, of = table) {
  const there = windAt(of, at);
  if (!there.known) throw new Error(there.why);
  return there;
}

describe('windAt', () => {
  it('is the entry at its own time, whatever the order and the offsets of the list', () => {
    expect(known(nine)).toMatchObject({ wind: { fromDeg: 190, speed: 6 }, gust: undefined });
    expect(known(nine + 3 * HOUR)).toMatchObject({ wind: { fromDeg: 280, speed: 8 }, gust: 12 });
    expect(known(nine + 6 * HOUR)).toMatchObject({ wind: { fromDeg: 280, speed: 5 }, gust: 8 });
  });

  it('keeps the speed of a wind that veers, where the mean vector would calm it', () => {
    const veering = windTable([
      { time: '2026-07-15T09:00:00Z', fromDeg: 350, speed: 7 },
      { time: '2026-07-15T11:00:00Z', fromDeg: 80, speed: 7 },
    ]);
    const between = known(secondsOf('2026-07-15T10:00:00Z'), veering);
    expect(between.wind.speed).toBe(7);
    expect(between.wind.fromDeg).toBeCloseTo(35, 9);
    expect(between.turnsDeg).toBeCloseTo(90, 9);
  });

  it('gives a direction even between winds that oppose, and says how far they turn', () => {
    const back = windTable([
      { time: '2026-07-15T09:00:00Z', fromDeg: 0, speed: 4 },
      { time: '2026-07-15T11:00:00Z', fromDeg: 180, speed: 4 },
    ]);
    expect(known(secondsOf('2026-07-15T10:00:00Z'), back)).toMatchObject({
      wind: { fromDeg: 180, speed: 4 },
      turnsDeg: 180,
    });
  });

  it('holds a gust that only one of two entries tells', () => {
    expect(known(nine + HOUR).gust).toBe(12);
  });

  it('is unknown before the first entry and after the last, and says until when', () => {
    expect(windAt(table, nine - 1)).toEqual({ known: false, why: 'before-first', until: nine });
    expect(windAt(table, nine + 6 * HOUR + 1)).toEqual({ known: false, why: 'after-last', until: nine + 6 * HOUR });
    expect(windAt(windTable([]), nine)).toEqual({ known: false, why: 'no-entries' });
  });

  it('is unknown in a gap of more than twelve hours', () => {
    const sparse = windTable([
      { time: '2026-07-15T06:00:00Z', fromDeg: 0, speed: 4 },
      { time: '2026-07-15T18:01:00Z', fromDeg: 0, speed: 4 },
    ]);
    expect(windAt(sparse, secondsOf('2026-07-15T12:00:00Z'))).toMatchObject({ known: false, why: 'gap' });
  });

  it('lets the stronger of two entries for one time stand', () => {
    const twice = windTable([
      { time: '2026-07-15T09:00:00Z', fromDeg: 0, speed: 4 },
      { time: '2026-07-15T10:00:00+01:00', fromDeg: 10, speed: 9 },
    ]);
    expect(known(secondsOf('2026-07-15T09:00:00Z'), twice).wind.speed).toBe(9);
  });
});

describe('strongestWind', () => {
  it('finds the peak of an entry inside the span', () => {
    expect(strongestWind(table, nine + HOUR, nine + 5 * HOUR)).toEqual({ known: true, speed: 8, gust: 12 });
  });

  it('is unknown where the forecast ends before the trip does', () => {
    expect(strongestWind(table, nine, nine + 7 * HOUR)).toMatchObject({ known: false, why: 'after-last' });
  });

  it('notices a gap inside the span', () => {
    const sparse = windTable([
      { time: '2026-07-15T06:00:00Z', fromDeg: 0, speed: 4 },
      { time: '2026-07-15T20:00:00Z', fromDeg: 0, speed: 4 },
    ]);
    const from = secondsOf('2026-07-15T06:00:00Z');
    expect(strongestWind(sparse, from, from + 14 * HOUR)).toMatchObject({ known: false, why: 'gap' });
  });
});

describe('meanWindBefore', () => {
  it('is the mean of a wind that rises evenly', () => {
    const mean = meanWindBefore(table, nine + 3 * HOUR, 90 * MINUTE);
    if (!mean.known) throw new Error(mean.why);
    expect(mean.speed).toBeCloseTo(7.5, 12);
    expect(mean.covered).toBeCloseTo(1, 12);
  });

  it('says how much of the time the forecast covers', () => {
    const mean = meanWindBefore(table, nine + HOUR, 4 * HOUR);
    if (!mean.known) throw new Error(mean.why);
    expect(mean.covered).toBeCloseTo(0.25, 12);
    expect(mean.speed).toBeCloseTo((6 + 6 + 2 / 3) / 2, 12);
  });
});
