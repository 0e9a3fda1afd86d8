/** A pass as the mean of means takes it: mean speed over ground, m/s, out or back along one line. */
export interface SteadyPass {
  readonly over: number;
  readonly way: 'out' | 'back';
}

export interface MeanOfMeans {
  /** Through still water, m/s. */
  readonly speed: number;
  /** Of the stream with the way out, m/s, weighted as the speed is. */
  readonly stream: number;
  /** Of each pass, in the order given; they add up to 1. */
  readonly weights: readonly number[];
}

/**
 * Weights of passes made by turns out and back at equal intervals: 1-1, 1-2-1, 1-3-3-1 and so on, over their sum.
 * A stream that changes in time as a polynomial of degree `count` - 2 drops out (mean of means, standard practice of
 * speed trials, ISO 15016 family; from memory). For 1 pass and more.
 */
export function binomialWeights(count: number): number[] {
  let row = [1];
  for (let order = 1; order < count; order++) {
    row = Array.from({ length: order + 1 }, (_, at) => ((row[at - 1] ?? 0) + (row[at] ?? 0)) / 2);
  }
  return row;
}

/**
 * Speed through still water and stream from passes in the order sailed; speeds are averaged, never times. Passes the
 * same way one after the other count as one, by their plain mean. Undefined without a pass each way: one way alone
 * does not tell boat from stream.
 */
export function meanOfMeans(passes: readonly SteadyPass[]): MeanOfMeans | undefined {
  const turns = sameWayTogether(passes);
  if (turns.length < 2) return undefined;
  const turnWeights = binomialWeights(turns.length);
  const weights = turns.flatMap((count, turn) => Array<number>(count).fill(turnWeights[turn]! / count));
  let speed = 0;
  let stream = 0;
  passes.forEach(({ over, way }, at) => {
    speed += weights[at]! * over;
    stream += weights[at]! * (way === 'out' ? over : -over);
  });
  return { speed, stream, weights };
}

/** How many passes follow each other the same way, turn by turn. */
function sameWayTogether(passes: readonly SteadyPass[]): number[] {
  const counts: number[] = [];
  passes.forEach(({ way }, at) => {
    if (at > 0 && passes[at - 1]!.way === way) counts[counts.length - 1]!++;
    else counts.push(1);
  });
  return counts;
}
