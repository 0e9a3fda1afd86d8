import type { Hull } from '../craft/shapes.ts';
import type { HullResistance, HullState } from './resistance.ts';

export type HullFlag = 'trim-range' | 'wetted-length-range' | 'speed-coefficient-range' | 'lcg-range';

/**
 * Where the method is used outside the range of its parts. The planing limits (trim 2-15 deg, wetted length up to 4
 * beams, Cv from 0.60; Savitsky 1964) count once more than half of the boat planes; LCG 0.20-0.50 of wetted length is
 * the range this method was tried in.
 */
export function hullFlags(hull: Hull, state: HullState, resistance: HullResistance): readonly HullFlag[] {
  const flags: HullFlag[] = [];
  if (resistance.planingShare > 0.5) {
    const trim = resistance.shortFormTrimDeg;
    if (trim < 2 || trim > 15) flags.push('trim-range');
    if (resistance.wettedLengthRatio > 4) flags.push('wetted-length-range');
    if (resistance.speedCoefficient < 0.6) flags.push('speed-coefficient-range');
  }
  const share = state.lcg / hull.wettedLength;
  if (share < 0.2 || share > 0.5) flags.push('lcg-range');
  return flags;
}
