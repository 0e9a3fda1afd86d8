import { compass, legBetween } from '../route/distance.ts';
import { needPerMetre } from './per-metre.ts';
import type { Prepared } from './prepare.ts';
import type { Run } from './sail.ts';

export interface Ranges {
  readonly oneWay: number;
  readonly outAndHome: number;
}

/**
 * How far the boat gets at the speed planned for most of this trip, towards the turn of the route, with this wind and
 * stream and the reserve kept; m. One way ends there, out and home comes back the same way.
 */
export function ranges(prepared: Prepared, run: Run, available: number): Ranges {
  const outward = run.sailed.filter((s) => s.stretch.part === 'out' && s.possible);
  const longest = outward.reduce((a, b) => (b.stretch.distance > (a?.stretch.distance ?? 0) ? b : a), outward[0]);
  if (!longest) return { oneWay: 0, outAndHome: 0 };
  const start = outward[0]!.stretch.from;
  const turn = outward.at(-1)!.stretch.to;
  const { trackDeg } = legBetween(start, turn);
  const out = needPerMetre(prepared, run.scenario, { ...longest.stretch, part: 'out', trackDeg }, run.time);
  const back = { ...longest.stretch, part: 'home' as const, trackDeg: compass(trackDeg + 180) };
  const home = needPerMetre(prepared, run.scenario, back, run.time);
  // Nobody promised a one-way trip fair wind and stream: what is unknown stands against it too.
  const alone = needPerMetre(
    prepared,
    { ...run.scenario, oneWay: true },
    { ...longest.stretch, part: 'out', trackDeg },
    run.time,
  );
  const left = Math.max(available - run.manoeuvring, 0);
  return { oneWay: left / Math.max(out, alone), outAndHome: left / (out + home) };
}
