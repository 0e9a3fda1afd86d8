import { regime } from '../hull/regime.ts';
import { compass } from '../route/distance.ts';
import { DEGREE } from '../units/convert.ts';
import type { Prepared } from './prepare.ts';
import type { Run, Sailed } from './sail.ts';
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
  /** Usable at departure or where it was last filled up, and what was used before that. */
  let filled = usable;
  let usedBefore = 0;
  const fromHere = needFromEach(run);
  const legs: LegPlan[] = [];
  for (let first = 0; first < run.sailed.length; ) {
    let next = first + 1;
    while (next < run.sailed.length && oneStretch(run.sailed[first]!, run.sailed[next]!)) next++;
    const pieces = run.sailed.slice(first, next);
    const whole = pieces.length === 1 ? pieces[0]! : merged(pieces);
    const last = pieces[pieces.length - 1]!;
    const places = placesTaken(pieces);
    used += whole.use;
    // A trip that cannot be sailed has no share to open the band with; and it opens anew where the level is known again.
    const since = used - usedBefore;
    const share = run.need > 0 ? since / run.need : 0;
    const { stretch, steady } = whole;
    legs.push({
      leg: stretch.leg,
      from: stretch.from,
      to: last.stretch.to,
      part: stretch.part,
      distance: stretch.distance,
      trackDeg: stretch.trackDeg,
      steerDeg: whole.steerDeg,
      speedThroughWater: whole.speed,
      speedOverGround: whole.ground,
      limit: stretch.limit,
      limitName: stretch.limitName,
      time: whole.time,
      use: whole.use,
      flow: whole.flow,
      rpm: steady.drive.rpm,
      throttle: steady.drive.throttle,
      trimDeg: steady.hull.trimDeg,
      regime: regime(steady.hull.froudeVolume),
      left: {
        low: filled - (run.possible ? shareOf(share, need.high) : since),
        median: filled - since,
        high: filled - (run.possible ? shareOf(share, need.low) : since),
      },
      needFromHere: fromHere[first]!,
      startsAt,
      stop: last.stretch.stop,
      headwind: whole.weather.headwind,
      waveHeight: whole.weather.waveHeight,
      stream: whole.stream,
      streamPlaces: places.length > 0 ? places : undefined,
    });
    startsAt += whole.time + last.stretch.stop;
    const to = run.refills?.to[next - 1];
    if (to !== undefined && to > filled - since) {
      filled = to;
      usedBefore = used;
    }
    first = next;
  }
  return legs;
}

/** Pieces of one stretch, cut only because wind or stream change along it. */
function oneStretch({ stretch: a }: Sailed, { stretch: b }: Sailed): boolean {
  return (
    a.spot !== undefined &&
    a.leg === b.leg &&
    a.part === b.part &&
    a.limitName === b.limitName &&
    a.stop === 0 &&
    a.refill === undefined
  );
}

/** A stretch as the sum of its pieces; what strains the boat is that of the piece that strains it most. */
function merged(pieces: readonly Sailed[]): Sailed {
  const hardest = pieces.reduce((a, b) => (b.steady.drive.throttle > a.steady.drive.throttle ? b : a));
  const sum = (of: (s: Sailed) => number): number => pieces.reduce((total, s) => total + of(s), 0);
  const distance = sum((s) => s.stretch.distance);
  const time = sum((s) => s.time);
  const possible = pieces.every((s) => s.possible);
  const mean = (of: (s: Sailed) => number): number => (possible ? sum((s) => of(s) * s.time) / time : of(hardest));
  const east = mean((s) => Math.sin(s.steerDeg * DEGREE));
  const north = mean((s) => Math.cos(s.steerDeg * DEGREE));
  return {
    ...hardest,
    stretch: { ...pieces[0]!.stretch, distance },
    possible,
    steerDeg: compass(Math.atan2(east, north) / DEGREE),
    speed: mean((s) => s.speed),
    ground: possible ? distance / time : 0,
    time,
    use: sum((s) => s.use),
    flow: mean((s) => s.flow),
    weather: {
      headwind: pieces.reduce((most, s) => Math.max(most, s.weather.headwind), -Infinity),
      waveHeight: pieces.reduce((most, s) => Math.max(most, s.weather.waveHeight), 0),
    },
    stream: pieces.reduce((a, b) => ((b.stream?.rate ?? 0) > (a.stream?.rate ?? 0) ? b : a)).stream,
  };
}

/** Names of the places whose streams by tide were taken on some stretches, in the order they are met. */
export function placesTaken(sailed: readonly Sailed[]): readonly string[] {
  const names: string[] = [];
  for (const { told } of sailed) if (told?.known && !names.includes(told.place)) names.push(told.place);
  return names;
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
