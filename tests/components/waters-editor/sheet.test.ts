import 'fake-indexeddb/auto';
import { describe, expect, it } from 'vitest';
import haven from '../../../shared/waters/haven.geojson?raw';
import { boxRound } from '../../../src/components/waters-editor/box-round.ts';
import { handedOver, handOver, keepSheet, keptSheet } from '../../../src/components/waters-editor/kept-waters.ts';
import { KIND_NAMES, withNew } from '../../../src/components/waters-editor/kinds.ts';
import { drawable } from '../../../src/components/waters-editor/look-over.ts';
import { openSheet, sheetText } from '../../../src/components/waters-editor/open-sheet.ts';
import { routesOf } from '../../../src/components/waters-editor/routes-of.ts';
import {
  EMPTY,
  outlinesOf,
  type Sheet,
  withFeature,
  withMember,
  withoutFeature,
  withPlaces,
  withProperty,
} from '../../../src/components/waters-editor/sheet.ts';
import { SheetHistory } from '../../../src/components/waters-editor/sheet-history.ts';
import { typedValue } from '../../../src/components/waters-editor/typed-value.ts';
import { featureUnder } from '../../../src/components/waters-editor/under.ts';
import { readWaters } from '../../../src/core/files/waters-file.ts';
import { KINDS } from '../../../src/core/files/waters-properties.ts';
import type { WatersFile } from '../../../src/core/route/shapes.ts';

function opened(text: string): Sheet {
  const read = openSheet(text);
  if (!read.ok) throw new Error(read.problems[0]!.message);
  return read.value;
}
const estuary = opened(haven);
const at = (name: string) =>
  estuary.features.findIndex((one) => (one as { properties: { name: string } }).properties.name === name);
const places = [
  { lat: 50, lon: 10 },
  { lat: 50, lon: 11 },
  { lat: 51, lon: 11 },
];

describe('a sheet of waters', () => {
  it('comes back from its text as it was opened, further members and all', () => {
    expect(JSON.parse(sheetText(estuary))).toEqual(JSON.parse(haven));
    expect(sheetText(estuary).split('\n').length).toBeGreaterThan(40);
  });

  it('is changed in one place only', () => {
    const limited = withProperty(estuary, at('The Gut'), 'limit_kn', 5);
    expect(limited.features[0]).toBe(estuary.features[0]);
    expect(limited.features[at('The Gut')]).toMatchObject({ properties: { name: 'The Gut', limit_kn: 5 } });
    expect(withMember(estuary, 'about', undefined)).not.toHaveProperty('about');
    expect(withMember(estuary, 'about', 'x').tide).toBe(estuary.tide);
  });

  it('lets an outline be drawn corner by corner, and is sound from the third on', () => {
    let sheet = withProperty(withNew(EMPTY, 'land'), 0, 'name', 'Cold Rock');
    for (let corner = 0; corner <= 3; corner++) {
      const [line] = outlinesOf(sheet.features[0]);
      expect(line!.places).toEqual(places.slice(0, Math.max(0, corner)));
      expect(readWaters(sheet).ok).toBe(corner === 3);
      sheet = withFeature(sheet, 0, withPlaces(sheet.features[0], line!, places.slice(0, corner + 1)));
    }
  });

  it('writes a place for a point and a line for a set route', () => {
    for (const kind of ['landing', 'route'] as const) {
      const sheet = withProperty(withNew(EMPTY, kind), 0, 'name', 'x');
      const [line] = outlinesOf(sheet.features[0]);
      const drawn = withFeature(sheet, 0, withPlaces(sheet.features[0], line!, places));
      expect(readWaters(drawn)).toMatchObject({ ok: true });
      expect(outlinesOf(drawn.features[0])[0]!.places).toEqual(kind === 'landing' ? places.slice(-1) : places);
    }
  });

  it('keeps heights and holes where nobody moved them', () => {
    const ring = [
      [10, 50, 3],
      [11, 50, 4],
      [11, 51, 5],
      [10, 50, 3],
    ];
    const hole = [
      [10.7, 50.2],
      [10.8, 50.2],
      [10.8, 50.3],
      [10.7, 50.2],
    ];
    const feature = {
      type: 'Feature',
      id: 7,
      properties: {},
      geometry: { type: 'Polygon', coordinates: [ring, hole] },
    };
    const [outer] = outlinesOf(feature);
    const moved = withPlaces(feature, outer!, [
      { lat: 50, lon: 10 },
      { lat: 49, lon: 11 },
      { lat: 51, lon: 11 },
    ]);
    expect(moved).toMatchObject({ id: 7 });
    expect(moved.geometry.coordinates).toEqual([
      [
        [10, 50, 3],
        [11, 49],
        [11, 51, 5],
        [10, 50, 3],
      ],
      hole,
    ]);
  });

  it('offers a form for every kind the reader knows', () => {
    expect(new Set(KIND_NAMES)).toEqual(new Set(KINDS.keys()));
  });

  it('has a box round all of it', () => {
    const [west, south, east, north] = boxRound(estuary)!;
    expect(west).toBeLessThan(-32);
    expect(east).toBeGreaterThan(-31.99);
    expect(south).toBeLessThan(46);
    expect(north).toBeGreaterThan(46.02);
    expect(boxRound(EMPTY)).toBeUndefined();
  });
});

describe('openSheet', () => {
  it('opens what has errors, so that they can be mended', () => {
    const spoilt = JSON.parse(haven);
    spoilt.features[0].properties.kind = 'earth';
    const sheet = opened(JSON.stringify(spoilt));
    expect(sheet.features).toHaveLength(40);
    const read = readWaters(sheet);
    expect(read).toMatchObject({ ok: false, problems: [{ path: 'features.0.properties.kind' }] });
    if (!read.ok) expect(drawable(sheet, read.problems).features).toHaveLength(39);
  });

  it('refuses what is no GeoJSON, by line and column where it is no JSON at all', () => {
    expect(openSheet('{"type":\n  nonsense}')).toMatchObject({ ok: false, problems: [{ code: 'not-json' }] });
    const read = openSheet('{"type":\n  nonsense}');
    expect(read.ok ? '' : read.problems[0]!.message).toContain('line 2, column 3');
    expect(openSheet('[]')).toMatchObject({ ok: false, problems: [{ code: 'not-waters' }] });
  });
});

describe('featureUnder', () => {
  it('finds a landing before the zone round it, a small zone before a large one, and nothing in open water', () => {
    const under = (lat: number, lon: number) => featureUnder(estuary, { lat, lon });
    expect(under(46.02739, -31.99008)).toBe(at('Marl Haven slip'));
    const island = outlinesOf(estuary.features[at('Ward Island')])[0]!.places;
    const middle = {
      lat: island.reduce((sum, { lat }) => sum + lat, 0) / island.length,
      lon: island.reduce((sum, { lon }) => sum + lon, 0) / island.length,
    };
    expect(under(middle.lat, middle.lon)).toBe(at('Ward Island'));
    expect(under(45.955, -32.09)).toBeUndefined();
    const ring = [
      [0, 0],
      [9, 0],
      [9, 9],
      [0, 9],
      [0, 0],
    ];
    const inner = ring.map(([x, y]) => [x! / 9 + 4, y! / 9 + 4]);
    const area = (coordinates: unknown) => ({
      type: 'Feature',
      properties: { kind: 'shoal', name: 'x' },
      geometry: { type: 'Polygon', coordinates: [coordinates] },
    });
    const two: Sheet = { type: 'FeatureCollection', features: [area(ring), area(inner)] };
    expect(featureUnder(two, { lat: 4.5, lon: 4.5 })).toBe(1);
    expect(featureUnder(two, { lat: 1, lon: 1 })).toBe(0);
  });
});

describe('routesOf', () => {
  it('gives a desk the loops and the ways out and home, none that ends elsewhere', () => {
    const route = (name: string, shape: string | undefined, line: number[][]) => ({
      type: 'Feature' as const,
      properties: { kind: 'route', name, ...(shape && { shape }) },
      geometry: { type: 'LineString' as const, coordinates: line },
    });
    const round = [
      [0, 0],
      [1, 0],
      [1, 1],
      [0, 0],
    ];
    const file: WatersFile = {
      type: 'FeatureCollection',
      features: [
        route('Round', 'loop', round),
        route('Out', undefined, round.slice(0, 2)),
        route('Away', 'one-way', round),
      ],
    };
    expect(routesOf(file).map(({ name, shape, waypoints }) => [name, shape, waypoints.length])).toEqual([
      ['Round', 'loop', 3],
      ['Out', 'out-and-home', 2],
    ]);
  });
});

describe('the steps of drawing', () => {
  it('go back and on again, letters of one field in one step', () => {
    const history = new SheetHistory();
    const [a, b, c] = ['a', 'b', 'c'].map((name) => withMember(EMPTY, 'name', name)) as [Sheet, Sheet, Sheet];
    history.changed(EMPTY, 'name', 0);
    history.changed(a, 'name', 500);
    history.changed(b, 'about', 800);
    expect(history.undo(c)).toBe(b);
    expect(history.undo(b)).toBe(EMPTY);
    expect(history.canUndo).toBe(false);
    expect(history.redo(EMPTY)).toBe(b);
    expect(history.redo(b)).toBe(c);
    history.undo(withoutFeature(withNew(c, 'land'), 0));
    history.changed(b, '', 9000);
    expect(history.canRedo).toBe(false);
  });
});

describe('what the device keeps', () => {
  it('is the sheet with its errors, and only sound waters for the planner', async () => {
    expect(await keptSheet()).toBeUndefined();
    const wrong = withNew(EMPTY, 'shoal');
    expect(await keepSheet(wrong)).toBe(true);
    expect(await keptSheet()).toEqual(wrong);
    expect(await handedOver()).toBeUndefined();
    await handOver(estuary as unknown as WatersFile);
    expect(await handedOver()).toEqual(JSON.parse(haven));
  });
});

describe('typedValue', () => {
  it('reads figures with comma, point or a real minus, and leaves the rest for the reader', () => {
    expect(['1,5', ' 1.5 ', '\u22121.2', 'deep', '', '  '].map(typedValue)).toEqual([
      1.5,
      1.5,
      -1.2,
      'deep',
      undefined,
      undefined,
    ]);
  });
});
