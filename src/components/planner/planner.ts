import { html, nothing, type PropertyValues } from 'lit';
import { property } from 'lit/decorators.js';
import type { WatersFile } from '../../core/route/shapes.ts';
import type { BoatProfile } from '../../core/trials/shapes.ts';
import type { Plan, Policy, Trip, Verdict } from '../../core/trip/shapes.ts';
import { tightened } from '../../core/trip/tightened.ts';
import type { FixWanted } from '../answer/answer.ts';
import { SpeakingElement } from '../language/speaking-element.ts';
import '../answer/answer.ts';
import '../fuel-bar/fuel-bar.ts';
import { undoKey } from '../route-map/map-keys.ts';
import { controls } from '../theme/controls.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import type { AssumptionWanted } from '../trip-details/trip-details.ts';
import { type Measures, measuresFor, type UnitSystem } from '../units/measures.ts';
import { verdictWords } from '../words/en.ts';
import { answerWords } from '../words/en-answer.ts';
import { plannerWords as words } from '../words/en-planner.ts';
import { answerColumn } from './answer-column.ts';
import { Cards } from './cards.ts';
import { SHIPPED_WATERS } from './fetch-waters.ts';
import { firstDraft } from './first-trip.ts';
import { LocalWaters } from './local-waters.ts';
import { mended } from './mended.ts';
import { notes } from './notes.ts';
import { fetchProfile } from './open-file.ts';
import { PartLoader } from './part-loader.ts';
import type { Part } from './parts.ts';
import { PlanMaker } from './plan-maker.ts';
import { plannerStyles } from './planner.styles.ts';
import { questionCards } from './question-cards.ts';
import { ASSUMED_IN } from './shown.ts';
import { TripEdits } from './trip-edits.ts';
import { TripOnScreen } from './trip-on-screen.ts';
import { type StepWanted, type TripPicked, UNITS, type UnitsPicked } from './trip-tools.ts';
import { typesText } from './types-text.ts';
import { whenIdle } from './when-idle.ts';
import { wideCards } from './wide-cards.ts';
import { withProfile } from './with-profile.ts';

/** A new plan is ready; `plan` is undefined while the trip is incomplete. */
export type PlanEvent = CustomEvent<{ trip: Trip; plan: Plan | undefined }>;
/** The answer became another one. */
export type VerdictEvent = CustomEvent<{ verdict: Verdict | undefined; before: Verdict | undefined }>;

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
  #measures: Measures = measuresFor('nautical', 'en');
  #verdict: Verdict | undefined;
  #announcement = '';
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

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (this.#measures.system !== this.units || this.#measures.lang !== this.language) {
      this.#measures = measuresFor(UNITS.includes(this.units) ? this.units : 'nautical', this.language);
    }
    if (changed.has('profile')) void this.#fetchProfile();
    if (changed.has('waters') || changed.has('watersFile')) void this.#waters.fetch(this.waters, this.watersFile);
    const now = [this.#screen.draft, this.#waters.file, this.tighten];
    if (now.some((part, i) => part !== this.#made[i])) {
      this.#made = now;
      this.#maker.make(this.#effective(this.trip), this.#waters.file);
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
      <div class="bench">
        <homeleg-trip-tools
          class="tools"
          .trip=${trip}
          .units=${this.units}
          ?undoable=${this.#screen.canUndo}
          ?redoable=${this.#screen.canRedo}
          @step-wanted=${({ detail }: StepWanted) => this.#screen.stepped(detail.what)}
          @units-picked=${this.#unitsPicked}
          @trip-picked=${this.#tripPicked}
          @fresh-wanted=${this.#freshWanted}
          @print-wanted=${this.#printWanted}
        ></homeleg-trip-tools>
        ${notes(this.#screen, {
          waters: this.#waters.failed,
          trials: this.#maker.trialsFailed,
          part: this.#parts.failed.size > 0 || this.#maker.slowFailed,
        })}
        <div class="asks">
          ${questionCards({ ...shared, map: { tiles, tilesAttribution, center, zoom }, forecastSource, tighten })}
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
            ? html`<a class="strip" href="#answer" @click=${this.#toAnswer}>
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
    return { ...trip, policy: tightened(trip.policy, this.tighten) };
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
    const options = { bubbles: true, composed: true };
    const trip = this.#effective(this.trip);
    this.dispatchEvent(new CustomEvent('homeleg-plan', { detail: { trip, plan }, ...options }) satisfies PlanEvent);
    if (before !== this.#verdict) {
      const detail = { verdict: this.#verdict, before };
      this.dispatchEvent(new CustomEvent('homeleg-verdict', { detail, ...options }) satisfies VerdictEvent);
    }
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

  async #printWanted(): Promise<void> {
    // What must be aboard on the way goes along on paper.
    await Promise.all([this.#parts.load('further'), this.#parts.load('passage')]);
    globalThis.print();
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
  interface HTMLElementEventMap {
    'homeleg-plan': PlanEvent;
    'homeleg-verdict': VerdictEvent;
  }
}
