/** A run one way: mean speed over ground, m/s, and power, W; any measure of power will do, the same for all. */
export interface PoweredRun {
  readonly over: number;
  readonly way: 'out' | 'back';
  readonly power: number;
}

export interface StreamByPower {
  /** With the way out, m/s. */
  readonly stream: number;
  /** Mean of power over speed cubed of the runs that count, W s3/m3, and their standard deviation (of all, not of a sample). */
  readonly ratio: number;
  readonly deviation: number;
  /** Indices of runs that contradict the others, ascending: more power, yet slower through the water. They do not count. */
  readonly odd: readonly number[];
}

/**
 * The stream from runs out and back at different powers: that which makes power over the cube of speed through the
 * water vary least. For a boat held below its hump; at least two runs each way. Odd are the fewest runs that have to go
 * for more power to mean more speed. Undefined where the runs do not tell.
 */
export function streamByPower(runs: readonly PoweredRun[]): StreamByPower | undefined {
  const all = streamOfAll(runs);
  if (!all) return undefined;
  const odd = contradicting(runs, all.stream);
  const rest = streamOfAll(runs.filter((_, index) => !odd.includes(index)));
  // Too few left to call anything odd.
  return odd.length < runs.length / 2 && rest ? { ...rest, odd } : { ...all, odd: [] };
}

/** The same with no run doubted. */
export function streamOfAll(runs: readonly PoweredRun[]): Omit<StreamByPower, 'odd'> | undefined {
  if (!enough(runs)) return undefined;
  const stream = leastSpread(runs);
  return { stream, ...spreadOf(ratiosOf(runs, stream)) };
}

function enough(runs: readonly PoweredRun[]): boolean {
  const out = runs.filter(({ way }) => way === 'out').length;
  return out >= 2 && runs.length - out >= 2 && runs.every(({ over, power }) => over > 0 && power > 0);
}

function throughWater({ over, way }: PoweredRun, stream: number): number {
  return way === 'out' ? over - stream : over + stream;
}

function ratiosOf(runs: readonly PoweredRun[], stream: number): number[] {
  return runs.map((run) => run.power / throughWater(run, stream) ** 3);
}

/** Up to this share of the slowest run each way; more would leave it no speed through the water. */
const MOST = 0.8;
const STEPS = 60;

/** Least spread by a coarse search, then by golden section within the best step. */
function leastSpread(runs: readonly PoweredRun[]): number {
  const slowest = (way: 'out' | 'back') => Math.min(...runs.filter((run) => run.way === way).map(({ over }) => over));
  const [least, most] = [-MOST * slowest('back'), MOST * slowest('out')];
  const spread = (stream: number) => spreadOf(ratiosOf(runs, stream)).deviation;
  const step = (most - least) / STEPS;
  let best = least;
  for (let at = 1; at <= STEPS; at++) {
    const stream = least + at * step;
    if (spread(stream) < spread(best)) best = stream;
  }
  let [low, high] = [best - step, best + step];
  const golden = (Math.sqrt(5) - 1) / 2;
  while (high - low > 1e-6) {
    const [left, right] = [high - golden * (high - low), low + golden * (high - low)];
    if (spread(left) < spread(right)) high = right;
    else low = left;
  }
  return (low + high) / 2;
}

function spreadOf(values: readonly number[]): { readonly ratio: number; readonly deviation: number } {
  const ratio = values.reduce((sum, value) => sum + value, 0) / values.length;
  const squares = values.reduce((sum, value) => sum + (value - ratio) ** 2, 0);
  return { ratio, deviation: Math.sqrt(squares / values.length) };
}

/** Slower by less than this share is the scatter of good runs (common practice, no source). */
const SCATTER = 0.02;

/** Indices outside the longest row of runs, by power, in which none is slower than the one before. */
function contradicting(runs: readonly PoweredRun[], stream: number): number[] {
  const order = runs.map((run, index) => ({ index, power: run.power, speed: throughWater(run, stream) }));
  order.sort((a, b) => a.power - b.power);
  const rows: (readonly (typeof order)[number][])[] = [];
  for (const run of order) {
    const before = rows.filter((row) => run.speed >= row.at(-1)!.speed * (1 - SCATTER));
    rows.push([...longest(before), run]);
  }
  const kept = new Set(longest(rows).map(({ index }) => index));
  return runs.flatMap((_, index) => (kept.has(index) ? [] : [index]));
}

function longest<T>(rows: readonly (readonly T[])[]): readonly T[] {
  return rows.reduce<readonly T[]>((best, row) => (row.length > best.length ? row : best), []);
}
