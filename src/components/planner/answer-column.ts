import { html } from 'lit';
import type { Trip } from '../../core/trip/shapes.ts';
import type { FixWanted } from '../answer/answer.ts';
import type { AssumptionWanted } from '../trip-details/trip-details.ts';
import type { Measures } from '../units/measures.ts';
import { dataName } from '../words/en-data.ts';
import { plannerWords as words } from '../words/en-planner.ts';
import type { PlanMaker } from './plan-maker.ts';
import { plannedSpeed } from './shown.ts';
import { unusableIn } from './unusable.ts';

export interface Told {
  /** As entered. */
  readonly trip: Trip;
  readonly maker: PlanMaker;
  readonly measures: Measures;
  /** Read out after a change. */
  readonly announcement: string;
  readonly fixWanted: (event: FixWanted) => void;
  readonly assumptionWanted: (event: AssumptionWanted) => void;
}

/** The answer and what stands with it: the fuel or charge as a bar, the curve, figures and assumptions. */
export function answerColumn({ trip, maker, measures, announcement, fixWanted, assumptionWanted }: Told) {
  const { plan, curve, problems, settled } = maker;
  const { departure } = trip.conditions;
  const fuel = trip.craft.store.kind === 'tank';
  return html`
    <section class="bare" part="answer">
      <homeleg-answer
        exportparts="verdict"
        .plan=${plan}
        .problems=${problems}
        .measures=${measures}
        .departure=${departure}
        trip-name=${dataName(trip.name ?? '')}
        announce=${announcement}
        @fix-wanted=${fixWanted}
      ></homeleg-answer>
      <slot name="cautions"></slot>
    </section>
    <section part="bar">
      <h2>${fuel ? words.fuelBar : words.chargeBar}</h2>
      <homeleg-fuel-bar .plan=${plan} .measures=${measures} .unusable=${unusableIn(trip)}></homeleg-fuel-bar>
    </section>
    <section data-part="curve" part="curve">
      <h2>${words.curve}</h2>
      <homeleg-curve-plot
        .curve=${curve}
        .measures=${measures}
        .plannedSpeed=${plannedSpeed(plan, trip.route)}
      ></homeleg-curve-plot>
    </section>
    <section class=${settled ? '' : 'unsettled'} data-part="details" part="details">
      <h2>${words.details}</h2>
      <homeleg-trip-details
        .plan=${plan}
        .shifts=${maker.shifts}
        .conditions=${trip.conditions}
        .measures=${measures}
        .departure=${departure}
        @assumption-wanted=${assumptionWanted}
      ></homeleg-trip-details>
      <homeleg-daylight .plan=${plan} .measures=${measures} .departure=${departure}></homeleg-daylight>
    </section>
  `;
}
