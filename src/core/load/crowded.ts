import { equilibrium, type Floating, type Weight } from './equilibrium.ts';
import type { FloatBody } from './float-body.ts';

/** Everybody on the worse side; `rest` is the moment to starboard of everything else, kg m. */
export function crowdedTo(
  body: FloatBody,
  weight: Weight,
  density: number,
  { mass, rest }: { readonly mass: number; readonly rest: number },
): Floating {
  const arm = (body.side.outer + body.side.inner) / 2;
  const side = rest < 0 ? -1 : 1;
  return equilibrium(body, { ...weight, y: (rest + side * mass * arm) / weight.mass }, density);
}
