/** Multiples of 1, 2 or 5 times a power of ten inside the span, `most` of them at most. */
export function roundTicks([low, high]: readonly [number, number], most: number): readonly number[] {
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

/** Without the last digits that adding leaves behind: 0.3, not 0.30000000000000004. */
export function plain(value: number): number {
  return Number(value.toPrecision(12)) + 0;
}
