import { html, nothing, type PropertyValues } from 'lit';
import { property, state } from 'lit/decorators.js';
import { type Minimum, minimums } from '../../core/trip/minimums.ts';
import { type NearestLanding, nearestLandings } from '../../core/trip/nearest-landing.ts';
import { endsAtHome } from '../answer/sentences.ts';
import { levelMark } from '../answer/verdict-mark.ts';
import { define } from '../define.ts';
import { answersStyles } from '../further/answers.styles.ts';
import type { Ask } from '../further/ask.ts';
import { cell, head } from '../further/table-parts.ts';
import { SpeakingElement } from '../language/speaking-element.ts';
import { controls } from '../theme/controls.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import { NAUTICAL } from '../units/default-measures.ts';
import type { Measures } from '../units/measures.ts';
import { commonWords } from '../words/en-common.ts';
import { furtherWords, minimumsWords as words } from '../words/en-further.ts';
import { landingWords } from '../words/en-landing.ts';
import { minimumsStyles } from './minimums.styles.ts';

/** Rows on the screen before somebody asks for all. The rest are there, for paper. */
const FIRST = 12;
/** A landing as near as this is where the waypoint is, m. */
const AT = 30;

/** @summary For every waypoint the least to go on with, the latest time, and the least to get home with. */
export class Minimums extends SpeakingElement {
  static override styles = [tokens, controls, answersStyles, minimumsStyles];

  @property({ attribute: false }) ask: Ask | undefined;
  @property({ attribute: false }) measures: Measures = NAUTICAL;

  @state() private all = false;

  /** Of each row, as far as they are found. */
  @state() private landings: readonly (NearestLanding | undefined)[] = [];

  #rows: readonly Minimum[] = [];
  #visit = 0;

  override connectedCallback(): void {
    super.connectedCallback();
    // What was left unfinished goes on.
    if (this.landings.length < this.#rows.length) void this.#findLandings();
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#visit++;
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has('ask')) return;
    const standing = this.ask?.standing;
    this.#rows = standing ? minimums(standing) : [];
    this.landings = [];
    void this.#findLandings();
  }

  /** Ways round land are searched a waypoint in each turn of the page, so that nobody waits for them. */
  async #findLandings(): Promise<void> {
    const visit = ++this.#visit;
    const standing = this.ask?.standing;
    if (!standing || !this.ask?.waters) return;
    const found: (NearestLanding | undefined)[] = [];
    const work = nearestLandings(standing, this.#rows);
    for (;;) {
      await new Promise((resolve) => setTimeout(resolve, 0));
      if (visit !== this.#visit) return;
      const { done, value } = work.next();
      if (done) break;
      found.push(value);
    }
    this.landings = found;
  }

  override render() {
    const { ask } = this;
    if (!ask || this.#rows.length === 0) {
      return html`<p class="empty">${ask ? furtherWords.unusable : furtherWords.empty}</p>`;
    }
    const { store } = ask.plan;
    const timed = this.#rows.some(({ latest }) => latest !== undefined);
    const home = endsAtHome(ask.plan);
    const long = this.#rows.length > FIRST + 2;
    return html`<table role="table" class="cards ${long && !this.all ? 'some' : ''}">
      <caption>${home ? words.caption(store) : words.captionOneWay(store)}</caption>
      <thead role="rowgroup">
        <tr role="row">
          ${head(words.point, false)} ${head(words.arrival)} ${head(words.left)} ${head(words.goOn)}
          ${timed ? head(words.latest) : nothing} ${head(words.home)} ${head(words.easy)}
          ${this.#landed ? head(landingWords.nearest, false) : nothing}
        </tr>
      </thead>
      <tbody role="rowgroup">${this.#rows.map((row, i) => this.#row(row, i, ask, timed))}</tbody>
    </table>
    ${this.#landed ? html`<p class="hint">${landingWords.note}</p>` : nothing}
    ${
      long
        ? html`<button type="button" class="quiet" aria-expanded=${this.all} @click=${this.#allToggled}>
            ${this.all ? words.fewer : words.all(this.#rows.length)}
          </button>`
        : nothing
    }`;
  }

  #row(row: Minimum, i: number, { plan, departure }: Ask, timed: boolean) {
    const { measures: m } = this;
    const amount = (value: number) => m.show('amount', Math.max(value, 0), plan.store);
    const end = i === this.#rows.length - 1;
    const latest = row.latest === undefined ? undefined : m.clock(departure, row.latest);
    const short = row.left < row.goOn * (1 - 1e-9);
    const outward = row.part === 'out';
    const late = i >= FIRST && !end;
    return html`<tr role="row" class="${short ? 'marginal' : ''} ${late ? 'late' : ''}">
      <th role="rowheader" scope="row">
        ${this.#name(row, end && endsAtHome(plan))}
        <span class="told ${outward && !end ? 'twice' : ''}">${this.#told(row, end, latest, plan)}</span>
        ${short ? html`<span class="short">${levelMark('marginal')} ${words.short}</span>` : nothing}
      </th>
      ${cell(words.arrival, m.clock(departure, row.arrives))} ${cell(words.left, amount(row.left))}
      ${this.#turn(outward ? amount(row.goOn) : undefined)}
      ${timed ? this.#turn(outward ? latest : undefined) : nothing}
      ${cell(words.home, amount(row.home))} ${cell(words.easy, amount(row.homeEasy))}
      ${this.#landed ? cell(landingWords.nearest, this.#landing(this.landings[i], plan), 'whole') : nothing}
    </tr>`;
  }

  get #landed(): boolean {
    return this.landings.some((landing) => landing !== undefined);
  }

  #landing(landing: NearestLanding | undefined, { store }: Ask['plan']) {
    if (!landing) return landingWords.none;
    const { measures: m } = this;
    const { name, distance, need, time, fuel, power, usable, shoals } = landing;
    const offers = [fuel && landingWords.fuel, power && landingWords.power].filter((offer) => offer !== false);
    const figures =
      distance < AT
        ? landingWords.there
        : Number.isFinite(need)
          ? landingWords.figures(m.show('distance', distance), m.show('amount', need, store), m.time(time))
          : landingWords.noWay;
    const notes = [...offers, shoals.length > 0 && landingWords.over(shoals.join(', ')), usable].filter(Boolean);
    return html`${name}<span class="sub">${figures}</span>
      ${notes.length > 0 ? html`<span class="sub">${notes.join('; ')}</span>` : nothing}`;
  }

  /** Said in words where rows are cards. */
  #turn(figure: string | undefined) {
    return html`<td role="cell" class="figure turn"><strong>${figure ?? ''}</strong></td>`;
  }

  #name({ waypoint, name, part }: Minimum, end: boolean) {
    if (end) return name ? `${name}, ${commonWords.within(words.end)}` : words.end;
    const own = name ?? words.waypoint(waypoint + 1);
    return part === 'home' ? `${own}, ${words.parts.home}` : own;
  }

  #told({ goOn, part }: Minimum, end: boolean, latest: string | undefined, plan: Ask['plan']): string {
    const amount = this.measures.show('amount', goOn, plan.store);
    if (end) return words.atEnd(amount);
    if (part === 'home') return words.homeward(amount);
    return endsAtHome(plan) ? words.turn(amount, latest) : words.onward(amount, latest);
  }

  #allToggled(): void {
    this.all = !this.all;
  }
}

define('homeleg-minimums', Minimums);

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-minimums': Minimums;
  }
}
