import { lookWords as words } from '../words/en-compare.ts';
import { unitWords } from '../words/en-units.ts';

/** A change of a figure with its sign, "+1.2 kn" or "−3%"; what rounds to nothing is no change. */
export function difference(change: number, show: (size: number) => string): string {
  const size = show(Math.abs(change));
  if (!/[1-9]/.test(size)) return words.none;
  return `${change < 0 ? '\u2212' : '+'}${size}`;
}

/** One text where both ends say the same; where both are figures of one unit, the unit stands once. */
export function span(a: string, b: string): string {
  if (a === b) return a;
  const [unitA, unitB] = [unitOf(a), unitOf(b)];
  return unitWords.fromTo(unitA !== '' && unitA === unitB ? a.slice(0, -unitA.length) : a, b);
}

function unitOf(text: string): string {
  return /(\u00a0[a-z/]+|\u00a0?%)$/i.exec(text)?.[0] ?? '';
}
