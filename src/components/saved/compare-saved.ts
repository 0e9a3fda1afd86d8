import { html, type PropertyValues } from 'lit';
import { property, state } from 'lit/decorators.js';
import type { Waters } from '../../core/route/waters.ts';
import { planTrip } from '../../core/trip/plan-trip.ts';
import type { Plan, Trip } from '../../core/trip/shapes.ts';
import { define } from '../define.ts';
import { SpeakingElement } from '../language/speaking-element.ts';
import { controls } from '../theme/controls.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import { NAUTICAL } from '../units/default-measures.ts';
import type { Measures } from '../units/measures.ts';
import { cautions } from '../words/en-cautions.ts';
import { savedWords as words } from '../words/en-saved.ts';
import { type Compared, compareRows } from './compare-rows.ts';
import { savedStyles } from './saved.styles.ts';
import type { Saved } from './saved-store.ts';

/** @summary Two plans side by side: the trip on screen or a saved one, against another. */
export class CompareSaved extends SpeakingElement {
  static override styles = [tokens, controls, savedStyles];

  @property({ attribute: false }) entries: readonly Saved[] = [];
  /** As planned, with its plan. */
  @property({ attribute: false }) trip: Trip | undefined;
  @property({ attribute: false }) plan: Plan | undefined;
  @property({ attribute: false }) waters: Waters | undefined;
  /** Makes a saved trip one that can be planned: its boat measured by its runs, once they can be, and the host's limits. */
  @property({ attribute: false }) prepared: (trip: Trip) => Trip | undefined = (trip) => trip;
  @property({ type: Boolean }) fitted = false;
  @property({ attribute: false }) measures: Measures = NAUTICAL;

  /** Ids; empty: on screen. */
  @state() private chosen: readonly [string, string] = ['', ''];

  #plans = new Map<string, Plan | undefined>();

  protected override willUpdate(changed: PropertyValues): void {
    if (changed.has('entries') || changed.has('waters') || changed.has('fitted')) this.#plans.clear();
    const trips = this.#trips;
    const known = (id: string) => id === '' || trips.some((trip) => trip.id === id);
    const [first, second] = this.chosen;
    if (!known(first) || !known(second) || (first === '' && second === '')) {
      this.chosen = [known(first) ? first : '', known(second) && second ? second : (trips[0]?.id ?? '')];
    }
  }

  get #trips() {
    return this.entries.flatMap((entry) => (entry.kind === 'trip' ? [entry] : []));
  }

  override render() {
    const pair = [this.#compared(this.chosen[0]), this.#compared(this.chosen[1])] as const;
    const named = this.chosen.map((id) => this.#trips.find((entry) => entry.id === id)?.name ?? words.onScreen);
    return html`
      <div class="pair">${this.#choice(0, words.first)} ${this.#choice(1, words.second)}</div>
      <table class="side" role="table">
        <caption>${words.compareHint}</caption>
        <thead role="rowgroup">
          <tr role="row"><th role="columnheader" scope="col">${words.figure}</th>${named.map((name) => html`<th role="columnheader" scope="col">${name}</th>`)}</tr>
        </thead>
        <tbody role="rowgroup">
          ${compareRows(pair, this.measures).map(
            ([label, ...texts]) => html`<tr role="row">
              <th role="rowheader" scope="row">${label}</th>
              ${texts.map((text) => html`<td role="cell">${text}</td>`)}
            </tr>`,
          )}
        </tbody>
      </table>
      <p class="hint">${cautions().join(' ')}</p>
    `;
  }

  #choice(side: 0 | 1, label: string) {
    const now = this.chosen[side];
    const picked = (event: Event) => {
      const id = (event.target as HTMLSelectElement).value;
      this.chosen = side === 0 ? [id, this.chosen[1]] : [this.chosen[0], id];
    };
    return html`<label>
      ${label}
      <select @change=${picked}>
        <option value="" ?selected=${now === ''}>${words.onScreen}</option>
        ${this.#trips.map(({ id, name }) => html`<option value=${id} ?selected=${id === now}>${name}</option>`)}
      </select>
    </label>`;
  }

  #compared(id: string): Compared {
    if (id === '') return { plan: this.plan, departure: this.trip?.conditions.departure };
    const entry = this.#trips.find((trip) => trip.id === id);
    if (!entry) return { plan: undefined, departure: undefined };
    if (!this.#plans.has(id)) {
      const trip = this.prepared(entry.trip);
      const planned = trip && planTrip(trip, this.waters, { quick: true });
      this.#plans.set(id, planned?.ok ? planned.value : undefined);
    }
    return { plan: this.#plans.get(id), departure: entry.trip.conditions.departure };
  }
}

define('homeleg-compare-saved', CompareSaved);

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-compare-saved': CompareSaved;
  }
}
