import type { Problem } from '../units/result.ts';

export interface PlainLimits {
  /** Objects and lists inside one another. */
  readonly depth: number;
  /** Fields and list entries in all. */
  readonly entries: number;
}

const UNSAFE = ['__proto__', 'constructor', 'prototype'];

/** Why a value is not fit to be read as plain data: too deep (or in a circle), too much, or with an unsafe field name. */
export function plainProblem(value: unknown, limits: PlainLimits): Problem | undefined {
  let left = limits.entries;
  /** Keys down to the place of the problem, innermost first. */
  const way: string[] = [];

  function search(inner: unknown, depth: number): Omit<Problem, 'path'> | undefined {
    if (inner === null || typeof inner !== 'object') return undefined;
    if (depth >= limits.depth) {
      return { code: 'too-deep', message: 'The file is nested too deep', limit: limits.depth };
    }
    const keys = Array.isArray(inner) ? undefined : Object.keys(inner);
    const count = Array.isArray(inner) ? inner.length : keys!.length;
    left -= count;
    if (left < 0) return { code: 'too-big', message: 'The file holds too much', limit: limits.entries };
    for (let i = 0; i < count; i++) {
      const key = keys?.[i] ?? i;
      const problem =
        keys && UNSAFE.includes(keys[i]!)
          ? { code: 'unsafe-key', message: `A field must not be called "${key}"` }
          : search((inner as Record<string | number, unknown>)[key], depth + 1);
      if (problem) {
        way.push(String(key));
        return problem;
      }
    }
    return undefined;
  }

  try {
    const problem = search(value, 0);
    return problem && { ...problem, path: way.reverse().join('.') };
  } catch {
    return { code: 'unreadable', path: '', message: 'This cannot be read as plain values' };
  }
}
