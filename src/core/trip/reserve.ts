import type { Policy, ReserveRule } from './shapes.ts';

const THIRDS: ReserveRule = { kind: 'thirds' };

/** One reserve rule as an amount; `flow` is the trip's mean flow, for rules in minutes. */
export function reserveOf(rule: ReserveRule, usable: number, flow: number): number {
  switch (rule.kind) {
    case 'thirds':
      return usable / 3;
    case 'share':
      return usable * rule.share;
    case 'minutes':
      return Math.min(rule.minutes * 60 * flow, usable);
    default:
      return rule satisfies never;
  }
}

/**
 * The strictest of the chosen rules; without any, thirds (Canadian and US boating courses: one third out, one third
 * back, one third kept). A share and minutes are common practice without a boating authority behind them.
 */
export function strictestReserve(policy: Policy, usable: number, flow: number): { rule: ReserveRule; amount: number } {
  let rule: ReserveRule | undefined;
  let amount = -1;
  for (const candidate of policy.reserve.length > 0 ? policy.reserve : [THIRDS]) {
    const here = reserveOf(candidate, usable, flow);
    if (here > amount) {
      amount = here;
      rule = candidate;
    }
  }
  return { rule: rule ?? THIRDS, amount };
}
