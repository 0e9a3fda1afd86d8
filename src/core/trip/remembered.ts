import type { Afloat, Boat } from '../curve/boat.ts';
import type { ClimbHulls } from '../curve/hump.ts';
import { lcgSlope, type Steady, steady } from '../curve/steady.ts';
import type { HullResistance } from '../hull/resistance.ts';

/** Slow ahead, in gear: what casting off and coming alongside is done at, m/s. */
export const MANOEUVRE_SPEED = 1;

/**
 * What many runs of one trip ask of the boat alike, whatever their weather: worked out once. Only the last load is
 * remembered for manoeuvring and the climb, since runs with the same load follow each other.
 */
export class Remembered {
  readonly #slopes = new Map<HullResistance, number>();
  #slow: { readonly boat: Boat; readonly afloat: Afloat; readonly steady: Steady } | undefined;
  #climb: { readonly boat: Boat; readonly afloat: Afloat; readonly hulls: ClimbHulls } | undefined;

  /** The boat as it manoeuvres in flat water and no wind. */
  slow(boat: Boat, afloat: Afloat): Steady {
    if (this.#slow?.boat !== boat || !asHeavy(this.#slow.afloat, afloat)) {
      this.#slow = { boat, afloat, steady: steady(boat, afloat, MANOEUVRE_SPEED) };
    }
    return this.#slow.steady;
  }

  climb(boat: Boat, afloat: Afloat): ClimbHulls {
    if (this.#climb?.boat !== boat || !asHeavy(this.#climb.afloat, afloat)) this.#climb = { boat, afloat, hulls: [] };
    return this.#climb.hulls;
  }

  /** `lcgSlope` of a boat at a speed, m/s, at which its hull is this. */
  slope(boat: Boat, afloat: Afloat, speed: number, hull: HullResistance): number {
    let slope = this.#slopes.get(hull);
    if (slope === undefined) {
      slope = lcgSlope(boat, afloat, speed, hull);
      this.#slopes.set(hull, slope);
    }
    return slope;
  }
}

function asHeavy(a: Afloat, b: Afloat): boolean {
  return a.mass === b.mass && a.lcg === b.lcg && a.airArea === b.airArea;
}
