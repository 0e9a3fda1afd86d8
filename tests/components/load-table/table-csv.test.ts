import Papa from 'papaparse';
import { expect, it } from 'vitest';
import { rowsOf } from '../../../src/components/load-table/rows.ts';
import { columnOf, firstSetups } from '../../../src/components/load-table/setups.ts';
import { tableCsv } from '../../../src/components/load-table/table-csv.ts';
import { measuresFor } from '../../../src/components/units/measures.ts';
import { loadTable } from '../../../src/core/compare/load-table.ts';
import { hulls } from '../../../src/core/files/catalogue.ts';

const { hull, typicalPlate } = hulls.find(({ id }) => id === 'catamaran-3-6')!;
const plated = { ...hull, plate: typicalPlate };

function csv(system: 'metric' | 'imperial') {
  const m = measuresFor(system, 'en');
  const rows = rowsOf(plated, { eachMass: 85, gear: 0, seating: 'spread', others: [] }, m);
  const table = loadTable(plated, rows, firstSetups(hull).map(columnOf), { water: 'sea', batteryTemperatureC: 10 });
  const [head, ...body] = Papa.parse<string[]>(tableCsv(table, rows, m).trimEnd()).data;
  return { table, head: head!, body };
}

it('has a line for each load with each engine, as long as its heading', () => {
  const { head, body } = csv('metric');
  expect(body).toHaveLength(12);
  for (const line of body) expect(line).toHaveLength(head.length);
  expect(head.join()).toContain('top speed (km/h)');
});

it('says in figures what the table says, in the units on the screen', () => {
  const { table, head, body } = csv('metric');
  const at = (name: string) => head.findIndex((cell) => cell.startsWith(name));
  const cell = table.cells[1]![1]!;
  const line = body[4]!;
  expect(Number(line[at('top speed (')])).toBeCloseTo(cell.topSpeed.median * 3.6, 1);
  expect(Number(line[at('range (')])).toBeCloseTo(cell.cruise.range.median / 1000, 0);
  // L/km from kg/m at 0.745 kg/L.
  expect(Number(line[at('consumption (')])).toBeCloseTo((cell.cruise.perMetre.median * 1000) / 0.745, 3);
  expect(Number(csv('imperial').body[4]![at('top speed (')])).toBeCloseTo(cell.topSpeed.median * 2.23694, 1);
});
