import { expect } from 'vitest';
import checks from '../../shared/checks/sea-checks.json' with { type: 'json' };
import { told } from './told.ts';

export interface SeaCheck {
  readonly id: string;
  readonly source: string;
  readonly provenance: string;
  readonly inputs: Readonly<Record<string, number | undefined>>;
  readonly expected: Readonly<Record<string, number>>;
  readonly tolerance: Readonly<Record<string, number>>;
}

const all = checks as unknown as readonly SeaCheck[];

export function entriesOf(family: RegExp): readonly SeaCheck[] {
  return all.filter(({ id }) => family.test(id));
}

export function entry(id: string): SeaCheck {
  const found = all.find((check) => check.id === id);
  if (!found) throw new Error(`no entry ${id}`);
  return found;
}

/** Holds a figure against the entry's own value and tolerance; `by` tells apart several methods held against one entry. */
export function holds({ id, expected, tolerance }: SeaCheck, name: string, value: number, by = ''): void {
  told(id, by ? `${name}, ${by}` : name, expected[name]!, value);
  expect(Math.abs(value - expected[name]!), `${id} ${name}: ${value}`).toBeLessThanOrEqual(tolerance[name]!);
}

/** Holds a list of figures likewise. */
export function holdsAll({ id, expected, tolerance }: SeaCheck, name: string, values: readonly number[]): void {
  const wanted = expected[name] as unknown as readonly number[];
  expect(values).toHaveLength(wanted.length);
  values.forEach((value, i) => {
    told(id, `${name} ${i + 1}`, wanted[i]!, value);
    expect(Math.abs(value - wanted[i]!), `${id} ${name} ${i}: ${value}`).toBeLessThanOrEqual(tolerance[name]!);
  });
}
