import { expect } from 'vitest';
import type { Loose } from './full-trips.ts';

/** Smallest and largest figure that is taken; with `above`, the smallest is the first that is not. */
export interface Range {
  readonly least: number;
  readonly most: number;
  readonly above?: boolean;
}

export const from = (least: number, most: number): Range => ({ least, most });
export const over = (least: number, most: number): Range => ({ least, most, above: true });

/** A copy with another value at a path such as `runs.0.passes.1.over`. */
export function withAt(sample: Loose, path: string, value: unknown): Loose {
  const copy = JSON.parse(JSON.stringify(sample));
  const keys = path.split('.');
  const last = keys.pop()!;
  const place = keys.reduce((at: Loose, key) => at[key], copy);
  place[last] = value;
  return copy;
}

/** At both ends of the range it is taken, a thousandth of a part beyond them it is not. */
export function expectRange(takes: (value: Loose) => boolean, sample: Loose, path: string, range: Range): void {
  const { least, most, above } = range;
  const at = (value: number) => takes(withAt(sample, path, value));
  const hair = (value: number) => Math.max(Math.abs(value), 1e-3) * 1e-3;
  expect([at(most), at(most + hair(most))], `${path} at ${most} and beyond`).toEqual([true, false]);
  const low = above ? [at(least + hair(least)), at(least)] : [at(least), at(least - hair(least))];
  expect(low, `${path} at ${least} and below`).toEqual([true, false]);
}

/** So many entries are taken, one less or more not; made by copying the first. */
export function expectEntries(takes: (value: Loose) => boolean, sample: Loose, path: string, range: Range): void {
  const first = path.split('.').reduce((at: Loose, key) => at[key], sample)[0];
  const at = (length: number) => takes(withAt(sample, path, Array(length).fill(first)));
  expect([at(range.most), at(range.most + 1)], `${range.most} of ${path}, and one more`).toEqual([true, false]);
  expect(at(range.least), `${range.least} of ${path}`).toBe(true);
  if (range.least > 0) expect(at(range.least - 1), `${range.least - 1} of ${path}`).toBe(false);
}
