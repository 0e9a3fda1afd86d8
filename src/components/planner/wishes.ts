import type { ReactiveElement } from 'lit';
import type { FixWanted } from '../answer/answer.ts';
import type { AssumptionWanted } from '../trip-details/trip-details.ts';
import type { Cards } from './cards.ts';
import { mended } from './mended.ts';
import { ASSUMED_IN } from './shown.ts';
import type { TripOnScreen } from './trip-on-screen.ts';

/** What somebody presses in the answer: a fix taken, an assumption to be changed where it is entered. */
export class Wishes {
  readonly #host: ReactiveElement;
  readonly #screen: TripOnScreen;
  readonly #cards: Cards;

  constructor(host: ReactiveElement, screen: TripOnScreen, cards: Cards) {
    this.#host = host;
    this.#screen = screen;
    this.#cards = cards;
  }

  readonly fixWanted = ({ detail }: FixWanted): void => {
    const change = mended(this.#screen.trip, detail.fix, detail.reason);
    if (change.trip) this.#screen.change(change.trip);
    else if (detail.fix.code === 'draw-round') void this.#takeRound(detail.reason.legs);
    else if (change.card) void this.#cards.show(change.card);
  };

  readonly assumptionWanted = ({ detail }: AssumptionWanted): void => {
    void this.#cards.show(ASSUMED_IN[detail.code] ?? 'kept');
  };

  readonly toAnswer = (event: Event): void => {
    // The fragment would look for the answer in the page, not in this element.
    event.preventDefault();
    this.#host.renderRoot.querySelector('#answer')?.scrollIntoView({ block: 'start' });
  };

  async #takeRound(legs: readonly number[] | undefined): Promise<void> {
    await this.#cards.show('route');
    await customElements.whenDefined('homeleg-waypoint-table');
    const table = this.#host.renderRoot.querySelector('homeleg-waypoint-table');
    await table?.updateComplete;
    table?.takeRound(legs);
  }
}
