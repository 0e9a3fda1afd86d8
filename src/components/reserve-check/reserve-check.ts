import { html, nothing, type PropertyValues } from 'lit';
import { property, state } from 'lit/decorators.js';
import { hiredTrip } from '../../core/hire/hired-trip.ts';
import type { Fleet, HireBoat } from '../../core/hire/shapes.ts';
import { quickPlan } from '../../core/trip/quick-plan.ts';
import type { Plan, Policy, Trip } from '../../core/trip/shapes.ts';
import { tightened } from '../../core/trip/tightened.ts';
import type { Problem } from '../../core/units/result.ts';
import type { Conditions } from '../../core/water/shapes.ts';
import { FormElement } from '../host/form-element.ts';
import '../answer/answer.ts';
import type { ConditionsEdited } from '../conditions-form/conditions-form.ts';
import '../conditions-form/conditions-form.ts';
import type { FillEdited } from '../field/fill-field.ts';
import '../field/fill-field.ts';
import '../fuel-bar/fuel-bar.ts';
import { written } from '../host/written.ts';
import { tellPage, tellTrip } from '../planner/planner-events.ts';
import { unusableIn } from '../planner/unusable.ts';
import { controls } from '../theme/controls.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import { parseDecimal } from '../units/decimal.ts';
import { figureList } from '../units/figure-list.ts';
import { type Measures, measuresFor, type UnitSystem } from '../units/measures.ts';
import { dataName } from '../words/en-data.ts';
import { hireWords as words } from '../words/en-hire.ts';
import { DEMO_FLEET } from './demo-fleet.ts';
import { PageDesk } from './page-desk.ts';
import { reserveCheckStyles } from './reserve-check.styles.ts';
import { keepToday, keptToday } from './today.ts';

const { boats: HIRE_BOATS } = DEMO_FLEET;
const UNITS: readonly UnitSystem[] = ['nautical', 'metric', 'imperial'];
/** Longest hire, s. */
const LONGEST = 12 * 3600;

/**
 * @summary A reserve check for a hire desk: boat, weights, level, route or hours in; one answer to hand over.
 * @fires {PlanEvent} homeleg-plan - a change was worked out
 * @fires {VerdictEvent} homeleg-verdict - the answer became another one
 * @fires {TripEvent} homeleg-trip - the answer was printed
 * @fires {ProblemEvent} homeleg-problem - an attribute or the JSON inside cannot be used
 * @slot cautions - more cautions, below those that are always shown
 * @csspart problem - what the author of the page should mend
 * @csspart asks - what is asked
 * @csspart answer - verdict, reasons and cautions
 * @csspart verdict - the words of the answer
 * @csspart bar - the fuel or charge as a bar
 * @csspart back - when to be back
 * @csspart seats - who sits where, with the heading
 * @csspart note - what nobody has checked
 * @csspart print - the button that prints it
 */
export class ReserveCheck extends FormElement {
  static override styles = [tokens, controls, reserveCheckStyles];

  /** Units shown: nautical, metric or imperial. */
  @property({ converter: written('metric') }) units: UnitSystem = 'metric';
  /** "light" or "dark"; without it as the page. */
  @property({ converter: written(''), reflect: true }) theme = '';
  /** Rules and limits of the desk; they only tighten. */
  @property({ attribute: false }) tighten: Partial<Policy> = {};

  /** The boat to begin with: the id of one of the fleet. */
  @property({ converter: written('') }) boat = '';
  /** Address of a fleet file: the desk's boats, routes and waters. Without it they are invented. */
  @property({ converter: written('') }) fleet = '';
  /** The fleet as an object, in place of `fleet`. */
  @property({ attribute: false }) fleetFile: Fleet | undefined;
  /** A reserve that is always kept: "thirds", "25 %" or "30 min". */
  @property({ converter: written('') }) reserve = '';
  /** The desk's boats alone, without a fleet; a boat may bring its profile and is then checked as it was measured. */
  @property({ attribute: false }) boats: readonly HireBoat[] = HIRE_BOATS;

  /** Undefined until one is picked. */
  @state() private boatId: string | undefined;
  @state() private weightsText = '';
  @state() private fill: number | undefined;
  @state() private fillKnownBy: 'measured' | 'gauge' | undefined;
  /** Empty: no set route; undefined until one is picked. */
  @state() private routeId: string | undefined;
  @state() private hoursText = '3';
  @state() private conditions: Conditions = { water: 'sea' };
  @state() private todayIsOld = false;
  @state() private todayOpen = true;
  @state() private fitter: typeof import('../planner/fitter.ts') | undefined;
  @state() private trialsFailed = false;
  /** Figures that take no part in the verdict: payload, and how much of a fix it needs. They come after the first answer. */
  @state() private slower: typeof import('../../core/trip/plan-trip.ts') | undefined;
  @state() private slowerFailed = false;

  readonly #desk = new PageDesk(this);
  #measures: Measures = measuresFor('metric', 'en');
  #trip: Trip | undefined;
  #plan: Plan | undefined;
  #problems: readonly Problem[] = [];
  /** What the page was told last. */
  #told = '';
  #verdict: Plan['verdict'] | undefined;

  /** The trip behind the answer, undefined while weights are missing. */
  get trip(): Trip | undefined {
    return this.#trip;
  }

  /** The plan behind the answer, undefined while there is none. */
  get plan(): Plan | undefined {
    return this.#plan;
  }

  /** The browser tells that the form was reset. */
  override formResetCallback(): void {
    this.#nextHirer();
  }

  protected override showMissing(): void {
    this.renderRoot.querySelector<HTMLElement>('#weights')?.focus();
  }

  override connectedCallback(): void {
    super.connectedCallback();
    const kept = keptToday(new Date());
    if (kept === 'old') this.todayIsOld = true;
    else if (kept) this.conditions = kept;
    // Open until the morning's setting is done; after that it stays as the desk leaves it.
    this.todayOpen = this.conditions.wind === undefined;
    void this.#desk.loadWaters();
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    this.#desk.look(this);
    if (changed.has('units') || this.#measures.lang !== this.language)
      this.#measures = measuresFor(UNITS.includes(this.units) ? this.units : 'metric', this.language);
    this.#answer();
  }

  protected override updated(): void {
    const trip = this.#plan && this.#trip;
    this.tellForm(trip, trip ? '' : this.say(() => words.weightsMissing));
    // The page hears of whole plans.
    if (trip && !this.slower && !this.slowerFailed) {
      void this.#fetchSlower();
      return;
    }
    const now = trip ? JSON.stringify(trip) : '';
    if (!this.#trip || now === this.#told) return;
    this.#told = now;
    tellPage(this, 'homeleg-plan', { trip: this.#trip, plan: this.#plan });
    const before = this.#verdict;
    this.#verdict = this.#plan?.verdict;
    if (before !== this.#verdict) tellPage(this, 'homeleg-verdict', { verdict: this.#verdict, before });
  }

  override render() {
    const measures = this.#measures;
    const trip = this.#trip;
    const { fleet } = this.#desk;
    const problems = this.#desk.problems.render();
    const boat = this.#boat();
    const craft = this.#desk.craftOf(boat);
    if (!fleet || !craft) return html`${problems}<p class="hint">${words.noFleet}</p>`;
    const electric = craft.store.kind === 'battery';
    const weights = this.#weights();
    const allowed = this.#allowed();
    return html`${problems}
      <div class="desk">
        <form class="asks" part="asks" @submit=${(event: Event) => event.preventDefault()}>
          <p class="hint">${this.#desk.invented ? words.demo : words.answers(fleet.answers, this.#lastDay(fleet))}</p>
          <label>
            ${words.boat}
            <select @change=${(event: Event) => (this.boatId = chosen(event))}>
              ${this.#boats().map((b) => html`<option value=${b.id} ?selected=${b.id === boat.id}>${dataName(b.name)}</option>`)}
            </select>
          </label>
          <div>
            <label for="weights">${words.weights}</label>
            <input
              id="weights"
              inputmode="text"
              autocomplete="off"
              .value=${this.weightsText}
              aria-invalid=${weights === undefined ? 'true' : 'false'}
              aria-describedby="weights-hint"
              @input=${(event: Event) => (this.weightsText = typed(event))}
            />
            <p id="weights-hint" class=${weights === undefined ? 'problem' : 'hint'}>
              ${weights === undefined ? words.weightsProblem : words.weightsHint(measures.unit('mass'))}
            </p>
          </div>
          <homeleg-fill-field
            .fill=${this.fill}
            .fillKnownBy=${this.fillKnownBy}
            .store=${electric ? 'charge' : 'fuel'}
            .full=${this.#plan?.full}
            .measures=${measures}
            @fill-edited=${this.#fillEdited}
          ></homeleg-fill-field>
          <label>
            ${words.route}
            <select @change=${(event: Event) => (this.routeId = chosen(event))}>
              ${fleet.routes.map((r) => html`<option value=${r.id} ?selected=${r.id === this.#route()?.id}>${dataName(r.name)}</option>`)}
              <option value="" ?selected=${this.#route() === undefined}>${words.hoursOnly}</option>
            </select>
          </label>
          <div>
            <label for="hours">${words.allowed}</label>
            <input
              id="hours"
              inputmode="decimal"
              autocomplete="off"
              .value=${this.hoursText}
              aria-invalid=${allowed === undefined ? 'true' : 'false'}
              aria-describedby="hours-hint"
              @input=${(event: Event) => (this.hoursText = typed(event))}
            />
            <p id="hours-hint" class=${allowed === undefined ? 'problem' : 'hint'}>
              ${allowed === undefined ? words.allowedProblem : words.allowedHint}
            </p>
          </div>
          <details ?open=${this.todayOpen}>
            <summary>${words.today}</summary>
            <p class="hint">${this.todayIsOld ? words.todayOld : words.todayHint}</p>
            <homeleg-conditions-form
              .conditions=${this.conditions}
              ?electric=${electric}
              .measures=${measures}
              @conditions-edited=${this.#conditionsEdited}
            ></homeleg-conditions-form>
          </details>
          <button type="button" @click=${this.#nextHirer}>${words.clear}</button>
        </form>
        <div class="tells">
          <homeleg-answer
            part="answer"
            exportparts="verdict"
            .plan=${this.#plan}
            .problems=${this.#problems}
            .measures=${measures}
            .departure=${this.conditions.departure}
            trip-name=${dataName(trip?.name ?? boat.name)}
          ></homeleg-answer>
          <slot name="cautions"></slot>
          ${this.#plan && trip ? this.#handOver(this.#plan, trip) : nothing}
        </div>
      </div>
    `;
  }

  #handOver(plan: Plan, trip: Trip) {
    const measures = this.#measures;
    const allowed = this.#allowed();
    return html`
      <homeleg-fuel-bar part="bar" .plan=${plan} .measures=${measures} .unusable=${unusableIn(trip)}></homeleg-fuel-bar>
      ${allowed ? html`<p class="back" part="back">${words.back(measures.time(allowed))}</p>` : nothing}
      <h3 part="seats">${words.seats}</h3>
      <ul class="seats" part="seats">
        ${trip.load.items.map((item) => {
          const seat = trip.craft.hull.stations.find((station) => station.id === item.station);
          return html`<li>${measures.show('mass', item.mass)}: ${seat?.label ?? '–'}</li>`;
        })}
      </ul>
      ${trip.waters ? nothing : html`<p class="hint" part="note">${words.noWaters}</p>`}
      <button type="button" class="print" part="print" @click=${this.#printPressed}>${words.print}</button>
    `;
  }

  #lastDay({ until }: Fleet): string {
    return new Date(until).toLocaleDateString(this.#measures.lang, { dateStyle: 'long', timeZone: 'UTC' });
  }

  #boats(): readonly HireBoat[] {
    return this.#desk.invented ? this.boats : (this.#desk.fleet?.boats ?? []);
  }

  #boat() {
    const boats = this.#boats();
    const id = this.boatId ?? this.#desk.boatId;
    return boats.find((boat) => boat.id === id) ?? boats[0] ?? HIRE_BOATS[0]!;
  }

  /** The first until another one, or none, is picked. */
  #route() {
    const routes = this.#desk.fleet?.routes ?? [];
    return this.routeId === undefined ? routes[0] : routes.find((route) => route.id === this.routeId);
  }

  readonly #printPressed = (): void => {
    if (this.#trip) tellTrip(this, this.#trip, 'print');
    globalThis.print();
  };

  /** kg; empty while nothing is typed, undefined where a weight cannot be read. */
  #weights(): readonly number[] | undefined {
    const parts = figureList(this.weightsText, this.#measures.lang);
    const kg = parts.map((part) => {
      const shown = parseDecimal(part, this.#measures.lang);
      return shown === undefined ? Number.NaN : this.#measures.toSi('mass', shown);
    });
    return kg.every((mass) => mass > 0 && mass < 500) ? kg : undefined;
  }

  #allowed(): number | undefined {
    const hours = parseDecimal(this.hoursText, this.#measures.lang);
    const time = (hours ?? 0) * 3600;
    return time > 0 && time <= LONGEST ? time : undefined;
  }

  #answer(): void {
    const weights = this.#weights();
    const timeAllowed = this.#allowed();
    const { fleet } = this.#desk;
    const boat = this.#boat();
    const craft = this.#desk.craftOf(boat);
    this.#plan = undefined;
    if (!fleet || !craft || weights === undefined || timeAllowed === undefined || weights.length === 0) {
      this.#trip = undefined;
      this.#problems = [{ code: 'weights-missing', path: 'weights', message: words.weightsMissing }];
      return;
    }
    this.#trip = hiredTrip(craft, {
      boat,
      weights,
      fill: this.fill,
      fillKnownBy: this.fillKnownBy,
      route: this.#route(),
      timeAllowed,
      conditions: this.conditions,
      policy: tightened(tightened({ reserve: [{ kind: 'thirds' }] }, this.tighten), this.#desk.reserve),
      waters: fleet.waters ?? (fleet.localWaters ? fleet.localWaters.name || fleet.name : undefined),
      start: this.#desk.invented ? undefined : (fleet.at ?? fleet.routes[0]?.waypoints[0]),
    });
    if (this.#trip.trials && !this.fitter && !this.trialsFailed) {
      void this.#fetchFitter();
      return;
    }
    const today = new Date().toISOString().slice(0, 10);
    const { trip } = this.fitter?.measuredTrip(this.#trip, today) ?? { trip: this.#trip };
    const waters = trip.waters ? this.#desk.waters : undefined;
    const result = this.slower ? this.slower.planTrip(trip, waters) : quickPlan(trip, waters);
    this.#problems = result.ok ? [] : result.problems;
    if (!result.ok) return;
    this.#plan = result.value;
  }

  async #fetchFitter(): Promise<void> {
    try {
      this.fitter = await import('../planner/fitter.ts');
    } catch {
      // Without it the boat counts as unmeasured, which only widens the answer.
      this.trialsFailed = true;
    }
  }

  async #fetchSlower(): Promise<void> {
    try {
      this.slower = await import('../../core/trip/plan-trip.ts');
    } catch {
      // The verdict stands without.
      this.slowerFailed = true;
    }
  }

  #fillEdited({ detail }: FillEdited): void {
    this.fill = detail.fill;
    this.fillKnownBy = detail.fillKnownBy;
  }

  #conditionsEdited({ detail }: ConditionsEdited): void {
    this.conditions = detail.conditions;
    this.todayIsOld = false;
    keepToday(detail.conditions, new Date());
  }

  #nextHirer(): void {
    this.weightsText = '';
    this.fill = undefined;
    this.fillKnownBy = undefined;
    this.renderRoot.querySelector('select')?.focus();
  }
}

function chosen(event: Event): string {
  return (event.target as HTMLSelectElement).value;
}

function typed(event: Event): string {
  return (event.target as HTMLInputElement).value;
}

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-reserve-check': ReserveCheck;
  }
}
