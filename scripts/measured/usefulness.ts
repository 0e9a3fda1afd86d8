import type { Craft } from '../../src/core/craft/shapes.ts';
import { usableFuel } from '../../src/core/drive/tank.ts';
import type { WatersFile } from '../../src/core/route/shapes.ts';
import { prepareWaters } from '../../src/core/route/waters.ts';
import { planTrip } from '../../src/core/trip/plan-trip.ts';
import type { Trip, Verdict } from '../../src/core/trip/shapes.ts';
import { BATTERY, FILL, HELM_ALONE, loadedAsMeasured, type MeasuredPoint, pointsOf } from './loaded.ts';
import { ELECTRIC_BOATS, PETROL_BOATS, recordOf } from './records.ts';

/** Shares of what is usable that the measured curve says a trip takes: safe ones, and ones that break a third's reserve. */
const SAFE = [0.2, 0.3, 0.4, 0.5] as const;
const UNSAFE = [0.67, 0.7, 0.8, 0.9, 1, 1.2] as const;

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

export const FROM = { lat: 45, lon: -30 };

/** One small islet far off, so that the waters are known and open. */
const OPEN: WatersFile = {
  type: 'FeatureCollection',
  bbox: [-36, 40, -24, 50],
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
      const points = consumedAt(check);
      return [
        answered(check, 'measured speeds', points.slice(0, -1)),
        answered(check, 'full throttle', points.slice(-1)),
      ];
    }),
    ...ELECTRIC_BOATS.map((check) => answered(check, 'measured speeds', consumedAt(check))),
  ];
}

function consumedAt(check: string): readonly MeasuredPoint[] {
  return pointsOf(check).filter(({ flow }) => flow !== undefined);
}

function answered(check: string, at: Usefulness['at'], points: readonly MeasuredPoint[]): Usefulness {
  const answersTo = (shares: readonly number[]): Answers => {
    const verdicts = points.flatMap((point) => shares.map((share) => verdictOf(point, share)));
    const count = (verdict: Verdict) => verdicts.filter((one) => one === verdict).length;
    return { trips: verdicts.length, go: count('go'), marginal: count('marginal'), noGo: count('no-go') };
  };
  return { check, at, speeds: points.length, safe: answersTo(SAFE), unsafe: answersTo(UNSAFE) };
}

export const waters = prepareWaters(OPEN);

/** The answer to a trip that takes `share` of what is usable by the measured consumption. */
export function verdictOf({ check, speed, flow = Number.NaN }: MeasuredPoint, share: number): Verdict {
  const craft = loadedAsMeasured(recordOf(check));
  const usable = usableOf(craft);
  const oneWay = (share * usable * speed) / flow / 2;
  const trip: Trip = {
    version: 1,
    craft,
    load: HELM_ALONE,
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

/** Share of a full battery that stays in it. */
const FLOOR = 0.1;

/** kg or J: by the plan's own reckoning of the tank, and of the battery where nothing is lost to its rate. */
export function usableOf({ store }: Craft): number {
  if (store.kind === 'tank') return usableFuel(store.tanks, FILL);
  return BATTERY.energyWh * 3600 * (FILL - FLOOR);
}
