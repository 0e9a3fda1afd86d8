import { html, nothing } from 'lit';
import { property } from 'lit/decorators.js';
import type { Trials } from '../../core/trials/shapes.ts';
import { curveWords } from '../curve-plot/words.ts';
import { define } from '../define.ts';
import { SpeakingElement } from '../language/speaking-element.ts';
import '../field/quantity-field.ts';
import type { QuantityTyped } from '../field/quantity-field.ts';
import { controls } from '../theme/controls.styles.ts';
import { formStyles } from '../theme/form.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import { NAUTICAL } from '../units/default-measures.ts';
import type { Measures } from '../units/measures.ts';
import { runWords, trackWords as words } from '../words/en-trials.ts';
import './aboard-field.ts';
import type { LoadTyped } from './aboard-field.ts';
import { entryFormStyles } from './entry-form.styles.ts';
import { groupCardStyles } from './group-card.styles.ts';
import './reading-field.ts';
import type { ReadingTyped } from './reading-field.ts';
import { sure } from './still-water-text.ts';
import { setupName, storeKind } from './texts.ts';
import type { GroupReadings, RunToBe } from './track-work.ts';
import { setupOf } from './work.ts';

export type ReadingsTyped = CustomEvent<{ run: string; readings: GroupReadings }>;

/** m/s; below this a stream is within what a receiver can tell. */
const NO_STREAM = 0.05;

/**
 * @summary A run made of passes of a track: speed through still water, the stream, and what was read meanwhile.
 * @fires readings-typed - the user typed a reading, or changed the setup or the load
 */
export class GroupCard extends SpeakingElement {
  static override styles = [tokens, controls, formStyles, entryFormStyles, groupCardStyles];

  @property({ attribute: false }) trials: Trials | undefined;
  @property({ attribute: false }) toBe: RunToBe | undefined;
  @property({ attribute: false }) readings: GroupReadings | undefined;
  @property({ attribute: false }) measures: Measures = NAUTICAL;

  override render() {
    const { trials, toBe, readings, measures } = this;
    if (!trials || !toBe || !readings) return nothing;
    const store = storeKind(setupOf(trials, readings.setup).store);
    return html`<div class="stack close" role="group" aria-label=${words.runNamed(toBe.name)}>
      <h3>${words.runNamed(toBe.name)}</h3>
      <p class="found">${this.#speeds(toBe)}</p>
      ${
        trials.setups.length > 1
          ? html`<div class="field setup-field">
            <label for="setup">${runWords.setup}</label>
            <select id="setup" @change=${this.#setupPicked}>
              ${trials.setups.map(
                (setup) =>
                  html`<option value=${setup.id} .selected=${setup.id === readings.setup}>${setupName(setup, measures)}</option>`,
              )}
            </select>
          </div>`
          : nothing
      }
      <homeleg-aboard-field
        .trials=${trials}
        .setup=${readings.setup}
        .load=${readings.load}
        .measures=${measures}
        @load-typed=${({ detail }: LoadTyped) => this.#type({ load: detail.load })}
      ></homeleg-aboard-field>
      <homeleg-reading-field
        .reading=${readings.reading}
        .store=${store}
        .measures=${measures}
        @reading-typed=${({ detail }: ReadingTyped) => this.#type({ reading: detail })}
      ></homeleg-reading-field>
      <div class="fields">
        <homeleg-quantity-field
          label=${store === 'fuel' ? runWords.rpm : runWords.motorRpm}
          measure="count"
          unit=${curveWords.rpm}
          .unitSize=${1}
          min="100"
          max="12000"
          .measures=${measures}
          .value=${readings.rpm}
          @quantity-typed=${({ detail }: QuantityTyped) => this.#type({ rpm: detail.value })}
        ></homeleg-quantity-field>
        <label class="check">
          <input
            type="checkbox"
            .checked=${readings.fullThrottle}
            @change=${(event: Event) => this.#type({ fullThrottle: (event.target as HTMLInputElement).checked })}
          />
          ${runWords.fullThrottle}
        </label>
      </div>
    </div>`;
  }

  #speeds({ found, group, still }: RunToBe) {
    const { measures } = this;
    const passes = words.passes(found.length);
    if (!group) return `${passes}. ${runWords.through(sure(still.speed, still.deviation, measures))}. ${words.oneWay}`;
    const { along, deviation } = group.stream;
    const way = Math.abs(along) < NO_STREAM ? 'none' : along > 0 ? 'with' : 'against';
    const odd = group.passes
      .filter((pass) => pass.odd)
      .map(({ stretch }) => found.findIndex((one) => one.stretch === stretch) + 1);
    return html`${passes}. ${runWords.through(sure(group.speed, group.deviation, measures))};
      ${runWords.streamFound(sure(Math.abs(along), deviation, measures), way)}.
      ${odd.length > 0 ? html`<b class="odd">${words.odd(odd.join(', '))}</b>` : nothing}`;
  }

  /** Litres of the one engine are no watts of the other. */
  #setupPicked(event: Event): void {
    const { trials, readings } = this;
    if (!trials || !readings) return;
    const setup = (event.target as HTMLSelectElement).value;
    const same = setupOf(trials, setup).store.kind === setupOf(trials, readings.setup).store.kind;
    this.#type({ setup, ...(!same && { reading: { kind: 'rate' } }) });
  }

  #type(change: Partial<GroupReadings>): void {
    if (!this.readings || !this.toBe) return;
    this.readings = { ...this.readings, ...change };
    const detail = { run: this.toBe.name, readings: this.readings };
    this.dispatchEvent(new CustomEvent('readings-typed', { detail, bubbles: true }) satisfies ReadingsTyped);
  }
}

define('homeleg-group-card', GroupCard);

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-group-card': GroupCard;
  }
}
