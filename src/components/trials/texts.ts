import type { Store } from '../../core/craft/shapes.ts';
import { balance, type LoadBalance } from '../../core/load/balance.ts';
import type { Load } from '../../core/load/shapes.ts';
import type { Consumed, Setup, Trials } from '../../core/trials/shapes.ts';
import { INCH } from '../../core/units/convert.ts';
import { fuelAboard } from '../deck-plan/pieces.ts';
import type { Measures, StoreKind } from '../units/measures.ts';
import { numberText } from '../units/number-text.ts';
import { dataName } from '../words/en-data.ts';
import { refillWords, runWords, setupWords } from '../words/en-trials.ts';
import { craftOf } from './work.ts';

export function storeKind(store: Store): StoreKind {
  return store.kind === 'tank' ? 'fuel' : 'charge';
}

/** "Petrol outboard, 15 hp, propeller 9.25 x 9.5 in". */
export function setupName({ drive }: Setup, { lang }: Measures): string {
  const size = [drive.propeller.diameter, drive.propeller.pitch].map((metres) =>
    numberText(lang, metres / INCH, { most: 2 }),
  );
  return `${dataName(drive.name)}, ${setupWords.propeller(size.join(' x '))}`;
}

export function balanceOf(trials: Trials, setup: string, load: Load): LoadBalance {
  const craft = craftOf(trials, setup);
  return balance(craft, load, fuelAboard(craft, load));
}

/** "2 people, 185 kg; boat and all in it 320 kg". */
export function loadText(trials: Trials, setup: string, load: Load, measures: Measures): string {
  const { persons, peopleAndGear, allUpMass } = balanceOf(trials, setup, load);
  const mass = (kg: number) => measures.show('mass', kg);
  return `${runWords.people(persons)}, ${mass(peopleAndGear)}; ${runWords.allUp(mass(allUpMass))}`;
}

/** "9.8 L/h", "3.2 L in 20 min". */
export function consumedText(consumed: Consumed | undefined, store: StoreKind, measures: Measures): string {
  if (!consumed) return '\u2013';
  if (consumed.kind === 'rate') return measures.flow(consumed.rate, store);
  return runWords.overTime(measures.show('amount', consumed.amount, store), measures.time(consumed.seconds));
}

export function rpmText(rpm: number, { lang }: Measures): string {
  return runWords.rpmText(numberText(lang, rpm, { most: 0 }));
}

/** "12 %"; a tenth more where it is small. */
export function shareText(share: number, { lang }: Measures): string {
  const size = Math.abs(share) * 100;
  return `${numberText(lang, size, { most: size < 9.5 ? 1 : 0 })}\u00a0%`;
}

/** The day of a run, in the way of the page's language. */
export function dayText(day: string | undefined, { lang }: Measures): string {
  if (!day) return '\u2013';
  return new Intl.DateTimeFormat(lang, { dateStyle: 'medium', timeZone: 'UTC' }).format(new Date(`${day}T12:00:00Z`));
}

/** "Run 3", "Refill 1". */
export function rowName(
  trials: Trials,
  { id, kind }: { readonly id: string; readonly kind: 'run' | 'refill' },
): string {
  const list = kind === 'run' ? trials.runs : trials.refills;
  return `${kind === 'run' ? runWords.number : refillWords.one} ${list.findIndex((one) => one.id === id) + 1}`;
}
