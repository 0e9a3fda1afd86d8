import { cpSync, mkdtempSync, readdirSync, rmSync, symlinkSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** Made again by others, or of no use to a test. */
const LEFT = new Set(['node_modules', 'dist', 'dist-package', 'coverage', 'test-results', 'playwright-report', '.git']);

const copies = new Set<string>();
process.on('exit', () => {
  for (const copy of copies) removeCopy(copy);
});

/** A copy of the project in a temporary folder, whose files may be changed; packages are shared, nothing writes to them. */
export function privateCopy(root: string): string {
  const copy = mkdtempSync(join(tmpdir(), 'homeleg-mutation-'));
  copies.add(copy);
  for (const name of readdirSync(root)) {
    if (!LEFT.has(name)) cpSync(join(root, name), join(copy, name), { recursive: true });
  }
  symlinkSync(join(root, 'node_modules'), join(copy, 'node_modules'), 'dir');
  return copy;
}

export function removeCopy(copy: string): void {
  copies.delete(copy);
  rmSync(copy, { recursive: true, force: true });
}
