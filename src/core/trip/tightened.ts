import type { Policy } from './shapes.ts';

/** A policy with a host's own rules and limits added: of each pair the stricter holds, so that nothing is loosened. */
export function tightened(policy: Policy, by: Partial<Policy>): Policy {
  const own = policy.reserve.length > 0 ? policy.reserve : [{ kind: 'thirds' } as const];
  const least = (a: number | undefined, b: number | undefined) =>
    a === undefined ? b : b === undefined ? a : Math.min(a, b);
  const most = (a: number | undefined, b: number | undefined) =>
    a === undefined ? b : b === undefined ? a : Math.max(a, b);
  return {
    reserve: by.reserve ? [...own, ...by.reserve] : policy.reserve,
    manoeuvring: most(policy.manoeuvring, by.manoeuvring),
    drawnFactor: most(policy.drawnFactor, by.drawnFactor),
    maxWind: least(policy.maxWind, by.maxWind),
    maxWave: least(policy.maxWave, by.maxWave),
    timeAllowed: least(policy.timeAllowed, by.timeAllowed),
  };
}
