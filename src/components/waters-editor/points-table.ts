import { html, nothing, type PropertyValues } from 'lit';
import { property, state } from 'lit/decorators.js';
import type { LatLon } from '../../core/route/shapes.ts';
import { define } from '../define.ts';
import { SpeakingElement } from '../language/speaking-element.ts';
import { place, placeToInsert } from '../route-map/waypoint-edits.ts';
import { controls } from '../theme/controls.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import { parsePosition, showPosition } from '../units/coordinates.ts';
import { watersWords as words } from '../words/en-waters.ts';
import { watersEditorStyles } from './waters-editor.styles.ts';
import type { PlacesEdited } from './waters-map.ts';

/** Rows at once: outlines have thousands of points. */
const PAGE = 50;

/**
 * @summary The points of one outline as a table: the way to draw without the map.
 * @fires places-edited - the points as the user made them
 */
export class PointsTable extends SpeakingElement {
  static override styles = [tokens, controls, watersEditorStyles];

  @property({ attribute: false }) places: readonly LatLon[] = [];
  @property({ type: Boolean }) closed = false;
  @property({ type: Boolean }) single = false;
  /** Which feature and outline this is; another one starts on its first page. */
  @property() of = '';

  @state() private first = 0;
  /** Typed and not read yet, by point; -1 is the one to add. */
  @state() private typed: ReadonlyMap<number, string> = new Map();

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has('of')) {
      this.first = 0;
      this.typed = new Map();
    }
    if (this.first >= this.places.length) this.first = Math.max(0, Math.ceil(this.places.length / PAGE) - 1) * PAGE;
  }

  protected override updated(changed: PropertyValues<this>): void {
    const input = changed.has('of') ? this.renderRoot.querySelector<HTMLInputElement>('#add') : undefined;
    if (input) input.value = '';
  }

  override render() {
    const { places, first, single } = this;
    const shown = places.slice(first, first + PAGE);
    const last = first + shown.length;
    return html`
      ${
        shown.length === 0
          ? nothing
          : html`<table>
              <caption>${words.pointTable}</caption>
              <tbody>
                ${shown.map((at, i) => this.#row(at, first + i))}
              </tbody>
            </table>`
      }
      ${
        places.length > PAGE
          ? html`<div class="row">
              <button type="button" aria-disabled=${first === 0 ? 'true' : nothing} @click=${() => this.#turn(-PAGE)}>
                ${words.before}
              </button>
              <span role="status">${words.pages(first + 1, last, places.length)}</span>
              <button
                type="button"
                aria-disabled=${last >= places.length ? 'true' : nothing}
                @click=${() => this.#turn(PAGE)}
              >
                ${words.after}
              </button>
            </div>`
          : nothing
      }
      ${single && places.length > 0 ? nothing : this.#adding()}
    `;
  }

  #row(at: LatLon, index: number) {
    const wrong = this.typed.has(index);
    const text = this.typed.get(index) ?? showPosition(at, 'metric');
    return html`<tr>
      <th scope="row">${index + 1}</th>
      <td class="grow">
        <input
          id="point-${index}"
          aria-label=${words.pointPlace(index + 1)}
          aria-invalid=${wrong ? 'true' : nothing}
          aria-describedby=${wrong ? `point-${index}-problem` : nothing}
          autocomplete="off"
          spellcheck="false"
          maxlength="120"
          .value=${text}
          @change=${(event: Event) => this.#placed(index, (event.currentTarget as HTMLInputElement).value)}
        />
        ${wrong ? html`<p id="point-${index}-problem" class="problem">${words.badPlace}</p>` : nothing}
      </td>
      ${
        this.single
          ? nothing
          : html`<td class="buttons">
              <button
                type="button"
                class="icon"
                aria-label=${words.insertAfter(index + 1)}
                @click=${() => this.#inserted(index + 1)}
              >
                +
              </button>
              <button
                type="button"
                class="icon"
                aria-label=${words.deletePoint(index + 1)}
                @click=${() => this.#deleted(index)}
              >
                ×
              </button>
            </td>`
      }
    </tr>`;
  }

  #adding() {
    const wrong = this.typed.has(-1);
    return html`<form class="adding" novalidate @submit=${this.#added}>
      <label for="add">${words.addPlace}</label>
      <div class="row">
        <input
          id="add"
          autocomplete="off"
          spellcheck="false"
          maxlength="120"
          aria-invalid=${wrong ? 'true' : nothing}
          aria-describedby=${wrong ? 'add-problem' : nothing}
        />
        <button>${this.single ? words.setPlace : words.addPoint}</button>
      </div>
      ${wrong ? html`<p id="add-problem" class="problem">${words.badPlace}</p>` : nothing}
    </form>`;
  }

  #placed(index: number, text: string): void {
    const at = parsePosition(text);
    this.#note(index, at ? undefined : text);
    if (at) this.#tell(this.places.with(index, place(at)));
  }

  async #added(event: Event): Promise<void> {
    event.preventDefault();
    const input = this.renderRoot.querySelector<HTMLInputElement>('#add')!;
    const at = parsePosition(input.value);
    this.#note(-1, at ? undefined : input.value);
    if (!at) return;
    input.value = '';
    this.#tell([...this.places, place(at)]);
    await this.updateComplete;
    // On to the next point without leaving the keys.
    this.renderRoot.querySelector<HTMLInputElement>('#add')?.focus();
  }

  async #inserted(index: number): Promise<void> {
    const at = placeToInsert(this.places, index, this.closed) ?? this.places[index - 1];
    if (!at) return;
    this.typed = new Map();
    this.#tell(this.places.toSpliced(index, 0, place(at)));
    await this.updateComplete;
    this.renderRoot.querySelector<HTMLInputElement>(`#point-${index}`)?.focus();
  }

  async #deleted(index: number): Promise<void> {
    this.typed = new Map();
    this.#tell(this.places.toSpliced(index, 1));
    await this.updateComplete;
    const next = Math.min(index, this.places.length - 1);
    (
      this.renderRoot.querySelector<HTMLElement>(`#point-${next}`) ?? this.renderRoot.querySelector<HTMLElement>('#add')
    )?.focus();
  }

  #note(index: number, text: string | undefined): void {
    const typed = new Map(this.typed);
    if (text === undefined) typed.delete(index);
    else typed.set(index, text);
    this.typed = typed;
  }

  #turn(by: number): void {
    const first = this.first + by;
    if (first >= 0 && first < this.places.length) this.first = first;
  }

  #tell(places: readonly LatLon[]): void {
    this.dispatchEvent(new CustomEvent('places-edited', { detail: { places, live: false } }) satisfies PlacesEdited);
  }
}

define('homeleg-points-table', PointsTable);

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-points-table': PointsTable;
  }
}
