import { html, nothing, type PropertyValues, svg } from 'lit';
import { property, state } from 'lit/decorators.js';
import type { Route } from '../../core/route/shapes.ts';
import { type SpeedChoice, type SpeedChoices, speedChoices } from '../../core/trip/speed-choices.ts';
import { endsAtHome } from '../answer/sentences.ts';
import { verdictMark } from '../answer/verdict-mark.ts';
import { OwnWidth } from '../curve-plot/own-width.ts';
import { define } from '../define.ts';
import { answersStyles } from '../further/answers.styles.ts';
import type { Ask } from '../further/ask.ts';
import { cell, head } from '../further/table-parts.ts';
import { SpeakingElement } from '../language/speaking-element.ts';
import { controls } from '../theme/controls.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import { NAUTICAL } from '../units/default-measures.ts';
import type { Measures } from '../units/measures.ts';
import { answerWords } from '../words/en-answer.ts';
import { furtherWords, speedWords as words } from '../words/en-further.ts';
import { speedChoiceStyles } from './speed-choice.styles.ts';
import { frameOf, type Mark, type Marked, marked } from './trade.ts';
import { markShape, TRADE_HEIGHT, tradeDrawing } from './trade-drawing.ts';

/** The route at other speeds. */
export type SpeedTaken = CustomEvent<{ route: Route }>;

/**
 * @summary Time against fuel or charge left, over one speed for the whole trip; another speed can be taken, and taken back.
 * @fires speed-taken - the user chose a speed for the whole trip, or took it back
 */
export class SpeedChoiceList extends SpeakingElement {
  static override styles = [tokens, controls, answersStyles, speedChoiceStyles];

  @property({ attribute: false }) ask: Ask | undefined;
  @property({ attribute: false }) measures: Measures = NAUTICAL;

  @state() private told = '';
  /** The route before a speed was taken, and the one that it made. */
  @state() private taken: { readonly before: Route; readonly after: Route } | undefined;

  readonly #width = new OwnWidth(this);
  #found: SpeedChoices | undefined;
  #points: readonly Marked[] = [];

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has('ask')) return;
    const { ask } = this;
    this.#found = ask?.standing && speedChoices(ask.trip, ask.waters);
    this.#points = ask && this.#found ? marked(this.#found, ask.plan) : [];
    // Somebody drew on since: there is nothing to go back to.
    if (this.taken && ask && JSON.stringify(ask.trip.route) !== JSON.stringify(this.taken.after)) {
      this.taken = undefined;
      this.told = '';
    }
  }

  override render() {
    const { ask } = this;
    const found = this.#found;
    if (!ask || !found) return html`<p class="empty">${ask ? furtherWords.unusable : furtherWords.empty}</p>`;
    if (found.choices.length === 0) return html`<p class="empty">${words.noneHeld}</p>`;
    return html`<div class="stack">
      <p>${words.intro(ask.plan.store)}</p>
      ${this.#picture(ask, found)}
      ${found.earliest === undefined ? html`<p class="none">${words.none}</p>` : nothing}
      <ul class="marks">${this.#points.map((point) => this.#point(point, ask))}</ul>
      <div class="taken">
        <p role="status">${this.told}</p>
        ${this.taken ? html`<button type="button" @click=${this.#takeBack}>${words.back}</button>` : nothing}
      </div>
      <details>
        <summary>${words.table}</summary>
        <div>${this.#table(ask, found)}</div>
      </details>
      <p class="hint">${words.note}</p>
    </div>`;
  }

  #picture({ plan, trip }: Ask, { choices }: SpeedChoices) {
    const { measures } = this;
    const { width, fontSize } = this.#width;
    const [slow, fast] = [choices[0]!, choices.at(-1)!].map(({ speed }) => measures.show('speed', speed));
    const frame = frameOf(choices, this.#points, plan.usable);
    return html`<svg
      class="trade"
      role="img"
      aria-label=${words.picture(plan.store, slow!, fast!)}
      height=${TRADE_HEIGHT}
      viewBox="0 0 ${Math.max(width, 200)} ${TRADE_HEIGHT}"
    >
      ${
        width > 0
          ? tradeDrawing({
              width,
              fontSize,
              frame,
              points: this.#points,
              reserve: plan.reserve,
              allowed: trip.policy.timeAllowed,
              store: plan.store,
              measures,
            })
          : nothing
      }
    </svg>`;
  }

  #point({ marks, speed, time, left, choice }: Marked, ask: Ask) {
    const { measures: m } = this;
    const { store } = ask.plan;
    const shown = speed === undefined ? words.presentMixed : m.show('speed', speed);
    return html`<li>
      <span class="signs">${marks.map(
        (mark) => html`<svg viewBox="-11 -11 22 22" aria-hidden="true">${svg`${markShape(mark)}`}</svg>`,
      )}</span>
      <div>
        <strong>${marks.map((mark) => this.#name(mark, ask)).join(', ')}</strong>
        <span class="figures">${shown}: ${m.time(time)}, ${this.#left(left, store)}</span>
      </div>
      ${choice ? this.#take(choice, ask) : nothing}
    </li>`;
  }

  #name(mark: Mark, { plan }: Ask): string {
    return mark === 'earliest' && !endsAtHome(plan) ? words.earliestThere : words[mark];
  }

  #left(left: number, store: Ask['plan']['store']): string {
    const figure = this.measures.show('amount', Math.abs(left), store);
    return left < 0 ? answerWords.missingShort(figure) : answerWords.leftShort(figure);
  }

  #take({ speed }: SpeedChoice, { trip }: Ask) {
    const now = trip.route.speed === speed && trip.route.waypoints.every((point) => point.speed === undefined);
    if (now) return html`<span class="sub">${words.planned}</span>`;
    return html`<button type="button" @click=${() => this.#taken(speed)}>
      ${words.take(this.measures.show('speed', speed))}
    </button>`;
  }

  #table(ask: Ask, { choices }: SpeedChoices) {
    const { measures: m } = this;
    const { store } = ask.plan;
    const number = new Intl.NumberFormat(m.lang);
    return html`<table role="table" class="cards">
      <thead role="rowgroup">
        <tr role="row">
          ${head(words.speed, false)} ${head(words.time)} ${head(words.use)} ${head(words.left)} ${head(words.revs)}
          ${head(words.answer, false)} <td role="cell"></td>
        </tr>
      </thead>
      <tbody role="rowgroup">
        ${choices.map(
          (choice) => html`<tr role="row" class=${choice.fuel}>
            <th role="rowheader" scope="row">${m.show('speed', choice.speed)}</th>
            ${cell(words.time, m.time(choice.time))} ${cell(words.use, m.show('amount', choice.need, store))}
            ${cell(words.left, this.#left(choice.left, store))}
            ${cell(words.revs, number.format(Math.round(choice.rpm / 10) * 10))}
            ${cell(words.answer, html`<span class="verdict">${verdictMark(choice.fuel)} ${words.fuel[choice.fuel]}</span>`, 'text')}
            <td role="cell" class="whole">${this.#take(choice, ask)}</td>
          </tr>`,
        )}
      </tbody>
    </table>`;
  }

  #taken(speed: number): void {
    const { ask } = this;
    if (!ask) return;
    const before = ask.trip.route;
    const waypoints = before.waypoints.map(({ speed: _, ...point }) => point);
    const after: Route = { ...before, waypoints, speed };
    this.taken = { before, after };
    this.told = words.took(this.measures.show('speed', speed));
    this.#tell(after);
  }

  #takeBack(): void {
    const { taken } = this;
    if (!taken) return;
    this.taken = undefined;
    this.told = words.tookBack;
    this.#tell(taken.before);
  }

  #tell(route: Route): void {
    this.dispatchEvent(
      new CustomEvent('speed-taken', { detail: { route }, bubbles: true, composed: true }) satisfies SpeedTaken,
    );
  }
}

define('homeleg-speed-choice', SpeedChoiceList);

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-speed-choice': SpeedChoiceList;
  }
}
