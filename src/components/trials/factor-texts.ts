import type { Drive } from '../../core/craft/shapes.ts';
import type { FactorFound, Fit } from '../../core/trials/fit-shapes.ts';
import { engineKey } from '../../core/trials/parameters.ts';
import type { Trials } from '../../core/trials/shapes.ts';
import { INCH } from '../../core/units/convert.ts';
import type { Measures } from '../units/measures.ts';
import { electricFactorWords, factorText, factorWords } from '../words/en-trials.ts';
import { setupName, shareText } from './texts.ts';

/** 90th percentile of the normal law: 8 of 10 lie within this many deviations. */
const Z90 = 1.2816;
/** A factor whose deviation shrank by less is not said to be learned. */
const LEARNED = 0.9;

export interface FactorLine {
  readonly name: string;
  readonly text: string;
  readonly learned: boolean;
}

/** What was learned, factor by factor, in plain words. */
export function factorLines(trials: Trials, fit: Fit, measures: Measures): readonly FactorLine[] {
  return fit.factors.map((found) => {
    const learned = found.deviation < LEARNED * found.priorDeviation;
    return {
      name: nameOf(trials, found, measures),
      text: learned ? textOf(found, measures) : factorText.unknown,
      learned,
    };
  });
}

function nameOf(trials: Trials, { factor, of }: FactorFound, measures: Measures): string {
  const { setups } = trials;
  const drive: Drive | undefined = setups.find((setup) => setup.id === of || engineKey(setup.drive) === of)?.drive;
  const electric = drive?.kind === 'electric' ? electricFactorWords[factor] : undefined;
  const plain = electric ?? factorWords[factor];
  if (of === 'hull' || setups.length < 2) return plain;
  const setup = setups.find(({ id }) => id === of);
  return `${plain} (${setup ? setupName(setup, measures) : (drive?.name ?? of)})`;
}

function textOf(found: FactorFound, measures: Measures): string {
  const { factor, value, deviation, priorValue } = found;
  if (found.atBound) return factorText.atBound;
  switch (factor) {
    case 'kd':
    case 'kp':
    case 'kh':
    case 'fuel':
      return compared(value / priorValue - 1, (Z90 * deviation) / priorValue, measures);
    case 'power':
      return compared(Math.exp(value - priorValue) - 1, Z90 * deviation, measures);
    case 'friction':
      return factorText.shifted(value > priorValue, 1 - deviation / found.priorDeviation > 0.5);
    case 'lcgShift': {
      const size = measures.show('length', Math.abs(value - priorValue));
      return factorText.along(size, value > priorValue, measures.show('length', Z90 * deviation));
    }
    case 'pitchShift': {
      const inches = new Intl.NumberFormat(measures.lang, { maximumFractionDigits: 1, minimumFractionDigits: 1 });
      const size = inches.format(Math.abs(value - priorValue) / INCH);
      return factorText.pitch(size, value > priorValue, inches.format((Z90 * deviation) / INCH));
    }
    default:
      return factor satisfies never;
  }
}

function compared(share: number, sure: number, measures: Measures): string {
  const spread = shareText(sure, measures);
  if (Math.abs(share) < 0.005) return factorText.as(spread);
  return (share > 0 ? factorText.above : factorText.below)(shareText(share, measures), spread);
}
