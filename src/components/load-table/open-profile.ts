import type { Calibration, Drive } from '../../core/craft/shapes.ts';
import type { Fit } from '../../core/trials/fit-shapes.ts';
import type { BoatProfile } from '../../core/trials/shapes.ts';
import { problemText } from '../words/en-problems.ts';

/** A measured boat, its runs fitted anew. */
export interface MeasuredBoat {
  readonly profile: BoatProfile;
  readonly fit: Fit;
  /** Undefined where no run counts. */
  calibrationOf(drive: Drive): Calibration | undefined;
}

/** Opens a measured boat, or says why not; `today` is an ISO date. What reads and fits is loaded only here. */
export async function openProfile(
  text: string,
  today: string,
): Promise<{ readonly boat: MeasuredBoat } | { readonly refused: readonly string[] }> {
  const [{ readProfile }, { fitTrials }, { calibrationFor }] = await Promise.all([
    import('../../core/files/profile-file.ts'),
    import('../../core/trials/fit.ts'),
    import('../../core/trials/calibrated.ts'),
  ]);
  const read = readProfile(text);
  if (!read.ok) return { refused: read.problems.slice(0, 3).map((problem) => `${problemText(problem)}.`) };
  const profile = read.value;
  const fit = fitTrials(profile.trials);
  return {
    boat: { profile, fit, calibrationOf: (drive) => calibrationFor(profile.trials, fit, drive, today) },
  };
}
