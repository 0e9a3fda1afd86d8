import type { Craft, Drive, Propeller } from '../craft/shapes.ts';
import { type Afloat, type Boat, boatOf } from '../curve/boat.ts';
import { froudeVolume } from '../hull/froude.ts';
import { DEEP_LEG_AREA } from '../hull/leg-drag.ts';
import { INCH } from '../units/convert.ts';
import type { Loaded, Setting } from './loaded.ts';
import { type Leg, thrustEffect } from './thrust-moment.ts';
import { type Figures, figuresOf, planingTrim, type Reference, type Variant } from './variant.ts';

export type ChangeCode =
  | 'crew-forward'
  | 'crew-aft'
  | 'trim-out'
  | 'trim-in'
  | 'long-shaft'
  | 'cup'
  | 'larger-propeller'
  | 'foil-plate';

/**
 * How far to trust a change: worked out by the method (its own band still holds), worked out from a size that only
 * common practice gives, or common practice that owners dispute.
 */
export type Sureness = 'method' | 'practice' | 'disputed';

export interface Change {
  readonly code: ChangeCode;
  readonly sureness: Sureness;
  /** The two ends of what is credible; alike where the change has one size. */
  readonly ends: readonly [Figures, Figures];
  readonly outsideMethod: boolean;
  /** Shift of the centre of gravity that stands for it at the hump, m forward, the two ends. */
  readonly lcgShift: readonly [number, number];
}

export interface Changes {
  readonly now: Figures;
  readonly cruise: number;
  readonly changes: readonly Change[];
}

export interface ChangeQuestion extends Setting {
  /** Cruising speed that consumption is told for, m/s. */
  readonly cruise: number;
  /** How far everybody moves, m, and how far the engine's trim is moved, degrees. */
  readonly crewMove: number;
  readonly trimDeg: number;
}

/** A longer shaft: 5 in; 1 to 3 kg; its drag as far as the trade's 1 to 3 km/h at 30 km/h reach (common practice, no source). */
const LONGER = { depth: 0.127, mass: [1, 3], area: [0.5 * DEEP_LEG_AREA, 1.5 * DEEP_LEG_AREA] } as const;
/** A light and a heavy cup act like so much more pitch, m (common practice, no source). */
const CUP = [0.5 * INCH, INCH] as const;
/** A larger propeller of the same pitch, m of diameter. */
const LARGER = [0.5 * INCH, INCH] as const;
/**
 * A foil plate on the leg: from drag and no help to 0.6 of the hump and 5 cm of balance (common practice, strongly
 * disputed; no published measurement was found). Its drag area, m2, and where it has come clear of the water.
 */
const FOIL = { hump: [1, 0.6], lcgShift: [0, 0.05], area: 0.0008, clear: 2.5 } as const;
/** Speed of the hump as a volume Froude number, where shifts are told. */
const HUMP = 1.7;

/** What changes if: size and direction of the usual tricks for one loaded boat in calm water. */
export function changes(loaded: Loaded, question: ChangeQuestion): Changes {
  const { boat, afloat } = loaded;
  const reference: Reference = { trimDeg: planingTrim(boat, afloat), speed: question.cruise };
  const change = (
    code: ChangeCode,
    sureness: Sureness,
    variants: readonly [Variant, Variant],
    shifts: readonly [number, number] = [0, 0],
  ): Change => {
    const first = figuresOf(variants[0], reference);
    const second = variants[1] === variants[0] ? first : figuresOf(variants[1], reference);
    const outsideMethod = first.outsideMethod || second.outsideMethod;
    return { code, sureness, ends: [first, second], outsideMethod, lcgShift: shifts };
  };
  const moved = crewMoved(loaded, question.crewMove);
  const tilt = (tiltDeg: number) => tilted(loaded, { tiltDeg });
  const forward = shifted(boat, afloat, moved);
  const aft = shifted(boat, afloat, -moved);
  const out = tilt(question.trimDeg);
  const inward = tilt(-question.trimDeg);
  const humpSpeed = HUMP * (1 / froudeVolume(1, afloat.mass, boat.water.density));
  const at = (variant: Variant) => variant(humpSpeed).afloat.lcg - afloat.lcg;
  const same = (variant: Variant): readonly [Variant, Variant] => [variant, variant];
  const both = (shift: number): readonly [number, number] => [shift, shift];
  const long = [0, 1].map((i) => longShaft(loaded, question, LONGER.mass[i]!, LONGER.area[i]!));
  const cups = CUP.map((more) => propelled(loaded, question, ({ pitch }) => ({ pitch: pitch + more })));
  const larger = LARGER.map((more) => propelled(loaded, question, ({ diameter }) => ({ diameter: diameter + more })));
  const foils = [0, 1].map((i) => foiled(loaded, question, FOIL.hump[i]!, FOIL.lcgShift[i]!));
  return {
    now: figuresOf(() => ({ boat, afloat }), reference),
    cruise: question.cruise,
    changes: [
      change('crew-forward', 'method', same(forward), both(moved)),
      change('crew-aft', 'method', same(aft), both(-moved)),
      change('trim-out', 'method', same(out), both(at(out))),
      change('trim-in', 'method', same(inward), both(at(inward))),
      change('long-shaft', 'practice', pair(long), pair(long.map(at))),
      change('cup', 'practice', pair(cups)),
      change('larger-propeller', 'practice', pair(larger)),
      change('foil-plate', 'disputed', pair(foils), FOIL.lcgShift),
    ],
  };
}

function pair<T>([first, second]: readonly T[]): readonly [T, T] {
  return [first!, second!];
}

/** Shift of the centre of gravity when everybody aboard moves this far forward, m. */
function crewMoved({ balance }: Loaded, by: number): number {
  return (by * balance.peopleAndGear) / balance.allUpMass;
}

function shifted(boat: Boat, afloat: Afloat, by: number): Variant {
  const there = { boat, afloat: { ...afloat, lcg: afloat.lcg + by } };
  return () => there;
}

/** Only the difference against the leg square to the bottom counts: the method as it stands has that in its figures. */
function tilted({ boat, afloat, balance }: Loaded, leg: Leg, changed: Boat = boat, carried: Afloat = afloat): Variant {
  return (speed) => {
    if (speed <= 0) return { boat: changed, afloat: carried };
    const now = thrustEffect(boat, afloat, balance.vcg, speed, { tiltDeg: 0 });
    const then = thrustEffect(boat, afloat, balance.vcg, speed, leg);
    const { model } = changed;
    const driving = (1 - model.thrustDeduction) * (now.thrustShare / then.thrustShare);
    return {
      boat: { ...changed, model: { ...model, thrustDeduction: 1 - driving } },
      afloat: {
        ...carried,
        lcg: carried.lcg + then.lcgShift - now.lcgShift,
        mass: carried.mass + then.massShift - now.massShift,
      },
    };
  };
}

function longShaft(loaded: Loaded, setting: Setting, mass: number, area: number): Variant {
  const { craft, afloat } = loaded;
  const { legDragArea } = loaded.boat.craft.drive;
  const boat = rebuilt(loaded, setting, { legDragArea: legDragArea + area } as Partial<Drive>);
  const heavier = afloat.mass + mass;
  const lcg = (afloat.mass * afloat.lcg + mass * craft.hull.engine.x) / heavier;
  return tilted(loaded, { tiltDeg: 0, deeper: LONGER.depth }, boat, { ...afloat, mass: heavier, lcg });
}

function propelled(loaded: Loaded, setting: Setting, change: (now: Propeller) => Partial<Propeller>): Variant {
  const { propeller } = loaded.craft.drive;
  const there = {
    boat: rebuilt(loaded, setting, { propeller: { ...propeller, ...change(propeller) } } as Partial<Drive>),
    afloat: loaded.afloat,
  };
  return () => there;
}

function foiled(loaded: Loaded, setting: Setting, hump: number, lcgShift: number): Variant {
  const { afloat } = loaded;
  const legDragArea = loaded.boat.craft.drive.legDragArea + FOIL.area;
  const boat = rebuilt(loaded, setting, { legDragArea } as Partial<Drive>);
  const { hull } = boat.factors;
  const eased = { ...boat, factors: { ...boat.factors, hull: { ...hull, kh: hull.kh * hump } } };
  return (speed) => {
    const froude = froudeVolume(speed, afloat.mass, boat.water.density);
    // Clear of the water it lifts no more; eighth power makes the end soft.
    const wet = 1 / (1 + (froude / FOIL.clear) ** 8);
    return { boat: eased, afloat: { ...afloat, lcg: afloat.lcg + wet * lcgShift } };
  };
}

/** The boat as it was made ready, with a changed engine; factors found by trials stay. */
function rebuilt({ boat }: Loaded, setting: Setting, change: Partial<Drive>): Boat {
  const craft: Craft = { ...boat.craft, drive: { ...boat.craft.drive, ...change } as Drive };
  return boatOf(craft, setting.water, setting.batteryTemperatureC);
}
