import { html, nothing } from 'lit';
import { property, state } from 'lit/decorators.js';
import { fuelMass } from '../../core/drive/tank.ts';
import type { Load } from '../../core/load/shapes.ts';
import type { Trials } from '../../core/trials/shapes.ts';
import { WATT_HOUR } from '../../core/units/convert.ts';
import type { LoadEdited } from '../deck-plan/deck-plan.ts';
import { define } from '../define.ts';
import type { FillEdited } from '../field/fill-field.ts';
import { SpeakingElement } from '../language/speaking-element.ts';
import { controls } from '../theme/controls.styles.ts';
import { formStyles } from '../theme/form.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import { NAUTICAL } from '../units/default-measures.ts';
import type { Measures } from '../units/measures.ts';
import { runWords as words } from '../words/en-trials.ts';
import { loadText, storeKind } from './texts.ts';
import { craftOf, setupOf } from './work.ts';

export type LoadTyped = CustomEvent<{ load: Load }>;

/**
 * @summary Who and what was aboard during a run, in one line; opened, the boat from above and the fill.
 * @fires load-typed - the user changed the load or the fill
 */
export class AboardField extends SpeakingElement {
  static override styles = [tokens, controls, formStyles];

  @property({ attribute: false }) trials: Trials | undefined;
  @property() setup = '';
  @property({ attribute: false }) load: Load = { items: [] };
  @property({ attribute: false }) measures: Measures = NAUTICAL;
  @property() problem = '';

  /** The boat from above is only made for those who open it. */
  @state() private opened = false;

  override render() {
    const { trials, load, measures, setup } = this;
    if (!trials) return nothing;
    return html`
      <details @toggle=${this.#toggled}>
        <summary>${words.changeLoad}</summary>
        ${this.opened ? this.#deck(trials) : nothing}
      </details>
      <p class="hint">${loadText(trials, setup, load, measures)}</p>
      <p class="problem" role="alert" ?hidden=${!this.problem}>${this.problem}</p>
    `;
  }

  #deck(trials: Trials) {
    const { load, measures, setup } = this;
    const craft = craftOf(trials, setup);
    return html`<div class="stack">
      <homeleg-deck-plan
        .craft=${craft}
        .load=${load}
        .measures=${measures}
        @load-edited=${({ detail }: LoadEdited) => detail.live || this.#tell({ ...load, items: detail.load.items })}
        @store-moved=${(event: Event) => event.stopPropagation()}
      ></homeleg-deck-plan>
      <homeleg-fill-field
        .fill=${load.fill}
        .fillKnownBy=${load.fillKnownBy}
        .store=${storeKind(craft.store)}
        .full=${full(setupOf(trials, setup).store)}
        .measures=${measures}
        @fill-edited=${({ detail }: FillEdited) => this.#tell({ items: load.items, ...detail })}
      ></homeleg-fill-field>
    </div>`;
  }

  #toggled(event: Event): void {
    if (!(event.currentTarget as HTMLDetailsElement).open) return;
    this.opened = true;
    // Loaded late: most runs are made with the load of the one before.
    void import('../deck-plan/deck-plan.ts');
    void import('../field/fill-field.ts');
  }

  #tell(load: Load): void {
    this.load = load;
    this.dispatchEvent(new CustomEvent('load-typed', { detail: { load }, bubbles: true }) satisfies LoadTyped);
  }
}

function full(store: ReturnType<typeof setupOf>['store']): number {
  return store.kind === 'tank'
    ? fuelMass(store.tanks, 1)
    : store.batteries.reduce((sum, { energyWh, health }) => sum + energyWh * WATT_HOUR * health, 0);
}

define('homeleg-aboard-field', AboardField);

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-aboard-field': AboardField;
  }
}
