import { html, type PropertyValues } from 'lit';
import { property, state } from 'lit/decorators.js';
import { type CheckAsked, checkHire, type HireChecked } from '../../core/hire/check-hire.ts';
import { hireCraft } from '../../core/hire/hire-trip.ts';
import {
  type DueRule,
  EXPERIENCES,
  type Experience,
  type Fleet,
  type Hire,
  type Morning,
} from '../../core/hire/shapes.ts';
import type { Waters } from '../../core/route/waters.ts';
import type { Trip } from '../../core/trip/shapes.ts';
import { define } from '../define.ts';
import '../field/choice-field.ts';
import type { ChoiceMade } from '../field/choice-field.ts';
import '../field/fill-field.ts';
import type { FillEdited } from '../field/fill-field.ts';
import { InTurns } from '../in-turns.ts';
import { SpeakingElement } from '../language/speaking-element.ts';
import { controls } from '../theme/controls.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import { NAUTICAL } from '../units/default-measures.ts';
import type { Measures } from '../units/measures.ts';
import { checkWords as words } from '../words/en-desk.ts';
import './desk-answer.ts';
import { problemText } from '../words/en-problems.ts';
import { deskFormStyles } from './desk-form.styles.ts';
import { offsetAt } from './desk-time.ts';
import { DUE_AT_FIRST, type DueEdited } from './due-field.ts';
import { halfAsked, keepHalfAsked } from './half-asked.ts';
import { hireCheckStyles } from './hire-check.styles.ts';
import { hireOf } from './hire-of.ts';
import { weightsTyped } from './weights-typed.ts';

export type SlipWanted = CustomEvent<{ hire: Hire }>;

/**
 * @summary The reserve check of a desk in six questions: boat, weights, level, where, due back, experience.
 * @fires slip-wanted - the answer is to become a slip
 */
export class HireCheck extends SpeakingElement {
  static override styles = [tokens, controls, deskFormStyles, hireCheckStyles];

  @property({ attribute: false }) fleet!: Fleet;
  @property({ attribute: false }) morning: Morning | undefined;
  @property({ type: Number }) now = 0;
  /** Ids of boats that are out. */
  @property({ attribute: false }) out: readonly string[] = [];
  @property({ attribute: false }) waters: Waters | undefined;
  /** Gives a trip the calibration that the evidence of its boat allows. */
  @property({ attribute: false }) measured: (boatId: string, trip: Trip) => Trip = (_, trip) => trip;
  @property({ attribute: false }) measures: Measures = NAUTICAL;

  @state() private boatId = '';
  @state() private weightsText = '';
  @state() private fill: number | undefined;
  @state() private fillKnownBy: 'measured' | 'gauge' | undefined;
  @state() private routeId = '';
  @state() private due = DUE_AT_FIRST;
  @state() private rule: DueRule | undefined = { kind: 'after', seconds: 7200 };
  @state() private experience: Experience = 'some';

  readonly #turns = new InTurns(this, () => 3);
  #asked: CheckAsked | undefined;
  #checked: HireChecked | undefined;
  #problems: readonly string[] = [];
  #minute = 0;

  override connectedCallback(): void {
    super.connectedCallback();
    Object.assign(this, halfAsked());
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    const minute = Math.floor(this.now / 60);
    // The clock alone asks anew only once a minute.
    if (changed.size === 1 && changed.has('now') && minute === this.#minute) return;
    this.#minute = minute;
    this.#answer();
  }

  protected override updated(changed: PropertyValues<this>): void {
    if (changed.size === 1 && changed.has('now')) return;
    const { boatId, weightsText, fill, fillKnownBy, routeId, due, experience } = this;
    keepHalfAsked({ boatId, weightsText, fill, fillKnownBy, routeId, due, experience });
  }

  override render() {
    const { measures: m, fleet } = this;
    const boat = this.#boat;
    const electric = hireCraft(boat).store.kind === 'battery';
    return html`
      <div class="desk">
        <form class="card" aria-label=${words.title} @submit=${(event: Event) => event.preventDefault()}>
          <div class="ask">
            <label for="boat">${words.boat}</label>
            <select id="boat" @change=${(event: Event) => (this.boatId = chosen(event))}>
              ${fleet.boats.map(
                ({ id, name }) =>
                  html`<option value=${id} .selected=${id === boat.id}>
                    ${this.out.includes(id) ? words.boatOut(name) : name}
                  </option>`,
              )}
            </select>
          </div>
          ${this.#weightsAsked()}
          <homeleg-fill-field
            .fill=${this.fill}
            .fillKnownBy=${this.fillKnownBy}
            .store=${electric ? 'charge' : 'fuel'}
            .full=${this.#checked?.plan.full}
            .measures=${m}
            @fill-edited=${this.#fillEdited}
          ></homeleg-fill-field>
          <div class="ask">
            <label for="where">${words.where}</label>
            <select id="where" @change=${(event: Event) => (this.routeId = chosen(event))}>
              <option value="" .selected=${this.routeId === ''}>${words.hoursOnly}</option>
              ${fleet.routes.map(
                ({ id, name }) => html`<option value=${id} .selected=${id === this.routeId}>${name}</option>`,
              )}
            </select>
          </div>
          ${this.#turns.part(
            1,
            () => html`<homeleg-due-field
                .now=${this.now}
                .typed=${this.due}
                @due-edited=${this.#dueEdited}
              ></homeleg-due-field>
              <homeleg-choice-field
                label=${words.experience}
                .choices=${EXPERIENCES.map((value) => ({ value, label: words.experiences[value] }))}
                .value=${this.experience}
                .hint=${this.#limitsHint()}
                @choice-made=${(event: ChoiceMade) => (this.experience = event.detail.value as Experience)}
              ></homeleg-choice-field>`,
          )}
        </form>
        <div class="tells">
          ${this.#turns.part(
            2,
            () => html`<homeleg-desk-answer
              .checked=${this.#checked}
              .problems=${this.#problems}
              .boat=${boat.name}
              .area=${this.routeId === '' ? (fleet.area ?? '') : ''}
              .due=${this.rule && { rule: this.rule, lastReturn: this.morning?.lastReturn, now: this.now }}
              .measures=${m}
            ></homeleg-desk-answer>`,
          )}
          <div class="row">
            <button
              type="button"
              class="primary"
              ?disabled=${!this.#checked || this.#checked.verdict === 'no-go'}
              @click=${this.#slipWanted}
            >
              ${words.slip}
            </button>
            <button type="button" @click=${this.nextHirer}>${words.next}</button>
          </div>
        </div>
      </div>
    `;
  }

  #weightsAsked() {
    const { measures: m } = this;
    const weights = weightsTyped(this.weightsText, m);
    const all =
      weights && weights.length > 1
        ? m.show(
            'mass',
            weights.reduce((sum, kg) => sum + kg, 0),
          )
        : '';
    return html`<div class="ask">
      <label for="weights">${words.weights}</label>
      <input
        id="weights"
        inputmode="text"
        autocomplete="off"
        .value=${this.weightsText}
        aria-invalid=${weights ? 'false' : 'true'}
        aria-describedby="weights-hint"
        @input=${(event: Event) => (this.weightsText = (event.target as HTMLInputElement).value)}
      />
      <p id="weights-hint" class=${weights ? 'hint' : 'problem'}>
        ${weights ? words.weightsHint(m.unit('mass'), all) : words.weightsProblem}
      </p>
    </div>`;
  }

  #limitsHint(): string {
    const { maxWind, maxWave } = this.morning?.limits[this.experience] ?? {};
    const { measures: m } = this;
    return words.limits(
      maxWind === undefined ? '' : m.show('speed', maxWind),
      maxWave === undefined ? '' : m.show('length', maxWave),
    );
  }

  get #boat() {
    return this.fleet.boats.find(({ id }) => id === this.boatId) ?? this.fleet.boats[0]!;
  }

  #answer(): void {
    const weights = weightsTyped(this.weightsText, this.measures);
    this.#checked = undefined;
    this.#asked = undefined;
    if (!weights || weights.length === 0 || !this.rule) {
      this.#problems = [...(weights?.length ? [] : [words.weightsMissing]), ...(this.rule ? [] : [words.timeProblem])];
      return;
    }
    const boat = this.#boat;
    this.#asked = {
      boat,
      weights,
      fill: this.fill,
      fillKnownBy: this.fillKnownBy,
      route: this.fleet.routes.find(({ id }) => id === this.routeId),
      rule: this.rule,
      experience: this.experience,
      fleet: this.fleet,
      morning: this.morning,
      now: this.now,
      offset: offsetAt(this.now),
      boatOut: this.out.includes(boat.id),
      waters: this.waters,
      reserve: [{ kind: 'thirds' }],
      measured: (trip) => this.measured(boat.id, trip),
    };
    const found = checkHire(this.#asked);
    this.#problems = found.ok ? [] : this.say(() => found.problems.map(problemText));
    this.#checked = found.ok ? found.value : undefined;
  }

  #fillEdited({ detail }: FillEdited): void {
    this.fill = detail.fill;
    this.fillKnownBy = detail.fillKnownBy;
  }

  #dueEdited({ detail }: DueEdited): void {
    this.rule = detail.rule;
    this.due = detail.typed;
  }

  #slipWanted(): void {
    if (!this.#checked || !this.#asked) return;
    const hire = hireOf(this.#checked, this.#asked, newId(), this.measures);
    this.dispatchEvent(new CustomEvent('slip-wanted', { detail: { hire }, bubbles: true }) satisfies SlipWanted);
  }

  /** What is known of the hirer goes; place and time stay. */
  forgetHirer(): void {
    this.weightsText = '';
    this.fill = undefined;
    this.fillKnownBy = undefined;
  }

  readonly nextHirer = (): void => {
    this.forgetHirer();
    this.renderRoot.querySelector('select')?.focus();
  };
}

/** Of a page that is not served safely too, where a browser has no `randomUUID`. */
function newId(): string {
  return Array.from(crypto.getRandomValues(new Uint8Array(12)), (byte) => byte.toString(16).padStart(2, '0')).join('');
}

function chosen(event: Event): string {
  return (event.target as HTMLSelectElement).value;
}

define('homeleg-hire-check', HireCheck);

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-hire-check': HireCheck;
  }
}
