import type { Craft } from '../craft/shapes.ts';
import type { Verdict } from './shapes.ts';

/** Share of the tubes' buoyancy in use at rest: acceptable, and sinking (common practice, no source). */
export const IMMERSED = { fine: 0.5, most: 0.8 };

/** All-up mass the resistance method was made for, kg. */
export const MADE_FOR = { least: 100, most: 900 };

/** A craft in water of a density, kg/m3. */
export interface Floating {
  readonly trip: { readonly craft: Craft };
  readonly density: number;
}

/** Mass both tubes carry when they are just under water, kg; undefined for hulls without. */
export function tubeBuoyancy({ trip, density }: Floating): number | undefined {
  const { tube } = trip.craft.hull;
  if (!tube) return undefined;
  return (Math.PI / 2) * tube.diameter * tube.diameter * tube.length * density;
}

/** The heaviest all-up mass, kg, that floating and the reach of the method allow with this verdict. */
export function heaviestFloating(prepared: Floating, verdict: 'go' | 'marginal'): number {
  const carried = tubeBuoyancy(prepared) ?? Infinity;
  return verdict === 'go' ? Math.min(IMMERSED.fine * carried, MADE_FOR.most) : IMMERSED.most * carried;
}

/** What floating and the reach of the method say of an all-up mass, kg; too light is another matter. */
export function floatVerdict(prepared: Floating, mass: number): Verdict {
  if (mass <= heaviestFloating(prepared, 'go')) return 'go';
  return mass <= heaviestFloating(prepared, 'marginal') ? 'marginal' : 'no-go';
}
