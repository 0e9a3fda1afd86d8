/** Amounts from the full end: where usable fuel or charge starts and ends, the empty end, and how far to draw past it. */
export interface BarExtent {
  readonly start: number;
  readonly empty: number;
  readonly full: number;
  /** May be Infinity. */
  readonly beyond: number;
}

export interface BarScale {
  /** Place of an amount from the full end, px. What lies past the empty end starts after a gap. */
  x(amount: number): number;
  /** px of the empty end, and where what is past it begins. */
  readonly tankEnd: number;
  readonly past: number;
  /** These parts are drawn shorter than to scale, with a tear. */
  readonly tornStart: boolean;
  readonly tornEnd: boolean;
  /** px per amount in the usable part. */
  readonly perAmount: number;
}

const GAP = 10;
/** Shares of the width that the empty space and the shortfall may take before they are torn, and then take. */
const MOST = { start: 0.3, end: 0.34 };
const TORN = { start: 0.14, end: 0.26 };

/** The usable part is to scale; empty space before it and shortfall past it give way when they would crowd it. */
export function barScale(extent: BarExtent, width: number): BarScale {
  const { start, empty, full, beyond } = extent;
  const usable = empty - start;
  const gap = beyond > 0 ? GAP : 0;
  const room = width - gap;
  // Without anything usable only the empty space and the shortfall are there to share the width.
  const nothing = !(usable > 0);
  const tornEnd = beyond > 0 && (beyond === Infinity || nothing || beyond / (full + beyond) > MOST.end);
  const endPx = tornEnd ? room * TORN.end : 0;
  const left = full + (tornEnd ? 0 : beyond);
  const tornStart = !nothing && start > 0 && start / left > MOST.start;
  const startPx = tornStart ? room * TORN.start : 0;
  const scaled = left - (tornStart ? start : 0);
  const perAmount = scaled > 0 ? (room - endPx - startPx) / scaled : 0;

  const usableAt = tornStart ? startPx : start * perAmount;
  const tankEnd = full > 0 ? usableAt + (full - start) * perAmount : room - endPx;
  const x = (amount: number): number => {
    if (amount <= start) return start > 0 ? (Math.max(amount, 0) / start) * usableAt : 0;
    if (amount <= full) return usableAt + (amount - start) * perAmount;
    if (!(beyond > 0)) return tankEnd;
    const past = beyond === Infinity ? Number(amount === Infinity) : Math.min((amount - full) / beyond, 1);
    return tankEnd + gap + past * (width - tankEnd - gap);
  };
  return { x, tankEnd, past: tankEnd + gap, tornStart, tornEnd, perAmount };
}
