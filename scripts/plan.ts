/** npm run plan -- FILE.json [--json] [--units nautical|metric|imperial] [--waters FILE.geojson|none] */
import { readFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { planText } from '../src/components/plan-text/plan-text.ts';
import { measuresFor, type UnitSystem } from '../src/components/units/measures.ts';
import { readTripText } from '../src/core/files/trip-schema.ts';
import { readWaters } from '../src/core/files/waters-file.ts';
import { prepareWaters, type Waters } from '../src/core/route/waters.ts';
import { planTrip } from '../src/core/trip/plan-trip.ts';
import type { Problem, Result } from '../src/core/units/result.ts';

const USAGE = 'Use: npm run plan -- FILE.json [--json] [--units nautical|metric|imperial] [--waters FILE.geojson|none]';
/** Waters that trips may name. */
const SHIPPED: Readonly<Record<string, URL>> = { haven: new URL('../shared/waters/haven.geojson', import.meta.url) };

function refuse(problems: readonly Problem[], file: string): never {
  for (const { path, message } of problems) console.error(`${file}${path ? `: ${path}` : ''}: ${message}`);
  process.exit(2);
}

function text(file: string | URL): string {
  try {
    return readFileSync(file, 'utf8');
  } catch {
    return refuse([{ code: 'no-file', path: '', message: 'This file cannot be read' }], String(file));
  }
}

function must<T>(result: Result<T>, file: string): T {
  return result.ok ? result.value : refuse(result.problems, file);
}

function watersOf(name: string | undefined): Waters | undefined {
  if (name === undefined || name === 'none') return undefined;
  const file = SHIPPED[name] ?? name;
  let value: unknown;
  try {
    value = JSON.parse(text(file));
  } catch {
    return refuse([{ code: 'not-json', path: '', message: 'This is not JSON' }], String(file));
  }
  return prepareWaters(must(readWaters(value), String(file)));
}

function given() {
  try {
    return parseArgs({
      allowPositionals: true,
      options: { json: { type: 'boolean' }, units: { type: 'string' }, waters: { type: 'string' } },
    });
  } catch {
    console.error(USAGE);
    process.exit(2);
  }
}

const { values, positionals } = given();
const units = values.units ?? 'nautical';
const [file] = positionals;
if (file === undefined || positionals.length > 1 || !['nautical', 'metric', 'imperial'].includes(units)) {
  console.error(USAGE);
  process.exit(2);
}
const trip = must(readTripText(text(file)), file);
const plan = must(planTrip(trip, watersOf(values.waters ?? trip.waters)), file);
console.log(
  values.json ? JSON.stringify(plan, undefined, 2) : planText(plan, trip, measuresFor(units as UnitSystem, 'en')),
);
