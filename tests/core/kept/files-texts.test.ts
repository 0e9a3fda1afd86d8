import { readFileSync } from 'node:fs';
import { aboardFromText, aboardText } from '../../../src/core/files/aboard-text.ts';
import { base64UrlOf, bytesOfBase64Url } from '../../../src/core/files/base64-url.ts';
import { calendarFile } from '../../../src/core/files/calendar-file.ts';
import { crc32 } from '../../../src/core/files/crc32.ts';
import { type ForecastColumns, forecastHeadings, readForecastTable } from '../../../src/core/files/forecast-table.ts';
import { readGpx, readingGpx } from '../../../src/core/files/gpx.ts';
import { gpxOfRoute, gpxOfTracks } from '../../../src/core/files/gpx-writer.ts';
import { daysIn, describesDay, describesTime } from '../../../src/core/files/iso-time.ts';
import { jsonFault } from '../../../src/core/files/json-fault.ts';
import { parseJsonText } from '../../../src/core/files/json-text.ts';
import { plainProblem } from '../../../src/core/files/plain-value.ts';
import { geoJsonOfRoute } from '../../../src/core/files/route-geojson.ts';
import { runsFromTable } from '../../../src/core/files/runs-table.ts';
import { runsTable } from '../../../src/core/files/runs-table-writer.ts';
import { readShareLink, writeShareLink } from '../../../src/core/files/share-link.ts';
import { readStreamTable } from '../../../src/core/files/stream-table.ts';
import { dayOf, decimalSignOf, durationOf, figureOf, yesOrNo } from '../../../src/core/files/table-cells.ts';
import { tableColumns } from '../../../src/core/files/table-columns.ts';
import { recognised, unitsFor } from '../../../src/core/files/table-meanings.ts';
import { tableRows } from '../../../src/core/files/table-rows.ts';
import { unitInHead, unitNamed, unitsOf } from '../../../src/core/files/table-units.ts';
import { textOfBytes } from '../../../src/core/files/text-of-bytes.ts';
import { shipped } from '../../trips.ts';
import { keeping } from './keeping.ts';
import { evidences, loads } from './made-evidence.ts';
import { crew, madeTrips, two } from './made-trips.ts';

const NOW = Date.parse('2026-07-15T12:00:00Z') / 1000;
const point = (lat: unknown, lon: unknown, time?: string, more = '') =>
  `<trkpt lat="${lat}" lon="${lon}">${time ? `<time>${time}</time>` : ''}${more}</trkpt>`;
const gpx = (inner: string, head = '<?xml version="1.0"?>') => `${head}<gpx version="1.1">${inner}</gpx>`;
const recording = gpx(
  `<metadata><name>All</name></metadata><trk><name>One &amp; two</name><trkseg>${point(46, -32, '2026-07-01T09:00:00Z')}${point(46.001, -32, '2026-07-01T09:00:30.5Z', '<ele>3</ele><speed>4</speed>')}${point(46.002, -32.001, '2026-07-01T11:01:00+02:00')}${point('x', -32, '2026-07-01T09:02:00Z')}${point(46.003, -32)}${point(46.004, -32, 'later')}${point(46.0045, -32, '2026-07-01T08:00:00Z')}</trkseg><trkseg>${point(46.01, -32, '2026-07-01T09:10:00Z')}${point(46.01, 200, '2026-07-01T09:11:00Z')}${point(46.012, -32, '2026-07-01T09:12:00Z')}${point(46.013, -32, '2030-07-01T09:12:00Z')}</trkseg></trk><trk><trkseg></trkseg></trk><rte><rtept lat="1" lon="2"/></rte>`,
);
const bad = [
  '',
  '<kml/>',
  gpx('<trk>'),
  gpx(''),
  '<!DOCTYPE gpx [<!ENTITY a "b">]><gpx/>',
  `${gpx('<x>'.repeat(80))}`,
  gpx(`<trk><trkseg>${point(46, -32, '1970-01-01T00:00:00Z')}</trkseg></trk>`),
  'plain words',
];

const forecast =
  'lat;46\n\ntime;dir;wind;gust\n2026-07-15T09:00;240;10;15\n2026-07-15 12:00:00+02:00;SSW;12,5;\n2026-07-15T15:00Z;-;9;8\n1784300000;10;3;4\nsoon;10;3;4\n2026-07-16T09:00;370;90;4\n';
const columns: ForecastColumns = {
  time: 'time',
  direction: 'dir',
  speed: 'wind',
  gust: 'gust',
  speedUnit: 'kn',
  offset: 'Z',
};
const asJson = JSON.stringify({
  place: { lat: 1 },
  hourly: { time: ['2026-07-15T09:00Z', '2026-07-15T10:00Z'], dir: [20, 30], wind: [5, 6], gust: [null, 9] },
});
const objects = JSON.stringify([
  { time: '2026-07-15T09:00Z', dir: 'N', wind: '5' },
  { time: '2026-07-15T10:00Z', dir: 400, wind: 5 },
]);

const heads = [
  'Speed out (kn)',
  'speed back [km/h]',
  'GPS kts',
  'SOG, m/s',
  'Current (A)',
  'Current (kn)',
  'Volts',
  'Power [kW]',
  'RPM',
  'Fuel (l/h)',
  'Fuel used l',
  'kg/h',
  'g/s',
  'Time',
  'Duration (min)',
  'Minutes',
  'Date',
  'Crew',
  'Aboard',
  'People',
  'Mass kg',
  'Waves (m)',
  'Wind kn',
  'Wind angle',
  'Notes',
  'Name',
  'Engine',
  'WOT',
  'Full throttle',
  'Energy Wh',
  'kWh',
  'gph',
  'Fill %',
  'Tank',
  'Left out',
  'Speed',
  'Run 2 mph',
  'Nonsense',
  '',
];
const runs =
  'Name;Date;Speed out (kn);Speed back (kn);RPM;Fuel (l/h);Crew;WOT;Notes\nSlow;2026-05-03;5,1;4,6;2200;1,4;2;no;calm\nFast;03.05.2026;14,8;13,9;4600;5,2;;yes;"a; b"\nOdd;99.99.2026;900;x;-4;0;2;perhaps;\n\nFast;;12;;;;;;\nFull;;8,1;8,3;3000;2;12;;\nToo many;;8,1;8,3;3000;2;99;;\n';
const electricRuns =
  'run,speed (km/h),volts,amps,duration (min),energy (Wh),full throttle\na,7.2,48.1,20,5,80,0\nb,9.5,47,45,,,1\nc,9.5,,45,,,1\n';
const setups = [{ id: 'p', name: 'Petrol', kind: 'petrol' as const }];

function table(text: string, kind: 'petrol' | 'electric'): unknown {
  const found = tableColumns(text);
  if (!found.ok) return found;
  const mapping = found.value.columns.map(({ meaning, unit }) => meaning && { meaning, ...(unit && { unit }) });
  const context = {
    setups: kind === 'petrol' ? setups : [{ id: 'e', name: 'Pod', kind }],
    load: loads.alone,
    taken: ['Slow'],
  };
  return {
    columns: found.value.columns,
    decimal: found.value.decimal,
    ...runsFromTable(found.value, mapping, context),
  };
}

const bytes = (text: string, encoding: BufferEncoding) => new Uint8Array(Buffer.from(text, encoding));
const track = readFileSync(new URL('../../../shared/trials-demo/track-two-aboard.gpx', import.meta.url), 'utf8');
const day = shipped('petrol-day');
const appointment = {
  uid: 'u1',
  madeAt: NOW,
  from: NOW + 600,
  to: NOW + 7200,
  summary: 'Back; by "six", or so',
  description: `${'long words '.repeat(20)}\nnext line, ä ö ü\\`,
  alarms: [
    { after: 3600, text: 'Call' },
    { after: 7200, text: 'Raise; the alarm' },
  ],
};

const DIMENSIONS = [
  'speed',
  'wind',
  'flow',
  'power',
  'fuel',
  'energy',
  'current',
  'voltage',
  'mass',
  'height',
  'time',
  'revs',
  'angle',
  'share',
] as const;

keeping('files-texts', {
  'recorded tracks': () => [
    readGpx(recording, NOW),
    bad.map((text) => readGpx(text, NOW)),
    [...readingGpx(track, NOW)].length,
    readGpx(track, NOW),
  ],
  'tracks and routes written': () => {
    const found = readGpx(recording, NOW);
    return [
      found.ok ? gpxOfTracks(found.value.tracks) : found,
      gpxOfRoute('A <b> & "c"', day.route.waypoints.slice(0, 7)),
      gpxOfRoute('', []),
    ];
  },
  'a route as GeoJSON': () => [
    geoJsonOfRoute('Round', day.route),
    geoJsonOfRoute('There', { ...day.route, shape: 'out-and-home', waypoints: day.route.waypoints.slice(0, 3) }),
  ],
  'tables of forecasts': () => [
    forecastHeadings(forecast),
    forecastHeadings(asJson),
    readForecastTable(forecast, columns),
    readForecastTable(forecast.replace(/^(soon|2026-07-16|1784).*\n/gm, ''), columns),
    readForecastTable(forecast.split('\n').slice(0, 5).join('\n'), {
      ...columns,
      directionMeans: 'towards',
      gustUnit: 'm/s',
      offset: '-02:00',
    }),
    readForecastTable(forecast.split('\n').slice(0, 5).join('\n'), {
      ...columns,
      offset: undefined,
    } as ForecastColumns),
    readForecastTable(asJson, columns),
    readForecastTable(asJson, { ...columns, within: 'hourly' }),
    readForecastTable(asJson, { ...columns, within: 'daily' }),
    readForecastTable(objects, { ...columns, gust: undefined } as ForecastColumns),
    readForecastTable(forecast, { ...columns, speed: 'none' }),
    readForecastTable('', columns),
    (['m/s', 'km/h', 'mph', 'Bft'] as const).map((speedUnit) =>
      readForecastTable('time,dir,wind\n2026-07-15T09:00Z,0,4\n', {
        time: 'time',
        direction: 'dir',
        speed: 'wind',
        speedUnit,
      }),
    ),
  ],
  'tables of streams': () => {
    const of = {
      hour: 'h',
      direction: 'set',
      springs: 'sp',
      neaps: 'np',
      unit: 'kn',
      name: 'place',
      lat: 'lat',
      lon: 'lon',
    } as const;
    const head = 'place;lat;lon;h;set;sp;np';
    return [
      `${head}\nSill;46,01;-32,02;HW;240;0,4;0,2\nSill;46,01;-32,02;HW-1;60°;1,2;0,6\nSill;46,01;-32,02;HW+1;WSW;2;1\nGap;46;-32;-1;10;1;`,
      `${head}\nSill;46;-32;0;240;0,4;0,2\nSill;46;-32;2;60;1;1`,
      `${head}\nSill;96;-32;0,5;940;44;x\nSill;46;-32;0;6;1;1\nSill;46;-32;0;6;1;1`,
      'h,set,sp\n0,20,1',
      '',
    ].map((text) => [
      readStreamTable(text, of),
      readStreamTable(text, { hour: 'h', direction: 'set', springs: 'sp', unit: 'm/s' }),
    ]);
  },
  'heads of columns and their units': () => [
    heads.map((head) => [head, recognised(head)]),
    heads.map((head) => unitInHead(head, ['speed', 'power', 'flow'])?.sign),
    DIMENSIONS.map((dimension) => unitsOf(dimension).map((unit) => [unit.sign, unit.written, unit.si(2)])),
    DIMENSIONS.map((dimension) =>
      ['kW', 'Knots', 'l/h', 'min', '%', 'Wh'].map((text) => unitNamed(dimension, text)?.sign),
    ),
    (['rpm', 'speed', 'voltage', 'consumed'] as const).map((meaning) =>
      unitsFor(meaning as 'rpm').map(({ sign }) => sign),
    ),
  ],
  'cells of tables': () => {
    const [knots] = unitsOf('speed');
    const [seconds] = unitsOf('time');
    return [
      [['1,5', '2'], ['1.5'], ['1,234.5'], ['1.234,5'], ['7'], ['1,234', '2,345']].map((cells) => [
        decimalSignOf(cells, ','),
        decimalSignOf(cells, ';'),
      ]),
      ['2026-05-03', '03.05.2026', '3/5/2026', '2026-13-01', '31.02.2026', '5/13/2026', 'May'].map(dayOf),
      ['yes', 'Nein', 'x', '0', '1', 'wahr', '', 'perhaps'].map(yesOrNo),
      ['5:30', '1:02:03', '1:62:03', '90', '2,5', 'x', '-3'].map((cell) => durationOf(cell, ',', seconds!)),
      ['1,5', '1.5', '1 234,5', '1.234,5', '-2', '12 km/h', '', '1e3'].map((cell) => [
        figureOf(cell, ',', knots),
        figureOf(cell, '.', undefined),
      ]),
    ];
  },
  'rows of tables': () =>
    [
      'a;b\n1;2\n\n3;"4;5"\n',
      'a,b\n1\n',
      'x\n',
      '{"t":{"a":[1,2],"b":[3,4]}}',
      '[{"a":1,"b":2},{"a":3}]',
      '[1]',
      'a\tb\n1\t2',
    ].map((text) =>
      [undefined, 't'].map((within) => {
        const found = tableRows(text, ['a', 'b'], within);
        if (!found.ok) return found;
        const { rows, ...rest } = found.value;
        return { ...rest, rows: rows.map((row) => [row.number, row.cell('a'), row.cell('b')]) };
      }),
    ),
  'runs of tables': () => [
    table(runs, 'petrol'),
    table(electricRuns, 'electric'),
    table('a\n', 'petrol'),
    table('', 'petrol'),
    table(runs.replaceAll(';', '\t').replaceAll(',', '.'), 'petrol'),
  ],
  'runs written': () => Object.values(evidences).slice(0, 9).map(runsTable),
  'who is aboard': () => [
    aboardText(day.load.items),
    aboardText(crew(two).items),
    aboardFromText(aboardText(day.load.items)),
    ['', 'adult 80', 'helm: adult 80 kg at helm; dog 12', 'nothing to read', 'adult -4', 'adult 80 @ 1, 2, 3'].map(
      (text) => aboardFromText(text),
    ),
  ],
  links: () =>
    [
      'petrol catamaran on the plane',
      'the shipped day out by the tide and the hour',
      'two batteries, one of them old',
      'filled up on the way',
    ].map((name) => {
      const link = writeShareLink(madeTrips[name]!, 'https://club.example/plan', { names: true });
      if (!link.ok) return link;
      const back = readShareLink(link.value.slice(link.value.indexOf('#') + 1));
      return [
        link.value.length,
        link.value.slice(0, 40),
        back,
        writeShareLink(madeTrips[name]!, 'https://club.example/plan'),
      ];
    }),
  'links that are none': () => ['', 'x', 'trip=AAAA', 'v1.AAAA', '#'].map((text) => readShareLink(text)),
  'times, days and JSON': () => [
    [
      '2026-07-15T09:00:00Z',
      '2026-07-15T09:00',
      '2026-02-29T09:00:00+01:00',
      '2028-02-29T23:59:59-12:00',
      '2026-07-15T24:00:00Z',
      '2026-7-15',
      'x',
    ].map((text) => [describesTime(text), describesDay(text.slice(0, 10))]),
    [1900, 2000, 2026, 2028].flatMap((year) => [1, 2, 4, 12, 13].map((month) => daysIn(month, year))),
    ['{"a":1,}', '{"a":"b}', '[1 2]', '{}', '', '{"a":tru}', '"\\x"', '{"a":1}}'].map((text) => [
      jsonFault(text),
      parseJsonText(text, 100),
    ]),
    [10, 18, 19, 20].map((limit) => parseJsonText('[1,2,3,4,5,6,7,8,9]', limit)),
    [
      { a: { b: { c: 1 } } },
      [1, 2, 3, 4, 5, 6],
      { __proto__: null, constructor: 1 },
      { a: Number.POSITIVE_INFINITY },
      'x',
      { a: () => 1 },
    ].map((value) => plainProblem(value, { depth: 3, entries: 5 })),
  ],
  'bytes and texts': () => [
    crc32(bytes('123456789', 'utf8')),
    base64UrlOf(bytes('any carnal pleas?>', 'utf8')),
    ['YW55', 'YW5', 'Y', 'Y*', '', '-_8'].map((text) => bytesOfBase64Url(text)),
    [
      bytes('Länge', 'utf8'),
      bytes('Länge', 'latin1'),
      bytes('\uFEFFab', 'utf8'),
      bytes('\uFEFFab', 'utf16le'),
      new Uint8Array([0xfe, 0xff, 0, 65]),
      new Uint8Array([]),
    ].map(textOfBytes),
  ],
  'an appointment': () => [calendarFile(appointment), calendarFile({ ...appointment, alarms: [], description: '' })],
});
