import { appendFileSync } from 'node:fs';
import { expect } from 'vitest';
import table from '../../shared/checks/published-table.json' with { type: 'json' };

/** One line of the table on the method page: a published figure, and ours. */
export interface Told {
  readonly check: string;
  readonly what: string;
  readonly published: number;
  readonly found: number;
}

const committed = new Map((table.rows as readonly Told[]).map((row) => [`${row.check} ${row.what}`, row]));
/** Rounded figures may differ in their last place. */
const SAME = 0.002;

/**
 * Tells the table of the method page what a test found. `scripts/published-table.ts --write` collects it anew; without it
 * the table has to say the same already: to two thousandths, or to `same` where shares mean nothing, as of a clock.
 */
export function told(check: string, what: string, published: number, found: number, same?: number): void {
  // Figures of our own prototype are held with the same helpers and are nothing published.
  if (!expect.getState().testPath?.includes('/published/')) return;
  const file = process.env.HOMELEG_TOLD;
  if (file) {
    appendFileSync(file, `${JSON.stringify({ check, what, published, found } satisfies Told)}\n`);
    return;
  }
  const row = committed.get(`${check} ${what}`);
  const stale = `${check} ${what}: renew the table with "node scripts/published-table.ts --write"`;
  expect(row, stale).toBeDefined();
  for (const [mine, theirs] of [
    [found, row!.found],
    [published, row!.published],
  ] as const) {
    // Differences of nearly nothing are told as they are.
    const allowed = same ?? SAME * Math.max(Math.abs(theirs), Math.abs(published));
    expect(Math.abs(mine - theirs), stale).toBeLessThanOrEqual(allowed);
  }
}
