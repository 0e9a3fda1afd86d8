import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** Builds the package and packs it; what it returns clears up at the end. */
export default function pack(): () => void {
  const folder = mkdtempSync(join(tmpdir(), 'homeleg-package-'));
  execFileSync(process.execPath, ['scripts/package/build.ts'], { stdio: 'inherit' });
  const packed = execFileSync('npm', ['pack', './dist-package', '--pack-destination', folder, '--json'], {
    encoding: 'utf8',
    stdio: ['ignore', 'pipe', 'ignore'],
  });
  const [{ filename }] = JSON.parse(packed) as [{ filename: string }];
  process.env.HOMELEG_PACKED = join(folder, filename);
  return () => rmSync(folder, { recursive: true, force: true });
}
