import { parseDecimal } from '../units/decimal.ts';
import type { Measures } from '../units/measures.ts';

/** Heavier than this is no person with their things, kg. */
const HEAVIEST = 500;

/** Weights with commas or spaces between, kg; empty while nothing is typed, undefined where one cannot be read. */
export function weightsTyped(text: string, measures: Measures): readonly number[] | undefined {
  const kg = text
    .split(/[;,\s]+/)
    .filter(Boolean)
    .map((part) => {
      const shown = parseDecimal(part, measures.lang);
      return shown === undefined ? Number.NaN : measures.toSi('mass', shown);
    });
  return kg.every((mass) => mass > 0 && mass < HEAVIEST) ? kg : undefined;
}
