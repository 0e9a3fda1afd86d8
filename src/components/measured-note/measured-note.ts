import { css, html, nothing } from 'lit';
import { property } from 'lit/decorators.js';
import type { Fit } from '../../core/trials/fit-shapes.ts';
import type { Trials } from '../../core/trials/shapes.ts';
import { define } from '../define.ts';
import { SpeakingElement } from '../language/speaking-element.ts';
import { controls } from '../theme/controls.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import { NAUTICAL } from '../units/default-measures.ts';
import type { Measures } from '../units/measures.ts';
import { dataName } from '../words/en-data.ts';
import { measuredWords as words } from '../words/en-measured.ts';

/**
 * @summary Says who measured a boat, when, with how many runs and loads, and whether that counts for the boat shown.
 * @fires trials-forgotten - the boat shall count as unmeasured again
 */
export class MeasuredNote extends SpeakingElement {
  static override styles = [
    tokens,
    controls,
    css`
      div {
        display: grid;
        gap: 6px;
        padding-inline-start: 12px;
        border-inline-start: 4px solid var(--hl-accent);
      }

      p {
        margin: 0;
      }

      button {
        justify-self: start;
      }
    `,
  ];

  @property({ attribute: false }) trials: Trials | undefined;
  @property({ attribute: false }) fit: Fit | undefined;
  /** The boat shown has another hull than the one measured. */
  @property({ type: Boolean, attribute: 'other-hull' }) otherHull = false;
  @property({ attribute: false }) measures: Measures = NAUTICAL;

  override render() {
    const { trials, fit, measures } = this;
    if (!trials || !fit) return nothing;
    const setAside = fit.runs.filter((run) => run.setAside === 'contradicts').length;
    const range = (measure: 'mass' | 'speed') =>
      fit.tried?.[measure].map((value) => measures.show(measure, value)) as [string, string] | undefined;
    const day =
      fit.lastDay && new Intl.DateTimeFormat(measures.lang, { dateStyle: 'long' }).format(new Date(fit.lastDay));
    const [mass, speed] = [range('mass'), range('speed')];
    return html`<div>
      <p><strong>${this.otherHull ? words.otherHull(dataName(trials.hull.name)) : words.title(fit.counted)}</strong></p>
      ${
        this.otherHull || fit.counted === 0
          ? nothing
          : html`<p>${words.evidence({ by: trials.measuredBy, day })}${mass && speed && ` ${words.tried(mass, speed)}`}</p>`
      }
      ${setAside > 0 ? html`<p>${words.setAside(setAside)}</p>` : nothing}
      <button
        type="button"
        class="quiet"
        @click=${() => this.dispatchEvent(new CustomEvent('trials-forgotten', { bubbles: true }))}
      >
        ${words.forget}
      </button>
    </div>`;
  }
}

define('homeleg-measured-note', MeasuredNote);

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-measured-note': MeasuredNote;
  }
}
