import type { LoadBalance } from '../load/balance.ts';
import { capacityOf, type RuleName } from '../load/capacity.ts';
import { largestHolding } from './bisect.ts';
import { type Answer, Edge } from './edge.ts';
import type { FloatLimits } from './floating.ts';
import { fuelAllows, knownToAllow } from './fuel-allows.ts';
import type { FuelVerdict } from './fuel-verdict.ts';
import { type Holding, verdictFrom } from './holding.ts';
import type { Prepared } from './prepare.ts';
import type { Payload, Verdict } from './shapes.ts';

/** No small open boat is asked to take more than this on top, kg. */
const SEARCH_LIMIT = 600;
const STEP = 0.5;

/** What the boat says of more mass. */
export interface PayloadAsked {
  readonly holds: Holding;
  readonly floats: FloatLimits;
  readonly humpSpeed: number | undefined;
}

/**
 * Largest extra mass, at the boat's own centre of gravity, for which plate, floating, planing (where the plan planes),
 * planned speeds and reserve all still hold, and which of them binds. Negative: that much has to stay ashore. Never more
 * than the plate; for a boat without one, than the smallest of the rules that cover its form and of what its record says
 * of floating; not known where none of them gives a limit, or the plate was not read.
 */
export function payload(
  prepared: Prepared,
  fuel: FuelVerdict,
  balance: LoadBalance,
  { holds, floats, humpSpeed }: PayloadAsked,
): Payload {
  const { counted } = balance;
  const given = limitOf(prepared, fuel, balance);
  if (!given) return { extra: undefined, binds: 'no-plate', counted };
  const allowed = counted + given.spare;
  const least = -balance.peopleAndGear;
  const top = Math.min(given.spare, SEARCH_LIMIT);
  let extra = top;
  let binds: Payload['binds'] = top === SEARCH_LIMIT ? 'search-limit' : given.binds;
  const afloat = floats.most(wantedAfter(floats.verdict(0), () => floats.verdict(least) === 'go'));
  if (afloat.extra < extra) ({ extra, binds } = afloat);
  const limit = (name: Payload['binds'], ask: (kg: number) => Answer, now: Answer): void => {
    if (extra <= least) return;
    const edge = new Edge(ask);
    edge.learn(0, now);
    if (edge.holds(extra)) return;
    const guess = (now.slack ?? 0) * fuel.run.sailed[0]!.afloat.mass;
    edge.closeIn(least, extra, { within: { low: least, high: extra, step: STEP }, guess });
    extra = largestHolding((kg) => edge.holds(kg), least, extra, STEP) ?? least;
    binds = name;
  };
  for (const name of ['planing', 'speed'] as const) {
    const allows = name === 'planing' ? holds.planes : holds.speeds;
    const wanted = wantedAfter(
      verdictFrom((level) => allows(level, 0)),
      () => allows('go', least).holds,
    );
    limit(name, (kg) => allows(wanted, kg), allows(wanted, 0));
  }
  // The spread grows with mass, so it is propagated anew for each.
  const laden = (kg: number, level: 'go' | 'marginal'): Answer =>
    fuelAllows(prepared, { tweak: { extraMass: kg, use: 1 }, humpSpeed }, level, fuel);
  const wanted = wantedAfter(fuel.verdict, () => laden(least, 'go').holds);
  const heavier = (kg: number): Answer => laden(kg, wanted);
  limit('reserve', heavier, knownToAllow(fuel, wanted));
  return { extra: Math.max(extra, least), binds, counted, allowed };
}

/** What lets no more than so much come aboard, kg, before the boat is asked; undefined: nothing known. */
function limitOf(
  { trip, density, storeMass }: Prepared,
  { run }: FuelVerdict,
  balance: LoadBalance,
): { readonly spare: number; readonly binds: Payload['binds'] } | undefined {
  const { plate } = trip.craft.hull;
  if (plate === undefined) return undefined;
  if (plate !== 'none') {
    if (plate.maxLoad === undefined) return undefined;
    const spare = plate.maxLoad - balance.counted;
    const over = plate.persons === undefined ? 0 : balance.persons - plate.persons;
    if (over <= 0) return { spare, binds: 'plate' };
    // The lightest who have to stay ashore.
    const masses = trip.load.items.filter(({ kind }) => kind === 'adult' || kind === 'child').map(({ mass }) => mass);
    const ashore = masses
      .sort((a, b) => a - b)
      .slice(0, over)
      .reduce((sum, mass) => sum + mass, 0);
    return -ashore < spare ? { spare: -ashore, binds: 'persons' } : { spare, binds: 'plate' };
  }
  const { leading } = capacityOf(trip.craft, trip.load, { storeMass: storeMass(run.scenario.weighs), density });
  return leading && { spare: leading.spare!, binds: BY_RULE[leading.rule] ?? 'rule' };
}

const BY_RULE: Partial<Record<RuleName, Payload['binds']>> = {
  tubes: 'floating',
  freeboard: 'freeboard',
  'one-side': 'stability',
};

/**
 * What less weight could make a go is held against a go, so that a heavier crew never gains; where even the empty boat
 * would be marginal, more must only not make it a no-go.
 */
function wantedAfter(now: Verdict, mends: () => boolean): 'go' | 'marginal' {
  return now === 'go' || mends() ? 'go' : 'marginal';
}
