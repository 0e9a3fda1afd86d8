import type { LoadBalance } from '../load/balance.ts';
import { largestHolding } from './bisect.ts';
import { Edge } from './edge.ts';
import { type FuelVerdict, fuelAllows, knownToAllow } from './fuel-verdict.ts';
import { type Holding, worse } from './holding.ts';
import type { Prepared } from './prepare.ts';
import type { Payload, Verdict } from './shapes.ts';

/** No small open boat is asked to take more than this on top, kg. */
const SEARCH_LIMIT = 600;
const STEP = 0.5;

/**
 * Largest extra mass, at the boat's own centre of gravity, for which plate, planing (where the plan planes), planned
 * speeds and reserve all still hold, and which of them binds. Negative: that much has to stay ashore. Never more than
 * the plate; without a plate not known.
 */
export function payload(
  prepared: Prepared,
  fuel: FuelVerdict,
  balance: LoadBalance,
  holds: Holding,
  humpSpeed: number | undefined,
): Payload {
  const { plate } = prepared.trip.craft.hull;
  const allowed = plate && plate !== 'none' ? plate.maxLoad : undefined;
  const { counted } = balance;
  if (allowed === undefined) return { extra: undefined, binds: 'no-plate', counted };
  const least = -balance.peopleAndGear;
  const top = Math.min(allowed - counted, SEARCH_LIMIT);
  let extra = top;
  let binds: Payload['binds'] = top === SEARCH_LIMIT ? 'search-limit' : 'plate';
  const limit = (name: Payload['binds'], passes: (kg: number) => boolean, closeIn?: () => void): void => {
    if (extra <= least || passes(extra)) return;
    closeIn?.();
    extra = largestHolding(passes, least, extra, STEP) ?? least;
    binds = name;
  };
  limit('planing', noWorse(holds.planes, wantedAfter(holds.planes(0))));
  limit('speed', noWorse(holds.speeds, wantedAfter(holds.speeds(0))));
  const wanted = wantedAfter(fuel.verdict);
  // The spread grows with mass, so it is propagated anew for each.
  const edge = new Edge((kg) => fuelAllows(prepared, { tweak: { extraMass: kg, use: 1 }, humpSpeed }, wanted));
  const now = knownToAllow(fuel, wanted);
  edge.learn(0, now);
  const guess = (now.slack ?? 0) * fuel.run.sailed[0]!.afloat.mass;
  limit(
    'reserve',
    (kg) => edge.holds(kg),
    () => edge.closeIn(least, extra, { step: STEP, guess }),
  );
  return { extra: Math.max(extra, least), binds, counted, allowed };
}

/** What is marginal without anything extra is not mended by an ounce less: then it must only not become a no-go. */
function wantedAfter(now: Verdict): 'go' | 'marginal' {
  return now === 'go' ? 'go' : 'marginal';
}

function noWorse(verdict: (kg: number) => Verdict, wanted: Verdict): (kg: number) => boolean {
  return (kg) => worse(verdict(kg), wanted) === wanted;
}
