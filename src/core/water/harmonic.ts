import { constituents, createTidePredictor } from '@neaps/tide-predictor';
import { MINUTE } from '../units/convert.ts';
import type { Problem, Result } from '../units/result.ts';
import { DAY } from './clock.ts';
import type { Interval } from './depth-windows.ts';
import type { TideStation } from './shapes.ts';
import type { HeightAt, TurnOfTide } from './tide-height.ts';

/** Longest span predicted at once, s; a day takes some milliseconds. */
const LONGEST_SPAN = 40 * DAY;

/** Heights are computed this far apart, s, and joined by cubics: to less than a millimetre of what lies between. */
const STEP = 10 * MINUTE;

export interface HarmonicTide {
  /** Within the span; unknown outside. Weather is not in it. */
  readonly heightAt: HeightAt;
  /** High and low waters of the span in order of time; some days of a daily tide have one of each. */
  readonly turns: readonly (TurnOfTide & { readonly kind: 'high' | 'low' })[];
}

/**
 * Tide of a station over a span, s since 1970, m above its chart datum, from its constants by the tables of the
 * International Hydrographic Organization. Problems: a constituent of no known name, none at all, a span of no or of too
 * much length. This module brings a predictor with it: load it where a station is picked.
 */
export function harmonicTide(station: TideStation, { from, to }: Interval): Result<HarmonicTide> {
  const problems = problemsOf(station, to - from);
  if (problems.length > 0) return { ok: false, problems };

  const predictor = createTidePredictor(
    station.constituents.map(({ name, amplitude, phaseDeg }) => ({ name, amplitude, phase: phaseDeg })),
    { offset: station.meanLevel },
  );
  const first = Math.floor(from / STEP) - 1;
  const last = Math.ceil(to / STEP) + 1;
  const heights = predictor
    .getTimelinePrediction({ start: dateOf(first * STEP), end: dateOf(last * STEP), timeFidelity: STEP })
    .map(({ level }) => level);
  const turns = predictor
    .getExtremesPrediction({ start: dateOf(from), end: dateOf(to) })
    .map(({ time, level, high }) => ({
      at: time.getTime() / 1000,
      height: level,
      kind: high ? ('high' as const) : ('low' as const),
    }))
    .sort((a, b) => a.at - b.at);
  const heightAt: HeightAt = (seconds) => {
    if (seconds < from) return { known: false, why: 'before-first', until: from };
    if (seconds > to) return { known: false, why: 'after-last', until: to };
    const at = seconds / STEP - first;
    const before = Math.min(Math.floor(at), heights.length - 3);
    return { known: true, height: cubic(heights, before, at - before) };
  };
  return { ok: true, value: { heightAt, turns } };
}

/** Mean ranges of springs and neaps where the tide is twice a day, m: those of M2 with S2 and against it. */
export function meanRanges({ constituents: list }: TideStation): {
  readonly meanSpringRange: number;
  readonly meanNeapRange: number;
} {
  const amplitude = (wanted: string) => list.find(({ name }) => name.toUpperCase() === wanted)?.amplitude ?? 0;
  const [moon, sun] = [amplitude('M2'), amplitude('S2')];
  return { meanSpringRange: 2 * (moon + sun), meanNeapRange: 2 * Math.abs(moon - sun) };
}

function problemsOf(station: TideStation, span: number): Problem[] {
  const problems: Problem[] = [];
  if (station.constituents.length === 0) {
    problems.push({ code: 'no-constituents', path: 'constituents', message: 'The station has no constituents' });
  }
  for (const [i, { name }] of station.constituents.entries()) {
    if (!Object.hasOwn(constituents, name)) {
      const message = `No tidal constituent is called ${JSON.stringify(name)}`;
      problems.push({ code: 'unknown-constituent', path: `constituents.${i}.name`, message });
    }
  }
  if (!(span > 0)) problems.push({ code: 'no-span', path: '', message: 'The span of time is empty' });
  if (span > LONGEST_SPAN) {
    const message = `Tides are computed for at most ${LONGEST_SPAN / DAY} days at once`;
    problems.push({ code: 'span-too-long', path: '', message, limit: LONGEST_SPAN });
  }
  return problems;
}

/** Cubic through four heights at even steps, at a share of the step after the second (Lagrange). */
function cubic(heights: readonly number[], second: number, share: number): number {
  const [a, b, c, d] = [heights[second - 1]!, heights[second]!, heights[second + 1]!, heights[second + 2]!];
  const s = share;
  return (
    (-a * s * (s - 1) * (s - 2)) / 6 +
    (b * (s + 1) * (s - 1) * (s - 2)) / 2 -
    (c * (s + 1) * s * (s - 2)) / 2 +
    (d * (s + 1) * s * (s - 1)) / 6
  );
}

function dateOf(seconds: number): Date {
  return new Date(seconds * 1000);
}
