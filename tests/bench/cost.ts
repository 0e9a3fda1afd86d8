/** Median cost of a piece of work, in units and in absolute time. */
export interface Cost {
  readonly units: number;
  readonly microseconds: number;
}

/** Keeps results alive, so that nothing measured is optimised away. */
export const kept = { sum: 0 };

/** The unit: 20 powers, which is about one evaluation of resistance. */
function unit(): void {
  let sum = 0;
  // biome-ignore lint/style/useExponentiationOperator: the unit is told in calls of Math.pow
  for (let i = 0; i < 20; i++) sum += Math.pow(1.05 + kept.sum * 1e-30 + i * 0.11, 1.1 + i * 0.013);
  kept.sum = (kept.sum + sum) % 1;
}

/** Processor time of this process, us: others on the machine count less than by the clock. */
function spent(): number {
  const { user, system } = process.cpuUsage();
  return user + system;
}

/** Microseconds for one of `times` runs. */
function timed(work: () => void, times: number): number {
  const start = spent();
  for (let i = 0; i < times; i++) work();
  return (spent() - start) / times;
}

/** How long a batch of runs takes at least, us: long against the ticks of processor time and being interrupted. */
const BATCH = 12_000;

function batchOf(work: () => void): number {
  let times = 1;
  while (timed(work, times) * times < BATCH) times *= 2;
  return times;
}

let units = 0;

/** Work and unit take turns; medians of the rounds. */
export function costOf(work: () => void, rounds = 41): Cost {
  for (let i = 0; i < 20; i++) work();
  units ||= batchOf(unit);
  const times = batchOf(work);
  const ratios: number[] = [];
  const absolute: number[] = [];
  for (let i = 0; i < rounds; i++) {
    const before = timed(unit, units);
    const cost = timed(work, times);
    const after = timed(unit, units);
    ratios.push((2 * cost) / (before + after));
    absolute.push(cost);
  }
  return { units: median(ratios), microseconds: median(absolute) };
}

function median(values: number[]): number {
  values.sort((a, b) => a - b);
  return values[Math.floor(values.length / 2)]!;
}
