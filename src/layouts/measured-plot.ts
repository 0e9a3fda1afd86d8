interface Figures {
  readonly measured: number;
  readonly predicted: number;
  readonly low?: number;
  readonly high?: number;
  readonly inside?: boolean;
}

const SIZE = 340;
/** Room for the axes' figures. */
const FRAME = 52;
const EDGE = 8;

/** Where the figures lie on a square plot with both axes logarithmic and alike, so that a share off looks the same everywhere. */
export function plotted(rows: readonly Figures[]) {
  const all = rows.flatMap(({ measured, predicted }) => [measured, predicted]);
  const ends = [Math.min(...all) / 1.25, Math.max(...all) * 1.25] as const;
  const span = Math.log(ends[1] / ends[0]);
  /** From the origin, along either axis. */
  const at = (figure: number): number =>
    Math.round((FRAME + (Math.log(figure / ends[0]) / span) * (SIZE - FRAME - EDGE)) * 10) / 10;
  return {
    size: SIZE,
    frame: FRAME,
    at,
    ends,
    ticks: ticksBetween(...ends),
    inside: rows.filter(({ inside }) => inside === true).length,
    outside: rows.filter(({ inside }) => inside === false).length,
  };
}

/** 1, 2 and 5 of every power of ten between the ends. */
export function ticksBetween(low: number, high: number): readonly number[] {
  const ticks: number[] = [];
  for (let power = Math.floor(Math.log10(low)); power <= Math.log10(high); power++) {
    for (const step of [1, 2, 5]) {
      const tick = step * 10 ** power;
      if (tick >= low && tick <= high) ticks.push(tick);
    }
  }
  return ticks;
}
