/**
 * Curve through points in rising x that never overshoots them, continuous with its slope and level beyond both ends.
 * Source: Fritsch and Carlson 1980, SIAM J. Numer. Anal. 17(2), with the mean slopes of Fritsch and Butland 1984 (from
 * memory).
 */
export function monotoneCurve(xs: readonly number[], ys: readonly number[]): (x: number) => number {
  const last = xs.length - 1;
  const chord = (i: number) => (ys[i + 1]! - ys[i]!) / (xs[i + 1]! - xs[i]!);
  const slopes = xs.map((_, i) => {
    if (i === 0 || i === last) return 0;
    const before = chord(i - 1);
    const after = chord(i);
    if (before * after <= 0) return 0;
    const wide = xs[i + 1]! - xs[i - 1]!;
    const ahead = (wide + xs[i + 1]! - xs[i]!) / (3 * wide);
    return 1 / (ahead / before + (1 - ahead) / after);
  });
  return (x) => {
    if (x <= xs[0]!) return ys[0]!;
    if (x >= xs[last]!) return ys[last]!;
    let i = 0;
    while (x > xs[i + 1]!) i++;
    const width = xs[i + 1]! - xs[i]!;
    const s = (x - xs[i]!) / width;
    const r = 1 - s;
    const fromLeft = r * r * ((1 + 2 * s) * ys[i]! + s * width * slopes[i]!);
    const fromRight = s * s * ((1 + 2 * r) * ys[i + 1]! - r * width * slopes[i + 1]!);
    return fromLeft + fromRight;
  };
}
