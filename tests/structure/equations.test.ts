import { existsSync, readFileSync } from 'node:fs';
import temml from 'temml';
import { describe, expect, it } from 'vitest';
import { EQUATIONS } from '../../src/layouts/equations.ts';

const all = Object.values(EQUATIONS).flat();

/** Figures that belong to a law; exponents and factors of definitions are whole numbers. */
function figures(tex: string): string[] {
  return tex.match(/\d+\.\d+|\d{4,}/g) ?? [];
}

describe('the equations of the method page', () => {
  it('can all be set', () => {
    for (const { tex } of all) expect(() => temml.renderToString(tex, { throwOnError: true })).not.toThrow();
  });

  it('carry no figure that the files of the core named beside them do not work with', () => {
    for (const { tex, files } of all) {
      const code = files.map((file) => readFileSync(`src/core/${file}`, 'utf8')).join('\n');
      const strange = figures(tex).filter(
        (figure) => !new RegExp(`(?<![\\d.])${figure.replace('.', '\\.')}(?!\\d)`).test(code),
      );
      expect(strange, tex).toEqual([]);
    }
  });

  it('name files that exist, and whose they are', () => {
    for (const { files, source, says } of all) {
      expect(files.length).toBeGreaterThan(0);
      for (const file of files) expect(existsSync(`src/core/${file}`), file).toBe(true);
      expect(source).not.toBe('');
      expect(says).not.toBe('');
    }
  });
});
