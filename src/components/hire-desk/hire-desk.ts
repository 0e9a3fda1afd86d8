import { html, nothing, type PropertyValues } from 'lit';
import { property, state } from 'lit/decorators.js';
import { hireState, nextChange, outFirst } from '../../core/hire/hire-state.ts';
import { departed } from '../../core/hire/hire-times.ts';
import { hireCraft } from '../../core/hire/hire-trip.ts';
import type { Hire } from '../../core/hire/shapes.ts';
import type { Trip } from '../../core/trip/shapes.ts';
import { HostProblems } from '../host/host-problems.ts';
import { knowValues } from '../host/known-values.ts';
import { InTurns } from '../in-turns.ts';
import { SpeakingElement } from '../language/speaking-element.ts';
import { controls } from '../theme/controls.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import { type Measures, measuresFor } from '../units/measures.ts';
import { outWords, deskWords as words } from '../words/en-desk.ts';
import { conditionWords } from '../words/en-forms.ts';
import { BoatEvidence } from './boat-evidence.ts';
import { DeskClock } from './desk-clock.ts';
import type { DeskReplaced, UnitsChosen } from './desk-data.ts';
import { deskFormStyles } from './desk-form.styles.ts';
import { DeskKeeper } from './desk-keeper.ts';
import { alarm, clockBack, fleetState, morningState } from './desk-notices.ts';
import { dayOf } from './desk-time.ts';
import { DeskWaters } from './desk-waters.ts';
import type { FleetSet } from './fleet-card.ts';
import type { HireChanged, HirePressed } from './hand-over.ts';
import './hire-check.ts';
import { written } from '../host/written.ts';
import type { SlipWanted } from './hire-check.ts';
import { hireDeskStyles } from './hire-desk.styles.ts';
import { lateParts } from './late-parts.ts';
import type { MorningSet } from './morning-form.ts';
import { OverdueWarning } from './overdue-warning.ts';
import type { HireReturned } from './return-form.ts';

const VIEWS = ['check', 'out', 'log', 'card', 'morning', 'fleet'] as const;
type View = (typeof VIEWS)[number];

/**
 * @summary A hire desk: the morning, the check, the slip and handover, who is out and late, the day's log. All of it stays
 * in this browser and works without a network.
 * @fires {ProblemEvent} homeleg-problem - an attribute cannot be used
 * @csspart problem - what the author of the page should mend
 * @csspart state - what the desk should know: late boats, the morning, the fleet
 * @csspart views - the buttons that open its parts
 * @csspart view - the part that is open
 * @fires {TripEvent} homeleg-trip - a hirer's trip was handed on: by the code on the slip, or printed
 */
export class HireDesk extends SpeakingElement {
  static override styles = [tokens, controls, deskFormStyles, hireDeskStyles];

  /** Part of the desk that is open. */
  @property({ converter: written('check') }) view: View = 'check';

  /** Id of the hire being handed over. */
  @state() private open: string | undefined;
  @state() private partsFailed = false;

  readonly #keeper = new DeskKeeper(this);
  readonly #problems = new HostProblems(this);
  readonly #clock = new DeskClock(this, (now) => nextChange(this.#keeper?.desk.hires ?? [], now));
  readonly #visited = new Set<View>();
  readonly #evidence = new BoatEvidence();
  readonly #warning = new OverdueWarning(this);
  readonly #waters = new DeskWaters(this);
  readonly #turns = new InTurns(this, () => (this.#keeper.loaded ? 2 : 1));
  #measures: Measures = measuresFor('metric', 'en');
  #focusWanted = false;
  #lateAsked = false;

  constructor() {
    super();
    knowValues(this, this.#problems, { view: VIEWS });
  }

  protected override willUpdate(): void {
    if (!VIEWS.includes(this.view)) this.view = 'check';
    const { units, fleet } = this.#keeper.desk;
    if (this.#measures.system !== units || this.#measures.lang !== this.language) {
      this.#measures = measuresFor(units, this.language);
    }
    void this.#waters.look(fleet);
  }

  protected override updated(changed: PropertyValues): void {
    const late = this.#late().length;
    this.#warning.tell(late > 0 ? this.say(() => outWords.alarms(late)) : undefined, this.#clock.now);
    if (changed.has('view') || !this.#lateAsked) void this.#fetchParts();
    if (!changed.has('open') || !this.#focusWanted) return;
    this.#focusWanted = false;
    void this.#toHandOver();
  }

  override render() {
    const { desk, loaded, inMemory, held } = this.#keeper;
    if (!loaded) {
      return held ? html`<p class="warn" role="alert">${words.held}</p>` : html`<p class="muted">${words.loading}</p>`;
    }
    const out = outFirst(desk.hires);
    const late = this.#late();
    const { now } = this.#clock;
    const measures = this.#measures;
    return html`<div class="all">
      ${this.#problems.render()}
      ${alarm(late, now, measures, { warning: this.#warning, toOut: () => this.#show('out') })}
      ${clockBack(out, this.#clock, measures)}
      <div class="state off-paper" part="state">
        ${inMemory ? html`<p class="warn" role="status">${inMemory === 'newer' ? words.newer : words.inMemory}</p>` : nothing}
        ${desk.unreadable > 0 ? html`<p class="warn">${words.unreadable(desk.unreadable)}</p>` : nothing}
        ${morningState(desk.morning, now, measures.lang, this.view === 'morning' ? undefined : () => this.#show('morning'))}
        ${fleetState(desk.fleet, desk.demo, now, measures.lang)}
        ${this.partsFailed ? html`<p class="warn" role="status">${conditionWords.partFailed}</p>` : nothing}
      </div>
      <nav class="off-paper" part="views" aria-label=${words.parts}>
        ${VIEWS.map(
          (view) => html`<button
            type="button"
            aria-current=${this.view === view ? 'true' : nothing}
            @click=${() => this.#show(view)}
          >
            ${view === 'out' && out.length > 0 ? words.outCount(out.length) : words.views[view]}
          </button>`,
        )}
      </nav>
      <div
        class="view"
        part="view"
        @hire-changed=${({ detail }: HireChanged) => this.#keeper.changeHire(detail.id, detail.change)}
        @hire-leaves=${this.#leaves}
        @hire-struck=${this.#struck}
        @handover-closed=${this.#closed}
        @hire-opened=${({ detail }: HirePressed) => this.#openHire(detail.id)}
        @hire-returned=${({ detail }: HireReturned) => this.#keeper.changeHire(detail.id, detail.change, detail.note)}
      >
        ${this.#turns.part(1, () => this.#view(out))}
      </div>
    </div>`;
  }

  #view(out: readonly Hire[]) {
    const { desk } = this.#keeper;
    const { now } = this.#clock;
    const measures = this.#measures;
    const opened = this.view === 'check' ? desk.hires.find(({ id }) => id === this.open) : undefined;
    const waiting = desk.hires.some(({ returnedAt }) => returnedAt === undefined);
    const list = this.view === 'out' || (this.view === 'check' && !opened && waiting);
    return html`
      ${
        opened
          ? html`<homeleg-hand-over
              .hire=${opened}
              .fleet=${desk.fleet}
              .now=${now}
              .measured=${(trip: Trip) => this.#measuredTrip(opened.boatId, trip)}
              .measures=${measures}
            ></homeleg-hand-over>`
          : nothing
      }
      ${this.#kept(out, opened !== undefined)}
      ${
        list
          ? html`<homeleg-out-list
              .hires=${desk.hires}
              .boats=${desk.fleet.boats}
              .now=${now}
              .measures=${measures}
            ></homeleg-out-list>`
          : nothing
      }
      ${
        this.view === 'log'
          ? html`<homeleg-day-log .hires=${desk.hires} .now=${now} .measures=${measures}></homeleg-day-log>`
          : nothing
      }
      ${
        this.view === 'card'
          ? html`<homeleg-season-card
              .fleet=${desk.fleet}
              .notes=${desk.notes}
              .morning=${desk.morning}
              .now=${now}
              .measures=${measures}
            ></homeleg-season-card>`
          : nothing
      }
    `;
  }

  /** Parts in which something may be half typed stay while another is looked at. */
  #kept(out: readonly Hire[], handingOver: boolean) {
    const { desk } = this.#keeper;
    const { now } = this.#clock;
    const measures = this.#measures;
    this.#visited.add(this.view);
    return html`
      <homeleg-hire-check
        class="off-paper"
        ?hidden=${this.view !== 'check' || handingOver}
        .fleet=${desk.fleet}
        .morning=${desk.morning}
        .now=${now}
        .out=${out.map(({ boatId }) => boatId)}
        .waters=${this.#waters.now}
        .measured=${this.#measuredTrip}
        .measures=${measures}
        @slip-wanted=${this.#slipWanted}
      ></homeleg-hire-check>
      ${
        this.#visited.has('morning')
          ? html`<homeleg-morning-form
              ?hidden=${this.view !== 'morning'}
              .morning=${desk.morning}
              .now=${now}
              ?electric=${desk.fleet.boats.some((boat) => hireCraft(boat).store.kind === 'battery')}
              .measures=${measures}
              @morning-set=${({ detail }: MorningSet) => this.#keeper.setMorning(detail.morning)}
            ></homeleg-morning-form>`
          : nothing
      }
      ${
        this.#visited.has('fleet')
          ? html`<homeleg-fleet-card
                ?hidden=${this.view !== 'fleet'}
                .fleet=${desk.fleet}
                ?demo=${desk.demo}
                .notes=${desk.notes}
                .measures=${measures}
                @fleet-set=${({ detail }: FleetSet) => this.#keeper.setFleet(detail.fleet)}
              ></homeleg-fleet-card>
              <homeleg-desk-data
                ?hidden=${this.view !== 'fleet'}
                .desk=${desk}
                .now=${now}
                @units-chosen=${({ detail }: UnitsChosen) => this.#keeper.setUnits(detail.units)}
                @desk-replaced=${this.#replaced}
                @hires-cleared=${this.#cleared}
              ></homeleg-desk-data>`
          : nothing
      }
    `;
  }

  #late(): readonly Hire[] {
    const { now } = this.#clock;
    return outFirst(this.#keeper.desk.hires).filter((hire) => hireState(hire, now).is === 'overdue');
  }

  readonly #measuredTrip = (boatId: string, trip: Trip): Trip => {
    const { fleet, notes } = this.#keeper.desk;
    const boat = fleet.boats.find(({ id }) => id === boatId);
    return boat ? this.#evidence.measured(trip, boat, notes, dayOf(this.#clock.now)) : trip;
  };

  #show(view: View): void {
    this.view = view;
    if (view !== 'check') this.open = undefined;
  }

  /** The other views' parts, after the first; at once where one of them is opened. */
  async #fetchParts(): Promise<void> {
    if (!this.#keeper.loaded) return;
    this.#lateAsked = true;
    this.partsFailed = !(await lateParts());
  }

  async #toHandOver(): Promise<void> {
    await lateParts();
    const over = this.renderRoot.querySelector('homeleg-hand-over');
    await over?.updateComplete;
    over?.renderRoot.querySelector<HTMLElement>('h2')?.focus();
  }

  #openHire(id: string): void {
    this.view = 'check';
    this.open = id;
    this.#focusWanted = true;
  }

  async #slipWanted({ detail: { hire } }: SlipWanted): Promise<void> {
    await this.#keeper.addHire(hire);
    this.#openHire(hire.id);
  }

  async #leaves({ detail: { id } }: HirePressed): Promise<void> {
    this.#clock.look();
    const { now } = this.#clock;
    // What is kept now decides: another tab may have let the boat go already.
    await this.#keeper.changeHire(id, (hire) => departed(hire, Math.floor(now)));
    this.#clock.look();
  }

  #replaced({ detail }: DeskReplaced): Promise<void> {
    this.#check?.forgetHirer();
    return this.#keeper.replace(detail.by);
  }

  #cleared(): Promise<void> {
    this.#check?.forgetHirer();
    return this.#keeper.clearHires();
  }

  get #check() {
    return this.renderRoot.querySelector('homeleg-hire-check');
  }

  async #struck({ detail: { id } }: HirePressed): Promise<void> {
    this.open = undefined;
    await this.#keeper.removeHire(id);
  }

  /** Next hirer; a slip past its time is struck, since its check is to be made again. */
  async #closed({ detail: { id } }: HirePressed): Promise<void> {
    const hire = this.#keeper.desk.hires.find((each) => each.id === id);
    this.open = undefined;
    await this.updateComplete;
    if (hire && hireState(hire, this.#clock.now).is === 'stale') await this.#keeper.removeHire(id);
    else this.#check?.nextHirer();
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-hire-desk': HireDesk;
  }
}
