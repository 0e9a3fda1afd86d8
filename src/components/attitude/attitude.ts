import { html, nothing, type PropertyValues } from 'lit';
import { property } from 'lit/decorators.js';
import { type Attitude, attitudeOf, type Running } from '../../core/trip/attitude.ts';
import type { Plan, Trip } from '../../core/trip/shapes.ts';
import { OwnWidth } from '../curve-plot/own-width.ts';
import { type Piece, pieces } from '../deck-plan/pieces.ts';
import { define } from '../define.ts';
import { SpeakingElement } from '../language/speaking-element.ts';
import { controls } from '../theme/controls.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import { NAUTICAL } from '../units/default-measures.ts';
import type { Measures } from '../units/measures.ts';
import { attitudeWords as words } from '../words/en-load.ts';
import { attitudeStyles } from './attitude.styles.ts';
import { attitudeFigures, bowText, edgeText, floatFigures } from './attitude-texts.ts';
import { type Lie, sideDrawing } from './side-drawing.ts';

/** Speed told where none is planned, m/s. */
const USUAL_SPEED = 5;
/** px: three views beside each other from here on, and the widest one. */
const BESIDE = 460;
const WIDEST = 430;
const GAP = 12;

/** @summary How the loaded boat floats and runs: figures, and the boat from the side at rest, on the hump and planing. */
export class AttitudeView extends SpeakingElement {
  static override styles = [tokens, controls, attitudeStyles];

  @property({ attribute: false }) trip: Trip | undefined;
  @property({ attribute: false }) plan: Plan | undefined;
  /** m/s */
  @property({ attribute: false }) speed: number | undefined;
  @property({ attribute: false }) measures: Measures = NAUTICAL;

  readonly #own = new OwnWidth(this);
  #attitude: Attitude | undefined;
  #pieces: readonly Piece[] = [];

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has('trip') && !changed.has('speed')) return;
    const { trip } = this;
    this.#attitude = trip && attitudeOf(trip, this.speed ?? USUAL_SPEED);
    this.#pieces = trip ? pieces(trip.craft, trip.load) : [];
  }

  override render() {
    const attitude = this.#attitude;
    if (!attitude || !this.trip) return nothing;
    const { float } = attitude;
    return html`
      <section aria-label=${words.title}>
        <dl>
          ${attitudeFigures(attitude, this.plan, this.measures).map(
            ({ name, term, figure, note, tone }) => html`<div class="figure-${name} tone-${tone}">
              <dt>${term}</dt>
              <dd class="value">${figure}</dd>
              ${note ? html`<dd class="note">${note}</dd>` : nothing}
            </div>`,
          )}
        </dl>
        ${this.#views(attitude)}
        ${
          typeof float === 'string'
            ? html`<p class="hint">${words.lacks[float]}</p>`
            : html`<details>
                <summary>${words.more}</summary>
                <dl>
                  ${floatFigures(float, this.measures).map(
                    ([term, figure]) => html`<div><dt>${term}</dt><dd>${figure}</dd></div>`,
                  )}
                </dl>
                <p class="hint">${words.assumed}</p>
              </details>`
        }
      </section>
    `;
  }

  #views({ float, curve, hump, planing, planned }: Attitude) {
    const { width } = this.#own;
    if (width === 0) return nothing;
    const m = this.measures;
    const rest = typeof float === 'string' ? undefined : float.rest;
    const columns = width >= BESIDE ? 3 : 1;
    const each = Math.min(Math.floor((width - (columns - 1) * GAP) / columns), WIDEST);
    const running = (now: Running, caption: string) => this.#view(now, each, caption, bowText(now.trimDeg, m));
    return html`<div class="views ${columns > 1 ? 'three' : ''}" role="group" aria-label=${words.side}>
      ${
        rest?.state === 'afloat'
          ? this.#view(this.#restLie(rest), each, words.atRest, `${bowText(rest.trimDeg, m)}, ${edgeText(rest, m)}`)
          : nothing
      }
      ${
        hump.speed <= curve.topSpeed.median
          ? running(hump, words.onHump(m.show('speed', hump.speed)))
          : running(planned, words.atSpeed(m.show('speed', planned.speed)))
      }
      ${
        planing
          ? running(
              planned.planes ? planned : planing,
              words.planing(m.show('speed', (planned.planes ? planned : planing).speed)),
            )
          : html`<p class="hint">${words.noPlaning}</p>`
      }
    </div>`;
  }

  #restLie({ draft, trimDeg }: { draft: number; trimDeg: number }): Lie {
    const half = (this.trip?.craft.hull.wettedLength ?? 0) / 2;
    return { trimDeg, sternUnder: draft + half * Math.tan((trimDeg * Math.PI) / 180) };
  }

  #view(lie: Lie, width: number, name: string, says: string) {
    return html`<figure>
      ${sideDrawing(this.trip!.craft.hull, this.#pieces, lie, width)}
      <figcaption><b>${name}</b>${says}</figcaption>
    </figure>`;
  }
}

define('homeleg-attitude', AttitudeView);

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-attitude': AttitudeView;
  }
}
