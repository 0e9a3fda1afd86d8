import { html, nothing, type PropertyValues } from 'lit';
import { property, query, state } from 'lit/decorators.js';
import type { Run, Trials } from '../../core/trials/shapes.ts';
import { define } from '../define.ts';
import { SpeakingElement } from '../language/speaking-element.ts';
import { controls } from '../theme/controls.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import { NAUTICAL } from '../units/default-measures.ts';
import type { Measures } from '../units/measures.ts';
import { helmWords as words } from '../words/en-trials.ts';
import { helmFormStyles } from './helm-form.styles.ts';
import {
  figuresOf,
  type HelmField,
  type HelmFigures,
  helmFields,
  helmUnit,
  pressed,
  type RunStep,
  runOfFigures,
} from './helm-steps.ts';
import { allUp, stepText } from './run-sheet.ts';
import { setupName, storeKind } from './texts.ts';
import { dayOf } from './track-work.ts';
import { type Sheet, setupOf } from './work.ts';

/** A run as far as it is filled in at the helm, and the step of the sheet it belongs to. */
export type HelmRun = CustomEvent<{ run: Run; step: number }>;

const KEYS = ['1', '2', '3', '4', '5', '6', '7', '8', '9', '.', '0', 'back'] as const;

/**
 * @summary The run sheet to fill in at the helm: one figure at a time, large, with one thumb. Needs no network.
 * @fires helm-run - a figure was taken over; the run belongs into the table
 */
export class HelmForm extends SpeakingElement {
  static override styles = [tokens, controls, helmFormStyles];

  @property({ attribute: false }) trials: Trials | undefined;
  @property({ attribute: false }) sheet: Sheet | undefined;
  @property({ attribute: false }) measures: Measures = NAUTICAL;

  @state() private step = 0;
  @state() private field: HelmField = 'out';
  @state() private figures: HelmFigures = {};

  @query('dialog') private dialog!: HTMLDialogElement;

  #awake: { release(): Promise<void> } | undefined;

  /** Opens at the first run that is not filled in yet. */
  open(): void {
    const { sheet } = this;
    if (!sheet) return;
    const next = sheet.steps.findIndex((step, i) => step.kind === 'run' && !sheet.done[i]);
    // What comes before it, such as a change of crew, is shown first; the warm-up too.
    let at = next < 0 ? sheet.steps.length - 1 : next;
    while (at > 0 && sheet.steps[at - 1]!.kind !== 'run') at--;
    this.#go(at);
    this.dialog.showModal();
    void this.#stayAwake();
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    void this.#awake?.release();
    this.#awake = undefined;
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has('sheet') && this.sheet && this.step >= this.sheet.steps.length) this.#go(0);
  }

  override render() {
    const { trials, sheet } = this;
    const step = sheet?.steps[this.step];
    return html`<dialog aria-labelledby="now" @keydown=${this.#keyed} @close=${this.#closed}>
      ${
        trials && sheet && step
          ? html`<div class="helm">
            <header>
              <p>${words.place(this.step + 1, sheet.steps.length)}</p>
              <button type="button" class="quiet" @click=${() => this.dialog.close()}>${words.close}</button>
            </header>
            ${step.kind === 'run' ? this.#run(trials, sheet, step) : html`<h2 id="now" class="do">${stepText(step, trials, this.measures)}</h2>`}
            <div class="turn">
              <button type="button" ?disabled=${this.#first} @click=${this.#back}>${words.back}</button>
              <button type="button" class="primary" @click=${this.#next}>${this.#last ? words.finish : words.next}</button>
            </div>
          </div>`
          : nothing
      }
    </dialog>`;
  }

  #run(trials: Trials, sheet: Sheet, step: RunStep) {
    const { measures, field } = this;
    const fuel = storeKind(setupOf(trials, step.setup).store) === 'fuel';
    const fields = helmFields(sheet, step, trials);
    const mass = words.inAll(allUp(trials, sheet, step.load, step.setup, measures));
    const setup = trials.setups.length > 1 ? setupName(setupOf(trials, step.setup), measures) : '';
    const { sign } = helmUnit(field, fuel, measures);
    return html`
      <div>
        <h2 id="now">${words.sail(measures.show('speed', step.speed))}</h2>
        <p class="with">${[step.load, mass, setup].filter(Boolean).join(', ')}</p>
      </div>
      <div class="fields" role="group" aria-label=${words.figures}>
        ${fields.map(
          (one) => html`<button
            type="button"
            aria-pressed=${String(one === field)}
            @click=${() => this.#pick(one)}
          >
            <span>${words.fields[one]}</span>
            <b>${this.figures[one] || '\u2013'}</b>
          </button>`,
        )}
      </div>
      <output class="digits" aria-live="polite" aria-label=${words.fields[field]}
        >${this.figures[field] || '0'} <small>${sign}</small></output
      >
      <div class="keys">
        ${KEYS.map(
          (
            key,
          ) => html`<button type="button" aria-label=${key === 'back' ? words.erase : nothing} @click=${() => this.#press(key)}>
            ${key === 'back' ? '\u232b' : key}
          </button>`,
        )}
      </div>
    `;
  }

  get #fields(): readonly HelmField[] {
    const step = this.sheet?.steps[this.step];
    return this.trials && this.sheet && step?.kind === 'run' ? helmFields(this.sheet, step, this.trials) : [];
  }

  get #first(): boolean {
    return this.step === 0 && (this.#fields.length === 0 || this.field === this.#fields[0]);
  }

  get #last(): boolean {
    const last = this.step === (this.sheet?.steps.length ?? 0) - 1;
    return last && (this.#fields.length === 0 || this.field === this.#fields.at(-1));
  }

  #next(): void {
    const fields = this.#fields;
    const at = fields.indexOf(this.field);
    this.#take();
    if (at >= 0 && at < fields.length - 1) this.field = fields[at + 1]!;
    else if (this.#last) this.dialog.close();
    else this.#go(this.step + 1);
  }

  #back(): void {
    const fields = this.#fields;
    const at = fields.indexOf(this.field);
    this.#take();
    if (at > 0) this.field = fields[at - 1]!;
    else this.#go(this.step - 1, true);
  }

  #pick(field: HelmField): void {
    this.#take();
    this.field = field;
  }

  /** Goes to a step, with what was filled in there before. */
  #go(step: number, fromBehind = false): void {
    const { sheet, trials } = this;
    const one = sheet?.steps[step];
    if (!sheet || !trials || !one) return;
    this.step = step;
    if (one.kind !== 'run') return;
    const run = trials.runs.find(({ id }) => id === sheet.done[step]);
    const fuel = storeKind(setupOf(trials, one.setup).store) === 'fuel';
    this.figures = figuresOf(run, fuel, this.measures);
    const fields = helmFields(sheet, one, trials);
    this.field = (fromBehind ? fields.at(-1) : fields[0]) ?? 'out';
  }

  #press(key: string): void {
    this.figures = { ...this.figures, [this.field]: pressed(this.figures[this.field] ?? '', key) };
  }

  /** Into the table as it stands, so that nothing is lost when the phone is. */
  #take(): void {
    const { sheet, trials, measures } = this;
    const step = sheet?.steps[this.step];
    if (!sheet || !trials || step?.kind !== 'run') return;
    const id = trials.runs.some((run) => run.id === sheet.done[this.step]) ? sheet.done[this.step] : undefined;
    const day = dayOf(Date.now() / 1000);
    const run = runOfFigures(this.figures, { step, sheet, id, day, trials, measures });
    if (!run) return;
    const detail = { run, step: this.step };
    this.dispatchEvent(new CustomEvent('helm-run', { detail, bubbles: true }) satisfies HelmRun);
  }

  #keyed(event: KeyboardEvent): void {
    if (this.#fields.length === 0 || event.ctrlKey || event.metaKey || event.altKey) return;
    const key = event.key === 'Backspace' ? 'back' : event.key === ',' ? '.' : event.key;
    if (!(KEYS as readonly string[]).includes(key)) return;
    event.preventDefault();
    this.#press(key);
  }

  #closed(): void {
    this.#take();
    void this.#awake?.release();
    this.#awake = undefined;
  }

  /** A dark screen at the helm helps nobody; where the browser refuses, it goes dark as ever. */
  async #stayAwake(): Promise<void> {
    try {
      this.#awake = await navigator.wakeLock?.request('screen');
    } catch {
      this.#awake = undefined;
    }
  }
}

define('homeleg-helm-form', HelmForm);

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-helm-form': HelmForm;
  }
}
