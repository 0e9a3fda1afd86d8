import type { Station } from '../craft/shapes.ts';
import { type Boat, boatOf } from '../curve/boat.ts';
import { usableCharge } from '../drive/battery.ts';
import { idleFlow } from '../drive/demand.ts';
import { fuelMass, usableFuel, usableFuelInRoughWater } from '../drive/tank.ts';
import { type BalanceBase, balanceBase } from '../load/balance.ts';
import { type FloatBody, floatBody } from '../load/float-body.ts';
import { mayBeAt, placed } from '../load/placing.ts';
import type { Aboard, Load } from '../load/shapes.ts';
import { sailedLegs } from '../route/sailed-legs.ts';
import { type Hazard, type Stretch, splitLegs } from '../route/split-legs.ts';
import type { Waters } from '../route/waters.ts';
import { GRAVITY } from '../units/constants.ts';
import { type Around, aroundOf } from './around.ts';
import { cutByPlace } from './cut-by-place.ts';
import { DRAWN_FACTOR, MANOEUVRING } from './defaults.ts';
import { Remembered } from './remembered.ts';
import { badCases, expected, type Given, type Scenario, seaTold } from './scenario.ts';
import type { Trip } from './shapes.ts';
import { givenFill, storeGiven } from './store-given.ts';

/** A trip with all that does not change between its runs. */
export interface Prepared {
  readonly trip: Trip;
  readonly waters: Waters | undefined;
  readonly around: Around;
  /** The waves are given, or follow from wind and waters. */
  readonly seaTold: boolean;
  readonly base: BalanceBase;
  /** What keeps the boat up; undefined where its record does not tell. */
  readonly body: FloatBody | undefined;
  readonly unknownSeats: readonly string[];
  /** What moving everybody of unknown seat from the aft-most place to the foremost adds to the moment, kg m. */
  readonly forwardMoment: number;
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
  /** Of the water, kg/m3. */
  readonly density: number;
  readonly remembered: Remembered;
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
  const boat = boatAt(storeGiven(trip).batteryTemperatureC);
  const stretches = cut.stretches.map((s) => ({ ...s, distance: s.distance * drawnFactor }));
  const displacementSpeed = 0.35 * Math.sqrt(GRAVITY * craft.hull.wettedLength);
  const around = aroundOf(trip, waters, legs, {
    distance: stretches.reduce((sum, s) => sum + s.distance, 0),
    slowest: displacementSpeed,
  });
  const store = craft.store;
  const body = floatBody(craft.hull);
  return {
    trip,
    waters,
    around,
    seaTold: seaTold(conditions, around),
    base,
    body: typeof body === 'string' ? undefined : body,
    unknownSeats,
    forwardMoment: unknownSeats.length > 0 ? balanceBase(craft, seatedForward(trip)).momentX - base.momentX : 0,
    stretches: around.varies ? cutByPlace(stretches) : stretches,
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
    displacementSpeed,
    covariance: boat.factors.covariance,
    density: boat.water.density,
    remembered: new Remembered(),
    boatAt,
    storeMass: (fill) => (store.kind === 'tank' ? fuelMass(store.tanks, fill) : 0),
    usable: (scenario) =>
      store.kind === 'tank'
        ? (scenario.waveHeight >= 0.08 * craft.hull.length ? usableFuelInRoughWater : usableFuel)(
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
  /** Rate of the stream, m/s, however it was told: of streams by tide the strongest; of slack water against the way home. */
  readonly streamRate?: number | undefined;
  /** Significant, m, on every leg. */
  readonly waveHeight?: number | undefined;
}

/** What a trip says, or what is asked of it instead. */
export function givenOf({ trip, around }: Pick<Prepared, 'trip' | 'around'>, whatIf: WhatIf = {}): Given {
  const { fill, windSpeed, streamRate, waveHeight } = whatIf;
  const { conditions, craft, route } = trip;
  const oneWay = route.shape === 'one-way';
  const weighs = fill ?? trip.load.fill;
  const { length } = craft.hull;
  const asked = { windSpeed, streamRate, waveHeight };
  return { conditions, around, oneWay, fill: fill ?? givenFill(trip), weighs, length, ...asked };
}

/**
 * The runs a plan must stand and the bad cases beside them. In a sea that is not flat there are two: slowed by the waves,
 * and keeping the planned speed through them; with an unknown seat each counts far aft and far forward. `humpSpeed` where labouring at the hump is credible.
 */
export function scenariosOf(
  prepared: Prepared,
  humpSpeed: number | undefined,
  whatIf?: WhatIf,
): { readonly shown: readonly Scenario[]; readonly bad: readonly Scenario[] } {
  const { craft } = prepared.trip;
  const given = givenOf(prepared, whatIf);
  const home = { slow: prepared.displacementSpeed, hump: humpSpeed, electric: craft.drive.kind === 'electric' };
  const slowed = expected(given);
  const shown = slowed.waveHeight > 0 ? [{ ...slowed, unslowed: true }, slowed] : [slowed];
  const bad = badCases(given, home);
  return prepared.forwardMoment === 0 ? { shown, bad } : { shown: bothWays(shown), bad: bothWays(bad) };
}

/** A seat far aft costs most over the hump, one far forward most above it. */
function bothWays(scenarios: readonly Scenario[]): readonly Scenario[] {
  return scenarios.flatMap((scenario) => [scenario, { ...scenario, forward: true }]);
}

function seatedForward({ craft, load }: Trip): Load {
  const { stations, wettedLength } = craft.hull;
  const foremost = (kind: Aboard['kind']) =>
    mayBeAt(stations, kind).reduce<Station | undefined>((a, b) => (a && a.x >= b.x ? a : b), undefined);
  const { unknownSeats } = placed(craft.hull, load);
  const forward = (item: Aboard) => ({ ...item, at: foremost(item.kind) ?? { x: wettedLength / 2, y: 0 } });
  return { ...load, items: load.items.map((item) => (unknownSeats.includes(item.id) ? forward(item) : item)) };
}
