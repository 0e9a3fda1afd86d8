import type { Afloat, Boat } from './boat.ts';
import { PLANING_FROUDE, speedAtFroude } from './hump.ts';
import { steady } from './steady.ts';

/** Centre of gravity of a boat that lies well, share of the wetted length (common practice, no source). */
const GOOD_BALANCE = 0.365;
/** Volume Froude numbers between which the bow comes down. */
const FROM = 1.5;
const TO = 4.5;
const STEPS = 60;

/**
 * Speed, m/s, from which the boat is on the plane with its bow down: its trim is no more than a well balanced boat of
 * the same weight has where planing begins. Weight aft needs more speed for it, weight forward less. Undefined where
 * the bow does not come down below volume Froude number 4.5. Whether the engine gets there is another matter.
 */
export function bowDownSpeed(boat: Boat, afloat: Afloat): number | undefined {
  const good = { ...afloat, lcg: GOOD_BALANCE * boat.craft.hull.wettedLength };
  const wanted = steady(boat, good, speedAtFroude(boat, afloat, PLANING_FROUDE)).hull.trimDeg;
  let before: { speed: number; over: number } | undefined;
  let found: number | undefined;
  for (let i = 0; i <= STEPS; i++) {
    const speed = speedAtFroude(boat, afloat, FROM + ((TO - FROM) * i) / STEPS);
    const over = steady(boat, afloat, speed).hull.trimDeg - wanted;
    if (over > 0) found = undefined;
    else if (found === undefined) {
      // Between the last speed too steep and this one.
      found =
        before && before.over > 0
          ? before.speed + ((speed - before.speed) * before.over) / (before.over - over)
          : speed;
    }
    before = { speed, over };
  }
  return found;
}
