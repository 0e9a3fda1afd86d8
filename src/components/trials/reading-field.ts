import { html, nothing } from 'lit';
import { property } from 'lit/decorators.js';
import { HOUR, MINUTE } from '../../core/units/convert.ts';
import { define } from '../define.ts';
import { SpeakingElement } from '../language/speaking-element.ts';
import '../field/choice-field.ts';
import type { ChoiceMade } from '../field/choice-field.ts';
import '../field/quantity-field.ts';
import type { QuantityTyped } from '../field/quantity-field.ts';
import { controls } from '../theme/controls.styles.ts';
import { formStyles } from '../theme/form.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import { NAUTICAL } from '../units/default-measures.ts';
import type { Measures, StoreKind } from '../units/measures.ts';
import { runWords as words } from '../words/en-trials.ts';
import type { ReadingEntry, ReadingKind } from './run-entry.ts';

export type ReadingTyped = CustomEvent<ReadingEntry>;

interface Figure {
  readonly name: 'rate' | 'amount' | 'seconds' | 'amps' | 'volts';
  readonly label: string;
  readonly max: number;
  readonly unit?: string;
  /** SI in one of that unit. */
  readonly size?: number;
  readonly measure?: 'amount' | 'time';
}

/**
 * @summary Consumption as it was read: a flow or power, an amount over a time, or amps and volts.
 * @fires reading-typed - the user changed a figure or the way it was read
 */
export class ReadingField extends SpeakingElement {
  static override styles = [tokens, controls, formStyles];

  @property({ attribute: false }) reading: ReadingEntry = { kind: 'none' };
  @property() store: StoreKind = 'fuel';
  @property({ attribute: false }) measures: Measures = NAUTICAL;
  @property() problem = '';

  override render() {
    const { reading, store, problem } = this;
    const kinds: readonly ReadingKind[] =
      store === 'fuel' ? ['rate', 'amount', 'none'] : ['rate', 'current', 'amount', 'none'];
    const label = (kind: ReadingKind) =>
      kind === 'rate' || kind === 'amount' ? words.kinds[kind][store] : words.kinds[kind];
    return html`<div class="stack close">
      <homeleg-choice-field
        label=${words.reading(store)}
        .choices=${kinds.map((kind) => ({ value: kind, label: label(kind) }))}
        .value=${reading.kind}
        @choice-made=${(event: ChoiceMade) => this.#tell({ kind: event.detail.value as ReadingKind })}
      ></homeleg-choice-field>
      <div class="fields">${this.#figures().map((figure) => this.#figure(figure))}${this.#product()}</div>
      <p class="problem" role="alert" ?hidden=${!problem}>${problem}</p>
    </div>`;
  }

  /** The fields that this way of reading needs. */
  #figures(): readonly Figure[] {
    const { store, measures } = this;
    const fuel = store === 'fuel';
    switch (this.reading.kind) {
      case 'none':
        return [];
      case 'rate':
        return [
          fuel
            ? {
                name: 'rate',
                label: words.rate.fuel,
                max: 0.05,
                unit: `${measures.unit('amount', 'fuel')}/h`,
                size: measures.toSi('amount', 1, 'fuel') / HOUR,
              }
            : { name: 'rate', label: words.rate.charge, max: 60_000, unit: 'W', size: 1 },
        ];
      case 'amount':
        return [
          { name: 'amount', label: words.amount[store], max: fuel ? 200 : 3.6e8, measure: 'amount' },
          { name: 'seconds', label: words.over, max: 24 * HOUR, measure: 'time' },
        ];
      case 'current':
        return [
          { name: 'amps', label: words.amps, max: 1000, unit: 'A', size: 1 },
          { name: 'volts', label: words.volts, max: 600, unit: 'V', size: 1 },
        ];
      default:
        return this.reading.kind satisfies never;
    }
  }

  #figure({ name, label, max, unit, size, measure }: Figure) {
    return html`<homeleg-quantity-field
      label=${label}
      measure=${measure ?? 'power'}
      store=${this.store}
      min=${name === 'seconds' ? MINUTE / 2 : 0.01 * (size ?? this.measures.toSi('amount', 1, this.store))}
      max=${max}
      .unit=${unit}
      .unitSize=${size}
      .measures=${this.measures}
      .value=${this.reading[name]}
      @quantity-typed=${(event: QuantityTyped) => this.#tell({ [name]: event.detail.value })}
    ></homeleg-quantity-field>`;
  }

  #product() {
    const { kind, amps, volts } = this.reading;
    if (kind !== 'current' || amps === undefined || volts === undefined) return nothing;
    return html`<p class="hint">${words.makes(this.measures.flow(amps * volts, 'charge'))}</p>`;
  }

  #tell(change: Partial<ReadingEntry>): void {
    const detail: ReadingEntry = { ...this.reading, ...change };
    this.reading = detail;
    this.dispatchEvent(new CustomEvent('reading-typed', { detail, bubbles: true }) satisfies ReadingTyped);
  }
}

define('homeleg-reading-field', ReadingField);

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-reading-field': ReadingField;
  }
}
