import { expect } from 'vitest';
import checks from '../../shared/checks/sea-checks.json' with { type: 'json' };

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

/** Holds a figure against the entry's own value and tolerance. */
export function holds({ id, expected, tolerance }: SeaCheck, name: string, value: number): void {
  expect(Math.abs(value - expected[name]!), `${id} ${name}: ${value}`).toBeLessThanOrEqual(tolerance[name]!);
}

/** Holds a list of figures likewise. */
export function holdsAll({ id, expected, tolerance }: SeaCheck, name: string, values: readonly number[]): void {
  const wanted = expected[name] as unknown as readonly number[];
  expect(values).toHaveLength(wanted.length);
  values.forEach((value, i) => {
    expect(Math.abs(value - wanted[i]!), `${id} ${name} ${i}: ${value}`).toBeLessThanOrEqual(tolerance[name]!);
  });
}
