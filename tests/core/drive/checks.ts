import measured from '../../../shared/checks/measured-checks.json' with { type: 'json' };
import propulsion from '../../../shared/checks/propulsion-checks.json' with { type: 'json' };

export interface Check<Inputs, Expected, Tolerance> {
  readonly id: string;
  readonly source: string;
  readonly provenance: string;
  readonly inputs: Inputs;
  readonly expected: Expected;
  readonly tolerance: Tolerance;
}

type Numbers = Readonly<Record<string, number>>;

/** One published or derived figure, with its source and tolerance, from the check files of this project. */
export function check<Inputs = Numbers, Expected = Numbers, Tolerance = Numbers>(
  id: string,
): Check<Inputs, Expected, Tolerance> {
  const found = [...propulsion, ...measured].find((entry) => entry.id === id);
  if (!found) throw new Error(`no check named ${id}`);
  return found as unknown as Check<Inputs, Expected, Tolerance>;
}
