import { regime } from '../hull/regime.ts';
import type { Prepared } from './prepare.ts';
import type { Run } from './sail.ts';
import type { LegPlan } from './shapes.ts';

/** The stretches of a run as the plan shows them; the band of what is left opens with the share of need used. */
export function legPlans(
  prepared: Prepared,
  run: Run,
  usable: number,
  need: { readonly low: number; readonly high: number },
): readonly LegPlan[] {
  let startsAt = prepared.manoeuvring / 2;
  // Half of the manoeuvring comes before the first leg, half after the last.
  let used = run.manoeuvring / 2;
  const fromHere = needFromEach(run);
  return run.sailed.map((s, i) => {
    used += s.use;
    // A trip that cannot be sailed has no share to open the band with.
    const share = run.need > 0 ? used / run.need : 0;
    const spread = run.possible
      ? { low: usable - shareOf(share, need.high), high: usable - shareOf(share, need.low) }
      : { low: usable - used, high: usable - used };
    const leg: LegPlan = {
      leg: s.stretch.leg,
      from: s.stretch.from,
      to: s.stretch.to,
      part: s.stretch.part,
      distance: s.stretch.distance,
      trackDeg: s.stretch.trackDeg,
      steerDeg: s.steerDeg,
      speedThroughWater: s.speed,
      speedOverGround: s.ground,
      ...(s.stretch.limit !== undefined && { limit: s.stretch.limit }),
      ...(s.stretch.limitName !== undefined && { limitName: s.stretch.limitName }),
      time: s.time,
      use: s.use,
      flow: s.flow,
      rpm: s.steady.drive.rpm,
      throttle: s.steady.drive.throttle,
      trimDeg: s.steady.hull.trimDeg,
      regime: regime(s.steady.hull.froudeVolume),
      left: { low: spread.low, median: usable - used, high: spread.high },
      needFromHere: fromHere[i]!,
      startsAt,
      stop: s.stretch.stop,
    };
    startsAt += s.time + s.stretch.stop;
    return leg;
  });
}

/** Nothing of an endless need is nothing. */
function shareOf(share: number, need: number): number {
  return share > 0 ? share * need : 0;
}

/** Need from the start of each stretch to the end; summed from the end, past which a leg without headway does not count. */
function needFromEach(run: Run): readonly number[] {
  const needs: number[] = new Array(run.sailed.length);
  let need = run.manoeuvring / 2;
  for (let i = run.sailed.length - 1; i >= 0; i--) {
    need += run.sailed[i]!.use;
    needs[i] = need;
  }
  return needs;
}
