import type { Craft, Drive } from '../craft/shapes.ts';
import { type Boat, boatOf } from '../curve/boat.ts';
import { FACTORS, FOULING, PRIOR_MEANS, priorDeviations, RATING_SPREAD } from '../curve/factors.ts';
import type { FactorFound } from './fit-shapes.ts';
import type { Setup, Trials } from './shapes.ts';

/** One unknown of the fit with its prior and the bounds of what is credible. */
export interface Parameter {
  readonly factor: FactorFound['factor'];
  readonly of: string;
  readonly mean: number;
  readonly deviation: number;
  readonly least: number;
  readonly most: number;
}

/**
 * Factors of the hull are shared by all runs; consumption, friction and full-throttle power belong to an engine, and
 * the pitch to each engine with its propeller.
 */
export interface Parameters {
  readonly list: readonly Parameter[];
  /** Where the seven `FACTORS` and the power of a setup stand in `list`. */
  indexesOf(setup: Setup): { readonly factors: readonly number[]; readonly power: number };
}

/** Bounds of hull factors (method of the fit, derived): beyond them the reading is wrong, not the boat. */
const HULL_BOUNDS = [
  [0.5, 2],
  [0.6, 1.6],
  [0, 4],
  [-0.25, 0.25],
] as const;
const PITCH_BOUND = 0.25;
const FUEL_BOUNDS = [0.4, 2.5] as const;
const FRICTION_BOUNDS = { petrol: [-0.35, 1.5], electric: [-0.008, 0.05] } as const;
const POWER_BOUND = 0.3;

export function parametersOf(trials: Trials): Parameters {
  const list: Parameter[] = [];
  const places = new Map<string, number>();
  const add = (parameter: Parameter): void => {
    places.set(`${parameter.factor} ${parameter.of}`, list.length);
    list.push(parameter);
  };
  const dirt = FOULING[trials.fouling ?? 'clean'];
  const first = priorDeviations(trials.setups[0]!.drive);
  HULL_BOUNDS.forEach(([least, most], i) => {
    const isFactor = i < 3;
    const mean = PRIOR_MEANS[i]! * (isFactor ? dirt : 1);
    // Half of what fouling adds is open, see `factorsOf`.
    const deviation = isFactor ? Math.hypot(first[i]! * dirt, 0.5 * (dirt - 1)) : first[i]!;
    add({ factor: FACTORS[i]!, of: 'hull', mean, deviation, least, most: isFactor ? most * dirt : most });
  });
  for (const { drive } of trials.setups) {
    if (places.has(`fuel ${engineKey(drive)}`)) continue;
    const deviations = priorDeviations(drive);
    const of = engineKey(drive);
    const [least, most] = FRICTION_BOUNDS[drive.kind];
    add({
      factor: 'fuel',
      of,
      mean: PRIOR_MEANS[5]!,
      deviation: deviations[5]!,
      least: FUEL_BOUNDS[0],
      most: FUEL_BOUNDS[1],
    });
    add({ factor: 'friction', of, mean: PRIOR_MEANS[6]!, deviation: deviations[6]!, least, most });
    // Of a motor what the battery gives is not fitted: it is held to its rating by its electronics.
    if (drive.kind === 'petrol') {
      add({ factor: 'power', of, mean: 0, deviation: RATING_SPREAD, least: -POWER_BOUND, most: POWER_BOUND });
    }
  }
  for (const { id, drive } of trials.setups) {
    const bound = PITCH_BOUND * drive.propeller.pitch;
    const deviation = priorDeviations(drive)[4]!;
    add({ factor: 'pitchShift', of: id, mean: PRIOR_MEANS[4]!, deviation, least: -bound, most: bound });
  }
  return {
    list,
    indexesOf: ({ id, drive }) => {
      const engine = engineKey(drive);
      const owner = {
        kd: 'hull',
        kp: 'hull',
        kh: 'hull',
        lcgShift: 'hull',
        pitchShift: id,
        fuel: engine,
        friction: engine,
      };
      return {
        factors: FACTORS.map((factor) => places.get(`${factor} ${owner[factor]}`)!),
        power: places.get(`power ${engine}`) ?? -1,
      };
    },
  };
}

/** The same engine with another propeller is still the same engine. */
export function engineKey({ name, kind, ratedPower }: Drive): string {
  return `${name} ${kind} ${Math.round(ratedPower)}`;
}

/** The boat of a setup with these parameter values. */
export function boatWith(trials: Trials, setup: Setup, parameters: Parameters, values: ArrayLike<number>): Boat {
  const { factors, power } = parameters.indexesOf(setup);
  const craft: Craft = {
    hull: trials.hull,
    drive: setup.drive,
    store: setup.store,
    fouling: trials.fouling ?? 'clean',
    calibration: {
      factors: factors.map((i) => values[i]!),
      covariance: [],
      runs: 0,
      fouling: trials.fouling ?? 'clean',
      power: { factor: power < 0 ? 1 : Math.exp(values[power]!), deviation: 0 },
    },
  };
  return boatOf(craft, trials.water, BATTERY_TEMPERATURE);
}

/** Of the battery on a trial day, C (common practice, no source); it moves the flow little. */
const BATTERY_TEMPERATURE = 18;
