import type { LoadBalance } from '../load/balance.ts';
import { beaufortOf } from '../water/beaufort.ts';
import { largestHolding } from './bisect.ts';
import { type Answer, Edge } from './edge.ts';
import { fillFor, fullFill } from './fill-needed.ts';
import type { FloatLimits } from './floating.ts';
import { fuelAllows, knownToAllow } from './fuel-allows.ts';
import { type FuelQuestion, type FuelVerdict, fuelVerdict } from './fuel-verdict.ts';
import { type Holding, verdictFrom, worse } from './holding.ts';
import { seaLimit } from './judge-sea.ts';
import { categoryOf, FRESH_BREEZE, NEAR_GALE } from './judge-wind.ts';
import { windOn } from './met-on-way.ts';
import { givenOf, type Prepared } from './prepare.ts';
import { verdictOf } from './reasons.ts';
import { expected } from './scenario.ts';
import type { Payload, Reason, ReasonCode, TippingValue, Verdict } from './shapes.ts';
import { streamGuess } from './stream-guess.ts';
import { strongestTold } from './wind-law.ts';

/** Reasons that fuel, weight or wind can turn; the others stay as they are whatever these do. */
const MOVED: ReadonlySet<ReasonCode> = new Set([
  'reserve-broken',
  'runs-dry',
  'bad-case-dry',
  'reserve-unsure',
  'nothing-usable',
  'over-plate-load',
  'speed-not-held',
  'speed-uncertain',
  'hump-not-crossed',
  'hump-thin',
  'over-wind-limit',
  'rough',
  'too-rough',
  'over-wave-limit',
]);
const RANK = { go: 0, marginal: 1, 'no-go': 2 } as const;
const HEAVIEST = 400;
const HUNGRIEST = 4;
/** Storm force is beyond any plan, m/s. */
const WINDIEST = 25;
/** A stream faster than small boats go slowly, m/s, and waves that no small open boat meets, m. */
const STRONGEST_STREAM = 2.5;
const HIGHEST_WAVES = 1.5;

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
  /** The same of what the engine says; absent: as far as it is asked. */
  readonly boatGuess?: number | undefined;
  /** What plate and weather limits say. */
  limit(value: number): Verdict;
  /** What the engine says. */
  boat(value: number, wanted: 'go' | 'marginal'): Answer;
  question(value: number): FuelQuestion;
}

/** What the boat says of more mass and more wind. */
export interface TippingAsked {
  readonly holds: Holding;
  readonly floats: FloatLimits;
  readonly humpSpeed: number | undefined;
  /** Where others found an edge that is one of these too: first guesses, nothing more. */
  readonly payload: Payload;
  readonly filled: number | undefined;
}

/**
 * Where the verdict turns, one thing changed at a time: people and gear (kg), every consumption (factor), wind and
 * stream (m/s), waves (m) and fill (share). A go or marginal trip is turned for the worse, a no-go for the better; a knob that cannot turn it
 * within reason is left out. Rests after each, see `planInSteps`.
 */
export function* tippingValues(
  prepared: Prepared,
  fuel: FuelVerdict,
  reasons: readonly Reason[],
  balance: LoadBalance,
  asked: TippingAsked,
): Generator<void, readonly TippingValue[]> {
  const standing = verdictOf(reasons.filter((r) => !MOVED.has(r.code)));
  if (standing === 'no-go' || !fuel.run.possible) return [];
  const now = verdictOf(reasons);
  const found: TippingValue[] = [];
  for (const knob of knobs(prepared, fuel, balance, asked)) {
    const turned = turning(prepared, knob, { fuel, standing, now, humpSpeed: asked.humpSpeed });
    if (turned) found.push(turned);
    yield;
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
  const here = knob.planned ? fuel : fuelVerdict(prepared, asked(knob.now));
  const besides = (value: number): Verdict =>
    worse(
      worse(standing, knob.limit(value)),
      verdictFrom((wanted) => knob.boat(value, wanted)),
    );
  // What the other knobs decide hides this one.
  if (worse(besides(knob.now), here.verdict) !== now) return undefined;
  const better = now === 'no-go';
  const target = better ? knob.better : knob.worse;
  const sign = target >= knob.now ? 1 : -1;
  const reach = Math.abs(target - knob.now);
  if (!(reach > 0)) return undefined;
  const at = (distance: number): number => knob.now + sign * distance;
  const wanted = now === 'go' ? 'go' : 'marginal';
  // Towards worse a verdict stays while all allow it; a no-go stays while anything refuses.
  const turned = (answer: Answer): Answer =>
    better ? { holds: !answer.holds, slack: answer.slack === undefined ? undefined : -answer.slack } : answer;
  const limit = (d: number): boolean => turned({ holds: RANK[knob.limit(at(d))] <= RANK[wanted] }).holds;
  const boat = new Edge((d) => turned(knob.boat(at(d), wanted)));
  const store = new Edge((d) => turned(fuelAllows(prepared, asked(at(d)), wanted, here)));
  store.learn(0, turned(knownToAllow(here, wanted)));
  const stays = (d: number): boolean =>
    better ? limit(d) || boat.holds(d) || store.holds(d) : limit(d) && boat.holds(d) && store.holds(d);
  const { step } = knob;
  const within = { low: 0, high: reach, step };
  // Each is sought only as far as the one before leaves it a say.
  const free = better ? reach : (largestHolding(limit, 0, reach, step) ?? 0);
  boat.closeIn(0, free, { within, guess: knob.boatGuess === undefined ? free : Math.abs(knob.boatGuess - knob.now) });
  const held = better ? reach : (largestHolding((d) => limit(d) && boat.holds(d), 0, reach, step) ?? 0);
  store.closeIn(0, held, { within, guess: Math.abs(knob.guess - knob.now) });
  const last = largestHolding(stays, 0, reach, step);
  if (last === undefined || last === reach) return undefined;
  const value = at(last);
  // What no longer is a go is in doubt or refused, and what no longer is in doubt is refused.
  const turnedTo = (): Verdict => {
    if (better) return worse(there, fuelVerdict(prepared, asked(beyond)).verdict);
    return wanted === 'go' && fuelAllows(prepared, asked(beyond), 'marginal').holds ? 'marginal' : 'no-go';
  };
  const beyond = at(Math.min(last + step, reach));
  const there = besides(beyond);
  const to = there === 'no-go' ? 'no-go' : turnedTo();
  return { knob: knob.knob, from: now, to, value, now: knob.now, direction: sign > 0 ? 'up' : 'down' };
}

function knobs(
  prepared: Prepared,
  fuel: FuelVerdict,
  balance: LoadBalance,
  { holds, floats, payload, filled }: TippingAsked,
): readonly Knob[] {
  const { trip } = prepared;
  const { plate } = trip.craft.hull;
  const spare = plate && plate !== 'none' && plate.maxLoad !== undefined ? plate.maxLoad - balance.counted : Infinity;
  const crew = balance.peopleAndGear;
  const scenario = expected(givenOf(prepared));
  const { departs } = scenario;
  const wind =
    scenario.headwindHome ??
    (scenario.wind ? strongestTold(scenario.wind, departs, departs + prepared.around.horizon) : 0);
  const { strongestStream } = prepared.around;
  const stream = typeof scenario.stream === 'object' ? scenario.stream.rate : (scenario.foulHome ?? strongestStream);
  const sea = fuel.run.sailed.reduce((most, s) => Math.max(most, s.weather.waveHeight), 0);
  const asItIs = { go: holds.allows('go', 0), marginal: holds.allows('marginal', 0) };
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
      guess: crew + (payload.binds === 'reserve' ? payload.extra! : balance.allUpMass * (Math.exp(slack) - 1)),
      boatGuess: payload.binds === 'speed' || payload.binds === 'planing' ? crew + payload.extra! : undefined,
      limit: (kg) => (kg - crew > spare ? 'no-go' : floats.verdict(kg - crew)),
      boat: (kg, wanted) => (kg === crew ? asItIs[wanted] : holds.allows(wanted, kg - crew)),
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
      limit: () => 'go',
      boat: (_, wanted) => asItIs[wanted],
      question: (use) => ({ tweak: { extraMass: 0, use }, spread: fuel.spread }),
    },
    {
      knob: 'wind',
      now: wind,
      worse: WINDIEST,
      better: 0,
      step: 0.2,
      planned: typeof prepared.around.wind === 'object',
      // A tenth of need to two metres a second.
      guess: wind + 20 * slack,
      limit: (speed) => windLimit(prepared, speed),
      boat: (speed, wanted) => heldAgainst(prepared, holds, speed, wanted),
      question: (windSpeed) => ({ windSpeed }),
    },
    {
      knob: 'stream',
      now: stream,
      worse: STRONGEST_STREAM,
      better: 0,
      step: 0.05,
      planned: prepared.around.stream !== undefined,
      guess: streamGuess(fuel, stream, prepared.displacementSpeed) ?? stream + slack,
      limit: () => 'go',
      boat: (_, wanted) => asItIs[wanted],
      question: (streamRate) => ({ streamRate }),
    },
    {
      knob: 'sea',
      now: sea,
      worse: HIGHEST_WAVES,
      better: 0,
      step: 0.02,
      planned: scenario.waves === undefined && prepared.seaTold,
      guess: sea + slack / 2,
      limit: (height) => seaLimit(prepared, height),
      boat: (_, wanted) => asItIs[wanted],
      question: (waveHeight) => ({ waveHeight }),
    },
    {
      knob: 'fill',
      now: scenario.fill,
      worse: 0,
      better: fullFill(prepared),
      step: 0.005,
      planned: trip.load.fill !== undefined,
      guess: fuel.verdict === 'go' && filled !== undefined ? filled : fillFor(prepared, fuel),
      limit: () => 'go',
      boat: (_, wanted) => asItIs[wanted],
      question: (fill) => ({ fill }),
    },
  ];
}

function windLimit(prepared: Prepared, speed: number): Verdict {
  const { trip } = prepared;
  const { maxBeaufort = Infinity } = categoryOf(trip.craft.hull.plate);
  if (beaufortOf(speed) > maxBeaufort) return 'no-go';
  const own = trip.policy.maxWind;
  if (speed >= NEAR_GALE || (own !== undefined && speed > own)) return 'no-go';
  // Waves that follow from the wind rise with it.
  const { waves, waveHeight } = expected(givenOf(prepared, { windSpeed: speed }));
  return worse(speed >= FRESH_BREEZE ? 'marginal' : 'go', waves ? seaLimit(prepared, waveHeight) : 'go');
}

/** What the engine says with this wind in place of the given. */
function heldAgainst(prepared: Prepared, holds: Holding, windSpeed: number, wanted: 'go' | 'marginal'): Answer {
  const scenario = expected(givenOf(prepared, { windSpeed }));
  return holds.allows(wanted, 0, (s) => windOn(s.stretch, scenario, s.at));
}
