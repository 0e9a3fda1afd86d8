import type { LoadBalance } from '../load/balance.ts';
import { beaufortOf } from '../water/beaufort.ts';
import { largestHolding } from './bisect.ts';
import { fullFill } from './fill-needed.ts';
import { type FuelQuestion, type FuelVerdict, fuelVerdict } from './fuel-verdict.ts';
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
  verdict(value: number): Verdict;
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
  const ask = (question: FuelQuestion): Verdict => fuelVerdict(prepared, { ...question, humpSpeed }).verdict;
  const now = verdictOf(reasons);
  const found: TippingValue[] = [];
  for (const knob of knobs(prepared, fuel, balance, holds, ask)) {
    const all = (value: number): Verdict => worse(standing, knob.verdict(value));
    const turned = turning(knob, all, now);
    if (turned) found.push(turned);
  }
  return found;
}

function turning(knob: Knob, verdict: (value: number) => Verdict, now: Verdict): TippingValue | undefined {
  const base = verdict(knob.now);
  // What the other knobs decide hides this one.
  if (base !== now) return undefined;
  const target = now === 'no-go' ? knob.better : knob.worse;
  const sign = target >= knob.now ? 1 : -1;
  const stays = (distance: number): boolean => RANK[verdict(knob.now + sign * distance)] === RANK[now];
  const reach = Math.abs(target - knob.now);
  if (!(reach > 0)) return undefined;
  const last = largestHolding(stays, 0, reach, knob.step);
  if (last === undefined || last === reach) return undefined;
  const value = knob.now + sign * last;
  const to = verdict(knob.now + sign * Math.min(last + knob.step, reach));
  return { knob: knob.knob, from: now, to, value, now: knob.now, direction: sign > 0 ? 'up' : 'down' };
}

function knobs(
  prepared: Prepared,
  fuel: FuelVerdict,
  balance: LoadBalance,
  holds: Holding,
  ask: (question: FuelQuestion) => Verdict,
): readonly Knob[] {
  const { trip } = prepared;
  const { plate } = trip.craft.hull;
  const spare = plate && plate !== 'none' && plate.maxLoad !== undefined ? plate.maxLoad - balance.counted : Infinity;
  const crew = balance.peopleAndGear;
  const scenario = expected(givenOf(trip));
  const wind = scenario.headwindHome ?? scenario.wind?.speed ?? 0;
  const asItIs = worse(holds.planes(0), holds.speeds(0));
  return [
    {
      knob: 'crew-mass',
      now: crew,
      worse: crew + HEAVIEST,
      better: 0,
      step: 1,
      verdict: (kg) =>
        kg - crew > spare
          ? 'no-go'
          : worse(
              worse(holds.planes(kg - crew), holds.speeds(kg - crew)),
              ask({ tweak: { extraMass: kg - crew, use: 1 } }),
            ),
    },
    {
      knob: 'consumption',
      now: 1,
      worse: HUNGRIEST,
      better: 0.3,
      step: 0.01,
      verdict: (use) => worse(asItIs, ask({ tweak: { extraMass: 0, use }, spread: fuel.spread })),
    },
    {
      knob: 'wind',
      now: wind,
      worse: WINDIEST,
      better: 0,
      step: 0.2,
      verdict: (speed) =>
        worse(windLimit(prepared, speed), worse(heldAgainst(prepared, holds, speed), ask({ windSpeed: speed }))),
    },
    {
      knob: 'fill',
      now: scenario.fill,
      worse: 0,
      better: fullFill(prepared),
      step: 0.005,
      verdict: (fill) => worse(asItIs, ask({ fill })),
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
