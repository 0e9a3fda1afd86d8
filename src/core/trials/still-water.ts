import { meanOfMeans } from '../track/mean-of-means.ts';
import type { Pass } from './shapes.ts';

/** What passes tell of a boat's speed through the water, m/s, with standard deviations. */
export interface StillWater {
  readonly speed: number;
  readonly deviation: number;
  /** With the way out. */
  readonly stream: number;
  readonly streamDeviation: number;
  /** From passes both ways; otherwise from the stream as given, or from none. */
  readonly by: 'both-ways' | 'stream-given' | 'no-stream-known';
}

/** Of one pass: throttle, steering and a minute's GPS mean (the GPS part, 0.05 m/s, is published; the rest common practice). */
const PASS_DEVIATION = 0.1;
/** Of a stream that somebody gave, or that nobody knows (common practice, no source). */
const STREAM_GIVEN = 0.25;
const STREAM_UNKNOWN = 0.5;

/** `stream` with the way out, m/s, counts only where all passes go one way. There is at least one pass. */
export function stillWater(passes: readonly Pass[], stream?: number): StillWater {
  const both = meanOfMeans(passes);
  if (both) {
    const deviation = PASS_DEVIATION * Math.hypot(...both.weights);
    return { speed: both.speed, deviation, stream: both.stream, streamDeviation: deviation, by: 'both-ways' };
  }
  const over = passes.reduce((sum, pass) => sum + pass.over, 0) / passes.length;
  const along = (stream ?? 0) * (passes[0]!.way === 'out' ? 1 : -1);
  const streamDeviation = stream === undefined ? STREAM_UNKNOWN : STREAM_GIVEN;
  return {
    speed: Math.max(over - along, 0),
    deviation: Math.hypot(PASS_DEVIATION / Math.sqrt(passes.length), streamDeviation),
    stream: stream ?? 0,
    streamDeviation,
    by: stream === undefined ? 'no-stream-known' : 'stream-given',
  };
}
