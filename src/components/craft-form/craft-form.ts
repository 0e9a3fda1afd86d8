import { html, nothing } from 'lit';
import { property } from 'lit/decorators.js';
import { keyed } from 'lit/directives/keyed.js';
import type { Craft, Drive, Fouling } from '../../core/craft/shapes.ts';
import { engines, hulls, stores } from '../../core/files/catalogue.ts';
import { define } from '../define.ts';
import { fieldStyles } from '../field/field.styles.ts';
import { SpeakingElement } from '../language/speaking-element.ts';
import { controls } from '../theme/controls.styles.ts';
import { formStyles } from '../theme/form.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import { NAUTICAL } from '../units/default-measures.ts';
import type { Measures } from '../units/measures.ts';
import { craftWords, cycleWords, formWords, foulingWords } from '../words/en-craft.ts';
import './craft-figures.ts';
import type { FiguresEdited } from './craft-figures.ts';
import {
  type ChosenCraft,
  type EngineExample,
  type HullExample,
  type StoreExample,
  suits,
  withEngine,
  withHull,
  withPlate,
  withStore,
} from './edit-craft.ts';
import { placedOn, unplaced } from './place-store.ts';
import './plate-field.ts';
import { dataName } from '../words/en-data.ts';
import type { PlateEdited } from './plate-field.ts';
import { sameFigures } from './same-figures.ts';

export type CraftEdited = CustomEvent<ChosenCraft>;

const FOULINGS: readonly Fouling[] = ['clean', 'slime', 'weed', 'shell'];

interface Pick {
  readonly id: string;
  readonly label: string;
  readonly group: string;
}

/**
 * @summary Picks a boat, an engine and a tank or battery, takes down the plate and the owner's own figures.
 * @fires craft-edited - the user picked or changed something; figures outside their limits are not told
 */
export class CraftForm extends SpeakingElement {
  static override styles = [tokens, controls, fieldStyles, formStyles];

  /** Absent: nothing picked yet, the first examples show. */
  @property({ attribute: false }) craft: Craft | undefined;
  @property({ attribute: false }) hullId: string | undefined;
  @property({ attribute: false }) engineId: string | undefined;
  @property({ attribute: false }) storeId: string | undefined;
  @property({ attribute: false }) measures: Measures = NAUTICAL;
  /** Leaves out the state of the bottom, where somebody else asks for it. */
  @property({ type: Boolean, attribute: 'no-bottom' }) noBottom = false;
  /** Boats to choose from; the invented examples unless a club or hire desk has its own. */
  @property({ attribute: false }) hulls: readonly HullExample[] = hulls;
  @property({ attribute: false }) engines: readonly EngineExample[] = engines;
  @property({ attribute: false }) stores: readonly StoreExample[] = stores;

  override render() {
    const chosen = this.#chosen();
    if (!chosen) return nothing;
    const { craft } = chosen;
    const fuel = craft.store.kind === 'tank';
    const stored = craft.store.kind === 'tank' ? craft.store.tanks : craft.store.batteries;
    return html`<div class="stack">
      <div class="stack close">
        <div class="fields wide">
          ${this.#select('hull', craftWords.boat, chosen.hullId, {
            picks: this.hulls.map(({ id, hull }) => ({ id, label: dataName(hull.name), group: formWords[hull.form] })),
            own: dataName(craft.hull.name) || craftWords.ownBoat,
            picked: (id) => this.#hullPicked(chosen, id),
          })}
          ${this.#select('engine', craftWords.engine, chosen.engineId, {
            picks: this.engines.map(({ id, drive }) => ({ id, label: dataName(drive.name), group: driveGroup(drive) })),
            own: dataName(craft.drive.name) || craftWords.ownEngine,
            picked: (id) => this.#enginePicked(chosen, id),
          })}
          ${this.#select('store', fuel ? craftWords.tank : craftWords.battery, chosen.storeId, {
            picks: this.stores
              .filter(({ store }) => suits(craft.drive, store))
              .map(({ id, store }) => ({ id, label: storeName(store), group: '' })),
            own:
              stored.map(({ name }) => dataName(name)).join(' + ') ||
              (fuel ? craftWords.ownTank : craftWords.ownBattery),
            picked: (id) => this.#storePicked(chosen, id),
          })}
        </div>
        <p class="hint">${craftWords.examples}</p>
        ${this.#changed(chosen)}
      </div>
      ${keyed(
        `${chosen.hullId}`,
        html`<homeleg-plate-field
          .plate=${craft.hull.plate}
          .typical=${this.hulls.find(({ id }) => id === chosen.hullId)?.typicalPlate}
          .measures=${this.measures}
          @plate-edited=${(event: PlateEdited) => this.#tell(withPlate(chosen, event.detail.plate))}
        ></homeleg-plate-field>`,
      )}
      ${this.noBottom ? nothing : this.#bottom(chosen)}
      <details>
        <summary>${craftWords.fineTune}</summary>
        ${keyed(
          `${chosen.hullId} ${chosen.engineId} ${chosen.storeId}`,
          html`<homeleg-craft-figures
            .chosen=${chosen}
            .measures=${this.measures}
            @figures-edited=${(event: FiguresEdited) => this.#tell(event.detail)}
          ></homeleg-craft-figures>`,
        )}
      </details>
    </div>`;
  }

  #chosen(): ChosenCraft | undefined {
    const { craft, hullId, engineId, storeId } = this;
    if (craft) return { craft, hullId, engineId, storeId };
    const hull = this.hulls.find(({ id }) => id === hullId) ?? this.hulls[0];
    const engine = this.engines.find(({ id }) => id === engineId) ?? this.engines[0];
    if (!hull || !engine) return undefined;
    const fitting = this.stores.filter(({ store }) => suits(engine.drive, store));
    const store = fitting.find(({ id }) => id === storeId) ?? fitting[0];
    if (!store) return undefined;
    return {
      craft: { hull: hull.hull, drive: engine.drive, store: placedOn(hull.hull, store.store) },
      hullId: hull.id,
      engineId: engine.id,
      storeId: store.id,
    };
  }

  #select(
    name: string,
    label: string,
    chosen: string | undefined,
    { picks, own, picked }: { picks: readonly Pick[]; own: string; picked: (id: string) => void },
  ) {
    const known = picks.some(({ id }) => id === chosen);
    const groups = [...new Set(picks.map(({ group }) => group))];
    const options = (group: string) =>
      picks
        .filter((pick) => pick.group === group)
        .map(({ id, label: text }) => html`<option value=${id} .selected=${id === chosen}>${text}</option>`);
    return html`<div class="field">
      <label for=${name}>${label}</label>
      <select id=${name} @change=${(event: Event) => picked((event.target as HTMLSelectElement).value)}>
        ${known ? nothing : html`<option value="" .selected=${true}>${own}</option>`}
        ${groups.map((group) => (group ? html`<optgroup label=${group}>${options(group)}</optgroup>` : options(group)))}
      </select>
    </div>`;
  }

  /** Says where the figures differ from the examples picked, with the way back. */
  #changed(chosen: ChosenCraft) {
    const { craft, hullId, engineId, storeId } = chosen;
    const hull = this.hulls.find(({ id }) => id === hullId);
    const engine = this.engines.find(({ id }) => id === engineId);
    const store = this.stores.find(({ id }) => id === storeId);
    const same =
      (!hull || sameFigures({ ...craft.hull, plate: undefined }, { ...hull.hull, plate: undefined })) &&
      (!engine || sameFigures(craft.drive, engine.drive)) &&
      (!store || sameFigures(unplaced(craft.store), unplaced(store.store)));
    if (same) return nothing;
    const back: ChosenCraft = {
      ...chosen,
      craft: {
        ...craft,
        hull: hull ? { ...hull.hull, plate: craft.hull.plate } : craft.hull,
        drive: engine?.drive ?? craft.drive,
        store: store ? placedOn(hull?.hull ?? craft.hull, store.store) : craft.store,
      },
    };
    return html`<p class="changed">
      ${craftWords.changed}
      <button type="button" class="quiet" @click=${() => this.#tell(back)}>${craftWords.reset}</button>
    </p>`;
  }

  #bottom(chosen: ChosenCraft) {
    const { craft } = chosen;
    return html`<div class="fields wide"><div class="field">
        <label for="bottom">${craftWords.bottom}</label>
        <select id="bottom" @change=${(event: Event) => this.#bottomPicked(chosen, (event.target as HTMLSelectElement).value)}>
          ${FOULINGS.map(
            (each) =>
              html`<option value=${each} .selected=${each === (craft.fouling ?? 'clean')}>${foulingWords[each]}</option>`,
          )}
        </select>
    </div></div>`;
  }

  #hullPicked(chosen: ChosenCraft, picked: string): void {
    const example = this.hulls.find(({ id }) => id === picked);
    if (example) this.#tell(withHull(chosen, example));
  }

  #enginePicked(chosen: ChosenCraft, picked: string): void {
    const example = this.engines.find(({ id }) => id === picked);
    if (example) this.#tell(withEngine(chosen, example, this.stores));
  }

  #storePicked(chosen: ChosenCraft, picked: string): void {
    const example = this.stores.find(({ id }) => id === picked);
    if (example) this.#tell(withStore(chosen, example));
  }

  #bottomPicked(chosen: ChosenCraft, picked: string): void {
    const { fouling: _, ...craft } = chosen.craft;
    const fouling = FOULINGS.find((each) => each === picked);
    this.#tell({ ...chosen, craft: fouling && fouling !== 'clean' ? { ...craft, fouling } : craft });
  }

  #tell(detail: ChosenCraft): void {
    Object.assign(this, detail);
    this.dispatchEvent(new CustomEvent('craft-edited', { detail, bubbles: true }) satisfies CraftEdited);
  }
}

function driveGroup(drive: Drive): string {
  return drive.kind === 'electric' ? cycleWords.electric : cycleWords[drive.cycle];
}

function storeName(store: Craft['store']): string {
  return (store.kind === 'tank' ? store.tanks : store.batteries).map(({ name }) => dataName(name)).join(' + ');
}

define('homeleg-craft-form', CraftForm);

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-craft-form': CraftForm;
  }
}
