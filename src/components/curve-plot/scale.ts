import { plain } from './round-ticks.ts';

export type Span = readonly [number, number];

/** Straight map of one span onto another; a span without width maps to the middle of the other. */
export function linear([from, to]: Span, [start, end]: Span): (value: number) => number {
  const width = to - from;
  if (width === 0) return () => (start + end) / 2;
  return (value) => start + ((value - from) / width) * (end - start);
}

/** The next multiple of 1, 2, 2.5 or 5 times a power of ten at or above a positive figure. */
export function roundUp(value: number): number {
  if (!(value > 0) || !Number.isFinite(value)) return 1;
  const power = 10 ** Math.floor(Math.log10(value));
  const round = [1, 1.2, 1.5, 2, 2.5, 3, 4, 5, 6, 8, 10].find((r) => r * power >= value * (1 - 1e-12)) ?? 10;
  return plain(round * power);
}
