import { DEGREE } from '../units/convert.ts';
import { compass } from './distance.ts';

/** Water moving towards `setDeg` (true) at `rate`, m/s; a stream of the conditions fits. */
export interface Current {
  readonly setDeg: number;
  readonly rate: number;
}

export type CourseToSteer =
  | { readonly possible: true; readonly steerDeg: number; readonly speedOverGround: number }
  /** `cross`: the stream across the track is faster than the boat; `no-progress`: it stands still or goes backwards. */
  | { readonly possible: false; readonly why: 'cross' | 'no-progress' };

/** Below this the boat stands still, m/s: rounding in a stream that just holds it. */
const STANDSTILL = 1e-9;

/**
 * Course to steer and speed over the ground, m/s, to make good a track at a speed through the water in a stream
 * (current triangle of chartwork).
 */
export function courseToSteer(trackDeg: number, speed: number, stream: Current): CourseToSteer {
  const angle = (stream.setDeg - trackDeg) * DEGREE;
  const across = stream.rate * Math.sin(angle);
  if (Math.abs(across) > speed) return { possible: false, why: 'cross' };
  const speedOverGround = Math.sqrt(speed * speed - across * across) + stream.rate * Math.cos(angle);
  if (speedOverGround <= STANDSTILL) return { possible: false, why: 'no-progress' };
  const correctionDeg = speed > 0 ? Math.asin(across / speed) / DEGREE : 0;
  return { possible: true, steerDeg: compass(trackDeg - correctionDeg), speedOverGround };
}

export interface TrackMade {
  readonly trackDeg: number;
  /** m/s */
  readonly speedOverGround: number;
}

/** Track and speed over the ground that a heading and a speed through the water make in a stream. */
export function trackMade(headingDeg: number, speed: number, stream: Current): TrackMade {
  const sum = plus(headingDeg, speed, { deg: stream.setDeg, length: stream.rate });
  return { trackDeg: sum.deg, speedOverGround: sum.length };
}

/** The stream that explains the track made while steering a heading at a speed through the water, m/s. */
export function findStream(headingDeg: number, speed: number, made: TrackMade): Current {
  const left = plus(headingDeg, -speed, { deg: made.trackDeg, length: made.speedOverGround });
  return { setDeg: left.deg, rate: left.length };
}

interface Arrow {
  readonly deg: number;
  readonly length: number;
}

function plus(deg: number, length: number, other: Arrow): Arrow {
  const east = length * Math.sin(deg * DEGREE) + other.length * Math.sin(other.deg * DEGREE);
  const north = length * Math.cos(deg * DEGREE) + other.length * Math.cos(other.deg * DEGREE);
  return { deg: compass(Math.atan2(east, north) / DEGREE), length: Math.hypot(east, north) };
}
