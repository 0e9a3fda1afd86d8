import { describe, expect, it } from 'vitest';
import { readStreamPlaces, saysStreamPlaces, streamPlacesText } from '../../../src/core/files/stream-places-file.ts';
import { readStreamTable, type StreamColumns } from '../../../src/core/files/stream-table.ts';
import { KNOT } from '../../../src/core/units/convert.ts';
import { spreadStream } from '../../../src/core/water/spread-stream.ts';
import { place, reversing } from '../water/made-streams.ts';

const columns: StreamColumns = {
  hour: 'h',
  direction: 'set',
  springs: 'sp',
  neaps: 'np',
  unit: 'kn',
  name: 'place',
  lat: 'lat',
  lon: 'lon',
};
const head = 'place;lat;lon;h;set;sp;np';
const table = [
  head,
  'The Sill;46,01;-32,02;HW;240;0,4;0,2',
  'The Sill;46,01;-32,02;HW-1;60°;1,2;0,6',
  'The Sill;46,01;-32,02;HW+1;WSW;2;1',
  'Far Gap;46;-32;-1;10;1;',
].join('\n');

function read(text: string, of = columns) {
  const found = readStreamTable(text, of);
  if (!found.ok) throw new Error(found.problems.map(({ message }) => message).join('\n'));
  return found.value;
}

function refused(text: string, of = columns): string {
  const found = readStreamTable(text, of);
  return found.ok ? 'read' : found.problems.map(({ code, path }) => `${code} ${path}`).join(', ');
}

describe('a table of streams', () => {
  it('tells each place hour by hour, in whatever order its rows are', () => {
    const [sill, gap] = read(table);
    expect(sill).toMatchObject({ name: 'The Sill', lat: 46.01, lon: -32.02 });
    expect(sill!.hours.map(({ hour, setDeg }) => [hour, setDeg])).toEqual([
      [-1, 60],
      [0, 240],
      [1, 247.5],
    ]);
    expect(sill!.hours[1]!.springs).toBeCloseTo(0.4 * KNOT, 12);
    expect(gap!.hours).toEqual([{ hour: -1, setDeg: 10, springs: KNOT, neaps: undefined }]);
  });

  it('may be of one place that has still to be named and placed', () => {
    const { name: _n, lat: _a, lon: _o, ...bare } = columns;
    const rows = 'h,set,sp,np\n-1,60,1,0.5\n0,60,0.2,0.1';
    expect(read(rows, { ...bare, unit: 'm/s' })[0]).toMatchObject({ name: undefined, lat: undefined, lon: undefined });
  });

  it('is refused whole for a row that cannot be, which is named', () => {
    expect(refused(table.replace(';60°;', ';north-ish;'))).toBe('bad-row rows.3.set');
    expect(refused(table.replace(';1,2;', ';120;'))).toBe('bad-row rows.3.sp');
    expect(refused(table.replace('HW+1', 'HW+1.5'))).toBe('bad-row rows.4.h');
    expect(refused(table.replace('-32,02;HW+1', '-320;HW+1'))).toBe('bad-row rows.4.lon');
  });

  it('may have all the decimals that a program writes, and tells limits in a few', () => {
    const [one] = read(`${head}\nThe Sill;46,01;-32,02;HW;240;1.6666666666666667;0`);
    expect(one?.hours[0]?.springs).toBeCloseTo((5 / 3) * KNOT, 9);
    const fast = readStreamTable(`${head}\nThe Sill;46,01;-32,02;HW;240;20;0`, columns);
    expect(fast.ok ? '' : fast.problems[0]?.message).toContain('"20" is no figure from 0 to 19.4');
  });

  it('has every hour once and no gap', () => {
    expect(refused(table.replace('HW+1', 'HW+2'))).toBe('streams-not-hourly rows.2');
    expect(refused(table.replace('HW+1', 'HW'))).toBe('streams-not-hourly rows.2');
  });
});

describe('a file of stream places', () => {
  const run = { setDeg: 60, springs: 1, neaps: 0.5 };
  const guessed = spreadStream({ flood: run, ebb: { ...run, setDeg: 240 }, turns: 1 });
  const places = [place('Race', 46, -32, reversing(90, 1.2)), { name: 'Guess', lat: 46, lon: -32, ...guessed }];

  it('comes back as it was written, what is only guessed still marked', () => {
    const text = streamPlacesText(places);
    expect(saysStreamPlaces(text)).toBe(true);
    expect(readStreamPlaces(text)).toEqual({ ok: true, value: places });
  });

  it('is refused where lists differ in length, a rate is missing or the version is another', () => {
    const [race] = places;
    const codes = (text: string) => {
      const found = readStreamPlaces(text);
      return found.ok ? [] : found.problems.map(({ code }) => code);
    };
    expect(codes(streamPlacesText([{ ...race!, neaps: race!.neaps.slice(1) }]))).toEqual(['uneven']);
    expect(codes(streamPlacesText(places).replace('"rate": 0', '"rat": 0'))).not.toEqual([]);
    expect(codes(streamPlacesText(places).replace('"version": 1', '"version": 2'))).toEqual(['unknown-version']);
    expect(codes('{"format":"homeleg-stream-places","version":1}')).not.toEqual([]);
  });
});
