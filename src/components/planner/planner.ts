import { html, nothing, type PropertyValues } from 'lit';
import { property } from 'lit/decorators.js';
import type { Fleet } from '../../core/hire/shapes.ts';
import type { Route, WatersFile } from '../../core/route/shapes.ts';
import type { BoatProfile } from '../../core/trials/shapes.ts';
import type { Plan, Policy, Trip, Verdict } from '../../core/trip/shapes.ts';
import { tightened } from '../../core/trip/tightened.ts';
import type { Result } from '../../core/units/result.ts';
import type { FixWanted } from '../answer/answer.ts';
import { FormElement } from '../host/form-element.ts';
import '../answer/answer.ts';
import '../fuel-bar/fuel-bar.ts';
import { undoKey } from '../route-map/map-keys.ts';
import { controls } from '../theme/controls.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import type { AssumptionWanted } from '../trip-details/trip-details.ts';
import { type Measures, measuresFor, type UnitSystem } from '../units/measures.ts';
import { verdictWords } from '../words/en.ts';
import { answerWords } from '../words/en-answer.ts';
import { hostWords } from '../words/en-host.ts';
import { plannerWords as words } from '../words/en-planner.ts';
import { answerColumn } from './answer-column.ts';
import { Cards } from './cards.ts';
import { SHIPPED_WATERS } from './fetch-waters.ts';
import { firstDraft } from './first-trip.ts';
import { HostSide } from './host-side.ts';
import { LocalWaters } from './local-waters.ts';
import { mended } from './mended.ts';
import { notes } from './notes.ts';
import { fetchProfile } from './open-file.ts';
import { PartLoader } from './part-loader.ts';
import type { Part } from './parts.ts';
import { PlanMaker } from './plan-maker.ts';
import { plannerStyles } from './planner.styles.ts';
import { tellPage } from './planner-events.ts';
import { questionCards } from './question-cards.ts';
import { ASSUMED_IN } from './shown.ts';
import { TripEdits } from './trip-edits.ts';
import { TripOnScreen } from './trip-on-screen.ts';
import { tripText } from './trip-text.ts';
import { type StepWanted, type TripPicked, UNITS, type UnitsPicked } from './trip-tools.ts';
import { typesText } from './types-text.ts';
import { whenIdle } from './when-idle.ts';
import { wideCards } from './wide-cards.ts';
import { withProfile } from './with-profile.ts';

/**
 * @summary Plans a trip of a small power boat: boat, load, route and conditions in; range, reserve, safe payload and a
 * verdict with its reasons out.
 * @fires {PlanEvent} homeleg-plan - a change of the trip was worked out
 * @fires {VerdictEvent} homeleg-verdict - the answer became another one
 * @fires {RouteEvent} homeleg-route - the route became another one
 * @fires {TripEvent} homeleg-trip - the user saved the trip as a file
 * @fires {SizeEvent} homeleg-size - with tell-size: the element has another size
 * @fires {ProblemEvent} homeleg-problem - an attribute or the JSON inside cannot be used
 * @slot intro - words of the page before everything else
 * @slot logo - the club's mark, beside the tools and on paper
 * @slot cautions - more cautions, below those that are always shown
 * @csspart tools - units, examples, undo, file
 * @csspart note - what happened, and what could not be had
 * @csspart problem - what the author of the page should mend
 * @csspart card - each card that asks or tells
 * @csspart answer - verdict, reasons and cautions
 * @csspart bar - the fuel or charge as a bar, with its heading
 * @csspart curve - what each speed takes, with its heading
 * @csspart details - figures and assumptions, with their heading
 * @csspart strip - the answer at the foot of a small screen
 * @cssprop --homeleg-paper - behind everything
 * @cssprop --homeleg-raised - behind cards
 * @cssprop --homeleg-ink - text
 * @cssprop --homeleg-muted - lesser text
 * @cssprop --homeleg-line - rules
 * @cssprop --homeleg-edge - borders of controls
 * @cssprop --homeleg-accent - lines, links and pressed buttons
 * @cssprop --homeleg-on-accent - text on the accent
 * @cssprop --homeleg-go - the answer that it works
 * @cssprop --homeleg-doubt - the answer that it is marginal
 * @cssprop --homeleg-stop - the answer that it does not work
 * @cssprop --homeleg-water - water on the map
 * @cssprop --homeleg-land - land on the map
 * @cssprop --homeleg-radius - corners
 * @cssprop --homeleg-gap - space between things
 * @cssprop --homeleg-font - family of fonts
 * @cssprop --homeleg-map-height - height of the map
 */
export class Planner extends FormElement {
  static override styles = [tokens, controls, plannerStyles];

  /** Units shown: nautical, metric or imperial. */
  @property() units: UnitSystem = 'nautical';
  /** "haven" for the invented waters, an address of a GeoJSON file, or "none". */
  @property() waters: string = SHIPPED_WATERS;
  /** Address of map pictures with {z}, {x}, {y}; loaded only once the user asks for them or this is set. */
  @property() tiles = '';
  /** Who made the map pictures, as their terms want it shown. */
  @property({ attribute: 'tiles-attribution' }) tilesAttribution = '';
  /** Address of a forecast of wind with {lat} and {lon}, and {from} and {to} if it wants them; asked only at a press. */
  @property({ attribute: 'forecast-source' }) forecastSource = '';
  /** Where the map begins, as "latitude, longitude"; without it, at the waters or the route. */
  @property() center = '';
  /** How close the map begins, 2 to 18. */
  @property({ type: Number }) zoom: number | undefined;
  /** Address of a boat profile: the measured boat to plan with. */
  @property() profile = '';
  /** The boat to begin with: one of the fleet, a hull of the catalogue, or hull, engine and store of it. */
  @property() boat = '';
  /** Address of a fleet file: the boats offered. */
  @property() fleet = '';
  /** The fleet as an object, in place of `fleet`. */
  @property({ attribute: false }) fleetFile: Fleet | undefined;
  /** A reserve that is kept whatever the user chooses: "thirds", "25 %" or "30 min". */
  @property() reserve = '';
  /** "light" or "dark"; without it as the page. */
  @property({ reflect: true }) theme = '';
  /** Tells of each size by homeleg-size, and a page round this one's frame of the height needed, by a message. */
  @property({ type: Boolean, attribute: 'tell-size' }) tellSize = false;
  /** Under which name the device keeps what was entered; "none" keeps nothing. */
  @property() keep = 'homeleg-trip';
  /** Rules and limits of the host; they tighten the user's own. */
  @property({ attribute: false }) tighten: Partial<Policy> = {};
  /** Local waters as an object, in place of `waters`. */
  @property({ attribute: false }) watersFile: WatersFile | undefined;

  readonly #screen: TripOnScreen;
  readonly #edits: TripEdits;
  readonly #maker = new PlanMaker(this, (plan) => this.#told(plan));
  readonly #waters = new LocalWaters(this);
  readonly #parts = new PartLoader(this);
  readonly #cards = new Cards(this, this.#parts);
  readonly #page: HostSide;
  #route: Route | undefined;
  #measures: Measures = measuresFor('nautical', 'en');
  #verdict: Verdict | undefined;
  #announcement = '';
  #watersGiven: readonly unknown[] = [];
  /** What the plan was made of. */
  #made: readonly unknown[] = [];

  constructor() {
    super();
    this.#screen = new TripOnScreen({
      host: this,
      kept: () => (this.keep === 'none' ? undefined : this.keep),
      say: (text) => this.say(text),
    });
    this.#edits = new TripEdits(this.#screen);
    this.#page = new HostSide(this, this.#screen);
    this.addEventListener('keydown', (event) => this.#stepKeys(event));
  }

  /** The trip as entered; setting it replaces what is on the screen. */
  get trip(): Trip {
    return this.#screen.trip;
  }

  @property({ attribute: false })
  set trip(trip: Trip) {
    this.#screen.set(trip);
  }

  /** The plan of the trip as it stands, undefined while the trip is incomplete. */
  get plan(): Plan | undefined {
    return this.#maker.plan;
  }

  /** The trip with what its trials say of its boat, as it was planned. */
  get plannedTrip(): Trip | undefined {
    return this.#maker.trip;
  }

  /** The local waters in use. */
  get watersInUse(): WatersFile | undefined {
    return this.#waters.file;
  }

  /** Puts another trip on screen, as a file opened there: checked, and one step back takes it away. */
  async loadTrip(trip: Trip | string): Promise<Result<Trip>> {
    const { readDraft, readTripText } = await import('../../core/files/trip-schema.ts');
    const read = typeof trip === 'string' ? readTripText(trip) : readDraft(trip);
    if (read.ok) this.#screen.replace({ trip: read.value, origin: {} }, words.opened(read.value.name ?? ''));
    return read;
  }

  /** A change of the trip, as if the user had made it: kept, and one step back undoes it. */
  editTrip(trip: Trip): void {
    this.#screen.change(trip);
  }

  /** The trip as the text of a trip file. */
  saveTrip(): string {
    return tripText(this.trip);
  }

  /** Prints the answer and the passage plan. */
  async print(): Promise<void> {
    // What must be aboard on the way goes along on paper.
    await Promise.all([this.#parts.load('further'), this.#parts.load('passage')]);
    globalThis.print();
  }

  /** The browser tells that the form was reset. */
  override formResetCallback(): void {
    this.#screen.set(firstDraft().trip);
  }

  protected override showMissing(): void {
    void this.#cards.show('route');
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (this.#measures.system !== this.units || this.#measures.lang !== this.language) {
      this.#measures = measuresFor(UNITS.includes(this.units) ? this.units : 'nautical', this.language);
    }
    if (changed.has('profile')) void this.#fetchProfile();
    const given = [this.waters, this.watersFile ?? this.#page.waters] as const;
    if (given.some((part, i) => part !== this.#watersGiven[i])) {
      this.#watersGiven = given;
      void this.#waters.fetch(...given).then(() => this.#page.watersLooked(this.#waters.failed));
    }
    this.#page.look(this);
    const now = [this.#screen.draft, this.#waters.file, this.tighten, this.#page.reserve];
    if (now.some((part, i) => part !== this.#made[i])) {
      this.#made = now;
      this.#maker.make(this.#effective(this.trip), this.#waters.file);
    }
  }

  protected override updated(): void {
    this.tellForm(this.#effective(this.trip), this.plan ? '' : hostWords.noPlan);
    for (const place of this.renderRoot.querySelectorAll<HTMLElement>('[data-part]')) {
      // A closed card has nothing to show yet.
      if (place instanceof HTMLDetailsElement && !place.open) continue;
      this.#parts.near(place, place.dataset.part as Part);
    }
  }

  override render() {
    const { tiles, tilesAttribution, center, zoom, forecastSource, tighten, trip } = this;
    const shared = {
      cards: this.#cards,
      screen: this.#screen,
      edits: this.#edits,
      maker: this.#maker,
      waters: this.#waters.file,
      measures: this.#measures,
    };
    return html`
      <slot name="intro"></slot>
      <div class="bench" part="bench">
        <slot name="logo"></slot>
        <homeleg-trip-tools
          class="tools"
          part="tools"
          .trip=${trip}
          .units=${this.units}
          ?undoable=${this.#screen.canUndo}
          ?redoable=${this.#screen.canRedo}
          @step-wanted=${({ detail }: StepWanted) => this.#screen.stepped(detail.what)}
          @units-picked=${this.#unitsPicked}
          @trip-picked=${this.#tripPicked}
          @fresh-wanted=${this.#freshWanted}
          @print-wanted=${this.print}
          @trip-saved=${this.#tripSaved}
        ></homeleg-trip-tools>
        ${this.#page.problems.render()}
        ${notes(this.#screen, {
          waters: this.#waters.failed,
          trials: this.#maker.trialsFailed,
          part: this.#parts.failed.size > 0 || this.#maker.slowFailed,
        })}
        <div class="asks">
          ${questionCards({ ...shared, map: { tiles, tilesAttribution, center, zoom }, forecastSource, tighten, boats: this.#page.boats() })}
        </div>
        <div class="tells" id="answer">
          ${answerColumn({
            trip,
            maker: this.#maker,
            measures: this.#measures,
            announcement: this.#announcement,
            fixWanted: this.#fixWanted,
            assumptionWanted: this.#assumptionWanted,
          })}
        </div>
        ${wideCards({ ...shared, prepared: this.#preparedTrip })}
        ${
          this.plan
            ? html`<a class="strip" part="strip" href="#answer" @click=${this.#toAnswer}>
                <homeleg-answer compact .plan=${this.plan} .measures=${this.#measures}></homeleg-answer>
              </a>`
            : nothing
        }
      </div>
    `;
  }

  #stepKeys(event: KeyboardEvent): void {
    const what = event.defaultPrevented || typesText(event.composedPath()[0]) ? undefined : undoKey(event);
    if (!what) return;
    event.preventDefault();
    this.#screen.stepped(what);
  }

  /** A trip under the host's rules too. */
  #effective(trip: Trip): Trip {
    return { ...trip, policy: tightened(tightened(trip.policy, this.tighten), this.#page.reserve) };
  }

  #told(plan: Plan | undefined): void {
    const before = this.#verdict;
    this.#verdict = plan?.verdict;
    // What is printed with a plan is there before somebody prints it.
    if (plan) whenIdle(() => this.#parts.load('further').then(() => this.#parts.load('passage')));
    if (plan) {
      const left = this.#measures.show('amount', plan.left.median, plan.store);
      this.#announcement = this.say(() => answerWords.announced(verdictWords[plan.verdict], left));
    } else {
      this.#announcement = '';
    }
    this.requestUpdate();
    const trip = this.#effective(this.trip);
    tellPage(this, 'homeleg-plan', { trip, plan });
    if (this.#route !== trip.route) tellPage(this, 'homeleg-route', { route: trip.route });
    this.#route = trip.route;
    if (before !== this.#verdict) tellPage(this, 'homeleg-verdict', { verdict: this.#verdict, before });
  }

  #tripSaved(): void {
    tellPage(this, 'homeleg-trip', { trip: this.trip, text: this.saveTrip() });
  }

  #unitsPicked({ detail }: UnitsPicked): void {
    this.units = detail.units;
  }

  #tripPicked({ detail }: TripPicked): void {
    if ('refused' in detail) this.#screen.tell(detail.refused);
    else if ('profile' in detail) this.#useProfile(detail.profile);
    else this.#screen.replace({ trip: detail.trip, origin: {} }, words.opened(detail.name));
  }

  /** A saved trip as this page would plan it. */
  readonly #preparedTrip = (trip: Trip): Trip | undefined => this.#maker.measuredTrip(this.#effective(trip));

  #useProfile(profile: BoatProfile): void {
    const trip = withProfile(this.trip, profile);
    this.#screen.replace({ trip, origin: {} }, words.boatOpened(profile.name));
    this.#cards.open('boat');
  }

  async #fetchProfile(): Promise<void> {
    const address = this.profile;
    if (!address) return;
    await this.#screen.restored;
    const read = await fetchProfile(address);
    if (address !== this.profile) return;
    if (!read.ok) {
      const why = read.problems.slice(0, 3).map((problem) => `${problem.message}.`);
      this.#screen.tell([words.profileFailed, ...why].join(' '));
    }
    // The one the device kept is not loaded again over what was changed since.
    else if (JSON.stringify(read.value.trials) !== JSON.stringify(this.trip.trials)) this.#useProfile(read.value);
  }

  #freshWanted(): void {
    this.#screen.replace(firstDraft(), words.cleared);
  }

  readonly #fixWanted = ({ detail }: FixWanted): void => {
    const change = mended(this.trip, detail.fix, detail.reason);
    if (change.trip) this.#screen.change(change.trip);
    else if (detail.fix.code === 'draw-round') void this.#takeRound(detail.reason.legs);
    else if (change.card) void this.#cards.show(change.card);
  };

  async #takeRound(legs: readonly number[] | undefined): Promise<void> {
    await this.#cards.show('route');
    await customElements.whenDefined('homeleg-waypoint-table');
    const table = this.renderRoot.querySelector('homeleg-waypoint-table');
    await table?.updateComplete;
    table?.takeRound(legs);
  }

  readonly #assumptionWanted = ({ detail }: AssumptionWanted): void => {
    void this.#cards.show(ASSUMED_IN[detail.code] ?? 'kept');
  };

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
}
