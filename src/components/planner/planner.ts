import { html, nothing, type PropertyValues } from 'lit';
import { property } from 'lit/decorators.js';
import type { WatersFile } from '../../core/route/shapes.ts';
import type { Plan, Trip } from '../../core/trip/shapes.ts';
import { tightened } from '../../core/trip/tightened.ts';
import type { Result } from '../../core/units/result.ts';
import '../answer/answer.ts';
import '../fuel-bar/fuel-bar.ts';
import { InTurns } from '../in-turns.ts';
import { undoKey } from '../route-map/map-keys.ts';
import { controls } from '../theme/controls.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import { turn } from '../turn.ts';
import { type Measures, measuresFor } from '../units/measures.ts';
import { hostWords } from '../words/en-host.ts';
import { plannerWords as words } from '../words/en-planner.ts';
import { answerColumn } from './answer-column.ts';
import { Cards } from './cards.ts';
import { firstDraft } from './first-trip.ts';
import { HostSide } from './host-side.ts';
import { LocalWaters } from './local-waters.ts';
import { MeasuredBoat } from './measured-boat.ts';
import { notes } from './notes.ts';
import { PartLoader } from './part-loader.ts';
import type { Part } from './parts.ts';
import { PlanMaker } from './plan-maker.ts';
import { PlanTeller } from './plan-teller.ts';
import { plannerStyles } from './planner.styles.ts';
import { tellTrip } from './planner-events.ts';
import { PlannerSettings } from './planner-settings.ts';
import { questionCards } from './question-cards.ts';
import { TripEdits } from './trip-edits.ts';
import type { TripLeft } from './trip-left.ts';
import { TripOnScreen } from './trip-on-screen.ts';
import { tripText } from './trip-text.ts';
import { type StepWanted, type TripPicked, UNITS, type UnitsPicked } from './trip-tools.ts';
import { typesText } from './types-text.ts';
import { whenIdle } from './when-idle.ts';
import { wideCards } from './wide-cards.ts';
import { Wishes } from './wishes.ts';

/**
 * @summary Plans a trip of a small power boat: boat, load, route and conditions in; range, reserve, safe payload and a
 * verdict with its reasons out.
 * @fires {PlanEvent} homeleg-plan - a change of the trip was worked out
 * @fires {VerdictEvent} homeleg-verdict - the answer became another one
 * @fires {RouteEvent} homeleg-route - the route became another one
 * @fires {TripEvent} homeleg-trip - the user handed the trip on: as a file, on paper, by a link or a message
 * @fires {SizeEvent} homeleg-size - with tell-size: the element has another size
 * @fires {ProblemEvent} homeleg-problem - an attribute or the JSON inside cannot be used
 * @slot intro - words of the page before everything else
 * @slot logo - the club's mark, beside the tools and on paper
 * @slot cautions - more cautions, below those that are always shown
 * @csspart bench - all cards together
 * @csspart tools - units, examples, undo, file
 * @csspart note - what happened, and what could not be had
 * @csspart problem - what the author of the page should mend
 * @csspart card - each card that asks or tells
 * @csspart answer - verdict, reasons and cautions
 * @csspart verdict - the words of the answer
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
export class Planner extends PlannerSettings {
  static override styles = [tokens, controls, plannerStyles];

  readonly #screen: TripOnScreen;
  readonly #edits: TripEdits;
  readonly #maker = new PlanMaker(this, (plan) => this.#told(plan));
  readonly #waters = new LocalWaters(this);
  readonly #parts = new PartLoader(this, (part) => {
    if (part === 'curve') void this.#maker.showCurve();
  });
  readonly #cards = new Cards(this, this.#parts);
  readonly #page: HostSide;
  readonly #boat: MeasuredBoat;
  readonly #wishes: Wishes;
  readonly #teller = new PlanTeller(this);
  readonly #turns = new InTurns(this, () => 3);
  #measures: Measures = measuresFor('nautical', 'en');
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
    this.#boat = new MeasuredBoat(this.#screen, this.#cards, this.#page.problems);
    this.#wishes = new Wishes(this, this.#screen, this.#cards);
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
    tellTrip(this, this.trip, 'print');
    globalThis.print();
  }

  /** The browser tells that the form was reset. */
  override formResetCallback(): void {
    this.#screen.set(firstDraft().trip);
  }

  protected override showMissing(): void {
    void this.#cards.show('route');
  }

  protected override async scheduleUpdate(): Promise<void> {
    if (!this.hasUpdated) {
      // Coming to life is one turn, the first picture the next.
      await turn();
    }
    await super.scheduleUpdate();
  }

  protected override async getUpdateComplete(): Promise<boolean> {
    const settled = await super.getUpdateComplete();
    await this.#turns.whole();
    return settled && super.getUpdateComplete();
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (this.#measures.system !== this.units || this.#measures.lang !== this.language) {
      this.#measures = measuresFor(UNITS.includes(this.units) ? this.units : 'nautical', this.language);
    }
    if (changed.has('profile')) void this.#boat.fetch(this.profile);
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
      <div class="bench" part="bench" @trip-left=${this.#tripLeft}>
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
          ${this.#turns.part(1, () =>
            answerColumn({
              trip,
              maker: this.#maker,
              measures: this.#measures,
              announcement: this.#teller.announcement,
              fixWanted: this.#wishes.fixWanted,
              assumptionWanted: this.#wishes.assumptionWanted,
            }),
          )}
        </div>
        ${this.#turns.part(2, () => wideCards({ ...shared, prepared: this.#preparedTrip }))}
        ${
          this.plan
            ? html`<a class="strip" part="strip" href="#answer" @click=${this.#wishes.toAnswer}>
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
    // What is printed with a plan is there before somebody prints it.
    if (plan) whenIdle(() => this.#parts.load('further').then(() => this.#parts.load('passage')));
    this.say(() => this.#teller.tell(this.#effective(this.trip), plan, this.#measures));
    this.requestUpdate();
  }

  #tripLeft({ detail }: TripLeft): void {
    tellTrip(this, this.trip, detail.way);
  }

  #unitsPicked({ detail }: UnitsPicked): void {
    this.units = detail.units;
  }

  #tripPicked({ detail }: TripPicked): void {
    if ('refused' in detail) this.#screen.tell(detail.refused);
    else if ('profile' in detail) this.#boat.use(detail.profile);
    else this.#screen.replace({ trip: detail.trip, origin: {} }, words.opened(detail.name));
  }

  /** A saved trip as this page would plan it. */
  readonly #preparedTrip = (trip: Trip): Trip | undefined => this.#maker.measuredTrip(this.#effective(trip));

  #freshWanted(): void {
    this.#screen.replace(firstDraft(), words.cleared);
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-planner': Planner;
  }
}
