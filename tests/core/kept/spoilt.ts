import type { Result } from '../../../src/core/units/result.ts';
import { plain } from './plain.ts';

/** In place of a value: what no field takes, and what tells the limit of one. */
const OTHERS: readonly unknown[] = [1e13, -1e13, 0, 'x', null, {}];

/**
 * What a reader says of a sound file with one value after the other changed or left out, by the names of the fields
 * changed: how often it is read all the same, and which faults it finds, with their limits.
 */
export function spoilt<T>(sound: unknown, read: (value: unknown) => Result<T>): unknown {
  const told = new Map<string, Map<string, number>>();
  const note = (field: string, found: Result<T>) => {
    const faults = found.ok
      ? ['read']
      : found.problems.map(({ code, limit }) => `${code}${limit === undefined ? '' : ` ${limit}`}`);
    const known = told.get(field) ?? new Map<string, number>();
    told.set(field, known);
    for (const fault of new Set(faults)) known.set(fault, (known.get(fault) ?? 0) + 1);
  };
  const copy = structuredClone(sound);
  const seen = new Set<string>();
  const visit = (holder: Record<string, unknown>, path: string): void => {
    for (const [key, value] of Object.entries(holder)) {
      const name = Array.isArray(holder) ? path : path === '' ? key : `${path}.${key}`;
      // Of a list the first few entries are enough.
      if (Array.isArray(holder) && Number(key) > 1) continue;
      if (!seen.has(name) || Array.isArray(holder)) {
        seen.add(name);
        for (const other of [...OTHERS, ...(typeof value === 'number' ? [value * 1.5] : [])]) {
          holder[key] = other;
          note(name, read(copy));
        }
        delete holder[key];
        note(name, read(copy));
        holder[key] = value;
      }
      if (value !== null && typeof value === 'object') visit(value as Record<string, unknown>, name);
    }
    if (!Array.isArray(holder)) {
      holder.unheard = 1;
      note(`${path}.unheard`, read(copy));
      delete holder.unheard;
    }
  };
  visit(copy as Record<string, unknown>, '');
  return plain(
    Object.fromEntries(
      [...told].map(([field, faults]) => [
        field,
        [...faults]
          .map(([fault, times]) => `${times} ${fault}`)
          .sort()
          .join(', '),
      ]),
    ),
  );
}
