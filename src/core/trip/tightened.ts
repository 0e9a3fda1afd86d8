import { DEPTH_WANTED, DRAWN_FACTOR, MANOEUVRING } from './defaults.ts';
import type { Policy } from './shapes.ts';

/**
 * A policy with a host's own rules and limits added: of each pair the stricter holds, so that nothing is loosened; what
 * the user left out counts as its default.
 */
export function tightened(policy: Policy, by: Partial<Policy>): Policy {
  const own = policy.reserve.length > 0 ? policy.reserve : [{ kind: 'thirds' } as const];
  const most = (mine: number | undefined, usual: number, theirs: number | undefined) =>
    theirs === undefined ? mine : Math.max(mine ?? usual, theirs);
  return {
    reserve: by.reserve ? [...own, ...by.reserve] : policy.reserve,
    manoeuvring: most(policy.manoeuvring, MANOEUVRING, by.manoeuvring),
    drawnFactor: most(policy.drawnFactor, DRAWN_FACTOR, by.drawnFactor),
    maxWind: least(policy.maxWind, by.maxWind),
    maxWave: least(policy.maxWave, by.maxWave),
    depth: most(policy.depth, DEPTH_WANTED, by.depth),
    timeAllowed: least(policy.timeAllowed, by.timeAllowed),
  };
}

function least(a: number | undefined, b: number | undefined): number | undefined {
  return a === undefined ? b : b === undefined ? a : Math.min(a, b);
}
