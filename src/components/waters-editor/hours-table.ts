import { html, nothing } from 'lit';
import { property } from 'lit/decorators.js';
import { define } from '../define.ts';
import { SpeakingElement } from '../language/speaking-element.ts';
import { controls } from '../theme/controls.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import { watersWords as words } from '../words/en-waters.ts';
import { record } from './sheet.ts';
import { typedValue } from './typed-value.ts';
import { watersEditorStyles } from './waters-editor.styles.ts';

export type HoursEdited = CustomEvent<{ hours: readonly unknown[] }>;

const COLUMNS = ['h', 'set_deg', 'spring_kn', 'neap_kn'] as const;
/** Hours before and after high water of the usual table. */
const SPAN = 6;

/**
 * @summary The streams of one place by the hour from high water.
 * @fires hours-edited - the rows as typed, wrong ones included
 */
export class HoursTable extends SpeakingElement {
  static override styles = [tokens, controls, watersEditorStyles];

  @property({ attribute: false }) hours: readonly unknown[] = [];
  /** What the reader says of them. */
  @property() problem = '';

  override render() {
    const { hours, problem } = this;
    return html`
      ${
        hours.length === 0
          ? nothing
          : html`<div class="scroll" role="region" tabindex="0" aria-label=${words.hours.caption}>
              <table class="hours">
                <caption>${words.hours.caption}</caption>
                <thead>
                  <tr>
                    ${COLUMNS.map((column) => html`<th scope="col">${words.hours[column]}</th>`)}
                    <td></td>
                  </tr>
                </thead>
                <tbody>
                  ${hours.map((row, i) => this.#row(row, i))}
                </tbody>
              </table>
            </div>`
      }
      ${problem ? html`<p class="problem" id="hours-problem">${problem}</p>` : nothing}
      <div class="row">
        <button type="button" @click=${this.#add}>${words.hours.add}</button>
        ${
          hours.length === 0 ? html`<button type="button" @click=${this.#usual}>${words.hours.usual}</button>` : nothing
        }
      </div>
    `;
  }

  #row(row: unknown, index: number) {
    const cells = record(row) ? row : {};
    return html`<tr>
      ${COLUMNS.map(
        (column) => html`<td>
          <input
            inputmode="decimal"
            autocomplete="off"
            aria-label=${words.hours.cell(index + 1, words.hours[column])}
            aria-invalid=${typeof cells[column] === 'number' ? nothing : 'true'}
            .value=${cells[column] === undefined ? '' : String(cells[column])}
            @change=${(event: Event) => {
              const value = typedValue((event.currentTarget as HTMLInputElement).value);
              this.#tell(this.hours.with(index, { ...cells, [column]: value ?? '' }));
            }}
          />
        </td>`,
      )}
      <td>
        <button
          type="button"
          class="icon"
          aria-label=${words.hours.remove(index + 1)}
          @click=${() => this.#tell(this.hours.toSpliced(index, 1))}
        >
          ×
        </button>
      </td>
    </tr>`;
  }

  #add(): void {
    const last = this.hours.at(-1);
    const h = record(last) && typeof last.h === 'number' ? last.h + 1 : -SPAN;
    this.#tell([...this.hours, { h, set_deg: '', spring_kn: '', neap_kn: '' }]);
  }

  #usual(): void {
    const rows = Array.from({ length: 2 * SPAN + 1 }, (_, i) => ({
      h: i - SPAN,
      set_deg: '',
      spring_kn: '',
      neap_kn: '',
    }));
    this.#tell(rows);
  }

  #tell(hours: readonly unknown[]): void {
    this.dispatchEvent(new CustomEvent('hours-edited', { detail: { hours } }) satisfies HoursEdited);
  }
}

define('homeleg-hours-table', HoursTable);

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-hours-table': HoursTable;
  }
}
