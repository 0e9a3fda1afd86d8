import type { Water } from '../units/constants.ts';
import { DEGREE } from '../units/convert.ts';
import { flatBottomVelocity } from './bottom-velocity.ts';
import { speedCoefficient } from './froude.ts';
import { frictionalDrag, planingDrag, wettedLengths } from './planing-drag.ts';
import { flatLiftFor, flatLiftSlope, wettedLengthForLift } from './planing-lift.ts';
import { centreOfPressure, wettedLengthForLever } from './pressure-centre.ts';

// The classic planing calculation, kept apart from the method for the whole speed range so that it can be held
// against the worked example of its paper. Range: 0.60 <= Cv <= 13, trim 2-15 deg, wetted length <= 4 beams.

/** Weight N, lengths m, speed m/s; `lcg` forward of the transom. */
export interface PlaningHull {
  readonly weight: number;
  readonly beam: number;
  readonly deadriseDeg: number;
  readonly speed: number;
  readonly lcg: number;
  readonly roughness: number;
  readonly water: Water;
}

/** Where the thrust acts: centre of gravity above keel, shaft up from the keel, thrust line below the centre. */
export interface ThrustLine {
  readonly vcg: number;
  readonly inclinationDeg: number;
  readonly arm: number;
}

export interface PlaningState {
  readonly trimDeg: number;
  readonly speedCoefficient: number;
  readonly liftCoefficient: number;
  readonly flatLift: number;
  readonly wettedLengthRatio: number;
  readonly meanVelocity: number;
  readonly frictionalDrag: number;
  readonly drag: number;
  readonly centreOfPressure: number;
  readonly keelWetted: number;
  readonly chineWetted: number;
}

/** One column of the computing table: the hull held at a trim, weight carried, moments not yet balanced. */
export function planingStateAt(hull: PlaningHull, trimDeg: number): PlaningState {
  const cv = speedCoefficient(hull.speed, hull.beam);
  return state(hull, trimDeg, wettedLengthForLift(flatLiftFor(lift(hull), hull.deadriseDeg), trimDeg, cv));
}

/** Short form: all forces through the centre of gravity, so its place gives wetted length and that gives trim. */
export function shortFormEquilibrium(hull: PlaningHull): PlaningState {
  const cv = speedCoefficient(hull.speed, hull.beam);
  const length = wettedLengthForLever(hull.lcg / hull.beam, cv);
  const flatLift = flatLiftFor(lift(hull), hull.deadriseDeg);
  return state(hull, (flatLift / flatLiftSlope(length, cv)) ** (1 / 1.1), length);
}

/** Bow-down moment left over at this state, N m (Savitsky 1964, Marine Technology 1(1), eq. 35). */
export function residualMoment(hull: PlaningHull, thrust: ThrustLine, at: PlaningState): number {
  const trim = at.trimDeg * DEGREE;
  const a = thrust.vcg - (hull.beam / 4) * Math.tan(hull.deadriseDeg * DEGREE);
  const c = hull.lcg - at.centreOfPressure * at.wettedLengthRatio * hull.beam;
  const carried = 1 - Math.sin(trim) * Math.sin(trim + thrust.inclinationDeg * DEGREE);
  return (
    hull.weight * ((carried * c) / Math.cos(trim) - thrust.arm * Math.sin(trim)) + at.frictionalDrag * (a - thrust.arm)
  );
}

/** Full moment balance by bisection on trim; undefined where none exists between 0.5 and 15 degrees. */
export function fullEquilibrium(hull: PlaningHull, thrust: ThrustLine): PlaningState | undefined {
  const moment = (trimDeg: number) => residualMoment(hull, thrust, planingStateAt(hull, trimDeg));
  let low = 0.5;
  let high = 15;
  if (moment(low) > 0 || moment(high) < 0) return undefined;
  // 50 halvings of 14.5 degrees reach the last bit.
  for (let step = 0; step < 50; step++) {
    const middle = (low + high) / 2;
    if (moment(middle) < 0) low = middle;
    else high = middle;
  }
  return planingStateAt(hull, (low + high) / 2);
}

function lift({ weight, beam, speed, water }: PlaningHull): number {
  return weight / (0.5 * water.density * speed * speed * beam * beam);
}

function state(hull: PlaningHull, trimDeg: number, wettedLengthRatio: number): PlaningState {
  const cv = speedCoefficient(hull.speed, hull.beam);
  const meanVelocity = hull.speed * flatBottomVelocity(trimDeg, wettedLengthRatio);
  const bottom = { ...hull, meanVelocity, wettedLengthRatio };
  const friction = frictionalDrag(bottom);
  const wetted = wettedLengths(bottom, trimDeg);
  return {
    trimDeg,
    speedCoefficient: cv,
    liftCoefficient: lift(hull),
    flatLift: flatLiftFor(lift(hull), hull.deadriseDeg),
    wettedLengthRatio,
    meanVelocity,
    frictionalDrag: friction,
    drag: planingDrag(hull.weight, trimDeg, friction),
    centreOfPressure: centreOfPressure(wettedLengthRatio, cv),
    keelWetted: wetted.keel,
    chineWetted: wetted.chine,
  };
}
