/**
 * npm run size: bytes of the widget against the smallest usual map widget (lit, Leaflet and its sheet).
 * `--write` keeps them in scripts/size/table.json, against which the tests hold every later build, and in docs/weight.md.
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { boughtTable } from './size/bought.ts';
import { type Bytes, type Part, ROOT, sumOf } from './size/parts.ts';
import { tableOf, weigh } from './size/weigh.ts';

const line = ({ gzip, brotli }: Bytes, name: string): string =>
  `${String(gzip).padStart(8)} ${String(brotli).padStart(8)}  ${name}`;

function list(title: string, parts: Iterable<Part>): void {
  const all = [...parts].sort((a, b) => b.gzip - a.gzip);
  console.log(`\n${title}`);
  for (const part of all) console.log(line(part, `${part.name} (${part.sources.length} files)`));
  console.log(line(sumOf(all), 'together'));
}

const weighed = await weigh();
console.log('    gzip   brotli');
list('First plan with map, each part loaded before the first answer and the map are there:', weighed.firstPlan);
list('By itself after the first answer:', weighed.afterFirst);
list('Reserve check, the smallest useful widget (goal 25000 gzip):', weighed.reserveCheck);
list('By itself after its first answer:', weighed.afterCheck);
list('Checklist:', weighed.checklist);
console.log('\nWhen shown or asked for, each with what it brings along:');
for (const [name, bytes] of [...weighed.asked].sort(([, a], [, b]) => b.gzip - a.gzip)) console.log(line(bytes, name));
const first = sumOf(weighed.firstPlan).gzip;
console.log(line(weighed.usual, '\nlit + leaflet + its sheet, for comparison'));
console.log(`first plan with map: ${first} B gzip, goal ${Math.round(1.2 * weighed.usual.gzip)}`);
console.log(`ratio ${(first / weighed.usual.gzip).toFixed(2)}`);

const table = boughtTable(weighed.firstPlan, weighed.reserveCheck);
console.log(`\nWhat the bytes are for:\n${table}`);

if (process.argv.includes('--write')) {
  const page = join(ROOT, 'docs/weight.md');
  const told = `${first} B against ${weighed.usual.gzip} B: **ratio ${(first / weighed.usual.gzip).toFixed(2)}**; reserve check ${sumOf(weighed.reserveCheck).gzip} B`;
  const between = /(?<=<!-- from npm run size -->\n)[\s\S]*(?=<!-- until here -->)/;
  writeFileSync(page, readFileSync(page, 'utf8').replace(between, `\n${told}.\n\n${table}\n\n`));
  const kept = join(ROOT, 'scripts/size/table.json');
  writeFileSync(kept, `${JSON.stringify(tableOf(weighed), undefined, 2)}\n`);
  console.log('Kept in scripts/size/table.json and docs/weight.md');
}
