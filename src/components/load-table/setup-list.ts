import { html, nothing } from 'lit';
import { property } from 'lit/decorators.js';
import { repeat } from 'lit/directives/repeat.js';
import type { Drive, Hull } from '../../core/craft/shapes.ts';
import { engines } from '../../core/files/catalogue.ts';
import { INCH } from '../../core/units/convert.ts';
import { placedOn } from '../craft-form/place-store.ts';
import { define } from '../define.ts';
import { fieldStyles } from '../field/field.styles.ts';
import { SpeakingElement } from '../language/speaking-element.ts';
import '../field/quantity-field.ts';
import { withShaft } from '../../core/compare/shaft.ts';
import type { QuantityTyped } from '../field/quantity-field.ts';
import { InTurns } from '../in-turns.ts';
import { belowStyles } from '../theme/below.styles.ts';
import { controls } from '../theme/controls.styles.ts';
import { formStyles } from '../theme/form.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import { NAUTICAL } from '../units/default-measures.ts';
import type { Measures } from '../units/measures.ts';
import { commonWords } from '../words/en-common.ts';
import { compareWords as words } from '../words/en-compare.ts';
import { cycleWords, shaftWords } from '../words/en-craft.ts';
import { dataName } from '../words/en-data.ts';
import { setupListStyles } from './setup-list.styles.ts';
import { MOST_SETUPS, type SetupChoice, setupFrom, storeName, storesFor } from './setups.ts';

export type SetupsEdited = CustomEvent<{ setups: readonly SetupChoice[] }>;

const SHAFTS = ['short', 'long', 'extra-long'] as const;
/** What a new column starts with. */
const NEXT = 'petrol-9-9hp-4s';

/**
 * @summary The engines to compare, each with its propeller, shaft, and tank or battery.
 * @fires setups-edited - an engine was added, changed or taken off
 */
export class SetupList extends SpeakingElement {
  static override styles = [tokens, controls, fieldStyles, formStyles, belowStyles, setupListStyles];

  @property({ attribute: false }) hull!: Hull;
  @property({ attribute: false }) setups: readonly SetupChoice[] = [];
  @property({ attribute: false }) measures: Measures = NAUTICAL;

  readonly #turns = new InTurns(this, () => this.setups.length);

  override render() {
    const full = this.setups.length >= MOST_SETUPS;
    return html`
      <ol>
        ${repeat(
          this.setups,
          ({ id }) => id,
          (setup, i) => html`<li class="below">${this.#turns.part(i, () => this.#setup(setup, i))}</li>`,
        )}
      </ol>
      <button type="button" id="add" ?disabled=${full} @click=${this.#added}>${words.addEngine}</button>
      ${full ? html`<p class="hint">${words.mostEngines(MOST_SETUPS)}</p>` : nothing}
    `;
  }

  #setup(setup: SetupChoice, i: number) {
    const { drive, store } = setup;
    const groups = [...new Set(engines.map(({ drive: each }) => groupOf(each)))];
    const shaft = drive.shaft;
    return html`<fieldset>
      <legend>${words.setup(i + 1)}</legend>
      <div class="fields">
        <div class="field wide">
          <label for=${`engine-${setup.id}`}>${words.engine}</label>
          <select id=${`engine-${setup.id}`} @change=${(event: Event) => this.#enginePicked(i, picked(event))}>
            ${setup.engineId ? nothing : html`<option value="" selected>${dataName(drive.name)}</option>`}
            ${groups.map(
              (group) => html`<optgroup label=${group}>
                ${engines
                  .filter((engine) => groupOf(engine.drive) === group)
                  .map(
                    ({ id, drive: each }) =>
                      html`<option value=${id} .selected=${id === setup.engineId}>${dataName(each.name)}</option>`,
                  )}
              </optgroup>`,
            )}
          </select>
        </div>
        <div class="field wide">
          <label for=${`store-${setup.id}`}>${words.store(store.kind === 'tank' ? 'fuel' : 'charge')}</label>
          <select id=${`store-${setup.id}`} @change=${(event: Event) => this.#storePicked(i, picked(event))}>
            ${setup.storeId ? nothing : html`<option value="" selected>${storeName(store)}</option>`}
            ${storesFor(drive).map(
              ({ id, store: each }) =>
                html`<option value=${id} .selected=${id === setup.storeId}>${storeName(each)}</option>`,
            )}
          </select>
        </div>
        <homeleg-quantity-field
          label=${words.pitch}
          required
          .unit=${'in'}
          .unitSize=${INCH}
          .min=${2 * INCH}
          .max=${30 * INCH}
          .measures=${this.measures}
          .value=${drive.propeller.pitch}
          @quantity-typed=${(event: QuantityTyped) => this.#pitchTyped(i, event.detail.value)}
        ></homeleg-quantity-field>
        <div class="field">
          <label for=${`shaft-${setup.id}`}>${words.shaft}</label>
          <select id=${`shaft-${setup.id}`} @change=${(event: Event) => this.#shaftPicked(i, picked(event))}>
            ${shaft ? nothing : html`<option value="" selected>${commonWords.notKnown}</option>`}
            ${SHAFTS.map((each) => html`<option value=${each} .selected=${each === shaft}>${shaftWords[each]}</option>`)}
          </select>
        </div>
      </div>
      ${
        this.setups.length > 1
          ? html`<button type="button" class="quiet" aria-label=${`${words.remove}: ${words.setup(i + 1)}`} @click=${() => this.#removed(i)}>
              ${words.remove}
            </button>`
          : nothing
      }
    </fieldset>`;
  }

  #enginePicked(i: number, engineId: string): void {
    if (!engineId) return;
    this.#change(i, setupFrom(this.setups[i]!.id, this.hull, engineId, this.setups[i]!.storeId));
  }

  #storePicked(i: number, storeId: string): void {
    const { drive } = this.setups[i]!;
    const found = storesFor(drive).find(({ id }) => id === storeId);
    if (found) this.#change(i, { ...this.setups[i]!, store: placedOn(this.hull, found.store), storeId });
  }

  #pitchTyped(i: number, pitch: number | undefined): void {
    if (pitch === undefined) return;
    const setup = this.setups[i]!;
    const { drive } = setup;
    this.#change(i, { ...setup, drive: { ...drive, propeller: { ...drive.propeller, pitch } } });
  }

  #shaftPicked(i: number, shaft: string): void {
    if (!shaft) return;
    const setup = this.setups[i]!;
    const fresh = setup.engineId ? setupFrom(setup.id, this.hull, setup.engineId, setup.storeId).drive : setup.drive;
    const changed = withShaft(fresh, shaft as (typeof SHAFTS)[number]);
    this.#change(i, { ...setup, drive: { ...changed, propeller: setup.drive.propeller } });
  }

  #added(): void {
    const used = new Set(this.setups.map(({ id }) => id));
    let number = this.setups.length + 1;
    while (used.has(`e${number}`)) number++;
    this.#tell([...this.setups, setupFrom(`e${number}`, this.hull, NEXT)]);
  }

  #removed(i: number): void {
    this.#tell(this.setups.filter((_, at) => at !== i));
    this.renderRoot.querySelector<HTMLElement>('#add')?.focus();
  }

  #change(i: number, setup: SetupChoice): void {
    this.#tell(this.setups.map((each, at) => (at === i ? setup : each)));
  }

  #tell(setups: readonly SetupChoice[]): void {
    this.setups = setups;
    this.dispatchEvent(new CustomEvent('setups-edited', { detail: { setups }, bubbles: true }) satisfies SetupsEdited);
  }
}

function groupOf(drive: Drive): string {
  return drive.kind === 'electric' ? cycleWords.electric : cycleWords[drive.cycle];
}

function picked(event: Event): string {
  return (event.target as HTMLSelectElement).value;
}

define('homeleg-setup-list', SetupList);

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-setup-list': SetupList;
  }
}
