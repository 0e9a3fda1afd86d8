import type { LoadBalance } from '../load/balance.ts';
import { largestHolding } from './bisect.ts';
import { type Answer, Edge } from './edge.ts';
import { floatVerdict, heaviestFloating } from './floating.ts';
import { type FuelVerdict, fuelAllows, knownToAllow } from './fuel-verdict.ts';
import { type Holding, verdictFrom } from './holding.ts';
import type { Prepared } from './prepare.ts';
import type { Payload, Verdict } from './shapes.ts';

/** No small open boat is asked to take more than this on top, kg. */
const SEARCH_LIMIT = 600;
const STEP = 0.5;

/**
 * Largest extra mass, at the boat's own centre of gravity, for which plate, floating, planing (where the plan planes),
 * planned speeds and reserve all still hold, and which of them binds. Negative: that much has to stay ashore. Never more than
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
  const afloat = heaviestFloating(prepared, wantedAfter(floatVerdict(prepared, balance.allUpMass))) - balance.allUpMass;
  if (afloat < extra) {
    extra = afloat;
    binds = 'floating';
  }
  const limit = (name: Payload['binds'], ask: (kg: number) => Answer, now: Answer): void => {
    if (extra <= least) return;
    const edge = new Edge(ask);
    edge.learn(0, now);
    if (edge.holds(extra)) return;
    const guess = (now.slack ?? 0) * fuel.run.sailed[0]!.afloat.mass;
    edge.closeIn(least, extra, { step: STEP, guess });
    extra = largestHolding((kg) => edge.holds(kg), least, extra, STEP) ?? least;
    binds = name;
  };
  for (const name of ['planing', 'speed'] as const) {
    const allows = name === 'planing' ? holds.planes : holds.speeds;
    const wanted = wantedAfter(verdictFrom((level) => allows(level, 0)));
    limit(name, (kg) => allows(wanted, kg), allows(wanted, 0));
  }
  const wanted = wantedAfter(fuel.verdict);
  // The spread grows with mass, so it is propagated anew for each.
  const heavier = (kg: number): Answer => fuelAllows(prepared, { tweak: { extraMass: kg, use: 1 }, humpSpeed }, wanted);
  limit('reserve', heavier, knownToAllow(fuel, wanted));
  return { extra: Math.max(extra, least), binds, counted, allowed };
}

/** What is marginal without anything extra is not mended by an ounce less: then it must only not become a no-go. */
function wantedAfter(now: Verdict): 'go' | 'marginal' {
  return now === 'go' ? 'go' : 'marginal';
}
