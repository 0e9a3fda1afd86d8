import type { StreamPlace, TwoRuns } from './shapes.ts';
import { fiftyNinety } from './tidal-rules.ts';

/** Hours from slack to slack; the fifth of an hour by which a real run is longer lies within the hour of doubt of `streamAt`. */
const RUN = 6;

/**
 * Streams of the thirteen hours about high water, from -6 on: between its slacks each run grows and falls as a sine or by the
 * rule of 50 and 90, whichever is more. A guess: a place made of it is marked as `spread`.
 */
export function spreadStream(spread: TwoRuns): Pick<StreamPlace, 'firstHour' | 'springs' | 'neaps' | 'spread'> {
  const { flood, ebb, turns } = spread;
  const hours = Array.from({ length: 2 * RUN + 1 }, (_, i) => {
    const since = (((i - RUN - turns) % (2 * RUN)) + 2 * RUN) % (2 * RUN);
    const run = since < RUN ? ebb : flood;
    const share = (since % RUN) / RUN;
    const part = Math.max(fiftyNinety(share), Math.sin(Math.PI * share));
    return { run, part };
  });
  return {
    spread,
    firstHour: -RUN,
    springs: hours.map(({ run, part }) => ({ setDeg: run.setDeg, rate: run.springs * part })),
    neaps: hours.map(({ run, part }) => ({ setDeg: run.setDeg, rate: run.neaps * part })),
  };
}
