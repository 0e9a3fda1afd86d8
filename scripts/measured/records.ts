import boatRecords from '../../shared/checks/measured-boats.json' with { type: 'json' };
import checkRecords from '../../shared/checks/measured-checks.json' with { type: 'json' };
import type { Calibration, Craft, Drive, Hull } from '../../src/core/craft/shapes.ts';
import { type Afloat, type Boat, boatOf } from '../../src/core/curve/boat.ts';
import { PRIOR_MEANS } from '../../src/core/curve/factors.ts';

/** All-up mass, kg, and centre of gravity, m. */
export interface Setting {
  readonly mass: number;
  readonly lcg: number;
}

/** What was published of a boat and what had to be assumed. */
export interface BoatRecord {
  readonly check: string;
  readonly hull: Hull;
  readonly drive?: Drive;
  readonly drives?: Readonly<Record<string, Drive>>;
  readonly legDragArea?: number;
  readonly settings: Readonly<Record<string, Setting>>;
}

// biome-ignore lint/suspicious/noExplicitAny: every check has inputs of its own
export type Check = { id: string; source: string; inputs: any; expected: any; tolerance: any };

export const checks = checkRecords as unknown as readonly Check[];
const boats = boatRecords.boats as unknown as readonly BoatRecord[];

/** Petrol boats with consumption at several speeds, and electric ones with the power drawn. */
export const PETROL_BOATS = ['P-3.75A', 'P-3.75B', 'P-4.4-40', 'P-4.75-60', 'P-4.8-60DI', 'P-4.8-60C'] as const;
export const ELECTRIC_BOATS = ['E-pod', 'E-pram', 'E-row'] as const;

export function checkOf(id: string): Check {
  return checks.find((check) => check.id === id)!;
}

export function recordOf(id: string): BoatRecord {
  return boats.find((boat) => boat.check === id)!;
}

export function craftOf(hull: Hull, drive: Drive): Craft {
  const at = { x: 0.4, y: 0 };
  const store: Craft['store'] =
    drive.kind === 'petrol'
      ? { kind: 'tank', tanks: [{ name: '', capacityL: 25, emptyMass: 5, unusableL: 1, fixed: false, at }] }
      : // Large, so that it limits nothing: what goes into the motor was measured.
        {
          kind: 'battery',
          batteries: [{ name: '', chemistry: 'lfp', energyWh: 1e5, voltage: 24, health: 1, mass: 30, at }],
        };
  return { hull, drive, store };
}

/** A boat as nobody measured it, and the same with one factor moved. */
export function unmeasured(craft: Craft, factor?: number, by = 0): Boat {
  if (factor === undefined) return boatOf(craft, 'sea', 20);
  const factors = [...PRIOR_MEANS];
  factors[factor] = factors[factor]! + by;
  const covariance = factors.map(() => factors.map(() => 0));
  const calibration: Calibration = { factors, covariance, runs: 0 };
  return boatOf({ ...craft, calibration }, 'sea', 20);
}

export function afloatOf({ mass, lcg }: Setting, hull: Hull): Afloat {
  return { mass, lcg, airArea: hull.airArea };
}
