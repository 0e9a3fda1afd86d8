import { html, nothing, type PropertyValues } from 'lit';
import { property, state } from 'lit/decorators.js';
import { type Risk, risk, type Sampled } from '../../core/trip/risk.ts';
import { endsAtHome } from '../answer/sentences.ts';
import { define } from '../define.ts';
import { answersStyles } from '../further/answers.styles.ts';
import type { Ask } from '../further/ask.ts';
import { SpeakingElement } from '../language/speaking-element.ts';
import { controls } from '../theme/controls.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import { NAUTICAL } from '../units/default-measures.ts';
import type { Measures } from '../units/measures.ts';
import { doubtNames, furtherWords, sureWords as words } from '../words/en-further.ts';
import { ofHundred, shownChances } from './chances.ts';
import { howSureStyles } from './how-sure.styles.ts';
import { play } from './player.ts';
import { PLAYED } from './playing.ts';

type Check = 'idle' | 'playing' | 'stopped' | 'failed' | 'done';

/** @summary How often the reserve stays whole and anything is left, what matters most, and a check by playing it over. */
export class HowSure extends SpeakingElement {
  static override styles = [tokens, controls, answersStyles, howSureStyles];

  @property({ attribute: false }) ask: Ask | undefined;
  @property({ attribute: false }) measures: Measures = NAUTICAL;

  @state() private check: Check = 'idle';
  @state() private done = 0;

  #risk: Risk | undefined;
  #played: Sampled | undefined;
  #stop: (() => void) | undefined;

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#stop?.();
    if (this.check === 'playing') this.check = 'stopped';
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has('ask')) return;
    this.#stop?.();
    this.#played = undefined;
    this.check = 'idle';
    const standing = this.ask?.standing;
    this.#risk = standing?.fuel.run.possible ? risk(standing) : undefined;
  }

  override render() {
    const { ask } = this;
    if (!ask || !this.#risk) return html`<p class="empty">${ask ? furtherWords.unusable : furtherWords.empty}</p>`;
    const shown = shownChances(this.#risk, this.#played);
    return html`<div class="stack">
      <dl class="chances">
        ${this.#chance(words.whole, shown.reserveWhole)} ${this.#chance(words.home(endsAtHome(ask.plan)), shown.homeAtAll)}
      </dl>
      <p class="hint">${words.limits}</p>
      <section>
        <h4>${words.what}</h4>
        ${this.#shares(this.#risk, ask)}
        <p class="hint">${words.whatHint}</p>
      </section>
      <section class="check">
        <h4>${words.check}</h4>
        <p class="hint">${words.checkHint}</p>
        ${this.#playing()}
        <p role="status">${this.#outcome(shown.differs)}</p>
      </section>
    </div>`;
  }

  #chance(what: string, probability: number) {
    const n = ofHundred(probability);
    return html`<div>
      <dt>${what}</dt>
      <dd>
        <span class="bar" aria-hidden="true"><span .style=${`inline-size: ${n}%`}></span></span>
        ${words.ofHundred(n)}
      </dd>
    </div>`;
  }

  #shares({ shares }: Risk, { plan }: Ask) {
    const told = shares.filter(({ share }) => share >= 0.005);
    return html`<ul class="shares">
      ${told.map(
        ({ doubt, share }) => html`<li>
          <span>${doubtNames[doubt](plan.store)}</span>
          <span class="share">${this.measures.show('share', share)}</span>
          <span class="bar" aria-hidden="true"><span .style=${`inline-size: ${share * 100}%`}></span></span>
        </li>`,
      )}
    </ul>`;
  }

  #playing() {
    if (this.check !== 'playing') {
      return html`<button type="button" @click=${this.#playPressed}>${words.play}</button>`;
    }
    const count = new Intl.NumberFormat(this.measures.lang).format(Math.round(this.done * PLAYED));
    return html`<div class="run">
      <progress max="1" .value=${this.done} aria-label=${words.check}></progress>
      <span>${words.playing(count)}</span>
      <button type="button" @click=${this.#stopPressed}>${words.stop}</button>
    </div>`;
  }

  #outcome(differs: boolean) {
    if (this.check === 'stopped') return words.stopped;
    if (this.check === 'failed') return words.failed;
    if (this.check !== 'done' || !this.#played) return nothing;
    const { reserveWhole, homeAtAll } = this.#played;
    const [whole, home] = [reserveWhole, homeAtAll].map((value) => words.ofHundred(ofHundred(value)));
    return `${differs ? words.differs : words.agrees} ${words.played(whole!, home!)}`;
  }

  #playPressed(): void {
    const { ask } = this;
    if (!ask) return;
    this.check = 'playing';
    this.done = 0;
    this.#stop = play(ask, (report) => {
      if (report.kind === 'progress') this.done = report.share;
      else if (report.kind === 'failed') this.check = 'failed';
      else {
        this.#played = report.value;
        this.check = 'done';
      }
    });
  }

  #stopPressed(): void {
    this.#stop?.();
    this.check = 'stopped';
  }
}

define('homeleg-how-sure', HowSure);

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-how-sure': HowSure;
  }
}
