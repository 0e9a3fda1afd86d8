import { html, nothing } from 'lit';
import { property, state } from 'lit/decorators.js';
import type { Band } from '../../core/curve/shapes.ts';
import type { Route } from '../../core/route/shapes.ts';
import type { LegPlan, Plan } from '../../core/trip/shapes.ts';
import { define } from '../define.ts';
import { SpeakingElement } from '../language/speaking-element.ts';
import { controls } from '../theme/controls.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import { NAUTICAL } from '../units/default-measures.ts';
import type { Measures } from '../units/measures.ts';
import { regimeText } from '../words/en-regime.ts';
import './leg-streams.ts';
import { type LegGroup, type LegRow, legGroups } from './leg-rows.ts';
import { legTableStyles } from './leg-table.styles.ts';
import { legWords as words } from './words.ts';

/** Rows of one part of the trip on the screen before somebody asks for all. The rest are there, for paper. */
const FIRST = 15;

/** Columns that only some trips have. */
interface Shown {
  readonly limited: boolean;
  readonly flowing: boolean;
}

/** Columns between what is left and the end, the sea's among them. */
function after({ limited, flowing }: Shown): number {
  return 1 + Number(limited) + Number(flowing);
}

/**
 * @summary Every stretch of the trip with its course, speeds, time and use, and what is left after it. In a narrow
 * place each row becomes a card.
 */
export class LegTable extends SpeakingElement {
  static override styles = [tokens, controls, legTableStyles];

  @property({ attribute: false }) plan: Plan | undefined;
  @property({ attribute: false }) measures: Measures = NAUTICAL;
  /** ISO 8601 with offset; without it times since departure. */
  @property() departure: string | undefined;
  /** Names of the points at the ends of the drawn legs, in sailed order. */
  @property({ attribute: false }) names: readonly (string | undefined)[] = [];

  /** As drawn. */
  @property({ attribute: false }) route: Route | undefined;
  /** Names of the places whose stream by tide a leg can take; undefined: streams do not go by the tide. */
  @property({ attribute: false }) streamPlaces: readonly string[] | undefined;

  @state() private all = false;

  override render() {
    const { plan } = this;
    if (!plan) return html`<div class="empty">${words.empty}</div>${this.#streams()}`;
    const groups = legGroups(plan, this.names);
    const limited = plan.legs.some((leg) => leg.limit !== undefined);
    const flowing = plan.legs.some((leg) => leg.stream !== undefined);
    const shown = { limited, flowing };
    const long = groups.some((group) => group.rows.length > FIRST);
    // Roles are spelled out: drawn as cards, the rows would lose them.
    return html`
      <table role="table" class=${this.all ? 'all' : ''}>
        <caption>${words.caption}</caption>
        <thead role="rowgroup">
          <tr role="row">
            ${this.#head(words.leg, false)} ${this.#head(words.starts)} ${this.#head(words.steer)}
            ${this.#head(words.distance)} ${this.#head(words.through)} ${this.#head(words.over)}
            ${this.#head(words.time)} ${this.#head(words.use)} ${this.#head(words.left)}
            ${this.#head(words.sea)} ${flowing ? this.#head(words.stream) : nothing} ${this.#head(words.engine)}
            ${limited ? this.#head(words.limit, false) : nothing}
          </tr>
        </thead>
        ${groups.map((group) => this.#group(group, plan, shown))}
        ${this.#total(plan, shown)}
      </table>
      ${
        long
          ? html`<button type="button" class="quiet" aria-expanded=${this.all} @click=${this.#allToggled}>
              ${this.all ? words.fewer : words.all(String(plan.legs.length))}
            </button>`
          : nothing
      }
      ${this.#streams()}
    `;
  }

  #streams() {
    if (!this.streamPlaces) return nothing;
    return html`<homeleg-leg-streams .route=${this.route} .places=${this.streamPlaces}></homeleg-leg-streams>`;
  }

  #head(label: string, figure = true) {
    return html`<th role="columnheader" scope="col" class=${figure ? 'figure' : ''}>${label}</th>`;
  }

  /** A cell with its column's name beside it for the card view. */
  #cell(label: string, value: unknown, figure = true) {
    return html`<td role="cell" class=${figure ? 'figure' : ''}>
      <span class="label" aria-hidden="true">${label}</span><span>${value}</span>
    </td>`;
  }

  #group(group: LegGroup, plan: Plan, shown: Shown) {
    const { measures } = this;
    const name = words[group.part];
    return html`<tbody role="rowgroup" class=${group.part}>
      ${group.rows.map((row, i) => this.#row(row, plan, shown, i >= FIRST))}
      <tr role="row" class="sum">
        <th role="rowheader" scope="row">${name}</th>
        <td role="cell" class="gap" colspan="2"></td>
        ${this.#cell(words.distance, measures.show('distance', group.distance))}
        <td role="cell" class="gap" colspan="2"></td>
        ${this.#cell(words.time, measures.time(group.time))}
        ${this.#cell(words.use, measures.show('amount', group.use, plan.store))}
        <td role="cell" class="gap" colspan=${2 + after(shown)}></td>
      </tr>
    </tbody>`;
  }

  #row({ leg, number, ends }: LegRow, { store }: Plan, { limited, flowing }: Shown, late: boolean) {
    const { measures: m } = this;
    const rpm = new Intl.NumberFormat(m.lang, { maximumFractionDigits: 0 }).format(Math.round(leg.rpm / 10) * 10);
    const running = `${m.show('share', leg.throttle)}, ${regimeText(leg.regime)}`;
    return html`<tr role="row" class=${late ? 'late' : ''}>
      <th role="rowheader" scope="row">
        <span class="number">${number}</span>
        <span class="part">${words[leg.part]}</span>
        ${ends ? html`<span class="ends">${words.to(ends)}</span>` : nothing}
      </th>
      ${this.#cell(words.starts, m.clock(this.departure, leg.startsAt))}
      ${this.#cell(words.steer, m.bearing(leg.steerDeg))}
      ${this.#cell(words.distance, m.show('distance', leg.distance))}
      ${this.#cell(words.through, m.show('speed', leg.speedThroughWater))}
      ${this.#cell(words.over, m.show('speed', leg.speedOverGround))}
      ${this.#cell(words.time, html`${m.time(leg.time)}${this.#stop(leg)}`)}
      ${this.#cell(words.use, m.show('amount', leg.use, store))}
      ${this.#cell(words.left, this.#left(leg.left, store))}
      ${this.#cell(words.sea, this.#sea(leg))}
      ${flowing ? this.#cell(words.stream, this.#stream(leg)) : nothing}
      ${this.#cell(words.engine, html`${words.rpm(rpm)}<span class="band">${running}</span>`)}
      ${limited ? this.#limitCell(leg) : nothing}
    </tr>`;
  }

  #left(left: Band, store: Plan['store']) {
    const median = this.measures.show('amount', left.median, store);
    const known = Number.isFinite(left.low) && Number.isFinite(left.high);
    return known ? html`${median}<span class="band">${this.measures.band('amount', left, store)}</span>` : median;
  }

  #sea({ waveHeight, headwind }: LegPlan) {
    const { measures: m } = this;
    const waves = waveHeight > 0 ? m.show('length', waveHeight) : words.seaFlat;
    const speed = m.show('speed', Math.abs(headwind));
    if (!Number.isFinite(headwind) || Math.abs(headwind) < 0.05) return waves;
    return html`${waves}<span class="band">${headwind > 0 ? words.ahead(speed) : words.astern(speed)}</span>`;
  }

  #stream({ stream, streamPlaces = [] }: LegPlan) {
    const { measures: m } = this;
    const from =
      streamPlaces.length > 0 ? html`<span class="band">${words.streamFrom(streamPlaces.join(', '))}</span>` : nothing;
    if (!stream || stream.rate < 0.02) return html`${words.slack}${from}`;
    return html`${m.show('speed', stream.rate)}<span class="band">${words.towards(m.bearing(stream.setDeg))}</span>${from}`;
  }

  #stop({ stop }: LegPlan) {
    return stop > 0 ? html`<span class="band">${words.stop(this.measures.time(stop))}</span>` : nothing;
  }

  #limitCell({ limit, limitName }: LegPlan) {
    if (limit === undefined) return html`<td role="cell" class="gap"></td>`;
    const speed = this.measures.show('speed', limit);
    return this.#cell(words.limit, limitName ? html`${speed}<span class="band">${limitName}</span>` : speed, false);
  }

  #total(plan: Plan, shown: Shown) {
    const { measures: m } = this;
    const { store } = plan;
    return html`<tfoot role="rowgroup">
      <tr role="row" class="sum">
        <th role="rowheader" scope="row">${words.manoeuvring}</th>
        <td role="cell" class="gap" colspan="6"></td>
        ${this.#cell(words.use, m.show('amount', plan.manoeuvring, store))}
        <td role="cell" class="gap" colspan=${2 + after(shown)}></td>
      </tr>
      <tr role="row" class="sum total">
        <th role="rowheader" scope="row">${words.total}</th>
        <td role="cell" class="gap" colspan="2"></td>
        ${this.#cell(words.distance, m.show('distance', plan.distance))}
        <td role="cell" class="gap" colspan="2"></td>
        ${this.#cell(words.time, m.time(plan.time))}
        ${this.#cell(words.use, m.show('amount', plan.need.median, store))}
        ${this.#cell(words.left, this.#left(plan.left, store))}
        <td role="cell" class="gap" colspan=${1 + after(shown)}></td>
      </tr>
    </tfoot>`;
  }

  #allToggled(): void {
    this.all = !this.all;
  }
}

define('homeleg-leg-table', LegTable);

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-leg-table': LegTable;
  }
}
