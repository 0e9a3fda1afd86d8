import { FULL_FILL } from '../drive/tank.ts';
import { smallestHolding } from './bisect.ts';
import { Edge } from './edge.ts';
import { fuelAllows, knownToAllow } from './fuel-allows.ts';
import type { FuelVerdict } from './fuel-verdict.ts';
import type { Prepared } from './prepare.ts';

/** Share of capacity to which this store is filled. */
export function fullFill(prepared: Prepared): number {
  return prepared.burns ? FULL_FILL : 1;
}

const STEP = 0.005;

/**
 * Least share of capacity, its own weight counted, with which fuel or charge makes this trip a go; undefined where a
 * full tank or battery is not enough. To 0.5 %.
 */
export function fillNeeded(prepared: Prepared, fuel: FuelVerdict, humpSpeed: number | undefined): number | undefined {
  const { spread } = fuel;
  const full = fullFill(prepared);
  // Turned over: less in the tank is more of what the edge is sought in.
  const edge = new Edge((less) => fuelAllows(prepared, { fill: -less, spread, humpSpeed }, 'go', fuel));
  if (prepared.trip.load.fill !== undefined) edge.learn(-fuel.run.scenario.fill, knownToAllow(fuel, 'go'));
  if (edge.holds(-full)) {
    edge.closeIn(-full, 0, { within: { low: -full, high: 0, step: STEP }, guess: -fillFor(prepared, fuel) });
  }
  return smallestHolding((fill) => edge.holds(-fill), 0, full, STEP);
}

/** The fill at which what is there would just do if the need stayed as it is; a first guess. */
export function fillFor(prepared: Prepared, fuel: FuelVerdict): number {
  const { slack = 0 } = knownToAllow(fuel, fuel.verdict === 'no-go' ? 'marginal' : 'go');
  return fuel.run.scenario.fill - (fuel.usable * (1 - Math.exp(-slack))) / prepared.full;
}
