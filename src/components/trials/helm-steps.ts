import type { Run, Trials } from '../../core/trials/shapes.ts';
import { HOUR } from '../../core/units/convert.ts';
import { curveWords } from '../curve-plot/words.ts';
import { parseDecimal } from '../units/decimal.ts';
import type { Measures } from '../units/measures.ts';
import { freshId } from './edit-trials.ts';
import { storeKind } from './texts.ts';
import { type Sheet, setupOf } from './work.ts';

/** A figure typed at the helm. */
export type HelmField = 'out' | 'back' | 'rpm' | 'rate' | 'amps' | 'volts';
/** Digits as typed, by field. */
export type HelmFigures = Partial<Record<HelmField, string>>;

/** A run step of a sheet with its place among the steps and the runs, from 0. */
export type RunStep = Extract<Sheet['steps'][number], { kind: 'run' }>;

/** Which figures a run asks for, in the order they are read. */
export function helmFields(sheet: Sheet, step: RunStep, trials: Trials): readonly HelmField[] {
  const store = storeKind(setupOf(trials, step.setup).store);
  const reading: readonly HelmField[] =
    sheet.reading === 'none' ? [] : sheet.reading === 'current' && store === 'charge' ? ['amps', 'volts'] : ['rate'];
  return ['out', 'rpm', ...reading, 'back'];
}

/** SI in one of the unit that a field is typed in. */
export function helmUnit(field: HelmField, fuel: boolean, measures: Measures): { sign: string; si: number } {
  switch (field) {
    case 'out':
    case 'back':
      return { sign: measures.unit('speed'), si: measures.toSi('speed', 1) };
    case 'rpm':
      return { sign: curveWords.rpm, si: 1 };
    case 'rate':
      return fuel
        ? { sign: `${measures.unit('amount', 'fuel')}/h`, si: measures.toSi('amount', 1, 'fuel') / HOUR }
        : { sign: 'W', si: 1 };
    case 'amps':
      return { sign: 'A', si: 1 };
    case 'volts':
      return { sign: 'V', si: 1 };
    default:
      return field satisfies never;
  }
}

/** What a key does to the digits; at most six of them and one point. */
export function pressed(text: string, key: string): string {
  if (key === 'back') return text.slice(0, -1);
  if (key === '.') return text.includes('.') ? text : `${text || '0'}.`;
  return text.replace('.', '').length >= 6 ? text : (text === '0' ? '' : text) + key;
}

/** Digits of a run as they would have been typed, for going back to it. */
export function figuresOf(run: Run | undefined, fuel: boolean, measures: Measures): HelmFigures {
  if (!run) return {};
  const text = (field: HelmField, si: number | undefined): HelmFigures =>
    si === undefined ? {} : { [field]: String(Number((si / helmUnit(field, fuel, measures).si).toPrecision(4))) };
  const of = (way: 'out' | 'back') => run.passes.find((pass) => pass.way === way)?.over;
  return {
    ...text('out', of('out')),
    ...text('back', of('back')),
    ...text('rpm', run.rpm),
    ...(run.consumed?.kind === 'rate' && text('rate', run.consumed.rate)),
  };
}

/** The run that the digits make; undefined while no speed is typed. */
export function runOfFigures(
  figures: HelmFigures,
  {
    step,
    sheet,
    id,
    day,
    trials,
    measures,
  }: {
    readonly step: RunStep;
    readonly sheet: Sheet;
    readonly id: string | undefined;
    readonly day: string;
    readonly trials: Trials;
    readonly measures: Measures;
  },
): Run | undefined {
  const fuel = storeKind(setupOf(trials, step.setup).store) === 'fuel';
  const si = (field: HelmField): number | undefined => {
    const shown = parseDecimal(figures[field] ?? '', 'en');
    return shown === undefined || shown <= 0 ? undefined : shown * helmUnit(field, fuel, measures).si;
  };
  const passes = (['out', 'back'] as const).flatMap((way) => {
    const over = si(way);
    return over === undefined || over > 40 ? [] : [{ over, way }];
  });
  const load = sheet.loads.find(({ name }) => name === step.load)?.load;
  if (passes.length === 0 || !load) return undefined;
  const [rpm, amps, volts] = [si('rpm'), si('amps'), si('volts')];
  const rate = amps !== undefined && volts !== undefined ? amps * volts : si('rate');
  return {
    id: id ?? freshId('r', trials.runs),
    day,
    setup: step.setup,
    load,
    passes,
    ...(rpm !== undefined && rpm >= 50 && rpm <= 20_000 && { rpm }),
    ...(rate !== undefined && rate <= 1e5 && { consumed: { kind: 'rate', rate } }),
  };
}
