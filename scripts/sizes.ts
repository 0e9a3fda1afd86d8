/** npm run sizes: gzip bytes of the widget against the smallest usual map widget (lit, Leaflet and its sheet). */
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { gzipSync } from 'node:zlib';
import { build, type Rolldown } from 'vite';

const root = resolve(dirname(fileURLToPath(import.meta.url)), '..');
const scratch = mkdtempSync(join(tmpdir(), 'homeleg-sizes-'));

interface Part {
  readonly name: string;
  readonly file: string;
  readonly bytes: number;
  readonly entry: boolean;
  /** Files loaded with it. */
  readonly imports: readonly string[];
}

function gzipped(text: string): number {
  return gzipSync(text, { level: 9 }).length;
}

async function parts(entry: string): Promise<Part[]> {
  const built = (await build({
    root,
    configFile: false,
    logLevel: 'error',
    build: {
      write: false,
      minify: true,
      target: 'es2022',
      assetsInlineLimit: 0,
      rolldownOptions: { input: entry, preserveEntrySignatures: false },
    },
  })) as Rolldown.RolldownOutput;
  return built.output
    .filter((file) => file.type === 'chunk')
    .map((file) => ({
      name: file.name,
      file: file.fileName,
      bytes: gzipped(file.code),
      entry: file.isEntry,
      imports: file.imports,
    }));
}

/** Loaded for a first plan with its map; every other part comes when it is shown or asked for. */
const FIRST = new Set(['route-map', 'leaflet-parts']);

/** The entry, the parts named, and all that these load. */
function wanted(all: readonly Part[], named: ReadonlySet<string>): ReadonlySet<Part> {
  const found = new Set(all.filter((part) => part.entry || named.has(part.name)));
  for (const part of found) {
    for (const file of part.imports) {
      const next = all.find((other) => other.file === file);
      if (next) found.add(next);
    }
  }
  return found;
}

async function report(): Promise<void> {
  const base = join(scratch, 'base.js');
  writeFileSync(
    base,
    `export * from '${join(root, 'node_modules/lit/index.js')}'; export * from '${join(root, 'node_modules/leaflet/dist/leaflet-src.esm.js')}';`,
  );
  const baseline =
    (await parts(base)).reduce((sum, part) => sum + part.bytes, 0) +
    gzipped(readFileSync(join(root, 'node_modules/leaflet/dist/leaflet.css'), 'utf8'));
  const widget = await parts(join(root, 'src/components/planner/define.ts'));
  const first = wanted(widget, FIRST);
  const sum = (some: Iterable<Part>): number => [...some].reduce((total, part) => total + part.bytes, 0);
  const total = sum(first);
  const desk = await parts(join(root, 'src/components/reserve-check/define.ts'));
  const check = sum(wanted(desk, new Set()));
  for (const part of widget) {
    console.log(`${String(part.bytes).padStart(8)}  ${part.name}${first.has(part) ? '' : ' (when shown)'}`);
  }
  console.log(`${String(baseline).padStart(8)}  lit + leaflet + its sheet, for comparison`);
  console.log(`planner with map: ${total} B gzip, ${(total / baseline).toFixed(2)} x that (goal 1.2)`);
  console.log(`reserve check without map: ${check} B gzip (goal 25000)`);
}

try {
  await report();
} finally {
  rmSync(scratch, { recursive: true, force: true });
}
