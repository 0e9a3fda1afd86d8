import { existsSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import ts from 'typescript';

/** All files of the project that a file loads, itself among them, directly or through others. */
export function loadedBy(
  root: string,
  file: string,
  known = new Map<string, readonly string[]>(),
): ReadonlySet<string> {
  const found = new Set([file]);
  for (const one of found) {
    let next = known.get(one);
    if (!next) {
      next = importsOf(root, one);
      known.set(one, next);
    }
    for (const other of next) found.add(other);
  }
  return found;
}

function importsOf(root: string, file: string): readonly string[] {
  if (!file.endsWith('.ts')) return [];
  const { importedFiles } = ts.preProcessFile(readFileSync(join(root, file), 'utf8'), true, true);
  return importedFiles
    .filter(({ fileName }) => fileName.startsWith('.'))
    .map(({ fileName }) => join(dirname(file), fileName.split('?')[0]!))
    .filter((one) => existsSync(join(root, one)));
}
