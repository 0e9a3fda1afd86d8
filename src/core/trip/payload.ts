import type { LoadBalance } from '../load/balance.ts';
import { largestHolding } from './bisect.ts';
import { type FuelVerdict, fuelVerdict } from './fuel-verdict.ts';
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
  // The spread grows with mass, so it is propagated anew for each.
  const enough = (extra: number): Verdict =>
    fuelVerdict(prepared, { tweak: { extraMass: extra, use: 1 }, humpSpeed }).verdict;
  const top = Math.min(allowed - counted, SEARCH_LIMIT);
  let extra = top;
  let binds: Payload['binds'] = top === SEARCH_LIMIT ? 'search-limit' : 'plate';
  const tests = [
    ['planing', holds.planes(0), holds.planes],
    ['speed', holds.speeds(0), holds.speeds],
    ['reserve', fuel.verdict, enough],
  ] as const;
  for (const [name, now, verdict] of tests) {
    // What is marginal without anything extra is not mended by an ounce less: then it must only not become a no-go.
    const wanted = now === 'go' ? 'go' : 'marginal';
    const passes = (kg: number): boolean => worse(verdict(kg), wanted) === wanted;
    if (extra <= least || passes(extra)) continue;
    extra = largestHolding(passes, least, extra, STEP) ?? least;
    binds = name;
  }
  return { extra: Math.max(extra, least), binds, counted, allowed };
}
