import { type Boat, boatOf } from '../curve/boat.ts';
import { usableCharge } from '../drive/battery.ts';
import { idleFlow } from '../drive/demand.ts';
import { FULL_FILL, fuelMass, usableFuel, usableFuelInRoughWater } from '../drive/tank.ts';
import { type BalanceBase, balanceBase } from '../load/balance.ts';
import { placed } from '../load/placing.ts';
import { sailedLegs } from '../route/sailed-legs.ts';
import { type Hazard, type Stretch, splitLegs } from '../route/split-legs.ts';
import type { Waters } from '../route/waters.ts';
import { GRAVITY } from '../units/constants.ts';
import { badCases, expected, type Scenario } from './scenario.ts';
import type { Trip } from './shapes.ts';

/** Warm-up, casting off and coming alongside together, s (common practice, no source: 5 to 10 minutes). */
export const MANOEUVRING = 450;
/** Sailed over drawn length (common practice, no source: corners and headlands add 2 to 10 %). */
export const DRAWN_FACTOR = 1.05;

/** A trip with all that does not change between its runs. */
export interface Prepared {
  readonly trip: Trip;
  readonly waters: Waters | undefined;
  readonly base: BalanceBase;
  readonly unknownSeats: readonly string[];
  readonly stretches: readonly Stretch[];
  readonly hazards: readonly Hazard[];
  readonly turningIndex: number;
  /** s */
  readonly manoeuvring: number;
  readonly drawnFactor: number;
  /** Capacity of the tanks in kg, or of the batteries in J when new and warm. */
  readonly full: number;
  /** Petrol leaves the boat as it burns. */
  readonly burns: boolean;
  readonly idle: number;
  /** FnL 0.35: what any hull makes without climbing its bow wave, m/s. */
  readonly displacementSpeed: number;
  readonly covariance: Float64Array;
  boatAt(batteryTemperatureC: number): Boat;
  /** kg of fuel aboard at this share of capacity; 0 for batteries, whose mass is fixed. */
  storeMass(fill: number): number;
  /** kg or J that can be used in this scenario. */
  usable(scenario: Scenario): number;
}

/** Makes a checked trip ready to sail. The route has at least two points. */
export function prepare(trip: Trip, waters: Waters | undefined): Prepared {
  const { craft, load, conditions, policy } = trip;
  const { legs, turningIndex } = sailedLegs(trip.route);
  const cut = splitLegs(legs, waters);
  const drawnFactor = policy.drawnFactor ?? DRAWN_FACTOR;
  const { unknownSeats } = placed(craft.hull, load);
  const base = balanceBase(craft, load);
  const boats = new Map<number, Boat>();
  const boatAt = (temperature: number): Boat => {
    let boat = boats.get(temperature);
    if (!boat) {
      boat = boatOf(craft, conditions.water, temperature);
      boats.set(temperature, boat);
    }
    return boat;
  };
  const boat = boatAt(expected({ conditions, fill: load.fill, length: craft.hull.length }).batteryTemperatureC);
  const store = craft.store;
  return {
    trip,
    waters,
    base,
    unknownSeats,
    stretches: cut.stretches.map((s) => ({ ...s, distance: s.distance * drawnFactor })),
    hazards: cut.hazards,
    turningIndex,
    manoeuvring: policy.manoeuvring ?? MANOEUVRING,
    drawnFactor,
    full:
      store.kind === 'tank'
        ? fuelMass(store.tanks, 1)
        : store.batteries.reduce((sum, b) => sum + b.energyWh * 3600 * b.health, 0),
    burns: store.kind === 'tank',
    idle: idleFlow(boat.model),
    displacementSpeed: 0.35 * Math.sqrt(GRAVITY * craft.hull.wettedLength),
    covariance: boat.factors.covariance,
    boatAt,
    storeMass: (fill) => (store.kind === 'tank' ? fuelMass(store.tanks, fill) : 0),
    usable: (scenario) =>
      store.kind === 'tank'
        ? (scenario.waveHeight > 0.08 * craft.hull.length ? usableFuelInRoughWater : usableFuel)(
            store.tanks,
            scenario.fill,
          )
        : usableCharge(boatAt(scenario.batteryTemperatureC).bank!, scenario.fill),
  };
}

/** A question asked of a prepared trip in place of what it says. */
export interface WhatIf {
  readonly fill?: number | undefined;
  readonly windSpeed?: number | undefined;
}

/** The run that is shown and the bad cases beside it. `humpSpeed` where labouring at the hump is credible. */
export function scenariosOf(
  prepared: Prepared,
  humpSpeed: number | undefined,
  { fill, windSpeed }: WhatIf = {},
): { readonly shown: Scenario; readonly bad: readonly Scenario[] } {
  const { conditions, craft } = prepared.trip;
  const given = { conditions, fill: fill ?? givenFill(prepared.trip), windSpeed, length: craft.hull.length };
  const home = { slow: prepared.displacementSpeed, hump: humpSpeed, electric: craft.drive.kind === 'electric' };
  return { shown: expected(given), bad: badCases(given, home) };
}

/** The fill as given, where a full tank holds no more than leaves the petrol room to expand. */
export function givenFill({ load, craft }: Trip): number | undefined {
  return load.fill !== undefined && craft.store.kind === 'tank' ? Math.min(load.fill, FULL_FILL) : load.fill;
}
