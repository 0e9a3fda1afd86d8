import { html, nothing, type PropertyValues } from 'lit';
import { property, query, state } from 'lit/decorators.js';
import { writeShareLink } from '../../core/files/share-link.ts';
import type { Trip } from '../../core/trip/shapes.ts';
import { define } from '../define.ts';
import { SpeakingElement } from '../language/speaking-element.ts';
import { tellLeft } from '../planner/trip-left.ts';
import { controls } from '../theme/controls.styles.ts';
import { formStyles } from '../theme/form.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import { NAUTICAL } from '../units/default-measures.ts';
import type { Measures } from '../units/measures.ts';
import { problemText } from '../words/en-problems.ts';
import { shareWords as words } from '../words/en-share.ts';
import { canSend, copied, sent } from './hand-on.ts';
import { shareTripStyles } from './share-trip.styles.ts';

/** Up to here every messenger we know of passes a link on whole. */
const SHORT = 2000;

/**
 * @summary A link that holds the trip: made anew whenever the trip changes, copied or handed to the share sheet.
 * @fires trip-left - it was copied or sent
 */
export class ShareTrip extends SpeakingElement {
  static override styles = [tokens, controls, formStyles, shareTripStyles];

  /** As entered. */
  @property({ attribute: false }) trip: Trip | undefined;
  @property({ attribute: false }) measures: Measures = NAUTICAL;

  @state() private names = false;
  @state() private link = '';
  @state() private refused = '';
  @state() private said = '';

  @query('#link') private field!: HTMLInputElement | null;

  protected override willUpdate(changed: PropertyValues): void {
    if (!changed.has('trip') && !changed.has('names')) return;
    const before = this.link;
    const written = this.trip && writeShareLink(this.trip, location.href, { names: this.names });
    this.link = written?.ok ? written.value : '';
    this.refused =
      written && !written.ok ? this.say(() => `${written.problems[0] ? problemText(written.problems[0]) : ''}.`) : '';
    if (this.link !== before) this.said = '';
  }

  override render() {
    const size = this.measures.figure('count', this.link.length);
    return html`
      <h3>${words.title}</h3>
      <p class="hint">${words.about}</p>
      <label class="check">
        <input type="checkbox" .checked=${this.names} @change=${this.#namesTicked} />
        <span>${words.names}<span class="sub">${words.namesHint}</span></span>
      </label>
      ${
        this.link
          ? html`<div class="field">
              <label for="link">${words.link}</label>
              <input id="link" readonly .value=${this.link} @focus=${this.#marked} />
              <p class="hint">${this.link.length > SHORT ? words.long(size) : words.size(size)}</p>
            </div>
            <div class="buttons">
              <button type="button" @click=${this.#copyPressed}>${words.copy}</button>
              ${canSend() ? html`<button type="button" @click=${this.#sendPressed}>${words.send}</button>` : nothing}
            </div>`
          : nothing
      }
      ${this.refused ? html`<p class="problem">${words.refused} ${this.refused}</p>` : nothing}
      <p class="said" role="status">${this.said}</p>
    `;
  }

  #namesTicked(event: Event): void {
    this.names = (event.target as HTMLInputElement).checked;
  }

  #marked(): void {
    this.field?.select();
  }

  async #copyPressed(): Promise<void> {
    const done = await copied(this.link);
    if (done) tellLeft(this, 'link');
    else this.field?.focus();
    this.said = this.say(() => (done ? words.copied : words.copyByHand));
  }

  async #sendPressed(): Promise<void> {
    const done = await sent({ title: words.messageTitle, url: this.link });
    if (done) tellLeft(this, 'link');
    this.said = this.say(() => (done ? '' : words.sendFailed));
  }
}

define('homeleg-share-trip', ShareTrip);

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-share-trip': ShareTrip;
  }
}
