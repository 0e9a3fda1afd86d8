import type { Reason } from '../../core/trip/shapes.ts';
import type { StoreKind } from '../units/measures.ts';

/** What a sentence about a reason is made of: figure and limit are empty where they were not given. */
export interface Parts {
  readonly raw: Reason;
  readonly value: string;
  readonly limit: string;
  readonly name: string;
  /** " on leg 2", " on legs 2 and 3" or nothing. */
  readonly where: string;
  readonly what: StoreKind;
  /** Figure without its sign. */
  readonly size: string;
}

/** The lead, and in brackets as many of the figures as are known, each with its own words before it. */
export function held(lead: string, p: Parts, before: readonly [string, string]): string {
  const figures = [p.value && before[0] + p.value, p.limit && before[1] + p.limit].filter(Boolean).join(', ');
  return figures ? `${lead} (${figures}).` : `${lead}.`;
}

export function bracket(name: string): string {
  return name && ` (${name})`;
}
