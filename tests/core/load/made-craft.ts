import type { Craft, Hull, Plate, Store } from '../../../src/core/craft/shapes.ts';
import type { Aboard } from '../../../src/core/load/shapes.ts';

/** An invented inflatable with two seats aft, one each side, and one forward. */
export function hull(plate?: Plate | 'none'): Hull {
  return {
    name: 'Made boat',
    form: 'inflatable-catamaran',
    length: 3.6,
    beam: 1.7,
    wettedLength: 3.2,
    planingBeam: 0.9,
    deadriseDeg: 2,
    wettedSurfaceCoefficient: 2.6,
    formFactor: 0.2,
    planingSurfaceFactor: 1.3,
    roughness: 0.0004,
    airDragCoefficient: 0.9,
    airArea: 0.6,
    airAreaPerPerson: 0.25,
    mass: 60,
    centre: { x: 1.6, y: 0, z: 0.3 },
    engine: { x: -0.1, y: 0, z: 0.5 },
    stations: [
      { id: 'helm', label: 'Helm', use: 'helm', x: 0.8, y: 0.4, z: 0.5 },
      { id: 'aft', label: 'Aft port', use: 'seat', x: 0.8, y: -0.5, z: 0.5 },
      { id: 'bow', label: 'Bow', use: 'seat', x: 2.2, y: 0, z: 0.5 },
      { id: 'tube', label: 'Bow tube', use: 'bow-tube', x: -1, y: 2 },
    ],
    plate,
  };
}

export const twoTanks: Store = {
  kind: 'tank',
  tanks: [
    { name: 'Portable', capacityL: 12, emptyMass: 3, unusableL: 0.6, fixed: false, at: { x: 2, y: -0.2, z: 0.2 } },
    { name: 'Built in', capacityL: 24, emptyMass: 0, unusableL: 1, fixed: true, at: { x: 0.5, y: 0.1, z: 0.2 } },
  ],
};

export function craft(parts: { plate?: Plate | 'none'; store?: Store; ratedPower?: number } = {}): Craft {
  return {
    hull: hull(parts.plate),
    drive: {
      name: 'Made engine',
      kind: 'petrol',
      cycle: '4s-carb',
      ratedPower: parts.ratedPower ?? 11000,
      ratedRpm: 5500,
      gearRatio: 2,
      mass: 50,
      propeller: { diameter: 0.23, pitch: 0.23, blades: 3, areaRatio: 0.5, quality: 0.95 },
      legDragArea: 0.004,
    },
    store: parts.store ?? twoTanks,
  };
}

export function aboard(id: string, mass: number, rest: Partial<Aboard> = {}): Aboard {
  return { id, kind: 'adult', mass, ...rest };
}
