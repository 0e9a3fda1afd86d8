import { html, nothing, type PropertyValues } from 'lit';
import { property, state } from 'lit/decorators.js';
import { SLIP_LIFE } from '../../core/hire/hire-times.ts';
import { morningHolds } from '../../core/hire/morning-now.ts';
import { EXPERIENCES, type Experience, type Limits, type Morning } from '../../core/hire/shapes.ts';
import { timeAt } from '../../core/water/clock.ts';
import type { Conditions } from '../../core/water/shapes.ts';
import '../conditions-form/conditions-form.ts';
import type { ConditionsEdited } from '../conditions-form/conditions-form.ts';
import { define } from '../define.ts';
import '../field/choice-field.ts';
import type { ChoiceMade } from '../field/choice-field.ts';
import '../field/quantity-field.ts';
import type { QuantityTyped } from '../field/quantity-field.ts';
import { SpeakingElement } from '../language/speaking-element.ts';
import { controls } from '../theme/controls.styles.ts';
import { formStyles } from '../theme/form.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import { NAUTICAL } from '../units/default-measures.ts';
import type { Measures } from '../units/measures.ts';
import { checkWords, deskWords, morningWords as words } from '../words/en-desk.ts';
import { deskFormStyles } from './desk-form.styles.ts';
import { clockText, endOfDay, offsetAt, reading, timeToday } from './desk-time.ts';
import { morningFormStyles } from './morning-form.styles.ts';

export type MorningSet = CustomEvent<{ morning: Morning }>;

/** Tops of forces 3 and 4 of the Beaufort scale, and waves a newcomer still finds small (our choice, no source). */
const USUAL: Morning['limits'] = {
  new: { maxWind: 5.4, maxWave: 0.3 },
  some: { maxWind: 7.9, maxWave: 0.5 },
  used: {},
};

/**
 * @summary What the desk sets once a day: wind and water, limits, last return, and until when it counts.
 * @fires morning-set - it was set for today
 */
export class MorningForm extends SpeakingElement {
  static override styles = [tokens, controls, formStyles, deskFormStyles, morningFormStyles];

  @property({ attribute: false }) morning: Morning | undefined;
  @property({ type: Number }) now = 0;
  /** Some boats run on batteries: asks how warm they are. */
  @property({ type: Boolean }) electric = false;
  @property({ attribute: false }) measures: Measures = NAUTICAL;

  @state() private conditions: Conditions = { water: 'sea' };
  @state() private limits = USUAL;
  @state() private ends: 'day' | 'time' = 'day';
  @state() private untilText = '';
  @state() private lastText = '';
  @state() private slipLife = SLIP_LIFE;
  @state() private problem = '';
  @state() private set = false;

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has('morning') && this.morning) this.#write(this.morning);
    this.#dated();
  }

  #write(morning: Morning): void {
    this.conditions = morning.conditions;
    this.limits = morning.limits;
    this.slipLife = morning.slipLife;
    this.lastText = reading(morning.lastReturn);
    const toTheEnd = morning.until === endOfDay(morning.setAt);
    this.ends = toTheEnd ? 'day' : 'time';
    this.untilText = toTheEnd ? '' : reading(morning.until);
  }

  /** Winds by time and tides are of the day that is meant, which the form tells by a departure. */
  #dated(): void {
    const departure = timeAt(Math.floor(this.now / 3600) * 3600, offsetAt(this.now));
    if (this.conditions.departure !== departure) this.conditions = { ...this.conditions, departure };
  }

  override render() {
    const { measures: m, morning, now } = this;
    return html`<form class="card" aria-label=${words.title} @submit=${this.#setForToday} @input=${() => (this.set = false)}>
      <h2>${words.title}</h2>
      <p class="muted">${words.lead}</p>
      ${
        morning && !morningHolds(morning, now)
          ? html`<p class="warn">${deskWords.morningExpired(clockText(morning.until, now, m.lang))}</p>`
          : nothing
      }
      <homeleg-conditions-form
        no-departure
        .conditions=${this.conditions}
        ?electric=${this.electric}
        .measures=${m}
        @conditions-edited=${(event: ConditionsEdited) => {
          this.conditions = event.detail.conditions;
          this.set = false;
        }}
      ></homeleg-conditions-form>
      <fieldset>
        <legend>${words.limits}</legend>
        <p class="hint">${words.limitsHint}</p>
        ${EXPERIENCES.map((experience) => this.#limitsOf(experience))}
      </fieldset>
      <div class="ask">
        <label for="last">${words.lastReturn}</label>
        <input
          id="last"
          class="narrow"
          type="time"
          .value=${this.lastText}
          aria-describedby="last-hint"
          @input=${(event: Event) => (this.lastText = (event.target as HTMLInputElement).value)}
        />
        <p id="last-hint" class="hint">${words.lastReturnHint}</p>
      </div>
      <homeleg-choice-field
        label=${words.until}
        .choices=${[{ value: 'day', label: words.endOfDay }, { value: 'time', label: words.atTime }]}
        .value=${this.ends}
        @choice-made=${(event: ChoiceMade) => (this.ends = event.detail.value as 'day' | 'time')}
      ></homeleg-choice-field>
      ${
        this.ends === 'time'
          ? html`<div class="ask">
              <label for="until">${words.untilTime}</label>
              <input
                id="until"
                class="narrow"
                type="time"
                .value=${this.untilText}
                aria-describedby="until-problem"
                @input=${(event: Event) => (this.untilText = (event.target as HTMLInputElement).value)}
              />
            </div>`
          : nothing
      }
      <homeleg-quantity-field
        label=${words.slipLife}
        measure="count"
        unit=${deskWords.minutes}
        unitSize="60"
        min="300"
        max="14400"
        required
        .measures=${m}
        .value=${this.slipLife}
        @quantity-typed=${({ detail }: QuantityTyped) => {
          if (detail.value !== undefined) this.slipLife = detail.value;
        }}
      ></homeleg-quantity-field>
      <p id="until-problem" class="problem" role="alert" ?hidden=${!this.problem}>${this.problem}</p>
      <div class="row">
        <button class="primary">${words.set}</button>
        <span role="status">${this.set ? words.done : ''}</span>
      </div>
    </form>`;
  }

  #limitsOf(experience: Experience) {
    const limits = this.limits[experience];
    const field = (key: keyof Limits, label: string, measure: string, most: number) =>
      html`<homeleg-quantity-field
        label=${label}
        measure=${measure}
        min="0"
        max=${most}
        .measures=${this.measures}
        .value=${limits[key]}
        @quantity-typed=${({ detail: { value } }: QuantityTyped) => {
          const { [key]: _, ...others } = limits;
          this.limits = {
            ...this.limits,
            [experience]: value === undefined ? others : { ...others, [key]: value },
          };
        }}
      ></homeleg-quantity-field>`;
    return html`<div class="fields of-one" role="group" aria-label=${checkWords.experiences[experience]}>
      <strong>${checkWords.experiences[experience]}</strong>
      ${field('maxWind', words.maxWind, 'speed', 20)} ${field('maxWave', words.maxWave, 'length', 3)}
    </div>`;
  }

  #setForToday(event: Event): void {
    event.preventDefault();
    const { now } = this;
    const until = this.ends === 'day' ? endOfDay(now) : timeToday(this.untilText, now);
    const lastReturn = this.lastText === '' ? undefined : timeToday(this.lastText, now);
    if (until === undefined || until <= now || (lastReturn !== undefined && lastReturn <= now)) {
      this.problem = words.past;
      return;
    }
    this.problem = '';
    this.set = true;
    const { departure: _, ...conditions } = this.conditions;
    const morning: Morning = {
      setAt: Math.floor(now),
      until,
      conditions: JSON.parse(JSON.stringify(conditions)),
      ...(lastReturn !== undefined && { lastReturn }),
      limits: this.limits,
      slipLife: this.slipLife,
    };
    this.dispatchEvent(new CustomEvent('morning-set', { detail: { morning }, bubbles: true }) satisfies MorningSet);
  }
}

define('homeleg-morning-form', MorningForm);

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-morning-form': MorningForm;
  }
}
