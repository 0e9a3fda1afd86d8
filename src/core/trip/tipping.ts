import type { LoadBalance } from '../load/balance.ts';
import { beaufortOf } from '../water/beaufort.ts';
import { largestHolding } from './bisect.ts';
import { type Answer, Edge } from './edge.ts';
import { fillFor, fullFill } from './fill-needed.ts';
import { type FuelQuestion, type FuelVerdict, fuelAllows, fuelVerdict, knownToAllow } from './fuel-verdict.ts';
import { type Holding, worse } from './holding.ts';
import { categoryOf, FRESH_BREEZE } from './judge-water.ts';
import { givenOf, type Prepared } from './prepare.ts';
import { verdictOf } from './reasons.ts';
import { type Sailed, windOn } from './sail.ts';
import { expected } from './scenario.ts';
import type { Reason, ReasonCode, TippingValue, Verdict } from './shapes.ts';

/** Reasons that fuel, weight or wind can turn; the others stay as they are whatever these do. */
const MOVED: ReadonlySet<ReasonCode> = new Set([
  'reserve-broken',
  'runs-dry',
  'bad-case-dry',
  'nothing-usable',
  'over-plate-load',
  'speed-not-held',
  'speed-uncertain',
  'hump-not-crossed',
  'hump-thin',
  'over-wind-limit',
]);
const RANK = { go: 0, marginal: 1, 'no-go': 2 } as const;
const HEAVIEST = 400;
const HUNGRIEST = 4;
/** Storm force is beyond any plan, m/s. */
const WINDIEST = 25;

interface Knob {
  readonly knob: TippingValue['knob'];
  readonly now: number;
  /** Towards worse, and towards better, how far to look. */
  readonly worse: number;
  readonly better: number;
  readonly step: number;
  /** The plan itself answers for the value now. */
  readonly planned: boolean;
  /** Where it may turn, from the slack of the plan; a first guess. */
  readonly guess: number;
  /** All but fuel and charge. */
  boat(value: number): Verdict;
  question(value: number): FuelQuestion;
}

/**
 * Where the verdict turns, one thing changed at a time: people and gear (kg), every consumption (factor), wind (m/s)
 * and fill (share). A go or marginal trip is turned for the worse, a no-go for the better; a knob that cannot turn it
 * within reason is left out.
 */
export function tippingValues(
  prepared: Prepared,
  fuel: FuelVerdict,
  reasons: readonly Reason[],
  balance: LoadBalance,
  holds: Holding,
  humpSpeed: number | undefined,
): readonly TippingValue[] {
  const standing = verdictOf(reasons.filter((r) => !MOVED.has(r.code)));
  if (standing === 'no-go' || !fuel.run.possible) return [];
  const now = verdictOf(reasons);
  const found: TippingValue[] = [];
  for (const knob of knobs(prepared, fuel, balance, holds)) {
    const turned = turning(prepared, knob, { fuel, standing, now, humpSpeed });
    if (turned) found.push(turned);
  }
  return found;
}

interface Plain {
  readonly fuel: FuelVerdict;
  /** What nothing here moves. */
  readonly standing: Verdict;
  readonly now: Verdict;
  readonly humpSpeed: number | undefined;
}

function turning(prepared: Prepared, knob: Knob, { fuel, standing, now, humpSpeed }: Plain): TippingValue | undefined {
  const asked = (value: number): FuelQuestion => ({ ...knob.question(value), humpSpeed });
  const boatNow = knob.boat(knob.now);
  const here = knob.planned ? fuel : fuelVerdict(prepared, asked(knob.now));
  // What the other knobs decide hides this one.
  if (worse(standing, worse(boatNow, here.verdict)) !== now) return undefined;
  const better = now === 'no-go';
  const target = better ? knob.better : knob.worse;
  const sign = target >= knob.now ? 1 : -1;
  const reach = Math.abs(target - knob.now);
  if (!(reach > 0)) return undefined;
  const at = (distance: number): number => knob.now + sign * distance;
  const wanted = now === 'go' ? 'go' : 'marginal';
  // Towards worse a verdict stays while all allow it; a no-go stays while anything refuses.
  const boat = new Edge((d) => {
    const verdict = knob.boat(at(d));
    return { holds: better ? verdict === 'no-go' : RANK[verdict] <= RANK[now] };
  });
  const turned = (answer: Answer): Answer =>
    better ? { holds: !answer.holds, slack: answer.slack === undefined ? undefined : -answer.slack } : answer;
  const store = new Edge((d) => turned(fuelAllows(prepared, asked(at(d)), wanted)));
  store.learn(0, turned(knownToAllow(here, wanted)));
  const stays = (d: number): boolean => (better ? boat.holds(d) || store.holds(d) : boat.holds(d) && store.holds(d));
  const bound = largestHolding((d) => boat.holds(d), 0, reach, knob.step) ?? 0;
  const { step } = knob;
  const guess = Math.abs(knob.guess - knob.now);
  if (better) store.closeIn(0, reach, { step, guess });
  else store.closeIn(0, Math.min(bound + step, reach), { step, guess });
  const last = largestHolding(stays, 0, reach, step);
  if (last === undefined || last === reach) return undefined;
  const value = at(last);
  const beyond = at(Math.min(last + step, reach));
  const boatThere = worse(standing, knob.boat(beyond));
  const to = boatThere === 'no-go' ? 'no-go' : worse(boatThere, fuelVerdict(prepared, asked(beyond)).verdict);
  return { knob: knob.knob, from: now, to, value, now: knob.now, direction: sign > 0 ? 'up' : 'down' };
}

function knobs(prepared: Prepared, fuel: FuelVerdict, balance: LoadBalance, holds: Holding): readonly Knob[] {
  const { trip } = prepared;
  const { plate } = trip.craft.hull;
  const spare = plate && plate !== 'none' && plate.maxLoad !== undefined ? plate.maxLoad - balance.counted : Infinity;
  const crew = balance.peopleAndGear;
  const scenario = expected(givenOf(trip));
  const wind = scenario.headwindHome ?? scenario.wind?.speed ?? 0;
  const asItIs = worse(holds.planes(0), holds.speeds(0));
  const { slack = 0 } = knownToAllow(fuel, fuel.verdict === 'go' ? 'go' : 'marginal');
  return [
    {
      knob: 'crew-mass',
      now: crew,
      worse: crew + HEAVIEST,
      better: 0,
      step: 1,
      planned: true,
      // Need goes about with all-up mass.
      guess: crew + balance.allUpMass * (Math.exp(slack) - 1),
      boat: (kg) => (kg - crew > spare ? 'no-go' : worse(holds.planes(kg - crew), holds.speeds(kg - crew))),
      question: (kg) => ({ tweak: { extraMass: kg - crew, use: 1 } }),
    },
    {
      knob: 'consumption',
      now: 1,
      worse: HUNGRIEST,
      better: 0.3,
      step: 0.01,
      planned: true,
      guess: Math.exp(slack),
      boat: () => asItIs,
      question: (use) => ({ tweak: { extraMass: 0, use }, spread: fuel.spread }),
    },
    {
      knob: 'wind',
      now: wind,
      worse: WINDIEST,
      better: 0,
      step: 0.2,
      planned: typeof trip.conditions.wind === 'object',
      // A tenth of need to two metres a second.
      guess: wind + 20 * slack,
      boat: (speed) => worse(windLimit(prepared, speed), heldAgainst(prepared, holds, speed)),
      question: (windSpeed) => ({ windSpeed }),
    },
    {
      knob: 'fill',
      now: scenario.fill,
      worse: 0,
      better: fullFill(prepared),
      step: 0.005,
      planned: trip.load.fill !== undefined,
      guess: fillFor(prepared, fuel),
      boat: () => asItIs,
      question: (fill) => ({ fill }),
    },
  ];
}

function windLimit({ trip }: Prepared, speed: number): Verdict {
  const { maxBeaufort = Infinity } = categoryOf(trip.craft.hull.plate);
  if (beaufortOf(speed) > maxBeaufort) return 'no-go';
  const own = trip.policy.maxWind;
  if (own !== undefined) return speed > own ? 'no-go' : 'go';
  return speed >= FRESH_BREEZE ? 'marginal' : 'go';
}

/** What the engine says with this wind in place of the given. */
function heldAgainst(prepared: Prepared, holds: Holding, windSpeed: number): Verdict {
  const scenario = expected(givenOf(prepared.trip, { windSpeed }));
  const headwind = (s: Sailed): number => windOn(s.stretch, scenario);
  return worse(holds.planes(0, headwind), holds.speeds(0, headwind));
}
