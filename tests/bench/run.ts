/**
 * npm run bench [-- --json FILE] [--write]: what the core costs, in units of 20 powers timed in the same run, against its
 * budgets; with `--write` also how it grows, kept for the method page.
 */
import { writeFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { cases } from './cases.ts';
import { costOf } from './cost.ts';
import { growthCurves } from './curves.ts';
import { growths } from './growth.ts';

interface Row {
  readonly name: string;
  readonly measured: number;
  readonly budget: number | undefined;
  readonly microseconds: number;
}

const { values } = parseArgs({ options: { json: { type: 'string' }, write: { type: 'boolean' } } });
const costs: Row[] = cases.map(({ name, budget, work }) => {
  const { units, microseconds } = costOf(work);
  return { name, measured: units, budget, microseconds };
});
const ratios: Row[] = growths().map(({ name, budget, from, to }) => {
  return { name, measured: to.microseconds / from.microseconds, budget, microseconds: to.microseconds };
});

print('Cost, in units of 20 powers', costs);
print('Growth, as a ratio', ratios);
if (values.json !== undefined) {
  writeFileSync(values.json, `${JSON.stringify({ costs, ratios }, undefined, 2)}\n`);
}
if (values.write) {
  const round = (value: number) => Number(value.toPrecision(3));
  const about =
    'What the core costs: processor time, and in units of 20 powers timed in the same run. Written by npm run bench -- --write.';
  const rows = [...costs, ...ratios].map((row) => {
    return { ...row, measured: round(row.measured), microseconds: round(row.microseconds) };
  });
  const curves = growthCurves().map(({ points, ...curve }) => ({
    ...curve,
    points: points.map(({ size, units, microseconds }) => {
      return { size, units: round(units), microseconds: round(microseconds) };
    }),
  }));
  const kept = { about, costs: rows.slice(0, costs.length), ratios: rows.slice(costs.length), curves };
  writeFileSync(new URL('../../shared/checks/bench.json', import.meta.url), `${JSON.stringify(kept, undefined, 1)}\n`);
}
const over = [...costs, ...ratios].filter(({ measured, budget }) => budget !== undefined && measured > budget);
for (const { name, measured, budget } of over) console.log(`Over budget: ${name}, ${figure(measured)} of ${budget}`);

function print(title: string, rows: readonly Row[]): void {
  console.log(
    `\n${title}\n${'measured'.padStart(10)}${'budget'.padStart(10)}${'share'.padStart(8)}${'time'.padStart(12)}`,
  );
  for (const { name, measured, budget, microseconds } of rows) {
    const share = budget === undefined ? '' : (measured / budget).toFixed(2);
    const time = microseconds < 1000 ? `${microseconds.toFixed(2)} us` : `${(microseconds / 1000).toFixed(2)} ms`;
    console.log(
      `${figure(measured).padStart(10)}${String(budget ?? '').padStart(10)}${share.padStart(8)}${time.padStart(12)}  ${name}`,
    );
  }
}

function figure(value: number): string {
  return value < 10 ? value.toFixed(2) : value.toFixed(0);
}
