import type { Calibration, Craft, Drive } from '../craft/shapes.ts';
import { FACTORS, PRIOR_MEANS, priorDeviations, RATING_SPREAD } from '../curve/factors.ts';
import type { Fit } from './fit-shapes.ts';
import { engineKey } from './parameters.ts';
import type { Trials } from './shapes.ts';

/** What a year does to a boat since its trials: worn propeller, soft tubes, a tired engine (our judgement, no source). */
const YEARLY_SPREAD = 0.05;
const OLDEST_SPREAD = 0.2;
const YEAR = 365.25 * 86_400_000;

/**
 * The calibration of a boat with this drive, on a day (ISO date; absent: the day of the trials). A drive that was not
 * tried keeps what the runs say of the hull, and the priors for itself.
 */
export function calibrationFor(trials: Trials, fit: Fit, drive: Drive, asOf?: string): Calibration | undefined {
  if (fit.counted === 0) return undefined;
  const engine = engineKey(drive);
  const tried = trials.setups.find((setup) => engineKey(setup.drive) === engine && samePropeller(setup.drive, drive));
  const owners = { pitchShift: tried?.id, fuel: engine, friction: engine };
  const priors = priorDeviations(drive);
  const places = FACTORS.map((factor) => {
    const of = factor in owners ? owners[factor as keyof typeof owners] : 'hull';
    return fit.factors.findIndex((found) => found.factor === factor && found.of === of);
  });
  const power = fit.factors.find((found) => found.factor === 'power' && found.of === engine);
  return {
    factors: places.map((place, i) => fit.factors[place]?.value ?? PRIOR_MEANS[i]!),
    covariance: places.map((row, i) =>
      places.map((column, j) => {
        if (row >= 0 && column >= 0) return fit.covariance[row]![column]!;
        return i === j ? priors[i]! ** 2 : 0;
      }),
    ),
    runs: fit.counted,
    ...(fit.tried && { tried: fit.tried }),
    formSpread: Math.hypot(fit.formSpread, ageSpread(fit.lastDay, asOf)),
    power: power
      ? { factor: Math.exp(power.value), deviation: power.deviation }
      : { factor: 1, deviation: RATING_SPREAD },
    fouling: trials.fouling ?? 'clean',
  };
}

/** The craft as its trials show it. One whose hull is not the one measured, or without a run that counts, stays unmeasured. */
export function calibrated(craft: Craft, trials: Trials, fit: Fit, asOf?: string): Craft {
  const { calibration: _, ...plain } = craft;
  if (!sameHull(craft, trials)) return plain;
  const calibration = calibrationFor(trials, fit, craft.drive, asOf);
  return calibration ? { ...plain, calibration } : plain;
}

/** Whether a craft has the hull that was measured; names, plate and places aboard do not count. */
export function sameHull({ hull }: Pick<Craft, 'hull'>, trials: Pick<Trials, 'hull'>): boolean {
  return bodyOf(hull) === bodyOf(trials.hull);
}

function bodyOf({ name: _name, stations: _stations, plate: _plate, ...body }: Craft['hull']): string {
  return JSON.stringify(Object.entries(body).sort(([a], [b]) => (a < b ? -1 : 1)));
}

function samePropeller(a: Drive, b: Drive): boolean {
  return (['diameter', 'pitch', 'blades', 'areaRatio', 'quality'] as const).every(
    (field) => Math.abs(a.propeller[field] - b.propeller[field]) < 1e-6,
  );
}

function ageSpread(lastDay: string | undefined, asOf: string | undefined): number {
  if (asOf === undefined) return 0;
  // Runs of which nobody knows when they were made may be as old as any.
  if (lastDay === undefined) return OLDEST_SPREAD;
  const years = Math.max((Date.parse(asOf) - Date.parse(lastDay)) / YEAR, 0);
  return Number.isFinite(years) ? Math.min(YEARLY_SPREAD * Math.sqrt(years), OLDEST_SPREAD) : OLDEST_SPREAD;
}
