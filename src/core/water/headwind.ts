import { DEGREE } from '../units/convert.ts';
import type { Wind } from './shapes.ts';

/** Wind along the course steered, m/s over the ground: positive from ahead, negative from astern. */
export function headwind(wind: Wind | 'calm', courseDeg: number): number {
  return wind === 'calm' ? 0 : wind.speed * Math.cos((wind.fromDeg - courseDeg) * DEGREE);
}
