import { lonBetween } from '../route/distance.ts';
import { meanOfMeans } from './mean-of-means.ts';
import type { PassGroup, Stretch } from './shapes.ts';

/** Throttle, steering and a receiver's mean over 10 s and more, m/s (the receiver's part is published, 0.05 m/s). */
const HELD = 0.05;
/** How fast a strong tidal stream changes, m/s2: 1 m/s either way in 12.4 hours. */
const STREAM_CHANGE = (2 * Math.PI) / (12.4 * 3600);
/** A pass this far from the middle of those the same way is odd, m/s; or this share of it (common practice, no source). */
const ODD = 0.25;
const ODD_SHARE = 0.04;

/**
 * Speed through still water and stream of passes along one line at one throttle setting, by the mean of means; the way
 * of the first counts as out. Undefined without a pass each way.
 */
export function passGroup(stretches: readonly Stretch[]): PassGroup | undefined {
  const sailed = [...stretches].sort((a, b) => a.start - b.start);
  const headingDeg = sailed[0]?.headingDeg ?? 0;
  const passes = sailed.map((stretch) => ({ stretch, over: stretch.speed, way: wayOf(stretch, headingDeg) }));
  const found = meanOfMeans(passes);
  if (!found) return undefined;
  const { speed, stream, weights } = found;

  const middles = { out: median(overOf(passes, 'out')), back: median(overOf(passes, 'back')) };
  const means = { out: mean(overOf(passes, 'out')), back: mean(overOf(passes, 'back')) };
  const scatter = passes.reduce((sum, { over, way }) => sum + (over - means[way]) ** 2, 0);
  // Two speeds were taken from the passes: the mean each way.
  const single = passes.length > 2 ? scatter / (passes.length - 2) : 0;
  const variance = passes.reduce(
    (sum, pass, at) => sum + weights[at]! ** 2 * Math.max(single, pass.stretch.deviation ** 2 + HELD ** 2),
    0,
  );
  // With a pass each way, a stream that changes between them is taken for speed.
  const between = passes.length === 2 ? middleOf(sailed[1]!) - middleOf(sailed[0]!) : 0;
  const deviation = Math.sqrt(variance + ((STREAM_CHANGE * between) / 2) ** 2);
  return {
    passes: passes.map(({ stretch, over, way }, at) => ({
      stretch,
      way,
      weight: weights[at]!,
      residual: over - middles[way],
      odd: Math.abs(over - middles[way]) > Math.max(ODD, ODD_SHARE * middles[way]),
    })),
    headingDeg,
    speed,
    deviation,
    stream: { along: stream, deviation },
  };
}

/** Out or back along a line whose way out has this heading. */
export function wayOf(stretch: Stretch, outDeg: number): 'out' | 'back' {
  return Math.abs(lonBetween(outDeg, stretch.headingDeg)) <= 90 ? 'out' : 'back';
}

function overOf(passes: readonly { over: number; way: 'out' | 'back' }[], way: 'out' | 'back'): number[] {
  return passes.flatMap((pass) => (pass.way === way ? [pass.over] : []));
}

function middleOf({ start, end }: Stretch): number {
  return (start + end) / 2;
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}

function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const half = sorted.length >> 1;
  return sorted.length % 2 === 1 ? sorted[half]! : ((sorted[half - 1] ?? 0) + (sorted[half] ?? 0)) / 2;
}
