import { html } from 'lit';
import { property, query } from 'lit/decorators.js';
import type { Trip } from '../../core/trip/shapes.ts';
import { define } from '../define.ts';
import { SpeakingElement } from '../language/speaking-element.ts';
import { controls } from '../theme/controls.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import type { UnitSystem } from '../units/measures.ts';
import { linkWords } from '../words/en-link.ts';
import { plannerWords as words } from '../words/en-planner.ts';
import { problemText } from '../words/en-problems.ts';
import { EXAMPLES, type ExampleName, exampleTrip } from './examples.ts';
import { type Opened, openText } from './open-file.ts';
import { saveFile } from './save-file.ts';
import { tellLeft } from './trip-left.ts';
import { tripText } from './trip-text.ts';
import { tripToolsStyles } from './trip-tools.styles.ts';

export type UnitsPicked = CustomEvent<{ units: UnitSystem }>;
export type StepWanted = CustomEvent<{ what: 'undone' | 'redone' }>;
/** A trip or a measured boat to take the place of the one on screen, or why there is none. */
export type TripPicked = CustomEvent<(Opened & { name: string }) | { refused: string }>;

export const UNITS: readonly UnitSystem[] = ['nautical', 'metric', 'imperial'];

/**
 * @summary Units, example trips, and the trip as a file.
 * @fires units-picked - other units
 * @fires trip-picked - an example or a file was opened, or could not be
 * @fires step-wanted - a step back or on over the whole trip
 * @fires fresh-wanted - start again
 * @fires trip-left - the trip was saved as a file
 * @fires print-wanted - print what there is
 */
export class TripTools extends SpeakingElement {
  static override styles = [tokens, controls, tripToolsStyles];

  @property({ attribute: false }) trip: Trip | undefined;
  @property() units: UnitSystem = 'nautical';
  /** There is a step back, or on. */
  @property({ type: Boolean }) undoable = false;
  @property({ type: Boolean }) redoable = false;

  @query('input') private picker!: HTMLInputElement;

  override render() {
    return html`
      <label>
        ${words.units}
        <select @change=${this.#unitsPicked}>
          ${UNITS.map((u) => html`<option value=${u} ?selected=${u === this.units}>${words.unitNames[u]}</option>`)}
        </select>
      </label>
      <label>
        ${words.examples}
        <select @change=${this.#examplePicked}>
          <option value="">${words.choose}</option>
          ${EXAMPLES.map((name) => html`<option value=${name}>${words.exampleNames[name]}</option>`)}
        </select>
      </label>
      <div class="steps" role="group" aria-label=${linkWords.history}>
        <button type="button" class="quiet" aria-disabled=${!this.undoable} @click=${() => this.#step('undone')}>
          ${linkWords.undo}
        </button>
        <button type="button" class="quiet" aria-disabled=${!this.redoable} @click=${() => this.#step('redone')}>
          ${linkWords.redo}
        </button>
      </div>
      <details>
        <summary>${words.file}</summary>
        <div>
          <button type="button" @click=${this.#savePressed}>${words.save}</button>
          <button type="button" @click=${() => this.picker.click()}>${words.open}</button>
          <input
            type="file"
            accept=".json,application/json"
            tabindex="-1"
            aria-label=${words.open}
            @change=${this.#filePicked}
          />
          <button type="button" @click=${() => this.#tell('print-wanted', {})}>${words.print}</button>
          <button type="button" class="quiet" @click=${() => this.#tell('fresh-wanted', {})}>${words.fresh}</button>
        </div>
      </details>
    `;
  }

  #step(what: 'undone' | 'redone'): void {
    if (what === 'undone' ? this.undoable : this.redoable) this.#tell('step-wanted', { what });
  }

  #unitsPicked(event: Event): void {
    this.#tell('units-picked', { units: (event.target as HTMLSelectElement).value });
  }

  async #examplePicked(event: Event): Promise<void> {
    const list = event.target as HTMLSelectElement;
    const name = list.value as ExampleName | '';
    list.value = '';
    if (!name) return;
    const trip = await exampleTrip(name);
    this.#tell('trip-picked', trip ? { trip, name: words.exampleNames[name] } : { refused: words.loadFailed });
  }

  async #filePicked(): Promise<void> {
    const file = this.picker.files?.[0];
    this.picker.value = '';
    if (!file) return;
    try {
      const read = await openText(await file.text());
      const why = read.ok ? '' : this.say(() => read.problems.slice(0, 3).map((problem) => `${problemText(problem)}.`));
      this.#tell(
        'trip-picked',
        read.ok ? { ...read.value, name: file.name } : { refused: [words.notOpened, ...why].join(' ') },
      );
    } catch {
      this.#tell('trip-picked', { refused: words.notOpened });
    }
  }

  #savePressed(): void {
    const { trip } = this;
    if (!trip) return;
    const name = (trip.name ?? 'trip').replace(/[^\p{L}\p{N}]+/gu, '-');
    saveFile(`${name}.json`, tripText(trip));
    tellLeft(this, 'file');
  }

  #tell(type: string, detail: unknown): void {
    this.dispatchEvent(new CustomEvent(type, { detail, bubbles: true }));
  }
}

define('homeleg-trip-tools', TripTools);

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-trip-tools': TripTools;
  }
}
