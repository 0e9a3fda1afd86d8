/** A place aboard: metres forward of the aft end of the wetted bottom, to starboard, and above the keel. */
export interface Position {
  readonly x: number;
  readonly y: number;
  readonly z?: number;
}

export interface Station extends Position {
  readonly id: string;
  readonly label: string;
  /** `bow-tube` is drawn but nobody sits there at speed. */
  readonly use: 'helm' | 'seat' | 'gear' | 'store' | 'bow-tube';
}

export type HullForm =
  | 'inflatable-catamaran'
  | 'rib'
  | 'flat-floor-inflatable'
  | 'rigid-v'
  | 'rigid-flat'
  | 'displacement';

export type DesignCategory = 'A' | 'B' | 'C' | 'D';

/** What the builder's plate says. A field that is absent is not on the plate or was not read. */
export interface Plate {
  /** Which load the plate counts: EU without the engine and fixed-tank contents, US with engine and all fuel. */
  readonly scheme: 'eu' | 'us' | 'unknown';
  /** kg */
  readonly maxLoad?: number;
  readonly persons?: number;
  /** W */
  readonly maxPower?: number;
  /** kg */
  readonly maxEngineMass?: number;
  readonly category?: DesignCategory;
}

/** Hull record of the resistance method; lengths m, mass kg, angles degrees, areas m2. */
export interface Hull {
  readonly name: string;
  readonly form: HullForm;
  /** Overall. */
  readonly length: number;
  readonly beam: number;
  /** Wetted bottom length at rest. */
  readonly wettedLength: number;
  /** Effective planing beam. */
  readonly planingBeam: number;
  readonly deadriseDeg: number;
  /** cS in S0 = cS sqrt(volume x length). */
  readonly wettedSurfaceCoefficient: number;
  /** k of the displacement form factor 1 + k. */
  readonly formFactor: number;
  /** kS, planing wetted surface over that of a flat prism. */
  readonly planingSurfaceFactor: number;
  /** dCF, roughness allowance on the friction coefficient. */
  readonly roughness: number;
  readonly airDragCoefficient: number;
  /** Frontal area without crew. */
  readonly airArea: number;
  /** Frontal area each person adds. */
  readonly airAreaPerPerson: number;
  /** Empty boat with fixed equipment, no engine. */
  readonly mass: number;
  readonly centre: Position;
  /** Where the engine's mass sits. */
  readonly engine: Position;
  readonly transomHeight?: number;
  /** Twin tubes, where the form has them. `spacing` is between centre lines, `length` the effective length of one tube. */
  readonly tube?: { readonly diameter: number; readonly spacing: number; readonly length: number };
  readonly stations: readonly Station[];
  /** Absent: nobody said. 'none': the boat carries no plate. */
  readonly plate?: Plate | 'none';
}

/** Lengths m. */
export interface Propeller {
  readonly diameter: number;
  readonly pitch: number;
  readonly blades: number;
  /** Expanded blade area ratio Ae/A0. */
  readonly areaRatio: number;
  /** qp: open-water torque over real torque (thick blades, hub exhaust, wear). */
  readonly quality: number;
}

interface DriveBase {
  readonly name: string;
  /** Rated propshaft power, W. */
  readonly ratedPower: number;
  /** Engine or motor speed at rated power, rpm. */
  readonly ratedRpm: number;
  /** Engine turns per propeller turn; 1 for direct drive. */
  readonly gearRatio: number;
  /** kg */
  readonly mass: number;
  readonly propeller: Propeller;
  /** CdA of the leg in the water, m2. */
  readonly legDragArea: number;
  readonly shaft?: 'short' | 'long' | 'extra-long';
}

export type EngineCycle = '4s-carb' | '4s-efi' | '2s-carb' | '2s-di';

export interface PetrolDrive extends DriveBase {
  readonly kind: 'petrol';
  readonly cycle: EngineCycle;
}

/** Loss coefficients are shares of rated shaft power. */
export interface ElectricDrive extends DriveBase {
  readonly kind: 'electric';
  /** c0: electronics. */
  readonly standbyLoss: number;
  /** c1: iron and friction, with speed. */
  readonly speedLoss: number;
  /** c2: copper, with torque squared. */
  readonly torqueLoss: number;
  /** Lights, pumps, displays, W. */
  readonly accessoryPower: number;
}

export type Drive = PetrolDrive | ElectricDrive;

export interface Tank {
  readonly name: string;
  readonly capacityL: number;
  /** Kg without fuel; 0 for a built-in tank already counted in the hull or engine. */
  readonly emptyMass: number;
  /** What the pick-up cannot reach. */
  readonly unusableL: number;
  readonly fixed: boolean;
  readonly at: Position;
}

export type BatteryChemistry = 'nmc' | 'lfp' | 'agm' | 'flooded-lead';

export interface Battery {
  readonly name: string;
  readonly chemistry: BatteryChemistry;
  /** Nominal energy when new, Wh. */
  readonly energyWh: number;
  /** Nominal voltage, V. */
  readonly voltage: number;
  /** State of health, share of the energy when new. */
  readonly health: number;
  /** Limit of the battery management, A. */
  readonly maxCurrent?: number;
  /** kg */
  readonly mass: number;
  readonly at: Position;
}

export type Store =
  | { readonly kind: 'tank'; readonly tanks: readonly Tank[] }
  | { readonly kind: 'battery'; readonly batteries: readonly Battery[] };

/** Of the bottom: slime, a summer's weed or light shell, heavy shell. */
export type Fouling = 'clean' | 'slime' | 'weed' | 'shell';

/**
 * Factors fitted to trial runs, in the order of `FACTORS`; covariance row by row in the same order. Never read from a
 * file: it is worked out anew from the runs.
 */
export interface Calibration {
  readonly factors: readonly number[];
  readonly covariance: readonly (readonly number[])[];
  readonly runs: number;
  /** Lowest and highest all-up mass, kg, and speed, m/s, of the runs; beyond them the spread grows. */
  readonly tried?: { readonly mass: readonly [number, number]; readonly speed: readonly [number, number] };
  /** Relative standard deviation of consumption that no run of this boat tells: form of the model and age of the runs. */
  readonly formSpread?: number;
  /** Full-throttle power over rated, with its standard deviation. */
  readonly power?: { readonly factor: number; readonly deviation: number };
  /** Bottom on the day of the runs. */
  readonly fouling?: Fouling;
}

export interface Craft {
  readonly hull: Hull;
  readonly drive: Drive;
  readonly store: Store;
  /** Absent: an unmeasured boat with the default factors and the spread of their priors. */
  readonly calibration?: Calibration;
  /** Absent: clean. */
  readonly fouling?: Fouling;
}
