import { html, nothing } from 'lit';
import { property, state } from 'lit/decorators.js';
import { deskTrials } from '../../core/hire/hire-refill.ts';
import { hireCraft } from '../../core/hire/hire-trip.ts';
import type { CardAsked, SeasonCard } from '../../core/hire/season-card.ts';
import type { Fleet, FuelNote, HireBoat, Morning } from '../../core/hire/shapes.ts';
import { PETROL_DENSITY } from '../../core/units/constants.ts';
import { define } from '../define.ts';
import '../field/quantity-field.ts';
import type { QuantityTyped } from '../field/quantity-field.ts';
import { SpeakingElement } from '../language/speaking-element.ts';
import { controls } from '../theme/controls.styles.ts';
import { formStyles } from '../theme/form.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import { NAUTICAL } from '../units/default-measures.ts';
import type { Measures } from '../units/measures.ts';
import { hirerWords, cardWords as words } from '../words/en-desk.ts';
import { reserveRuleText } from '../words/en-reserve-rule.ts';
import { makeCard } from './card-maker.ts';
import { deskFormStyles } from './desk-form.styles.ts';
import { dayOf, dayText } from './desk-time.ts';
import { PAPERS, type Paper, printOn } from './paper.ts';
import { seasonCardStyles } from './season-card.styles.ts';

/** A card and what it was worked out for. */
interface Made {
  readonly card: SeasonCard;
  readonly asked: CardAsked;
  readonly measured: boolean;
}

const RESERVE = [{ kind: 'thirds' }] as const;

/** @summary A card for each boat: how long it may go, by crew and wind, for a desk without a screen. */
export class SeasonCardMaker extends SpeakingElement {
  static override styles = [tokens, controls, formStyles, deskFormStyles, seasonCardStyles];

  @property({ attribute: false }) fleet!: Fleet;
  @property({ attribute: false }) notes: readonly FuelNote[] = [];
  @property({ attribute: false }) morning: Morning | undefined;
  @property({ type: Number }) now = 0;
  @property({ attribute: false }) measures: Measures = NAUTICAL;

  @state() private boatId = '';
  @state() private fill = 1;
  @state() private fetchLength = 1000;
  @state() private stream = 0;
  @state() private temperature = 10;
  @state() private share: number | undefined;
  @state() private failed = false;
  @state() private made: Made | undefined;
  @state() private paper: Paper = 'A4';
  #stop: (() => void) | undefined;

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#cancel();
  }

  get #boat(): HireBoat {
    return this.fleet.boats.find(({ id }) => id === this.boatId) ?? this.fleet.boats[0]!;
  }

  override render() {
    const { share } = this;
    return html`
      <form class="card off-paper" aria-label=${words.title} @submit=${this.#make}>
        <h2>${words.title}</h2>
        <p class="muted">${words.lead}</p>
        ${this.#asks()}
        <div class="row">
          ${
            share === undefined
              ? html`<button class="primary">${words.make}</button>`
              : html`<progress max="1" .value=${share} aria-label=${words.make}></progress>
                  <span role="status">${words.working(this.measures.show('share', share))}</span>
                  <button type="button" @click=${this.#cancel}>${words.cancel}</button>`
          }
          ${
            this.made && share === undefined
              ? html`<label class="of-paper">
                    <select
                      aria-label=${words.print}
                      @change=${(event: Event) => (this.paper = (event.target as HTMLSelectElement).value as Paper)}
                    >
                      ${PAPERS.map((paper) => html`<option value=${paper} .selected=${paper === this.paper}>${paper}</option>`)}
                    </select>
                  </label>
                  <button type="button" @click=${() => printOn(this.paper)}>${words.print}</button>`
              : nothing
          }
        </div>
        ${this.failed ? html`<p class="problem" role="alert">${words.failed}</p>` : nothing}
      </form>
      ${this.made && share === undefined ? this.#sheet(this.made) : nothing}
    `;
  }

  #asks() {
    const { measures: m } = this;
    const electric = hireCraft(this.#boat).store.kind === 'battery';
    const quantity = (
      label: string,
      measure: string,
      [value, least, most]: readonly [number, number, number],
      typed: (value: number) => void,
    ) => html`<homeleg-quantity-field
      label=${label}
      measure=${measure}
      min=${least}
      max=${most}
      required
      .measures=${m}
      .value=${value}
      @quantity-typed=${({ detail }: QuantityTyped) => detail.value !== undefined && typed(detail.value)}
    ></homeleg-quantity-field>`;
    return html`<div class="ask">
        <label for="boat">${words.boat}</label>
        <select id="boat" @change=${(event: Event) => this.#boatChosen((event.target as HTMLSelectElement).value)}>
          ${this.fleet.boats.map(
            ({ id, name }) => html`<option value=${id} .selected=${id === this.#boat.id}>${name}</option>`,
          )}
        </select>
      </div>
      <div class="fields">
        ${quantity(words.fill, 'share', [this.fill, 0.1, 1], (value) => (this.fill = value))}
        ${quantity(words.fetch, 'distance', [this.fetchLength, 50, 50_000], (value) => (this.fetchLength = value))}
        ${quantity(words.stream, 'speed', [this.stream, 0, 5], (value) => (this.stream = value))}
        ${
          electric
            ? html`<homeleg-quantity-field
                label=${words.temperature}
                measure="count"
                unit="°C"
                unitSize="1"
                min="-10"
                max="40"
                required
                .measures=${m}
                .value=${this.temperature}
                @quantity-typed=${({ detail }: QuantityTyped) => {
                  if (detail.value !== undefined) this.temperature = detail.value;
                }}
              ></homeleg-quantity-field>`
            : nothing
        }
      </div>`;
  }

  #sheet({ card, asked, measured }: Made) {
    const { measures: m, fleet } = this;
    const hours = (seconds: number) => (seconds > 0 ? m.figure('count', seconds / 3600) : words.none);
    return html`<article class="sheet">
      <header>
        <h3>${asked.boat.name}</h3>
        <p>${fleet.name}</p>
      </header>
      <div class="scroll" role="region" tabindex="0" aria-label=${words.caption}><table>
        <caption>${words.caption}</caption>
        <thead>
          <tr>
            <th scope="col">${words.crew}</th>
            ${card.columns.map(
              ({ force, wind, waveHeight }) => html`<th scope="col" class="figure">
                ${words.force(force)}<small>${words.windUpTo(m.show('speed', wind), m.show('length', waveHeight))}</small>
              </th>`,
            )}
          </tr>
        </thead>
        <tbody>
          ${card.rows.map(
            ({ mass, persons }, i) => html`<tr>
              <th scope="row">${words.upTo(m.show('mass', mass), persons)}</th>
              ${card.longest[i]!.map(
                (seconds) => html`<td class="figure ${seconds > 0 ? 'some' : 'none'}">${hours(seconds)}</td>`,
              )}
            </tr>`,
          )}
        </tbody>
      </table></div>
      <p>${words.noneMeans}</p>
      <p>${this.#basis(asked)}</p>
      <p>${measured ? words.measured : words.unmeasured}</p>
      <ul>${words.rules.map((rule) => html`<li>${rule}</li>`)}</ul>
      <p>${words.answers(fleet.answers)}. ${words.until(dayText(fleet.until, m.lang))}.</p>
      <p class="muted">${hirerWords.cautions}</p>
    </article>`;
  }

  #basis(asked: CardAsked): string {
    const { measures: m } = this;
    const { store } = hireCraft(asked.boat);
    const amount =
      store.kind === 'tank'
        ? m.show(
            'amount',
            store.tanks.reduce((sum, tank) => sum + tank.capacityL, 0) * PETROL_DENSITY * asked.fill,
            'fuel',
          )
        : m.show(
            'amount',
            store.batteries.reduce((sum, { energyWh, health }) => sum + energyWh * health * 3600, 0) * asked.fill,
            'charge',
          );
    const basis = words.basis({
      speed: m.show('speed', asked.boat.speed),
      water: asked.water === 'sea' ? words.salt : words.fresh,
      full: words.level(amount, m.show('share', asked.fill)),
      fetch: m.show('distance', asked.fetch),
      stream: asked.stream > 0 ? words.streamOf(m.show('speed', asked.stream)) : words.slack,
      reserve: reserveRuleText(RESERVE[0], m),
    });
    const { batteryTemperatureC: cold } = asked;
    return cold === undefined ? basis : `${basis} ${words.battery(`${m.figure('count', cold)} °C`)}`;
  }

  #boatChosen(id: string): void {
    this.#cancel();
    this.boatId = id;
    this.made = undefined;
  }

  #make(event: Event): void {
    event.preventDefault();
    this.#cancel();
    const boat = this.#boat;
    const water = this.morning?.conditions.water ?? 'sea';
    const electric = hireCraft(boat).store.kind === 'battery';
    const asked: CardAsked = {
      boat,
      water,
      fill: this.fill,
      fetch: this.fetchLength,
      stream: this.stream,
      reserve: RESERVE,
      ...(electric && { batteryTemperatureC: this.temperature }),
    };
    const trials = deskTrials(boat, this.notes, water);
    this.share = 0;
    this.failed = false;
    this.#stop = makeCard({ asked, trials, day: dayOf(this.now) }, (report) => {
      if (report.kind === 'progress') {
        this.share = report.share;
        return;
      }
      this.share = undefined;
      this.failed = report.kind === 'failed';
      if (report.kind === 'done') this.made = { card: report.value, asked, measured: trials !== undefined };
    });
  }

  readonly #cancel = (): void => {
    this.#stop?.();
    this.#stop = undefined;
    this.share = undefined;
  };
}

define('homeleg-season-card', SeasonCardMaker);

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-season-card': SeasonCardMaker;
  }
}
