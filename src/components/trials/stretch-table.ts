import { html, nothing } from 'lit';
import { property, state } from 'lit/decorators.js';
import { repeat } from 'lit/directives/repeat.js';
import { define } from '../define.ts';
import { SpeakingElement } from '../language/speaking-element.ts';
import { controls } from '../theme/controls.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import { NAUTICAL } from '../units/default-measures.ts';
import type { Measures } from '../units/measures.ts';
import { trackWords as words } from '../words/en-trials.ts';
import { rowTableStyles } from './row-table.styles.ts';
import { stretchTableStyles } from './stretch-table.styles.ts';
import type { EndMoved } from './track-plot.ts';
import { clockOf, type Found, nextRunName, timeAt } from './track-work.ts';

export type RunPicked = CustomEvent<{ id: string; run: string }>;
export type StretchAsked = CustomEvent<{ id: string; what: 'show' | 'remove' }>;

/** Rows shown before somebody asks for all; stretches before and after one whose runs it may join. */
const FIRST = 40;
const NEAR = 8;

/**
 * @summary The stretches of a track: their times to be typed, and the run each belongs to.
 * @fires end-moved - a time was typed
 * @fires run-picked - a stretch is to belong to another run, or to none
 * @fires stretch-asked - a stretch is to be shown close up, or taken away
 */
export class StretchTable extends SpeakingElement {
  static override styles = [tokens, controls, rowTableStyles, stretchTableStyles];

  /** Of all tracks, so that runs may hold passes of several. */
  @property({ attribute: false }) all: readonly Found[] = [];
  /** Id of the track whose stretches are listed. */
  @property() track = '';
  @property({ attribute: false }) measures: Measures = NAUTICAL;

  @state() private whole = false;

  override render() {
    const own = this.all.filter(({ track }) => track === this.track);
    if (own.length === 0) return html`<p>${words.noStretches}</p>`;
    const rows = this.whole ? own : own.slice(0, FIRST);
    const next = nextRunName(this.all);
    return html`<table role="table">
      <caption class="sr">${words.stretches}</caption>
      <thead role="rowgroup">
        <tr role="row">
          ${[words.stretch, words.from, words.to, words.overGround, words.heading, words.run, words.change].map(
            (name) => html`<th role="columnheader" scope="col">${name}</th>`,
          )}
        </tr>
      </thead>
      <tbody role="rowgroup">
        ${repeat(
          rows,
          ({ id }) => id,
          (one, i) => this.#row(one, i + 1, this.#near(one), next),
        )}
      </tbody>
    </table>
    ${
      rows.length < own.length
        ? html`<button type="button" class="quiet" @click=${this.#wholeWanted}>${words.allStretches(own.length)}</button>`
        : nothing
    }`;
  }

  /** Runs sailed about then; a day has too many to choose from all. */
  #near(one: Found): readonly string[] {
    const at = this.all.indexOf(one);
    const around = this.all.slice(Math.max(0, at - NEAR), at + NEAR + 1);
    return [...new Set(around.map(({ run }) => run))].filter(Boolean).sort();
  }

  #wholeWanted(): void {
    this.whole = true;
  }

  #row({ id, stretch, run }: Found, number: number, names: readonly string[], next: string) {
    const { measures } = this;
    const options = [...names, ...(names.includes(next) ? [] : [next])];
    return html`<tr role="row" class=${run ? '' : 'aside'}>
      <th role="rowheader" scope="row"><span class="number">${number}</span></th>
      ${this.#cell(words.from, this.#time(words.startOf(number), id, stretch, 'start'))}
      ${this.#cell(words.to, this.#time(words.endOf(number), id, stretch, 'end'))}
      ${this.#cell(
        words.overGround,
        html`${measures.show('speed', stretch.speed)}
        <span class="small">${words.during(String(Math.round(stretch.end - stretch.start)))}</span>
        ${stretch.steady ? nothing : html`<span class="flag">${words.unsteady}</span>`}`,
      )}
      ${this.#cell(words.heading, measures.bearing(stretch.headingDeg))}
      ${this.#cell(
        words.run,
        html`<select
          aria-label=${words.runOf(number)}
          @change=${(event: Event) => this.#tell('run-picked', { id, run: (event.target as HTMLSelectElement).value })}
        >
          <option value="" .selected=${run === ''}>${words.noRun}</option>
          ${options.map((name) => html`<option value=${name} .selected=${name === run}>${words.runNamed(name)}</option>`)}
        </select>`,
      )}
      <td role="cell" class="acts">
        <button type="button" class="quiet" aria-label=${words.showOne(number)} @click=${() => this.#tell('stretch-asked', { id, what: 'show' })}>
          ${words.show}
        </button>
        <button type="button" class="quiet" aria-label=${words.removeOne(number)} @click=${() => this.#tell('stretch-asked', { id, what: 'remove' })}>
          ${words.remove}
        </button>
      </td>
    </tr>`;
  }

  #cell(label: string, value: unknown) {
    return html`<td role="cell"><span class="label" aria-hidden="true">${label}</span><div>${value}</div></td>`;
  }

  #time(label: string, id: string, { start, end }: Found['stretch'], which: 'start' | 'end') {
    const now = which === 'start' ? start : end;
    return html`<input
      aria-label=${label}
      inputmode="numeric"
      autocomplete="off"
      .value=${clockOf(now)}
      @change=${(event: Event) => {
        const field = event.target as HTMLInputElement;
        const time = timeAt(field.value, now);
        const told = which === 'start' ? { start: time ?? start, end } : { start, end: time ?? end };
        // Unreadable or out of order: what stood there stands again.
        if (time === undefined || told.end - told.start < 15) field.value = clockOf(now);
        else this.#tell('end-moved', { id, ...told, live: false } satisfies EndMoved['detail']);
      }}
    />`;
  }

  #tell(type: string, detail: unknown): void {
    this.dispatchEvent(new CustomEvent(type, { detail, bubbles: true }));
  }
}

define('homeleg-stretch-table', StretchTable);

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-stretch-table': StretchTable;
  }
}
