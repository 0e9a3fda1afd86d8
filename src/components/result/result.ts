import { html } from 'lit';
import type { Trip } from '../../core/trip/shapes.ts';
import '../answer/answer.ts';
import { TripPiece } from '../host/trip-piece.ts';
import { controls } from '../theme/controls.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import { dataName } from '../words/en-data.ts';

/**
 * @summary The answer of a trip with its reasons: whether it works, what is left at home, and what stands against it.
 * @attr for - id of the planner or other element whose trip is shown
 * @fires {PlanEvent} homeleg-plan - a trip given to this piece was worked out
 * @fires {ProblemEvent} homeleg-problem - an attribute cannot be used
 * @csspart answer - the answer with its reasons
 * @csspart verdict - the words of the answer
 * @csspart cautions - what holds for every answer
 * @csspart problem - what the author of the page should mend
 */
export class TripResult extends TripPiece {
  static override styles = [tokens, controls];

  protected override shown(trip: Trip) {
    return html`<homeleg-answer
      part="answer"
      exportparts="verdict"
      .plan=${this.plan}
      .problems=${this.problemsOfTrip}
      .measures=${this.measures}
      .departure=${trip.conditions.departure}
      trip-name=${dataName(trip.name ?? '')}
    ></homeleg-answer>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-result': TripResult;
  }
}
