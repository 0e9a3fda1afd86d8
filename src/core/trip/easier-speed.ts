import { fuelAllows } from './fuel-allows.ts';
import type { FuelVerdict } from './fuel-verdict.ts';
import type { Prepared } from './prepare.ts';

/** Slower than this is no advice, m/s. */
const LEAST = 1;
const STEP = 0.9;

/**
 * The fastest speed through the water, in steps of a tenth, that betters what fuel or charge says of the trip, no leg
 * faster than planned; undefined where no speed does. m/s.
 */
export function easierSpeed(prepared: Prepared, fuel: FuelVerdict): number | undefined {
  const wanted = fuel.verdict === 'no-go' ? 'marginal' : 'go';
  const fastest = fuel.run.sailed.reduce((most, s) => Math.max(most, s.speed), 0);
  for (let cap = fastest * STEP; cap >= LEAST; cap *= STEP) {
    const stretches = prepared.stretches.map((s, i) => ({ ...s, speed: Math.min(fuel.run.sailed[i]!.speed, cap) }));
    if (fuelAllows({ ...prepared, stretches }, {}, wanted, fuel).holds) return cap;
  }
  return undefined;
}
