import type { Hull, HullForm } from '../../../src/core/craft/shapes.ts';
import { airDrag } from '../../../src/core/hull/air-drag.ts';
import { legDrag } from '../../../src/core/hull/leg-drag.ts';
import { hullResistance } from '../../../src/core/hull/resistance.ts';
import { SEA_WATER, type Water } from '../../../src/core/units/constants.ts';

/** An invented boat to try the method on, with the leg of its usual engine. */
export interface Boat {
  readonly hull: Hull;
  readonly legDragArea: number;
}

interface Lines {
  readonly name: string;
  readonly form: HullForm;
  readonly length: number;
  readonly beam: number;
  readonly wettedLength: number;
  readonly planingBeam: number;
  readonly deadriseDeg: number;
  readonly wettedSurfaceCoefficient: number;
  readonly formFactor?: number;
  readonly planingSurfaceFactor: number;
  readonly roughness: number;
  /** m2, crew counted in. */
  readonly airArea: number;
}

/** A hull record from its lines alone; nothing here weighs or seats anything. */
export function hullOf(lines: Lines): Hull {
  return {
    formFactor: 0.25,
    airDragCoefficient: 0.9,
    airAreaPerPerson: 0,
    mass: 0,
    centre: { x: 0, y: 0 },
    engine: { x: -0.1, y: 0 },
    stations: [],
    ...lines,
  };
}

export const CATAMARAN_40: Boat = {
  hull: hullOf({
    name: 'inflatable catamaran 4.0 m',
    form: 'inflatable-catamaran',
    length: 4,
    beam: 1.95,
    wettedLength: 3.7,
    planingBeam: 1.25,
    deadriseDeg: 12,
    wettedSurfaceCoefficient: 3.6,
    planingSurfaceFactor: 1.1,
    roughness: 0.0006,
    airArea: 0.9,
  }),
  legDragArea: 0.0022,
};

export const CATAMARAN_33: Boat = {
  hull: hullOf({
    name: 'inflatable catamaran 3.3 m',
    form: 'inflatable-catamaran',
    length: 3.3,
    beam: 1.7,
    wettedLength: 3.05,
    planingBeam: 1.1,
    deadriseDeg: 12,
    wettedSurfaceCoefficient: 3.6,
    planingSurfaceFactor: 1.1,
    roughness: 0.0006,
    airArea: 0.65,
  }),
  legDragArea: 0.0018,
};

export const RIB_35: Boat = {
  hull: hullOf({
    name: 'RIB 3.5 m',
    form: 'rib',
    length: 3.5,
    beam: 1.7,
    wettedLength: 3.1,
    planingBeam: 1.25,
    deadriseDeg: 18,
    wettedSurfaceCoefficient: 3,
    planingSurfaceFactor: 1,
    roughness: 0.0006,
    airArea: 0.9,
  }),
  legDragArea: 0.0022,
};

export const OPEN_BOAT_43: Boat = {
  hull: hullOf({
    name: 'flat-bottom open boat 4.3 m',
    form: 'rigid-flat',
    length: 4.3,
    beam: 1.65,
    wettedLength: 3.9,
    planingBeam: 1.35,
    deadriseDeg: 5,
    wettedSurfaceCoefficient: 3,
    planingSurfaceFactor: 1,
    roughness: 0.0004,
    airArea: 1,
  }),
  legDragArea: 0.0022,
};

export const INFLATABLE_29: Boat = {
  hull: hullOf({
    name: 'flat-floor inflatable 2.9 m',
    form: 'flat-floor-inflatable',
    length: 2.9,
    beam: 1.46,
    wettedLength: 2.6,
    planingBeam: 0.95,
    deadriseDeg: 9,
    wettedSurfaceCoefficient: 3.1,
    planingSurfaceFactor: 1.1,
    roughness: 0.001,
    airArea: 0.6,
  }),
  legDragArea: 0.0014,
};

export const BOATS: readonly Boat[] = [CATAMARAN_40, CATAMARAN_33, RIB_35, OPEN_BOAT_43, INFLATABLE_29];

/** All-up mass kg, LCG m; the rest only where it is not calm, short-legged or at sea. */
export interface Setting {
  readonly mass: number;
  readonly lcg: number;
  readonly headwind?: number;
  readonly extraLegArea?: number;
  readonly water?: Water;
}

/** Everything the propeller must overcome in flat water, N: hull, air and leg. */
export function drag({ hull, legDragArea }: Boat, setting: Setting, speed: number): number {
  const { mass, lcg, headwind = 0, extraLegArea = 0, water = SEA_WATER } = setting;
  return (
    hullResistance(hull, { mass, lcg, water }, speed).total +
    airDrag(hull.airArea, hull.airDragCoefficient, { speed, headwind }) +
    legDrag(legDragArea + extraLegArea, speed, water.density)
  );
}

/** Fastest speed up to 15 m/s at which this much thrust power (W) still carries the drag; scanned downwards in 1 cm/s. */
export function topSpeed(boat: Boat, setting: Setting, thrustPower: number): number {
  let speed = 15;
  while (drag(boat, setting, speed) * speed > thrustPower) speed -= 0.01;
  return speed;
}
