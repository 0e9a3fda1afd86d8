import { html, nothing } from 'lit';
import { property, state } from 'lit/decorators.js';
import type { WatersFile } from '../../core/route/shapes.ts';
import { define } from '../define.ts';
import { SpeakingElement } from '../language/speaking-element.ts';
import { toolButton } from '../route-map/map-controls.ts';
import { controls } from '../theme/controls.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import { cautions } from '../words/en-cautions.ts';
import { watersWords as words } from '../words/en-waters.ts';
import { handOver } from './kept-waters.ts';
import { watersEditorStyles } from './waters-editor.styles.ts';

/**
 * @summary Hands the waters that were drawn on to the planner of this site.
 */
export class PlanHere extends SpeakingElement {
  static override styles = [tokens, controls, watersEditorStyles];

  /** Undefined while they have errors. */
  @property({ attribute: false }) waters: WatersFile | undefined;

  /** Of which waters it is said whether they were handed on. */
  @state() private handed: { readonly waters: WatersFile; readonly kept: boolean } | undefined;

  override render() {
    const { waters, handed } = this;
    const ready = waters !== undefined && waters.features.length > 0;
    return html`<div class="bench">
      <div class="row">${toolButton(words.planHere, ready, () => void this.#planWanted())}</div>
      <p class="hint">${ready ? words.planHint : waters ? words.empty : words.mendFirst}</p>
      <p role="status">
        ${
          !handed || handed.waters !== waters
            ? nothing
            : handed.kept
              ? html`${words.planned} <a href="/?waters=drawn">${words.toPlanner}</a>`
              : words.notPlanned
        }
      </p>
      <ul class="hint">
        ${cautions().map((caution) => html`<li>${caution}</li>`)}
      </ul>
    </div>`;
  }

  async #planWanted(): Promise<void> {
    const { waters } = this;
    if (waters) this.handed = { waters, kept: await handOver(waters) };
  }
}

define('homeleg-plan-here', PlanHere);

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-plan-here': PlanHere;
  }
}
