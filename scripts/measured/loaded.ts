import type { Craft, Hull } from '../../src/core/craft/shapes.ts';
import { fuelMass } from '../../src/core/drive/tank.ts';
import type { Load } from '../../src/core/load/shapes.ts';
import { PETROL_DENSITY } from '../../src/core/units/constants.ts';
import { HOUR, KMH, KNOT } from '../../src/core/units/convert.ts';
import { type BoatRecord, checkOf, craftOf, recordOf } from './records.ts';

export interface MeasuredPoint {
  readonly check: string;
  /** m/s */
  readonly speed: number;
  /** kg/s or W; absent where only the revs were read. */
  readonly flow?: number;
  readonly rpm?: number;
  readonly fullThrottle?: boolean;
}

const ADULT = 85;
/** Where the helm reaches the engine, m. */
const HELM = 0.6;
/** Wh and kg. */
export const BATTERY = { energyWh: 2000, mass: 20 };
/** Share of the tank or the charge. */
export const FILL = 0.95;

/** All that was measured of a boat, slowest first. */
export function pointsOf(check: string): readonly MeasuredPoint[] {
  const { points, calibration } = checkOf(check).inputs;
  if (recordOf(check).drive!.kind === 'electric') {
    return ((points ?? calibration) as { v_kn: number; P_in_W: number }[]).map(({ v_kn, P_in_W }) => ({
      check,
      speed: v_kn * KNOT,
      flow: P_in_W,
    }));
  }
  const petrol = points as { v_kmh: number; rpm: number; L_per_h?: number }[];
  return petrol.map(({ v_kmh, rpm, L_per_h }, i) => ({
    check,
    speed: v_kmh * KMH,
    rpm,
    ...(L_per_h !== undefined && { flow: (L_per_h * PETROL_DENSITY) / HOUR }),
    ...(i === petrol.length - 1 && { fullThrottle: true }),
  }));
}

/** A helm beside the engine and a full tank or battery. */
export const HELM_ALONE: Load = {
  items: [{ id: 'helm', kind: 'adult', mass: ADULT, at: { x: HELM, y: 0 }, helm: true }],
  fill: FILL,
  fillKnownBy: 'measured',
};

/** The boat at its measured mass and balance with a helm and a full tank, its plate read and generous. */
export function loadedAsMeasured({ hull, drive, settings }: BoatRecord): Craft {
  const { mass, lcg } = settings.trial!;
  const bare = craftOf(hull, drive!);
  const at = { x: lcg, y: 0 };
  const store: Craft['store'] =
    bare.store.kind === 'tank'
      ? { kind: 'tank', tanks: bare.store.tanks.map((tank) => ({ ...tank, at })) }
      : { kind: 'battery', batteries: bare.store.batteries.map((one) => ({ ...one, ...BATTERY, at })) };
  const carried = store.kind === 'tank' ? fuelMass(store.tanks, FILL) + store.tanks[0]!.emptyMass : BATTERY.mass;
  const rest = mass - ADULT - carried - drive!.mass;
  const loaded: Hull = {
    ...hull,
    mass: rest,
    // Balances the engine at the transom and the helm beside it.
    centre: { x: lcg + (drive!.mass * (lcg - hull.engine.x) + ADULT * (lcg - HELM)) / rest, y: 0 },
    plate: {
      scheme: 'eu',
      maxLoad: 1000,
      persons: 8,
      maxPower: drive!.ratedPower,
      maxEngineMass: drive!.mass,
      category: 'C',
    },
  };
  return { ...bare, hull: loaded, store };
}
