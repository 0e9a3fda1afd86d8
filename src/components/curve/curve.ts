import { html } from 'lit';
import type { Curve } from '../../core/curve/shapes.ts';
import type { Trip } from '../../core/trip/shapes.ts';
import { tripCurve } from '../../core/trip/trip-curve.ts';
import '../curve-plot/curve-plot.ts';
import { TripPiece } from '../host/trip-piece.ts';
import { plannedSpeed } from '../planner/shown.ts';
import { controls } from '../theme/controls.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';

/**
 * @summary What each speed takes of a trip's boat with its load, and the planned speed on it.
 * @attr for - id of the planner or other element whose trip is shown
 * @fires {PlanEvent} homeleg-plan - a trip given to this piece was worked out
 * @fires {ProblemEvent} homeleg-problem - an attribute cannot be used
 * @csspart curve - the drawing with its facts and table
 * @csspart cautions - what holds for every answer
 * @csspart problem - what the author of the page should mend
 */
export class SpeedCurve extends TripPiece {
  static override styles = [tokens, controls];

  #curve: Curve | undefined;
  #of: Trip | undefined;

  protected override shown(trip: Trip) {
    const planned = this.plannedTrip ?? trip;
    if (planned !== this.#of) {
      this.#of = planned;
      this.#curve = tripCurve(planned);
    }
    return html`<homeleg-curve-plot
      part="curve"
      .curve=${this.#curve}
      .measures=${this.measures}
      .plannedSpeed=${plannedSpeed(this.plan, trip.route)}
    ></homeleg-curve-plot>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-curve': SpeedCurve;
  }
}
