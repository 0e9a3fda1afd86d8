import { appendFileSync, mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { expect } from 'vitest';
import type { Trip } from '../../src/core/trip/shapes.ts';
import { keepPlanned } from './trip-makers.ts';

/** Cases of every property at least, the seed, and where to tell how many were held; `npm run test:properties` sets them. */
const EACH = Number(process.env.HOMELEG_CASES ?? 0);
const SEED = process.env.HOMELEG_SEED;
const COUNTS = process.env.HOMELEG_COUNTS;
const FILES = join('test-results', 'counterexamples');

/** The usual number of cases and their seed, as `npm test` runs them. */
export interface Runs {
  readonly seed: number;
  readonly numRuns: number;
  /** Of the cases that `npm run test:properties` gives a property, where each costs many plans; 1 if absent. */
  readonly share?: number;
}

/**
 * Holds a property over random cases. Where it fails, the smallest case found is told with its seed, and every trip
 * that was planned in it is kept as a file that `npm run plan` opens.
 */
export function holds<T extends [unknown, ...unknown[]]>(property: fc.IPropertyWithHooks<T>, usual: Runs): void {
  const details = fc.check(property, parameters(usual));
  const name = counted(details);
  if (!details.failed) return;
  const trips = tripsIn(property, details.counterexample);
  const opened = filed(name, trips).map((file) => `npm run plan -- ${file}`);
  throw new Error([String(details.errorInstance), ...opened, fc.defaultReportMessage(details)].join('\n'));
}

/** The same for a property that answers later. */
export async function holdsLater<T extends [unknown, ...unknown[]]>(
  property: fc.IAsyncPropertyWithHooks<T>,
  usual: Runs,
): Promise<void> {
  const details = await fc.check(property, parameters(usual));
  counted(details);
  if (details.failed) throw new Error(`${String(details.errorInstance)}\n${fc.defaultReportMessage(details)}`);
}

function parameters({ seed, numRuns, share = 1 }: Runs): { seed: number; numRuns: number } {
  return {
    seed: SEED === undefined ? seed : Number(SEED) + seed,
    numRuns: Math.max(numRuns, Math.ceil(EACH * share)),
  };
}

/** Tells how many cases were held; the name of the property. */
function counted({ numRuns, seed }: { numRuns: number; seed: number }): string {
  const name = expect.getState().currentTestName ?? 'a property';
  if (COUNTS) appendFileSync(COUNTS, `${JSON.stringify({ name, cases: numRuns, seed })}\n`);
  return name;
}

/** The trips that are planned when the case is tried once more. */
function tripsIn<T extends [unknown, ...unknown[]]>(
  property: fc.IPropertyWithHooks<T>,
  counterexample: T | null,
): readonly Trip[] {
  if (counterexample === null) return [];
  const trips: Trip[] = [];
  keepPlanned(trips);
  try {
    property.run(counterexample);
  } finally {
    keepPlanned(undefined);
  }
  return trips;
}

function filed(name: string, trips: readonly Trip[]): readonly string[] {
  if (trips.length > 0) mkdirSync(FILES, { recursive: true });
  return trips.map((trip, i) => {
    const file = join(FILES, `${name.replaceAll(/[^a-z0-9]+/gi, '-').slice(-90)}-${i + 1}.json`);
    // No file holds a calibration: it is worked out from runs. The message above tells the one drawn.
    const { calibration, ...craft } = trip.craft;
    writeFileSync(file, `${JSON.stringify({ ...trip, craft }, undefined, 1)}\n`);
    return `${file}${calibration ? ' (planned with the calibration above)' : ''}`;
  });
}
