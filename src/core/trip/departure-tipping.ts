import { HOUR, MINUTE } from '../units/convert.ts';
import { offsetOf, secondsOf, timeAt } from '../water/clock.ts';
import type { TippingValue, Trip, Verdict } from './shapes.ts';

/** How far a departure is shifted, s; how coarsely that is looked through, and how finely told. */
const FARTHEST = 6 * HOUR;
const COARSE = 30 * MINUTE;
const FINE = 5 * MINUTE;

const RANK = { go: 0, marginal: 1, 'no-go': 2 } as const;

/**
 * How much later and how much earlier a trip may leave before its verdict turns: for the worse, or of a no-go for the
 * better. Wind, streams, depth and light of another hour go up and down, so the hours are looked through one by one and the
 * nearest that turns it is told; a better hour between two worse ones, less than half an hour long, may be missed. Rests
 * after each hour, see `departuresInSteps`.
 */
export function* departureTipping(
  trip: Trip,
  from: Verdict,
  verdictOf: (trip: Trip) => Verdict | undefined,
): Generator<void, readonly TippingValue[]> {
  const { departure } = trip.conditions;
  if (departure === undefined) return [];
  const leaves = secondsOf(departure);
  const offset = offsetOf(departure);
  const at = (shift: number): Verdict => {
    const conditions = { ...trip.conditions, departure: timeAt(leaves + shift, offset) };
    return verdictOf({ ...trip, conditions }) ?? 'no-go';
  };
  const turns = (verdict: Verdict): boolean => (from === 'no-go' ? verdict !== 'no-go' : RANK[verdict] > RANK[from]);
  const found: TippingValue[] = [];
  for (const sign of [1, -1] as const) {
    for (let shift = COARSE; shift <= FARTHEST; shift += COARSE) {
      let to = at(sign * shift);
      yield;
      if (!turns(to)) continue;
      let [stays, turned] = [shift - COARSE, shift];
      while (turned - stays > FINE) {
        const middle = Math.round((stays + turned) / 2 / MINUTE) * MINUTE;
        const there = at(sign * middle);
        yield;
        if (turns(there)) {
          turned = middle;
          to = there;
        } else stays = middle;
      }
      // Of a verdict that gets worse the last shift that is known to keep it; of one that gets better the first that does.
      const shifted = from === 'no-go' ? turned : stays;
      const value = shifted === 0 ? 0 : sign * shifted;
      found.push({ knob: 'departure', from, to, value, now: 0, direction: sign > 0 ? 'up' : 'down' });
      break;
    }
  }
  return found;
}
