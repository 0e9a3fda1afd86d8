import type { Craft, Drive, Propeller } from '../craft/shapes.ts';
import type { Afloat, Boat } from '../curve/boat.ts';
import { driveModel } from '../drive/demand.ts';
import { froudeVolume } from '../hull/froude.ts';
import { DEEP_LEG_AREA } from '../hull/leg-drag.ts';
import { INCH } from '../units/convert.ts';
import { credibleBoats, tenToNinety } from './credible-boats.ts';
import type { Loaded } from './loaded.ts';
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
 * How far to trust a change: worked out by the method, worked out from a size that only common practice gives, or
 * common practice that owners dispute.
 */
export type Sureness = 'method' | 'practice' | 'disputed';

/** 10th and 90th percentile of a change over such boats and over the two ends of its own size. */
export interface Spread {
  readonly low: number;
  readonly high: number;
}

/** Changes against the same boat without: m/s, shares, rpm. */
export interface Effects {
  /** Where the bow has come down; in words where the boat as it is never planes, or no more, or only then. */
  readonly planing: Spread | 'never' | 'lost' | 'gained';
  readonly humpMargin: Spread;
  readonly topSpeed: Spread;
  readonly rpm: Spread;
  /** Consumption at the cruising speed; undefined where it is not held with or without. */
  readonly use: Spread | undefined;
}

export interface Change {
  readonly code: ChangeCode;
  readonly sureness: Sureness;
  /** Of the boat as it is, at the two ends of the change's size; alike where it has one size. */
  readonly ends: readonly [Figures, Figures];
  readonly effects: Effects;
  readonly outsideMethod: boolean;
  /** Shift of the centre of gravity that stands for it at the hump, m forward, the two ends. */
  readonly lcgShift: readonly [number, number];
}

export interface Changes {
  readonly now: Figures;
  readonly cruise: number;
  readonly changes: readonly Change[];
}

export interface ChangeQuestion {
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
  const { now, cruise, next } = changeSteps(loaded, question);
  return { now, cruise, changes: [...next] };
}

/** The same one change at a time, so that the caller may pause between them. */
export function changeSteps(
  loaded: Loaded,
  question: ChangeQuestion,
): Omit<Changes, 'changes'> & { readonly next: Iterable<Change> } {
  const here = caseOf(loaded, question);
  return { now: here.now, cruise: question.cruise, next: stepsOf(here, question) };
}

/** A boat as it is, with its own figures to hold its changes against. */
interface Case {
  readonly loaded: Loaded;
  readonly reference: Reference;
  readonly now: Figures;
  readonly tricks: readonly Trick[];
}

interface Trick {
  readonly code: ChangeCode;
  readonly sureness: Sureness;
  readonly variants: readonly [Variant, Variant];
}

function caseOf(loaded: Loaded, question: ChangeQuestion): Case {
  const { boat, afloat } = loaded;
  const reference: Reference = { trimDeg: planingTrim(boat, afloat), speed: question.cruise };
  const now = figuresOf(() => ({ boat, afloat }), reference);
  return { loaded, reference, now, tricks: tricksOf(loaded, question) };
}

function* stepsOf(here: Case, question: ChangeQuestion): Generator<Change> {
  const { afloat, boat } = here.loaded;
  const others = credibleBoats(boat).map((other) => caseOf({ ...here.loaded, boat: other }, question));
  const humpSpeed = HUMP / froudeVolume(1, afloat.mass, boat.water.density);
  for (const [i, { code, sureness, variants }] of here.tricks.entries()) {
    const ends = figuresAt(here, variants);
    const around = others.map((other) => ({ now: other.now, pair: figuresAt(other, other.tricks[i]!.variants) }));
    // For each end of the change's size the deltas of the boat as it is, and of others it may be.
    const deltas = [0, 1].map((end) => [
      deltaOf(here.now, ends[end]!),
      ...around.map(({ now, pair: both }) => deltaOf(now, both[end]!)),
    ]);
    const spreadOf = (of: (delta: Delta) => number | undefined): Spread | undefined => {
      const sides = deltas.flatMap((all) => {
        const told = all.map(of).filter((figure) => figure !== undefined);
        return of(all[0]!) === undefined ? [] : [tenToNinety(told)];
      });
      if (sides.length === 0) return undefined;
      return { low: Math.min(...sides.map(({ low }) => low)), high: Math.max(...sides.map(({ high }) => high)) };
    };
    yield {
      code,
      sureness,
      ends,
      effects: {
        planing: spreadOf(({ planing }) => planing) ?? planingWords(here.now, ends),
        humpMargin: spreadOf(({ humpMargin }) => humpMargin)!,
        topSpeed: spreadOf(({ topSpeed }) => topSpeed)!,
        rpm: spreadOf(({ rpm }) => rpm)!,
        use: spreadOf(({ use }) => use),
      },
      outsideMethod: ends.some(({ outsideMethod }) => outsideMethod),
      lcgShift: pair(variants.map((variant) => variant(humpSpeed).afloat.lcg - afloat.lcg)),
    };
  }
}

interface Delta {
  readonly planing: number | undefined;
  readonly humpMargin: number;
  readonly topSpeed: number;
  readonly rpm: number;
  readonly use: number | undefined;
}

function deltaOf(now: Figures, then: Figures): Delta {
  const both = <T>(a: number | undefined, b: number | undefined, of: (a: number, b: number) => T) =>
    a === undefined || b === undefined ? undefined : of(a, b);
  return {
    planing: both(now.planingSpeed, then.planingSpeed, (a, b) => b - a),
    humpMargin: then.humpMargin - now.humpMargin,
    topSpeed: then.topSpeed - now.topSpeed,
    rpm: then.fullThrottleRpm - now.fullThrottleRpm,
    use: both(now.perMetre, then.perMetre, (a, b) => b / a - 1),
  };
}

function planingWords(now: Figures, ends: readonly Figures[]): 'never' | 'lost' | 'gained' {
  if (now.planingSpeed !== undefined) return 'lost';
  return ends.some(({ planingSpeed }) => planingSpeed !== undefined) ? 'gained' : 'never';
}

function figuresAt({ reference }: Case, [first, second]: readonly [Variant, Variant]): readonly [Figures, Figures] {
  const figures = figuresOf(first, reference);
  return [figures, second === first ? figures : figuresOf(second, reference)];
}

function tricksOf(loaded: Loaded, { crewMove, trimDeg }: ChangeQuestion): readonly Trick[] {
  const { boat, afloat } = loaded;
  const one = (code: ChangeCode, variant: Variant): Trick => ({
    code,
    sureness: 'method',
    variants: [variant, variant],
  });
  const two = (code: ChangeCode, sureness: Sureness, variants: readonly Variant[]): Trick => ({
    code,
    sureness,
    variants: pair(variants),
  });
  const moved = crewMoved(loaded, crewMove);
  return [
    one('crew-forward', shifted(boat, afloat, moved)),
    one('crew-aft', shifted(boat, afloat, -moved)),
    one('trim-out', tilted(loaded, { tiltDeg: trimDeg })),
    one('trim-in', tilted(loaded, { tiltDeg: -trimDeg })),
    two(
      'long-shaft',
      'practice',
      [0, 1].map((i) => longShaft(loaded, LONGER.mass[i]!, LONGER.area[i]!)),
    ),
    two(
      'cup',
      'practice',
      CUP.map((more) => propelled(loaded, ({ pitch }) => ({ pitch: pitch + more }))),
    ),
    two(
      'larger-propeller',
      'practice',
      LARGER.map((more) => propelled(loaded, ({ diameter }) => ({ diameter: diameter + more }))),
    ),
    two(
      'foil-plate',
      'disputed',
      [0, 1].map((i) => foiled(loaded, FOIL.hump[i]!, FOIL.lcgShift[i]!)),
    ),
  ];
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

function longShaft(loaded: Loaded, mass: number, area: number): Variant {
  const { craft, afloat } = loaded;
  const { legDragArea } = loaded.boat.craft.drive;
  const boat = rebuilt(loaded, { legDragArea: legDragArea + area } as Partial<Drive>);
  const heavier = afloat.mass + mass;
  const lcg = (afloat.mass * afloat.lcg + mass * craft.hull.engine.x) / heavier;
  return tilted(loaded, { tiltDeg: 0, deeper: LONGER.depth }, boat, { ...afloat, mass: heavier, lcg });
}

function propelled(loaded: Loaded, change: (now: Propeller) => Partial<Propeller>): Variant {
  const { propeller } = loaded.craft.drive;
  const there = {
    boat: rebuilt(loaded, { propeller: { ...propeller, ...change(propeller) } } as Partial<Drive>),
    afloat: loaded.afloat,
  };
  return () => there;
}

function foiled(loaded: Loaded, hump: number, lcgShift: number): Variant {
  const { afloat } = loaded;
  const legDragArea = loaded.boat.craft.drive.legDragArea + FOIL.area;
  const boat = rebuilt(loaded, { legDragArea } as Partial<Drive>);
  const { hull } = boat.factors;
  const eased = { ...boat, factors: { ...boat.factors, hull: { ...hull, kh: hull.kh * hump } } };
  return (speed) => {
    const froude = froudeVolume(speed, afloat.mass, boat.water.density);
    // Clear of the water it lifts no more; eighth power makes the end soft.
    const wet = 1 / (1 + (froude / FOIL.clear) ** 8);
    return { boat: eased, afloat: { ...afloat, lcg: afloat.lcg + wet * lcgShift } };
  };
}

/** The boat as it was made ready, with a changed engine; its factors stay. */
function rebuilt({ boat }: Loaded, change: Partial<Drive>): Boat {
  const craft: Craft = { ...boat.craft, drive: { ...boat.craft.drive, ...change } as Drive };
  const { factors, water } = boat;
  const model = driveModel(craft.drive, {
    density: water.density,
    form: craft.hull.form,
    factors: factors.drive,
    fullPower: factors.power.factor,
  });
  return { ...boat, craft, model };
}
