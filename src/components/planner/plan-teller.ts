import type { Route } from '../../core/route/shapes.ts';
import type { Plan, Trip, Verdict } from '../../core/trip/shapes.ts';
import type { Measures } from '../units/measures.ts';
import { answerWords } from '../words/en-answer.ts';
import { verdictWords } from '../words/en-verdict.ts';
import { tellPage } from './planner-events.ts';

/** Tells of each settled plan: the page by events, and whoever listens to the screen by a sentence. */
export class PlanTeller {
  readonly #host: HTMLElement;
  #verdict: Verdict | undefined;
  #route: Route | undefined;
  /** Read out after a change. */
  announcement = '';

  constructor(host: HTMLElement) {
    this.#host = host;
  }

  /** `trip` is the one planned, under the host's rules too. */
  tell(trip: Trip, plan: Plan | undefined, measures: Measures): void {
    const before = this.#verdict;
    this.#verdict = plan?.verdict;
    this.announcement = plan
      ? answerWords.announced(verdictWords[plan.verdict], measures.show('amount', plan.left.median, plan.store))
      : '';
    tellPage(this.#host, 'homeleg-plan', { trip, plan });
    if (this.#route !== trip.route) tellPage(this.#host, 'homeleg-route', { route: trip.route });
    this.#route = trip.route;
    if (before !== this.#verdict) tellPage(this.#host, 'homeleg-verdict', { verdict: this.#verdict, before });
  }
}
