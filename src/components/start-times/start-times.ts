import { html, nothing, type PropertyValues } from 'lit';
import { property, state } from 'lit/decorators.js';
import { START_STEP, type StartTime, startTimes, thriftiestStart } from '../../core/trip/start-times.ts';
import { secondsOf } from '../../core/water/clock.ts';
import type { Tide } from '../../core/water/shapes.ts';
import { verdictMark } from '../answer/verdict-mark.ts';
import { define } from '../define.ts';
import { answersStyles } from '../further/answers.styles.ts';
import type { Ask } from '../further/ask.ts';
import { cell, head } from '../further/table-parts.ts';
import { SpeakingElement } from '../language/speaking-element.ts';
import { controls } from '../theme/controls.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import { NAUTICAL } from '../units/default-measures.ts';
import type { Measures } from '../units/measures.ts';
import { furtherWords } from '../words/en-further.ts';
import { reasonText } from '../words/en-reasons.ts';
import { startWords as words } from '../words/en-start.ts';
import { verdictWords } from '../words/en-verdict.ts';
import { inTheLight, rowsOf, type StartsDay, startsDay } from './day-of-starts.ts';
import './depth-list.ts';
import { startTimesStyles } from './start-times.styles.ts';

/** Another departure for the trip, with the tide of its hour where that was worked out. */
export type DepartureTaken = CustomEvent<{ departure: string; tide?: Tide }>;

/**
 * @summary The trip left at every half hour of its day: a row of hours with the answer of each, the thriftiest marked, the
 * same as a table, and the hours with water enough.
 * @fires departure-taken - the user picked a departure
 */
export class StartTimes extends SpeakingElement {
  static override styles = [tokens, controls, answersStyles, startTimesStyles];

  @property({ attribute: false }) ask: Ask | undefined;
  @property({ attribute: false }) measures: Measures = NAUTICAL;

  @state() private starts: readonly StartTime[] = [];
  @state() private done = false;
  @state() private day: StartsDay | undefined;
  @state() private said = '';
  @state() private tableOpen = false;

  #workedFor = '';
  #file: Ask['file'];
  #visit = 0;

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#visit++;
    // What was begun is begun anew where the element comes back.
    if (!this.done) this.#workedFor = '';
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has('ask') || (!this.done && this.#workedFor === '')) this.#begin();
  }

  override render() {
    const { ask, starts, done } = this;
    if (!ask) return html`<p class="empty">${furtherWords.empty}</p>`;
    if (!ask.departure) return html`<p class="empty">${words.none}</p>`;
    const best = done ? thriftiestStart(starts) : undefined;
    return html`<div class="stack">
      <p>${words.intro}</p>
      <ul class="hours" role="list">
        ${inTheLight(starts).map((start) => this.#hour(start, ask, best))}
      </ul>
      <p role="status">${done ? this.#outcome(ask, best) : words.working(starts.length)}</p>
      <p role="status" class="said" ?hidden=${!this.said}>${this.said}</p>
      ${this.#tideNote(ask)}
      <details @toggle=${this.#tableToggled}>
        <summary>${words.table}</summary>
        <div class="inside">${this.tableOpen ? this.#table(ask, best) : nothing}</div>
      </details>
      <homeleg-depth-list .ask=${ask} .day=${this.day} .measures=${this.measures}></homeleg-depth-list>
    </div>`;
  }

  #hour(start: StartTime, ask: Ask, best: StartTime | undefined) {
    const { departure, verdict } = start;
    const clock = departure.slice(11, 16);
    const left = this.#left(start, ask);
    const planned = this.#planned(start, ask);
    return html`<li class=${verdict}>
      <button
        type="button"
        class="hour"
        aria-pressed=${planned}
        @click=${() => this.#taken(start)}
      >
        <span class="clock" aria-hidden="true">${clock}</span>
        <span class="sr">${words.cell(clock, verdictWords[verdict], left)}</span>
        ${verdictMark(verdict)}
        ${start === best ? html`<span class="note">${words.best}</span>` : nothing}
        ${planned ? html`<span class="note">${words.planned}</span>` : nothing}
      </button>
    </li>`;
  }

  #outcome({ plan }: Ask, best: StartTime | undefined): string {
    if (!best) return words.noneFits;
    const clock = ({ departure }: StartTime) => departure.slice(11, 16);
    const rows = rowsOf(this.starts, ({ verdict }) => verdict === best.verdict);
    const spans = rows.map(([first, last]) => words.span(clock(first), clock(last)));
    const list = new Intl.ListFormat(this.measures.lang).format(spans);
    const answer = verdictWords[best.verdict];
    const need = this.measures.show('amount', best.need, plan.store);
    return `${words.fits(answer, list)} ${words.bestTold(clock(best), need)}`;
  }

  /** A tide that was typed tells half a day; a station tells all of it. */
  #tideNote({ trip }: Ask) {
    if (trip.conditions.stream !== 'by-tide' || !this.day || this.day.tideAt) return nothing;
    return html`<p class="hint">${words.oneTide}</p>`;
  }

  #table(ask: Ask, best: StartTime | undefined) {
    const { measures: m } = this;
    return html`<table role="table" class="cards">
      <caption class="sr">${words.table}</caption>
      <thead role="rowgroup">
        <tr role="row">
          ${head(words.leave, false)} ${head(words.answer, false)} ${head(words.left)} ${head(words.home)}
          ${head(words.why, false)}
        </tr>
      </thead>
      <tbody role="rowgroup">
        ${this.starts.map((start) => {
          const { departure, verdict, time, reason } = start;
          const why = reason ? reasonText(reason, m, ask.plan.store) : words.nothing;
          return html`<tr role="row" class=${verdict}>
            <th role="rowheader" scope="row">
              ${departure.slice(11, 16)}${start === best ? html`<span class="sub">${words.best}</span>` : nothing}
            </th>
            ${cell(words.answer, html`<span class="verdict">${verdictMark(verdict)} ${verdictWords[verdict]}</span>`, 'text')}
            ${cell(words.left, this.#left(start, ask))} ${cell(words.home, m.clock(departure, time))}
            ${cell(words.why, why, 'whole')}
          </tr>`;
        })}
      </tbody>
    </table>`;
  }

  #tableToggled(event: Event): void {
    this.tableOpen = (event.currentTarget as HTMLDetailsElement).open;
  }

  #left({ left }: StartTime, { plan }: Ask): string {
    return this.measures.show('amount', Math.max(left, 0), plan.store);
  }

  #planned({ departure }: StartTime, ask: Ask): boolean {
    const own = ask.departure;
    if (own === undefined) return false;
    const ahead = secondsOf(own) - secondsOf(departure);
    return ahead >= 0 && ahead < START_STEP;
  }

  #taken({ departure, tide }: StartTime): void {
    this.said = words.taken(departure.slice(11, 16));
    const detail = { departure, ...(tide && { tide }) };
    this.dispatchEvent(
      new CustomEvent('departure-taken', { detail, bubbles: true, composed: true }) satisfies DepartureTaken,
    );
  }

  /** Works the day out anew, unless only the hour of the departure has changed. */
  #begin(): void {
    const { ask } = this;
    const departure = ask?.departure;
    const key = ask && departure ? keyOf(ask, departure, this.day?.tideAt !== undefined) : '';
    if (key !== '' && key === this.#workedFor && ask?.file === this.#file) return;
    this.#workedFor = key;
    this.#file = ask?.file;
    this.starts = [];
    this.done = false;
    this.said = '';
    this.day = undefined;
    const visit = ++this.#visit;
    if (ask && departure) void this.#work(ask, departure, visit);
  }

  /** One departure in each turn of the page, so that nothing waits for all of them. */
  async #work(ask: Ask, departure: string, visit: number): Promise<void> {
    const day = await startsDay({ ...ask.trip.conditions, departure }, ask.plan.time);
    if (visit !== this.#visit) return;
    this.day = day;
    this.#workedFor = keyOf(ask, departure, day.tideAt !== undefined);
    const work = startTimes(ask.trip, ask.waters, day);
    const found: StartTime[] = [];
    for (;;) {
      await new Promise((resolve) => setTimeout(resolve, 0));
      if (visit !== this.#visit) return;
      const { done, value } = work.next();
      if (done) break;
      found.push(value);
      // Drawn now and then: drawing costs as much as working it out.
      if (found.length % 12 === 0) this.starts = [...found];
    }
    this.starts = found;
    this.done = true;
  }
}

/** All that the answers of a day rest on: the trip without the hour of its departure. */
function keyOf({ trip }: Ask, departure: string, byStation: boolean): string {
  const { departure: _, tide, ...conditions } = trip.conditions;
  return JSON.stringify([{ ...trip, conditions }, departure.slice(0, 10), byStation ? tide?.port : tide]);
}

define('homeleg-start-times', StartTimes);

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-start-times': StartTimes;
  }
}
