import { type Plain, plain } from './plain.ts';

/**
 * A whole answer in few figures: of each of its fields how many values lie below it and two sums over all of them, by
 * their logarithms, so that a small figure weighs as much as a large one. For the many answers that one would not read.
 */
export function digest(answer: unknown): Plain {
  const found = plain(answer);
  if (found === null || typeof found !== 'object') return found;
  return Object.fromEntries(Object.entries(found).map(([key, value]) => [key, told(value as Plain)]));
}

function told(value: Plain): Plain {
  if (value === null || typeof value !== 'object') return value;
  const sums = { count: 0, sum: 0, weighted: 0 };
  add(sums, value);
  // Their broken parts alone, between 1 and 2, so that they are compared as finely however many figures there are.
  return [sums.count, 1 + broken(sums.sum), 1 + broken(sums.weighted)];
}

function add(sums: { count: number; sum: number; weighted: number }, value: Plain): void {
  if (value !== null && typeof value === 'object') {
    for (const [key, inner] of Object.entries(value)) {
      add(sums, key);
      add(sums, inner as Plain);
    }
    return;
  }
  const one = weight(value);
  sums.weighted += one * (1 + ((sums.count++ * Math.SQRT2) % 1));
  sums.sum += one;
}

function broken(sum: number): number {
  return Math.round((sum - Math.floor(sum)) * 1e8) / 1e8;
}

function weight(value: null | boolean | number | string): number {
  if (typeof value === 'number') return Math.sign(value) * Math.log1p(Math.abs(value) * 1e6);
  let mixed = 7;
  for (const character of String(value)) mixed = (mixed * 31 + character.charCodeAt(0)) % 9973;
  return mixed / 1000;
}
