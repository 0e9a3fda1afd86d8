import { crowdedTo } from './crowded.ts';
import { equilibrium, type Floating, type Weight } from './equilibrium.ts';
import type { FloatBody } from './float-body.ts';

/** No small open boat is asked to take more, kg. */
const MOST = 2000;

const STEP = 0.25;

/** Heaviest all-up mass, kg, its balance kept, with so much freeboard at the lowest point, m; 0 where not even an empty boat has it. */
export function heaviestAtFreeboard(body: FloatBody, weight: Weight, density: number, freeboard: number): number {
  return heaviest((mass) => floatsWith(equilibrium(body, { ...weight, mass }, density), freeboard), weight.mass);
}

/**
 * How much more may come aboard as people, kg, before the edge goes under with all of them on one side; negative: so
 * much has to stay ashore. `people` is the mass of persons aboard, `rest` the moment to starboard of everything else.
 */
export function spareOnOneSide(
  body: FloatBody,
  weight: Weight,
  density: number,
  { people, rest }: { readonly people: number; readonly rest: number },
): number {
  const holds = (extra: number): boolean =>
    floatsWith(crowdedTo(body, { ...weight, mass: weight.mass + extra }, density, { mass: people + extra, rest }), 0);
  return heaviest((mass) => holds(mass - weight.mass), weight.mass, weight.mass - people) - weight.mass;
}

/** Mass along one side at which water just does not come in, kg (the side test of 33 CFR 183.41(a)), on a boat otherwise empty. */
export function sideTestMass(body: FloatBody, empty: Weight, density: number): number {
  const holds = (added: number): boolean => {
    const mass = empty.mass + added;
    return floatsWith(equilibrium(body, { ...empty, mass, y: (added * body.side.outer) / mass }, density), 0);
  };
  return heaviest((mass) => holds(mass - empty.mass), empty.mass, empty.mass) - empty.mass;
}

function floatsWith(floating: Floating, freeboard: number): boolean {
  return floating.state === 'afloat' && floating.freeboard >= freeboard;
}

/** Largest mass for which a condition holds that only fails upwards; `least` where it fails there already. */
function heaviest(holds: (mass: number) => boolean, about: number, least = 0): number {
  let low = least;
  let high = MOST;
  if (holds(about)) low = about;
  else high = about;
  if (high > about && !holds(about + 200)) high = about + 200;
  while (high - low > STEP) {
    const middle = (low + high) / 2;
    if (holds(middle)) low = middle;
    else high = middle;
  }
  return low;
}
