import { html, nothing, type PropertyValues } from 'lit';
import { property, query, state } from 'lit/decorators.js';
import { keyed } from 'lit/directives/keyed.js';
import { repeat } from 'lit/directives/repeat.js';
import type { Seating } from '../../core/compare/seat-crew.ts';
import type { LoadColumn, LoadTable as Table } from '../../core/compare/shapes.ts';
import type { Craft, Hull } from '../../core/craft/shapes.ts';
import { hulls } from '../../core/files/catalogue.ts';
import type { Trip } from '../../core/trip/shapes.ts';
import type { PlateEdited } from '../craft-form/plate-field.ts';
import { HostProblems } from '../host/host-problems.ts';
import { knowValues, THEMES } from '../host/known-values.ts';
import { SharedTrip } from '../host/shared-trip.ts';
import { SpeakingElement } from '../language/speaking-element.ts';
import '../craft-form/plate-field.ts';
import type { ChoiceMade } from '../field/choice-field.ts';
import '../field/choice-field.ts';
import { fieldStyles } from '../field/field.styles.ts';
import type { QuantityTyped } from '../field/quantity-field.ts';
import '../field/quantity-field.ts';
import { InTurns } from '../in-turns.ts';
import { saveFile } from '../planner/save-file.ts';
import { belowStyles } from '../theme/below.styles.ts';
import { controls } from '../theme/controls.styles.ts';
import { formStyles } from '../theme/form.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import { type Measures, measuresFor, type UnitSystem } from '../units/measures.ts';
import { cautions } from '../words/en-cautions.ts';
import { compareWords as words } from '../words/en-compare.ts';
import { formWords } from '../words/en-craft.ts';
import { plannerWords } from '../words/en-planner.ts';
import { AfterRest, type GoOn } from './after-rest.ts';
import './closer-look.ts';
import { loadTableStyles } from './load-table.styles.ts';
import { type MeasuredBoat, openProfile } from './open-profile.ts';
import { pieces } from './pieces.ts';
import { loadIn, type NamedRow, type OtherLoad, rewritten, rowsOf } from './rows.ts';
import type { SetupsEdited } from './setup-list.ts';
import './setup-list.ts';
import { written } from '../host/written.ts';
import { dataName } from '../words/en-data.ts';
import { tableWorker } from './new-worker.ts';
import { carriedTo, firstSetups, MOST_SETUPS, type SetupChoice } from './setups.ts';
import { tableCsv } from './table-csv.ts';
import { tableDrawing } from './table-drawing.ts';
import { tableWork } from './table-work.ts';

const UNITS: readonly UnitSystem[] = ['nautical', 'metric', 'imperial'];
const FIRST_HULL = 'catamaran-3-6';
const MOST_OTHERS = 6;

/**
 * @summary Loads against engines, propellers, tanks and batteries on one boat: planes or not, speeds, consumption,
 * range, what is to spare. A measured boat narrows the bands.
 * @fires {ProblemEvent} homeleg-problem - an attribute cannot be used
 * @csspart problem - what the author of the page should mend
 * @csspart asks - boat, loads and engines
 * @csspart table - the table, with its heading
 * @csspart cautions - the cautions, always shown
 * @csspart closer - one load and engine looked at more closely
 */
export class LoadTable extends SpeakingElement {
  static override styles = [tokens, controls, fieldStyles, formStyles, belowStyles, loadTableStyles];

  /** Units shown: nautical, metric or imperial. */
  @property({ converter: written('metric') }) units: UnitSystem = 'metric';
  /** "light" or "dark"; without it as the page. */
  @property({ converter: written(''), reflect: true }) theme = '';
  /** The id of a planner or other element on this page, whose boat is compared. */
  @property({ converter: written(''), attribute: 'for' }) for = '';
  /** The trip whose boat and engine stand first, in place of `for`. */
  @property({ attribute: false }) trip: Trip | undefined;

  @state() private hullId = FIRST_HULL;
  @state() private measured: MeasuredBoat | undefined;
  /** The hull of the page's trip, until another one is picked. */
  @state() private ownHull: Hull | undefined;
  @state() private refused: readonly string[] = [];
  @state() private plateKind: 'usual' | 'mine' = 'usual';
  @state() private plate: Hull['plate'];
  @state() private eachMass = 85;
  @state() private gear = 0;
  @state() private seating: Seating = 'spread';
  @state() private others: readonly OtherLoad[] = [];
  @state() private setups: readonly SetupChoice[] = firstSetups(hulls.find(({ id }) => id === FIRST_HULL)!.hull);
  @state() private water: 'sea' | 'fresh' = 'sea';
  @state() private batteryTemperatureC = 10;
  @state() private oneSpeed: number | undefined;
  @state() private speedKind: 'own' | 'one' = 'own';

  /** The last table that was worked out. */
  @state() private shown: { readonly table: Table; readonly rows: readonly NamedRow[] } | undefined;

  @query('input[type="file"]') private picker!: HTMLInputElement;

  #measures: Measures = measuresFor('metric', 'en');
  #hull!: Hull;
  #rows: readonly NamedRow[] = [];
  #columns: readonly LoadColumn[] = [];
  readonly #problems = new HostProblems(this);
  readonly #turns = new InTurns(this, () => 4);
  readonly #shared = new SharedTrip(this, this.#problems, () => this.for);
  #craft: Craft | undefined;
  readonly #later = new AfterRest(this, 80);
  #made = 0;
  /** Somebody chose the engines: another boat does not bring its own. */
  #ownSetups = false;

  constructor() {
    super();
    knowValues(this, this.#problems, { units: UNITS, theme: THEMES });
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has('units') || this.#measures.lang !== this.language || this.#made === 0) {
      this.#measures = measuresFor(UNITS.includes(this.units) ? this.units : 'metric', this.language);
    }
    this.#made++;
    if (changed.has('for') && this.hasUpdated) this.#shared.look();
    this.#takeCraft((this.trip ?? this.#shared.source?.trip)?.craft);
    const { eachMass, gear, seating, others } = this;
    this.#hull = this.#hullNow();
    this.#rows = rowsOf(this.#hull, { eachMass, gear, seating, others }, this.#measures);
    this.#columns = this.setups.map(({ id, drive, store }) => {
      const calibration = this.measured?.calibrationOf(drive);
      return { id, drive, store, ...(calibration && { calibration }) };
    });
    if ([...changed.keys()].some((key) => key !== 'shown' && key !== 'refused')) {
      this.#later.start((goOn) => this.#workOut(goOn));
    }
  }

  override render() {
    const m = this.#measures;
    const turns = this.#turns;
    return html`
      ${this.#problems.render()}
      <form class="asks" part="asks" @submit=${(event: Event) => event.preventDefault()}>
        ${this.#boatCard()} ${turns.part(1, () => this.#loadsCard())} ${turns.part(2, () => this.#enginesCard())}
        <button type="button" class="jump primary" @click=${this.#toTable}>${words.toTable}</button>
      </form>
      <section class="tells below" part="table" aria-labelledby="table-title">
        <div class="over">
          <h2 id="table-title" tabindex="-1">${words.table}</h2>
          <div class="tools">
            <button type="button" @click=${this.#csvPressed}>${words.csv}</button>
            <button type="button" @click=${() => globalThis.print()}>${words.print}</button>
          </div>
        </div>
        <p class="boat-name">${this.#boatName()}</p>
        ${this.shown ? tableDrawing(this.shown.table, this.shown.rows, m) : html`<p class="empty">${words.working}</p>`}
        <p class="hint">${words.cruiseDefinition}</p>
        <p class="cautions" part="cautions">${cautions().join(' ')}</p>
      </section>
      ${turns.part(
        3,
        () => html`<homeleg-closer-look
          class="below"
          part="closer"
          .hull=${this.#hull}
          .rows=${this.#rows}
          .columns=${this.#columns}
          .setting=${this.#setting()}
          .measures=${m}
        ></homeleg-closer-look>`,
      )}
    `;
  }

  #boatCard() {
    const forms = [...new Set(hulls.map(({ hull }) => hull.form))];
    return html`<fieldset class="card">
      <legend>${words.boat}</legend>
      <div class="stack close">
        ${
          this.measured
            ? html`<p class="note">${this.#measuredText(this.measured)}</p>
                <button type="button" class="quiet start" @click=${this.#profileClosed}>${words.closeProfile}</button>`
            : html`<div class="field">
                <label for="hull">${words.boat}</label>
                <select id="hull" @change=${this.#hullPicked}>
                  ${this.ownHull ? html`<option value="" selected>${dataName(this.ownHull.name)}</option>` : nothing}
                  ${forms.map(
                    (form) => html`<optgroup label=${formWords[form]}>
                      ${hulls
                        .filter(({ hull }) => hull.form === form)
                        .map(
                          ({ id, hull }) =>
                            html`<option value=${id} .selected=${!this.ownHull && id === this.hullId}>${dataName(hull.name)}</option>`,
                        )}
                    </optgroup>`,
                  )}
                </select>
                <p class="hint">${words.examples}</p>
              </div>`
        }
        <div class="open">
          <button type="button" @click=${() => this.picker.click()}>${words.openProfile}</button>
          <input type="file" accept=".json,application/json" hidden @change=${this.#filePicked} />
          ${this.refused.map((line) => html`<p class="problem" role="alert">${line}</p>`)}
        </div>
        <homeleg-choice-field
          label=${words.plate}
          .choices=${[
            ...(this.measured || this.ownHull ? [] : [{ value: 'usual', label: words.plateUsual }]),
            { value: 'mine', label: words.plateMine },
          ]}
          .value=${this.plateKind}
          hint=${this.plateKind === 'usual' ? words.plateUsualHint : ''}
          @choice-made=${(event: ChoiceMade) => (this.plateKind = event.detail.value as 'usual' | 'mine')}
        ></homeleg-choice-field>
        ${
          this.plateKind === 'mine'
            ? html`<homeleg-plate-field
                .plate=${this.plate}
                .typical=${this.measured ? undefined : this.#example().typicalPlate}
                .measures=${this.#measures}
                @plate-edited=${(event: PlateEdited) => (this.plate = event.detail.plate)}
              ></homeleg-plate-field>`
            : nothing
        }
        <div class="field">
          <label for="units">${words.units}</label>
          <select id="units" @change=${this.#unitsPicked}>
            ${UNITS.map((each) => html`<option value=${each} .selected=${each === this.units}>${plannerWords.unitNames[each]}</option>`)}
          </select>
        </div>
      </div>
    </fieldset>`;
  }

  #loadsCard() {
    const m = this.#measures;
    return html`<fieldset class="card">
      <legend>${words.loads}</legend>
      <div class="stack close">
        <div class="fields">
          <homeleg-quantity-field
            label=${words.eachMass}
            measure="mass"
            required
            .min=${20}
            .max=${200}
            .measures=${m}
            .value=${this.eachMass}
            hint=${words.eachMassHint}
            @quantity-typed=${(event: QuantityTyped) => (this.eachMass = event.detail.value ?? this.eachMass)}
          ></homeleg-quantity-field>
          <homeleg-quantity-field
            label=${words.gear}
            measure="mass"
            .min=${0}
            .max=${400}
            .measures=${m}
            .value=${this.gear}
            @quantity-typed=${(event: QuantityTyped) => (this.gear = event.detail.value ?? 0)}
          ></homeleg-quantity-field>
        </div>
        <homeleg-choice-field
          label=${words.seating}
          .choices=${(['spread', 'forward', 'aft'] as const).map((value) => ({ value, label: words.seatings[value] }))}
          .value=${this.seating}
          @choice-made=${(event: ChoiceMade) => (this.seating = event.detail.value as Seating)}
        ></homeleg-choice-field>
        ${repeat(
          this.others,
          ({ id }) => id,
          (other) => this.#otherLoad(other),
        )}
        <button type="button" class="start" id="add-load" ?disabled=${this.others.length >= MOST_OTHERS} @click=${this.#loadAdded}>
          ${words.addLoad}
        </button>
        <homeleg-choice-field
          label=${words.cruising}
          .choices=${[{ value: 'own', label: words.cruiseOwn }, { value: 'one', label: words.cruiseOne }]}
          .value=${this.speedKind}
          @choice-made=${(event: ChoiceMade) => (this.speedKind = event.detail.value as 'own' | 'one')}
        ></homeleg-choice-field>
        ${
          this.speedKind === 'one'
            ? html`<homeleg-quantity-field
                label=${words.cruiseOneValue}
                measure="speed"
                .min=${0.5}
                .max=${18}
                .measures=${m}
                .value=${this.oneSpeed}
                @quantity-typed=${(event: QuantityTyped) => (this.oneSpeed = event.detail.value)}
              ></homeleg-quantity-field>`
            : nothing
        }
      </div>
    </fieldset>`;
  }

  #otherLoad({ id, text }: OtherLoad) {
    const unreadable = loadIn(text, this.#measures) === undefined;
    return html`<div class="field other">
      <label for=${id}>${words.otherLoad}</label>
      <div class="row">
        <input
          id=${id}
          inputmode="text"
          autocomplete="off"
          .value=${text}
          aria-invalid=${unreadable ? 'true' : 'false'}
          aria-describedby=${`${id}-hint`}
          @input=${(event: Event) => this.#loadTyped(id, (event.target as HTMLInputElement).value)}
        />
        <button type="button" class="quiet" aria-label=${`${words.remove}: ${text || words.otherLoad}`} @click=${() => this.#loadRemoved(id)}>
          ${words.remove}
        </button>
      </div>
      <p id=${`${id}-hint`} class=${unreadable ? 'problem' : 'hint'}>
        ${unreadable ? words.weightsProblem : words.weights(this.#measures.unit('mass'))}
      </p>
    </div>`;
  }

  #enginesCard() {
    const electric = this.setups.some(({ drive }) => drive.kind === 'electric');
    return html`<fieldset class="card engines">
      <legend>${words.engines}</legend>
      ${keyed(
        this.measured,
        html`<homeleg-setup-list
          .hull=${this.#hull}
          .setups=${this.setups}
          .measures=${this.#measures}
          @setups-edited=${this.#setupsEdited}
        ></homeleg-setup-list>`,
      )}
      <div class="fields around">
        <homeleg-choice-field
          label=${words.water}
          .choices=${[{ value: 'sea', label: words.salt }, { value: 'fresh', label: words.fresh }]}
          .value=${this.water}
          @choice-made=${(event: ChoiceMade) => (this.water = event.detail.value as 'sea' | 'fresh')}
        ></homeleg-choice-field>
        ${
          electric
            ? html`<homeleg-quantity-field
                label=${words.batteryTemperature}
                required
                .unit=${'°C'}
                .unitSize=${1}
                .min=${-20}
                .max=${50}
                .measures=${this.#measures}
                .value=${this.batteryTemperatureC}
                @quantity-typed=${(event: QuantityTyped) => (this.batteryTemperatureC = event.detail.value ?? 10)}
              ></homeleg-quantity-field>`
            : nothing
        }
      </div>
    </fieldset>`;
  }

  /** The boat of the page's trip, and its engine before the others; a boat picked here afterwards stays. */
  #takeCraft(craft: Craft | undefined): void {
    if (!craft || craft === this.#craft) return;
    this.#craft = craft;
    this.measured = undefined;
    this.plate = craft.hull.plate;
    this.plateKind = 'mine';
    const own: SetupChoice = { id: 'own', drive: craft.drive, store: craft.store };
    this.setups = [own, ...firstSetups(craft.hull)].slice(0, MOST_SETUPS);
    this.ownHull = craft.hull;
  }

  #example() {
    return hulls.find(({ id }) => id === this.hullId)!;
  }

  #hullNow(): Hull {
    const { plate: _, ...bare } = this.measured?.profile.trials.hull ?? this.ownHull ?? this.#example().hull;
    const plate = this.plateKind === 'usual' ? this.#example().typicalPlate : this.plate;
    return plate ? { ...bare, plate } : bare;
  }

  #setting() {
    return { water: this.water, batteryTemperatureC: this.batteryTemperatureC };
  }

  #boatName(): string {
    return dataName(this.measured?.profile.name ?? this.#hull.name);
  }

  #measuredText({ profile, fit }: MeasuredBoat): string {
    if (fit.counted === 0) return words.measuredNothing(profile.name);
    return words.measured(profile.name, fit.counted, profile.trials.measuredBy, fit.lastDay);
  }

  #hullPicked(event: Event): void {
    this.hullId = valueIn(event);
    if (this.ownHull) this.plateKind = 'usual';
    this.ownHull = undefined;
    const { hull } = this.#example();
    this.setups = this.#ownSetups ? this.setups.map((setup) => carriedTo(hull, setup)) : firstSetups(hull);
    this.plate = undefined;
  }

  async #filePicked(): Promise<void> {
    const file = this.picker.files?.[0];
    this.picker.value = '';
    if (!file) return;
    try {
      const opened = await openProfile(await file.text(), new Date().toISOString().slice(0, 10));
      if ('refused' in opened) {
        this.refused = [words.notOpened, ...opened.refused];
        return;
      }
      const { trials } = opened.boat.profile;
      this.refused = [];
      this.measured = opened.boat;
      this.plateKind = 'mine';
      this.plate = trials.hull.plate;
      this.water = trials.water;
      this.setups = trials.setups.slice(0, MOST_SETUPS).map(({ id, drive, store }) => ({ id, drive, store }));
    } catch {
      this.refused = [words.notOpened];
    }
  }

  #setupsEdited({ detail }: SetupsEdited): void {
    this.setups = detail.setups;
    this.#ownSetups = true;
  }

  /** What was typed in the old units is written anew in the next, so that nobody gets heavier. */
  #unitsPicked(event: Event): void {
    const units = valueIn(event) as UnitSystem;
    const next = measuresFor(units, this.#measures.lang);
    this.others = this.others.map(({ id, text }) => ({ id, text: rewritten(text, this.#measures, next) }));
    this.units = units;
  }

  #profileClosed(): void {
    this.#ownSetups = false;
    this.measured = undefined;
    this.ownHull = undefined;
    this.plateKind = 'usual';
    this.plate = undefined;
    this.setups = firstSetups(this.#example().hull);
  }

  #loadAdded(): void {
    const used = new Set(this.others.map(({ id }) => id));
    let number = 1;
    while (used.has(`load-${number}`)) number++;
    const id = `load-${number}`;
    this.others = [...this.others, { id, text: '' }];
    void this.updateComplete.then(() => this.renderRoot.querySelector<HTMLElement>(`#${id}`)?.focus());
  }

  #loadTyped(id: string, text: string): void {
    this.others = this.others.map((other) => (other.id === id ? { id, text } : other));
  }

  #loadRemoved(id: string): void {
    this.others = this.others.filter((other) => other.id !== id);
    this.renderRoot.querySelector<HTMLElement>('#add-load')?.focus();
  }

  async #workOut(goOn: GoOn): Promise<void> {
    const [hull, rows, columns] = [this.#hull, this.#rows, this.#columns];
    const speed = this.speedKind === 'one' ? this.oneSpeed : undefined;
    const cells = await pieces({
      worker: tableWorker,
      asked: { hull, rows, columns, question: { ...this.#setting(), speed } },
      onPage: tableWork,
      goOn,
    });
    if (cells) this.shown = { table: { rows, columns, cells }, rows };
  }

  #toTable(): void {
    const title = this.renderRoot.querySelector<HTMLElement>('#table-title');
    title?.focus({ preventScroll: true });
    title?.scrollIntoView();
  }

  #csvPressed(): void {
    if (!this.shown) return;
    const { table, rows } = this.shown;
    const name = this.#boatName().replace(/[^\p{L}\p{N}]+/gu, '-');
    saveFile(`${name}-loads.csv`, tableCsv(table, rows, this.#measures), 'text/csv');
  }
}

function valueIn(event: Event): string {
  return (event.target as HTMLSelectElement).value;
}

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-load-table': LoadTable;
  }
}
