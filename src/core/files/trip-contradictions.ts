import type { Craft, Hull } from '../craft/shapes.ts';
import type { Load } from '../load/shapes.ts';
import type { Trip } from '../trip/shapes.ts';
import type { Problem } from '../units/result.ts';

/** Fields that are sound each on its own but do not fit together. */
export function contradictions({ craft, load }: Trip): Problem[] {
  return [...hullProblems(craft.hull), ...driveProblems(craft), ...loadProblems(load, craft.hull)];
}

function hullProblems({ length, wettedLength, beam, planingBeam, stations }: Hull): Problem[] {
  const problems: Problem[] = [];
  if (wettedLength > length) {
    const message = `The wetted length must be at most the length of the hull, ${length} m`;
    problems.push({ code: 'too-large', path: 'craft.hull.wettedLength', message, limit: length });
  }
  if (planingBeam > beam) {
    const message = `The planing beam must be at most the beam of the hull, ${beam} m`;
    problems.push({ code: 'too-large', path: 'craft.hull.planingBeam', message, limit: beam });
  }
  for (const index of repeated(stations)) {
    const message = `Two places aboard have the id ${JSON.stringify(stations[index]!.id)}`;
    problems.push({ code: 'duplicate', path: `craft.hull.stations.${index}.id`, message });
  }
  return problems;
}

/** Pitch over diameter: the propeller series is known from 0.5 to 1.4, a little more is left to its own warning. */
const PITCH_RATIOS = [0.4, 1.6] as const;

function driveProblems({ drive, store, calibration }: Craft): Problem[] {
  const problems: Problem[] = [];
  const { diameter, pitch } = drive.propeller;
  const [least, most] = PITCH_RATIOS;
  if (pitch < least * diameter || pitch > most * diameter) {
    const message = `The pitch of the propeller must be between ${least} and ${most} times its diameter`;
    const limit = (pitch < least * diameter ? least : most) * diameter;
    problems.push({ code: 'out-of-range', path: 'craft.drive.propeller.pitch', message, limit });
  }
  if ((drive.kind === 'petrol') !== (store.kind === 'tank')) {
    const message =
      drive.kind === 'petrol'
        ? 'A petrol engine needs a tank, not a battery'
        : 'An electric motor needs a battery, not a tank';
    problems.push({ code: 'wrong-store', path: 'craft.store.kind', message });
  }
  if (store.kind === 'tank') {
    store.tanks.forEach(({ capacityL, unusableL }, index) => {
      if (unusableL <= capacityL) return;
      const message = `The unusable rest of tank ${index + 1} must be at most its capacity, ${capacityL} L`;
      problems.push({ code: 'too-large', path: `craft.store.tanks.${index}.unusableL`, message, limit: capacityL });
    });
  }
  if (calibration && !describesSpread(calibration.covariance)) {
    const message = 'The covariance of the calibration must be symmetric, with no correlation beyond 1';
    problems.push({ code: 'invalid', path: 'craft.calibration.covariance', message });
  }
  return problems;
}

/** Symmetric, no negative variance, no correlation beyond 1; rounding of a written file left out. */
function describesSpread(covariance: readonly (readonly number[])[]): boolean {
  const rounding = 1 + 1e-6;
  return covariance.every((row, i) =>
    row.every((value, j) => {
      const variances = row[i]! * covariance[j]![j]!;
      const mirrored = covariance[j]![i]!;
      return (
        row[i]! >= 0 &&
        value * value <= variances * rounding &&
        Math.abs(value - mirrored) <= 1e-6 * Math.sqrt(Math.max(variances, 0))
      );
    }),
  );
}

function loadProblems({ items }: Load, { stations }: Hull): Problem[] {
  const problems: Problem[] = [];
  for (const index of repeated(items)) {
    const message = `Two items have the id ${JSON.stringify(items[index]!.id)}`;
    problems.push({ code: 'duplicate', path: `load.items.${index}.id`, message });
  }
  const places = new Set(stations.map((station) => station.id));
  const helms: number[] = [];
  items.forEach(({ station, helm, kind }, index) => {
    if (station !== undefined && !places.has(station)) {
      const message = `Item ${index + 1} sits at ${JSON.stringify(station)}, a place this hull does not have`;
      problems.push({ code: 'no-such-station', path: `load.items.${index}.station`, message });
    }
    if (helm && (kind === 'gear' || kind === 'dog')) {
      const message = `Item ${index + 1} is at the helm and not a person`;
      problems.push({ code: 'helm-not-person', path: `load.items.${index}.helm`, message });
    }
    if (helm) helms.push(index);
  });
  for (const index of helms.slice(1)) {
    const message = `Item ${index + 1} is at the helm, and so is item ${helms[0]! + 1}`;
    problems.push({ code: 'two-helms', path: `load.items.${index}.helm`, message });
  }
  return problems;
}

/** Indexes of entries whose id an earlier entry has. */
function repeated(entries: readonly { readonly id: string }[]): number[] {
  const seen = new Set<string>();
  return entries.flatMap(({ id }, index) => {
    if (seen.has(id)) return [index];
    seen.add(id);
    return [];
  });
}
