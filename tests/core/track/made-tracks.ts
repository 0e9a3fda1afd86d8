import { destination } from '../../../src/core/route/distance.ts';
import type { LatLon } from '../../../src/core/route/shapes.ts';
import type { Stretch, Track, TrackPoint } from '../../../src/core/track/shapes.ts';

/** Numbers from 0 to 1 that look thrown but are the same on every machine (a linear congruence, from memory). */
function dice(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}

/** Normal deviates from uniform ones (Box and Muller 1958). */
function normal(die: () => number): number {
  return Math.sqrt(-2 * Math.log(1 - die())) * Math.cos(2 * Math.PI * die());
}

/** Part of a day on the water: for some seconds at a speed (over ground, m/s) on a heading, reached evenly from before. */
export interface Part {
  readonly seconds: number;
  readonly speed: number;
  readonly headingDeg: number;
  /** How long the change of speed and heading takes, s; 8 when absent. */
  readonly change?: number;
}

export interface Recording {
  /** s between fixes. */
  readonly every?: number;
  /** Of each fix, m, and how much of it stays in the next fix, as receivers smooth. */
  readonly noise?: number;
  readonly memory?: number;
  readonly seed?: number;
  readonly from?: LatLon;
  readonly start?: number;
}

/** 2026-07-01 09:00 UTC. */
export const MORNING = Date.UTC(2026, 6, 1, 9) / 1000;
const OPEN_WATER: LatLon = { lat: 46, lon: -32 };

/** A recorded track of a boat that sails the parts one after the other. */
export function recorded(parts: readonly Part[], recording: Recording = {}): Track {
  const { every = 1, noise = 0, memory = 0.95, seed = 1, from = OPEN_WATER, start = MORNING } = recording;
  const die = dice(seed);
  const points: TrackPoint[] = [];
  const fresh = noise * Math.sqrt(1 - memory ** 2);
  let [east, north] = [noise * normal(die), noise * normal(die)];
  let at = from;
  let time = start;
  let speed = parts[0]!.speed;
  let heading = parts[0]!.headingDeg;
  const record = () => {
    const seen = noise === 0 ? at : destination(destination(at, 90, east), 0, north);
    points.push({ time, lat: seen.lat, lon: seen.lon });
    [east, north] = [memory * east + fresh * normal(die), memory * north + fresh * normal(die)];
  };
  record();
  for (const { seconds, speed: speedThen, headingDeg, change = 8 } of parts) {
    const [speedBefore, headingBefore] = [speed, heading];
    const turn = ((headingDeg - headingBefore + 540) % 360) - 180;
    for (let passed = every; passed <= seconds; passed += every) {
      // Halfway through the interval, so that a steady part is sailed exactly.
      const share = change > 0 ? Math.min(1, Math.max(0, (passed - every / 2) / change)) : 1;
      speed = speedBefore + (speedThen - speedBefore) * share;
      heading = headingBefore + turn * share;
      at = destination(at, heading, speed * every);
      time += every;
      record();
    }
  }
  return { name: 'Trial', points, breaks: [] };
}

/** A steady pass that is known to the last figure, from its start, s after `MORNING`, by dead reckoning from `from`. */
export function pass(start: number, seconds: number, given: Partial<Stretch> = {}, from = OPEN_WATER): Stretch {
  const { speed = 6, headingDeg = 80 } = given;
  const distance = speed * seconds;
  const [since, end] = [MORNING + start, MORNING + start + seconds];
  const [begin, finish] = [from, destination(from, headingDeg, distance)];
  const held = { first: 0, last: seconds, deviation: 0, trend: 0, steady: true };
  return { ...held, start: since, end, begin, finish, distance, speed, headingDeg, ...given };
}
