import { passGroup, wayOf } from './pass-group.ts';
import { passLines } from './pass-lines.ts';
import type { PassGroup, Stretch } from './shapes.ts';

/** More passes than this at one setting are told as several groups. */
const MOST_PASSES = 12;
/** A stream above this share of the boat's speed, or this in m/s, is taken for two throttle settings. */
const STREAM_SHARE = 0.4;
const STREAM = 2.5;
/** Passes the same way differ by less at one setting: share of speed, or m/s. */
const UNLIKE_SHARE = 0.08;
const UNLIKE = 0.4;

/** What a grouping is worth, the less the better; weights found by trial on made-up days, none by fitting. */
const COST = {
  /** Each group: one of four before two of two, where the passes agree. */
  group: 0.1,
  /** Each stretch left over. */
  alone: 0.4,
  /** Scatter of passes the same way, as share of what is unlike, squared. */
  scatter: 1.5,
};

export interface Pairing {
  /** In order of time. */
  readonly groups: readonly PassGroup[];
  /** Those without a fellow the other way, in order of time. */
  readonly alone: readonly Stretch[];
}

/**
 * Groups steady stretches into passes out and back at one throttle setting: opposite, near in place and time, and as
 * fast as one stream lets them be. Stretches may come from several tracks.
 */
export function pairPasses(stretches: readonly Stretch[]): Pairing {
  const groups: PassGroup[] = [];
  const alone: Stretch[] = [];
  for (const line of passLines(stretches)) {
    // The stream is the same for all that is sailed along a line: first guess none, then what the groups say.
    const first = partition(line, 0);
    const outDeg = line[0]!.headingDeg;
    const streams = first.groups.map(({ stream, passes }) =>
      wayOf(passes[0]!.stretch, outDeg) === 'out' ? stream.along : -stream.along,
    );
    const found = streams.length > 1 ? partition(line, median(streams)) : first;
    groups.push(...found.groups);
    alone.push(...found.alone);
  }
  groups.sort((a, b) => a.passes[0]!.stretch.start - b.passes[0]!.stretch.start);
  alone.sort((a, b) => a.start - b.start);
  return { groups, alone };
}

interface Best extends Pairing {
  readonly cost: number;
}

/** The cheapest way to cut a line into groups of neighbours and stretches left over. `stream` goes with its first way. */
function partition(line: readonly Stretch[], stream: number): Best {
  const best: Best[] = [{ cost: 0, groups: [], alone: [] }];
  for (let end = 1; end <= line.length; end++) {
    const before = best[end - 1]!;
    let found: Best = { ...before, cost: before.cost + COST.alone, alone: [...before.alone, line[end - 1]!] };
    for (let start = end - 2; start >= Math.max(0, end - MOST_PASSES); start--) {
      const group = passGroup(line.slice(start, end));
      if (!group) continue;
      const along = wayOf(line[start]!, line[0]!.headingDeg) === 'out' ? stream : -stream;
      const cost = best[start]!.cost + costOf(group, along);
      if (cost < found.cost) found = { cost, groups: [...best[start]!.groups, group], alone: best[start]!.alone };
    }
    best.push(found);
  }
  return best[line.length]!;
}

function costOf({ speed, stream, passes }: PassGroup, expected: number): number {
  if (Math.abs(stream.along) > Math.min(STREAM, STREAM_SHARE * speed)) return Infinity;
  const unlike = Math.max(UNLIKE, UNLIKE_SHARE * speed);
  if (passes.some(({ residual }) => Math.abs(residual) > unlike)) return Infinity;
  const scatter = passes.reduce((sum, { residual }) => sum + (residual / unlike) ** 2, 0) / passes.length;
  return COST.group + COST.scatter * scatter + Math.abs(stream.along - expected) / speed;
}

function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  // Of two the mean: the same whichever way was sailed first.
  return (sorted[(sorted.length - 1) >> 1]! + sorted[sorted.length >> 1]!) / 2;
}
