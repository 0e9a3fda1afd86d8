import * as v from 'valibot';
import { above, between, count, id, list, text, wordOr } from './schema-parts.ts';

/**
 * What a boat, its engine and its tank or battery may be. Bounds keep out slips of unit and decimal point; they are
 * wider than the range in which the method holds, which the plan judges.
 */

/** m; no boat read here is longer than 20 m. */
export const positionSchema = v.strictObject({
  x: between(-5, 20),
  y: between(-5, 5),
  z: v.optional(between(-5, 10)),
});

const stationSchema = v.strictObject({
  ...positionSchema.entries,
  id,
  label: text,
  use: v.picklist(['helm', 'seat', 'gear', 'store', 'bow-tube']),
});

export const plateSchema = v.strictObject({
  scheme: v.picklist(['eu', 'us', 'unknown']),
  maxLoad: v.optional(above(0, 10_000)),
  persons: v.optional(count(1, 100)),
  maxPower: v.optional(above(0, 1e6)),
  maxEngineMass: v.optional(above(0, 2000)),
  category: v.optional(v.picklist(['A', 'B', 'C', 'D'])),
});

export const hullSchema = v.strictObject({
  name: text,
  form: v.picklist(['inflatable-catamaran', 'rib', 'flat-floor-inflatable', 'rigid-v', 'rigid-flat', 'displacement']),
  length: between(1, 20),
  beam: between(0.3, 10),
  wettedLength: between(0.5, 20),
  planingBeam: between(0.2, 10),
  deadriseDeg: between(0, 45),
  wettedSurfaceCoefficient: between(1, 10),
  formFactor: between(0, 2),
  planingSurfaceFactor: between(0.5, 3),
  roughness: between(0, 0.01),
  airDragCoefficient: between(0, 3),
  airArea: between(0, 50),
  airAreaPerPerson: between(0, 5),
  mass: above(0, 20_000),
  centre: positionSchema,
  engine: positionSchema,
  transomHeight: v.optional(above(0, 3)),
  tube: v.optional(v.strictObject({ diameter: above(0, 2), spacing: above(0, 10), length: above(0, 20) })),
  stations: list(stationSchema, 0, 60),
  plate: v.optional(wordOr(v.literal('none', 'must be "none" or the figures on the plate'), plateSchema)),
});

const driveEntries = {
  name: text,
  ratedPower: between(10, 1e6),
  ratedRpm: between(50, 20_000),
  gearRatio: between(0.2, 20),
  mass: above(0, 2000),
  propeller: v.strictObject({
    diameter: between(0.05, 2),
    pitch: between(0.02, 3),
    blades: count(2, 7),
    areaRatio: between(0.3, 1.05),
    quality: between(0.3, 1.1),
  }),
  legDragArea: between(0, 0.1),
  shaft: v.optional(v.picklist(['short', 'long', 'extra-long'])),
};

export const driveSchema = v.variant('kind', [
  v.strictObject({
    ...driveEntries,
    kind: v.literal('petrol'),
    cycle: v.picklist(['4s-carb', '4s-efi', '2s-carb', '2s-di']),
  }),
  v.strictObject({
    ...driveEntries,
    kind: v.literal('electric'),
    standbyLoss: between(0, 1),
    speedLoss: between(0, 1),
    torqueLoss: between(0, 2),
    accessoryPower: between(0, 10_000),
  }),
]);

const tankSchema = v.strictObject({
  name: text,
  capacityL: above(0, 2000),
  emptyMass: between(0, 500),
  unusableL: between(0, 500),
  fixed: v.boolean(),
  at: positionSchema,
});

const batterySchema = v.strictObject({
  name: text,
  chemistry: v.picklist(['nmc', 'lfp', 'agm', 'flooded-lead']),
  energyWh: above(0, 1e6),
  voltage: above(0, 1500),
  health: above(0, 1),
  maxCurrent: v.optional(above(0, 10_000)),
  mass: above(0, 5000),
  at: positionSchema,
});

export const storeSchema = v.variant('kind', [
  v.strictObject({ kind: v.literal('tank'), tanks: list(tankSchema, 1, 10) }),
  v.strictObject({ kind: v.literal('battery'), batteries: list(batterySchema, 1, 20) }),
]);

export const foulingSchema = v.picklist(['clean', 'slime', 'weed', 'shell']);

/** A calibration is never read: it is worked out anew from the runs. */
export const craftSchema = v.strictObject({
  hull: hullSchema,
  drive: driveSchema,
  store: storeSchema,
  fouling: v.optional(foulingSchema),
});
