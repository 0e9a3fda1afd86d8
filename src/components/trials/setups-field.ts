import { html, nothing } from 'lit';
import { property, state } from 'lit/decorators.js';
import { keyed } from 'lit/directives/keyed.js';
import type { Trials } from '../../core/trials/shapes.ts';
import { InTurns } from '../in-turns.ts';
import { SpeakingElement } from '../language/speaking-element.ts';
import '../craft-form/craft-form.ts';
import type { CraftEdited } from '../craft-form/craft-form.ts';
import { define } from '../define.ts';
import '../field/choice-field.ts';
import type { ChoiceMade } from '../field/choice-field.ts';
import type { CraftOrigin } from '../planner/first-trip.ts';
import { controls } from '../theme/controls.styles.ts';
import { formStyles } from '../theme/form.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import { NAUTICAL } from '../units/default-measures.ts';
import type { Measures } from '../units/measures.ts';
import { setupWords as words } from '../words/en-trials.ts';
import { freshId, onHull, usesOf, withoutSetup, withSetup } from './edit-trials.ts';
import { setupsStyles } from './setups-field.styles.ts';
import { setupName } from './texts.ts';
import { plannerDraft } from './to-planner.ts';
import { craftOf, setupOf } from './work.ts';

type Origins = Readonly<Record<string, CraftOrigin>>;
export type SetupsEdited = CustomEvent<{ trials: Trials; origins: Origins; removed?: boolean }>;

/** As many as a profile holds. */
const MOST_SETUPS = 24;

/**
 * @summary The hull, and the engines, propellers, tanks and batteries it was tried with.
 * @fires setups-edited - the user changed the hull or a setup, made another one or deleted one
 */
export class SetupsField extends SpeakingElement {
  static override styles = [tokens, controls, formStyles, setupsStyles];

  @property({ attribute: false }) trials: Trials | undefined;
  @property({ attribute: false }) origins: Origins = {};
  @property({ attribute: false }) measures: Measures = NAUTICAL;

  /** Id of the setup open for changes. */
  @state() private chosen = '';
  /** What came of asking the planner. */
  @state() private said = '';

  readonly #turns = new InTurns(this, () => 2);

  override render() {
    const { trials, measures } = this;
    if (!trials) return nothing;
    const setup = setupOf(trials, this.chosen);
    const origin = this.origins[setup.id];
    const uses = usesOf(trials, setup.id);
    return html`<div class="stack">
      <homeleg-choice-field
        label=${words.water}
        .choices=${[{ value: 'sea', label: words.salt }, { value: 'fresh', label: words.fresh }]}
        .value=${trials.water}
        @choice-made=${(event: ChoiceMade) => this.#tell({ ...trials, water: event.detail.value as Trials['water'] })}
      ></homeleg-choice-field>
      <div>
        ${
          trials.setups.length < 2
            ? html`<p class="one"><b>${words.setups}</b>: ${setupName(setup, measures)}</p>
              <p class="hint">${words.setupsHint}</p>`
            : html`<homeleg-choice-field
          label=${words.setups}
          .choices=${trials.setups.map((one) => ({ value: one.id, label: setupName(one, measures) }))}
          .value=${setup.id}
          hint=${words.setupsHint}
          @choice-made=${(event: ChoiceMade) => this.#choose(event.detail.value)}
        ></homeleg-choice-field>`
        }
        <div class="buttons more">
          <button type="button" ?disabled=${trials.setups.length >= MOST_SETUPS} @click=${() => this.#added(trials)}>
            ${words.add}
          </button>
          <button type="button" @click=${() => this.#fromPlanner(setup.id)}>${words.fromPlanner}</button>
          ${
            trials.setups.length > 1
              ? html`<button type="button" class="quiet" ?disabled=${uses > 0} @click=${() => this.#removed(trials, setup.id)}>
                ${words.remove}
              </button>`
              : nothing
          }
        </div>
        <p role="status" class="hint">${this.said}</p>
        ${trials.setups.length > 1 && uses > 0 ? html`<p class="hint">${words.inUse(uses)}</p>` : nothing}
      </div>
      ${keyed(
        setup.id,
        this.#turns.part(
          1,
          () => html`<homeleg-craft-form
          no-bottom
          .craft=${craftOf(trials, setup.id)}
          .hullId=${origin?.hullId}
          .engineId=${origin?.engineId}
          .storeId=${origin?.storeId}
          .measures=${measures}
          @craft-edited=${({ detail }: CraftEdited) => this.#edited(trials, setup.id, detail)}
        ></homeleg-craft-form>`,
        ),
      )}
    </div>`;
  }

  #choose(id: string): void {
    this.chosen = id;
  }

  #edited(trials: Trials, id: string, { craft, hullId, engineId, storeId }: CraftEdited['detail']): void {
    const { hull, drive, store } = craft;
    // Litres read with the one are no watts of the other: what runs were made with stays, and this is another setup.
    const other = store.kind !== setupOf(trials, id).store.kind && usesOf(trials, id) > 0;
    if (other) {
      const fresh = freshId('s', trials.setups);
      this.chosen = fresh;
      this.said = words.otherKind;
      this.#tell(withSetup(trials, { id: fresh, drive, store }), {
        ...this.origins,
        [fresh]: { hullId, engineId, storeId },
      });
      return;
    }
    const next = withSetup(hull === trials.hull ? trials : onHull(trials, hull), { id, drive, store });
    const origins = Object.fromEntries(
      next.setups.map((setup) => [setup.id, { ...this.origins[setup.id], hullId }]),
    ) as Record<string, CraftOrigin>;
    this.#tell(next, { ...origins, [id]: { hullId, engineId, storeId } });
  }

  /** A copy of the one on screen: most often only the propeller differs. */
  #added(trials: Trials): void {
    const from = setupOf(trials, this.chosen);
    const id = freshId('s', trials.setups);
    this.chosen = id;
    this.#tell(withSetup(trials, { ...from, id }), { ...this.origins, [id]: this.origins[from.id] ?? {} });
  }

  /** Hull, engine and tank or battery as the planner on this device has them, in the setup on screen. */
  async #fromPlanner(id: string): Promise<void> {
    const draft = await plannerDraft();
    const { trials } = this;
    if (!draft || !trials) {
      this.said = words.noPlanner;
      return;
    }
    const { hull, drive, store } = draft.trip.craft;
    const other = store.kind !== setupOf(trials, id).store.kind && usesOf(trials, id) > 0;
    const into = other ? freshId('s', trials.setups) : id;
    this.chosen = into;
    this.said = words.taken;
    this.#tell(withSetup(onHull(trials, hull), { id: into, drive, store }), { ...this.origins, [into]: draft.origin });
  }

  #removed(trials: Trials, id: string): void {
    this.chosen = '';
    this.#tell(withoutSetup(trials, id), this.origins, true);
  }

  #tell(trials: Trials, origins: Origins = this.origins, removed = false): void {
    this.trials = trials;
    this.origins = origins;
    const detail = { trials, origins, ...(removed && { removed }) };
    this.dispatchEvent(new CustomEvent('setups-edited', { detail, bubbles: true }) satisfies SetupsEdited);
  }
}

define('homeleg-setups-field', SetupsField);

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-setups-field': SetupsField;
  }
}
