import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readWaters, readWatersText } from '../../../src/core/files/waters-file.ts';
import type { Problem, Result } from '../../../src/core/units/result.ts';
import type { Loose } from './full-trips.ts';

const haven = readFileSync(new URL('../../../shared/waters/haven.geojson', import.meta.url), 'utf8');

const SQUARE = [
  [10, 50],
  [10.1, 50],
  [10.1, 50.1],
  [10, 50.1],
  [10, 50],
];

function feature(properties: object, geometry: unknown = { type: 'Polygon', coordinates: [SQUARE] }): Loose {
  return { type: 'Feature', properties: { name: 'Cold Rock', ...properties }, geometry };
}

const land = (geometry?: unknown) => feature({ kind: 'land' }, geometry);
const point = { type: 'Point', coordinates: [10, 50] };

function waters(...features: unknown[]): Loose {
  return { type: 'FeatureCollection', features };
}

function problemsOf(result: Result<unknown>): readonly Problem[] {
  return result.ok ? [] : result.problems;
}

describe('readWaters', () => {
  it('takes the shipped estuary as it is', () => {
    const result = readWatersText(haven);
    expect(result).toEqual({ ok: true, value: JSON.parse(haven) });
  });

  it('takes every kind with the properties it needs', () => {
    const row = { h: -1, set_deg: 90, spring_kn: 1, neap_kn: 0.5 };
    const file = waters(
      land({ type: 'MultiPolygon', coordinates: [[SQUARE], [SQUARE, SQUARE]] }),
      feature({ kind: 'shoal', dries_m: -1.2 }),
      feature({ kind: 'speed-limit', limit_kn: 6 }),
      feature({ kind: 'keep-out', season: '11-01/02-29', reason: 'birds' }),
      feature({ kind: 'keep-out', season: 'all year' }),
      feature({ kind: 'landing', fuel: true }, { type: 'Point', coordinates: [10, 50, 3] }),
      feature({ kind: 'stream', hours: [row, { ...row, h: 0 }] }, point),
    );
    expect(readWaters(file)).toEqual({ ok: true, value: file });
  });

  it('leaves alone what it does not know beside the kind', () => {
    const file = { ...waters({ ...land(), id: 7, bbox: [1, 2, 3, 4] }), made_by: 'somebody', tide: { Z0: 1 } };
    file.features[0].properties.colour = 'grey';
    expect(readWaters(file)).toEqual({ ok: true, value: file });
  });

  it('takes who answers for the waters, when they were surveyed and until when they hold', () => {
    const file = { ...waters(land()), responsible: 'The club', surveyed: '2026-04-01', validUntil: '2026-04-01' };
    expect(readWaters(file)).toEqual({ ok: true, value: file });
  });

  it.each([
    ['responsible', 5],
    ['responsible', 'x'.repeat(201)],
    ['surveyed', '1 April 2026'],
    ['surveyed', '2026-02-30'],
    ['validUntil', 20270430],
    ['validUntil', '2026-03-31'],
  ])('names the member %s that is not what it must be', (member, value) => {
    const dated = { ...waters(land()), surveyed: '2026-04-01', validUntil: '2027-04-01', [member]: value };
    expect(problemsOf(readWaters(dated))).toMatchObject([{ path: member }]);
  });

  it('takes a set route as a line, with its shape', () => {
    const line = { type: 'LineString', coordinates: SQUARE.slice(0, 2) };
    const file = waters(feature({ kind: 'route', shape: 'out-and-home', id: 'bay' }, line));
    expect(readWaters(file)).toEqual({ ok: true, value: file });
    const wrong = (properties: object, geometry: unknown) =>
      problemsOf(readWaters(waters(feature({ kind: 'route', ...properties }, geometry)))).map(({ path }) => path);
    expect(wrong({ shape: 'round' }, line)).toEqual(['features.0.properties.shape']);
    expect(wrong({}, { ...line, coordinates: [SQUARE[0]] })).toEqual(['features.0.geometry.coordinates']);
    expect(wrong({}, { ...line, coordinates: [SQUARE[0], [190, 5]] })).toEqual(['features.0.geometry.coordinates.1']);
    expect(wrong({}, point)).toEqual(['features.0.geometry.type']);
  });

  it('takes a box across the 180th meridian and one with heights', () => {
    for (const bbox of [
      [179, -17, -179, -16],
      [10, 50, -5, 11, 51, 30],
    ]) {
      expect(readWaters({ ...waters(land()), bbox }).ok).toBe(true);
    }
    for (const bbox of [
      [10, 51, 11, 50],
      [10, 50, 11],
      [10, 50, 11, 95],
      [10, 50, 10, 51],
      'all',
      [10, 50, 11, null],
      [200, 0, 201, 1],
    ]) {
      expect(problemsOf(readWaters({ ...waters(land()), bbox }))).toMatchObject([{ path: 'bbox' }]);
    }
  });

  it.each([
    ['an unclosed outline', [SQUARE.slice(0, 4)], 'features.1.geometry.coordinates.0', 'not closed'],
    [
      'a line instead of an area',
      [[SQUARE[0], SQUARE[1], SQUARE[0]]],
      'features.1.geometry.coordinates.0',
      'at least 4',
    ],
    [
      'latitude written first',
      [SQUARE.map(([x, y]) => [y! + 50, x! + 85])],
      'features.1.geometry.coordinates.0.0',
      'longitude comes first',
    ],
    ['a position of one number', [[[10], ...SQUARE]], 'features.1.geometry.coordinates.0.0', 'longitude, latitude'],
    ['a position of words', [[['10', '50'], ...SQUARE]], 'features.1.geometry.coordinates.0.0', 'longitude, latitude'],
    ['a position that is not there', [[null, ...SQUARE]], 'features.1.geometry.coordinates.0.0', 'longitude, latitude'],
    [
      'an infinite position',
      [[[Infinity, 50], ...SQUARE]],
      'features.1.geometry.coordinates.0.0',
      'longitude, latitude',
    ],
    ['a hole with two corners', [SQUARE, SQUARE.slice(0, 2)], 'features.1.geometry.coordinates.1', 'at least 4'],
    ['no outline', [], 'features.1.geometry.coordinates', 'no outline'],
    ['a word for an outline', 'round', 'features.1.geometry.coordinates', 'no outline'],
    ['a number for a ring', [5], 'features.1.geometry.coordinates.0', 'list of positions'],
  ])('names the feature that has %s', (_name, coordinates, path, words) => {
    const problems = problemsOf(readWaters(waters(land(), land({ type: 'Polygon', coordinates }))));
    expect(problems).toMatchObject([{ path }]);
    expect(problems[0]!.message).toMatch(/^Feature 2 \(Cold Rock\): /);
    expect(problems[0]!.message).toContain(words);
    const many = problemsOf(readWaters(waters(land({ type: 'MultiPolygon', coordinates: [[SQUARE], coordinates] }))));
    expect(many[0]!.path).toContain('features.0.geometry.coordinates.1');
  });

  it.each([
    [{ kind: 'Land' }, 'kind'],
    [{}, 'kind'],
    [{ kind: 'land', name: '' }, 'name'],
    [{ kind: 'land', name: 'x'.repeat(201) }, 'name'],
    [{ kind: 'land', name: undefined }, 'name'],
    [{ kind: 'shoal', dries_m: '1 m' }, 'dries_m'],
    [{ kind: 'shoal', dries_m: null }, 'dries_m'],
    [{ kind: 'speed-limit' }, 'limit_kn'],
    [{ kind: 'speed-limit', limit_kn: 0 }, 'limit_kn'],
    [{ kind: 'speed-limit', limit_kn: Number.NaN }, 'limit_kn'],
    [{ kind: 'keep-out', season: 'summer' }, 'season'],
    [{ kind: 'keep-out', season: '02-30/09-15' }, 'season'],
    [{ kind: 'keep-out', season: '13-01/09-15' }, 'season'],
    [{ kind: 'keep-out', reason: 5 }, 'reason'],
  ])('names the property that is wrong in %j', (properties, field) => {
    const problems = problemsOf(readWaters(waters(feature(properties))));
    expect(problems).toMatchObject([{ path: `features.0.properties.${field}` }]);
    expect(problems[0]!.message).toContain(`"${field}"`);
  });

  it('wants a landing and a stream at a point, and a zone as an area', () => {
    expect(problemsOf(readWaters(waters(feature({ kind: 'landing' }))))).toMatchObject([
      { path: 'features.0.geometry.type' },
    ]);
    expect(problemsOf(readWaters(waters(land(point))))).toMatchObject([{ path: 'features.0.geometry.type' }]);
    expect(problemsOf(readWaters(waters(land({ type: 'GeometryCollection', geometries: [] }))))).toHaveLength(1);
    expect(problemsOf(readWaters(waters(land(null))))).toMatchObject([
      { path: 'features.0.geometry', code: 'missing' },
    ]);
    expect(problemsOf(readWaters(waters(feature({ kind: 'landing', fuel: 'yes' }, point))))).toMatchObject([
      { path: 'features.0.properties.fuel' },
    ]);
  });

  it('wants stream hours that rise, each with its figures', () => {
    const row = (h: number, more = {}) => ({ h, set_deg: 10, spring_kn: 1, neap_kn: 0.5, ...more });
    for (const hours of [
      undefined,
      [],
      [row(0)],
      [row(1), row(0)],
      [row(0), row(1, { set_deg: 361 })],
      [row(0), null],
      [row(0), row(1, { neap_kn: undefined })],
    ]) {
      expect(problemsOf(readWaters(waters(feature({ kind: 'stream', hours }, point))))).toMatchObject([
        { path: 'features.0.properties.hours' },
      ]);
    }
  });

  it('lets an id stand once in its kind', () => {
    const slip = feature({ kind: 'landing', id: 'slip' }, point);
    expect(problemsOf(readWaters(waters(slip, slip)))).toMatchObject([
      { code: 'duplicate', path: 'features.1.properties.id' },
    ]);
    expect(readWaters(waters(slip, { ...slip, properties: { ...slip.properties, id: 'quay' } })).ok).toBe(true);
  });

  it('refuses another coordinate system than WGS 84', () => {
    const crs = (name: string) => ({ ...waters(land()), crs: { type: 'name', properties: { name } } });
    expect(readWaters(crs('urn:ogc:def:crs:OGC:1.3:CRS84')).ok).toBe(true);
    expect(problemsOf(readWaters(crs('urn:ogc:def:crs:EPSG::3857')))).toMatchObject([
      { code: 'wrong-system', path: 'crs' },
    ]);
  });

  it.each([
    undefined,
    null,
    4,
    'sea',
    [],
    {},
    land(),
    { type: 'FeatureCollection' },
    { type: 'FeatureCollection', features: {} },
  ])('knows that %j holds no waters', (value) => {
    expect(problemsOf(readWaters(value))).toMatchObject([{ code: 'not-waters', path: '' }]);
  });

  it.each([
    null,
    'land',
    [],
    { type: 'Polygon' },
    { type: 'Feature' },
    { type: 'Feature', properties: null, geometry: null },
  ])('says that %j is no feature of waters', (wrong) => {
    expect(problemsOf(readWaters(waters(land(), wrong)))[0]!.message).toMatch(/^Feature 2: /);
  });

  it('takes 500,000 positions and refuses more', () => {
    const corners = Array.from({ length: 4999 }, (_, i) => [10 + i * 1e-5, 50 + (i % 2) * 0.1]);
    const islands = Array.from({ length: 100 }, () =>
      land({ type: 'Polygon', coordinates: [[...corners, corners[0]]] }),
    );
    expect(readWaters(waters(...islands)).ok).toBe(true);
    expect(problemsOf(readWaters(waters(...islands, land())))).toMatchObject([{ code: 'too-big', limit: 500_000 }]);
  });

  it('tells no more than 100 problems of a wrong export', () => {
    const many = Array.from({ length: 5000 }, () => feature({ kind: 'landing', id: 'same', fuel: 1 }, point));
    expect(problemsOf(readWaters(waters(...many)))).toHaveLength(100);
  });

  it('does not let a field reach the prototype', () => {
    const text = haven
      .replace('"kind":"land"', '"__proto__":{"kind":"land"}')
      .replace('"kind": "land"', '"__proto__":{"kind":"land"}');
    expect(text).not.toBe(haven);
    expect(problemsOf(readWatersText(text))).toMatchObject([
      { code: 'unsafe-key', path: expect.stringContaining('__proto__') },
    ]);
  });
});

describe('readWatersText', () => {
  it('says where the text stops being JSON', () => {
    expect(problemsOf(readWatersText(haven.slice(0, 1000)))).toMatchObject([{ code: 'not-json' }]);
  });
});
