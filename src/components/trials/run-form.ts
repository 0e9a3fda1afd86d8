import { html, nothing } from 'lit';
import { property, state } from 'lit/decorators.js';
import type { Trials } from '../../core/trials/shapes.ts';
import { curveWords } from '../curve-plot/words.ts';
import { define } from '../define.ts';
import { fieldStyles } from '../field/field.styles.ts';
import { SpeakingElement } from '../language/speaking-element.ts';
import '../field/quantity-field.ts';
import type { QuantityTyped } from '../field/quantity-field.ts';
import { controls } from '../theme/controls.styles.ts';
import { formStyles } from '../theme/form.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import { NAUTICAL } from '../units/default-measures.ts';
import type { Measures } from '../units/measures.ts';
import { trialWords, runWords as words } from '../words/en-trials.ts';
import './aboard-field.ts';
import type { LoadTyped } from './aboard-field.ts';
import { entryFormStyles } from './entry-form.styles.ts';
import './passes-field.ts';
import type { PassesTyped } from './passes-field.ts';
import './reading-field.ts';
import type { ReadingTyped } from './reading-field.ts';
import { consumedOf, problemsOf, type RunEntry, type RunField } from './run-entry.ts';
import { setupName, storeKind } from './texts.ts';
import { setupOf } from './work.ts';

export type EntryTyped = CustomEvent<{ entry: RunEntry }>;

/** Relative standard deviation of a reading where nobody knows it better; shown only as a hint. */
const USUAL_ERROR = 0.05;

/**
 * @summary One run: setup, load, speeds, engine speed, consumption, wind and waves.
 * @fires entry-typed - the user changed something; not yet saved
 * @fires entry-saved - the user saved a run that has no problems
 * @fires entry-left - the user gave the form up
 */
export class RunForm extends SpeakingElement {
  static override styles = [tokens, controls, fieldStyles, formStyles, entryFormStyles];

  @property({ attribute: false }) trials: Trials | undefined;
  @property({ attribute: false }) entry: RunEntry | undefined;
  @property({ attribute: false }) measures: Measures = NAUTICAL;

  /** Problems are told once somebody tried to save. */
  @state() private tried = false;

  override focus(): void {
    this.renderRoot.querySelector<HTMLElement>('h3')?.focus();
  }

  override render() {
    const { trials, entry, measures } = this;
    if (!trials || !entry) return nothing;
    const store = storeKind(setupOf(trials, entry.setup).store);
    const number = trials.runs.findIndex(({ id }) => id === entry.id) + 1;
    return html`<form class="stack" novalidate @submit=${this.#saved}>
      <h3 tabindex="-1">${words.title(number > 0 ? number : undefined)}</h3>
      <div class="fields wide">
        <div class="field setup-field">
          <label for="setup">${words.setup}</label>
          <select id="setup" @change=${this.#setupPicked}>
            ${trials.setups.map(
              (setup) =>
                html`<option value=${setup.id} .selected=${setup.id === entry.setup}>${setupName(setup, measures)}</option>`,
            )}
          </select>
        </div>
        <div class="field">
          <label for="day">${words.date}</label>
          <input id="day" type="date" .value=${entry.day} @change=${this.#dayTyped} />
        </div>
      </div>
      <homeleg-aboard-field
        .trials=${trials}
        .setup=${entry.setup}
        .load=${entry.load}
        .measures=${measures}
        problem=${this.#problem('load')}
        @load-typed=${({ detail }: LoadTyped) => this.#type({ load: detail.load })}
      ></homeleg-aboard-field>
      <homeleg-passes-field
        .passes=${entry.passes}
        .stream=${entry.stream}
        .measures=${measures}
        problem=${this.#problem('passes')}
        @passes-typed=${({ detail }: PassesTyped) => this.#type(detail)}
      ></homeleg-passes-field>
      <div class="fields wide">
        <homeleg-quantity-field
          label=${store === 'fuel' ? words.rpm : words.motorRpm}
          measure="count"
          unit=${curveWords.rpm}
          .unitSize=${1}
          min="100"
          max="12000"
          hint=${store === 'fuel' ? words.rpmHint : ''}
          .measures=${measures}
          .value=${entry.rpm}
          @quantity-typed=${({ detail }: QuantityTyped) => this.#type({ rpm: detail.value })}
        ></homeleg-quantity-field>
        <label class="check">
          <input
            type="checkbox"
            .checked=${entry.fullThrottle}
            @change=${(event: Event) => this.#type({ fullThrottle: (event.target as HTMLInputElement).checked })}
          />
          ${words.fullThrottle}
        </label>
      </div>
      <homeleg-reading-field
        .reading=${entry.reading}
        .store=${store}
        .measures=${measures}
        problem=${this.#problem('reading')}
        @reading-typed=${({ detail }: ReadingTyped) => this.#type({ reading: detail })}
      ></homeleg-reading-field>
      ${this.#around(entry)} ${this.#tellsNothing(entry)}
      <div class="buttons">
        <button class="primary">${trialWords.save}</button>
        <button type="button" @click=${this.#left}>${trialWords.cancel}</button>
      </div>
    </form>`;
  }

  /** What is often left empty. */
  #around(entry: RunEntry) {
    const { measures } = this;
    const filled = entry.windSpeed !== undefined || entry.waveHeight !== undefined || entry.note !== '';
    return html`<details ?open=${filled || this.#problem('wind') !== ''}>
      <summary>${words.conditions}</summary>
      <div class="fields wide">
        <homeleg-quantity-field
          label=${words.wind}
          measure="speed"
          min="0"
          max="25"
          hint=${words.windHint}
          .measures=${measures}
          .value=${entry.windSpeed}
          @quantity-typed=${({ detail }: QuantityTyped) => this.#type({ windSpeed: detail.value })}
        ></homeleg-quantity-field>
        <div class="field">
          <label for="bearing">${words.windFrom}</label>
          <select id="bearing" aria-invalid=${this.#problem('wind') ? 'true' : nothing} @change=${this.#bearingPicked}>
            <option value="">${words.choose}</option>
            ${Object.entries(words.bearings).map(
              ([deg, name]) =>
                html`<option value=${deg} .selected=${Number(deg) === entry.windOffBowDeg}>${name}</option>`,
            )}
          </select>
          <p class="problem" role="alert" ?hidden=${!this.#problem('wind')}>${this.#problem('wind')}</p>
        </div>
        <homeleg-quantity-field
          label=${words.waves}
          measure="length"
          min="0"
          max="3"
          hint=${words.wavesHint}
          .measures=${measures}
          .value=${entry.waveHeight}
          @quantity-typed=${({ detail }: QuantityTyped) => this.#type({ waveHeight: detail.value })}
        ></homeleg-quantity-field>
        <homeleg-quantity-field
          label=${words.error}
          measure="share"
          min="0.005"
          max="0.5"
          hint=${words.errorHint(measures.show('share', USUAL_ERROR))}
          .measures=${measures}
          .value=${entry.consumedError}
          @quantity-typed=${({ detail }: QuantityTyped) => this.#type({ consumedError: detail.value })}
        ></homeleg-quantity-field>
      </div>
      <div class="field more">
        <label for="note">${words.note}</label>
        <textarea id="note" rows="2" maxlength="200" .value=${entry.note} @change=${this.#noteTyped}></textarea>
      </div>
    </details>`;
  }

  #tellsNothing(entry: RunEntry) {
    const told = consumedOf(entry.reading) ?? entry.rpm ?? (entry.fullThrottle || undefined);
    return this.tried && told === undefined ? html`<p class="hint">${words.nothingRead}</p>` : nothing;
  }

  #problem(field: RunField): string {
    const found = this.tried && this.entry && problemsOf(this.entry).find((problem) => problem.field === field);
    return found ? words.problems[found.code] : '';
  }

  /** Litres of the one engine are no watts of the other. */
  #setupPicked(event: Event): void {
    const { trials, entry } = this;
    if (!trials || !entry) return;
    const setup = (event.target as HTMLSelectElement).value;
    const same = setupOf(trials, setup).store.kind === setupOf(trials, entry.setup).store.kind;
    this.#type({ setup, ...(!same && { reading: { kind: 'rate' } }) });
  }

  #dayTyped(event: Event): void {
    this.#type({ day: (event.target as HTMLInputElement).value });
  }

  #bearingPicked(event: Event): void {
    const { value } = event.target as HTMLSelectElement;
    this.#type({ windOffBowDeg: value === '' ? undefined : Number(value) });
  }

  #noteTyped(event: Event): void {
    this.#type({ note: (event.target as HTMLTextAreaElement).value });
  }

  #type(change: Partial<RunEntry>): void {
    if (!this.entry) return;
    this.entry = { ...this.entry, ...change };
    this.#tell('entry-typed');
  }

  #saved(event: Event): void {
    event.preventDefault();
    const { entry } = this;
    if (!entry) return;
    // Fields hold back what they cannot use: a figure out of bounds must not be lost unseen.
    const fields = deepFields(this.renderRoot);
    const invalid = fields.find((field) => field.invalid);
    if (invalid || problemsOf(entry).length > 0) {
      this.tried = true;
      if (invalid) invalid.focus();
      else void this.updateComplete.then(() => this.#toProblem());
      return;
    }
    this.tried = false;
    this.#tell('entry-saved');
  }

  #left(): void {
    this.tried = false;
    this.#tell('entry-left');
  }

  #toProblem(): void {
    const problems: Record<RunField, string> = {
      load: 'homeleg-aboard-field',
      passes: 'homeleg-passes-field',
      reading: 'homeleg-reading-field',
      wind: '#bearing',
    };
    const first = this.entry && problemsOf(this.entry)[0];
    const place = first && this.renderRoot.querySelector<HTMLElement>(problems[first.field]);
    const field = place?.shadowRoot?.querySelector<HTMLElement>('homeleg-quantity-field, summary') ?? place;
    field?.focus();
  }

  #tell(type: 'entry-typed' | 'entry-saved' | 'entry-left'): void {
    this.dispatchEvent(new CustomEvent(type, { detail: { entry: this.entry }, bubbles: true }));
  }
}

/** Every figure of the form, also those of the pieces it is made of. */
function deepFields(root: ParentNode): readonly HTMLElementTagNameMap['homeleg-quantity-field'][] {
  const own = [...root.querySelectorAll('homeleg-quantity-field')];
  const inner = [...root.querySelectorAll('homeleg-passes-field, homeleg-reading-field')];
  return [...own, ...inner.flatMap(({ shadowRoot }) => (shadowRoot ? deepFields(shadowRoot) : []))];
}

define('homeleg-run-form', RunForm);

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-run-form': RunForm;
  }
}
