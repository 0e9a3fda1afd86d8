import type { Afloat, Boat } from '../curve/boat.ts';
import { marginOf, PLANING_FROUDE, speedAtFroude } from '../curve/hump.ts';
import { type Steady, steady } from '../curve/steady.ts';
import { hullFlags } from '../hull/flags.ts';

/** A boat whose attitude or factors change with speed, m/s. */
export type Variant = (speed: number) => { readonly boat: Boat; readonly afloat: Afloat };

/** What a boat does, in calm water: m/s, degrees, rpm, kg/m or J/m. */
export interface Figures {
  /** Where the bow has come down to the reference trim; undefined: it never does while the engine holds on. */
  readonly planingSpeed: number | undefined;
  /** Power there is over power asked where it is tightest on the way up. */
  readonly humpMargin: number;
  /** Highest trim of the climb. */
  readonly humpTrimDeg: number;
  readonly topSpeed: number;
  readonly fullThrottleRpm: number;
  /** At the reference speed; undefined where it is not held. */
  readonly perMetre: number | undefined;
  /** Somewhere between hump and top the planing equations are used outside their range. */
  readonly outsideMethod: boolean;
}

/** What all variants of one boat are compared at: trim (degrees) and cruising speed (m/s) of the boat as it is. */
export interface Reference {
  readonly trimDeg: number;
  readonly speed: number;
}

/** The climb onto the plane, and how far above it the bow may take to come down, as volume Froude numbers. */
const CLIMB = { from: 1.2, to: PLANING_FROUDE, step: 0.1 };
const LAST = 4;
/** No boat of this method is faster, m/s. */
const FASTEST = 18;
const STEP = 0.25;

/** The trim at which the boat, as it is, starts to plane by volume Froude number 2.2. */
export function planingTrim(boat: Boat, afloat: Afloat): number {
  return steady(boat, afloat, speedAtFroude(boat, afloat, PLANING_FROUDE)).hull.trimDeg;
}

/** The figures of one variant; about 150 resistance evaluations. */
export function figuresOf(variant: Variant, reference: Reference): Figures {
  const at = (speed: number): Steady => {
    const { boat, afloat } = variant(speed);
    return steady(boat, afloat, speed);
  };
  const marginAt = (speed: number): number => {
    const { boat, afloat } = variant(speed);
    return marginOf(boat, afloat, steady(boat, afloat, speed).drive);
  };
  const rest = variant(0);
  const scale = speedAtFroude(rest.boat, rest.afloat, 1);
  let humpMargin = Infinity;
  let humpTrimDeg = 0;
  let peak = CLIMB.from;
  for (let froude = CLIMB.from; froude <= CLIMB.to + 1e-9; froude += CLIMB.step) {
    humpMargin = Math.min(humpMargin, marginAt(froude * scale));
    const { trimDeg } = at(froude * scale).hull;
    if (trimDeg > humpTrimDeg) {
      humpTrimDeg = trimDeg;
      peak = froude;
    }
  }
  const topSpeed = topHeld(marginAt);
  const cruising = at(reference.speed);
  const down = comesDown((speed) => at(speed).hull.trimDeg, reference.trimDeg, peak * scale, LAST * scale);
  return {
    planingSpeed: down !== undefined && down <= topSpeed ? down : undefined,
    humpMargin,
    humpTrimDeg,
    topSpeed,
    fullThrottleRpm: at(topSpeed).drive.rpm,
    perMetre: marginAt(reference.speed) >= 1 ? cruising.flow / reference.speed : undefined,
    outsideMethod: [CLIMB.to * scale, topSpeed].some((speed) => flagged(variant, speed)),
  };
}

/** The highest speed held up to which every speed is held, m/s, to 1 mm/s: where full throttle takes the boat from rest. */
export function topHeld(marginAt: (speed: number) => number): number {
  let low = 0;
  let high = STEP;
  while (high < FASTEST && marginAt(high) >= 1) {
    low = high;
    high += STEP;
  }
  for (let i = 0; i < 8; i++) {
    const middle = (low + high) / 2;
    if (middle > 0 && marginAt(middle) >= 1) low = middle;
    else high = middle;
  }
  return low;
}

/** The lowest speed from `from` on at which trim is down to `trimDeg`, m/s; undefined past `to`. */
function comesDown(trimAt: (speed: number) => number, trimDeg: number, from: number, to: number): number | undefined {
  if (trimAt(from) <= trimDeg) return from;
  let low = from;
  let high = from;
  while (trimAt(high) > trimDeg) {
    low = high;
    high += STEP;
    if (high > to) return undefined;
  }
  for (let i = 0; i < 8; i++) {
    const middle = (low + high) / 2;
    if (trimAt(middle) > trimDeg) low = middle;
    else high = middle;
  }
  return high;
}

function flagged(variant: Variant, speed: number): boolean {
  const { boat, afloat } = variant(speed);
  const lcg = afloat.lcg + boat.factors.hull.lcgShift;
  const { hull } = steady(boat, afloat, speed);
  return hullFlags(boat.craft.hull, { mass: afloat.mass, lcg, water: boat.water }, hull).length > 0;
}
