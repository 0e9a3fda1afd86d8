import { html, LitElement } from 'lit';
import { property } from 'lit/decorators.js';
import type { Craft, Store } from '../../core/craft/shapes.ts';
import type { LoadBalance } from '../../core/load/balance.ts';
import type { Load } from '../../core/load/shapes.ts';
import { define } from '../define.ts';
import { controls } from '../theme/controls.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import { NAUTICAL } from '../units/default-measures.ts';
import type { Measures } from '../units/measures.ts';

/** Those aboard changed; `live` while the change is still going on, such as in a drag. */
export type LoadEdited = CustomEvent<{ load: Load; live: boolean }>;
/** A tank or battery stands somewhere else. */
export type StoreMoved = CustomEvent<{ store: Store }>;

/**
 * @summary The boat from above with those aboard.
 * @fires load-edited - the user changed who or what is aboard or where
 * @fires store-moved - the user moved a tank or battery
 */
export class DeckPlan extends LitElement {
  static override styles = [tokens, controls];

  @property({ attribute: false }) craft: Craft | undefined;
  @property({ attribute: false }) load: Load = { items: [] };
  /** Absent: worked out here from `craft` and `load`. */
  @property({ attribute: false }) balance: LoadBalance | undefined;
  @property({ attribute: false }) measures: Measures = NAUTICAL;

  override render() {
    return html`<ul>
      ${this.load.items.map(({ name, kind, mass }) => html`<li>${name ?? kind}: ${this.measures.show('mass', mass)}</li>`)}
    </ul>`;
  }
}

define('homeleg-deck-plan', DeckPlan);

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-deck-plan': DeckPlan;
  }
}
