import { AS_PLANNED } from './afloat-in.ts';
import type { Answer } from './edge.ts';
import {
  type FuelQuestion,
  type FuelVerdict,
  fallsShort,
  keepsReserve,
  type Standing,
  shownVerdict,
  type Worst,
  worst,
} from './fuel-verdict.ts';
import { type Prepared, scenariosOf } from './prepare.ts';
import type { Scenario } from './scenario.ts';

/**
 * Whether fuel or charge allows this verdict or a better one, with the logarithm of what is there over what is needed
 * where that falls shortest. The bad cases are sailed only where they matter, the one that left least `before` first:
 * where it runs dry nothing else is asked.
 */
export function fuelAllows(
  prepared: Prepared,
  question: FuelQuestion,
  wanted: 'go' | 'marginal',
  before?: Pick<FuelVerdict, 'badRun'>,
): Answer {
  const { shown, bad } = scenariosOf(prepared, question.humpSpeed, question);
  const standing = shownVerdict(prepared, shown, question);
  if (wanted === 'marginal' || fallsShort(standing)) {
    return { holds: !fallsShort(standing), slack: slackOf(standing) };
  }
  if (!keepsReserve(standing)) return { holds: false, slack: reserveSlack(standing) };
  const first = before?.badRun.scenario;
  const like = first && bad.find((scenario) => sameCase(scenario, first));
  const cases = like ? [like, ...bad.filter((scenario) => scenario !== like)] : bad;
  const found = worst(prepared, cases, question.tweak ?? AS_PLANNED, standing.spread, like !== undefined);
  return { holds: found.badCase.left > 0, slack: slackOf(standing, found) };
}

/** The same of a verdict that is known. */
export function knownToAllow(fuel: FuelVerdict, wanted: 'go' | 'marginal'): Answer {
  const short = fallsShort(fuel);
  if (wanted === 'marginal' || short) return { holds: !short, slack: slackOf(fuel) };
  return { holds: fuel.verdict === 'go', slack: slackOf(fuel, fuel) };
}

function slackOf(standing: Standing, found?: Worst): number {
  const { run, usable, reserve, need90 } = standing;
  const slack = Math.min(Math.log((usable - reserve) / run.need), Math.log(usable / need90));
  return found ? Math.min(slack, reserveSlack(standing), Math.log(found.badUsable / found.badCase.need)) : slack;
}

function reserveSlack({ keeps, usable, reserve }: Standing): number {
  return Math.log((usable - reserve) / keeps);
}

/** The same bad case, asked about in other circumstances. */
function sameCase(a: Scenario, b: Scenario): boolean {
  return (
    a.forward === b.forward &&
    a.unslowed === b.unslowed &&
    (a.homeCap === undefined) === (b.homeCap === undefined) &&
    (a.homeSpeed === undefined) === (b.homeSpeed === undefined)
  );
}
