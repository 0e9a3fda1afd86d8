/**
 * npm run bench [-- --browser] [--json FILE] [--write]: what the core costs, in units of 20 powers timed in the same run,
 * against its budgets; with `--browser` also what the built site costs on a slow device; with `--write` also how costs
 * grow, kept for the method page.
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { availableParallelism, loadavg } from 'node:os';
import { parseArgs } from 'node:util';
import { cases } from './cases.ts';
import { costOf } from './cost.ts';
import { growthCurves } from './curves.ts';
import { growths } from './growth.ts';
import { type SiteCost, siteCosts } from './site.ts';

interface Row {
  readonly name: string;
  readonly measured: number;
  readonly budget: number | undefined;
  readonly microseconds: number;
}

const { values } = parseArgs({
  options: { json: { type: 'string' }, write: { type: 'boolean' }, browser: { type: 'boolean' } },
});
const KEPT = new URL('../../shared/checks/bench.json', import.meta.url);
/** What else ran on the machine: processes that wanted a core in the minute before. */
const busy = (): number => Number((loadavg()[0]! / availableParallelism()).toFixed(1));

const before = busy();
const site = values.browser ? await siteCosts() : undefined;
const costs: Row[] = cases.map(({ name, budget, work }) => {
  const { units, microseconds } = costOf(work);
  return { name, measured: units, budget, microseconds };
});
const ratios: Row[] = growths.map(({ name, budget, measure }) => {
  const { from, to } = measure();
  return { name, measured: to.microseconds / from.microseconds, budget, microseconds: to.microseconds };
});

print('Cost, in units of 20 powers', costs);
print('Growth, as a ratio', ratios);
if (site) print(`The built site, ${site.slowdown} times slower, in units of 20 powers there`, site.rows);
if (values.json !== undefined) {
  writeFileSync(values.json, `${JSON.stringify({ costs, ratios, site }, undefined, 2)}\n`);
}
if (values.write) writeKept();
const over = [...costs, ...ratios].filter(({ measured, budget }) => budget !== undefined && measured > budget);
for (const { name, measured, budget } of over) console.log(`Over budget: ${name}, ${figure(measured)} of ${budget}`);

/** Without `--browser` the site's figures stay as they were, with the circumstances they were taken in. */
function writeKept(): void {
  const curves = growthCurves().map(({ points, ...curve }) => ({
    ...curve,
    points: points.map(({ size, units, microseconds }) => {
      return { size, units: round(units), microseconds: round(microseconds) };
    }),
  }));
  const kept = {
    about:
      'What the core and the site cost: processor time, and in units of 20 powers timed in the same run. Written by npm run bench -- --browser --write.',
    machine: {
      node: process.version,
      cores: availableParallelism(),
      unitMicroseconds: round(unitOf(costs)),
      busy: [before, busy()],
    },
    costs: costs.map(rounded),
    ratios: ratios.map(rounded),
    curves,
    site: site ? { ...site, rows: site.rows.map(rounded) } : siteKept(),
  };
  writeFileSync(KEPT, `${JSON.stringify(kept, undefined, 1)}\n`);
}

function siteKept(): SiteCost | undefined {
  return (JSON.parse(readFileSync(KEPT, 'utf8')) as { site?: SiteCost }).site;
}

/** us: median over what was timed. */
function unitOf(rows: readonly Row[]): number {
  const each = rows.map(({ measured, microseconds }) => microseconds / measured).sort((a, b) => a - b);
  return each[Math.floor(each.length / 2)]!;
}

function rounded<R extends Omit<Row, 'budget'>>(row: R): R {
  return { ...row, measured: round(row.measured), microseconds: round(row.microseconds) };
}

function round(value: number): number {
  return Number(value.toPrecision(3));
}

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
