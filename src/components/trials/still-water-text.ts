import { stillWater } from '../../core/trials/still-water.ts';
import type { Measures } from '../units/measures.ts';
import { runWords as words } from '../words/en-trials.ts';
import type { PassEntry } from './run-entry.ts';

/** m/s; below this a stream is within what a GPS can tell. */
const NO_STREAM = 0.05;

/** "Through still water 11.7 kn ±0.2, stream 0.4 kn with the way out"; empty before the first speed. */
export function stillWaterText(passes: readonly PassEntry[], stream: number | undefined, measures: Measures): string {
  const sailed = passes.flatMap(({ way, over }) => (over === undefined ? [] : [{ way, over }]));
  if (sailed.length === 0) return '';
  const found = stillWater(sailed, stream);
  const through = words.through(sure(found.speed, found.deviation, measures));
  if (found.by !== 'both-ways') return through;
  const way = Math.abs(found.stream) < NO_STREAM ? 'none' : found.stream > 0 ? 'with' : 'against';
  return `${through}; ${words.streamFound(sure(Math.abs(found.stream), found.streamDeviation, measures), way)}`;
}

/** "11.7 kn ±0.2". */
export function sure(speed: number, deviation: number, measures: Measures): string {
  const spread = new Intl.NumberFormat(measures.lang, { maximumFractionDigits: 1, minimumFractionDigits: 1 });
  return `${measures.show('speed', speed)} \u00b1${spread.format(measures.fromSi('speed', deviation))}`;
}
