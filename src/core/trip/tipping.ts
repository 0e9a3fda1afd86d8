import { marginOf } from '../curve/hump.ts';
import { steady } from '../curve/steady.ts';
import type { LoadBalance } from '../load/balance.ts';
import { largestHolding } from './bisect.ts';
import type { Carrying } from './carrying.ts';
import { fullFill } from './fill-needed.ts';
import { type FuelQuestion, type FuelVerdict, fuelVerdict } from './fuel-verdict.ts';
import type { Prepared } from './prepare.ts';
import { verdictOf } from './reasons.ts';
import { type Run, windOn } from './sail.ts';
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
  carries: Carrying,
  humpSpeed: number | undefined,
): readonly TippingValue[] {
  const standing = verdictOf(reasons.filter((r) => !MOVED.has(r.code)));
  if (standing === 'no-go' || !fuel.run.possible) return [];
  const ask = (question: FuelQuestion): Verdict =>
    fuelVerdict(prepared, { ...question, spread: fuel.spread, humpSpeed }).verdict;
  const now = verdictOf(reasons);
  const found: TippingValue[] = [];
  for (const knob of knobs(prepared, fuel, balance, carries, ask)) {
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
  carries: Carrying,
  ask: (question: FuelQuestion) => Verdict,
): readonly Knob[] {
  const { trip } = prepared;
  const { plate } = trip.craft.hull;
  const spare = plate && plate !== 'none' && plate.maxLoad !== undefined ? plate.maxLoad - balance.counted : Infinity;
  const crew = balance.peopleAndGear;
  const scenario = expected({ conditions: trip.conditions, fill: trip.load.fill });
  const wind = scenario.headwindHome ?? scenario.wind?.speed ?? 0;
  const asItIs = carried(carries, 0);
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
          : worse(carried(carries, kg - crew), ask({ tweak: { extraMass: kg - crew, use: 1 } })),
    },
    {
      knob: 'consumption',
      now: 1,
      worse: HUNGRIEST,
      better: 0.3,
      step: 0.01,
      verdict: (use) => worse(asItIs, ask({ tweak: { extraMass: 0, use } })),
    },
    {
      knob: 'wind',
      now: wind,
      worse: WINDIEST,
      better: 0,
      step: 0.2,
      verdict: (speed) =>
        worse(windLimit(prepared, speed), worse(heldAgainst(prepared, fuel.run, speed), ask({ windSpeed: speed }))),
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

function worse(a: Verdict, b: Verdict): Verdict {
  return RANK[a] >= RANK[b] ? a : b;
}

function carried(carries: Carrying, extra: number): Verdict {
  return carries.planes(extra) && carries.holds(extra) ? 'go' : 'no-go';
}

function windLimit({ trip }: Prepared, speed: number): Verdict {
  const own = trip.policy.maxWind;
  return own !== undefined && speed > own ? 'no-go' : 'go';
}

/** Whether every planned speed is held with this wind in place of the given. */
function heldAgainst(prepared: Prepared, run: Run, windSpeed: number): Verdict {
  const { conditions, load } = prepared.trip;
  const scenario = expected({ conditions, fill: load.fill, windSpeed });
  const boat = prepared.boatAt(scenario.batteryTemperatureC);
  for (const s of run.sailed) {
    const weather = { headwind: windOn(s.stretch, scenario), waveHeight: scenario.waveHeight };
    if (weather.headwind <= s.weather.headwind) continue;
    if (marginOf(boat, steady(boat, s.afloat, s.speed, weather).drive) < 1) return 'no-go';
  }
  return 'go';
}
