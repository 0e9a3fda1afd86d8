import type { LatLon } from '../route/shapes.ts';
import type { Run } from './sail.ts';
import type { Amount } from './shapes.ts';
import { needWithGauge } from './spread.ts';
import type { Standing } from './standing.ts';
import { easiestBack, wayBack } from './turn-back.ts';

/** What must still be aboard, and by when, where a leg ends. Amounts kg or J, times s from departure. */
export interface Minimum {
  /** Leg that ends here, counted as sailed from 0. */
  readonly leg: number;
  /** Of the waypoint, as drawn. */
  readonly waypoint: number;
  readonly name?: string;
  readonly at: LatLon;
  readonly part: 'out' | 'home';
  readonly arrives: number;
  /** Likely left on arrival, unusable rest not counted. */
  readonly left: Amount;
  /** With less than this aboard the trip as planned breaks the reserve: turn for home. */
  readonly goOn: Amount;
  /** With this the way home from here keeps the reserve, as planned and at the most economical speed. */
  readonly home: Amount;
  readonly homeEasy: Amount;
  readonly homeTime: number;
  /** Going on later than this is home too late; undefined without a limit of time. */
  readonly latest?: number;
}

/**
 * For every waypoint the least fuel or charge to go on with and to go home with, each so that the reserve
 * stays whole in two trips of three and the 95th percentile gets home. Empty where a leg cannot be sailed.
 */
export function minimums({ prepared, fuel }: Standing): readonly Minimum[] {
  const { run, usable, reserve } = fuel;
  if (!run.possible) return [];
  const { trip } = prepared;
  const doubt = Math.max(needWithGauge(prepared, run, fuel.need, { usable, p: 0.95 }) / run.need, 1);
  const sure = Math.max(fuel.keeps / run.need, 1);
  const keeping = (need: number): number => Math.max(need * sure + reserve, need * doubt);
  const { mirrored, walked, stretches } = wayBack(prepared, run);
  const { varies } = prepared.around;
  const easy = easiestBack(prepared, run, stretches);
  const points = trip.route.waypoints;
  const closes = trip.route.shape !== 'one-way';
  const half = run.manoeuvring / 2;
  const found: Minimum[] = [];
  const onFrom = neededAfter(run, half, keeping);
  let used = half;
  let taken = 0;
  // Where the way back is not just the planned one turned round.
  const again = varies || run.refills !== undefined;
  let time = prepared.manoeuvring / 2;
  let [back, backEasy, backTime] = [half, half, prepared.manoeuvring / 2];
  run.sailed.forEach((s, i) => {
    used += s.use;
    time += s.time;
    const aboard = usable + taken - used;
    const out = i < walked.length;
    if (out) {
      back += stretches[i]!.needBack;
      backEasy += easy[i]!;
      backTime += stretches[i]!.timeBack;
    } else {
      // Home by the same way: the way back shrinks again.
      const over = 2 * walked.length - 1 - i;
      back -= stretches[over]!.needBack;
      backEasy -= easy[over]!;
      backTime -= stretches[over]!.timeBack;
    }
    const arrives = time;
    time += s.stretch.stop;
    const next = run.sailed[i + 1];
    if (next?.stretch.leg === s.stretch.leg) return;
    const needed = onFrom[i]!;
    const remaining = run.time - arrives;
    // Home is behind, and on a trip that comes home also ahead.
    // By the hour the way back was sailed anew only as far as the turn; past it the way on is the way home.
    const onward = closes && (needed < back || (again && !out && mirrored));
    const home = onward ? needed : back;
    const allowed = trip.policy.timeAllowed;
    const waypoint = waypointOf(s.stretch.leg, points.length, mirrored);
    const name = points[waypoint]?.name;
    found.push({
      leg: s.stretch.leg,
      waypoint,
      ...(name && { name }),
      at: s.stretch.to,
      part: s.stretch.part,
      arrives,
      left: aboard,
      goOn: keeping(needed),
      home: keeping(home),
      homeEasy: keeping(again && !out && mirrored ? home : Math.min(backEasy, home)),
      homeTime: onward ? remaining : backTime,
      ...(allowed !== undefined && { latest: arrives + allowed - run.time }),
    });
    const filled = run.refills?.to[i];
    if (filled === undefined) return;
    taken += Math.max(filled - aboard, 0);
    // From here on it is enough to be back here, where there is more, if that brings the boat home.
    if (filled >= keeping(back)) back = 0;
    if (filled >= keeping(backEasy)) backEasy = 0;
  });
  return found;
}

/** Of the waypoints as drawn, the one at which a leg ends. */
function waypointOf(leg: number, count: number, mirrored: boolean): number {
  if (!mirrored) return (leg + 1) % count;
  return leg < count - 1 ? leg + 1 : 2 * (count - 1) - leg - 1;
}

/**
 * Still needed from the end of each stretch, kg or J. Before a filling up only what brings the boat there, where as much as
 * is filled to is enough after it; where it is not, filling adds nothing to what must be aboard already.
 */
function neededAfter({ sailed, refills }: Run, last: Amount, keeping: (need: Amount) => Amount): readonly Amount[] {
  const needed: Amount[] = [];
  let after = last;
  for (let i = sailed.length - 1; i >= 0; i--) {
    const filled = refills?.to[i];
    if (filled !== undefined && filled >= keeping(after)) after = 0;
    needed[i] = after;
    after += sailed[i]!.use;
  }
  return needed;
}
