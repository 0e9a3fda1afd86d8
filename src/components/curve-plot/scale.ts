export type Span = readonly [number, number];

/** Straight map of one span onto another; a span without width maps to the middle of the other. */
export function linear([from, to]: Span, [start, end]: Span): (value: number) => number {
  const width = to - from;
  if (width === 0) return () => (start + end) / 2;
  return (value) => start + ((value - from) / width) * (end - start);
}

/** Multiples of 1, 2 or 5 times a power of ten inside the span, `most` of them at most. */
export function roundTicks([low, high]: Span, most: number): readonly number[] {
  const width = high - low;
  if (!(width > 0) || !Number.isFinite(width) || most < 1) return [];
  const power = 10 ** Math.floor(Math.log10(width / most));
  for (const step of [1, 2, 5, 10, 20, 50].map((round) => round * power)) {
    const first = Math.ceil(low / step - 1e-9);
    const last = Math.floor(high / step + 1e-9);
    if (last - first + 1 > most) continue;
    return Array.from({ length: Math.max(last - first + 1, 0) }, (_, i) => plain((first + i) * step));
  }
  return [];
}

/** The next multiple of 1, 2, 2.5 or 5 times a power of ten at or above a positive figure. */
export function roundUp(value: number): number {
  if (!(value > 0) || !Number.isFinite(value)) return 1;
  const power = 10 ** Math.floor(Math.log10(value));
  const round = [1, 1.2, 1.5, 2, 2.5, 3, 4, 5, 6, 8, 10].find((r) => r * power >= value * (1 - 1e-12)) ?? 10;
  return plain(round * power);
}

/** Without the last digits that adding leaves behind: 0.3, not 0.30000000000000004. */
function plain(value: number): number {
  return Number(value.toPrecision(12)) + 0;
}
