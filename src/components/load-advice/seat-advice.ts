import { css, html, nothing, type PropertyValues } from 'lit';
import { property, state } from 'lit/decorators.js';
import { changes } from '../../core/compare/changes.ts';
import { loaded, setUp } from '../../core/compare/loaded.ts';
import type { Store } from '../../core/craft/shapes.ts';
import type { Load } from '../../core/load/shapes.ts';
import type { Waters } from '../../core/route/waters.ts';
import { type SeatingAdvice, seatingAdvice } from '../../core/trip/seating-advice.ts';
import type { Purpose } from '../../core/trip/seating-places.ts';
import type { Trip } from '../../core/trip/shapes.ts';
import { tripCurve } from '../../core/trip/trip-curve.ts';
import { define } from '../define.ts';
import { SpeakingElement } from '../language/speaking-element.ts';
import '../field/choice-field.ts';
import type { ChoiceMade } from '../field/choice-field.ts';
import { controls } from '../theme/controls.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import { NAUTICAL } from '../units/default-measures.ts';
import type { Measures } from '../units/measures.ts';
import { seatWords as words } from '../words/en-load.ts';
import { adviceRows, adviceText } from './seat-texts.ts';
import { Unhurried } from './unhurried.ts';

/** The advice is taken: everybody sits and everything loose stands as it says. */
export type AdviceTaken = CustomEvent<{ load: Load; store: Store }>;

interface Worked {
  readonly advice: SeatingAdvice | undefined;
  /** Of one pin in and out: shift of the balance, m, and power over need at the hump; undefined where it does not matter. */
  readonly pins: readonly { readonly way: 'in' | 'out'; readonly shift: number; readonly hump: number }[];
}

const PURPOSES: readonly Purpose[] = ['planing', 'level', 'range', 'rough', 'tiller'];
/** One hole of the trim pin on small engines, degrees (common practice, no source). */
const PIN = 4;
const USUAL_SPEED = 5;

/**
 * @summary Where everybody best sits for a purpose, why, and what the present placement costs.
 * @fires advice-taken - the user wants everybody seated as advised
 */
export class SeatAdvice extends SpeakingElement {
  static override styles = [
    tokens,
    controls,
    css`
      .says {
        margin-block: 12px 4px;
        font-weight: 600;
      }

      p {
        margin: 4px 0;
      }

      .unsettled {
        color: var(--_muted);
      }

      table {
        margin-block: 10px;
      }

      td.figure.better {
        color: var(--_go);
        font-weight: 600;
      }

      .row {
        display: flex;
        flex-wrap: wrap;
        gap: 8px;
        align-items: center;
        margin-block: 10px;
      }
    `,
  ];

  @property({ attribute: false }) trip: Trip | undefined;
  @property({ attribute: false }) waters: Waters | undefined;
  /** Planned, m/s. */
  @property({ attribute: false }) speed: number | undefined;
  @property({ attribute: false }) measures: Measures = NAUTICAL;

  /** As picked; until then what suits the boat. */
  @state() private picked: Purpose | undefined;
  @state() private undo: { load: Load; store: Store } | undefined;

  readonly #work = new Unhurried<Worked>(this);
  #planes = true;
  #taken: Load | undefined;

  protected override willUpdate(changed: PropertyValues<this>): void {
    const keys = changed as Map<PropertyKey, unknown>;
    if (changed.has('trip') && this.trip) this.#planes = tripCurve(this.trip).planingSpeed !== undefined;
    if (changed.has('trip') && this.undo && this.trip?.load !== this.#taken) this.undo = undefined;
    if (keys.has('picked') || changed.has('trip') || changed.has('waters') || changed.has('speed')) this.#renew();
  }

  /** A boat that does not plane is not asked to plane more easily. */
  get #purpose(): Purpose {
    return this.picked ?? (this.#planes ? 'planing' : 'range');
  }

  #renew(): void {
    const { trip, waters, speed = USUAL_SPEED } = this;
    if (!trip || trip.load.items.length === 0) return;
    const purpose = this.#purpose;
    this.#work.start(function* () {
      const advice = seatingAdvice(trip, waters, { purpose, speed });
      yield;
      return { advice, pins: pinsOf(trip, speed) };
    });
  }

  override render() {
    const { trip } = this;
    if (!trip) return nothing;
    return html`
      <homeleg-choice-field
        .label=${words.purpose}
        .choices=${PURPOSES.map((value) => ({ value, label: words.purposes[value] }))}
        .value=${this.#purpose}
        @choice-made=${({ detail }: ChoiceMade) => {
          this.picked = detail.value as Purpose;
        }}
      ></homeleg-choice-field>
      <div class=${this.#work.working ? 'unsettled' : ''} role="status" aria-busy=${this.#work.working}>${this.#answer(trip)}</div>
    `;
  }

  #answer(trip: Trip) {
    if (trip.load.items.length === 0) return html`<p>${words.nobody}</p>`;
    const { result } = this.#work;
    if (!result) return nothing;
    const { advice } = result;
    if (!advice) return html`<p class="problem">${words.tooMany}</p>`;
    const m = this.measures;
    const { says, costs } = adviceText(trip, advice, m);
    const store = trip.craft.store.kind === 'tank' ? 'fuel' : 'charge';
    const gap = advice.cost.advised - Math.min(advice.cost.bound, advice.cost.advised);
    return html`
      <p class="says">${says}</p>
      ${costs ? html`<p>${costs}</p>` : nothing}
      <div class="row">
        ${
          advice.moves.length > 0
            ? html`<button type="button" class="primary" @click=${() => this.#take(advice)}>${words.apply}</button>`
            : nothing
        }
        ${
          this.undo
            ? html`<span>${words.applied}</span>
              <button type="button" class="quiet" @click=${this.#takeBack}>${words.takeBack}</button>`
            : nothing
        }
      </div>
      ${
        advice.moves.length > 0
          ? html`<div class="scroll" tabindex="0" role="group" aria-label=${words.figure}><table>
              <thead>
                <tr><th scope="col">${words.figure}</th><th scope="col" class="figure">${words.now}</th><th scope="col" class="figure">${words.advised}</th></tr>
              </thead>
              <tbody>
                ${adviceRows(advice, store, m).map(
                  ([name, now, then]) => html`<tr>
                    <th scope="row">${name}</th>
                    <td class="figure">${now}</td>
                    <td class="figure">${then}</td>
                  </tr>`,
                )}
              </tbody>
            </table></div>`
          : nothing
      }
      <p class="hint">
        ${advice.exact ? words.exact : `${words.near} ${words.bound(m.show('share', Math.max(gap, 0)))}`} ${words.never}
      </p>
      ${this.#pins(result)}
    `;
  }

  #pins({ pins }: Worked) {
    const m = this.measures;
    if (pins.length === 0) return nothing;
    const said = pins.map(({ way, shift, hump }) => {
      const name = way === 'in' ? words.pinIn : words.pinOut;
      return `${name}: ${words.pinSays(m.show('length', Math.abs(shift)), shift > 0, m.show('share', hump))}`;
    });
    return html`<p><b>${words.pin}</b>. ${said.join('. ')}.</p>`;
  }

  #take({ load, store }: SeatingAdvice): void {
    const { trip } = this;
    if (!trip) return;
    this.undo = { load: trip.load, store: trip.craft.store };
    this.#taken = load;
    this.#tell({ load, store });
  }

  #takeBack(): void {
    const { undo } = this;
    this.undo = undefined;
    if (undo) this.#tell(undo);
  }

  #tell(detail: { load: Load; store: Store }): void {
    this.dispatchEvent(new CustomEvent('advice-taken', { detail, bubbles: true }) satisfies AdviceTaken);
  }
}

/** What one pin of engine trim does, beside moving people; nothing for a boat that does not get to the hump. */
function pinsOf({ craft, load, conditions }: Trip, speed: number): Worked['pins'] {
  if (craft.hull.form === 'displacement') return [];
  const setting = { water: conditions.water, batteryTemperatureC: conditions.batteryTemperatureC ?? 10 };
  const { changes: found } = changes(loaded(setUp(craft, setting), load), {
    ...setting,
    cruise: speed,
    crewMove: 0.3,
    trimDeg: PIN,
  });
  return (['in', 'out'] as const).flatMap((way) => {
    const one = found.find(({ code }) => code === (way === 'in' ? 'trim-in' : 'trim-out'));
    return one ? [{ way, shift: one.lcgShift[0], hump: one.ends[0].humpMargin }] : [];
  });
}

define('homeleg-seat-advice', SeatAdvice);

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-seat-advice': SeatAdvice;
  }
}
