import { html, nothing } from 'lit';
import { property, query, state } from 'lit/decorators.js';
import type { Trials } from '../../core/trials/shapes.ts';
import { HOUR, MINUTE } from '../../core/units/convert.ts';
import { define } from '../define.ts';
import { SpeakingElement } from '../language/speaking-element.ts';
import '../field/choice-field.ts';
import type { ChoiceMade } from '../field/choice-field.ts';
import { fieldStyles } from '../field/field.styles.ts';
import '../field/quantity-field.ts';
import type { QuantityTyped } from '../field/quantity-field.ts';
import { controls } from '../theme/controls.styles.ts';
import { formStyles } from '../theme/form.styles.ts';
import { filePickerStyles } from '../theme/open-file.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import { NAUTICAL } from '../units/default-measures.ts';
import type { Measures } from '../units/measures.ts';
import { runWords, trackWords, trialWords, refillWords as words } from '../words/en-trials.ts';
import './aboard-field.ts';
import { problemText } from '../words/en-problems.ts';
import type { LoadTyped } from './aboard-field.ts';
import { entryFormStyles } from './entry-form.styles.ts';
import { type RefillEntry, type RefillProblem, refillProblems, type SpentEntry } from './refill-entry.ts';
import { setupName, storeKind } from './texts.ts';
import { setupOf } from './work.ts';

export type RefillTyped = CustomEvent<{ entry: RefillEntry }>;

const MOST_SPEEDS = 12;

/**
 * @summary One refill: a trip by its speeds and times, and what was put back afterwards.
 * @fires refill-typed - the user changed something; not yet saved
 * @fires refill-saved - the user saved a refill that has no problems
 * @fires refill-left - the user gave the form up
 */
export class RefillForm extends SpeakingElement {
  static override styles = [tokens, controls, fieldStyles, formStyles, filePickerStyles, entryFormStyles];

  @property({ attribute: false }) trials: Trials | undefined;
  @property({ attribute: false }) entry: RefillEntry | undefined;
  @property({ attribute: false }) measures: Measures = NAUTICAL;

  @state() private tried = false;
  /** What came of a track. */
  @state() private said = '';

  @query('input[type=file]') private picker!: HTMLInputElement;

  override focus(): void {
    this.renderRoot.querySelector<HTMLElement>('h3')?.focus();
  }

  override render() {
    const { trials, entry, measures } = this;
    if (!trials || !entry) return nothing;
    const store = storeKind(setupOf(trials, entry.setup).store);
    return html`<form class="stack" novalidate @submit=${this.#saved}>
      <h3 tabindex="-1">${words.title(entry.id !== undefined)}</h3>
      <div class="fields wide">
        <div class="field setup-field">
          <label for="setup">${runWords.setup}</label>
          <select id="setup" @change=${this.#setupPicked}>
            ${trials.setups.map(
              (setup) =>
                html`<option value=${setup.id} .selected=${setup.id === entry.setup}>${setupName(setup, measures)}</option>`,
            )}
          </select>
        </div>
        <div class="field">
          <label for="day">${runWords.date}</label>
          <input
            id="day"
            type="date"
            .value=${entry.day}
            @change=${(event: Event) => this.#type({ day: (event.target as HTMLInputElement).value })}
          />
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
      <fieldset aria-describedby="spent-hint">
        <legend>${words.spent}</legend>
        <div class="spent-list">${entry.spent.map((spent, i) => this.#spent(spent, i))}</div>
        <p class="problem" role="alert" ?hidden=${!this.#problem('spent')}>${this.#problem('spent')}</p>
        <div class="tools">
          <button type="button" ?disabled=${entry.spent.length >= MOST_SPEEDS} @click=${() => this.#type({ spent: [...entry.spent, {}] })}>
            ${words.addSpeed}
          </button>
          <button type="button" @click=${() => this.picker.click()}>${words.fromTrack}</button>
          <button type="button" @click=${this.#planPicked}>${words.fromPlan}</button>
          <input
            type="file"
            accept=".gpx,application/gpx+xml"
            tabindex="-1"
            aria-label=${words.fromTrack}
            @change=${this.#trackPicked}
          />
        </div>
        <p role="status" class="hint">${this.said}</p>
        <p id="spent-hint" class="hint">${words.spentHint}</p>
      </fieldset>
      <div class="fields wide">
        <homeleg-quantity-field
          label=${words.amount[store]}
          measure="amount"
          .store=${store}
          min=${0.01 * measures.toSi('amount', 1, store)}
          max=${store === 'fuel' ? 300 : 3.6e8}
          .measures=${measures}
          .value=${entry.amount}
          problem=${this.#problem('amount')}
          @quantity-typed=${({ detail }: QuantityTyped) => this.#type({ amount: detail.value })}
        ></homeleg-quantity-field>
        ${
          store === 'charge'
            ? html`<homeleg-choice-field
              label=${words.readAt}
              .choices=${Object.entries(words.readAtPlaces).map(([value, label]) => ({ value, label }))}
              .value=${entry.readAt ?? 'socket'}
              @choice-made=${(event: ChoiceMade) => this.#type({ readAt: event.detail.value as 'battery' | 'socket' })}
            ></homeleg-choice-field>`
            : nothing
        }
      </div>
      <div class="field">
        <label for="note">${runWords.note}</label>
        <textarea
          id="note"
          rows="2"
          maxlength="200"
          .value=${entry.note}
          @change=${(event: Event) => this.#type({ note: (event.target as HTMLTextAreaElement).value })}
        ></textarea>
      </div>
      <div class="buttons">
        <button class="primary">${trialWords.save}</button>
        <button type="button" @click=${this.#left}>${trialWords.cancel}</button>
      </div>
    </form>`;
  }

  #spent({ speed, seconds }: SpentEntry, i: number) {
    const spent = this.entry?.spent ?? [];
    return html`<div class="spent">
      <homeleg-quantity-field
        label=${words.speed(i + 1)}
        measure="speed"
        min="0"
        max="30"
        .measures=${this.measures}
        .value=${speed}
        @quantity-typed=${({ detail }: QuantityTyped) => this.#put(i, { speed: detail.value, seconds })}
      ></homeleg-quantity-field>
      <homeleg-quantity-field
        label=${words.time}
        measure="time"
        min=${MINUTE / 2}
        max=${48 * HOUR}
        .measures=${this.measures}
        .value=${seconds}
        @quantity-typed=${({ detail }: QuantityTyped) => this.#put(i, { speed, seconds: detail.value })}
      ></homeleg-quantity-field>
      <button
        type="button"
        class="quiet icon"
        aria-label=${words.removeSpeed(i + 1)}
        ?disabled=${spent.length < 2}
        @click=${() => this.#type({ spent: spent.toSpliced(i, 1) })}
      >
        <svg viewBox="0 0 16 16" width="16" height="16" aria-hidden="true"><path d="M3 3L13 13M13 3L3 13" /></svg>
      </button>
    </div>`;
  }

  /** Litres of the one are no watt-hours of the other. */
  #setupPicked(event: Event): void {
    const { trials, entry } = this;
    if (!trials || !entry) return;
    const setup = (event.target as HTMLSelectElement).value;
    const same = setupOf(trials, setup).store.kind === setupOf(trials, entry.setup).store.kind;
    this.#type({ setup, ...(!same && { amount: undefined }) });
  }

  /** The trip as planned is taken for the trip as made. */
  async #planPicked(): Promise<void> {
    try {
      const { plannedSpent } = await import('./planned-spent.ts');
      const spent = await plannedSpent();
      this.said = spent ? words.taken(spent.length) : words.noPlan;
      if (spent) this.#type({ spent });
    } catch {
      this.said = trackWords.failed;
    }
  }

  /** All tracks of the file together are the trip. */
  async #trackPicked(): Promise<void> {
    const file = this.picker.files?.[0];
    this.picker.value = '';
    if (!file) return;
    this.said = trackWords.reading(file.name);
    try {
      const [{ readTracks }, { spentOf }, { textOfBytes }] = await Promise.all([
        import('./track-reader.ts'),
        import('./spent-of.ts'),
        import('../../core/files/text-of-bytes.ts'),
      ]);
      const text = async () => textOfBytes(new Uint8Array(await file.arrayBuffer()));
      const read = await readTracks(
        [{ name: file.name, text }],
        Date.now() / 1000,
        () => {},
        () => this.isConnected,
      );
      const pieces = read?.tracks.flatMap(({ measured }) => measured.pieces) ?? [];
      const spent = spentOf({ time: new Float64Array(), pieces, noise: 0 });
      const problem = read?.refused[0]?.problems[0];
      this.said = this.say(() =>
        spent.length > 0 ? words.taken(spent.length) : problem ? problemText(problem) : words.nothingTaken,
      );
      if (spent.length > 0) this.#type({ spent });
    } catch {
      this.said = trackWords.failed;
    }
  }

  #put(i: number, spent: SpentEntry): void {
    if (this.entry) this.#type({ spent: this.entry.spent.with(i, spent) });
  }

  #problem(field: RefillProblem['field']): string {
    const found = this.tried && this.entry && refillProblems(this.entry).find((problem) => problem.field === field);
    return found ? words.problems[found.code] : '';
  }

  #type(change: Partial<RefillEntry>): void {
    if (!this.entry) return;
    this.entry = { ...this.entry, ...change };
    this.#tell('refill-typed');
  }

  #saved(event: Event): void {
    event.preventDefault();
    const { entry, trials } = this;
    if (!entry || !trials) return;
    const invalid = [...this.renderRoot.querySelectorAll('homeleg-quantity-field')].find((field) => field.invalid);
    if (invalid || refillProblems(entry).length > 0) {
      this.tried = true;
      (invalid ?? this.renderRoot.querySelector('homeleg-quantity-field'))?.focus();
      return;
    }
    this.tried = false;
    const charge = setupOf(trials, entry.setup).store.kind === 'battery';
    if (charge && !entry.readAt) this.entry = { ...entry, readAt: 'socket' };
    this.#tell('refill-saved');
  }

  #left(): void {
    this.tried = false;
    this.#tell('refill-left');
  }

  #tell(type: 'refill-typed' | 'refill-saved' | 'refill-left'): void {
    this.dispatchEvent(new CustomEvent(type, { detail: { entry: this.entry }, bubbles: true }));
  }
}

define('homeleg-refill-form', RefillForm);

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-refill-form': RefillForm;
  }
}
