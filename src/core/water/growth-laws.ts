import { HOUR } from '../units/convert.ts';

/** Gravity in the published laws, m/s2. */
const G = 9.81;

/** Significant wave height, m, and peak or significant period, s. */
export interface Waves {
  readonly height: number;
  readonly period: number;
}

const FLAT: Waves = { height: 0, period: 0 };

/** Share of the wind's momentum the water takes: drag coefficient at 10 m (EM 1110-2-1100 Part II, eq. II-2-36). */
function frictionSpeed(wind: number): number {
  return wind * Math.sqrt(0.001 * (1.1 + 0.035 * wind));
}

/** Time in which waves become limited by the fetch, s (EM 1110-2-1100 Part II, eq. II-2-35); wind m/s, fetch m. */
export function timeToFetchLimit(wind: number, fetch: number): number {
  if (fetch === 0) return 0;
  return wind > 0 ? (77.23 * fetch ** 0.67) / (wind ** 0.34 * G ** 0.33) : Infinity;
}

/** The fetch whose waves are fully grown after a time, m: eq. II-2-35 turned round. */
export function fetchOfTime(wind: number, duration: number): number {
  return ((duration * wind ** 0.34 * G ** 0.33) / 77.23) ** (1 / 0.67);
}

/**
 * Waves by the Coastal Engineering Manual, EM 1110-2-1100 Part II ch. 2, eq. II-2-36 to 38; wind m/s at 10 m, fetch m,
 * duration s (undefined: long enough). Period constant 0.651; some printings show 0.751 (from memory), 15 % longer. The
 * manual turns to the equivalent fetch of the duration where that is shorter than eq. II-2-35; there the two differ by a
 * third of the fetch, so that waves would fall as fetch grows. The lesser fetch is taken instead, which never does.
 */
export function manualWaves(wind: number, fetch: number, duration?: number): Waves {
  const u = frictionSpeed(wind);
  if (u === 0 || fetch === 0 || duration === 0) return FLAT;
  const byFetch = (G * fetch) / u ** 2;
  const byTime = duration === undefined ? Infinity : 5.23e-3 * ((G * duration) / u) ** 1.5;
  const x = Math.min(byFetch, byTime);
  return {
    height: (Math.min(0.0413 * x ** (1 / 2), 211.5) * u ** 2) / G,
    period: (Math.min(0.651 * x ** (1 / 3), 239.8) * u) / G,
  };
}

/**
 * Waves by Sverdrup, Munk and Bretschneider in the form of the Shore Protection Manual (1977 deep water, 1984 finite
 * depth; from memory); wind m/s at 10 m, fetch m, depth m (undefined: deep). Gives significant height and period.
 */
export function bretschneiderWaves(wind: number, fetch: number, depth?: number): Waves {
  if (wind === 0 || fetch === 0 || depth === 0) return FLAT;
  const x = (G * fetch) / wind ** 2;
  const d = depth === undefined ? Infinity : (G * depth) / wind ** 2;
  const a = Math.tanh(0.53 * d ** 0.75);
  const b = Math.tanh(0.833 * d ** 0.375);
  return {
    height: (0.283 * a * Math.tanh((0.0125 * x ** 0.42) / a) * wind ** 2) / G,
    period: (7.54 * b * Math.tanh((0.077 * x ** 0.25) / b) * wind) / G,
  };
}

/**
 * Waves by the power laws of the Joint North Sea Wave Project (textbook form: height 0.0016 x^1/2, period 0.286 x^1/3,
 * limits 0.243, 8.13 and 71,500); wind m/s at 10 m, fetch m, duration s (undefined: long enough).
 */
export function northSeaWaves(wind: number, fetch: number, duration?: number): Waves {
  if (wind === 0 || fetch === 0 || duration === 0) return FLAT;
  const byFetch = (G * fetch) / wind ** 2;
  const byTime = duration === undefined ? Infinity : ((G * duration) / wind / 68.8) ** 1.5;
  const x = Math.min(byFetch, byTime);
  return {
    height: (Math.min(0.0016 * x ** (1 / 2), 0.243) * wind ** 2) / G,
    period: (Math.min(0.286 * x ** (1 / 3), 8.13) * wind) / G,
  };
}

/** Averaging times for which the ratio below was published, s. */
const AVERAGED = { least: HOUR, most: 10 * HOUR };

/**
 * A mean wind told for one averaging time, s, as the mean over another: ratio of 1.5334 - 0.15 log10 t (EM 1110-2-1100
 * Part II, example II-2-2). Only for 1 to 10 h; undefined outside.
 */
export function averagedWind(speed: number, fromTime: number, toTime: number): number | undefined {
  for (const time of [fromTime, toTime]) if (!(time >= AVERAGED.least && time <= AVERAGED.most)) return undefined;
  const factor = (time: number) => 1.5334 - 0.15 * Math.log10(time);
  return (speed * factor(toTime)) / factor(fromTime);
}
