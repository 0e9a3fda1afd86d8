import { html, nothing, type PropertyValues } from 'lit';
import { property } from 'lit/decorators.js';
import type { Measure } from '../../core/trip/shapes.ts';
import { define } from '../define.ts';
import { SpeakingElement } from '../language/speaking-element.ts';
import { controls } from '../theme/controls.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import { parseDecimal } from '../units/decimal.ts';
import { NAUTICAL } from '../units/default-measures.ts';
import type { Measures, StoreKind } from '../units/measures.ts';
import { fieldWords as words } from '../words/en-forms.ts';
import { fieldStyles } from './field.styles.ts';

/** What was typed; undefined when the field was emptied. SI. */
export type QuantityTyped = CustomEvent<{ value: number | undefined }>;

/**
 * @summary One figure with its unit. Holds SI; shows and reads the units of `measures`.
 * @fires quantity-typed - the user typed a figure inside the limits, or emptied the field
 */
export class QuantityField extends SpeakingElement {
  static override styles = [tokens, controls, fieldStyles];

  @property() label = '';
  @property() measure: Measure = 'length';
  @property() store: StoreKind = 'fuel';
  @property({ attribute: false }) measures: Measures = NAUTICAL;
  /** SI; undefined: not given. */
  @property({ attribute: false }) value: number | undefined;
  /** Limits, SI, both allowed themselves. */
  @property({ type: Number }) min: number | undefined;
  @property({ type: Number }) max: number | undefined;
  /** Makes buttons for less and more, by this much SI. */
  @property({ type: Number }) step: number | undefined;
  @property() hint = '';
  /** Typical figure shown while empty, SI. */
  @property({ attribute: false }) placeholder: number | undefined;
  /** Unit sign in place of that of the measure, with `unitSize` SI in one of it, such as inches for a propeller. */
  @property() unit: string | undefined;
  @property({ type: Number }) unitSize: number | undefined;
  /** Whole figures only. */
  @property({ type: Boolean }) whole = false;
  /** An empty field is a problem. */
  @property({ type: Boolean }) required = false;
  /** A message from outside, shown when the field itself finds nothing wrong. */
  @property() problem = '';

  #text = '';
  /** The SI value that `#text` stands for, so that a figure typed is never rewritten by its own echo. */
  #textValue: number | undefined;
  #writtenIn = '';
  /** Left with what it holds now: only then is a figure that may still grow called too small. */
  #left = false;

  /** True while what is typed cannot be used. */
  get invalid(): boolean {
    return this.#findProblem() !== '';
  }

  override focus(options?: FocusOptions): void {
    this.#input?.focus(options);
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    const unit = `${this.#sign} ${this.#size} ${this.measures.lang}`;
    const anew = unit !== this.#writtenIn;
    const fromOutside = changed.has('value') && this.value !== this.#textValue;
    if (fromOutside || (anew && !this.invalid)) this.#write();
    this.#writtenIn = unit;
  }

  override render() {
    const problem = this.#ripeProblem() || this.problem;
    const described = [this.hint && 'hint', problem && 'problem'].filter(Boolean).join(' ');
    return html`
      <label for="figure">${this.label}</label>
      <div class="row">
        ${this.#stepButton(-1)}
        <div class="figure">
          <input
            id="figure"
            inputmode="decimal"
            autocomplete="off"
            enterkeyhint="done"
            .value=${this.#text}
            placeholder=${this.placeholder === undefined ? nothing : this.#show(this.placeholder)}
            aria-invalid=${problem ? 'true' : nothing}
            aria-describedby=${['unit', described].join(' ').trim()}
            ?required=${this.required}
            @input=${this.#typed}
            @change=${this.#fieldLeft}
          />
          <span id="unit" class="unit">${this.#sign}</span>
        </div>
        ${this.#stepButton(1)}
      </div>
      ${this.hint ? html`<p id="hint" class="hint">${this.hint}</p>` : nothing}
      <p id="problem" class="problem" ?hidden=${!problem}>${problem}</p>
    `;
  }

  #stepButton(side: 1 | -1) {
    if (this.step === undefined) return nothing;
    const name = side < 0 ? words.less(this.label) : words.more(this.label);
    return html`<button type="button" class="icon" aria-label=${name} @click=${() => this.#stepped(side)}>
      ${side < 0 ? '\u2212' : '+'}
    </button>`;
  }

  get #sign(): string {
    return this.unit ?? this.measures.unit(this.measure, this.store);
  }

  get #size(): number {
    return this.unitSize ?? this.measures.toSi(this.measure, 1, this.store);
  }

  #show(si: number): string {
    if (this.unitSize === undefined) return this.measures.figure(this.measure, si, this.store);
    return this.measures.figure('length', this.measures.toSi('length', si / this.unitSize));
  }

  /** In the way the language of the page writes it. */
  get #example(): string {
    return this.measures.figure('length', this.measures.toSi('length', 12.5));
  }

  /** With unit, for messages. */
  #named(si: number): string {
    const sign = this.#sign;
    return `${this.#show(si)}${/^[°%\u00a0]*$/.test(sign) ? '' : '\u00a0'}${sign}`;
  }

  get #input(): HTMLInputElement | null {
    return this.renderRoot.querySelector('input');
  }

  #write(): void {
    this.#text = this.value === undefined ? '' : this.#show(this.value);
    this.#textValue = this.value;
    this.#left = this.value !== undefined;
  }

  #parsed(): number | undefined {
    const shown = parseDecimal(this.#text, this.measures.lang);
    return shown === undefined ? undefined : shown * this.#size;
  }

  #findProblem(): '' | 'missing' | 'no figure' | 'not whole' | 'too small' | 'too large' {
    if (this.#text.trim() === '') return this.required ? 'missing' : '';
    const value = this.#parsed();
    if (value === undefined) return 'no figure';
    const shown = value / this.#size;
    if (this.whole && Math.abs(shown - Math.round(shown)) > 1e-9) return 'not whole';
    // A limit typed back as the message shows it counts as inside.
    const slack = 1e-6 * Math.max(1, Math.abs(value));
    const { min, max } = this;
    if (min !== undefined && value < min - slack && this.#text !== this.#show(min)) return 'too small';
    if (max !== undefined && value > max + slack && this.#text !== this.#show(max)) return 'too large';
    return '';
  }

  /** The message, held back while the figure is only half typed. */
  #ripeProblem(): string {
    const found = this.#findProblem();
    switch (found) {
      case '':
        return '';
      case 'missing':
        return this.#left ? words.missing : '';
      case 'no figure':
        return this.#left || !/^[\s.,+\u2212-]*$/.test(this.#text) ? words.noFigure(this.#example) : '';
      case 'not whole':
        return words.notWhole;
      case 'too small':
        return this.#left ? words.atLeast(this.#named(this.min ?? 0)) : '';
      case 'too large':
        return words.atMost(this.#named(this.max ?? 0));
      default:
        return found satisfies never;
    }
  }

  #typed(): void {
    this.#text = this.#input?.value ?? '';
    this.#left = false;
    this.#tell();
  }

  #fieldLeft(): void {
    this.#left = true;
    this.requestUpdate();
  }

  #stepped(side: 1 | -1): void {
    const step = this.step ?? 0;
    const now = this.#parsed() ?? this.value ?? this.placeholder ?? this.min ?? 0;
    const next = Math.round(now / step + side) * step;
    this.#text = this.#show(Math.min(this.max ?? Infinity, Math.max(this.min ?? -Infinity, next)));
    this.#left = true;
    this.#tell();
  }

  #tell(): void {
    this.requestUpdate();
    if (this.invalid) return;
    const value = this.#text.trim() === '' ? undefined : this.#parsed();
    this.#textValue = value;
    this.value = value;
    this.dispatchEvent(new CustomEvent('quantity-typed', { detail: { value }, bubbles: true }) satisfies QuantityTyped);
  }
}

define('homeleg-quantity-field', QuantityField);

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-quantity-field': QuantityField;
  }
}
