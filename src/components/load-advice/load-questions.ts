import { css, html, nothing, type PropertyValues } from 'lit';
import { property, state } from 'lit/decorators.js';
import type { Floating } from '../../core/load/equilibrium.ts';
import type { Load } from '../../core/load/shapes.ts';
import type { Waters } from '../../core/route/waters.ts';
import { type OnTheWay, onTheWay } from '../../core/trip/on-the-way.ts';
import type { Plan, Trip } from '../../core/trip/shapes.ts';
import { leftBehind, ONE_MORE, oneMore, type WhatIfAnswer, whatIf } from '../../core/trip/what-if.ts';
import { define } from '../define.ts';
import { SpeakingElement } from '../language/speaking-element.ts';
import '../field/quantity-field.ts';
import type { QuantityTyped } from '../field/quantity-field.ts';
import { controls } from '../theme/controls.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import { NAUTICAL } from '../units/default-measures.ts';
import type { Measures } from '../units/measures.ts';
import { commonWords } from '../words/en-common.ts';
import { whoIs } from '../words/en-deck.ts';
import { attitudeWords, whatIfWords as words } from '../words/en-load.ts';
import { payloadText } from '../words/en-payload.ts';
import { verdictWords } from '../words/en-verdict.ts';
import { Unhurried } from './unhurried.ts';

interface Worked {
  readonly without: WhatIfAnswer | undefined;
  readonly withOne: WhatIfAnswer | undefined;
  readonly way: readonly OnTheWay[];
}

type CrewHome = 'same' | 'aft' | 'forward';

/** Catch, and water that comes aboard, at most, kg. */
const MOST = 300;
const USUAL_SPEED = 5;
/** A seat further, m. */
const SEAT = 0.5;

/** @summary What leaving one behind or one more person changes, and how the balance goes on the way. */
export class LoadQuestions extends SpeakingElement {
  static override styles = [
    tokens,
    controls,
    css`
      h3 {
        margin: 22px 0 8px;
        font-size: 1.1em;
      }

      .asked {
        display: grid;
        grid-template-columns: repeat(auto-fit, minmax(min(17em, 100%), 1fr));
        gap: 8px 20px;
        align-items: start;
      }

      .asked p {
        margin: 6px 0 0;
      }

      .unsettled {
        color: var(--_muted);
      }

      .table {
        overflow-x: auto;
      }

      table {
        margin-block-start: 12px;
        min-width: 26em;
      }
    `,
  ];

  @property({ attribute: false }) trip: Trip | undefined;
  @property({ attribute: false }) waters: Waters | undefined;
  @property({ attribute: false }) plan: Plan | undefined;
  /** Planned, m/s. */
  @property({ attribute: false }) speed: number | undefined;
  @property({ attribute: false }) measures: Measures = NAUTICAL;

  @state() private behind = '';
  @state() private more = ONE_MORE;
  @state() private catchMass = 0;
  @state() private waterMass = 0;
  @state() private crew: CrewHome = 'same';

  readonly #work = new Unhurried<Worked>(this);

  protected override willUpdate(changed: PropertyValues<this>): void {
    const keys = changed as Map<PropertyKey, unknown>;
    const asked = ['behind', 'more', 'catchMass', 'waterMass', 'crew', 'trip', 'waters'].some((key) => keys.has(key));
    if (asked || (changed.has('plan') && !this.#work.result)) this.#renew();
  }

  #renew(): void {
    const { trip, waters, plan, behind, more, catchMass, waterMass, crew, speed = USUAL_SPEED } = this;
    if (!trip || !plan) return;
    this.#work.start(function* () {
      yield;
      const without = behind ? whatIf(trip, waters, leftBehind(trip.load, behind)) : undefined;
      yield;
      const withOne = whatIf(trip, waters, oneMore(trip, more, speed));
      yield;
      const home = crew === 'same' ? trip.load : shifted(trip, crew === 'aft' ? -SEAT : SEAT);
      return { without, withOne, way: onTheWay(trip, plan, { catchMass, waterMass, home }) };
    });
  }

  override render() {
    const { trip, measures: m } = this;
    if (!trip) return nothing;
    const { result, working } = this.#work;
    const items = trip.load.items;
    const gone = items.find(({ id }) => id === this.behind);
    return html`
      <h3>${words.title}</h3>
      <div class="asked ${working ? 'unsettled' : ''}" aria-busy=${working}>
        <div>
          <label for="behind">${words.behind}</label>
          <select id="behind" @change=${this.#behindPicked}>
            <option value="" ?selected=${!gone}>${words.nobody}</option>
            ${items.map(
              (item) =>
                html`<option value=${item.id} ?selected=${item === gone}>${whoIs(item)}, ${m.show('mass', item.mass)}</option>`,
            )}
          </select>
          <p role="status">${gone && result ? this.#answer(words.with(whoIs(gone)), result.without) : nothing}</p>
        </div>
        <div>
          <homeleg-quantity-field
            .label=${words.oneMore}
            measure="mass"
            .measures=${m}
            .value=${this.more}
            min="10"
            max="200"
            @quantity-typed=${({ detail }: QuantityTyped) => {
              this.more = detail.value ?? ONE_MORE;
            }}
          ></homeleg-quantity-field>
          <p role="status">${result ? this.#answer(words.withOne(m.show('mass', this.more)), result.withOne) : nothing}</p>
        </div>
      </div>
      ${result && result.way.length > 0 ? this.#way(result.way, trip) : nothing}
    `;
  }

  #answer(asked: string, answer: WhatIfAnswer | undefined) {
    const { trip, measures: m } = this;
    if (!answer) return words.noRoute;
    const store = trip?.craft.store.kind === 'tank' ? 'fuel' : 'charge';
    const left = Number.isFinite(answer.left) ? m.show('amount', answer.left, store) : '–';
    const payload = payloadText(answer.payload, m, store);
    const lower = commonWords.within(payload.charAt(0)) + payload.slice(1);
    const planes = answer.planingSpeed === undefined ? words.never : words.planes(m.show('speed', answer.planingSpeed));
    return html`<b>${asked}</b>: ${words.answer(verdictWords[answer.verdict], left, lower)} ${planes}`;
  }

  #way(points: readonly OnTheWay[], trip: Trip) {
    const m = this.measures;
    const mass = (label: string, value: number, typed: (kg: number) => void) => html`<homeleg-quantity-field
      .label=${label}
      measure="mass"
      .measures=${m}
      .value=${value}
      min="0"
      max=${MOST}
      @quantity-typed=${({ detail }: QuantityTyped) => typed(detail.value ?? 0)}
    ></homeleg-quantity-field>`;
    return html`<h3>${words.underway}</h3>
      <div class="asked">
        ${mass(words.catchMass, this.catchMass, (kg) => {
          this.catchMass = kg;
        })}
        ${mass(words.waterMass, this.waterMass, (kg) => {
          this.waterMass = kg;
        })}
        <div>
          <label for="crew">${words.crewSits}</label>
          <select id="crew" @change=${(event: Event) => {
            this.crew = (event.currentTarget as HTMLSelectElement).value as CrewHome;
          }}>
            ${(['same', 'aft', 'forward'] as const).map(
              (value) => html`<option value=${value} ?selected=${value === this.crew}>${words.crew[value]}</option>`,
            )}
          </select>
        </div>
      </div>
      <div class="table" tabindex="0" role="region" aria-label=${words.underway}>
        <table>
          <thead>
            <tr>
              <th scope="col">${words.point}</th>
              <th scope="col" class="figure">${words.columns.mass}</th>
              <th scope="col" class="figure">${words.columns.balance}</th>
              <th scope="col" class="figure">${words.columns.edge}</th>
              <th scope="col" class="figure">${words.columns.hump}</th>
            </tr>
          </thead>
          <tbody>
            ${points.map(
              ({ at, balance, rest, humpMargin }) => html`<tr>
                <th scope="row">${words.points[at]}</th>
                <td class="figure">${m.show('mass', balance.allUpMass)}</td>
                <td class="figure">${m.show('share', balance.lcgShare)}</td>
                <td class="figure">${edgeOf(rest, m)}</td>
                <td class="figure">${m.show('share', Math.min(humpMargin, 9.99))}</td>
              </tr>`,
            )}
          </tbody>
        </table>
      </div>
      ${trip.craft.store.kind === 'battery' ? html`<p class="hint">${words.fuelStays}</p>` : nothing}`;
  }

  #behindPicked(event: Event): void {
    this.behind = (event.currentTarget as HTMLSelectElement).value;
  }
}

/** Height of the lowest edge over the water. */
function edgeOf(rest: Floating | undefined, m: Measures): string {
  if (!rest) return '–';
  return rest.state === 'afloat' ? m.show('length', rest.freeboard) : attitudeWords.lost[rest.state];
}

/** Everybody so far forward, m, of where they sit, but within the wetted length. */
function shifted({ craft, load }: Trip, by: number): Load {
  const { stations, wettedLength } = craft.hull;
  return {
    ...load,
    items: load.items.map((item) => {
      const from = item.at ?? stations.find(({ id }) => id === item.station);
      if (!from || item.kind === 'gear') return item;
      const { station: _station, ...bare } = item;
      const x = Math.min(Math.max(from.x + by, 0.1), 0.8 * wettedLength);
      return { ...bare, at: { x, y: from.y, ...(from.z !== undefined && { z: from.z }) } };
    }),
  };
}

define('homeleg-load-questions', LoadQuestions);

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-load-questions': LoadQuestions;
  }
}
