import { html, nothing, type PropertyValues } from 'lit';
import { property, state } from 'lit/decorators.js';
import type { Load } from '../../core/load/shapes.ts';
import type { Fitted } from '../../core/trials/fit.ts';
import type { SheetStep } from '../../core/trials/run-sheet.ts';
import type { Trials } from '../../core/trials/shapes.ts';
import { HOUR } from '../../core/units/convert.ts';
import { define } from '../define.ts';
import { SpeakingElement } from '../language/speaking-element.ts';
import '../field/choice-field.ts';
import type { ChoiceMade } from '../field/choice-field.ts';
import '../field/quantity-field.ts';
import type { QuantityTyped } from '../field/quantity-field.ts';
import { controls } from '../theme/controls.styles.ts';
import { formStyles } from '../theme/form.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import { NAUTICAL } from '../units/default-measures.ts';
import type { Measures } from '../units/measures.ts';
import { runWords, sheetWords as words } from '../words/en-trials.ts';
import './aboard-field.ts';
import type { LoadTyped } from './aboard-field.ts';
import { dayLoads } from './day-loads.ts';
import { lastLoad } from './edit-trials.ts';
import { runSheetStyles } from './run-sheet.styles.ts';
import { balanceOf, setupName, shareText, storeKind } from './texts.ts';
import { type Sheet, setupOf } from './work.ts';

export type SheetMade = CustomEvent<{ sheet: Sheet }>;

/** 90th percentile of the normal law. */
const Z90 = 1.2816;

/**
 * @summary Proposes the runs of a trial day in their order, as a sheet to print or to fill in at the helm.
 * @fires sheet-made - a day was proposed
 * @fires sheet-printed - the sheet alone is to be printed
 * @fires helm-wanted - the sheet is to be filled in at the helm
 */
export class RunSheetForm extends SpeakingElement {
  static override styles = [tokens, controls, formStyles, runSheetStyles];

  @property({ attribute: false }) trials: Trials | undefined;
  @property({ attribute: false }) fit: Fitted | undefined;
  @property({ attribute: false }) sheet: Sheet | undefined;
  @property() name = '';
  @property({ attribute: false }) measures: Measures = NAUTICAL;

  /** Everyone who can come, with their seats. */
  @state() private crew: Load | undefined;
  /** On the water, s. */
  @state() private time = 3 * HOUR;
  @state() private setups: readonly string[] = [];
  @state() private reading: Sheet['reading'] = 'rate';
  @state() private message = '';

  protected override willUpdate(changed: PropertyValues<this>): void {
    const { trials } = this;
    if (!trials || !changed.has('trials')) return;
    this.crew ??= lastLoad(trials);
    const known = this.setups.filter((id) => trials.setups.some((setup) => setup.id === id));
    if (known.length !== this.setups.length || known.length === 0)
      this.setups = known.length > 0 ? known : trials.setups.map(({ id }) => id);
  }

  override render() {
    const { trials, crew, measures } = this;
    if (!trials || !crew) return nothing;
    const charge = storeKind(setupOf(trials, this.setups[0] ?? '').store) === 'charge';
    return html`
      <div class="stack asks">
        <p class="why">${words.why}</p>
        <homeleg-aboard-field
          .trials=${trials}
          .setup=${this.setups[0] ?? ''}
          .load=${crew}
          .measures=${measures}
          @load-typed=${this.#crewTyped}
        ></homeleg-aboard-field>
        <p class="hint">${words.crewHint}</p>
        ${
          trials.setups.length > 1
            ? html`<fieldset>
              <legend>${words.setups}</legend>
              ${trials.setups.map(
                (setup) => html`<label class="check">
                  <input
                    type="checkbox"
                    .checked=${this.setups.includes(setup.id)}
                    @change=${(event: Event) => this.#setupTicked(trials, setup.id, (event.target as HTMLInputElement).checked)}
                  />
                  ${setupName(setup, measures)}
                </label>`,
              )}
            </fieldset>`
            : nothing
        }
        <div class="fields wide">
          <homeleg-quantity-field
            label=${words.hours}
            measure="time"
            unit="h"
            .unitSize=${HOUR}
            min=${HOUR / 2}
            max=${10 * HOUR}
            .measures=${measures}
            .value=${this.time}
            @quantity-typed=${this.#timeTyped}
          ></homeleg-quantity-field>
          <homeleg-choice-field
            label=${words.reads}
            .choices=${[
              { value: 'rate', label: runWords.kinds.rate[charge ? 'charge' : 'fuel'] },
              ...(charge ? [{ value: 'current', label: runWords.kinds.current }] : []),
              { value: 'none', label: runWords.kinds.none },
            ]}
            .value=${this.reading}
            @choice-made=${this.#readingPicked}
          ></homeleg-choice-field>
        </div>
        <div class="buttons">
          <button type="button" class="primary" @click=${() => this.#proposed(trials, crew)}>${words.propose}</button>
        </div>
        <p role="status" class="message">${this.message}</p>
      </div>
      ${this.sheet ? this.#sheet(trials, this.sheet) : nothing}
    `;
  }

  #sheet(trials: Trials, sheet: Sheet) {
    const { measures } = this;
    const time = sheet.steps.reduce((sum, { seconds }) => sum + seconds, 0);
    const spread = (deviation: number) => shareText(Z90 * deviation, measures);
    const runs = sheet.steps.filter(({ kind }) => kind === 'run').length;
    let [start, number] = [0, 0];
    return html`<section class="sheet">
      <h3>${words.title(this.name)}</h3>
      <p class="sum">
        ${words.sum(runs, measures.time(time), spread(sheet.before), spread(sheet.after))}
      </p>
      <div class="buttons">
        <button type="button" class="primary" @click=${() => this.#tell('helm-wanted')}>${words.helm}</button>
        <button type="button" @click=${() => this.#tell('sheet-printed')}>${words.print}</button>
      </div>
      <p class="paper">${words.day} <span class="line"></span> ${words.windAndSea} <span class="line long"></span></p>
      <table>
        <thead>
          <tr>
            <th scope="col">${words.after}</th>
            <th scope="col">${words.step}</th>
            <th scope="col">${words.out}</th>
            <th scope="col">${words.back}</th>
            <th scope="col">${words.rpm}</th>
            <th scope="col">${this.#readingName(trials, sheet)}</th>
            <th scope="col">${words.noteColumn}</th>
          </tr>
        </thead>
        <tbody>
          ${sheet.steps.map((step, i) => {
            const at = start;
            start += step.seconds;
            if (step.kind === 'run') number++;
            return this.#row(trials, sheet, { step, i, at, number });
          })}
        </tbody>
      </table>
      <p class="hint">${words.paperHint}</p>
    </section>`;
  }

  #readingName(trials: Trials, { reading, steps }: Sheet): string {
    const first = steps.find((step) => step.kind === 'run');
    const store = storeKind(setupOf(trials, first?.kind === 'run' ? first.setup : '').store);
    if (reading === 'none') return '\u2013';
    if (reading === 'current') return 'A, V';
    return store === 'fuel' ? `${this.measures.unit('amount', 'fuel')}/h` : 'W';
  }

  #row(
    trials: Trials,
    sheet: Sheet,
    { step, i, at, number }: { step: SheetStep; i: number; at: number; number: number },
  ) {
    const { measures } = this;
    const when = html`<th scope="row">${at === 0 ? '0' : measures.time(at)}</th>`;
    if (step.kind !== 'run')
      return html`<tr class="between">${when}<td colspan="6">${stepText(step, trials, measures)}</td></tr>`;
    const run = trials.runs.find(({ id }) => id === sheet.done[i]);
    const over = (way: 'out' | 'back') => {
      const pass = run?.passes.find((one) => one.way === way);
      return pass ? measures.figure('speed', pass.over) : '';
    };
    const consumed =
      run?.consumed?.kind === 'rate'
        ? measures.flow(run.consumed.rate, storeKind(setupOf(trials, step.setup).store))
        : '';
    return html`<tr>
      ${when}
      <td><b>${number}</b> ${words.about(measures.show('speed', step.speed))}</td>
      <td class="blank">${over('out')}</td>
      <td class="blank">${over('back')}</td>
      <td class="blank">${run?.rpm ?? ''}</td>
      <td class="blank">${consumed}</td>
      <td class="blank wide"></td>
    </tr>`;
  }

  #crewTyped({ detail }: LoadTyped): void {
    this.crew = detail.load;
  }

  #timeTyped({ detail }: QuantityTyped): void {
    if (detail.value !== undefined) this.time = detail.value;
  }

  #readingPicked({ detail }: ChoiceMade): void {
    this.reading = detail.value as Sheet['reading'];
  }

  #setupTicked(trials: Trials, id: string, ticked: boolean): void {
    const chosen = trials.setups
      .map((setup) => setup.id)
      .filter((one) => (one === id ? ticked : this.setups.includes(one)));
    // A day needs one setup at least.
    if (chosen.length > 0) this.setups = chosen;
    else this.requestUpdate();
  }

  async #proposed(trials: Trials, crew: Load): Promise<void> {
    const loads = dayLoads(crew, (persons, mass) => words.load(persons, this.measures.show('mass', mass)));
    if (loads.length === 0) {
      this.message = runWords.problems.nobody;
      return;
    }
    try {
      const [{ fitTrials }, { runSheet }] = await Promise.all([
        import('../../core/trials/fit.ts'),
        import('../../core/trials/run-sheet.ts'),
      ]);
      const { steps, before, after } = runSheet(trials, this.fit ?? fitTrials(trials), {
        setups: this.setups,
        loads,
        time: this.time,
      });
      this.message = steps.length > 0 ? '' : words.nothingWorth;
      const sheet: Sheet = { steps, loads, before, after, reading: this.reading, done: {} };
      this.dispatchEvent(new CustomEvent('sheet-made', { detail: { sheet }, bubbles: true }) satisfies SheetMade);
    } catch {
      this.message = words.failed;
    }
  }

  #tell(type: 'sheet-printed' | 'helm-wanted'): void {
    this.dispatchEvent(new CustomEvent(type, { bubbles: true }));
  }
}

/** What to do between the runs. */
export function stepText(step: Exclude<SheetStep, { kind: 'run' }>, trials: Trials, measures: Measures): string {
  switch (step.kind) {
    case 'warm-up':
      return words.warmUp(measures.time(step.seconds));
    case 'change-setup':
      return words.changeSetup(setupName(setupOf(trials, step.setup), measures));
    case 'change-load':
      return words.changeLoad(step.load);
    default:
      return step satisfies never;
  }
}

/** All-up mass of a load of the day. */
export function allUp(trials: Trials, sheet: Sheet, name: string, setup: string, measures: Measures): string {
  const load = sheet.loads.find((one) => one.name === name)?.load;
  return load ? measures.show('mass', balanceOf(trials, setup, load).allUpMass) : '';
}

define('homeleg-run-sheet', RunSheetForm);

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-run-sheet': RunSheetForm;
  }
}
