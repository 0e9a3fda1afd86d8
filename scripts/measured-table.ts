/** node scripts/measured-table.ts [--md] [--write]: what the uncalibrated method says of boats that somebody measured. */
import { writeFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { coverageOf, NOT_HELD, worstOf } from './measured/coverage.ts';
import { leftOut, leftOutSummary } from './measured/leave-out.ts';
import { longestGo } from './measured/longest-go.ts';
import { type MeasuredRow, measuredRows } from './measured/rows.ts';
import { seededAnswers, totalOf } from './measured/seeded.ts';
import { beforeOf, summaryOf } from './measured/summary.ts';
import { usefulness } from './measured/usefulness.ts';

/** The table as a document: what it is, its rows, and what they come to. */
export function measuredDocument() {
  const rows = measuredRows();
  const left = leftOut();
  return {
    about:
      'Published measurements beside the uncalibrated method, with its 10th to 90th percentile. Boats with what was assumed of them: measured-boats.json; the method before: measured-before.json. Written by scripts/measured-table.ts.',
    rows: rows.map((row) => ({ ...row, before: beforeOf(row)?.error })),
    summary: summaryOf(rows),
    coverage: coverageOf(rows, left),
    worst: worstOf(rows),
    notHeld: NOT_HELD,
    usefulness: usefulness(),
    longestGo: longestGo(),
    seeded: seededAnswers().map((one) => ({ ...one, safe: totalOf(one.bins, true), unsafe: totalOf(one.bins, false) })),
    leftOut: left,
    leftOutSummary: leftOutSummary(left),
  };
}

function markdown(rows: readonly MeasuredRow[]): string {
  const head = '| check | what | unit | measured | predicted | 10 to 90 % | error | before | in band | tolerance |';
  const lines = rows.map((r) => {
    const asked = r.tolerance === undefined ? '' : `${r.tolerance} ${r.met ? 'met' : 'missed'}`;
    const band = r.low === undefined ? '' : `${r.low} to ${r.high}`;
    const inside = r.inside === undefined ? '' : r.inside ? 'yes' : 'no';
    const errors = `${percent(r.error)} | ${percent(beforeOf(r)?.error ?? Number.NaN)}`;
    return `| ${r.check} | ${r.what} | ${r.unit} | ${r.measured} | ${r.predicted} | ${band} | ${errors} | ${inside} | ${asked} |`;
  });
  return [head, '| --- | --- | --- | --- | --- | --- | --- | --- | --- | --- |', ...lines].join('\n');
}

function percent(error: number): string {
  return `${error > 0 ? '+' : ''}${(100 * error).toFixed(0)} %`;
}

if (import.meta.main) {
  const { values } = parseArgs({ options: { md: { type: 'boolean' }, write: { type: 'boolean' } } });
  const table = measuredDocument();
  const text = `${JSON.stringify(table, undefined, 1)}\n`;
  if (values.write) writeFileSync(new URL('../shared/checks/measured-table.json', import.meta.url), text);
  else process.stdout.write(values.md ? `${markdown(table.rows)}\n` : text);
}
