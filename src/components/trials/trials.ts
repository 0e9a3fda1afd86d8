import { html, nothing, type PropertyValues } from 'lit';
import { property, state } from 'lit/decorators.js';
import type { BoatProfile, Run, Trials } from '../../core/trials/shapes.ts';
import { HostProblems } from '../host/host-problems.ts';
import { knowValues } from '../host/known-values.ts';
import { InTurns } from '../in-turns.ts';
import { SpeakingElement } from '../language/speaking-element.ts';
import { belowStyles } from '../theme/below.styles.ts';
import { controls } from '../theme/controls.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import { type Measures, measuresFor, type UnitSystem } from '../units/measures.ts';
import { plannerWords } from '../words/en-planner.ts';
import { profileWords, refillWords, runWords, trialWords as words } from '../words/en-trials.ts';
import { duplicatedRun, leftOut, withoutRefill, withoutRun, withRefill, withRun, withRuns } from './edit-trials.ts';
import { FitMaker } from './fit-maker.ts';
import './fit-report.ts';
import type { FoulingPicked } from './fit-report.ts';
import './profile-card.ts';
import type { ProfileEdited, ProfileOpened } from './profile-card.ts';
import { blankRefill, refillEntryOf, refillOf } from './refill-entry.ts';
import './refill-form.ts';
import type { RefillTyped } from './refill-form.ts';
import './refill-list.ts';
import { blankEntry, entryOf, runOf } from './run-entry.ts';
import './run-form.ts';
import type { EntryTyped } from './run-form.ts';
import './run-table.ts';
import type { RowAsked } from './run-table.ts';
import { sampleProfile } from './sample.ts';
import './setups-field.ts';
import { written } from '../host/written.ts';
import { dataName } from '../words/en-data.ts';
import type { HelmRun } from './helm-form.ts';
import type { SheetMade } from './run-sheet.ts';
import type { SetupsEdited } from './setups-field.ts';
import type { RunsMade } from './track-import.ts';
import { trialsStyles } from './trials.styles.ts';
import { firstWork, type Work } from './work.ts';
import { WorkKeeper } from './work-keeper.ts';

type Card = 'boat' | 'runs' | 'tracks' | 'refills' | 'sheet';

/** What a card is made of, loaded when it is first opened. */
const LATE: Partial<Record<Card, () => Promise<unknown>>> = {
  tracks: () => Promise.all([import('./track-import.ts'), import('./table-import.ts')]),
  sheet: () => Promise.all([import('./run-sheet.ts'), import('./helm-form.ts')]),
};

/** As many as a profile holds. */
const MOST_RUNS = 500;

const UNITS: readonly UnitSystem[] = ['nautical', 'metric', 'imperial'];

/**
 * @summary Trial runs of a boat: entered, imported, fitted, and kept as a boat profile.
 * @fires {ProblemEvent} homeleg-problem - an attribute cannot be used
 * @csspart problem - what the author of the page should mend
 * @csspart tools - units, undo, examples
 * @csspart card - each card that asks or tells
 * @csspart answer - what the runs say of the boat
 * @csspart profile - the boat as a profile to keep
 */
export class TrialsBench extends SpeakingElement {
  static override styles = [tokens, controls, belowStyles, trialsStyles];

  /** Units shown: nautical, metric or imperial. */
  @property({ converter: written('nautical') }) units: UnitSystem = 'nautical';
  /** Under which name the device keeps what was entered; "none" keeps nothing. */
  @property({ converter: written('homeleg-trials') }) keep = 'homeleg-trials';

  @state() private work: Work = firstWork();
  /** What was there before the last change that can be taken back. */
  @state() private undone: Work | undefined;
  @state() private message = '';
  @state() private openCards: ReadonlySet<Card> = new Set<Card>(['runs']);

  /** What is to be on paper: "" for the findings. */
  @state() private printing: '' | 'sheet' = '';

  readonly #keeper = new WorkKeeper(this, () => (this.keep === 'none' ? undefined : this.keep));
  readonly #problems = new HostProblems(this);
  readonly #maker = new FitMaker(this);
  readonly #turns = new InTurns(this, () => 6);
  #measures: Measures = measuresFor('nautical', 'en');

  constructor() {
    super();
    knowValues(this, this.#problems, { units: UNITS });
  }

  /** The boat with its runs as entered; setting it replaces what is on the screen. */
  get profile(): BoatProfile {
    return this.work.profile;
  }

  @property({ attribute: false })
  set profile(profile: BoatProfile) {
    this.work = { profile, origins: {} };
  }

  override connectedCallback(): void {
    super.connectedCallback();
    if (!this.hasUpdated) void this.#restore();
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (this.#measures.system !== this.units || this.#measures.lang !== this.language) {
      this.#measures = measuresFor(UNITS.includes(this.units) ? this.units : 'nautical', this.language);
    }
    if ((changed as Map<PropertyKey, unknown>).has('work')) this.#maker.make(this.work.profile.trials);
  }

  override render() {
    const { profile } = this.work;
    const { trials } = profile;
    const turns = this.#turns;
    return html`<div class="bench ${this.printing}">
      ${this.#problems.render()} ${this.#tools()} ${this.#notes()}
      ${this.#card('boat', 1, words.boat, dataName(trials.hull.name), () => this.#boat(trials))}
      ${turns.part(1, () => this.#card('runs', 2, words.runs, this.#runsState(trials), () => this.#runs(trials)))}
      ${turns.part(2, () => this.#card('tracks', 3, words.tracks, '', () => this.#tracks(profile)))}
      ${turns.part(3, () => this.#found(profile))}
      ${turns.part(4, () => this.#card('refills', 4, words.refills, this.#refillsState(trials), () => this.#refills(trials)))}
      ${turns.part(4, () => this.#card('sheet', 5, words.sheet, '', () => this.#sheet(profile)))}
      ${turns.part(5, () => this.#profileSection())}
    </div>`;
  }

  #tools() {
    return html`<div class="tools" part="tools">
      <label>
        ${words.units}
        <select @change=${(event: Event) => this.#unitsPicked((event.target as HTMLSelectElement).value)}>
          ${UNITS.map((u) => html`<option value=${u} ?selected=${u === this.units}>${plannerWords.unitNames[u]}</option>`)}
        </select>
      </label>
      <button type="button" @click=${this.#sampleWanted}>${words.sample}</button>
      <button type="button" class="quiet" @click=${() => this.#change(firstWork(), words.freshDone)}>${words.fresh}</button>
    </div>`;
  }

  #notes() {
    const { message, undone } = this;
    return html`<div role="status">
      ${
        message
          ? html`<p class="note">
            ${message}
            ${
              undone
                ? html`<button type="button" class="quiet" @click=${this.#takenBack}>${words.takeBack}</button>`
                : nothing
            }
          </p>`
          : nothing
      }
      ${this.#keeper.failed ? html`<p class="note">${words.notKept}</p>` : nothing}
      ${this.#maker.failed ? html`<p class="note">${words.partFailed}</p>` : nothing}
    </div>`;
  }

  #card(card: Card, step: number, title: string, text: string, inside: () => unknown) {
    const open = this.openCards.has(card);
    return html`<details
      class="card"
      part="card"
      id=${card}
      ?open=${open}
      @toggle=${(event: Event) => this.#toggled(card, event)}
    >
      <summary>
        <span class="step" aria-hidden="true">${step}</span>
        <h2>${title} <span class="state">${text}</span></h2>
      </summary>
      ${open ? html`<div class="inside">${inside()}</div>` : nothing}
    </details>`;
  }

  #boat(trials: Trials) {
    return html`<homeleg-setups-field
      .trials=${trials}
      .origins=${this.work.origins}
      .measures=${this.#measures}
      @setups-edited=${this.#setupsEdited}
    ></homeleg-setups-field>`;
  }

  #runsState({ runs }: Trials): string {
    return runs.length > 0 ? words.count(runs.length, 0) : words.noRuns;
  }

  #runs(trials: Trials) {
    const { entry } = this.work;
    const measures = this.#measures;
    return html`
      <homeleg-run-table
        .trials=${trials}
        .fit=${this.#maker.fit}
        .measures=${measures}
        @row-asked=${this.#runAsked}
      ></homeleg-run-table>
      ${
        entry
          ? html`<homeleg-run-form
            class="form"
            .trials=${trials}
            .entry=${entry}
            .measures=${measures}
            @entry-typed=${({ detail }: EntryTyped) => this.#change({ ...this.work, entry: detail.entry })}
            @entry-saved=${this.#entrySaved}
            @entry-left=${() => this.#leaveForm('#add-run')}
          ></homeleg-run-form>`
          : html`<div class="buttons">
            <button type="button" id="add-run" class="primary" ?disabled=${trials.runs.length >= MOST_RUNS} @click=${this.#runWanted}>${runWords.add}</button>
          </div>`
      }
    `;
  }

  #tracks({ trials, usual }: BoatProfile) {
    return html`<homeleg-track-import
      .trials=${trials}
      usual=${usual}
      .measures=${this.#measures}
      @runs-made=${({ detail }: RunsMade) => this.#runsMade(detail.runs)}
    ></homeleg-track-import>
      <hr />
      <homeleg-table-import
        .trials=${trials}
        .measures=${this.#measures}
        @runs-made=${({ detail }: RunsMade) => this.#runsMade(detail.runs)}
      ></homeleg-table-import>`;
  }

  #runsMade(runs: readonly Run[]): void {
    const { trials } = this.work.profile;
    const taken = runs.slice(0, Math.max(MOST_RUNS - trials.runs.length, 0));
    const left = runs.length - taken.length;
    this.#changeTrials(
      withRuns(trials, taken),
      left > 0 ? words.runsFull(taken.length, left) : words.runsAdded(taken.length),
    );
    this.openCards = new Set([...this.openCards, 'runs']);
    this.#focus('#add-run');
  }

  #refillsState({ refills }: Trials): string {
    return refills.length > 0 ? String(refills.length) : '';
  }

  #refills(trials: Trials) {
    const { refill } = this.work;
    const measures = this.#measures;
    return html`
      <p class="why">${refillWords.why}</p>
      <homeleg-refill-list
        .trials=${trials}
        .fit=${this.#maker.fit}
        .measures=${measures}
        @row-asked=${this.#refillAsked}
      ></homeleg-refill-list>
      ${
        refill
          ? html`<homeleg-refill-form
            class="form"
            .trials=${trials}
            .entry=${refill}
            .measures=${measures}
            @refill-typed=${({ detail }: RefillTyped) => this.#change({ ...this.work, refill: detail.entry })}
            @refill-saved=${this.#refillSaved}
            @refill-left=${() => this.#leaveForm('#add-refill')}
          ></homeleg-refill-form>`
          : html`<div class="buttons">
            <button type="button" id="add-refill" @click=${this.#refillWanted}>${refillWords.add}</button>
          </div>`
      }
    `;
  }

  /** What the runs say stands open, right after them. */
  #found({ usual, trials }: BoatProfile) {
    const { fit } = this.#maker;
    return html`<section class="found below" part="answer" id="found">
      <h2>${words.found}</h2>
      <homeleg-fit-report
        .trials=${trials}
        .fit=${fit}
        usual=${usual}
        .measures=${this.#measures}
        @fouling-picked=${({ detail }: FoulingPicked) => this.#changeTrials({ ...this.work.profile.trials, ...detail })}
        @row-asked=${(event: RowAsked) => (event.detail.kind === 'run' ? this.#runAsked(event) : this.#refillAsked(event))}
      ></homeleg-fit-report>
    </section>`;
  }

  #sheet({ name, trials }: BoatProfile) {
    const { sheet } = this.work;
    return html`<homeleg-run-sheet
        .trials=${trials}
        .fit=${this.#maker.fit}
        .sheet=${sheet}
        name=${name}
        .measures=${this.#measures}
        @sheet-made=${({ detail }: SheetMade) => this.#change({ ...this.work, sheet: detail.sheet })}
        @sheet-printed=${this.#sheetPrinted}
        @helm-wanted=${() => this.renderRoot.querySelector('homeleg-helm-form')?.open()}
      ></homeleg-run-sheet>
      <homeleg-helm-form
        .trials=${trials}
        .sheet=${sheet}
        .measures=${this.#measures}
        @helm-run=${this.#helmRun}
      ></homeleg-helm-form>`;
  }

  #helmRun({ detail: { run, step } }: HelmRun): void {
    const { sheet, profile } = this.work;
    if (!sheet) return;
    const trials = withRun(profile.trials, run);
    const done = { ...sheet.done, [step]: run.id };
    this.#change({ ...this.work, profile: { ...profile, trials }, sheet: { ...sheet, done } });
  }

  /** The sheet alone on paper. */
  async #sheetPrinted(): Promise<void> {
    this.printing = 'sheet';
    await this.updateComplete;
    // Some browsers come back from printing at once, and print later.
    globalThis.addEventListener('afterprint', this.#printed, { once: true });
    globalThis.print();
  }

  readonly #printed = (): void => {
    this.printing = '';
  };

  #profileSection() {
    const { profile, origins } = this.work;
    return html`<section class="found below" part="profile" id="profile">
      <h2>${words.profile}</h2>
      <homeleg-profile-card
        .profile=${profile}
        .origin=${origins[profile.usual] ?? {}}
        .fit=${this.#maker.fit}
        .measures=${this.#measures}
        @profile-edited=${({ detail }: ProfileEdited) => this.#change({ ...this.work, profile: detail.profile })}
        @profile-opened=${this.#profileOpened}
      ></homeleg-profile-card>
    </section>`;
  }

  #profileOpened({ detail }: ProfileOpened): void {
    if ('refused' in detail) this.message = detail.refused;
    else this.#change({ profile: detail.profile, origins: {} }, profileWords.opened(detail.name));
  }

  #toggled(card: Card, event: Event): void {
    const { open } = event.currentTarget as HTMLDetailsElement;
    if (open === this.openCards.has(card)) return;
    if (open) void LATE[card]?.();
    const cards = new Set(this.openCards);
    if (open) cards.add(card);
    else cards.delete(card);
    this.openCards = cards;
  }

  /** Puts new work on screen and keeps it; with a message it can be taken back. */
  #change(work: Work, message = ''): void {
    this.undone = message ? this.work : undefined;
    this.message = message;
    this.work = work;
    this.#keeper.keep(work);
  }

  #changeTrials(trials: Trials, message = ''): void {
    this.#change({ ...this.work, profile: { ...this.work.profile, trials } }, message);
  }

  #takenBack(): void {
    if (this.undone) this.#change(this.undone);
  }

  async #restore(): Promise<void> {
    const before = this.work;
    const kept = await this.#keeper.load();
    // Whoever began to type meanwhile goes first.
    if (this.work !== before) return;
    if (kept && 'work' in kept) this.work = kept.work;
    else if (kept) this.message = words.unreadable;
    if (this.work.profile.trials.runs.length === 0) this.openCards = new Set([...this.openCards, 'boat']);
  }

  #unitsPicked(units: string): void {
    this.units = units as UnitSystem;
  }

  async #sampleWanted(): Promise<void> {
    const profile = await sampleProfile();
    if (profile) this.#change({ profile, origins: {} }, words.sampleLoaded);
    else this.message = words.sampleFailed;
  }

  #setupsEdited({ detail }: SetupsEdited): void {
    const { profile } = this.work;
    const { trials, origins, removed } = detail;
    const usual = trials.setups.some(({ id }) => id === profile.usual) ? profile.usual : trials.setups[0]!.id;
    // A boat without a name of its own goes by that of its hull.
    const name = profile.name === profile.trials.hull.name ? trials.hull.name : profile.name;
    const known = (one: { setup: string } | undefined) => one && trials.setups.some(({ id }) => id === one.setup);
    const { entry, refill, ...rest } = this.work;
    this.#change(
      {
        ...rest,
        profile: { ...profile, name, usual, trials },
        origins,
        ...(entry && { entry: known(entry) ? entry : { ...entry, setup: usual } }),
        ...(refill && { refill: known(refill) ? refill : { ...refill, setup: usual } }),
      },
      removed ? words.setupDeleted : '',
    );
  }

  #runAsked({ detail: { what, id } }: RowAsked): void {
    const { trials } = this.work.profile;
    const index = trials.runs.findIndex((run) => run.id === id);
    const run = trials.runs[index];
    if (!run) return;
    switch (what) {
      case 'edit':
        this.#change({ ...this.work, entry: entryOf(run) });
        void this.#toForm('runs', 'homeleg-run-form');
        return;
      case 'duplicate':
        this.#changeTrials(duplicatedRun(trials, id), words.runDoubled(index + 1));
        return;
      case 'leave-out':
      case 'put-back': {
        const out = what === 'leave-out';
        this.#changeTrials(withRun(trials, leftOut(run, out)), words.runLeftOut(index + 1, out));
        return;
      }
      case 'delete':
        this.#changeTrials(withoutRun(trials, id), words.runDeleted(index + 1));
        void this.updateComplete.then(() => this.renderRoot.querySelector('homeleg-run-table')?.focusRow(index));
        return;
      default:
        what satisfies never;
    }
  }

  #refillAsked({ detail: { what, id } }: RowAsked): void {
    const { trials } = this.work.profile;
    const refill = trials.refills.find((one) => one.id === id);
    if (!refill) return;
    if (what === 'edit') {
      this.#change({ ...this.work, refill: refillEntryOf(refill) });
      void this.#toForm('refills', 'homeleg-refill-form');
    } else if (what === 'delete') {
      this.#changeTrials(withoutRefill(trials, id), words.refillDeleted);
    } else {
      this.#changeTrials(withRefill(trials, leftOut(refill, what === 'leave-out')));
    }
  }

  #runWanted(): void {
    const { trials, usual } = this.work.profile;
    this.#change({ ...this.work, entry: blankEntry(trials, usual, today()) });
    void this.#toForm('runs', 'homeleg-run-form');
  }

  #refillWanted(): void {
    const { trials, usual } = this.work.profile;
    this.#change({ ...this.work, refill: blankRefill(trials, usual, today()) });
    void this.#toForm('refills', 'homeleg-refill-form');
  }

  #entrySaved({ detail }: EntryTyped): void {
    const { trials } = this.work.profile;
    const run = runOf(detail.entry, trials);
    const next = withRun(trials, run);
    const { entry: _, ...rest } = this.work;
    const number = next.runs.findIndex(({ id }) => id === run.id) + 1;
    this.#change({ ...rest, profile: { ...rest.profile, trials: next } }, words.runSaved(number));
    this.#focus('#add-run');
  }

  #refillSaved({ detail }: RefillTyped): void {
    const { trials } = this.work.profile;
    const { refill: _, ...rest } = this.work;
    const next = withRefill(trials, refillOf(detail.entry, trials));
    this.#change({ ...rest, profile: { ...rest.profile, trials: next } }, words.refillSaved);
    this.#focus('#add-refill');
  }

  #leaveForm(to: string): void {
    const { entry: _e, refill: _r, ...rest } = this.work;
    const kept = to === '#add-run' ? { refill: _r } : { entry: _e };
    const work = Object.fromEntries(Object.entries({ ...rest, ...kept }).filter(([, part]) => part !== undefined));
    this.#change(work as unknown as Work);
    this.#focus(to);
  }

  async #toForm(card: Card, form: 'homeleg-run-form' | 'homeleg-refill-form'): Promise<void> {
    this.openCards = new Set([...this.openCards, card]);
    await this.updateComplete;
    const place = this.renderRoot.querySelector(form);
    await place?.updateComplete;
    place?.scrollIntoView({ block: 'start' });
    place?.focus();
  }

  #focus(selector: string): void {
    void this.updateComplete.then(() => this.renderRoot.querySelector<HTMLElement>(selector)?.focus());
  }
}

/** Date on this device. */
function today(): string {
  const now = new Date();
  return [now.getFullYear(), now.getMonth() + 1, now.getDate()].map((part) => String(part).padStart(2, '0')).join('-');
}

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-trials': TrialsBench;
  }
}
