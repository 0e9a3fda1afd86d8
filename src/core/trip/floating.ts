import type { Craft } from '../craft/shapes.ts';
import type { LoadBalance } from '../load/balance.ts';
import { crowdedTo } from '../load/crowded.ts';
import { equilibrium, type Floating } from '../load/equilibrium.ts';
import { LEAST_FREEBOARD, TUBES_USED } from '../load/float-margins.ts';
import { sidewards } from '../load/sidewards.ts';
import { weightOf } from '../load/weight-of.ts';
import type { Prepared } from './prepare.ts';
import type { Verdict } from './shapes.ts';

/** Share of the tubes' buoyancy in use at rest: acceptable, and sinking (common practice, no source). */
export const IMMERSED = { fine: TUBES_USED, most: 0.8 };

/** All-up mass the resistance method was made for, kg. */
export const MADE_FOR = { least: 100, most: 900 };

/** A craft in water of a density, kg/m3. */
export interface InWater {
  readonly trip: { readonly craft: Craft };
  readonly density: number;
}

/** Extra mass that is looked at where nothing else ends it, kg, and how finely. */
const FARTHEST = 1000;
const STEP = 0.25;

/** Mass both tubes carry when they are just under water, kg; undefined for hulls without. */
export function tubeBuoyancy({ trip, density }: InWater): number | undefined {
  const { tube } = trip.craft.hull;
  if (!tube) return undefined;
  return (Math.PI / 2) * tube.diameter * tube.diameter * tube.length * density;
}

/** The heaviest all-up mass, kg, that floating and the reach of the method allow with this verdict. */
export function heaviestFloating(prepared: InWater, verdict: 'go' | 'marginal'): number {
  const carried = tubeBuoyancy(prepared) ?? Infinity;
  return verdict === 'go' ? Math.min(IMMERSED.fine * carried, MADE_FOR.most) : IMMERSED.most * carried;
}

/** What floating and the reach of the method say of an all-up mass, kg; too light is another matter. */
export function floatVerdict(prepared: InWater, mass: number): Verdict {
  if (mass <= heaviestFloating(prepared, 'go')) return 'go';
  return mass <= heaviestFloating(prepared, 'marginal') ? 'marginal' : 'no-go';
}

/** The most extra mass, kg, and what of floating ends it there. */
export interface MostAfloat {
  readonly extra: number;
  readonly binds: 'floating' | 'freeboard' | 'stability';
}

/** What floating says of a loaded boat; worked out when first asked. */
export class FloatLimits {
  readonly #prepared: Prepared;
  readonly #balance: LoadBalance;
  readonly #most: Partial<Record<'go' | 'marginal', MostAfloat>> = {};
  #rest: Floating | undefined;
  #oneSide: Floating | undefined;

  constructor(prepared: Prepared, balance: LoadBalance) {
    this.#prepared = prepared;
    this.#balance = balance;
  }

  /** How the boat floats at rest; undefined where its record does not tell. */
  get rest(): Floating | undefined {
    this.#rest ??= this.#restWith(0);
    return this.#rest;
  }

  /** With everybody on the worse side; undefined without tubes or people. */
  get oneSide(): Floating | undefined {
    this.#oneSide ??= this.#oneSideWith(0);
    return this.#oneSide;
  }

  /** What `extra` kg more would make of it, at the boat's own centre of gravity and as people; too light is another matter. */
  verdict(extra: number): Verdict {
    if (extra <= this.most('go').extra) return 'go';
    return extra <= this.most('marginal').extra ? 'marginal' : 'no-go';
  }

  most(wanted: 'go' | 'marginal'): MostAfloat {
    const known = this.#most[wanted];
    if (known) return known;
    const found = this.#search(wanted);
    this.#most[wanted] = found;
    return found;
  }

  #search(wanted: 'go' | 'marginal'): MostAfloat {
    const { allUpMass, peopleAndGear } = this.#balance;
    const byMass = Math.min(heaviestFloating(this.#prepared, wanted) - allUpMass, FARTHEST);
    const low = -peopleAndGear;
    const edge = wanted === 'go' ? LEAST_FREEBOARD : 0;
    const over = (floating: Floating | undefined, least: number): number =>
      floating === undefined ? 1 : floating.state === 'afloat' ? floating.freeboard - least : -1;
    const free = largest((extra) => over(this.#restWith(extra), edge), low, byMass);
    const binds = free < byMass ? 'freeboard' : 'floating';
    // The code that asks for everybody on one side is one to pass, not one to sink by.
    const steady = wanted === 'go' ? largest((extra) => over(this.#oneSideWith(extra), 0), low, free) : free;
    return steady < free ? { extra: steady, binds: 'stability' } : { extra: free, binds };
  }

  #restWith(extra: number): Floating | undefined {
    const { body, density } = this.#prepared;
    const weight = weightOf(this.#balance);
    return body && equilibrium(body, { ...weight, mass: weight.mass + extra }, density);
  }

  #oneSideWith(extra: number): Floating | undefined {
    const { body, density, trip } = this.#prepared;
    if (!body || body.tubeVolume === 0) return undefined;
    const { people, rest } = sidewards(trip.craft, trip.load, this.#balance);
    const mass = people + extra;
    if (people === 0 || mass <= 0) return undefined;
    const weight = weightOf(this.#balance);
    return crowdedTo(body, { ...weight, mass: weight.mass + extra }, density, { mass, rest });
  }
}

/** Largest value with a margin of 0 or more, which only falls; `low` where even that has none. */
function largest(margin: (value: number) => number, low: number, high: number): number {
  if (high <= low) return high;
  let bad = high;
  let badMargin = margin(high);
  if (badMargin >= 0) return high;
  let good = Math.min(Math.max(0, low), high - STEP);
  let goodMargin = margin(good);
  if (goodMargin < 0) {
    [bad, badMargin] = [good, goodMargin];
    good = low;
    goodMargin = margin(low);
    if (goodMargin < 0) return low;
  }
  for (let round = 0; bad - good > STEP && round < 30; round++) {
    // A secant in the first rounds, kept off the ends; halving after that.
    const share = round % 3 === 2 ? 0.5 : Math.min(Math.max(goodMargin / (goodMargin - badMargin), 0.02), 0.98);
    const middle = good + (bad - good) * share;
    const here = margin(middle);
    if (here >= 0) [good, goodMargin] = [middle, here];
    else [bad, badMargin] = [middle, here];
  }
  return good;
}
