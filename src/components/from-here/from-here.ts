import { html, nothing, type PropertyValues } from 'lit';
import { property, state } from 'lit/decorators.js';
import type { LatLon } from '../../core/route/shapes.ts';
import { fromHere } from '../../core/trip/from-here.ts';
import { define } from '../define.ts';
import { SpeakingElement } from '../language/speaking-element.ts';
import '../field/choice-field.ts';
import type { ChoiceMade } from '../field/choice-field.ts';
import '../field/fill-field.ts';
import type { Fill, FillEdited } from '../field/fill-field.ts';
import { answersStyles } from '../further/answers.styles.ts';
import type { Ask } from '../further/ask.ts';
import { controls } from '../theme/controls.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import { parsePosition, showPosition } from '../units/coordinates.ts';
import { NAUTICAL } from '../units/default-measures.ts';
import type { Measures } from '../units/measures.ts';
import { furtherWords, hereWords as words } from '../words/en-further.ts';
import { problemText } from '../words/en-problems.ts';
import { clockReading, instantOf } from './clock-now.ts';
import { fromHereStyles } from './from-here.styles.ts';
import { wayName, waysDrawing } from './ways.ts';
import { whereIAm } from './where.ts';

type By = keyof typeof words.by;
type Field = 'at' | 'clock' | 'fill';

/** @summary Under way: position, clock and gauge in; go on, turn, or make for a landing out, each with its margin. */
export class FromHereCheck extends SpeakingElement {
  static override styles = [tokens, controls, answersStyles, fromHereStyles];

  @property({ attribute: false }) ask: Ask | undefined;
  @property({ attribute: false }) measures: Measures = NAUTICAL;

  @state() private by: By = 'device';
  @state() private fix: { readonly at: LatLon; readonly told: string } | undefined;
  @state() private located: '' | 'locating' | 'noDevice' | 'refused' | 'lost' = '';
  @state() private point = '';
  @state() private typed = '';
  @state() private clock = '';
  @state() private fill: Fill = {};
  @state() private homeward = false;
  /** Asked once: from then on the answers follow what is entered. */
  @state() private asked = false;

  #visit = 0;

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#visit++;
    if (this.located === 'locating') this.located = '';
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has('ask') && this.clock === '') this.clock = clockReading(new Date(), this.ask?.departure);
  }

  override render() {
    const { ask, measures } = this;
    if (!ask) return html`<p class="empty">${furtherWords.empty}</p>`;
    const { plan } = ask;
    return html`<div class="stack">
      <homeleg-choice-field
        label=${words.where}
        .choices=${Object.entries(words.by).map(([value, label]) => ({ value, label }))}
        .value=${this.by}
        @choice-made=${(event: ChoiceMade) => this.#byChosen(event.detail.value as By)}
      ></homeleg-choice-field>
      ${this.#place(ask)}
      <div class="field">
        <label for="clock">${words.clock}</label>
        <div class="row">
          <input
            id="clock"
            type="time"
            .value=${this.clock}
            aria-invalid=${this.#wrong('clock') ? 'true' : nothing}
            aria-describedby="clock-problem"
            @input=${(event: Event) => {
              this.clock = (event.target as HTMLInputElement).value.slice(0, 5);
            }}
          />
          <button type="button" @click=${this.#nowPressed}>${words.now}</button>
        </div>
        ${this.#problem('clock')}
      </div>
      <div class="field">
        <homeleg-fill-field
          heading=${words.gauge(plan.store)}
          .fill=${this.fill.fill}
          .fillKnownBy=${this.fill.fillKnownBy}
          .store=${plan.store}
          .full=${plan.full}
          .measures=${measures}
          @fill-edited=${this.#fillEdited}
        ></homeleg-fill-field>
        ${this.#problem('fill')}
      </div>
      <label class="check">
        <input
          type="checkbox"
          .checked=${this.homeward}
          @change=${(event: Event) => {
            this.homeward = (event.target as HTMLInputElement).checked;
          }}
        />
        <span>${words.homeward}</span>
      </label>
      <button type="button" class="primary big" @click=${this.#askPressed}>${words.check}</button>
      ${this.#answers(ask)}
      <p class="hint">${words.caution}</p>
    </div>`;
  }

  #place({ trip }: Ask) {
    switch (this.by) {
      case 'device':
        return html`<div class="field">
          <button type="button" class="big" aria-describedby="at-problem" @click=${this.#locatePressed}>
            ${words.locate}
          </button>
          <p class="hint" role="status">
            ${this.located === 'locating' ? words.locating : this.located ? words[this.located] : (this.fix?.told ?? '')}
          </p>
          ${this.#problem('at')}
        </div>`;
      case 'point':
        return html`<div class="field">
          <label for="point">${words.point}</label>
          <select
            id="point"
            aria-invalid=${this.#wrong('at') ? 'true' : nothing}
            aria-describedby="at-problem"
            @change=${(event: Event) => {
              this.point = (event.target as HTMLSelectElement).value;
            }}
          >
            <option value="" ?selected=${this.point === ''}>${words.choosePoint}</option>
            ${trip.route.waypoints.map(
              ({ name }, i) =>
                html`<option value=${i} ?selected=${this.point === String(i)}>${words.waypoint(i + 1, name)}</option>`,
            )}
          </select>
          ${this.#problem('at')}
        </div>`;
      case 'typed':
        return html`<div class="field">
          <label for="position">${words.position}</label>
          <input
            id="position"
            autocomplete="off"
            .value=${this.typed}
            aria-invalid=${this.#wrong('at') ? 'true' : nothing}
            aria-describedby="position-hint at-problem"
            @input=${(event: Event) => {
              this.typed = (event.target as HTMLInputElement).value;
            }}
          />
          <p id="position-hint" class="hint">
            ${words.positionHint(showPosition(trip.route.waypoints[0]!, this.measures.system))}
          </p>
          ${this.#problem('at')}
        </div>`;
      default:
        return this.by satisfies never;
    }
  }

  #answers(ask: Ask) {
    const { measures, homeward } = this;
    if (!this.asked) return nothing;
    const place = this.#at(ask);
    const time = instantOf(this.clock, ask.departure, new Date());
    const { fill, fillKnownBy } = this.fill;
    if (!place.at || time === undefined || fill === undefined) return nothing;
    const load = { ...ask.trip.load, fillKnownBy: fillKnownBy ?? 'gauge' };
    const found = fromHere({ ...ask.trip, load }, ask.plan, ask.waters, { at: place.at, time, fill, homeward });
    if (!found.ok) return html`<p class="problem">${found.problems.map(problemText).join('. ')}</p>`;
    const { ways } = found.value;
    if (ways.length === 0) return html`<p class="problem">${words.failed}</p>`;
    const best = ways.map((way) => `${wayName(way, homeward)}: ${words.verdicts[way.verdict]}`).join('. ');
    return html`<section>
      <h4 id="ways">${words.ways}</h4>
      ${waysDrawing({ ask, found: found.value, time, homeward, measures })}
      <p class="sr" role="status">${best}</p>
    </section>`;
  }

  /** Where the boat is, or what is wrong with what was entered. */
  #at({ trip }: Ask): { at?: LatLon; problem?: string } {
    switch (this.by) {
      case 'device':
        return this.fix ? { at: this.fix.at } : { problem: words.notLocated };
      case 'point': {
        const chosen = this.point === '' ? undefined : trip.route.waypoints[Number(this.point)];
        return chosen ? { at: { lat: chosen.lat, lon: chosen.lon } } : { problem: words.notChosen };
      }
      case 'typed': {
        const at = parsePosition(this.typed);
        if (!at) return { problem: words.notPosition };
        return Math.abs(at.lat) <= 85 && Math.abs(at.lon) <= 180 ? { at } : { problem: words.offChart };
      }
      default:
        return this.by satisfies never;
    }
  }

  #wrong(field: Field): string {
    const { ask } = this;
    if (!this.asked || !ask) return '';
    if (field === 'at') return this.#at(ask).problem ?? '';
    if (field === 'fill') return this.fill.fill === undefined ? words.notFill : '';
    return instantOf(this.clock, ask.departure, new Date()) === undefined ? words.notClock : '';
  }

  #problem(field: Field) {
    const problem = this.#wrong(field);
    return html`<p id=${`${field}-problem`} class="problem" ?hidden=${!problem}>${problem}</p>`;
  }

  #byChosen(by: By): void {
    this.by = by;
  }

  #nowPressed(): void {
    this.clock = clockReading(new Date(), this.ask?.departure);
  }

  #fillEdited({ detail }: FillEdited): void {
    this.fill = detail;
  }

  async #locatePressed(): Promise<void> {
    const visit = ++this.#visit;
    this.located = 'locating';
    const found = await whereIAm();
    if (visit !== this.#visit) return;
    if (!found.ok) {
      this.located = found.why === 'none' ? 'noDevice' : found.why;
      return;
    }
    const { at, within } = found;
    const radius = Number.isFinite(within) && within > 0 ? this.measures.show('distance', within) : undefined;
    this.located = '';
    this.fix = { at, told: words.located(showPosition(at, this.measures.system), radius) };
    // Where the boat was found, it was found now.
    this.clock = clockReading(new Date(), this.ask?.departure);
  }

  async #askPressed(): Promise<void> {
    this.asked = true;
    await this.updateComplete;
    const wrong = this.renderRoot.querySelector<HTMLElement>('.problem:not([hidden])');
    const place = wrong?.closest('.field') ?? this.renderRoot.querySelector('#ways');
    place?.scrollIntoView({ block: 'nearest' });
    const field = wrong?.parentElement?.querySelector<HTMLElement>('input, select, homeleg-fill-field, button');
    field?.focus();
  }
}

define('homeleg-from-here', FromHereCheck);

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-from-here': FromHereCheck;
  }
}
