import { css, html, nothing, type PropertyValues } from 'lit';
import { property } from 'lit/decorators.js';
import { fuelMass } from '../../core/drive/tank.ts';
import { type Capacity, capacityOf } from '../../core/load/capacity.ts';
import type { Trip } from '../../core/trip/shapes.ts';
import { FRESH_WATER, SEA_WATER } from '../../core/units/constants.ts';
import { levelOf } from '../deck-plan/pieces.ts';
import { define } from '../define.ts';
import { SpeakingElement } from '../language/speaking-element.ts';
import { controls } from '../theme/controls.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import { NAUTICAL } from '../units/default-measures.ts';
import type { Measures } from '../units/measures.ts';
import { capacityWords as words } from '../words/en-load.ts';
import { capacityAnswer, capacityRows, fitRows, notCovering } from './capacity-texts.ts';
import { Unhurried } from './unhurried.ts';

const USUAL_SPEED = 5;

/** @summary What plate, published rules and floating let aboard, side by side with their sources; engine, shaft and category. */
export class CapacityTable extends SpeakingElement {
  static override styles = [
    tokens,
    controls,
    css`
      :host {
        container-type: inline-size;
      }

      p,
      dl,
      dd {
        margin: 0;
      }

      .answer {
        margin-block-end: 10px;
        font-weight: 600;
      }

      .source {
        display: block;
        color: var(--_muted);
        font-size: 0.88em;
        font-weight: 400;
      }

      th[scope='row'] {
        color: var(--_ink);
      }

      .leads {
        background: color-mix(in srgb, var(--_accent) 12%, transparent);
      }

      .leads th[scope='row'],
      .leads td {
        font-weight: 700;
      }

      .over td {
        color: var(--_stop);
        font-weight: 700;
      }

      .aside :is(th, td) {
        color: var(--_muted);
        font-weight: 400;
      }

      dl {
        margin-block-start: 16px;
      }

      dl > div {
        display: grid;
        grid-template-columns: minmax(0, 0.4fr) minmax(0, 0.6fr);
        gap: 0 12px;
        padding-block: 5px;
        border-block-end: 1px solid var(--_line);
      }

      dt {
        color: var(--_muted);
      }

      dd.broken {
        color: var(--_stop);
        font-weight: 600;
      }

      @container (max-width: 560px) {
        thead {
          display: none;
        }

        tr {
          display: grid;
          grid-template-columns: minmax(40%, 1fr) auto;
          padding-block: 6px;
          border-block-end: 1px solid var(--_line);
        }

        th,
        td {
          border: 0;
          padding: 2px 6px;
        }

        th[scope='row'] {
          grid-column: 1 / -1;
        }

        td.figure {
          text-align: start;
          white-space: normal;
        }

        td[data-name]::before {
          content: attr(data-name) ': ';
          color: var(--_muted);
          font-weight: 400;
        }

        td:empty {
          display: none;
        }
      }
    `,
  ];

  @property({ attribute: false }) trip: Trip | undefined;
  /** Planned, m/s. */
  @property({ attribute: false }) speed: number | undefined;
  @property({ attribute: false }) measures: Measures = NAUTICAL;

  readonly #work = new Unhurried<Capacity>(this);

  protected override willUpdate(changed: PropertyValues<this>): void {
    const { trip } = this;
    if (!changed.has('trip') || !trip) return;
    this.#work.start(function* () {
      yield;
      const { craft, load, conditions } = trip;
      const tanks = craft.store.kind === 'tank' ? craft.store.tanks : [];
      const storeMass = fuelMass(tanks, levelOf(craft.store, load));
      const { density } = conditions.water === 'fresh' ? FRESH_WATER : SEA_WATER;
      return capacityOf(craft, load, { storeMass, density });
    });
  }

  override render() {
    const { result } = this.#work;
    const { trip, measures: m } = this;
    if (!result || !trip) return nothing;
    return html`
      <p class="answer">${capacityAnswer(result, m)}</p>
      <table>
        <thead>
          <tr>
            <th scope="col">${words.rule}</th>
            <th scope="col" class="figure">${words.allows}</th>
            <th scope="col" class="figure">${words.now}</th>
            <th scope="col" class="figure">${words.spare}</th>
          </tr>
        </thead>
        <tbody>
          ${capacityRows(result, m).map(
            ({ name, source, allows, now, spare, tone }) => html`<tr class=${tone}>
              <th scope="row">${name}${tone === 'leads' ? `, ${words.leads}` : ''} <span class="source">${source}</span></th>
              <td class="figure" data-name=${words.allows}>${allows}</td>
              <td class="figure" data-name=${words.now}>${now}</td>
              <td class="figure" data-name=${words.spare}>${spare}</td>
            </tr>`,
          )}
        </tbody>
      </table>
      <p class="hint">${notCovering(result)}</p>
      <dl>
        ${fitRows(trip, result, this.speed ?? USUAL_SPEED, m).map(
          ([term, says, broken]) => html`<div><dt>${term}</dt><dd class=${broken ? 'broken' : ''}>${says}</dd></div>`,
        )}
      </dl>
    `;
  }
}

define('homeleg-capacity-table', CapacityTable);

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-capacity-table': CapacityTable;
  }
}
