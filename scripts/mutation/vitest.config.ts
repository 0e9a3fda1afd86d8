import { readFileSync } from 'node:fs';
import { relative } from 'node:path';
import { defineConfig, mergeConfig } from 'vitest/config';
import usual from '../../vitest.config.ts';
import type { Mutant } from './mutators.ts';

/** The mutants of this run and what is done with them: all marked where they are reached, or one put in place. */
interface Order {
  readonly mutants: readonly Mutant[];
  readonly put?: number;
}

const root = process.cwd();
const order: Order = JSON.parse(readFileSync(process.env.HOMELEG_MUTATION!, 'utf8'));

export default mergeConfig(
  usual,
  defineConfig({
    plugins: [
      {
        name: 'homeleg-mutation',
        enforce: 'pre',
        transform(code: string, id: string) {
          const file = relative(root, id.split('?')[0]!);
          if (!file.startsWith('src/core/')) return undefined;
          if (order.put === undefined) return marked(file, code);
          const mutant = order.mutants[order.put]!;
          if (mutant.file !== file) return undefined;
          return code.slice(0, mutant.start) + mutant.replacement + code.slice(mutant.end);
        },
      },
    ],
    test: order.put === undefined ? { setupFiles: ['scripts/mutation/reached.ts'] } : {},
  }),
);

function marked(file: string, code: string): string {
  const marks: { at: number; order: number; text: string }[] = [];
  order.mutants.forEach((mutant, i) => {
    if (mutant.file !== file) return;
    const { start, end, block } = mutant.reach;
    const mark = `globalThis.homelegReached?.(${i})`;
    if (block) marks.push({ at: start, order: 0, text: `${mark};` });
    else {
      // Of marks that begin together the outer one comes first, of those that end together last.
      marks.push({ at: start, order: -end, text: `(${mark}, ` });
      marks.push({ at: end, order: -start, text: ')' });
    }
  });
  marks.sort((a, b) => b.at - a.at || b.order - a.order);
  let text = code;
  for (const mark of marks) text = text.slice(0, mark.at) + mark.text + text.slice(mark.at);
  return text;
}
