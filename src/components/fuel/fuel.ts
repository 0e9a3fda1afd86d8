import { html } from 'lit';
import type { Trip } from '../../core/trip/shapes.ts';
import '../answer/answer.ts';
import '../fuel-bar/fuel-bar.ts';
import { TripPiece } from '../host/trip-piece.ts';
import { unusableIn } from '../planner/unusable.ts';
import { controls } from '../theme/controls.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';

/**
 * @summary The fuel or charge of a trip as a bar from full to empty, with the answer above it.
 * @attr for - id of the planner or other element whose trip is shown
 * @fires {PlanEvent} homeleg-plan - a trip given to this piece was worked out
 * @fires {ProblemEvent} homeleg-problem - an attribute cannot be used
 * @csspart verdict - the answer in one line
 * @csspart bar - the bar and its key
 * @csspart cautions - what holds for every answer
 * @csspart problem - what the author of the page should mend
 */
export class Fuel extends TripPiece {
  static override styles = [tokens, controls];

  protected override shown(trip: Trip) {
    const { plan, measures } = this;
    return html`<homeleg-answer part="verdict" compact .plan=${plan} .measures=${measures}></homeleg-answer>
      <homeleg-fuel-bar part="bar" .plan=${plan} .measures=${measures} .unusable=${unusableIn(trip)}></homeleg-fuel-bar>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-fuel': Fuel;
  }
}
