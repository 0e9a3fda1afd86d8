import { html } from 'lit';
import type { PlannedSpeed } from '../../core/route/shapes.ts';
import type { Measures } from '../units/measures.ts';
import { waypointWords as words } from './words.ts';

/** A speed to begin with where none is known, m/s: 5 knots. */
const SOME_SPEED = 2.572;

/** Choices of a planned speed, for the route or, with "as planned", for one leg. */
export function speedOptions(chosen: string, leg: boolean) {
  const options = [
    ...(leg ? [['as-planned', words.asPlanned]] : []),
    ['best', words.best],
    ['best-planing', words.bestPlaning],
    ['own', words.ownSpeed],
  ];
  return options.map(([value, label]) => html`<option value=${value!} ?selected=${value === chosen}>${label}</option>`);
}

/** Which choice a speed is. */
export function choiceOf(speed: PlannedSpeed | undefined): string {
  return typeof speed === 'number' ? 'own' : (speed ?? 'as-planned');
}

/** The speed of a choice: undefined for "as planned"; one's own starts from `known`, m/s, to half a unit shown. */
export function speedOf(choice: string, known: number | undefined, measures: Measures): PlannedSpeed | undefined {
  if (choice === 'best' || choice === 'best-planing') return choice;
  if (choice !== 'own') return undefined;
  const shown = Math.max(0.5, Math.round(measures.fromSi('speed', known ?? SOME_SPEED) * 2) / 2);
  return measures.toSi('speed', shown);
}
