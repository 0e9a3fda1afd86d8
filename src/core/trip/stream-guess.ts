import { courseToSteer } from '../route/current-triangle.ts';
import type { FuelVerdict } from './fuel-verdict.ts';
import type { Run, Sailed } from './sail.ts';

const STEP = 0.05;
/** Faster than any stream that is sought. */
const MOST = 2.6;

/** Short of the speed of a slow way home, m/s: what the doubt of the stream takes, and some headway. */
const SHORT = 0.4;

/**
 * About the stream (m/s) at which a trip that is a go no longer is, where it is now `rate`: the stretches as they were sailed, at
 * the flow they had, only longer or shorter; `slow` (m/s) is the slowest way home that is asked. A first guess.
 */
export function streamGuess(fuel: FuelVerdict, rate: number, slow: number): number | undefined {
  const { run, badRun, usable, reserve, need90, keeps, badCase, badUsable, verdict } = fuel;
  if (verdict === 'no-go' || !run.possible || !badRun.possible || !(rate >= 0)) return undefined;
  const sure = verdict === 'go' ? (usable - reserve) / keeps : Infinity;
  const likely = Math.min((usable - reserve) / run.need, usable / need90, sure);
  const bad = verdict === 'go' ? badUsable / badCase.need : Infinity;
  let at = rate;
  while (at < MOST && growth(run, at - rate) <= likely && growth(badRun, at - rate) <= bad) at += STEP;
  return verdict === 'go' ? Math.min(at, Math.max(slow - SHORT, rate)) : at;
}

/** What a run needs with so much more stream (m/s), over what it needed. */
function growth({ sailed, manoeuvring, used }: Run, more: number): number {
  return (manoeuvring + sailed.reduce((sum, s) => sum + s.use * longer(s, more), 0)) / used;
}

function longer({ stream, stretch, speed, ground }: Sailed, more: number): number {
  if (!stream) return stretch.part === 'home' ? over(ground, ground - more) : 1;
  const triangle = courseToSteer(stretch.trackDeg, speed, { ...stream, rate: Math.max(stream.rate + more, 0) });
  return over(ground, triangle.possible ? triangle.speedOverGround : 0);
}

function over(before: number, now: number): number {
  return now > 0 ? before / now : Infinity;
}
