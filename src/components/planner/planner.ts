import { html, LitElement, nothing, type PropertyValues } from 'lit';
import { property, query, state } from 'lit/decorators.js';
import { readTripText } from '../../core/files/trip-schema.ts';
import { readWaters } from '../../core/files/waters-file.ts';
import type { Route, WatersFile, Waypoint } from '../../core/route/shapes.ts';
import type { Plan, Policy, Trip, Verdict } from '../../core/trip/shapes.ts';
import { tightened } from '../../core/trip/tightened.ts';
import type { FixWanted } from '../answer/answer.ts';
import '../answer/answer.ts';
import type { ConditionsEdited } from '../conditions-form/conditions-form.ts';
import '../conditions-form/conditions-form.ts';
import type { CraftEdited } from '../craft-form/craft-form.ts';
import '../craft-form/craft-form.ts';
import '../curve-plot/curve-plot.ts';
import type { LoadEdited, StoreMoved } from '../deck-plan/deck-plan.ts';
import '../deck-plan/deck-plan.ts';
import type { FillEdited } from '../field/fill-field.ts';
import '../field/fill-field.ts';
import '../fuel-bar/fuel-bar.ts';
import '../leg-table/leg-table.ts';
import type { PolicyEdited } from '../reserve-form/reserve-form.ts';
import '../reserve-form/reserve-form.ts';
import type { RouteEdited } from '../route-map/route-map.ts';
import '../route-map/route-map.ts';
import { controls } from '../theme/controls.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import type { AssumptionWanted } from '../trip-details/trip-details.ts';
import '../trip-details/trip-details.ts';
import { type Measures, measuresFor, type UnitSystem } from '../units/measures.ts';
import type { RouteSettingsEdited } from '../waypoint-table/waypoint-table.ts';
import '../waypoint-table/waypoint-table.ts';
import { reasonText, verdictWords } from '../words/en.ts';
import { plannerWords as words } from '../words/en-planner.ts';
import { DraftKeeper } from './draft-keeper.ts';
import { EXAMPLES, type ExampleName, exampleTrip } from './examples.ts';
import { type CraftOrigin, type Draft, firstDraft } from './first-trip.ts';
import { mended } from './mended.ts';
import { PlanMaker } from './plan-maker.ts';
import { plannerStyles } from './planner.styles.ts';
import { saveFile } from './save-file.ts';
import { seated } from './seated.ts';
import { cardStates } from './states.ts';
import { unusableIn } from './unusable.ts';

/** A new plan is ready; `plan` is undefined while the trip is incomplete. */
export type PlanEvent = CustomEvent<{ trip: Trip; plan: Plan | undefined }>;
/** The answer became another one. */
export type VerdictEvent = CustomEvent<{ verdict: Verdict | undefined; before: Verdict | undefined }>;

type Card = 'boat' | 'aboard' | 'route' | 'day' | 'kept';

const UNITS: readonly UnitSystem[] = ['nautical', 'metric', 'imperial'];
const SHIPPED_WATERS = 'haven';

/**
 * @summary Plans a trip of a small power boat: boat, load, route and conditions in; range, reserve, safe payload and a
 * verdict with its reasons out.
 * @fires homeleg-plan - a change of the trip was worked out
 * @fires homeleg-verdict - the answer became another one
 */
export class Planner extends LitElement {
  static override styles = [tokens, controls, plannerStyles];

  /** Units shown: nautical, metric or imperial. */
  @property() units: UnitSystem = 'nautical';
  /** "haven" for the invented waters, an address of a GeoJSON file, or "none". */
  @property() waters: string = SHIPPED_WATERS;
  /** Address of map pictures with {z}, {x}, {y}; loaded only once the user asks for them or this is set. */
  @property() tiles = '';
  @property({ attribute: 'tiles-attribution' }) tilesAttribution = '';
  @property() center = '';
  @property({ type: Number }) zoom: number | undefined;
  /** Under which name the device keeps what was entered; "none" keeps nothing. */
  @property() keep = 'homeleg-trip';
  /** Rules and limits of the host; they tighten the user's own. */
  @property({ attribute: false }) tighten: Partial<Policy> = {};
  /** Local waters as an object, in place of `waters`. */
  @property({ attribute: false }) watersFile: WatersFile | undefined;

  @state() private draft: Draft = firstDraft();
  @state() private loadedWaters: WatersFile | undefined;
  @state() private watersFailed = false;
  @state() private message = '';
  @state() private cleared: Draft | undefined;
  @state() private announcement = '';
  @state() private openCards: ReadonlySet<Card> = new Set<Card>(['boat', 'aboard', 'route', 'day', 'kept']);

  @query('input[type="file"]') private filePicker!: HTMLInputElement;

  readonly #keeper = new DraftKeeper(this, () => (this.keep === 'none' ? undefined : this.keep));
  readonly #maker = new PlanMaker(this, (plan) => this.#told(plan));
  #measures: Measures = measuresFor('nautical', 'en');
  #verdict: Verdict | undefined;
  #watersVisit = 0;

  /** The trip as entered; setting it replaces what is on the screen. */
  get trip(): Trip {
    return this.draft.trip;
  }

  @property({ attribute: false })
  set trip(trip: Trip) {
    this.draft = { trip, origin: {} };
  }

  /** The plan of the trip as it stands, undefined while the trip is incomplete. */
  get plan(): Plan | undefined {
    return this.#maker.plan;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    if (!this.hasUpdated) this.#restore();
    // On a phone the route comes first; the rest opens one by one.
    if (!this.hasUpdated && this.getBoundingClientRect().width < 700) this.openCards = new Set<Card>(['route']);
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    const lang = this.closest('[lang]')?.getAttribute('lang') ?? 'en';
    if (this.#measures.system !== this.units || this.#measures.lang !== lang) {
      this.#measures = measuresFor(UNITS.includes(this.units) ? this.units : 'nautical', lang);
    }
    if (changed.has('waters') || changed.has('watersFile')) void this.#fetchWaters();
    const keys = changed as Map<PropertyKey, unknown>;
    if (keys.has('draft') || keys.has('loadedWaters') || changed.has('tighten')) {
      this.#maker.make(this.#effective(), this.loadedWaters);
    }
  }

  override render() {
    const { plan, curve, problems, settled } = this.#maker;
    const measures = this.#measures;
    const { trip } = this.draft;
    const fuel = trip.craft.store.kind === 'tank';
    return html`
      <div class="bench">
        ${this.#tools()} ${this.#notes()}
        <div class="asks">${this.#asks(trip, plan)}</div>
        <div class="tells" id="answer">
          <section class="bare">
            <homeleg-answer
              .plan=${plan}
              .problems=${problems}
              .measures=${measures}
              .departure=${trip.conditions.departure}
              trip-name=${trip.name ?? ''}
              announce=${this.announcement}
              @fix-wanted=${this.#fixWanted}
            ></homeleg-answer>
          </section>
          <section>
            <h2>${fuel ? words.fuelBar : words.chargeBar}</h2>
            <homeleg-fuel-bar .plan=${plan} .measures=${measures} .unusable=${unusableIn(trip)}></homeleg-fuel-bar>
          </section>
          <section>
            <h2>${words.curve}</h2>
            <homeleg-curve-plot
              .curve=${curve}
              .measures=${measures}
              .plannedSpeed=${plannedSpeed(plan, trip.route)}
            ></homeleg-curve-plot>
          </section>
          <section class=${settled ? '' : 'unsettled'}>
            <h2>${words.details}</h2>
            <homeleg-trip-details
              .plan=${plan}
              .measures=${measures}
              .departure=${trip.conditions.departure}
              @assumption-wanted=${this.#assumptionWanted}
            ></homeleg-trip-details>
          </section>
        </div>
        <section class="wide card">
          <div class="inside">
            <h2>${words.legs}</h2>
            <homeleg-leg-table .plan=${plan} .measures=${measures} .departure=${trip.conditions.departure}></homeleg-leg-table>
          </div>
        </section>
        <a class="strip" href="#answer" @click=${this.#toAnswer}>
          <homeleg-answer compact .plan=${plan} .measures=${measures}></homeleg-answer>
        </a>
      </div>
    `;
  }

  #tools() {
    return html`<div class="tools" role="group" aria-label="Trip">
      <label>
        ${words.units}
        <select @change=${this.#unitsPicked}>
          ${UNITS.map((u) => html`<option value=${u} ?selected=${u === this.units}>${words.unitNames[u]}</option>`)}
        </select>
      </label>
      <label>
        ${words.examples}
        <select @change=${this.#examplePicked}>
          <option value="">${words.choose}</option>
          ${EXAMPLES.map((name) => html`<option value=${name}>${words.exampleNames[name]}</option>`)}
        </select>
      </label>
      <button type="button" @click=${this.#savePressed}>${words.save}</button>
      <button type="button" @click=${() => this.filePicker.click()}>${words.open}</button>
      <input type="file" accept=".json,application/json" tabindex="-1" aria-label=${words.open} @change=${this.#filePicked} />
      <button type="button" @click=${() => globalThis.print()}>${words.print}</button>
      <button type="button" class="quiet" @click=${this.#freshPressed}>${words.fresh}</button>
    </div>`;
  }

  #notes() {
    const notes = [
      this.message &&
        html`<p class="note" role="status">
        ${this.message}
        ${
          this.cleared
            ? html`<button type="button" class="quiet" @click=${this.#takeBack}>${words.undoFresh}</button>`
            : nothing
        }
      </p>`,
      this.#keeper.failed && html`<p class="note">${words.notKept}</p>`,
      this.watersFailed && html`<p class="note">${words.watersFailed}</p>`,
    ].filter(Boolean);
    return notes.length > 0 ? html`<div class="notes">${notes}</div>` : nothing;
  }

  #asks(trip: Trip, plan: Plan | undefined) {
    const measures = this.#measures;
    const { origin } = this.draft;
    const states = cardStates(trip, measures);
    const electric = trip.craft.drive.kind === 'electric';
    return [
      this.#card(
        'route',
        1,
        states.route,
        html`
          ${this.loadedWaters?.name === SHIPPED_WATERS ? html`<p class="hint">${words.demoWaters}</p>` : nothing}
          <homeleg-route-map
            .route=${trip.route}
            .waters=${this.loadedWaters}
            .legs=${plan?.legs}
            .turnBack=${plan?.turnBack?.onRoute ? plan.turnBack : undefined}
            .hazards=${hazardsOf(plan, measures)}
            .measures=${measures}
            .tiles=${this.tiles}
            .tilesAttribution=${this.tilesAttribution}
            .center=${this.center}
            .zoom=${this.zoom}
            @route-edited=${this.#routeEdited}
          ></homeleg-route-map>
          <homeleg-waypoint-table
            .route=${trip.route}
            .legs=${plan?.legs}
            .store=${electric ? 'charge' : 'fuel'}
            .measures=${measures}
            @route-edited=${this.#routeEdited}
            @route-settings-edited=${this.#settingsEdited}
          ></homeleg-waypoint-table>
        `,
      ),
      this.#card(
        'boat',
        2,
        states.boat,
        html`<homeleg-craft-form
          .craft=${trip.craft}
          .hullId=${origin.hullId}
          .engineId=${origin.engineId}
          .storeId=${origin.storeId}
          .measures=${measures}
          @craft-edited=${this.#craftEdited}
        ></homeleg-craft-form>`,
      ),
      this.#card(
        'aboard',
        3,
        states.aboard,
        html`
          <homeleg-deck-plan
            .craft=${trip.craft}
            .load=${trip.load}
            .balance=${plan?.balance}
            .measures=${measures}
            @load-edited=${this.#loadEdited}
            @store-moved=${this.#storeMoved}
          ></homeleg-deck-plan>
          <homeleg-fill-field
            .fill=${trip.load.fill}
            .fillKnownBy=${trip.load.fillKnownBy}
            .store=${electric ? 'charge' : 'fuel'}
            .full=${plan?.full}
            .measures=${measures}
            @fill-edited=${this.#fillEdited}
          ></homeleg-fill-field>
        `,
      ),
      this.#card(
        'day',
        4,
        states.day,
        html`<homeleg-conditions-form
          .conditions=${trip.conditions}
          ?electric=${electric}
          .measures=${measures}
          @conditions-edited=${this.#conditionsEdited}
        ></homeleg-conditions-form>`,
      ),
      this.#card(
        'kept',
        5,
        states.kept,
        html`<homeleg-reserve-form
          .policy=${trip.policy}
          .tighten=${this.tighten}
          .measures=${measures}
          @policy-edited=${this.#policyEdited}
        ></homeleg-reserve-form>`,
      ),
    ];
  }

  #card(card: Card, step: number, { text, asks }: { text: string; asks: boolean }, inside: unknown) {
    return html`<details
      class="card"
      id=${card}
      ?open=${this.openCards.has(card)}
      @toggle=${(event: Event) => this.#toggled(card, (event.currentTarget as HTMLDetailsElement).open)}
    >
      <summary>
        <span class="step" aria-hidden="true">${step}</span>
        <h2>${words[card]} <span class="state ${asks ? 'open-question' : ''}">${text}</span></h2>
      </summary>
      <div class="inside">${inside}</div>
    </details>`;
  }

  #toggled(card: Card, open: boolean): void {
    if (open === this.openCards.has(card)) return;
    const cards = new Set(this.openCards);
    if (open) cards.add(card);
    else cards.delete(card);
    this.openCards = cards;
  }

  /** Puts a new trip on screen, keeps it and has it worked out. */
  #change(trip: Trip, origin: CraftOrigin = this.draft.origin): void {
    this.draft = { trip, origin };
    this.message = '';
    this.cleared = undefined;
    this.#keeper.keep(this.draft);
  }

  #effective(): Trip {
    const { trip } = this.draft;
    return { ...trip, policy: tightened(trip.policy, this.tighten) };
  }

  #told(plan: Plan | undefined): void {
    const before = this.#verdict;
    this.#verdict = plan?.verdict;
    if (plan) {
      const left = this.#measures.show('amount', plan.left.median, plan.store);
      this.announcement = `${verdictWords[plan.verdict]}: ${left} left at home.`;
    } else {
      this.announcement = '';
    }
    const options = { bubbles: true, composed: true };
    this.dispatchEvent(
      new CustomEvent('homeleg-plan', { detail: { trip: this.#effective(), plan }, ...options }) satisfies PlanEvent,
    );
    if (before !== this.#verdict) {
      const detail = { verdict: this.#verdict, before };
      this.dispatchEvent(new CustomEvent('homeleg-verdict', { detail, ...options }) satisfies VerdictEvent);
    }
  }

  #restore(): void {
    const kept = this.#keeper.load();
    if (!kept) return;
    if ('draft' in kept) this.draft = kept.draft;
    else this.message = words.unreadable;
  }

  async #fetchWaters(): Promise<void> {
    const visit = ++this.#watersVisit;
    this.watersFailed = false;
    if (this.watersFile || this.waters === 'none' || this.waters === '') {
      this.loadedWaters = this.watersFile;
      return;
    }
    const file = await fetchedWaters(this.waters);
    if (visit !== this.#watersVisit) return;
    this.watersFailed = file === undefined;
    this.loadedWaters = file;
  }

  #routeEdited(event: RouteEdited): void {
    event.stopPropagation();
    const { trip } = this.draft;
    this.#change({ ...trip, route: { ...trip.route, waypoints: event.detail.waypoints as Waypoint[] } });
  }

  #settingsEdited(event: RouteSettingsEdited): void {
    const { trip } = this.draft;
    this.#change({ ...trip, route: { ...trip.route, ...event.detail } });
  }

  #craftEdited({ detail }: CraftEdited): void {
    const { trip } = this.draft;
    const { craft, hullId, engineId, storeId } = detail;
    this.#change(
      { ...trip, craft, load: seated(trip.load, craft.hull, trip.craft.hull) },
      { hullId, engineId, storeId },
    );
  }

  #loadEdited({ detail }: LoadEdited): void {
    this.#change({ ...this.draft.trip, load: detail.load });
  }

  #storeMoved({ detail }: StoreMoved): void {
    const { trip } = this.draft;
    this.#change({ ...trip, craft: { ...trip.craft, store: detail.store } });
  }

  #fillEdited({ detail }: FillEdited): void {
    const { trip } = this.draft;
    this.#change({ ...trip, load: { ...trip.load, fill: detail.fill, fillKnownBy: detail.fillKnownBy } });
  }

  #conditionsEdited({ detail }: ConditionsEdited): void {
    this.#change({ ...this.draft.trip, conditions: detail.conditions });
  }

  #policyEdited({ detail }: PolicyEdited): void {
    this.#change({ ...this.draft.trip, policy: detail.policy });
  }

  #unitsPicked(event: Event): void {
    this.units = (event.target as HTMLSelectElement).value as UnitSystem;
  }

  async #examplePicked(event: Event): Promise<void> {
    const picker = event.target as HTMLSelectElement;
    const name = picker.value as ExampleName | '';
    picker.value = '';
    if (!name) return;
    const before = this.draft;
    const trip = await exampleTrip(name);
    if (!trip) {
      this.message = words.loadFailed;
      return;
    }
    this.#change(trip, {});
    this.message = words.opened(words.exampleNames[name]);
    this.cleared = before;
  }

  #savePressed(): void {
    const { trip } = this.draft;
    saveFile(`${(trip.name ?? 'trip').replace(/[^\p{L}\p{N}]+/gu, '-')}.json`, JSON.stringify(trip, undefined, 2));
  }

  async #filePicked(): Promise<void> {
    const file = this.filePicker.files?.[0];
    this.filePicker.value = '';
    if (!file) return;
    const before = this.draft;
    const read = readTripText(await file.text().catch(() => ''));
    if (!read.ok) {
      this.message = `${words.notOpened} ${read.problems
        .slice(0, 3)
        .map((p) => p.message)
        .join(' ')}`;
      return;
    }
    this.#change(read.value, {});
    this.message = words.opened(file.name);
    this.cleared = before;
  }

  #freshPressed(): void {
    const before = this.draft;
    const fresh = firstDraft();
    this.#change(fresh.trip, fresh.origin);
    this.message = words.cleared;
    this.cleared = before;
  }

  #takeBack(): void {
    const { cleared } = this;
    if (cleared) this.#change(cleared.trip, cleared.origin);
  }

  #fixWanted({ detail }: FixWanted): void {
    const change = mended(this.draft.trip, detail.fix, detail.reason);
    if (change.trip) this.#change(change.trip);
    else if (change.card) this.#show(change.card);
  }

  #assumptionWanted({ detail }: AssumptionWanted): void {
    const cards: Partial<Record<typeof detail.code, Card>> = {
      fill: 'aboard',
      'fill-gauge': 'aboard',
      seat: 'aboard',
      'tank-position': 'aboard',
      'extra-load-at-centre': 'aboard',
      wind: 'day',
      stream: 'day',
      sea: 'day',
      'speed-in-waves': 'day',
      'battery-temperature': 'day',
      'keep-out-season': 'day',
      'unmeasured-boat': 'boat',
      'petrol-density': 'boat',
    };
    this.#show(cards[detail.code] ?? 'kept');
  }

  /** Opens a card and takes the reader there. */
  async #show(card: Card): Promise<void> {
    this.#toggled(card, true);
    await this.updateComplete;
    const place = this.renderRoot.querySelector<HTMLElement>(`#${card}`);
    place?.scrollIntoView({ block: 'start' });
    place?.querySelector('summary')?.focus();
  }

  #toAnswer(event: Event): void {
    // The fragment would look for the answer in the page, not in this element.
    event.preventDefault();
    this.renderRoot.querySelector('#answer')?.scrollIntoView({ block: 'start' });
  }
}

/** Speed of the stretch most of the way is sailed at; before there is a plan what was planned as a figure. */
function plannedSpeed(plan: Plan | undefined, route: Route): number | undefined {
  if (!plan) return typeof route.speed === 'number' ? route.speed : undefined;
  const longest = plan.legs.reduce((a, b) => (b.distance > a.distance ? b : a), plan.legs[0]!);
  return longest.speedThroughWater;
}

function hazardsOf(plan: Plan | undefined, measures: Measures) {
  return (plan?.reasons ?? [])
    .filter((reason) => reason.at !== undefined && reason.level !== 'note')
    .map((reason) => ({ at: reason.at!, text: reasonText(reason, measures, plan!.store) }));
}

async function fetchedWaters(name: string): Promise<WatersFile | undefined> {
  try {
    const value: unknown =
      name === SHIPPED_WATERS
        ? JSON.parse((await import('../../../shared/waters/haven.geojson?raw')).default)
        : await (await fetch(name)).json();
    const read = readWaters(value);
    return read.ok ? read.value : undefined;
  } catch {
    return undefined;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-planner': Planner;
  }
  interface HTMLElementEventMap {
    'homeleg-plan': PlanEvent;
    'homeleg-verdict': VerdictEvent;
  }
}
