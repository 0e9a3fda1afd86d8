import { compass, destination, interpolate } from '../route/distance.ts';
import type { PlannedSpeed } from '../route/shapes.ts';
import { equalTimeAlong, lastReturnPoint, type TurnPoint, type TurnStretch } from '../route/turn-point.ts';
import { overWay } from './over-way.ts';
import type { Prepared } from './prepare.ts';
import type { Run, Sailed } from './sail.ts';
import type { TurnBack } from './shapes.ts';

/** No small boat's trip reaches farther past its turn, m; a longer line would be laid round the world. */
const FARTHEST = 200_000;

/** The last point to turn back from with the reserve whole, and the point where on and back take equally long. */
export interface TurnPoints {
  readonly turnBack: TurnBack;
  /** Undefined where the trip comes back the same way: going on is never shorter. */
  readonly halfway: TurnBack | undefined;
}

/**
 * Walks the route with the way back over the same water (at the speed planned for it) beside the way on. A trip out
 * and home by the same way is walked to its turn; `available` is what may be used, reserve taken off.
 */
export function turnPoints(prepared: Prepared, run: Run, available: number): TurnPoints {
  const { mirrored, walked, stretches } = wayBack(prepared, run);
  const last = lastOfSections(run, stretches, available);
  const turnBack = placed(last, walked, prepared);
  const spare = available - run.manoeuvring;
  const straightOn = !last.onRoute && mirrored && !run.refills;
  return {
    turnBack: straightOn ? beyond(turnBack, stretches, walked, prepared, spare) : turnBack,
    halfway: mirrored ? undefined : placed(equalTimeAlong(stretches), walked, prepared),
  };
}

/**
 * The last point from which the way home keeps the reserve at the most economical speed, where it lies beyond the one at
 * the speed planned; undefined where slowing down brings it no further. Not `onRoute`: it does from everywhere.
 */
export function economicalTurn(
  prepared: Prepared,
  run: Run,
  available: number,
  planned: TurnBack,
): TurnBack | undefined {
  if (!planned.onRoute) return undefined;
  const { walked, stretches } = wayBack(prepared, run);
  const easy = easiestBack(prepared, run, stretches);
  const slow = stretches.map((stretch, i) => ({ ...stretch, needBack: easy[i]! }));
  const turn = placed(lastOfSections(run, slow, available), walked, prepared);
  return turn.distance > planned.distance || !turn.onRoute ? turn : undefined;
}

/** Needed for the way back over each stretch at the most economical speed, kg or J. */
export function easiestBack(prepared: Prepared, run: Run, planned: readonly TurnStretch[]): readonly number[] {
  // By the hour the slower way back meets other hours, so that it may need more.
  const { varies } = prepared.around;
  return wayBack(prepared, run, 'best').stretches.map(({ needBack }, i) =>
    varies ? needBack : Math.min(needBack, planned[i]!.needBack),
  );
}

/** The last point to turn; past a landing where the trip fills up, the one to be back there by. */
function lastOfSections(
  { refills, manoeuvring }: Run,
  stretches: readonly TurnStretch[],
  available: number,
): TurnPoint {
  const ends = stretches.flatMap((_, i) => (refills?.to[i] === undefined ? [] : [i + 1]));
  let first = 0;
  let budget = available - manoeuvring;
  let [distance, time] = [0, 0];
  for (const end of [...ends, stretches.length]) {
    const section = stretches.slice(first, end);
    const point = lastReturnPoint(section, budget);
    if (point.onRoute || end === stretches.length) {
      return { ...point, stretch: point.stretch + first, distance: point.distance + distance, time: point.time + time };
    }
    for (const piece of section) {
      distance += piece.distance;
      time += piece.timeOnward;
    }
    first = end;
    // The reserve stays the same amount.
    budget = refills!.to[end - 1]! - (refills!.usable - available);
  }
  return lastReturnPoint(stretches, budget);
}

/** The stretches that a turn may come on, each with the way back over the same water. */
export interface WayBack {
  readonly mirrored: boolean;
  readonly walked: readonly Sailed[];
  readonly stretches: readonly TurnStretch[];
}

/**
 * A trip out and home by the same way is walked to its turn, any other to its end. Where wind and stream change by the
 * hour, what turning on a stretch costs more than turning before it counts as its way back: all of the way home is
 * sailed anew in the hours after that turn.
 */
export function wayBack(prepared: Prepared, run: Run, pace?: PlannedSpeed): WayBack {
  const mirrored = prepared.trip.route.shape === 'out-and-home';
  const walked = mirrored ? run.sailed.filter((s) => s.stretch.part === 'out') : run.sailed;
  const home = mirrored && pace === undefined ? run.sailed.slice(walked.length).reverse() : [];
  if (prepared.around.varies) return { mirrored, walked, stretches: backByTheHour(prepared, run, walked, pace) };
  const stretches = walked.map((s, i) =>
    home[i]
      ? turnStretchOf(s, { need: home[i].use, time: home[i].time })
      : turnStretchOf(s, backOver(prepared, run, s, { pace })),
  );
  return { mirrored, walked, stretches };
}

/** Turns tried along a way: each costs the whole way home, and between them the cost is taken to rise evenly. */
const TURNS = 10;

function backByTheHour(
  prepared: Prepared,
  run: Run,
  walked: readonly Sailed[],
  pace: PlannedSpeed | undefined,
): TurnStretch[] {
  const every = Math.ceil(walked.length / TURNS);
  const stretches: TurnStretch[] = [];
  let gone = prepared.manoeuvring / 2;
  let before = { need: 0, time: 0 };
  for (let first = 0; first < walked.length; first += every) {
    const pieces = walked.slice(first, first + every);
    for (const s of pieces) gone += s.time + s.stretch.stop;
    // Turning at the end of this piece; a stop there is left out.
    const left = gone - pieces.at(-1)!.stretch.stop;
    let need = 0;
    let time = 0;
    for (let i = first + pieces.length - 1; i >= 0 && time < Infinity; i--) {
      const back = backOver(prepared, run, walked[i]!, { pace, at: left + time });
      need += back.need;
      time += back.time;
    }
    const more = { need: moreOf(need, before.need), time: moreOf(time, before.time) };
    before = { need, time };
    const length = pieces.reduce((sum, s) => sum + s.stretch.distance, 0);
    for (const s of pieces) {
      const share = length > 0 ? s.stretch.distance / length : 1 / pieces.length;
      stretches.push(turnStretchOf(s, { need: more.need * share, time: more.time * share }));
    }
  }
  return stretches;
}

/** Where there was no way home before either, nothing is gained by going on. */
function moreOf(now: number, before: number): number {
  return now === Infinity || before === Infinity ? Infinity : now - before;
}

function turnStretchOf({ stretch, use, time }: Sailed, back: { need: number; time: number }): TurnStretch {
  return {
    distance: stretch.distance,
    needOnward: use,
    needBack: back.need,
    timeOnward: time,
    timeBack: back.time,
  };
}

/** The way back over a stretch at its planned speed or another `pace`, `at` s after departure: kg or J, and s. */
function backOver(
  prepared: Prepared,
  run: Run,
  s: Sailed,
  { pace = s.stretch.speed, at = s.at }: { readonly pace?: PlannedSpeed | undefined; readonly at?: number },
): { readonly need: number; readonly time: number } {
  const trackDeg = compass(s.stretch.trackDeg + 180);
  const back = { ...s.stretch, part: 'home' as const, trackDeg, speed: pace };
  const { ground, flow } = overWay(prepared, run.scenario, back, { at, afloat: s.afloat, like: s });
  if (!(ground > 0)) return { need: Infinity, time: Infinity };
  const time = s.stretch.distance / ground;
  return { need: flow * time, time };
}

function placed(point: TurnPoint, walked: readonly Sailed[], prepared: Prepared): TurnBack {
  let stops = prepared.manoeuvring / 2;
  for (let i = 0; i < point.stretch && i < walked.length; i++) stops += walked[i]!.stretch.stop;
  const on = walked[Math.min(point.stretch, walked.length - 1)]!;
  const at = point.stretch < walked.length ? interpolate(on.stretch.from, on.stretch.to, point.share) : on.stretch.to;
  return { distance: point.distance, time: point.time + stops, at, onRoute: point.onRoute };
}

/** Past the planned turn, straight on as on the last stretch. */
function beyond(
  turn: TurnBack,
  stretches: readonly TurnStretch[],
  walked: readonly Sailed[],
  prepared: Prepared,
  available: number,
): TurnBack {
  const last = stretches.at(-1)!;
  const spent = stretches.reduce((sum, s) => sum + s.needOnward + s.needBack, 0);
  const perMetre = (last.needOnward + last.needBack) / last.distance;
  if (!(perMetre > 0) || perMetre === Infinity) return turn;
  const more = Math.min(Math.max(available - spent, 0) / perMetre, FARTHEST);
  const { stretch } = walked.at(-1)!;
  return {
    distance: turn.distance + more,
    time: turn.time + (more / last.distance) * last.timeOnward,
    at: destination(stretch.to, stretch.trackDeg, more / prepared.drawnFactor),
    onRoute: false,
  };
}
