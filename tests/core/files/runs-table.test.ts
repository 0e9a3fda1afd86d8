import { describe, expect, it } from 'vitest';
import { craftFrom } from '../../../src/core/files/catalogue.ts';
import { runsFromTable, type TableContext } from '../../../src/core/files/runs-table.ts';
import { runsTable } from '../../../src/core/files/runs-table-writer.ts';
import { type RunsTable, tableColumns } from '../../../src/core/files/table-columns.ts';
import { recognised } from '../../../src/core/files/table-meanings.ts';
import { textOfBytes } from '../../../src/core/files/text-of-bytes.ts';
import type { Run, Setup } from '../../../src/core/trials/shapes.ts';

const petrol = craftFrom('catamaran-3-6', 'petrol-15hp-4s', 'tank-25');
const setups: Setup[] = [
  { id: 's1', drive: petrol.drive, store: petrol.store },
  { id: 's2', drive: { ...petrol.drive, propeller: { ...petrol.drive.propeller, pitch: 0.2 } }, store: petrol.store },
];
const usual = { items: [{ id: 'a', kind: 'adult' as const, mass: 80, station: 'helm', helm: true }], fill: 0.5 };
const context: TableContext = { setups: [{ id: 's1', name: 'Petrol', kind: 'petrol' }], load: usual, taken: [] };
const electric: TableContext = { ...context, setups: [{ id: 'e', name: 'Pod', kind: 'electric' }] };

function table(text: string): RunsTable {
  const result = tableColumns(text);
  if (!result.ok) throw new Error(result.problems[0]!.message);
  return result.value;
}

/** With the mapping as guessed. */
function read(text: string, where = context) {
  const found = table(text);
  const mapping = found.columns.map(({ meaning, unit }) => meaning && { meaning, ...(unit && { unit }) });
  return runsFromTable(found, mapping, where);
}

function sound(text: string, where = context): readonly Run[] {
  const { runs, problems } = read(text, where);
  expect(problems).toEqual([]);
  return runs;
}

const lines = (...rows: string[]) => rows.join('\n');

describe('recognised', () => {
  it('knows the usual heads with the usual units', () => {
    const heads: Record<string, string> = {
      'Speed out (kn)': 'speed-out kn',
      'speed back [km/h]': 'speed-back km/h',
      'Run 1 mph': 'speed-out mph',
      'Run 2 mph': 'speed-back mph',
      'GPS kts': 'speed kn',
      'SOG, m/s': 'speed m/s',
      speedKn: 'speed kn',
      'Average speed (mph)': 'speed-mean mph',
      Speed: 'speed kn',
      'Current (kn)': 'stream kn',
      'Current (A)': 'current A',
      Amps: 'current A',
      'Battery voltage': 'voltage V',
      Volts: 'voltage V',
      'Power [kW]': 'power kW',
      'P in W': 'power W',
      Watts: 'power W',
      RPM: 'rpm rpm',
      'Engine revs': 'rpm rpm',
      'Fuel L/h': 'flow L/h',
      'litres per hour': 'flow L/h',
      'Flow (gal/h)': 'flow US gal/h',
      GPH: 'flow US gal/h',
      'Burn imp gal/h': 'flow imp gal/h',
      'Fuel flow': 'flow L/h',
      'Fuel used (L)': 'fuel L',
      'Gallons used': 'fuel US gal',
      'Energy Wh': 'energy Wh',
      kWh: 'energy kWh',
      'Time (min)': 'time min',
      Seconds: 'time s',
      'Crew kg': 'load kg',
      'Load (lb)': 'load lb',
      Persons: 'persons',
      Date: 'date',
      Remarks: 'note',
      'Wind Bft': 'wind Bft',
      wind_kn: 'wind kn',
      'Wind (m/s)': 'wind m/s',
      'Wind direction': 'wind-from °',
      'Wave height (ft)': 'waves ft',
      'Full throttle': 'full-throttle',
      Engine: 'setup',
      'Tank level %': 'fill %',
      Temperature: '',
      '': '',
    };
    const found = Object.keys(heads).map((head) => {
      const known = recognised(head);
      return [head, known ? [known.meaning, known.unit].filter(Boolean).join(' ') : ''];
    });
    expect(Object.fromEntries(found)).toEqual(heads);
  });
});

describe('tableColumns', () => {
  it('shows each column with its head, a sample and what it is taken for', () => {
    const { columns, rows } = table(lines('Speed (kn),Colour', ',', ',red', '5.1,blue'));
    expect(columns).toEqual([
      { header: 'Speed (kn)', sample: '5.1', meaning: 'speed', unit: 'kn' },
      { header: 'Colour', sample: 'red' },
    ]);
    expect(rows.map(({ number }) => number)).toEqual([3, 4]);
  });

  it('takes each meaning once, but as many passes as there are', () => {
    const { columns } = table(lines('out 1 kn,back 1 kn,out 2 kn,rpm,rpm left', '1,2,3,4,5'));
    expect(columns.map(({ meaning }) => meaning)).toEqual(['speed-out', 'speed-back', 'speed-out', 'rpm', undefined]);
  });

  it('takes a time of day for no duration', () => {
    expect(table(lines('Time,Speed kn', '10:32,5')).columns[0]!.meaning).toBeUndefined();
    expect(table(lines('Time,Speed kn,Fuel L', '10:32,5,1')).columns[0]!.meaning).toBe('time');
  });

  it('refuses what is no table, with the reason', () => {
    const code = (text: string) => {
      const result = tableColumns(text);
      return result.ok ? 'read' : result.problems[0]!.code;
    };
    expect(code('')).toBe('no-table');
    expect(code('hello')).toBe('no-table');
    expect(code('Speed,RPM\n')).toBe('no-rows');
    expect(code('Speed,RPM\n"5,3000\n6,4000')).toBe('quotes');
    expect(code(`Speed,RPM\n${'1,2\n'.repeat(6000)}`)).toBe('too-big');
    expect(code(`${'a,'.repeat(200)}\n1,2`)).toBe('too-big');
    expect(code('x'.repeat(5e6 + 1))).toBe('too-big');
  });
});

describe('runsFromTable', () => {
  it('reads speeds, revs, flow, load, wind and waves in the units of the heads', () => {
    const [run] = sound(
      lines(
        'Date,Out mph,Back mph,RPM,Fuel gal/h,Crew lb,Persons,Wind Bft,Wind direction,Wave ft,Full throttle,Note',
        '2026-07-15,10,12,4500,2,330,2,3,180,1,yes,Flat',
      ),
    );
    expect(run).toMatchObject({
      id: 'r1',
      day: '2026-07-15',
      setup: 's1',
      rpm: 4500,
      fullThrottle: true,
      waveHeight: 0.3048,
      note: 'Flat',
    });
    // 1 mile is 1609.344 m, a US gallon 3.785411784 L, a pound 0.45359237 kg: exact by definition.
    expect(run!.passes[0]).toEqual({ way: 'out', over: expect.closeTo(4.4704, 6) });
    expect(run!.passes[1]).toEqual({ way: 'back', over: expect.closeTo(5.36448, 6) });
    expect(run!.consumed).toEqual({ kind: 'rate', rate: expect.closeTo((2 * 3.785411784 * 0.745) / 3600, 9) });
    expect(run!.load.items.map(({ mass }) => mass)).toEqual([expect.closeTo(74.843, 3), expect.closeTo(74.843, 3)]);
    // Force 3 is 3.4 to 5.4 m/s.
    expect(run!.wind!.speed).toBeGreaterThan(3.4);
    expect(run!.wind!.speed).toBeLessThan(5.4);
  });

  it('reads litres or watt-hours over a time, and amperes by volts', () => {
    const [minutes, clock] = sound(lines('Speed kn,Fuel L,Time min', '5,1.5,10', '6,1.5,4:30'));
    expect(minutes!.consumed).toEqual({ kind: 'amount', amount: expect.closeTo(1.5 * 0.745, 9), seconds: 600 });
    expect(clock!.consumed).toMatchObject({ seconds: 270 });
    const [amps] = sound(lines('Speed kn,A,V', '3,20,25.5'), electric);
    expect(amps!.consumed).toEqual({ kind: 'rate', rate: 510 });
    const [energy] = sound(lines('Speed kn,Wh,Time s', '3,10,60'), electric);
    expect(energy!.consumed).toEqual({ kind: 'amount', amount: 36_000, seconds: 60 });
  });

  it('reads decimal commas, semicolons, a byte order mark, quotes and blank lines', () => {
    const text = lines(
      '\ufeffSpeed out (km/h);Speed back (km/h);RPM;Note',
      '',
      '12,5;13,25;4.500;"a; ""b"""',
      ';;;',
      '9,0;;;',
    );
    const runs = sound(text);
    expect(runs.map(({ passes }) => passes.map(({ over }) => Math.round(over * 3600) / 1000))).toEqual([
      [12.5, 13.25],
      [9],
    ]);
    expect(runs[0]).toMatchObject({ rpm: 4500, note: 'a; "b"' });
    const quoted = sound(lines('Speed kn,RPM', '5.25,"3,000"'));
    expect(quoted[0]).toMatchObject({ passes: [{ over: expect.closeTo(5.25 * (1852 / 3600), 9) }], rpm: 3000 });
  });

  it('reads tabs, old encodings and both line ends', () => {
    const bytes = (text: string) => Uint8Array.from(text, (character) => character.charCodeAt(0));
    const text = 'Speed (kn)\tNote\r\n5.5\tS\u00fcdwest\r\n';
    expect(sound(textOfBytes(bytes(text)))[0]!.note).toBe('Südwest');
    const wide = new Uint8Array([0xff, 0xfe, ...[...text].flatMap((character) => [character.charCodeAt(0), 0])]);
    expect(sound(textOfBytes(wide))[0]!.note).toBe('Südwest');
    expect(sound(textOfBytes(new TextEncoder().encode(text)))[0]!.note).toBe('Südwest');
  });

  it('takes a unit that stands in the cell before that of the head', () => {
    const [run] = sound(lines('Speed kn,Wind kn,Wind from', '10 km/h,4 Bft,90'));
    expect(run!.passes[0]!.over).toBeCloseTo(10 / 3.6, 9);
    expect(run!.wind!.speed).toBeCloseTo(0.836 * 8, 9);
  });

  it('puts passes in the order of their columns; a mean of both ways is a pass each way', () => {
    const [run] = sound(lines('Out 1 kn,Back 1 kn,Out 2 kn,Back 2 kn', '5,,6,7'));
    expect(run!.passes.map(({ way }) => way)).toEqual(['out', 'out', 'back']);
    const [mean] = sound(lines('Mean speed kn,RPM', '5,3000'));
    expect(mean!.passes.map(({ way, over }) => [way, over])).toEqual([
      ['out', mean!.passes[0]!.over],
      ['back', mean!.passes[0]!.over],
    ]);
  });

  it('gives a row without a load the load of the form, and shares a mass among as many as make it up', () => {
    const [none, alone, three] = sound(lines('Speed kn,Load kg', '5,', '5,90', '5,250'));
    expect(none!.load).toEqual(usual);
    expect(alone!.load.items.length).toBe(1);
    expect(three!.load.items.map(({ mass }) => mass)).toEqual([250 / 3, 250 / 3, 250 / 3]);
  });

  it('reads who sits where', () => {
    const text = 'adult 85 @helm helm #me "The ""first"""; child 30.5 kg; gear 20 @1.2/-0.3/0.4; dog 12 @"fore deck"';
    const [run] = sound(
      lines('Speed kn;Aboard', `5;"${text.replaceAll('"', '""').replace('""""first""""', '\\""first\\""')}"`),
    );
    expect(run!.load.items).toEqual([
      { id: 'me', kind: 'adult', mass: 85, station: 'helm', helm: true, name: 'The "first"' },
      { id: 'aboard-2', kind: 'child', mass: 30.5 },
      { id: 'aboard-3', kind: 'gear', mass: 20, at: { x: 1.2, y: -0.3, z: 0.4 } },
      { id: 'aboard-4', kind: 'dog', mass: 12, station: 'fore deck' },
    ]);
  });

  it('names every bad cell by row and column, leaves its row out and keeps the others', () => {
    const { runs, problems } = read(
      lines(
        'Date,Speed kn,RPM,Fuel L/h,Load kg,Full throttle',
        '2026-07-15,5,3000,4,80,no',
        '15/7/2026,five,3000,4,80,no',
        '3/7/2026,5,3000,4,80,no',
        ',5,-3000,1e9,80,no',
        ',,3000,4,80,no',
        ',900,3000,4,80,perhaps',
        '15.7.2026,6,3000,n/a,-,100%',
      ),
    );
    expect(
      runs.map(({ passes, day, fullThrottle }) => [Math.round(passes[0]!.over / (1852 / 3600)), day, fullThrottle]),
    ).toEqual([
      [5, '2026-07-15', undefined],
      [6, '2026-07-15', true],
    ]);
    expect(problems.map(({ code, path }) => `${code} ${path}`)).toEqual([
      'unreadable rows.3.Speed kn',
      'unreadable rows.4.Date',
      'out-of-range rows.5.Fuel L/h',
      'out-of-range rows.5.RPM',
      'no-speed rows.6',
      'out-of-range rows.7.Speed kn',
      'unreadable rows.7.Full throttle',
    ]);
    expect(problems[0]!.message).toBe('Row 3, "Speed kn": "five" is not a figure in kn');
  });

  it('says which column lacks its other half', () => {
    const { runs, problems } = read(lines('Speed kn,A,Wind kn', '5,20,10'), electric);
    expect(problems.map(({ code, path }) => [code, path])).toEqual([
      ['half-reading', 'columns.A'],
      ['half-reading', 'columns.Wind kn'],
    ]);
    expect(runs[0]).not.toHaveProperty('consumed');
    expect(runs[0]).not.toHaveProperty('wind');
  });

  it('refuses litres from a motor, watts from an engine, an amount without its time, an engine it does not know', () => {
    const codes = (text: string, where?: TableContext) => read(text, where).problems.map(({ code }) => code);
    expect(codes(lines('Speed kn,Fuel L/h', '5,3'), electric)).toEqual(['wrong-reading']);
    expect(codes(lines('Speed kn,W', '5,300'))).toEqual(['wrong-reading']);
    expect(codes(lines('Speed kn,Fuel L,Time s', '5,3,'))).toEqual(['no-time']);
    expect(codes(lines('Speed kn,Engine', '5,Steam'))).toEqual(['no-such-setup']);
    expect(codes(lines('Speed kn,Engine', '5,petrol'))).toEqual([]);
    expect(codes(lines('Speed kn,Persons', '5,2'))).toEqual(['no-mass']);
  });

  it('follows the mapping it is given, not its own guess', () => {
    const found = table(lines('x,y', '36,3000'));
    const mapping = [{ meaning: 'speed', unit: 'km/h' } as const, { meaning: 'rpm' } as const];
    expect(runsFromTable(found, mapping, context).runs[0]).toMatchObject({ passes: [{ over: 10 }], rpm: 3000 });
    expect(runsFromTable(found, [undefined, undefined], context).problems).toMatchObject([{ code: 'no-speed' }]);
  });

  it('calls no column half whose other half is the very first', () => {
    const text = lines('Voltage (V),Current (A),Speed (kn)', '12,20,3');
    expect(read(text, electric)).toMatchObject({ problems: [], runs: [{ consumed: { kind: 'rate', rate: 240 } }] });
  });

  it('takes figures up to the limits of what is credible, and none beyond', () => {
    const codes = (head: string, ...cells: readonly string[]) =>
      cells.map((cell) => read(lines(`Speed (m/s),${head}`, `5,${cell}`)).problems.length);
    expect(codes('Revs (rpm)', '49', '50', '20000', '20001')).toEqual([1, 0, 0, 1]);
    expect(codes('Wind (m/s),Wind from (deg)', '40,360', '40.1,0', '0,361')).toEqual([0, 1, 1]);
    expect(codes('Waves (m)', '5', '5.1')).toEqual([0, 1]);
    expect(codes('Load (kg)', '0.9', '1', '2000', '2001')).toEqual([1, 0, 0, 1]);
    // Two to share 160 kg between; from one to twenty people.
    expect(codes('Load (kg),Persons', '160,0', '160,1', '160,20', '160,21', '160,two', '160,1.5')).toEqual([
      1, 0, 0, 1, 1, 1,
    ]);
    const volts = (cell: string) => read(lines('Speed (m/s),Current (A),Voltage (V)', `2,5,${cell}`), electric);
    expect(['0.9', '1', '1000', '1001'].map((cell) => volts(cell).problems.length)).toEqual([1, 0, 0, 1]);
    const speed = (cell: string) => read(lines('Speed (m/s),Revs (rpm)', `${cell},3000`)).problems.length;
    expect(['0.04', '0.05', '40', '40.1'].map(speed)).toEqual([1, 0, 0, 1]);
  });

  it('takes five thousand rows and a hundred columns, and no more', () => {
    const rows = (count: number) => tableColumns(['Speed,Revs', ...Array(count).fill('5,3000')].join('\n'));
    expect(rows(5000).ok).toBe(true);
    expect(rows(5001)).toMatchObject({ ok: false, problems: [{ code: 'too-big', limit: 5000 }] });
    const columns = (count: number) =>
      tableColumns(lines(Array(count).fill('x').join(','), Array(count).fill('1').join(',')));
    expect(columns(100).ok).toBe(true);
    expect(columns(101)).toMatchObject({ ok: false, problems: [{ code: 'too-big', limit: 100 }] });
  });

  it('gives ids that are not taken', () => {
    const where = { ...context, taken: ['r1', 'x'] };
    expect(sound(lines('Id,Speed kn', 'x,5', 'y,5', 'y,5', ',5'), where).map(({ id }) => id)).toEqual([
      'r2',
      'y',
      'r3',
      'r4',
    ]);
  });
});

describe('runsTable', () => {
  const full: Run = {
    id: 'r7',
    day: '2026-07-15',
    setup: 's2',
    load: {
      items: [
        { id: 'a', kind: 'adult', mass: 85, station: 'helm', helm: true, name: 'A; "b" \\' },
        { id: 'g 2', kind: 'gear', mass: 12.34, at: { x: 0.5, y: -0.25 } },
      ],
      fill: 0.35,
      fillKnownBy: 'measured',
    },
    passes: [
      { way: 'back', over: 5.1 },
      { way: 'out', over: 6.2 },
      { way: 'out', over: 6.3 },
    ],
    rpm: 4321,
    fullThrottle: true,
    consumed: { kind: 'rate', rate: 0.00123 },
    consumedError: 0.04,
    wind: { speed: 3.3, offBowDeg: 215 },
    waveHeight: 0.15,
    leftOut: true,
    note: '=1+1, "quoted"\nand a second line',
  };
  const plain: Run = { id: 'r8', setup: 's1', load: { items: [] }, passes: [{ way: 'out', over: 2 }], stream: -0.5 };
  const amount: Run = { ...plain, id: 'r9', consumed: { kind: 'amount', amount: 1.1, seconds: 601 } };
  const own: TableContext = {
    setups: setups.map(({ id, drive }) => ({ id, name: drive.name, kind: drive.kind })),
    load: usual,
    taken: [],
  };

  it('reads back to the same runs', () => {
    const runs = [full, plain, amount];
    const again = sound(runsTable({ setups, runs }), own);
    const close = (value: unknown): unknown => {
      if (typeof value === 'number') return expect.closeTo(value, 10);
      if (Array.isArray(value)) return value.map(close);
      if (value && typeof value === 'object')
        return Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, close(inner)]));
      return value;
    };
    expect(again).toEqual(close(runs));
  });

  it('writes nothing that a spreadsheet would work out', () => {
    for (const cell of runsTable({ setups, runs: [full] }).split(',')) expect(cell).not.toMatch(/^"?[=+@]/);
  });

  it('has no column that is empty in all rows', () => {
    expect(runsTable({ setups, runs: [plain] }).split('\r\n')[0]).toBe('Id,Setup,Aboard,Speed out 1 (kn),Stream (kn)');
    expect(runsTable({ setups, runs: [] })).toBe('');
  });
});
