import { dirname, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { brotliCompressSync, constants, gzipSync } from 'node:zlib';
import { build, minifySync, type Rolldown } from 'vite';

export const ROOT = resolve(dirname(fileURLToPath(import.meta.url)), '../..');

/** Bytes over the network. */
export interface Bytes {
  readonly gzip: number;
  readonly brotli: number;
}

export interface Part extends Bytes {
  readonly name: string;
  readonly file: string;
  readonly entry: boolean;
  /** Loaded by a name of its own when it is asked for. */
  readonly asked: boolean;
  /** Files loaded with it. */
  readonly imports: readonly string[];
  /** Source files in it. */
  readonly sources: readonly string[];
  /** What each of them adds to its gzip bytes; together they are the part. */
  readonly shares: ReadonlyMap<string, number>;
}

export function bytesOf(text: string): Bytes {
  const brotli = brotliCompressSync(text, { params: { [constants.BROTLI_PARAM_QUALITY]: 11 } });
  return { gzip: gzipSync(text, { level: 9 }).length, brotli: brotli.length };
}

/** The files that a script comes to when it is built as for a site. */
export async function partsOf(entry: string): Promise<readonly Part[]> {
  // As sites build it, also under a test runner: lit has other code for development.
  process.env.NODE_ENV = 'production';
  const built = (await build({
    root: ROOT,
    configFile: false,
    logLevel: 'error',
    worker: { format: 'es' },
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
    .map((file) => {
      const bytes = bytesOf(file.code);
      return {
        name: file.name,
        file: file.fileName,
        ...bytes,
        entry: file.isEntry,
        asked: file.isDynamicEntry,
        imports: file.imports,
        sources: Object.keys(file.modules).map((id) => id.replace(`${ROOT}/`, '')),
        shares: sharesOf(file, bytes.gzip),
      };
    });
}

/** Each module packed by itself says how the bytes of the whole are shared out. */
function sharesOf({ modules }: Rolldown.OutputChunk, gzip: number): ReadonlyMap<string, number> {
  const alone = Object.entries(modules).map(([id, { code }]): [string, number] => {
    const { code: small } = minifySync(id, code ?? '', { compress: { unused: false }, mangle: { toplevel: true } });
    return [id.replace(`${ROOT}/`, ''), Math.max(gzipSync(small, { level: 9 }).length - EMPTY, 0)];
  });
  const sum = alone.reduce((all, [, size]) => all + size, 0);
  return new Map(alone.map(([id, size]) => [id, (size / Math.max(sum, 1)) * gzip]));
}

/** gzip of nothing. */
const EMPTY = 20;

/** The entry, the parts that hold these source files, and all that comes with them. Throws where a source is in none. */
export function loadedWith(all: readonly Part[], sources: readonly string[]): ReadonlySet<Part> {
  const holding = sources.map((source) => {
    const part = all.find((each) => each.sources.includes(source));
    if (!part) throw new Error(`No part holds ${source}`);
    return part;
  });
  const found = new Set([...all.filter((part) => part.entry), ...holding]);
  for (const part of found) {
    for (const file of part.imports) {
      const next = all.find((other) => other.file === file);
      if (next) found.add(next);
    }
  }
  return found;
}

export function sumOf(parts: Iterable<Bytes>): Bytes {
  let gzip = 0;
  let brotli = 0;
  for (const part of parts) {
    gzip += part.gzip;
    brotli += part.brotli;
  }
  return { gzip, brotli };
}
