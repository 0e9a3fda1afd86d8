import type { Policy, ReserveRule } from '../../core/trip/shapes.ts';

type Kind = ReserveRule['kind'];

/** The rule of one kind; of several the largest, which is the one that could hold. */
export function ruleOf<K extends Kind>(policy: Policy, kind: K): Extract<ReserveRule, { kind: K }> | undefined {
  const found = policy.reserve.filter((rule): rule is Extract<ReserveRule, { kind: K }> => rule.kind === kind);
  return found.reduce<(typeof found)[number] | undefined>((a, b) => (a && sizeOf(a) >= sizeOf(b) ? a : b), undefined);
}

/** The policy with this rule in place of those of its kind. */
export function withRule(policy: Policy, rule: ReserveRule): Policy {
  return { ...policy, reserve: [...withoutRule(policy, rule.kind).reserve, rule] };
}

export function withoutRule(policy: Policy, kind: Kind): Policy {
  return { ...policy, reserve: policy.reserve.filter((rule) => rule.kind !== kind) };
}

function sizeOf(rule: ReserveRule): number {
  switch (rule.kind) {
    case 'thirds':
      return 1 / 3;
    case 'share':
      return rule.share;
    case 'minutes':
      return rule.minutes;
    default:
      return rule satisfies never;
  }
}
