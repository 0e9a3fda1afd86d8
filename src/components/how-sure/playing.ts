import { type Sampled, sampleRisk } from '../../core/trip/risk.ts';
import type { Standing } from '../../core/trip/standing.ts';

/** Trips played, and in how many turns, so that there is progress to tell and a chance to stop. */
export const PLAYED = 10_000;
const TURNS = 40;
const SEED = 20_011;
/** Apart by more than a turn uses of the generator's cycle. */
const SEED_STEP = 7_919;

/** Plays a trip over, the same each time: yields the share done, returns the tally. */
export function* playing(standing: Standing): Generator<number, Sampled> {
  let [whole, home] = [0, 0];
  const samples = PLAYED / TURNS;
  for (let turn = 0; turn < TURNS; turn++) {
    const { reserveWhole, homeAtAll } = sampleRisk(standing, { samples, seed: SEED + turn * SEED_STEP });
    whole += reserveWhole / TURNS;
    home += homeAtAll / TURNS;
    yield (turn + 1) / TURNS;
  }
  return { samples: PLAYED, reserveWhole: whole, homeAtAll: home };
}
