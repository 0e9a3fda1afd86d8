import type { Craft, Hull } from '../../src/core/craft/shapes.ts';
import { fuelMass, usableFuel } from '../../src/core/drive/tank.ts';
import type { WatersFile } from '../../src/core/route/shapes.ts';
import { prepareWaters } from '../../src/core/route/waters.ts';
import { planTrip } from '../../src/core/trip/plan-trip.ts';
import type { Trip, Verdict } from '../../src/core/trip/shapes.ts';
import { PETROL_DENSITY } from '../../src/core/units/constants.ts';
import { HOUR, KMH, KNOT } from '../../src/core/units/convert.ts';
import { type BoatRecord, checkOf, craftOf, ELECTRIC_BOATS, PETROL_BOATS, recordOf } from './records.ts';

/** Shares of what is usable that the measured curve says a trip takes: safe ones, and ones that break a third's reserve. */
export const SAFE = [0.2, 0.3, 0.4, 0.5] as const;
export const UNSAFE = [0.7, 0.8, 0.9, 1, 1.2] as const;

/** How the answers fall. */
export interface Answers {
  readonly trips: number;
  readonly go: number;
  readonly marginal: number;
  readonly noGo: number;
}

/** Trips at the measured speeds of one boat, those flat out apart. */
export interface Usefulness {
  readonly check: string;
  readonly at: 'measured speeds' | 'full throttle';
  readonly speeds: number;
  readonly safe: Answers;
  readonly unsafe: Answers;
}

interface MeasuredPoint {
  readonly check: string;
  /** m/s, and kg/s or W. */
  readonly speed: number;
  readonly flow: number;
}

const ADULT = 85;
/** Where the helm reaches the engine, m. */
const HELM = 0.6;
const BATTERY = { energyWh: 2000, mass: 20 };
const FILL = 0.95;
const FROM = { lat: 45, lon: -30 };

/** One small islet far off, so that the waters are known and open. */
const OPEN: WatersFile = {
  type: 'FeatureCollection',
  bbox: [-31, 40, -29, 50],
  features: [
    {
      type: 'Feature',
      properties: { kind: 'land', name: 'Islet' },
      geometry: {
        type: 'Polygon',
        coordinates: [
          [
            [-29.2, 49.9],
            [-29.1, 49.9],
            [-29.1, 49.95],
            [-29.2, 49.9],
          ],
        ],
      },
    },
  ],
};

/**
 * Trips out and home at every measured speed, so long that by the measured consumption they take a given share of what is
 * usable; planned as nobody measured the boat, with wind, stream and sea known to be calm and the fill measured. Neither
 * manoeuvring nor corners are added, so that the measured consumption alone says what is safe.
 */
export function usefulness(): readonly Usefulness[] {
  return [
    ...PETROL_BOATS.flatMap((check) => {
      const points = petrolPoints(check);
      return [
        answered(check, 'measured speeds', points.slice(0, -1)),
        answered(check, 'full throttle', points.slice(-1)),
      ];
    }),
    ...ELECTRIC_BOATS.map((check) => answered(check, 'measured speeds', electricPoints(check))),
  ];
}

function petrolPoints(check: string): MeasuredPoint[] {
  const points = checkOf(check).inputs.points as { v_kmh: number; L_per_h?: number }[];
  return points.flatMap(({ v_kmh, L_per_h }) =>
    L_per_h === undefined ? [] : [{ check, speed: v_kmh * KMH, flow: (L_per_h * PETROL_DENSITY) / HOUR }],
  );
}

function electricPoints(check: string): MeasuredPoint[] {
  const { points, calibration } = checkOf(check).inputs;
  return ((points ?? calibration) as { v_kn: number; P_in_W: number }[]).map(({ v_kn, P_in_W }) => ({
    check,
    speed: v_kn * KNOT,
    flow: P_in_W,
  }));
}

function answered(check: string, at: Usefulness['at'], points: readonly MeasuredPoint[]): Usefulness {
  const answersTo = (shares: readonly number[]): Answers => {
    const verdicts = points.flatMap((point) => shares.map((share) => verdictOf(point, share)));
    const count = (verdict: Verdict) => verdicts.filter((one) => one === verdict).length;
    return { trips: verdicts.length, go: count('go'), marginal: count('marginal'), noGo: count('no-go') };
  };
  return { check, at, speeds: points.length, safe: answersTo(SAFE), unsafe: answersTo(UNSAFE) };
}

const waters = prepareWaters(OPEN);

/** The answer to a trip that takes `share` of what is usable by the measured consumption. */
export function verdictOf({ check, speed, flow }: MeasuredPoint, share: number): Verdict {
  const craft = loadedAsMeasured(recordOf(check));
  const usable = usableOf(craft);
  const oneWay = (share * usable * speed) / flow / 2;
  const trip: Trip = {
    version: 1,
    craft,
    load: {
      items: [{ id: 'helm', kind: 'adult', mass: ADULT, at: { x: HELM, y: 0 }, helm: true }],
      fill: FILL,
      fillKnownBy: 'measured',
    },
    route: {
      shape: 'out-and-home',
      // A degree of the meridian at 45 degrees.
      waypoints: [FROM, { ...FROM, lat: FROM.lat - oneWay / 111_130 }],
      speed,
    },
    conditions: { wind: 'calm', stream: 'slack', sea: 'calm', water: 'sea', batteryTemperatureC: 20 },
    policy: { reserve: [{ kind: 'thirds' }], manoeuvring: 0, drawnFactor: 1 },
  };
  const plan = planTrip(trip, waters, { quick: true });
  if (!plan.ok) throw new Error(plan.problems.map(({ message }) => message).join(' '));
  return plan.value.verdict;
}

/** kg or J: by the plan's own reckoning of the tank, and of the battery where nothing is lost to its rate. */
function usableOf({ store }: Craft): number {
  if (store.kind === 'tank') return usableFuel(store.tanks, FILL);
  return BATTERY.energyWh * 3600 * FILL * 0.9;
}

/** The boat at its measured mass and balance with a helm and a full tank, its plate read and generous. */
function loadedAsMeasured({ hull, drive, settings }: BoatRecord): Craft {
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
