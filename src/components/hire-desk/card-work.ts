import { type CardAsked, type SeasonCard, seasonCard } from '../../core/hire/season-card.ts';
import type { Trials } from '../../core/trials/shapes.ts';
import { measuredTrip } from '../planner/fitter.ts';

export interface CardWork {
  readonly asked: CardAsked;
  /** Evidence of the boat, and the day for which it counts. */
  readonly trials: Trials | undefined;
  readonly day: string;
}

/** The card of a boat with its evidence. */
export function cardWork({ asked, trials, day }: CardWork): Generator<number, SeasonCard> {
  return seasonCard(asked, (trip) => (trials ? measuredTrip({ ...trip, trials }, day).trip : trip));
}
