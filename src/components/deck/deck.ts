import { html } from 'lit';
import type { Trip } from '../../core/trip/shapes.ts';
import type { LoadEdited, StoreMoved } from '../deck-plan/deck-plan.ts';
import '../deck-plan/deck-plan.ts';
import { TripPiece } from '../host/trip-piece.ts';
import { controls } from '../theme/controls.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';

/**
 * @summary Who and what is aboard and where, on the boat from above; changes go into the trip shown.
 * @attr for - id of the planner or other element whose trip is shown and changed
 * @fires {PlanEvent} homeleg-plan - a trip given to this piece, or changed here, was worked out
 * @fires {ProblemEvent} homeleg-problem - an attribute cannot be used
 * @csspart deck - the drawing with its table
 * @csspart cautions - what holds for every answer
 * @csspart problem - what the author of the page should mend
 */
export class Deck extends TripPiece {
  static override styles = [tokens, controls];

  protected override shown({ craft, load }: Trip) {
    return html`<homeleg-deck-plan
      part="deck"
      .craft=${craft}
      .load=${load}
      .balance=${this.plan?.balance}
      .measures=${this.measures}
      @load-edited=${this.#loadEdited}
      @store-moved=${this.#storeMoved}
    ></homeleg-deck-plan>`;
  }

  #loadEdited({ detail }: LoadEdited): void {
    const trip = this.shownTrip;
    if (trip) this.editTrip({ ...trip, load: detail.load });
    this.requestUpdate();
  }

  #storeMoved({ detail }: StoreMoved): void {
    const trip = this.shownTrip;
    if (trip) this.editTrip({ ...trip, craft: { ...trip.craft, store: detail.store } });
    this.requestUpdate();
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-deck': Deck;
  }
}
