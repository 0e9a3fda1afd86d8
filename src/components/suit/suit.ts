import { html, nothing, type PropertyValues } from 'lit';
import { property, state } from 'lit/decorators.js';
import { ranked, suited } from '../../core/compare/suit.ts';
import type { Suited, Use } from '../../core/compare/suit-shapes.ts';
import * as catalogue from '../../core/files/catalogue.ts';
import type { ChoiceMade } from '../field/choice-field.ts';
import { HostProblems } from '../host/host-problems.ts';
import { knowValues } from '../host/known-values.ts';
import { SpeakingElement } from '../language/speaking-element.ts';
import '../field/choice-field.ts';
import { fieldStyles } from '../field/field.styles.ts';
import type { QuantityTyped } from '../field/quantity-field.ts';
import '../field/quantity-field.ts';
import { written } from '../host/written.ts';
import { InTurns } from '../in-turns.ts';
import { AfterRest, type GoOn } from '../load-table/after-rest.ts';
import { pieces } from '../load-table/pieces.ts';
import { weightsIn } from '../load-table/rows.ts';
import { belowStyles } from '../theme/below.styles.ts';
import { controls } from '../theme/controls.styles.ts';
import { formStyles } from '../theme/form.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import { type Measures, measuresFor, type UnitSystem } from '../units/measures.ts';
import { cautions } from '../words/en-cautions.ts';
import { compareWords, standingWords, suitWords as words } from '../words/en-compare.ts';
import { plannerWords } from '../words/en-planner.ts';
import { outList } from './out-drawing.ts';
import { suitStyles } from './suit.styles.ts';
import { suitCard } from './suit-card.ts';

const UNITS: readonly UnitSystem[] = ['nautical', 'metric', 'imperial'];
/** How often progress is told, in combinations. */
const TOLD = 27;
/** Cards shown before somebody asks for all. */
const FIRST = 6;

type Energy = Use['energy'];

/**
 * @summary From a use (crew, trip, water, speed, what can be carried) the boats, engines, propellers, tanks and
 * batteries that suit it, and why the others fall out.
 * @fires {ProblemEvent} homeleg-problem - an attribute cannot be used
 * @csspart problem - what the author of the page should mend
 * @csspart asks - what is asked of the use
 * @csspart answer - what suits, and the cautions
 */
export class Suit extends SpeakingElement {
  static override styles = [tokens, controls, fieldStyles, formStyles, belowStyles, suitStyles];

  /** Units shown: nautical, metric or imperial. */
  @property({ converter: written('metric') }) units: UnitSystem = 'metric';

  @state() private weightsText = '85, 75';
  @state() private gear = 20;
  @state() private distance: number | undefined = 15_000;
  @state() private water: 'sea' | 'fresh' = 'sea';
  @state() private waves: 'flat' | 'height' = 'height';
  @state() private waveHeight: number | undefined = 0.2;
  @state() private speedKind: 'any' | 'set' = 'set';
  @state() private speed: number | undefined = 6;
  @state() private carryKind: 'none' | 'set' = 'none';
  @state() private carry: number | undefined = 30;
  @state() private energy: Energy = 'either';
  @state() private batteryTemperatureC = 10;
  @state() private found: readonly Suited[] | undefined;
  @state() private progress = '';
  @state() private all: ReadonlySet<string> = new Set();

  #measures: Measures = measuresFor('metric', 'en');
  readonly #problems = new HostProblems(this);
  readonly #later = new AfterRest(this, 120);
  /** The questions, and what was found once it is. */
  readonly #turns = new InTurns(this, () => (this.found ? 6 : 4));
  #asked = '';
  #foundFor: Use | undefined;

  constructor() {
    super();
    knowValues(this, this.#problems, { units: UNITS });
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has('units') || this.#measures.lang !== this.language) {
      this.#measures = measuresFor(UNITS.includes(this.units) ? this.units : 'metric', this.language);
    }
  }

  protected override updated(): void {
    const use = this.#use();
    const asked = JSON.stringify(use ?? null);
    if (asked === this.#asked) return;
    this.#asked = asked;
    this.#later.start(async (goOn) => {
      if (use) return this.#look(use, goOn);
      this.found = undefined;
      this.progress = '';
    });
  }

  override render() {
    const m = this.#measures;
    const turns = this.#turns;
    return html`
      ${this.#problems.render()}
      <div class="desk">
        <form class="asks" part="asks" @submit=${(event: Event) => event.preventDefault()}>
          ${this.#who(m)} ${turns.part(1, () => this.#trip(m))} ${turns.part(2, () => [this.#means(m), this.#units(), this.#jump()])}
        </form>
        <section class="tells below" part="answer" tabindex="-1">${turns.part(3, () => this.#answer(m))}</section>
      </div>
    `;
  }

  #units() {
    return html`<div class="field">
      <label for="units">${compareWords.units}</label>
      <select id="units" @change=${(event: Event) => this.#unitsPicked((event.target as HTMLSelectElement).value)}>
        ${UNITS.map((each) => html`<option value=${each} .selected=${each === this.units}>${plannerWords.unitNames[each]}</option>`)}
      </select>
    </div>`;
  }

  #jump() {
    return html`<button type="button" class="jump primary" @click=${this.#toAnswer}>
      ${words.toAnswer(this.found?.filter(({ standing }) => standing === 'fits').length)}
    </button>`;
  }

  #who(m: Measures) {
    const unreadable = this.#crew() === undefined;
    return html`<fieldset>
      <legend>${words.who}</legend>
      <div class="stack close">
        <div class="field">
          <label for="weights">${words.weights}</label>
          <input
            id="weights"
            inputmode="text"
            autocomplete="off"
            .value=${this.weightsText}
            aria-invalid=${unreadable ? 'true' : 'false'}
            aria-describedby="weights-hint"
            @input=${(event: Event) => (this.weightsText = (event.target as HTMLInputElement).value)}
          />
          <p id="weights-hint" class=${unreadable ? 'problem' : 'hint'}>
            ${unreadable ? words.weightsProblem : words.weightsHint(m.unit('mass'))}
          </p>
        </div>
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
    </fieldset>`;
  }

  #trip(m: Measures) {
    return html`<fieldset>
      <legend>${words.trip}</legend>
      <div class="stack close">
        <homeleg-quantity-field
          label=${words.distance}
          measure="distance"
          required
          .min=${200}
          .max=${200_000}
          .measures=${m}
          .value=${this.distance}
          @quantity-typed=${(event: QuantityTyped) => (this.distance = event.detail.value)}
        ></homeleg-quantity-field>
        <homeleg-choice-field
          label=${words.speed}
          .choices=${[{ value: 'any', label: words.speedAny }, { value: 'set', label: words.speedSet }]}
          .value=${this.speedKind}
          hint=${this.speedKind === 'any' ? words.speedAnyHint : ''}
          @choice-made=${(event: ChoiceMade) => (this.speedKind = event.detail.value as 'any' | 'set')}
        ></homeleg-choice-field>
        ${
          this.speedKind === 'set'
            ? html`<homeleg-quantity-field
                label=${words.speedValue}
                measure="speed"
                required
                .min=${0.8}
                .max=${18}
                .measures=${m}
                .value=${this.speed}
                @quantity-typed=${(event: QuantityTyped) => (this.speed = event.detail.value)}
              ></homeleg-quantity-field>`
            : nothing
        }
        <homeleg-choice-field
          label=${words.waves}
          .choices=${[{ value: 'flat', label: words.flat }, { value: 'height', label: words.waveHeight }]}
          .value=${this.waves}
          @choice-made=${(event: ChoiceMade) => (this.waves = event.detail.value as 'flat' | 'height')}
        ></homeleg-choice-field>
        ${
          this.waves === 'height'
            ? html`<homeleg-quantity-field
                label=${words.waveHeight}
                measure="length"
                required
                .min=${0.02}
                .max=${3}
                .measures=${m}
                .value=${this.waveHeight}
                hint=${words.waveHint}
                @quantity-typed=${(event: QuantityTyped) => (this.waveHeight = event.detail.value)}
              ></homeleg-quantity-field>`
            : nothing
        }
        <homeleg-choice-field
          label=${words.water}
          .choices=${[{ value: 'sea', label: words.salt }, { value: 'fresh', label: words.fresh }]}
          .value=${this.water}
          @choice-made=${(event: ChoiceMade) => (this.water = event.detail.value as 'sea' | 'fresh')}
        ></homeleg-choice-field>
      </div>
    </fieldset>`;
  }

  #means(m: Measures) {
    return html`<fieldset>
      <legend>${words.carry}</legend>
      <div class="stack close">
        <homeleg-choice-field
          label=${words.carryHow}
          .choices=${[{ value: 'none', label: words.carryNone }, { value: 'set', label: words.carrySet }]}
          .value=${this.carryKind}
          hint=${this.carryKind === 'set' ? words.carryHint : ''}
          @choice-made=${(event: ChoiceMade) => (this.carryKind = event.detail.value as 'none' | 'set')}
        ></homeleg-choice-field>
        ${
          this.carryKind === 'set'
            ? html`<homeleg-quantity-field
                label=${words.carryValue}
                measure="mass"
                required
                .min=${5}
                .max=${150}
                .measures=${m}
                .value=${this.carry}
                @quantity-typed=${(event: QuantityTyped) => (this.carry = event.detail.value)}
              ></homeleg-quantity-field>`
            : nothing
        }
        <homeleg-choice-field
          label=${words.energy}
          .choices=${(['either', 'petrol', 'electric'] as const).map((value) => ({ value, label: words.energies[value] }))}
          .value=${this.energy}
          @choice-made=${(event: ChoiceMade) => (this.energy = event.detail.value as Energy)}
        ></homeleg-choice-field>
        ${
          this.energy === 'petrol'
            ? nothing
            : html`<homeleg-quantity-field
                label=${words.batteryTemperature}
                required
                .unit=${'°C'}
                .unitSize=${1}
                .min=${-20}
                .max=${50}
                .measures=${m}
                .value=${this.batteryTemperatureC}
                @quantity-typed=${(event: QuantityTyped) => (this.batteryTemperatureC = event.detail.value ?? 10)}
              ></homeleg-quantity-field>`
        }
      </div>
    </fieldset>`;
  }

  #answer(m: Measures) {
    const { found } = this;
    const status = html`<p class="progress" role="status">${this.progress}</p>`;
    if (!found) return html`${status}<p class="empty">${this.progress ? '' : words.incomplete}</p>`;
    const of = (standing: Suited['standing']) => found.filter((one) => one.standing === standing);
    const fits = of('fits');
    const doubtful = of('doubtful');
    const out = of('out');
    const turns = this.#turns;
    return html`
      ${status}
      <h2 class=${fits.length > 0 ? '' : 'none'}>${words.found(fits.length)}</h2>
      <p class="hint">${words.foundHint} ${words.plate}</p>
      ${fits.length > 0 ? html`<h3 class="sr">${standingWords.fits}</h3>${this.#cards('fits', fits, m)}` : nothing}
      ${doubtful.length > 0 ? html`<h3>${words.doubtful(doubtful.length)}</h3>${turns.part(4, () => this.#cards('doubtful', doubtful, m))}` : nothing}
      ${out.length > 0 ? html`<h3>${words.out(out.length)}</h3>${turns.part(5, () => outList(out, catalogue, m))}` : nothing}
      <p class="hint">${words.invented}</p>
      <p class="cautions">${cautions().join(' ')}</p>
    `;
  }

  #cards(list: string, found: readonly Suited[], m: Measures) {
    const all = this.all.has(list);
    const shown = all ? found : found.slice(0, FIRST);
    return html`<ol class="cards">
        ${shown.map((one) => html`<li class=${one.standing}>${suitCard(one, catalogue, this.#foundFor?.speed, m)}</li>`)}
      </ol>
      ${
        found.length > FIRST
          ? html`<button type="button" aria-expanded=${String(all)} @click=${() => this.#allToggled(list)}>
              ${all ? words.fewer : words.more(found.length - FIRST)}
            </button>`
          : nothing
      }`;
  }

  #toAnswer(): void {
    const section = this.renderRoot.querySelector<HTMLElement>('.tells');
    section?.focus({ preventScroll: true });
    section?.scrollIntoView();
  }

  #allToggled(list: string): void {
    const all = new Set(this.all);
    if (!all.delete(list)) all.add(list);
    this.all = all;
  }

  /** kg; empty while nothing is typed, undefined where a weight cannot be read. */
  #crew(): readonly number[] | undefined {
    return weightsIn(this.weightsText, this.#measures);
  }

  /** What was typed in the old units is written anew in the next, so that nobody gets heavier. */
  #unitsPicked(units: string): void {
    const crew = this.#crew();
    const next = measuresFor(units as UnitSystem, this.#measures.lang);
    if (crew) this.weightsText = crew.map((mass) => next.figure('mass', mass)).join(', ');
    this.units = units as UnitSystem;
  }

  #use(): Use | undefined {
    const crew = this.#crew();
    const { distance, gear, water, energy, batteryTemperatureC } = this;
    const waveHeight = this.waves === 'flat' ? 0 : this.waveHeight;
    const speed = this.speedKind === 'any' ? undefined : this.speed;
    const carry = this.carryKind === 'none' ? undefined : this.carry;
    if (!crew || crew.length === 0 || distance === undefined || waveHeight === undefined) return undefined;
    if ((this.speedKind === 'set' && speed === undefined) || (this.carryKind === 'set' && carry === undefined)) {
      return undefined;
    }
    return { crew, gear, distance, water, waveHeight, speed, carry, energy, batteryTemperatureC };
  }

  async #look(use: Use, goOn: GoOn): Promise<void> {
    const wanted = catalogue.engines.filter(({ drive }) => use.energy === 'either' || drive.kind === use.energy);
    const total = wanted.length * catalogue.hulls.length;
    const found = await pieces({
      worker: () => new Worker(new URL('./suit-worker.ts', import.meta.url), { type: 'module' }),
      asked: use,
      onPage: (asked) => suited(asked, catalogue),
      goOn,
      told: (count) => {
        if (count % TOLD === 0) this.progress = this.say(() => words.working(count, total));
      },
    });
    if (!found) return;
    this.#foundFor = use;
    this.found = ranked(found);
    this.progress = '';
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-suit': Suit;
  }
}
