import type { Afloat, Boat } from './boat.ts';
import { marginOf, PLANING_FROUDE, speedAtFroude } from './hump.ts';
import { steady, type Weather } from './steady.ts';

/** Slowest speed anybody plans for, m/s; without it the least use per mile against no stream lies near drifting. */
const SLOWEST = 1.2;
const FASTEST = 15;
const SCAN = 0.5;
/** Volume Froude number well past the hump. */
const BEYOND_HUMP = 3;

/**
 * Speed through the water (m/s) with the least use per metre over the ground, among speeds the drive holds.
 * `overGround` turns a speed through the water into speed made good, 0 or less where there is no progress.
 * Undefined where no speed qualifies. The scan of 0.5 m/s is refined to 1 cm/s.
 */
export function bestSpeed(
  boat: Boat,
  afloat: Afloat,
  weather: Weather,
  overGround: (speed: number) => number,
  onPlane: boolean,
): number | undefined {
  const from = onPlane ? speedAtFroude(boat, afloat, PLANING_FROUDE) : SLOWEST;
  const beyondHump = speedAtFroude(boat, afloat, BEYOND_HUMP);
  let tooFast = Infinity;
  const cost = (speed: number): number => {
    const ground = overGround(speed);
    if (ground <= 0 || speed >= tooFast) return Infinity;
    const now = steady(boat, afloat, speed, weather);
    if (marginOf(boat, afloat, now.drive) >= 1) return now.flow / ground;
    // Past the hump more speed always asks more: what is not held there is not held any faster.
    if (speed >= beyondHump) tooFast = speed;
    return Infinity;
  };
  let best = from;
  let least = cost(from);
  for (let speed = from + SCAN; speed <= FASTEST; speed += SCAN) {
    const here = cost(speed);
    if (here < least) {
      least = here;
      best = speed;
    }
  }
  if (least === Infinity) return undefined;
  for (let step = SCAN / 2; step > 0.01; step /= 2) {
    for (const speed of [best - step, best + step]) {
      if (speed < from) continue;
      const here = cost(speed);
      if (here < least) {
        least = here;
        best = speed;
      }
    }
  }
  return best;
}
