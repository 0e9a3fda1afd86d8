import { html, nothing, type PropertyValues } from 'lit';
import { property, state } from 'lit/decorators.js';
import type { Fouling } from '../../core/craft/shapes.ts';
import { TRIED_SPREAD } from '../../core/curve/form-spread.ts';
import type { Load } from '../../core/load/shapes.ts';
import type { Fitted } from '../../core/trials/fit.ts';
import type { Fit, RunFound } from '../../core/trials/fit-shapes.ts';
import type { Help } from '../../core/trials/next-run.ts';
import type { Trials } from '../../core/trials/shapes.ts';
import { define } from '../define.ts';
import { SpeakingElement } from '../language/speaking-element.ts';
import '../field/choice-field.ts';
import type { ChoiceMade } from '../field/choice-field.ts';
import { controls } from '../theme/controls.styles.ts';
import { formStyles } from '../theme/form.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import { NAUTICAL } from '../units/default-measures.ts';
import type { Measures } from '../units/measures.ts';
import { cautions } from '../words/en-cautions.ts';
import { factorText, limitText, runWords, trialWords, fitWords as words } from '../words/en-trials.ts';
import './band-plot.ts';
import { factorLines } from './factor-texts.ts';
import { type BeforeAfter, beforeAndAfter, halfWidth, nearest, type Shown, tellingSpeeds } from './fit-curves.ts';
import { fitReportStyles } from './fit-report.styles.ts';
import { oneMoreRun } from './one-more-run.ts';
import './residual-plot.ts';
import { commonWords } from '../words/en-common.ts';
import { loadsTried, usualLoad } from './edit-trials.ts';
import type { RowAct, RowAsked } from './run-table.ts';
import { balanceOf, loadText, rowName, setupName, shareText } from './texts.ts';
import { setupOf } from './work.ts';

export type FoulingPicked = CustomEvent<{ fouling: Fouling }>;

/** 90th percentile of the normal law: 8 of 10 lie within this many deviations. */
const Z90 = 1.2816;

/** A fit that trusts its curve less than this between the runs says so. */
const OFF_CURVE = 1.1 * TRIED_SPREAD;

/**
 * @summary What the runs say: the band before and after, how far each reading lies off, what was learned and what not.
 * @fires row-asked - a run is to be looked at, left out or taken in again
 * @fires fouling-picked - how foul the bottom was during the runs
 */
export class FitReport extends SpeakingElement {
  static override styles = [tokens, controls, formStyles, fitReportStyles];

  @property({ attribute: false }) trials: Trials | undefined;
  @property({ attribute: false }) fit: Fitted | undefined;
  @property() usual = '';
  @property({ attribute: false }) measures: Measures = NAUTICAL;

  /** What somebody chose to look at; absent: the setup and load of the last run. */
  @state() private chosen: Partial<Shown> = {};

  #shown: Shown | undefined;
  #curves: BeforeAfter | undefined;
  #helps: readonly Help[] = [];

  protected override willUpdate(changed: PropertyValues): void {
    const { trials, chosen } = this;
    if (!trials) return;
    if (!changed.has('trials') && !changed.has('fit') && !changed.has('chosen') && !changed.has('usual')) return;
    const setup = setupOf(trials, chosen.setup ?? trials.runs.at(-1)?.setup ?? this.usual).id;
    this.#shown = { setup, load: chosen.load ?? usualLoad(trials, setup) };
    this.#curves = beforeAndAfter(trials, this.fit, this.#shown);
    const speeds = tellingSpeeds(this.#curves, this.fit?.tried);
    this.#helps = this.fit ? oneMoreRun(trials, this.fit, this.#shown, speeds) : [];
  }

  override render() {
    const { trials, fit, measures } = this;
    const [shown, curves] = [this.#shown, this.#curves];
    if (!trials || !shown || !curves) return nothing;
    return html`
      ${fit && fit.counted > 0 ? this.#narrower(curves, fit) : html`<p class="lead">${words.noRuns}</p>`}
      ${this.#asides(trials, fit)} ${this.#fouling(trials)}
      <div class="columns">
        <section>
          ${this.#choices(trials, shown)}
          <homeleg-band-plot
            .trials=${trials}
            .fit=${fit}
            .curves=${curves}
            .shown=${shown}
            .measures=${measures}
          ></homeleg-band-plot>
        </section>
        ${
          fit
            ? html`<section>
              <homeleg-residual-plot .trials=${trials} .fit=${fit} .measures=${measures}></homeleg-residual-plot>
            </section>`
            : nothing
        }
        ${fit && fit.counted > 0 ? this.#learned(trials, fit) : nothing}
      </div>
      <ul class="cautions">
        ${cautions().map((caution) => html`<li>${caution}</li>`)}
      </ul>
    `;
  }

  /** The answer in one or two sentences. */
  #narrower(curves: BeforeAfter, fit: Fit) {
    const { after, before } = curves;
    if (!after) return nothing;
    const { measures } = this;
    return html`<p class="lead">
      ${tellingSpeeds(curves, fit.tried).map((speed) => {
        const width = (curve: typeof before) => shareText(halfWidth(nearest(curve, speed).flow), measures);
        return html`${words.narrower(measures.show('speed', speed), width(before), width(after))} `;
      })}
      ${words.counted(fit.counted)} ${this.#scatter(fit)}
    </p>`;
  }

  #scatter({ scatter, formSpread }: Fit): string {
    const off = formSpread > OFF_CURVE ? words.offCurve : '';
    if (scatter < 1.5) return off;
    const times = new Intl.NumberFormat(this.measures.lang, { maximumFractionDigits: 1 }).format(scatter);
    return `${words.scatter(times)} ${off}`;
  }

  /** Runs that do not count, first of all those that contradict the others. */
  #asides(trials: Trials, fit: Fit | undefined) {
    const aside = (fit?.runs ?? []).filter(({ setAside }) => setAside);
    if (aside.length === 0) return nothing;
    return html`<ul class="asides">
      ${aside.map((run) => {
        const name = rowName(trials, run);
        const act = (what: RowAct, label: string) => html`<button
          type="button"
          class="quiet"
          aria-label="${label}: ${name}"
          @click=${() => this.#ask(what, run)}
        >
          ${label}
        </button>`;
        return html`<li>
          <span><b>${name}</b>: ${runWords.asides[run.setAside!]}${this.#why(run)}</span>
          <span class="acts">
            ${act('edit', trialWords.edit)}
            ${run.setAside === 'left-out' ? act('put-back', trialWords.putBack) : act('leave-out', trialWords.leaveOut)}
          </span>
        </li>`;
      })}
    </ul>`;
  }

  /** ": consumption 31 % more than the curve, 5 times the expected error". */
  #why(run: RunFound): string {
    if (run.setAside !== 'contradicts') return '';
    const parts = (['consumed', 'rpm', 'power'] as const).flatMap((name) => {
      const held = run[name];
      if (!held || Math.abs(held.standard) < 1.3) return [];
      const share = held.measured / held.fitted - 1;
      const by = shareText(share, this.measures);
      const times = new Intl.NumberFormat(this.measures.lang, { maximumFractionDigits: 1 });
      const apart = words.expectedErrors(times.format(Math.abs(held.standard)));
      return [`${commonWords.within(words.readings[name])} ${share > 0 ? words.more(by) : words.less(by)}, ${apart}`];
    });
    return parts.length > 0 ? ` (${parts.join('; ')})` : '';
  }

  /** A foul bottom on the day makes a clean boat look worse than it is. */
  #fouling(trials: Trials) {
    return html`<div class="fouling">
      <homeleg-choice-field
        label=${words.fouling}
        .choices=${Object.entries(words.foulings).map(([value, label]) => ({ value, label }))}
        .value=${trials.fouling ?? 'clean'}
        @choice-made=${this.#foulingPicked}
      ></homeleg-choice-field>
      <p class="paper">${words.fouling}: ${words.foulings[trials.fouling ?? 'clean']}</p>
    </div>`;
  }

  #foulingPicked({ detail }: ChoiceMade): void {
    const fouling = detail.value as Fouling;
    this.dispatchEvent(
      new CustomEvent('fouling-picked', { detail: { fouling }, bubbles: true }) satisfies FoulingPicked,
    );
  }

  #choices(trials: Trials, shown: Shown) {
    const { measures } = this;
    const loads = loadsTried(trials);
    if (trials.setups.length < 2 && loads.length < 2) return nothing;
    return html`<div class="fields wide choices">
      ${
        trials.setups.length > 1
          ? html`<div class="field">
            <label for="setup">${words.shownFor}</label>
            <select id="setup" @change=${(event: Event) => this.#choose({ setup: (event.target as HTMLSelectElement).value })}>
              ${trials.setups.map(
                (setup) =>
                  html`<option value=${setup.id} .selected=${setup.id === shown.setup}>${setupName(setup, measures)}</option>`,
              )}
            </select>
          </div>`
          : nothing
      }
      ${
        loads.length > 1
          ? html`<div class="field">
            <label for="load">${words.shownLoad}</label>
            <select id="load" @change=${(event: Event) => this.#loadPicked(loads, event)}>
              ${loads.map(
                (load, i) =>
                  html`<option value=${i} .selected=${load === shown.load}>${loadText(trials, shown.setup, load, measures)}</option>`,
              )}
            </select>
          </div>`
          : nothing
      }
    </div>`;
  }

  #learned(trials: Trials, fit: Fit) {
    const { measures } = this;
    const lines = factorLines(trials, fit, measures);
    const numbers = (ids: readonly string[]) =>
      ids
        .map((id) => trials.runs.findIndex((run) => run.id === id) + 1)
        .filter(Boolean)
        .join(', ');
    const kind = trials.setups[0]!.drive.kind;
    const { tried } = fit;
    return html`<section>
        <h3>${words.factors}</h3>
        <dl>
          ${lines
            .filter(({ learned }) => learned)
            .map(({ name, text }) => html`<div><dt>${name}</dt><dd>${text}</dd></div>`)}
        </dl>
        <p class="hint">${factorText.note}</p>
      </section>
      <section>
        ${this.#helpful(trials)}
        <h3>${words.limits}</h3>
        <ul>
          ${fit.limits.map((limit) => html`<li>${limitText(limit, numbers, kind)}</li>`)}
          ${
            tried
              ? html`<li>${words.tried(this.#span('mass', tried.mass), this.#span('speed', tried.speed))}</li>`
              : nothing
          }
        </ul>
      </section>`;
  }

  /** What one more run would do for the speeds told above. */
  #helpful(trials: Trials) {
    if (this.#helps.length === 0) return nothing;
    const { measures } = this;
    const several = trials.setups.length > 1;
    return html`<h3>${words.helpful}</h3>
      <ol class="helpful">
        ${this.#helps.map(({ candidate: { setup, load, speed }, before, after }) => {
          const mass = measures.show('mass', balanceOf(trials, setup, load).allUpMass);
          const name = several ? setupName(setupOf(trials, setup), measures) : '';
          const spread = (deviation: number) => shareText(Z90 * deviation, measures);
          return html`<li>
            ${words.helpfulRun(measures.show('speed', speed), mass, name)}<br />
            <span class="hint">${words.helpfulBand(spread(before), spread(after))}</span>
          </li>`;
        })}
      </ol>`;
  }

  #span(measure: 'mass' | 'speed', [low, high]: readonly [number, number]): string {
    return this.measures.band(measure, { low, median: low, high });
  }

  #choose(change: Partial<Shown>): void {
    this.chosen = { ...this.chosen, ...change };
  }

  #loadPicked(loads: readonly Load[], event: Event): void {
    const load = loads[Number((event.target as HTMLSelectElement).value)];
    if (load) this.#choose({ load });
  }

  #ask(what: RowAct, { id, kind }: RunFound): void {
    const detail = { what, id, kind };
    this.dispatchEvent(new CustomEvent('row-asked', { detail, bubbles: true }) satisfies RowAsked);
  }
}

define('homeleg-fit-report', FitReport);

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-fit-report': FitReport;
  }
}
