import { html, nothing, type PropertyValues } from 'lit';
import { property } from 'lit/decorators.js';
import type { WatersFile } from '../../core/route/shapes.ts';
import type { Plan, Trip } from '../../core/trip/shapes.ts';
import { SpeakingElement } from '../language/speaking-element.ts';
import { PlanMaker } from '../planner/plan-maker.ts';
import { tellPage } from '../planner/planner-events.ts';
import { type Measures, measuresFor, type UnitSystem } from '../units/measures.ts';
import { cautions } from '../words/en-cautions.ts';
import { hostWords as words } from '../words/en-host.ts';
import { HostProblems } from './host-problems.ts';
import { knowValues, THEMES } from './known-values.ts';
import { SharedTrip } from './shared-trip.ts';
import { written } from './written.ts';

const SYSTEMS: readonly string[] = ['nautical', 'metric', 'imperial'];

/** A piece that shows one side of a trip: that of the element named by `for`, or one it was given. */
export abstract class TripPiece extends SpeakingElement {
  /** The id of a planner, reserve check or other piece on this page, whose trip is shown. */
  @property({ converter: written(''), attribute: 'for' }) for = '';
  /** A trip of the page's own, in place of `for`. */
  @property({ attribute: false }) trip: Trip | undefined;
  /** Local waters for `trip`. */
  @property({ attribute: false }) watersFile: WatersFile | undefined;
  /** Units shown: nautical, metric or imperial; without it those of the element named by `for`. */
  @property({ converter: written('') }) units: UnitSystem | '' = '';
  /** "light" or "dark"; without it as the page. */
  @property({ converter: written(''), reflect: true }) theme = '';

  readonly #problems = new HostProblems(this);
  readonly #shared = new SharedTrip(this, this.#problems, () => this.for);
  readonly #maker = new PlanMaker(this, (plan) => this.#told(plan));
  #made: readonly unknown[] = [];
  protected measures: Measures = measuresFor('nautical', 'en');

  constructor() {
    super();
    knowValues(this, this.#problems, { units: ['', ...SYSTEMS], theme: THEMES });
  }

  /** The trip shown. */
  get shownTrip(): Trip | undefined {
    return !this.for ? this.trip : this.#shared.source?.trip;
  }

  /** The plan of the trip shown, undefined while it is incomplete. */
  get plan(): Plan | undefined {
    return !this.for ? this.trip && this.#maker.plan : this.#shared.source?.plan;
  }

  /** The trip with what its trials say of its boat, as it was planned. */
  get plannedTrip(): Trip | undefined {
    return !this.for ? this.trip && this.#maker.trip : this.#shared.source?.plannedTrip;
  }

  /** The local waters in use. */
  get watersInUse(): WatersFile | undefined {
    return !this.for ? this.watersFile : this.#shared.source?.watersInUse;
  }

  /** A change made here or in a piece that follows this one. */
  editTrip(trip: Trip): void {
    if (!this.for) this.trip = trip;
    else this.#shared.source?.editTrip?.(trip);
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has('for') && this.hasUpdated) this.#shared.look();
    const asked = this.units || this.#shared.source?.units || 'nautical';
    const system = (SYSTEMS.includes(asked) ? asked : 'nautical') as UnitSystem;
    if (this.measures.system !== system || this.measures.lang !== this.language) {
      this.measures = measuresFor(system, this.language);
    }
    const now = [this.trip, this.watersFile];
    if (!this.for && this.trip && now.some((part, i) => part !== this.#made[i])) {
      this.#made = now;
      this.#maker.make(this.trip, this.watersFile);
    }
  }

  override render() {
    const trip = this.shownTrip;
    return html`${this.#problems.render()}
      ${trip ? this.shown(trip) : html`<p class="hint">${words.waiting}</p>`}
      ${trip ? html`<p class="hint" part="cautions">${cautions().join(' ')}</p>` : nothing}`;
  }

  /** What the piece shows of a trip. */
  protected abstract shown(trip: Trip): unknown;

  /** Why a trip has no plan. */
  protected get problemsOfTrip() {
    return !this.for ? this.#maker.problems : [];
  }

  #told(plan: Plan | undefined): void {
    if (this.trip) tellPage(this, 'homeleg-plan', { trip: this.trip, plan });
  }
}
