import type { MeasuredTrack } from '../../core/track/measured-track.ts';
import { STEP } from '../../core/track/over-ground.ts';

/** Speeds that differ by less than this are one, m/s. */
const BIN = 0.75;
/** Slower than this the boat lies with its engine in neutral, or moored, m/s. */
const LYING = 0.3;
/** Shorter times go to the next speed, s. */
const SHORTEST = 60;
/** The form of a refill holds so many. */
const MOST = 12;

export interface Spent {
  readonly speed: number;
  readonly seconds: number;
}

/** Time at each speed over ground of a recorded trip, slowest first; what lay still comes as 0. */
export function spentOf({ pieces }: MeasuredTrack): readonly Spent[] {
  const bins = new Map<number, { way: number; seconds: number }>();
  for (const { speed } of pieces) {
    for (const each of speed) {
      const key = each < LYING ? 0 : 1 + Math.floor(each / BIN);
      const bin = bins.get(key) ?? { way: 0, seconds: 0 };
      bin.way += each * STEP;
      bin.seconds += STEP;
      bins.set(key, bin);
    }
  }
  const sorted = [...bins.entries()].sort(([a], [b]) => a - b).map(([key, bin]) => ({ key, ...bin }));
  return merged(sorted).map(({ key, way, seconds }) => ({
    speed: key === 0 ? 0 : Math.round((way / seconds) * 100) / 100,
    seconds,
  }));
}

type Bin = { readonly key: number; readonly way: number; readonly seconds: number };

/** The shortest goes to its nearer neighbour, until none is short and few enough are left. Lying still stays apart. */
function merged(bins: readonly Bin[]): readonly Bin[] {
  const moving = bins.filter(({ key }) => key > 0);
  const still = bins.filter(({ key, seconds }) => key === 0 && seconds >= SHORTEST);
  const left = [...moving];
  while (left.length > 1) {
    const shortest = left.reduce((best, bin, i) => (bin.seconds < left[best]!.seconds ? i : best), 0);
    if (left[shortest]!.seconds >= SHORTEST && left.length + still.length <= MOST) break;
    const into = shortest === 0 ? 1 : shortest - 1;
    const [a, b] = [left[into]!, left[shortest]!];
    left[into] = { key: a.key, way: a.way + b.way, seconds: a.seconds + b.seconds };
    left.splice(shortest, 1);
  }
  return [...still, ...left];
}
