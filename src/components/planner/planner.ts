import { html, nothing, type PropertyValues } from 'lit';
import { property, state } from 'lit/decorators.js';
import type { WatersFile, Waypoint } from '../../core/route/shapes.ts';
import type { BoatProfile } from '../../core/trials/shapes.ts';
import type { Plan, Policy, Trip, Verdict } from '../../core/trip/shapes.ts';
import { tightened } from '../../core/trip/tightened.ts';
import type { Result } from '../../core/units/result.ts';
import type { FixWanted } from '../answer/answer.ts';
import { SpeakingElement } from '../language/speaking-element.ts';
import '../answer/answer.ts';
import type { ConditionsEdited } from '../conditions-form/conditions-form.ts';
import type { CraftEdited } from '../craft-form/craft-form.ts';
import type { LoadEdited, StoreMoved } from '../deck-plan/deck-plan.ts';
import type { FillEdited } from '../field/fill-field.ts';
import type { AdviceTaken } from '../load-advice/seat-advice.ts';
import '../fuel-bar/fuel-bar.ts';
import type { PolicyEdited } from '../reserve-form/reserve-form.ts';
import { undoKey } from '../route-map/map-keys.ts';
import { stillLive } from '../route-map/route-history.ts';
import type { RouteEdited } from '../route-map/route-map.ts';
import type { SavedOpened } from '../saved/saved.ts';
import type { SpeedTaken } from '../speed-choice/speed-choice.ts';
import type { DepartureTaken } from '../start-times/start-times.ts';
import { controls } from '../theme/controls.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import type { AssumptionWanted } from '../trip-details/trip-details.ts';
import { type Measures, measuresFor, type UnitSystem } from '../units/measures.ts';
import type { RouteSettingsEdited } from '../waypoint-table/waypoint-table.ts';
import { verdictWords } from '../words/en.ts';
import { answerWords } from '../words/en-answer.ts';
import { dataName } from '../words/en-data.ts';
import { measuredWords } from '../words/en-measured.ts';
import { plannerWords as words } from '../words/en-planner.ts';
import { savedWords } from '../words/en-saved.ts';
import { linkWords } from '../words/en-share.ts';
import { DraftKeeper } from './draft-keeper.ts';
import { fetchWaters, SHIPPED_WATERS } from './fetch-waters.ts';
import { type CraftOrigin, type Draft, firstDraft } from './first-trip.ts';
import { LinkedTrip } from './linked-trip.ts';
import { loadCard } from './load-card.ts';
import { mended } from './mended.ts';
import { fetchProfile } from './open-file.ts';
import { PartLoader } from './part-loader.ts';
import type { Part } from './parts.ts';
import { passageCard } from './passage-card.ts';
import { PlanMaker } from './plan-maker.ts';
import { plannerStyles } from './planner.styles.ts';
import { seated } from './seated.ts';
import { ASSUMED_IN, hazardsOf, plannedSpeed, tidal } from './shown.ts';
import { cardStates } from './states.ts';
import { sameTrip, TripHistory } from './trip-history.ts';
import { type StepWanted, type TripPicked, UNITS, type UnitsPicked } from './trip-tools.ts';
import { typesText } from './types-text.ts';
import { unusableIn } from './unusable.ts';
import { whenIdle } from './when-idle.ts';
import { withBoat } from './with-boat.ts';
import { withProfile } from './with-profile.ts';

/** A new plan is ready; `plan` is undefined while the trip is incomplete. */
export type PlanEvent = CustomEvent<{ trip: Trip; plan: Plan | undefined }>;
/** The answer became another one. */
export type VerdictEvent = CustomEvent<{ verdict: Verdict | undefined; before: Verdict | undefined }>;

type Card = 'boat' | 'aboard' | 'route' | 'day' | 'kept' | 'legs' | 'load' | 'passage' | 'saved' | 'further';
type Question = Exclude<Card, 'legs' | 'load' | 'passage' | 'saved' | 'further'>;

/**
 * @summary Plans a trip of a small power boat: boat, load, route and conditions in; range, reserve, safe payload and a
 * verdict with its reasons out.
 * @fires homeleg-plan - a change of the trip was worked out
 * @fires homeleg-verdict - the answer became another one
 */
export class Planner extends SpeakingElement {
  static override styles = [tokens, controls, plannerStyles];

  /** Units shown: nautical, metric or imperial. */
  @property() units: UnitSystem = 'nautical';
  /** "haven" for the invented waters, an address of a GeoJSON file, or "none". */
  @property() waters: string = SHIPPED_WATERS;
  /** Address of map pictures with {z}, {x}, {y}; loaded only once the user asks for them or this is set. */
  @property() tiles = '';
  @property({ attribute: 'tiles-attribution' }) tilesAttribution = '';
  /** Address of a forecast of wind with {lat} and {lon}, and {from} and {to} if it wants them; asked only at a press. */
  @property({ attribute: 'forecast-source' }) forecastSource = '';
  @property() center = '';
  @property({ type: Number }) zoom: number | undefined;
  /** Address of a boat profile: the measured boat to plan with. */
  @property() profile = '';
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
  /** The trip on screen took the place of another one, which is one step back. */
  @state() private cleared = false;
  /** The trip put by when a link was opened. */
  @state() private aside: Draft | undefined;
  @state() private announcement = '';
  @state() private openCards: ReadonlySet<Card> = new Set<Card>([
    'boat',
    'aboard',
    'route',
    'day',
    'kept',
    'legs',
    'load',
  ]);

  readonly #keeper = new DraftKeeper(this, () => (this.keep === 'none' ? undefined : this.keep));
  readonly #maker = new PlanMaker(this, (plan) => this.#told(plan));
  readonly #parts = new PartLoader(this);
  #history = new TripHistory();
  /** Trips put in place of another one. */
  #trips = 0;
  #measures: Measures = measuresFor('nautical', 'en');
  #verdict: Verdict | undefined;
  #watersVisit = 0;
  #restored: Promise<void> | undefined;

  constructor() {
    super();
    new LinkedTrip(this, (read) => this.#linked(read));
    this.addEventListener('keydown', (event) => this.#stepKeys(event));
  }

  /** The trip as entered; setting it replaces what is on the screen. */
  get trip(): Trip {
    return this.draft.trip;
  }

  @property({ attribute: false })
  set trip(trip: Trip) {
    this.draft = { trip, origin: {} };
    this.#history = new TripHistory();
  }

  /** The plan of the trip as it stands, undefined while the trip is incomplete. */
  get plan(): Plan | undefined {
    return this.#maker.plan;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    if (!this.hasUpdated) this.#restored = this.#restore();
    // On a phone the route comes first; the rest opens one by one.
    if (!this.hasUpdated && this.getBoundingClientRect().width < 700) this.openCards = new Set<Card>(['route']);
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (this.#measures.system !== this.units || this.#measures.lang !== this.language) {
      this.#measures = measuresFor(UNITS.includes(this.units) ? this.units : 'nautical', this.language);
    }
    if (changed.has('profile')) void this.#fetchProfile();
    if (changed.has('waters') || changed.has('watersFile')) void this.#fetchWaters();
    const keys = changed as Map<PropertyKey, unknown>;
    if (keys.has('draft') || keys.has('loadedWaters') || changed.has('tighten')) {
      this.#maker.make(this.#effective(), this.loadedWaters);
    }
  }

  protected override updated(): void {
    for (const place of this.renderRoot.querySelectorAll<HTMLElement>('[data-part]')) {
      // A closed card has nothing to show yet.
      if (place instanceof HTMLDetailsElement && !place.open) continue;
      this.#parts.near(place, place.dataset.part as Part);
    }
  }

  override render() {
    const { plan, curve, problems, settled } = this.#maker;
    const measures = this.#measures;
    const { trip } = this.draft;
    const fuel = trip.craft.store.kind === 'tank';
    return html`
      <div class="bench">
        <homeleg-trip-tools
          class="tools"
          .trip=${trip}
          .units=${this.units}
          ?undoable=${this.#history.canUndo}
          ?redoable=${this.#history.canRedo}
          @step-wanted=${({ detail }: StepWanted) => this.#stepped(detail.what)}
          @units-picked=${this.#unitsPicked}
          @trip-picked=${this.#tripPicked}
          @fresh-wanted=${this.#freshWanted}
          @print-wanted=${this.#printWanted}
        ></homeleg-trip-tools>
        ${this.#notes()}
        <div class="asks">${this.#asks(trip, plan)}</div>
        <div class="tells" id="answer">
          <section class="bare">
            <homeleg-answer
              .plan=${plan}
              .problems=${problems}
              .measures=${measures}
              .departure=${trip.conditions.departure}
              trip-name=${dataName(trip.name ?? '')}
              announce=${this.announcement}
              @fix-wanted=${this.#fixWanted}
            ></homeleg-answer>
          </section>
          <section>
            <h2>${fuel ? words.fuelBar : words.chargeBar}</h2>
            <homeleg-fuel-bar .plan=${plan} .measures=${measures} .unusable=${unusableIn(trip)}></homeleg-fuel-bar>
          </section>
          <section data-part="curve">
            <h2>${words.curve}</h2>
            <homeleg-curve-plot
              .curve=${curve}
              .measures=${measures}
              .plannedSpeed=${plannedSpeed(plan, trip.route)}
            ></homeleg-curve-plot>
          </section>
          <section class=${settled ? '' : 'unsettled'} data-part="details">
            <h2>${words.details}</h2>
            <homeleg-trip-details
              .plan=${plan}
              .conditions=${trip.conditions}
              .measures=${measures}
              .departure=${trip.conditions.departure}
              @assumption-wanted=${this.#assumptionWanted}
            ></homeleg-trip-details>
            <homeleg-daylight
              .plan=${plan}
              .measures=${measures}
              .departure=${trip.conditions.departure}
            ></homeleg-daylight>
          </section>
        </div>
        ${this.#wide(
          'legs',
          words.legs,
          plan ? words.stretches(plan.legs.length) : '',
          html`<homeleg-leg-table
            .plan=${plan}
            .measures=${measures}
            .departure=${trip.conditions.departure}
          ></homeleg-leg-table>`,
        )}
        ${this.#wide(
          'load',
          words.load,
          '',
          loadCard({
            trip: this.#maker.trip,
            waters: this.#maker.waters,
            plan,
            settled,
            speed: plannedSpeed(plan, trip.route),
            measures,
            taken: (event) => this.#adviceTaken(event),
          }),
        )}
        ${this.#wide(
          'passage',
          words.passage,
          words.passageState,
          passageCard({
            entered: trip,
            trip: this.#maker.trip,
            waters: this.#maker.waters,
            plan,
            settled,
            shown: this.openCards.has('passage'),
            measures,
          }),
        )}
        ${this.#further(plan)}
        ${this.#wide(
          'saved',
          savedWords.title,
          savedWords.state,
          html`<homeleg-saved
            .trip=${trip}
            .planned=${this.#maker.trip}
            .plan=${plan}
            .waters=${this.#maker.waters}
            .prepared=${this.#preparedTrip}
            ?fitted=${this.#maker.measures}
            .measures=${measures}
            @saved-opened=${this.#savedOpened}
          ></homeleg-saved>`,
        )}
        <a class="strip" href="#answer" @click=${this.#toAnswer}>
          <homeleg-answer compact .plan=${plan} .measures=${measures}></homeleg-answer>
        </a>
      </div>
    `;
  }

  #notes() {
    const notes = [
      this.message &&
        html`<p class="note" role="status">
        ${this.message}
        ${
          this.cleared
            ? html`<button type="button" class="quiet" @click=${() => this.#stepped('undone')}>
                ${words.undoFresh}
              </button>`
            : nothing
        }
      </p>`,
      this.aside &&
        html`<p class="note">
        ${linkWords.aside}
        <button type="button" class="quiet" @click=${this.#takeAside}>${linkWords.takeAside}</button>
        <button type="button" class="quiet" @click=${this.#dropAside}>${linkWords.dropAside}</button>
      </p>`,
      this.#keeper.failed && html`<p class="note">${words.notKept}</p>`,
      this.watersFailed && html`<p class="note">${words.watersFailed}</p>`,
      this.#maker.trialsFailed && html`<p class="note">${words.trialsFailed}</p>`,
      this.#parts.failed.size > 0 && html`<p class="note">${words.partFailed}</p>`,
    ].filter(Boolean);
    return notes.length > 0 ? html`<div class="notes">${notes}</div>` : nothing;
  }

  #asks(trip: Trip, plan: Plan | undefined) {
    const measures = this.#measures;
    const { origin } = this.draft;
    const states = cardStates(trip, measures, plan);
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
            .fresh=${this.#trips}
            .trip=${this.#maker.trip}
            .chart=${this.#maker.waters}
            .tilesAttribution=${this.tilesAttribution}
            .center=${this.center}
            .zoom=${this.zoom}
            @route-edited=${this.#routeEdited}
          ></homeleg-route-map>
          <homeleg-waypoint-table
            .route=${trip.route}
            .legs=${plan?.legs}
            .waters=${this.loadedWaters}
            .departure=${trip.conditions.departure}
            .fresh=${this.#trips}
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
        ></homeleg-craft-form>
        ${this.#measuredNote()}`,
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
          >
            <homeleg-attitude
              .trip=${this.#maker.trip}
              .plan=${plan}
              .speed=${plannedSpeed(plan, trip.route)}
              .measures=${measures}
            ></homeleg-attitude>
          </homeleg-deck-plan>
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
          .duration=${plan?.time}
          .place=${trip.route.waypoints[0]}
          .forecastSource=${this.forecastSource}
          ?waters-told=${this.loadedWaters !== undefined}
          ?tidal=${tidal(this.loadedWaters)}
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

  #further(plan: Plan | undefined) {
    const { trip, waters, settled } = this.#maker;
    const inside = html`<homeleg-further
      .trip=${trip}
      .plan=${plan}
      .waters=${waters}
      .watersFile=${this.loadedWaters}
      .settled=${settled}
      .measures=${this.#measures}
      @speed-taken=${this.#speedTaken}
      @departure-taken=${this.#departureTaken}
    ></homeleg-further>`;
    return this.#wide('further', words.further, words.furtherState, inside);
  }

  #wide(card: Exclude<Card, Question>, title: string, state: string, inside: unknown) {
    return html`<details
      class="wide card"
      id=${card}
      data-part=${card}
      ?open=${this.openCards.has(card)}
      @toggle=${(event: Event) => this.#toggled(card, (event.currentTarget as HTMLDetailsElement).open)}
    >
      <summary>
        <span></span>
        <h2>${title} <span class="state">${state}</span></h2>
      </summary>
      <div class="inside">${inside}</div>
    </details>`;
  }

  #measuredNote() {
    const { measured } = this.#maker;
    if (!measured) return nothing;
    return html`<homeleg-measured-note
      .trials=${measured.trials}
      .fit=${measured.fit}
      ?other-hull=${measured.otherHull}
      .measures=${this.#measures}
      @trials-forgotten=${this.#trialsForgotten}
    ></homeleg-measured-note>`;
  }

  #card(card: Question, step: number, { text, asks }: { text: string; asks: boolean }, inside: unknown) {
    return html`<details
      class="card"
      id=${card}
      data-part=${card}
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
    // What somebody opened is wanted, even where the page moved it out of sight meanwhile.
    if (open) void this.#parts.load(card);
  }

  /** Puts a new trip on screen, keeps it and has it worked out. */
  #change(trip: Trip, origin: CraftOrigin = this.draft.origin, whole = false): void {
    const from = this.draft;
    this.#put({ trip, origin });
    const live = stillLive(trip.route.waypoints);
    this.#history.changed(from, this.draft, { at: performance.now(), live, whole });
  }

  #put(draft: Draft): void {
    this.draft = draft;
    this.message = '';
    this.cleared = false;
    this.#keeper.keep(draft);
  }

  #stepped(what: 'undone' | 'redone'): void {
    const step = what === 'undone' ? this.#history.undo(this.draft) : this.#history.redo(this.draft);
    if (!step) return;
    if (step.whole) this.#trips++;
    this.#put(step.draft);
  }

  #stepKeys(event: KeyboardEvent): void {
    const what = event.defaultPrevented || typesText(event.composedPath()[0]) ? undefined : undoKey(event);
    if (!what) return;
    event.preventDefault();
    this.#stepped(what);
  }

  #effective(): Trip {
    const { trip } = this.draft;
    return { ...trip, policy: tightened(trip.policy, this.tighten) };
  }

  #told(plan: Plan | undefined): void {
    const before = this.#verdict;
    this.#verdict = plan?.verdict;
    // What is printed with a plan is there before somebody prints it.
    if (plan) whenIdle(() => this.#parts.load('further').then(() => this.#parts.load('passage')));
    if (plan) {
      const left = this.#measures.show('amount', plan.left.median, plan.store);
      this.announcement = this.say(() => answerWords.announced(verdictWords[plan.verdict], left));
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

  async #restore(): Promise<void> {
    const before = this.draft;
    const kept = await this.#keeper.load();
    const aside = await this.#keeper.aside();
    // Taken back in another way meanwhile.
    if (kept && 'draft' in kept && aside && sameTrip(aside, kept.draft)) this.#keeper.dropAside();
    else this.aside = aside;
    // Whoever set a trip or began to type meanwhile goes first.
    if (!kept || this.draft !== before) return;
    if ('draft' in kept) {
      this.#trips++;
      this.draft = kept.draft;
    } else this.message = words.unreadable;
  }

  async #fetchWaters(): Promise<void> {
    const visit = ++this.#watersVisit;
    this.watersFailed = false;
    if (this.watersFile || this.waters === 'none' || this.waters === '') {
      this.loadedWaters = this.watersFile;
      return;
    }
    const file = await fetchWaters(this.waters);
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

  #speedTaken({ detail }: SpeedTaken): void {
    this.#change({ ...this.draft.trip, route: detail.route });
  }

  #departureTaken({ detail }: DepartureTaken): void {
    const { trip } = this.draft;
    this.#change({ ...trip, conditions: { ...trip.conditions, ...detail } });
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

  #adviceTaken({ detail }: AdviceTaken): void {
    const { trip } = this.draft;
    this.#change({ ...trip, load: detail.load, craft: { ...trip.craft, store: detail.store } });
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

  #unitsPicked({ detail }: UnitsPicked): void {
    this.units = detail.units;
  }

  #tripPicked({ detail }: TripPicked): void {
    if ('refused' in detail) this.message = detail.refused;
    else if ('profile' in detail) this.#useProfile(detail.profile);
    else this.#replace({ trip: detail.trip, origin: {} }, words.opened(detail.name));
  }

  /** A saved trip as this page would plan it. */
  readonly #preparedTrip = (trip: Trip): Trip | undefined =>
    this.#maker.measuredTrip({ ...trip, policy: tightened(trip.policy, this.tighten) });

  #savedOpened({ detail }: SavedOpened): void {
    const { trip } = this.draft;
    const next = 'trip' in detail ? detail.trip : withBoat(trip, detail.boat);
    this.#replace({ trip: next, origin: {} }, words.opened(detail.name));
  }

  #useProfile(profile: BoatProfile): void {
    const trip = withProfile(this.draft.trip, profile);
    this.#replace({ trip, origin: {} }, words.boatOpened(profile.name));
    this.openCards = new Set([...this.openCards, 'boat']);
  }

  #trialsForgotten(): void {
    const { trials: _, ...trip } = this.draft.trip;
    this.#replace({ trip, origin: this.draft.origin }, measuredWords.forgotten);
  }

  async #fetchProfile(): Promise<void> {
    const address = this.profile;
    if (!address) return;
    await this.#restored;
    const read = await fetchProfile(address);
    if (address !== this.profile) return;
    if (!read.ok)
      this.message = [words.profileFailed, ...read.problems.slice(0, 3).map((p) => `${p.message}.`)].join(' ');
    // The one the device kept is not loaded again over what was changed since.
    else if (JSON.stringify(read.value.trials) !== JSON.stringify(this.draft.trip.trials)) this.#useProfile(read.value);
  }

  #freshWanted(): void {
    this.#replace(firstDraft(), words.cleared);
  }

  async #printWanted(): Promise<void> {
    // What must be aboard on the way goes along on paper.
    await Promise.all([this.#parts.load('further'), this.#parts.load('passage')]);
    globalThis.print();
  }

  /** Another trip in place of this one, which can be taken back. */
  #replace(draft: Draft, message: string): void {
    this.#trips++;
    this.#change(draft.trip, draft.origin, true);
    this.message = message;
    this.cleared = true;
  }

  async #linked(read: Result<Trip>): Promise<void> {
    await this.#restored;
    if (!read.ok) {
      const why = read.problems.slice(0, 3).map(({ message }) => `${message}.`);
      this.message = this.say(() => [linkWords.notOpened, ...why].join(' '));
      return;
    }
    const before = this.draft;
    const worth = !sameTrip(before, firstDraft());
    if (worth) this.#keeper.setAside(before);
    this.#replace(
      { trip: read.value, origin: {} },
      this.say(() => (worth ? linkWords.openedKept : linkWords.opened)),
    );
    this.cleared = worth;
  }

  #takeAside(): void {
    const { aside } = this;
    if (!aside) return;
    this.#replace(aside, linkWords.asideBack);
    this.#dropAside();
  }

  #dropAside(): void {
    this.#keeper.dropAside();
    this.aside = undefined;
  }

  #fixWanted({ detail }: FixWanted): void {
    const change = mended(this.draft.trip, detail.fix, detail.reason);
    if (change.trip) this.#change(change.trip);
    else if (detail.fix.code === 'draw-round') void this.#takeRound(detail.reason.legs);
    else if (change.card) this.#show(change.card);
  }

  async #takeRound(legs: readonly number[] | undefined): Promise<void> {
    await this.#show('route');
    await customElements.whenDefined('homeleg-waypoint-table');
    const table = this.renderRoot.querySelector('homeleg-waypoint-table');
    await table?.updateComplete;
    table?.takeRound(legs);
  }

  #assumptionWanted({ detail }: AssumptionWanted): void {
    void this.#show(ASSUMED_IN[detail.code] ?? 'kept');
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

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-planner': Planner;
  }
  interface HTMLElementEventMap {
    'homeleg-plan': PlanEvent;
    'homeleg-verdict': VerdictEvent;
  }
}
