import type { LoadBalance } from './balance.ts';
import type { Weight } from './equilibrium.ts';

export function weightOf({ allUpMass, lcg, lateral, vcg }: LoadBalance): Weight {
  return { mass: allUpMass, x: lcg, y: lateral, z: vcg };
}
