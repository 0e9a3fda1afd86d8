import type { LoadBalance } from '../load/balance.ts';
import { largestHolding } from './bisect.ts';
import type { Carrying } from './carrying.ts';
import { type FuelVerdict, fuelVerdict } from './fuel-verdict.ts';
import type { Prepared } from './prepare.ts';
import type { Payload } from './shapes.ts';

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
  carries: Carrying,
  humpSpeed: number | undefined,
): Payload {
  const { plate } = prepared.trip.craft.hull;
  const allowed = plate && plate !== 'none' ? plate.maxLoad : undefined;
  const { counted } = balance;
  if (allowed === undefined) return { extra: undefined, binds: 'no-plate', counted };
  const least = -balance.peopleAndGear;
  // A bad case that fails already is not mended by an ounce; then the reserve alone is asked for.
  const wanted = fuel.verdict === 'go' ? 'go' : 'marginal';
  const enough = (extra: number): boolean => {
    const { verdict } = fuelVerdict(prepared, { tweak: { extraMass: extra, use: 1 }, spread: fuel.spread, humpSpeed });
    return verdict === 'go' || verdict === wanted;
  };
  const top = Math.min(allowed - counted, SEARCH_LIMIT);
  let extra = top;
  let binds: Payload['binds'] = top === SEARCH_LIMIT ? 'search-limit' : 'plate';
  const tests = [
    ['planing', carries.planes],
    ['speed', carries.holds],
    ['reserve', enough],
  ] as const;
  for (const [name, holds] of tests) {
    if (extra <= least || holds(extra)) continue;
    extra = largestHolding(holds, least, extra, STEP) ?? least;
    binds = name;
  }
  return { extra: Math.max(extra, least), binds, counted, allowed };
}
